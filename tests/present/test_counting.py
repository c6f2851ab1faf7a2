"""A count is asked for in words of what it is made of, and the hint to it gives no number away."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.present.words.counting import count_hint, count_question
from generator.present.words.say import Say
from tests.project import library

QUESTIONS = [
    ("10", "How many tens?", "¿Cuántas decenas?"),
    ("20", "How many twenties?", "¿Cuántos grupos de 20?"),
    ("4", "How many fours?", "¿Cuántos grupos de 4?"),
    ("100", "How many hundreds?", "¿Cuántas centenas?"),
    ("25", "How many groups of 25?", "¿Cuántos grupos de 25?"),
    ("0.5", "How many groups of 0.5?", "¿Cuántos grupos de 0.5?"),
]
HINTS = [
    ("10", "Each hundred is ten tens.", "Cada centena son diez decenas."),
    ("20", "Put the tens in pairs.", "Junta las decenas de dos en dos."),
    ("4", "count by fours", "cuenta de 4 en 4"),
    ("2", "half", "mitad"),
    ("50", "how many times does 50 fit", "cuántas veces cabe 50"),
]


def say(language: str) -> Say:
    return Say(library().words[language])


@pytest.mark.parametrize(("per", "english", "spanish"), QUESTIONS)
def test_what_is_counted_stands_in_the_question(per: str, english: str, spanish: str) -> None:
    assert count_question(Decimal(per), say("en")) == english
    assert count_question(Decimal(per), say("es")) == spanish


@pytest.mark.parametrize(("per", "english", "spanish"), HINTS)
def test_each_size_of_a_count_has_its_own_hint(per: str, english: str, spanish: str) -> None:
    assert english in count_hint(Decimal(per), say("en"))
    assert spanish in count_hint(Decimal(per), say("es"))
