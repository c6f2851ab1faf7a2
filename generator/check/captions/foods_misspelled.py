"""Foods that captions nearly spell: ``oat meel``, ``carot``."""

from __future__ import annotations

import re
from collections.abc import Iterator
from difflib import SequenceMatcher
from itertools import pairwise

from generator.check.rule import rule_of_words
from generator.compute.holding import Holding
from generator.compute.result import LessonResult
from generator.model.captions import CaptionFile, Cue, clock_ms
from generator.model.texts import lesson_texts
from generator.problems import Place, Problem, Weight

_WORD = re.compile(r"[^\W\d_]+")
_NEAR = 0.8
"""Share of letters two words have in common, in order (``difflib``). Ours, no source."""
_LONG = 7
"""From so many letters a word with one other letter is a slip; ``better`` is no slip of ``butter``."""


@rule_of_words
def foods_misspelled(result: LessonResult) -> Iterator[Problem]:
    """Words, and two words in a row, that come near a word of a food's name.

    A word that the lesson itself has anywhere is spelled as it is meant. A hearing machine writes
    such captions: it knows the sound and not the food.
    """
    file = result.lesson.captions.get(result.lesson.language)
    foods = sorted({word for held in result.holdings for word in _words(_name(held, result))})
    if file is None or not foods:
        return
    texts = {word for one in lesson_texts(result.lesson.file) for word in _words(one.text)}
    yield from _near(file, [food for food in foods if len(food) > 3], texts | set(foods))


def _near(file: CaptionFile, foods: list[str], known: set[str]) -> Iterator[Problem]:
    for cue in file.cues:
        for number, line in enumerate(cue.lines):
            tokens = list(_WORD.finditer(line))
            tried: list[tuple[str, int, str]] = [(t[0], t.start(), t[0]) for t in tokens]
            tried += [
                (line[a.start() : b.end()], a.start(), a[0] + b[0])
                for a, b in pairwise(tokens)
                if len(a[0]) > 2 and len(b[0]) > 2 and line[a.end() : b.start()] in {" ", "-"}
            ]
            for written, column, word in tried:
                small = word.lower()
                if _plain(written, known):
                    continue
                if food := next((food for food in foods if _slip(small, food)), None):
                    yield _problem(cue, number, column, written, food)


def _problem(cue: Cue, line: int, column: int, written: str, food: str) -> Problem:
    place = Place(cue.place.path, cue.place.line + 1 + line, column + 1)
    what = f"at {clock_ms(cue.start_ms)}, “{written}” is nearly a food of this lesson"
    return Problem(place, what, f"did you mean `{food}`?", Weight.QUESTION)


def _plain(written: str, known: set[str]) -> bool:
    """Whether a word, or each of two, is the lesson's own."""
    return all(word in known for word in _words(written))


def _slip(word: str, food: str) -> bool:
    """Whether a word is a food with one or two letters gone, added, changed or swapped."""
    if word == food:
        return True  # two words that are one
    if word[0] != food[0] or abs(len(word) - len(food)) > 2 or _inflected(word, food):
        return False
    if len(word) == len(food) < _LONG and sorted(word) != sorted(food):
        return False
    matcher = SequenceMatcher(None, word, food, autojunk=False)
    return matcher.real_quick_ratio() >= _NEAR and matcher.ratio() >= _NEAR


def _inflected(word: str, food: str) -> bool:
    """One word with and without an ending is spelled right both times."""
    short, long = sorted((word, food), key=len)
    return long.startswith(short) and long[len(short) :] in {"s", "es", "ed", "d", "y", "er", "ing"}


def _name(held: Holding, result: LessonResult) -> str:
    """Nothing where the captions' language has no name to spell."""
    name = held.name(result.lesson.language)
    return "" if name.foreign else name.words


def _words(text: str) -> list[str]:
    return [word.lower() for word in _WORD.findall(text)]
