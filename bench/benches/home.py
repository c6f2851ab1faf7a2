"""How quick the front page is with many lessons: its bytes, its first picture, and every first choice."""

from __future__ import annotations

import re
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

from playwright.sync_api import Browser

from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.files import packed
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from tests.local_server import serving

ENTRY = re.compile(r'(<ul class="thread lessons">\n)(.*?)(</ul>)', re.DOTALL)
# From the choice to the picture after it, and whether just the right lessons are listed then.
CHOOSE = """value => new Promise(done => {
  const select = document.querySelector('[name=topic]');
  const lessons = [...document.querySelectorAll('[data-topics]')];
  const right = lessons.filter(each => !value || each.dataset.topics.split(' ').includes(value));
  select.value = value;
  const began = performance.now();
  select.dispatchEvent(new Event('change', {bubbles: true}));
  requestAnimationFrame(() => setTimeout(() => {
    const took = performance.now() - began;
    const shown = lessons.filter(each => each.checkVisibility());
    done([took, lessons.length > 0 && shown.length === right.length && shown.every(each => right.includes(each))]);
  }));
})"""
PAINTED = "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0"


def rows(case: Case) -> Iterator[Row]:
    """Each choice on a page that was just opened, for nobody chooses the same twice."""
    with tempfile.TemporaryDirectory() as folder:
        site = Path(shutil.copytree(built_demo(), Path(folder) / "site"))
        html = many(site / "index.html", case.lessons)
        yield told(f"front page of {case.lessons:,} lessons, packed", packed(html), "bytes")
        with serving(site) as address, launched() as browser:
            painted, _ = _opened(browser, address, "")
            yield told("front page, first picture, 4 times throttled", painted, "ms")
            topics = _topics(browser, address)
            if not topics:
                raise NothingMeasuredError("the front page offers no choice of topic")
            chosen = [_opened(browser, address, topic)[1] for topic in topics]
    yield row("choice", max(took for took, _ in chosen))
    yield row("listed", sum(not right for _, right in chosen))


def _topics(browser: Browser, address: str) -> list[str]:
    page = browser.new_page()
    page.goto(f"{address}index.html")
    page.locator("lesson-filter form").wait_for()
    found = page.locator("[name=topic] option").evaluate_all("all => all.map(each => each.value)")
    page.close()
    return [value for value in found if value]


def _opened(browser: Browser, address: str, topic: str) -> tuple[float, tuple[float, bool]]:
    """Ms to the first picture of a fresh page, and of its first choice with whether it lists rightly."""
    page = browser.new_page(viewport={"width": 390, "height": 844})
    page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
    page.goto(f"{address}index.html")
    page.locator("lesson-filter form").wait_for()
    painted = float(page.evaluate(PAINTED))
    took, right = page.evaluate(CHOOSE, topic)
    page.close()
    return painted, (float(took), bool(right))


def many(file: Path, lessons: int) -> bytes:
    """The front page with its entries over and over, each title with a number of its own."""

    def repeated(found: re.Match[str]) -> str:
        entries = [entry for entry in re.split(r"(?=<li data-grades)", found[2]) if entry.strip()]
        numbered = (
            entries[number % len(entries)].replace("</a></h2>", f" {number + 1}</a></h2>")
            for number in range(lessons)
        )
        return found[1] + "".join(numbered) + found[3]

    file.write_text(ENTRY.sub(repeated, file.read_text("utf-8")), "utf-8")
    return file.read_bytes()
