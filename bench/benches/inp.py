"""How soon the page answers somebody's first touch of each thing, on a processor four times slower."""

from __future__ import annotations

from collections.abc import Iterator

from playwright.sync_api import Browser, Page

from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.row import Case, NothingMeasuredError, Row, row
from bench.measuring.screens import PHONE
from tests.local_server import serving

LESSON = "river-walk/index.html"
# Event Timing (W3C): from the input to the next picture; what is shorter than 16 ms is not told.
LISTEN = """new PerformanceObserver(list => {
  for (const {duration, interactionId} of list.getEntries()) if (interactionId) (window.touched ??= []).push(duration);
}).observe({type: 'event', durationThreshold: 16, buffered: true})"""
SHORTEST = 16.0
TOUCHES = {
    "first check of a row": "form.gap-row:has([name=count]) [data-check]",
    "opening help": "form.gap-row:has([name=count]) [data-hint] > summary",
    "who is here": "button.who",
    "chart button": "[data-explore]",
    "showing a count": "move-card [data-show]:not([hidden])",
    "opening the pacer": "move-card [data-count-with]:not([hidden])",
    "starting the pacer": "dialog.pacer .button.filled",
}
"""What is touched, each on a page that was just opened."""
BEFORE = {
    "chart button": ".stop-compare > .helps > details[data-with-numbers] > summary",
    "starting the pacer": TOUCHES["opening the pacer"],
}
"""What is touched to come to it."""


def rows(case: Case) -> Iterator[Row]:
    """The best of several, for whatever else the machine does only makes a page slower."""
    with serving(built_demo()) as address, launched() as browser:
        for what in list(TOUCHES)[: 1 if case.small else None]:
            took = min(_touched(browser, address + LESSON, what) for _ in range(case.runs))
            yield row("inp", took, what)


def _touched(browser: Browser, address: str, what: str) -> float:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    page = context.new_page()
    page.add_init_script(LISTEN)
    page.goto(address)
    page.wait_for_load_state("networkidle")
    if what in BEFORE:
        _tap(page, BEFORE[what])
        page.wait_for_timeout(500)
    if what == "first check of a row":
        page.locator("form.gap-row:has([name=count]) [name=gap]").first.fill("1")
    page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
    page.evaluate("window.touched = []")
    _tap(page, TOUCHES[what])
    page.wait_for_timeout(1500)
    durations = page.evaluate("touched")
    context.close()
    return float(max(durations, default=SHORTEST))


def _tap(page: Page, selector: str) -> None:
    found = page.locator(selector)
    if not found.count():
        raise NothingMeasuredError(f"there is no {selector}")
    found.first.scroll_into_view_if_needed()
    found.first.tap()
