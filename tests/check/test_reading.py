"""A text that is too hard is told with what to do about it."""

from __future__ import annotations

from pathlib import Path

from generator.check.reading import easy_to_read
from tests.project import GOOD, worked

HARD = "Considerable international deliberation necessitates extraordinary organisational collaboration"
SHORT = "Extraordinary organisational collaboration."


def told(folder: Path, sentence: str) -> str:
    text = GOOD
    for plain in ("Find the gap.", "Subtract.", "Look at the amounts.", "We will see."):
        text = text.replace(plain, f"'{sentence}'")
    (problem,) = easy_to_read(worked(folder, text))
    return problem.hint


def test_the_hardest_sentence_is_named(tmp_path: Path) -> None:
    assert told(tmp_path, f"{HARD}.") == f"shorten first: “{HARD}”"


def test_where_no_sentence_is_long_enough_to_be_named_it_asks_for_shorter_words(
    tmp_path: Path,
) -> None:
    """A hint that ended in a colon, with nothing behind it, named nothing."""
    assert told(tmp_path, SHORT) == "say it in shorter words"
