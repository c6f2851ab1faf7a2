"""Runs tests and prints, for each room of the program, how many of its branches they walk.

Run `python bench/covered.py` for the whole suite, or name tests: `python bench/covered.py tests/compute`.
The exit code is 1 where a room lies under its goal, and where the tests fail. What the tests start as a program of its
own is not counted, so a figure is rather too low than too high.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from tempfile import TemporaryDirectory

ROOT = Path(__file__).parents[1]
GOAL = 95
"""Percent of lines and branches together, as coverage.py counts them, in each room."""
LEFT_OUT = {"generator/__main__.py": "runs before anything is installed, as a program of its own"}


def main(words: Sequence[str]) -> int:
    """Run the tests and tell what they walked."""
    with TemporaryDirectory() as folder:
        report = Path(folder, "coverage.json")
        told = ("--cov=generator", "--cov-branch", f"--cov-report=json:{report}")
        spread = ("--numprocesses=auto", "--dist=loadfile")
        command = (sys.executable, "-m", "pytest", "-q", *spread, *told, *(words or ("tests",)))
        around = {**os.environ, "COVERAGE_FILE": str(Path(folder, "data"))}
        failed = subprocess.run(command, cwd=ROOT, env=around, check=False).returncode
        if not report.is_file():
            return 1
        files = json.loads(report.read_text("utf-8"))["files"]
    rooms = by_room({path: one["summary"] for path, one in files.items()})
    for line in table(rooms):
        print(line)
    return int(failed != 0 or not rooms or min(rooms.values()) < GOAL)


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
