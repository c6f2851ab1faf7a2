"""The page that reads finish codes, in a real Chromium: a class, its mistakes, and noise."""

from __future__ import annotations

import csv
import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.finish_code import Done, Finished, Found, Told, finish_code
from generator.compute.finish_layout import finish_layout
from tests.site_data.test_lessons import RESULTS

SOUP, RIVER = (finish_layout(RESULTS[name]) for name in ("soup-night", "river-walk"))
DONE = Finished(
    stops=(*(Done.DONE,) * 9, Done.NOT, Done.DONE),
    answers=tuple(map(Found, (2, 1, 0, 2, 2, 2, 0, 0))),
    before=(Told.WRONG,),
    after=(Told.RIGHT,),
    step=4,
)
ALL = Finished((Done.DONE,) * 7, (Found.FIRST,) * 7, (), (), 3)
CODE, OTHER = finish_code(DONE, SOUP), finish_code(ALL, RIVER)
ROW = "soups.soup-chicken-broth_soup-vegetable-broth"


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def read(page: Page, text: str, button: str = "Read the codes") -> None:
    """Paste, and wait until all lines are read."""
    page.locator("textarea").fill(text)
    page.get_by_role("button", name=button).click()
    done = re.compile(r"codes? read\." if button == "Read the codes" else r"códigos? leídos?\.")
    expect(page.locator("code-reader [role=status]")).to_contain_text(done)


def cells(page: Page) -> list[list[str]]:
    rows = page.locator("code-reader tbody tr").all()
    return [row.locator("th, td").all_inner_texts() for row in rows]


