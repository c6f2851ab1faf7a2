"""Parts of a file by RFC 9110, section 14; what each case must give was read there once and is told from memory (M)."""

from __future__ import annotations

import io
from collections.abc import Iterable
from pathlib import Path
from wsgiref.types import StartResponse, WSGIEnvironment
from wsgiref.util import FileWrapper, setup_testing_defaults

import pytest

from generator.plugin.ranges import part_asked, with_ranges

FILM = bytes(range(200)) * 1000
"""More than is read at once."""


@pytest.fixture
def film(tmp_path: Path) -> Path:
    file = tmp_path / "film.mp4"
    file.write_bytes(FILM)
    return file


def ask(file: Path, method: str = "GET", **headers: str) -> tuple[str, dict[str, str], bytes]:
    """What a server of this one file answers: status, headers and body."""

    def app(_: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        length = str(file.stat().st_size)
        start("200 OK", [("Content-Type", "video/mp4"), ("Content-Length", length)])
        return FileWrapper(file.open("rb"))

    environ: WSGIEnvironment = {}
    setup_testing_defaults(environ)
    environ["REQUEST_METHOD"] = method
    environ |= {f"HTTP_{name.upper()}": value for name, value in headers.items()}
    begun: list[tuple[str, dict[str, str]]] = []

    def start(status: str, given: list[tuple[str, str]], *_: object) -> object:
        begun.append((status, dict(given)))
        return None

    result = with_ranges(app)(environ, start)  # type: ignore[arg-type]  # nobody calls what it gives
    body = b"".join(result)
    getattr(result, "close", lambda: None)()
    return *begun[-1], body


@pytest.mark.parametrize(
    ("asked", "first", "last"),
    [
        ("bytes=0-499", 0, 499),
        ("bytes=500-999", 500, 999),
        ("bytes=9500-", 9500, 9999),
        ("bytes=-500", 9500, 9999),
        ("bytes=0-0", 0, 0),
        ("bytes=-1", 9999, 9999),
        ("bytes=9999-20000", 9999, 9999),
        ("bytes=-20000", 0, 9999),
        ("BYTES = 1 - 2", 1, 2),
        ("bytes=000001-0002", 1, 2),
        (f"bytes=0-{'9' * 5000}", 0, 9999),
    ],
)
def test_a_part_of_ten_thousand_bytes(asked: str, first: int, last: int) -> None:
    assert part_asked(asked, 10_000) == (first, last)


@pytest.mark.parametrize(
    "asked",
    ["", "bytes", "bytes=", "bytes=-", "bytes=5-2", "bytes=a-b", "items=0-4", "bytes=0-1,5-6"],
)
def test_what_is_no_one_part_is_answered_with_the_whole(asked: str, film: Path) -> None:
    assert part_asked(asked, 10_000) is None
    status, headers, body = ask(film, range=asked)
    assert (status, body) == ("200 OK", FILM)
    assert headers["Accept-Ranges"] == "bytes"
    assert headers["Content-Length"] == str(len(FILM))


def test_a_part_says_where_it_stands(film: Path) -> None:
    status, headers, body = ask(film, range="bytes=70000-199998")
    assert status == "206 Partial Content"
    assert headers["Content-Range"] == "bytes 70000-199998/200000"
    assert headers["Content-Length"] == "129999"
    assert headers["Content-Type"] == "video/mp4"
    assert body == FILM[70000:199999]


@pytest.mark.parametrize(
    "asked", ["bytes=200000-", "bytes=200000-200001", "bytes=-0", f"bytes={'9' * 5000}-"]
)
def test_a_part_that_is_not_there(film: Path, asked: str) -> None:
    status, headers, body = ask(film, range=asked)
    assert status == "416 Range Not Satisfiable"
    assert headers["Content-Range"] == "bytes */200000"
    assert body == b""


def test_of_an_empty_file_there_is_only_the_whole(film: Path) -> None:
    film.write_bytes(b"")
    for asked in ("bytes=0-", "bytes=-5"):
        status, headers, body = ask(film, range=asked)
        assert (status, headers["Content-Length"], body) == ("200 OK", "0", b"")


def test_a_part_of_another_version_is_not_given(film: Path) -> None:
    tag = ask(film)[1]["ETag"]
    assert tag.startswith('"'), "only a strong tag may be compared"
    assert ask(film, range="bytes=0-9", if_range=tag)[0] == "206 Partial Content"
    for other in (f"W/{tag}", '"other"', "Tue, 01 Jan 2030 00:00:00 GMT"):
        assert ask(film, range="bytes=0-9", if_range=other)[0] == "200 OK"
    film.write_bytes(FILM + b"more")
    assert ask(film, range="bytes=0-9", if_range=tag)[0] == "200 OK"


@pytest.mark.parametrize("method", ["HEAD", "POST"])
def test_only_a_get_has_parts(film: Path, method: str) -> None:
    status, headers, body = ask(film, method, range="bytes=0-9")
    assert (status, headers["Content-Length"]) == ("200 OK", str(len(FILM)))
    assert body == (b"" if method == "HEAD" else FILM)


def test_what_is_no_file_goes_through_as_it_is() -> None:
    def app(_: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        start("200 OK", [("Content-Type", "text/html")])
        return FileWrapper(io.BytesIO(b"<html>"))

    begun: list[list[tuple[str, str]]] = []
    environ: WSGIEnvironment = {"REQUEST_METHOD": "GET", "HTTP_RANGE": "bytes=0-1"}
    result = with_ranges(app)(environ, lambda _, headers, *__: begun.append(headers))  # type: ignore[arg-type,return-value]  # as above
    assert b"".join(result) == b"<html>"
    assert begun == [[("Content-Type", "text/html")]]
