"""One stop of a lesson in the page of another site, in a real Chromium: a frame that may only run scripts."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Frame, FrameLocator, Page, expect

from tests.html_page import read_page

SANDBOX = "allow-scripts"
"""The least that any class site allows (HTML, 4.8.5): another origin, no storage, no forms, no windows."""
STOP = "embed/river-walk/stop.html#lunch"


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


@pytest.fixture
def class_site(tmp_path: Path, serve: Callable[[Path], str]) -> Callable[[str, str], str]:
    """`class_site(address, sandbox)` gives the address of a page of another host that shows it."""

    def shows(address: str, sandbox: str) -> str:
        allowed = f'sandbox="{sandbox}"' if sandbox else ""
        frame = (
            f'<iframe src="{address}" title="Lunch" width="100%" height="640" {allowed}></iframe>'
        )
        head = '<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Class</title>'
        (tmp_path / "index.html").write_text(f"{head}<h1>Our class</h1>{frame}", "utf-8")
        return serve(tmp_path).replace("127.0.0.1", "localhost")

    return shows


def framed(page: Page) -> tuple[FrameLocator, Frame]:
    """The frame, its page loaded."""
    found = page.frame(url=re.compile("stop.html"))
    assert found is not None
    found.wait_for_load_state()
    return page.frame_locator("iframe"), found


def quiet(complaints: list[str]) -> None:
    """Leave out what Chromium says of a feature that it does not know; a test of headers names those."""
    complaints[:] = [one for one in complaints if "Permissions-Policy" not in one]


def test_a_row_is_worked_by_keyboard_where_a_frame_may_only_run_scripts(
    page: Page, site: str, class_site: Callable[[str, str], str], complaints: list[str]
) -> None:
    page.goto(class_site(site + STOP, SANDBOX))
    seen, frame = framed(page)
    assert frame.evaluate("self.origin") == "null"
    shown = "[...document.querySelectorAll('section')].filter(e => e.offsetParent).map(e => e.id)"
    assert frame.evaluate(shown) == ["lunch"]
    gap = seen.locator("#lunch input[name=gap]").first
    gap.focus()
    page.keyboard.type("1")
    page.keyboard.press("Enter")
    band = seen.locator("#lunch form:has(input) [data-band]").first
    expect(band).to_contain_text("Not yet.")
    gap.fill("320")
    page.keyboard.press("Tab")
    page.keyboard.type("32")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(band).to_contain_text("Yes.")
    expect(seen.locator("hanging-gaps")).to_contain_text("one gap")
    assert not frame.evaluate("document.querySelector('video, audio, iframe')")
    quiet(complaints)


def test_nothing_is_kept_and_nothing_kept_is_shown_even_where_it_could_be(
    page: Page, site: str, complaints: list[str]
) -> None:
    """A learner who worked the lesson on this device finds it as new here, and it is left as it was."""
    page.goto(f"{site}river-walk/index.html")
    row = page.locator("#lunch input[name=gap]").first
    row.fill("77")
    kept = page.evaluate("JSON.stringify(localStorage)")
    assert "77" in kept
    page.goto(site + STOP)
    inside = page.locator("#lunch input[name=gap]").first
    expect(inside).to_have_value("")
    inside.fill("320")
    inside.press("Enter")
    expect(page.locator("#lunch form:has(input) [data-band]").first).not_to_be_empty()
    page.goto(f"{site}care.html")  # the same origin, with its storage again
    assert page.evaluate("JSON.stringify(localStorage)") == kept
    assert page.evaluate("document.cookie") == ""
    assert page.evaluate("caches.keys()") == []
    quiet(complaints)


def test_other_pages_are_shown_in_no_frame(
    page: Page, site: str, class_site: Callable[[str, str], str], complaints: list[str]
) -> None:
    page.goto(class_site(f"{site}river-walk/index.html", ""))
    page.wait_for_timeout(0)
    assert any("frame-ancestors" in one for one in complaints)
    complaints.clear()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [320, 768, 1280])
def test_each_stop_fits_a_frame_and_keeps_nobody_out(
    page: Page,
    site: str,
    axe: Callable[[Page], list[str]],
    width: int,
    scheme: str,
    complaints: list[str],
) -> None:
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.set_viewport_size({"width": width, "height": 640})
    page.goto(f"{site}embed/river-walk/stop.html")
    names = page.eval_on_selector_all("main section", "all => all.map(each => each.id)")
    assert len(names) == 7
    for name in names:
        page.evaluate(f"location.hash = '{name}'")
        expect(page.locator(f"#{name}")).to_be_visible()
        assert page.locator("main section:visible").count() == 1
        assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert axe(page) == []
    quiet(complaints)


def test_the_way_to_the_lesson_leads_to_the_stop_in_a_page_of_its_own(
    page: Page, site: str, class_site: Callable[[str, str], str], complaints: list[str]
) -> None:
    allowed = "allow-scripts allow-popups allow-popups-to-escape-sandbox"
    page.goto(class_site(site + STOP, allowed))
    seen, _ = framed(page)
    with page.context.expect_page() as opened:
        seen.get_by_role("link", name="From the lesson").click()
    lesson = opened.value
    expect(lesson).to_have_url(f"{site}river-walk/index.html#lunch")
    assert lesson.evaluate("typeof localStorage.length") == "number"  # no sandbox came along
    quiet(complaints)


def test_without_scripts_one_stop_stands_alone_and_its_answers_open(
    site: str, browser: Browser
) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(site + STOP)
    assert page.locator("main section:visible").count() == 1
    page.locator("#lunch [data-working] summary").first.click()
    expect(page.locator("#lunch [data-working][open]").first).to_be_visible()
    context.close()


def test_the_notes_give_what_to_copy_for_each_stop(built_site: Path) -> None:
    """Every address in it names a page and a stop that are there, and allows no more than is needed."""
    found = 0
    for notes in built_site.rglob("notes.html"):
        for code in read_page(notes).iter("code"):
            told = "".join(code.itertext())
            address = re.match(
                r'<iframe src="https://kitchen\.larkmead\.example/([^"#]+)#([^"]+)"', told
            )
            assert address, told
            page = read_page(built_site / address[1])
            assert address[2] in {one.get("id") for one in page.iter("section")}
            assert "allow-same-origin" not in told
            found += 1
    assert found > 50
