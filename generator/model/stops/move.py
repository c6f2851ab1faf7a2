"""A gap turned into a count of moves done in the room."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import Field

from generator.model.stops.base import PauseStop, StopId
from generator.model.stops.compare import LARGEST_VALUE
from generator.model.text_marks import Code, Text

REST = "rest"
"""Stands in the place of a move where a gap of zero is part of the lesson."""


class MoveStop(PauseStop):
    """One move for each row of a compare stop."""

    kind: Literal["move"] = "move"
    compare: StopId = Field(alias="for")
    """Id of the compare stop whose gaps are counted."""
    one_move_per: Annotated[
        Decimal, Field(gt=0, le=LARGEST_VALUE, decimal_places=1, allow_inf_nan=False)
    ]
    """How much of the gap stands for one count, in the measure's unit."""
    moves: Annotated[tuple[Code, ...], Field(min_length=1)]
    """Ids in ``site_data/moves.yaml``, one for each row; ``rest`` for a row that is meant to leave nothing to move."""
    prompt: Text | None = None
    """A sentence before the moves."""

    @property
    def counts(self) -> tuple[str, Decimal]:
        """The comparison, and its step."""
        return self.compare, self.one_move_per

    def _about(self) -> str:
        return f"move {self.compare}"
