"""The take-home copy of a lesson, unpacked and opened by double-click: from `file://` in a real Chromium."""

from __future__ import annotations

import re
from pathlib import Path
from zipfile import ZipFile

import pytest
from playwright.sync_api import Page, expect

from tests.browser.watched import wait_for_all

COPIES = {"en": "river-walk", "es": "es/river-walk", "day": "two-days"}


@pytest.fixture(params=COPIES.values(), ids=COPIES)
def copy(request: pytest.FixtureRequest, built_site: Path, tmp_path: Path) -> Path:
    """The folder of an unpacked copy, far from the site."""
    [packed] = (built_site / request.param).glob("*-take-home.zip")
    with ZipFile(packed) as file:
        assert file.testzip() is None
        file.extractall(tmp_path)
    return tmp_path / Path(request.param).name


@pytest.fixture
def asked(page: Page) -> list[str]:
    """Every address the page asks for."""
    addresses: list[str] = []
    page.on("request", lambda request: addresses.append(request.url))
    return addresses


def test_it_asks_for_nothing_outside_its_folder(page: Page, copy: Path, asked: list[str]) -> None:
    """The watched page also fails on any error in its console."""
    for file in sorted(copy.glob("*.html")):
        page.goto(file.as_uri())
        wait_for_all(page)
    inside = copy.as_uri() + "/"
    assert [url for url in asked if not url.startswith((inside, "data:"))] == []


def test_captions_show(page: Page, copy: Path) -> None:
    """As many cues as the caption file has time lines."""
    page.goto((copy / "index.html").as_uri())
    language = page.locator("track[default]").get_attribute("srclang")
    text = (copy / f"{copy.name}.{language}.vtt").read_text("utf-8")
    cues = page.evaluate("""() => { const shown = document.querySelector('track');
      const count = () => shown.track.cues.length;
      return shown.readyState === 2 ? count() : new Promise(done => shown.addEventListener('load', () => done(count()))) }""")
    assert cues == text.count(" --> ") > 10


def test_the_video_plays(page: Page, copy: Path) -> None:
    page.goto((copy / "index.html").as_uri())
    ahead = page.evaluate(
        """() => { const v = document.querySelector('video'); v.muted = true; v.play();
        return new Promise(done => v.addEventListener('timeupdate', () => v.currentTime > 0.3 && done(true))) }"""
    )
    assert ahead


def test_the_calculators_work(page: Page, copy: Path) -> None:
    page.goto((copy / "index.html").as_uri())
    check = page.locator("[data-check]").first
    check.click()
    expect(page.locator("[data-band]").first).not_to_be_empty()


def test_every_link_leads_to_the_copy_or_to_the_published_site(copy: Path) -> None:
    for file in copy.glob("*.html"):
        for href in re.findall(r'\bhref="([^"]*)"', file.read_text("utf-8")):
            path = href.partition("#")[0]
            assert not path or path.startswith("https://") or (copy / path).is_file(), (file, href)
