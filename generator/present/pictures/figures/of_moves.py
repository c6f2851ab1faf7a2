"""The figures of the moves that lessons ask for, each in a file of its own."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from generator.compute.more_moves import more_moves
from generator.compute.result import LessonResult
from generator.model.move import Move
from generator.present.output import Output
from generator.present.pictures.figures.file import picture_files, picture_name


def move_pictures(moves: Mapping[str, Move]) -> Iterator[Output]:
    """The figures of moves, by their ids."""
    for name, move in moves.items():
        for seated, poses in ((False, move.poses), (True, move.seated_poses)):
            for number, picture in enumerate(picture_files(poses), 1):
                yield Output(picture_name(name, number, seated=seated), picture.encode())


def moves_of(results: Iterable[LessonResult]) -> dict[str, Move]:
    """Every move whose figures the pages of lessons show."""
    found: dict[str, Move] = {}
    for result in results:
        found |= {
            one.move_id: one.move for move in result.movements.values() for one in move.counts
        }
        found |= more_moves(result)
    return found
