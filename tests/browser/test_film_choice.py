"""Smaller films of a lesson in a real Chromium: chosen by hand, kept on the device, links without a script."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.media_files import ffmpeg
from tests.project import GOOD, put
from tests.site_project import build_project, copy_project

Serve = Callable[[Path], str]
Axe = Callable[[Page], list[str]]
FILMS = {"file": "small-web.mp4", "smaller": "small-small.mp4", "slides": "small-slides.mp4"}
VIDEO = (
    "video: {" + ", ".join(f"{key}: {name}" for key, name in FILMS.items()) + ", silent: true}\n"
)
SOURCE = "-v error -f lavfi -i testsrc=s=64x36:d=200:r=2 -pix_fmt yuv420p -g 2 -movflags +faststart"


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A lesson with three films of one length."""
    project = copy_project(tmp_path_factory.mktemp("films") / "project", lessons=False)
    put(project, GOOD.replace("stops:\n", f"{VIDEO}stops:\n"), "small")
    folder = project / "lessons/small"
    for number, name in enumerate(FILMS.values(), 1):
        ffmpeg(*SOURCE.split(), "-crf", str(20 + 10 * number), folder / name)
    return build_project(project)


@pytest.fixture
def address(site: Path, serve: Serve) -> str:
    return f"{serve(site)}small/index.html"


def opened(page: Page, address: str) -> Page:
    page.goto(address)
    page.locator("film-choice:defined").wait_for(state="attached")
    return page


def shows(page: Page, name: str) -> None:
    expect(page.locator(f'video[src$="{name}"]')).to_have_count(1)


def test_the_first_film_is_shown_until_another_is_chosen(page: Page, address: str) -> None:
    opened(page, address)
    shows(page, FILMS["file"])
    expect(page.locator("[data-film='file']")).to_have_attribute("aria-current", "true")


def test_a_choice_goes_on_at_the_same_moment_and_is_kept(page: Page, address: str) -> None:
    opened(page, address)
    video = page.locator("video")
    video.evaluate("each => { each.currentTime = 5; }")
    page.locator("summary", has_text="Use less data").click()
    page.locator("[data-film='smaller']").click()
    shows(page, FILMS["smaller"])
    assert video.evaluate("each => each.currentTime") == 5
    expect(page.locator("a[aria-current]", has_text="smaller picture")).to_have_count(1)
    opened(page, address)
    shows(page, FILMS["smaller"])


def test_a_browser_that_saves_data_gets_the_smaller_film(page: Page, address: str) -> None:
    """The Network Information API's `saveData`; where a browser has none, nothing is chosen."""
    page.add_init_script(
        "Object.defineProperty(navigator, 'connection', {value: {saveData: true}})"
    )
    opened(page, address)
    shows(page, FILMS["smaller"])


def test_without_a_script_each_film_is_a_link_with_its_megabytes(
    browser: Browser, address: str
) -> None:
    context = browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto(address)
    for kind, name in FILMS.items():
        link = plain.locator(f"[data-film='{kind}']")
        assert (link.get_attribute("href") or "").endswith(name)
        assert (link.text_content() or "").endswith("\u00a0MB")
    context.close()


def test_the_pauses_hold_in_another_film(page: Page, address: str) -> None:
    opened(page, address)
    page.locator("summary", has_text="Use less data").click()
    page.locator("[data-film='slides']").click()
    at, stop = page.locator("pause-player").evaluate("each => JSON.parse(each.dataset.pauses)[0]")
    page.locator("video").evaluate(
        "(each, at) => { each.muted = true; each.currentTime = at - 0.5; return each.play(); }",
        float(at),
    )
    page.locator(f"[id='{stop}'] h2:focus").wait_for()
    assert page.locator("video").evaluate("each => each.paused")
    shows(page, FILMS["slides"])


@pytest.mark.parametrize("width", [320, 1280])
def test_it_fits_and_axe_finds_nothing(page: Page, address: str, axe: Axe, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    opened(page, address)
    page.locator("summary", has_text="Use less data").click()
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert axe(page) == []
