"""The gap calculator in a real Chromium: by keyboard, not yet, without script, with a broken memory."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.still_page import ROOT, write_page
from tests.browser.watched import hold

EXAMPLES = ROOT / "tests" / "examples"
ARITHMETIC = json.loads((EXAMPLES / "arithmetic.json").read_text(encoding="utf-8"))
STORE = "plumline-2 / boat/still"


@pytest.fixture
def address(tmp_path: Path, serve: Callable[[Path], str]) -> str:
    """A still page, served."""
    write_page(tmp_path)
    return serve(tmp_path)


def test_every_row_worked_out_by_hand_is_right_on_the_page(address: str, page: Page) -> None:
    page.goto(address)
    for case in ARITHMETIC["rows"]:
        page.evaluate(
            """(case_) => {
              const calculator = document.querySelector("gap-calculator");
              const form = document.querySelector("#lunch-row-1");
              Object.assign(form.dataset, { first: case_.first, second: case_.second, gap: case_.gap, count: case_.count, per: case_.per });
              const fresh = calculator.cloneNode(true);
              calculator.replaceWith(fresh);
            }""",
            case,
        )
        page.get_by_role("textbox", name="Gap").fill(case["gap"])
        page.get_by_role("textbox", name="Count").fill(str(case["count"]))
        page.get_by_role("textbox", name="Count").press("Enter")
        expect(page.locator("#lunch-row-1 [data-band]")).to_have_text(
            "Yes. The pie holds 46 kcal more."
        )


def test_a_row_is_solved_by_keyboard_alone(address: str, page: Page) -> None:
    page.goto(address)
    page.evaluate(
        "document.addEventListener('gap-found', ({ target }) => (document.title = target.id))"
    )
    page.get_by_role("heading", name="Work out the gap").focus()
    page.keyboard.press("Tab")
    page.keyboard.type("46 kcal")
    page.keyboard.press("Tab")
    page.keyboard.type("4 moves")
    page.keyboard.press("Tab")
    expect(page.get_by_role("button", name="Check")).to_be_focused()
    page.keyboard.press("Enter")
    expect(page.locator("#lunch-row-1").get_by_role("status")).to_have_text(
        "Yes. The pie holds 46 kcal more."
    )
    expect(page).to_have_title("lunch-row-1")


def test_enter_in_an_entry_checks_it_and_leads_to_the_next(address: str, page: Page) -> None:
    page.goto(address)
    page.get_by_role("textbox", name="Gap").fill("46")
    page.get_by_role("textbox", name="Gap").press("Enter")
    expect(page.locator("#lunch-row-1 [data-band]")).to_have_text(
        "46, yes. Now the count: how many times does 10 fit into 46?"
    )
    expect(page.get_by_role("textbox", name="Count")).to_be_focused()


@pytest.mark.parametrize(
    ("gap", "count", "says"),
    [
        ("", "", "Write the gap, then check."),
        ("many", "", "Write one number in digits, such as 230."),
        ("154", "", "Start with the ones of 230. Not enough? Trade 1"),
        ("46 tens", "", "That counts tens or hundreds. How much is it all together?"),
        ("-46", "", "A gap has no minus. Which number is larger?"),
        ("46", "-4", "A count has no minus."),
        ("46", "", "46, yes. Now the count"),
        ("٤٦", "", "46, yes. Now the count"),
        ("230-184", "", "Good plan. What does it make?"),
        ("184 - 230", "", "turn it around: start with the larger number, 230"),
        ("46", "46/10", "Good plan. What does it make?"),
        ("230", "", "That is what one side holds."),
        ("184", "", "That is what one side holds."),
        ("414", "", "Start with 230 and take 184 away"),
        ("7", "", "Count up from 184: first to 200, then on to 230."),
        ("46", "46", "That is the gap. How many times does 10 fit into it?"),
        ("46", "5", "What is left over is less than 10"),
        ("46", "3", "but very close. Count once more."),
        ("46", "9", "How many tens are in 46?"),
    ],
)
def test_not_yet_says_what_happened_and_keeps_what_was_written(
    address: str, page: Page, gap: str, count: str, says: str
) -> None:
    page.goto(address)
    page.get_by_role("textbox", name="Gap").fill(gap)
    page.get_by_role("textbox", name="Count").fill(count)
    page.get_by_role("button", name="Check").click()
    expect(page.locator("#lunch-row-1").get_by_role("status")).to_contain_text(says)
    expect(page.get_by_role("button", name="Check")).to_be_focused()
    expect(page.get_by_role("textbox", name="Gap")).to_have_value(gap)
    expect(page.get_by_role("textbox", name="Count")).to_have_value(count)


def test_what_is_said_of_an_old_answer_stands_beside_no_new_one(address: str, page: Page) -> None:
    """The script that reads wrong answers comes late, when the answer is mended already."""
    held = hold(page, "**/play-en.js")
    page.goto(address)
    page.get_by_role("textbox", name="Gap").fill("7")
    with page.expect_request("**/play-en.js"):
        page.get_by_role("button", name="Check").click()
    page.get_by_role("textbox", name="Gap").fill("46")
    page.get_by_role("textbox", name="Count").fill("4")
    page.get_by_role("button", name="Check").click()
    band = page.locator("#lunch-row-1 [data-band]")
    expect(band).to_have_text("Yes. The pie holds 46 kcal more.")
    page.evaluate(
        "document.addEventListener('play-here', () => setTimeout(() => (document.title = 'here')))"
    )
    [route] = held
    route.continue_()
    expect(page).to_have_title("here")
    expect(band).to_have_text("Yes. The pie holds 46 kcal more.")


def test_answers_are_there_again_after_a_reload_until_cleared(address: str, page: Page) -> None:
    page.goto(address)
    page.get_by_role("textbox", name="Gap").fill("46")
    page.get_by_role("textbox", name="Count").fill("4")
    page.reload()
    expect(page.get_by_role("textbox", name="Gap")).to_have_value("46")
    expect(page.locator("#lunch-row-1 [data-band]")).to_contain_text("Yes.")
    page.get_by_role("button", name="Clear").click()
    expect(page.get_by_role("textbox", name="Gap")).to_have_value("")
    expect(page.locator("#lunch-row-1 [data-band]")).to_be_empty()
    assert page.evaluate("key => localStorage.getItem(key)", STORE) is None


@pytest.mark.parametrize(
    "kept",
    ["{", "null", "7", '"text"', "[1]", '{"lunch-row-1 gap": 46, "here": {}, "done think": null}'],
)
def test_a_spoiled_store_is_dropped(address: str, page: Page, kept: str) -> None:
    page.add_init_script(
        f"sessionStorage.getItem('set') || localStorage.setItem('{STORE}', {kept!r}); sessionStorage.setItem('set', 1)"
    )
    page.goto(address)
    expect(page.get_by_role("textbox", name="Gap")).to_have_value("")
    page.get_by_role("textbox", name="Gap").fill("46")
    page.reload()
    expect(page.get_by_role("textbox", name="Gap")).to_have_value("46")


@pytest.mark.parametrize(
    "broken",
    [
        "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }",
        "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('forbidden', 'SecurityError'); } })",
    ],
)
def test_a_store_that_throws_changes_nothing_else(address: str, page: Page, broken: str) -> None:
    page.add_init_script(broken)
    page.goto(address)
    page.get_by_role("textbox", name="Gap").fill("46")
    page.get_by_role("textbox", name="Count").fill("4")
    page.get_by_role("button", name="Check").click()
    expect(page.locator("#lunch-row-1 [data-band]")).to_contain_text("Yes.")
    page.get_by_role("button", name="Clear").click()
    expect(page.get_by_role("textbox", name="Gap")).to_have_value("")


def test_without_script_every_answer_is_one_opening_away(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    for name in ("Check", "Go on", "Explore the chart", "Clear what I wrote here"):
        expect(page.get_by_role("button", name=name, exact=True)).to_have_count(0)
    for summary in page.get_by_text(re.compile("Check your answer|Show the working")).all():
        summary.press("Enter")
    for answer in ("We will find out.", "The pie holds 46 kcal more.", "In all, 46 kcal."):
        expect(page.get_by_text(answer)).to_be_visible()
    context.close()
