"""The page with all lessons in a table: on every site, in each language, made from the lessons alone."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.present.output import Output
from generator.present.pages.lesson_table import lesson_table
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.run import begin
from generator.steps.site import Site
from tests.html_page import read_html, read_page, text
from tests.site_project import copy_project, small_lesson, write_lesson


@pytest.fixture
def site(tmp_path: Path) -> Site:
    """A site in two languages with a lesson in the first one alone."""
    root = copy_project(tmp_path / "site", lessons=False)
    write_lesson(root, "small", small_lesson())
    return begin(root, root / "shown", preview=True, last={}).site()


def tables(site: Site, by_hand: ByHand) -> dict[str, str]:
    made = {one.path: one.content for one in other_files(site, by_hand)}
    return {path: made[path].decode() for path in made if path.split("/")[-1] == "lessons.html"}


def rows(page: Path) -> dict[str, Element]:
    """Every lesson of the demo's table by its address."""
    found = (row for row in read_page(page).iter("tr") if row.find("td") is not None)
    return {next(row.iter("a")).get("href") or "": row for row in found}


def test_it_stands_in_each_language_and_leads_to_every_lesson(site: Site) -> None:
    made = tables(site, ByHand((), ()))
    assert made.keys() == {"lessons.html", "es/lessons.html"}
    for path, href in (("lessons.html", "small/"), ("es/lessons.html", "../small/")):
        leads = {one.get("href") for one in read_html(made[path]).iter("a")}
        assert {f"{href}{name}.html" for name in ("index", "notes", "projector")} <= leads
    assert "Las lecciones de un vistazo" in text(read_html(made["es/lessons.html"]))
    assert {"lessons.html", "es/lessons.html"} <= site.map.lessons.keys()


def test_a_page_of_that_name_written_by_hand_stays(site: Site) -> None:
    mine = Output("lessons.html", b"<p>Mine</p>", "Lessons")
    made = tables(site, ByHand((mine,), ()))
    assert "Mine" in made["lessons.html"]
    assert "lesson-table" in made["es/lessons.html"]


def test_a_row_says_what_a_teacher_chooses_by(built_site: Path) -> None:
    row = rows(built_site / "lessons.html")["river-walk/index.html"]
    for says in (
        "Packed for the river walk",
        "Grades 3–5 · 20 minutes",
        "energy",
        "3.NBT.A.1 · 3.NBT.A.2 · 4.NBT.A.1",
        "Moves: Swim on land · Pick from the tree · Bottle lift",
        "Allergens: eggs, milk and wheat; read labels too.",
        "Captions: English and Español. Also in Español.",
    ):
        assert says in text(row)
    assert [one.get("src") for one in row.iter("img")] == ["river-walk/plums-flat.svg"]


def test_a_lesson_of_the_first_language_alone_is_listed_last_in_the_others(
    built_site: Path,
) -> None:
    found = rows(built_site / "es/lessons.html")
    assert next(iter(found)) == "river-walk/index.html"
    row = found["../bean-stew/index.html"]
    assert next(row.iter("a")).get("hreflang") == "en"
    assert "Grados 2–3 · 20 minutos · English" in text(row)


@pytest.mark.parametrize("path", ["lessons.html", "es/lessons.html"])
def test_every_file_it_leads_to_is_there(built_site: Path, path: str) -> None:
    page = built_site / path
    leads = [one.get("href") or "" for row in rows(page).values() for one in row.iter("a")]
    assert len(leads) == 6 * 5  # lesson, notes, projector, packets of both papers
    assert [href for href in leads if not (page.parent / href).is_file()] == []


@pytest.mark.parametrize(
    ("path", "called"), [("lessons.html", "US Letter"), ("es/lessons.html", "carta")]
)
def test_a_size_of_paper_is_called_as_everywhere_in_its_language(
    built_site: Path, path: str, called: str
) -> None:
    row = rows(built_site / path)["river-walk/index.html"]
    (label,) = (text(one) for one in row.iter("a") if "packet-letter" in (one.get("href") or ""))
    assert f"({called})" in label


def test_nothing_is_left_to_guess_where_a_lesson_has_little(site: Site) -> None:
    (one,) = site.entries("en")
    bare = replace(
        one, moves=(), allergens=(), all_looked_at=False, filmed=False, captions=(), shares=()
    )
    surround = site.presenters["en"].surround
    (row,) = lesson_table([bare], (), surround).lessons
    assert (row.moves, row.film, row.cover) == ("No moves.", "No video.", "")
    assert row.allergens == "Allergens: none plain; read labels. Not all foods were looked at yet."
    (row,) = lesson_table([replace(bare, allergens=None, filmed=True)], (), surround).lessons
    assert (row.allergens, row.film) == ("", "A film without captions.")
    none = site.presenters["en"].lesson_table((), ()).content.decode()
    assert "There is no lesson yet." in text(read_html(none))
