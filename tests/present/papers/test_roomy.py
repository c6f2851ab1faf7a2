"""Parts of a paper stand apart where its sheets have room; how many sheets there are is held beside the papers."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

WORD = re.compile(r'<word xMin="[\d.]+" yMin="([\d.]+)" [^>]*>([^<]*)</word>')
CLOSE = 33
"""Points from the head of a part with one line to the next one's, where nothing is put between them."""


def test_a_sheet_with_room_sets_its_parts_apart(made_papers: Path) -> None:
    for size in ("a4", "letter"):
        heads = _heads(made_papers / f"river-walk/papers/worksheet-{size}.pdf")
        assert heads["begin"] - heads["More"] >= CLOSE + 10


def _heads(file: Path) -> dict[str, float]:
    """Where the words of the last sheet stand, in points from its upper edge."""
    told = subprocess.run(
        ["pdftotext", "-bbox", file, "-"], capture_output=True, text=True, check=True
    )
    return {word: float(top) for top, word in WORD.findall(told.stdout.split("<page ")[-1])}
