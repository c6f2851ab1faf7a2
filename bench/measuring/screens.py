"""Measures of pages as a real Chromium shows them."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path
from statistics import median
from time import sleep

from playwright.sync_api import Browser, Page

from bench.measuring.files import lesson_pages
from tests.browser.test_pages import REACHABLE, SMALL
from tests.browser.watched import violations

PHONE = {"width": 390, "height": 844}
OPEN_ALL = "document.querySelectorAll('details').forEach(each => each.open = true)"
SHIFT = """() => new Promise(done => { new PerformanceObserver(list =>
    done(list.getEntries().reduce((sum, each) => sum + (each.hadRecentInput ? 0 : each.value), 0)))
  .observe({type: 'layout-shift', buffered: true}); setTimeout(() => done(0), 300) })"""
READY = """() => performance.getEntriesByName('ready')[0].startTime
  - performance.getEntriesByType('navigation')[0].responseEnd"""
# The script runs when the page is read; it is ready once a click is answered: the first idle task after that.
MARK = """addEventListener('DOMContentLoaded', () => setTimeout(() => performance.mark('ready')))"""
# Of buttons of which one is chosen, the Tab key reaches one only; the arrow keys reach the others.
ONE_OF_ITS_GROUP = """each => each.type !== 'radio'
  || each === (each.form.querySelector(`[name=${each.name}]:checked`) ?? each.form.querySelector(`[name=${each.name}]`))"""
STATES = {
    "light": {"color_scheme": "light"},
    "dark": {"color_scheme": "dark"},
    "320 px": {"color_scheme": "light", "viewport": {"width": 320, "height": 700}},
    "more contrast": {"color_scheme": "light", "contrast": "more"},
}


@contextmanager
def _page(browser: Browser, **options: object) -> Iterator[Page]:
    context = browser.new_context(**{"viewport": PHONE, **options})
    yield context.new_page()
    context.close()


@dataclass(frozen=True, slots=True)
class Look:
    """A built site, served, and the browser that looks at it."""

    browser: Browser
    address: str
    """Where the site is served, ending in a slash."""
    site: Path
    """Its folder."""
    most: int | None = None
    """How many lessons, widths and states are looked at; all of them where nothing is said."""

    def _addresses(self) -> list[str]:
        """Every page; of a small case the first few."""
        pages = sorted(self.site.rglob("*.html"))
        return [self._address(page) for page in pages[: self.most and 2 * self.most]]

    def _lessons(self) -> list[str]:
        return [self._address(page) for page in lesson_pages(self.site)[: self.most]]

    def _address(self, page: Path) -> str:
        return self.address + page.relative_to(self.site).as_posix()

    def layout_shift(self) -> float:
        """Layout Instability (W3C): the largest sum of a lesson page whose scripts come 0.4 s late."""
        largest = 0.0
        for lesson in self._lessons():
            for width in (320, 390, 1280)[: self.most]:
                with _page(self.browser, viewport={"width": width, "height": 800}) as page:
                    page.route("**/*.js", lambda route: (sleep(0.4), route.continue_()))
                    page.goto(lesson)
                    page.wait_for_load_state("networkidle")
                    page.wait_for_timeout(300)
                    largest = max(largest, page.evaluate(SHIFT))
        return largest

    def milliseconds_to_ready(self, times: int) -> float:
        """From the last byte of the HTML until the page's script has run and the way is free; the slowest lesson's median of five."""
        return max(
            median(_ready(self.browser, lesson) for _ in range(times)) for lesson in self._lessons()
        )

    def smallest_target(self) -> tuple[float, str]:
        """The smaller side of the smallest control of any page, in CSS pixels, and what it is."""
        every = SMALL.replace(
            ".filter(([, {width, height}]) => Math.min(width, height) < 43.99)", ""
        ).replace(
            "${Math.round(width)} x ${Math.round(height)}: ${html}",
            "${Math.min(width, height)} ${html}",
        )
        found = []
        with _page(self.browser, has_touch=True, is_mobile=True) as page:
            for each in self._addresses():
                page.goto(each)
                page.wait_for_load_state("networkidle")
                page.evaluate(OPEN_ALL)
                found += page.evaluate(f"({REACHABLE})(){every}")
        size, _, html = min(found, key=lambda line: float(line.split(" ", 1)[0])).partition(" ")
        return float(size), html[:24]

    def out_of_order(self) -> list[str]:
        """Controls that the Tab key reaches out of the order of the page, or does not reach (WCAG 2.4.3)."""
        found = []
        with _page(self.browser) as page:
            for each in self._lessons():
                page.goto(each)
                page.wait_for_load_state("networkidle")
                page.evaluate(OPEN_ALL)
                page.wait_for_timeout(500)  # what was opened may bring its own
                page.evaluate(f"window.reachable = ({REACHABLE})().filter({ONE_OF_ITS_GROUP})")
                reached = list(_tabbed(page))
                wanted = list(range(page.evaluate("reachable.length")))
                found += [
                    f"{each}: {page.evaluate('at => reachable[at]?.outerHTML.slice(0, 100)', want)}"
                    for got, want in zip_longest(reached, wanted)
                    if got != want
                ][:1]
        return found

    def breaches(self) -> list[str]:
        """What the policy of a page forbade it."""
        found: list[str] = []
        with _page(self.browser) as page:
            page.add_init_script(
                "addEventListener('securitypolicyviolation', each => console.error('BREACH ' + each.violatedDirective + ' ' + each.blockedURI))"
            )
            page.on(
                "console",
                lambda said: found.append(said.text) if said.text.startswith("BREACH") else None,
            )
            for each in self._addresses():
                page.goto(each)
                page.wait_for_load_state("networkidle")
        return found

    def accessibility(self) -> Iterator[tuple[str, list[str]]]:
        """All rules of axe-core on every page, as it comes and with everything open."""
        for name, options in list(STATES.items())[: self.most]:
            found = []
            with _page(self.browser, **options) as page:
                for each in self._addresses():
                    page.goto(each)
                    page.wait_for_load_state("networkidle")
                    found += _axe(page, each)
                    page.evaluate(OPEN_ALL)
                    found += _axe(page, each)
            yield name, sorted(set(found))


def _ready(browser: Browser, lesson: str) -> float:
    with _page(browser) as page:
        page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
        page.add_init_script(MARK)
        page.goto(lesson)
        return float(page.evaluate(READY))


def _tabbed(page: Page) -> Iterator[int]:
    last = -1
    for _ in range(
        20 * page.evaluate("reachable.length") + 20
    ):  # a video has controls of its own inside
        page.keyboard.press("Tab")
        at = page.evaluate("reachable.indexOf(document.activeElement)")
        if at < 0 <= last or at == 0 < last:  # out of the page, or round again
            return
        if at != last:
            yield at
        last = at


def _axe(page: Page, address: str) -> list[str]:
    return [f"{address}: {found}" for found in violations(page)]
