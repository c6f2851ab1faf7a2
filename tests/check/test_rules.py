"""Each rule is asked: of a lesson that it has something to say of, and of a translation if it is about words."""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

import pytest

import generator.check
from generator.check import RULES, check_lesson, check_words
from generator.check.rule import Rule
from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.film import Film, Sound
from generator.model.food import NOT_LOOKED_AT
from generator.model.lesson import Video
from generator.model.personal import LeftOut, Personal
from generator.model.places import Places
from generator.model.recorded import FilmedFigure, Recorded, RecordedFile
from generator.model.reviewed import Review, Reviewed, ReviewedFile
from generator.model.texts import in_language
from generator.model.translation import Translation
from generator.problems import Place
from tests.caption_lesson import LESSON, Timed, captioned, filed
from tests.project import GOOD, library, worked
from tests.worked import worked as of_stops

Made = Callable[[Path], LessonResult]
"""Makes a lesson in a folder."""


def other(old: str, new: str) -> Made:
    """The lesson with one text changed."""
    assert old in LESSON
    return lambda folder: worked(folder, LESSON.replace(old, new))


def heard(*cues: Timed) -> Made:
    """The lesson with these captions, and a video of 100 seconds."""
    return lambda folder: captioned(folder, *cues)


def translated(folder: Path) -> LessonResult:
    """The lesson beside a translation without a text."""
    result = worked(folder, LESSON)
    empty = Translation("es", {}, {}, Places("lessons/meal/lesson.es.yaml", {}, {}))
    return replace(result, lesson=replace(result.lesson, translations={"es": empty}))


def in_spanish(folder: Path) -> LessonResult:
    """The lesson in Spanish, with an amount that only its own language says."""
    result = other("name: Juice, value: 1020", "name: Juice, amount: 1 carton, value: 1020")(folder)
    beside = Translation("es", {}, {}, Places("lessons/meal/lesson.es.yaml", {}, {}))
    lesson = replace(result.lesson, translations={"es": beside})
    return work_out(in_language(lesson, "es", str, str), library())


def untold_in_spanish(folder: Path) -> LessonResult:
    """A lesson with a translation and a standard that has only English words."""
    result = worked(folder, LESSON.replace("grades: 3-5", "grades: 3-5\nstandards: [3.NBT.A.2]"))
    empty = Translation("es", {}, {}, Places("lessons/meal/lesson.es.yaml", {}, {}))
    known = {"3.NBT.A.2": frozenset({"en"})}
    return replace(
        result, lesson=replace(result.lesson, translations={"es": empty}, standards=known)
    )


def of_another(folder: Path) -> LessonResult:
    """The lesson with the readings of another one beside it."""
    return _reviewed(folder, ReviewedFile(lesson="supper"))


def read_before(folder: Path) -> LessonResult:
    """The lesson as it was read before it had a word or a number of today."""
    reading = '{"by": "cook", "on": "2026-03-14", "languages": ["en"], "numbers": {}, "texts": {}}'
    return _reviewed(
        folder, ReviewedFile(lesson="meal", reviews=(Review.model_validate_json(reading),))
    )


def _reviewed(folder: Path, file: ReviewedFile) -> LessonResult:
    result = worked(folder, LESSON)
    reviewed = Reviewed(file, Places("lessons/meal/reviewed.yaml", {}, {}))
    return replace(result, lesson=replace(result.lesson, reviewed=reviewed))


def filmed(folder: Path) -> LessonResult:
    """The lesson beside a film that says a number it never had."""
    result = worked(folder, LESSON)
    said = FilmedFigure.model_validate_json(
        '{"kind": "holds", "measure": "energy", "foods": [{"food": "cake"}], "value": 1,'
        ' "stop": "breakfast", "from": "1:00", "to": "1:05"}'
    )
    file = RecordedFile(filmed="2026-03-14", figures=(said,))
    recorded = Recorded(file, Places("lessons/meal/recorded.yaml", {}, {}))
    return replace(result, lesson=replace(result.lesson, recorded=recorded))


def spanish_captions(words: str) -> Made:
    """The lesson with captions in a language it has no translation for."""

    def made(folder: Path) -> LessonResult:
        result = worked(folder, LESSON)
        file = filed([(62, 66, words)], "es")
        return replace(result, lesson=replace(result.lesson, captions={"es": file}))

    return made


