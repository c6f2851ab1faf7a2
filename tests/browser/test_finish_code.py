"""The code at the end of a lesson, in a real Chromium: what it tells, and what it does not."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from generator.compute.finish_code import Done, Finished, Found, Told, read_code
from generator.compute.finish_layout import FinishLayout, finish_layout
from tests.shared_context import OWN_CONTEXT
from tests.site_data.test_lessons import RESULTS

LAYOUTS = {name: finish_layout(result) for name, result in RESULTS.items()}
SOUP = LAYOUTS["soup-night"]
BROTH = "soups.soup-chicken-broth_soup-vegetable-broth"
BROTH_ROW = "#soups--soup-chicken-broth_soup-vegetable-broth"
BEANS = "soups.soup-black-bean-canned_soup-black-bean-restaurant"
SPANISH = ["es/river-walk", "es/soup-night", "es/garden-baskets"]


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def button(page: Page) -> Locator:
    return page.get_by_role("button", name="Show a code for my teacher")


def code_of(page: Page) -> str:
    page.locator("finish-code button").first.click()
    output = page.locator("finish-code output")
    expect(output).to_be_visible()
    return output.inner_text()


def told(page: Page, layout: FinishLayout = SOUP) -> Finished:
    """What the page's code tells, read by Python."""
    read = read_code(code_of(page), list(LAYOUTS.values()))
    assert not isinstance(read, str), read
    ((own, finished),) = read
    assert own == layout
    return finished


def found(page: Page) -> dict[str, Found]:
    """How each answer was found, by its name, where it was."""
    answers = zip(SOUP.answers, told(page).answers, strict=True)
    return {name: how for name, how in answers if how is not Found.NOT}


def check(form: Locator, **entries: str) -> None:
    for name, text in entries.items():
        form.locator(f"input[name={name}]").fill(text)
    form.locator("[data-check]").click()
    expect(form.get_by_role("status").first).not_to_be_empty()


def choose(page: Page, stop: str, *, right: bool) -> None:
    form = page.locator(f"#{stop} form")
    answer = form.get_attribute("data-answer")
    wanted = f"[value='{answer}']" if right else f":not([value='{answer}'])"
    form.locator(f"input[type=radio]{wanted}").first.check()
    form.locator("[data-check]").click()


def kept_under(answer: str) -> str:
    """What a page keeps an answer under, by its name in the lesson."""
    stop, _, rest = answer.partition(".")
    row, _, what = rest.rpartition(".")
    if what == "lean":
        return f"day {stop} lean"
    return f"{stop}--{row} {what}" if row else f"{stop}--answer answer"


@pytest.mark.parametrize("lesson", [*sorted(RESULTS), *SPANISH])
def test_a_page_and_python_have_the_same_places(page: Page, site: str, lesson: str) -> None:
    """Every answer, stop and pair is kept in a pattern; its code is read with the lesson's own layout."""
    layout = LAYOUTS[lesson.removeprefix("es/")]
    pattern = [("no", Found.NOT), ("later", Found.LATER), ("first", Found.FIRST)]
    answers = [pattern[at % 3] for at in range(len(layout.answers))]
    stops = [at % 2 == 0 for at in range(len(layout.stops))]
    kept = {
        f"tried {kept_under(name)}": said
        for name, (said, _) in zip(layout.answers, answers, strict=True)
    }
    kept |= {f"done {stop}": "yes" for stop, done in zip(layout.stops, stops, strict=True) if done}
    kept |= {f"tried {one.before}--answer answer": "no" for one in layout.twice}
    page.goto(f"{site}{lesson}/index.html")
    expect(page.locator("finish-code button").first).to_be_visible()
    page.evaluate(
        "([lesson, kept]) => localStorage.setItem(`plumline-2 / boat/${lesson}`, kept)",
        [lesson.removeprefix("es/"), json.dumps({**kept, "seen": "1260"})],
    )
    after = [answers[at][1] for at in layout.asked_again]
    assert told(page, layout) == Finished(
        stops=tuple(map(Done, stops)),
        answers=tuple(how for _, how in answers),
        before=(Told.WRONG,) * len(layout.twice),
        after=tuple(Told.RIGHT if how is Found.FIRST else Told.WRONG for how in after),
        step=4,
    )


