"""Words of guilt and payment on pages written by hand."""

from __future__ import annotations

import re
from collections.abc import Iterator

from generator.check.kind_words import unkind
from generator.language import language_of
from generator.problems import Place, Problem

NAMED = re.compile(
    r"(?ms)^(?P<fence>```+|~~~+).*?^(?P=fence)|(?P<ticks>`+).+?(?P=ticks)|<!--.*?-->|\]\([^)\n]*\)"
)
"""Code, comments and addresses: a word in code is named there, and not said of anybody."""


def page_words(path: str, text: str, tag: str) -> Iterator[Problem]:
    """Questions about the wording of a page in Markdown.

    Args:
        path: of the page, from the site's root.
        text: its Markdown.
        tag: of BCP 47, the language it is written in.
    """
    said = NAMED.sub(lambda found: re.sub(r"\S", " ", found[0]), text)
    for at, what, hint, weight in unkind(said, language_of(tag)):
        line = said.count("\n", 0, at) + 1
        place = Place(path, line, at - said.rfind("\n", 0, at))
        yield Problem(place, what, hint, weight)
