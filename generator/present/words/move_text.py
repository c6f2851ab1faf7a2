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
    marked = {
        "steps": tuple(map(of_library, text.steps)),
        **{
            name: of_library(getattr(text, name)) for name in ("name", "count_is", "seated", "care")
        },
    }
    return text.model_copy(update=marked)  # making it anew would take the marks off