def with_film(folder: Path) -> LessonResult:
    """The lesson with a film that was exported in the camera's way, and a draft of captions."""
    result = captioned(folder, (1, 4, "Hello."))
    told = LeftOut(("video", "file"), "meal.mp4", frozenset(Personal))
    film = Film(100, 1_000, Sound.PLAYED, old_phones=True, begins_at_once=False, rehearsal=False)
    draft = replace(result.lesson.captions["en"], draft=Place("lessons/meal/meal.en.vtt", 3))
    file = result.lesson.file.model_copy(
        update={"video": Video(file="meal.mp4", smaller="small.mp4")}
    )
    lesson = replace(
        result.lesson,
        file=file,
        films={"file": film, "smaller": replace(film, seconds=80)},
        left_out=(told,),
        captions={"en": draft},
    )
    return replace(result, lesson=lesson)


def not_looked_at(_: Path) -> LessonResult:
    """A lesson with a food whose allergens nobody has looked at."""
    food = library().foods["apple-raw"]
    entry = food.entry.model_copy(update={"allergens": NOT_LOOKED_AT})
    other = replace(library(), foods={**library().foods, food.id: replace(food, entry=entry)})
    row = "[{food: apple-raw, amount: 1 medium}, {food: pear-raw, amount: 1 medium}]"
    stop = f"- compare: {{id: c, measure: energy, sides: [A, B], rows: [{row}]}}\n"
    return of_stops(stop, other)


def one_apple(_: Path) -> LessonResult:
    """A day on which an apple was eaten, and nothing else."""
    return of_stops(
        "- day:\n    person: {name: Ada, age: 34, sex: woman, activity: low active}\n"
        "    ate: [{food: apple-raw, amount: 1 medium}]\n    did: [Read]\n"
    )


