"""The words of a cue: tags taken out, signs of the format written as what they stand for."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass, field
from html.entities import html5

from generator.problems import Problem
from generator.read.vtt.blocks import Block
from generator.read.vtt.lines import Line
from generator.read.vtt.times import Times, milliseconds

_SIGN = re.compile(
    r"(?P<reference>&(?:#[0-9]{1,7}|#[xX][0-9a-fA-F]{1,6}|[A-Za-z][A-Za-z0-9]{1,31});)"
    r"|(?P<stamp><(?:[0-9]{2,}:)?[0-5][0-9]:[0-5][0-9]\.[0-9]{3}>)"
    r"|<(?P<close>/?)(?P<tag>c|i|b|u|ruby|rt|v|lang)(?P<classes>(?:\.[^ \t\n.&<>]+)*)(?P<note>[ \t][^\n<>]*)?>"
    r"|(?P<bare>[&<])"
)
_NAMED = {"v": "the name of the voice", "lang": "the language"}


def read_words(block: Block, times: Times, problems: list[Problem]) -> tuple[str, ...]:
    """The lines as they are read; what is wrong with them is added to the problems.

    Args:
        block: the lines below the times of a cue.
        times: of the cue; a time in its words lies between them.
        problems: of the cue.
    """
    reader = _Reader(problems, times.start_ms, times.end_ms)
    lines = tuple(reader.line(line) for line in block)
    reader.end(alone=bool(block) and block[0].text.startswith("<v"))
    return lines


@dataclass(slots=True)
class _Reader:
    problems: list[Problem]
    latest: int | None
    """ms that the next time in the words must be later than."""
    end_ms: int | None
    open: list[tuple[str, Line, int]] = field(default_factory=list)
    """Tags that wait for their end."""
    voices: int = 0

    def line(self, line: Line) -> str:
        if "-->" in line.text:
            what, hint = "`-->` stands in the words", "write --&gt; or another arrow"
            self.problems.append(line.problem(line.text.index("-->"), what, hint))
        return _SIGN.sub(lambda found: self.sign(line, found), line.text)

    def sign(self, line: Line, found: re.Match[str]) -> str:
        """What stands for a sign of the format."""
        if found["reference"]:
            return self.reference(line, found)
        if found["bare"]:
            escaped = "&amp;" if found[0] == "&" else "&lt;"
            self.tell(line, found, f"a bare `{found[0]}` stands in the words", f"write {escaped}")
        elif found["tag"]:
            self.tag(line, found)
        elif found["stamp"]:
            self.stamp(line, found)
        return ""

    def stamp(self, line: Line, found: re.Match[str]) -> None:
        """A time in the words: after the cue's start and the time before it, before the cue's end."""
        at = milliseconds(found["stamp"][1:-1])
        if at is None or self.latest is None or self.end_ms is None:
            return
        if not self.latest < at < self.end_ms:
            hint = "give a time after the one before it and before the cue ends"
            self.tell(line, found, f"{found[0]} lies outside of its cue", hint)
        self.latest = max(at, self.latest)

    def reference(self, line: Line, found: re.Match[str]) -> str:
        name = found[0][1:]
        if name.startswith("#") or name in html5:
            return html.unescape(found[0])
        self.tell(
            line, found, f"`{found[0]}` stands for nothing", "write &amp; for the sign & itself"
        )
        return ""

    def tag(self, line: Line, found: re.Match[str]) -> None:
        name = found["tag"]
        if found["close"]:
            if name == "ruby" and self.open and self.open[-1][0] == "rt":
                self.open.pop()  # the last one in a ruby may stay open
            if self.open and self.open[-1][0] == name:
                self.open.pop()
            else:
                what = f"</{name}> ends nothing that is open here"
                self.tell(line, found, what, "delete it, or move it behind the words it belongs to")
            return
        self.voices += name == "v"
        if name in _NAMED and not (found["note"] or "").strip():
            self.tell(
                line,
                found,
                f"<{name}> does not give {_NAMED[name]}",
                f"write it after a space, as in <{name} …>",
            )
        if name not in _NAMED and (found["note"] or "").strip():
            hint = f"write <{name}> alone, or a point before the name of a class"
            self.tell(line, found, f"<{name}> has words in it", hint)
        if name == "rt" and not any(tag == "ruby" for tag, _, _ in self.open):
            self.tell(line, found, "<rt> stands outside of <ruby>", "delete it")
        self.open.append((name, line, found.start()))

    def end(self, *, alone: bool) -> None:
        """Tags still open; a voice that speaks the whole cue needs no end."""
        for name, line, column in self.open:
            if name == "v" and alone and self.voices == 1:
                continue
            what = f"<{name}> is never ended"
            self.problems.append(line.problem(column, what, f"write </{name}> behind its words"))

    def tell(self, line: Line, found: re.Match[str], what: str, hint: str) -> None:
        self.problems.append(line.problem(found.start(), what, hint))
