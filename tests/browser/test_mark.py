"""The mark and the bob: a plum above the thread, beside the way home, and one in which the thread ends."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Page

LESSON = "river-walk/index.html"
PLACES = """() => {
  const top = document.querySelector('.top'), mark = getComputedStyle(top, '::before');
  const hangs = document.querySelector('.thread > li'), thread = getComputedStyle(hangs, '::before');
  return {
    mark: top.getBoundingClientRect().left + parseFloat(mark.left) + parseFloat(mark.width) / 2,
    thread: hangs.getBoundingClientRect().left + parseFloat(thread.left) + 1.5,
    home: top.querySelector('a').getBoundingClientRect().left,
    title: document.querySelector('h1').getBoundingClientRect().left,
    lines: [...top.querySelectorAll('a')].map(a => a.getBoundingClientRect().top),
    small: Math.min(...[...top.querySelectorAll('a')].map(a => a.getBoundingClientRect().height)),
    cut: mark.clipPath,
  };
}"""
BOB = """(li) => {
  const bob = getComputedStyle(li, '::after');
  return [bob.width, bob.height, bob.bottom, bob.clipPath.slice(0, 5), getComputedStyle(li, '::before').bottom];
}"""


@pytest.mark.parametrize("width", [320, 390, 768, 1280])
@pytest.mark.parametrize("path", [LESSON, f"es/{LESSON}"])
def test_the_head_is_one_line_and_stands_on_the_thread(
    page: Page, built_site: Path, serve: Callable[[Path], str], path: str, width: int
) -> None:
    """A thumb needs 44 pixels: WCAG 2.5.5 (R)."""
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(serve(built_site) + path)
    places = page.evaluate(PLACES)
    assert places["cut"].startswith("path(")
    assert places["mark"] == pytest.approx(places["thread"], abs=0.5)
    assert places["home"] == pytest.approx(places["title"], abs=0.5)
    assert len(places["lines"]) == 2
    assert len(set(places["lines"])) == 1
    assert places["small"] >= 44


@pytest.mark.parametrize("media", ["screen", "print"])
def test_the_thread_ends_in_the_bob_before_anybody_is_there(
    page: Page,
    built_site: Path,
    serve: Callable[[Path], str],
    media: Literal["screen", "print"],
) -> None:
    page.emulate_media(media=media)
    page.goto(serve(built_site) + LESSON)
    end = page.locator(".thread > li").last
    assert end.get_attribute("aria-current") is None
    assert end.evaluate(BOB) == [
        "26px",
        "36px",
        "0px",
        "path(",
        "30px",
    ]  # the thread goes to its stem


@pytest.mark.parametrize("width", [320, 768])
@pytest.mark.parametrize(
    "path", ["index.html", "care.html", "river-walk/notes.html", "river-walk/practice.html"]
)
def test_where_no_thread_hangs_it_lies_over_no_way(
    page: Page, built_site: Path, serve: Callable[[Path], str], path: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(serve(built_site) + path)
    begins, link, tops = page.evaluate(
        """() => {
          const top = document.querySelector('.top'), mark = getComputedStyle(top, '::before');
          const links = [...top.querySelectorAll('a')].map(each => each.getBoundingClientRect());
          const edge = top.getBoundingClientRect().left + parseFloat(getComputedStyle(top).paddingLeft);
          const free = parseFloat(mark.marginLeft) + parseFloat(mark.width);
          return [mark.position === 'relative' ? edge + free - 3 : Infinity, links[0].left, links.map(({ top }) => top)];
        }"""
    )
    assert begins <= link  # 26 pixels wide, and drawn a fifth smaller
    assert len(set(tops)) == 1
