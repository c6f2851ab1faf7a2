"""Words that make food a matter of guilt, or movement its price."""

from __future__ import annotations

import re
from collections.abc import Iterator

from generator.check.texts import lesson_texts, place_inside
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight

_NO_BODIES = "leave bodies out of the lesson"
_WORDS = {
    r"burn(s|ed|ing|t)?( \w+){0,3} (off|calories|energy|kcal|kilocalories)": "say what the food gives, or count the moves as a game",
    r"work(ed|ing)? off|work(s|ed|ing)? (it|them|that|this|(the|your|our|my) \w+) off": "movement is play and pays for nothing",
    r"(earn|deserve)(s|ed|ing)?": "food is never earned",
    r"(pay|pays|paid|paying) for|make up for": "movement is play and pays for nothing",
    r"cheat(s|ed|ing)?|guilt|guilty|sinful|naughty": "name the food and say nothing about it",
    r"(good|bad|clean|junk|unhealthy) (foods?|snacks?|drinks?|lunch(es)?|meals?|choices?|sides?)": "say `holds more` or `holds less`, or `most days` and `now and then`",
    r"(lose|losing|lost|gain|gaining)( \w+)? weight|fat(ter|tening)|skinny|overweight|obes\w+|diet(s|ing)?": _NO_BODIES,
    r"(good|bad|healthier|unhealthy) for (you|us|him|her|them|(your|our|the) \w+)|(is|are|was|were) (bad|junk|unhealthy)": "say what the food gives, and how much of it",
    r"quem(a|as|an|ar|amos|ando|ado)( \w+){0,3} (calor[ií]as|energ[ií]a)|quemarl[oa]s?|qu[eé]mal[oa]s?": "di lo que da la comida; el conteo es un juego",
    r"culpa(ble)?|trampa|engorda(r|n)?|adelgaza(r|n)?|bajar de peso|dietas?": "nombra la comida y no la juzgues",
    r"ganarse (la|el|un|una) (comida|almuerzo|postre|merienda)|te l[oa] ganaste|merec\w+": "la comida nunca se gana",
    r"(comida|alimento|bebida)s? ((buen|mal)[oa]s?|chatarra)|(buen|mal)[oa]s? (comida|alimento|bebida)s?": "di `tiene más` o `tiene menos`",
}
"""What to look for, and what to say instead. The rule of the *Care* promise; AAP 2016 (Golden and others,
Pediatrics 138(3):e20161649) asks for talk about health, not about weight."""

_PATTERN = re.compile(
    "|".join(rf"(?P<w{number}>\b(?:{words})\b)" for number, words in enumerate(_WORDS)),
    re.IGNORECASE,
)
_HINTS = tuple(_WORDS.values())


def kind_words(result: LessonResult) -> Iterator[Problem]:
    """Questions about wording, each with another way to say it."""
    for place, text in lesson_texts(result.lesson):
        for found in _PATTERN.finditer(text):
            number = int((found.lastgroup or "w0")[1:])
            hint = _HINTS[number]
            about = "makes food a matter of guilt or movement its price"
            what = "speaks of bodies" if hint == _NO_BODIES else about
            where = place_inside(result.lesson, place, text, found.start())
            yield Problem(where, f"“{found[0]}” {what}", hint, Weight.QUESTION)
