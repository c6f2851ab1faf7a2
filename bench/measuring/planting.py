"""A copy of the project in which faults are planted, one at a time, and tests are run."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from importlib.util import cache_from_source
from pathlib import Path

from bench.measuring.fault import Fault

_STAYS = shutil.ignore_patterns(
    ".git", ".venv", ".*cache*", ".hypothesis", "__pycache__", "node_modules"
)
"""Nothing of these is the project's; nor is what was built into ``site/``."""
_PASSED, _FAILED = 0, 1
_TOLD = {_PASSED, _FAILED}
"""Exit codes of pytest; any other says that the tests could not be run."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the tests said to one fault."""

    killed: bool
    said: str
    """Last line of pytest, or all of it where the tests could not be run."""


class Copy:
    """A copy of the project, removed by whoever gave the folder."""

    def __init__(self, root: Path, folder: Path) -> None:
        self.root = shutil.copytree(root, folder, ignore=_STAYS)
        shutil.rmtree(folder / "site", ignore_errors=True)

    def complaint(self, tests: Sequence[str]) -> str:
        """What is wrong with the tests while no fault is planted; then their failing would say nothing."""
        code, said = self._run(tests)
        return said if code != _PASSED else ""

    def judge(self, fault: Fault) -> Verdict:
        """Plant a fault, run its tests, take it out again.

        Only a failing test kills: tests that could not even begin say nothing of the fault.
        """
        with self._planted(fault):
            code, said = self._run(fault.tests)
        return Verdict(code == _FAILED, said.strip().rpartition("\n")[2] if code in _TOLD else said)

    @contextmanager
    def _planted(self, fault: Fault) -> Iterator[None]:
        file = self.root / fault.file
        sound, times = file.read_bytes(), file.stat()
        compiled = Path(cache_from_source(file)) if file.suffix == ".py" else None
        try:
            file.write_bytes(sound.replace(fault.old.encode(), fault.new.encode()))
            yield
        finally:
            file.write_bytes(sound)
            os.utime(file, ns=(times.st_atime_ns, times.st_mtime_ns))
            if compiled:  # Python looks at whole seconds and sizes, and many faults are as long as what was there
                compiled.unlink(missing_ok=True)

    def _run(self, tests: Sequence[str]) -> tuple[int, str]:
        done = subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-x", "-p", "no:cacheprovider", *tests],
            cwd=self.root,
            env={**os.environ, "PYTHONPATH": str(self.root)},
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            encoding="utf-8",
            errors="replace",
            check=False,
        )
        return done.returncode, done.stdout
