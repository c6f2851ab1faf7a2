"""Names that a lesson and its stops had before are taken as written, or refused at their place with a way out."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.model.lesson import Lesson
from tests.project import GOOD, read, site

OF_LESSON = {
    "[meal]": "1:12: `meal` is what the folder is called now",
    "[old, new, old]": "1:22: `old` is listed under `formerly:` on line 1 already",
    "[assets]": "1:12: the site keeps the folder `assets` for itself",
    "[es]": "1:12: the site keeps the folder `es` for itself",
    "[Old One]": "1:12: entry 1 of `formerly` cannot be `Old One`",
    "old": "1:11: `formerly` must be a list",
    "": "1:10: `formerly` is empty",
}
OF_STOP = {
    "[guess]": "17:18: `guess` is what the stop on line 9 is called now",
    "[breakfast]": "17:18: `breakfast` is what the stop on line 15 is called now",
    "[lunch, lunch]": "17:25: `lunch` is listed under `formerly:` on line 17 already",
    "[parting]": "17:18: the page uses the id `parting` itself",
    "[A meal]": "17:18: entry 1 of `formerly` cannot be `A meal`",
}
"""The stop on line 16 is the comparison; a name made of its words counts like one that is given."""


def of_stop(names: str) -> str:
    return GOOD.replace("      id: breakfast\n", f"      id: breakfast\n      formerly: {names}\n")


def told(folder: Path, text: str) -> str:
    """The one problem of a lesson file."""
    found = read(site(folder), text)
    assert isinstance(found, list), "nothing is wrong with it"
    assert len(found) == 1, found
    return str(found[0])


@pytest.mark.parametrize(("written", "says"), OF_LESSON.items(), ids=OF_LESSON)
def test_an_earlier_name_of_a_lesson_is_refused(tmp_path: Path, written: str, says: str) -> None:
    problem = told(tmp_path, f"formerly: {written}\n{GOOD}")
    assert problem.startswith(f"lessons/meal/lesson.yaml:{says}"), problem
    assert problem.count(": ") > 1, "there is no way out"


@pytest.mark.parametrize(("written", "says"), OF_STOP.items(), ids=OF_STOP)
def test_an_earlier_address_of_a_stop_is_refused(tmp_path: Path, written: str, says: str) -> None:
    problem = told(tmp_path, of_stop(written))
    assert problem.startswith(f"lessons/meal/lesson.yaml:{says}"), problem
    assert problem.count(": ") > 1, "there is no way out"


def test_one_name_is_listed_by_two_stops(tmp_path: Path) -> None:
    text = of_stop("[lunch]").replace("  - talk:\n", "  - talk:\n      formerly: [lunch]\n")
    assert "`lunch` is listed under `formerly:` on line 17 already" in told(tmp_path, text)


def test_earlier_names_are_kept_in_their_order(tmp_path: Path) -> None:
    lesson = read(
        site(tmp_path), f"formerly: [first-meal, second-meal]\n{of_stop('[lunch, noon]')}"
    )
    assert isinstance(lesson, Lesson), lesson
    assert lesson.file.formerly == ("first-meal", "second-meal")
    assert [stop.formerly for stop in lesson.file.stops] == [(), (), ("lunch", "noon"), (), ()]
