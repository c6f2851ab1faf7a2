"""The teaching notes say who read a lesson and what changed since, on the page and on paper, and no other page does."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest

from generator.author.papers import papers_of
from generator.author.reviewed import keep_review
from generator.making import make_lesson
from generator.present.papers.paper import Size
from generator.steps.library import checked_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from tests.made_papers import words
from tests.project import ROOT

ROLE = {"en": "registered dietitian", "es": "dietista registrada"}
READ = {
    "en": "Read on March 14, 2026 by: registered dietitian.",
    "es": "Leída el 14 de marzo de 2026 por: dietista registrada.",
}
SINCE = {
    "en": "Since then changed, and not seen by that reader:",
    "es": "Esto cambió después y quien la leyó no lo ha visto:",
}


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """One lesson of the demo, read in both languages."""
    for name in ("site_data", "theme", "lessons/river-walk"):
        shutil.copytree(ROOT / name, tmp_path / name)
    keep_review(tmp_path, "river-walk", ROLE, "2026-03-14", ("en", "es"))
    return tmp_path


def pages(root: Path) -> dict[str, str]:
    """The words of every page of the lesson, by its path, as a preview makes them."""
    library = checked_library(root)
    made = work_lesson(root, "lessons/river-walk/lesson.yaml", library)
    found = make_lesson(made.results, surroundings(root, library, preview=True))
    return {
        one.path: " ".join(re.sub(r"<[^>]+>", " ", one.content.decode()).split())
        for one in found
        if one.path.endswith(".html")
    }


def dearer(root: Path) -> None:
    """272 kcal × 155 g ÷ 100 = 421.6, shown as 420 and no longer 410 (21 CFR 101.9(c)(1))."""
    file = root / "site_data/foods.yaml"
    head, found, rest = file.read_text("utf-8").partition("  apple-pie-homemade:")
    file.write_text(head + found + rest.replace("energy: 265", "energy: 272", 1), "utf-8")


def test_a_lesson_as_it_was_read_says_by_whom_and_no_more(root: Path) -> None:
    told = pages(root)
    for path, language in (("river-walk/notes.html", "en"), ("es/river-walk/notes.html", "es")):
        assert READ[language] in told[path]
        assert SINCE[language] not in told[path]
    others = {path for path in told if not path.endswith("notes.html")}
    assert {path for path in others for says in READ.values() if says in told[path]} == set()


def test_what_changed_since_stands_beside_it(root: Path) -> None:
    dearer(root)
    told = pages(root)
    for path, language, pie in (
        ("river-walk/notes.html", "en", "Apple pie, 1 slice: 420 kcal"),
        ("es/river-walk/notes.html", "es", "Pay de manzana, 1 rebanada: 420 kcal"),
    ):
        after = told[path].partition(READ[language])[2]
        assert after.strip().startswith(SINCE[language])
        assert pie in after.replace("\N{NO-BREAK SPACE}", " ")
        assert "280" not in after.partition(SINCE[language])[2][:400], "the pizza is as it was read"


def test_a_changed_text_is_told_in_its_language_alone(root: Path) -> None:
    file = root / "lessons/river-walk/lesson.es.yaml"
    text = re.sub(r"(?m)^summary: .*$", "summary: Otra cosa.", file.read_text("utf-8"), count=1)
    file.write_text(text, "utf-8")
    told = pages(root)
    assert SINCE["en"] not in told["river-walk/notes.html"]
    assert f"{SINCE['es']} Toda la lección: 1 texto" in told["es/river-walk/notes.html"]


def test_where_nothing_holds_nothing_is_claimed(root: Path) -> None:
    file = root / "lessons/river-walk/reviewed.yaml"
    text = re.sub(r'\["[0-9a-f]{6}".*\]', '["000000"]', file.read_text("utf-8"))
    file.write_text(re.sub(r'of: ".*"', 'of: "x"', text), "utf-8")
    told = pages(root)
    assert "Who read this lesson" not in told["river-walk/notes.html"]
    assert "Quién leyó" not in told["es/river-walk/notes.html"]


def test_a_role_in_one_language_is_marked_as_that_on_pages_of_another(root: Path) -> None:
    keep_review(root, "river-walk", {"": "school nurse"}, "2026-04-01", ("en", "es"))
    library = checked_library(root)
    made = work_lesson(root, "lessons/river-walk/lesson.yaml", library)
    (page,) = (
        one
        for one in make_lesson(made.results, surroundings(root, library, preview=True))
        if one.path == "es/river-walk/notes.html"
    )
    marked = '<span lang="en" class="untranslated">school nurse</span>'
    assert marked in page.content.decode()


def test_paper_says_the_same(root: Path, tmp_path: Path) -> None:
    dearer(root)
    for one in papers_of(root, ["river-walk"], [Size.A4]):
        if "notes" in one.path:
            file = tmp_path / "notes.pdf"
            file.write_bytes(one.content)
            language = "es" if one.path.startswith("es/") else "en"
            said = words(file)
            assert READ[language] in said
            assert SINCE[language] in said
