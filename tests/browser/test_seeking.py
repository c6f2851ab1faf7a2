"""A film of some megabytes is sought in, in a real Chromium: where parts are answered, and where they are not."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from functools import cache, partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from tempfile import TemporaryDirectory
from threading import Thread

import imageio_ffmpeg
import pytest
from playwright.sync_api import Page, expect

from tests.browser.watched import until
from tests.running_preview import previewing
from tests.site_project import build_project, copy_project, small_lesson, write_lesson

STOPS = [
    {"watch": {"from": "0:00", "to": "0:10"}},
    {"ask": {"id": "late", "at": "0:50", "prompt": "What comes next?", "reveal": "The end."}},
]


@cache
def film() -> bytes:
    """A minute of moving noise, H.264, ten pictures a second, a key picture each second; over 4 MB."""
    look = "testsrc2=size=320x240:rate=10:duration=60,noise=alls=60:allf=t"
    shape = ["-c:v", "libx264", "-preset", "ultrafast", "-b:v", "600k", "-pix_fmt", "yuv420p"]
    with TemporaryDirectory() as folder:
        path = Path(folder, "film.mp4")
        program = [imageio_ffmpeg.get_ffmpeg_exe(), "-loglevel", "error", "-f", "lavfi", "-i", look]
        subprocess.run([*program, *shape, "-g", "10", "-movflags", "+faststart", path], check=True)
        return path.read_bytes()


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site of one lesson with that film and one pause."""
    root = copy_project(tmp_path / "site", lessons=False)
    write_lesson(root, "long", small_lesson(video={"file": "film.mp4"}, stops=STOPS))
    (root / "lessons/long/film.mp4").write_bytes(film())
    assert len(film()) > 4_000_000
    return root


@pytest.fixture
def preview(project: Path) -> Iterator[str]:
    """Address of its running preview."""
    with previewing(project) as running:
        yield running.address


def test_the_preview_s_film_is_sought_in(page: Page, preview: str) -> None:
    answers: list[int] = []
    page.on("response", lambda one: answers.append(one.status) if "film.mp4" in one.url else None)
    page.goto(preview + "long/index.html")
    page.locator("video").scroll_into_view_if_needed()
    until(page, "video.readyState >= 1 && video.duration > 59")
    until(page, "video.seekable.length === 1 && video.seekable.end(0) > 59")
    page.evaluate("document.querySelector('video').currentTime = 45")
    until(page, "!video.seeking && video.currentTime === 45 && video.readyState >= 2")
    assert 206 in answers
    page.get_by_text("Chapters", exact=True).click()
    page.locator(".chapters a[data-play-from='10']").click()
    until(page, "video.currentTime > 10.2 && video.currentTime < 40")
    expect(page.locator("video")).to_be_visible()


class _Plain(SimpleHTTPRequestHandler):
    """As `python3 -m http.server` answers: whole files alone."""

    def log_message(self, *_: object) -> None:
        """Leave the tests' output to the tests."""


@pytest.fixture
def plain(project: Path) -> Iterator[str]:
    """Address of the built site where no parts are answered."""
    folder = build_project(project)
    handler = partial(_Plain, directory=str(folder))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        server.handle_error = lambda *_: None  # type: ignore[method-assign]  # the browser hangs up
        Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02}, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()


def test_where_no_parts_are_answered_the_film_comes_whole_once_a_chapter_is_chosen(
    page: Page, plain: str
) -> None:
    page.goto(plain + "long/index.html")
    page.locator("video").scroll_into_view_if_needed()
    until(page, "video.readyState >= 1 && video.duration > 59 && !video.seekable.end(0)")
    page.get_by_text("Chapters", exact=True).click()
    page.locator(".chapters a[data-play-from='10']").click()
    until(page, "video.currentTime > 10.2 && video.currentTime < 40")
    until(page, "video.src.startsWith('blob:') && video.seekable.end(0) > 59")
    expect(page.locator("pause-player .band:visible")).to_have_count(0)
    page.evaluate("document.querySelector('video').currentTime = 49.5")
    expect(page.locator("#late h2")).to_be_focused()  # pauses hold


def test_where_it_cannot_come_whole_that_is_said_and_it_plays_on(
    page: Page, plain: str, project: Path, complaints: list[str]
) -> None:
    page.goto(plain + "long/index.html")
    page.locator("video").scroll_into_view_if_needed()
    until(page, "video.duration > 59 && !video.seekable.end(0)")
    (project / "site/long/film.mp4").unlink()
    page.get_by_text("Chapters", exact=True).click()
    page.locator(".chapters a[data-play-from='10']").click()
    said = "Here the video can only be played from its beginning."
    expect(page.locator("pause-player .band:visible")).to_contain_text(said)
    expect(page.get_by_role("status").filter(has_text=said)).to_have_count(1)
    until(page, "!video.paused && video.currentTime < 10")
    assert all("404" in complaint for complaint in complaints)
    complaints.clear()
