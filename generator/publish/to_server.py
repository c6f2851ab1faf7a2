"""A built site put on a server by rsync over ssh: whole or not at all."""

from __future__ import annotations

import os
import shlex
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.publish.git import SSH
from generator.publish.ours import KEPT, MARK, listing
from generator.publish.refused import NotPublishedError

_FOREIGN, _NO_FOLDER = 41, 42
"""What our lines leave with on the server; ssh itself leaves with 255, a shell with 127."""
_READY = """\
set -eu
target={target}; new="$target.plumline-new"; old="$target.plumline-old"
test -d "$(dirname "$target")" || exit {no_folder}
if test ! -e "$target" && test -d "$old"; then mv "$old" "$target"; fi
rm -rf "$old"
test -e "$target" || exit 0
test -d "$target" && test ! -L "$target" || {{ echo "$target"; exit {foreign}; }}
cd "$target"
if test ! -f {mark} && test -n "$(ls)"; then
  for name in {kept}; do test -e "$name" || {{ ls | head -5; exit {foreign}; }}; done
elif test -f {mark}; then
  for name in *; do
    test ! -e "$name" || grep -Fqx -- "$name" {mark} || {{ echo "$name"; exit {foreign}; }}
  done
fi
"""
"""Clears up after a run that was cut off, and looks whether what stands there is a site of ours."""
_SWAP = """\
set -eu
target={target}; new="$target.plumline-new"; old="$target.plumline-old"
test -f "$new/{mark}"
if test -d "$target"; then
  for one in "$target"/.[!.]*; do
    name=$(basename "$one")
    test ! -e "$one" || test -e "$new/$name" || cp -Rp "$one" "$new/$name"
  done
  mv "$target" "$old"
fi
mv "$new" "$target" || {{ test ! -d "$old" || mv "$old" "$target"; exit 1; }}
rm -rf "$old"
"""
"""Two renames beside each other; where the second fails, the first is taken back."""


@dataclass(frozen=True, slots=True)
class Server:
    """A folder of a server."""

    host: str
    """``user@host``, as ssh takes it."""
    path: str
    """Of the site there, without a slash at its end."""


def server_of(said: str) -> Server:
    """What ``user@host:/path`` means."""
    host, _, path = said.partition(":")
    return Server(host, path.rstrip("/") or "/")


def refuse_unready_server(server: Server) -> None:
    """Stop before anything is built where the server cannot take a site; what was cut off there is cleared up.

    Raises:
        NotPublishedError: a program is missing, the server is not reached, or something else is there.
    """
    for program, hint in (("rsync", "install rsync"), ("ssh", "install OpenSSH")):
        if program == "rsync" and not shutil.which(program):
            what = f"{program} is not on this machine, and it carries the site to {server.host}"
            raise NotPublishedError(
                what,
                f"{hint} (Debian, Ubuntu: apt install {program}; macOS has it), then publish again",
            )
    _on_server(server, _READY)


def put_on(site: Path, server: Server) -> None:
    """Upload a built site beside the one that stands there, then let it take that one's place.

    Raises:
        NotPublishedError: it does not arrive whole; the old site stands, and the next run goes on.
    """
    with TemporaryDirectory(prefix="plumline-") as beside:
        mark = Path(beside, MARK)
        mark.write_text(listing(site), "utf-8")
        _upload(server, f"{site}/", str(mark))
    _on_server(server, _SWAP)


def _upload(server: Server, *what: str) -> None:
    """The site first, without its mark; the mark last, so that only a whole one has it."""
    base = ["rsync", "-rlc", "--chmod=D755,F644", "-e", ssh()]
    new = f"{server.host}:{server.path}.plumline-new/"
    link = f"--link-dest=../{Path(server.path).name}/"
    for words in ([*base, "--delete", link, what[0], new], [*base, what[1], new]):
        done = subprocess.run(
            words, capture_output=True, text=True, check=False, stdin=subprocess.DEVNULL
        )
        if done.returncode:
            raise _cut(server, done.returncode, done.stderr)


def ssh() -> str:
    """The program that reaches a server, which asks for no password."""
    return os.environ.get("RSYNC_RSH") or SSH


def _on_server(server: Server, lines: str) -> None:
    text = lines.format(
        target=shlex.quote(server.path)
        if not server.path.startswith("~/")
        else f'"$HOME"/{shlex.quote(server.path[2:])}',
        mark=MARK,
        kept=" ".join(KEPT),
        foreign=_FOREIGN,
        no_folder=_NO_FOLDER,
    )
    try:
        done = subprocess.run(
            [*shlex.split(ssh()), server.host, "sh -s"],
            input=text, capture_output=True, text=True, check=False,
        )  # fmt: skip
    except FileNotFoundError:
        what = f"ssh is not on this machine, and it reaches {server.host}"
        raise NotPublishedError(what, "install OpenSSH, then publish again") from None
    if done.returncode:
        raise _refused(server, done.returncode, done.stdout, done.stderr)


def _refused(server: Server, code: int, out: str, err: str) -> NotPublishedError:
    match code:
        case 41:
            named = ", ".join(out.split("\n")[:5]).strip(", ")
            what = f"{server.path} at {server.host} holds {named}, which is no part of this site and would be gone"
            return NotPublishedError(
                what, "take that out, or name another folder in site_data/site.yaml"
            )
        case 42:
            what = f"the folder that {server.path} would stand in is not there at {server.host}"
            return NotPublishedError(what, "make it, or name another in site_data/site.yaml")
        case 255:
            return _cut(server, code, err)
        case _:
            what = f"{server.host} did not put the new site in the place of the old one, which still stands"
            return NotPublishedError(what, "do what it says, then publish again", words=err or out)


def _cut(server: Server, code: int, words: str) -> NotPublishedError:
    """What it means when the site does not arrive, by what rsync and ssh say."""
    said = words.lower()
    if "no space left" in said or "disk quota" in said:
        what, hint = (
            "has no room for a second site beside the one that stands there",
            "make room there, then publish again",
        )
    elif "permission denied (" in said:
        what, hint = (
            "asks who you are, and ssh has no key for it",
            f"set up a key (ssh-keygen, then ssh-copy-id {server.host}), then publish again",
        )
    elif "host key verification" in said:
        what, hint = (
            "has never spoken with this machine, and nobody has said that it is the right one",
            f"once, by hand: ssh {server.host}, and compare the fingerprint",
        )
    elif code == 127 or "command not found" in said or "not found" in said:
        what, hint = "has no rsync", "ask whoever runs it to install rsync"
    elif "permission denied" in said:
        what, hint = "lets you not write there", "ask whoever runs it, or name another folder"
    else:
        what, hint = (
            "was not reached to the end",
            "publish again once the line is back: what has arrived is not sent a second time",
        )
    return NotPublishedError(
        f"{server.host} {what}; the site that stands there is as it was", hint, words=words
    )
