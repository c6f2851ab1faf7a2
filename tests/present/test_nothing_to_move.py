"""A gap too small for a count gives no card of 0 moves: page, paper and slides say there is nothing to move."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.check.nothing_to_move import something_to_move
from generator.cli.commands import commands
from tests.made import page_outputs
from tests.project import GOOD, put, worked
from tests.site_project import copy_project

ROW = "[{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]"
EVEN = GOOD.replace(ROW, "[{name: A, value: 100, source: x}, {name: B, value: 100, source: x}]")
DEALT = re.compile("<template.*?</template>", re.DOTALL)
SMALL = GOOD.replace(ROW, "[{name: A, value: 100, source: x}, {name: B, value: 105, source: x}]")


@pytest.mark.parametrize(
    ("lesson", "says"),
    [
        (EVEN, "row 1 leaves nothing to move: both sides hold 100 kcal"),
        (SMALL, "row 1 leaves nothing to move: its gap of 5 kcal is less than `one_move_per`"),
    ],
    ids=["no gap", "a small one"],
)
def test_it_is_asked_about_at_its_move(tmp_path: Path, lesson: str, says: str) -> None:
    (question,) = something_to_move(worked(tmp_path, lesson))
    assert question.what == says
    assert (question.place.line, question.place.column) == (28, 15)


def test_a_gap_that_gives_a_count_is_not(tmp_path: Path) -> None:
    assert list(something_to_move(worked(tmp_path, GOOD))) == []


def pages(root: Path, lesson: str) -> dict[str, str]:
    project = copy_project(root / "project", lessons=False)
    put(project, lesson, "meal")
    return {
        one.path.removeprefix("meal/"): one.content.decode()
        for one in page_outputs(project)
        if one.path.startswith("meal/") and one.path.endswith(".html")
    }


def test_no_page_has_a_card_without_a_count(tmp_path: Path) -> None:
    # Apart from what is only dealt when somebody asks for it.
    made = {name: DEALT.sub("", html) for name, html in pages(tmp_path, EVEN).items()}
    for name in ("index.html", "worksheet.html", "answers.html"):
        # on a worksheet it would give away that the gap is zero
        assert ("Row 1: nothing to move." in made[name]) == (name != "worksheet.html")
        assert "March" not in made[name]
        assert "step" in made[name].lower()  # the move of the other row is there
    assert "March" not in made["cards.html"]
    assert "÷" in made["cards.html"]


def test_a_lesson_in_which_nothing_moves_has_no_cards(tmp_path: Path) -> None:
    still = EVEN.replace("food: apple-raw, amount: 150 g", "name: C, value: 110, source: x")
    made = pages(tmp_path, still)
    assert "cards.html" not in made
    assert "cards.html" not in made["index.html"]


def test_check_asks_about_two_lessons_of_one_title(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    put(project, GOOD, "one")
    put(project, GOOD.replace("Two breakfasts", "two  Breakfasts"), "two")
    put(project, GOOD.replace("Two breakfasts", "Three"), "three")
    done = CliRunner().invoke(commands, ["check", "--root", str(project)])
    assert done.exit_code == 0
    (head,) = (line for line in done.stderr.splitlines() if line.startswith("lessons/"))
    assert head == (
        "lessons/two/lesson.yaml:1:8: this lesson and that of lessons/one/lesson.yaml have one title"
    )


def test_check_asks_about_two_lessons_of_one_place_in_the_lists(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    for name, order in (
        ("one", "order: 2\n"),
        ("two", "order: 2\n"),
        ("three", "order: 1\n"),
        ("four", ""),
    ):
        put(
            project,
            GOOD.replace("Two breakfasts", name).replace("summary:", f"{order}summary:"),
            name,
        )
    done = CliRunner().invoke(commands, ["check", "--root", str(project)])
    assert done.exit_code == 0
    (head,) = (line for line in done.stderr.splitlines() if line.startswith("lessons/"))
    assert head == (
        "lessons/two/lesson.yaml:2:8: this lesson and that of lessons/one/lesson.yaml:2 both say `order: 2`"
    )


def test_a_row_that_rests_is_not_asked_about(tmp_path: Path) -> None:
    rests = EVEN.replace("[march, side-step]", "[rest, side-step]")
    assert list(something_to_move(worked(tmp_path / "a", rests))) == []
    made = pages(tmp_path / "b", rests)
    assert "Row 1: nothing to move." in made["index.html"]
    moving = GOOD.replace("[march, side-step]", "[rest, side-step]")
    (question,) = something_to_move(worked(tmp_path / "c", moving))
    assert question.what == "row 1 rests, though its gap of 90 kcal gives a count"
    assert (question.place.line, question.place.column) == (28, 15)
