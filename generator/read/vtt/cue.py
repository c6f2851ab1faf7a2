"""A block of a caption file into a cue."""

from __future__ import annotations

from generator.model.captions import MEANT_NOTE, Cue
from generator.problems import Place, Problem
from generator.read.vtt.blocks import ARROW, Block
from generator.read.vtt.lines import Line
from generator.read.vtt.times import read_times
from generator.read.vtt.words import read_words


class Cues:
    """The cues of one file, taken in order."""

    def __init__(self) -> None:
        self.read: list[Cue] = []
        self.begun = False
        """Whether a cue was seen, right or wrong."""
        self._ids: dict[str, int] = {}
        self._latest = 0
        self._last_line = 0
        self._meant = ""
        self._commas: list[Problem] = []

    @property
    def later(self) -> list[Problem]:
        """What can only be told once for the whole file: times with commas, which come in crowds."""
        if not self._commas:
            return []
        first, *others = self._commas
        if not others:
            return [first]
        more = "one more time has" if len(others) == 1 else f"{len(others)} more times have"
        hint = f"{first.hint}; {more} a comma in this file"
        return [Problem(first.place, first.what, hint)]

    def note(self, block: Block) -> list[Problem]:
        """Keep what a note says is meant in the cue that follows; other notes say nothing."""
        text = " ".join(line.text.strip() for line in block)
        if text.startswith(MEANT_NOTE):
            self._meant = text.removeprefix(MEANT_NOTE).strip()
            if not self._meant:
                hint = f"write it behind the colon: `{MEANT_NOTE} 26`"
                return [block[0].problem(0, "the note names no number that is meant", hint)]
        return []

    def take(self, block: Block) -> list[Problem]:
        """What is wrong with a block that should be a cue; a right one is added to ``read``."""
        meant, self._meant = self._meant, ""
        missing = block[0].number == self._last_line + 1
        self._last_line = block[-1].number
        at = next((n for n, line in enumerate(block[:2]) if _timed(line)), None)
        if at is None:
            return [_untimed(block, self.read[-1] if self.read else None)]
        problems: list[Problem] = []
        if missing and self.begun:
            what = "there is no blank line before this cue"
            problems.append(block[0].problem(0, what, "put a blank line before it"))
        self.begun = True
        name = block[0].text if at else ""
        problems += self._id_problems(block[0], name)
        problems += self._rest(block[at], block[at + 1 :], name, meant)
        return problems

    def _rest(self, timing: Line, words: Block, name: str, meant: str) -> list[Problem]:
        """The times and the words."""
        times = read_times(timing)
        self._commas += [problem for problem in times.problems if "comma" in problem.what]
        problems = [problem for problem in times.problems if "comma" not in problem.what]
        if times.start_ms is not None:
            if times.start_ms < self._latest:
                what = "the cue begins before the one above it"
                problems.append(timing.problem(0, what, "put the cues in the order of their times"))
            self._latest = max(self._latest, times.start_ms)
        text = read_words(words, times, problems)
        if not any(line.strip() for line in text) and not problems:
            what, hint = "this cue has no words", "write them on the next line, or delete the cue"
            problems.append(timing.problem(0, what, hint))
        if not problems and times.start_ms is not None and times.end_ms is not None:
            place = Place(timing.path, timing.number)
            self.read.append(Cue(times.start_ms, times.end_ms, text, place, name, meant))
        return problems

    def _id_problems(self, line: Line, name: str) -> list[Problem]:
        if not name:
            return []
        first = self._ids.setdefault(name, line.number)
        if first == line.number:
            return []
        what = f"the name `{name[:40]}` is given twice"
        return [line.problem(0, what, f"change or delete one; the first is on line {first}")]


def _timed(line: Line) -> bool:
    return "-->" in line.text or ARROW.search(line.text) is not None


def _untimed(block: Block, last: Cue | None) -> Problem:
    """Words without times, most often cut off from their cue by a blank line."""
    line = block[0]
    later = next((other for other in block if _timed(other)), None)
    if later:
        hint = "leave one line for the name of the cue, or none"
        return later.problem(0, "the times stand too far down in their cue", hint)
    hint = "write its times above it"
    if last is not None:
        hint += ", or delete the blank line above it: a blank line ends a cue"
    return line.problem(0, f"“{line.text.strip()[:40]}” has no times", hint)
