"""How quick the front page is with many lessons: its bytes, its first picture, and every first choice."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path

from playwright.sync_api import Browser

from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.files import packed
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from generator.present.pages.home import MANY
from tests.front_page import site_of_many
from tests.local_server import serving

# From the choice to the picture after it, and whether just the right lessons are listed then. What a
# field tells when somebody chooses or types is told here: `input`, and after a choice `change`.
CHOOSE = """([name, value]) => new Promise(done => {
  const field = document.querySelector(`lesson-filter [name=${name}]`);
  const lessons = [...document.querySelectorAll('[data-topics]')];
  const topics = each => each.dataset.topics.split(' ');
  const right = lessons.filter(name === 'word' ? each => each.textContent.toLowerCase().includes(value)
    : each => value.startsWith('-') ? !topics(each).includes(value.slice(1)) : topics(each).includes(value));
  field.focus();  // whoever chooses or types has come to the field, an interaction of its own
  const began = performance.now();
  field.value = value;
  field.dispatchEvent(new Event('input', {bubbles: true}));
  if (name !== 'word') field.dispatchEvent(new Event('change', {bubbles: true}));
  requestAnimationFrame(() => setTimeout(() => {
    const took = performance.now() - began;
    const shown = lessons.filter(each => each.checkVisibility());
    done([took, lessons.length > 0 && right.length > 0 && shown.length === right.length && shown.every(each => right.includes(each))]);
  }));
})"""
WORD = "river walk"
PAINTED = "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0"


def rows(case: Case) -> Iterator[Row]:
    """Each choice on a page that was just opened, for nobody chooses the same twice."""
    with tempfile.TemporaryDirectory() as folder:
        lessons = max(case.lessons, MANY)
        site = site_of_many(built_demo(), Path(folder) / "site", lessons)
        html = (site / "index.html").read_bytes()
        yield told(f"front page of {lessons:,} lessons, packed", packed(html), "bytes")
        with serving(site) as address, launched() as browser:
            painted, searched = _opened(browser, address, ("word", WORD))
            yield told("front page, first picture, 4 times throttled", painted, "ms")
            topics = _topics(browser, address)
            if not topics:
                raise NothingMeasuredError("the front page offers no choice of topic")
            tried = topics[:2] if case.small else topics
            chosen = [_opened(browser, address, ("topic", topic))[1] for topic in tried]
    chosen.append(searched)
    yield row("choice", max(took for took, _ in chosen))
    yield row("listed", sum(not right for _, right in chosen))


def _topics(browser: Browser, address: str) -> list[str]:
    page = browser.new_page()
    page.goto(f"{address}index.html")
    page.locator("lesson-filter form").wait_for()
    found = page.locator("[name=topic] option").evaluate_all("all => all.map(each => each.value)")
    page.close()
    return [value for value in found if value]


def _opened(
    browser: Browser, address: str, choice: tuple[str, str]
) -> tuple[float, tuple[float, bool]]:
    """Ms to the first picture of a fresh page, and of its first choice with whether it lists rightly.

    Args:
        browser: that opens the page.
        address: of the site.
        choice: name of the field, and what is put there.
    """
    page = browser.new_page(viewport={"width": 390, "height": 844})
    page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
    page.goto(f"{address}index.html")
    page.locator("lesson-filter form").wait_for()
    painted = float(page.evaluate(PAINTED))
    took, right = page.evaluate(CHOOSE, list(choice))
    page.close()
    return painted, (float(took), bool(right))
