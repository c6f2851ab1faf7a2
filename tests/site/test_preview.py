"""The preview follows the educator's hand: a change shows by itself, a mistake is told and survived."""

from __future__ import annotations

import os
import re
import signal
import socket
from collections.abc import Iterator
from pathlib import Path
from urllib.error import HTTPError
from urllib.request import urlopen

import pytest
from playwright.sync_api import Page, expect

from tests.running_preview import PATIENCE, Preview, previewing
from tests.site_project import copy_project, small_lesson, write_lesson

SHOWS = PATIENCE * 1000
"""Milliseconds that are waited for a page at most."""


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site with one small lesson."""
    copy_project(tmp_path / "site", lessons=False)
    write_lesson(tmp_path / "site", "small", small_lesson())
    return tmp_path / "site"


@pytest.fixture
def preview(project: Path) -> Iterator[Preview]:
    """A running preview."""
    with previewing(project) as running:
        yield running


def replace(file: Path, old: str, new: str) -> None:
    text = file.read_text("utf-8")
    assert old in text
    file.write_text(text.replace(old, new), "utf-8")


def test_a_change_shows_by_itself_and_a_mistake_is_survived(
    page: Page, preview: Preview, project: Path
) -> None:
    file = project / "lessons/small/lesson.yaml"
    heading = page.locator("h1")
    page.goto(preview.address + "small/index.html")
    expect(heading).to_have_text("A small lesson")

    replace(file, "A small lesson", "A second title")
    expect(heading).to_have_text("A second title", timeout=SHOWS)
    assert re.search(r"The pages are new, after \d+\.\d s\.", preview.told())

    replace(file, "apple-raw", "apple-rwa")
    preview.until(r"lessons/small/lesson\.yaml:\d+:\d+: .*apple-rwa")
    preview.until("The rest is shown until this is put right")
    expect(heading).to_have_text("A second title")
    expect(page.get_by_role("alert")).to_contain_text("apple-rwa", timeout=SHOWS)
    page.reload()  # the preview goes on answering
    expect(page.get_by_role("alert")).to_contain_text("did you mean `apple-raw`?")

    replace(file, "apple-rwa", "apple-raw")
    replace(file, "A second title", "A third title")
    expect(heading).to_have_text("A third title", timeout=SHOWS)
    expect(page.get_by_role("alert")).to_have_count(0)
    assert "Right again. The pages are new" in preview.told()
    assert "Traceback" not in preview.told()


def test_it_starts_with_a_mistake_and_becomes_the_site(page: Page, project: Path) -> None:
    file = project / "site_data/site.yaml"
    replace(file, "languages:", "langauges:")
    with previewing(project) as preview:
        page.goto(preview.address + "small/index.html")
        expect(page.locator("h1")).to_have_text("This site has something to put right")
        expect(page.locator("main")).to_contain_text(re.compile(r"site_data/site\.yaml:\d+:\d+"))
        expect(page.locator("main")).to_contain_text("did you mean `languages`?")
        assert "The browser says the same until this is put right" in preview.told()
        replace(file, "langauges:", "languages:")
        expect(page.locator("h1")).to_have_text("A small lesson", timeout=SHOWS)
        assert "Right again. The site is made, after" in preview.told()


def test_a_lesson_that_was_never_right_says_so_in_its_place(page: Page, project: Path) -> None:
    file = project / "lessons/small/lesson.yaml"
    write_lesson(project, "other", small_lesson(title="The other one"))
    replace(file, "apple-raw", "apple-rwa")
    with previewing(project) as preview:
        page.goto(preview.address + "other/index.html")
        expect(page.locator("h1")).to_have_text("The other one")
        expect(page.get_by_role("alert")).to_contain_text("did you mean `apple-raw`?")
        page.goto(preview.address + "small/index.html")
        expect(page.locator("h1")).to_have_text("This site has something to put right")
        expect(page.locator("li")).to_contain_text("did you mean `apple-raw`?")
        expect(page.get_by_role("alert")).to_have_count(0)
        assert "The rest is shown until this is put right" in preview.told()
        replace(file, "apple-rwa", "apple-raw")
        expect(page.locator("h1")).to_have_text("A small lesson", timeout=SHOWS)
        assert "Right again. The pages are new, after" in preview.told()


@pytest.mark.parametrize("text", [None, "plugins: [", "plugins: []", "theme: nothing-known"])
def test_broken_settings_are_shown_and_survived(
    project: Path, text: str | None, page: Page
) -> None:
    settings = project / "mkdocs.yml"
    sound = settings.read_text("utf-8")
    if text is None:
        settings.rename(project / "away.yml")
    else:
        settings.write_text(text, "utf-8")
    with previewing(project) as preview:
        page.goto(preview.address)
        expect(page.locator("li")).to_contain_text("mkdocs.yml:1:")
        if text is not None:  # nothing can be watched that is not there
            settings.write_text(sound, "utf-8")
            expect(page.locator("h1")).not_to_have_text(
                "This site has something to put right", timeout=SHOWS
            )
        assert "Traceback" not in preview.told()


def test_a_new_lesson_comes_into_the_list(page: Page, preview: Preview, project: Path) -> None:
    page.goto(preview.address)
    links = page.locator("main a[data-found-by]")
    expect(links).to_have_count(1)
    write_lesson(project, "another", small_lesson(title="Another one"))
    expect(links).to_have_count(2, timeout=SHOWS)


def test_an_address_that_leads_nowhere_ends_in_the_sites_own_page(
    page: Page, project: Path
) -> None:
    """The site is published below a path, the preview stands at the root of its host."""
    site = project / "site_data/site.yaml"
    replace(site, "kitchen.example.org/", "hill.example.org/kitchen/")
    with previewing(project) as preview, urlopen(preview.address) as front:
        assert front.status == 200
        with pytest.raises(HTTPError) as refused:
            urlopen(f"{preview.address}small/gone/page.html")
        assert refused.value.code == 404
        page.set_content(refused.value.read().decode())
        way = page.locator("main a").first.get_attribute("href")
        assert way == "/index.html"


def test_a_taken_port_is_told_and_the_next_free_one_serves(page: Page, project: Path) -> None:
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        taken = other.getsockname()[1]
        with previewing(project, "--port", str(taken)) as preview:
            told = preview.until(f"Port {taken} is taken, so the preview takes ")
            assert preview.address != f"http://127.0.0.1:{taken}/"
            assert preview.address.removesuffix("/").endswith(
                told.split(" takes ")[1].split(".")[0]
            )
            page.goto(preview.address + "small/index.html")
            expect(page.locator("h1")).to_have_text("A small lesson")


@pytest.mark.skipif(os.name != "posix", reason="other systems send no such signals")
@pytest.mark.parametrize("stop", [signal.SIGINT, signal.SIGTERM])
def test_it_stops_when_told_and_leaves_nothing(project: Path, stop: signal.Signals) -> None:
    with previewing(project) as preview:
        preview.until("Stop with Ctrl")
        preview.process.send_signal(stop)
        assert preview.process.wait(PATIENCE) == 0
        assert preview.told().endswith("Stopped.\n")
        assert "Traceback" not in preview.told()
    assert not list((project / ".cache/scratch").iterdir())


@pytest.mark.skipif(os.name != "posix", reason="other systems cannot kill in this way")
def test_what_a_killed_preview_left_goes_with_the_next_start(
    project: Path, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("TMPDIR", str(tmp_path / "temporary"))
    (tmp_path / "temporary").mkdir()
    scratch = project / ".cache/scratch"
    with previewing(project) as preview:
        preview.until("Stop with Ctrl")
        with previewing(project, "--port", "0", "--address", "127.0.0.1") as beside:
            beside.until("Stop with Ctrl")  # one that runs keeps what it needs
            assert len(list(scratch.glob("*.lock"))) == 4
        preview.process.kill()
        preview.process.wait(PATIENCE)
    assert len(list(scratch.glob("*.lock"))) == 2
    with previewing(project) as preview:
        preview.until("Stop with Ctrl")
        left = {path.name.partition("-")[0] for path in scratch.iterdir()}
        assert left == {str(preview.process.pid)}
    assert not list((tmp_path / "temporary").iterdir())
