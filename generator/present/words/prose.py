"""An educator's sentences into safe HTML: Markdown with raw HTML off."""

from __future__ import annotations

import re
from functools import cache

from markdown_it import MarkdownIt
from markupsafe import Markup

_MARKS = re.compile(r"[*_`]+|\[([^\]]*)\]\([^)]*\)")


def inline(text: str) -> Markup:
    """One line of prose: emphasis, code and links, no blocks."""
    return Markup(_parser().renderInline(text.strip()))  # noqa: S704  # the parser escapes all HTML


def blocks(text: str) -> Markup:
    """Paragraphs and lists."""
    return Markup(_parser().render(text))  # noqa: S704  # the parser escapes all HTML


def plain(text: str) -> str:
    """A text without its Markdown marks, its apostrophes rounded: for slides."""
    return " ".join(_MARKS.sub(lambda found: found[1] or "", text).replace("'", "’").split())


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False, "typographer": True})
    # A picture in a prompt would have to be found, sized and described; a lesson has other places for it.
    return parser.disable("image").enable(["replacements", "smartquotes"])
