"""The page that reads finish codes: on every site, in each language, and given way to a page written by hand."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.compute.finish_layout import mark
from generator.present.output import Output
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.run import begin
from generator.steps.site import Site
from tests.html_page import read_html, text
from tests.site_project import copy_project, small_lesson, write_lesson


@pytest.fixture
def site(tmp_path: Path) -> Site:
    """A site in two languages with a lesson in the first one alone."""
    root = copy_project(tmp_path / "site", lessons=False)
    write_lesson(root, "small", small_lesson())
    return begin(root, root / "shown", preview=True, last={}).site()


def codes(site: Site, by_hand: ByHand) -> dict[str, str]:
    made = {one.path: one.content for one in other_files(site, by_hand)}
    return {path: made[path].decode() for path in made if path.endswith("codes.html")}


def test_it_stands_in_each_language_and_knows_every_lesson(site: Site) -> None:
    made = codes(site, ByHand((), ()))
    assert made.keys() == {"codes.html", "es/codes.html"}
    for path, file in (
        ("codes.html", "small/finish.json"),
        ("es/codes.html", "../small/finish.json"),
    ):
        (listed,) = (
            one for one in read_html(made[path]).iter("ul") if "data-lessons" in one.attrib
        )
        (lesson,) = listed.iter("li")
        assert lesson.get("data-file") == file
        assert lesson.get("data-lesson") == str(mark("small"))
    assert "Leer códigos finales" in text(read_html(made["es/codes.html"]))


def test_pages_may_lead_to_it(site: Site) -> None:
    assert {"codes.html", "es/codes.html"} <= site.map.lessons.keys()


def test_a_page_of_that_name_written_by_hand_stays(site: Site) -> None:
    mine = Output("codes.html", b"<p>Mine</p>", "Codes")
    made = codes(site, ByHand((mine,), ()))
    assert "Mine" in made["codes.html"]
    assert "<code-reader>" in made["es/codes.html"]


def test_what_is_fetched_of_a_lesson_lies_beside_it(site: Site) -> None:
    (lesson,) = site.lessons
    assert "small/finish.json" in {entry.path for entry, _ in lesson.pack.contents()}
