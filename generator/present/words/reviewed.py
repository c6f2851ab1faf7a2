"""Who read a lesson and what has changed since, in sentences for the teaching notes and the sheet to read."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from datetime import date

from generator.compute.result import LessonResult
from generator.compute.reviewable import MOVES_AT
from generator.compute.reviewed import HeldReview, Standing, held_reviews
from generator.model.published import PublishedNumber
from generator.model.reviewed import OWN, Review
from generator.present.state_numbers import published_numbers
from generator.present.stops.in_lesson import stop_names
from generator.present.views.reviewed import ReviewedView
from generator.present.words.families import NUMBER
from generator.present.words.foreign import joined, missing
from generator.present.words.move_text import move_text
from generator.present.words.numbers_named import number_name, number_said
from generator.present.words.say import Say

_OF_MOVES = "moves."
"""How the name of a text begins that the library has of a move."""
_CARE = " care"
"""Stands where a stop's id would, for what is no stop's; no id has a space."""


def reviewed_views(result: LessonResult, say: Say) -> tuple[ReviewedView, ...]:
    """A reading each, the newest first; one that holds for nothing any more is not named."""
    held = [one for one in held_reviews(result) if one.standing is not Standing.FALLEN]
    newest = sorted(held, key=lambda one: one.review.on, reverse=True)
    return tuple(
        ReviewedView(read_by(one, result, say), changed(one, result, say)) for one in newest
    )


def read_by(held: HeldReview, result: LessonResult, say: Say) -> str:
    """When and by whom: ``Read on March 14, 2026 by: registered dietitian.``."""
    first = result.library.site.languages[0]
    role = _role(held.review, first, say.language)
    return say("reviewed_on", day=say.day(date.fromisoformat(held.review.on)), role=role)


def _role(review: Review, first: str, language: str) -> str:
    """The role in a language, or as it is there, marked as another language's."""
    own = {first if tag == OWN else tag: role for tag, role in review.by.items()}
    if language in own:
        return own[language]
    tag, role = next(iter(own.items()))
    return missing(role, tag)


def changed(held: HeldReview, result: LessonResult, say: Say) -> tuple[str, ...]:
    """A line for each stop where something is not as it was read, what is of the whole lesson first."""
    numbers, names = published_numbers(result, say), stop_names(result, say)
    parts: dict[str, list[str]] = {"": [], **{stop: [] for stop in names}, _CARE: []}
    for stop, said in _every(held, numbers, names, result, say):
        parts.setdefault(stop, []).append(said)
    titles = {"": say("reviewed_whole"), **names, _CARE: say("care")}
    return tuple(
        say("reviewed_at", heading=titles.get(stop, titles[""]), listed=joined("; ", said))
        for stop, said in parts.items()
        if said
    )


def _every(
    held: HeldReview,
    numbers: Mapping[str, PublishedNumber],
    names: Mapping[str, str],
    result: LessonResult,
    say: Say,
) -> Iterator[tuple[str, str]]:
    """Everything that changed, each with its stop."""
    for name in held.numbers:
        stop, number = _stop(name, names), numbers[name]
        there = number.of == names.get(stop)  # its heading stands before it anyway
        called = say(NUMBER.key(number.kind)) if there else number_name(number, "", say)
        yield stop, f"{called}: {number_said(number, say)}"
    moves = {one.move_id: one.move for one in result.moved}
    for text in held.texts:
        move = moves.get(text.name.removeprefix(_OF_MOVES))
        if move and not text.path:
            yield _CARE, say("reviewed_move", move=move_text(move, say).name)
    own = (text.name for text in held.texts if text.path)
    for stop, number_of in _counted(own, names):
        yield stop, say("reviewed_texts", n=number_of)
    for fact in held.facts:
        stop = fact.removeprefix(MOVES_AT)
        of_moves = stop != fact
        yield (stop, say("reviewed_moves")) if of_moves else (_CARE, say("reviewed_care"))
    for stop, number_of in _counted((*held.numbers_gone, *held.texts_gone), names):
        yield stop, say("reviewed_gone", n=number_of)


def _counted(names: Iterable[str], stops: Mapping[str, str]) -> Iterator[tuple[str, int]]:
    yield from Counter(_stop(name, stops) for name in names).items()


def _stop(name: str, stops: Mapping[str, str]) -> str:
    """The stop that a number or a text stands at, by its name; empty for the whole lesson."""
    stop = name.partition(".")[0]
    return stop if stop in stops else ""
