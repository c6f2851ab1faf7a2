"""Found gaps hang their plums one by one, and a lesson ends with all of them: in a real Chromium."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect


@pytest.fixture
def address(closing_site: Path, serve: Callable[[Path], str]) -> str:
    return f"{serve(closing_site)}two-lunches/index.html"


def hung(page: Page) -> list[list[float]]:
    """Of each plum that hangs: which knot, counted from 0, and how far below the line it begins."""
    found: list[list[float]] = page.evaluate(
        """() => [...document.querySelectorAll("hanging-gaps svg > circle")].flatMap((knot, at) => {
          const plum = knot.nextElementSibling?.querySelector("g[transform]");
          return plum ? [[at, plum.transform.baseVal[0].matrix.f - knot.cy.baseVal.value]] : [];
        })"""
    )
    return found


def work_out(row: Locator) -> None:
    for name in ("gap", "count"):
        row.locator(f"input[name={name}]").fill(str(row.get_attribute(f"data-{name}")))
    row.locator("[data-check]").click()
    expect(row).to_have_attribute("data-found", "")


def test_each_gap_that_is_found_hangs_its_plum(page: Page, address: str) -> None:
    page.goto(address)
    gaps = page.locator("hanging-gaps")
    told = gaps.locator("p")
    expect(told).to_have_text("Each gap you find hangs its plum.")
    assert [at for at, _ in hung(page)] == [2]  # it is worked out on the page
    rows = page.locator("gap-calculator form.gap-row:has(input)")
    work_out(rows.first)
    expect(told).to_have_text("You found one gap.")
    assert [at for at, _ in hung(page)] == [0, 2]
    work_out(rows.nth(1))
    expect(told).to_have_text("Three gaps, the first the longest.")
    drops = dict(hung(page))
    assert drops[1] / drops[0] == pytest.approx(140 / 320, abs=0.001)
    assert drops[2] / drops[0] == pytest.approx(40 / 320, abs=0.001)


def test_what_hangs_is_there_again_and_is_taken_down(page: Page, address: str) -> None:
    page.goto(address)
    work_out(page.locator("gap-calculator form.gap-row:has(input)").first)
    page.reload()
    expect(page.locator("hanging-gaps p")).to_have_text("You found one gap.")
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(page.locator("hanging-gaps p")).to_have_text("Each gap you find hangs its plum.")
    assert [at for at, _ in hung(page)] == [2]


def test_the_end_shows_all_gaps_once_they_are_found(page: Page, address: str) -> None:
    page.goto(address)
    ending = page.locator("lesson-ending")
    expect(ending.get_by_role("button", name="Print this ending")).to_be_visible()
    drawing = ending.get_by_role("img")
    expect(drawing).to_be_hidden()
    page.get_by_role("radio", name="300").check()
    for row in page.locator("gap-calculator form.gap-row:has(input)").all():
        work_out(row)
    expect(drawing).to_be_visible()
    says = "Three gaps, the first the longest: 320 (From town), 140 (From home) and 40 (From home)."
    expect(drawing).to_have_attribute("alt", says)
    expect(ending).to_contain_text("You said 300. The gap is 320. They are 20 apart.")
    page.get_by_role("radio", name="500").check()
    expect(ending).to_contain_text("They are 180 apart.")
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(drawing).to_be_hidden()
    expect(ending).not_to_contain_text("apart")


def test_the_ending_goes_on_paper_alone(page: Page, address: str) -> None:
    page.goto(address)
    page.evaluate(
        "window.print = () => (window.asked = document.documentElement.cloneNode().outerHTML)"
    )
    page.get_by_role("button", name="Print this ending").click()
    assert "data-ending-alone" in page.evaluate("window.asked")
    page.evaluate("dispatchEvent(new Event('afterprint'))")
    assert not page.evaluate("document.documentElement.hasAttribute('data-ending-alone')")
    page.evaluate("document.documentElement.toggleAttribute('data-ending-alone', true)")
    page.emulate_media(media="print")
    for part in ("h1", "gap-calculator", "move-card"):
        expect(page.locator(part).first).to_be_hidden()
    expect(page.locator("lesson-ending img")).to_be_visible()
    expect(page.locator("#parting .prompt")).to_be_visible()


def test_without_a_script_knots_stay_hollow_and_the_numbers_can_be_opened(
    browser: Browser, address: str
) -> None:
    with browser.new_context(java_script_enabled=False) as context:
        page = context.new_page()
        page.goto(address)
        knots = page.get_by_role("img", name="A knot for each gap.")
        expect(knots).to_be_visible()
        expect(knots.locator("i")).to_have_count(3)
        expect(page.locator("hanging-gaps svg")).to_have_count(0)
        drawing = page.locator("lesson-ending img")
        expect(drawing).to_be_hidden()
        page.locator("lesson-ending summary").click()
        expect(drawing).to_be_visible()


def test_clearing_is_the_last_thing_and_what_comes_before_is_in_groups(
    page: Page, address: str
) -> None:
    """Nothing that takes away stands first after the last stop."""
    page.goto(address)
    expect(page.get_by_text("Tell somebody:")).to_be_visible()
    texts = page.evaluate(
        """() => [...document.querySelectorAll("main .ending h2, main .ending > p:first-child, main [data-clear]")].map((one) => one.textContent.trim())"""
    )
    assert texts == [
        "Tell somebody: what did you not expect?",
        "Without internet",
        "On paper",
        "For teachers",
        "Clear what I wrote here",
    ]
    expect(page.get_by_role("main").get_by_role("link", name="All lessons")).to_be_visible()
