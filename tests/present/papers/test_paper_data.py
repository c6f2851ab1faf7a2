"""What a template of papers sees of a view: data, and never a program."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest
from markupsafe import Markup

from generator.author.papers import papers_of
from generator.present.papers.data import as_data
from generator.present.papers.paper import Size
from generator.present.papers.runs import runs_of
from generator.present.words.foreign import joined, missing, stale
from generator.present.words.prose import blocks, inline
from tests.made_papers import words
from tests.project import GOOD, ROOT, put, site


@pytest.mark.parametrize(
    ("html", "runs"),
    [
        ("plain &amp; simple &lt;b&gt;", ["plain & simple <b>"]),
        ("<em>a</em> b", [{"how": "leaning", "lang": "", "runs": ["a"]}, " b"]),
        (
            '<a href="https://x.example/" rel="noreferrer">a <strong>way</strong></a>',
            ["a ", {"how": "bold", "lang": "", "runs": ["way"]}],
        ),
        (
            '<span lang="en" class="untranslated">Apple</span>, 1',
            [{"how": "untranslated", "lang": "en", "runs": ["Apple"]}, ", 1"],
        ),
        ("one<br>two", ["one", {"how": "break", "runs": []}, "two"]),
        ("</em>lost<em>", ["lost", {"how": "leaning", "lang": "", "runs": []}]),
    ],
)
def test_marked_words_become_runs(html: str, runs: list[object]) -> None:
    assert runs_of(html) == runs


def test_a_text_without_marks_is_a_string() -> None:
    assert as_data(inline("#let x = 1 & *y*")) != "#let x = 1 & y"
    assert as_data(inline("#let x = 1 & y")) == "#let x = 1 & y"
    assert as_data(Markup("")) == ""


def test_words_of_another_language_keep_their_mark() -> None:
    told = as_data(joined(", ", (missing("Apple", "en"), "1 mediana")))
    assert told == {
        "runs": [{"how": "untranslated", "lang": "en", "runs": ["Apple"]}, ", 1 mediana"]
    }
    assert as_data(stale("viejo")) == {
        "runs": [{"how": "untranslated", "lang": "", "runs": ["viejo"]}]
    }


def test_a_picture_stands_by_itself_with_what_it_shows() -> None:
    svg = Markup(
        '<svg class="x" viewBox="0 0 240 84" aria-label="2 &lt; 3"><path data-said d="M0 0"/></svg>'
    )
    told = as_data(svg)
    assert isinstance(told, dict)
    assert told["alt"] == "2 < 3"
    assert told["width"] == 240
    assert 'xmlns="http://www.w3.org/2000/svg"' in str(told["svg"])
    assert '<path data-said="" d=' in str(told["svg"])


def test_what_no_paper_can_show_is_a_mistake_of_ours() -> None:
    @dataclass(frozen=True)
    class Odd:
        """A view that holds what is no data."""

        held: object

    assert as_data(Odd((1, None, range(2)))) == {"held": [1, None, [0, 1]]}
    with pytest.raises(TypeError, match="cannot show a complex"):
        as_data(Odd(1j))


def test_marks_of_prose_are_words_on_paper() -> None:
    said = str(as_data(blocks("One *two*.\n\n- three\n- four")))
    for word in ("One", "two", "three", "four"):
        assert word in said
    assert "<" not in said


def test_what_is_not_translated_is_on_paper_in_its_language(tmp_path: Path) -> None:
    """A translation that lacks texts gives papers with the original ones, and none that fails."""
    root = site(tmp_path)
    put(root, GOOD)
    (root / "lessons/meal/lesson.es.yaml").write_text(
        "title: Dos desayunos\nsummary: Halla la diferencia.\n", "utf-8"
    )
    (root / "theme").symlink_to(ROOT / "theme")
    made = {one.path: one.content for one in papers_of(root, sizes=[Size.A4])}
    file = root / "worksheet.pdf"
    file.write_bytes(made["es/meal/papers/worksheet-a4.pdf"])
    said = words(file)
    assert "Dos desayunos" in said
    assert "Which side holds more?" in said
    assert b"/Lang" in made["es/meal/papers/worksheet-a4.pdf"]
