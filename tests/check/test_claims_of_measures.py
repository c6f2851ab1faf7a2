"""A claim is held against the comparison of the measure that it names; a unit names none."""

from __future__ import annotations

import pytest

from tests.claim_questions import claim_questions
from tests.worked import worked

TWO_IN_MILLIGRAMS = """
- compare:
    id: salt
    measure: sodium
    sides: [Red bowl, Green bowl]
    rows:
      - [{{name: Soup, value: 800, source: Label}}, {{name: Salad, value: 200, source: Label}}]
- compare:
    id: bones
    measure: calcium
    sides: [Milk cup, Juice cup]
    rows:
      - [{{name: Milk, value: 280, source: Label}}, {{name: Juice, value: 30, source: Label}}]
    reveal: "{text}"
"""


@pytest.mark.parametrize(
    ("text", "language", "way_out"),
    [
        ("The milk holds 250 milligrams more.", "en", None),
        ("The milk holds 250 mg more calcium than the juice.", "en", None),
        ("The milk holds 600 milligrams more.", "en", "say `250 mg more`"),
        ("The soup holds four times the sodium of the salad.", "en", None),
        ("The milk holds three times the calcium of the juice.", "en", "280 is 9.3 times 30"),
        ("La leche tiene 250 miligramos más de calcio.", "es", None),
        ("La leche tiene 600 miligramos más.", "es", "`250 mg más`"),
    ],
)
def test_a_milligram_is_not_yet_sodium(text: str, language: str, way_out: str | None) -> None:
    written = TWO_IN_MILLIGRAMS
    if language == "es":
        written = written.replace("name: Milk,", "name: Leche,").replace(
            "name: Juice", "name: Jugo"
        )
    found = list(claim_questions(worked(written.format(text=text)), language))
    if way_out is None:
        assert found == [], list(map(str, found))
    else:
        assert [way_out in problem.hint for problem in found] == [True], list(map(str, found))
