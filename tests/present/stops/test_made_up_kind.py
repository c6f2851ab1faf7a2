"""One more kind of stop: what DEVELOPERS.md lists is enough, and a half of it is told and never shown."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.html_page import having, read_page, text
from tests.made_papers import words
from tests.made_up_kind import (
    add_numbers,
    build_there,
    files_of_the_kind,
    project_with_the_kind,
    run_there,
)
from tests.site_project import ROOT

FOLDERS = {"": "en", "es/": "es"}
HEADING = {"en": "Water", "es": "Agua"}
PROMPT = {"en": "Which holds more water?", "es": "¿Cuál tiene más agua?"}
RIGHT = {"en": "Right is: A ripe plum", "es": "La correcta es: Una ciruela madura"}
PLAN = {"en": "Choose one of 2", "es": "Elegir una de 2"}


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return project_with_the_kind(tmp_path_factory.mktemp("kind") / "project")


@pytest.fixture(scope="module")
def site(project: Path) -> Path:
    done = build_there(project)
    assert done.returncode == 0, done.stderr
    return project / "site"


def test_it_takes_the_files_of_the_list_and_no_more_than_nine() -> None:
    listed = (ROOT / "DEVELOPERS.md").read_text("utf-8")
    steps = listed.partition("## A new kind of stop")[2].partition("\n## ")[0]
    told = set(re.findall(r"^\d+\. `([^`]*)`", steps, re.MULTILINE))
    assert {
        re.sub(r"/words/\w+", "/words/<language>", name.replace("quiz", "<kind>"))
        for name in files_of_the_kind()
    } == told
    assert len(files_of_the_kind()) <= 9


@pytest.mark.parametrize("folder", FOLDERS)
def test_it_is_on_the_page(site: Path, folder: str) -> None:
    page = read_page(site / folder / "plums/index.html")
    stop = next(having(page, "stop-quiz"))
    shown, language = text(stop), FOLDERS[folder]
    for said in (HEADING[language], PROMPT[language], RIGHT[language]):
        assert said in shown


@pytest.mark.parametrize("folder", FOLDERS)
def test_it_is_in_the_files_for_paper(site: Path, folder: str) -> None:
    papers, language = site / folder / "plums/papers", FOLDERS[folder]
    sheet, key = (words(papers / f"{name}-a4.pdf") for name in ("worksheet", "answers"))
    for said in (HEADING[language], PROMPT[language]):
        assert said in sheet
        assert said in key
    assert RIGHT[language] in key.rpartition(PROMPT[language])[2]


@pytest.mark.parametrize("folder", FOLDERS)
def test_it_is_on_paper_and_its_answer_on_the_key_alone(site: Path, folder: str) -> None:
    language = FOLDERS[folder]
    sheets = {
        name: text(read_page(site / folder / f"plums/{name}.html"))
        for name in ("worksheet", "answers")
    }
    assert all(PROMPT[language] in sheet for sheet in sheets.values())
    assert RIGHT[language] in sheets["answers"]
    assert RIGHT[language] not in sheets["worksheet"]


@pytest.mark.parametrize("folder", FOLDERS)
def test_it_is_in_the_notes_with_its_answer(site: Path, folder: str) -> None:
    language = FOLDERS[folder]
    notes = text(read_page(site / folder / "plums/notes.html"))
    assert PLAN[language] in notes
    assert RIGHT[language].partition(": ")[2] in notes


@pytest.mark.parametrize("folder", FOLDERS)
def test_it_is_on_the_slides(site: Path, folder: str) -> None:
    slides = text(read_page(site / folder / "plums/recording/slides.html"))
    assert PROMPT[FOLDERS[folder]] in slides
    assert {"en": "Choose, then check", "es": "Elige y comprueba"}[FOLDERS[folder]] in slides


def test_its_style_and_script_are_brought_and_it_is_read_aloud(site: Path) -> None:
    page = (site / "plums/index.html").read_text("utf-8")
    assert '<link rel="stylesheet" href="../assets/quiz.css">' in page
    assert "quiz-choice label{" in (site / "assets/quiz.css").read_text("utf-8")
    assert '<script defer src="../assets/quiz-en-US.js"></script>' in page
    script = (site / "assets/quiz-en-US.js").read_text("utf-8")
    assert 'define("quiz-choice"' in script
    assert "You have chosen" in script
    assert "Ya elegiste" in (site / "assets/quiz-es-US.js").read_text("utf-8")
    assert ".stop-quiz label" in (site / "assets/later-en-US.js").read_text("utf-8")


@pytest.mark.parametrize(
    ("name", "cut", "told"),
    [
        ("theme/stops/quiz/page.html", None, "theme/stops/quiz/page.html:1:1: "),
        ("generator/present/stops/quiz.py", None, "No module named"),
        ("generator/present/stops/quiz.py", "    plan=_plan,\n", "'plan'"),
        ("generator/model/stops/quiz.py", None, "generator/model/stops/quiz.py:1:1: "),
        ("generator/model/stops/quiz.py", ' = "quiz"\n', "generator/model/stops/quiz.py:1:1: "),
        ("site_data/words/es.yaml", 'plan_quiz: "Elegir una de {n}"\n', "`plan_quiz` is missing"),
    ],
)
def test_half_a_kind_is_a_sentence_and_never_a_traceback(
    tmp_path: Path, name: str, cut: str | None, told: str
) -> None:
    root = project_with_the_kind(tmp_path / "project")
    if cut is None:
        (root / name).unlink()
    else:
        whole = (root / name).read_text("utf-8")
        assert cut in whole
        (root / name).write_text(whole.replace(cut, "\n"), "utf-8")
    done = build_there(root)
    assert done.returncode == 1
    assert told in done.stderr
    assert "Traceback" not in done.stderr


def test_numbers_and_names_of_its_own_are_a_file_more_in_each_room(tmp_path: Path) -> None:
    root = project_with_the_kind(tmp_path / "project")
    add_numbers(root)
    traced = run_there(root, "trace", "plums")
    assert traced.stdout == "ciruela.choices: 2 times\n    lesson: as `choices:` has it\n"
    lesson = root / "lessons/plums/lesson.yaml"
    lesson.write_text(lesson.read_text("utf-8").replace("A dried plum", "A ripe plum"), "utf-8")
    told = run_there(root, "check")
    assert told.returncode == 1
    assert "`A ripe plum` is there twice" in told.stderr
    assert "Traceback" not in traced.stderr + told.stderr
