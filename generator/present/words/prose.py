"""An educator's sentences into safe HTML: Markdown with raw HTML off."""

from __future__ import annotations

from functools import cache

from markdown_it import MarkdownIt
from markupsafe import Markup


def inline(text: str) -> Markup:
    """One line of prose: emphasis, code and links, no blocks."""
    return Markup(_parser().renderInline(text.strip()))  # noqa: S704  # the parser escapes all HTML


def blocks(text: str) -> Markup:
    """Paragraphs and lists."""
    return Markup(_parser().render(text))  # noqa: S704  # the parser escapes all HTML


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False, "typographer": True})
    # A picture in a prompt would have to be found, sized and described; a lesson has other places for it.
    return parser.disable("image").enable(["replacements", "smartquotes"])
