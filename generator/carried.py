"""What the program brings along for every site, and where it lies: inside the package, or around it in its own repository."""

from __future__ import annotations

import os

_PACKAGE = os.path.dirname(os.path.abspath(__file__))
_INSIDE = os.path.join(_PACKAGE, "carried_files")
IN_PACKAGE = os.path.isdir(_INSIDE)
"""Whether this is an installed release; else it runs out of its own repository, itself a whole site."""
HOME = _INSIDE if IN_PACKAGE else os.path.dirname(_PACKAGE)
"""The folder that holds ``theme/``, ``site_data/``, ``lessons/``, ``CHANGELOG.md`` and the lock."""


def is_home(root: str | os.PathLike[str]) -> bool:
    """Whether a site is the program's own repository, over which nothing is laid."""
    return os.path.realpath(root) == os.path.realpath(HOME)


def theme_of(root: str | os.PathLike[str]) -> str:
    """The theme of a site: its own where it has one, else the program's."""
    own = os.path.join(root, "theme")
    return own if os.path.isdir(own) else os.path.join(HOME, "theme")


def beside(root: str | os.PathLike[str]) -> list[str]:
    """Files and folders outside of the package that a site is made of besides its own; none in a release."""
    if IN_PACKAGE or is_home(root):
        return []
    own_theme = os.path.isdir(os.path.join(root, "theme"))
    names = ["site_data"] if own_theme else ["site_data", "theme"]
    return [os.path.join(HOME, name) for name in names]


def place(path: str) -> str:
    """How a file that the program brings along is called in a message: ``the program's foods.yaml``."""
    return f"{_THEIRS}{path.removeprefix('site_data/')}"


def is_place(path: str) -> bool:
    """Whether a message speaks of a file that the program brings along, which an educator leaves alone."""
    return path.startswith(_THEIRS)


_THEIRS = "the program's "
