"""Answers with a part of a file where a browser asks for one: without that no film can be sought in.

RFC 9110, section 14 (from memory, status M): ``Range`` of one part, counted from the beginning or
from the end, ``If-Range`` by a strong entity tag, ``Content-Range``, and 416 for a part that is not
there. Several parts at once are answered with the whole file, which section 14.2 leaves open.
"""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Iterable, Iterator
from typing import BinaryIO
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment
from wsgiref.util import FileWrapper

_ONE_PART = re.compile(r"\s*bytes\s*=\s*(?P<first>[0-9]*)\s*-\s*(?P<last>[0-9]*)\s*", re.IGNORECASE)
_DIGITS = 18
"""Of a number of bytes; no file comes near, and far longer ones are no number to Python."""
_AT_ONCE = 64 * 1024
"""Bytes that are read at a time."""

Headers = list[tuple[str, str]]


class Part:
    """Some bytes of an open file, first and last one given; it is closed when they were sent."""

    def __init__(self, file: BinaryIO, first: int, last: int) -> None:
        self._file, self._first, self._last = file, first, last

    def __iter__(self) -> Iterator[bytes]:
        self._file.seek(self._first)
        left = self._last + 1 - self._first
        while left and (read := self._file.read(min(left, _AT_ONCE))):
            left -= len(read)
            yield read

    def close(self) -> None:
        """Give the file back; a server calls this also where the browser has gone."""
        self._file.close()


def with_ranges(app: WSGIApplication) -> WSGIApplication:
    """A server's answers, of its files also parts.

    Args:
        app: gives files as ``FileWrapper``, as MkDocs' preview does.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        begun: list[tuple[str, Headers]] = []

        def begin(status: str, headers: Headers, *_: object) -> Callable[[bytes], object]:
            begun.append((status, headers))
            return lambda _: None

        result = app(environ, begin)
        status, headers = begun[-1]
        file = getattr(result, "filelike", None) if isinstance(result, FileWrapper) else None
        tag = _tag(file) if status.startswith("200") and file else ""
        if not file or not tag:
            start(status, headers)
            return result
        return _from_file(environ, start, file, tag, headers)

    return answer


def part_asked(asked: str, length: int) -> tuple[int, int] | None:
    """The first and the last byte that ``Range`` asks for; nothing where the whole file is the answer.

    Args:
        asked: the header's value.
        length: of the file, in bytes.

    Returns:
        A first byte behind the last one where there is nothing of what was asked for.
    """
    found = _ONE_PART.fullmatch(asked)
    if not found or not length or found["first"] == found["last"] == "":
        return None
    if not found["first"]:  # the last so many bytes
        return length - min(_number(found["last"]), length), length - 1
    first = _number(found["first"])
    last = _number(found["last"]) if found["last"] else length - 1
    return None if last < first and found["last"] else (first, min(last, length - 1))


def _number(digits: str) -> int:
    digits = digits.lstrip("0")
    return int(digits or "0") if len(digits) <= _DIGITS else 10**_DIGITS


def _tag(file: BinaryIO) -> str:
    """A strong entity tag of a file on the disk; nothing of what is in memory alone."""
    try:
        stat = os.fstat(file.fileno())
    except OSError:  # as io.UnsupportedOperation is
        return ""
    return f'"{stat.st_size:x}-{stat.st_mtime_ns:x}-{stat.st_ino:x}"'


def _from_file(
    environ: WSGIEnvironment, start: StartResponse, file: BinaryIO, tag: str, headers: Headers
) -> Iterable[bytes]:
    length = os.fstat(file.fileno()).st_size
    wanted = environ.get("HTTP_IF_RANGE", tag) == tag and environ["REQUEST_METHOD"] == "GET"
    part = part_asked(environ.get("HTTP_RANGE", ""), length) if wanted else None
    kept = [one for one in headers if one[0].lower() != "content-length"]
    kept += [("Accept-Ranges", "bytes"), ("ETag", tag), ("Cache-Control", "no-cache")]
    first, last = part or (0, length - 1)
    if first > last and length:
        file.close()
        says = [("Content-Range", f"bytes */{length}"), ("Content-Length", "0")]
        start("416 Range Not Satisfiable", [*kept, *says])
        return []
    if part:
        kept.append(("Content-Range", f"bytes {first}-{last}/{length}"))
    status = "206 Partial Content" if part else "200 OK"
    start(status, [*kept, ("Content-Length", str(last + 1 - first))])
    if environ["REQUEST_METHOD"] == "HEAD":
        file.close()
        return []
    return Part(file, first, last)
