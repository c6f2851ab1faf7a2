"""What `preview` says before it begins: a wrong address, a port that is not for everybody, a phone without network."""

from __future__ import annotations

import errno
import os
import socket
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.plugin import preview as shown
from generator.plugin import server
from generator.problems import LessonError, Place, Problem
from tests.qr_reader import read_squares
from tests.site_project import copy_project


@pytest.fixture
def root(tmp_path: Path) -> Path:
    return copy_project(tmp_path / "project", lessons=False)


def preview(root: Path, *options: str) -> Result:
    return CliRunner().invoke(commands, ["preview", "--root", str(root), *options])


@pytest.mark.parametrize("address", ["127.0.0.1:ab", "a b", "127.0.0.1:70000", ":8000", "::1:80"])
def test_a_wrong_address_is_a_sentence(root: Path, address: str) -> None:
    done = preview(root, "--address", address)
    assert done.exit_code == 2
    assert f"`{address}` is no address; write host and port, such as 127.0.0.1:8001" in done.stderr


def test_a_wrong_port_is_a_sentence(root: Path) -> None:
    assert "70000 is not in the range" in preview(root, "--port", "70000").stderr


@pytest.mark.parametrize(
    ("error", "told"),
    [
        (OSError(errno.EACCES, "no"), "port 80 is not for everybody; take one from 1024 on"),
        (OSError(errno.EADDRNOTAVAIL, "no"), "this machine does not go by the address here"),
        (OSError(errno.EADDRINUSE, "no"), "every port near 80 is taken"),
        (socket.gaierror(-2, "no"), "`here` is the name of no machine"),
    ],
)
def test_what_the_system_refuses_is_a_sentence(
    root: Path, monkeypatch: pytest.MonkeyPatch, error: OSError, told: str
) -> None:
    def refuse(*_: object) -> socket.socket:
        raise error

    monkeypatch.setattr(server, "bound_to", refuse)
    done = preview(root, "--address", "here:80")
    assert done.exit_code == 1
    assert f"Error: {told}" in done.stderr


def test_a_folder_that_is_no_site(tmp_path: Path) -> None:
    done = preview(tmp_path, "--port", "0")
    assert done.exit_code == 1
    assert "this is not the folder of a site" in done.stderr
    assert not list(tmp_path.iterdir())


def test_a_phone_without_a_network(root: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(server, "address_in_network", lambda: "")
    done = preview(root, "--phone")
    assert done.exit_code == 1
    assert "this machine is in no network that a phone could share" in done.stderr


def test_a_phone_is_given_the_address_as_a_code_and_a_caution(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(server, "address_in_network", lambda: "127.0.0.1")

    def show(_: Path, bound: socket.socket, tell: shown.Telling) -> None:
        with bound:
            tell.right(1.26, 0, first=True, again=False)

    monkeypatch.setattr(shown, "preview_site", show)
    said = preview(root, "--phone", "--port", "0").stdout
    assert "The site is made, after 1.3 s." in said
    address = said.partition("Open ")[2].partition(" ")[0]
    code = [line for line in said.splitlines() if set(line) <= set("█▀▄ ") and line.strip()]
    assert read_squares(len(code[0]) - 4, dark_squares(code)) == address
    assert "Everyone in this network can see the site while the preview runs" in said
    assert "not in a public place" in said


def dark_squares(lines: list[str]) -> set[tuple[int, int]]:
    """The dark squares of a code drawn in half blocks, two rows a line, its edge two squares wide."""
    rows = [
        row
        for line in lines
        for row in ([sign in "▄ " for sign in line], [sign in "▀ " for sign in line])
    ]
    inside = range(len(lines[0]) - 4)
    return {(row, column) for row in inside for column in inside if rows[row + 2][column + 2]}


def test_a_full_disk_is_the_sentence_of_a_build(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    error = OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), str(root / ".cache/scratch"))
    told: list[Problem] = []

    def show(_: Path, bound: socket.socket, tell: shown.Telling) -> None:
        with bound:
            told.append(tell.refused(error))

    monkeypatch.setattr(shown, "preview_site", show)
    preview(root, "--port", "0")
    assert str(told[0]).endswith(".cache/scratch: the disk is full: make room, then say it again")


def test_a_mistake_from_before_the_start_is_told_with_its_way_out(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def show(_: Path, bound: socket.socket, __: object) -> None:
        bound.close()
        raise LessonError([Problem(Place("lessons/a"), "it is wrong", "mend it")])

    monkeypatch.setattr(shown, "preview_site", show)
    done = preview(root, "--port", "0")
    assert done.exit_code == 1
    assert "lessons/a:1:1: it is wrong" in done.stderr
