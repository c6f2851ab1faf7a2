"""What only a preview shows: the guide and the pages for filming keep nobody out, and a draft says in words that it is one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from urllib.request import urlopen
from xml.etree.ElementTree import Element

import pytest
from playwright.sync_api import Page

from tests.browser.watched import OPEN_ALL, RUNS_OVER, wait_for_all
from tests.html_page import having, one, read_html, text
from tests.running_preview import Preview, previewing
from tests.site_project import ROOT, copy_project

GUIDE = sorted(file.stem for file in (ROOT / "lessons/guide").glob("*.md"))
PACK = ("index", "script", "slides")
PATHS = (
    *(f"guide/{name}.html" for name in GUIDE),
    *(f"river-walk/recording/{name}.html" for name in PACK),
)
BROKEN_WORDS = """() => {
  // A word that stands on two lines has two boxes; what is typed, and addresses, may be broken anywhere.
  const found = [];
  for (const cell of document.querySelectorAll(".prose :is(th, td)")) {
    const walker = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (node.parentElement.closest("code, a")) continue;
      for (const {index, 0: word} of node.data.matchAll(/[\\p{L}]+/gu)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        if (range.getClientRects().length > 1 && word.length < 12) found.push(word);
      }
    }
  }
  return found;
}"""


@pytest.fixture(scope="module")
def preview(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Preview]:
    """A preview of the demo as an educator starts it."""
    with previewing(copy_project(tmp_path_factory.mktemp("shown") / "site")) as running:
        yield running


@pytest.fixture
def quiet(page: Page) -> Page:
    """A page that waits for no change."""
    page.route("**/livereload/**", lambda route: route.fulfill(status=204))
    return page


@pytest.mark.parametrize("path", PATHS)
def test_a_page_of_the_preview_keeps_nobody_out(
    quiet: Page, preview: Preview, axe: Callable[[Page], list[str]], path: str
) -> None:
    """All rules of axe-core, on a narrow phone in the light and a wide screen in the dark; WCAG 2.2, 1.4.10 Reflow."""
    quiet.set_viewport_size({"width": 320, "height": 800})
    quiet.goto(preview.address + path)
    wait_for_all(quiet)
    quiet.evaluate(OPEN_ALL)
    assert axe(quiet) == []
    assert quiet.evaluate(RUNS_OVER) <= 0
    quiet.set_viewport_size({"width": 390, "height": 844})
    assert quiet.evaluate(BROKEN_WORDS) == []
    quiet.set_viewport_size({"width": 1280, "height": 800})
    quiet.emulate_media(color_scheme="dark")
    assert axe(quiet) == []


@pytest.mark.parametrize("name", GUIDE)
def test_a_draft_says_so_in_words_in_a_landmark(preview: Preview, name: str) -> None:
    page = shown(preview, name)
    main = next(page.iter("main"))
    assert "Draft, only in this preview" in text(main)
    assert "DRAFT" not in text(next(page.iter("body")))
    back = [link for link in main.iter("a") if text(link) == "Guide for educators"]
    assert bool(back) == (name != "index")


@pytest.mark.parametrize("name", GUIDE)
def test_a_long_page_of_the_guide_lists_its_parts(preview: Preview, name: str) -> None:
    page = shown(preview, name)
    parts = [text(heading) for heading in one(page, "prose").iter("h2")]
    listed = [text(link) for nav in having(page, "contents", "nav") for link in nav.iter("a")]
    assert listed == (parts if len(parts) >= 4 else [])


def shown(preview: Preview, name: str) -> Element:
    """A page of the guide as the preview sends it; no script has a part in what is asked of it."""
    with urlopen(f"{preview.address}guide/{name}.html") as answer:
        return read_html(answer.read().decode())


def test_the_guide_is_not_published(built_site: Path) -> None:
    assert not (built_site / "guide").exists()
    assert not list(built_site.rglob("*390-light.webp"))