ROW = "[{name: Oatmeal, value: 170, source: card}, {name: Plain bagel, value: 260, source: card}]"
SAME = LESSON.replace(
    ROW, "[{food: apple-raw, amount: 1 medium}, {food: apple-raw, amount: 1 medium}]"
)
HARD = "Considerable international deliberation necessitates extraordinary organisational collaboration."
LONG = "Considerable deliberation is necessary before everybody remembers both preparations."
CASES: Mapping[str, tuple[Made, str]] = {
    "answers_can_be_said": (
        other("grades: 3-5", "grades: 3-5\nparting: {prompt: So?, answer: total.gp}"),
        "`total.gp` is no number of the lesson",
    ),
    "counts_within_caps": (other("one_move_per: 10", "one_move_per: 1"), "its cap for grades"),
    "counts_of_a_stop_within_its_cap": (
        lambda folder: worked(
            folder, GOOD.replace("3-5", "K-2").replace("value: 110", "value: 320")
        ),
        "counts together, and the most at one stop is 30",
    ),
    "something_to_move": (other("per: 10", "per: 999"), "leaves nothing to move: its gap of"),
    "foods_differ": (
        lambda folder: worked(folder, SAME),
        "both sides of row 1 hold the same food",
    ),
    "something_changed": (
        lambda _: of_stops(
            "- compare: {id: c, measure: energy, sides: [A, B], rows: "
            "[[{food: apple-raw, amount: 1 medium}, {food: pear-raw, amount: 1 medium}]]}\n"
            "- what_if:\n    for: c\n    changes:\n"
            "      - {change: apple-raw, to: {food: apple-raw, amount: 1 medium}}\n"
            "      - {change: pear-raw, leave_out: true}\n"
        ),
        "change 1 puts the same food there in the same amount",
    ),
    "days_are_whole": (
        one_apple,
        "the day of Ada gave 90 kcal, less than half of the 2,110 it took",
    ),
    "standards_known": (
        other("grades: 3-5", "grades: 3-5\nstandards: [3.NBT.A2]"),
        "the site's list has no standard `3.NBT.A2`",
    ),
    "standards_translated": (
        untold_in_spanish,
        "the standard `3.NBT.A.2` has no words in es",
    ),
    "numbers_fit_the_grades": (
        other("grades: 3-5", "grades: 2-3"),
        "subtracting beyond 1,000 (grade 4, 4.NBT.B.4), and the lesson's grades end at 3",
    ),
    "plausible_values": (
        other("name: Juice, value: 1020", "name: Juice, amount: 10 g, value: 1020"),
        "10 g cannot hold 1020 kcal",
    ),
    "amounts_said": (in_spanish, "“1 carton” cannot be said in es"),
    "foods_looked_at": (not_looked_at, "nobody has looked at `apple-raw` yet: its allergens"),
    "words_against_numbers": (
        other("We will see.", "The bagel holds twice as much."),
        "does not hold",
    ),
    "captions_against_numbers": (spanish_captions("La avena tiene el triple."), "does not hold"),
    "kind_words": (other("Find the gap.", "Burn it off."), "makes food a matter of guilt"),
    "kind_captions": (spanish_captions("Vamos a quemar calorías."), "a matter of guilt"),
    "safe_links": (
        other("We will see.", '"Look [here](javascript:alert)."'),
        "the link `javascript:alert` is not made",
    ),
    "nothing_cut_off": (
        other("We will see.", "We will see what #1 holds."),
        "the text ends before `#1 holds.`",
    ),
    "no_curly_quotes": (other("We will see.", "“We will see.”"), "are shown on the page"),
    "easy_to_read": (other("We will see.", HARD), "the learner's texts read like grade"),
    "sentences_easy_to_read": (other("We will see.", LONG), "” reads like grade"),
    "translations_complete": (translated, "`title` is missing in lesson.es.yaml"),
    "numbers_as_filmed": (filmed, "is not in the lesson any more"),
    "readings_of_this_lesson": (of_another, "these readings are of the lesson `supper`"),
    "read_as_it_stands": (read_before, "nothing of it holds any more"),
    "film_as_exported": (with_film, "has its index at its end"),
    "films_of_one_length": (with_film, "is 20 seconds longer or shorter than the film"),
    "personal_left_out": (with_film, "also tells where it was made and somebody's name"),
    "captions_read": (with_film, "a draft that nobody has read"),
    "overlap": (heard((1, 4, "One"), (2, 5, "two")), "another one stands until"),
    "shape": (heard((1, 4, "a" * 40)), "this line has 40 letters"),
    "standing": (heard((1, 1.5, "One")), "too short to see it"),
    "speed": (heard((1, 3, "one two three four five\nsix seven eight nine")), "words a minute"),
    "over_pause": (heard((28, 32, "Which side?")), "runs over the pause at 0:30"),
    "silence": (heard((1, 4, "Hello.")), "there is no caption from"),
    "beyond_end": (heard((99, 103, "Bye.")), "the video lasts 1:40"),
    "foods_misspelled": (heard((31, 35, "The carot salad")), "nearly a food of this lesson"),
    "unlike_script": (
        heard((31, 35, "My oatmeal holds 170."), (35, 39, "The bagel holds 260.")),
        "the script calls row 1 at this stop",
    ),
    "spoken_numbers": (other("My oatmeal holds 170.", "My oatmeal holds 175."), "“175” is said of"),
    "untranslated_numbers": (
        spanish_captions("La avena tiene 175 kcal."),
        "“175” is no number of the lesson",
    ),
    "braces_known": (
        other("We will see.", "'All of it: {total.gap}.'"),
        "`{total.gap}` names no number of the lesson",
    ),
}
"""By rule: a lesson, and a part of what the rule says of it."""
OF_WORDS = {
    "amounts_said",
    "words_against_numbers",
    "kind_words",
    "easy_to_read",
    "sentences_easy_to_read",
    "safe_links",
    "foods_misspelled",
    "unlike_script",
    "spoken_numbers",
    "braces_known",
    "read_as_it_stands",
}


def test_every_rule_of_the_room_is_in_the_list_and_has_a_case_here() -> None:
    modules = [
        importlib.import_module(found.name)
        for found in pkgutil.walk_packages(generator.check.__path__, "generator.check.")
    ]
    written = {
        one.name for module in modules for one in vars(module).values() if isinstance(one, Rule)
    }
    assert [rule.name for rule in RULES] == list(CASES)
    assert written == set(CASES)


@pytest.mark.parametrize("name", CASES)
def test_it_is_asked_of_a_lesson(tmp_path: Path, name: str) -> None:
    made, told = CASES[name]
    assert [one.what for one in check_lesson(made(tmp_path)) if told in one.what]


@pytest.mark.parametrize("name", CASES)
def test_it_is_asked_of_a_translation_where_it_is_about_words(tmp_path: Path, name: str) -> None:
    made, told = CASES[name]
    found = [one.what for one in check_words(made(tmp_path)) if told in one.what]
    assert bool(found) == (name in OF_WORDS)
