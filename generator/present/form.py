"""A page that is filled but for its addresses: where it will stand is decided afterwards, more than once.

A template asks ``at`` for every address. What it gets is an open place; a page is its text with such
places in it. It is written for the site, and once more for the copy of a lesson that is carried home,
without being filled again.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from markupsafe import Markup, escape

from generator.present.addresses import Addresses
from generator.present.printed import printed
from generator.present.views.page import LinkView
from generator.present.words.stamp import stamp_of

_OPEN, _CLOSE = "\x02", "\x03"
"""Around the number of a place. HTML holds no such signs (HTML Standard, 13.1.4); texts lose them in ``quick``."""
_PLACE = re.compile(f"{_OPEN}([^{_CLOSE}]*){_CLOSE}")
_PAPER, _STAMP = ">", "="
"""How a place begins that stands for a text on paper alone; and the one for the stamp."""
_END = Markup(_OPEN + _CLOSE)  # noqa: S704  # nothing of anybody
_ON, _OFF = Markup(f"{_OPEN}+{_CLOSE}"), Markup(f"{_OPEN}-{_CLOSE}")  # noqa: S704  # the same
_HOLE = Markup(f"{_OPEN}{_STAMP}{_CLOSE}")  # noqa: S704  # the same

Ask = Callable[[Addresses], str]
"""How an open place gets its address; empty where no way leads there."""


@dataclass(frozen=True, slots=True)
class _Segment:
    """The beginning of what a page holds only where one of some ways leads somewhere."""

    ways: tuple[Ask, ...]


class At:
    """What a template asks while it is filled."""

    def __init__(self) -> None:
        self.asked: list[Ask | _Segment] = []
        self._known: dict[tuple[str, str], Markup] = {}

    def file(self, path: str) -> Markup:
        """A file that the page shows or loads."""
        return self._place("file", path, lambda at: at.file(path))

    def fetched(self, path: str) -> Markup:
        """A file that only a script fetches."""
        return self._place("fetched", path, lambda at: at.fetched(path))

    def track(self, path: str) -> Markup:
        """A caption file."""
        return self._place("track", path, lambda at: at.track(path))

    def link(self, href: str) -> Markup:
        """A page to go to, at a place on it or not."""
        return self._place("link", href, lambda at: at.link(href))

    def apart(self, name: str) -> Markup:
        """A part of the page that is made once its pages are."""
        return self._place("apart", name, lambda at: at.apart(name))

    @property
    def root(self) -> Markup:
        """The folder of the site."""
        return self._place("root", "", lambda at: at.root)

    @property
    def policy(self) -> Markup:
        """The content security policy."""
        return self._place("policy", "", lambda at: at.policy)

    @property
    def on_sheet(self) -> Markup:
        """What follows is printed, and the stamp is made of it."""
        return _ON

    @property
    def off_sheet(self) -> Markup:
        """What follows is for the screen alone."""
        return _OFF

    def on_paper_file(self, text: str) -> Markup:
        """What the file for paper prints and the page does not: both bear the same stamp."""
        return Markup(f"{_OPEN}{_PAPER}{{}}{_CLOSE}").format(text)  # noqa: S704  # format escapes it

    @property
    def stamp(self) -> Markup:
        """The stamp of the sheet that is being filled."""
        return _HOLE

    def where(self, *places: str, caller: Callable[[], Markup]) -> Markup:
        """What is between ``call`` and ``endcall``, if one of these places gets an address."""
        numbers = (int(found[1]) for found in map(_PLACE.fullmatch, places) if found)
        ways = (way for number in numbers if not isinstance(way := self.asked[number], _Segment))
        return self._segment(tuple(ways), caller)

    def where_any(self, links: Iterable[LinkView], caller: Callable[[], Markup]) -> Markup:
        """The same, if one of these links leads somewhere."""
        return self.where(*(self.link(link.href) for link in links), caller=caller)

    def _segment(self, ways: tuple[Ask, ...], caller: Callable[[], Markup]) -> Markup:
        return self._new(_Segment(ways)) + caller() + _END

    def _place(self, kind: str, path: str, ask: Ask) -> Markup:
        known = self._known.get((kind, path))
        return known or self._known.setdefault((kind, path), self._new(ask))

    def _new(self, asked: Ask | _Segment) -> Markup:
        self.asked.append(asked)
        return Markup(f"{_OPEN}{len(self.asked) - 1}{_CLOSE}")  # noqa: S704  # a number


class Form:
    """A filled page with its open places."""

    def __init__(self, text: str, at: At) -> None:
        """A page, and what was asked while it was filled."""
        self._texts, self._places, sheet = _parted(_PLACE.split(text))
        self._asked = at.asked
        self.stamp = stamp_of(printed(sheet)) if _STAMP in self._places else ""
        """Of what it prints; empty for a page that bears none."""

    def put(self, at: Addresses) -> str:
        """The page where it stands."""
        return "".join(self._written(at))

    def _written(self, at: Addresses) -> Iterator[str]:
        """Text by text; ``hidden`` counts the segments we are in since one that is left out."""
        found: dict[int, str] = {}
        hidden = 0
        for text, place in zip(self._texts, [*self._places, ""], strict=True):
            if not hidden:
                yield text
            if not place:
                hidden = max(hidden - 1, 0)
                continue
            if place == _STAMP:
                yield "" if hidden else self.stamp
                continue
            number = int(place)
            asked = self._asked[number]
            if isinstance(asked, _Segment):
                hidden += bool(hidden) or not any(way(at) for way in asked.ways)
            elif not hidden:
                if number not in found:
                    found[number] = escape(asked(at))
                yield found[number]


def _parted(pieces: list[str]) -> tuple[list[str], list[str], str]:
    """The texts of a page, the places between them, and all that is printed.

    Args:
        pieces: a text, a place, a text and so on.
    """
    texts, places, sheet, on = pieces[:1], list[str](), list[str](), False
    for place, text in zip(pieces[1::2], pieces[2::2], strict=True):
        here = text
        if place in {"+", "-"} or place.startswith(_PAPER):
            on = place == "+" or (on and place != "-")
            sheet.append(place[1:])
            here = text.removeprefix("\n")  # the line that held the mark
            texts[-1] += here
        else:
            places.append(place)
            texts.append(here)
        if on:
            sheet.append(here)
    return texts, places, "".join(sheet)
