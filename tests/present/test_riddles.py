"""What stands beside a food tells no answer that the lesson asks for."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.making import make_lesson
from generator.steps.surroundings import surroundings
from tests.project import ROOT
from tests.worked import library, worked

RIDDLE = """\
- compare:
    id: juices
    measure: sugars
    sides: [Gate, Pond]
    rows: [[{food: carrot-juice, amount: 1 cup}, {food: grape-juice, amount: 1 cup}]]
    solve: [gap]
- move: {for: juices, one_move_per: 4, moves: [march]}
- ask: {prompt: Nine spoons?, reveal: Grape., %s}
"""


@pytest.mark.parametrize(
    ("asked", "gives_away"),
    [
        ("which: {of: juices, holds: 9 * juices.one-move-per}", True),
        ("which: {of: juices, holds: most}", False),
        ("which: {of: juices, holds: most, among: sides}", False),
        ("answer: 9 * juices.one-move-per", False),
    ],
)
def test_teaspoons_do_not_answer_a_question_about_them(asked: str, gives_away: bool) -> None:
    """36 g of grape juice are nine spoons: to be found out by whoever is asked which juice that is."""
    made = make_lesson({"en": worked(RIDDLE % asked)}, surroundings(ROOT, library(), preview=False))
    said = {
        Path(one.path).stem: "about 9 teaspoons" in one.content.decode()
        for one in made
        if one.path.endswith(("/index.html", "/worksheet.html", "/answers.html"))
    }
    assert said == {"index": not gives_away, "worksheet": not gives_away, "answers": True}
