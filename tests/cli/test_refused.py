"""What the machine refuses ends in one sentence, and a build that is stopped leaves nothing behind."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.cli import refused
from generator.cli.commands import commands
from generator.cli.refused import sentence
from tests.site_project import copy_project, hashes, small_lesson, write_lesson


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site of one lesson."""
    project = copy_project(tmp_path / "project", lessons=False)
    write_lesson(project, "small", small_lesson())
    return project


@pytest.mark.parametrize(
    ("number", "told"),
    [
        (errno.ENOSPC, "site/care.html: the disk is full: make room, then say it again."),
        (
            errno.EROFS,
            "site/care.html: this disk can only be read: work on a copy on another disk.",
        ),
        (errno.EIO, "site/care.html: input/output error: see whether the disk is in order."),
    ],
)
def test_what_the_system_says_in_a_sentence(tmp_path: Path, number: int, told: str) -> None:
    error = OSError(number, os.strerror(number), str(tmp_path / "site/care.html"))
    assert sentence(error, str(tmp_path)) == told


def test_a_change_of_name_has_two_names(tmp_path: Path) -> None:
    error = OSError(errno.EBUSY, "busy", tmp_path / "site", None, tmp_path / ".site.1.old")
    assert sentence(error, str(tmp_path)).startswith("site to .site.1.old: another program uses")


def test_an_error_without_number_or_name(tmp_path: Path) -> None:
    told = sentence(OSError("odd"), str(tmp_path))
    assert told == "odd: see whether the disk is in order."


def test_every_way_out_is_of_one_line() -> None:
    assert not [text for pair in refused._WAYS_OUT.values() for text in pair if "\n" in text]


def test_a_file_where_a_folder_must_be(root: Path) -> None:
    (root / ".cache").write_text("no folder", "utf-8")
    done = CliRunner().invoke(commands, ["build", "--root", str(root)])
    assert done.exit_code == 1
    assert done.stderr == (
        ".cache: something else has this name: give that another name, or remove it.\n"
    )
    assert not (root / "site").exists()


WAITS = """
import time
import generator.build
from generator.cli import main

def slowly(run, site, by_hand, folder):
    (folder / "half.html").touch()
    print("begun", flush=True)
    time.sleep(60)

generator.build.fill = slowly
main()
"""
"""A build that never ends."""


@pytest.mark.skipif(os.name != "posix", reason="other systems send no such signals")
@pytest.mark.parametrize("stop", [signal.SIGTERM, signal.SIGINT])
def test_a_build_that_is_stopped_clears_what_it_began(root: Path, stop: signal.Signals) -> None:
    (root / "site").mkdir()
    (root / "site/index.html").write_text("old", "utf-8")
    before = hashes(root / "site")
    build = [sys.executable, "-c", WAITS, "build", "--root", root]
    with subprocess.Popen(build, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as run:
        assert run.stdout is not None
        assert run.stdout.readline() == "begun\n"
        assert list(root.glob(".site.*.new/half.html"))
        run.send_signal(stop)
        _, told = run.communicate(timeout=30)
    assert (run.returncode, told.strip()) == (1, "Aborted!")
    assert hashes(root / "site") == before
    assert not list(root.glob(".site.*"))


@pytest.mark.parametrize(
    "words",
    [
        ("build",),
        ("check",),
        ("preview",),
        ("new", "Soup"),
        ("trace", "soup"),
        ("rehearse", "soup"),
        ("recorded", "soup"),
        ("translate", "soup", "es"),
        ("translated", "soup", "es"),
        ("reference",),
        ("foods", "find", "apple"),
        ("foods", "refresh"),
    ],
)
def test_a_folder_that_is_no_site_is_told_by_every_command_and_left_alone(
    tmp_path: Path, words: tuple[str, ...]
) -> None:
    done = CliRunner().invoke(commands, [*words, "--root", str(tmp_path)])
    assert done.exit_code == 1
    assert "this is not the folder of a site" in done.stderr
    assert "go to the folder that does, or name it with --root" in done.stderr
    assert not list(tmp_path.iterdir())
