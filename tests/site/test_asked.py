"""Questions that can be checked, whole without a script: page, worksheet, key, notes and translation."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.steps.work import work
from tests.closing_lesson import closing_project
from tests.made import page_outputs


@cache
def pages() -> dict[str, str]:
    """Every page of the lesson by its path, tags left out."""
    with TemporaryDirectory() as folder:
        root = closing_project(Path(folder) / "site")
        assert [one.what for one in work(root).questions if "has changed" in one.what] == []
        made = {one.path: one.content for one in page_outputs(root) if one.path.endswith(".html")}
    return {path: data.decode("utf-8") for path, data in made.items()}


def words(path: str) -> str:
    """What a page says."""
    bare = re.sub(r"<(script|style).*?</\1>", "", pages()[path], flags=re.DOTALL)
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", bare)).replace("\N{NO-BREAK SPACE}", " ")


def test_the_page_holds_question_answer_and_working() -> None:
    page = words("two-lunches/index.html")
    assert "One last question" in page
    assert "They share it all, half and half. How much does each of them get?" in page
    assert "(690 + 550) ÷ 2 = 620 The answer: 620 kcal. Now there is no gap." in page
    assert "The answer: From town." in page
    assert "The answer: Ten." in page


def test_the_worksheet_asks_and_the_key_answers() -> None:
    sheet, key = words("two-lunches/worksheet.html"), words("two-lunches/answers.html")
    for paper in (sheet, key):
        assert "One last question" in paper
        assert "How many tens make one hundred? Five Ten" in paper
    assert "620" not in sheet
    assert "620 kcal" in key
    assert "The answer: Ten." in key
    assert "The answer: Ten." not in sheet


def test_the_notes_give_every_answer() -> None:
    notes = words("two-lunches/notes.html")
    assert "(690 + 550) ÷ 2 = 620 The answer: 620 kcal." in notes
    assert "The answer: Ten." in notes


def test_another_language_says_it_all() -> None:
    page = words("es/two-lunches/index.html")
    assert "Una última pregunta" in page
    assert "Lo comparten todo por mitades. ¿Cuánto le toca a cada uno?" in page
    assert "La respuesta: 620 kcal. Ahora no hay diferencia." in page
    assert "La respuesta: Del pueblo." in page
    assert "La respuesta: Diez." in page


def test_an_estimate_is_asked_everywhere_and_judged_nowhere() -> None:
    sheet, key = words("two-lunches/worksheet.html"), words("two-lunches/answers.html")
    notes, page = words("two-lunches/notes.html"), words("two-lunches/index.html")
    for one in (sheet, page):
        assert "First, an estimate Is the first gap nearer to 100, 300 or 500?" in one
    assert "First, an estimate 410 − 90 ≈ 400 − 100 = 300" in key
    assert "410 − 90 ≈ 400 − 100 = 300" in notes
    assert "400 − 100" not in sheet
    assert "how far apart are they?" in sheet
    assert "Primero, una estimación ¿La primera diferencia" in words("es/two-lunches/index.html")


def test_help_fades_from_row_to_row() -> None:
    """A worked row asks nothing, a row with hops shows them without sizes, a row alone shows nothing."""
    forms = re.findall(r'<form class="gap-row" id="lunch--.*?</form>', lesson_page(), re.DOTALL)
    alone, hops, worked = forms[:3]
    opened = [re.sub(r"<details.*?</details>", "", one, flags=re.DOTALL) for one in forms]
    assert '<svg class="line"' not in opened[0]
    assert opened[1].count(">?</text>") == len(re.findall(r">\+[\d,]+</text>", hops)) > 1
    assert not re.search(r">\+[\d,]+</text>", opened[1])
    assert "<input" in alone
    assert "<input" in hops
    assert "<input" not in worked
    assert "40 − 0 = 40" in opened[2]
    assert ">+40</text>" in opened[2]


def test_help_fades_on_paper_too() -> None:
    """A worked row is filled in on the worksheet, hops stand there without their sizes."""
    sheet = words("two-lunches/worksheet.html")
    assert "40 − 0 = 40" in sheet
    assert "420 − 280 = 140" not in sheet
    drawn = re.findall(r'<svg class="line".*?</svg>', pages()["two-lunches/worksheet.html"])
    assert [one.count(">?</text>") for one in drawn] == [3]


def lesson_page() -> str:
    return pages()["two-lunches/index.html"]


def test_each_row_asks_in_words_and_offers_two_ways() -> None:
    page, key = words("two-lunches/index.html"), words("two-lunches/answers.html")
    spanish = words("es/two-lunches/index.html")
    assert "Which holds more, pie or apple, and how much more?" in page
    assert "¿Cuál tiene más, pay o bien manzana, y cuánto más?" in spanish
    assert "count up from 90 to 410. The hops: 10 + 300 + 10 = 320." in page
    assert "Or count up: 10 + 300 + 10 = 320" in key
    assert "hasta 410. Los saltos: 10 + 300 + 10 = 320." in spanish


def test_the_way_leads_back_to_guess_and_estimate() -> None:
    assert 'href="#guess">Look back at “Think”. What surprised you?</a>' in lesson_page()
    assert 'href="#lunch--estimate">Look back at your estimate.' in lesson_page()


def test_the_blocks_are_the_second_hint() -> None:
    """Matched and left to count, before the answer, which stays closed."""
    first = re.findall(r"<form.*?</form>", lesson_page(), re.DOTALL)[1]
    hints = re.findall(r"<details data-hint>.*?</details>", first, re.DOTALL)
    assert len(hints) == 2
    assert "The same on both sides" in hints[1]
    assert "What is left to count" in hints[1]
    assert "32" not in re.sub(r"<[^>]+>", "", hints[1])
    assert first.index(hints[1]) < first.index("data-working")


def test_what_is_kept_of_an_answer_goes_by_the_same_name_in_each_language() -> None:
    found = [
        re.findall(r'name="answer" value="([^"]+)"', pages()[f"{folder}two-lunches/index.html"])
        for folder in ("", "es/")
    ]
    assert found[0] == found[1] == ["from-town", "from-home", "0", "1"]
