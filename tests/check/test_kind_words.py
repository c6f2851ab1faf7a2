"""Words of guilt and payment are asked about, and innocent words are left alone.

The rule of the project's own care promise; AAP 2016 (Golden and others, Pediatrics
138(3):e20161649) asks for talk about health and not about weight.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check.kind_words import kind_words
from generator.problems import Weight
from tests.project import GOOD, worked

ASKED = [
    "Burn off the pie.",
    "Let us burn it off!",
    "You can burn that slice off.",
    "This burns 90 calories.",
    "BURNED CALORIES",
    "We burnt energy.",
    "Work off your lunch.",
    "Now work it off.",
    "Time to work your lunch off.",
    "You earned a cookie.",
    "You deserve a treat.",
    "Twenty jumps pay for the muffin.",
    "Make up for the cake.",
    "A cheat day.",
    "A guilt-free snack.",
    "Do you feel guilty?",
    "A naughty slice.",
    "That is a bad food.",
    "Pick good choices.",
    "No junk food.",
    "An unhealthy lunch.",
    "Chips are bad for you.",
    "It is good for your heart.",
    "Sweets are junk.",
    "To lose weight.",
    "You might gain some weight.",
    "It is fattening.",
    "Go on a diet.",
    "They are dieting.",
]

ASKED_IN_SPANISH = [
    "Vamos a quemar calorías.",
    "Quema las calorías.",
    "Salta para quemarlo.",
    "¡Quémalo!",
    "Sin culpa.",
    "Eso engorda.",
    "Para bajar de peso.",
    "Están a dieta.",
    "Es comida chatarra.",
    "Un alimento malo.",
    "Una mala comida.",
    "Te lo ganaste.",
    "Para ganarse el postre.",
]

LEFT_ALONE = [
    "A good walk by the river.",
    "That was a good guess.",
    "Look at the bad weather.",
    "Turn the burner down.",
    "The rice may burn.",
    "Do not burn yourself, turn the stove off.",
    "Paid attention?",
    "Pay attention to the tens.",
    "An earnest question.",
    "What did you learn?",
    "Ask a registered dietitian.",
    "Saturated fat is one kind of fat.",
    "The fat of the milk.",
    "How much does the apple weigh?",
    "The weight of the portion is 182 g.",
    "Work out the gap.",
    "Take your shoes off.",
    "Work with a friend.",
    "Clean your hands.",
    "A cheese sandwich.",
    "Energy is what food gives the body.",
]

LEFT_ALONE_IN_SPANISH = [
    "Cuidado, la olla quema.",
    "Las calorías dan energía.",
    "Un buen paseo.",
    "Mal tiempo en Larkmead.",
    "Disculpa.",
    "Pesa la manzana.",
    "¿Quién gana tiempo?",
]


def found(folder: Path, words: str, language: str = "en") -> list[str]:
    result = worked(folder, GOOD.replace("What do you like?", f'"{words}"'))
    in_it = replace(result, lesson=replace(result.lesson, language=language))
    return [str(problem.place).split(":", 1)[1] for problem in kind_words(in_it)]


@pytest.mark.parametrize("words", ASKED)
def test_asked_about(tmp_path: Path, words: str) -> None:
    assert found(tmp_path, words) == ["30:15"]


@pytest.mark.parametrize("words", ASKED_IN_SPANISH)
def test_asked_about_in_spanish(tmp_path: Path, words: str) -> None:
    assert found(tmp_path, words, "es") == ["30:15"]


@pytest.mark.parametrize("words", LEFT_ALONE_IN_SPANISH)
def test_left_alone_in_spanish(tmp_path: Path, words: str) -> None:
    assert found(tmp_path, words, "es") == []


@pytest.mark.parametrize("words", LEFT_ALONE)
def test_left_alone(tmp_path: Path, words: str) -> None:
    assert found(tmp_path, words) == []


@pytest.mark.parametrize(
    ("old", "new", "at"),
    [
        ("title: Two breakfasts", "title: Burn it off", "1:8"),
        ("say: Hello from Larkmead.", "say: Burn it off.", "8:10"),
        ("say: Hello from Larkmead.", "say: |\n      Hello.\n\n      Now burn it off.", "11:11"),
        ("[At home,", "[A guilty lunch,", "19:15"),
        ("hint: Look at the amounts.", "hint: Earn it.", "13:13"),
        ("name: Juice", "name: Cheat juice", "22:53"),
        ("[Something warm]", "[Something naughty]", "31:15"),
        ("goals: [Subtract.]", "goals: [Lose weight.]", "5:9"),
    ],
)
def test_every_text_is_read_and_its_place_told(tmp_path: Path, old: str, new: str, at: str) -> None:
    assert old in GOOD
    problems = list(kind_words(worked(tmp_path, GOOD.replace(old, new))))
    assert [str(problem.place).split(":", 1)[1] for problem in problems] == [at]
    assert all(problem.weight is Weight.QUESTION and problem.hint for problem in problems)
