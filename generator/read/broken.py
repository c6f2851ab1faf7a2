"""A file that is no YAML, told by its commonest causes rather than by the parser's words."""

from __future__ import annotations

import re

import yaml

from generator.problems import Place, Problem

_BREAK = re.compile("\r\n|[\r\n\x85\u2028\u2029]")
"""What YAML counts as the end of a line."""

_KEPT = {
    "\t": ("there is a tab here", "indent with spaces; YAML takes no tabs"),
    "*": ("a word begins with `*`, which YAML keeps for itself", "put the text in quotes"),
    "&": ("a word begins with `&`, which YAML keeps for itself", "put the text in quotes"),
    "@": ("a word begins with `@`, which YAML keeps for itself", "put the text in quotes"),
    "`": ("a word begins with a backtick, which YAML keeps for itself", "put the text in quotes"),
    "%": ("a word begins with `%`, which YAML keeps for itself", "put the text in quotes"),
}
"""Signs that begin nothing, by what they are."""

_QUOTE = ("a quote is opened and never closed", "close it, or use the other kind of quote")
_BRACKET = (
    "a bracket is opened and not closed, or a comma is missing",
    "close `[` with `]` and `{` with `}`",
)
_COLON = (
    "a colon stands where none can",
    'put the text in quotes where it holds a colon, such as title: "Soup: two ways", and check the indent',
)
_NO_COLON = ("a key without its colon", "write `key: value`, with a space after the colon")
_INSIDE_QUOTE = (
    "a quoted text ends here, and more follows",
    "use the other kind of quote around a text that holds one",
)
_TWO = ("a second document begins here", "take out the line of three hyphens")
_DEEP = ("brackets stand inside brackets far too deep", "check the brackets of this line")
_INDENT = (
    "this line does not fit under the one above it",
    "indent it as far as its neighbors, with spaces",
)


def broken(path: str, text: str, error: yaml.MarkedYAMLError) -> Problem:
    """Why the parser stopped, at the place an educator has to look at."""
    said = (error.problem or "", error.context or "")
    here, begun = error.problem_mark, error.context_mark
    sign = _sign(text, here)
    if sign in _KEPT and ("token" in said[0] or "alphabetic" in said[0] or "tab" in said[0]):
        return Problem(_place(path, text, here), *_KEPT[sign])
    for part, told, mark in (
        ("undefined alias", _KEPT["*"], here),
        ("mapping values are not allowed", _COLON, here),
        ("could not find expected ':'", _NO_COLON, begun),
        ("end of stream", _QUOTE, begun),
        ("expected ',' or", _BRACKET, begun),
        ("another document", _TWO, here),
        ("nesting depth", _DEEP, here),
    ):
        if part in said[0]:
            return Problem(_place(path, text, mark or here), *told)
    if "expected key" in said[0] or "<document start>" in said[0]:
        told = _INSIDE_QUOTE if _after_quote(text, here) else _INDENT
        return Problem(_place(path, text, here), *told)
    what = f"the file cannot be read here ({error.problem})"
    return Problem(_place(path, text, here or begun), what, "check the indent and the quotes")


def unreadable(path: str, text: str) -> Problem:
    """A character that YAML refuses, such as one left behind by copying."""
    found = yaml.reader.Reader.NON_PRINTABLE.search(text)
    before = text[: found.start() if found else 0]
    lines = _BREAK.split(before)
    return Problem(
        Place(path, len(lines), len(lines[-1]) + 1),
        "a character that cannot be shown stands here",
        "delete it and type the word again",
    )


def _place(path: str, text: str, mark: yaml.Mark | None) -> Place:
    """A parser's mark as a place; the end of the file is told as the end of its last line."""
    if mark is None:
        return Place(path)
    lines = _BREAK.split(text)
    while len(lines) > 1 and not lines[-1].strip():
        lines.pop()
    if mark.line >= len(lines):
        return Place(path, len(lines), len(lines[-1]) + 1)
    return Place(path, mark.line + 1, mark.column + 1)


def _sign(text: str, mark: yaml.Mark | None) -> str:
    """The sign at a mark; where an alias or anchor has no name, the one before it."""
    if mark is None:
        return ""
    lines = _BREAK.split(text)
    line = lines[mark.line] if mark.line < len(lines) else ""
    before, here = line[: mark.column][-1:], line[mark.column : mark.column + 1]
    return before if before in {"*", "&"} else here


def _after_quote(text: str, mark: yaml.Mark | None) -> bool:
    """Whether the sign before a mark, spaces apart, closes a quote."""
    if mark is None:
        return False
    lines = _BREAK.split(text)
    line = lines[mark.line] if mark.line < len(lines) else ""
    return line[: mark.column].rstrip()[-1:] in {'"', "'"}
