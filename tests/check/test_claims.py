"""Words about two numbers hold, or are questioned with words that do."""

from __future__ import annotations

import pytest

from generator.check import check_lesson
from generator.check.claims import claim_questions, words_against_numbers
from generator.problems import Problem, Weight
from tests.worked import worked

LUNCH = """
- compare:
    id: lunch
    measure: energy
    sides: [{sides}]
    rows:
      - [{{name: {0}, value: 90, source: Label}}, {{name: {1}, value: 410, source: Label}}]
      - [{{name: {2}, value: 420, source: Label}}, {{name: {3}, value: 280, source: Label}}]
      - [{{name: {4}, value: 150, source: Label}}, {{name: {5}, value: 160, source: Label}}]
    reveal: "{text}"
"""
ENGLISH = ("Apple", "Apple pie", "Grilled chicken sandwich", "Cheese pizza", "Potato", "Milk")
SPANISH = ("Manzana", "Pastel de manzana", "Sándwich de pollo", "Pizza de queso", "Papa", "Leche")


def questions(text: str, language: str = "en") -> list[Problem]:
    names, sides = (
        (ENGLISH, "Packed at home, From the kiosk")
        if language == "en"
        else (SPANISH, "De casa, Del quiosco")
    )
    lesson = worked(LUNCH.format(*names, sides=sides, text=text))
    return list(claim_questions(lesson, language))


# Ratios are arithmetic on the values above: pie to apple 410 ÷ 90 = 4.56, sandwich to pizza 1.5,
# milk to potato 1.07, kiosk to home 850 ÷ 660 = 1.29. What a word tolerates is ours, no source.
HOLDS = [
    "The pie holds more than four times as much as the apple.",
    "The pie is almost five times the apple.",
    "The apple holds less than a quarter of the energy of the pie.",
    "410 is 4.6 times 90.",
    "The pizza holds two thirds of the energy of the sandwich.",
    "The potato and the milk hold about the same.",
    "The pie holds 320 more.",
    "The pie holds about 300 kcal more than the apple.",
    "The pie holds over 300 kcal more than the apple.",
    "The sandwich holds the most.",
    "The apple has the least.",
    "The one that holds the most is the sandwich.",
    "The sandwich holds more than the pie.",
    "The apple holds less than the pie.",
    "The kiosk holds more.",
    "The kiosk lunch holds 850, more than the 660 from home.",
    "In the first and the third row the kiosk side holds more. In the second row the lunch from home does.",
    "One of them has more than four times as much.",
]
DOES_NOT = [
    ("The pie holds almost double the apple.", "410 is 4.6 times 90: say `more than four times`"),
    ("410 is almost double 90.", "410 is 4.6 times 90: say `more than four times`"),
    ("A slice of pie holds 410, almost double.", "say `more than four times`"),
    ("The pie holds twice as much.", "say `more than four times`"),
    (
        "The apple holds half the energy of the pie.",
        "90 is 0.22 times 410: say `less than a quarter`",
    ),
    (
        "The sandwich holds about twice the energy of the pizza.",
        "420 is 1.5 times 280: say `140 kcal more`",
    ),
    ("The potato and the milk hold the same amount.", "say `about the same`"),
    ("The pie and the pizza have the same energy.", "say `130 kcal more`"),
    ("The apple holds as much as the pie.", "say `less than a quarter`"),
    ("The pie holds the most.", "it holds 410 kcal: name the food that holds 420"),
    ("The milk holds the least.", "name the food that holds 90"),
    ("The pie holds 330 kcal more than the apple.", "410 against 90: say `320 kcal more`"),
    ("The pie holds more energy than the sandwich.", "410 against 420: say `less`"),
    ("Packed at home holds more.", "660 against 850: say `less`"),
    ("In the second row the kiosk holds more.", "280 against 420: say `less`"),
    ("In the first and the second row the kiosk holds more.", "280 against 420: say `less`"),
    ("In the first row, the lunch from home holds more.", "90 against 410: say `less`"),
    ("Row two. That is more than double.", "420 is 1.5 times 280"),
    ("The total of the kiosk is about twice as much.", "850 is 1.3 times 660: say `190 kcal more`"),
    ("One of them has ten times as much.", "say `more than four times`"),
    ("Why does the pie hold twice as much as the apple?", "say `more than four times`"),
]
NO_CLAIM = [
    "Eat half an apple after the walk.",
    "Half of the plate is vegetables and fruit.",
    "Half of each, or half the broth and half water.",
    "We play this twice a week.",
    "Do it two times a day, once or twice.",
    "The bus leaves at half past three.",
    "Fold the napkin double.",
    "Four is double of double.",
    "Does the pie hold twice as much as the apple?",
    "Which one holds more?",
    "The pie does not hold twice as much as the apple.",
    "If the pie held twice as much as the apple, we would see it.",
    "Do 10 more. Then rest for 5 more minutes.",
    "We both cook stew the same way.",
    "You can do it twice as fast.",
    "It holds twice the sodium.",  # another measure: no comparison of it in the lesson
    "Two pots are both called tomato soup, the same name.",
    "Put the one with the most energy first.",
    "This time more is the aim.",
]


