"""Words of guilt and payment are asked about, and innocent words are left alone.

The rule of the project's own care promise; AAP 2016 (Golden and others, Pediatrics
138(3):e20161649) asks for talk about health and not about weight.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check.kind_words import kind_words
from generator.language import KNOWN
from generator.problems import Weight
from tests.cases import Case, cases, languages
from tests.project import GOOD, worked


def found(folder: Path, case: Case) -> list[str]:
    """Lines of what is asked about a case, put into a lesson."""
    result = worked(folder, GOOD.replace("What do you like?", f'"{case.text}"'))
    in_it = replace(result, lesson=replace(result.lesson, language=case.language))
    return [str(problem.place).split(":")[1] for problem in kind_words(in_it)]


@pytest.mark.parametrize("case", cases("kind-words", "asked about"), ids=str)
def test_asked_about(tmp_path: Path, case: Case) -> None:
    assert found(tmp_path, case) == ["30"]


@pytest.mark.parametrize("case", cases("kind-words", "left alone"), ids=str)
def test_left_alone(tmp_path: Path, case: Case) -> None:
    assert found(tmp_path, case) == []


def test_every_list_of_unkind_words_has_cases() -> None:
    assert set(languages("kind-words")) == {one.tag for one in KNOWN.values() if one.unkind_words}


@pytest.mark.parametrize(
    ("old", "new", "at"),
    [
        ("title: Two breakfasts", "title: Burn it off", "1:8"),
        ("say: Hello from Larkmead.", "say: Burn it off.", "8:10"),
        ("say: Hello from Larkmead.", "say: |\n      Hello.\n\n      Now burn it off.", "11:11"),
        ("[At home,", "[A guilty lunch,", "19:17"),
        ("hint: Look at the amounts.", "hint: Earn it.", "13:13"),
        ("name: Juice", "name: Cheat juice", "22:53"),
        ("[Something warm]", "[Something naughty]", "31:25"),
        ("goals: [Subtract.]", "goals: [Lose weight.]", "5:9"),
    ],
)
def test_every_text_is_read_and_its_place_told(tmp_path: Path, old: str, new: str, at: str) -> None:
    assert old in GOOD
    problems = list(kind_words(worked(tmp_path, GOOD.replace(old, new))))
    assert [str(problem.place).split(":", 1)[1] for problem in problems] == [at]
    assert all(problem.weight is Weight.QUESTION and problem.hint for problem in problems)
