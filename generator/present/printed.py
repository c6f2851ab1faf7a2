"""What of a page stands on a sheet: its words, its drawings and its codes, and nothing that styles them."""

from __future__ import annotations

import re

_WITHIN = "script|template|button|select|noscript"
_HIDDEN = "p|span|label|ul"
_UNSEEN = re.compile(
    rf"<(?:(?:{_WITHIN})\b.*?</(?:{_WITHIN})>|(?:{_HIDDEN})\b[^>]*\shidden>.*?</(?:{_HIDDEN})>)",
    re.DOTALL,
)
_IN_A_WORD = re.compile(r"</?(?:b|i|em|strong|small|span|a|bdi|code)\b[^>]*>")
_TAG = re.compile(r"<[^>]*>")
_SHAPE = re.compile(r"<(?:path|use|rect|circle|ellipse|line|polyline|polygon)\b([^>]*)>")
_STYLING = re.compile(r'\s(?:class|style|id|role|aria-[\w-]+|data-[\w-]+)(?:="[^"]*")?')


def printed(html: str) -> str:
    r"""What is seen of HTML: its words, then its shapes.

    >>> printed('<p class="big">Half a <b>cup</b>.</p> <svg><path class="plum" d="M0 0h4"/></svg>')
    'Half a cup.\n d="M0 0h4"/'
    """
    seen = _UNSEEN.sub("", html)
    lines = _TAG.sub("\n", _IN_A_WORD.sub("", seen)).split("\n")
    words = "\n".join([line for line in map(str.strip, lines) if line])
    return f"{words}\n{_STYLING.sub('', ' '.join(_SHAPE.findall(seen)))}"