def test_right_at_first_later_and_not_yet(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    row = page.locator(BROTH_ROW)
    check(row, gap="330", count="13")
    check(row, gap="270")
    beans = page.locator("#soups--soup-black-bean-canned_soup-black-bean-restaurant")
    check(beans, gap="430", count="22")
    assert found(page) == {
        f"{BROTH}.gap": Found.LATER,
        f"{BROTH}.count": Found.FIRST,
        f"{BEANS}.gap": Found.FIRST,
    }
    page.reload()
    expect(button(page)).to_be_visible()
    assert len(found(page)) == 3


def test_what_is_empty_or_cannot_be_read_is_no_try(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    check(page.locator(BROTH_ROW), gap="", count="lots")
    check(page.locator(BROTH_ROW), gap="270", count="13")
    assert set(found(page).values()) == {Found.FIRST}


def test_an_answer_that_was_looked_at_was_not_found_at_first(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    page.locator(f"{BROTH_ROW} [data-working] > summary").click()
    check(page.locator(BROTH_ROW), gap="270", count="13")
    page.locator("#whole-pot [data-reveal] > summary").click()
    check(page.locator("#whole-pot form"), answer="3680")
    assert found(page) == {
        f"{BROTH}.gap": Found.LATER,
        f"{BROTH}.count": Found.LATER,
        "whole-pot.answer": Found.LATER,
    }


@pytest.mark.parametrize(
    ("before", "after", "tells"),
    [
        ([False], [True], (Told.WRONG, Told.RIGHT)),
        ([True], [False, True], (Told.RIGHT, Told.WRONG)),
        ([False, True], [], (Told.RIGHT, Told.NOT)),  # nobody was told: the last one counts
        ([], [], (Told.NOT, Told.NOT)),
    ],
)
def test_before_and_after(
    page: Page, site: str, before: list[bool], after: list[bool], tells: tuple[Told, Told]
) -> None:
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    for right in before:
        choose(page, "the-most", right=right)
    for right in after:
        choose(page, "the-most-again", right=right)
    finished = told(page)
    assert (finished.before[0], finished.after[0]) == tells


def test_it_tells_which_stops_are_done(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    choose(page, "the-most", right=True)
    page.locator("#table-talk [data-go-on]").click()
    done = dict(zip(SOUP.stops, told(page).stops, strict=True))
    assert {stop for stop, is_done in done.items() if is_done} == {"the-most", "table-talk"}


def test_a_code_that_is_old_is_shown_no_more(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    code_of(page)
    page.locator(f"{BROTH_ROW} input").first.fill("2")
    expect(page.locator("finish-code output")).to_be_hidden()


def test_what_is_cleared_is_told_no_more(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    nothing = code_of(page)
    check(page.locator(BROTH_ROW), gap="270", count="13")
    assert code_of(page) != nothing
    page.get_by_role("button", name="Clear what I wrote here").click()
    assert code_of(page) == nothing


@OWN_CONTEXT  # its clock is false
def test_a_page_that_is_only_looked_at_keeps_nothing(page: Page, site: str) -> None:
    page.clock.install()
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    page.clock.run_for(5 * 60_000)
    code_of(page)
    page.dispatch_event("body", "pagehide")
    assert (
        page.evaluate("Object.keys(localStorage).filter(key => key.includes('soup-night'))") == []
    )


@OWN_CONTEXT  # its clock is false
def test_time_out_of_sight_does_not_count(page: Page, site: str) -> None:
    page.clock.install()
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    page.locator(f"{BROTH_ROW} input").first.fill("2")
    page.clock.run_for(11 * 60_000)
    assert told(page).step == 2
    page.evaluate(
        "Object.defineProperty(document, 'hidden', { value: true, configurable: true });"
        "document.dispatchEvent(new Event('visibilitychange'))"
    )
    page.clock.run_for(60 * 60_000)
    page.evaluate(
        "Object.defineProperty(document, 'hidden', { value: false, configurable: true });"
        "document.dispatchEvent(new Event('visibilitychange'))"
    )
    page.clock.run_for(5 * 60_000)
    assert told(page).step == 3


def test_it_is_copied_and_sent_to_nobody(page: Page, site: str) -> None:
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    page.goto(f"{site}soup-night/index.html")
    code = code_of(page)
    sent: list[str] = []
    page.on("request", lambda request: sent.append(request.url))
    page.get_by_role("button", name="Copy the code").click()
    expect(page.locator("finish-code > p[role=status]")).to_have_text("Copied.")
    assert page.evaluate("navigator.clipboard.readText()") == code
    assert sent == []


def test_where_nothing_is_kept_there_is_no_code(page: Page, site: str) -> None:
    page.add_init_script("Storage.prototype.setItem = () => { throw new Error('forbidden') }")
    page.goto(f"{site}soup-night/index.html")
    button(page).click()
    expect(page.locator("finish-code > p[role=status]")).to_contain_text("so there is no code")
    expect(page.locator("finish-code output")).to_be_hidden()


def test_blocks_only_gives_a_code_as_well(page: Page, site: str) -> None:
    page.add_init_script("localStorage.setItem('plumline-2 / device', '{\"blocks-only\":\"yes\"}')")
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    check(page.locator(BROTH_ROW), gap="270", count="13")
    assert set(found(page)) == {f"{BROTH}.gap", f"{BROTH}.count"}


def test_from_a_folder_it_works_as_well(
    page: Page, built_site: Path, complaints: list[str]
) -> None:
    page.goto((built_site / "soup-night/index.html").as_uri())
    expect(button(page)).to_be_visible()
    check(page.locator(BROTH_ROW), gap="270", count="13")
    assert set(found(page)) == {f"{BROTH}.gap", f"{BROTH}.count"}
    complaints[:] = [one for one in complaints if ".vtt" not in one]  # Chromium loads none there


def test_without_a_script_nobody_is_offered_one(browser: Browser, site: str) -> None:
    page = browser.new_page(java_script_enabled=False)
    page.goto(f"{site}soup-night/index.html")
    expect(page.locator("finish-code")).to_have_count(0)
    page.close()


def test_it_keeps_nobody_out(page: Page, site: str, axe: Callable[[Page], list[str]]) -> None:
    page.set_viewport_size({"width": 320, "height": 700})
    page.goto(f"{site}es/soup-night/index.html")
    code_of(page)
    assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


def test_on_paper_stands_only_a_code_that_was_asked_for(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    expect(button(page)).to_be_visible()
    page.emulate_media(media="print")
    expect(page.locator("finish-code")).to_be_hidden()
    page.emulate_media(media="screen")
    code_of(page)
    page.emulate_media(media="print")
    expect(page.locator("finish-code output")).to_be_visible()
