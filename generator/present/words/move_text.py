"""What a family reads about a move, marked where its language lacks it."""

from __future__ import annotations

from generator.model.move import Move, MoveText
from generator.present.words.foreign import of_library
from generator.present.words.say import Say


def move_text(move: Move, say: Say) -> MoveText:
    """The texts of a move in the page's language, else the library's own, each marked."""
    found = move.text(say.language)
    text = found.words
    if not found.foreign:
        return text
    first, second, third = (of_library(step) for step in text.steps)
    return MoveText(
        name=of_library(text.name),
        count_is=of_library(text.count_is),
        steps=(first, second, third),
        seated=of_library(text.seated),
        care=of_library(text.care),
    )
