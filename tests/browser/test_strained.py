"""Every page for eyes that need more: letters twice as large, a page enlarged four times, forced colors."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests import chromium
from tests.browser.watched import OPEN_ALL, RUNS_OVER, violations
from tests.conftest import QUIET
from tests.local_server import serving

TWICE = "--blink-settings=defaultFontSize=32"
"""What a family sets in its browser; 16 is usual."""
WIDTHS = (390, 640, 1280)
ENLARGED = {"width": 320, "height": 256}
"""A window of 1280 by 1024 at 400 %, in CSS pixels (WCAG 2.2, 1.4.10, note 1)."""
TYPES = (
    "index.html", "es/index.html", "care.html", "404.html", "river-walk/index.html", "two-days/index.html",
    "bean-stew/index.html", "es/soup-night/index.html", "es/river-walk/practice.html", "river-walk/notes.html",
    "es/river-walk/projector.html",
    "es/garden-baskets/cards.html", "two-days/worksheet.html", "es/soup-night/answers.html",
    "market-drinks/transcript.html",
)  # fmt: skip
"""A page of each kind, both languages among them."""
COVERED = """() => [...document.querySelectorAll('*')].filter(each => {
  const { position, top } = getComputedStyle(each);
  return position === 'fixed' || (position === 'sticky' && top !== 'auto' && each.getBoundingClientRect().height > 60);
}).map(each => each.className)"""
"""What stays in the way while a page is scrolled."""
LOST = """() => {
  const clear = colour => colour === 'rgba(0, 0, 0, 0)';
  const lost = [];
  for (const each of document.querySelectorAll('body *')) {
    if (!each.checkVisibility() || each.closest('svg, video, .unseen') || /^(input|progress|select)$/i.test(each.tagName) || !each.clientWidth) continue;
    for (const part of [null, '::before', '::after']) {
      const style = getComputedStyle(each, part);
      if (part && /^(none|normal)$/.test(style.content)) continue;
      const says = part ? /[^"\\s]/.test(style.content) : each.childNodes.length;
      const lined = ['Top', 'Right', 'Bottom', 'Left'].some(side => parseFloat(style[`border${side}Width`]) && style[`border${side}Style`] !== 'none');
      const painted = !clear(style.backgroundColor) || /gradient/.test(style.backgroundImage);
      const empty = !part && !each.offsetHeight;
      if (painted && !says && !lined && !empty && style.forcedColorAdjust !== 'none' && parseFloat(style.height)) lost.push(`${each.tagName}.${each.className}${part ?? ''}`);
    }
  }
  return [...new Set(lost)];
}"""
"""Shapes that are nothing but a colour: a system that forces its own colors paints over them."""


@pytest.fixture(scope="module")
def large(browser: Browser, built_site: Path) -> Iterator[tuple[Page, str]]:
    """A page in a browser whose letters are twice as large, and the address of the demo."""
    program, own = chromium.find(), browser.browser_type
    large = own.launch(executable_path=program, args=[*QUIET, TWICE])
    with serving(built_site) as address:
        yield large.new_page(locale="en-US"), address
    large.close()


@pytest.fixture(scope="module")
def usual(browser: Browser, built_site: Path) -> Iterator[tuple[Page, str]]:
    with serving(built_site) as address, browser.new_context(locale="en-US") as context:
        yield context.new_page(), address


def opened(page: Page, address: str) -> None:
    page.goto(address)
    page.evaluate(OPEN_ALL)


def test_letters_twice_as_large_run_over_no_page(large: tuple[Page, str], built_site: Path) -> None:
    """WCAG 2.2, 1.4.4 Resize Text: 200 percent without loss of content."""
    page, address = large
    over = {}
    for file in sorted(built_site.rglob("*.html")):
        path = file.relative_to(built_site).as_posix()
        page.set_viewport_size({"width": WIDTHS[0], "height": 844})
        opened(page, address + path)
        assert (
            page.evaluate("parseFloat(getComputedStyle(document.documentElement).fontSize)") >= 32
        )
        for width in WIDTHS:
            page.set_viewport_size({"width": width, "height": 844})
            if (pixels := page.evaluate(RUNS_OVER)) > 0:
                over[path, width] = pixels
    assert over == {}


@pytest.mark.parametrize("path", TYPES)
def test_enlarged_four_times_nothing_runs_over_or_stays_in_the_way(
    usual: tuple[Page, str], path: str
) -> None:
    """WCAG 2.2, 1.4.10 Reflow and 2.4.11 Focus Not Obscured."""
    page, address = usual
    page.emulate_media(forced_colors="none")
    page.set_viewport_size({"width": ENLARGED["width"], "height": ENLARGED["height"]})
    opened(page, address + path)
    assert page.evaluate(RUNS_OVER) <= 0
    assert page.evaluate(COVERED) == []


@pytest.mark.parametrize("path", TYPES)
def test_forced_colors_paint_over_nothing_that_says_something(
    usual: tuple[Page, str], path: str
) -> None:
    """CSS Color Adjustment 1, 3: backgrounds, gradients and shadows are the system's there, borders stay."""
    page, address = usual
    page.set_viewport_size({"width": 390, "height": 844})
    page.emulate_media(forced_colors="none")
    opened(page, address + path)
    assert page.evaluate(LOST) == []
    page.emulate_media(forced_colors="active")
    assert violations(page) == []


PLANTED = """<!doctype html><html lang="en"><title>t</title><style>
i { display: block; width: 9px; height: 9px; background: plum } i + i { border: 1px solid } i + i + i { forced-color-adjust: none; border: 0 }
p::before { content: ""; display: block; height: 9px; background: linear-gradient(red, blue) }
</style><i></i><i></i><i></i><p>words</p></html>"""


def test_a_shape_that_would_be_painted_over_is_noticed(usual: tuple[Page, str]) -> None:
    page, _ = usual
    page.emulate_media(forced_colors="none")
    page.goto("about:blank")
    page.set_content(PLANTED)
    assert page.evaluate(LOST) == ["I.", "P.::before"]
