"""One file of a site as it is made: what it holds, and what it shows or loads besides."""

from __future__ import annotations

from dataclasses import dataclass

from generator.media.content import Joined


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
    large: Joined | None = None
    """What it holds where that is too large for memory; then ``content`` is empty."""

    @property
    def held(self) -> bytes | Joined:
        """What it holds, in memory or not."""
        return self.large or self.content
