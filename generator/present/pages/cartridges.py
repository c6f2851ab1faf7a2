"""The files for learning platforms as pages offer them: of a lesson, and of all lessons of a language."""

from __future__ import annotations

from generator.present.cartridge.version import Version
from generator.present.pages.page import Surround
from generator.present.views.cartridges import CartridgesView
from generator.present.views.page import LinkView


def has_cartridges(surround: Surround) -> bool:
    """Whether any are made: their links need the site's address, and a preview stands nowhere."""
    return bool(surround.site.address) and not surround.preview


def cartridge_name(lesson: str, version: Version) -> str:
    """Name of a lesson's file in its folder: ``river-walk-1.1.imscc``."""
    return f"{lesson}-{version.value}.imscc"


def lesson_cartridges(lesson: str, surround: Surround) -> CartridgesView:
    """The files of one lesson, for its notes."""
    return _offered(f"{surround.folder}{lesson}/", lesson, surround)


def _offered(folder: str, name: str, surround: Surround) -> CartridgesView:
    say = surround.say
    if not has_cartridges(surround):
        return CartridgesView(
            (), say("cartridge_none_yet" if surround.preview else "cartridge_no_address")
        )
    files = tuple(
        LinkView(folder + cartridge_name(name, one), say("cartridge_file", version=one.value))
        for one in Version
    )
    return CartridgesView(files, "")
