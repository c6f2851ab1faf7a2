"""The demo, built once for all benches of a run; or a site that is built already."""

from __future__ import annotations

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path

from tests.site_project import build_demo

_CHOSEN: list[Path] = []


def choose(site: Path) -> None:
    """Measure this site and not the demo."""
    _CHOSEN.append(site)
    built_demo.cache_clear()


@cache
def built_demo() -> Path:
    """Folder of the site."""
    if _CHOSEN:
        return _CHOSEN[-1]
    folder = Path(tempfile.mkdtemp())
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    return build_demo(folder / "demo")
