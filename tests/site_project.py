"""Gives tests an educator's site of their own: a copy of the demo, and MkDocs run over it as she runs it."""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

from click.testing import CliRunner, Result
from mkdocs.__main__ import cli as mkdocs
from mkdocs.commands.build import log
from mkdocs.utils import DuplicateFilter

ROOT = Path(__file__).parents[1]
EPOCH = "1700000000"
"""Seconds since 1970 that a build takes for its own time (reproducible-builds.org, SOURCE_DATE_EPOCH)."""
SAID = "said.txt"


def copy_project(folder: Path, *, lessons: bool = True) -> Path:
    """Copy what a site is made of into a folder; without its lessons, `lessons/` is empty, its address a usual one.

    Nor does it make papers then, unless its test asks for them by `make_papers`.
    """
    folder.mkdir(parents=True, exist_ok=True)
    for name in ("site_data", "theme"):
        shutil.copytree(ROOT / name, folder / name)
    shutil.copy(ROOT / "mkdocs.yml", folder)
    if lessons:
        shutil.copytree(ROOT / "lessons", folder / "lessons")
    else:
        (folder / "lessons").mkdir()
        _give_address(folder / "site_data/site.yaml")
        make_papers(folder)
    return folder


def _give_address(file: Path) -> None:
    """One that could be somebody's; `check` asks about the demo's, which is nobody's."""
    text = file.read_text("utf-8")
    file.write_text(text.replace("kitchen.larkmead.example/", "kitchen.example.org/"), "utf-8")


def make_papers(project: Path, *words: str) -> None:
    """Say which papers the site makes."""
    file = project / "site_data/site.yaml"
    lines = [one for one in file.read_text("utf-8").splitlines() if not one.startswith("papers:")]
    file.write_text("\n".join([*lines, f"papers: [{', '.join(words)}]", ""]), "utf-8")


def run_mkdocs(project: Path, *options: str) -> Result:
    """`mkdocs build` of the project, in this process; what it says is in `stderr`."""
    words = ["build", "--config-file", str(project / "mkdocs.yml"), *options]
    for one in log.filters:  # as in a process that has just begun: nothing was said before
        if isinstance(one, DuplicateFilter):
            one.msgs.clear()
    runner = CliRunner(env={"SOURCE_DATE_EPOCH": EPOCH})
    return runner.invoke(mkdocs, words, catch_exceptions=False)


def start_mkdocs(project: Path, *options: str) -> subprocess.CompletedProcess[str]:
    """`mkdocs build` in the project, as a program of its own, as an educator's forge starts it."""
    return subprocess.run(
        [sys.executable, "-m", "mkdocs", "build", *options],
        cwd=project,
        env={**os.environ, "SOURCE_DATE_EPOCH": EPOCH, "PYTHONWARNINGS": "default"},
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


def build_project(project: Path) -> Path:
    """Build the project strictly; returns the folder of the site."""
    done = run_mkdocs(project, "--strict")
    assert done.exit_code == 0, done.stderr
    return project / "site"


def build_demo(folder: Path) -> Path:
    """The demo, built as on a forge; returns the folder of its site.

    What was said meanwhile stands beside it, in ``said.txt`` of the project.
    """
    project = copy_project(folder)
    done = start_mkdocs(project, "--strict")
    assert done.returncode == 0, done.stderr
    (project / SAID).write_text(done.stdout + done.stderr, "utf-8")
    return project / "site"


def hashes(folder: Path) -> dict[str, str]:
    """What every file of a folder holds, by its path."""
    return {
        file.relative_to(folder).as_posix(): hashlib.sha256(file.read_bytes()).hexdigest()
        for file in sorted(folder.rglob("*"))
        if file.is_file()
    }


def write_lesson(project: Path, name: str, lesson: Mapping[str, object]) -> Path:
    """Write a lesson file as JSON, which is YAML too (YAML 1.2, section 1.3)."""
    folder = project / "lessons" / name
    folder.mkdir(parents=True)
    file = folder / "lesson.yaml"
    file.write_text(json.dumps(lesson, ensure_ascii=False, indent=1), "utf-8")
    return file


def small_lesson(**fields: object) -> dict[str, object]:
    """A lesson with one row and one move, and no video."""
    return {
        "title": "A small lesson",
        "summary": "One row.",
        "grades": "3-5",
        "minutes": 10,
        "stops": [
            {
                "compare": {
                    "id": "lunch",
                    "measure": "energy",
                    "sides": ["Home", "Kiosk"],
                    "rows": [
                        [
                            {"food": "apple-raw", "amount": "1 medium"},
                            {"food": "pizza-cheese", "amount": "1 slice"},
                        ]
                    ],
                    "solve": ["gap", "count"],
                }
            },
            {"move": {"for": "lunch", "one_move_per": 10, "moves": ["march"]}},
        ],
        **fields,
    }
