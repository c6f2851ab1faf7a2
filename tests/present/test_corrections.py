"""Whatever becomes of a lesson after it was filmed, no correction speaks of another food than the film.

A seed edits a filmed lesson: rows change places, come and go, stops and rows are renamed, foods,
amounts, own values and moves are changed. Every correction of the page and of the published
captions is held against what the film itself says: its numbers, each with what it is of.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from copy import deepcopy
from dataclasses import dataclass, field, replace
from decimal import Decimal
from pathlib import Path
from random import Random

import pytest

from generator.check.recorded import numbers_as_filmed
from generator.compute.result import LessonResult
from generator.compute.showing import showings
from generator.compute.work_out import work_out
from generator.model.captions import CaptionFile
from generator.model.lesson import Lesson, Video
from generator.model.recorded import Recorded, RecordedFile
from generator.present.recording.captions import caption_draft
from generator.present.recording.corrections import corrected_captions, corrections
from generator.present.recording.filmed import filmed_figures
from generator.present.recording.showing_name import showing_name
from generator.present.words.say import Say
from generator.read.vtt import read_vtt
from tests.project import library, read

SAY = Say(library().words["en"])
VTT = "meal.en.vtt"
FOODS = ("apple-raw", "pear-raw", "banana-raw", "orange-raw", "plum-raw", "kiwi-raw", "mango-raw")
AMOUNTS = ("100 g", "150 g", "200 g", "300 g")
OWN = ("Broth", "Rice pudding", "Flat bread", "Lentil soup", "Corn cake")
MOVES = ("march", "side-step", "apple-pick", "bottle-lift", "swim-arms")


@dataclass
class Cell:
    """A food of a row, from the library or with a value of its own."""

    food: str
    amount: str = ""
    value: int = 0

    def __str__(self) -> str:
        if self.value:
            return f"{{name: {self.food}, value: {self.value}, source: card}}"
        return f"{{food: {self.food}, amount: {self.amount}}}"


@dataclass
class Row:
    """Two foods and the move of their gap."""

    cells: list[Cell]
    move: str
    id: str = ""

    def __str__(self) -> str:
        foods = f"[{', '.join(map(str, self.cells))}]"
        return f"{{id: {self.id}, foods: {foods}}}" if self.id else foods


@dataclass
class Part:
    """A comparison and its moves."""

    id: str
    rows: list[Row]
    sides: list[str]
    says: list[int] = field(default_factory=list)


def text(parts: list[Part]) -> str:
    """The lesson file."""
    lines = ["title: T", "summary: S.", "grades: 3-5", "minutes: 9", "goals: [G.]", "stops:"]
    for at, part in enumerate(parts):
        rows = [f"        - {row}" for row in part.rows]
        moves = ", ".join(row.move for row in part.rows)
        lines += [
            "  - compare:",
            f"      id: {part.id}",
            f'      at: "{2 * at + 1}:00"',
            "      measure: energy",
            f"      sides: [{', '.join(part.sides)}]",
            "      rows:",
            *rows,
            "      solve: [gap, count, total]",
            *(f"      say: We found {number}." for number in part.says[:1]),
            f'  - move: {{id: {part.id}-move, at: "{2 * at + 1}:40", for: {part.id}, one_move_per: 10, moves: [{moves}]}}',
        ]
    return "\n".join(lines) + "\n"


def worked(folder: Path, parts: list[Part]) -> LessonResult:
    lesson = read(folder, text(parts))
    assert isinstance(lesson, Lesson), [*map(str, lesson), text(parts)]
    file = lesson.file.model_copy(update={"video": Video(file="m.mp4", captions={"en": VTT})})
    return work_out(replace(lesson, file=file), library())


def film(folder: Path, parts: list[Part], random: Random) -> tuple[LessonResult, Recorded]:
    """A lesson whose script says some of its numbers, filmed."""
    for part in parts:
        numbers = [int(one.value) for one in worked(folder, parts).of_stop(part.id) if one.row]
        part.says = [random.choice(numbers)]
    result = worked(folder, parts)
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
    return Row([one, other], random.choice(MOVES))


def a_lesson(random: Random) -> list[Part]:
    names = random.sample(["snack", "lunch"], random.randint(1, 2))
    return [
        Part(name, [a_row(random) for _ in range(random.randint(1, 4))], ["At home", "At school"])
        for name in names
    ]


def distinct(parts: list[Part]) -> bool:
    """Whether no two rows of a comparison hold the same foods in the same amounts."""
    for part in parts:
        held = [str(sorted((cell.food, cell.amount) for cell in row.cells)) for row in part.rows]
        if len(set(held)) < len(held):
            return False
    return True


def moved(parts: list[Part], random: Random) -> None:
    """Edits that change no number: order and names."""
    part = random.choice(parts)
    match random.randrange(4):
        case 0:
            random.shuffle(part.rows)
        case 1:
            part.id += "s"
        case 2:
            row = random.choice(part.rows)
            row.id = f"r{random.randrange(10**6)}"
        case _:
            part.sides.reverse()
            for row in part.rows:
                row.cells.reverse()


def changed(parts: list[Part], random: Random) -> None:
    """Edits that change what the lesson holds."""
    part = random.choice(parts)
    row = random.choice(part.rows)
    at = random.randrange(2)
    match random.randrange(6):
        case 0 if len(part.rows) < 6:
            part.rows.insert(random.randint(0, len(part.rows)), a_row(random))
        case 1 if len(part.rows) > 1:
            part.rows.remove(row)
        case 2:
            new = a_cell(random)
            if new.food != row.cells[1 - at].food:
                row.cells[at] = new
        case 3 if row.cells[at].amount:
            row.cells[at].amount = random.choice(AMOUNTS)
        case 4 if row.cells[at].value:
            row.cells[at].value += 10
        case _:
            row.move = random.choice(MOVES)


def spoken_of(result: LessonResult) -> set[tuple[Decimal, str]]:
    """Every number of a lesson with what it is called."""
    return {(one.figure.value, plain(showing_name(one, result, SAY))) for one in named(result)}


def plain(name: str) -> str:
    """A name in which two foods may stand either way round."""
    head, word, foods = re.fullmatch(r"(?:(.*?) (between|for) )?(.+)", name).groups()
    return f"{head} {word} {' and '.join(sorted(foods.split(' and ')))}"


def named(result: LessonResult) -> Iterator:
    return (one for one in showings(result) if one.figure.kind not in {"minutes", "one-move-per"})


PAGE = re.compile(
    r"The video says ([\d,.]+) \((.+)\)\. (?:It is now|Now it is .+, and the number is) ([\d,.]+)\."
)
CAPTION = re.compile(r"Now (?:it is .+: )?([\d,.]+)(?:, not ([\d,.]+))? \((.+)\)")


def number(text: str) -> Decimal:
    return Decimal(text.replace(",", ""))


def told(filmed: LessonResult, today: LessonResult) -> int:
    """Hold every correction against the film and against the lesson of today; gives how many there are."""
    film_says, lesson_says = spoken_of(filmed), spoken_of(today)
    lines = [line for some in corrections(today, SAY).values() for line in some]
    for line in lines:
        found = PAGE.fullmatch(line)
        assert found, line
        assert (number(found[1]), plain(found[2])) in film_says, line
        assert (number(found[3]), plain(found[2])) in lesson_says, line
    for published in corrected_captions(today, SAY, ("en",)).values():
        track = read_vtt(VTT, "en", published)
        assert isinstance(track, CaptionFile), track
        new = [cue.text for cue in track.cues if cue.text.startswith("Now ")]
        assert len(new) == len(lines)
        for cue in new:
            found = CAPTION.fullmatch(cue)
            assert found, cue
            assert plain(found[3]) in {name for _, name in film_says}, cue
            assert (number(found[1]), plain(found[3])) in lesson_says, cue
            assert not found[2] or (number(found[2]), plain(found[3])) in film_says, cue
    return len(lines)


SEEDS = range(80)


def filmed_lesson(folder: Path, seed: int) -> tuple[list[Part], LessonResult, Recorded, Random]:
    random = Random(seed)  # noqa: S311  # nothing secret: the same edits at every run
    parts = a_lesson(random)
    while not distinct(parts):
        parts = a_lesson(random)
    result, recorded = film(folder, parts, random)
    assert recorded.file.figures
    return parts, result, recorded, random


def again(folder: Path, parts: list[Part], recorded: Recorded) -> LessonResult:
    """The lesson of today, beside the record of its film."""
    result = worked(folder, parts)
    return replace(result, lesson=replace(result.lesson, recorded=recorded))


@pytest.mark.parametrize("group", range(4))
def test_order_and_names_change_nothing(tmp_path: Path, group: int) -> None:
    for seed in SEEDS[group::4]:
        parts, _, recorded, random = filmed_lesson(tmp_path, seed)
        for _ in range(random.randint(1, 5)):
            moved(parts, random)
        today = again(tmp_path, parts, recorded)
        assert corrections(today, SAY) == {}, seed
        assert corrected_captions(today, SAY, ("en",)) == {}, seed
        assert [one.what for one in numbers_as_filmed(today)] == [], seed


@pytest.mark.parametrize("group", range(4))
def test_no_correction_speaks_of_another_food_than_the_film(tmp_path: Path, group: int) -> None:
    lines = asked = 0
    for seed in SEEDS[group::4]:
        parts, filmed, recorded, random = filmed_lesson(tmp_path, seed)
        for _ in range(random.randint(1, 6)):
            edited = deepcopy(parts)
            random.choice((moved, changed, changed))(edited, random)
            parts = edited if distinct(edited) else parts
        today = again(tmp_path, parts, recorded)
        here = told(filmed, today)
        questions = list(numbers_as_filmed(today))
        gone = [one for one in questions if "not in the lesson any more" in one.what]
        assert len(questions) == here + len(gone), seed
        lines += here
        asked += len(gone)
    assert lines > 10, "too few corrections to say anything about them"
    assert asked > 10, "too few foods went"
