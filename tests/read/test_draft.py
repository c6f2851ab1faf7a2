"""A draft is known by its line, also while the rest of its file is half written."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.read.draft import draft_place
from tests.project import GOOD, put


@pytest.mark.parametrize(
    ("text", "line"),
    [
        (GOOD, None),
        (f"{GOOD}draft: true\n", GOOD.count("\n") + 1),
        (f"draft: true\n{GOOD}", 1),
        (f"{GOOD}draft: false\n", None),
        (f'{GOOD}draft: "true"\n', None),
        ('{"title": "A",\n "draft": true}', 2),
        ("title: A: b\ndraft: true   # until spring\nstops:\n\t- ask\n", 2),
        ("title: A: b\n  draft: true\n", None),
        (GOOD.replace("say: Hello from Larkmead.", "say: |\n      draft: true"), None),
        (b"\xff\xfe", None),
        (b"", None),
    ],
    ids=["none", "last", "first", "false", "a text", "JSON", "broken", "broken, further in",
         "in a script", "no text", "empty"],
)  # fmt: skip
def test_where_a_lesson_says_that_it_is_a_draft(
    tmp_path: Path, text: str | bytes, line: int | None
) -> None:
    place = draft_place(tmp_path, put(tmp_path, text))
    assert (place.line if place else None) == line


def test_a_file_that_is_not_there_is_no_draft(tmp_path: Path) -> None:
    assert draft_place(tmp_path, "lessons/meal/lesson.yaml") is None
