"""Who read a lesson, on the teaching notes."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ReviewedView:
    """One reading that still holds for something."""

    says: str
    """Day and role: ``Read on March 14, 2026 by: registered dietitian.``"""
    since: tuple[str, ...]
    """What changed since and was not read, a stop a line; empty while all is as it was read."""
