"""A what-if stop in a real Chromium: by keyboard, any guess, kept and cleared, on paper and without a script."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from zipfile import ZipFile

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.watched import OPEN_ALL
from tests.pots_lesson import pots_project
from tests.site_project import build_project

WENT = "The gap went from 7 g to 2 g. Rosa's pot still holds more."


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return build_project(pots_project(tmp_path_factory.mktemp("pots") / "project"))


@pytest.fixture
def address(site: Path, serve: Callable[[Path], str]) -> str:
    return f"{serve(site)}pots/index.html"


@pytest.fixture
def stop(page: Page, address: str) -> Locator:
    """The stop, once its script is there."""
    page.goto(address)
    found = page.locator("#swap")
    expect(look(found)).to_be_visible()
    return found


def look(stop: Locator) -> Locator:
    return stop.get_by_role("button", name="See what changes")


def choose(stop: Locator, change: str, guess: str) -> None:
    stop.get_by_role("radio", name=change).check()
    stop.get_by_role("radio", name=guess).check()
    look(stop).click()


def opened(stop: Locator) -> list[str]:
    """What the changes that are open say of themselves, in short."""
    return stop.locator("details.outcome[open] > summary").all_inner_texts()


def test_it_is_done_by_keyboard_alone(page: Page, stop: Locator) -> None:
    stop.get_by_role("link", name="It is about: Two pots, four rows.").focus()
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    expect(stop.get_by_role("radio", name="Barley")).to_be_checked()
    page.keyboard.press("ArrowDown")
    expect(stop.get_by_role("radio", name="Half the lentils")).to_be_checked()
    page.keyboard.press("ArrowUp")
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    expect(stop.get_by_role("radio", name="The gap gets smaller.")).to_be_checked()
    page.keyboard.press("Tab")
    expect(look(stop)).to_be_focused()
    page.keyboard.press("Enter")
    expect(stop.get_by_role("status")).to_contain_text(f"Just as you guessed. {WENT}")
    expect(look(stop)).to_be_focused()
    assert opened(stop) == ["Ilyas's pot Barley (1 cup) in place of white rice (1 cup)"]


def test_another_guess_is_told_beside_what_happened_and_never_as_wrong(stop: Locator) -> None:
    choose(stop, "Barley", "The gap gets larger.")
    said = stop.get_by_role("status")
    expect(said).to_contain_text(f"Your guess: The gap gets larger. {WENT}")
    expect(said).not_to_contain_text("not")
    choose(stop, "Half the lentils", "The gap goes over")
    expect(said).to_contain_text("Just as you guessed. The gap went over.")
    assert opened(stop) == ["Rosa's pot Half the lentils"]


def test_both_have_to_be_chosen(stop: Locator) -> None:
    look(stop).click()
    said = stop.get_by_role("status")
    expect(said).to_contain_text("Choose a change, and guess")
    stop.get_by_role("radio", name="Barley").check()
    expect(said).to_have_text("")
    look(stop).click()
    expect(said).to_contain_text("Choose a change, and guess")
    assert opened(stop) == []


def test_a_guess_that_was_made_first_stays(stop: Locator) -> None:
    stop.get_by_role("radio", name="The gap gets smaller.").check()
    stop.get_by_role("radio", name="Barley").check()
    look(stop).click()
    expect(stop.get_by_role("status")).to_contain_text("Just as you guessed.")


def test_the_stop_is_done_once_something_was_guessed_and_looked_at(stop: Locator) -> None:
    knot = stop.locator("xpath=ancestor::li")
    stop.locator("summary").first.click()
    expect(knot).not_to_have_attribute("data-done", "")
    choose(stop, "Leave out pasta", "The gap gets larger.")
    expect(knot).to_have_attribute("data-done", "")


def test_each_change_keeps_its_guess_until_all_is_cleared(page: Page, stop: Locator) -> None:
    choose(stop, "Barley", "The gap gets larger.")
    choose(stop, "Half the lentils", "The gap gets smaller.")
    page.reload()
    said = stop.get_by_role("status")
    expect(said).to_contain_text("Your guess: The gap gets smaller. The gap went over.")
    expect(stop.get_by_role("radio", name="Half the lentils")).to_be_checked()
    stop.get_by_role("radio", name="Barley").check()
    expect(stop.get_by_role("radio", name="The gap gets larger.")).to_be_checked()
    expect(said).to_contain_text(WENT)
    stop.get_by_role("radio", name="Leave out pasta").check()
    expect(stop.get_by_role("radio", checked=True)).to_have_count(1)
    expect(said).to_have_text("")
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(stop.get_by_role("radio", checked=True)).to_have_count(0)
    assert opened(stop) == []
    page.reload()
    expect(look(stop)).to_be_visible()
    expect(stop.get_by_role("radio", checked=True)).to_have_count(0)


def test_a_change_that_the_lesson_no_longer_has_is_forgotten(page: Page, stop: Locator) -> None:
    choose(stop, "Barley", "The gap gets smaller.")
    page.evaluate(
        """() => { for (const [key, text] of Object.entries(localStorage))
        localStorage.setItem(key, text.replaceAll("rice-white-cooked_barley-cooked", "rice_gone")) }"""
    )
    page.reload()
    expect(look(stop)).to_be_visible()
    expect(stop.get_by_role("status")).to_have_text("")
    assert opened(stop) == []


def test_without_a_script_each_answer_is_one_opening_away(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    expect(look(page.locator("#swap"))).to_have_count(0)
    expect(page.get_by_text(WENT)).not_to_be_visible()
    page.locator("#swap summary", has_text="Barley").press("Enter")
    expect(page.get_by_text(WENT)).to_be_visible()
    context.close()


def test_blocks_only_leaves_out_its_numbers_and_says_which_way(page: Page, stop: Locator) -> None:
    page.locator("[data-care] > summary").click()
    page.get_by_role("button", name="Blocks only").click()
    choose(stop, "Barley", "The gap gets smaller.")
    said = stop.get_by_role("status")
    assert said.inner_text() == "Just as you guessed. The gap gets smaller."
    page.evaluate(OPEN_ALL)
    assert re.findall(r"\d+\s(?:g\b|−)", stop.inner_text()) == []
    expect(stop.locator(".blocks:visible")).not_to_have_count(0)
    page.get_by_role("button", name="Blocks only").click()
    assert re.sub(r"\s", " ", said.inner_text()) == f"Just as you guessed. {WENT}"


@pytest.mark.parametrize("path", ["pots", "es/pots"])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_it_fits_and_keeps_nobody_out_with_everything_open(
    page: Page,
    site: Path,
    serve: Callable[[Path], str],
    axe: Callable[[Page], list[str]],
    path: str,
    scheme: str,
) -> None:
    page.set_viewport_size({"width": 320, "height": 800})
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.goto(f"{serve(site)}{path}/index.html")
    page.locator("#swap input").first.check()
    page.evaluate(OPEN_ALL)
    assert page.evaluate("document.documentElement.scrollWidth") == 320
    assert axe(page) == []


def test_its_targets_are_large_enough(stop: Locator) -> None:
    for label in stop.locator(".choice").all():
        box = label.bounding_box()
        assert box
        assert box["height"] >= 48


def test_the_worksheet_fits_its_paper_and_a_phone(
    page: Page, site: Path, serve: Callable[[Path], str]
) -> None:
    for name in ("worksheet", "answers", "../es/pots/worksheet"):
        page.goto(f"{serve(site)}pots/{name}.html")
        page.emulate_media(media="print")
        table = page.locator(".what-if")
        wide = table.evaluate("each => each.scrollWidth - each.closest('.sheet').clientWidth")
        assert wide < 0
        page.emulate_media(media="screen")
        page.set_viewport_size({"width": 320, "height": 800})
        assert page.evaluate("document.documentElement.scrollWidth") == 320
        page.set_viewport_size({"width": 1280, "height": 800})


def test_the_copy_to_take_home_has_all_of_it(page: Page, site: Path, tmp_path: Path) -> None:
    [packed] = (site / "pots").glob("*-take-home.zip")
    with ZipFile(packed) as file:
        file.extractall(tmp_path)
    page.goto((tmp_path / "pots/index.html").as_uri())
    stop = page.locator("#swap")
    expect(look(stop)).to_be_visible()
    choose(stop, "Barley", "The gap gets smaller.")
    expect(stop.get_by_role("status")).to_contain_text(f"Just as you guessed. {WENT}")
