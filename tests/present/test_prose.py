"""An educator's sentences become safe HTML: Markdown works, raw HTML and odd addresses do not."""

from __future__ import annotations

import html5lib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.present.words.prose import blocks, inline


@pytest.mark.parametrize(
    ("text", "html"),
    [
        ("plain", "plain"),
        ("*so*", "<em>so</em>"),
        ("**so**", "<strong>so</strong>"),
        ("2 < 3 & 4", "2 &lt; 3 &amp; 4"),
        ('"soup"', "“soup”"),
        ("Omar's", "Omar’s"),
        ("  trimmed  ", "trimmed"),
        (
            "[table](https://larkmead.example/a)",
            '<a href="https://larkmead.example/a" rel="noreferrer">table</a>',
        ),
    ],
)
def test_one_line(text: str, html: str) -> None:
    assert inline(text) == html


def test_paragraphs_and_lists() -> None:
    assert blocks("One.\n\n- a\n- b\n") == "<p>One.</p>\n<ul>\n<li>a</li>\n<li>b</li>\n</ul>\n"


ATTACKS = [
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "[a](javascript:alert(1))",
    "[a](JaVaScRiPt:alert(1))",
    "[a](vbscript:x)",
    "[a](data:text/html,<script>alert(1)</script>)",
    "![a](https://elsewhere.example/pixel.gif)",
    "<a href='javascript:x'>a</a>",
    '[a](https://x.example "onmouseover=alert(1)")',
    "<svg/onload=alert(1)>",
    "<!-- hidden -->",
    "<javascript:alert(1)>",
]
ALLOWED = {"a", "em", "strong", "code", "p", "ul", "ol", "li", "br", "hr", "pre", "blockquote"} | {
    f"h{level}" for level in range(1, 7)
}


def tags_and_addresses(html: str) -> tuple[set[str], set[str]]:
    """Elements and link targets as a browser would see them."""
    tree = html5lib.parseFragment(html, treebuilder="etree", namespaceHTMLElements=False)
    elements = [element for element in tree.iter() if element is not tree]
    for element in elements:
        assert set(element.attrib) <= {"href", "rel", "title", "start", "class"}, html
    return (
        {str(element.tag) for element in elements},
        {element.attrib["href"] for element in elements if "href" in element.attrib},
    )


def safe(text: str) -> None:
    for html in (inline(text), blocks(text)):
        tags, addresses = tags_and_addresses(str(html))
        assert tags <= ALLOWED, html
        for address in addresses:
            scheme = address.split(":", 1)[0].lower()
            assert scheme not in {"javascript", "vbscript", "data", "file"}, html


@pytest.mark.parametrize("text", ATTACKS)
def test_nothing_but_text_gets_through(text: str) -> None:
    safe(text)


@given(
    st.lists(st.sampled_from([*ATTACKS, "[", "](", ")", "<", ">", "`", "*", "\n", "&#106;", " "]))
)
def test_nothing_gets_through_in_pieces_either(parts: list[str]) -> None:
    safe("".join(parts))
