"""Files for a learning platform, as a page offers them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.page import LinkView


@dataclass(frozen=True, slots=True)
class CartridgesView:
    """A file in each version, or why there is none."""

    template: ClassVar[str] = "parts/cartridges.html"
    says: str
    """What is in them; empty where there are none."""
    files: tuple[LinkView, ...]
    """The version to try first stands first."""
    none: str
    """Why there are none; empty where there are."""
