"""Each page of the demo, visited once: it fits the screen, complains of nothing, and keeps nobody out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from time import sleep

import pytest
from playwright.sync_api import Browser, Page, Request

from tests.browser.watched import (
    OPEN_ALL,
    RUNS_OVER,
    unanswered,
    violations,
    wait_for_all,
    wait_for_answers,
    watch,
)
from tests.local_server import serving
from tests.site_project import ROOT

LESSONS = sorted(file.parent.name for file in (ROOT / "lessons").glob("*/lesson.yaml"))
IN_SPANISH = sorted(
    f"es/{file.parent.name}" for file in (ROOT / "lessons").glob("*/lesson.es.yaml")
)
LESSON_PAGES = {f"{lesson}/index.html" for lesson in (*LESSONS, *IN_SPANISH)}
WIDTHS = (320, 768, 1280)
BRING_ALL = "document.querySelectorAll('img[loading=lazy]').forEach(each => each.loading = 'eager')"


@dataclass(frozen=True, slots=True)
class Visit:
    """What was seen of a page."""

    over: Mapping[int, int]
    """By the width of the screen: pixels that the page is wider, all its details open. It is loaded
    on the narrowest and made wider, as a phone is turned."""
    complaints: tuple[str, ...]
    """Errors, breaches of the policy and requests to other hosts."""
    barriers: tuple[str, ...]
    """What axe finds on a narrow phone, all details open; on a lesson's page in the dark too."""


@pytest.fixture(scope="module")
def visits(browser: Browser, built_site: Path) -> dict[str, Visit]:
    """Every page by its path."""
    complaints: list[str] = []
    found = {}
    with serving(built_site) as address, browser.new_context(locale="en-US") as context:
        watch(context, complaints)
        waiting = unanswered(context)
        page = context.new_page()
        for file in sorted(built_site.rglob("*.html")):
            path = file.relative_to(built_site).as_posix()
            over, barriers = look(page, address + path, waiting, is_lesson=path in LESSON_PAGES)
            found[path] = Visit(over, tuple(complaints), barriers)
            complaints.clear()
    return found


def look(
    page: Page, address: str, waiting: set[Request], *, is_lesson: bool
) -> tuple[dict[int, int], tuple[str, ...]]:
    """How much too wide a page is by width, and its barriers; afterwards nothing of it is still to come."""
    page.set_viewport_size({"width": WIDTHS[0], "height": 800})
    page.emulate_media(color_scheme="light")
    page.goto(address)
    wait_for_all(page)
    page.evaluate(OPEN_ALL)
    page.evaluate(BRING_ALL)
    wait_for_answers(page, waiting)
    over = {}
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 800})
        over[width] = int(page.evaluate(RUNS_OVER))
    page.set_viewport_size({"width": WIDTHS[0], "height": 800})
    barriers = violations(page)
    if is_lesson:
        page.emulate_media(color_scheme="dark")
        barriers += violations(page)
    return over, tuple(barriers)


@pytest.mark.parametrize("width", WIDTHS)
def test_no_page_scrolls_sideways(visits: dict[str, Visit], width: int) -> None:
    """WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels without scrolling in two directions."""
    over = {path: visit.over[width] for path, visit in visits.items()}
    assert {path: pixels for path, pixels in over.items() if pixels > 0} == {}


def test_no_page_complains_when_served(visits: dict[str, Visit]) -> None:
    assert {path: visit.complaints for path, visit in visits.items() if visit.complaints} == {}


def test_axe_finds_nothing_on_any_page(visits: dict[str, Visit]) -> None:
    """All rules of axe-core, in every language of the demo: WCAG 2.2 A and AA, and best practice."""
    assert set(visits) >= LESSON_PAGES
    assert {path: visit.barriers for path, visit in visits.items() if visit.barriers} == {}


LATE = """<!doctype html><html lang="en"><title>t</title><body><details><img src="none.png" loading="lazy"></details>
<script>
if (innerWidth < 400) document.body.style.width = "500px";
fetch("slow.json").then(answer => setTimeout(() => console.error(`late: ${answer.status}`)));
</script></body></html>"""


def test_what_a_page_does_late_or_on_a_narrow_screen_alone_is_seen(
    browser: Browser, tmp_path: Path
) -> None:
    (tmp_path / "index.html").write_text(LATE, "utf-8")
    complaints: list[str] = []
    with serving(tmp_path) as address, browser.new_context() as context:
        watch(context, complaints)
        waiting = unanswered(context)
        context.route("**/slow.json", lambda route: (sleep(0.3), route.fulfill(status=200)))
        over, _ = look(context.new_page(), f"{address}index.html", waiting, is_lesson=False)
    assert over[320] > 0
    assert any("none.png" in one for one in complaints)
    assert any("late: 200" in one for one in complaints)
