"""The record of a film: what is read from it, and each mistake in it told at its place."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.model.figure import FigureKind
from generator.model.lesson import Video
from generator.model.recorded import FilmedFood
from generator.problems import Problem
from generator.read.recorded import read_recorded

GOOD = """\
filmed: "2026-03-14"
figures:
  - {kind: holds, measure: energy, foods: [{food: apple-raw, amount: 1 medium}], side: at-home, value: 90, stop: lunch, from: "0:55", to: "1:08"}
"""


def put(root: Path, text: str) -> Path:
    folder = root / "lessons" / "walk"
    folder.mkdir(parents=True)
    (folder / "recorded.yaml").write_text(text, "utf-8")
    return folder


def test_without_a_file_nothing_was_recorded(tmp_path: Path) -> None:
    problems: list[Problem] = []
    assert read_recorded(tmp_path, "lessons/walk", None, problems) is None
    assert problems == []


def test_a_number_is_read_with_its_time(tmp_path: Path) -> None:
    put(tmp_path, GOOD)
    problems: list[Problem] = []
    read = read_recorded(tmp_path, "lessons/walk", None, problems)
    assert read is not None, problems
    [figure] = read.file.figures
    assert (read.file.filmed, figure.kind, figure.value) == ("2026-03-14", FigureKind.HOLDS, 90)
    assert figure.foods == (FilmedFood(food="apple-raw", amount="1 medium"),)
    assert (figure.start, figure.end) == (Decimal(55), Decimal(68))


def test_the_captions_of_the_lesson_come_along(tmp_path: Path) -> None:
    folder = put(tmp_path, GOOD)
    (folder / "walk.en.vtt").write_text("WEBVTT\n", "utf-8")
    video = Video(file="walk.mp4", captions={"en": "walk.en.vtt", "es": "walk.es.vtt"})
    read = read_recorded(tmp_path, "lessons/walk", video, [])
    assert read is not None
    assert dict(read.captions) == {"walk.en.vtt": "WEBVTT\n"}


@pytest.mark.parametrize(
    ("text", "line", "what"),
    [
        (GOOD.replace("value: 90", "value: 1e30"), 3, "too large"),
        (GOOD.replace("value: 90", "value: 1e999999999"), 3, "too large"),
        (GOOD.replace("value: 90", "value: 1e-999999"), 3, "finer than can be shown"),
        (GOOD.replace("value: 90", "value: " + "9" * 5_000), 3, "too large"),
        (GOOD.replace("2026-03-14", "March"), 1, "filmed"),
        (GOOD.replace("value: 90", "value: ninety"), 3, "value"),
        (GOOD.replace('"0:55"', "0:55"), 3, "0:55"),
        (GOOD.replace("side:", "sied:"), 3, "side"),
        (GOOD.replace("kind: holds", "kind: holds-much"), 3, "did you mean `holds`"),
        ("filmed: [\n", 1, ""),
    ],
    ids=[
        "size",
        "huge",
        "fineness",
        "digits",
        "date",
        "value",
        "time without quotes",
        "key",
        "kind",
        "broken",
    ],
)
def test_a_mistake_is_told_at_its_line(tmp_path: Path, text: str, line: int, what: str) -> None:
    put(tmp_path, text)
    problems: list[Problem] = []
    assert read_recorded(tmp_path, "lessons/walk", None, problems) is None
    assert problems
    assert {problem.place.path for problem in problems} == {"lessons/walk/recorded.yaml"}
    assert line in {problem.place.line for problem in problems}
    assert what in " ".join(map(str, problems))


def test_a_record_of_the_older_shape_is_read_without_its_numbers(tmp_path: Path) -> None:
    old = '  - {id: lunch.row-1.first, value: 90, unit: kcal, stop: lunch, from: "0:55", to: "1:08"}\n'
    put(tmp_path, 'filmed: "2026-03-14"\nfigures:\n' + old)
    problems: list[Problem] = []
    read = read_recorded(tmp_path, "lessons/walk", None, problems)
    assert problems == []
    assert read is not None
    assert (read.by_place, read.file.figures) == (True, ())
