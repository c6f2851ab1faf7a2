"""Every picture of the guide, in the order in which it shows them."""

from __future__ import annotations

from bench.picturing.picture import Picture
from bench.picturing.states import (
    answer_shown,
    asked_for_another,
    at,
    counts_shown,
    ended,
    gap_found,
    kept,
    named,
    pacer_open,
    problem_solved,
    who_open,
)

_WALK = "river-walk/index.html"
_PACK = "river-walk/recording"

_LESSON = (
    Picture(
        "front",
        "The front page",
        "The village on top, then the lessons, each with its gaps as plums",
        "index.html",
    ),
    Picture(
        "lesson",
        "A lesson at its top",
        "The title, what an adult should know, and the film at the first knot of the thread",
        _WALK,
    ),
    Picture(
        "who",
        "Who is here",
        "Things of Larkmead in a row above the title: whoever shares a device picks one, and no name",
        _WALK,
        who_open,
    ),
    Picture(
        "watch",
        "A stop to watch",
        "What to look for in this part of the film, and a button to go on",
        _WALK,
        at(".stop-watch"),
    ),
    Picture(
        "ask",
        "A stop with a question",
        "A question, answers to choose from, a hint and an answer to open",
        _WALK,
        at(".stop-ask"),
    ),
    Picture(
        "compare",
        "A stop to compare",
        "One gap found and folded to a line, the second not yet right, its blocks and entries below",
        _WALK,
        gap_found,
    ),
    Picture(
        "move",
        "A stop to move",
        "Cards of moves with their counts, each with figures in two poses",
        _WALK,
        counts_shown,
    ),
    Picture(
        "pacer",
        "The pacer",
        "The count as a large number, a plumb bob above it, and a button to start",
        _WALK,
        pacer_open,
    ),
    Picture(
        "what-if",
        "A stop that asks what if",
        "A food to change, a guess, and what becomes of the gap",
        "bean-stew/index.html",
        at(".stop-what_if"),
    ),
    Picture(
        "day",
        "A stop about a day",
        "What two days of an adult gave and took, and a question which way each leans",
        "two-days/index.html",
        at(".stop-day"),
    ),
    Picture(
        "talk",
        "A stop to talk",
        "A question for everybody in the room, with ideas to begin from",
        _WALK,
        at(".stop-talk"),
    ),
    Picture(
        "ending",
        "The ending",
        "All gaps hang as plums from one line with their numbers",
        _WALK,
        ended,
    ),
    Picture(
        "spanish",
        "In Spanish",
        "The same comparison in Spanish, one gap found",
        f"es/{_WALK}",
        gap_found,
    ),
    Picture(
        "transcript",
        "What is said in the film",
        "The words of the film, parted by its stops",
        "river-walk/transcript.html",
    ),
)
_ELSEWHERE = (
    Picture(
        "not-found", "An address that leads nowhere", "What to do, and all lessons", "404.html"
    ),
    Picture(
        "not-kept",
        "Without internet",
        "A page that is not kept on the device says so, and leads to the lessons that are",
        _WALK,
        kept,
        asked_for_another,
    ),
)
_PAPER = (
    Picture(
        "practice",
        "Practice",
        "Problems in a grid, one solved and one not yet",
        "river-walk/practice.html",
        problem_solved,
    ),
    Picture(
        "worksheet",
        "The worksheet",
        "A sheet of paper on the screen, its gaps as plums and a code to scan in its head",
        "river-walk/worksheet.html",
    ),
    Picture(
        "answers",
        "The answer key",
        "The sheet with its numbers worked out",
        "river-walk/answers.html",
    ),
    Picture(
        "cards",
        "Movement cards",
        "What an adult should know, and four cards to cut out",
        "river-walk/cards.html",
    ),
)
_ADULTS = (
    Picture(
        "notes",
        "Teaching notes",
        "What a teacher needs, with a list of the parts to open",
        "river-walk/notes.html",
    ),
    Picture(
        "projector",
        "For a projector",
        "One row of a comparison on a screen of its own, in large letters, with its working shown",
        "river-walk/projector.html",
        answer_shown,
    ),
    Picture(
        "embed",
        "A stop on a class site",
        "One stop alone, as a page of another site shows it, and the way to the whole lesson",
        "embed/river-walk/stop.html",
        named("guess"),
    ),
    Picture(
        "teachers",
        "For teachers",
        "What a lesson is, and a table to choose one from",
        "teachers.html",
    ),
    Picture(
        "sources",
        "Sources and method",
        "Where every number comes from and how it is rounded",
        "sources.html",
    ),
    Picture(
        "care",
        "Care and privacy",
        "What to mind when moving and eating, and what stays on the device",
        "care.html",
    ),
)
_TABLE = Picture(
    "lessons",
    "Lessons at a glance",
    "Every lesson with its minutes, grades, arithmetic, moves, allergens and captions, to choose by or to print",
    "lessons.html",
)
_CODES = Picture(
    "codes", "Finish codes", "A box for the codes of a class, and what they will say", "codes.html"
)
_SHEETS = Picture(
    "sheets",
    "Sheets and their stamps",
    "The stamp of each sheet of a lesson, and of those printed before",
    "river-walk/sheets.html",
)
_EDUCATOR = (
    Picture(
        "recording-pack",
        "Recording pack",
        "What to film, and the cue sheet with its running time",
        f"{_PACK}/index.html",
        preview=True,
    ),
    Picture(
        "numbers",
        "Numbers to say",
        "Each number of the film in its order, as it is shown and as it is said, with a box to tick",
        "garden-baskets/recording/numbers.html",
        preview=True,
    ),
    Picture(
        "script",
        "The script to read",
        "The script in large letters, with its pace",
        f"{_PACK}/script.html",
        preview=True,
    ),
    Picture(
        "slides",
        "Slides to film",
        "Slides, one below the other",
        f"{_PACK}/slides.html",
        preview=True,
    ),
    Picture(
        "components",
        "Components",
        "Parts of pages in all their states, each beside its file",
        "components/index.html",
        preview=True,
    ),
    Picture(
        "guide",
        "This guide",
        "The first page of the guide, which says that only the preview has it",
        "guide/index.html",
        preview=True,
    ),
)
GROUPS: tuple[tuple[str, tuple[Picture, ...]], ...] = (
    ("A lesson", _LESSON),
    ("Practice and paper", _PAPER),
    ("Where there is no page", _ELSEWHERE),
    ("For adults", (*_ADULTS, _TABLE, _CODES, _SHEETS)),
    ("For educators, in the preview", _EDUCATOR),
)
"""What a group is called, and its pictures."""
PICTURES = tuple(picture for _, group in GROUPS for picture in group)
