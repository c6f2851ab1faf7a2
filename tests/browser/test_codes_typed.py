"""Codes and labels as people type and paste them, on the page that reads codes and in the table it saves."""

from __future__ import annotations

import csv
import json
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from generator.present.finish_file import finish_json
from generator.present.words.say import Say
from generator.read.finish_codes.file import read_file
from generator.read.finish_codes.row import CodeRow
from tests.browser.test_code_reader import CODE, OTHER, cells, read
from tests.project import library
from tests.site_data.test_lessons import RESULTS


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def symbols(code: str) -> str:
    """A code as the report compares it."""
    return code.replace("-", "")


@pytest.mark.parametrize(
    "typed",
    [
        CODE.lower().replace("0", "o").replace("1", "l"),
        CODE.replace("0", "O").replace("1", "I"),
        CODE.replace("-", " "),
        CODE.replace("-", ""),
        CODE.replace("-", "\u2013"),
        f"\u200f{CODE}\u200e",
        f"\u2066{CODE.lower()}\u2069",
        f"\ufeff{CODE}\t",
    ],
    ids=["lower", "upper", "spaces", "nothing", "dashes", "marks", "isolates", "sign of order"],
)
def test_however_a_code_is_typed_the_table_has_it_as_it_was_shown(
    page: Page, site: str, typed: str, tmp_path: Path
) -> None:
    """Crockford's base 32: O is 0, I and L are 1, hyphens and small letters count nothing."""
    page.goto(f"{site}codes.html")
    read(page, f"{typed}\n{CODE}")
    status = page.locator("code-reader [role=status]")
    expect(status).to_contain_text("2 codes read. 1 is the same as another one; two children")
    first, second = saved(page, tmp_path)
    assert first == second
    assert first.code == symbols(CODE)


LABELS = (
    'Ana, 4b; "the tall one" \'s',
    "=cmd|' /C calc'!A0",
    "+1 555, @home",
    "\u202egnirts a\u202c \u05d0\u05d1",
    "\u0645\u0631\u06cc\u0645\u200c\u0647\u0627",
    "<b>Zo\u00eb</b> & Bo\ttwo",
)


def test_whatever_a_label_is_it_stays_one_cell(page: Page, site: str, tmp_path: Path) -> None:
    """Commas, quotes, what a spreadsheet reckons with, letters from the right, marks that turn letters around."""
    page.goto(f"{site}codes.html")
    read(page, "".join(f"{label} {CODE}\r\n" for label in LABELS))
    shown = [" ".join(label.split()) for label in LABELS]
    assert [row[0] for row in cells(page)] == shown
    isolated = "each => getComputedStyle(each).unicodeBidi"
    assert page.locator("code-reader tbody bdi").first.evaluate(isolated) == "isolate"
    assert len(saved(page, tmp_path)) == len(LABELS)
    rows = list(csv.reader((tmp_path / "codes.csv").read_text("utf-8-sig").splitlines()))[1:]
    assert [row[0].removeprefix("'") for row in rows] == shown
    assert not [cell for row in rows for cell in row if cell[:1] in tuple("=+-@\t\r")]


def saved(page: Page, folder: Path) -> list[CodeRow]:
    """The table as the report reads it, every row of it."""
    with page.expect_download() as download:
        page.get_by_role("button", name="Save as a table (CSV)").click()
    download.value.save_as(folder / "codes.csv")
    rows = list(read_file(folder / "codes.csv", "codes.csv"))
    assert [row for row in rows if not isinstance(row, CodeRow)] == []
    return [row for row in rows if isinstance(row, CodeRow)]


def test_a_code_that_fits_two_lessons_waits_for_her_to_choose(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    page.evaluate(
        """() => {
          const { lessons } = document.querySelector("code-reader").reading;
          const soup = lessons.find(({ title }) => title.includes("Soup night"));
          lessons.push({ ...soup, title: "Another soup", file: "another/finish.json" });
        }"""
    )
    told = json.loads(finish_json(RESULTS["soup-night"], Say(library().words["en"])))
    page.route(
        "**/another/finish.json",
        lambda route: route.fulfill(json=told | {"title": "Another soup"}),
    )
    read(page, f"Ana {CODE}\nBo {OTHER}")
    status = page.locator("code-reader [role=status]")
    expect(status).to_have_text(
        "2 codes read. 1 of them fits two lessons. Until you choose one in the table, it is neither counted nor saved."
    )
    assert page.locator("code-reader section h3").all_inner_texts() == ["Packed for the river walk"]
    page.get_by_role("combobox", name="Lesson").select_option("Another soup")
    expect(status).to_have_text("2 codes read.")
    assert [row[:2] for row in cells(page)] == [
        ["Ana", "Another soup"],
        ["Bo", "Packed for the river walk"],
    ]
    titles = page.locator("code-reader section h3").all_inner_texts()
    assert titles == ["Another soup", "Packed for the river walk"]
