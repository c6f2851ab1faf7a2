"""A pause is a pause in three engines: Chromium always, Firefox and WebKitGTK where the machine has them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.engines.chromium import chromium
from tests.browser.engines.engine import Engine
from tests.browser.engines.found import WAY_OUT, engine
from tests.browser.still_page import write_page

FULL = """(() => {
  const video = document.querySelector("video");
  const full = document.createElement("button");
  full.id = "full";
  full.textContent = "Full screen";
  full.onclick = () => video.requestFullscreen();
  document.querySelector("h1").append(" " + "far ".repeat(900)); // other lines in another width
  document.body.prepend(full);
  document.body.style.paddingBottom = "3000px";
})()"""
TOP = "document.querySelector('#think h2').getBoundingClientRect().top"
FOCUSED = "document.activeElement.closest('section')?.id"
PLAY = "void document.querySelector('video').play()"


def seek(seconds: float) -> str:
    return f"document.querySelector('video').currentTime = {seconds}"


@pytest.fixture(scope="module", params=["chromium", "firefox", "webkit"])
def begun(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Engine | None]:
    """One browser for all flows; nothing for Chromium, of which each test has a page of its own."""
    name = str(request.param)
    if name == "chromium":
        yield None
        return
    found = engine(name, tmp_path_factory.mktemp(name))
    if found is None:
        pytest.skip(f"this machine has no {name}: {WAY_OUT}")
    with found as running:
        yield running


@pytest.fixture
def still(begun: Engine | None, page: Page, tmp_path: Path, serve: Callable[[Path], str]) -> Engine:
    """The still page in one of the engines, without memory, its film ready."""
    write_page(tmp_path)
    html = (tmp_path / "index.html").read_text("utf-8")
    (tmp_path / "en.vtt").write_text(
        "WEBVTT\n\n00:00.000 --> 00:04.000\nHello.\n", encoding="utf-8"
    )
    track = '<track kind="captions" src="en.vtt" srclang="en" label="English" default></video>'
    (tmp_path / "index.html").write_text(html.replace("</video>", track), encoding="utf-8")
    running = begun or chromium(page)
    running.open(serve(tmp_path))
    running.ask("document.querySelector('video').muted = true")
    running.until("video.readyState === 4 && document.querySelector('pause-player').points.length")
    return running


def test_the_question_is_in_view_and_focused_after_full_screen(still: Engine) -> None:
    still.ask(FULL)
    still.tap("#full")
    still.until("document.fullscreenElement")
    still.ask(PLAY)
    still.until(f"!document.fullscreenElement && video.paused && {FOCUSED} === 'think'")
    for _ in range(20):  # and stays there while the page finds its width
        still.until("true")
    top = still.ask(TOP)
    assert isinstance(top, int | float)
    assert -1 < top < 200


def test_who_goes_back_meets_the_pause_anew(still: Engine) -> None:
    still.ask(PLAY)
    still.until(f"video.paused && {FOCUSED} === 'think'")
    still.tap("#think [data-go-on]")
    still.until("!video.paused && video.currentTime > 1.2")
    still.ask(seek(0.3))
    still.until(f"video.paused && {FOCUSED} === 'think' && video.currentTime < 1.6")


def test_a_way_on_says_where_it_goes(still: Engine) -> None:
    assert (
        still.ask("document.querySelector('#think [data-go-on]').textContent") == "Go on from 0:01"
    )
    still.ask(PLAY)
    still.until(f"video.paused && {FOCUSED} === 'think'")
    assert still.ask("document.querySelector('#think [data-go-on]').textContent") == "Go on"


def test_captions_are_shown_from_the_start(still: Engine) -> None:
    still.until("video.textTracks[0].mode === 'showing' && video.textTracks[0].cues?.length === 1")
    assert still.ask("localStorage['plumline-2 / captions'] ?? ''") == ""


def test_a_seek_across_a_pause_halts_there(still: Engine) -> None:
    still.ask(PLAY)
    still.until("video.currentTime > 0.1")
    still.ask(seek(1.5))
    still.until(f"video.paused && {FOCUSED} === 'think'")


def test_the_end_is_said(still: Engine) -> None:
    still.ask("document.querySelector('button[data-play-from]').click()")
    still.until("video.ended")
    still.until("document.querySelector('pause-player > .band:not([hidden])')?.textContent")


def test_after_a_reload_somebody_goes_on_there(still: Engine) -> None:
    still.ask("localStorage.setItem('plumline-2 / boat/still', '{\"film\": \"9\"}')")
    still.open(str(still.ask("location.href")))
    still.until("document.querySelector('.go-on-film')?.textContent === 'Go on from 0:09'")
