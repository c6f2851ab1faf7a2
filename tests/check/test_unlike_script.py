"""Errors planted in captions are told, each at its line: what a hearing machine or a slip leaves behind."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from generator.check import check_lesson
from generator.compute.result import LessonResult
from generator.model.captions import CaptionFile
from generator.problems import Weight
from generator.read.vtt import read_vtt
from generator.steps.work import work_lesson
from tests.project import ROOT, library

CAPTIONS = (ROOT / "lessons/soup-night/soup-night.en.vtt").read_text("utf-8")


@cache
def lesson() -> LessonResult:
    """A lesson of the demo that has captions and a script."""
    return work_lesson(ROOT, "lessons/soup-night/lesson.yaml", library()).results["en"]


def told(text: str) -> list[tuple[str, str]]:
    """Line of each question about captions, and what is asked."""
    captions = read_vtt("lessons/soup-night/soup-night.en.vtt", "en", text)
    assert isinstance(captions, CaptionFile), list(map(str, captions))
    changed = replace(lesson().lesson, captions={"en": captions})
    found = list(check_lesson(replace(lesson(), lesson=changed)))
    assert all(one.weight is Weight.QUESTION for one in found)
    assert {one.place.path for one in found} <= {captions.path}
    return [(text.splitlines()[one.place.line - 1], one.what) for one in found]


def cue_of(words: str) -> str:
    """The whole block of the cue that holds some words."""
    return next(block for block in CAPTIONS.split("\n\n") if words in block) + "\n\n"


PLANTED = {
    "grams for milligrams": (
        ("holds 460 milligrams", "holds 460 grams"),
        ("door holds 460 grams.", "“460 grams” is said of “Tomato soup”, which holds 460 mg"),
    ),
    "a food that is not in the lesson": (
        ("The tomato soup by the\ndoor", "The carrot soup by the\ndoor"),
        ("door holds 460 milligrams.", "“460” is said of “carrot”, which is no food"),
    ),
    "the cue of a food gone": (
        (cue_of("broth holds 650"), ""),
        ("No pencil yet.", "the script names “Vegetable broth” with its number at this stop"),
    ),
    "a wrong claim": (
        ("Mind the zeros.", "Chicken broth holds\ntwice vegetable broth."),
        ("Chicken broth holds", "“Chicken broth holds\ntwice”"),
    ),
    "a claim that leans the wrong way": (
        ("Mind the zeros.", "The chicken broth holds less\nthan the vegetable broth."),
        ("The chicken broth holds less", "“The chicken broth holds less"),
    ),
    "payment": (
        ("Mind the zeros.", "Burn it off."),
        ("Burn it off.", "“Burn it off” makes food a matter of guilt"),
    ),
    "guilt": (
        ("Mind the zeros.", "You need it, no guilt."),
        ("You need it, no guilt.", "“guilt” makes food a matter of guilt"),
    ),
    "another row called": (
        ("Row two is", "Row three is"),
        ("Time to stand up.", "the script calls row 2 at this stop, and the captions do not"),
    ),
    "a row's cue gone": (
        (cue_of("Row two is"), ""),
        ("Time to stand up.", "the script calls row 2 at this stop, and the captions do not"),
    ),
    "zeros for a word": (
        ("Mind the zeros.", "Mind 3,400 zeros."),
        ("Mind 3,400 zeros.", "“3,400” is not said in the script of this stop"),
    ),
    "the call to pause gone": (
        ("Pause here.", "Find each gap."),
        ("Nico is working on it too.", "the script says to pause at this stop"),
    ),
    "a number misheard": (
        ("Our numbers are for one cup.", "Our numbers are for won cup."),
        ("Our numbers are for won cup.", "“won” stands where the script says “one”"),
    ),
    "another number misheard": (
        ("three slow steps", "tree slow steps"),
        ("tree slow steps in place.", "“tree” stands where the script says “three”"),
    ),
}
"""By what is planted: words of the captions and what stands in their place; the line told, and what."""


@pytest.mark.parametrize(("change", "expected"), PLANTED.values(), ids=PLANTED)
def test_a_planted_error_is_told_at_its_line(
    change: tuple[str, str], expected: tuple[str, str]
) -> None:
    assert CAPTIONS.count(change[0]) == 1
    found = told(CAPTIONS.replace(*change))
    line, what = expected
    assert [one for one in found if one[0] == line and what.replace("\n", " ") in one[1]], found


RIGHT = {
    "in words": ("holds 460 milligrams", "holds four hundred sixty milligrams"),
    "in another unit": ("holds 460 milligrams", "holds 0.46 grams"),
    "in digits": ("Our numbers are for one cup.", "Our numbers are for 1 cup."),
    "in other words": ("Our numbers are for one cup.", "We count a single cup."),
    "said twice": ("Mind the zeros.", "Mind the zeros. Do not lose them."),
    "a claim that holds": ("Mind the zeros.", "The chicken broth holds more\nthan the other."),
    "another call": ("Pause here.", "Now pause."),
}


@pytest.mark.parametrize("change", RIGHT.values(), ids=RIGHT)
def test_the_same_said_otherwise_is_not_asked_about(change: tuple[str, str]) -> None:
    assert CAPTIONS.count(change[0]) == 1
    asked = [what for _, what in told(CAPTIONS.replace(*change)) if "letters" not in what]
    assert [what for what in asked if "words a minute" not in what] == []
