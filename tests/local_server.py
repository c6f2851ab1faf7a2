"""Serves a folder to the tests' browser the way a web host does: with ranges, and the headers of its `_headers`."""

from __future__ import annotations

import io
import re
import socket
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from functools import partial
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any, BinaryIO


@contextmanager
def serving(folder: Path, *, gone_after: bool = False) -> Iterator[str]:
    """Give the address of the folder, ending in a slash, for as long as the block lasts.

    Args:
        folder: what is served.
        gone_after: whether connections that the browser keeps open end with the block.
    """
    server = _Server(("127.0.0.1", 0), partial(_Handler, directory=str(folder)))
    thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02})
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}/"
    finally:
        server.shutdown()
        server.server_close()
        if gone_after:
            server.hang_up()
        thread.join()


def sent_with(address: str, told: str) -> Iterator[tuple[str, str]]:
    """Every header that a file ``_headers`` has for an address; ``*`` at the end of a place is whatever follows."""
    path, place = address.partition("?")[0], ""
    for line in told.splitlines():
        if not line.startswith("  "):
            place = line
        elif path.startswith(place[:-1]) if place.endswith("*") else path == place:
            name, _, value = line.strip().partition(": ")
            yield name, value


class _Server(ThreadingHTTPServer):
    def __init__(self, *args: Any) -> None:
        super().__init__(*args)
        self._open: set[socket.socket] = set()

    def process_request(self, request: Any, client_address: Any) -> None:
        self._open.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Any) -> None:
        self._open.discard(request)
        super().shutdown_request(request)

    def hang_up(self) -> None:
        """End the connections that browsers keep open: a host that is gone answers on none."""
        for one in tuple(self._open):
            with suppress(OSError):
                one.shutdown(socket.SHUT_RDWR)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """Stay quiet where the browser hung up, as it does when it leaves a video."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


class _Handler(SimpleHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True  # else a body waits 40 ms until its head is acknowledged
    # Written out, for a machine's own table of types differs from the next one's.
    extensions_map = {  # noqa: RUF012 - the base class declares it so
        "": "application/octet-stream",
        ".css": "text/css; charset=utf-8",
        ".html": "text/html; charset=utf-8",
        ".js": "text/javascript; charset=utf-8",
        ".json": "application/json",
        ".jpg": "image/jpeg",
        ".mp4": "video/mp4",
        ".pdf": "application/pdf",
        ".png": "image/png",
        ".svg": "image/svg+xml",
        ".vtt": "text/vtt; charset=utf-8",
        ".webm": "video/webm",
        ".webmanifest": "application/manifest+json",
        ".webp": "image/webp",
        ".zip": "application/zip",
    }

    def send_head(self) -> io.BytesIO | BinaryIO | None:
        """Answer a range of bytes (RFC 9110, section 14), without which no video can seek."""
        asked = re.fullmatch(r"bytes=(\d+)-(\d*)", self.headers.get("Range", ""))
        path = Path(self.translate_path(self.path))
        if not asked or not path.is_file():
            return super().send_head()
        whole = path.read_bytes()
        first, last = int(asked[1]), min(int(asked[2] or len(whole)), len(whole) - 1)
        if first > last:
            self.send_error(HTTPStatus.REQUESTED_RANGE_NOT_SATISFIABLE)
            return None
        part = whole[first : last + 1]
        self.send_response(HTTPStatus.PARTIAL_CONTENT)
        self.send_header("Content-Type", self.guess_type(path))
        self.send_header("Content-Range", f"bytes {first}-{last}/{len(whole)}")
        self.send_header("Content-Length", str(len(part)))
        self.end_headers()
        return io.BytesIO(part)

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        """Send the site's own page in the place of one that is not there, as hosts of static sites do."""
        own = Path(self.directory, "404.html")
        if code != HTTPStatus.NOT_FOUND or self.command != "GET" or not own.is_file():
            super().send_error(code, message, explain)
            return
        page = own.read_bytes()
        self.send_response(code)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(page)))
        self.end_headers()
        self.wfile.write(page)

    def end_headers(self) -> None:
        self.send_header("Accept-Ranges", "bytes")
        self.send_header("Cache-Control", "no-cache")
        told = Path(self.directory, "_headers")
        for header in sent_with(self.path, told.read_text("utf-8") if told.is_file() else ""):
            self.send_header(*header)
        super().end_headers()

    def log_message(self, *_: object) -> None:
        """Leave the tests' output to the tests."""
