"""Practice without end: the same problems as on paper, shared by their address, read as a lesson's rows are."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.practice import practice_problems

Serve = Callable[[Path], str]
LESSON = "river-walk"
SUM = re.compile(r"([\d,]+) − ([\d,]+) =")


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """The practice page of a lesson of the demo."""
    return f"{serve(built_site)}{LESSON}/practice.html"


def sums(page: Page) -> list[tuple[int, int]]:
    """The problems on the page."""
    found = SUM.findall(" ".join(page.locator(".sum").all_inner_texts()))
    return [(int(one.replace(",", "")), int(other.replace(",", ""))) for one, other in found]


def made(seed: str, largest: int, number: int) -> list[tuple[int, int]]:
    return [(one.larger, one.smaller) for one in practice_problems(seed, largest, number)]


def test_more_problems_come_and_nothing_shifts(page: Page, address: str) -> None:
    page.goto(address)
    assert sums(page) == made(LESSON, 1000, 12)
    page.get_by_role("button", name="More problems").click()
    assert sums(page) == made(LESSON, 1000, 24)
    expect(page.locator(".problems input").nth(12)).to_be_focused()


def test_the_worksheet_has_the_first_of_the_same_problems(page: Page, address: str) -> None:
    page.goto(address)
    first = sums(page)
    page.goto(address.replace("practice.html", "worksheet.html"))
    printed = SUM.findall(page.locator("ol.practice").inner_text())
    assert [(int(one), int(other)) for one, other in printed] == first[: len(printed)]


def test_a_set_is_shared_by_its_address(page: Page, address: str) -> None:
    page.goto(address)
    page.get_by_role("button", name="Another set").click()
    shared = page.evaluate("location.hash")
    assert re.fullmatch(r"#seed=[a-z0-9]+&size=1000", shared)
    page.get_by_label("Numbers").select_option("up to 100")
    shown, shared = sums(page), page.evaluate("location.hash")
    assert max(larger for larger, _ in shown) <= 100
    other = page.context.new_page()
    other.goto(address + shared)
    assert sums(other) == shown


def test_a_spoiled_address_gives_problems_all_the_same(page: Page, address: str) -> None:
    page.goto(f"{address}#seed=%F0%9F%8D%8E&size=7;drop")
    assert sums(page) == made("\N{RED APPLE}", 1000, 12)


def test_answers_are_read_as_a_lessons_rows_are(page: Page, address: str) -> None:
    page.goto(address)
    (larger, smaller), *_ = sums(page)
    form = page.locator(".problems form").first
    entry, band = form.locator("input"), form.locator("[data-band]")
    for wrote, says in (
        ("", "Write the gap, then check."),
        ("many", "Write one number in digits"),
        (str(larger + smaller), "That is both put together."),
        (f" {larger - smaller} ", f"Yes. {larger} − {smaller} = {larger - smaller}"),
    ):
        entry.fill(wrote)
        entry.press("Enter")
        expect(band).to_contain_text(says)


def test_without_script_twelve_problems_have_their_answers(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    assert sums(page) == made(LESSON, 1000, 12)
    for place, (larger, smaller) in enumerate(sums(page)):
        form = page.locator(".problems form").nth(place)
        form.locator("summary").click()
        expect(form.locator(".solved")).to_have_text(f"{larger} − {smaller} = {larger - smaller}")
    assert [one for one in page.locator("button, select").all() if one.is_visible()] == []
    context.close()


def test_on_paper_the_problems_come_first_and_the_answers_after(page: Page, address: str) -> None:
    page.goto(address)
    page.emulate_media(media="print")
    expect(page.locator(".solutions li")).to_have_count(12)
    expect(page.locator(".solutions")).to_be_visible()
    expect(page.locator(".choose")).not_to_be_visible()
    assert page.locator("details").first.is_hidden()
    assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(format="A4"))) == 2


@pytest.mark.parametrize("width", [320, 1280])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(
    page: Page, address: str, axe: Callable[[Page], list[str]], width: int, scheme: str
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.goto(address)
    page.locator(".problems input").first.fill("7")
    page.locator(".problems input").first.press("Enter")
    page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)")
    assert axe(page) == []
    assert page.evaluate("document.scrollingElement.scrollWidth") <= width


def test_in_spanish_thousands_are_read_and_written_as_there(
    page: Page, built_site: Path, serve: Serve
) -> None:
    if not (built_site / "es" / LESSON / "practice.html").exists():
        pytest.fail("the demo has no Spanish lesson")
    page.goto(f"{serve(built_site)}es/{LESSON}/practice.html#seed=mil&size=3000")
    form = page.locator(".problems form").first
    gap = sums(page)[0][0] - sums(page)[0][1]
    form.locator("input").fill(f"{gap:,} kcal")
    form.locator("input").press("Enter")
    expect(form.locator("[data-band]")).to_contain_text("Sí.")
