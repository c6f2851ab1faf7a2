"""Reads a built page the way the HTML standard says, and refuses one that breaks its rules."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path
from xml.etree.ElementTree import Element

from html5lib import HTMLParser

HEADINGS = ("h1", "h2", "h3", "h4", "h5", "h6")


def read_page(file: Path) -> Element:
    """The page's root element; an error of the HTML parsing rules (WHATWG HTML, 13.2) is raised."""
    return read_html(file.read_text("utf-8"))


@cache
def read_html(html: str) -> Element:
    """The same for a page that is in no file."""
    return HTMLParser(strict=True, namespaceHTMLElements=False).parse(html)


def pages(site: Path) -> list[Path]:
    """Every page of a built site."""
    return sorted(site.rglob("*.html"))


def text(element: Element) -> str:
    """All text of an element, its spaces as a reader sees them."""
    return " ".join("".join(element.itertext()).split())


def having(element: Element, name: str, tag: str = "*") -> Iterator[Element]:
    """Elements below that have a class, in the order of the page."""
    return (
        found
        for found in element.iter()
        if name in found.get("class", "").split() and tag in {"*", found.tag}
    )


def one(element: Element, name: str) -> Element:
    """The only element below that has a class."""
    found = list(having(element, name))
    assert len(found) == 1, f"{len(found)} elements of class {name}"
    return found[0]
