"""A lesson whose file has another name, or lies in another place, is told and never lost without a word."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from generator.problems import Weight
from generator.read.unseen import unseen_lessons
from tests.project import GOOD

MUST, QUESTION = Weight.MUST, Weight.QUESTION


def told(root: Path, *files: str, text: str = GOOD) -> list[tuple[str, str, Weight]]:
    """What is said where these files lie in ``lessons/``: path there, sentence with the way out, weight."""
    for name in files:
        file = root / "lessons" / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
    return [
        (one.place.path.removeprefix("lessons/"), f"{one.what}: {one.hint}", one.weight)
        for one in unseen_lessons(root, ("en", "es"))
    ]


@pytest.mark.parametrize(
    "name",
    ["lesson.yml", "lesson.yaml.txt", "Lesson.yaml", "LESSON.YAML", "lesson.yml.txt", "lesson .yaml",
     "lesson.txt", "lesson", "lesson.yaml.yaml"],
)  # fmt: skip
@pytest.mark.parametrize("text", ["", "title: A\n", GOOD], ids=["empty", "begun", "whole"])
def test_a_file_that_is_called_otherwise(tmp_path: Path, name: str, text: str) -> None:
    found = told(tmp_path, f"soup/{name}", text=text)
    assert found == [
        (
            f"soup/{name}",
            f"this folder is no lesson, for its file is called `{name}`: call it `lesson.yaml`",
            MUST,
        )
    ]


def test_a_file_of_any_name_that_holds_a_lesson(tmp_path: Path) -> None:
    ((path, sentence, weight),) = told(tmp_path, "soup/soup.yaml")
    assert (path, weight) == ("soup/soup.yaml", MUST)
    assert "call it `lesson.yaml`" in sentence


@pytest.mark.parametrize(
    ("name", "way_out"),
    [
        ("spring/soup/lesson.yaml", "the lesson in `spring/soup` is not seen: put its folder into"),
        ("spring/soup/x/lesson.yml", "the lesson in `spring/soup/x` is not seen"),
        ("es/soup/lesson.yaml", "a translation is the file lesson.es.yaml there"),
        ("lesson.yaml", "a lesson has a folder of its own: put this into lessons/NAME/lesson.yaml"),
        ("soup.yaml", "a lesson has a folder of its own"),
    ],
)
def test_a_lesson_in_another_place(tmp_path: Path, name: str, way_out: str) -> None:
    ((path, sentence, weight),) = told(tmp_path, name)
    assert (path, weight) == (name, MUST)
    assert way_out in sentence


@pytest.mark.parametrize("text", [GOOD, f"draft: true\n{GOOD}"], ids=["a copy", "a draft"])
def test_what_may_be_meant_to_stay_is_asked_about(tmp_path: Path, text: str) -> None:
    if text == GOOD:
        told(tmp_path, "soup/lesson.yaml")
    ((path, _, weight),) = told(tmp_path, "soup/old/lesson.yaml", text=text)
    assert (path, weight) == ("soup/old/lesson.yaml", QUESTION)


@pytest.mark.parametrize(
    "name",
    ["walk.mp4", "walk.MP4", "lesson.es.yaml", "recorded.yaml", "reviewed.yaml", "notes.yml"],
)
def test_a_folder_with_what_belongs_to_a_lesson(tmp_path: Path, name: str) -> None:
    ((path, sentence, weight),) = told(tmp_path, f"soup/{name}", text="title: A\n")
    assert (path, weight) == ("soup", QUESTION)
    assert sentence.startswith(f"this folder holds `{name}` and no lesson.yaml, so it is no lesson")


def test_what_is_no_lesson_is_left_alone(tmp_path: Path) -> None:
    names = ("soup/lesson.yaml", "soup/lesson.es.yaml", "soup/notes.txt", "soup/lesson.yaml.bak")
    assert told(tmp_path, *names, "guide/x/lesson.yaml", ".hidden/lesson.yaml", "es/about.md") == []
    assert told(tmp_path, "index.md", "pictures/pot.png", text="x") == []


def test_a_folder_that_cannot_be_opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    told(tmp_path, "closed/lesson.yaml")
    scan: Callable[[str], Iterator[os.DirEntry[str]]] = os.scandir

    def refused(path: str) -> Iterator[os.DirEntry[str]]:
        if Path(path).name == "closed":
            raise PermissionError(13, "Permission denied", path)
        return scan(path)

    monkeypatch.setattr(os, "scandir", refused)
    ((path, sentence, weight),) = told(tmp_path)
    assert (path, weight) == ("closed", MUST)
    assert sentence.startswith("this folder cannot be opened (Permission denied): ask whose it is")
