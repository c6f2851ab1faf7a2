"""What changed in a site as sections with lines: what text and Markdown are both made of."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.model.text_marks import For
from generator.present.state import FilmSays
from generator.present.updates.differences import ChangeKind
from generator.present.updates.said import SHEET_TITLES, is_for_people, said
from generator.present.words.say import Say
from generator.publish.changes import Compared
from generator.publish.compare import Files, LessonChanges, SiteChanges, TextChange
from generator.publish.whom import FilmTold, LinkTold, SheetTold, Told, to_be_told

_WHOM = {
    For.LEARNER_READS: "learner reads",
    For.LEARNER_HEARS: "script",
    For.TEACHER: "teacher reads",
    For.NOBODY: "a code",
}
_LINES, _LESSONS, _NAMES, _SIGNS = 8, 20, 6, 60
"""Lines of a lesson, lessons, names of files and signs of a text that are shown without being asked for all."""


@dataclass(frozen=True, slots=True)
class Section:
    """Lines below a heading."""

    heading: str
    lines: tuple[str, ...]


def headline(compared: Compared) -> str:
    """In one sentence how much differs: ``Against HEAD~1: 2 lessons and 1 other page or file differ.``."""
    changes = compared.changes
    if changes.nothing:
        return f"Nothing differs from {compared.against}."
    lessons = len({one.lesson for one in changes.lessons})
    pages, look = len(changes.pages.every), len(changes.look.every)
    parts = (
        _counted(lessons, "lesson", "lessons"),
        _counted(pages, "other page or file", "other pages or files"),
        _counted(look, "file of the look", "files of the look"),
    )
    verb = "differs" if lessons + pages + look == 1 else "differ"
    return f"Against {compared.against}: {_listed([one for one in parts if one])} {verb}."


def sections(compared: Compared, say: Say, *, everything: bool) -> Iterator[Section]:
    """All that there is to tell, who must be told first.

    Args:
        compared: what changed.
        say: English words.
        everything: whether nothing is left out for its length.
    """
    changes = compared.changes
    yield from _told(to_be_told(changes), say, everything=everything)
    shown = changes.lessons if everything else changes.lessons[:_LESSONS]
    for one in shown:
        lines = list(lesson_lines(one, say, everything=everything))
        yield Section(lesson_heading(one), tuple(_short(lines, _LINES, everything=everything)))
    if rest := len(changes.lessons) - len(shown):
        yield Section(f"And {rest} more: --all shows them", ())
    yield from _site(changes, everything=everything)


def lesson_heading(one: LessonChanges) -> str:
    """``soup-night (en): Soup night``."""
    return f"{one.lesson} ({one.language}): {one.title}"


def lesson_lines(one: LessonChanges, say: Say, *, everything: bool) -> Iterator[str]:
    """Everything that differs in a lesson, what matters most first."""
    if one.renamed:
        yield f"Its folder was {one.renamed} before; old addresses lead on."
    for each in one.differences:
        if everything or is_for_people(each):
            yield said(each, one.headings.get(each.stop, ""), say)
    yield from (_filmed(each, say) for each in one.film)
    for text in one.texts:
        yield _text(text, one, everything=everything)
    if one.files.every and (everything or not (one.differences or one.texts)):
        yield f"{'Files' if one.differences or one.texts else 'It says what it said. Files'}: {_files(one.files, everything=everything)}."


def _site(changes: SiteChanges, *, everything: bool) -> Iterator[Section]:
    if changes.pages.every:
        line = _files(changes.pages, everything=everything)
        yield Section("Pages and files that are no lesson's", (f"{line}.",))
    if changes.look.every:
        line = _files(changes.look, everything=everything)
        says = f"{line}. Every page that uses them may look or act otherwise."
        yield Section("The look: styles, scripts and pictures that pages share", (says,))


def _told(told: Told, say: Say, *, everything: bool) -> Iterator[Section]:
    lines = [*_families(told.families, say), *_teachers(told.teachers), *_film(told.film, say)]
    if lines:
        yield Section("To be told", tuple(_short(lines, _LESSONS, everything=everything)))


def _families(sheets: tuple[SheetTold, ...], say: Say) -> Iterator[str]:
    """A sentence for each lesson and language; sheets of the same stamps are named together."""
    by_lesson: dict[str, dict[tuple[str, str], list[str]]] = {}
    for one in sheets:
        name = f"{one.lesson.lesson} ({one.lesson.language})"
        stamps = by_lesson.setdefault(name, {})
        stamps.setdefault((one.was, one.now), []).append(say(SHEET_TITLES[one.sheet]))
    for name, stamps in by_lesson.items():
        told = [
            f"{_listed(titles)} with the stamp {was}, {f'now {now}' if now else 'which are no longer there'}"
            for (was, now), titles in stamps.items()
        ]
        yield f"Families with paper of {name}: {'; '.join(told)}."


def _teachers(links: tuple[LinkTold, ...]) -> Iterator[str]:
    for one in links:
        why = [_lost(each.kind, each.was or each.name) for each in one.lost]
        if one.lesson.renamed:
            why.append(f"the lesson has another address (it was {one.lesson.renamed})")
        if one.answers:
            why.append(
                f"{one.answers} answer{'s are' if one.answers > 1 else ' is'} other than before"
            )
        yield f"Teachers with links to {one.lesson.lesson} ({one.lesson.language}): {'; '.join(why)}."


def _film(films: tuple[FilmTold, ...], say: Say) -> Iterator[str]:
    for one in films:
        says = "; ".join(_filmed(each, say).removesuffix(".") for each in one.says)
        yield f"The film of {one.lesson.lesson} ({one.lesson.language}): {says}."


def _lost(kind: ChangeKind, name: str) -> str:
    match kind:
        case ChangeKind.LESSON_GONE:
            return "the lesson is gone"
        case ChangeKind.STOP_GONE:
            return f"the stop “{name}” is gone"
        case ChangeKind.STOP_ADDRESS:
            return f"the stop {name} has another address"
        case _:
            return f"{name} is gone"


def _filmed(one: FilmSays, say: Say) -> str:
    filmed = f"At {one.at} the film says {say.number(one.filmed)}"
    if one.now is None:
        return f"{filmed}, of what the lesson has no more."
    return f"{filmed}; {one.what} is {say.number(one.now)} now."


def _text(one: TextChange, lesson: LessonChanges, *, everything: bool) -> str:
    heading = lesson.headings.get(one.stop, one.path)
    place = _place(one.path.removeprefix(f"{one.stop}/"))
    where = f"“{heading}”, {place}" if one.stop else place
    was, now = (text if everything else _cut(text) for text in (one.was, one.now))
    if not one.was:
        return f"{where} ({_WHOM[one.whom]}) is new: “{now}”"
    if not one.now:
        return f"{where} ({_WHOM[one.whom]}) is gone: “{was}”"
    return f"{where} ({_WHOM[one.whom]}): “{now}”, before “{was}”"


def _place(path: str) -> str:
    """``rows 1, foods 2, amount``: counted from 1, as people do."""
    parts = (f" {int(part) + 1}" if part.isdecimal() else f", {part}" for part in path.split("/"))
    return "".join(parts).removeprefix(",").strip()


def _cut(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _SIGNS else f"{line[: _SIGNS - 1]}…"


def _files(files: Files, *, everything: bool) -> str:
    """``index.html and notes.html differ; cards.html is gone; 3 are new: …``."""
    kinds = ((files.changed, "differ"), (files.gone, "are gone"), (files.new, "are new"))
    parts = []
    for names, what in kinds:
        if names:
            shown = names if everything else names[:_NAMES]
            rest = f" and {len(names) - len(shown)} more" if len(names) > len(shown) else ""
            verb = (
                what if len(names) > 1 else what.replace("differ", "differs").replace("are", "is")
            )
            parts.append(f"{', '.join(shown)}{rest} {verb}")
    return "; ".join(parts)


def _short(lines: list[str], most: int, *, everything: bool) -> list[str]:
    """No more lines than are read; how many are left out is said."""
    if everything or len(lines) <= most:
        return lines
    return [*lines[: most - 1], f"and {len(lines) - most + 1} more: --all shows them"]


def _counted(number: int, one: str, several: str) -> str:
    return f"{number} {one if number == 1 else several}" if number else ""


def _listed(parts: list[str]) -> str:
    return " and ".join(filter(None, (", ".join(parts[:-1]), parts[-1])))
