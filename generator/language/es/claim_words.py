"""What Spanish claims are made of: numbers, shares, words of holding, and how exactly all is meant."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.es.measures import MEASURES, UNITS
from generator.language.form import Leeway

ONES = ("dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce")
"""From two."""
_MORE = (
    "un una uno trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte treinta"
    " cuarenta cincuenta sesenta setenta ochenta noventa cien ciento doscientos doscientas"
    " trescientos trescientas cuatrocientos cuatrocientas quinientos quinientas seiscientos"
    " seiscientas setecientos setecientas ochocientos ochocientas novecientos novecientas mil"
)
_PARTS = ("tercio", "cuarto", "quinto", "sexto", "séptimo", "octavo", "noveno", "décimo")
_PARTS_OF = {"tercera": 3, "cuarta": 4, "quinta": 5, "sexta": 6, "décima": 10}

LEEWAYS = {
    Leeway.AT_LEAST: ("al menos", "por lo menos", "como mínimo", "suficiente", "alcanzan?"),
    Leeway.AT_MOST: ("a lo sumo", "como mucho", "como máximo"),
    Leeway.ABOUT: (
        "más o menos", "alrededor del?", "aproximadamente", "cerca del?", "unos", "unas",
    ),
    Leeway.ALMOST: ("casi", "poco menos del?", "un poco menos del?"),
    Leeway.BARELY: ("apenas",),
    Leeway.OVER: ("más del?", "más que", "algo más del?", "un poco más del?"),
    Leeway.UNDER: ("menos del?", "menos que"),
}  # fmt: skip
_SOME = "|".join(
    sorted((word for some in LEEWAYS.values() for word in some), key=len, reverse=True)
)
LEE = rf"(?P<leeway>(?:{_SOME})\s+)"
"""How exactly a number is meant."""
ONLY = r"(?:(?:solo|sólo|solamente|exactamente|justo|justamente|hasta|incluso|todavía)\s+)"
"""Words that leave a number as it is."""
MEASURE = rf"(?:{'|'.join(MEASURES.values())})\b"
"""Words that name a measure."""
WHAT = rf"(?:{'|'.join(MEASURES.values())}|gramos|miligramos|mg|cantidad)"
"""What is held."""
UNIT = rf"(?:{'|'.join(UNITS.values())})"
"""Units behind a number."""
HOLD = r"(?:tienen?|tenía|contienen?|llevan?|traen?|dan?|aportan?)"
"""Words of holding."""
BE = r"(?:es|son|era|eran)\s+"
"""Words of being."""
HOLDS = rf"(?:{HOLD}|es|son|hay)\s+"
"""Words of holding, and of being."""
_WORDS = "|".join(sorted((*ONES, *_MORE.split()), key=len, reverse=True))
NUMBER = rf"(?:\d+(?:[.,]\d+)*(?:\s?[¼-¾])?|(?:{_WORDS})(?:\s+(?:y\s+)?(?:{_WORDS}|medi[oa])\b)*)"
"""A number in digits or words."""
MULTIPLE = r"(?P<n>doble|triple|cuádruple)\b"
"""A multiple in one word."""
TIMES = rf"(?:{NUMBER}\s+veces\s+y\s+media|una\s+vez\s+y\s+media|{NUMBER}\s+veces)"
"""A multiple of some number."""
PART = (
    rf"(?:la\s+mitad|un[oa]?\s+(?:{'|'.join(_PARTS)})|la\s+(?:{'|'.join(_PARTS_OF)})\s+parte"
    r"|dos\s+tercios|dos\s+quintos|tres\s+cuartos|tres\s+quintos|cuatro\s+quintos)"
)
"""A share in words."""
PERCENT = rf"{NUMBER}\s*(?:%|por\s+ciento\b)"
"""A share in hundredths."""
SHARES = {
    "la mitad": Fraction(1, 2),
    "dos tercios": Fraction(2, 3),
    "dos quintos": Fraction(2, 5),
    "tres cuartos": Fraction(3, 4),
    "tres quintos": Fraction(3, 5),
    "cuatro quintos": Fraction(4, 5),
    **{f"un {part}": Fraction(1, n) for n, part in enumerate(_PARTS, 3)},
    **{f"la {part} parte": Fraction(1, n) for part, n in _PARTS_OF.items()},
}
"""What each share is."""
OF = rf"\s+(?:del?\s+)?(?:(?:la|el)\s+)?(?:{WHAT}\b|lo\s+que\b|que\b)"
"""Words behind a multiple or share that make it one of an amount of food."""
ENDS = rf"(?=\s*(?:$|[.,;:!)]|(?:que(?!\s+(?:\d|nada|agua))|en|para|solo)\b|(?:de\s+)?{WHAT}\b))"
"""Words that may follow *more*; any other word is what there is more of."""
BEFORE_MORE = r"(?:(?:mucho|mucha|bastante|un\s+poco|un\s+poquito|algo|aún|todavía)\s+)"
"""How much more, without a number."""
COUNTED = re.compile(
    rf"(?<!\bfila\s)(?<!\bfilas\s)\b(?P<n>medi[oa]|{NUMBER})\s+"
    r"(?:(?:tazas?|rebanadas?|tazones|vasos|botellas|latas|porciones|piezas|pedazos)\s+de\s+)?$",
    re.IGNORECASE,
)
"""How many portions of a food are spoken of, right before its name."""
