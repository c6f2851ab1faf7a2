"""Moves of the library that are dealt along with a lesson's own, where it has fewer than three."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import islice

from generator.compute.result import LessonResult
from generator.model.move import Move, Noise, Room
from generator.model.pose import Hold, Support

DEALT = 3
"""Cards of one deal."""
_CHOICE = DEALT + 1
"""Cards to deal from, so that the next deal may be another."""


def more_moves(result: LessonResult) -> Mapping[str, Move]:
    """What is dealt besides the lesson's own moves, by id: quiet ones for one spot that need nothing.

    The first of the library, in its order; none where the lesson has enough, or has no moves at all.
    """
    own = {one.move_id for one in result.moved}
    if not own or len(own) >= DEALT:
        return {}
    fit = ((name, move) for name, move in result.library.moves.items() if _fits_anywhere(move))
    return dict(islice((one for one in fit if one[0] not in own), _CHOICE - len(own)))


def _fits_anywhere(move: Move) -> bool:
    freely = all(pose.support is Support.FLOOR and pose.hold is Hold.NOTHING for pose in move.poses)
    return freely and move.room is Room.ONE_SPOT and move.noise is Noise.QUIET
