"""YAML text into plain data, with the place of every key and value.

The parser's events are composed into nodes and never constructed, because YAML 1.1 guesses:
it reads ``1:30`` as 90, ``no`` as false and ``012`` as 10. Here a scalar keeps the text the
educator wrote; only plain whole numbers, ``true``, ``false`` and an empty value become more.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import yaml

from generator.model.places import Path, Places
from generator.problems import Place, Problem
from generator.read.broken import LINE_BREAK, broken, unreadable
from generator.read.hard_spaces import hard_spaces
from generator.read.merge_marks import merge_problem

Data = None | bool | int | str | list["Data"] | dict[str, "Data"]
"""What a file holds, ready for a model; numbers with a point stay text, for exact decimals."""

_SEXAGESIMAL = re.compile(r"[0-9]{1,9}(?::[0-5]?[0-9]){1,9}(?:\.[0-9]*)?")
_WHOLE = re.compile(r"-?(?:0|[1-9][0-9]{0,17})")  # a longer one stays text, and no number is it

_EMPTY = "take the file from the last commit, or begin it anew"
_DEEPEST = 40
"""Lists and keys inside one another; a lesson needs eight."""
_MOST = 200_000
"""Values in one file; the longest list of foods has a tenth of it."""
_TOO_MUCH = "there is more inside one another here than any lesson holds"
_SHARED = (
    "a word begins with `{sign}`, by which YAML repeats a value, and no value is repeated here"
)
_WRITE_OUT = "write the value out, or put the text in quotes"
_YAML_TAG = re.compile(
    r"tag:yaml\.org,2002:(str|int|float|bool|null|map|seq|timestamp|merge|value)"
)


@dataclass(slots=True)
class Source:
    """One file, taken apart."""

    path: str
    """Relative to the project's root, with forward slashes."""
    text: str = field(repr=False)
    """As the file has it."""
    data: Data = None
    """What it holds; nothing where it cannot be read."""
    values: dict[Path, Place] = field(default_factory=dict, repr=False)
    """Where each value stands."""
    keys: dict[Path, Place] = field(default_factory=dict, repr=False)
    """Where each key stands."""
    cut: dict[Path, Place] = field(default_factory=dict, repr=False)
    """Where a value without quotes ends at a ``#`` on its own line."""
    problems: list[Problem] = field(default_factory=list)
    """What is wrong with it."""

    _lines: tuple[str, ...] = field(default=(), init=False, repr=False)
    """Its lines, once somebody has asked for one."""

    @property
    def places(self) -> Places:
        """The places, for the model to carry; thousands of problems ask for them."""
        self._lines = self._lines or tuple(self.text.splitlines())
        return Places(self.path, self.values, self.keys, self._lines, self.cut)


def read_source(path: str, text: str) -> Source:
    """Take a file's text apart; what is wrong with it is in ``problems``."""
    source = Source(path, text)
    if merged := merge_problem(path, text):
        source.problems.append(merged)
        return source
    try:
        if shared := _shared(path, text):
            source.problems.append(shared)
            return source
        node = yaml.compose(text, Loader=_Loader)
    except yaml.MarkedYAMLError as error:
        source.problems += hard_spaces(path, text, error) or [broken(path, text, error)]
        return source
    except yaml.reader.ReaderError:
        source.problems.append(unreadable(path, text))
        return source
    if node is not None:
        source.problems += hard_spaces(path, text, node)
        source.data = _Taker(source).take(node, ())
    if source.data is None and not source.problems:
        source.problems.append(Problem(Place(path), "the file is empty", _EMPTY))
    return source


_Loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)  # the C parser is about eight times faster


def _shared(path: str, text: str) -> Problem | None:
    """Where a value is first named to be used again; a few lines of that can stand for a whole library."""
    if "&" not in text and "*" not in text:
        return None
    for event in yaml.parse(text, Loader=_Loader):
        if getattr(event, "anchor", None) and (mark := event.start_mark):
            sign = "*" if isinstance(event, yaml.AliasEvent) else "&"
            place = Place(path, mark.line + 1, mark.column + 1)
            return Problem(place, _SHARED.format(sign=sign), _WRITE_OUT)
    return None


class _Taker:
    """Walks the nodes of one file."""

    def __init__(self, source: Source) -> None:
        self.source = source
        self.lines = LINE_BREAK.split(source.text) if "#" in source.text else []

    def take(self, node: yaml.Node, path: Path) -> Data:
        if len(self.source.values) >= _MOST or len(path) > _DEEPEST:
            self.too_much(node)
            return None
        self.source.values[path] = self.place(node)
        if not _YAML_TAG.fullmatch(node.tag or ""):
            self.problem(
                node,
                "a word begins with `!`, which YAML keeps for itself",
                "put the text in quotes",
            )
            return None
        return self.inside(node, path)

    def inside(self, node: yaml.Node, path: Path) -> Data:
        if isinstance(node, yaml.MappingNode):
            return self.mapping(node, path)
        if isinstance(node, yaml.SequenceNode):
            return [self.take(child, (*path, index)) for index, child in enumerate(node.value)]
        if not isinstance(node, yaml.ScalarNode):
            return None
        if not node.style and self.lines:
            self.note_cut(node, path)
        return self.scalar(node)

    def note_cut(self, node: yaml.ScalarNode, path: Path) -> None:
        """Remember where a `#` behind a value begins a comment."""
        end = node.end_mark
        line = self.lines[end.line] if end.line < len(self.lines) else ""
        sign = re.compile(r"[ \t]*#").match(line, end.column)
        if sign and node.value:
            self.source.cut[path] = Place(self.source.path, end.line + 1, sign.end())

    def mapping(self, node: yaml.MappingNode, path: Path) -> dict[str, Data]:
        result: dict[str, Data] = {}
        for key_node, value_node in node.value:
            if not isinstance(key_node, yaml.ScalarNode):
                self.problem(
                    key_node,
                    "a key must be a word",
                    "check the brackets and the colon on this line",
                )
                continue
            key = key_node.value
            if key == "<<" and not key_node.style:
                self.problem(
                    key_node, "`<<` repeats values, and no value is repeated here", _WRITE_OUT
                )
                continue
            if key in result:
                first = self.source.keys[(*path, key)].line
                self.problem(
                    key_node, f"`{key}` is written twice", f"keep one; the first is on line {first}"
                )
                continue
            self.source.keys[(*path, key)] = self.place(key_node)
            result[key] = self.take(value_node, (*path, key))
        return result

    def scalar(self, node: yaml.ScalarNode) -> Data:
        text: str = node.value
        if node.style:  # quoted, or a block of text: always words; plain is "" in the C parser, None in the other
            return text
        if _SEXAGESIMAL.fullmatch(text):
            reads = yaml.safe_load(text)
            danger = f" and YAML reads it as {reads}" if reads != text else ""
            self.problem(node, f"the time {text} has no quotes{danger}", f'write "{text}"')
            return text
        if text in {"", "~", "null"}:
            return None
        if text in {"true", "false"}:
            return text == "true"
        return int(text) if _WHOLE.fullmatch(text) else text

    def too_much(self, node: yaml.Node) -> None:
        """Say once that the file is none a person wrote."""
        if not any(problem.what == _TOO_MUCH for problem in self.source.problems):
            self.problem(node, _TOO_MUCH, "check which file was saved under this name")

    def place(self, node: yaml.Node) -> Place:
        mark = node.start_mark
        return Place(self.source.path, mark.line + 1, mark.column + 1)

    def problem(self, node: yaml.Node, what: str, hint: str) -> None:
        self.source.problems.append(Problem(self.place(node), what, hint))
