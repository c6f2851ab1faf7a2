"""Each rule of care can be broken, and then says where and by which words."""

from __future__ import annotations

from copy import deepcopy
from dataclasses import replace
from pathlib import Path
from xml.etree.ElementTree import Element, SubElement

import pytest

from generator.model.measure import Measure
from tests.care_rules import Rule, care_rules
from tests.html_page import having, read_html, read_page
from tests.lesson_facts import FACTS
from tests.page_words import page_words
from tests.site.test_care import asked_pages

RULES = care_rules()
FORBIDS = next(rule for rule in RULES if "no food is good or bad" in rule.title)
"""A rule about every page, to try the reading with."""

each_rule = pytest.mark.parametrize(
    "rule", RULES, ids=[f"{rule.title}-{rule.language}" for rule in RULES]
)


def page_of(site: Path, rule: Rule) -> Element:
    """A page of the rule's kind to change: what is read is shared. Any lesson's will do.

    For a rule about a paper alone a worksheet does.
    """
    pages = ("worksheet",) if rule.pages == ("family",) else rule.pages
    for page in asked_pages(site, replace(rule, where=frozenset(), pages=pages)):
        read = read_page(page)
        if not rule.in_class or any(having(read, rule.in_class)):
            return deepcopy(read)
    pytest.fail("no page is of the kind that the rule is about")


@each_rule
def test_each_word_that_must_not_be_is_found(built_site: Path, rule: Rule) -> None:
    page = page_of(built_site, rule)
    part = next(having(page, rule.in_class)) if rule.in_class else next(page.iter("main"))
    for planted in rule.never.values():
        SubElement(part, "p").text = planted
    said = rule.broken(page)
    for pattern, planted in rule.never.items():
        assert f"“{planted}” is said, by “{pattern}”" in said


@each_rule
def test_each_sentence_that_is_missing_is_missed(built_site: Path, rule: Rule) -> None:
    """A page that says nothing, or whose parts do."""
    page = page_of(built_site, rule)
    for part in list(having(page, rule.in_class)) if rule.in_class else [page]:
        part.clear()
        part.set("class", rule.in_class)
    said = rule.broken(page)
    assert [idea for idea in rule.tells if f"“{idea}” is not said" not in said] == []


WORDS = "a healthier choice"


@pytest.mark.parametrize(
    "html",
    [
        f"<p>It is {WORDS}.</p>",
        "<p>It is a <b>healthier</b> <i>choice</i>.</p>",
        "<p>It is a healthier\n   choice.</p>",
        f'<img src="a.svg" alt="Is it {WORDS}?">',
        f'<button aria-label="{WORDS}">x</button>',
        f'<a title="{WORDS}" href="a">x</a>',
        f'<input placeholder="{WORDS}">',
        f'<p data-hint="{WORDS}">x</p>',
        f"<details><summary>x</summary><p>{WORDS}</p></details>",
        f"<template><p>{WORDS}</p></template>",
        f"<svg><title>{WORDS}</title></svg>",
        f'<script type="application/ld+json">{{"a": [{{"description": "{WORDS}"}}]}}</script>',
        f'<script type="application/json">["{WORDS}"]</script>',
    ],
)
def test_words_are_found_wherever_somebody_meets_them(html: str) -> None:
    page = read_html(
        f"<!doctype html><html><head><title>x</title></head><body>{html}</body></html>"
    )
    assert [said for said in FORBIDS.broken(page) if "healthier choice" in said]


def test_words_in_a_description_for_search_engines_are_found() -> None:
    page = read_html(
        f'<!doctype html><html><head><title>x</title><meta name="description" content="{WORDS}">'
        "</head><body><p>x</p></body></html>"
    )
    assert FORBIDS.broken(page)


def test_what_lies_in_a_closed_box_is_not_open() -> None:
    page = read_html(
        "<!doctype html><html><head><title>x</title></head><body><p>One.</p><details>"
        "<summary>Two</summary><p>Three.</p></details><p hidden>Four.</p></body></html>"
    )
    assert page_words(page, unfolded=True) == ("x", "One.")
    assert {"Two", "Three.", "Four."} <= set(page_words(page))


def test_lines_stay_apart_and_words_of_one_line_together() -> None:
    page = read_html(
        "<!doctype html><html><head><title>x</title></head><body><ul><li>Give <b>no</b> nuts."
        "</li><li>Cut grapes.</li></ul></body></html>"
    )
    assert page_words(page) == ("x", "Give no nuts.", "Cut grapes.")


def test_every_fact_that_a_rule_asks_for_is_one_that_lessons_can_have() -> None:
    """A fact that is spelled wrong would be a rule that never asks."""
    for rule in RULES:
        assert rule.where <= FACTS | {one.value for one in Measure}, rule.title
        assert rule.source, rule.title
        assert rule.tells or rule.never, rule.title


def test_pages_are_read_once(built_site: Path) -> None:
    """The shared page must stay as it was built, whatever is planted in a copy."""
    page = built_site / "index.html"
    SubElement(page_of(built_site, FORBIDS), "p").text = WORDS
    assert WORDS not in " ".join(page_words(read_page(page)))
