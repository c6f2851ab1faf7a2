"""A learner goes through a whole lesson: by keyboard alone, without script, and along its real video."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from itertools import pairwise
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.moments import assert_halted, watch_moments
from tests.site_project import ROOT

Serve = Callable[[Path], str]

LESSONS = sorted((ROOT / "lessons").glob("*/lesson.yaml"))
FILMED = [file for file in LESSONS if re.search(r"^video:", file.read_text("utf-8"), re.MULTILINE)]
LESSON = (FILMED or LESSONS)[0].parent.name
NUMBER = re.compile(r"\d+(?:,\d{3})*(?:\.\d+)?")
FOCUSED = "document.activeElement.closest('section')?.id ?? ''"


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """Address of one lesson of the demo."""
    return f"{serve(built_site)}{LESSON}/index.html"


def numbers(text: str) -> list[Decimal]:
    return [Decimal(found.replace(",", "")) for found in NUMBER.findall(text)]


def held(row: Locator) -> list[Decimal]:
    """What both sides of a row hold, as the page shows it."""
    return [numbers(each.inner_text())[0] for each in row.locator(".holding b").all()]


def tab_to(page: Page, wanted: Locator, keys: int = 200) -> None:
    """Press Tab until something has the focus, as somebody does who sees no mouse."""
    for _ in range(keys):
        if wanted.evaluate("each => each === document.activeElement"):
            return
        page.keyboard.press("Tab")
    pytest.fail(f"the Tab key does not reach {wanted}")


def work_out(page: Page, row: Locator) -> None:
    """Answer a row from what it shows: the larger less the smaller, then how often one move fits."""
    first, second = held(row)
    gap = abs(first - second)
    answers = {"gap": gap}
    if row.locator("input[name=count]").count():
        answers["count"] = gap // Decimal(row.get_attribute("data-per") or "0")
    for name, answer in answers.items():
        tab_to(page, row.locator(f"input[name={name}]"))
        page.keyboard.type(str(answer))
    page.keyboard.press("Enter")
    expect(row.locator("[data-band]")).to_contain_text(re.compile(r"\w"))


def open_by_key(page: Page, summary: Locator) -> None:
    tab_to(page, summary)
    page.keyboard.press("Enter")
    expect(summary.locator("xpath=..")).to_have_attribute("open", "")


def test_a_whole_lesson_by_keyboard(page: Page, address: str) -> None:
    page.goto(address)
    stops = page.locator(".thread .stop").all()
    assert len(stops) > 3
    for stop in stops:
        for reveal in stop.locator("details[data-reveal] > summary").all():
            if "stop-ask" in (stop.get_attribute("class") or ""):
                open_by_key(page, reveal)
                expect(reveal.locator("xpath=following-sibling::*").first).to_be_visible()
        for row in stop.locator(".gap-row").all():
            if row.locator("input").count():
                work_out(page, row)
                expect(row).to_have_attribute("data-found", "")
    asked = page.locator(".stop-ask, .stop-compare")
    for knot in page.locator(".thread > li", has=asked).all():
        expect(knot).to_have_attribute("data-done", "")
    last = page.locator(".thread .stop").last
    tab_to(page, last.locator("a, button, summary").first)
    assert page.evaluate(FOCUSED) == last.get_attribute("id")


def test_what_was_worked_out_is_there_again_and_can_be_cleared(page: Page, address: str) -> None:
    page.goto(address)
    row = page.locator(".gap-row:has(input)").first
    work_out(page, row)
    page.reload()
    expect(row).to_have_attribute("data-found", "")
    expect(row.locator("input").first).not_to_have_value("")
    tab_to(page, page.locator("[data-clear]"))
    page.keyboard.press("Enter")
    expect(row.locator("input").first).to_have_value("")
    assert (
        page.evaluate("Object.keys(localStorage).filter(key => key.includes(location.pathname))")
        == []
    )


@pytest.fixture
def scriptless(browser: Browser) -> Iterator[Page]:
    """A page of a browser that runs no script."""
    context = browser.new_context(java_script_enabled=False)
    yield context.new_page()
    context.close()


def test_a_whole_lesson_without_script(scriptless: Page, address: str) -> None:
    """The answers in the workings are those of a subtraction and a division done here."""
    scriptless.goto(address)
    for row in scriptless.locator(".gap-row").all():
        working = row.locator("details[data-working]")
        if working.count():
            working.locator("> summary").click()
        else:
            working = row  # worked out as an example: it stands open
        first, second = held(row)
        larger, smaller, gap = max(first, second), min(first, second), abs(first - second)
        lines = [numbers(line) for line in working.locator(".working li").all_inner_texts()]
        assert [larger, smaller, gap] in lines
        per = Decimal(row.get_attribute("data-per") or "0")
        if per:
            rest = [gap % per] * bool(gap % per)
            assert lines[-1] == [gap, per, gap // per, *rest]
        expect(working.locator(".working + p")).to_be_visible()
    for reveal in scriptless.locator("details[data-reveal]").all():
        reveal.locator("> summary").click()
        expect(reveal.locator("p").first).to_be_visible()
    for stop in scriptless.locator(".thread .stop").all():
        expect(stop.locator("h2")).to_be_visible()
        if stop.get_attribute("data-at"):
            expect(stop.locator(".time")).to_have_text(re.compile(r"\d:\d\d"))


def test_the_video_stops_at_every_pause_until_the_learner_goes_on(page: Page, address: str) -> None:
    assert FILMED, "no lesson of the demo has a video"
    page.goto(address)
    video = page.locator("video")
    video.evaluate("each => { each.muted = true; each.playbackRate = 1; }")
    watch_moments(page)
    pauses = page.locator("pause-player").evaluate("each => JSON.parse(each.dataset.pauses)")
    assert pauses
    assert all(Decimal(before) <= Decimal(after) for (before, _), (after, _) in pairwise(pauses))
    for at, stop in pauses:
        # Start a little before the pause: the demo's videos take minutes.
        video.evaluate(
            "(each, at) => { each.currentTime = Math.max(each.currentTime, at - 0.5); }", float(at)
        )
        if video.evaluate("each => each.paused"):
            tab_to(page, video)
            page.keyboard.press("Space")
        heading = page.locator(f"#{stop} h2")
        expect(heading).to_be_focused()
        assert video.evaluate("each => each.paused")
        assert_halted(page, float(at))
        page.wait_for_timeout(300)  # what is shown is that nothing happens
        assert video.evaluate("each => each.paused"), f"{stop}: it went on by itself"
        tab_to(page, page.locator(f"#{stop} [data-go-on]"))
        page.keyboard.press("Enter")
        expect(page.locator(".thread > li", has=page.locator(f"#{stop}"))).to_have_attribute(
            "data-done", ""
        )
    page.wait_for_function(
        "!document.querySelector('video').paused || document.querySelector('video').ended"
    )


def test_the_captions_of_the_video_load(page: Page, address: str) -> None:
    assert FILMED, "no lesson of the demo has a video"
    page.goto(address)
    page.wait_for_function(
        "[...document.querySelector('video').textTracks].some(each => each.mode === 'showing' && each.cues?.length)"
    )
    assert page.locator("video").evaluate("each => each.error") is None
