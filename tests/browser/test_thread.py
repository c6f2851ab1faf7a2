"""The thread: knots fill as stops are done, the plum hangs where the learner is, and it is all said in text."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.still_page import write_page


@pytest.fixture
def thread(tmp_path: Path, serve: Callable[[Path], str], page: Page) -> Page:
    """The still page, opened for the first time."""
    write_page(tmp_path)
    page.goto(serve(tmp_path))
    return page


def here(page: Page) -> str | None:
    return page.locator("li[aria-current=step] section").get_attribute("id")


def done(page: Page) -> list[str | None]:
    return [section.get_attribute("id") for section in page.locator("li[data-done] section").all()]


def test_it_begins_at_the_first_stop(thread: Page) -> None:
    assert (here(thread), done(thread)) == ("watch", [])
    expect(thread.locator("#watch h2")).to_have_text("Watch (you are here)")


def test_checking_an_answer_finishes_its_stop(thread: Page) -> None:
    thread.locator("#think summary", has_text="Check your answer").press("Enter")
    expect(thread.locator("#think h2")).to_have_text("Think (done)")
    assert (here(thread), done(thread)) == ("lunch", ["think"])


def test_a_hint_finishes_nothing(thread: Page) -> None:
    thread.locator("#think summary", has_text="Hint").press("Enter")
    expect(thread.locator("#think details[data-hint]")).to_have_attribute("open", "")
    assert (here(thread), done(thread)) == ("think", [])


def test_finding_every_row_finishes_a_comparison(thread: Page) -> None:
    thread.get_by_role("textbox", name="Gap").fill("46")
    thread.get_by_role("textbox", name="Count").fill("4")
    thread.get_by_role("button", name="Check").click()
    expect(thread.locator("#lunch h2")).to_have_text("Work out the gap (done)")
    assert (here(thread), done(thread)) == ("move", ["lunch"])


def test_looking_at_the_working_finishes_a_row_too(thread: Page) -> None:
    thread.locator("#lunch-row-1 summary").press("Enter")
    expect(thread.locator("#lunch h2")).to_have_text("Work out the gap (done)")


def test_it_is_as_it_was_after_a_reload_and_new_when_cleared(thread: Page) -> None:
    thread.locator("#think summary", has_text="Check your answer").press("Enter")
    expect(thread.locator("li[data-done] #think")).to_have_count(1)
    thread.reload()
    assert (here(thread), done(thread)) == ("lunch", ["think"])
    thread.get_by_role("button", name="Clear").press("Enter")
    assert (here(thread), done(thread)) == ("watch", [])
    expect(thread.locator("span[role=status].unseen")).to_have_text(
        "What you wrote in this lesson is cleared."
    )


def test_looking_back_at_a_stop_that_is_done_moves_the_plum_nowhere(thread: Page) -> None:
    thread.locator("#think summary", has_text="Check your answer").press("Enter")
    expect(thread.locator("#think h2")).to_have_text("Think (done)")
    thread.locator("#think summary", has_text="Hint").focus()
    expect(thread.locator("#think summary", has_text="Hint")).to_be_focused()
    assert (here(thread), done(thread)) == ("lunch", ["think"])


def test_what_was_cleared_is_to_be_found_anew(thread: Page) -> None:
    """With two rows: after clearing, one of them does not finish the stop again."""
    thread.evaluate("""() => {
      const other = document.querySelector("#lunch-row-1").cloneNode(true);
      other.id = "lunch-row-2";
      document.querySelector("gap-calculator").append(other);
    }""")
    workings = [thread.locator(f"#lunch-row-{row} summary") for row in (1, 2)]
    for working in workings:
        working.press("Enter")
    expect(thread.locator("#lunch h2")).to_have_text("Work out the gap (done)")
    for working in workings:
        working.press("Enter")  # closed again
    thread.get_by_role("button", name="Clear").press("Enter")
    assert done(thread) == []
    workings[0].press("Enter")
    expect(thread.locator("#lunch-row-1")).to_have_attribute("data-found", "")
    assert done(thread) == []
    workings[1].press("Enter")
    expect(thread.locator("#lunch h2")).to_have_text("Work out the gap (done)")


def test_the_plum_follows_the_video(thread: Page) -> None:
    thread.locator("video").focus()
    thread.keyboard.press("Space")
    expect(thread.get_by_role("heading", name="Think")).to_be_focused()
    assert (here(thread), done(thread)) == ("think", ["watch"])
    thread.locator("#think [data-go-on]").press("Enter")
    expect(thread.get_by_role("heading", name="Work out the gap")).to_be_focused()
    assert (here(thread), done(thread)) == ("lunch", ["watch", "think"])


def test_opened_from_a_folder_it_works_all_the_same(tmp_path: Path, page: Page) -> None:
    write_page(tmp_path)
    page.goto((tmp_path / "index.html").as_uri())
    page.locator("#think summary", has_text="Check your answer").press("Enter")
    expect(page.locator("#think h2")).to_have_text("Think (done)")
    expect(page.get_by_role("button", name="Explore the chart")).to_have_count(0)
