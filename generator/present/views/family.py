"""The sheet that a family takes home."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.amounts import ColumnView


@dataclass(frozen=True, slots=True)
class FoundView:
    """What was found out at one stop."""

    heading: str
    """Of the stop."""
    about: str
    """What is compared there, in a sentence, or who a day is about."""
    lines: tuple[str, ...]
    """A gap each, in plain words."""


@dataclass(frozen=True, slots=True)
class GivenView:
    """One of the two numbers of the gap that is found again."""

    side: str
    """Name of the side, or of the day's number."""
    food: str
    """With its amount; empty where it is no food."""
    value: str
    """With its unit."""


@dataclass(frozen=True, slots=True)
class AgainView:
    """One gap to find again, with room to work."""

    asks: str
    given: tuple[GivenView, ...]
    """None where the question holds the numbers itself."""
    columns: tuple[ColumnView, ...]
    """Squares to subtract in."""
    answer: str
    """Printed upside down at the foot."""


@dataclass(frozen=True, slots=True)
class FamilyView:
    """One sheet to take home: what we found out, a gap to find again, two things to talk about, care."""

    title: str
    meta: str
    intro: tuple[str, ...]
    """What was done with the numbers, and what was not asked."""
    plums: Markup
    """The gaps as plums, without numbers; empty where the lesson compares nothing."""
    found: tuple[FoundView, ...]
    left_for_below: str
    """That one gap is missing among them; empty where none is."""
    again: AgainView
    talks: tuple[Markup, ...]
    """Two of them; nothing about what anybody ate and nothing about bodies."""
    care: tuple[str, ...]
    """What the lesson's own foods ask for, and what the numbers are not for."""
    before: tuple[str, ...]
    """Room check and stop signs, for whoever moves again; empty where the lesson has no moves."""
    qr: Markup
    """SVG of the lesson's address; empty while the site has none."""
    address: str
