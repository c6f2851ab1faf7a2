"""What all lessons of a site are made in: its words, its templates, the files they share."""

from __future__ import annotations

from pathlib import Path

from generator.carried import theme_of
from generator.making import Surroundings
from generator.model.library import Library
from generator.present.assets.environment import Theme
from generator.present.assets.later import later_files
from generator.present.assets.shared import shared_files
from generator.present.languages import folder_of
from generator.present.papers.press import Press
from generator.present.stops.missing_parts import missing_parts
from generator.present.words.say import Say
from generator.problems import LessonError, Place, Problem
from generator.read.beside import BesideLessons
from generator.read.handwritten import handwritten_pages


def surroundings(root: Path, library: Library, *, preview: bool = False) -> Surroundings:
    """What all lessons are made in, the shared styles and scripts among it.

    Args:
        root: folder of the site.
        library: brings the words of each language.
        preview: whether the pages are for the educator's own machine.

    Raises:
        LessonError: a kind of stop lacks something; a mistake of whoever carries the program on.
    """
    site, theme = library.site, Path(theme_of(root))
    refuse_half_made(theme, library)
    says = {language: Say(library.words[language]) for language in site.languages}
    recording = preview or site.publish_recording_pack
    later = later_files(theme, says.values(), keeping=site.keep_lessons)
    shared = [*shared_files(theme, recording=recording, preview=preview), *later]
    return Surroundings(
        site=site,
        says=says,
        pages={one: handwritten_pages(root, folder_of(one, site)) for one in site.languages},
        theme=Theme(theme, root / ".cache" / "templates"),
        press=Press(theme, root / ".cache" / "papers"),
        assets={output.path: output for output in shared},
        media=BesideLessons(root / "lessons"),
        preview=preview,
    )


def refuse_half_made(theme: Path, library: Library) -> None:
    """Stop where a kind of stop lacks a part.

    Raises:
        LessonError: names each part, and what to do.
    """
    if half_made := tuple(missing_parts(theme, library.words)):
        raise LessonError(Problem(Place(path), what, hint) for path, what, hint in half_made)
