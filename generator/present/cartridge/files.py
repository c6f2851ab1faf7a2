"""The files in a cartridge, by their names in it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from generator.media.content import Held
from generator.present.cartridge.manifest import MANIFEST, file_of, manifest, paper_in
from generator.present.cartridge.parts import Cartridge, Kind, Thing
from generator.present.cartridge.questions import bank_file, quiz_file
from generator.present.cartridge.version import Version
from generator.present.cartridge.xml import document, element
from generator.present.words.say import Say


def cartridge_files(
    cartridge: Cartridge, version: Version, say: Say, held: Callable[[str], Held]
) -> Iterator[tuple[str, Held]]:
    """What the cartridge holds as one version has it, its list first.

    Args:
        cartridge: what to write down.
        version: in whose words.
        say: the words of its language.
        held: gives what a file of the site holds, by its path.
    """
    yield MANIFEST, manifest(cartridge, version)
    for thing in cartridge.every():
        match thing.kind:
            case Kind.LINK:
                yield file_of(thing.id), _web_link(thing, version)
            case Kind.QUIZ:
                yield file_of(thing.id), quiz_file(thing, say)
            case Kind.PAPER:
                yield paper_in(thing.at), held(thing.at)
            case None:
                pass  # a folder stands in the list alone
    if cartridge.questions:
        yield file_of(cartridge.bank), bank_file(cartridge.bank, cartridge.questions, say)


def _web_link(thing: Thing, version: Version) -> bytes:
    """A link, which opens beside the platform and not inside of it: pages here are shown in no frame."""
    url = element("url", href=thing.at, target="_blank")
    return document(element("webLink", element("title", thing.title), url, xmlns=version.web_link))
