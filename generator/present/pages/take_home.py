"""Pages as they stand in the take-home copy of a lesson, where all lies in one folder."""

from __future__ import annotations

import re
from base64 import b64encode
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from posixpath import dirname, join, normpath

from generator.present.words.say import Say, as_decimal

SIZE = "\ue010"
"""Stands in a page where the size of its take-home copy will be known: private use, as in foreign.py."""
_LINK = re.compile(r'(?:<li>)?<a\b[^>]*?\bhref="([^"]*)"[^>]*>.*?</a>(?:</li>)?', re.DOTALL)
_ALTERNATE = re.compile(r'<link rel="alternate"[^>]*>\n?')
_TAKE_HOME = re.compile(r'<p class="take">.*?</keep-lesson>\n?', re.DOTALL)
_TRACK = re.compile(r'(<track\b[^>]*?\bsrc=")([^"]+)(")')
_NAMED = re.compile(r'(\b(?:src|href|poster|data-[a-z]+)=")([^"#?:]+)')
_MEGABYTE = 1_000_000
_LEAST = Fraction(1, 10)  # a file is never 0 MB


def take_home_name(lesson: str) -> str:
    """Name of the copy's file beside the lesson's page."""
    return f"{lesson}-take-home.zip"


def with_size(page: str, size: int, say: Say) -> str:
    """A page with the size of its take-home copy, in bytes, in its place."""
    megabytes = as_decimal(max(Fraction(size, _MEGABYTE), _LEAST), 1)
    return page.replace(SIZE, say("size", size=say.number(megabytes)))


@dataclass(frozen=True, slots=True)
class Copy:
    """What is in a copy, and where what is not in it is published."""

    names: Mapping[str, str]
    """By path from the site's root, the name of each file in the copy."""
    captions: Mapping[str, bytes]
    """What the caption files hold, by path from the site's root."""
    address: str
    """Of the published site, ending in a slash; empty where it has none."""


def copied_page(page: str, path: str, copy: Copy) -> str:
    """A page that finds everything in its own folder and leads out of it only to the published site.

    Chromium reads no caption file from a folder, so the captions stand in the page.

    Args:
        page: HTML as published.
        path: of the page, from the site's root.
        copy: what the page finds beside it.
    """

    def target(address: str) -> str:
        return normpath(join(dirname(path), address))

    def link(found: re.Match[str]) -> str:
        href = found[1].partition("#")[0]
        if not href or ":" in href or target(href) in copy.names:
            return found[0]
        published = copy.address + target(href) + found[1][len(href) :]
        return found[0].replace(f'"{found[1]}"', f'"{published}"') if copy.address else ""

    def named(found: re.Match[str]) -> str:
        return found[1] + copy.names.get(target(found[2]), found[2])

    def track(found: re.Match[str]) -> str:
        held = copy.captions.get(target(found[2]), b"")
        return f"{found[1]}data:text/vtt;base64,{b64encode(held).decode()}{found[3]}"

    page = _TAKE_HOME.sub("", _ALTERNATE.sub("", page))
    page = _NAMED.sub(named, _TRACK.sub(track, _LINK.sub(link, page)))
    return page.replace("media-src &#39;self&#39;", "media-src &#39;self&#39; data:", 1)
