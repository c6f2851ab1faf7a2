"""Each lesson knows the one before and the one after it, and is made anew when one of them is called otherwise."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from generator.making import make_lesson
from generator.present.pages.neighbours import Neighbour
from generator.steps import lessons
from generator.steps.run import begin
from tests.engine.small_site import built, built_cold, lesson_with, small_site
from tests.html_page import read_page, text


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """Lessons `film`, `one`, `three` and `two`, all for the same grades; `two` in Spanish as well."""
    return small_site(tmp_path / "site")


def rewrite(root: Path, name: str, lesson: dict[str, object]) -> None:
    """Another lesson in the same folder; JSON is YAML."""
    (root / f"lessons/{name}/lesson.yaml").write_text(json.dumps(lesson), "utf-8")


def line(root: Path, language: str = "en") -> dict[str, tuple[str, str]]:
    """Titles before and after each lesson, by its id."""
    found = {name: one.beside[language] for name, one in begin(root, root / "site").owns().items()}
    return {name: (_title(both.before), _title(both.after)) for name, both in found.items()}


def _title(neighbour: Neighbour | None) -> str:
    return neighbour.title if neighbour else ""


def test_lessons_of_the_same_grades_stand_by_the_names_of_their_folders(root: Path) -> None:
    assert line(root) == {
        "film": ("", "Lesson one"),
        "one": ("Filmed", "Lesson three"),
        "three": ("Lesson one", "Lesson two"),
        "two": ("Lesson three", ""),
    }


def test_younger_grades_come_first_and_then_a_chosen_order(root: Path) -> None:
    rewrite(root, "two", lesson_with("carrot-raw", title="For two", grades="K-2"))
    rewrite(root, "three", lesson_with("carrot-raw", title="Chosen", order=1))
    assert line(root) == {
        "two": ("", "Chosen"),
        "three": ("For two", "Filmed"),
        "film": ("Chosen", "Lesson one"),
        "one": ("Filmed", ""),
    }


def test_a_lesson_stands_in_the_line_of_each_of_its_languages(root: Path) -> None:
    (root / "lessons/one/lesson.es.yaml").write_text("title: Lección una\n", "utf-8")
    assert line(root, "es") == {
        "film": ("", ""),
        "one": ("", "Lección dos"),
        "three": ("", ""),
        "two": ("Lección una", ""),
    }


def test_a_draft_is_nobodys_neighbour_but_in_a_preview(root: Path) -> None:
    rewrite(root, "one", lesson_with("pizza-cheese", title="Half done", draft=True))
    assert line(root)["film"] == ("", "Lesson three")
    preview = begin(root, root / "site", preview=True).owns()
    assert _title(preview["film"].beside["en"].after) == "Half done"


def test_the_pages_name_them_with_links_and_practice_begins_with_the_one_before(
    root: Path,
) -> None:
    rewrite(
        root, "one", lesson_with("pizza-cheese", title="Lesson one", arithmetic="tens in a number")
    )
    built(root)
    notes = read_page(root / "site/three/notes.html")
    [next_] = [part for part in notes.iter("section") if part.get("aria-labelledby") == "next"]
    assert [text(line) for line in next_.iter("li")] == [
        "Before this one: Lesson one. It needs: tens in a number.",
        "After this one: Lesson two",
    ]
    assert [link.get("href") for item in next_.iter("li") for link in item.iter("a")] == [
        "../one/index.html",
        "../two/index.html",
    ]
    practice = read_page(root / "site/three/practice.html")
    assert "From another day, two problems first: Lesson one" in text(practice)
    assert "../one/practice.html" in [link.get("href") for link in practice.iter("a")]
    assert "From another day" not in text(read_page(root / "site/film/practice.html"))


def test_only_the_neighbours_of_a_lesson_that_is_called_otherwise_are_made_anew(
    root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    built(root)
    made: list[str] = []

    def counted(results: object, around: object, *rest: object) -> object:
        outputs = make_lesson(results, around, *rest)  # type: ignore[arg-type]
        made.append(outputs[0].path.partition("/")[0])
        return outputs

    monkeypatch.setattr(lessons, "make_lesson", counted)
    file = root / "lessons/one/lesson.yaml"
    right = file.read_text("utf-8")
    file.write_text(right.replace("Lesson one", "Lesson first"), "utf-8")
    now = built(root)
    assert sorted(made) == ["film", "one", "three"]
    made.clear()
    file.write_text(right.replace("Lesson one", "Lesson first").replace("150 g", "140 g"), "utf-8")
    built(root)
    assert made == ["one"]
    monkeypatch.undo()
    file.write_text(right.replace("Lesson one", "Lesson first"), "utf-8")
    assert now == built_cold(root, tmp_path / "cold")
