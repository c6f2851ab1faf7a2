"""An earlier name of a lesson leads to one lesson alone; where it could lead to two, nothing is built."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.former_names import former_names_apart
from generator.check.listed import Listed
from generator.problems import LessonError, Place, Problem
from generator.steps.checking import check_lessons
from generator.steps.work import work
from tests.project import GOOD, put, site
from tests.site_project import copy_project, run_mkdocs

TAKEN = "lessons/other/lesson.yaml:1:12: the folder `meal` is a lesson of its own"
TWICE = (
    "lessons/other/lesson.yaml:1:12: lessons/meal/lesson.yaml:1 lists `lunch` under `formerly:` too"
)


def two(root: Path, first: str, second: str) -> Path:
    put(root, first + GOOD)
    put(root, second + GOOD.replace("Two breakfasts", "Two more"), "other")
    return root


@pytest.mark.parametrize(
    ("first", "second", "says"),
    [("", "formerly: [meal]\n", TAKEN), ("formerly: [lunch]\n", "formerly: [lunch]\n", TWICE)],
    ids=["in use", "claimed twice"],
)
def test_such_a_site_is_refused(tmp_path: Path, first: str, second: str, says: str) -> None:
    root = two(copy_project(tmp_path, lessons=False), first, second)
    done = run_mkdocs(root)
    assert done.exit_code == 1
    assert says in done.stderr
    assert not (root / "site").exists()
    told = [str(one) for one in check_lessons(root).problems]
    assert [one for one in told if one.startswith(says)], told
    with pytest.raises(LessonError, match="formerly"):
        work(root)


def test_names_that_nobody_else_has_are_fine(tmp_path: Path) -> None:
    root = two(site(tmp_path), "formerly: [lunch]\n", "formerly: [dinner, supper]\n")
    assert not [one for one in check_lessons(root).problems if "formerly" in one.what]


def test_a_lesson_may_change_names_with_another_only_one_at_a_time() -> None:
    one = Listed("One", Place("a"), None, Place("a"), "river", (("walk", Place("a", 2)),))
    other = Listed("Other", Place("b"), None, Place("b"), "walk", (("river", Place("b", 2)),))
    found: list[Problem] = list(former_names_apart([one, other]))
    assert [problem.place for problem in found] == [Place("a", 2), Place("b", 2)]
