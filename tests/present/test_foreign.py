"""Texts that are not translated stay marked on every way into a page, and only where an element can stand."""

from __future__ import annotations

import json
import pickle
from pathlib import Path

import pytest
from jinja2 import Environment
from markupsafe import Markup

from generator.present.words.foreign import (
    filled,
    is_marked,
    joined,
    like,
    missing,
    stale,
    unmarked,
)
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say
from tests.project import library

HALF = missing("Half of each", "en")
MARKED = Markup('<span lang="en" class="untranslated">Half of each</span>')


def written(template: str, text: str) -> str:
    """A text as a template of the theme writes it."""
    environment = Environment(autoescape=True)
    environment.filters["unmarked"] = unmarked
    return environment.from_string(template).render(text=text)


def test_a_missing_text_is_said_in_its_own_language() -> None:
    assert written("<p>{{ text }}</p>", HALF) == f"<p>{MARKED}</p>"


def test_a_stale_text_keeps_the_page_s_language() -> None:
    page = written("{{ text }}", stale("La mitad"))
    assert page == '<span class="untranslated">La mitad</span>'


def test_it_is_a_string_like_any_other() -> None:
    assert HALF == "Half of each"
    assert json.dumps({HALF: HALF}) == '{"Half of each": "Half of each"}'
    assert is_marked(HALF)
    assert not is_marked("Half of each")


def test_marks_go_through_markdown_and_escaping() -> None:
    assert inline(missing("*Half* & half", "en")) == (
        '<span lang="en" class="untranslated"><em>Half</em> &amp; half</span>'
    )
    assert written("{{ text }}", missing("<b>Half", "en")) == (
        '<span lang="en" class="untranslated">&lt;b&gt;Half</span>'
    )


def test_inside_a_tag_only_its_words_stand() -> None:
    text = missing('a "quoted" > word', "en")
    assert written('<a title="{{ text | unmarked }}">', text) == (
        '<a title="a &#34;quoted&#34; &gt; word">'
    )


@pytest.mark.parametrize(
    ("text", "html"),
    [
        (filled("{one} or <i>", {"one": HALF}), f"{MARKED} or &lt;i&gt;"),
        (filled("{one} or {two}", {"one": HALF, "two": "a & b"}), f"{MARKED} or a &amp; b"),
        (joined(" < ", ("a", HALF)), f"a &lt; {MARKED}"),
        (Say(library().words["en"]).listed(("a", "b", HALF)), f"a, b and {MARKED}"),
        (plain(missing("*Half* of each", "en")), MARKED),
        (like(HALF, "Half"), '<span lang="en" class="untranslated">Half</span>'),
    ],
)
def test_what_is_made_of_it_stays_marked(text: str, html: str) -> None:
    assert is_marked(text)
    assert written("{{ text }}", text) == html


@pytest.mark.parametrize(
    "text", [filled("{one}", {"one": "a"}), joined("", ("a",)), like("b", "a")]
)
def test_what_is_made_of_other_texts_is_not_marked(text: str) -> None:
    assert text == "a"
    assert not is_marked(text)


@pytest.mark.parametrize("text", [HALF, stale("La mitad"), joined(" ", (HALF, "a"))])
def test_it_can_be_sent_to_another_process(text: str) -> None:
    sent = pickle.loads(pickle.dumps(text))  # noqa: S301  # what was just pickled here
    assert sent == text
    assert written("{{ text }}", sent) == written("{{ text }}", text)


def test_no_private_character_stands_in_for_a_mark() -> None:
    """Unicode keeps U+E000 to U+F8FF for private use (The Unicode Standard, 23.5)."""
    present = Path(__file__).parents[2] / "generator/present"
    sources = {file.name: file.read_text("utf-8") for file in present.rglob("*.py")}
    assert not [name for name, text in sources.items() if "\\ue0" in text or "\\uf8" in text]
