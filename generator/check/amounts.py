"""Amounts of food that a language has no words for."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.food_places import food_place
from generator.check.rule import rule_of_words
from generator.compute.holding import Holding
from generator.compute.result import LessonResult
from generator.model.amount import parse_amount
from generator.model.figure import FigureKind
from generator.model.wording import FALLBACK
from generator.problems import Problem, Weight


@rule_of_words
def amounts_said(result: LessonResult) -> Iterator[Problem]:
    """A question for each amount that pages of a language can show as it is written and no other way.

    A portion without a name in the language is told where the portion stands.
    """
    language = result.lesson.language
    if language == FALLBACK:
        return
    translated = language in result.lesson.translations
    for figure in result.figures:
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            if hint := _lacking(held, language, translated=translated):
                what = f"“{held.item.amount}” cannot be said in {language}"
                place = food_place(result, figure, "amount")
                yield Problem(place, what, hint, Weight.QUESTION)


def _lacking(held: Holding, language: str, *, translated: bool) -> str:
    """The way out for an amount that cannot be said; empty for one that can."""
    amount = parse_amount(held.item.amount or "")
    if not held.item.amount or language in held.units:
        return ""
    if amount is not None and amount.grams is not None:
        return ""
    serving = held.serving
    if serving is None or serving.portion is None:
        in_grams = "write it in grams, such as `40 g`, which every language says"
        return f"{in_grams}; until then pages show it as it is" if translated else ""
    name = serving.portion.name(language)
    if name.foreign or serving.times == 1:
        return ""
    return (
        f"say what one and several of “{name.words}” are: add `units: {{{language}: {{one: …, other: …}}}}` "
        f"to this portion of `{held.id}` in site_data/foods.yaml; until then pages show it marked"
    )
