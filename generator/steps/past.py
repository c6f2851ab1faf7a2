"""What was published before, as a build takes it: a record that cannot be read stops no preview."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import suppress
from pathlib import Path

from generator.engine.pack import KEPT
from generator.model.published import NOTHING_PUBLISHED, LessonState, Published
from generator.present.output import Output
from generator.present.state import STATE_FILE, KeptState, state_from_json
from generator.problems import LessonError, Problem
from generator.read.published import read_lesson_record, read_published


def published_of(root: Path) -> tuple[Published, tuple[Problem, ...]]:
    """The record of a site, and what is wrong with it; then nothing of it is known."""
    try:
        return read_published(root), ()
    except LessonError as error:
        return NOTHING_PUBLISHED, error.problems


def past_of(root: Path, lesson: str, formerly: Iterable[str] = ()) -> tuple[LessonState, ...]:
    """What was published of a lesson, the oldest first; nothing where its record cannot be read, which the run tells.

    Args:
        root: folder of the site.
        lesson: its name.
        formerly: names it had before; that nothing went out under one any more is no end of the lesson.
    """
    before = (one for name in formerly for one in _record(root, name) if not one.gone)
    return tuple(sorted((*before, *_record(root, lesson)), key=lambda one: one.at))


def _record(root: Path, lesson: str) -> tuple[LessonState, ...]:
    with suppress(LessonError):
        return read_lesson_record(root, lesson)
    return ()


def states_in(outputs: Iterable[Output]) -> Iterator[KeptState]:
    """What a lesson says in each language, among its files as they were made."""
    for one in outputs:
        if one.path.startswith(KEPT) and one.path.endswith(f"/{STATE_FILE}"):
            yield state_from_json(one.content)


def stamps_in(outputs: Iterable[Output]) -> dict[str, dict[str, str]]:
    """By language, the stamps of a lesson's sheets."""
    return {one.state.language: dict(one.state.stamps) for one in states_in(outputs)}
