"""Which texts of the site the scripts of one file say, found in the scripts themselves.

A script says a text by ``say("key")``, or by a table of keys that are each written out:
``keys({ boat: "thing_boat" })``. So a key can be searched for, and where a text is brought
along follows from which script says it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache

TEXTS = "js/texts.js"
"""The module that holds the texts of a file; its own is empty and is replaced when files are joined."""
_SAY = re.compile(r"(?<!function )\bsay\(")
_TABLE = re.compile(r"(?<!function )\bkeys\(\{(.*?)\}\)", re.DOTALL)
_IN_TABLE = re.compile(r":\s*\"(\w+)\"")
_LITERAL = re.compile(r'"(\w+)"')


def keys_said(modules: Iterable[str], files: Mapping[str, str]) -> tuple[str, ...]:
    """Every key that the modules say, in order, each once.

    Raises:
        ValueError: a text is said by a key that is not written out; the message names the module.
    """
    return tuple(sorted({key for name in modules for key in _of_module(name, files[name])}))


@cache  # a module stands in many files, in every language
def _of_module(name: str, text: str) -> tuple[str, ...]:
    return tuple(_said(name, text))


def _said(name: str, text: str) -> Iterator[str]:
    tables = _TABLE.findall(text)
    for table in tables:
        yield from _IN_TABLE.findall(table)
    for found in _SAY.finditer(text):
        key = _first_argument(text[found.end() :])
        written = _LITERAL.findall(key)
        if "`" in key or not (written or tables):
            raise ValueError(f"{name}: `say({key})` needs its key written out, or a table of keys")
        yield from written


def _first_argument(text: str) -> str:
    """The text up to the comma or the bracket that ends the first argument."""
    depth, quoted = 0, False
    for at, sign in enumerate(text):
        quoted ^= sign == '"'
        if quoted:
            continue
        if sign in ")," and not depth:
            return text[:at]
        depth += (sign in "([{") - (sign in ")]}")
    return text
