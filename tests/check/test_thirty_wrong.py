"""A lesson with thirty wrong statements in all kinds of places is asked about thirty times, at each of them.

In ``tests/examples/thirty-wrong/`` a sign ``@`` stands before the letter that is told; it is taken out before
the lesson is read. Everything else in these files is right. All numbers are worked out from USDA
FoodData Central, SR Legacy, as in the demo: lemonade 25 g of sugars, water 0, grape juice 36, carrot juice 9.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.problems import Problem
from generator.steps.work import work_lesson
from tests.media_files import film
from tests.project import library, site

FILES = Path(__file__).parents[1] / "examples" / "thirty-wrong"
MARK = "@"


def marked(file: Path) -> list[str]:
    """Where the signs stand, as file, line and column once they are taken out."""
    return [
        f"{file.name}:{number}:{len(line[:at].replace(MARK, '')) + 1}"
        for number, line in enumerate(file.read_text("utf-8").splitlines(), 1)
        for at, letter in enumerate(line)
        if letter == MARK
    ]


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> tuple[Problem, ...]:
    """Everything that is asked about the lesson."""
    root = site(tmp_path_factory.mktemp("thirty"))
    folder = root / "lessons" / "drinks"
    folder.mkdir()
    for file in FILES.iterdir():
        text = file.read_text("utf-8").replace(MARK, "")
        (folder / file.name).write_text(text, "utf-8")
    (folder / "drinks.mp4").write_bytes(film(80))
    return work_lesson(root, "lessons/drinks/lesson.yaml", library()).problems


def place(problem: Problem) -> str:
    return f"{Path(problem.place.path).name}:{problem.place.line}:{problem.place.column}"


def test_each_wrong_statement_is_told_at_its_letter_and_no_right_one(
    told: tuple[Problem, ...],
) -> None:
    wrong = [at for file in sorted(FILES.iterdir()) for at in marked(file)]
    assert len(wrong) == 30
    assert sorted(map(place, told)) == sorted(wrong)


def test_there_are_as_many_right_numbers_beside_them() -> None:
    """Numbers in digits of texts and cues, without times and amounts."""
    lines = [line for file in FILES.iterdir() for line in file.read_text("utf-8").splitlines()]
    texts = [line for line in lines if "-->" not in line and "food:" not in line]
    assert sum(len(re.findall(r"(?<![@\d,])\d[\d,]*", line)) for line in texts) > 60
