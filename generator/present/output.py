"""One file of a site as it is made: what it holds, and what it shows or loads besides."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Output:
    """One file of the site."""

    path: str
    """From the site's root, with forward slashes."""
    content: bytes
    title: str = ""
    """Title of a page that takes part in the navigation; empty for any other file."""
    source: str = ""
    """The file it was made from, relative to the project's root."""
    needs: tuple[str, ...] = ()
    """Every file it shows or loads, from the site's root: styles, scripts, pictures, film."""
