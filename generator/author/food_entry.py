"""A record of FoodData Central as a ready entry of ``site_data/foods.yaml``."""

from __future__ import annotations

import json
import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.author.food_care import NOBODY_LOOKED, FoodCare, care_lines, care_told
from generator.author.food_label import notes, record_title
from generator.author.food_proposal import free_id, is_drunk, proposed_group, proposed_name
from generator.compute.record_words import eaten_cooked
from generator.model.amount import Amount, parse_amount, same_unit
from generator.model.food_record import FoodRecord, RecordPortion

HEAVIEST = Decimal(5000)
"""Grams; a portion beyond it is a whole turkey, and no amount in a lesson."""
_NOTE = re.compile(r"\s*\(includes foods for [^)]*\)", re.IGNORECASE)
_SIMPLE = re.compile(r"[A-Za-z0-9][\w ./()%+-]*[\w).%]|[A-Za-z]", re.ASCII)
_GUESSED = {
    "true",
    "false",
    "null",
    "yes",
    "no",
    "on",
    "off",
}  # words YAML takes for something else
_FRACTIONS = {"0.25 ": "1/4 ", "0.5 ": "1/2 ", "0.75 ": "3/4 "}


@dataclass(frozen=True, slots=True)
class FoodEntryText:
    """An entry to be put into the file."""

    id: str
    """What a lesson calls it."""
    name: str
    """Proposed plain name in English."""
    group: str
    """The shelf of the library it is put on."""
    amount: str
    """An amount a lesson can ask for."""
    lines: tuple[str, ...]
    """The entry, without the indent of the file."""
    raw: bool
    """Whether it is eaten only cooked, so that no lesson can name it."""
    left: tuple[str, ...]
    """What is to be looked at before a lesson shows it, a sentence each."""


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the educator decides herself; an empty one is proposed."""

    id: str = ""
    """What a lesson is to call the food."""
    name: str = ""
    """Plain name in English."""
    group: str = ""
    """Shelf of the library."""
    care: FoodCare = NOBODY_LOOKED
    """Allergens and choking; these are never proposed as if somebody had looked."""


def food_entry(
    record: FoodRecord, taken: Collection[str], wishes: Wishes, *, own_release: bool
) -> FoodEntryText:
    """Make the entry; what is not wished for is proposed from the record's title.

    Args:
        record: figures per 100 g, portions in grams.
        taken: ids the library holds already; the proposed one is another.
        wishes: what the educator decides.
        own_release: whether the release is not the one the file opens with.
    """
    said, title = (_NOTE.sub("", one) for one in (record.description, record_title(record)))
    name = wishes.name or proposed_name(title)
    id_ = wishes.id or free_id(title if record.label is None else name, taken)
    group = wishes.group or proposed_group(said, record.category)
    portions = usable_portions(record)
    lines = (
        f"{id_}:",
        f"  names: {{en: {scalar(name)}}} # add es: the Spanish name",
        f"  group: {group}",
        f"  fdc: {record.fdc}",
        f"  record: {json.dumps(title, ensure_ascii=False)}",
        *(f"  {note}" for note in notes(record)),
        f"  per_100g: {{{', '.join(_figures(record))}}}",
        "  portions:",
        *(
            f"    - {{names: {{en: {scalar(amount)}}}, grams: {figure(portion.grams)}, "
            f"record: {scalar(portion.wording)}}}"
            for amount, portion in portions
        ),
        *([f"  release: {json.dumps(record.release)}"] if own_release else []),
        *(["  drink: true"] if is_drunk(said, group) else []),
        *(f"  {line}" for line in care_lines(said, record.category, wishes.care)),
    )
    raw = eaten_cooked(said, record.category)
    left = tuple(care_told(id_, said, record.category, wishes.care))
    return FoodEntryText(id_, name, group, portions[0][0], lines, raw, left)


def figure(value: Decimal | None) -> str:
    """A figure as the file writes it."""
    return "no value" if value is None else format(value.normalize(), "f") if value else "0"


def scalar(text: str) -> str:
    """A text for YAML, in quotes where YAML would make something else of it."""
    if _SIMPLE.fullmatch(text) and text.lower() not in _GUESSED and not _like_number(text):
        return text
    return json.dumps(text, ensure_ascii=False)


def _figures(record: FoodRecord) -> Iterator[str]:
    return (f"{name}: {figure(value)}" for name, value in record.per_100g.items())


def usable_portions(record: FoodRecord) -> list[tuple[str, RecordPortion]]:
    """Wording for a lesson and portion; 100 g alone where the record weighs nothing usable."""
    kept: dict[Amount, tuple[str, RecordPortion]] = {}
    for portion in record.portions:
        said = _said(portion.wording)
        amount = parse_amount(said)
        if not amount or amount.number <= 0 or amount.grams or portion.grams > HEAVIEST:
            continue
        if not any(same_unit(amount, other) for other in kept):
            kept[amount] = (said, portion)
    hundred = RecordPortion("100 g", Decimal(100))
    return list(kept.values()) or [("100 g", hundred)]


def _said(wording: str) -> str:
    """A portion as a lesson asks for it: with a number in front, halves and quarters as fractions."""
    said = wording if wording[:1].isdigit() else f"1 {wording}"
    for decimal, fraction in _FRACTIONS.items():
        if said.startswith(decimal):
            return fraction + said[len(decimal) :]
    return said


def _like_number(text: str) -> bool:
    return bool(re.fullmatch(r"[\d._+-]+(e[\d+-]+)?", text, re.IGNORECASE))
