"""The report in a browser: charts from within itself, tables without scripts, nothing asked of anybody."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.report import report
from generator.model.tally import LessonKey, Reach, RightAnswers, StopDone, Tally, Twice
from generator.present.report.names import LessonNames
from generator.present.report.page import report_page
from generator.present.report.viewed import Read, report_view
from generator.present.words.say import Say
from tests.project import ROOT, library

SOUP, WALK = LessonKey("soup", "A1"), LessonKey("walk", "B2")
TALLY = Tally(
    reach=(Reach(SOUP, 120, 10), Reach(WALK, 80, 15)),
    stops=(StopDone(SOUP, "hello", 90), StopDone(WALK, "walk", 40)),
    twice=(Twice(SOUP, "hello", 20, 12, 30, 18),),
    right=(RightAnswers(WALK, "walk.gap", 80, 20, 30),),
    same=(),
    alike=(),
)
NAMES = {"soup": LessonNames("Soup <b> & more", {"hello": "A <b>hello</b>"}, {"hello": "Who?"})}


@pytest.fixture
def made(tmp_path: Path) -> str:
    """Address of a report that lies in a folder."""
    say = Say(library().words["en"])
    told = report_view(
        report(TALLY, {"soup": ("hello",)}, {}, 10), Read(0, 0), NAMES, "Kitchen", say
    )
    file = tmp_path / "report.html"
    file.write_text(report_page(told, say, ROOT / "theme"), "utf-8")
    return file.as_uri()


def test_charts_stand_above_their_tables(
    made: str, page: Page, axe: Callable[[Page], list[str]]
) -> None:
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(made)
    charts = page.locator("[data-chart]:visible")
    expect(charts).to_have_count(4)
    expect(page.locator("[data-chart=reach] .point")).to_have_count(2)
    expect(page.locator("[data-chart=question-1-1] .errorbar")).to_have_count(2)
    expect(page.locator("[data-chart=reach] .ytick")).to_have_text(["Soup <b> & more", "walk"])
    expect(page.get_by_role("cell", name="40 of 80")).to_be_visible()
    expect(page.locator(".stripe").first).to_be_hidden()
    assert asked == [made]
    assert axe(page) == []


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_narrow_and_in_either_light(
    made: str, page: Page, axe: Callable[[Page], list[str]], dark: bool
) -> None:
    page.set_viewport_size({"width": 320, "height": 700})
    page.emulate_media(color_scheme="dark" if dark else "light")
    page.goto(made)
    expect(page.locator("[data-chart=reach] .point")).to_have_count(2)
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    assert axe(page) == []


def test_in_print_the_tables_have_the_bars(made: str, page: Page) -> None:
    page.goto(made)
    expect(page.locator("[data-chart]:visible")).to_have_count(4)
    page.emulate_media(media="print")
    expect(page.locator("[data-chart]:visible")).to_have_count(0)
    expect(page.locator(".stripe:visible")).to_have_count(7)


def test_without_scripts(made: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(made)
    expect(page.locator("[data-chart]:visible")).to_have_count(0)
    expect(page.locator(".stripe:visible")).to_have_count(7)
    expect(page.get_by_role("heading", name="Soup <b> & more")).to_be_visible()
    expect(page.get_by_text("More went from wrong to right")).to_be_visible()
    context.close()
