"""A count on the built pages: openly everybody's, and tied to no food and to no unit."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.model.measure import Measure
from tests.html_page import having, read_page, text

TEAM = {
    "en": "This is a team count: share it among everyone in the room.",
    "es": "Es un conteo de equipo: repártanlo entre todos.",
}
ON_A_CARD = {
    "en": "A team count, to be shared. Nobody moves because of what they ate.",
    "es": "Un conteo de equipo, para repartir. Nadie se mueve por lo que comió.",
}
"""Shorter, as a card has little room."""
UNIT = re.compile(rf"\d\s*({'|'.join({measure.unit for measure in Measure})})\b")


def _cards(site: Path, language: str) -> Iterator[tuple[Path, Element]]:
    """Each movement card, with the lesson page it belongs to; those that the library lends among them."""
    top = site if language == "en" else site / language
    for page in sorted(top.glob("*/cards.html")):
        for card in having(read_page(page), "card"):
            yield page.with_name("index.html"), card


ASKED = re.compile(r"Which holds more, (.+) or (.+), and|¿Cuál tiene más, (.+) o bien (.+), y")
"""Both foods of a row, by its question."""


def _foods(lesson: Path) -> set[str]:
    """What the rows of a lesson page call their foods."""
    asked = (text(question) for question in having(read_page(lesson), "question"))
    named = (found for one in asked if (found := ASKED.search(one)))
    foods = {food for found in named for food in found.groups() if food}
    return foods | {food[:1].upper() + food[1:] for food in foods}


@pytest.mark.parametrize("language", TEAM)
def test_a_printed_card_names_no_food_and_no_unit(built_site: Path, language: str) -> None:
    cards = list(_cards(built_site, language))
    assert cards
    for lesson, card in cards:
        shown = text(card)
        assert not UNIT.search(shown), shown
        assert _foods(lesson), lesson
        assert not [food for food in _foods(lesson) if food.lower() in shown.lower()], shown
        lent = "lent" in card.get("class", "").split()  # dealt on a screen: no gap is counted by it
        assert bool(re.search(r"\d+ ÷ \d+ = \d+", shown)) != lent, shown
        assert ON_A_CARD[language] in shown


@pytest.mark.parametrize("language", TEAM)
def test_a_move_stop_says_openly_whose_the_count_is(built_site: Path, language: str) -> None:
    top = built_site if language == "en" else built_site / language
    stops = [
        stop
        for page in sorted(top.glob("*/index.html"))
        for stop in having(read_page(page), "stop-move")
    ]
    assert stops
    for stop in stops:
        folded = " ".join(text(details) for details in stop.iter("details"))
        assert TEAM[language] in text(stop)
        assert TEAM[language] not in folded
        division = [text(each) for each in stop.iter("move-card")]
        assert division
        assert not [shown for shown in division if UNIT.search(shown)]
