"""Whose work runs in the pages, and under which licence: one text file of the site."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from generator.present.output import Output

LICENCES = "licences.txt"
"""Its path from the site's root; hand-written pages lead there."""
_OURS = """\
What the pages of this site are made with, and under which licenses.

The lessons themselves belong to whoever made this site. Food figures are those of USDA FoodData
Central, SR Legacy (U.S. Department of Agriculture, Agricultural Research Service), in the public domain.
"""
_VENDOR = "vendor"
"""In the theme: a folder for each work of others, with ``VERSION``, ``LICENSE`` and what is inside of it."""
_TOLD = ("VERSION", "LICENSE", "INSIDE.txt")


def licences_file(theme: Path) -> Output:
    """Our own licence, and the version and licences of all that was copied from others.

    Args:
        theme: its folder.
    """
    return Output(LICENCES, "\n".join(_parts(theme)).encode())


def _parts(theme: Path) -> Iterator[str]:
    yield _OURS
    yield _part("Plumline: styles and scripts of the pages", theme / "LICENSE")
    for folder in sorted(path for path in (theme / _VENDOR).iterdir() if path.is_dir()):
        for name in _TOLD:
            if (folder / name).is_file():
                yield _part(f"{folder.name}: {name}", folder / name)


def _part(title: str, file: Path) -> str:
    return f"{'=' * len(title)}\n{title}\n{'=' * len(title)}\n\n{file.read_text('utf-8').strip()}\n"
