"""Runs `plumline preview` as an educator does, and waits for what it says."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from time import monotonic, sleep

PATIENCE = 60
"""Seconds to wait for anything, far more than it takes on a busy machine; nothing is timed here."""
_OPEN = re.compile(r"Open (http://\S+) in a browser")


@dataclass(frozen=True)
class Preview:
    """A preview that runs."""

    process: subprocess.Popen[bytes]
    said: Path
    """File with all it has printed."""

    def told(self) -> str:
        """What it has printed so far."""
        return self.said.read_text("utf-8")

    def until(self, wanted: str) -> str:
        """Wait until it has printed something; gives all of it."""
        pattern = re.compile(wanted)
        wait_until(lambda: bool(pattern.search(self.told())) or self.process.poll() is not None)
        assert pattern.search(self.told()), self.told()
        return self.told()

    @property
    def address(self) -> str:
        """Where it can be looked at, ending in a slash."""
        found = _OPEN.search(self.until(_OPEN.pattern))
        assert found
        return found[1]


@contextmanager
def previewing(project: Path, *options: str) -> Iterator[Preview]:
    """A preview of a project until the block ends; at a port of the system's choice unless options say."""
    program = shutil.which("plumline", path=str(Path(sys.executable).parent))
    assert program
    said = project.with_name(f"{project.name}-{'-'.join(options).strip('-') or 'plain'}.txt")
    command = [program, "preview", *(options or ("--port", "0"))]
    with said.open("w", encoding="utf-8") as out:
        process = subprocess.Popen(command, cwd=project, stdout=out, stderr=subprocess.STDOUT)
    try:
        yield Preview(process, said)
    finally:
        process.terminate()
        process.wait(PATIENCE)


def wait_until(happened: Callable[[], bool]) -> None:
    """Wait for something that comes in its own time."""
    end = monotonic() + PATIENCE
    while not happened():
        assert monotonic() < end, "waited in vain"
        sleep(0.1)
