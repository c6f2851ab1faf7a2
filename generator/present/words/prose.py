"""An educator's sentences into safe HTML: Markdown with raw HTML off."""

from __future__ import annotations

import re
from collections.abc import MutableMapping, Sequence
from functools import cache

from markdown_it import MarkdownIt
from markdown_it.renderer import RendererHTML
from markdown_it.token import Token
from markdown_it.utils import OptionsDict
from markupsafe import Markup

from generator.model.address import is_allowed, is_elsewhere
from generator.present.views.page import LinkView
from generator.present.words.foreign import Foreign, like

_MARKS = re.compile(r"[*_`]+|\[([^\]]*)\]\([^)]*\)")
_HEADING = re.compile(r'<h2\b[^>]*\bid="([^"]+)"[^>]*>(.*?)</h2>', re.DOTALL)
_PARAGRAPH = re.compile(r"<p\b[^>]*>(.*?)</p>", re.DOTALL)
_LISTED = 160
_FEWEST_PARTS = 4
"""Parts of a page from which on a list of them saves looking for one."""


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


def first_words(body: str) -> str:
    """What the first paragraph of a page in HTML says, whole sentences as far as a list shows them.

    About 160 letters are shown by those who list pages (common practice, no source).
    """
    paragraph = _PARAGRAPH.search(body)
    words = Markup(paragraph[1]).striptags() if paragraph else ""  # noqa: S704  # its marks are taken away
    short = words[:_LISTED]
    end = max(short.rfind(mark) for mark in (". ", "? ", "! "))
    return words if len(words) <= _LISTED else short[: end + 1] or f"{short.rpartition(' ')[0]} …"


def contents(body: str) -> tuple[LinkView, ...]:
    """The parts of a page in HTML, by its headings that have an address; none of a short one."""
    found = _HEADING.findall(body)
    if len(found) < _FEWEST_PARTS:
        return ()
    return tuple(LinkView(f"#{name}", Markup(words).striptags()) for name, words in found)  # noqa: S704  # its marks are taken away


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False, "typographer": True})
    parser.validateLink = is_allowed  # type: ignore[assignment,method-assign]  # markdown-it's own way of choosing
    parser.add_render_rule("link_open", _link_open)
    # A picture in a prompt would have to be found, sized and described; a lesson has other places for it.
    return parser.disable("image").enable(["replacements", "smartquotes"])


def _link_open(
    renderer: RendererHTML,
    tokens: Sequence[Token],
    index: int,
    options: OptionsDict,
    _: MutableMapping[str, object],
) -> str:
    """A link; one that leads out of the site does not say where from."""
    if is_elsewhere(str(tokens[index].attrGet("href") or "")):
        tokens[index].attrSet("rel", "noreferrer")
    return renderer.renderToken(tokens, index, options, {})
