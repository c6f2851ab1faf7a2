"""What a lesson says in one language, as the record of publications and ``changes`` compare it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from pydantic import TypeAdapter

from generator.compute.recorded import changed_figures
from generator.compute.result import LessonResult
from generator.model.moment import clock
from generator.model.move import Move
from generator.model.published import LessonState
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts
from generator.present.output import Output
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pictures.figures.of_moves import moves_of
from generator.present.published_lines import mark_of
from generator.present.recording.showing_name import showing_name
from generator.present.state_numbers import published_numbers
from generator.present.stops.in_lesson import stop_names
from generator.present.words.move_text import move_text
from generator.present.words.prose import plain
from generator.present.words.say import Say

STATE_FILE = "state.json"
"""Its name in the lesson's pack, below ``.kept/``."""
_KEPT = ".kept/"


@dataclass(frozen=True, slots=True)
class ToldText:
    """One text of a lesson, by whom it is met."""

    text: str
    whom: For
    stop: str = ""
    """Id of the stop it stands at; empty for the whole lesson."""


@dataclass(frozen=True, slots=True)
class FilmSays:
    """A number that the film says and the lesson has otherwise."""

    at: str
    """When the film says it: ``1:10``."""
    filmed: Decimal
    """As the film has it."""
    now: Decimal | None
    """As the lesson has it; nothing where it has no such number any more."""
    what: str
    """What it is: ``the gap between Apple and Banana``; empty where the lesson has it no more."""


@dataclass(frozen=True, slots=True)
class KeptState:
    """A lesson's state with its texts one by one, of which the record keeps a mark alone."""

    state: LessonState
    texts: Mapping[str, ToldText]
    """By where each stands: ``lunch/prompt``, ``title``, ``moves/march/name``."""
    film: tuple[FilmSays, ...] = ()
    """In the order of the film."""


def kept_state(told: PageInLesson, made: Iterable[str]) -> KeptState:
    """What a lesson says.

    Args:
        told: the lesson in its language, as its pages are made from it.
        made: paths of its files on the site.
    """
    result, say = told.result, told.surround.say
    texts = _texts(result, say)
    state = LessonState(
        at="",
        language=result.lesson.language,
        title=str(plain(result.lesson.file.title)),
        numbers=published_numbers(result, say),
        stamps=told.stamps,
        stops={name: str(called) for name, called in stop_names(result, say).items()},
        formerly={
            name: result.lesson.stop_id(at)
            for at, stop in enumerate(result.lesson.file.stops)
            for name in stop.formerly
        },
        times=_times(result),
        pages=tuple(_names(made, f"{told.surround.folder}{result.lesson.id}/")),
        texts=mark_of({path: one.text for path, one in texts.items()}),
    )
    return KeptState(state, texts, tuple(_film(result, say)))


def state_path(folder: str, lesson: str) -> str:
    """Where it lies in the lesson's pack.

    Args:
        folder: of the language on the site: ``es/``, or nothing.
        lesson: its id.
    """
    return f"{_KEPT}{folder}{lesson}/{STATE_FILE}"


def state_output(told: PageInLesson, made: Iterable[str]) -> Output:
    """The state as it is kept beside the lesson's files; arguments as of ``kept_state``."""
    path = state_path(told.surround.folder, told.result.lesson.id)
    return Output(path, _adapter().dump_json(kept_state(told, made)))


def state_from_json(told: bytes) -> KeptState:
    """Back again.

    Raises:
        ValueError: this is no state of a lesson.
    """
    return _adapter().validate_json(told)


def _names(made: Iterable[str], folder: str) -> list[str]:
    """The files of a lesson by their names below its address; what others frame has another."""
    return [path.removeprefix(folder) for path in made if path.startswith(folder)]


def _times(result: LessonResult) -> dict[str, str]:
    """The moments of each stop that has any."""
    lesson = result.lesson
    return {
        lesson.stop_id(at): "-".join(map(_clock, stop.times.values()))
        for at, stop in enumerate(lesson.file.stops)
        if stop.times
    }


def _clock(moment: Decimal) -> str:
    """With parts of a second where it has any."""
    part = moment % 1
    return clock(moment) + (f"{part.normalize():f}"[1:] if part else "")


def _film(result: LessonResult, say: Say) -> Iterator[FilmSays]:
    for one in changed_figures(result):
        now = one.now
        yield FilmSays(
            at=clock(one.filmed.start),
            filmed=one.filmed.value,
            now=now.figure.value if now else None,
            what=str(showing_name(now, result, say)) if now else "",
        )


def _texts(result: LessonResult, say: Say) -> dict[str, ToldText]:
    """Every text of the lesson, and of the moves that it does."""
    found = {
        _place(one, result): ToldText(str(one.text), one.mark.whom, _stop(one, result))
        for one in lesson_texts(result.lesson.file)
        if one.text
    }
    moves = moves_of([result]).items()
    return found | {path: one for name, move in moves for path, one in _of_move(name, move, say)}


def _of_move(name: str, move: Move, say: Say) -> Iterator[tuple[str, ToldText]]:
    """What a family reads about a move."""
    words = move_text(move, say)
    told = {
        "name": words.name,
        "steps": "\n".join(words.steps),
        "count_is": words.count_is,
        "seated": words.seated,
        "care": words.care,
    }
    for key, text in told.items():
        yield f"moves/{name}/{key}", ToldText(str(text), For.LEARNER_READS)


def _place(one: LessonText, result: LessonResult) -> str:
    rest = one.path[3:] if one.stop is not None else one.path
    return "/".join(filter(None, (_stop(one, result), *map(str, rest))))


def _stop(one: LessonText, result: LessonResult) -> str:
    return "" if one.stop is None else result.lesson.stop_id(one.stop)


@cache
def _adapter() -> TypeAdapter[KeptState]:
    return TypeAdapter(KeptState)
