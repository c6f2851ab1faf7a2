"""The list of what a cartridge holds, ``imsmanifest.xml``, with what is said of it in IEEE LOM."""

from __future__ import annotations

from collections.abc import Iterator

from generator.present.cartridge.parts import Cartridge, Kind, Thing
from generator.present.cartridge.version import Version
from generator.present.cartridge.xml import Xml, document, element

MANIFEST = "imsmanifest.xml"
"""Its name, at the root of the cartridge."""
_FRAMEWORK = "Common Core State Standards for Mathematics"
_ROLES = "IMSGLC_CC_Rolesv1p1"


def manifest(cartridge: Cartridge, version: Version) -> bytes:
    """The list, in a version's words.

    Standards are told by their codes, as IEEE LOM has a place for them. The place that 1.3 has besides
    takes an identifier that who keeps a standard gives to it; none is known here, and none is made up.
    """
    items = (_item(one) for one in cartridge.things)
    root = element("item", *items, identifier=f"{cartridge.id}-all")
    organization = element(
        "organization", root, identifier=f"{cartridge.id}-order", structure="rooted-hierarchy"
    )
    resources = [_resource(one, version) for one in cartridge.every()]
    if cartridge.questions:
        file = element("file", href=file_of(cartridge.bank))
        resources.append(
            element("resource", file, identifier=cartridge.bank, type=version.bank_type)
        )
    return document(
        element(
            "manifest",
            _about(cartridge, version),
            element("organizations", organization),
            element("resources", *resources),
            identifier=cartridge.id,
            xmlns=version.manifest,
            xmlns_lomm=version.about_all,
            xmlns_lomr=version.about_one,
        )
    )


def file_of(thing: str) -> str:
    """Where a link or questions lie in a cartridge, by their id."""
    return f"{thing}.xml"


def paper_in(path: str) -> str:
    """Where a paper lies in a cartridge, by its path on the site: whoever unpacks it reads the name."""
    return f"papers/{path.replace('/papers/', '/')}"


def _item(thing: Thing) -> Xml:
    title = element("title", thing.title)
    if thing.kind is None:
        return element("item", title, *map(_item, thing.inside), identifier=f"{thing.id}-item")
    return element("item", title, identifier=f"{thing.id}-item", identifierref=thing.id)


def _resource(thing: Thing, version: Version) -> Xml:
    for_teacher = (_for_teacher(),) if thing.teacher else ()
    if thing.kind is Kind.PAPER:
        href = paper_in(thing.at)
        file, names = element("file", href=href), {"type": "webcontent", "href": href}
    else:
        named = version.quiz_type if thing.kind is Kind.QUIZ else version.link_type
        file, names = element("file", href=file_of(thing.id)), {"type": named}
    return element("resource", *for_teacher, file, identifier=thing.id, **names)


def _for_teacher() -> Xml:
    role = _word("lomr:intendedEndUserRole", "Instructor", _ROLES)
    return element("metadata", element("lomr:lom", element("lomr:educational", role)))


def _word(name: str, value: str, source: str = "") -> Xml:
    """A word of a list, and whose list it is where the schema asks for it."""
    prefix = name.partition(":")[0]
    told = (element(f"{prefix}:source", source),) if source else ()
    return element(name, *told, element(f"{prefix}:value", value))


def _about(cartridge: Cartridge, version: Version) -> Xml:
    return element(
        "metadata",
        element("schema", "IMS Common Cartridge"),
        element("schemaversion", version.schema),
        element(
            "lomm:lom",
            _general(cartridge),
            element(
                "lomm:educational",
                _word("lomm:learningResourceType", "IMS Common Cartridge"),
                _word("lomm:context", "school", "LOMv1.0"),
                _word("lomm:intendedEndUserRole", "Learner", _ROLES),
                _word("lomm:intendedEndUserRole", "Instructor", _ROLES),
            ),
            _rights(cartridge),
            *_classified(cartridge, version),
        ),
    )


def _general(cartridge: Cartridge) -> Xml:
    return element(
        "lomm:general",
        element(
            "lomm:identifier",
            element("lomm:catalog", "Plumline"),
            element("lomm:entry", cartridge.id),
        ),
        element("lomm:title", _words(cartridge.title, cartridge)),
        element("lomm:language", cartridge.language),
        element("lomm:description", _words(cartridge.about, cartridge)),
    )


def _words(text: str, cartridge: Cartridge) -> Xml:
    return element("lomm:string", text, language=cartridge.language)


def _rights(cartridge: Cartridge) -> Xml:
    """That it costs nothing; and the licence, where the site gives one."""
    told = [_word("lomm:cost", "no")]
    if cartridge.license:
        told += [
            _word("lomm:copyrightAndOtherRestrictions", "yes"),
            element("lomm:description", _words(cartridge.license, cartridge)),
        ]
    return element("lomm:rights", *told)


def _classified(cartridge: Cartridge, version: Version) -> Iterator[Xml]:
    """For which level it is, and what it is aligned with."""
    if cartridge.level:
        yield element(
            "lomm:classification",
            _word("lomm:purpose", "educational level"),
            element("lomm:description", _words(cartridge.level, cartridge)),
        )
    if not cartridge.standards:
        return
    framework = element("lomm:string", _FRAMEWORK, language="en")
    source = (element("lomm:source", framework),) if version is Version.V1_3 else ()  # 1.1: no room
    paths = (
        element("lomm:taxonPath", *source, _taxon(code, says, cartridge))
        for code, says in cartridge.standards
    )
    purpose = _word("lomm:purpose", "educational objective")
    yield element("lomm:classification", purpose, *paths, element("lomm:description", framework))


def _taxon(code: str, says: str, cartridge: Cartridge) -> Xml:
    entry = (element("lomm:entry", _words(says, cartridge)),) if says else ()
    return element("lomm:taxon", element("lomm:id", code), *entry)
