"""One food value changed after filming: exactly the times at which the video is no longer right."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest

from generator.problems import Problem, Weight
from generator.steps.work import work
from tests.project import ROOT

LESSON = "lessons/river-walk/lesson.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """The demo as it was filmed, one lesson of it."""
    shutil.copytree(ROOT / "site_data", tmp_path / "site_data")
    shutil.copytree(ROOT / "theme", tmp_path / "theme")
    shutil.copytree(ROOT / "lessons" / "river-walk", tmp_path / "lessons" / "river-walk")
    return tmp_path


def change(root: Path, path: str, pattern: str, new: str) -> None:
    """Change one place of a file; fails where there is not exactly one."""
    file = root / path
    text, number = re.subn(pattern, new, file.read_text("utf-8"), flags=re.DOTALL)
    assert number == 1, pattern
    file.write_text(text, "utf-8")


def questions(root: Path) -> tuple[Problem, ...]:
    return work(root, "river-walk").questions


def test_as_filmed_there_is_nothing_to_film_again(root: Path) -> None:
    assert questions(root) == ()


def test_a_changed_food_names_the_times_of_its_row_and_its_count_and_no_other(root: Path) -> None:
    """272 kcal × 155 g ÷ 100 = 421.6, shown as 420 (21 CFR 101.9(c)(1)); 420 − 90 = 330 = 33 tens."""
    change(root, "site_data/foods.yaml", r"(apple-pie-homemade:.{1,200}?energy: )265", r"\g<1>272")
    found = [problem for problem in questions(root) if "the video has" in problem.what]
    assert [problem.what for problem in found] == [
        "from 0:55 to 1:08 the video has 410 kcal, and `lunch.row-1.second` is 420 kcal now",
        "from 1:54 to 2:01 the video has 32 times, and `count-it.card-1.count` is 33 times now",
    ]
    assert {problem.weight for problem in found} == {Weight.QUESTION}
    assert {problem.place.path for problem in found} == {LESSON}
    assert all("python3 generator recorded river-walk" in problem.hint for problem in found)
    others = [problem for problem in questions(root) if problem not in found]
    assert {problem.place.path.rpartition(".")[2] for problem in others} == {"yaml"}, (
        "the script is to be said anew; the captions say what the film says"
    )


def test_a_change_that_the_rounding_hides_is_no_change(root: Path) -> None:
    """266 kcal × 155 g ÷ 100 = 412.3, shown as 410 as before."""
    change(root, "site_data/foods.yaml", r"(apple-pie-homemade:.{1,200}?energy: )265", r"\g<1>266")
    assert [problem for problem in questions(root) if "the video has" in problem.what] == []


def test_a_number_that_is_gone_is_told_at_its_entry_of_the_record(root: Path) -> None:
    change(root, LESSON, "id: lunch\n", "id: two-lunches\n")
    (root / "lessons/river-walk/lesson.es.yaml").unlink()  # it names the stop too
    change(root, LESSON, "for: lunch\n", "for: two-lunches\n")
    gone = [problem for problem in questions(root) if "not in the lesson any more" in problem.what]
    assert len(gone) == 6, "two sides of three rows"
    assert {problem.place.path for problem in gone} == {"lessons/river-walk/recorded.yaml"}
    assert sorted(problem.place.line for problem in gone) == [5, 6, 7, 8, 9, 10]
