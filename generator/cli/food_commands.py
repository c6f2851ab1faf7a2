"""The commands ``plumline foods``, each in the module that carries it out."""

from __future__ import annotations

import click

from generator.cli.listed import Listed

FOODS = {
    "pairs": (
        "pairs:pairs",
        "Propose rows for a comparison, ready to paste, with why each fits.",
    ),
    "find": (
        "finding:find",
        "Look for a food by WORDS, in English or Spanish, in the library and the official records.",
    ),
    "import": (
        "foods:import_command",
        "Read FILE, a FoodData Central CSV zip as it was downloaded, for find, add and refresh.",
    ),
    "add": (
        "foods:add",
        "Write the record NUMBER with its portions into site_data/foods.yaml.",
    ),
    "refresh": (
        "foods:refresh",
        "Take every figure of site_data/foods.yaml anew from the official records.",
    ),
}


class _Foods(Listed):
    table = FOODS


@click.group(cls=_Foods)
def foods() -> None:
    """Find foods, and take their figures from the official records."""
