"""Runs tests and prints, for each room of the program, how many of its branches they walk.

Run `python bench/covered.py` for the whole suite, or name tests: `python bench/covered.py tests/compute`.
Programs that tests start are counted too, copies of the program that tests change are not. The exit code is 1 where a
room lies under its goal, and where the tests fail. `--lines` also prints what no test walks, file by file.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TypedDict

ROOT = Path(__file__).parents[1]
GOAL = 95
"""Percent of lines and branches together, as coverage.py counts them, in each room."""
CONFIG = """\
[run]
branch = true
source_pkgs = generator
omit = {folder}/*
data_file = {folder}/data
patch = subprocess, _exit
concurrency = multiprocessing, thread
sigterm = true
"""
"""How coverage.py counts: in every process, and not in copies, which lie in the tests' own folder."""
LEFT_OUT = {"generator/__main__.py": "runs before anything is installed, as a program of its own"}


class _File(TypedDict):
    """What coverage.py says of one file."""

    summary: Mapping[str, int]
    missing_lines: Sequence[int]
    missing_branches: Sequence[Sequence[int]]


def main(words: Sequence[str]) -> int:
    """Run the tests and tell what they walked."""
    tests = [word for word in words if word != "--lines"]
    with TemporaryDirectory() as name:
        folder = Path(name).resolve()
        failed, files = _counted(folder, tests or ["tests"])
    rooms = by_room({path: one["summary"] for path, one in files.items()})
    for line in (*(unwalked(files) if "--lines" in words else ()), *table(rooms)):
        print(line)
    return int(failed or not rooms or min(rooms.values()) < GOAL)


def _counted(folder: Path, tests: Sequence[str]) -> tuple[bool, Mapping[str, _File]]:
    """Whether tests failed, and what coverage.py counted in each file."""
    config, report = folder / "config", folder / "coverage.json"
    config.write_text(CONFIG.format(folder=folder), "utf-8")
    told = ("--cov", f"--cov-config={config}", f"--cov-report=json:{report}")
    spread = ("--numprocesses=auto", "--dist=loadfile", f"--basetemp={folder / 'tests'}")
    command = (sys.executable, "-m", "pytest", "-q", *spread, *told, *tests)
    failed = subprocess.run(command, cwd=ROOT, check=False).returncode != 0
    if not report.is_file():
        return True, {}
    files: Mapping[str, _File] = json.loads(report.read_text("utf-8"))["files"]
    return failed, files


def unwalked(files: Mapping[str, _File]) -> Iterable[str]:
    """A line for each file that has lines or branches which no test walks."""
    for path, one in files.items():
        branches = [f"{start}->{max(end, 0) or 'end'}" for start, end in one["missing_branches"]]
        if path not in LEFT_OUT and (one["missing_lines"] or branches):
            yield f"{path}: {', '.join(map(str, (*one['missing_lines'], *branches)))}"


def by_room(files: Mapping[str, Mapping[str, int]]) -> dict[str, float]:
    """Percent that the tests walked of each room, a file at the top being one by itself.

    Args:
        files: by path from the root, what coverage.py counted.
    """
    walked, there = Counter[str](), Counter[str]()
    for path, counted in files.items():
        if path not in LEFT_OUT:
            room = path.split("/")[1]
            walked[room] += counted["covered_lines"] + counted["covered_branches"]
            there[room] += counted["num_statements"] + counted["num_branches"]
    return {room: 100 * walked[room] / there[room] for room in sorted(there) if there[room]}


def table(rooms: Mapping[str, float]) -> Iterable[str]:
    """A line for each room; what lies under the goal is marked."""
    for room, percent in rooms.items():
        yield f"{room:<14}{percent:6.1f} %{'' if percent >= GOAL else f'  under {GOAL}'}"


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
