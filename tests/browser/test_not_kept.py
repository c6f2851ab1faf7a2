"""With the server stopped a page that is not kept ends in ours, which leads to those that are."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.watched import violations
from tests.html_page import read_html
from tests.local_server import serving

KEPT = ("river-walk", "es/soup-night")
SIZES = ((320, "light"), (1280, "dark"))


@pytest.fixture(scope="module")
def stopped(
    browser: Browser, built_site: Path, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[Page, str]]:
    """A page, and the address of a site below a path of its host, of which two lessons were kept and the host is gone."""
    host = tmp_path_factory.mktemp("host")
    shutil.copytree(built_site, host / "kitchen")
    titled = host / "kitchen/river-walk/keep.json"
    told = titled.read_text("utf-8").replace("Packed for", "Packed & <b>tied</b> for")
    titled.write_text(told, "utf-8")
    with browser.new_context(locale="en-US") as context:
        page = context.new_page()
        with serving(host, gone_after=True) as address:
            site = f"{address}kitchen/"
            for lesson in KEPT:
                keep(page, f"{site}{lesson}/index.html")
            page.reload()  # the worker answers for it from now on
        yield page, site


def keep(page: Page, lesson: str) -> None:
    page.goto(lesson)
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    box.locator("button").first.click()
    box.get_by_role("button", name="Remove it").or_(
        box.get_by_role("button", name="Quitarla")
    ).wait_for()


def test_it_says_so_and_leads_to_the_lessons_that_are(stopped: tuple[Page, str]) -> None:
    page, site = stopped
    answer = page.goto(f"{site}two-days/notes.html")
    assert answer is not None
    read_html(answer.text())  # by the rules of the HTML Standard
    expect(page.locator("h1")).to_have_text("Not kept on this device")
    assert page.locator("html").get_attribute("lang") == "en-US"
    links = page.locator("li a")
    assert links.all_text_contents() == [
        "Packed & <b>tied</b> for the river walk",
        "Noche de sopa en el salón",
    ]
    assert [link.get_attribute("lang") for link in links.all()] == ["en-US", "es-US"]
    links.first.click()
    expect(page.locator("h1")).to_have_text("Packed for the river walk")
    assert page.url == f"{site}river-walk/index.html"


def test_it_speaks_the_language_of_the_address(stopped: tuple[Page, str]) -> None:
    page, site = stopped
    page.goto(f"{site}es/sources.html")
    expect(page.locator("h1")).to_have_text("No está guardada en este dispositivo")
    assert page.locator("html").get_attribute("lang") == "es-US"
    page.get_by_role("link", name="Todas las lecciones").click()
    assert page.url == f"{site}es/index.html"
    assert page.locator("html").get_attribute("lang") == "es-US"


def test_a_page_below_a_kept_lesson_that_is_not_kept_ends_there_too(
    stopped: tuple[Page, str],
) -> None:
    page, site = stopped
    page.goto(f"{site}river-walk/nothing/here.html")
    expect(page.locator("h1")).to_have_text("Not kept on this device")


@pytest.mark.parametrize("kept", ["river-walk/worksheet.html", "es/soup-night/", "care.html"])
def test_what_is_kept_still_comes_from_what_is_kept(stopped: tuple[Page, str], kept: str) -> None:
    page, site = stopped
    page.goto(site + kept)
    assert "Not kept" not in page.locator("h1").first.inner_text()
    assert page.evaluate("document.styleSheets.length") > 0


@pytest.mark.parametrize(("width", "scheme"), SIZES)
def test_it_has_the_sites_look_and_keeps_nobody_out(
    stopped: tuple[Page, str], width: int, scheme: str
) -> None:
    """WCAG 2.2, 1.4.10 Reflow; axe; it loads styles alone and reports nothing."""
    page, site = stopped
    said: list[str] = []
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("console", lambda told: said.append(told.text) if "Content" in told.text else None)
    page.set_viewport_size({"width": width, "height": 800})
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.goto(f"{site}market-drinks/index.html")
    assert page.evaluate("document.styleSheets.length") == 2
    assert page.evaluate("[...document.styleSheets].every(each => each.cssRules.length)")
    assert page.locator("script").count() == 0
    assert page.evaluate("document.scrollingElement.scrollWidth") <= width
    assert page.get_by_role("link").last.bounding_box() is not None
    for link in page.get_by_role("link").all():
        box = link.bounding_box()
        assert box is not None
        assert box["height"] >= 44  # as high as a thumb
    assert violations(page) == []
    assert said == []
