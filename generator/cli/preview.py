"""The command ``plumline preview``: the site in a browser, and what becomes of each change in the terminal."""

from __future__ import annotations

import errno
import re
import socket
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING

import click

from generator.cli.options import root_option
from generator.cli.refused import sentence
from generator.cli.show import show
from generator.problems import Place, Problem

if TYPE_CHECKING:  # what the program is made of loads when the preview begins
    from collections.abc import Callable

_HOST, _PORT = "127.0.0.1", 8000
_ADDRESS = re.compile(r"(?P<host>\[[0-9A-Fa-f:.]+\]|[\w.-]+)(?::(?P<port>\d{1,5}))?")
_CAUTION = (
    "Everyone in this network can see the site while the preview runs, drafts and notes too: "
    "use --phone at home, not in a public place."
)


def _address(
    _: click.Context, parameter: click.Parameter, text: str | None
) -> tuple[str, int | None]:
    """``host:port`` or a host alone; nothing is the host that no other machine reaches."""
    found = _ADDRESS.fullmatch(text or "")
    port = int(found["port"]) if found and found["port"] else None
    if text is None:
        return "", None
    if not found or (port or 0) > 65_535:
        what = f"`{text}` is no address; write host and port, such as 127.0.0.1:8001"
        raise click.BadParameter(what, param=parameter)
    return found["host"].strip("[]"), port


@click.command()
@root_option
@click.option(
    "--address",
    callback=_address,
    metavar="HOST:PORT",
    help=f"Where the browser finds it: {_HOST}:{_PORT}, unless you say otherwise.",
)
@click.option("--port", type=click.IntRange(0, 65_535), help="The number after the colon alone.")
@click.option(
    "--phone", is_flag=True, help="Show it to a phone in the same room too, with a code to scan."
)
def preview(root: Path, address: tuple[str, int | None], port: int | None, *, phone: bool) -> None:
    """Show the site in a browser and renew it whenever a file changes."""
    from generator.plugin.preview import preview_site  # noqa: PLC0415  # loads MkDocs and half of the program
    from generator.plugin.server import address_in_network, bound_to  # noqa: PLC0415  # as above

    host = address[0] or (_in_network(address_in_network) if phone else _HOST)
    wanted = next((one for one in (port, address[1]) if one is not None), _PORT)
    with _bound(bound_to, host, wanted) as bound:
        taken = bound.getsockname()[1] != wanted and wanted
        if taken:
            click.echo(f"Port {wanted} is taken, so the preview takes {bound.getsockname()[1]}.")
        preview_site(root, bound, _Teller(root, bound, phone=phone))
    click.echo("Stopped.")


def _in_network(ask: Callable[[], str]) -> str:
    if found := ask():
        return found
    what = "this machine is in no network that a phone could share; join one, or leave --phone out"
    raise click.ClickException(what)


def _bound(bind: Callable[[str, int], socket.socket], host: str, port: int) -> socket.socket:
    try:
        return bind(host, port)
    except socket.gaierror:
        what = f"`{host}` is the name of no machine"
    except OSError as error:
        if error.errno in {errno.EACCES, errno.EPERM}:
            what = f"port {port} is not for everybody; take one from 1024 on, such as --port 8001"
            raise click.ClickException(what) from None
        if error.errno == errno.EADDRINUSE:
            what = (
                f"every port near {port} is taken; close another program, or name one with --port"
            )
            raise click.ClickException(what) from None
        what = f"this machine does not go by the address {host}"
    raise click.ClickException(f"{what}; leave --address out, or write 127.0.0.1:8001")


class _Teller:
    """Says in the terminal what became of a change."""

    def __init__(self, root: Path, bound: socket.socket, *, phone: bool) -> None:
        self._root, self._phone = root, phone
        host, port = bound.getsockname()[:2]
        self._url = f"http://{f'[{host}]' if ':' in host else host}:{port}/"
        self._begun = False

    def right(self, seconds: float, questions: int, *, first: bool, again: bool) -> None:
        """One line: that all is right, and how long it took."""
        asked = f"{questions} thing{'s'[: questions != 1]} to look at: python3 generator check"
        said = "Right again. " if again else ""
        what = "The site is made" if first else "The pages are new"
        end = f" {asked}." if questions and (first or again) else ""
        click.echo(f"{time.strftime('%H:%M:%S')} {said}{what}, after {seconds:.1f} s.{end}")
        self._begin()

    def wrong(self, problems: tuple[Problem, ...], *, made: bool) -> None:
        """The problems with their lines, and what the browser shows until then."""
        show(problems, self._root)
        shows = "The rest is shown" if made else "The browser says the same"
        click.echo(f"{time.strftime('%H:%M:%S')} {shows} until this is put right.")
        self._begin()

    def refused(self, error: OSError) -> Problem:
        """The sentence that a command would end with."""
        what, _, hint = sentence(error, str(self._root)).removesuffix(".").rpartition(": ")
        return Problem(Place("lessons"), what, hint)

    def _begin(self) -> None:
        """Where to look, said once."""
        if self._begun:
            return
        self._begun = True
        click.echo(f"Open {self._url} in a browser. Stop with Ctrl+C.")
        if self._phone:
            _show_code(self._url)
            click.echo(_CAUTION)


def _show_code(url: str) -> None:
    """The address as a code that a phone's camera reads, where the terminal can draw it."""
    from generator.author.phone import qr_in_blocks  # noqa: PLC0415  # most previews need none

    drawn = qr_in_blocks(url)
    try:
        drawn.encode(getattr(sys.stdout, "encoding", None) or "utf-8")
    except UnicodeEncodeError:
        return
    for line in drawn.splitlines():
        click.echo(click.style(line, fg="bright_white", bg="black"))
