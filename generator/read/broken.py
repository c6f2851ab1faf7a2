"""A file that is no YAML, told by its commonest causes rather than by the parser's words."""

from __future__ import annotations

import re
from functools import lru_cache

import yaml

from generator.problems import Place, Problem

LINE_BREAK = re.compile("\r\n|[\r\n\x85\u2028\u2029]")
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

_SCANNED = 200_000
"""Signs of a file that is read once more, slowly, to find where a quote was opened."""

_QUOTE = ("a quote is opened and never closed", "close it, or use the other kind of quote")
_BRACKET = (
    "a bracket is opened and not closed, or a comma is missing",
    "close `[` with `]` and `{` with `}`",
)
_COLON = (
    "a colon stands where none can",
    'put the text in quotes where it holds a colon, such as title: "Soup: two ways"',
)
_CURLY = (
    "a colon stands in a text that has no quotes: “ and ” are none to YAML",
    'type straight ones, such as title: "Soup: two ways"',
)
_NO_COLON = (
    "a key without its colon",
    "write `key: value`, with a space after the colon; or indent it as far as the text it belongs to",
)
_NOT_UNDER = (
    "this text does not stand further in than the line that ends in `|` above it",
    "indent it by two more spaces than that line",
)
_NO_ENTRY = (
    "this line begins no entry of the list above it",
    "put `- ` before it, or indent it as far as what it belongs to",
)
_HYPHEN = ("a hyphen has no space after it", "put one between them, such as `- ask:`")
_INSIDE_QUOTE = (
    "a quoted text ends here, and more follows",
    "use the other kind of quote around a text that holds one",
)
_BRACED = (
    "a text with a brace has no quotes",
    "put it in quotes, such as prompt: '{total.gap} in all', or begin it with `|` on a line of its own",
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
        ("mapping values are not allowed", *_at_colon(text, here)),
        ("could not find expected ':'", _without_colon(text, begun), begun),
        ("end of stream", _QUOTE, begun),
        ("expected '-'", _HYPHEN if re.match(r"-\w", _rest(text, here)) else _NO_ENTRY, here),
        ("expected ',' or", *_in_brackets(text, here, begun)),
        ("another document", _TWO, here),
        ("nesting depth", _DEEP, here),
        ("expected key", *_at_key(text, here)),
        ("<document start>", *_at_key(text, here)),
    ):
        if part in said[0]:
            return Problem(_place(path, text, mark or here), *told)
    what = f"the file cannot be read here ({error.problem})"
    return Problem(_place(path, text, here or begun), what, "check the indent and the quotes")


def unreadable(path: str, text: str) -> Problem:
    """A character that YAML refuses, such as one left behind by copying."""
    found = yaml.reader.Reader.NON_PRINTABLE.search(text)
    before = text[: found.start() if found else 0]
    lines = LINE_BREAK.split(before)
    return Problem(
        Place(path, len(lines), len(lines[-1]) + 1),
        "a character that cannot be shown stands here",
        "delete it and type the word again",
    )


@lru_cache(maxsize=1)
def _lines(text: str) -> tuple[str, ...]:
    """The lines of the file that is being told about."""
    return tuple(LINE_BREAK.split(text))


_Told = tuple[str, str]
"""What is wrong, and the way out."""
_Found = tuple[_Told, yaml.Mark | None]
"""The same with its place."""


def _at_colon(text: str, here: yaml.Mark | None) -> _Found:
    """A colon too many: in a text, behind a line that lacks its own, or in a line out of line."""
    line = _rest(text, here, from_start=True)
    column = here.column if here else 0
    if not re.fullmatch(r"\s*(?:- +)*[\w-]+", line[:column]):
        return (_CURLY if "“" in line[:column] else _COLON), here
    above = _line_above(text, here)
    if above and not re.search(r":(?:\s|$)", above[1]):
        indent = len(above[1]) - len(above[1].lstrip("- "))
        return _NO_COLON, yaml.Mark("", 0, above[0], indent, None, 0)
    return _INDENT, here


def _without_colon(text: str, begun: yaml.Mark | None) -> _Told:
    """A line of text where a key should be: below a `|` it is not far enough in."""
    above = _line_above(text, begun)
    return _NOT_UNDER if above and re.search(r":\s+[|>][-+0-9]*\s*$", above[1]) else _NO_COLON


def _in_brackets(text: str, here: yaml.Mark | None, begun: yaml.Mark | None) -> _Found:
    """A text with a brace, a quote that closes too early inside brackets, or the brackets themselves."""
    # Of brackets inside brackets the innermost is enough, so that ten thousand take no minute.
    if re.search(r"\[[^][{}]*\w\s*\{", _rest(text, here, from_start=True)):
        return _BRACED, here
    early = _after_quote(text, here) and re.match(r"\w", _rest(text, here))
    return (_INSIDE_QUOTE, here) if early else (_BRACKET, begun)


def _at_key(text: str, here: yaml.Mark | None) -> _Found:
    """A line out of line; text behind a brace; or behind a quote, which may be opened lines above."""
    above = _rest(text, here, from_start=True)[: here.column] if here else ""
    if re.search(r"(?::|-)\s+\{[^{}]*\}\s*$", above):
        return _BRACED, here
    if here is None or not _after_quote(text, here) or len(text) > _SCANNED:
        return _INDENT, here
    opened = None
    try:
        for token in yaml.scan(text):
            if (token.start_mark.line, token.start_mark.column) >= (here.line, here.column):
                break
            if isinstance(token, yaml.ScalarToken) and token.style in {'"', "'"}:
                opened = token.start_mark
    except yaml.YAMLError:  # the scanner stops where the parser did
        pass
    if opened and opened.line < here.line:
        return _QUOTE, opened
    return _INSIDE_QUOTE, here


def _rest(text: str, mark: yaml.Mark | None, *, from_start: bool = False) -> str:
    """The line of a mark, from the mark on or whole."""
    lines = _lines(text)
    if mark is None or mark.line >= len(lines):
        return ""
    return lines[mark.line][0 if from_start else mark.column :]


def _line_above(text: str, mark: yaml.Mark | None) -> tuple[int, str] | None:
    """Number, from 0, and text of the nearest line above a mark that says something."""
    lines = list(_lines(text))[: mark.line if mark else 0]
    for number, line in reversed(list(enumerate(lines))):
        if line.strip() and not line.lstrip().startswith("#"):
            return number, line
    return None


def _place(path: str, text: str, mark: yaml.Mark | None) -> Place:
    """A parser's mark as a place; the end of the file is told as the end of its last line."""
    if mark is None:
        return Place(path)
    lines = _lines(text)
    while len(lines) > 1 and not lines[-1].strip():
        lines = lines[:-1]
    if mark.line >= len(lines):
        return Place(path, len(lines), len(lines[-1]) + 1)
    return Place(path, mark.line + 1, mark.column + 1)


def _sign(text: str, mark: yaml.Mark | None) -> str:
    """The sign at a mark; where an alias or anchor has no name, the one before it."""
    if mark is None:
        return ""
    lines = _lines(text)
    line = lines[mark.line] if mark.line < len(lines) else ""
    before, here = line[: mark.column][-1:], line[mark.column : mark.column + 1]
    return before if before in {"*", "&"} else here


def _after_quote(text: str, mark: yaml.Mark | None) -> bool:
    """Whether the sign before a mark, spaces apart, closes a quote."""
    if mark is None:
        return False
    lines = _lines(text)
    line = lines[mark.line] if mark.line < len(lines) else ""
    return line[: mark.column].rstrip()[-1:] in {'"', "'"}
