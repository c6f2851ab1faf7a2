"""What a record's title and shelf propose for its entry: a name, an id, a group."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection

_TITLES = (
    (r"juice|lemonade|fruit punch|coffee|\btea\b|\bcocoa, |\bmilk, |milkshake", "drinks"),
    (r"^egg|tofu|nuts|peanut|beans|lentils|chickpeas", "protein"),
    (r"cheese|yogurt|\bmilk", "dairy"),
    (r"^soup|burrito|pizza|sandwich|tamale|taco|salad", "mixed"),
    (r"sauce|gravy|salsa|dressing|syrup|vinegar", "sauces"),
    (r"bread|rice|pasta|noodles|tortilla|cereal|oats", "grains"),
)
"""Words of a record's title, for records whose shelf is not known; the first that fits decides."""
_SHELVES = (
    (r"beverage|drink", "drinks"),
    (r"fast food|meal|restaurant|baby|american indian|mixed", "mixed"),
    (r"egg products|dairy|cheese|yogurt|^milk", "dairy"),
    (r"legume|beans|poultry|sausage|pork|beef|lamb|fish|meat|seafood|nut and seed|^egg", "protein"),
    (r"soup|sauce|spice", "sauces"),
    (r"fats and oils", "fats"),
    (r"snack", "snacks"),
    (r"fruit", "fruit"),
    (r"vegetable", "vegetables"),
    (r"cereal|baked|grain|bread|pasta", "grains"),
    (r"sweet|candy|dessert", "sweets"),
)
"""Words of a record's shelf, and the group they speak for; the first that fits decides."""
_KNOWN_BETTER = (
    ("sauces", r"^soup", "mixed"),
    ("mixed", r"^(sauce|gravy|dip)", "sauces"),
    ("dairy", r"^(eggs?\b)", "protein"),
    ("dairy", r"^(butter|cream)\b", "fats"),
    ("fruit", r"^[^,]*\b(juice|nectar)\b", "drinks"),
    ("vegetables", r"^[^,]*\bjuice\b", "drinks"),
    ("vegetables", r"\bsauce|catsup|pickle|relish", "sauces"),
    ("protein", r"^soymilk", "dairy"),
    ("protein", r"^(soy sauce|miso)", "sauces"),
    ("drinks", r"(almond|coconut|rice|oat|soy) milk", "dairy"),
    (
        "grains",
        r"cake\b|cookie|\bpies?\b|doughnut|danish|pastr|brownie|cream puff|eclair",
        "sweets",
    ),
    ("grains", r"cracker", "snacks"),
)
"""What a title knows better than its shelf: eggs are no dairy, and a juice is drunk."""
_DRUNK = re.compile(r"(milk,|soymilk|beverages, .*milk)", re.IGNORECASE)


def proposed_group(title: str, shelf: str) -> str:
    """The group a record's shelf and title speak for; ``mixed`` where neither says."""
    first = title.lower()
    group = _spoken_for(_SHELVES, shelf.lower()) or _spoken_for(_TITLES, first) or "mixed"
    for of, words, better in _KNOWN_BETTER:
        if of == group and re.search(words, first):
            return better
    return group


def proposed_name(title: str) -> str:
    """The food and what narrows it down first; whether a brand is among it only people can tell."""
    return ", ".join(_parts(title)[:2])


def is_drunk(title: str, group: str) -> bool:
    """Whether the title or the group says that it is a drink."""
    return group == "drinks" or _DRUNK.match(title) is not None


def free_id(title: str, taken: Collection[str]) -> str:
    """An id no food has: the first words of the title, and more of them while that one is taken."""
    parts = _parts(title)
    for count in range(min(2, len(parts)), len(parts) + 1):
        if (proposed := _slug(" ".join(parts[:count]))) not in taken:
            return proposed
    number = 2
    while f"{proposed}-{number}" in taken:
        number += 1
    return f"{proposed}-{number}"


def _spoken_for(table: tuple[tuple[str, str], ...], text: str) -> str:
    return next((group for words, group in table if re.search(words, text)), "")


def _parts(title: str) -> list[str]:
    """A record's title names the food first and narrows it down after each comma."""
    plain = re.sub(r"\s*\([^)]*\)?", "", title)
    return [part.strip() for part in plain.split(",") if part.strip()] or [title]


def _slug(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60].rstrip("-") or "food"
