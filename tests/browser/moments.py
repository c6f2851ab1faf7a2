"""How late a video halts, counted in the moments its page had for it: a busy machine gives fewer, not later ones."""

from __future__ import annotations

from playwright.sync_api import Page

EVERY = 0.004
"""Seconds from moment to moment where nothing else is to do: the least a nested timer waits (HTML standard, timers)."""
LATE = 0.150
"""Seconds a halt may come late at worst on a page that has nothing else to do; the limit this project set itself."""

WATCH = """every => {
  window.moments = []; // where the video stood at each, since it last began to play
  const video = document.querySelector("video");
  video.addEventListener("play", () => (moments.length = 0));
  setInterval(() => video.paused || moments.push(video.currentTime), every * 1000);
}"""
PAST = "at => moments.filter((each) => each >= at).length"


def watch_moments(page: Page) -> None:
    """From now on, as long as the page is not left."""
    page.evaluate(WATCH, EVERY)


def assert_halted(page: Page, at: float) -> None:
    """The video has halted at this second or right after: by 150 ms of moments that the page had."""
    stood = page.evaluate("document.querySelector('video').currentTime")
    assert at <= stood, f"halted at {stood}, before {at}"
    assert page.evaluate(PAST, at) <= LATE / EVERY, f"it ran on to {stood}"
