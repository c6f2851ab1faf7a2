"""All that two states of a site are compared by: what its lessons say, and a checksum of every file."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from generator.engine.pack import DamagedPackError, Fact, checksum
from generator.engine.store import Store, keeps_of
from generator.model.published import Published
from generator.model.words import Words
from generator.present.policy import FRAMED
from generator.present.state import KeptState
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.lessons import KeptLesson
from generator.steps.run import Run, begin
from generator.steps.site import Site
from generator.steps.states import states_of

_SPARE = 8
"""States of what is no lesson's that are kept, besides the one looked at last."""
WriteByHand = Callable[[Path, Site], ByHand]
"""Makes the hand-written pages of the site in a folder."""


@dataclass(frozen=True, slots=True)
class HeldLesson:
    """What a lesson says, and what its files hold."""

    states: Mapping[str, KeptState]
    """By language."""
    sums: Mapping[str, Mapping[str, str]] | None = None
    """By language and by name below its address: a checksum of each file; nothing where nobody knows."""
    formerly: tuple[str, ...] = ()
    """Ids that it had before."""


@dataclass(frozen=True, slots=True)
class SiteState:
    """A site at one time."""

    lessons: Mapping[str, HeldLesson]
    """By id."""
    pages: Mapping[str, str] | None = field(default=None, repr=False)
    """By path: a checksum of every file that is no lesson's; nothing where nobody knows."""
    words: Words = field(default_factory=lambda: Words("en", {}), repr=False)
    """English ones, which commands speak."""


@dataclass(frozen=True, slots=True)
class MadeSite:
    """A site whose lessons and pages by hand are made, before anybody looks what they say."""

    run: Run
    site: Site
    by_hand: ByHand


def made_site(root: Path, write_by_hand: WriteByHand, *, keep_out: int | None = None) -> MadeSite:
    """A site as its files are now; whatever was made before is found, and the rest is made and kept.

    Args:
        root: folder of the site.
        write_by_hand: called only where something written by hand has changed.
        keep_out: the lock, which no other process may hold open.

    Raises:
        LessonError: with every problem, when at least one must be put right.
    """
    run = begin(root, root / "site", keep_out=keep_out)
    try:
        site = run.site()
        by_hand = run.kept_by_hand(site) or run.keep_by_hand(site, write_by_hand(root, site))
    finally:
        run.remember_made()
    return MadeSite(run, site, by_hand)


def site_state(root: Path, write_by_hand: WriteByHand, *, keep_out: int | None = None) -> SiteState:
    """The state of a site as its files are now; arguments and errors as of ``made_site``."""
    return state_of(made_site(root, write_by_hand, keep_out=keep_out))


def states_of_both(old: MadeSite, new: MadeSite) -> tuple[SiteState, SiteState]:
    """Two states to be compared; lessons made of the same are in neither."""
    keys = new.run.keys
    alike = frozenset(name for name, key in old.run.keys.items() if keys.get(name) == key)
    return state_of(old, alike), state_of(new, alike)


def state_of(made: MadeSite, but: frozenset[str] = frozenset()) -> SiteState:
    """The state of a site.

    Args:
        made: the site.
        but: ids of lessons that are not asked about.
    """
    run, site = made.run, made.site
    lessons = {
        one.id: _held(run, one, site.map.folders) for one in site.lessons if one.id not in but
    }
    return SiteState(lessons, _others(made), site.library.words["en"])


def _others(made: MadeSite) -> dict[str, str]:
    """A checksum of every file that is no lesson's, kept while they are made of the same."""
    store = Store(keeps_of(made.run.root) / "others")
    key = made.run.others_key(made.site)
    if (kept := store.find(key)) is not None:
        return {path: str(sum_) for path, sum_ in kept.facts.items()}
    sums = {one.path: checksum(one.content) for one in other_files(made.site, made.by_hand)}
    store.keep(key, dict[str, Fact](sums), ())
    store.sweep([key], spare=_SPARE)
    return sums


def recorded_state(published: Published) -> SiteState:
    """A site as it was published last, as far as the record knows."""
    found: dict[str, HeldLesson] = {}
    for lesson, states in published.lessons.items():
        last = {one.language: one for one in states}
        there = {name: KeptState(one, {}) for name, one in last.items() if not one.gone}
        if there:
            found[lesson] = HeldLesson(there)
    return SiteState(found)


def _held(run: Run, lesson: KeptLesson, folders: Mapping[str, str]) -> HeldLesson:
    """What is kept of a lesson; one whose pack is damaged is made anew."""
    try:
        states = states_of(lesson)
    except (DamagedPackError, ValueError):
        (lesson,) = run.make_again([lesson.id])
        states = states_of(lesson)
    formerly = tuple(name for name, _ in lesson.facts.listed.formerly)
    sums: dict[str, dict[str, str]] = {language: {} for language in states}
    for path, sum_ in _sums(run, lesson):
        language, name = _of_language(path, lesson.id, folders)
        sums.setdefault(language, {})[name] = sum_
    return HeldLesson(states, sums, formerly)


def _sums(run: Run, lesson: KeptLesson) -> Iterator[tuple[str, str]]:
    """Of every file that goes out: those made, and those beside the lesson as they lie there."""
    made = {entry.path: entry.sum for entry in lesson.pack.published}
    yield from made.items()
    beside = Path(os.path.abspath(run.root), "lessons", lesson.id)  # noqa: PTH100  # as the marks have it
    for name in lesson.facts.media:
        if f"{lesson.id}/{name}" not in made:
            yield f"{lesson.id}/{name}", run.contents[str(beside / name)]


def _of_language(path: str, lesson: str, folders: Mapping[str, str]) -> tuple[str, str]:
    """Which language a file of a lesson belongs to, and its name below the lesson's address."""
    whole = path.removeprefix(FRAMED)
    for language, folder in folders.items():
        above = f"{folder}{lesson}/"
        if whole.startswith(above):
            return language, whole.removeprefix(above)
    return next(iter(folders)), whole
