"""What the Care promise asks of the words on built pages, as data: ``tests/examples/care/*.yaml``.

A rule there has

    title, source   what it asks, and who says so (R, S, M and C as in references.md)
    pages           which pages of a language: ``index``, ``notes`` … of every lesson, and ``family``, a
                    paper alone, which is read as a file like its other papers; ``learner`` all
                    that a learner sees of a lesson, ``lessons`` all of a lesson, ``home``, a path such
                    as ``care.html``, ``every`` page
    where           facts (``tests/lesson_facts.py``) that a lesson must have, all of them, to be asked
    in              a class: each element that has it is asked alone, and there must be one
    open            what must be there must not lie in a closed box
    tells           by language: patterns that must be found
    never           by language: patterns that must not be, each with words that it catches

Capitals are not told apart.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from xml.etree.ElementTree import Element

import yaml

from tests.html_page import having
from tests.page_words import page_words

Words = Callable[[Element, bool], tuple[str, ...]]
"""Reads the words of a part of a page, those that lie open alone or all."""
FOLDER = Path(__file__).parent / "examples" / "care"


@dataclass(frozen=True, slots=True)
class Rule:
    """One entry of the data, in one language."""

    title: str
    source: str
    language: str
    pages: tuple[str, ...]
    where: frozenset[str]
    in_class: str
    open: bool
    tells: tuple[str, ...]
    never: Mapping[str, str]
    """Words that each pattern catches, by the pattern."""

    def broken(self, page: Element, words: Words = page_words) -> tuple[str, ...]:
        """What is wrong with a page by this rule, each in a few words; nothing where it holds.

        Args:
            page: as it was read.
            words: what reads it, or somebody who remembers what was read.
        """
        parts = list(having(page, self.in_class)) if self.in_class else [page]
        if not parts:
            return (f"there is no element of class {self.in_class}",)
        return tuple(said for part in parts for said in self._broken(part, words))

    def missing(self, shown: str) -> tuple[str, ...]:
        """What a text does not say that it must."""
        return tuple(f"“{idea}” is not said" for idea in self.tells if not _search(idea, shown))

    def wrong_words(self, lines: Sequence[str]) -> tuple[str, ...]:
        """What lines say that they must not."""
        return tuple(_caught(self.never, lines))

    def _broken(self, part: Element, words: Words) -> Iterator[str]:
        shown = " ".join(words(part, self.open))
        yield from self.missing(shown)
        if self.never:
            yield from self.wrong_words(words(part, False))  # by name is not remembered


def care_rules() -> tuple[Rule, ...]:
    """Every rule in every language that it has something to say about."""
    entries = [
        entry
        for file in sorted(FOLDER.glob("*.yaml"))
        for entry in yaml.safe_load(file.read_text("utf-8"))
    ]
    return tuple(rule for entry in entries for rule in _by_language(entry))


def _by_language(entry: Mapping[str, object]) -> Iterator[Rule]:
    known = {"title", "source", "pages", "where", "in", "open", "tells", "never"}
    assert set(entry) <= known, set(entry) - known
    tells, never = _mapping(entry.get("tells")), _mapping(entry.get("never"))
    for language in sorted({*tells, *never}):
        yield Rule(
            str(entry["title"]),
            str(entry["source"]),
            language,
            tuple(_list(entry["pages"])),
            frozenset(_list(entry.get("where"))),
            str(entry.get("in", "")),
            entry.get("open") is True,
            tuple(_list(tells.get(language))),
            {str(one): str(words) for one, words in _mapping(never.get(language)).items()},
        )


def _caught(never: Mapping[str, str], lines: Sequence[str]) -> Iterator[str]:
    """Each line that a pattern catches; then what only the lines together say."""
    for pattern in never:
        found = [line for line in lines if _search(pattern, line)]
        whole = [] if found else [m[0] for m in [_search(pattern, " ".join(lines))] if m]
        yield from (f"“{words}” is said, by “{pattern}”" for words in found + whole)


def _search(pattern: str, words: str) -> re.Match[str] | None:
    return re.search(pattern, words, re.IGNORECASE)


def _mapping(value: object) -> Mapping[str, object]:
    return value if isinstance(value, dict) else {}


def _list(value: object) -> list[str]:
    return [str(one) for one in value] if isinstance(value, list) else []
