"""What is said at a what-if stop is held against the numbers of its changes, and no sooner."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.claims import words_against_numbers
from generator.check.nothing_changed import something_changed
from generator.check.spoken_numbers import spoken_numbers
from tests.pots_lesson import LESSON
from tests.project import worked

PROMPT = "      prompt: Change one thing in a pot.\n"
SOLVE = "      solve: [gap, total]\n"


def asked(folder: Path, said: str, after: str = PROMPT) -> list[str]:
    """What the rules about numbers in words ask of a script at one of the stops."""
    assert after in LESSON
    result = worked(folder, LESSON.replace(after, f"{after}      say: {said}\n"))
    return [one.what for rule in (spoken_numbers, words_against_numbers) for one in rule(result)]


@pytest.mark.parametrize(
    "said",
    [
        "Take barley in place of the white rice. Ilyas's pot now holds 43, and the gap is 2 grams.",
        "Half the lentils hold 8. Then Rosa's pot holds 37.",
        "The barley holds six times as much fiber as the rice.",
    ],
)
def test_numbers_and_claims_of_a_change_pass_where_it_is_shown(tmp_path: Path, said: str) -> None:
    assert asked(tmp_path, said) == []


@pytest.mark.parametrize(
    ("said", "what"),
    [
        ("Ilyas's pot now holds 44.", "“44” is no number of the lesson here"),
        (
            "The barley holds nine times as much fiber as the rice.",
            "“The barley holds nine times as much” does not",
        ),
    ],
)
def test_a_number_or_a_claim_that_is_none_of_them_is_told(
    tmp_path: Path, said: str, what: str
) -> None:
    (found,) = asked(tmp_path, said)
    assert found.startswith(what)


def test_before_the_stop_its_numbers_are_not_known_yet(tmp_path: Path) -> None:
    assert asked(tmp_path, "All of Ilyas's foods come to 43.", SOLVE)


def test_the_nearest_number_is_named_with_its_change(tmp_path: Path) -> None:
    text = LESSON.replace(PROMPT, f"{PROMPT}      say: Now it is 36 grams.\n")
    (found,) = spoken_numbers(worked(tmp_path, text))
    assert found.hint.startswith("the nearest is 37 g, the total of Rosa's pot with change 2;")


def test_changes_of_which_none_moves_the_gap_are_asked_about(tmp_path: Path) -> None:
    text = (
        LESSON.partition("      changes:")[0]
        + """      changes:
        - {change: black-beans-boiled, to: {food: pinto-beans-boiled, amount: 1 cup}}
        - {change: pinto-beans-boiled, to: {food: black-beans-boiled, amount: 1 cup}}
"""
    )
    (found,) = something_changed(worked(tmp_path, text))
    assert found.what == "none of these changes moves the gap; it stays 7 g"
    assert found.place.line == 22
