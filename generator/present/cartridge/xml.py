"""XML as text: whatever is put in is escaped, and only what was made here stands as it is."""

from __future__ import annotations

import re
from xml.sax.saxutils import escape, quoteattr

_NEVER = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
"""Characters that no XML file may hold, escaped or not (XML 1.0, section 2.2)."""
_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n'


class Xml(str):
    """XML that was made here."""

    __slots__ = ()


def element(name: str, *inside: str, **attributes: str) -> Xml:
    """An element.

    Args:
        name: with its prefix.
        inside: words, which are escaped, and elements, which are not.
        attributes: an ``_`` in a name stands for ``:``, which Python has no room for.
    """
    told = "".join(
        f" {key.replace('_', ':')}={quoteattr(_allowed(value))}"
        for key, value in attributes.items()
    )
    held = joined(*inside)
    return Xml(f"<{name}{told}>{held}</{name}>" if held else f"<{name}{told}/>")


def joined(*parts: str) -> Xml:
    """Words and elements after each other."""
    return Xml("".join(one if isinstance(one, Xml) else escape(_allowed(one)) for one in parts))


def document(root: Xml) -> bytes:
    """A file with this element in it."""
    return f"{_HEAD}{root}\n".encode()


def _allowed(words: str) -> str:
    return _NEVER.sub("", words)
