"""One food value changed after filming: exactly the times at which the video is no longer right."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest

from generator.author.recording import record
from generator.problems import Problem, Weight
from generator.steps.work import work
from tests.project import ROOT

LESSON = "lessons/river-walk/lesson.yaml"
RECORD = "lessons/river-walk/recorded.yaml"
ROW = "lunch.apple-pie-homemade_apple-raw"
FOODS = "`apple-raw`, 1 medium and `apple-pie-homemade`, 1 slice"
SITE = "site_data/site.yaml"
OMARS = "`water-tap`, 8 fl oz and `apple-pie-homemade`, 1 slice and `pizza-cheese`, 1 slice"
GONE = ", which is not in the lesson any more"


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
    """What is to be looked at in the lesson; that nobody's site stands at the demo's address is not asked here."""
    return tuple(one for one in work(root, "river-walk").questions if one.place.path != SITE)


def test_as_filmed_there_is_nothing_to_film_again(root: Path) -> None:
    assert questions(root) == ()


def test_a_changed_food_names_the_times_of_its_row_of_what_is_said_of_it_again_and_of_its_count(
    root: Path,
) -> None:
    """272 kcal × 155 g ÷ 100 = 421.6, shown as 420 (21 CFR 101.9(c)(1)); 420 − 90 = 330 = 33 tens, and 690 + 10 in all."""
    change(root, "site_data/foods.yaml", r"(apple-pie-homemade:.{1,200}?energy: )265", r"\g<1>272")
    found = [problem for problem in questions(root) if "the video has" in problem.what]
    assert [problem.what for problem in found] == [
        f"from 1:48 to 1:59 the video has 410 kcal, and `{ROW}.omar-s-lunch` is 420 kcal now",
        f"from 2:25 to 2:29 the video has 410 kcal, and `{ROW}.omar-s-lunch` is 420 kcal now",
        f"from 2:34 to 2:37 the video has 320 kcal, and `{ROW}.gap` is 330 kcal now",
        "from 2:43 to 2:45 the video has 690 kcal, and `lunch.total.omar-s-lunch` is 700 kcal now",
        f"from 3:21 to 3:31 the video has 32 times, and `{ROW}.count` is 33 times now",
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


def test_a_number_whose_food_is_gone_is_told_at_its_entry_of_the_record(root: Path) -> None:
    """The pie is another food now: its number and the count of its row are of nothing that is left."""
    change(root, LESSON, "food: apple-pie-homemade", "food: apple-pie")
    change(root, LESSON, "row: apple-pie-homemade_", "row: apple-pie_")
    gone = [problem for problem in questions(root) if "not in the lesson any more" in problem.what]
    assert [problem.what.removesuffix(GONE) for problem in gone] == [
        "from 1:48 to 1:59 the video has 410 kcal of `apple-pie-homemade`, 1 slice",
        "from 2:25 to 2:29 the video has 410 kcal of `apple-pie-homemade`, 1 slice",
        f"from 2:34 to 2:37 the video has 320 kcal between {FOODS}",
        f"from 2:43 to 2:45 the video has 690 kcal of `omar-s-lunch` in all ({OMARS})",
        f"from 3:21 to 3:31 the video has 32 times of `apple-pick` for {FOODS}",
    ]
    assert {problem.place.path for problem in gone} == {RECORD}
    assert [problem.place.line for problem in gone] == [8, 12, 13, 15, 18]


def told(root: Path) -> list[str]:
    return [one.what for one in questions(root) if "the video has" in one.what]


def test_a_renamed_stop_has_nothing_to_film_again(root: Path) -> None:
    change(root, LESSON, "id: lunch\n", "id: two-lunches\n")
    change(root, LESSON, "for: lunch\n", "for: two-lunches\n")
    change(root, LESSON, "of: lunch,", "of: two-lunches,")
    change(root, LESSON, "id: count-it\n", "id: moving\n")
    (root / "lessons/river-walk/lesson.es.yaml").unlink()  # it names the stops too
    assert told(root) == []


def test_rows_that_change_places_have_nothing_to_film_again(root: Path) -> None:
    change(root, LESSON, r"( +- help: hops\n.*?\n)( +- \[\{food: chicken.*?\n)", r"\2\1")
    change(root, LESSON, r"apple-pick, bottle-lift\]", "bottle-lift, apple-pick]")
    assert told(root) == []


OLD = """\
filmed: "2026-03-14"
figures:
  - {id: lunch.row-1.first, value: 70, unit: kcal, stop: lunch, from: "0:55", to: "1:08"}
"""


def test_a_record_of_the_older_shape_is_told_in_one_sentence_and_not_used(root: Path) -> None:
    (root / RECORD).write_text(OLD, "utf-8")
    [found] = questions(root)
    assert str(found.place) == f"{RECORD}:3:3"
    assert found.weight is Weight.QUESTION
    assert "of an older shape" in found.what
    assert "python3 generator recorded river-walk --on 2026-03-14" in found.hint


def test_what_the_older_shape_is_told_to_run_makes_a_record_that_is_read(root: Path) -> None:
    (root / RECORD).write_text(OLD, "utf-8")
    record(root, "river-walk", "2026-03-14")
    assert questions(root) == ()
    on = re.compile(r"^filmed: .*$", re.MULTILINE)
    told, ours = (on.sub("", (place / RECORD).read_text("utf-8")) for place in (root, ROOT))
    assert told == ours
