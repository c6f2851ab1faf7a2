"""How long the program takes to say what it can do."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path

from bench.measuring.process import PLUMLINE, middle, run
from bench.measuring.row import Case, Row, row


def rows(case: Case) -> Iterator[Row]:
    """`plumline --help` as a whole process."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "here"
        folder.mkdir()
        command = (*PLUMLINE, "--help")
        run(command, folder)  # compiles
        yield row("help", middle(run(command, folder) for _ in range(max(case.runs, 3))).seconds)
