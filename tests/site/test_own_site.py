"""Nothing of the demo is needed: a site of one's own builds without its lessons and its second language."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.cli.commands import commands as main
from tests.html_page import pages, read_page
from tests.site_project import copy_project, run_mkdocs, small_lesson, write_lesson

DEMO = ("bean-stew", "garden-baskets", "market-drinks", "river-walk", "soup-night", "two-days")


def built(project: Path) -> Path:
    """The site, made by the command an educator types; `check` agrees that it can be."""
    for word in ("check", "build"):
        done = CliRunner().invoke(main, [word, "--root", str(project)], catch_exceptions=False)
        assert done.exit_code == 0, done.output
    return project / "site"


def speak(project: Path, languages: str) -> None:
    """Set the languages of a site."""
    file = project / "site_data/site.yaml"
    file.write_text(
        re.sub(r"languages: .*", f"languages: {languages}", file.read_text("utf-8")), "utf-8"
    )


@pytest.mark.parametrize("gone", [DEMO[3:4], DEMO[:5], DEMO], ids=["one", "five", "all"])
def test_demo_lessons_can_be_taken_out(tmp_path: Path, gone: tuple[str, ...]) -> None:
    project = copy_project(tmp_path)
    for name in gone:
        shutil.rmtree(project / "lessons" / name)
    site = built(project)
    assert {page.parent.name for page in site.glob("*/notes.html")} == set(DEMO) - set(gone)
    assert run_mkdocs(project, "--strict").exit_code == 0


@pytest.mark.parametrize("languages", ["[en]", "[es]"])
def test_one_language_is_enough(tmp_path: Path, languages: str) -> None:
    project = copy_project(tmp_path)
    speak(project, languages)
    site = built(project)
    assert (site / "teachers.html").is_file()
    assert not (site / "es").exists()


def test_a_site_with_one_lesson_of_her_own_and_one_language(tmp_path: Path) -> None:
    project = copy_project(tmp_path)
    for name in DEMO:
        shutil.rmtree(project / "lessons" / name)
    shutil.rmtree(project / "lessons" / "es")
    speak(project, "[en]")
    write_lesson(project, "small", small_lesson())
    site = built(project)
    text = (site / "teachers.html").read_text("utf-8")
    assert 'href="small/index.html"' in text
    assert not any(name in page.read_text("utf-8") for name in DEMO for page in pages(site))


def test_pages_of_a_language_that_is_off_are_told(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    (project / "lessons/es").mkdir()
    (project / "lessons/es/care.md").write_text("# Cuidado\n", "utf-8")
    speak(project, "[en]")
    done = CliRunner().invoke(main, ["check", "--root", str(project)], catch_exceptions=False)
    assert "lessons/es:1:1: the pages in lessons/es/ are not published" in done.stderr
    assert done.exit_code == 0


def test_the_teachers_page_lists_the_lessons_there_are(built_site: Path) -> None:
    rows = {
        language: [
            "|".join("".join(cell.itertext()).strip() for cell in row)
            for row in read_page(built_site / language / "teachers.html").iter("tr")
        ]
        for language in ("", "es")
    }
    assert len(rows[""]) == len(rows["es"]) == 7
    english, spanish = "\n".join(rows[""]), "\n".join(rows["es"])
    assert (
        "Soup night in the hall|sodium|subtracting into the thousands, dividing by twenty"
        in english
    )
    assert "Noche de sopa en el salón|sodio|restar con millares, dividir entre veinte" in spanish
    assert "Spoon by spoon (English)|azúcares|" in spanish


def test_a_lesson_without_a_word_on_arithmetic_is_listed_by_its_standards(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    shutil.copy(copy_project(tmp_path / "demo") / "lessons/teachers.md", project / "lessons")
    for name in ("sources.md", "care.md"):
        (project / "lessons" / name).write_text("# Page\n", "utf-8")
    write_lesson(project, "small", small_lesson(standards=["3.NBT.A.2", "9.XY"]))
    listed = (built(project) / "teachers.html").read_text("utf-8")
    assert "<td>Add and subtract within 1,000 using place value. 9.XY</td>" in listed
