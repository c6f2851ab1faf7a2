"""A build that a mistake ended: what it had made by then is not made again."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.making import make_lesson
from generator.steps import lessons
from tests.engine.small_site import built, small_site


def test_lessons_made_before_a_mistake_are_found_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    root = small_site(tmp_path / "site")
    last = root / "lessons/two/lesson.yaml"
    right = last.read_text("utf-8")
    last.write_text(right.replace("150 g", "150 gallons"), "utf-8")
    assert isinstance(built(root), list), "the mistake was not told"

    made: list[str] = []

    def counted(results: object, around: object, *rest: object) -> object:
        outputs = make_lesson(results, around, *rest)  # type: ignore[arg-type]
        made.append(outputs[0].path.partition("/")[0])
        return outputs

    monkeypatch.setattr(lessons, "make_lesson", counted)
    last.write_text(right, "utf-8")
    assert isinstance(built(root), dict)
    assert made == ["two"]
