"""Translations beside a lesson: what they hold, what is missing or stale, and what the pages show."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.author.translation import begin_translation, mark_translated
from generator.problems import LessonError
from generator.steps.work import work
from tests.made import page_outputs
from tests.site_project import copy_project

LESSON = """\
title: Two soups
summary: Two bowls for one evening.
grades: 3-5
minutes: 10
you_need: [paper]
stops:
  - ask: {id: guess, prompt: Which bowl holds more?, reveal: We will see.}
  - compare:
      id: bowls
      measure: sodium
      sides: [By the door, By the stove]
      rows:
        - [{food: soup-tomato-canned, amount: 1 cup}, {food: apple-raw, amount: 2 medium, name: River apples}]
"""
SPANISH = """\
title: Dos sopas
summary: Dos tazones para una noche.
you_need: [papel]
stops:
  guess: {prompt: ¿Cuál tiene más?, reveal: Ya veremos.}
  bowls: {sides: [Junto a la puerta, Junto a la estufa]}
foods: {River apples: Manzanas del río}
"""


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site of one lesson in English and Spanish."""
    root = copy_project(tmp_path / "site", lessons=False)
    site = root / "site_data/site.yaml"
    lines = site.read_text("utf-8").splitlines()
    lines = ["languages: [en, es]" if line.startswith("languages:") else line for line in lines]
    site.write_text("\n".join(lines) + "\n", "utf-8")
    folder = root / "lessons/two-soups"
    folder.mkdir()
    (folder / "lesson.yaml").write_text(LESSON, "utf-8")
    (folder / "lesson.es.yaml").write_text(SPANISH, "utf-8")
    return root


def questions(root: Path) -> list[str]:
    """What is said of the translation, as sentences."""
    return [one.what for one in work(root).questions if "read like grade" not in one.what]


def change(root: Path, name: str, old: str, new: str) -> None:
    """Edit a lesson's file as the educator would."""
    file = root / "lessons/two-soups" / name
    text = file.read_text("utf-8")
    assert old in text
    file.write_text(text.replace(old, new), "utf-8")


def page(root: Path, path: str) -> str:
    """A page of the built site."""
    return next(one.content.decode() for one in page_outputs(root) if one.path == path)


def test_a_whole_translation_is_quiet_and_makes_its_page(project: Path) -> None:
    assert questions(project) == []
    html = page(project, "es/two-soups/index.html")
    assert '<html lang="es-US"' in html
    for words in (
        "Dos sopas",
        "¿Cuál tiene más?",
        "Junto a la estufa",
        "Manzanas del río",
        "2 medianas",
    ):
        assert words in html
    for words in ("Two soups", "Which bowl", "By the stove", "River apples", "untranslated"):
        assert words not in html


def test_both_pages_hold_the_same_numbers_and_lead_to_each_other(project: Path) -> None:
    english, spanish = (
        page(project, "two-soups/index.html"),
        page(project, "es/two-soups/index.html"),
    )
    assert 'data-gap="' in english
    number = english.split('data-gap="')[1].split('"')[0]
    assert f'data-gap="{number}"' in spanish
    assert 'href="../es/two-soups/index.html"' in english
    assert 'href="../../two-soups/index.html"' in spanish


def test_a_missing_text_is_named_and_shown_marked(project: Path) -> None:
    change(project, "lesson.es.yaml", "prompt: ¿Cuál tiene más?, ", "")
    assert mark_translated(project, "two-soups", "es")[1] == 1
    assert questions(project) == ["`stops.guess.prompt` is missing in lesson.es.yaml"]
    html = page(project, "es/two-soups/index.html")
    assert '<span lang="en" class="untranslated">Which bowl holds more?</span>' in html
    assert 'class="notice"' in html


def test_a_text_is_stale_once_its_original_changes_and_until_it_follows(project: Path) -> None:
    mark_translated(project, "two-soups", "es")
    assert questions(project) == []
    change(project, "lesson.yaml", "Which bowl holds more?", "Which bowl holds more salt?")
    assert questions(project) == ["`stops.guess.prompt` has changed since it was translated to es"]
    assert '<span class="untranslated">¿Cuál tiene más?</span>' in page(
        project, "es/two-soups/index.html"
    )
    change(project, "lesson.es.yaml", "¿Cuál tiene más?", "¿Cuál tiene más sal?")
    assert questions(project) == []


def test_marking_keeps_every_word_and_comment(project: Path) -> None:
    change(project, "lesson.es.yaml", "you_need:", "# a comment\nyou_need:")
    before = (project / "lessons/two-soups/lesson.es.yaml").read_text("utf-8")
    file, lacking = mark_translated(project, "two-soups", "es")
    assert lacking == 0
    once = file.read_text("utf-8")
    assert once.startswith(before)
    mark_translated(project, "two-soups", "es")
    assert file.read_text("utf-8") == once


def test_a_text_the_lesson_does_not_have_is_a_problem_with_a_way_out(project: Path) -> None:
    change(project, "lesson.es.yaml", "reveal:", "reveel:")
    with pytest.raises(LessonError) as caught:
        work(project)
    (problem,) = caught.value.problems
    assert (problem.place.path, problem.place.line) == ("lessons/two-soups/lesson.es.yaml", 5)
    assert "stops.guess.reveel" in problem.what
    assert "stops.guess.reveal" in problem.hint


def test_unkind_words_are_questioned_in_the_translation_too(project: Path) -> None:
    change(project, "lesson.es.yaml", "Ya veremos.", "Así quemas calorías.")
    (problem,) = work(project).questions
    assert problem.place.path == "lessons/two-soups/lesson.es.yaml"


def test_a_first_draft_asks_for_every_text_and_is_never_written_over(project: Path) -> None:
    file = project / "lessons/two-soups/lesson.es.yaml"
    file.unlink()
    assert begin_translation(project, "two-soups", "es") == (file, 0)
    assert "# Which bowl holds more?" in file.read_text("utf-8")
    missing = [what for what in questions(project) if "is missing" in what]
    assert len(missing) == 8
    with pytest.raises(LessonError, match="there already"):
        begin_translation(project, "two-soups", "es")


def test_a_script_is_asked_for_paragraph_by_paragraph(project: Path) -> None:
    lesson = project / "lessons/two-soups/lesson.yaml"
    stop = "reveal: We will see.}\n"
    script = "    say: |\n      Cold hands,\n      warm soup.\n\n      Two bowls.\n"
    lesson.write_text(lesson.read_text("utf-8").replace(stop, stop + script), "utf-8")
    file = project / "lessons/two-soups/lesson.es.yaml"
    file.unlink()
    begin_translation(project, "two-soups", "es")
    draft = file.read_text("utf-8")
    asked = "    # Cold hands, warm soup.\n    #\n    # Two bowls.\n    say: |\n"
    assert asked in draft
    missing = [what for what in questions(project) if "is missing" in what]
    file.write_text(
        draft.replace(asked, f"{asked}      Manos frías.\n\n      Dos tazones.\n"), "utf-8"
    )
    assert len([what for what in questions(project) if "is missing" in what]) == len(missing) - 1


def test_a_lesson_without_a_translation_is_not_offered(project: Path) -> None:
    (project / "lessons/two-soups/lesson.es.yaml").unlink()
    paths = {one.path for one in page_outputs(project)}
    assert "es/two-soups/index.html" not in paths
    assert "hreflang" not in page(project, "two-soups/index.html")
