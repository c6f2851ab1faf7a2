"""The files for learning platforms as pages offer them: of a lesson, and of all lessons of a language."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from generator.present.cartridge.version import Version
from generator.present.entry import LessonEntry
from generator.present.pages.page import Surround
from generator.present.views.cartridges import CartridgesView
from generator.present.views.page import LinkView

MOST = 100
"""Lessons in one file; a site with more has those of each lesson alone."""
CARTRIDGES = "<p>{cartridges}</p>"
"""What Markdown makes of the line by which a hand-written page asks for the files of all lessons."""


def has_cartridges(surround: Surround) -> bool:
    """Whether any are made: their links need the site's address, and a preview stands nowhere."""
    return bool(surround.site.address) and not surround.preview


def cartridge_name(lesson: str, version: Version) -> str:
    """Name of a lesson's file in its folder: ``river-walk-1.1.imscc``."""
    return f"{lesson}-{version.value}.imscc"


def lesson_cartridges(lesson: str, surround: Surround) -> CartridgesView:
    """The files of one lesson, for its notes."""
    say, folder = surround.say, f"{surround.folder}{lesson}/"
    files = [
        LinkView(folder + cartridge_name(lesson, one), say("cartridge_file", version=one.value))
        for one in Version
    ]
    return _offered(say("cartridge_says"), files, surround)


def makes_all(lessons: int, surround: Surround) -> bool:
    """Whether all lessons of a language come as one file too: nobody imports hundreds at once."""
    return has_cartridges(surround) and 0 < lessons <= MOST


def all_name(version: Version) -> str:
    """Name of the file of all lessons, in its language's folder."""
    return f"all-lessons-{version.value}.imscc"


def all_cartridges(
    entries: Sequence[LessonEntry],
    untranslated: Iterable[LessonEntry],  # noqa: ARG001  # as every view of all lessons; these have a file of their own
    surround: Surround,
) -> CartridgesView:
    """The files of all lessons, for a page written by hand.

    Args:
        entries: the lessons in the page's language.
        untranslated: those that are in the site's first language and not in it.
        surround: of the language.
    """
    say = surround.say
    if has_cartridges(surround) and not makes_all(len(entries), surround):
        return CartridgesView("", (), say("cartridge_too_many", n=MOST))
    return _offered(
        say("cartridge_all_says"),
        [
            LinkView(surround.folder + all_name(one), say("cartridge_all_file", version=one.value))
            for one in Version
        ],
        surround,
    )


def _offered(says: str, files: list[LinkView], surround: Surround) -> CartridgesView:
    if has_cartridges(surround):
        return CartridgesView(says, tuple(files), "")
    key = "cartridge_none_yet" if surround.preview else "cartridge_no_address"
    return CartridgesView("", (), surround.say(key))
