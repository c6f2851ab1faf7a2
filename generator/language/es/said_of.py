"""What tells in Spanish what a number is said of."""

from __future__ import annotations

import re

from generator.language.around_numbers import after, before, words
from generator.language.es.measures import UNITS
from generator.language.said_of import SaidOf

_LEEWAY = r"(?:(?:alrededor de|cerca de|casi|exactamente|solo|sólo|unos|unas|más de|menos de)\s+)?"

SAID_OF = SaidOf(
    units={unit: after(rf"(?:de )?(?:{called})(?: más)?") for unit, called in UNITS.items()},
    teaspoons=after("cucharaditas?"),
    counts=after(
        "conteos?", "cuentas?", "movimientos?", r"veces(?!\s+(?:la|el|lo|tant[oa]s?|más|y)\b)"
    ),
    groups={
        1: after("unidades"),
        10: after("decenas"),
        20: after("veintenas"),
        100: after("centenas"),
    },
    gap_before=re.compile(
        r"\bdiferencia\b[^.;!?\d]{0,60}?(?:\b(?:es|son|era|de|hace)|=)\s+"
        rf"{_LEEWAY}$",
        re.IGNORECASE,
    ),
    left_over=re.compile(r"(?!)"),
    bound_before=before(
        r"hasta(?:\s+el)?",
        r"dentro\s+del?",
        r"menores\s+de",
        r"(?:cuent\w+|contar|contando)\s+(?:del?\s+\w+\s+)?(?:al?|hasta)",
    ),
    food_before=re.compile(
        r"(?P<food>[^,;:.!?¿¡]{3,80}?)\s+(?:tienen?|contienen?|llevan?|traen?|aportan?)\s+"
        rf"{_LEEWAY}$",
        re.IGNORECASE,
    ),
    part_of_more=words("con", "sin", "más", "y", "e", "o", "u"),
    row_after=after(r"(?:de|en)\s+(?:la\s+)?(?:\w+\s+)?filas?"),
    operator_after=re.compile(
        r"\s*(?:[-−–+×÷*/]\s*\d|(?:menos|más|por|entre|dividido)\s+\d)", re.IGNORECASE
    ),
    pause=words(r"pausa", r"det[eé]n el video"),
    food_word=0,
)
