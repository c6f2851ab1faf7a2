"""The types written as comments in theme/ agree with the code, by TypeScript's own compiler."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import pytest

HERE = Path(__file__).parent


def test_the_types_in_the_browsers_code_hold() -> None:
    npm = shutil.which("npm")
    if npm is None:
        pytest.skip("no npm here: the types in theme/ stay unchecked")
    fetch = [npm, "ci", "--no-audit", "--no-fund", "--silent"]
    for command in (fetch, [npm, "run", "--silent", "check"]):
        done = subprocess.run(command, cwd=HERE, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stdout + done.stderr
