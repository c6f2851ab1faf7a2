"""Reads a set of phrases or of sentences from ``tests/said/<name>.<language>.txt``.

A line that begins with ``## `` is a heading, any other that begins with ``#`` a remark.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path

FOLDER = Path(__file__).parent
PHRASES, SENTENCES = (
    ("phrases", "more-phrases"),
    ("claims", "soups", "lunches", "bags", "boats", "suppers"),
)
"""Names of the sets of each kind."""
NOT_YET = "not read yet"
"""The heading of sentences that are still misread; they count against recall and precision."""
LANGUAGES = ("en", "es")
"""In which each set is there."""


@dataclass(frozen=True, slots=True)
class Phrase:
    """A number in words."""

    language: str
    value: Decimal
    """What it stands for."""
    text: str
    """As it is said."""
    sentence: str
    """The sentence it is said in."""

    def __str__(self) -> str:
        """As it is named among the tests."""
        return f"{self.language}: {self.text}"


@dataclass(frozen=True, slots=True)
class Sentence:
    """A sentence about the foods of a lesson."""

    language: str
    truth: str
    """``T`` holds, ``F`` does not, ``N`` must not be questioned."""
    text: str

    def __str__(self) -> str:
        """As it is named among the tests."""
        return f"{self.language}: {self.truth} {self.text}"


@dataclass(frozen=True, slots=True)
class About:
    """The comparison that the sentences of a set are about."""

    language: str
    measure: str
    sides: tuple[str, str]
    foods: tuple[tuple[str, str], ...]
    """Names and values, those of a row beside each other."""


def phrases(name: str, language: str) -> Iterator[Phrase]:
    """The phrases of a set."""
    parts = _parts(name, language)
    (frame,) = parts["frame"]
    for line in parts["phrases"]:
        value, _, text = (part.strip(" ") for part in line.partition("|"))
        sentence = text if text.endswith(".") else frame.format(text)
        yield Phrase(language, Decimal(value), text, sentence)


def sentences(name: str, language: str, under: str = "sentences") -> Iterator[Sentence]:
    """The sentences of a set under a heading; wrong ones under ``NOT_YET`` are known to be missed."""
    for line in _parts(name, language).get(under, ()):
        truth, _, text = (part.strip() for part in line.partition("|"))
        assert truth in {"T", "F", "N"}, f"{name}.{language}.txt: {line}"
        yield Sentence(language, truth, text)


def about(name: str, language: str) -> About:
    """What the sentences of a set are about."""
    parts = _parts(name, language)
    first, second = parts["sides"]
    foods = [line.partition("=>") for line in parts["rows"]]
    named = tuple((food.strip(), value.strip()) for food, _, value in foods)
    return About(language, parts["measure"][0], (first, second), named)


def _parts(name: str, language: str) -> Mapping[str, list[str]]:
    """The lines under each heading."""
    parts: dict[str, list[str]] = {}
    under: list[str] = []
    for line in (FOLDER / f"{name}.{language}.txt").read_text("utf-8").splitlines():
        if line.startswith("## "):
            under = parts.setdefault(line.removeprefix("## "), [])
        elif line.strip(" ") and not line.startswith("#"):
            under.append(line)
    return parts
