"""Every word of a built page that reaches anybody: shown, read aloud, or told to search engines."""

from __future__ import annotations

import json
from collections.abc import Iterator
from xml.etree.ElementTree import Element

_INLINE = frozenset(
    [
        "a",
        "abbr",
        "b",
        "bdi",
        "cite",
        "code",
        "em",
        "i",
        "kbd",
        "mark",
        "q",
        "s",
        "small",
        "span",
        "strong",
        "sub",
        "sup",
        "time",
        "tspan",
        "u",
        "var",
        "wbr",
    ]
)
"""Elements within a line of words; every other one begins a line of its own (WHATWG HTML, 15.3)."""
_SPOKEN = frozenset(["alt", "aria-description", "aria-label", "label", "placeholder", "title"])
"""Attributes whose words are shown or read aloud."""
_DATA = ("application/json", "application/ld+json")
_UNSEEN = ("script", "style")


def page_words(page: Element, unfolded: bool = False) -> tuple[str, ...]:
    """Each line of a page, then what its attributes and its data say.

    Args:
        page: the page, or a part of it.
        unfolded: whether only what stands there openly is wanted: without what lies in a closed box,
            what is hidden, attributes and data.
    """
    lines = list(_lines(page, unfolded=unfolded))
    if not unfolded:
        lines += [words for element in page.iter() for words in _told(element)]
    return tuple(line for one in lines if (line := " ".join(one.split())))


def _lines(element: Element, *, unfolded: bool) -> Iterator[str]:
    return iter("".join(_pieces(element, unfolded=unfolded)).split("\n"))


def _pieces(element: Element, *, unfolded: bool) -> Iterator[str]:
    """The words in order, with a line break around whatever stands apart."""
    if element.tag in _UNSEEN or (unfolded and _folded(element)):
        return
    edge = "" if element.tag in _INLINE else "\n"
    yield edge + " ".join((element.text or "").splitlines())
    for inner in element:
        yield from _pieces(inner, unfolded=unfolded)
        yield " ".join((inner.tail or "").splitlines())
    yield edge


def _folded(element: Element) -> bool:
    closed = element.tag == "details" and element.get("open") is None
    return closed or element.get("hidden") is not None or element.tag == "template"


def _told(element: Element) -> Iterator[str]:
    """What the attributes and the data of an element say in words."""
    for name, value in element.items():
        if name in _SPOKEN or (name.startswith("data-") and " " in value):
            yield value
    if element.tag == "meta" and (element.get("name") or "") in {"description", "title"}:
        yield element.get("content") or ""
    if element.tag == "script" and element.get("type") in _DATA:
        yield from _strings(json.loads(element.text or "null"))


def _strings(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for inner in value.values():
            yield from _strings(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _strings(inner)
