"""A sheet's stamp changes with what that sheet prints, and with nothing else."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

import pytest

from generator.making import Surroundings, in_languages
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.words import Words
from generator.present.printed import printed
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from generator.steps.surroundings import surroundings
from tests.project import GOOD, ROOT, library, put, worked

PAPER = frozenset({"worksheet", "answers", "cards", "practice", "notes", "family"})
PAGES = frozenset({"lesson", "projector"})
"""That can be printed, and bear no address."""
EVERY = PAPER | PAGES


@pytest.fixture(scope="module")
def around() -> Surroundings:
    return surroundings(ROOT, library())


Stamps = Callable[..., Mapping[str, str]]


@pytest.fixture
def stamps(around: Surroundings, tmp_path: Path) -> Stamps:
    """`stamps(text, library, around)` gives those of a lesson, by sheet."""

    def made(
        text: str = GOOD, known: Library | None = None, beside: Surroundings | None = None
    ) -> Mapping[str, str]:
        known = known or library()
        lesson = read_lesson(tmp_path, put(tmp_path, text), known)
        assert isinstance(lesson, Lesson), lesson
        result = worked_out(lesson, known)
        (one,) = in_languages({"en": result}, beside or around)
        return one.told.stamps

    return made


def changed(before: Mapping[str, str], after: Mapping[str, str]) -> set[str]:
    assert before.keys() == after.keys() == EVERY
    return {sheet for sheet, stamp in after.items() if stamp != before[sheet]}


@pytest.mark.parametrize(
    ("what", "instead", "sheets"),
    [
        ("grades: 3-5\n", "grades: 3-5 # for Ms. Rowan's class\n", set()),
        ("say: Hello from Larkmead.", "say: Good morning from Larkmead.", set()),
        # The plan in the notes is the one sheet that prints when the film halts.
        ('at: "0:40"', 'at: "0:41"', {"notes"}),
        ("summary: Find the gap.", "summary: Find both gaps.", {"notes", "lesson"}),
        (
            "prompt: What do you like?",
            "prompt: What would you like?",
            {"worksheet", "answers", "notes", "family", *PAGES},
        ),
        ("Something warm", "Something cold", {"answers", "notes", *PAGES}),
        ("reveal: We will see.", "reveal: Let us see.", {"answers", "notes", *PAGES}),
    ],
)
def test_a_line_of_the_lesson_changes_the_sheets_that_print_it(
    what: str, instead: str, sheets: set[str], stamps: Stamps
) -> None:
    assert what in GOOD
    assert changed(stamps(), stamps(GOOD.replace(what, instead))) == sheets


def test_a_renamed_food_changes_the_sheets_that_name_it(stamps: Stamps) -> None:
    food = library().foods["bagel-plain"]
    entry = food.entry.model_copy(update={"names": {**food.entry.names, "en": "Seeded bagel"}})
    renamed = {**library().foods, food.id: replace(food, entry=entry)}
    after = stamps(GOOD, replace(library(), foods=renamed))
    assert changed(stamps(), after) == EVERY - {"cards", "practice"}


@pytest.mark.parametrize("key", ["steps", "care", "seated"])
def test_what_a_move_says_changes_the_sheets_that_print_it(stamps: Stamps, key: str) -> None:
    move = library().moves["march"]
    words = move.texts["en"]
    was = getattr(words, key)
    now = ("Stand beside a wall.", *was[1:]) if key == "steps" else f"{was} Take your time."
    texts = {**move.texts, "en": words.model_copy(update={key: now})}
    moves = {**library().moves, "march": move.model_copy(update={"texts": texts})}
    after = stamps(GOOD, replace(library(), moves=moves))
    assert changed(stamps(), after) == {"cards", *PAGES}


def test_a_number_changes_the_sheets_that_print_it(stamps: Stamps) -> None:
    after = stamps(GOOD.replace("value: 110", "value: 120"))
    assert changed(stamps(), after) == EVERY - {"practice"}  # which has numbers of its own


def test_the_address_changes_every_sheet_of_paper(around: Surroundings, stamps: Stamps) -> None:
    site = around.site.model_copy(update={"address": "https://lessons.mill.example/"})
    assert changed(stamps(), stamps(beside=replace(around, site=site))) == PAPER


@pytest.mark.parametrize(
    ("key", "sheets"),
    [
        ("paper_play", {"worksheet", "answers"}),
        ("paper_how_much_more", {"worksheet"}),
        ("card_team", {"cards"}),
        ("paper_adults_health", {"cards"}),  # on the last sheet of its file
        ("notes_adapt", {"notes"}),
        ("family_talk", {"family"}),
        ("practice_same", {"practice"}),
        ("care_numbers", {"family", "lesson"}),
        ("gap_is", PAGES),
        ("still_right", PAPER),
        # What only a screen shows.
        ("paper_print", set()),
        ("link_says", set()),
        ("all_lessons", set()),
        ("check", set()),
    ],
)
def test_a_word_of_the_site_changes_the_sheets_that_print_it(
    key: str, sheets: set[str], around: Surroundings, stamps: Stamps
) -> None:
    texts = library().words["en"].texts
    other = Words("en", {**texts, key: f"{texts[key]}!"})
    beside = replace(around, says={**around.says, "en": Say(other)})
    assert changed(stamps(), stamps(beside=beside)) == sheets


def test_each_sheet_and_each_language_has_its_own(around: Surroundings, tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD)
    made = in_languages({"en": result, "es": result}, around)
    both = [stamp for lesson in made for stamp in lesson.told.stamps.values()]
    assert len(set(both)) == len(both) == 2 * len(EVERY)


def test_the_copy_to_take_home_bears_the_stamps_of_the_site(
    around: Surroundings, tmp_path: Path
) -> None:
    (lesson,) = in_languages({"en": worked(tmp_path, GOOD)}, around)
    there = {one.path: one.content for one in lesson.on_site(None)}
    for one in lesson.in_copy(lambda _: b""):
        sheet = one.path.rpartition("/")[2].removesuffix(".html").replace("index", "lesson")
        stamp = lesson.told.stamps[sheet].encode()
        assert stamp in one.content
        assert stamp in there[one.path]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ('<p class="a">Half a cup</p>', '<div id="b"  style="x">Half a cup</div>'),
        ("<p>Half a <b>cup</b>.</p>", "<p>Half a cup.</p>"),
        ('<svg class="a"><path d="M0 0"/></svg>', '<svg><path class="b" d="M0 0"/></svg>'),
        ("<p>Cup</p><button>Check</button>", "<p>Cup</p>"),
        ('<p>Cup</p><p class="x" hidden>Wait</p>', "<p>Cup</p>"),
    ],
)
def test_what_styles_a_sheet_is_not_printed(one: str, other: str) -> None:
    assert printed(one) == printed(other)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ('<svg><path d="M0 0"/></svg>', '<svg><path d="M0 1"/></svg>'),
        ("<td>12</td><td>3</td>", "<td>1</td><td>23</td>"),
        ("<p>ice cream</p>", "<p>icecream</p>"),
    ],
)
def test_what_a_sheet_shows_is_printed(one: str, other: str) -> None:
    assert printed(one) != printed(other)
