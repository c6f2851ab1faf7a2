"""An educator's sentences into safe HTML: Markdown with raw HTML off."""

from __future__ import annotations

import re
from functools import cache

from markdown_it import MarkdownIt
from markupsafe import Markup

from generator.present.words.foreign import Foreign, like

_MARKS = re.compile(r"[*_`]+|\[([^\]]*)\]\([^)]*\)")


def inline(text: str) -> Markup:
    """One line of prose: emphasis, code and links, no blocks."""
    html = Markup(_parser().renderInline(text.strip()))  # noqa: S704  # the parser escapes all HTML
    return text.around(html) if isinstance(text, Foreign) else html


def blocks(text: str) -> Markup:
    """Paragraphs and lists."""
    return Markup(_parser().render(text))  # noqa: S704  # the parser escapes all HTML


def plain(text: str) -> str:
    """A text without its Markdown marks, its apostrophes rounded: for slides."""
    words = _MARKS.sub(lambda found: found[1] or "", text).replace("'", "’").split()
    return like(text, " ".join(words))


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False, "typographer": True})
    # A picture in a prompt would have to be found, sized and described; a lesson has other places for it.
    return parser.disable("image").enable(["replacements", "smartquotes"])
