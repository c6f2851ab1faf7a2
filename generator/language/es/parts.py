"""Halves, dozens and zero as Spanish says them."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.es.measures import MEASURES
from generator.language.number_words import Nothing, Parts, table

_HALF, _QUARTER, _THREE = Fraction(1, 2), Fraction(1, 4), Fraction(3, 4)
_HOLDS = r"(?:tienen?|tenía|contienen?|llevan?|traen?|dan?|aportan?|hay)"
_MEASURE = rf"(?P<measure>{'|'.join(MEASURES.values())})"

PARTS = Parts(
    before=table(
        {
            **dict.fromkeys(("medio", "media"), _HALF),
            **dict.fromkeys(("un cuarto de", "cuarto de"), _QUARTER),
            "tres cuartos de": _THREE,
        }
    ),
    behind=table(
        {
            **dict.fromkeys(("y medio", "y media"), _HALF),
            "y un cuarto": _QUARTER,
            "y tres cuartos": _THREE,
        }
    ),
    couple=table(dict.fromkeys(("un par de", "par de"), Fraction(2))),
    large={
        **dict.fromkeys(("docena", "docenas"), 12),
        **dict.fromkeys(("centenar", "centenares", "cientos"), 100),
        **dict.fromkeys(("millar", "millares", "miles", "mil"), 1000),
    },
    loose=frozenset(["docena", "docenas", "centenar", "centenares", "millar", "millares"]),
    one=frozenset(),
    alone={"docena": 12},
    never_alone=frozenset(
        ["la", "cada", "por", "esta", "esa", "otra", "primera", "alguna", "ninguna", "media"]
    ),
    units=frozenset(
        [
            "g",
            "gramo",
            "gramos",
            "mg",
            "miligramo",
            "miligramos",
            "kcal",
            "kilocaloria",
            "kilocalorias",
            "caloria",
            "calorias",
            "cucharadita",
            "cucharaditas",
        ]
    ),
    of=frozenset({"de"}),
    held=frozenset(
        [
            "azucar",
            "azucares",
            "sodio",
            "grasa",
            "grasas",
            "fibra",
            "proteina",
            "proteinas",
            "calcio",
            "hierro",
            "potasio",
            "vitamina",
            "energia",
        ]
    ),
    goes_on=frozenset(["de", "mas", "menos", "en", "que", "para", "y", "o", "pero", "es", "son"]),
)

NOTHING = Nothing(
    alone=frozenset({"nada", "ninguno", "ninguna"}),
    of=re.compile(
        rf"\b(?:(?P<verb>{_HOLDS})\s+(?=(?:cero|0|nada)\b)|(?:es|está|viene|queda)\s+(?=sin\b)|(?=no\s))"
        rf"(?P<said>(?:no\s+{_HOLDS}\s+(?:nada\s+de\s+)?|(?:cero|0)\s+(?:de\s+)?|nada\s+de\s+|sin\s+(?:nada\s+de\s+)?){_MEASURE})\b"
        r"(?!\s+añadid|\s+agregad)",
        re.IGNORECASE,
    ),
    measures={measure: re.compile(name, re.IGNORECASE) for measure, name in MEASURES.items()},
)
