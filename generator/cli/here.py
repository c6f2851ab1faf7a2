"""Paths as they are typed: seen from where somebody stands, wherever the set-up file has gone since."""

from __future__ import annotations

import os
from pathlib import Path

import click

_FROM = "PLUMLINE_FROM"
"""Set by the set-up file, which goes into the site's folder before it calls the command."""


def here() -> Path:
    """The folder in which the command was typed."""
    return Path(os.environ.get(_FROM, "."))


class TypedPath(click.Path):
    """A path of the command line, looked for from there; one that begins at the root is itself."""

    def convert(
        self,
        value: str | os.PathLike[str],
        param: click.Parameter | None,
        ctx: click.Context | None,
    ) -> Path:
        """The path, once it is what was asked for."""
        return Path(os.fsdecode(super().convert(here() / value, param, ctx)))
