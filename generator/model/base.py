"""The one way our data is declared: frozen, strict, and closed to unknown keys."""

from __future__ import annotations

from pydantic import BaseModel, ConfigDict


class Frozen(BaseModel):
    """A value that never changes once it was read."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True)
