"""Practice without end: the same problems as on paper, shared by their address, read as a lesson's rows are."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.practice_set import Plan, practice_set
from tests.browser.watched import OPEN_ALL

Serve = Callable[[Path], str]
LESSON = "river-walk"
TOLD = re.compile(
    r"([\d,]+) ([−÷]) ([\d,]+) =|first side holds ([\d,]+), the second holds ([\d,]+)"
)
KINDS = {"−": "gap", "÷": "count", "": "which"}
Problem = tuple[str, int, int]


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """The practice page of a lesson of the demo."""
    return f"{serve(built_site)}{LESSON}/practice.html"


def read(text: str) -> list[Problem]:
    """The problems that a text asks, in its order."""
    found = TOLD.findall(text)
    return [
        (KINDS[sign], number(one or first), number(other or second))
        for one, sign, other, first, second in found
    ]


def number(text: str) -> int:
    return int(text.replace(",", ""))


def asked(page: Page) -> list[Problem]:
    """The problems on the page."""
    return read(" ".join(page.locator(".sum").all_inner_texts()))


def made(seed: str, largest: int, many: int) -> list[Problem]:
    """Those of a seed; the lesson counts in tens."""
    return [
        (one.kind, one.first, one.second) for one in practice_set(seed, Plan(largest, 10), many)
    ]


def test_more_problems_come_and_nothing_shifts(page: Page, address: str) -> None:
    page.goto(address)
    assert asked(page) == made(LESSON, 1000, 12)
    page.get_by_role("button", name="More problems").click()
    assert asked(page) == made(LESSON, 1000, 24)
    expect(page.locator(".problems li").nth(12).locator("[name=gap]")).to_be_focused()


def test_the_worksheet_has_the_first_of_the_same_problems(page: Page, address: str) -> None:
    page.goto(address)
    first = asked(page)
    page.goto(address.replace("practice.html", "worksheet.html"))
    printed = read(page.locator("ol.practice").inner_text())
    assert len(printed) == 3
    assert printed == first[:3]


def test_a_set_is_shared_by_its_address(page: Page, address: str) -> None:
    page.goto(address)
    page.get_by_role("button", name="Another set").click()
    shared = page.evaluate("location.hash")
    assert re.fullmatch(r"#seed=[a-z0-9]+&size=1000", shared)
    page.get_by_label("Numbers").select_option("up to 100")
    shown, shared = asked(page), page.evaluate("location.hash")
    assert max(max(numbers) for _, *numbers in shown) <= 100
    other = page.context.new_page()
    other.goto(address + shared)
    assert asked(other) == shown


def test_a_spoiled_address_gives_problems_all_the_same(page: Page, address: str) -> None:
    page.goto(f"{address}#seed=%F0%9F%8D%8E&size=7;drop")
    assert asked(page) == made("\N{RED APPLE}", 1000, 12)


def test_answers_are_read_as_a_lessons_rows_are(page: Page, address: str) -> None:
    page.goto(address)
    (_, larger, smaller), *_ = asked(page)
    form = page.locator(".problems form").first
    entry, band = form.locator("[name=gap]"), form.locator("[data-band]")
    for wrote, says in (
        ("", "Write the gap, then check."),
        ("many", "Write one number in digits"),
        (str(larger + smaller), "That is the two added."),
        (f" {larger - smaller} ", f"Yes. {larger} − {smaller} = {larger - smaller}"),
    ):
        entry.fill(wrote)
        entry.press("Enter")
        expect(band).to_contain_text(says)


def test_a_count_asks_for_what_is_left_over_too(page: Page, address: str) -> None:
    page.goto(address)
    kind, gap, per = asked(page)[1]
    assert kind == "count"
    form = page.locator(".problems form").nth(1)
    band = form.locator("[data-band]")
    form.locator("[name=gap]").fill(str(gap // per))
    form.locator("[name=left]").fill("0")
    form.locator("[name=left]").press("Enter")
    expect(band).to_have_text("The count is right. Now what is left over?")
    form.locator("[name=left]").fill(str(gap % per))
    form.locator("[name=left]").press("Enter")
    expect(band).to_have_text(f"Yes. {gap} ÷ {per} = {gap // per}, and {gap % per} left over")


def test_a_side_is_named_before_the_gap(page: Page, address: str) -> None:
    page.goto(address)
    kind, first, second = asked(page)[5]
    assert kind == "which"
    form = page.locator(".problems form").nth(5)
    band = form.locator("[data-band]")
    form.locator("[name=gap]").fill(str(abs(first - second)))
    form.locator("[name=gap]").press("Enter")
    expect(band).to_contain_text("which side holds more?")
    form.get_by_role("radio", name="The first" if first > second else "The second").check()
    form.locator("[name=gap]").press("Enter")
    expect(band).to_contain_text("Yes. The first side holds")


def test_without_script_twelve_problems_have_their_answers(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    assert asked(page) == made(LESSON, 1000, 12)
    for place, (kind, first, second) in enumerate(asked(page)):
        form = page.locator(".problems form").nth(place)
        form.locator("summary").click()
        gap, count = first - second, f"{first // second}, and {first % second} left over"
        answer = {"gap": f"{gap}", "count": count, "which": f", {abs(gap)} more"}[kind]
        expect(form.locator(".solved")).to_contain_text(answer)
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
    page.locator(".problems [name=gap]").first.fill("7")
    page.locator(".problems [name=gap]").first.press("Enter")
    page.evaluate(OPEN_ALL)
    assert axe(page) == []
    assert page.evaluate("document.scrollingElement.scrollWidth") <= width


def test_in_spanish_thousands_are_read_and_written_as_there(
    page: Page, built_site: Path, serve: Serve
) -> None:
    if not (built_site / "es" / LESSON / "practice.html").exists():
        pytest.fail("the demo has no Spanish lesson")
    page.goto(f"{serve(built_site)}es/{LESSON}/practice.html#seed=mil&size=3000")
    form = page.locator(".problems form").first
    _, first, second = asked(page)[0]
    form.locator("[name=gap]").fill(f"{first - second:,} kcal")
    form.locator("[name=gap]").press("Enter")
    expect(form.locator("[data-band]")).to_contain_text("Sí.")


LINES = """() => {
  const problems = [...document.querySelectorAll(".problems li")];
  const lefts = (name) => [...new Set(problems.flatMap((each) => {
    const box = each.querySelector(name)?.getBoundingClientRect();
    return box?.width ? [Math.round(box.left - each.getBoundingClientRect().left)] : [];
  }))];
  return {
    columns: new Set(problems.map((each) => each.getBoundingClientRect().left)).size,
    gap: lefts("[name=gap]"),
    left: lefts("[name=left]"),
    check: lefts("[data-check]"),
  };
}"""


@pytest.mark.parametrize(("width", "columns"), [(320, 1), (390, 1), (768, 1), (1280, 2)])
def test_entries_and_checks_stand_one_under_the_other(
    page: Page, address: str, width: int, columns: int
) -> None:
    page.set_viewport_size({"width": width, "height": 844})
    page.goto(address)
    page.locator("[data-check]").first.wait_for()
    seen = page.evaluate(LINES)
    assert seen["columns"] == columns
    assert len(seen["gap"]) == len(seen["check"]) == 1
    assert seen["left"] == seen["gap"]
