"""Marked words of a page as runs for paper: what is bold, leans, breaks the line or is in another language."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html.parser import HTMLParser
from typing import TypeAlias

Run: TypeAlias = str | Mapping[str, "str | Sequence[Run]"]
"""Words, or a mark with the runs it is around; ``how`` says which, ``lang`` in which language."""

_HOW = {
    "b": "bold",
    "strong": "bold",
    "em": "leaning",
    "i": "leaning",
    "code": "typed",
    "p": "lines",
    "li": "lines",
}
_ALONE = {"br", "hr", "wbr", "img", "input"}
"""Elements that hold nothing."""


def runs_of(html: str) -> list[Run]:
    """The runs of safe HTML; an element that means nothing on paper leaves its words."""
    parser = _Runs()
    parser.feed(html)
    parser.close()
    return parser.runs


class _Runs(HTMLParser):
    """Keeps a list for each element that is open."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.runs: list[Run] = []
        self._open: list[tuple[str, list[Run]]] = []

    @property
    def _here(self) -> list[Run]:
        return self._open[-1][1] if self._open else self.runs

    def handle_data(self, data: str) -> None:
        self._here.append(data)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag == "br":
            self._here.append({"how": "break", "runs": []})
        if tag in _ALONE:
            return
        inside: list[Run] = []
        given = dict(attrs)
        language, classes = given.get("lang") or "", (given.get("class") or "").split()
        how = "untranslated" if "untranslated" in classes else _HOW.get(tag, "")
        if how or language:
            self._here.append({"how": how, "lang": language, "runs": inside})
        else:
            inside = self._here
        self._open.append((tag, inside))

    def handle_endtag(self, tag: str) -> None:
        while self._open and any(one == tag for one, _ in self._open):
            if self._open.pop()[0] == tag:
                return
