"""Makes a folder once for all processes of a test run."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from time import sleep


def once(mark: Path, make: Callable[[], Path]) -> Path:
    """What ``make`` returns, made by the first process that asks; the others wait for it.

    Args:
        mark: a path of its own in a folder that all processes share; two small files are put there.
        make: fills a folder and returns it.
    """
    done, failed = mark.with_suffix(".done"), mark.with_suffix(".failed")
    try:
        mark.with_suffix(".begun").touch(exist_ok=False)
    except FileExistsError:
        while not done.exists():
            if failed.exists():
                raise RuntimeError(f"another process could not make {mark.name}") from None
            sleep(0.05)
        return Path(done.read_text("utf-8"))
    try:
        made = make()
    except BaseException:
        failed.touch()
        raise
    part = mark.with_suffix(".part")
    part.write_text(str(made), "utf-8")
    part.replace(done)
    return made
