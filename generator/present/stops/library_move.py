"""A move of the library as pages show it, with or without a count."""

from __future__ import annotations

from collections.abc import Mapping

from markupsafe import Markup

from generator.model.move import Move
from generator.model.pose import Pose
from generator.present.pictures.figures import figures, picture_name
from generator.present.views.move_card import LibraryMoveView
from generator.present.words.families import NOISE, ROOM
from generator.present.words.move_text import move_text
from generator.present.words.say import Say


def library_moves(moves: Mapping[str, Move], say: Say) -> tuple[LibraryMoveView, ...]:
    """Moves by their ids."""
    return tuple(library_move(name, move, say) for name, move in moves.items())


def library_move(name: str, move: Move, say: Say) -> LibraryMoveView:
    """A move by its id."""
    text = move_text(move, say)
    return LibraryMoveView(
        id=name,
        name=text.name,
        count_is=say("one_count_is", count_is=text.count_is),
        steps=text.steps,
        seated=text.seated,
        care=text.care,
        room=say(ROOM.key(move.room)),
        noise=say(NOISE.key(move.noise)),
        figures=tuple(map(Markup, figures(move.poses))),  # drawn from numbers only
        seated_figures=tuple(map(Markup, figures(move.seated_poses))),  # drawn from numbers only
        pictures=_pictures(name, move.poses, seated=False),
        seated_pictures=_pictures(name, move.seated_poses, seated=True),
    )


def _pictures(move: str, poses: tuple[Pose, ...], *, seated: bool) -> tuple[str, ...]:
    numbers = range(1, len(poses) + 1)
    return tuple(picture_name(move, number, seated=seated) for number in numbers)
