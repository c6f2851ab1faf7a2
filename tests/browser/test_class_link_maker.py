"""A teacher makes a class link, in a real Chromium: it opens what the sentence beside it says, and prints on half a sheet."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.class_link import Answers, ClassLink, read_class_link
from tests.browser.watched import ALL_THERE, RUNS_OVER
from tests.outside.pictures import codes_on_sheets
from tests.printed_sheets import printed_sheets

NOTES = "river-walk/notes.html"
PHONE = {"width": 320, "height": 640}
PUBLISHED = "https://kitchen.larkmead.example/"


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def opened(page: Page, address: str) -> Page:
    page.goto(address)
    page.evaluate(ALL_THERE)
    expect(page.locator("class-link form")).to_be_visible()
    return page


def link(page: Page) -> str:
    return page.locator("output[data-link]").inner_text()


def says(page: Page) -> str:
    return page.locator("[data-says]").inner_text()


def test_the_sentence_the_link_and_the_code_say_the_same(page: Page, site: str) -> None:
    page.set_viewport_size(PHONE)
    opened(page, site + NOTES)
    assert link(page) == f"{site}river-walk/index.html"
    assert says(page) == (
        "Opens “Packed for the river walk” in English: all 7 stops, answers as soon as a child asks."
    )
    for stop in ("hello", "guess", "two-ways", "parting"):
        page.locator(f"class-link [value='{stop}']").uncheck()
    page.get_by_label("Numbers in practice").select_option("100")
    page.get_by_label("Problem set").fill("Room 12")
    page.get_by_label("after a try").check()
    page.locator("class-link").get_by_label("Blocks only").check()
    page.get_by_label("Large print").check()
    assert says(page) == (
        "Opens “Packed for the river walk” in English: 3 of 7 stops, the same practice for "
        "everyone (set room-12, numbers up to 100), blocks only, large print, answers after a try."
    )
    address, _, fragment = link(page).partition("#")
    asked = ClassLink(("lunch", "count-it", "table-talk"), 100, "room-12", True, True, Answers.TRY)
    assert read_class_link(fragment, "river-walk") == asked
    assert address == f"{site}river-walk/index.html"
    assert page.evaluate(RUNS_OVER) <= 0
    page.goto(link(page))
    page.evaluate(ALL_THERE)
    assert page.locator(".stop").count() == 3


def test_on_the_teachers_page_the_lesson_is_chosen_first(page: Page, site: str) -> None:
    opened(page, f"{site}es/teachers.html")
    expect(page.locator("output[data-link]")).to_be_hidden()
    page.locator("class-link [name=lesson]").select_option("soup-night")
    expect(page.locator("class-link [name=stop]")).to_have_count(11)
    page.locator("class-link [name=stop]").first.uncheck()
    page.get_by_label("Idioma").select_option("en")
    assert says(page) == (
        "Abre «Noche de sopa en el salón» en inglés: 10 de 11 partes, respuestas en cuanto alguien las pide."
    )
    assert link(page).startswith(f"{site}soup-night/index.html#for-class=tomatoes+")
    page.locator("class-link [name=lesson]").select_option("two-days")
    expect(page.locator("class-link [name=stop]")).to_have_count(9)
    assert page.locator("class-link [name=language] option").all_inner_texts() == ["English"]


def test_it_is_made_by_keyboard_alone_and_nothing_is_kept(page: Page, site: str) -> None:
    opened(page, site + NOTES)
    page.locator("class-link [name=stop]").first.focus()
    page.keyboard.press("Space")
    assert "6 of 7 stops" in says(page)
    for _ in range(7):
        page.keyboard.press("Tab")
    page.keyboard.press("ArrowDown")
    assert says(page).endswith("6 of 7 stops, answers after a try.")
    page.get_by_role("button", name="Another set").press("Enter")
    assert re.search(r";seed=[a-z0-9]+;answers=try;k=..$", link(page))
    assert page.evaluate("localStorage.length + sessionStorage.length") == 0


def test_without_a_stop_there_is_no_link(page: Page, site: str) -> None:
    opened(page, site + NOTES)
    for box in page.locator("class-link [name=stop]").all():
        box.uncheck()
    assert says(page) == "Choose at least one stop."
    assert link(page) == ""
    expect(page.get_by_role("button", name="Copy the link")).to_be_hidden()


def test_it_is_copied_or_selected(page: Page, site: str) -> None:
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    opened(page, site + NOTES)
    page.get_by_role("button", name="Copy the link").click()
    expect(page.get_by_text("Copied.")).to_be_visible()
    assert page.evaluate("navigator.clipboard.readText()") == link(page)


@pytest.mark.parametrize(("paper", "height"), [("A4", 297), ("Letter", 279.4)])
def test_the_board_takes_half_a_sheet(page: Page, site: str, paper: str, height: float) -> None:
    opened(page, site + NOTES)
    page.get_by_role("button", name="Another set").click()
    page.wait_for_selector("[data-qr] svg")
    page.evaluate("window.print = () => {}")
    page.get_by_role("button", name="Print for the board").click()
    printed = page.pdf(format=paper)
    assert codes_on_sheets(printed) == [[link(page)]]
    (sheet,) = printed_sheets(printed)
    assert max(ink.box[3] for ink in sheet.inks) <= height / 2
    dark = [ink.box for ink in sheet.inks if not ink.letters]
    assert max(box[2] for box in dark) - min(box[0] for box in dark) > 60  # millimetres
    page.evaluate("dispatchEvent(new Event('afterprint'))")
    page.emulate_media(media="print")
    expect(page.locator("class-link")).to_be_hidden()


def test_from_a_folder_the_published_address_is_sent(page: Page, built_site: Path) -> None:
    opened(page, (built_site / NOTES).as_uri())
    assert link(page) == f"{PUBLISHED}river-walk/index.html"


def test_without_a_script_a_plain_link_is_explained_and_one_is_ready(
    browser: Browser, site: str
) -> None:
    page = browser.new_page(java_script_enabled=False)
    page.goto(site + NOTES)
    expect(page.get_by_text("A plain link works without it")).to_be_visible()
    ready = page.locator("class-link [data-no-script] a").get_attribute("href") or ""
    assert read_class_link(ready.partition("#")[2], "river-walk") == ClassLink(answers=Answers.TRY)
    expect(page.locator("class-link form")).to_be_hidden()
    page.locator("class-link [data-no-script] a").click()
    expect(page.locator(".stop:visible")).to_have_count(7)  # without one the whole lesson is there
    page.close()
