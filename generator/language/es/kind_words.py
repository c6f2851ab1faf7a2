"""Spanish words that make food a matter of guilt, or movement its price, and what to say instead."""

from __future__ import annotations

from generator.language.kind_words import UnkindWords

UNKIND_WORDS = (
    UnkindWords(
        r"quem(a|as|an|ar|amos|ando|ado)( \w+){0,3} (calor[ií]as|energ[ií]a)|quemarl[oa]s?|qu[eé]mal[oa]s?",
        "di lo que da la comida; el conteo es un juego",
    ),
    UnkindWords(
        r"culpa(ble)?|trampa|engorda(r|n)?|adelgaza(r|n)?|bajar de peso|dietas?",
        "nombra la comida y no la juzgues",
    ),
    UnkindWords(
        r"ganarse (la|el|un|una) (comida|almuerzo|postre|merienda)|te l[oa] ganaste|merec\w+",
        "la comida nunca se gana",
    ),
    UnkindWords(
        r"(comida|alimento|bebida)s? ((buen|mal)[oa]s?|chatarra)|(buen|mal)[oa]s? (comida|alimento|bebida)s?",
        "di `tiene más` o `tiene menos`",
    ),
)
