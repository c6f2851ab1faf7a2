"""How many wrong numbers and claims are asked about, and how many right ones: over every set in ``tests/said/``.

A phrase is tried with its number and with another one, a sentence once. Each that is missed, and
each right one that is asked about, is named.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from tests.said.asked import can_be_shown, of_phrase, of_sentence, other_than
from tests.said.sets import LANGUAGES, NOT_YET, PHRASES, SENTENCES, about, phrases, sentences


@dataclass(frozen=True, slots=True)
class Tried:
    """One sentence, with whether it is wrong and whether it was asked about."""

    text: str
    wrong: bool
    asked: bool


def rows(case: Case) -> Iterator[Row]:
    """Recall and precision of each set in each language; the first alone where it is to be small."""
    sets = [*((name, _phrases) for name in PHRASES), *((name, _sentences) for name in SENTENCES)]
    for name, tried in sets[:1] if case.small else sets:
        for language in LANGUAGES:
            yield from _rows(f"{name}.{language}", tuple(tried(name, language)))


def _rows(of: str, tried: tuple[Tried, ...]) -> Iterator[Row]:
    found = sum(one.wrong and one.asked for one in tried)
    missed = [one.text for one in tried if one.wrong and not one.asked]
    right = [one.text for one in tried if one.asked and not one.wrong]
    if not found:
        raise NothingMeasuredError(f"no wrong sentence of {of} was asked about")
    yield told(f"sentences, {of}", len(tried), "sentences")
    yield told(f"wrong ones asked about, {of}", found, "sentences")
    yield from (told(f"missed: {text}", 1, "sentence") for text in missed)
    yield from (told(f"right, and asked about: {text}", 1, "sentence") for text in right)
    yield row("recall", 100 * found / (found + len(missed)), of)
    yield row("precision", 100 * found / (found + len(right)), of)


def _phrases(name: str, language: str) -> Iterator[Tried]:
    for phrase in filter(can_be_shown, phrases(name, language)):
        other = other_than(phrase)
        text = f"{phrase.sentence} ({phrase.value})"
        yield Tried(text, wrong=False, asked=bool(of_phrase(phrase, phrase.value)))
        yield Tried(text, wrong=True, asked=bool(of_phrase(phrase, other)))


def _sentences(name: str, language: str) -> Iterator[Tried]:
    comparison = about(name, language)
    for one in (*sentences(name, language), *sentences(name, language, NOT_YET)):
        asked = bool(of_sentence(comparison, one.text))
        yield Tried(one.text, wrong=one.truth == "F", asked=asked)
