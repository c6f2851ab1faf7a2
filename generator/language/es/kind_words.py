"""Spanish words that make food a matter of guilt, or movement its price, and what to say instead."""

from __future__ import annotations

from generator.language.kind_words import UnkindWords

_WHOLE = r"(comida|almuerzo|cena|desayuno|alimento|bebida|merienda|lonchera|plato|opci[oó]n|elecci[oó]n)(e?s)?"

UNKIND_WORDS = (
    UnkindWords(
        r"quem(a|as|an|ar|amos|ando|ado)( \w+){0,3} (calor[ií]as|energ[ií]a)|quemarl[oa]s?|qu[eé]mal[oa]s?",
        "di lo que da la comida; el conteo es un juego",
    ),
    UnkindWords(
        r"culpa(ble)?s?|trampa|pecados?|pecaminos[oa]s?|(darse|darte|darnos|date|darme) un gusto",
        "nombra la comida y no la juzgues",
    ),
    UnkindWords(
        r"engorda(r|n)?|adelgaza(r|n)?|(baj|sub)(a|as|ar|an|es?|en|ando) de peso|(perder|pierd\w+|ganar) peso|dietas?"
        r"|(cuida\w*|guarda\w*) (la|tu|su) (l[ií]nea|figura)|gordur\w+|delgad(it)?[oa]s",
        "deja los cuerpos fuera de la lección",
        of_bodies=True,
    ),
    UnkindWords(
        r"(ganar(se|te|nos)|g[aá]na(te|nse|los)) (la|el|los|las|un|una|tu|su)( \w+)?|te l[oa] ganaste|merec\w+( (un|una|el|la) (premio|recompensa))?",
        "la comida nunca se gana",
    ),
    UnkindWords(
        r"premi(o|os|ar|arse|arte|amos)|recompens(a|as|ar|arse|arte)",
        "nombra la comida: es comida, no un premio",
    ),
    UnkindWords(
        r"pag(a|as|an|ar|amos|uen?|ues|uemos)( \w+){1,3} con (saltos|pasos|movimientos?|ejercicios?|sudor)|compens(a|as|an|ar|arl[oa]s?|amos)",
        "moverse es un juego y no paga nada",
    ),
    UnkindWords(
        rf"{_WHOLE} ((buen|mal|san|insan)[oa]s?|chatarra|(no )?saludables?|liger[oa]s?)|(comida|alimento)s? limpi[oa]s?|(buen|mal)[oa]s? {_WHOLE}"
        r"|(m[aá]s|menos|muy|poco) (san[oa]s?|saludables?)|insan[oa]s?|com(er|e|es|en|emos|an) (limpio|sano|ligero|saludable)|(algo|platos?) (m[aá]s )?liger[oa]s?",
        "di `tiene más` o `tiene menos`",
    ),
    UnkindWords(
        r"salt(a|as|an|ar|arse|arte|amos|[oó])( (la|el|una|un|tu|su))? (comidas?|desayunos?|almuerzos?|cenas?)",
        "nadie se salta una comida; di qué hay en la mesa",
    ),
    UnkindWords(
        r"(contar |cuenta |cuentan )?calor[ií]as( vac[ií]as| de m[aá]s)?",
        "di `energía`, y kilocalorías para su número",
    ),
    UnkindWords(
        rf"(mejor|peor)(es)? ({_WHOLE}|cambios?)|({_WHOLE}|cambios?) (es|son|era|eran) (el |la |los |las )?(mejor|peor)(es)?",
        "ningún alimento y ningún cambio es mejor que otro: di hacia dónde va la diferencia",
    ),
)
