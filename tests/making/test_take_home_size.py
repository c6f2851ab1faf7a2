"""The size of the copy to take home, as its lesson's page says it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.making import make_lesson
from generator.model.words import Words
from generator.present.pages.take_home import megabytes
from generator.present.words.say import Say
from generator.steps.surroundings import surroundings
from tests.project import GOOD, ROOT, library, worked

SAY = Say(library().words["en"])


@pytest.mark.parametrize(
    ("size", "says"), [(1, "0.1"), (149_999, "0.1"), (150_001, "0.2"), (12_340_000, "12.3")]
)
def test_a_size_is_said_in_tenths_of_a_megabyte_and_never_as_nothing(size: int, says: str) -> None:
    assert megabytes(size, SAY) == f"{says}\N{NO-BREAK SPACE}MB"


def test_markup_in_the_site_s_words_stands_as_it_is_written(tmp_path: Path) -> None:
    words = library().words["en"]
    sneaky = Words(words.language, {**words.texts, "size": "<b>{size}</b>"})
    around = replace(surroundings(ROOT, library()), says={"en": Say(sneaky)})
    outputs = {one.path: one for one in make_lesson({"en": worked(tmp_path, GOOD)}, around)}
    page = outputs["meal/index.html"].content.decode()
    size = f"{round(len(bytes(outputs['meal/meal-take-home.zip'].held)) / 1e5) / 10}"
    assert f"&lt;b&gt;{size}&lt;/b&gt;" in page
    assert "<b>" not in page.partition('class="take"')[2].partition("</p>\n<keep-lesson")[0]
