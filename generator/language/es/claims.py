"""How Spanish claims something about two numbers."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.es.measures import MEASURES, UNITS
from generator.language.form import Form, Leeway
from generator.language.grammar import Grammar, Kind, words

_ONES = ("dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez")
_PARTS = ("tercio", "cuarto", "quinto", "sexto", "séptimo", "octavo", "noveno", "décimo")
_LEEWAYS = {
    Leeway.ABOUT: ("más o menos", "alrededor del?", "aproximadamente", "cerca del?"),
    Leeway.ALMOST: ("casi", "poco menos del?"),
    Leeway.OVER: ("más del?", "más que"),
    Leeway.UNDER: ("menos del?", "menos que"),
}
_LEE = rf"(?P<leeway>(?:{'|'.join(word for some in _LEEWAYS.values() for word in some)})\s+)"
_WHAT = rf"(?:{'|'.join(MEASURES.values())}|gramos|miligramos|mg|cantidad)"
_UNIT = rf"(?:{'|'.join(UNITS.values())})"
_HOLDS = r"(?:tienen?|tenía|contienen?|llevan?|traen?|dan?|aportan?|es|son|hay)\s+"
_NUMBER = rf"(?:\d+(?:[.,]\d+)?|{'|'.join(_ONES)})"
_MULTIPLE = r"(?P<n>doble|triple|cuádruple)\b"
_PART = r"(?P<n>la\s+mitad|(?:un|la)\s+(?:tercio|cuarto|quinto|sexto|séptimo|octavo|noveno|décimo|tercera\s+parte|cuarta\s+parte|quinta\s+parte|décima\s+parte)|dos\s+tercios|tres\s+cuartos)"
_OF = rf"\s+(?:del?\s+)?(?:(?:la|el)\s+)?(?:{_WHAT}\b|lo\s+que\b|que\b)"
_ENDS = rf"(?=\s*(?:$|[.,;:!)]|(?:que|en|para|solo)\b|(?:de\s+)?{_WHAT}\b))"

_SIGNS = {
    Form.TIMES: ("doble", "triple", "cuádruple", "veces"),
    Form.SHARE: ("mitad", *_PARTS, "tercera", "cuarta", "quinta", "décima"),
    Form.SAME: ("mism", "igual", "tant"),
    Form.GAP: ("más", "menos"),
    Form.MOST: ("mayor", "más"),
    Form.LEAST: ("menor", "menos"),
    Form.MORE: ("más",),
    Form.LESS: ("menos",),
}
_PLAIN = "con sin del los las una uno dos taza tazas lado lados comida fila filas tiene tienen más menos mismo mitad bajo baja para por que"


def _kind(form: Form, text: str) -> Kind:
    return Kind(form, _SIGNS[form], re.compile(rf"\b{text}", re.IGNORECASE))


CLAIMS = Grammar(
    claims=(
        _kind(Form.TIMES, rf"{_LEE}(?:el\s+)?{_MULTIPLE}"),
        _kind(Form.TIMES, rf"el\s+{_MULTIPLE}{_OF}"),
        _kind(Form.TIMES, rf"{_HOLDS}el\s+{_MULTIPLE}(?=\s*(?:$|[.,;!]|(?:del?|que)\b))"),
        _kind(
            Form.TIMES,
            rf"{_LEE}?(?P<n>{_NUMBER}\s+veces)\s+(?:(?:la|el)\s+{_WHAT}\b|lo\s+(?:que|de)\b|tant[oa]s?\b|más\s+(?:{_WHAT}|que)\b)",
        ),
        _kind(Form.SHARE, rf"(?<!\ba\s)(?<!por\s){_LEE}?{_PART}{_OF}"),
        _kind(Form.SHARE, rf"{_HOLDS}{_LEE}?{_PART}(?=\s*(?:$|[.,;!]))"),
        _kind(
            Form.SAME,
            rf"{_LEE}?(?:la\s+misma\s+(?:cantidad|{_WHAT})|el\s+mismo\s+{_WHAT}|los\s+mismos\s+{_WHAT})\b",
        ),
        _kind(
            Form.SAME,
            rf"(?:tienen?|contienen?|llevan?|traen?|dan?|aportan?)\s+{_LEE}?lo\s+mismo{_ENDS}",
        ),
        _kind(Form.SAME, rf"(?:{_HOLDS}|quedan?\s+|salen?\s+){_LEE}?igual(?:es)?{_ENDS}"),
        _kind(Form.SAME, rf"{_HOLDS}tant[oa]s?\s+(?:{_WHAT}\s+)?como\b"),
        _kind(
            Form.GAP,
            rf"{_LEE}?(?P<n>\d+(?:[.,]\d+)*)\s*{_UNIT}?\s+(?:más\b|(?P<less>menos)\b)(?=\s*(?:[.,;!]|$|que\b|(?:de\s+)?{_WHAT}\b))",
        ),
        _kind(
            Form.MOST,
            rf"(?:{_HOLDS}(?:la\s+mayor\s+cantidad|el\s+mayor)|(?:el|la|los|las|lo)\s+que\s+(?:tienen?\s+)?más)\b",
        ),
        _kind(
            Form.LEAST,
            rf"(?:{_HOLDS}(?:la\s+menor\s+cantidad|el\s+menor)|(?:el|la|los|las|lo)\s+que\s+(?:tienen?\s+)?menos)\b",
        ),
        _kind(
            Form.MORE,
            rf"(?:tienen?|contienen?|llevan?|traen?|dan?|aportan?)\s+(?:mucho\s+|mucha\s+|un\s+poco\s+|algo\s+)?más{_ENDS}",
        ),
        _kind(
            Form.LESS,
            rf"(?:tienen?|contienen?|llevan?|traen?|dan?|aportan?)\s+(?:mucho\s+|mucha\s+|un\s+poco\s+|algo\s+)?menos{_ENDS}",
        ),
    ),
    numbers={
        "doble": Fraction(2),
        "triple": Fraction(3),
        "cuádruple": Fraction(4),
        **{one: Fraction(n) for n, one in enumerate(_ONES, 2)},
        **{f"{one} veces": Fraction(n) for n, one in enumerate(_ONES, 2)},
        **dict.fromkeys(("uno", "una", "primera"), Fraction(1)),
        **{
            name: Fraction(n)
            for n, name in enumerate(("segunda", "tercera", "cuarta", "quinta", "sexta"), 2)
        },
        "la mitad": Fraction(1, 2),
        "dos tercios": Fraction(2, 3),
        "tres cuartos": Fraction(3, 4),
        **{f"un {part}": Fraction(1, n) for n, part in enumerate(_PARTS, 3)},
        **{
            f"la {part} parte": Fraction(1, n)
            for part, n in (("tercera", 3), ("cuarta", 4), ("quinta", 5), ("décima", 10))
        },
    },
    leeways=tuple((leeway, words(*some)) for leeway, some in _LEEWAYS.items()),
    measures={measure: words(names) for measure, names in MEASURES.items()},
    doubt=words("no", "nunca", "tampoco", "si", "imagina", "imaginen", "tendrían?", "sería"),
    telling=words("por qué"),
    rows=re.compile(
        r"\bfilas?\s+(?:número\s+)?(?P<after>(?:uno|una|dos|tres|cuatro|cinco|seis|\d+)(?:(?:,|\s+y)\s+(?:uno|una|dos|tres|cuatro|cinco|seis|\d+))*)\b"
        r"|\b(?P<before>(?:primera|segunda|tercera|cuarta|quinta|sexta|última)(?:(?:,|\s+y)\s+(?:en\s+)?(?:la\s+)?(?:primera|segunda|tercera|cuarta|quinta|sexta|última))*)\s+filas?\b",
        re.IGNORECASE,
    ),
    row=words("filas?"),
    last=words("última"),
    total=words("total", "totales", "en todo", "sumado", "todo junto"),
    amounts=words(
        rf"(?P<n>{_NUMBER})\s+(?:tazas?|rebanadas?|tazones|vasos|botellas|latas|porciones|piezas|pedazos|personas|amigos|cucharaditas|cucharadas)"
    ),
    clauses=re.compile(r"[,;:—–]\s|\b(?:pero|mientras)\b", re.IGNORECASE),
    plain=frozenset(_PLAIN.split()),
    times_word="veces",
)
