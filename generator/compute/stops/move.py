"""A move stop worked out: the gaps of a comparison as counts."""

from __future__ import annotations

from generator.compute.count import count_moves
from generator.compute.result import Comparison, MoveCount, Movement
from generator.model.library import Library
from generator.model.stops.move import MoveStop


def movement(stop: MoveStop, compared: Comparison, library: Library) -> Movement:
    """A count for each row, in order."""
    counts = tuple(
        MoveCount(
            move_id, library.moves[move_id], row, count_moves(row.gap.size, stop.one_move_per)
        )
        for move_id, row in zip(stop.moves, compared.rows, strict=True)
    )
    return Movement(stop, compared, counts)
