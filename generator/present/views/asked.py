"""A question whose answer can be checked: on the page, on paper and in the notes."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup


@dataclass(frozen=True, slots=True)
class OptionView:
    """One answer to choose from."""

    value: str
    """The same in every language."""
    says: str
    right: bool


@dataclass(frozen=True, slots=True)
class AskedView:
    """What there is to choose or to write, and what is right."""

    form: str
    """Address of its form on the page, and what an entry is kept under: ``guess--answer``."""
    options: tuple[OptionView, ...]
    """Nothing where a number is to be written."""
    right: str
    """Value of the right option, or the number as a machine writes it."""
    unit: str
    """Of the number; empty for a choice, and for a plain number."""
    answer: str
    """The right answer in words, or the number with its unit."""
    working: str
    """``920 ÷ 2 = 460``; empty where nothing is reckoned."""
    says: str
    """The answer as a sentence."""


@dataclass(frozen=True, slots=True)
class PartingView:
    """The parting question of a lesson."""

    prompt: Markup
    hint: Markup
    """Empty where there is none."""
    reveal: Markup
    """Empty where there is none."""
    asked: AskedView
