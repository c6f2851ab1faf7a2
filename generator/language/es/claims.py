"""How Spanish claims something about two numbers."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.es.claim_words import (
    BE,
    BEFORE_MORE,
    COUNTED,
    ENDS,
    HOLD,
    HOLDS,
    LEE,
    LEEWAYS,
    MEASURE,
    MULTIPLE,
    NUMBER,
    OF,
    ONES,
    ONLY,
    PART,
    PERCENT,
    SHARES,
    TIMES,
    UNIT,
    WHAT,
)
from generator.language.es.measures import MEASURES
from generator.language.es.number_words import NUMBER_WORDS
from generator.language.form import Form
from generator.language.grammar import Grammar, Kind, words

_IN = "(?:una|uno|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|\\d+)"
_NTH = "(?:primera|segunda|tercera|cuarta|quinta|sexta|séptima|octava|novena|décima|última)"
_GAP = "(?:diferencias?)"
_SUM = "(?:diferencias?|total(?:es)?)"
_BIG = r"(?:más\s+(?:grande|alta|amplia)|mayor)"
_SMALL = r"(?:más\s+(?:pequeña|chica|baja)|menor)"
_OTHER = r"(?:que\s+(?:tod[oa]s(?:\s+l[oa]s\s+demás)?|cualquier\s+otr[oa]|ningun[oa]\s+otr[oa]|l[oa]s\s+demás))"
_NONE = r"(?:ningún\s+otro\s+alimento|ningún\s+alimento|ninguna\s+otra\s+comida|ningún\s+otro|ninguna\s+otra|nada)"
_MORE = r"(?:más|(?P<less>menos))"
_BUT_ONE = r"(?!\s+(?:menos|excepto|salvo)\b)"
_NEARLY = LEE.replace("leeway", "nearly")
_THAN = rf"(?=\s*(?:[.,;!]|$|que\b|en\b|(?:de\s+)?{WHAT}\b))"
_SIGNS = {
    Form.TIMES: ("doble", "triple", "cuádruple", "veces", "vez y media", "duplic", "triplic"),
    Form.SHARE: ("mitad", "tercio", "cuarto", "quinto", "sexto", "séptimo", "octavo", "noveno", "décimo", "tercera", "cuarta", "quinta", "sexta", "décima", "%", "por ciento"),
    Form.SAME: ("mism", "igual", "tant", "equival", "vale", "para"),
    Form.GAP: ("más", "menos", " por ", " en ", "entre"),
    Form.GAP_SHARE: ("más", "menos"),
    Form.MOST: ("mayor", "más"),
    Form.LEAST: ("menor", "menos", "más"),
    Form.MORE: ("más", "mayor", "gana", "supera"),
    Form.LESS: ("menos", "menor", "tant"),
    Form.ROWS: ("fila",),
    Form.EVERY_ROW: ("fila",),
}  # fmt: skip
_PLAIN = "con sin del los las una uno dos taza tazas lado lados comida fila filas tiene tienen más menos mismo mitad bajo baja para por que"


def _kind(form: Form, text: str, *, both: bool = False) -> Kind:
    return Kind(form, _SIGNS[form], re.compile(rf"\b{text}", re.IGNORECASE), both)


_ROWS = (
    _kind(Form.EVERY_ROW, rf"(?:{HOLD}\s+{_MORE}\s+|gana\s+|lleva\s+ventaja\s+)(?:en\s+)?(?:todas\s+las(?:\s+{_IN})?\s+filas|cada(?:\s+una\s+de\s+las)?\s+filas?)\b{_BUT_ONE}"),
    _kind(Form.EVERY_ROW, rf"en\s+(?:todas\s+las(?:\s+{_IN})?\s+filas|cada\s+fila){_BUT_ONE},?\s+(?:\w+\s+){{1,5}}?{HOLD}\s+{_MORE}\b"),
    _kind(Form.ROWS, rf"(?:{HOLD}\s+{_MORE}\s+|gana\s+)(?:en\s+)?(?:solo\s+|sólo\s+|exactamente\s+)?(?P<n>{_IN})\s+(?:de\s+(?:las\s+)?{_IN}\s+)?filas\b"),
    _kind(Form.ROWS, rf"en\s+(?:solo\s+|sólo\s+|exactamente\s+)?(?P<n>{_IN})\s+(?:de\s+(?:las\s+)?{_IN}\s+)?filas,?\s+(?:\w+\s+){{1,5}}?{HOLD}\s+{_MORE}\b"),
)  # fmt: skip
_PARTS = (
    _kind(Form.GAP_SHARE, rf"{LEE}?{ONLY}?(?:(?:un|el)\s+)?(?P<n>{PERCENT}|{PART})\s+(?:de\s+{WHAT}\s+)?{_MORE}{_THAN}"),
    _kind(Form.SHARE, rf"(?<!\ba\s)(?<!por\s){LEE}?{ONLY}?(?:(?:un|el)\s+)?(?P<n>{PERCENT}|{PART}){OF}"),
    _kind(Form.SHARE, rf"{HOLDS}{LEE}?{ONLY}?(?P<n>{PART})(?=\s*(?:$|[.,;!]))"),
    _kind(Form.SHARE, rf"{HOLDS}{LEE}?{ONLY}?(?:(?:un|el)\s+)?(?P<n>{PERCENT}|{PART})\s+del?\b", both=True),
)  # fmt: skip
_TIMES = (
    _kind(Form.TIMES, rf"{LEE}(?:el\s+)?{MULTIPLE}"),
    _kind(Form.TIMES, rf"el\s+{MULTIPLE}{OF}"),
    _kind(Form.TIMES, rf"al\s+{MULTIPLE}(?=\s*(?:$|[.,;!]|(?:del?|que)\b))", both=True),
    _kind(Form.TIMES, rf"{HOLDS}{ONLY}?el\s+{MULTIPLE}(?=\s*(?:$|[.,;!]|(?:del?|que)\b))"),
    _kind(Form.TIMES, rf"{LEE}?{ONLY}?(?P<n>{TIMES})\s+(?:(?:la|el)\s+{WHAT}\b|lo\s+(?:que|de|del)\b|tant[oa]s?\b|más\s+(?:{WHAT}|que)\b)"),
    _kind(Form.TIMES, rf"{LEE}?(?P<n>duplican?|triplican?|cuadruplican?)\s+(?:a|al|la|el|lo)\b", both=True),
)  # fmt: skip
_SAME = (
    _kind(Form.LESS, rf"no\s+{HOLD}\s+tant[oa]s?\s+(?:{WHAT}\s+)?como\b"),
    _kind(Form.SAME, rf"{LEE}?(?:la\s+misma\s+(?:cantidad\b(?!\s+de\s+(?!{MEASURE}))|{MEASURE})|el\s+mismo\s+{WHAT}|los\s+mismos\s+{WHAT})\b"),
    _kind(Form.SAME, rf"{HOLD}\s+{LEE}?{ONLY}?lo\s+mismo{ENDS}"),
    _kind(Form.SAME, rf"(?:{HOLDS}|quedan?\s+|salen?\s+){LEE}?igual(?:es)?{ENDS}"),
    _kind(Form.SAME, rf"{HOLDS}{LEE}?{ONLY}?tant[oa]s?\s+(?:{WHAT}\s+)?como\b"),
    _kind(Form.SAME, rf"(?:equivalen?\s+a|igualan?\s+a|{BE}igual(?:es)?\s+a|valen?\s+(?:lo\s+que|por)?)l?\s*{ONLY}?{_NEARLY}?", both=True),
    _kind(Form.SAME, rf"(?P<leeway>(?:{HOLDS}(?:energía\s+)?suficiente|alcanzan?))\s+para\s+(?={NUMBER}\s)", both=True),
    _kind(Form.SAME, rf"(?:se\s+)?(?:necesita(?:s|n|mos|rías|rían)?|hacen\s+falta|harían\s+falta)\s+{LEE}?(?={NUMBER}\s+)[^.;!?]{{1,80}}?\bpara\s+(?:igualar|llegar\s+a|alcanzar|sumar|tener\s+lo\s+mismo\s+que|tener\s+tanto\s+como)", both=True),
    _kind(Form.SAME, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}{LEE}?(?:iguales|la\s+misma))\b"),
)  # fmt: skip
_GAPS = (
    _kind(Form.GAP, rf"{HOLDS}{LEE}?{ONLY}?(?P<n>{NUMBER})\s*{UNIT}?\s*(?:de\s+{WHAT}\s+)?{_MORE}{_THAN}"),
    _kind(Form.GAP, rf"{LEE}?(?P<n>{NUMBER})\s*{UNIT}\s+(?:de\s+{WHAT}\s+)?{_MORE}{_THAN}"),
    _kind(Form.GAP, rf"{LEE}?(?P<n>{NUMBER})\s+{_MORE}\s+que\b"),
    _kind(Form.GAP, rf"{_GAP}\s+entre\b[^.;:]*?(?P<claim>{BE}(?:de\s+)?{LEE}?(?P<n>{NUMBER}))\b(?!\s*(?:%|por\s+ciento|veces))", both=True),
    _kind(Form.GAP, rf"(?:superan?\s+a|le\s+ganan?\s+a)l?\s+[^.,;:!?]{{1,60}}?\b(?:por|en)\s+{LEE}?(?P<n>{NUMBER})\b(?!\s*(?:%|por\s+ciento|puntos?|minutos?|segundos?|filas?))", both=True),
)  # fmt: skip
_EXTREMES = (
    _kind(Form.MOST, rf"{HOLD}\s+más\s+(?:{WHAT}\s+)?{_OTHER}\b"),
    _kind(Form.LEAST, rf"{HOLD}\s+menos\s+(?:{WHAT}\s+)?{_OTHER}\b"),
    _kind(Form.MOST, rf"{_NONE}\s+{HOLD}\s+más\s+(?:{WHAT}\s+)?que\b"),
    _kind(Form.LEAST, rf"{_NONE}\s+{HOLD}\s+menos\s+(?:{WHAT}\s+)?que\b"),
    _kind(Form.MOST, rf"(?:{HOLDS}(?:la\s+mayor\s+cantidad|el\s+mayor)|(?:el|la|los|las|lo)\s+que\s+(?:tienen?\s+)?más)\b"),
    _kind(Form.LEAST, rf"(?:{HOLDS}(?:la\s+menor\s+cantidad|el\s+menor)|(?:el|la|los|las|lo)\s+que\s+(?:tienen?\s+)?menos)\b"),
    _kind(Form.MOST, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}la\s+{_BIG})\b"),
    _kind(Form.LEAST, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}la\s+{_SMALL})\b"),
    _kind(Form.MOST, rf"{HOLD}\s+la\s+(?:mayor\s+{_GAP}|{_GAP}\s+{_BIG})\b"),
    _kind(Form.LEAST, rf"{HOLD}\s+la\s+(?:menor\s+{_GAP}|{_GAP}\s+{_SMALL})\b"),
    _kind(Form.MOST, rf"la\s+(?:mayor\s+{_GAP}|{_GAP}\s+{_BIG})\s+(?:es|está)\s+(?:en|de|la\s+de)\b"),
    _kind(Form.LEAST, rf"la\s+(?:menor\s+{_GAP}|{_GAP}\s+{_SMALL})\s+(?:es|está)\s+(?:en|de|la\s+de)\b"),
)  # fmt: skip
_DIRECTIONS = (
    _kind(Form.MORE, rf"(?:pero|y)\s+(?:aún\s+)?(?P<claim>más\s+(?:{WHAT}\s+)?que)\b(?!\s*\d)"),
    _kind(Form.LESS, rf"(?:pero|y)\s+(?:aún\s+)?(?P<claim>menos\s+(?:{WHAT}\s+)?que)\b(?!\s*\d)"),
    _kind(Form.MORE, rf"{HOLD}\s+{BEFORE_MORE}?más{ENDS}"),
    _kind(Form.LESS, rf"{HOLD}\s+{BEFORE_MORE}?menos{ENDS}"),
    _kind(Form.MORE, rf"hay\s+{BEFORE_MORE}?más\s+(?:{WHAT}\s+)?en\b"),
    _kind(Form.LESS, rf"hay\s+{BEFORE_MORE}?menos\s+(?:{WHAT}\s+)?en\b"),
    _kind(Form.MORE, rf"{_SUM}\b[^.;:]*?(?P<claim>{BE}{BEFORE_MORE}?(?:mayor(?:es)?|más\s+(?:grande|alt[oa])|más))\b"),
    _kind(Form.LESS, rf"{_SUM}\b[^.;:]*?(?P<claim>{BE}{BEFORE_MORE}?(?:menor(?:es)?|más\s+(?:pequeñ[oa]|baj[oa]|chic[oa])|menos))\b"),
    _kind(Form.MORE, r"(?:superan?\s+a|le\s+ganan?\s+a)", both=True),
)  # fmt: skip


CLAIMS = Grammar(
    claims=(*_ROWS, *_PARTS, *_TIMES, *_SAME, *_GAPS, *_EXTREMES, *_DIRECTIONS),
    numbers={
        **dict.fromkeys(("doble", "duplica", "duplican"), Fraction(2)),
        **dict.fromkeys(("triple", "triplica", "triplican"), Fraction(3)),
        **dict.fromkeys(("cuádruple", "cuadruplica", "cuadruplican"), Fraction(4)),
        "una vez y media": Fraction(3, 2),
        **{f"{one} veces y media": n + Fraction(1, 2) for n, one in enumerate(ONES, 2)},
        **dict.fromkeys(("medio", "media"), Fraction(1, 2)),
        **dict.fromkeys(("uno", "una"), Fraction(1)),
        **{name: Fraction(n) for n, name in enumerate(_NTH.strip("(?:)").split("|")[:-1], 1)},
        **SHARES,
    },
    leeways=tuple((leeway, words(*some)) for leeway, some in LEEWAYS.items()),
    measures={measure: words(names) for measure, names in MEASURES.items()},
    doubt=words(
        "no", "nunca", "tampoco", "ni", "si", "imagina", "imaginen", "supón(?:gan)?", "supongamos", "tendrían?", "sería", "podrían?", "ojalá", "quizás?", "tal vez",
        "busca", "busquen", "encuentra", "encuentren", "elige", "elijan", "escoge", "dibuja", "ningún", "ninguna", "cuál",
    ),
    denial=re.compile(
        rf"\b(?:(?P<even>ni\s+siquiera)|no)\s+(?:{HOLD}\s+|es\s+|son\s+|llegan?\s+(?:a\s+(?:tener\s+)?)?)?(?:exactamente\s+)?(?P<nor>ni\s+(?:siquiera\s+)?(?:a\s+)?)?$",
        re.IGNORECASE,
    ),
    reported=re.compile(
        r"(?<!\betiqueta )(?<!\btabla )(?<!\bpágina )(?<!\bnúmero )"
        r"\b(?:dijo|dice|dijeron|decía|cree|creen|creía|creyó|piensa|piensan|pensó|pensaba|supone|adivina|adivinó|opina|apuesta|apostó|espera|contó|escribió|parece)\b"
        r"|(?<!\bnúmeros )(?<!\betiquetas )\bdicen\b|\bverdadero\s+o\s+falso\b|\bcierto\s+o\s+falso\b|\bdigamos\b",
        re.IGNORECASE,
    ),
    supposed=words(
        "supón(?:gan)?", "supongamos", "imagina", "imaginen", "imaginemos", "finge", "qué pasa si", "si", r"ning[uú]n[ao]?",
        rf"no\s+{HOLD}",
        r"(?:nadie|alguien)\s+(?:dijo|dice|creyó|cree|escribió)",
    ),
    states=words(
        "tienen?", "tenía", "contienen?", "llevan?", "traen?", "dan?", "aportan?", "es", "son", "era", "eran", "hay", "hacen?",
        "suman?", "quedan?", "salen?",
    ),
    telling=words("por qué"),
    rows=re.compile(
        rf"\bfilas?\s+(?:número\s+)?(?P<after>{_IN}(?:(?:,|\s+y)\s+(?:la\s+)?{_IN})*)\b"
        rf"|\b(?P<before>{_NTH}(?:(?:,|\s+y)\s+(?:en\s+)?(?:la\s+)?{_NTH})*)\s+filas?\b",
        re.IGNORECASE,
    ),
    row=words("filas?"),
    last=words("última"),
    total=words("total", "totales", "en todo", "sumado", "todo junto"),
    gap=words(_GAP),
    together=words("juntos", "juntas", "sumados", "sumadas", "en total"),
    counted=COUNTED,
    percent=re.compile(r"\s*(?:%|por ciento)$"),
    said=NUMBER_WORDS,
    amounts=words(
        rf"(?P<n>{NUMBER})\s+(?:tazas?|rebanadas?|tazones|vasos|botellas|latas|porciones|piezas|pedazos|personas|amigos|cucharaditas|cucharadas)"
    ),
    clauses=re.compile(r"[,;:—–]\s|\b(?:pero|mientras)\b", re.IGNORECASE),
    plain=frozenset(_PLAIN.split()),
    times_word="veces",
)  # fmt: skip
