"""Gives tests the program as an educator gets it: one file, installed alone, away from this repository.

What it is installed beside is honest only in part: no test may ask a registry, so the libraries
are those of the environment that runs the tests. That the lock brings the same ones is for a
machine of its own: `.ci/run` installs from the lock.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from generator.author.program_file import built_from
from tests.site_project import ROOT

ANSWERS = (
    *("--name", "Hill Kitchen", "--address", "https://hill.kitchen.example.org/lessons"),
    *("--languages", "en", "--publish", "github", "--lesson", "Soup for two"),
)
"""What a new site is told."""


def build_wheel(folder: Path) -> Path:
    """The program as one file."""
    folder.mkdir()
    return built_from(ROOT, folder)


def install(wheel: Path, folder: Path) -> Path:
    """Put the program into a folder that Python can import from; returns it."""
    pip = (sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check")
    alone = ("--no-deps", "--no-index", "--target", str(folder))
    subprocess.run([*pip, *alone, str(wheel)], check=True, capture_output=True)
    return folder


def plumline(
    installed: Path, *words: str, cwd: Path, typed: str = ""
) -> subprocess.CompletedProcess[str]:
    """The installed program, started in a folder as a program of its own."""
    code = "import sys; from generator.cli import main; sys.argv[0] = 'plumline'; main()"
    return subprocess.run(
        [sys.executable, "-c", code, *words],
        cwd=cwd,
        env={**os.environ, **GIT, "PYTHONPATH": str(installed), "PYTHONSAFEPATH": "1"},
        input=typed,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


GIT = {
    f"GIT_{who}_{what}": said
    for who in ("AUTHOR", "COMMITTER")
    for what, said in (("NAME", "Hill Kitchen"), ("EMAIL", "hill@example.org"))
}
