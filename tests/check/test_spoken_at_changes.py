"""What is said at a what-if stop is held against the numbers of its changes, and no sooner."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.claims import words_against_numbers
from generator.check.nothing_changed import something_changed
from generator.check.spoken_numbers import spoken_numbers
from generator.language import language_of
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


TALK = "  - talk: {prompt: What would you change?, ideas: [A bean]}\n"
NAMED = LESSON.replace("barley-cooked, amount: 1 cup}}", "bulgur-cooked, amount: 1 cup}}")
"""With a food that stands nowhere but in a change: 182 g of bulgur, 4.5 g in 100 (SR Legacy 170287, read in the
library), is 8.19 g, shown as 8; with it Ilyas's pot holds 8 + 6 + 16 + 15 = 45, and so does Rosa's."""


@pytest.mark.parametrize(
    ("said", "what"),
    [
        ("The bulgur holds 45 grams.", "“45” is said of “Bulgur wheat”, which holds 8 g"),
        (
            "A cup of bulgur holds 16 grams of fiber.",
            "“16” is said of “Bulgur wheat”, which holds 8 g",
        ),
        ("The bulgur holds 8 grams.", ""),
        ("The bulgur holds 7 grams more than the white rice.", ""),
        ("Two cups of bulgur hold 16 grams.", ""),
        ("With bulgur the pot holds 45 grams.", ""),
        ("The pot with bulgur holds 45 grams.", ""),
    ],
)
@pytest.mark.parametrize("place", ["change", "talk"])
def test_a_number_of_a_food_that_only_a_change_brings_is_its_own(
    tmp_path: Path, place: str, said: str, what: str
) -> None:
    """It used to pass where anything at the stop was that number."""
    old, new = (
        (PROMPT, f"{PROMPT}      say: {said}\n")
        if place == "change"
        else (TALK, f'  - talk: {{prompt: "{said}"}}\n')
    )
    found = [one.what for one in spoken_numbers(worked(tmp_path, NAMED.replace(old, new)))]
    assert [one[: len(what)] for one in found] == ([what] if what else [])


@pytest.mark.parametrize(
    ("language", "before"), [("en", "The pot with "), ("en", "Rice and "), ("es", "La olla con ")]
)
def test_what_holds_more_than_one_food_is_none_of_them(language: str, before: str) -> None:
    part = language_of(language).said_of.part_of_more
    assert part.search(before)
    assert not part.search("A cup of ")
    assert not part.search("Una taza de ")


def test_at_its_own_stop_a_food_holds_what_it_did_or_does_with_a_change(tmp_path: Path) -> None:
    assert asked(tmp_path, "The lentils hold 16 grams. The lentils hold 8 grams.") == []
    (found,) = asked(tmp_path, "The lentils hold 45 grams.")
    assert found == "“45” is said of “Cooked lentils”, which holds 16 or 8 g"


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
