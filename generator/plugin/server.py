"""MkDocs' preview server on a socket of ours: bound before anything is made, and quiet when a browser hangs up."""

from __future__ import annotations

import errno
import os
import socket
import sys
from collections.abc import Callable
from pathlib import Path
from wsgiref.simple_server import WSGIRequestHandler

from mkdocs.livereload import LiveReloadServer

_NEXT = 20
"""Numbers above the wanted one that are tried when it is taken; then the system chooses."""


class PreviewServer(LiveReloadServer):
    """Serves a folder at an address that is ours already."""

    def __init__(
        self, renew: Callable[[], None], bound: socket.socket, folder: Path, mount: str
    ) -> None:
        """Serve on a socket that listens.

        Args:
            renew: called when a file has changed.
            bound: listens where the preview is to be found.
            folder: what is shown.
            mount: path below which it is shown, such as ``/``.
        """
        host, port = bound.getsockname()[:2]
        super().__init__(renew, host, port, str(folder), mount)
        self._folder = folder
        self.error_handler = self._in_place_of
        self.socket.close()
        self.socket = bound
        self.RequestHandlerClass = _QuietHandler
        self.serve_thread.daemon = True  # a second Ctrl+C ends the program whatever it is at

    def _in_place_of(self, code: int) -> bytes | None:
        """The page a host sends for one that is not there; nothing where there is none yet."""
        own = self._folder / f"{code}.html"
        return own.read_bytes() if own.is_file() else None

    def server_bind(self) -> None:
        """The socket is bound; nobody is asked for the machine's name, which may take seconds."""
        self.server_address = self.socket.getsockname()
        host, self.server_port = self.server_address[:2]
        self.server_name = str(host)
        self.setup_environ()

    def handle_error(self, request: object, client_address: object) -> None:
        """Stay quiet where the browser hung up, as it does when it leaves a film."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)  # type: ignore[arg-type]  # handed on as it came


class _QuietHandler(WSGIRequestHandler):
    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  # as the base class has it
        """What a browser asks for is nobody's business."""


def bound_to(host: str, port: int) -> socket.socket:
    """A socket that listens at a host, at the wanted port or the next one that is free.

    Raises:
        OSError: this machine has no such address, or the port is not for everybody.
    """
    wanted = [port, *range(port + 1, min(port + 1 + _NEXT, 65_536)), 0] if port else [0]
    for number in wanted:
        try:
            return _listening(host, number)
        except OSError as error:
            if error.errno not in {errno.EADDRINUSE, getattr(errno, "WSAEADDRINUSE", None)}:
                raise
    raise OSError(errno.EADDRINUSE, os.strerror(errno.EADDRINUSE))


def _listening(host: str, port: int) -> socket.socket:
    family, kind, protocol, _, address = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)[0]
    made = socket.socket(family, kind, protocol)
    try:
        if os.name == "posix":  # elsewhere this would share the port with whoever has it
            made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        made.bind(address)
        made.listen()
    except BaseException:
        made.close()
        raise
    return made


def address_in_network() -> str:
    """The address by which other machines of the same network find this one; nothing where there is none.

    Nothing is sent: a datagram socket that is given a place to send to only chooses its own address
    (TEST-NET-3, which RFC 5737 keeps for documents; from memory, status M).
    """
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asking:
        try:
            asking.connect(("203.0.113.1", 9))
        except OSError:
            return ""
        found = str(asking.getsockname()[0])
    return "" if found.startswith("127.") or found == "0.0.0.0" else found  # noqa: S104  # compared, not bound to
