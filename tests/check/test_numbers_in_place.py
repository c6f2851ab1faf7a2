"""A number on a page is held against what it is said of: its food, row, side, gap, count and unit.

The values are USDA FoodData Central's, SR Legacy, rounded as in the demo: lemonade 25 g of sugars, water 0,
grape juice 36, carrot juice 9. So gaps 25 and 27, totals 61 and 9, their gap 52; counts of 4: 6, and 6 with 3
left over, 13 in all. How a sentence is read is common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.spoken_numbers import spoken_numbers
from tests.project import worked

LESSON = """\
title: Drinks
summary: Find the gap.
grades: 3-5
minutes: 10
stops:
  - ask:
      prompt: Which?
      reveal: REVEAL
  - compare:
      id: drinks
      measure: sugars
      sides: [Left side, Right side]
      rows:
        - [{food: lemonade, amount: 1 cup}, {food: water-tap, amount: 8 fl oz}]
        - [{food: grape-juice, amount: 1 cup}, {food: carrot-juice, amount: 1 cup}]
      solve: [gap, count, total]
  - move: {for: drinks, one_move_per: 4, moves: [rainbow, side-bend]}
"""
WRONG = """\
The lemonade holds 24 grams.
The lemonade holds ten teaspoons of sugar.
Row two is 36 − 9 = 26.
The left side holds 62 grams in all.
The gap in row one is 26 grams.
Row one makes 8 counts.
The gap in row one is 27 grams.
The left side holds 52.
The lemonade holds 25 milligrams.
A cup of apple juice holds 36 grams.
A cup of pineapple holds 36 grams.
The gap is 26 in row two.
In row one it is 25, in row two 25.
The gaps are 25 in row one and 25 in row two.
26 of row two.
The gap of the totals is 27.
Altogether the right side holds 61.
""".splitlines()
RIGHT = """\
The lemonade holds 25 grams.
The lemonade holds 25,000 milligrams.
The lemonade holds about six teaspoons of sugar.
The lemonade holds 6¼ teaspoons.
Row two is 36 − 9 = 27.
The left side holds 61 grams in all.
The gap in row one is 25 grams.
Row one makes 6 counts.
The gap in row two is 27 grams.
The right side holds 9.
It takes 5 minutes at 165 °F.
The gaps are 25 in row one and 27 in row two.
The gap is 25 in row one, and row two has 27.
Row two makes 6 counts and 3 are left over.
The total gap is 52.
Altogether the left side holds 61.
Take 36, then take 9 away: 27 are left.
Pour 8 fl oz of water.
Look at 1 cup of juice.
There are 2 tens and 7 ones in 27.
Each four is one teaspoon.
Both rows together make 52.
A gap of 25 is larger than a gap of 5 would be.
Heat it to 165 degrees.
Each label is rounded to 1 gram.
""".splitlines()
PLACES = ("reveal: REVEAL", "title: Drinks", "solve: [gap, count, total]")
"""The reveal of the first stop, the title of the lesson, and the prompt of the comparison."""


def asked(folder: Path, text: str, place: str) -> int:
    """How many numbers are asked about in a text at a place of the lesson."""
    key = place.partition(":")[0]
    new = f'{key}: "{text}"' if key in {"reveal", "title"} else f'{place}\n      prompt: "{text}"'
    whole = LESSON.replace(place, new).replace("REVEAL", "Look.")
    return len(list(spoken_numbers(worked(folder, whole))))


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("text", WRONG)
def test_a_wrong_one_is_told_wherever_it_stands(tmp_path: Path, text: str, place: str) -> None:
    assert asked(tmp_path, text, place) == 1


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("text", RIGHT)
def test_a_right_one_is_not(tmp_path: Path, text: str, place: str) -> None:
    assert asked(tmp_path, text, place) == 0


def test_what_stands_in_one_text_excuses_nothing_in_another(tmp_path: Path) -> None:
    text = LESSON.replace("summary: Find the gap.", "summary: Find {62} or {26}.")
    text = text.replace("REVEAL", "Look.\n    say: The left side holds 62 grams in all.")
    (found,) = spoken_numbers(worked(tmp_path, text))
    assert found.what.startswith("“62” is said of the total of Left side, which is 61 g")
