"""What is still to be written for a measure of the table, in a copy of the project or in the project itself.

Run as a program it says so for every measure: `python -m tests.measure_gaps`.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from generator.author.reference import reference_page
from generator.author.schema import lesson_schema
from generator.language import KNOWN
from generator.model.measure import Measure
from generator.present.words.say import Say
from generator.read.library import read_library

ROOT = Path(__file__).parents[1]
_library = cache(lambda: read_library(ROOT))


def gaps(measure: Measure) -> Iterator[str]:
    """Everything that is missing, one short line each."""
    library = _library()
    for language, words in library.words.items():
        for key in (f"measure_{measure}", f"about_{measure}"):
            if key not in words.texts:
                yield f"{key} in site_data/words/{language}.yaml"
    for tag, language in KNOWN.items():
        if measure not in language.claims.measures:
            yield f"its name in generator/language/{tag}/measures.py"
        if not language.around.unit_after.match(f" {measure.unit}"):
            yield f"its unit in generator/language/{tag}/measures.py"
    unsaid = sum(not food.entry.per_100g.gives(measure) for food in library.foods.values())
    if unsaid:
        yield f"its figures in {unsaid} entries of site_data/foods.yaml"
    edges = json.loads((ROOT / "tests/examples/label.json").read_text("utf-8"))["cases"]
    if measure not in {case["measure"] for case in edges}:
        yield "its edges in tests/examples/label.json"
    yield from _pages(measure)


def _schema() -> str:
    library = _library()
    return lesson_schema(library.foods, library.moves)


def _pages(measure: Measure) -> Iterator[str]:
    for name, text in (
        ("site_data/lesson.schema.json", _schema()),
        ("lessons/guide/lesson-file.md", reference_page()),
    ):
        if (ROOT / name).read_text("utf-8") != text:
            yield name
    if measure not in (ROOT / "site_data/new_lesson.yaml").read_text("utf-8"):
        yield "its name in site_data/new_lesson.yaml"
    for language, name in (("en", "lessons/sources.md"), ("es", "lessons/es/sources.md")):
        words = _library().words[language]
        called = f"measure_{measure}" in words.texts and Say(words)(f"measure_{measure}")
        if not called or called not in (ROOT / name).read_text("utf-8"):
            yield f"how it is rounded in {name}"


if __name__ == "__main__":
    sys.stdout.writelines(f"{one}: {line}\n" for one in Measure for line in gaps(one))
