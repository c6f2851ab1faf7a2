"""Lessons that were filmed and then edited at random, each part with a mark that no edit changes.

The marks say what a number was of when it was filmed, whatever the lesson calls it today; so what
the program says of the film is held against something that it does not know.
"""

from __future__ import annotations

from collections.abc import Mapping
from copy import deepcopy
from dataclasses import dataclass, field, replace
from itertools import count
from pathlib import Path
from random import Random

from generator.compute.result import LessonResult
from generator.model.lesson import Lesson, Video
from generator.model.library import Library
from generator.model.recorded import Recorded, RecordedFile
from generator.present.recording.captions import caption_draft
from generator.present.recording.filmed import filmed_figures
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from tests.project import library, put

SAY = Say(library().words["en"])
VTT = "meal.en.vtt"
FOODS = ("apple-raw", "pear-raw", "banana-raw", "orange-raw", "plum-raw", "kiwi-raw", "mango-raw")
AMOUNTS = ("100 g", "150 g", "200 g", "300 g")
OWN = ("Broth", "Rice pudding", "Flat bread", "Lentil soup", "Corn cake")
MOVES = ("march", "side-step", "apple-pick", "bottle-lift", "swim-arms")
SIDES = ("At home", "At school", "Kiosk lunch", "River lunch")
QUESTIONS = ("total.gap", "total.first", "both", "twice")
_marks = count(1)


@dataclass
class Cell:
    """A food of a row, from the library or with a value of its own."""

    food: str
    amount: str = ""
    value: int = 0

    def text(self, names: Mapping[str, str]) -> str:
        if self.value:
            return f"{{name: {self.food}, value: {self.value}, source: card}}"
        return f"{{food: {names.get(self.food, self.food)}, amount: {self.amount}}}"


@dataclass
class Row:
    """Two foods and the move of their gap."""

    cells: list[Cell]
    move: str
    id: str
    mark: int = field(default_factory=lambda: next(_marks))


@dataclass
class Part:
    """A comparison, what if one of its foods were another, a question about it, and its moves."""

    id: str
    rows: list[Row]
    sides: list[str]
    estimate: int | None
    """Which row is estimated, 0 for all of them; nothing without an estimate."""
    question: str
    changes: list[tuple[str, Cell]]
    """Id of each change, and what stands in place of the first food of the first row."""
    mark: int = field(default_factory=lambda: next(_marks))
    says: dict[str, int] = field(default_factory=dict)
    """By the end of a stop's name: a number that its script says."""


@dataclass
class History:
    """A lesson as it is, and what foods are called that have another id by now."""

    parts: list[Part]
    names: dict[str, str] = field(default_factory=dict)


def text(history: History) -> str:
    """The lesson file."""
    lines = ["title: T", "summary: S.", "grades: 3-5", "minutes: 9", "goals: [G.]", "stops:"]
    for at, part in enumerate(history.parts):
        lines += _part(part, 4 * at + 1, history.names)
    return "\n".join(lines) + "\n"


def _part(part: Part, minute: int, names: Mapping[str, str]) -> list[str]:
    rows = [
        f"        - {{id: {row.id}, foods: [{', '.join(cell.text(names) for cell in row.cells)}]}}"
        for row in part.rows
    ]
    estimated = {0: "total"} | {row.mark: row.id for row in part.rows}
    estimate = part.estimate is not None and part.estimate in estimated
    seat = f"change: {_slug(names.get(part.rows[0].cells[0].food, part.rows[0].cells[0].food))}, row: {part.rows[0].id}, side: {_slug(part.sides[0])}"
    return [
        f"  - compare:\n      id: {part.id}\n      at: '{minute}:00'\n      measure: energy",
        f"      sides: [{', '.join(part.sides)}]\n      rows:",
        *rows,
        "      solve: [gap, count, total]",
        f"      estimate: {{prompt: About how much?, row: {estimated[part.estimate or 0]}}}"
        if estimate
        else "      reveal: See.",
        *_said(part, ""),
        f"  - what_if:\n      id: {part.id}-swap\n      at: '{minute}:30'\n      for: {part.id}\n      changes:",
        *(f"        - {{id: {name}, {seat}, to: {to.text(names)}}}" for name, to in part.changes),
        *_said(part, "-swap"),
        f"  - ask:\n      id: {part.id}-ask\n      at: '{minute + 1}:00'\n      prompt: How much?\n      reveal: So much.\n      answer: {_asked(part)}",
        *_said(part, "-ask"),
        f"  - move:\n      id: {part.id}-move\n      at: '{minute + 1}:40'\n      for: {part.id}\n      one_move_per: 10",
        f"      moves: [{', '.join(row.move for row in part.rows)}]",
    ]


def _said(part: Part, end: str) -> list[str]:
    return [f"    say: We found {part.says[end]}."] if end in part.says else []


def _asked(part: Part) -> str:
    first, second = (f"{part.id}.total.{_slug(side)}" for side in part.sides)
    row = f"{part.id}.{part.rows[0].id}.gap"
    return {
        "total.gap": f"{part.id}.total.gap",
        "total.first": first,
        "both": f"{first} + {second}",
        "twice": f"{row} + {row}",
    }[part.question]


def _slug(name: str) -> str:
    return name.lower().replace(" ", "-")


