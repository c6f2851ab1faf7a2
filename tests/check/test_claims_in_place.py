"""Words are held against the numbers they stand beside: of a comparison, or of a day."""

from __future__ import annotations

import pytest

from generator.check.claims import words_against_numbers
from tests.worked import worked

NEIGHBORS = """
- ask: {{prompt: "{before}", reveal: Look.}}
- compare:
    id: bread
    measure: energy
    sides: [Gate, Pond]
    rows:
      - [{{name: Bread, value: 100, source: Label}}, {{name: Cake, value: 200, source: Label}}]
- talk: {{prompt: "{between}"}}
- compare:
    id: soup
    measure: sodium
    sides: [Gate, Pond]
    rows:
      - [{{name: Soup, value: 100, source: Label}}, {{name: Broth, value: 300, source: Label}}]
- talk: {{prompt: What now?, ideas: ["{after}"]}}
"""


@pytest.mark.parametrize(
    ("texts", "wrong"),
    [
        ({"before": "One holds twice as much."}, 0),
        ({"before": "One holds three times as much."}, 1),
        ({"between": "One holds twice as much."}, 0),
        ({"between": "One holds three times as much."}, 1),
        ({"after": "One holds three times as much."}, 0),
        ({"after": "One holds twice as much."}, 1),
        ({"after": "One holds twice the energy."}, 0),  # the measure says which comparison
        ({"before": "One holds three times the sodium."}, 0),
    ],
)
def test_a_claim_is_held_against_the_comparison_above_or_else_below(
    texts: dict[str, str], wrong: int
) -> None:
    words = {"before": "Which?", "between": "Well?", "after": "Rest."} | texts
    assert len(list(words_against_numbers(worked(NEIGHBORS.format(**words))))) == wrong


def test_a_multiple_of_the_stops_own_amounts_is_no_claim_about_rows() -> None:
    stops = NEIGHBORS.format(before="Which?", between="Well?", after="Rest.")
    stops += "- ask: {prompt: A pot holds four cups. How much is that?, reveal: The pot holds four times as much.}\n"
    assert list(words_against_numbers(worked(stops))) == []


DAY = """
- day:
    person: {{name: Pim, age: 34, sex: woman, activity: active}}
    ate:
      - {{name: Porridge, value: 400, source: Label}}
      - {{name: Stew, value: 800, source: Label}}
    did: [Walked to the mill.]
    reveal: "{text}"
"""


@pytest.mark.parametrize(
    ("text", "wrong"),
    [
        # 1,200 kcal eaten; NASEM 2023 for an active woman of 34 years, 163 cm, 57 kg: 2,240 shown [C]
        ("The day needs almost twice as much as was eaten.", 0),
        ("One food holds twice as much energy.", 0),  # stew and porridge
        ("The day needs five times as much as was eaten.", 1),
        ("Eaten and needed are about the same amount.", 1),
    ],
)
def test_a_day_is_held_against_its_own_numbers(text: str, wrong: int) -> None:
    assert len(list(words_against_numbers(worked(DAY.format(text=text))))) == wrong
