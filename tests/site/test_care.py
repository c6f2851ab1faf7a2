"""What the Care promise asks of words, held against the built demo in every language."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest
import yaml

from tests.care_rules import Rule, care_rules
from tests.html_page import having, read_page
from tests.lesson_facts import LessonFacts, food_entries, lesson_facts
from tests.page_words import page_words

RULES = care_rules()
LANGUAGES = ("en", "es")
LEARNER = ("index", "cards", "worksheet", "answers", "practice", "transcript")
"""Pages of a lesson that a learner sees; the answer key lies beside the worksheet."""
LESSON = (*LEARNER, "notes")

ROOT = Path(__file__).parents[2]
known = cache(page_words)
"""Of pages that nobody changes."""

each_rule = pytest.mark.parametrize(
    "rule", RULES, ids=[f"{rule.title}-{rule.language}" for rule in RULES]
)


@each_rule
def test_pages_say_what_care_asks(built_site: Path, rule: Rule) -> None:
    pages = list(asked_pages(built_site, rule))
    assert pages or rule.where or rule.pages == ("family",), "no page to look at"
    broken = {
        str(page.relative_to(built_site)): rule.broken(read_page(page), known) for page in pages
    }
    assert {page: said for page, said in broken.items() if said} == {}


@each_rule
def test_captions_say_nothing_that_no_page_may(built_site: Path, rule: Rule) -> None:
    """What is heard in the film is read by a learner too."""
    files = sorted(built_site.glob(f"*/*.{rule.language}.vtt"))
    assert files
    for file in files:
        if not rule.in_class and {"learner", "lessons", "every"} & set(rule.pages):
            assert rule.wrong_words(file.read_text("utf-8").splitlines()) == (), file.name


WRITTEN = {
    "en": (
        "site_data/words/en.yaml",
        "site_data/new_lesson.yaml",
        "README.md",
        "lessons/guide/*.md",
    ),
    "es": ("site_data/words/es.yaml",),
}
"""What no page of the demo need show: words of every state, the first lesson of an educator, the guide."""


@each_rule
def test_what_is_written_elsewhere_says_nothing_that_no_page_may(rule: Rule) -> None:
    if "every" in rule.pages:
        for pattern in WRITTEN[rule.language]:
            files = sorted(ROOT.glob(pattern))
            assert files, pattern
            for file in files:
                assert rule.wrong_words(file.read_text("utf-8").splitlines()) == (), file.name


@each_rule
def test_no_move_of_the_library_says_what_no_learner_may_read(rule: Rule) -> None:
    """Whether or not a lesson of the demo has it."""
    moves = yaml.safe_load((ROOT / "site_data/moves.yaml").read_text("utf-8"))["moves"]
    assert moves
    if {"every", "learner"} & set(rule.pages) and not rule.in_class:
        lines = [line for move in moves.values() for line in _strings(move["texts"][rule.language])]
        assert lines
        assert rule.wrong_words(lines) == ()


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_foods_that_can_choke_and_the_allergens_are_all_named(
    built_site: Path, language: str
) -> None:
    """From the lesson files and the library's flags, apart from the program; FALCPA 2004 (S)."""
    project = built_site.parent
    words = yaml.safe_load((project / f"site_data/words/{language}.yaml").read_text("utf-8"))
    for facts, folder in _lessons(built_site, language):
        foods = [_name(food_entries(project)[one], language) for one in facts.choking]
        wanted = [*foods, *(words[f"allergen_{one}"] for one in facts.allergens)]
        for page in ("index.html", "notes.html"):
            lines = " ".join(page_words(read_page(folder / page))).lower()
            assert [one for one in wanted if one.lower() not in lines] == [], (folder.name, page)


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_card_names_a_food(built_site: Path, language: str) -> None:
    """Nothing on a fridge reads as a price: product.md, Care."""
    entries = food_entries(built_site.parent)
    for facts, folder in _lessons(built_site, language):
        names = {_name(entries[one], language).lower() for one in facts.foods}
        for card in having(read_page(folder / "cards.html"), "card"):
            shown = " ".join(page_words(card)).lower()
            assert [one for one in names if one in shown] == [], folder.name


def test_what_only_adults_read_is_kept_from_search_engines(built_site: Path) -> None:
    """product.md, Care: the real computation is for adults only."""
    pages = [page for page in built_site.rglob("*.html") if _says_minutes(read_page(page))]
    assert pages
    for page in pages:
        robots = [
            meta.get("content")
            for meta in read_page(page).iter("meta")
            if meta.get("name") == "robots"
        ]
        assert robots == ["noindex"] or page.name == "sources.html", page


def asked_pages(site: Path, rule: Rule) -> Iterator[Path]:
    """The pages of a rule in its language; only of lessons that have all its facts."""
    top = _top(site, rule.language)
    lessons = [
        folder for facts, folder in _lessons(site, rule.language) if rule.where <= facts.facts
    ]
    kinds = {"learner": LEARNER, "lessons": LESSON, "every": LESSON}
    for name in rule.pages:
        if name in {"home", "every"}:
            yield top / "index.html"
        if name == "every":
            yield from (page for page in sorted(top.glob("*.html")) if page.name != "index.html")
        if name.endswith(".html"):
            yield top / name
        elif name != "home":
            found = [
                folder / f"{one}.html" for folder in lessons for one in kinds.get(name, (name,))
            ]
            yield from (page for page in found if page.is_file())


def _lessons(site: Path, language: str) -> Iterator[tuple[LessonFacts, Path]]:
    """The lessons that are there in a language, each with its folder."""
    for facts in lesson_facts(site.parent):
        folder = _top(site, language) / facts.name
        if (folder / "index.html").is_file():
            yield facts, folder


def _top(site: Path, language: str) -> Path:
    return site if language == "en" else site / language


def _name(entry: dict[str, object], language: str) -> str:
    names = entry["names"]
    assert isinstance(names, dict)
    return str(names[language])


def _strings(value: object) -> list[str]:
    if isinstance(value, dict | list):
        inner = value.values() if isinstance(value, dict) else value
        return [line for one in inner for line in _strings(one)]
    return [value] if isinstance(value, str) else []


def _says_minutes(page: Element) -> bool:
    return any("METy" in line for line in page_words(page))
