"""Each mistake in a lesson gives one sentence, at its line and column, with a way out."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.compute.work_out import work_out
from generator.model.ids import PAGE_IDS
from generator.model.lesson import Lesson
from generator.model.measure import Measure
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from tests.project import GOOD, ROOT, library, problems, put, read, site

EXAMPLES = Path(__file__).parents[1] / "examples"

MISTAKES = [
    ("a key misspelled", "summary:", "sumary:", "2:1", "`sumary` is not a key", "did you mean `summary`?"),
    ("stops misspelled", "stops:", "stop:", "6:1", "`stop` is not a key", "did you mean `stops`?"),
    ("a key of a type's name", "stops:", "none: 3\nstops:", "6:1", "`none` is not a key", "it can be"),
    ("a key with brackets", "stops:", '"a[b](c)": 3\nstops:', "6:1", "`a[b](c)` is not a key", "it can be"),
    ("a key misspelled in a stop", "hint: Look", "hnt: Look", "13:7", "`hnt` is not a key", "did you mean `hint`?"),
    ("a key misspelled in an item", "amount: 150 g", "amout: 150 g", "22:30", "`amout` is not a key", "did you mean `amount`?"),
    ("a key missing", "grades: 3-5\n", "", "1:1", "`grades:` is missing", "add `grades:`"),
    ("a title left empty", "title: Two breakfasts", "title:", "1:7", "`title` is empty", "write it"),
    ("a title of spaces", "title: Two breakfasts", 'title: "  "', "1:8", "`title` is empty", "write"),
    ("minutes in words", "minutes: 10", "minutes: ten", "4:10", "whole number, not `ten`", "digits"),
    ("minutes with a zero before", "minutes: 10", "minutes: 012", "4:10", "whole number, not `012`", "digits"),
    ("minutes below one", "minutes: 10", "minutes: 0", "4:10", "too small", "more than 0"),
    ("minutes left empty", "minutes: 10", "minutes:", "4:9", "`minutes` is empty", "write it"),
    ("a grade nobody is in", "grades: 3-5", "grades: 9", "3:9", "no higher than 8", ""),
    ("grades backwards", "grades: 3-5", "grades: 5-3", "3:9", "from a lower to a higher", "3-5"),
    ("grades in words", "grades: 3-5", "grades: third", "3:9", "not a grade", "K-2, 3-5 or 4"),
    ("a time without quotes", 'at: "0:40"', "at: 0:40", "17:11", "0:40 has no quotes", '"0:40"'),
    ("a time that is none", 'at: "0:40"', 'at: "0:75"', "17:11", "`at` is not a time", '"1:10"'),
    ("watching backwards", 'to: "0:20"', 'to: "0:00"', "7:31", "before it begins", "swap"),
    ("a time with a point", 'at: "0:40"', "at: 0.45", "17:11", "`at` is not a time", '"0:45"'),
    ("a time in curly quotes", 'at: "0:40"', "at: “0:40”", "17:11", "`at` is not a time", '"0:40"'),
    ("grades with a dash", "grades: 3-5", "grades: 3–5", "3:9", "not a grade", "plain hyphen"),
    ("minutes with their unit", "minutes: 10", "minutes: 10 min", "4:10", "not `10 min`", "digits only"),
    ("stops out of order", 'at: "0:40"', 'at: "0:10"', "17:11", "0:10 comes before the stop above it, at 0:20", "order"),
    ("a kind misspelled", "- talk:", "- talkk:", "29:5", "`talkk` begins no kind", "did you mean `talk`?"),
    ("a stop of two kinds", "    say: Hello from Larkmead.", "    talk: {prompt: a}", "8:5", "both `watch` and `talk`", "put `- `"),
    ("a stop of nothing", "  - talk:", "  -\n  - talk:", "29:4", "nothing in this stop", "begin each stop"),
    ("a stop of words", "  - talk:", "  - talk it over\n  - talk:", "29:5", "must begin with its kind", "begin each stop"),
    ("a kind without keys", "- talk:\n      prompt: What do you like?\n      ideas: [Something warm]", "- talk: What do you like?", "29:11", "`talk:` holds no keys", "indent"),
    ("beside and inside", "    say: Hello from Larkmead.", '    from: "0:01"', "8:5", "`from` is written beside `watch:` and inside it", "keep one"),
    ("an id given twice", "- talk:", "- talk:\n      id: guess", "30:11", "taken by the stop on line 10", "another id"),
    ("an id given twice, beside", "- talk:", "- id: guess\n    talk:", "29:9", "taken by the stop on line 10", "another id"),
    ("the id made of a move stop", "- talk:", "- talk:\n      id: move-breakfast", "24:5", "this stop and the one on line 29 would both be called `move-breakfast`", "an `id:`"),
    ("two stops that ask the same", "  - talk:\n", "  - talk: {prompt: What do you like?}\n  - talk:\n", "30:5", "this stop and the one on line 29 would both be called `what-do-you-like`", "an `id:`"),
    ("two rows of the same foods", "- [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]", "- [{name: Juice, value: 90, source: carton}, {food: apple-raw, amount: 150 g}]", "22:11", "rows 1 and 2 hold the same foods in the same amounts", "id: again"),
    ("a row's id given twice", "- [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]\n        - [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- {id: a, foods: [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]}\n        - {id: a, foods: [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]}", "22:16", "the id `a` is taken by row 1", "another id"),
    ("a row named like all rows", "- [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- {id: total, foods: [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]}", "22:16", "all rows together", "another id"),
    ("a row with an id and one food", "- [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- {id: a, foods: [{food: apple-raw, amount: 150 g}]}", "22:26", "row 2 has too few entries", "a row holds two foods"),
    ("a food misspelled in a row with an id", "- [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- {id: a, foods: [{food: aple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]}", "22:34", "no food `aple-raw`", "did you mean `apple-raw`?"),
    ("a row of words", "- [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- apple and juice", "22:11", "must be made of keys and values", "a row holds two foods"),
    ("a row's key misspelled", "- [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]", "- {id: a, food: [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]}", "22:19", "`food` is not a key", "did you mean `foods`?"),
    ("both sides of one name", "[At home, On the way]", "[At home, At home]", "19:14", "both sides have the same name", "sides: [Home lunch, Kiosk lunch]"),
    ("an id of the page", "- talk:", "- talk:\n      id: tens", "30:11", "the page uses the id `tens`", "another id"),
    ("an id with spaces", "id: guess", "id: My guess", "10:11", "`id` cannot be `My guess`", "small letters"),
    ("a measure misspelled", "measure: energy", "measure: enrgy", "18:16", "cannot be `enrgy`", "did you mean `energy`?"),
    ("a food misspelled", "food: apple-raw", "food: aple-raw", "22:19", "no food `aple-raw`", "did you mean `apple-raw`?"),
    ("a food by its name", "food: bagel-plain", "food: Plain bagel", "21:58", "no food `Plain bagel`", "did you mean `bagel-plain`?"),
    ("a food by its Spanish name", "food: bagel-plain", "food: Bagel sencillo", "21:58", "no food `Bagel sencillo`", "did you mean `bagel-plain`?"),
    ("a food nobody knows", "food: bagel-plain", "food: xyzzy", "21:58", "no food `xyzzy`", "foods find WORD"),
    ("a portion the food lacks", "amount: 150 g", "amount: 1 slice", "22:38", "no portion of `apple-raw`", "`1 medium`"),
    ("an amount without unit", "amount: 150 g", "amount: 150", "22:38", "must be words, not `150`", "what is counted"),
    ("an amount nobody eats", "amount: 150 g", "amount: 999999 g", "22:38", "more than 20000 kcal", "somebody can eat"),
    ("a key of no letters", "value: 110", "'': 110", "22:60", "`` is not a key", "it can be"),
    ("one side missing", ", {food: bagel-plain, amount: 1 bagel}]", "]", "21:11", "too few entries", "a row holds two foods"),
    ("three foods in a row", "1 bagel}]", "1 bagel}, {food: apple-raw, amount: 1 medium}]", "21:11", "too many entries", "a row holds two foods"),
    ("one side named", "[At home, On the way]", "[At home]", "19:14", "too few entries", "name two sides"),
    ("three sides named", "[At home, On the way]", "[A, B, C]", "19:14", "too many entries", "name two sides"),
    ("a value without source", ", source: carton", "", "22:46", "a value without a source", "add `source:`"),
    ("a value below nothing", "value: 110", "value: -1", "22:67", "`-1`, which is too small", "at least 0"),
    ("a value that is no number", "value: 110", "value: nan", "22:67", "a number, not `nan`", "digits"),
    ("a value without end", "value: 110", "value: .inf", "22:67", "a number, not `.inf`", "digits"),
    ("a value past all", "value: 110", "value: 1e400", "22:67", "too large", "at most 20000"),
    ("a value finer than a tenth", "value: 110", "value: 1.25", "22:67", "finer than can be shown", "1 decimal"),
    ("a value of no size", "value: 110", "value: 1e-999999999", "22:67", "finer than can be shown", "1 decimal"),
    ("a value of thousands of digits", "value: 110", "value: " + "9" * 6000, "22:67", "too large", "at most 20000"),
    ("a day that is none", "source: carton", "source: carton, read_on: 1.2.2026", "22:97", "cannot be `1.2.2026`", "2026-03-14"),
    ("a food without record or value", "name: Juice, value: 110, source: carton", "name: Juice", "22:46", "needs `food:`", ""),
    ("moves of a compare stop that is not there", "for: breakfast", "for: breakfst", "26:12", "no compare stop has the id `breakfst`", "did you mean `breakfast`?"),
    ("one move too few", "[march, side-step]", "[march]", "28:14", "1 move for 2 rows of `breakfast`", "one move for each row"),
    ("one move too many", "[march, side-step]", "[march, side-step, march]", "28:14", "3 moves for 2 rows", "one move for each row"),
    ("a move misspelled", "[march,", "[marhc,", "28:15", "no move `marhc`", "did you mean `march`?"),
    ("a move by its name", "[march,", "[March in place,", "28:15", "no move `March in place`", "did you mean `march`?"),
    ("a move by its Spanish name", "[march,", "[Marcha en el lugar,", "28:15", "no move", "did you mean `march`?"),
    ("a step of nothing", "one_move_per: 10", "one_move_per: 0", "27:21", "too small", "more than 0"),
    ("a step of no size", "one_move_per: 10", "one_move_per: 1e-30", "27:21", "finer than can be shown", "1 decimal"),
    ("a script without its bar", "say: Hello from Larkmead.", "say: {Hello: from Larkmead}", "8:10", "not `Hello: …`", "`say: |`"),
    ("ideas that are no list", "ideas: [Something warm]", "ideas: Something warm", "31:14", "must be a list", "after `- `"),
    ("an answer that is typed", "minutes: 10\n", "minutes: 10\nparting: {prompt: How much?, answer: 440, reveal: So.}\n", "5:38", "`answer` must be words, not `440`", "an answer is not typed"),
    ("an idea that is no text", "[Something warm]", "[{a: b}]", "31:15", "must be words", "quotes"),
    ("a video that is not there", "stops:", "video: {file: a.mp4}\nstops:", "6:15", "no file `a.mp4`", "folder `meal`"),
    ("a video outside", "stops:", "video: {file: ../a.mp4}\nstops:", "6:15", "outside the lesson's folder", "its name alone"),
    ("a video by its whole path", "stops:", "video: {file: /a.mp4}\nstops:", "6:15", "outside the lesson's folder", "its name alone"),
    ("a video in a folder of its own", "stops:", "video: {file: films/a.mp4}\nstops:", "6:15", "or deeper inside it", "its name alone"),
    ("a name that is cut in an address", "stops:", "video: {file: 'film #1.mp4'}\nstops:", "6:15", "holds `#`", "letters, digits and hyphens"),
    ("a page of no site", "stops:", 'video: {elsewhere: "https://[/a"}\nstops:', "6:20", "names no site", "https://"),
    ("a page of a site without a name", "stops:", 'video: {elsewhere: "https://@:80/a"}\nstops:', "6:20", "names no site", "https://"),
    ("a name no disk holds", "stops:", f"video: {{file: {'a' * 5000}.mp4}}\nstops:", "6:15", "beside the lesson", "folder `meal`"),
    ("a name with a NUL", "stops:", 'video: {file: "a\\0.mp4"}\nstops:', "6:15", "a sign that not every machine takes", "name the file"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("old", "new", "at", "what", "hint"), [pytest.param(*case[1:], id=case[0]) for case in MISTAKES]
)
def test_one_mistake_one_sentence(
    tmp_path: Path, old: str, new: str, at: str, what: str, hint: str
) -> None:
    assert old in GOOD
    found = problems(tmp_path, GOOD.replace(old, new, 1))
    assert len(found) == 1, list(map(str, found))
    assert str(found[0].place) == f"lessons/meal/lesson.yaml:{at}", str(found[0])
    assert what in found[0].what
    assert hint in found[0].hint
    assert len(str(found[0])) < 700


def test_a_compare_stop_without_id_leaves_its_move_stop_alone_too(tmp_path: Path) -> None:
    found = problems(tmp_path, GOOD.replace("      id: breakfast\n", ""))
    assert [str(problem.place).split(":", 1)[1] for problem in found] == ["16:7", "25:12"]
    assert "`id:` is missing" in found[0].what
    assert "compare` stop with this id" in found[1].hint


def test_nothing_is_wrong_with_the_good_lesson(tmp_path: Path) -> None:
    assert isinstance(read(tmp_path, GOOD), Lesson)


def test_no_stays_a_word(tmp_path: Path) -> None:
    lesson = read(tmp_path, GOOD.replace("title: Two breakfasts", "title: no"))
    assert isinstance(lesson, Lesson)
    assert lesson.file.title == "no"


@pytest.mark.parametrize("ends", ["\r\n", "\n"])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_line_ends_and_byte_order_mark_change_nothing(
    tmp_path: Path, ends: str, mark: bytes
) -> None:
    assert isinstance(read(tmp_path, mark + GOOD.replace("\n", ends).encode()), Lesson)


def test_a_record_without_the_value_is_no_zero(tmp_path: Path) -> None:
    """USDA SR Legacy gives no sugars for cooked amaranth (170683)."""
    text = GOOD.replace("energy", "sugars").replace("oatmeal-cooked", "amaranth-cooked")
    found = problems(tmp_path, text)
    assert [str(problem.place).split(":", 1)[1] for problem in found] == ["21:19"]
    assert "has no value for sugars" in found[0].what
    assert "no value is not zero" in found[0].hint


def older_foods(root: Path) -> Path:
    """A site whose foods were written before calcium came."""
    file = site(root) / "site_data/foods.yaml"
    text = re.sub(r", calcium: .*?(?=})", "", file.read_text("utf-8"))
    assert "calcium:" not in text
    file.write_text(text, "utf-8")
    return root


def test_an_older_food_file_is_still_right(tmp_path: Path) -> None:
    older = read_library(older_foods(tmp_path))
    assert older.foods["apple-raw"].value(Measure.CALCIUM) is None
    assert isinstance(read_lesson(tmp_path, put(tmp_path, GOOD), older), Lesson)


def test_a_figure_that_is_not_in_the_file_yet_is_no_zero_and_tells_its_way_in(
    tmp_path: Path,
) -> None:
    older = read_library(older_foods(tmp_path))
    found = read_lesson(tmp_path, put(tmp_path, GOOD.replace("energy", "calcium")), older)
    assert isinstance(found, list)
    assert [problem.what for problem in found] == [
        f"the entry of `{name}` in site_data/foods.yaml does not say its calcium"
        for name in ("oatmeal-cooked", "bagel-plain", "apple-raw")
    ]
    assert "python3 generator foods refresh" in found[0].hint
    assert "`calcium:` from its record 173905" in found[0].hint


def test_a_blank_is_refused_only_by_the_lesson_that_uses_it(tmp_path: Path) -> None:
    """USDA SR Legacy gives no vitamin C for cooked amaranth (170683), and 47 mg of calcium."""
    text = GOOD.replace("oatmeal-cooked", "amaranth-cooked")
    assert isinstance(read(tmp_path, text.replace("energy", "calcium")), Lesson)
    (found,) = problems(tmp_path, text.replace("energy", "vitamin_c"))
    assert found.what == "the record of `amaranth-cooked` has no value for vitamin_c"


BESIDE = GOOD.replace(
    "  - compare:\n      id: breakfast\n      at", "  - id: breakfast\n    compare:\n      at"
)


def test_keys_beside_a_kind_count_as_inside(tmp_path: Path) -> None:
    lesson = read(tmp_path, BESIDE)
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    inside = read(tmp_path, GOOD)
    assert isinstance(inside, Lesson)
    assert lesson.file == inside.file


def test_names_beside_a_kind_are_looked_up(tmp_path: Path) -> None:
    text = GOOD.replace("      moves: [march,", "    moves: [marhc,")
    assert [str(problem.place).split(":", 1)[1] for problem in problems(tmp_path, text)] == [
        "28:13"
    ]


@pytest.mark.parametrize(
    ("name", "way_out"),
    [
        *(
            (name, "single hyphens")
            for name in ("My Lesson", "soup_night", "-soup", "SOUP", "söup")
        ),
        *((name, "another name") for name in ("assets", "embed", "es")),
    ],
)
def test_a_folder_that_makes_no_address(tmp_path: Path, name: str, way_out: str) -> None:
    found = problems(tmp_path, GOOD, name)
    assert len(found) == 1
    assert "the folder" in found[0].what
    assert way_out in found[0].hint


def test_ids_of_the_theme_are_kept_free() -> None:
    """An id that a template or a script gives a lesson page would clash with a stop of the same id."""
    given = {
        file: set(re.findall(r'\bid ?= ?"([a-z][a-z0-9-]*)"', file.read_text(encoding="utf-8")))
        for file in (ROOT / "theme").rglob("*")
        if file.suffix in {".html", ".js"} and "vendor" not in file.parts
    }
    on_lessons = {
        name
        for file, names in given.items()
        for name in names
        if {"js", "parts", "stops"} & {*file.parts} or file.name in {"base.html", "lesson.html"}
    }
    assert on_lessons <= PAGE_IDS, f"add to PAGE_IDS: {on_lessons - PAGE_IDS}"
    assert set().union(*given.values()) >= PAGE_IDS, "take out what no page has any more"


TWELVE = (
    "3:1", "4:9", "5:10", "9:11", "15:16", "18:19", "19:39", "20:11", "21:12", "23:12", "24:21", "25:44",
)  # fmt: skip


def test_twelve_mistakes_are_twelve_problems_in_one_run(tmp_path: Path) -> None:
    text = (EXAMPLES / "twelve-mistakes" / "lesson.yaml").read_bytes()
    found = problems(tmp_path, text, "twelve-mistakes")
    assert [str(problem.place).split(":", 1)[1] for problem in found] == list(TWELVE)
    marked = [number for number, line in enumerate(text.decode().splitlines(), 1) if "# " in line]
    assert [problem.place.line for problem in found] == marked[1:]
    assert len({problem.what for problem in found}) == 12


def test_the_lessons_of_the_site_can_be_worked_out() -> None:
    for file in sorted((ROOT / "lessons").glob("*/lesson.yaml")):
        lesson = read_lesson(ROOT, file.relative_to(ROOT).as_posix(), library())
        assert isinstance(lesson, Lesson), list(map(str, lesson))
        work_out(lesson, library())


def test_a_site_without_lessons(tmp_path: Path) -> None:
    assert sorted((site(tmp_path) / "lessons").iterdir()) == []


@pytest.mark.parametrize("line", ["how_often: show", "how_often: {apple-raw: most days}"])
def test_how_often_is_told_what_to_write_instead(tmp_path: Path, line: str) -> None:
    (problem,) = problems(tmp_path, GOOD.replace("minutes: 10\n", f"minutes: 10\n{line}\n"))
    assert str(problem).startswith(
        "lessons/meal/lesson.yaml:5:1: `how_often` is not a key that belongs here: take it out: "
    )
    assert "what each portion brings is worked out" in problem.hint
