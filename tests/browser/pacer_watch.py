"""Measures how late the pacer's numbers come on a busy page, by the real clock, for the bench."""

from __future__ import annotations

from playwright.sync_api import Locator, Page

LATE = 50
"""ms a number may come late, or early; the limit this project set itself."""
BUSY = 220
"""ms the page does nothing but work, once in 700 ms: as long as a slow phone takes for a large picture."""

WATCH = """busy => {
  window.changes = [];
  window.blocks = [];
  const number = document.querySelector('.pacer-number b');
  new MutationObserver(() => changes.push([Number(number.textContent), performance.now()])).observe(number, {childList: true});
  setInterval(() => {
    const from = performance.now();
    while (performance.now() - from < busy);
    blocks.push([from, performance.now()]);
  }, 700);
  const go = document.querySelector('.pacer .filled');
  go.addEventListener('click', () => { window.began = performance.now(); }, {capture: true, once: true});
}"""


def latest(page: Page, pacer: Locator, seconds: int) -> float:
    """Start an opened pacer and watch it; how many ms its worst number was away from when it could come.

    A number can come when it is due or, if the page is at work just then, when that work is over.
    """
    page.evaluate(WATCH, BUSY)
    pace = int(pacer.locator(".pacer-pace b").inner_text().split()[0])
    pacer.get_by_role("button", name="Start").click()
    page.wait_for_timeout(seconds * 1000)
    began, changes, blocks = page.evaluate("[began, changes, blocks]")
    assert len(changes) >= seconds * pace // 60 - 1, "numbers are missing"
    assert len(blocks) > seconds, "the page was not busy"
    away = []
    for number, came in changes:
        due = began + number * 60_000 / pace
        free = next((end for start, end in blocks if start <= due <= end), due)
        away.append(max(came - free, due - came))
    return max(away)
