"""What a move may hold, and what is refused."""

from __future__ import annotations

import json
from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from generator.model.grades import GradeBand
from generator.model.move import Moves
from generator.model.move_energy import Mety

POSE = {"view": "side", "arms": [[0, 0], [0, 0]], "legs": [[0, 0], [0, 0]]}
TEXT = {
    "name": "Wave",
    "count_is": "one wave",
    "steps": ["Sit.", "Lift.", "Wave."],
    "seated": "The same.",
    "care": "Mind the lamp.",
}


def a_move(**changes: Any) -> dict[str, Any]:
    return {
        "texts": {"en": TEXT},
        "room": "arms wide",
        "noise": "quiet",
        "pace": 20,
        "caps": {"K-2": 10, "3-5": 20, "6-8": 25},
        "energy": "none published",
        "poses": [POSE, POSE],
        "seated_poses": [POSE],
    } | changes


def read(move: dict[str, Any]) -> Moves:
    return Moves.model_validate_json(json.dumps({"sources": {}, "moves": {"wave": move}}))


def youth(**changes: Any) -> dict[str, Any]:
    mety = {"6-9": 6.9, "10-12": 7.1, "13-15": 7.2, "16-18": 7.4}
    return {
        "source": "nowhere",
        "code": "10260X",
        "activity": "Jump rope",
        "mety": mety,
        "status": "S",
    } | changes


def test_caps_are_found_by_grade_band() -> None:
    caps = read(a_move()).moves["wave"].caps
    assert [caps.for_band(band) for band in GradeBand] == [10, 20, 25]


def test_no_published_value_is_nothing_and_not_zero() -> None:
    assert read(a_move()).moves["wave"].youth_energy is None


@pytest.mark.parametrize(
    "changes",
    [
        pytest.param({"caps": {"K-2": 10, "3-5": 9, "6-8": 25}}, id="a cap that falls"),
        pytest.param({"caps": {"K-2": 0, "3-5": 9, "6-8": 25}}, id="a cap of nothing"),
        pytest.param({"texts": {"en": TEXT | {"steps": ["Sit.", "Wave."]}}}, id="two steps"),
        pytest.param({"texts": {"en": TEXT | {"care": ""}}}, id="an empty text"),
        pytest.param({"room": "garden"}, id="an unknown room"),
        pytest.param({"pace": "20"}, id="a pace in words"),
        pytest.param({"poses": [POSE]}, id="one pose"),
        pytest.param({"seated_poses": []}, id="no seated pose"),
        pytest.param({"weight": 30}, id="an unknown key"),
        pytest.param({"energy": "about four"}, id="a guessed value"),
        pytest.param({"energy": youth()}, id="a source that is not listed"),
        pytest.param({"energy": youth(status="X")}, id="an unknown status"),
    ],
)
def test_what_does_not_fit_is_refused(changes: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        read(a_move(**changes))


def test_mety_goes_by_the_age_groups_of_the_youth_compendium() -> None:
    """Jump rope, 10260X: references.md 1.3, status S; groups 6-9, 10-12, 13-15, 16-18."""
    jump_rope = Mety.model_validate_json(json.dumps(youth()["mety"]))
    at = {6: "6.9", 9: "6.9", 10: "7.1", 12: "7.1", 13: "7.2", 15: "7.2", 16: "7.4", 18: "7.4"}
    assert {age: jump_rope.at(age) for age in at} == {
        age: Decimal(cost) for age, cost in at.items()
    }


@pytest.mark.parametrize("age", [5, 19])
def test_mety_is_not_stretched_to_other_ages(age: int) -> None:
    with pytest.raises(ValueError, match="no METy is published"):
        Mety.model_validate_json(json.dumps(youth()["mety"])).at(age)
