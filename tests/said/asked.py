"""What is asked about a phrase or a sentence that stands in the script of a lesson."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

from generator.check.spoken_numbers import spoken_numbers
from generator.compute.result import LessonResult
from tests.claim_questions import claim_questions
from tests.said.sets import About, Phrase
from tests.worked import worked

_FOODS = {"en": ("Bread", "Cake"), "es": ("Pan", "Torta")}
_MEASURES: Mapping[str, str] = {
    "sodi": "sodium", "mg": "sodium", "milig": "sodium", "millig": "sodium",
    " g": "sugars", "teaspoon": "sugars", "cucharadita": "sugars",
}  # fmt: skip
"""What a phrase speaks of, by what stands in it."""


def of_phrase(phrase: Phrase, value: Decimal) -> list[str]:
    """What is asked where the food holds this value, in the unit of the phrase."""
    measure = next((m for sign, m in _MEASURES.items() if sign in phrase.sentence), "energy")
    if measure == "energy" and value != value.to_integral_value():
        measure = "sugars"
    if "teaspoon" in phrase.sentence or "cucharadita" in phrase.sentence:
        value *= 4  # grams of sugar in one (``Measure.SUGARS``)
    first, second = _FOODS[phrase.language]
    foods = ((first, f"{value:f}"), (second, "33"))
    about = About(phrase.language, measure, ("Gate", "Pond"), foods)
    return [one.what for one in spoken_numbers(lesson(about, say=phrase.sentence))]


def can_be_shown(phrase: Phrase) -> bool:
    """Whether a food can hold it: no label is finer than a tenth."""
    return phrase.value * 10 % 1 == 0


def other_than(phrase: Phrase) -> Decimal:
    """A value for which a phrase is wrong, far enough away that *about* does not help it."""
    value = phrase.value
    return value + max(Decimal(2), (value / 3).to_integral_value())


def of_sentence(about: About, text: str) -> list[str]:
    """What is asked about a sentence, as a claim or as a number."""
    result = lesson(about, say=text)
    claims = claim_questions(result, about.language)
    return [one.what for one in (*claims, *spoken_numbers(result))]


def lesson(about: About, **texts: str) -> LessonResult:
    """A lesson with one comparison, in the language of its texts."""
    foods = [f'{{name: "{name}", value: {value}, source: Label}}' for name, value in about.foods]
    rows = "".join(
        f"\n      - [{one}, {other}]" for one, other in zip(foods[::2], foods[1::2], strict=True)
    )
    said = "".join(
        f"\n    {name}: '{text.replace(chr(39), chr(39) * 2)}'" for name, text in texts.items()
    )
    result = worked(
        f"""
- compare:
    id: lunch
    measure: {about.measure}
    sides: [{", ".join(about.sides)}]
    rows:{rows}{said}
"""
    )
    return replace(result, lesson=replace(result.lesson, language=about.language))
