"""What no educator writes ends soon and in one sentence: huge files, endless lists, numbers of a million digits."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.model.lesson import Lesson
from generator.problems import MOST_A_FILE, LessonError, Place, Problem, shortened
from generator.read.handwritten import handwritten_pages, read_page
from generator.read.library import read_library
from generator.read.meant import foods_like
from generator.read.source import read_source
from tests.project import GOOD, problems, read, site

AMOUNT = "amount: 1 cup}"


@pytest.mark.parametrize(
    ("old", "new", "at", "what"),
    [
        ("Find the gap.", "x" * 2_001, "2:10", "`summary` is too long"),
        ("Hello from Larkmead.", "x" * 8_001, "8:10", "`say` is too long"),
        ("title: Two", "title: &a Two", "1:8", "no value is repeated here"),
        ("one_move_per: 10", "one_move_per: 1e-999999", "27:21", "finer than can be shown"),
        ("value: 110", "value: 1e-999999", "22:67", "finer than can be shown"),
        ("value: 110", "value: 1e999999999", "22:67", "too large"),
        ("stops:\n", "stops:\n" + "".join(f"  - talk: {{id: t{i}, prompt: a}}\n" for i in range(100)), "107:5", "at most 100"),
        ("title:", "#" * 100_000 + "\ntitle:", "1:1", "far too large"),
    ],
)  # fmt: skip
def test_too_much_is_one_sentence(tmp_path: Path, old: str, new: str, at: str, what: str) -> None:
    found = problems(tmp_path, GOOD.replace(old, new, 1))
    assert (str(found[0].place), what in found[0].what) == (
        f"lessons/meal/lesson.yaml:{at}",
        True,
    ), str(found[0])
    assert found[0].hint


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("[" + "1," * 200_000 + "]", ["a.yaml:1:400000"]),  # the list is a value, too
        ("[" * 40 + "1" + "]" * 40, []),
        ("[" * 41 + "1" + "]" * 41, ["a.yaml:1:42"]),
    ],
    ids=["one more than is taken", "as deep as is taken", "deeper"],
)
def test_a_file_of_endless_values_is_refused(text: str, told: list[str]) -> None:
    found = read_source("a.yaml", text).problems
    assert [str(one.place) for one in found] == told
    assert all("more inside one another here than any lesson holds" in one.what for one in found)


@pytest.mark.parametrize(
    ("key", "most"), [("summary: Find the gap.", 2_000), ("say: Hello from Larkmead.", 8_000)]
)
def test_as_much_as_is_allowed_is_taken(tmp_path: Path, key: str, most: int) -> None:
    name = key.partition(":")[0]
    assert isinstance(read(tmp_path, GOOD.replace(key, f"{name}: {'x' * most}")), Lesson)


def test_what_was_meant_is_looked_up_for_as_many_foods_as_are_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = []
    monkeypatch.setattr(
        "generator.read.references.foods_like",
        lambda word, foods: asked.append(word) or foods_like(word, foods),
    )
    rows = "".join(
        f"        - [{{food: x{i}, {AMOUNT}, {{food: y{i}, {AMOUNT}]\n" for i in range(200)
    )
    found = problems(tmp_path, GOOD.replace("      rows:\n", "      rows:\n" + rows))
    assert len([one for one in found if "there is no food" in one.what]) == 400
    assert len(asked) <= MOST_A_FILE


def test_of_one_file_fifty_problems_are_told_and_a_word_on_the_rest() -> None:
    many = [Problem(Place("a.yaml", line), f"wrong {line}") for line in range(1, 81)]
    other = [Problem(Place("b.yaml", 1), "wrong")]
    told = shortened([*many, *other])
    assert [one.what for one in told] == [
        *(f"wrong {n}" for n in range(1, 51)),
        "and 30 more in this file",
        "wrong",
    ]
    assert "and 30 more" in str(LessonError([*many, *other]))
    assert len(LessonError(many).problems) == 80
    assert shortened(many[:50]) == tuple(many[:50])


@pytest.mark.parametrize(
    ("file", "old", "new", "what"),
    [
        ("foods", r"energy: [\d.]+", "energy: 1e-999999", "`energy` is `1e-999999`, which is finer"),
        ("foods", r"grams: [\d.]+", "grams: 1e-99999", "`grams` is `1e-99999`, which is finer"),
        ("site", "https://kitchen.larkmead.example/", "https://a/" + "a/" * 96, "`address` is too long"),
        ("site", "Larkmead Village Kitchen", "x" * 121, "`programme` is too long"),
        ("words/en", "{n} minutes", "{n!x} minutes", "holds more than a name"),
        ("words/en", "{n} minutes", "{n:>99999999} minutes", "holds more than a name"),
        ("words/en", "{n} minutes", "{n:{n}} minutes", "holds more than a name"),
        ("words/en", "{n} minutes", "{n.real} minutes", "holds more than a name"),
        ("words/es", "{n} minutos", "{n[0]} minutos", "holds more than a name"),
    ],
)  # fmt: skip
def test_site_data_has_bounds(tmp_path: Path, file: str, old: str, new: str, what: str) -> None:
    root = site(tmp_path)
    path = root / f"site_data/{file}.yaml"
    text = path.read_text("utf-8")
    found = re.search(old if "energy" in old or "grams" in old else re.escape(old), text)
    assert found
    line = text.count("\n", 0, found.start()) + 1
    path.write_text(text[: found.start()] + new + text[found.end() :], "utf-8")
    with pytest.raises(LessonError) as told:
        read_library(root)
    first = told.value.problems[0]
    assert (first.place.path, first.place.line) == (f"site_data/{file}.yaml", line), str(first)
    assert what in first.what


def test_words_that_are_not_utf_8_are_told_at_their_line(tmp_path: Path) -> None:
    root = site(tmp_path)
    path = root / "site_data/words/en.yaml"
    path.write_bytes(path.read_bytes().replace(b"more_pages: More", b"more_pages: \xc9"))
    line = path.read_bytes().split(b"\n").index(b"more_pages: \xc9 pages") + 1
    with pytest.raises(LessonError) as told:
        read_library(root)
    first = told.value.problems[0]
    assert str(first.place) == f"site_data/words/en.yaml:{line}:13"
    assert first.hint == "save it again with the encoding UTF-8"


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("# a\n\n" + "[" * 100, "brackets are opened"),
        ("# a\n\n" + "[a\n" * 100, "brackets are opened"),
        ("# a\n\n" + "[a](" * 100, "brackets are opened"),
        ("# a\n\n" + ")" * 100 + "[a](" * 100, "brackets are opened"),
        ("<a " * 100, "brackets are opened"),
        ("- " * 900 + "a", "inside one another far too deep"),
        ("   +" * 900 + "a", "inside one another far too deep"),
        ("> " * 900 + "a", "inside one another far too deep"),
        ("# a\n\n" + "a\n" * 2_501, "without an empty line"),
        ("a\n\n" * 16_667, "far too large"),
    ],
)
def test_a_page_that_would_keep_markdown_busy_is_refused(
    tmp_path: Path, text: str, what: str
) -> None:
    (tmp_path / "lessons").mkdir()
    (tmp_path / "lessons/a.md").write_text(text, "utf-8")
    found = read_page(tmp_path, "lessons/a.md")
    assert isinstance(found, Problem)
    assert what in found.what


@pytest.mark.parametrize(
    "text",
    [
        ("a" * 4_999 + "\n\n") * 9,
        "[a](b) " * 700,
        "| <5 g | (a) [b] <b>c</b> |\n" * 150,
        "[\n\n" * 100,
        "\\[" * 100,
    ],
    ids=["long", "links", "a table", "parted", "escaped"],
)
def test_a_long_page_is_taken(tmp_path: Path, text: str) -> None:
    (tmp_path / "lessons").mkdir()
    (tmp_path / "lessons/a.md").write_text(text, "utf-8")
    assert read_page(tmp_path, "lessons/a.md") == text


@pytest.mark.parametrize(
    ("text", "title"),
    [
        ("# Care #\n", "Care"),
        ("text\n\n# Later\n", "Later"),
        ("#\tTab\n", "Tab"),
        ("# a" + " " * 50_000 + "b\n", "a" + " " * 50_000 + "b"),
        ("no heading", "A page"),
        ("## second\n#no space\n#   \n", "A page"),
        ("# Cafe\u0301\n", "Caf\u00e9"),
    ],
)
def test_the_title_of_a_page(tmp_path: Path, text: str, title: str) -> None:
    (tmp_path / "lessons").mkdir()
    (tmp_path / "lessons/a-page.md").write_text(text, "utf-8")
    assert handwritten_pages(tmp_path) == (("a-page.html", title),)
