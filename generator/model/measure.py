"""What a lesson can compare, and the unit each measure is counted in."""

from __future__ import annotations

from enum import StrEnum


class Measure(StrEnum):
    """A measure of a food, named as in a lesson file."""

    ENERGY = "energy"
    SODIUM = "sodium"
    SUGARS = "sugars"
    SATURATED_FAT = "saturated_fat"
    FIBER = "fiber"
    PROTEIN = "protein"

    @property
    def unit(self) -> str:
        """The unit its values are given and shown in: kcal, mg or g."""
        return _UNITS[self]


_UNITS = {
    Measure.ENERGY: "kcal",
    Measure.SODIUM: "mg",
    Measure.SUGARS: "g",
    Measure.SATURATED_FAT: "g",
    Measure.FIBER: "g",
    Measure.PROTEIN: "g",
}
