"""Reading cartridges with somebody else's eyes: lxml, and the schemas and rules of 1EdTech, who publishes the standard."""

from __future__ import annotations

from collections.abc import Iterator
from copy import deepcopy
from functools import cache
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

from lxml import etree, isoschematron

from tests.project import ROOT

SCHEMAS = ROOT.parent / "shared" / "reference-data" / "common_cartridge"
"""Of versions 1.1 and 1.3; 1.3 has no schema of questions there, so both are held to that of 1.1."""
MANIFEST = "imsmanifest.xml"
Cartridges = dict[str, dict[str, bytes]]
"""What each of several holds, by its path on the site."""
_XSD, _SCHEMATRON = "{http://www.w3.org/2001/XMLSchema}", "{http://purl.oclc.org/dsdl/schematron}"
QTI = "{http://www.imsglobal.org/xsd/ims_qtiasiv1p2}"
_OF = {
    "http://www.imsglobal.org/xsd/imsccv1p1/imscp_v1p1": "v1_1/ccv1p1_imscp_v1p2_v1p0.xsd",
    "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1": "v1_3/ccv1p3_imscp_v1p2_v1p0.xsd",
    "http://www.imsglobal.org/xsd/imsccv1p1/imswl_v1p1": "v1_1/ccv1p1_imswl_v1p1.xsd",
    "http://www.imsglobal.org/xsd/imsccv1p3/imswl_v1p3": "v1_3/ccv1p3_imswl_v1p3.xsd",
    "http://www.imsglobal.org/xsd/ims_qtiasiv1p2": "v1_1/ccv1p1_qtiasiv1p2p1_v1p0.xsd",
}
"""Schema by the namespace of a file's root."""


class _InFolder(etree.Resolver):
    """Schemas import each other by absolute addresses: each lies in the same folder, by its last part."""

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self._folder = folder

    def resolve(self, url: str, _id: str, context: object) -> object:
        return self.resolve_filename(str(self._folder / url.rpartition("/")[2]), context)


@cache
def _schema(file: str) -> tuple[etree.XMLSchema, isoschematron.Schematron | None]:
    """A schema, and the rules that are written into it."""
    path = SCHEMAS / file
    parser = etree.XMLParser(no_network=True)
    parser.resolvers.add(_InFolder(path.parent))
    tree = etree.parse(str(path), parser)
    return etree.XMLSchema(tree), _rules(tree)


def _rules(tree: etree._ElementTree) -> isoschematron.Schematron | None:
    """The Schematron rules in a schema's notes; nothing where it has none."""
    rules = etree.Element(f"{_SCHEMATRON}schema")
    for notes in tree.iterfind(f".//{_XSD}appinfo"):
        rules.extend(deepcopy(list(notes.iterchildren(f"{_SCHEMATRON}*"))))
    if not rules.findall(f"{_SCHEMATRON}pattern"):
        return None
    return isoschematron.Schematron(rules, validate_schema=False, store_report=True)


def complaints(content: bytes) -> list[str]:
    """What the schema of a file, and the rules in it, say against it."""
    tree = etree.parse(BytesIO(content))
    schema, rules = _schema(_OF[etree.QName(tree.getroot()).namespace])
    found = [] if schema.validate(tree) else [str(one) for one in schema.error_log]
    if rules is not None and not rules.validate(tree):
        failed = rules.validation_report.iterfind(".//{*}failed-assert")
        found += [" ".join("".join(one.itertext()).split()) for one in failed]
    return found


def held(file: Path | bytes) -> dict[str, bytes]:
    """What a cartridge holds, by name."""
    with ZipFile(BytesIO(file) if isinstance(file, bytes) else file) as packed:
        assert packed.testzip() is None
        return {name: packed.read(name) for name in packed.namelist()}


def of_site(site: Path) -> Cartridges:
    """Every cartridge of a built site."""
    found = sorted(site.rglob("*.imscc"))
    return {file.relative_to(site).as_posix(): held(file) for file in found}


def xml_in(cartridge: dict[str, bytes]) -> Iterator[tuple[str, etree._Element]]:
    """Its XML files."""
    for name, content in cartridge.items():
        if name.endswith(".xml"):
            yield name, etree.fromstring(content)


def items(cartridge: dict[str, bytes], kind: str) -> list[etree._Element]:
    """The questions of a cartridge: of its ``assessment`` or of its ``objectbank``."""
    return [
        item
        for _, root in xml_in(cartridge)
        for told in root.iterfind(f"{QTI}{kind}")
        for item in told.iter(f"{QTI}item")
    ]
