"""Hand-written pages keep plain elements alone: what could run, ask or lead astray is left out, and told."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from html.parser import HTMLParser
from pathlib import Path

import nh3

from generator.author.pages import PAGE_IDS, is_allowed, is_elsewhere
from generator.plugin.said import place_of
from generator.problems import Problem, Weight

_TAGS = frozenset(
    [
        "a",
        "abbr",
        "b",
        "blockquote",
        "br",
        "caption",
        "cite",
        "code",
        "col",
        "colgroup",
        "dd",
        "del",
        "details",
        "dfn",
        "div",
        "dl",
        "dt",
        "em",
        "figcaption",
        "figure",
        "h1",
        "h2",
        "h3",
        "h4",
        "h5",
        "h6",
        "hr",
        "i",
        "img",
        "ins",
        "kbd",
        "li",
        "mark",
        "ol",
        "p",
        "pre",
        "q",
        "rp",
        "rt",
        "ruby",
        "s",
        "samp",
        "small",
        "span",
        "strong",
        "sub",
        "summary",
        "sup",
        "table",
        "tbody",
        "td",
        "tfoot",
        "th",
        "thead",
        "time",
        "tr",
        "u",
        "ul",
        "var",
        "wbr",
    ]
)
_EVERYWHERE = {"class", "dir", "id", "lang", "title"}
_ATTRIBUTES = {
    "*": _EVERYWHERE,
    "a": {"href", "hreflang"},
    "img": {"alt", "height", "src", "width"},
    "ol": {"reversed", "start", "type"},
    "li": {"value"},
    "td": {"align", "colspan", "rowspan"},
    "th": {"align", "colspan", "rowspan", "scope"},
    "col": {"span"},
    "colgroup": {"span"},
    "details": {"open"},
    "time": {"datetime"},
}
_ELEMENT = ("is not published", "write it in Markdown, or leave it out")
_AWAY = (
    "leads to where anybody on the way can change it",
    "write https://, or an address of this site",
)
_TAKEN = ("is an id that the page uses itself", "choose another id")
_PICTURE = ("is on another site, which would see every visitor", "put the picture beside the page")


_REL = "noreferrer"
_LINK = re.compile(f'<a(?P<attributes>(?: [a-z]+="[^"]*")*) rel="{_REL}">')
"""A link as nh3 writes it: a quotation mark inside of an attribute is always ``&quot;``."""
_LEADS = re.compile(r' href="([^"]*)"')


def clean(html: str) -> str:
    """The body of a page with nothing in it but ``_TAGS``; what is inside of the others stays, scripts apart."""
    cleaned = nh3.clean(
        html,
        tags=set(_TAGS),
        attributes={tag: set(names) for tag, names in _ATTRIBUTES.items()},
        attribute_filter=_kept,
        url_schemes={"https", "mailto"},
        link_rel=_REL,
    )
    return _LINK.sub(_told_nobody, cleaned)


def _told_nobody(link: re.Match[str]) -> str:
    """A link's tag: one that leads out of the site does not say where from, one inside may."""
    leads = _LEADS.search(link["attributes"])
    within = leads is None or not is_elsewhere(unescape(leads[1]))
    return f"<a{link['attributes']}>" if within else link[0]


def left_out(root: Path, path: str, html: str) -> list[Problem]:
    """A question about everything that ``clean`` takes out of a page and its author wrote.

    Args:
        root: folder of the site.
        path: of the page, from there.
        html: what Markdown made of it.
    """
    reader = _Reader()
    reader.feed(html)
    reader.close()
    found = dict.fromkeys(reader.found)
    return [
        Problem(
            place_of(root, path, written, whole=True), f"`{written}` {what}", hint, Weight.QUESTION
        )
        for written, what, hint in found
        if written.lower() in (root / path).read_text("utf-8-sig", errors="replace").lower()
    ]


def _kept(_: str, name: str, value: str) -> str | None:
    """The value of an attribute; nothing where it leads to where it must not."""
    if name == "href":
        return value if is_allowed(value) else None
    if name == "src":
        return None if is_elsewhere(value) else value
    return None if name == "id" and value in PAGE_IDS else value


class _Reader(HTMLParser):
    """Finds what is not kept, by how it is written."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[tuple[str, str, str]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag not in _TAGS:
            self.found.append((f"<{tag}", *_ELEMENT))
            return
        self.found += _wrong(tag, attrs)


def _wrong(tag: str, attrs: list[tuple[str, str | None]]) -> Iterator[tuple[str, str, str]]:
    """What of an element's attributes is not kept."""
    for name, value in attrs:
        if name not in _EVERYWHERE | _ATTRIBUTES.get(tag, set()):
            yield f"{name}=", *_ELEMENT
        elif _kept(tag, name, value or "") is None and name == "id":
            for quote in ('"', "'", ""):  # however it is written
                yield f"id={quote}{value}{quote}", *_TAKEN
        elif _kept(tag, name, value or "") is None:
            yield value or "", *(_AWAY if name == "href" else _PICTURE)
