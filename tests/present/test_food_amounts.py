"""Amounts of food are said as people write them, whatever the number, the portion and the language."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from babel import Locale

from generator.compute.holding import hold
from generator.model.amount import parse_amount
from generator.model.measure import Measure
from generator.model.stops.compare import Item
from generator.present.words.food_amount import amount_words
from generator.present.words.foreign import is_marked
from generator.present.words.say import Say
from tests.project import library

SAY = {language: Say(library().words[language]) for language in ("en", "es")}
NUMBERS = ["1/4", "1/3", "1/2", "2/3", "1", "1 1/2", "2", "3", "5"]


def said(food: str, amount: str, language: str) -> str:
    """An amount of a food on a page of a language, its no-break spaces as plain ones."""
    item = Item(food=food, amount=amount)
    measure = next(one for one in Measure if library().foods[food].value(one) is not None)
    words = amount_words(hold(item, measure, library(), food), SAY[language])
    assert not is_marked(words), words
    return words.replace("\N{NO-BREAK SPACE}", " ")


@pytest.mark.parametrize(
    ("food", "amount", "english", "spanish"),
    [
        ("banana-bread", "2 slices", "2 slices", "2 rebanadas"),
        ("banana-bread", "1 slice", "1 slice", "1 rebanada"),
        ("chili-with-beans", "1 1/2 cup", "1 1/2 cups", "1 1/2 tazas"),
        ("blueberries-raw", "2/3 cup", "2/3 cup", "2/3 de taza"),
        ("blueberries-raw", "2/3 cups", "2/3 cup", "2/3 de taza"),
        ("blueberries-raw", "1/2 cup", "1/2 cup", "1/2 taza"),
        ("blueberries-raw", "0.5 cup", "1/2 cup", "1/2 taza"),
        ("blueberries-raw", "1.2 cup", "1.2 cups", "1.2 tazas"),
        ("blueberries-raw", "1200 cup", "1,200 cups", "1,200 tazas"),
        ("blueberries-raw", "7/3 cup", "2 1/3 cups", "2 1/3 tazas"),
        ("blueberries-raw", "100 grams", "100 g", "100 g"),
        ("blueberries-raw", "1/3 g", "0.33 g", "0.33 g"),
        ("blueberries-raw", "1500g", "1,500 g", "1,500 g"),
        ("butter-salted", "1/3 tbsp", "1/3 tbsp", "1/3 de cucharada"),
        ("apple-raw", "3 medium", "3 medium", "3 medianas"),
        ("apple-raw", "1/2 medium", "1/2 medium", "1/2 pieza mediana"),
        ("apple-raw", "1/4 large", "1/4 large", "1/4 de pieza grande"),
        ("tomato-raw", "2 cups chopped", "2 cups chopped", "2 tazas, picado"),
        ("almonds", "2 cups whole", "2 cups whole", "2 tazas, enteras"),
        ("french-fries", "2 small servings", "2 small servings", "2 porciones pequeñas"),
    ],
)
def test_amounts_as_people_write_them(food: str, amount: str, english: str, spanish: str) -> None:
    """Common practice on packages and in recipes, no source; the numbers are those of the lesson."""
    assert (said(food, amount, "en"), said(food, amount, "es")) == (english, spanish)


def number_of(words: str) -> tuple[Fraction, str]:
    """What a reader takes from an amount: its number and the rest."""
    found = re.fullmatch(r"(?:(\d+) )?(\d+)(?:/(\d+))? (.*)", words)
    assert found, words
    if found[3] is None:
        return Fraction(int(found[2])), found[4]
    return int(found[1] or 0) + Fraction(int(found[2]), int(found[3])), found[4]


def portions() -> list[tuple[str, str]]:
    return [
        (name, portion.names["en"])
        for name, food in library().foods.items()
        for portion in food.entry.portions
    ]


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_portion_in_every_number(language: str) -> None:
    """Plural forms by CLDR as babel 2.18 carries it (CLDR 47, its own file of data; status R)."""
    units = library().words[language].units
    for food, portion in portions():
        unit = re.sub(r"^[\d./ ]+", "", portion)
        for number in NUMBERS:
            words = said(food, f"{number} {unit}", language)
            value, rest = number_of(words)
            wanted = parse_amount(f"{number} {unit}")
            assert wanted is not None
            assert value == wanted.number, words
            below = 0 < value < 1
            category = "one" if below else Locale(language).plural_form(float(value))
            assert rest.startswith("de ") == (language == "es" and below and value * 2 != 1), words
            rest = rest.removeprefix("de ")
            forms = [
                one.get("part", one["one"]) if below else one[category] for one in units.values()
            ]
            assert any(re.match(rf"{form}\b", rest) for form in forms), words


VOWELS = "aeiouáéíóúAEIOU"
LOANED = {"chip", "nugget", "waffle", "bagel", "cherry", "mini", "de goma", "compacta"}


def regular(language: str, word: str) -> str:
    """The regular plural. Spanish: -s after a vowel, -es after a consonant. From memory."""
    if language == "es":
        if word in {"bagel", "chip", "nugget"}:
            return word + "s"  # loan words, as they are said
        if word[-1] in VOWELS:
            return word + "s"
        plain = word[:-2] + word[-2].translate(str.maketrans("áéíóú", "aeiou")) + word[-1]
        return (plain if word.endswith("ón") else word) + "es"
    if re.search(r"[^aeiou]y$", word):
        return word[:-1] + "ies"
    if word in {"half", "leaf"}:
        return word[:-1] + "ves"
    return word + ("es" if re.search(r"(x|ch|sh|s)$|tomato$", word) else "s")


UNCHANGED = {"mini", "de", "goma", "pasa", "cherry", "oz", "fl oz", "tbsp", "tsp"}


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_tables_hold_plurals(language: str) -> None:
    for one, forms in library().words[language].units.items():
        several = forms["other"]
        if language == "en":  # the noun comes last; the words of size alone do not change
            same = {"large", "medium", "small", "oz", "fl oz", "tbsp", "tsp"}
            last = one.split()[-1]
            head = one.removesuffix(last)
            assert several == (one if one in same else head + regular("en", last))
            continue
        changed = [
            word if word in {"mini", "de", "goma"} or (word, one) == ("cherry", "tomate cherry")
            else regular("es", word)
            for word in one.split()
        ]  # fmt: skip
        assert several == " ".join(changed)


def test_the_number_of_a_name_is_the_same_in_both_languages() -> None:
    for food in library().foods.values():
        for portion in food.entry.portions:
            numbers = [re.match(r"[\d./ ]+", portion.names[language]) for language in ("en", "es")]
            assert len({found and found[0] for found in numbers}) == 1, (food.id, portion.names)


def test_the_exact_share_is_used() -> None:
    """2/3 cup of blueberries: 2/3 of 148 g (SR Legacy 171711, status R), not 0.67 of it."""
    serving = library().foods["blueberries-raw"].serving("2/3 cup")
    assert serving is not None
    assert serving.grams == Fraction(296, 3)
