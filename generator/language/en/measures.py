"""What each measure and each unit is called in English."""

from __future__ import annotations

from generator.model.measure import Measure, Unit

MEASURES = {
    Measure.ENERGY: r"energy|calories|kilocalories|kcal",
    Measure.SODIUM: r"sodium|salt",
    Measure.SUGARS: r"sugars?|teaspoons(?: of sugars?)?",
    Measure.SATURATED_FAT: r"saturated fat|fat",
    Measure.FIBER: r"fib(?:er|re)",
    Measure.PROTEIN: r"protein",
    Measure.CALCIUM: r"calcium",
    Measure.IRON: r"iron",
    Measure.POTASSIUM: r"potassium",
    Measure.VITAMIN_C: r"vitamin C",
}
"""Words of a claim that name a measure; a test asks for every one of the table."""

UNITS = {
    Unit.KCAL: r"kcal|kilocalories?|calories?",
    Unit.GRAM: r"g|grams?",
    Unit.MILLIGRAM: r"mg|milligrams?",
}
"""Words behind a number that name its unit, written or spoken."""
