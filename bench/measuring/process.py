"""A command measured as a whole process: seconds, and the largest memory of any one process it starts."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from statistics import median

ROOT = Path(__file__).parents[2]
_STARTER = (  # ru_maxrss of children that are done: KiB on Linux (getrusage(2)), bytes on macOS
    "import resource, subprocess, sys, time; began = time.perf_counter();"
    "code = subprocess.call(sys.argv[1:]); print(time.perf_counter() - began,"
    "resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss); sys.exit(code)"
)
"""A small process that starts the command: a large one would lend it the peak of its own memory."""
_MIB = 1024**2 if sys.platform == "darwin" else 1024
PLUMLINE = (sys.executable, "-c", "from generator.cli import main; main()")
"""The program of this checkout, whatever is installed."""
MKDOCS = (sys.executable, "-m", "mkdocs")


@dataclass(frozen=True, slots=True)
class Run:
    """One run, or the medians of several."""

    seconds: float
    peak: float
    """MiB"""


def run(command: Iterable[str], folder: Path) -> Run:
    """Run a command once in a folder; ends the bench where it fails, for then nothing was measured."""
    done = subprocess.run(
        [sys.executable, "-c", _STARTER, *command],
        cwd=folder,
        env=environment(folder),
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode:
        sys.exit(done.stdout + done.stderr)
    seconds, peak = done.stdout.split()[-2:]
    return Run(float(seconds), int(peak) / _MIB)


def environment(folder: Path) -> dict[str, str]:
    """Compiled code is kept beside the bench, so that no run but the first compiles anything."""
    return {
        **os.environ,
        "PYTHONPATH": str(ROOT),
        "PYTHONPYCACHEPREFIX": str(folder.parent / "compiled"),
    }


def middle(runs: Iterable[Run]) -> Run:
    """The medians."""
    each = list(runs)
    return Run(median(one.seconds for one in each), median(one.peak for one in each))