@pytest.mark.parametrize("text", HOLDS)
def test_holds(text: str) -> None:
    assert questions(text) == []


@pytest.mark.parametrize(("text", "way_out"), DOES_NOT)
def test_does_not_hold(text: str, way_out: str) -> None:
    (question,) = questions(text)
    assert question.weight is Weight.QUESTION
    assert way_out in question.hint
    assert "does not hold" in question.what


@pytest.mark.parametrize("text", NO_CLAIM)
def test_no_claim(text: str) -> None:
    assert questions(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "El pastel tiene más del triple de energía que la manzana.",
        "El pastel tiene más de cuatro veces la energía de la manzana.",
        "La papa y la leche tienen más o menos lo mismo.",
        "La papa y la leche son más o menos iguales.",
        "La pizza tiene dos tercios de la energía del sándwich.",
        "El sándwich es el que más tiene.",
        "El que más tiene es el sándwich.",
        "La que menos tiene es la manzana.",
        "El pastel tiene 320 kcal más.",
        "El quiosco tiene más.",
    ],
)
def test_holds_in_spanish(text: str) -> None:
    assert questions(text, "es") == []


@pytest.mark.parametrize(
    ("text", "way_out"),
    [
        ("El pastel tiene casi el doble que la manzana.", "say `más de cuatro veces`"),
        ("El pastel tiene el doble.", "say `más de cuatro veces`"),
        ("La manzana tiene la mitad de la energía del pastel.", "say `menos de un cuarto`"),
        ("El sándwich tiene más del triple que la pizza.", "say `140 kcal más`"),
        ("La papa y la leche tienen lo mismo.", "say `más o menos lo mismo`"),
        ("El que tiene más es el pastel.", "name the food that holds 420"),
        ("El pastel es el que más tiene.", "name the food that holds 420"),
        ("El pastel tiene 330 kcal más que la manzana.", "say `320 kcal más`"),
        ("El pastel tiene más energía que el sándwich.", "say `menos`"),
        ("En la segunda fila el quiosco tiene más.", "say `menos`"),
        ("El lado de casa tiene más.", "say `menos`"),
    ],
)
def test_does_not_hold_in_spanish(text: str, way_out: str) -> None:
    (question,) = questions(text, "es-MX")
    assert way_out in question.hint


@pytest.mark.parametrize(
    "text",
    [
        "Come la mitad de una manzana.",
        "La mitad del plato son verduras y frutas.",
        "Corta la papa por la mitad.",
        "Jugamos dos veces al día, tres veces por semana.",
        "Dobla la servilleta: usa el doble de la tela.",
        "¿El pastel tiene el doble que la manzana?",
        "El pastel no tiene el doble que la manzana.",
        "Haz lo mismo con la otra pierna.",
        "Tiene el doble de sodio.",
    ],
)
def test_no_claim_in_spanish(text: str) -> None:
    assert questions(text, "es") == []


def test_a_language_without_a_grammar_is_left_alone() -> None:
    lesson = worked(LUNCH.format(*ENGLISH, sides="A, B", text="The pie holds twice as much."))
    assert list(claim_questions(lesson, "fr")) == []


def test_the_question_stands_at_the_text() -> None:
    (question,) = questions("The pie holds twice as much.")
    assert (question.place.path, question.place.line) == ("lessons/try/lesson.yaml", 16)


@pytest.mark.parametrize(
    ("first", "second", "text", "wrong"),
    [
        # Tolerances, ours: double 1.9 to 2.1, almost double 1.7 to below 2, about the same 10 %
        (190, 100, "double", 0),
        (210, 100, "double", 0),
        (189, 100, "double", 1),
        (211, 100, "double", 1),
        (170, 100, "almost double", 0),
        (199, 100, "almost double", 0),
        (169, 100, "almost double", 1),
        (200, 100, "almost double", 1),
        (201, 100, "more than double", 0),
        (200, 100, "more than double", 1),
        (180, 100, "about double", 0),
        (221, 100, "about double", 1),
        (90, 100, "about the same as", 0),
        (89, 100, "about the same as", 1),
        (100, 100, "the same as", 0),
        (99, 100, "the same as", 1),
        (0, 100, "twice", 1),
        (100, 0, "twice", 1),
    ],
)
def test_tolerances(first: int, second: int, text: str, wrong: int) -> None:
    stops = f"""
    - compare:
        id: c
        measure: energy
        sides: [Gate, Pond]
        rows:
          - [{{name: Bread, value: {first}, source: L}}, {{name: Cake, value: {second}, source: L}}]
        reveal: The bread holds {text} the cake.
    """
    assert len(list(words_against_numbers(worked(stops)))) == wrong


def test_both_rules_are_among_those_of_a_lesson() -> None:
    lesson = worked(
        """
        - compare:
            id: c
            measure: sugars
            sides: [Gate, Pond]
            rows: [[{name: Punch, amount: 10 g, value: 20, source: L}, {name: Tea, value: 5, source: L}]]
            reveal: The punch holds twice as much.
        """
    )
    assert [problem.weight for problem in check_lesson(lesson)] == [Weight.MUST, Weight.QUESTION]
