"""A what-if stop on page and paper, in notes and on slides, in two languages and without a script."""

from __future__ import annotations

from copy import deepcopy
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.compute.changed import WhatIf
from generator.compute.showing import shown_at
from generator.model.figure import FigureKind
from generator.present.recording.showing_name import showing_name
from generator.present.recording.slides.contents import contents
from generator.present.recording.slides.slide import Question
from generator.present.words.say import Say
from generator.present.words.what_if import change_words
from tests.html_page import having, one, read_html, text
from tests.made import page_outputs
from tests.pots_lesson import pots_project
from tests.stop_examples import example_of
from tests.worked import library, worked

SAY = Say(library().words["en"])


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Every page of the lesson, by its path."""
    project = pots_project(tmp_path_factory.mktemp("pots") / "site")
    return {
        output.path: output.content.decode()
        for output in page_outputs(project)
        if output.path.endswith(".html")
    }


def text_of(html: str) -> str:
    return text(read_html(html))


def stop(made: dict[str, str], path: str) -> Element:
    return one(read_html(made[path]), "stop-what_if")


OUTCOMES = (
    ("smaller", "45 − 43 = 2", "The gap went from 7 g to 2 g. Rosa's pot still holds more."),
    (
        "over",
        "38 − 37 = 1",
        "The gap went over. Rosa's pot held 7 g more; now Ilyas's pot holds 1 g more.",
    ),
    ("smaller", "43 − 38 = 5", "The gap went from 7 g to 5 g. Rosa's pot still holds more."),
)
"""Of each change, added up by hand: 16 + 2 + 12 + 15 = 45 and 1 + 6 + 16 + 15 = 38 before; half of 15.64 g is 8."""


GUESSES = "smaller larger the same other side"


def test_without_a_script_each_change_stands_with_its_own_answer(made: dict[str, str]) -> None:
    found = list(having(stop(made, "pots/index.html"), "outcome", "details"))
    assert [outcome.get("open") for outcome in found] == [None] * 3
    for outcome, (way, working, says) in zip(found, OUTCOMES, strict=True):
        assert outcome.get("data-way") == way
        assert working in text(outcome)
        assert says in text(outcome)


def test_before_anything_is_opened_no_answer_is_told(made: dict[str, str]) -> None:
    page = deepcopy(stop(made, "pots/index.html"))
    for details in list(page.iter("details")):
        details.clear()
    shown = text(page)
    assert "Rosa's pot 45 g" in shown
    assert "1 g becomes 6 g" in shown
    assert "16 g becomes 8 g" in shown
    for _, working, says in OUTCOMES:
        assert working not in shown
        assert says not in shown


def test_the_page_answers_which_comes_closest_and_which_is_even(made: dict[str, str]) -> None:
    shown = text(one(stop(made, "pots/index.html"), "of-all"))
    assert "Rosa's pot: Half the lentils. The gap is 1 g then." in shown
    assert "Which change makes both sides even? None of them." in shown


def test_changes_and_guesses_are_groups_of_radio_buttons(made: dict[str, str]) -> None:
    groups = list(stop(made, "pots/index.html").iter("fieldset"))
    names = [[each.get("name") for each in group.iter("input")] for group in groups]
    assert names == [["change"] * 3, ["way"] * 4]
    assert all(text(next(group.iter("legend"))) for group in groups)


def test_it_wears_styles_and_a_script_of_its_own(made: dict[str, str]) -> None:
    page = made["pots/index.html"]
    assert page.count("assets/what_if.css") == 1
    assert page.count("assets/what_if-en-US.js") == 1


def test_where_its_numbers_come_from_is_told_once_on_the_page(made: dict[str, str]) -> None:
    page = stop(made, "pots/index.html")
    assert [text(food) for food in page.iter("dt")] == ["Cooked lentils"]  # barley: in the rows
    assert "1/2 cup (99 g) holds 7.82." in text(page)


def test_the_worksheet_has_a_table_to_fill_in_and_no_answer(made: dict[str, str]) -> None:
    table = one(read_html(made["pots/worksheet.html"]), "what-if")
    assert [" ".join(map(text, row)).strip() for row in table.iter("tr")] == [
        "Change Your guess New totals New gap",
        "As it is now",
        f"Ilyas's pot Barley (1 cup) in place of white rice (1 cup) 1 g becomes 6 g {GUESSES}",
        f"Rosa's pot Half the lentils 16 g becomes 8 g {GUESSES}",
        f"Rosa's pot Leave out pasta (1 cup elbows) 2 g becomes 0 g {GUESSES}",
    ]


def test_the_answer_key_fills_it_in(made: dict[str, str]) -> None:
    key = read_html(made["pots/answers.html"])
    table = one(key, "what-if")
    filled = [[text(line) for line in having(row, "line")] for row in table.iter("tr")][1:]
    assert filled == [
        ["45 g", "38 g", "7 g"],
        ["45 g", "43 g", "2 g"],
        ["37 g", "38 g", "1 g"],
        ["43 g", "38 g", "5 g"],
    ]
    assert [text(one) for one in having(table, "right")] == ["smaller", "other side", "smaller"]
    assert "None of them." in text(key)


def test_where_totals_are_not_asked_for_paper_gives_those_of_now(
    tmp_path: Path,
) -> None:
    project = pots_project(tmp_path / "site")
    lesson = project / "lessons/pots/lesson.yaml"
    lesson.write_text(lesson.read_text("utf-8").replace("[gap, total]", "[gap]"), "utf-8")
    sheet = next(one for one in page_outputs(project) if one.path == "pots/worksheet.html")
    table = one(read_html(sheet.content.decode()), "what-if")
    assert "As it is now 45 g 38 g 7 g" in text(table)
    assert "43 g" not in text(table)


def test_the_notes_have_answers_and_the_guesses_to_expect(made: dict[str, str]) -> None:
    notes = text(read_html(made["pots/notes.html"]))
    for _, working, says in OUTCOMES:
        assert working in notes
        assert says in notes
    assert "6 + 6 + 16 + 15 = 43" in notes
    assert "its number grew. It was the side that held less." in notes
    assert "Choose one of 3 changes, guess which way the gap goes, then look." in notes


def test_its_texts_may_name_a_number_of_a_change(tmp_path: Path) -> None:
    project = pots_project(tmp_path / "site")
    lesson = project / "lessons/pots/lesson.yaml"
    reveal = (
        "Rosa's gap was {pots.total.gap}, and {rice-white-cooked_barley-cooked.gap} with barley."
    )
    text = lesson.read_text("utf-8").replace("Look at both pots, not at one.", f'"{reveal}"')
    lesson.write_text(text, "utf-8")
    page = next(one for one in page_outputs(project) if one.path == "pots/index.html")
    shown = text_of(page.content.decode())
    assert "gap was 7, and 2 with barley." in shown


def test_it_has_no_movement_card(made: dict[str, str]) -> None:
    assert "pots/cards.html" not in made or "swap" not in made["pots/cards.html"]


def test_in_spanish_all_of_it_is_spanish(made: dict[str, str]) -> None:
    page = text(stop(made, "es/pots/index.html"))
    for said in (
        "Cambia una cosa en una olla.",
        "La olla de Ilyas Cebada cocida (1 taza) en lugar de arroz blanco (1 taza)",
        "La mitad de las lentejas",
        "1 g pasa a ser 6 g",
        "La diferencia pasó de 7 g a 2 g. Tiene más el mismo lado: La olla de Rosa.",
        "Antes, La olla de Rosa: 7 g más. Ahora, La olla de Ilyas: 1 g más.",
        "Ninguno.",
    ):
        assert said in page
    for said in ("gap", "Leave", "guess", "Half"):
        assert said not in page


def test_a_second_name_and_an_amount_stand_in_one_pair_of_brackets() -> None:
    """A Spanish name may end in that of another region: *tomate (jitomate)*."""
    result = worked("""\
