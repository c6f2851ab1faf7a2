"""A caption file into cues, by the syntax of W3C WebVTT; every mistake in it is found in one run.

Sections of the format (W3C WebVTT, section 4; read in part, see references.md 6.1, the rest from
memory): a head line ``WEBVTT``, a blank line, then blocks parted by blank lines. A block is a note,
a style, a region or a cue: a name if wanted, a line of times, and the words.
"""

from __future__ import annotations

from generator.model.captions import CaptionFile
from generator.problems import Place, Problem
from generator.read.vtt.blocks import Block, blocks
from generator.read.vtt.cue import Cues
from generator.read.vtt.head import head_problems
from generator.read.vtt.lines import Line, lines_of
from generator.read.vtt.settings import region_problems


def read_vtt(path: str, language: str, text: str) -> CaptionFile | list[Problem]:
    """Read a caption file whose text is already decoded and without a byte order mark."""
    lines = lines_of(path, text)
    problems = [
        line.problem(found, "a character that no text may hold stands here", "delete it")
        for line in lines
        if (found := line.text.find("\0")) >= 0
    ]
    problems += head_problems(lines)
    cues = Cues()
    for block in blocks(_body(lines)):
        problems += _block(block, cues)
    problems += cues.later
    if problems:
        return sorted(problems, key=lambda problem: problem.place)
    if not cues.read:
        return [Problem(Place(path), "there is no caption in this file", "write at least one cue")]
    return CaptionFile(path, language, tuple(cues.read))


def _body(lines: tuple[Line, ...]) -> tuple[Line, ...]:
    """What comes below the head line; all of it where the head line is missing."""
    for number, line in enumerate(lines):
        if line.text.upper().startswith("WEBVTT"):
            return lines[number + 1 :]
        if line.text.strip():
            return lines[number:]
    return ()


def _block(block: Block, cues: Cues) -> list[Problem]:
    """What is wrong with one block; a cue is added to the others."""
    first = block[0]
    kind = first.text.split()[0] if first.text.split() else ""
    if "-->" in first.text or kind not in {"NOTE", "STYLE", "REGION"}:
        return cues.take(block)
    problems = [
        line.problem(line.text.index("-->"), f"`-->` stands in a {kind} block", "take it away")
        for line in block
        if "-->" in line.text
    ]
    if kind != "NOTE" and cues.begun:
        hint = "move it up, before the first cue"
        problems.append(first.problem(0, f"{kind} stands below a cue", hint))
    if kind != "NOTE" and first.text.strip() != kind:
        problems.append(first.problem(len(kind), f"{kind} stands alone on its line", "break here"))
    if kind == "NOTE":
        problems += cues.note(block)
    if kind == "REGION":
        problems += region_problems(block[1:])
    return problems
