"""A record of FoodData Central as a ready entry of ``site_data/foods.yaml``."""

from __future__ import annotations

import json
import re
import unicodedata
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.model.amount import parse_amount
from generator.model.food_record import FoodRecord, RecordPortion

HEAVIEST = Decimal(5000)
"""Grams; a portion beyond it is a whole turkey, and no amount in a lesson."""
_SHELVES = (
    (r"\bjuice|beverage|drink|\bmilk, |coffee|\btea\b", "drinks"),
    (r"^egg|legume|poultry|sausage|pork|beef|lamb|finfish|shellfish|nut and seed", "protein"),
    (r"^soup|fast food|meal|restaurant|baby|american indian|mixed", "mixed"),
    (r"sauce|spice", "sauces"),
    (r"dairy|cheese|yogurt", "dairy"),
    (r"fats and oils", "fats"),
    (r"snack", "snacks"),
    (r"fruit", "fruit"),
    (r"vegetable", "vegetables"),
    (r"cereal|baked|grain|bread|pasta", "grains"),
    (r"sweet|candy|dessert", "sweets"),
)
"""Words of a record's title or shelf, and the group they speak for; the first that fits decides."""
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


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the educator decides herself; an empty one is proposed."""

    id: str = ""
    """What a lesson is to call the food."""
    name: str = ""
    """Plain name in English."""
    group: str = ""
    """Shelf of the library."""


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
    title = _NOTE.sub("", record.description)
    name = wishes.name or ", ".join(_parts(title)[:2])
    id_ = wishes.id or _free_id(title, taken)
    group = wishes.group or proposed_group(title, record.category)
    portions = _portions(record)
    lines = (
        f"{id_}:",
        f"  names: {{en: {scalar(name)}}} # add es: the Spanish name",
        f"  group: {group}",
        f"  fdc: {record.fdc}",
        f"  record: {json.dumps(title, ensure_ascii=False)}",
        f"  per_100g: {{{', '.join(_figures(record))}}}",
        "  portions:",
        *(
            f"    - {{names: {{en: {scalar(said)}}}, grams: {figure(portion.grams)}, "
            f"record: {scalar(portion.wording)}}}"
            for said, portion in portions
        ),
        *([f"  release: {json.dumps(record.release)}"] if own_release else []),
        *(["  drink: true"] if group == "drinks" else []),
    )
    return FoodEntryText(id_, name, group, portions[0][0], lines)


def proposed_group(title: str, category: str) -> str:
    """The group a title and a shelf speak for; ``mixed`` where neither says."""
    said = ((title, category) if category else (title,)) if category != "Beverages" else (category,)
    for text in reversed(said):
        for words, group in _SHELVES:
            if re.search(words, text.lower()):
                return _closer(title, group)
    return "mixed"


def figure(value: Decimal | None) -> str:
    """A figure as the file writes it."""
    return "no value" if value is None else format(value.normalize(), "f") if value else "0"


def scalar(text: str) -> str:
    """A text for YAML, in quotes where YAML would make something else of it."""
    if _SIMPLE.fullmatch(text) and text.lower() not in _GUESSED and not _like_number(text):
        return text
    return json.dumps(text, ensure_ascii=False)


def _closer(title: str, group: str) -> str:
    """What the title knows better than the shelf: juices are drunk, sauces poured, soups eaten."""
    first = title.lower()
    if group == "fruit" and "juice" in first and "canned" not in first:
        return "drinks"
    if group == "mixed" and re.match(r"sauce|gravy|dip", first):
        return "sauces"
    if group == "sauces" and first.startswith("soup"):
        return "mixed"
    if group == "dairy" and first.startswith("egg"):
        return "protein"
    return group


def _parts(title: str) -> list[str]:
    """A record's title names the food first and narrows it down after each comma."""
    plain = re.sub(r"\s*\([^)]*\)?", "", title)
    return [part.strip() for part in plain.split(",") if part.strip()] or [title]


def _free_id(title: str, taken: Collection[str]) -> str:
    parts = _parts(title)
    for count in range(min(2, len(parts)), len(parts) + 1):
        if (proposed := _slug(" ".join(parts[:count]))) not in taken:
            return proposed
    number = 2
    while f"{proposed}-{number}" in taken:
        number += 1
    return f"{proposed}-{number}"


def _slug(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60].rstrip("-") or "food"


def _figures(record: FoodRecord) -> Iterator[str]:
    return (f"{name}: {figure(value)}" for name, value in record.per_100g.items())


def _portions(record: FoodRecord) -> list[tuple[str, RecordPortion]]:
    """Wording for a lesson and portion; 100 g alone where the record weighs nothing usable."""
    kept: dict[str, tuple[str, RecordPortion]] = {}
    for portion in record.portions:
        said = _said(portion.wording)
        amount = parse_amount(said)
        if amount and amount.number > 0 and not amount.grams and portion.grams <= HEAVIEST:
            kept.setdefault(amount.unit, (said, portion))
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