- compare:
    id: c
    measure: potassium
    sides: [Here, There]
    rows: [[{food: tomato-raw, amount: 1 medium}, {food: zucchini-cooked, amount: 1 cup sliced}]]
    solve: [gap]
- what_if: {for: c, changes: [{change: tomato-raw, leave_out: true}, {change: zucchini-cooked, leave_out: true}]}
""")
    worked_out = result.worked[result.lesson.stop_id(1)]
    assert isinstance(worked_out, WhatIf)
    said = [change_words(worked_out, one, Say(library().words["es"])) for one in worked_out.changes]
    assert said == [
        "Quita tomate (jitomate, 1 mediano)",
        "Quita calabacín (calabacita) cocido (1 taza en rodajas)",
    ]


def test_slides_show_the_question_and_the_changes_and_no_answer() -> None:
    result = worked(example_of("what_if"))
    slides = contents(1, result, SAY)
    assert all(isinstance(slide, Question) for slide in slides)
    assert [slide.prompt for slide in slides if isinstance(slide, Question)] == [
        "Change one thing in a pot. Which way will the gap go?",
        "Red pot: Half broth and half water",
        "Red pot: Leave out crackers",
        "Blue pot: Tomato soup (2 cups) in place of tomato soup (1 cup)",
    ]


def test_a_number_of_a_change_has_a_name_beside_the_film() -> None:
    result = worked(example_of("what_if"))
    shown = [one for one in shown_at(result, "change-one-thing") if "left-out" in one.figure.id]
    names = {one.figure.kind: showing_name(one, result, SAY) for one in shown}
    assert names == {
        FigureKind.TOTAL: "the total of “Red pot” with this change: Leave out crackers",
        FigureKind.GAP: "the gap with this change: Leave out crackers",
    }
