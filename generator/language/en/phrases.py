"""How English says what is true of two numbers."""

from __future__ import annotations

from generator.language.phrases import Phrases

PHRASES = Phrases(
    same="the same",
    alike="about the same",
    more="more",
    less="less",
    about="about ",
    almost="almost ",
    over="more than ",
    under="less than ",
    times=(
        "twice",
        *(f"{n} times" for n in ["three", "four", "five", "six", "seven", "eight", "nine", "ten"]),
    ),
    parts=(
        "half",
        *[
            "a third",
            "a quarter",
            "a fifth",
            "a sixth",
            "a seventh",
            "an eighth",
            "a ninth",
            "a tenth",
        ],
    ),
)
