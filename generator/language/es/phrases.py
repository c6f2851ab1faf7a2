"""How Spanish says what is true of two numbers."""

from __future__ import annotations

from generator.language.phrases import Phrases

PHRASES = Phrases(
    same="lo mismo",
    alike="más o menos lo mismo",
    more="más",
    less="menos",
    about="más o menos ",
    almost="casi ",
    over="más de ",
    under="menos de ",
    times=(
        "el doble",
        "el triple",
        *(f"{n} veces" for n in ["cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez"]),
    ),
    parts=(
        "la mitad",
        *(
            f"un {part}"
            for part in [
                "tercio",
                "cuarto",
                "quinto",
                "sexto",
                "séptimo",
                "octavo",
                "noveno",
                "décimo",
            ]
        ),
    ),
    drawn_together=("de el ", "del "),
)
