"""The reference page names every key an educator may write, and every word a key takes."""

from __future__ import annotations

from pathlib import Path

from generator.author.reference import reference_page
from generator.model.measure import Measure
from generator.model.stops import STOP_KINDS

GUIDE = Path(__file__).parents[2] / "lessons/guide/lesson-file.md"


def test_the_page_in_the_guide_is_in_step() -> None:
    """Where it is not: `python3 generator reference`."""
    assert GUIDE.read_text("utf-8") == reference_page()


def test_every_key_of_every_stop_is_named() -> None:
    for kind, model in STOP_KINDS.items():
        section = reference_page().partition(f"## `{kind}`:")[2].partition("\n## ")[0]
        for name, field in model.model_fields.items():
            if name != "kind":
                assert f"| `{field.alias or name}` |" in section, (kind, name)


def test_what_a_key_of_a_stop_holds_is_there_too() -> None:
    person = reference_page().partition("## `person` of a `day`:")[2].partition("\n## ")[0]
    for key in ("name", "age", "sex", "activity"):
        assert f"| `{key}` | yes |" in person
    assert "One of `inactive`, `low active`, `active`, `very active`." in person
    ate = reference_page().partition("## `ate` of a `day`:")[2].partition("\n## ")[0]
    assert "| `when` |  | The meal it belongs to" in ate
    assert "| `food` |" in ate


def test_a_key_that_takes_few_words_lists_them() -> None:
    (line,) = (line for line in reference_page().splitlines() if line.startswith("| `measure`"))
    assert all(f"`{measure.value}`" in line for measure in Measure)
    assert "One of `gap`, `count`, `total`." in reference_page()
