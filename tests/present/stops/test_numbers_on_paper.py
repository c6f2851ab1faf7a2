"""Every number on paper is written as the page's language writes it, a machine's spelling never."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.made import page_outputs
from tests.site_project import ROOT

LESSON = """\
title: Dos desayunos
summary: Encuentra la diferencia.
grades: 3-5
minutes: 10
goals: [Restar.]
stops:
  - compare:
      id: breakfast
      measure: fiber
      sides: [En casa, De camino]
      rows:
        - [{name: Avena, value: 4, source: etiqueta}, {name: Pan, value: 3, source: etiqueta}]
      solve: [gap, count]
  - move: {for: breakfast, one_move_per: 0.5, moves: [march]}
"""


@pytest.fixture
def answer_key(tmp_path: Path) -> str:
    """The answer key of a lesson for Spain, where a comma marks the decimals."""
    data = tmp_path / "site_data"
    data.mkdir()
    (tmp_path / "theme").symlink_to(ROOT / "theme")
    for file in (ROOT / "site_data").glob("*.yaml"):
        (data / file.name).symlink_to(file)
    site = (data / "site.yaml").read_text("utf-8")
    (data / "site.yaml").unlink()
    (data / "site.yaml").write_text(
        re.sub(r"^languages:.*$", "languages: [es]", site, flags=re.MULTILINE), "utf-8"
    )
    (data / "words").mkdir()
    (data / "words/en.yaml").symlink_to(ROOT / "site_data/words/en.yaml")
    words = (ROOT / "site_data/words/es.yaml").read_text("utf-8")
    (data / "words/es.yaml").write_text(words.replace("es-US", "es-ES"), "utf-8")
    lesson = tmp_path / "lessons/breakfast/lesson.yaml"
    lesson.parent.mkdir(parents=True)
    lesson.write_text(LESSON, "utf-8")
    made = {output.path: output.content for output in page_outputs(tmp_path)}
    return made["breakfast/answers.html"].decode()


def test_the_division_of_an_answer_key_has_the_decimal_mark_of_its_language(
    answer_key: str,
) -> None:
    # CLDR: Spanish of Spain writes half as 0,5.
    shown = re.sub(r"<[^>]*>", "", answer_key)
    assert re.findall(r"÷ \d[.,]?\d*", shown) == ["÷ 0,5"]
