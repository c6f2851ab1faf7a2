"""How a publication speaks with whoever started it: sentences out, one yes or no back."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Talk:
    """Where sentences go, and who answers."""

    tell: Callable[[str], None]
    ask: Callable[[str], bool]
    """Gives the answer to a question that is answered by yes or no."""
