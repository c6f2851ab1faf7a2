"""The addresses a page leads to and the ids it has, taken from its HTML."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser

from generator.problems import Problem


@dataclass(frozen=True, slots=True)
class Address:
    """Where something on a page leads."""

    tag: str
    """Element that holds it: ``a`` or ``img``."""
    url: str
    """As it stands in the page."""
    written: str = ""
    """As it stands in the page's text."""


@dataclass(slots=True)
class PageAddresses:
    """All there is in one page."""

    leads: list[Address] = field(default_factory=list)
    ids: set[str] = field(default_factory=set)
    left_out: list[Problem] = field(default_factory=list)
    """What of the page is not published."""


def addresses_in(html: str) -> PageAddresses:
    """Every link and picture of a page in order, and every id."""
    reader = _Reader()
    reader.feed(html)
    reader.close()
    return reader.found


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.found = PageAddresses()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if "id" in given:
            self.found.ids.add(given["id"])
        for name in ("href", "src"):
            if name in given:
                self.found.leads.append(Address(tag, given[name]))
