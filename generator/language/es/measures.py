"""What each measure and each unit is called in Spanish."""

from __future__ import annotations

from generator.model.measure import Measure, Unit

MEASURES = {
    Measure.ENERGY: r"energía|calorías|kilocalorías|kcal",
    Measure.SODIUM: r"sodio|sal",
    Measure.SUGARS: r"azúcar(?:es)?|cucharaditas(?: de azúcar)?",
    Measure.SATURATED_FAT: r"grasas?(?: saturadas?)?",
    Measure.FIBER: r"fibra",
    Measure.PROTEIN: r"proteínas?",
    Measure.CALCIUM: r"calcio",
    Measure.IRON: r"hierro",
    Measure.POTASSIUM: r"potasio",
    Measure.VITAMIN_C: r"vitamina C",
}
"""Words of a claim that name a measure; a test asks for every one of the table."""

UNITS = {
    Unit.KCAL: r"kcal|kilocalorías?|calorías?",
    Unit.GRAM: r"g|gramos?",
    Unit.MILLIGRAM: r"mg|miligramos?",
}
"""Words behind a number that name its unit, written or spoken."""
