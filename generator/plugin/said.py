"""What MkDocs says while it works, caught and told as problems with a place."""

from __future__ import annotations

import logging
import re
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path

from generator.problems import Place, Problem

SETTINGS = "mkdocs.yml"
_LOG = logging.getLogger("mkdocs")
_PAGE = re.compile(r"Doc file '([^']+)'")
_NAMED = re.compile(r"'([^']+)'")
_SENTENCES = (
    (
        re.compile(r"A reference to '(?P<name>[^']+)' is included in the 'nav'"),
        "`nav:` names `{name}`, and the site has no such page",
        "correct the name, or take the line out",
    ),
    (
        re.compile(r"An absolute path to '(?P<name>[^']+)' is included in the 'nav'"),
        "`nav:` names `{name}`, which begins with `/`",
        "write the page's name as it is below lessons/",
    ),
    (
        re.compile(r"pages exist in the docs directory[^\n]*\n(?P<name>.*)", re.DOTALL),
        "`nav:` leaves out pages that are there: {name}",
        "add them, or take out `nav:`; the site lists its pages without it",
    ),
    (
        re.compile(r"Excluding '(?P<name>[^']+)' from the site because it conflicts"),
        "`{name}` and the index.md beside it would be the same page",
        "keep one of them",
    ),
    (
        re.compile(r"Config value '(?P<name>[^']+)': (?P<why>[^\n]*)"),
        "`{name}` cannot be used: {why}",
        "take the line from the last commit",
    ),
)
"""What MkDocs says, in our words; what is not here is told in its own."""


class _Ear(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.heard: list[logging.LogRecord] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.heard.append(record)


@contextmanager
def listening() -> Iterator[list[logging.LogRecord]]:
    """Catch MkDocs' warnings and errors in place of printing them."""
    ear, handlers, propagates = _Ear(), _LOG.handlers, _LOG.propagate
    _LOG.handlers, _LOG.propagate = [ear], False
    try:
        yield ear.heard
    finally:
        _LOG.handlers, _LOG.propagate = handlers, propagates


def told(root: Path, records: Iterable[logging.LogRecord]) -> list[Problem]:
    """Each record as a problem: in the page it speaks of, or in ``mkdocs.yml``."""
    return [_told(root, record.getMessage()) for record in records]


def _told(root: Path, message: str) -> Problem:
    page = _PAGE.match(message)
    path = f"lessons/{page[1]}" if page else SETTINGS
    for pattern, what, hint in _SENTENCES:
        if found := pattern.search(message):
            parts = {
                name: " ".join(text.split()).strip("- ").replace(" - ", ", ")
                for name, text in found.groupdict().items()
            }
            place = place_of(root, path, parts["name"])
            return Problem(place, what.format(**parts).rstrip("."), hint)
    named = _NAMED.search(message)
    place = place_of(root, path, named[1] if named else "")
    return Problem(place, " ".join(message.split()).rstrip("."), "look at this line")


def place_of(root: Path, path: str, word: str, *, whole: bool = False) -> Place:
    """Where a word first stands in a file, ``#`` and what follows apart; its beginning where it does not.

    Args:
        root: folder of the site.
        path: of the file, from there.
        word: what is looked for.
        whole: whether all of each line counts, whatever the case of its letters, as in a page.
    """
    try:
        lines = (root / path).read_text("utf-8-sig").splitlines()
    except (OSError, UnicodeDecodeError):
        return Place(path)
    for number, line in enumerate(lines, 1):
        text, wanted = (line.lower(), word.lower()) if whole else (line.partition("#")[0], word)
        if word and (column := text.find(wanted)) >= 0:
            return Place(path, number, column + 1)
    return Place(path)
