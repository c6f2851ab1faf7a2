"""Questions that can be checked, whole without a script: page, worksheet, key, notes and translation."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.steps.work import work
from tests.closing_lesson import closing_project
from tests.made import outputs


@cache
def pages() -> dict[str, str]:
    """Every page of the lesson by its path, tags left out."""
    with TemporaryDirectory() as folder:
        root = closing_project(Path(folder) / "site")
        assert [one.what for one in work(root).questions if "has changed" in one.what] == []
        made = {one.path: one.content for one in outputs(root) if one.path.endswith(".html")}
    return {path: data.decode("utf-8") for path, data in made.items()}


def words(path: str) -> str:
    """What a page says."""
    bare = re.sub(r"<(script|style).*?</\1>", "", pages()[path], flags=re.DOTALL)
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", bare)).replace("\N{NO-BREAK SPACE}", " ")


def test_the_page_holds_question_answer_and_working() -> None:
    page = words("two-lunches/index.html")
    assert "One last question They share it all, half and half." in page
    assert "(690 + 510) ÷ 2 = 600 The answer: 600 kcal. Now there is no gap." in page
    assert "The answer: From town." in page
    assert "The answer: Ten." in page


def test_the_worksheet_asks_and_the_key_answers() -> None:
    sheet, key = words("two-lunches/worksheet.html"), words("two-lunches/answers.html")
    for paper in (sheet, key):
        assert "One last question" in paper
        assert "How many tens make one hundred? Five Ten" in paper
    assert "600" not in sheet
    assert "600 kcal" in key
    assert "The answer: Ten." in key
    assert "The answer: Ten." not in sheet


def test_the_notes_give_every_answer() -> None:
    notes = words("two-lunches/notes.html")
    assert "One last question (690 + 510) ÷ 2 = 600 The answer: 600 kcal." in notes
    assert "The answer: Ten." in notes


def test_another_language_says_it_all() -> None:
    page = words("es/two-lunches/index.html")
    assert "Una última pregunta Lo comparten todo por mitades." in page
    assert "La respuesta: 600 kcal. Ahora no hay diferencia." in page
    assert "La respuesta: Del pueblo." in page
    assert "La respuesta: Diez." in page


def test_an_estimate_is_asked_everywhere_and_judged_nowhere() -> None:
    sheet, key = words("two-lunches/worksheet.html"), words("two-lunches/answers.html")
    notes, page = words("two-lunches/notes.html"), words("two-lunches/index.html")
    for one in (sheet, key, page):
        assert "First, an estimate Is the first gap nearer to 100, 300 or 500?" in one
    assert "410 − 90 ≈ 400 − 100 = 300" in key
    assert "410 − 90 ≈ 400 − 100 = 300" in notes
    assert "400 − 100" not in sheet
    assert "how far apart are they?" in sheet
    assert "Primero, una estimación ¿La primera diferencia" in words("es/two-lunches/index.html")


def test_what_is_kept_of_an_answer_goes_by_the_same_name_in_each_language() -> None:
    found = [
        re.findall(r'name="answer" value="([^"]+)"', pages()[f"{folder}two-lunches/index.html"])
        for folder in ("", "es/")
    ]
    assert found[0] == found[1] == ["from-town", "from-home", "0", "1"]
