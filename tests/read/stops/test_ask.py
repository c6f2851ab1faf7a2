"""A question that is asked again: what is wrong with it is told at its place, with a way out."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.model.lesson import Lesson
from tests.project import problems, read

LESSON = """\
title: Two breakfasts
summary: Find the gap.
grades: 3-5
minutes: 10
stops:
  - ask:
      id: guess
      prompt: Which side holds more?
      which: {of: breakfast, holds: most, among: sides}
      reveal: Look at both totals.
  - compare:
      id: breakfast
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]
  - ask:
      id: guess-again
      asks_again: guess
"""
AGAIN = "      asks_again: guess\n"


def told(folder: Path, old: str, new: str) -> list[str]:
    """What is said of the lesson with one text changed: line, column, sentence and way out."""
    assert old in LESSON
    found = problems(folder, LESSON.replace(old, new))
    return [f"{one.place.line}:{one.place.column}: {one.what}: {one.hint}" for one in found]


def test_it_is_written_once_and_stands_in_both_places(tmp_path: Path) -> None:
    lesson = read(tmp_path, LESSON)
    assert isinstance(lesson, Lesson)
    assert dict(lesson.asked_again) == {"guess": "guess-again"}


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        (
            AGAIN,
            "      asks_again: gess\n",
            "19:19: no ask stop has the id `gess`: did you mean `guess`?",
        ),
        (
            AGAIN,
            "      asks_again: breakfast\n",
            "19:19: no ask stop has the id `breakfast`: it can be `guess`, `guess-again`",
        ),
        (
            AGAIN,
            "      asks_again: guess-again\n",
            "19:19: `guess-again` would ask itself again: name the `ask` stop that asks first",
        ),
        (
            "      prompt: Which side holds more?\n      which: {of: breakfast, holds: most, among: sides}\n      reveal: Look at both totals.\n",
            "      asks_again: guess-again\n",
            "8:19: `guess-again` stands below this stop: move it below: a question is asked first, and again when something was learned",
        ),
        (
            AGAIN,
            AGAIN + "  - ask: {id: third, asks_again: guess-again}\n",
            "20:34: `guess-again` itself asks the question of `guess` again: ask it twice, not more",
        ),
        (
            AGAIN,
            AGAIN + "  - ask: {id: third, asks_again: guess}\n",
            "20:34: `guess` is asked again already, on line 17: take one of them out",
        ),
        (
            "      which: {of: breakfast, holds: most, among: sides}\n",
            "",
            "18:19: the question of `guess` is open, so nobody can tell what was learned: give it `choices:`, `answer:` or `which:`",
        ),
        (
            AGAIN,
            AGAIN + "      prompt: And now?\n",
            "20:15: this stop asks the question of `guess` again, and brings `prompt:` of its own: take `prompt:` out: it is written once, there",
        ),
        (
            AGAIN,
            AGAIN + "      answer: total.gap\n",
            "20:15: this stop asks the question of `guess` again, and brings `answer:` of its own: take `answer:` out: it is written once, there",
        ),
        (
            AGAIN,
            "      reveal: Here it is.\n",
            "18:7: `ask` has no `prompt:`: add it, or `asks_again:` with the id of an ask stop above",
        ),
        (
            AGAIN,
            "      asks_again: [guess]\n",
            "19:19: `asks_again` must be words, not a list: put it in quotes",
        ),
    ],
)
def test_what_cannot_be_asked_again(tmp_path: Path, old: str, new: str, said: str) -> None:
    assert said in told(tmp_path, old, new)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (AGAIN, AGAIN + "      prompt: And now?\n"),
        (AGAIN, "      asks_again: gess\n"),
        (AGAIN, "      reveal: Here it is.\n"),
    ],
)
def test_one_mistake_is_one_sentence(tmp_path: Path, old: str, new: str) -> None:
    assert len(told(tmp_path, old, new)) == 1
