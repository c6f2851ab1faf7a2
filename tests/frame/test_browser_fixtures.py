"""The fixtures of the browser tests notice what they are there to notice."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Literal
from urllib.request import Request, urlopen

import pytest
from playwright.sync_api import Page

from tests import chromium

STRICT = "<meta http-equiv='Content-Security-Policy' content=\"default-src 'self'\">"
PLAIN = f"<!doctype html><html lang=en><meta charset=utf-8>{STRICT}<title>A</title><main><h1>A</h1>"

Serve = Callable[[Path], str]


def write(folder: Path, body: str) -> Path:
    (folder / "index.html").write_text(PLAIN + body, encoding="utf-8")
    (folder / "icon.svg").write_text("<svg xmlns='http://www.w3.org/2000/svg'/>", encoding="utf-8")
    return folder


def test_a_sound_page_has_no_complaints(page: Page, serve: Serve, tmp_path: Path) -> None:
    page.goto(serve(write(tmp_path, "<p>hello</p>")))
    assert page.inner_text("p") == "hello"


@pytest.mark.parametrize(
    ("script", "event", "complaint"),
    [
        ("console.error('spilt')", "console", "console: spilt"),
        ("throw new Error('dropped')", "weberror", "error: dropped"),
        ("fetch('gone.json')", "console", "console: Failed to load resource"),
        ("new Image().src = 'http://elsewhere.invalid/dot.png'", "console", "console: "),
    ],
)
def test_what_a_page_does_wrong_is_heard(
    page: Page,
    complaints: list[str],
    serve: Serve,
    tmp_path: Path,
    script: str,
    event: Literal["console", "weberror"],
    complaint: str,
) -> None:
    (tmp_path / "wrong.js").write_text(script, encoding="utf-8")
    heard = lambda _: any(text.startswith(complaint) for text in complaints)  # noqa: E731 - for once
    with page.context.expect_event(event, heard):
        page.goto(serve(write(tmp_path, "<script src=wrong.js></script>")))
    complaints.clear()


def test_a_request_to_another_host_is_heard(
    page: Page, complaints: list[str], serve: Serve, tmp_path: Path
) -> None:
    write(tmp_path, "")
    (tmp_path / "open.html").write_text("<img alt='' src='http://elsewhere.invalid/dot.png'>")
    page.goto(serve(tmp_path) + "open.html")
    assert "request to another host: http://elsewhere.invalid/dot.png" in complaints
    complaints.clear()


@pytest.mark.parametrize(
    ("body", "rules"),
    [
        ("<p>readable</p>", []),
        ("<img src=icon.svg>", ["image-alt"]),
        ("<button></button>", ["button-name"]),
    ],
)
def test_axe_works_under_a_strict_policy(
    page: Page,
    serve: Serve,
    tmp_path: Path,
    axe: Callable[[Page], list[str]],
    body: str,
    rules: list[str],
) -> None:
    """Rule names from axe-core's own list of rules, doc/rule-descriptions.md."""
    page.goto(serve(write(tmp_path, body)))
    assert [found.partition(":")[0] for found in axe(page)] == rules


@pytest.mark.parametrize(
    ("asked", "status", "body"),
    [("bytes=2-4", 206, b"234"), ("bytes=7-", 206, b"789"), ("bytes=8-99", 206, b"89")],
)
def test_ranges_as_in_rfc_9110(
    serve: Serve, tmp_path: Path, asked: str, status: int, body: bytes
) -> None:
    (tmp_path / "ten.mp4").write_bytes(b"0123456789")
    with urlopen(Request(serve(tmp_path) + "ten.mp4", headers={"Range": asked})) as answer:
        assert (answer.status, answer.read()) == (status, body)


def test_the_named_chromium_wins(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    mine = tmp_path / "mine"
    mine.touch(mode=0o755)
    monkeypatch.setenv("PLUMLINE_CHROMIUM", str(mine))
    assert chromium.find() == str(mine)


def test_a_named_chromium_that_is_missing_is_not_replaced(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PLUMLINE_CHROMIUM", "/nowhere/chromium")
    assert chromium.find() is None


def test_without_chromium_browser_tests_fail_and_say_the_way_out(
    pytester: pytest.Pytester, monkeypatch: pytest.MonkeyPatch
) -> None:
    pytester.makeconftest("from tests.conftest import *")
    pytester.makepyfile("def test_page(page): pass")
    monkeypatch.setenv("PLUMLINE_CHROMIUM", "/nowhere/chromium")
    result = pytester.runpytest_subprocess("-p", "no:cacheprovider")
    result.assert_outcomes(errors=1)
    result.stdout.fnmatch_lines(["*The tests need Chromium. Install it*"])
