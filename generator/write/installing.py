"""How an optional part is installed, as it is typed where the program runs."""

from __future__ import annotations

import sys
from pathlib import Path


def how_to_install(package: str, megabytes: int) -> str:
    """The way to have a package of so many megabytes, as it is typed in this folder."""
    program, here = Path(sys.executable), Path.cwd()
    python = program.relative_to(here) if program.is_relative_to(here) else program
    return f"run `{python} -m pip install {package}` once, {megabytes} MB, and try again"
