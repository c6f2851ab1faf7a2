"""What differs between two states of a site: by meaning, and by the bytes of every file."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from generator.model.published import LessonState
from generator.model.text_marks import For
from generator.present.state import FilmSays, KeptState, ToldText
from generator.present.updates.differences import ChangeKind, Difference, differences
from generator.publish.site_state import HeldLesson, SiteState

LOOK = "assets/"
"""Where the styles, scripts and pictures lie that all pages share."""


@dataclass(frozen=True, slots=True)
class Files:
    """Files by their names, as far as they differ."""

    changed: tuple[str, ...] = ()
    gone: tuple[str, ...] = ()
    new: tuple[str, ...] = ()

    @property
    def every(self) -> tuple[str, ...]:
        """All of them."""
        return self.changed + self.gone + self.new


@dataclass(frozen=True, slots=True)
class TextChange:
    """A text that is worded otherwise."""

    path: str
    """Where it stands: ``lunch/prompt``."""
    stop: str
    """Id of its stop; empty for the whole lesson."""
    whom: For
    """Who reads or hears it."""
    was: str
    """Empty where it is new."""
    now: str
    """Empty where it is gone."""


@dataclass(frozen=True, slots=True)
class LessonChanges:
    """All that differs in a lesson in one language."""

    lesson: str
    """Its id now; before, where it is gone."""
    language: str
    before: KeptState | None
    """What it said; nothing where it was not there."""
    after: KeptState | None
    """What it says; nothing where it is gone."""
    differences: tuple[Difference, ...]
    """By meaning, what matters most first."""
    texts: tuple[TextChange, ...] = ()
    """In the order of the lesson."""
    film: tuple[FilmSays, ...] = ()
    """Numbers that the film says otherwise, and did not before."""
    files: Files = Files()  # frozen
    """By their names below its address."""
    renamed: str = ""
    """Its id before, where it had another."""

    @property
    def title(self) -> str:
        """As it is called now, else as it was."""
        said = self.after or self.before
        return said.state.title if said else ""

    @property
    def headings(self) -> Mapping[str, str]:
        """Of every stop it has or had."""
        states = [one.state for one in (self.before, self.after) if one]
        return {stop: heading for state in states for stop, heading in state.stops.items()}


@dataclass(frozen=True, slots=True)
class SiteChanges:
    """All that differs between two states of a site."""

    lessons: tuple[LessonChanges, ...]
    """Those that differ, what matters most first."""
    pages: Files
    """Pages and files that are no lesson's, by their paths."""
    look: Files
    """Styles, scripts and pictures that pages share, likewise."""
    files_known: bool = True
    """Whether both states are known file by file; the record of publications keeps what lessons say alone."""

    @property
    def nothing(self) -> bool:
        """Whether nothing differs."""
        return not (self.lessons or self.pages.every or self.look.every)


def compare(old: SiteState, new: SiteState) -> SiteChanges:
    """What differs.

    Args:
        old: the site before.
        new: the site now.
    """
    found = [one for pair in _pairs(old, new) for one in _languages(*pair)]
    order = list(ChangeKind)
    found.sort(key=lambda one: (_weight(one, order), one.lesson, one.language))
    known = old.pages is not None and new.pages is not None
    pages = _files(old.pages, new.pages)
    return SiteChanges(tuple(found), _part(pages, look=False), _part(pages, look=True), known)


def _weight(one: LessonChanges, order: list[ChangeKind]) -> int:
    """By the first of its differences; one whose files alone differ comes last."""
    return order.index(one.differences[0].kind) if one.differences else len(order)


def _pairs(
    old: SiteState, new: SiteState
) -> Iterator[tuple[str, str, HeldLesson | None, HeldLesson | None]]:
    """Each lesson's id now and before, with both states; one that was renamed is one lesson."""
    left = {lesson: held for lesson, held in old.lessons.items() if lesson not in new.lessons}
    for lesson, held in new.lessons.items():
        if lesson in old.lessons:
            yield lesson, lesson, old.lessons[lesson], held
            continue
        name = next((name for name in held.formerly if name in left), None)
        yield lesson, name or lesson, left.pop(name) if name else None, held
    for lesson, was in left.items():
        yield lesson, lesson, was, None


def _languages(
    lesson: str, before: str, old: HeldLesson | None, new: HeldLesson | None
) -> Iterator[LessonChanges]:
    """What differs in each language."""
    was, now = (old.states if old else {}), (new.states if new else {})
    for language in dict.fromkeys((*now, *was)):
        first, second = was.get(language), now.get(language)
        known = not (old and old.sums is None) and not (new and new.sums is None)
        files = (
            _files(
                (old.sums or {}).get(language, {}) if old else {},
                (new.sums or {}).get(language, {}) if new else {},
            )
            if known
            else Files()
        )
        texts = tuple(_texts(first, second))
        found = differences(_state(first), _state(second))
        if texts:
            found = tuple(one for one in found if one.kind is not ChangeKind.TEXTS)
        film = _film(first, second)
        renamed = before if before != lesson else ""
        if found or texts or film or files.every or renamed:
            yield LessonChanges(lesson, language, first, second, found, texts, film, files, renamed)


def _state(held: KeptState | None) -> LessonState | None:
    return held.state if held else None


def _film(old: KeptState | None, new: KeptState | None) -> tuple[FilmSays, ...]:
    before = old.film if old else ()
    return tuple(one for one in new.film if one not in before) if new else ()


def _texts(old: KeptState | None, new: KeptState | None) -> Iterator[TextChange]:
    """Each text that differs; of a lesson that comes or goes, or whose texts nobody kept, none."""
    if old is None or new is None or not old.texts:
        return
    nothing = ToldText("", For.NOBODY)
    for path in dict.fromkeys((*new.texts, *old.texts)):
        was, now = old.texts.get(path, nothing), new.texts.get(path, nothing)
        if was.text != now.text:
            told = now if path in new.texts else was
            yield TextChange(path, told.stop, told.whom, was.text, now.text)


def _files(old: Mapping[str, str] | None, new: Mapping[str, str] | None) -> Files:
    """Which files differ; none where one side is not known."""
    if old is None or new is None:
        return Files()
    return Files(
        tuple(sorted(name for name in new if old.get(name, new[name]) != new[name])),
        tuple(sorted(old.keys() - new.keys())),
        tuple(sorted(new.keys() - old.keys())),
    )


def _part(files: Files, *, look: bool) -> Files:
    """Either the files that pages share, or all others."""
    kinds = (files.changed, files.gone, files.new)
    return Files(*(tuple(one for one in kind if one.startswith(LOOK) is look) for kind in kinds))
