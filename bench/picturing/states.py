"""What is done on a page before its picture is taken."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Locator, Page

_ANSWERED = """async () => {
  for (let turn = 0; turn < 1000 && !navigator.serviceWorker.controller; turn++) await new Promise((go) => setTimeout(go, 10));
}"""
"""Until a worker answers for the page."""


def at(selector: str) -> Callable[[Page], None]:
    """Show what a selector finds first at the top of the screen."""

    def go(page: Page) -> None:
        _to(page.locator(selector).first)

    return go


def named(stop: str) -> Callable[[Page], None]:
    """Show the stop of this name alone, on the page that other sites show."""

    def go(page: Page) -> None:
        page.evaluate("name => { location.hash = name; }", stop)

    return go


def gap_found(page: Page) -> None:
    """The first row that asks with its gap and count found, the second with its numbers added."""
    rows = page.locator("form[data-gap]:has([name=gap])")
    first, second = rows.nth(0), rows.nth(1)
    first.locator("[name=gap]").fill(first.get_attribute("data-gap") or "")
    if first.locator("[name=count]").count():
        first.locator("[name=count]").fill(first.get_attribute("data-count") or "")
    first.locator("[data-check]").click()
    added = sum(int(second.get_attribute(side) or 0) for side in ("data-first", "data-second"))
    second.locator("[name=gap]").fill(str(added))
    second.locator("[data-check]").click()
    _to(first)


def counts_shown(page: Page) -> None:
    """Movement cards, their counts shown."""
    page.evaluate(
        "document.querySelectorAll('[data-show]:not([hidden])').forEach(each => each.click())"
    )
    _to(page.locator(".stop-move .moves").first)


def pacer_open(page: Page) -> None:
    """The pacer of the first move, ready to start."""
    counts_shown(page)
    page.get_by_role("button", name="Count with me").first.click()
    page.get_by_role("button", name="We are ready").click()


def kept(page: Page) -> None:
    """A lesson that is kept on the device."""
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    box.locator("button").first.click()
    box.get_by_role("button", name="Remove it").wait_for()
    page.evaluate("navigator.serviceWorker.ready")
    page.reload()  # the worker answers for it from now on
    page.evaluate(_ANSWERED)


def asked_for_another(page: Page) -> None:
    """A page that is not kept, where another lesson is."""
    page.goto(page.url.replace("river-walk/index", "two-days/notes"))


def who_open(page: Page) -> None:
    """The row in which a learner picks a thing of Larkmead."""
    page.locator(".who").first.click()


def ended(page: Page) -> None:
    """The ending, its drawing opened."""
    page.evaluate(
        "document.querySelectorAll('lesson-ending details').forEach(each => each.open = true)"
    )
    _to(page.locator("lesson-ending").first)


def answer_shown(page: Page) -> None:
    """The first row of a comparison on a projector that asks for something, its working shown."""
    while not page.locator("[data-shown] [data-working]:visible").count():
        page.keyboard.press("PageDown")
    page.locator("[data-answers]").click()


def problem_solved(page: Page) -> None:
    """Practice with one problem solved and one not yet."""
    first, second = (page.locator(".problems form").nth(number) for number in (0, 1))
    gap = abs(_number(first, "data-first") - _number(first, "data-second"))
    first.locator("[name=gap]").fill(str(gap))
    first.locator("[data-check]").click()
    second.locator("[name=gap]").fill("1")
    second.locator("[data-check]").click()
    _to(page.locator(".problems"))


def _number(form: Locator, name: str) -> int:
    return int(form.get_attribute(name) or 0)


def _to(place: Locator) -> None:
    place.evaluate("each => each.scrollIntoView()")
