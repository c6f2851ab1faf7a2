"""What stands around a spoken number in Spanish."""

from __future__ import annotations

import re

from generator.language.around_numbers import AroundNumbers, after, before, counting, joining, words
from generator.language.es.measures import UNITS

_FOLLOWS = (
    "que y e o u menos más mas quita de en para por es son era hace hacen da dan queda quedan sobra"
    " sobran pero así mientras también tambien aquí allí con sin igual total contra como cuando"
    " entonces sobre porque ahora cada otra juntos juntas solo sólo si del al a no él ella ellos"
)

_MONTHS = "enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre|noviembre|diciembre"

AROUND_NUMBERS = AroundNumbers(
    labels_before=before(
        "filas?", "pasos?", "paradas?", "partes?", "páginas?", "grados?", "lecciones", "lección",
        "capítulos?", "preguntas?", "problemas?", "tarjetas?", "láminas?", "rondas?", "nivel",
        "salón", "números?", "versos?", "semanas?", "etapas?", "por", "figuras?", "canal",
    ),
    ordinal_after=after(r"\.?[ºª°]", "er", "ero", "era", "do", "da", "to", "ta"),
    time_before=before("a las", "a la", "hasta las", "antes de las", "después de las"),
    clock_before=before("a las?", "hasta las?", "antes de las?"),
    time_after=after(
        r"(?:segundos?|minutos?|horas?|días?|noches?|semanas?|mes(?:es)?|años?|cumpleaños)",
        "en punto", r"a\.?\s?m\.?", r"p\.?\s?m\.?", "de la (?:mañana|tarde|noche)",
        r"veces\s+(?:al|por|cada)\s+(?:día|semana|mes|año|minuto)",
    ),
    month_before=re.compile(rf"\b(?:{_MONTHS})\s+$", re.IGNORECASE),
    month_after=re.compile(rf"\s+(?:de\s+)?(?:{_MONTHS})\b", re.IGNORECASE),
    year_before=before("en", "desde", "del?", "año", "hasta"),
    fraction_after=after(
        "medi[oa]s?", "tercios?", "cuartos?", "quintos?", "sextos?", "octavos?", "décimos?",
        "por ciento", "%",
    ),
    multiple_after=after(r"veces\s+(?:la|el|lo|tant[oa]s?|más|y)"),
    repeats_after=after("veces"),
    given_after=after("para (?:el|la|los|las)"),
    begins=re.compile(r"(?:^|[,;:])\s*$"),
    unit_after=after(
        rf"(?:de\s+)?(?:{'|'.join(UNITS.values())})", "cucharaditas?",
        "conteos?", "cuentas?", "veces", "movimientos?", "decenas", "centenas", "unidades",
        "veintenas",
    ),
    follows=frozenset(_FOLLOWS.split()),
    of_after=after(r"de\s+(?:ellos|ellas|nosotros|ustedes|estos|estas|esos|esas|los|las|mis|tus|sus|cada)"),
    holds_before=before(
        "tienen?", "tenía", "contienen?", "llevan?", "traen?", "dan?", "aportan?",
        between=r"(?:(?:alrededor de|cerca de|casi|exactamente|solo|sólo|unos|unas|más de|menos de|menos|más)\s+)?",
    ),
    listed=re.compile(
        r"\b(?:tienen?|contienen?|llevan?|traen?)\s+[^,;.]+[,;]\s+(?:y\s+)?(?:el|la|los|las)\s+(?:\w+\s+){1,4}$",
        re.IGNORECASE,
    ),
    sum_words=words(
        "menos", "más", "resta", "restar", "quita", "quítale", "quitar", "suma", "sumar", "diferencias?",
        "total", "en todo", "decenas", "veintenas", "conteos?", "cuentas?", "hacen?", "quedan?",
        "sobran?", "que", "superan?", "ganan?", "entre", "veces", "movimientos?",
    ),
    more_after=after(r"(?:\w+\s+)?(?:más|menos)"),
    carries_on=words(r"^(?:y |pero )?(?:tiene|tienen|eso|esa|ese|ella|él|contiene|lleva|trae)"),
    joined=joining("y", "o", "e", "u", "a"),
    aloud=counting("y", "luego"),
)  # fmt: skip
