"""On a phone a learner reads at 18 px and more, and small print is no less than 16."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.watched import wait_for_all

LESSONS = ("river-walk", "es/garden-baskets", "two-days")
LINE = "svg.line"
"""Hops on a line: a picture that shrinks with a phone of 320 px, whose numbers the working says too."""
SMALL = ".quiet, .time, .answer label, .answer [data-check], svg text, i"
"""What may be small print: beside what is read, or said again in the text."""
SIZES = """([small, without]) => {
  const found = [];
  const walker = document.createTreeWalker(document.querySelector('.thread'), NodeFilter.SHOW_TEXT);
  for (let text; text = walker.nextNode();) {
    const parent = text.parentElement;
    if (!text.data.trim() || !parent.checkVisibility() || parent.closest(without + ', script, style, .unseen, video')) continue;
    const shape = parent.closest('svg');
    const scale = shape ? shape.getBoundingClientRect().width / shape.viewBox.baseVal.width : 1;
    found.push([parseFloat(getComputedStyle(parent).fontSize) * scale, Boolean(parent.closest(small)), text.data.trim()]);
  }
  return found;
}"""


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """The demo, served."""
    return serve(built_site)


@pytest.mark.parametrize("lesson", LESSONS)
@pytest.mark.parametrize("width", [320, 390])
def test_what_is_read_is_18_px_and_small_print_16(
    page: Page, address: str, lesson: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 844})
    page.goto(f"{address}{lesson}/index.html")
    wait_for_all(page)
    found = page.evaluate(SIZES, [SMALL, LINE if width < 390 else ".none"])
    assert len(found) > 30
    assert [text for size, small, text in found if size < (16 if small else 18) - 0.01] == []