def test_a_class_in_the_order_typed(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    read(page, f"Zoe {CODE}\n\nAna: {OTHER.lower()}\r\n{CODE.replace('0', 'O')} Table 4\n")
    soup = ["Soup night in the hall", "10 of 11", "4 of 8", "5 of 8", "not right, then right"]
    river = ["Packed for the river walk", "7 of 7", "7 of 7", "7 of 7", "", "15 to 19"]
    assert cells(page) == [
        ["Zoe", *soup, "20 to 29"],
        ["Ana", *river],
        ["Table 4", *soup, "20 to 29"],
    ]


def test_what_most_missed_and_what_to_say(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    none = replace(DONE, stops=(False,) * 11, answers=(Found.NOT,) * 8)
    none = replace(none, before=(Told.NOT,), after=(Told.NOT,))
    read(page, "\n".join([CODE, CODE, finish_code(none, SOUP)]))
    missed = page.locator("code-reader h4").all_inner_texts()
    assert missed[:3] == [
        "Broth and beans. Row 2, the gap (Canned black bean soup; Restaurant black bean soup)",
        "The whole pot",
        "One last question",
    ]
    told = page.locator("code-reader section").first.inner_text()
    assert "Right at first: 0 of 2. Right at last: 0 of 2." in told  # the third never came there
    assert "Double it, and double it again." in told
    assert "Trade 1 from the place on its left" in told
    assert "Four soups left: right before, 0 of 2; right after, 2 of 2." in told


def test_each_bad_line_is_named(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    foreign = finish_code(DONE, replace(SOUP, lesson=SOUP.lesson ^ 1))
    older = finish_code(DONE, replace(SOUP, numbers=SOUP.numbers ^ 1))
    swapped = CODE[1] + CODE[0] + CODE[2:]
    wrong = ("0" if CODE[0] != "0" else "1") + CODE[1:]
    read(page, "\n".join(["Ana", wrong, swapped, foreign, older, CODE]))
    assert page.locator("code-reader .bad li").all_inner_texts() == [
        "Line 1: there is no code.",
        "Lines 2 to 3: a character of the code is wrong, or two changed places.",
        "Line 4: the code is of a lesson that this site does not have.",
        "Line 5: the code is of “Soup night in the hall”, but with other numbers than it has now. Opened anew, the lesson gives a new code.",
    ]
    assert len(cells(page)) == 1


def test_where_a_lesson_cannot_be_fetched_it_is_said_and_tried_again(
    page: Page, site: str, complaints: list[str]
) -> None:
    page.goto(f"{site}codes.html")
    page.route("**/finish.json", lambda route: route.abort())
    read(page, CODE)
    expect(page.locator("code-reader li").last).to_contain_text("Is there a network?")
    page.unroute("**/finish.json")
    complaints.clear()
    read(page, f"{CODE} ")
    assert len(cells(page)) == 1


def test_labels_are_shown_as_they_are(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    label = "<img src=x onerror=alert(1)><script>alert(2)</script>"
    read(page, f"{label} {CODE}")
    assert cells(page)[0][0] == label
    assert page.locator("code-reader img, code-reader script").count() == 0


def test_ten_thousand_lines_of_noise_do_not_stop_the_page(page: Page, site: str) -> None:
    """Each is named, those of one fault together; the list begins short, and the box holds what was pasted."""
    page.goto(f"{site}codes.html")
    wrong = ("0" if CODE[0] != "0" else "1") + CODE[1:]
    noise = [
        wrong if at % 100 == 50 else f"{at} $%&/ <b>{'x-' * 9}{at * 7919 % 104729:x} =1+1"
        for at in range(10_000)
    ]
    pasted = "\n".join([*noise, CODE])
    box = page.locator("textarea")
    box.evaluate("(box, text) => { box.value = text; }", pasted)
    page.get_by_role("button", name="Read the codes").click()
    status = page.locator("code-reader [role=status]")
    expect(status).to_contain_text("1 code read. 10,000 lines could not be read.")
    lines = page.locator("code-reader .bad li")
    assert lines.count() == 50
    assert lines.all_inner_texts()[:3] == [
        "Lines 1 to 50: there is no code.",
        "Line 51: a character of the code is wrong, or two changed places.",
        "Lines 52 to 150: there is no code.",
    ]
    for left in (151, 101, 51, 1):
        page.get_by_role("button", name=f"Show {left} more").click()
    assert lines.count() == 201
    assert lines.last.inner_text() == "Lines 9,952 to 10,000: there is no code."
    assert page.get_by_role("button", name="more").count() == 0
    assert box.input_value() == pasted


def test_reading_again_or_clearing_ends_what_was_begun(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    page.locator("textarea").evaluate("(box, text) => { box.value = text; }", "noise\n" * 9_000)
    page.get_by_role("button", name="Read the codes").click()
    page.get_by_role("button", name="Clear the list").click()
    expect(page.locator("code-reader [role=status]")).to_have_text(
        "The list is cleared, here and on the device."
    )
    read(page, CODE)
    assert len(cells(page)) == 1
    assert page.locator("code-reader h2").count() == 1


def test_a_table_for_the_report(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    read(page, f'=HYPERLINK("http://x") {CODE}\n@Ana, 4b {OTHER}\nBo {CODE}')
    with page.expect_download() as download:
        page.get_by_role("button", name="Save as a table (CSV)").click()
    text = download.value.path().read_bytes().decode("utf-8-sig")
    columns, first, second, third = csv.reader(text.splitlines())
    assert columns == [
        "label", "lesson", "numbers", "code", "stops", "answers", "before", "after", "minutes",
    ]  # fmt: skip
    assert first[0] == '\'=HYPERLINK("http://x")'
    assert second[:4] == ["'@Ana, 4b", "river-walk", str(RIVER.numbers), OTHER]
    assert third[:4] == ["Bo", "soup-night", str(SOUP.numbers), CODE]
    stops = [stop for stop, done in zip(SOUP.stops, DONE.stops, strict=True) if done]
    assert third[4] == " ".join(stops)
    assert third[5].split()[:3] == [
        f"{ROW}.gap=first",
        f"{ROW}.count=later",
        f"{SOUP.answers[2]}=no",
    ]
    assert third[6:] == ["the-most=wrong", "the-most=right", "20 to 29"]


def test_opened_from_a_folder_it_says_why_it_reads_nothing(page: Page, built_site: Path) -> None:
    page.goto((built_site / "codes.html").as_uri())
    expect(page.locator("code-reader")).to_contain_text("open from a folder")
    expect(page.locator("textarea")).to_be_hidden()


def test_nothing_is_kept_unless_it_is_asked_for(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    read(page, f"Ana {CODE}")
    page.reload()
    expect(page.locator("textarea")).to_have_value("")
    assert page.evaluate("localStorage.length") == 0
    page.get_by_role("checkbox", name="Keep them on this device").check()
    page.locator("textarea").fill(f"Ana {CODE}")
    page.reload()
    expect(page.locator("textarea")).to_have_value(f"Ana {CODE}")
    page.get_by_role("checkbox", name="Keep them on this device").uncheck()
    assert page.evaluate("localStorage.length") == 0


def test_what_is_kept_goes_with_the_list_and_with_everything(page: Page, site: str) -> None:
    for name in ("Clear the list", "Clear everything on this device"):
        page.goto(f"{site}codes.html")
        page.get_by_role("checkbox", name="Keep them on this device").check()
        page.locator("textarea").fill(f"Ana {CODE}")
        page.get_by_role("button", name=name).click()
        if name != "Clear the list":
            page.get_by_role("button", name="Clear it all").click()
        expect(page.get_by_text("cleared").first).to_be_visible()
        assert page.evaluate("localStorage.length") == 0


def test_in_spanish_it_reads_lessons_of_both_languages(page: Page, site: str) -> None:
    page.goto(f"{site}es/codes.html")
    bean = finish_layout(RESULTS["bean-stew"])
    done = Finished((Done.DONE,) * len(bean.stops), (Found.LATER,) * len(bean.answers), (), (), 7)
    read(page, f"Ana {CODE}\nBo {finish_code(done, bean)}", "Leer los códigos")
    found = cells(page)
    assert found[0][1:4] == ["Noche de sopa en el salón", "10 de 11", "4 de 8"]
    assert found[1][1] == "What if? Two pots for the guests"
    assert found[1][6] == "60 o más"


def test_by_keyboard_alone(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    page.locator("textarea").focus()
    page.keyboard.insert_text(f"Ana {CODE}")
    for _ in range(2):
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.locator("code-reader tbody tr")).to_have_count(1)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_it_keeps_nobody_out(
    page: Page, site: str, axe: Callable[[Page], list[str]], scheme: str
) -> None:
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.set_viewport_size({"width": 320, "height": 700})
    page.goto(f"{site}codes.html")
    assert axe(page) == []
    read(page, f"Ana {CODE}\nnoise")
    assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


def test_printed_it_is_the_table_and_what_to_say(page: Page, site: str) -> None:
    page.goto(f"{site}codes.html")
    read(page, f"Ana {CODE}")
    page.emulate_media(media="print")
    expect(page.locator("code-reader table")).to_be_visible()
    expect(page.locator("code-reader textarea")).to_be_hidden()


def test_without_a_script_it_says_what_it_needs(browser: Browser, site: str) -> None:
    page = browser.new_page(java_script_enabled=False)
    page.goto(f"{site}codes.html")
    expect(page.get_by_text("To read codes, this page needs JavaScript.")).to_be_visible()
    expect(page.locator("textarea")).to_be_hidden()
    page.close()


def test_a_teacher_finds_it_in_the_notes_without_scrolling(page: Page, site: str) -> None:
    page.set_viewport_size({"width": 1280, "height": 720})
    page.goto(f"{site}soup-night/notes.html")
    link = page.get_by_role("link", name="Read finish codes").first
    expect(link).to_be_in_viewport()
    link.click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Read finish codes")
