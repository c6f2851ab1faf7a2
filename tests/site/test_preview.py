"""The preview follows the educator's hand: a change shows by itself, a mistake is told and survived."""

from __future__ import annotations

import re
import shutil
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from time import monotonic, sleep

import pytest
from playwright.sync_api import Page, expect

from tests.site_project import copy_project, small_lesson, write_lesson

PATIENCE = 60
"""Seconds to wait for anything, far more than it takes on a busy machine; nothing is timed here."""


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site with one small lesson."""
    copy_project(tmp_path / "site", lessons=False)
    write_lesson(tmp_path / "site", "small", small_lesson())
    return tmp_path / "site"


@pytest.fixture
def told(tmp_path: Path) -> Callable[[], str]:
    """What the preview has printed so far."""
    return lambda: (tmp_path / "told.txt").read_text("utf-8")


@pytest.fixture
def address(project: Path, tmp_path: Path, told: Callable[[], str]) -> Iterator[str]:
    """Address of the running preview."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        host = f"127.0.0.1:{free.getsockname()[1]}"
    program = shutil.which("plumline", path=str(Path(sys.executable).parent))
    assert program
    command = [program, "preview", "--address", host]
    with (tmp_path / "told.txt").open("w", encoding="utf-8") as out:
        running = subprocess.Popen(command, cwd=project, stdout=out, stderr=subprocess.STDOUT)
    try:
        wait_until(lambda: answers(host) or running.poll() is not None)
        assert running.poll() is None, told()
        yield f"http://{host}/"
    finally:
        running.terminate()
        running.wait(PATIENCE)


def test_a_change_shows_by_itself_and_a_mistake_is_survived(
    page: Page, address: str, project: Path, told: Callable[[], str]
) -> None:
    file = project / "lessons/small/lesson.yaml"
    sound = file.read_text("utf-8")
    heading = page.locator("h1")
    page.goto(address + "small/index.html")
    expect(heading).to_have_text("A small lesson")

    file.write_text(sound.replace("A small lesson", "A second title"), "utf-8")
    expect(heading).to_have_text("A second title", timeout=PATIENCE * 1000)

    file.write_text(sound.replace("apple-raw", "apple-rwa"), "utf-8")
    problem = re.compile(r"lessons/small/lesson\.yaml:\d+:\d+: .*apple-rwa")
    wait_until(lambda: bool(problem.search(told())))
    assert "Traceback" not in told()
    expect(heading).to_have_text("A second title")
    expect(page.get_by_role("alert")).to_contain_text("apple-rwa", timeout=PATIENCE * 1000)
    page.reload()  # the preview goes on answering
    expect(page.get_by_role("alert")).to_contain_text("did you mean `apple-raw`?")

    file.write_text(sound.replace("A small lesson", "A third title"), "utf-8")
    expect(heading).to_have_text("A third title", timeout=PATIENCE * 1000)
    expect(page.get_by_role("alert")).to_have_count(0)


def test_a_new_lesson_comes_into_the_list(page: Page, address: str, project: Path) -> None:
    page.goto(address)
    links = page.locator("main a")
    expect(links).to_have_count(1)
    write_lesson(project, "another", small_lesson(title="Another one"))
    expect(links).to_have_count(2, timeout=PATIENCE * 1000)


def answers(host: str) -> bool:
    """Whether somebody listens there."""
    name, _, port = host.partition(":")
    with socket.socket() as caller:
        return caller.connect_ex((name, int(port))) == 0


def wait_until(happened: Callable[[], bool]) -> None:
    end = monotonic() + PATIENCE
    while not happened():
        assert monotonic() < end, "waited in vain"
        sleep(0.1)
