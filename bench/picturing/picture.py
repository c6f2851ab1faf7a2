"""A picture of a page, which is taken four times: on a phone and on a wide screen, in the light and in the dark."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from playwright.sync_api import Page

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "lessons/guide/pictures"
SIZES = {390: 844, 1280: 800}
"""Width and height of the screens, in CSS pixels."""
SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")


def as_it_comes(_: Page) -> None:
    """Nothing is done before the picture is taken."""


@dataclass(frozen=True, slots=True)
class Picture:
    """What is to be seen, and what is done before it is taken."""

    name: str
    title: str
    """What the guide calls it."""
    says: str
    """What is on it, in words for who does not see it."""
    path: str
    """Of the page, from the site's root."""
    before: Callable[[Page], None] = as_it_comes
    without_host: Callable[[Page], None] | None = None
    """What is done then, once there is no internet."""
    preview: bool = False
    """Whether only a preview has the page."""

    def file(self, width: int, scheme: str) -> str:
        """Name of one of its four files."""
        return f"{self.name}-{width}-{scheme}.webp"

    def files(self) -> Iterator[str]:
        """Names of all its files."""
        return (self.file(width, scheme) for width in SIZES for scheme in SCHEMES)
