"""The player halts at every pause: in a real Chromium with a real MP4, and in its arithmetic alone."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from time import sleep

import pytest
from playwright.sync_api import Page, expect

from tests.browser.moments import assert_halted, watch_moments
from tests.browser.still_page import ROOT, write_page
from tests.browser.watched import until


@pytest.fixture
def player(tmp_path: Path, serve: Callable[[Path], str], page: Page) -> Page:
    """The still page with its video ready to play."""
    write_page(tmp_path)
    page.goto(serve(tmp_path))
    until(page, "video.readyState === 4")
    watch_moments(page)
    return page


def play(page: Page) -> None:
    page.locator("video").focus()
    page.keyboard.press("Space")


def stands(page: Page) -> float:
    """Seconds at which the video stands, once it does."""
    until(page, "video.paused")
    return float(page.evaluate("document.querySelector('video').currentTime"))


FOCUSED = "['BODY', 'VIDEO'].includes(document.activeElement.tagName) ? 'BODY or VIDEO' : document.activeElement.tagName"
FULL = {
    "document": f"""() => {{
      const video = document.querySelector("video");
      video.addEventListener("click", () => video.requestFullscreen(), {{ once: true }});
      document.addEventListener("fullscreenchange", () => {{
        if (!document.fullscreenElement) window.left = {FOCUSED};
      }});
    }}""",
    "video alone": f"""() => {{
      const video = document.querySelector("video");
      video.webkitDisplayingFullscreen = true;
      video.webkitExitFullscreen = () => setTimeout(() => {{
        video.webkitDisplayingFullscreen = false;
        window.left = {FOCUSED};
        video.dispatchEvent(new Event("webkitendfullscreen"));
      }}, 100);
    }}""",
}


def go_on(page: Page, stop: str) -> None:
    page.locator(f"#{stop}").get_by_role("button", name="Go on").press("Enter")


@pytest.mark.parametrize("rate", [0.75, 1, 1.5])
def test_it_halts_at_the_pause_and_moves_to_the_stop(player: Page, rate: float) -> None:
    player.evaluate("rate => { document.querySelector('video').playbackRate = rate; }", rate)
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    assert_halted(player, 1.0)
    expect(player.locator("span[role=status].unseen")).to_have_text(
        "The video has stopped. Your turn: Think"
    )


def test_it_goes_on_when_asked_and_halts_at_every_stop_of_the_next_moment(player: Page) -> None:
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    go_on(player, "think")
    expect(player.locator("video")).to_be_focused()
    expect(player.get_by_role("heading", name="Work out the gap")).to_be_focused()
    assert_halted(player, 2.0)
    held = stands(player)
    go_on(player, "lunch")
    expect(player.get_by_role("heading", name="Move")).to_be_focused()
    assert stands(player) == held
    go_on(player, "move")
    until(player, "video.ended")
    expect(player.locator("video")).to_be_focused()


def test_it_waits_for_as_long_as_the_learner_needs(player: Page) -> None:
    play(player)
    held = stands(player)
    player.wait_for_timeout(600)  # what is shown is that nothing happens
    assert stands(player) == held


def test_who_goes_back_meets_the_pause_anew(player: Page) -> None:
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    go_on(player, "think")
    until(player, "video.currentTime > 1.2")
    player.evaluate("moments.length = 0; document.querySelector('video').currentTime = 0.5")
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    assert_halted(player, 1.0)


BACK_ON_A_BUSY_PAGE = """() => {
  const video = document.querySelector("video");
  video.addEventListener("seeking", () => {
    const begun = performance.now();
    while (performance.now() - begun < 500); // the film plays on meanwhile
  }, { once: true });
  video.addEventListener("timeupdate", function back() {
    if (video.currentTime < 1.1) return;
    video.removeEventListener("timeupdate", back);
    video.currentTime = 0.9;
  });
}"""


def test_who_goes_back_on_a_busy_page_meets_the_pause_anew(player: Page) -> None:
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    player.evaluate(BACK_ON_A_BUSY_PAGE)
    go_on(player, "think")
    expect(player.get_by_role("heading", name="Think")).to_be_focused()


def test_who_goes_back_while_it_is_held_meets_it_anew(player: Page) -> None:
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    player.evaluate("document.querySelector('video').currentTime = 0.5")
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    assert_halted(player, 1.0)


def test_a_pause_left_by_the_videos_own_button_is_passed_too(player: Page) -> None:
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    play(player)
    expect(player.get_by_role("heading", name="Work out the gap")).to_be_focused()
    assert_halted(player, 2.0)
    go_on(player, "move")  # not back to the stop of the same moment, where it has halted
    until(player, "video.ended")


@pytest.mark.parametrize("which", ["document", "video alone"])
def test_the_full_screen_is_left_before_the_question_is_shown(player: Page, which: str) -> None:
    """Of a phone that knows a full screen for videos only there is its interface: nothing else is here."""
    player.evaluate("document.body.style.paddingBottom = '2000px'")
    player.evaluate(FULL[which])
    player.locator("video").click()
    player.evaluate("document.querySelector('video').play()")
    until(player, "window.left")
    heading = player.get_by_role("heading", name="Think")
    expect(heading).to_be_focused()
    assert player.evaluate("left") == "BODY or VIDEO"
    top = heading.evaluate("each => each.getBoundingClientRect().top")
    assert -1 < top < 200


def test_a_full_screen_that_is_never_left_keeps_no_question_away(player: Page) -> None:
    player.evaluate(
        "Object.defineProperty(document, 'fullscreenElement', {get: () => document.body});"
        "document.exitFullscreen = () => Promise.resolve()"
    )
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()


def test_seeking_past_a_pause_halts_right_after(player: Page) -> None:
    play(player)
    player.evaluate("document.querySelector('video').currentTime = 1.5")
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    assert_halted(player, 1.5)


def test_seeking_while_held_halts_as_soon_as_it_plays(player: Page) -> None:
    player.evaluate("document.querySelector('video').currentTime = 3")
    play(player)
    expect(player.get_by_role("heading", name="Work out the gap")).to_be_focused()
    assert_halted(player, 3)


def test_a_hidden_tab_without_frames_still_halts(player: Page) -> None:
    """Where no picture is shown no frame is called back; `timeupdate` comes every 250 ms at most (HTML standard)."""
    player.evaluate("HTMLVideoElement.prototype.requestVideoFrameCallback = undefined")
    play(player)
    expect(player.get_by_role("heading", name="Think")).to_be_focused()
    assert_halted(player, 1.0)


def test_stopping_can_be_switched_off_and_that_is_remembered(player: Page) -> None:
    player.get_by_label("Stop at the pauses").press("Space")
    player.reload()
    expect(player.get_by_label("Stop at the pauses")).not_to_be_checked()
    play(player)
    until(player, "video.ended")
    expect(player.locator("video")).to_be_focused()


def test_playing_from_a_moment_halts_at_nothing_on_the_way(player: Page) -> None:
    player.get_by_role("button", name="Play from 0:03").press("Enter")
    until(player, "video.ended")
    expect(player.locator("video")).to_be_focused()


def test_going_on_from_a_stop_the_video_has_not_reached_starts_there(player: Page) -> None:
    go_on(player, "think")
    until(player, "video.currentTime > 1")
    expect(player.get_by_role("heading", name="Work out the gap")).to_be_focused()


def test_without_the_file_everything_else_works(
    tmp_path: Path, serve: Callable[[Path], str], page: Page, complaints: list[str]
) -> None:
    write_page(tmp_path)
    (tmp_path / "clip.mp4").unlink()
    page.goto(serve(tmp_path))
    go_on(page, "think")
    expect(page.locator("li[data-done] #think")).to_have_count(1)
    assert complaints
    assert all("clip.mp4" in complaint for complaint in complaints)
    complaints.clear()


POINTS = [
    {"at": 0, "stop": "a"},
    {"at": 40, "stop": "b"},
    {"at": 70, "stop": "c"},
    {"at": 70, "stop": "d"},
]


CROSSINGS: list[tuple[float, float, list[str], str | None]] = [
    (-1, 0, [], "a"),
    (39.9, 39.99, [], None),
    (39.9, 40, [], "b"),
    (39.9, 40.03, [], "b"),
    (40, 41, [], None),
    (39.9, 40.03, ["b"], None),
    (10, 100, [], "c"),
    (10, 100, ["c"], "d"),
    (10, 100, ["c", "d"], "b"),
    (100, 10, [], None),
]


def test_which_pause_is_come_to(tmp_path: Path, serve: Callable[[Path], str], page: Page) -> None:
    shutil.copy(ROOT / "theme" / "js" / "pause-points.js", tmp_path)
    (tmp_path / "index.html").write_text("<!doctype html><title>Blank</title>", encoding="utf-8")
    page.goto(serve(tmp_path))
    script = """async ([points, crossings]) => {
      const { pauseBetween } = await import("/pause-points.js");
      return crossings.map(([last, now, passed]) => pauseBetween(points, last, now, new Set(passed))?.stop ?? null);
    }"""
    assert page.evaluate(script, [POINTS, CROSSINGS]) == [stop for *_, stop in CROSSINGS]


def test_a_video_started_before_the_script_came_is_halted_too(
    tmp_path: Path, serve: Callable[[Path], str], page: Page
) -> None:
    write_page(tmp_path)
    page.route("**/video.js", lambda route: (sleep(1.6), route.continue_()))
    page.goto(serve(tmp_path), wait_until="commit")
    page.wait_for_selector("video")
    page.evaluate("const video = document.querySelector('video'); video.muted = true; video.play()")
    expect(page.get_by_role("heading", name="Think")).to_be_focused()
    assert page.evaluate("document.querySelector('video').paused")