def foods_of(history: History) -> Library:
    """The library, with foods under the ids they have by now."""
    held = library()
    foods = dict(held.foods)
    for name, other in history.names.items():
        foods[other] = replace(foods.pop(name), id=other)
    return replace(held, foods=foods)


def worked(folder: Path, history: History) -> LessonResult | None:
    """The lesson worked out; nothing where it is none: two changes come to one, two rows are alike."""
    held = foods_of(history)
    lesson = read_lesson(folder, put(folder, text(history)), held)
    if not isinstance(lesson, Lesson):
        return None
    file = lesson.file.model_copy(update={"video": Video(file="m.mp4", captions={"en": VTT})})
    return worked_out(replace(lesson, file=file), held)


def film(folder: Path, history: History, random: Random) -> tuple[LessonResult, Recorded] | None:
    """A lesson whose script says some of its numbers, filmed."""
    first = worked(folder, history)
    if first is None:
        return None
    for part in history.parts:
        for end in ("", "-swap", "-ask"):
            own = first.of_stop(f"{part.id}{end}")
            part.says[end] = int(random.choice([one for one in own if one.unit]).value)
    result = worked(folder, history)
    assert result is not None
    captions = {VTT: caption_draft(result.lesson)}
    file = RecordedFile(filmed="2026-03-14", figures=filmed_figures(result, SAY))
    return result, Recorded(file, result.lesson.places, captions)


def a_cell(random: Random) -> Cell:
    if random.random() < 0.4:
        return Cell(random.choice(OWN), value=random.randrange(50, 500, 10))
    return Cell(random.choice(FOODS), random.choice(AMOUNTS))


def a_row(random: Random) -> Row:
    one = other = a_cell(random)
    while one.food == other.food:
        other = a_cell(random)
    return Row([one, other], random.choice(MOVES), f"r{random.randrange(10**6)}")


def a_part(name: str, random: Random) -> Part:
    rows = [a_row(random) for _ in range(random.randint(1, 4))]
    changes = [(f"c{random.randrange(10**6)}", a_cell(random)) for _ in range(2)]
    estimate = random.choice([None, 0, rows[0].mark])
    sides = random.sample(SIDES, 2)
    return Part(name, rows, sides, estimate, random.choice(QUESTIONS), changes)


def filmed_lesson(folder: Path, seed: int) -> tuple[History, LessonResult, Recorded, Random]:
    """A lesson that is one, filmed; the edits of it are drawn by what comes last."""
    random = Random(seed)  # noqa: S311  # nothing secret: the same edits at every run
    while True:
        names = random.sample(["snack", "lunch"], random.randint(1, 2))
        history = History([a_part(name, random) for name in names])
        if made := film(folder, history, random):
            return history, *made, random


def moved(history: History, random: Random) -> None:
    """Edits that change no number: order and names."""
    part = random.choice(history.parts)
    match random.randrange(6):
        case 0:
            head, *rest = part.rows  # the first holds the food that what-if changes
            random.shuffle(rest)
            part.rows = [head, *rest]
        case 1:
            part.id += "s"
        case 2:
            random.choice(part.rows).id = f"r{random.randrange(10**6)}"
        case 3:
            part.sides[random.randrange(2)] = f"Lunch {random.randrange(10**6)}"
        case 4:
            food = random.choice(FOODS)
            history.names[food] = f"{food}-{random.randrange(100)}"
        case _:
            random.shuffle(history.parts)


def changed(history: History, random: Random) -> None:
    """Edits that change what the lesson holds."""
    parts = history.parts
    part = random.choice(parts)
    row = random.choice(part.rows)
    at = random.randrange(2)
    match random.randrange(14):
        case 0 if len(part.rows) < 6:
            part.rows.insert(random.randint(0, len(part.rows)), a_row(random))
        case 1 if len(part.rows) > 1:
            part.rows.remove(row)
        case 2:
            row.cells[at] = a_cell(random)
        case 3 if row.cells[at].amount:
            row.cells[at].amount = random.choice(AMOUNTS)
        case 4 if row.cells[at].value:
            row.cells[at].value += 10
        case 5 if len(parts) > 1:
            parts.remove(part)
        case 6 if len(parts) > 1 and len(part.rows) > 1:
            part.rows.remove(row)
            random.choice([one for one in parts if one is not part]).rows.append(row)
        case 7:
            other = random.choice(part.rows)
            row.move, other.move = other.move, row.move
        case 8:
            part.question = random.choice(QUESTIONS)
        case 9:
            part.estimate = random.choice([None, 0, row.mark])
        case 10:
            part.changes[at] = (part.changes[at][0], a_cell(random))
        case 11:
            part.sides.reverse()
        case 12 if len(parts) < 3:
            parts.insert(
                random.randint(0, len(parts)), a_part(f"new{random.randrange(99)}", random)
            )
        case _:
            row.move = random.choice(MOVES)


def edited(
    history: History, folder: Path, random: Random, kinds: int
) -> tuple[History, LessonResult]:
    """After some edits that leave a lesson.

    Args:
        history: the lesson as filmed; it stays as it is.
        folder: where lesson files are written.
        random: draws the edits.
        kinds: 1 for order and names alone, more for others as well.
    """
    while True:
        now = deepcopy(history)
        for _ in range(random.randint(1, 6)):
            random.choice((moved, *(changed for _ in range(kinds - 1))))(now, random)
        if result := worked(folder, now):
            return now, result


__all__ = ["History", "Part", "edited", "filmed_lesson"]
