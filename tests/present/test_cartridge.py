"""A lesson as a cartridge: which answers it asks for, how they may be typed, and what stands in its XML."""

from __future__ import annotations

from collections import Counter
from decimal import Decimal
from pathlib import Path
from xml.etree.ElementTree import fromstring

import pytest

from generator.compute.counted import AnswerKind
from generator.compute.counted_answers import answers_that_count
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind
from generator.present.cartridge.kept import things_from_json, things_to_json
from generator.present.cartridge.lesson import lesson_cartridge
from generator.present.cartridge.parts import Cartridge
from generator.present.cartridge.version import Version
from generator.present.cartridge.xml import document, element
from generator.present.entry import lesson_entry
from generator.present.pages.cartridges import MOST, all_cartridges
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.page import Surround
from generator.present.pages.table import START, lesson_links, page_around
from generator.present.words.say import Say
from generator.present.words.typed import typed
from generator.read.library import read_library
from generator.steps.work import lesson_files, work_lesson
from generator.write.cartridge import cartridge_file
from tests.cartridges import held
from tests.closing_lesson import closing_project
from tests.made import outputs
from tests.project import GOOD, ROOT, library, worked

SITE = "https://larkmead.example/"


def surround(address: str = SITE) -> Surround:
    site = library().site.model_copy(update={"address": address})
    return Surround(site, Say(library().words["en"]), "", (), {}, preview=False)


def cartridge(result: LessonResult, address: str = SITE) -> Cartridge:
    around = surround(address)
    page = page_around(START, result, around)
    links = lesson_links(result, around)
    return lesson_cartridge(PageInLesson(result, stop_views(result, around), around, page, links))


def asked(result: LessonResult) -> Counter[str]:
    return Counter(one.question.id for one in cartridge(result).questions)


def wanted(result: LessonResult) -> Counter[str]:
    """The answers that count by their names; of a day that asks for its gap too, both."""
    found = []
    for one in answers_that_count(result):
        found.append(one.id)
        if one.kind is AnswerKind.LEAN and " " in one.value:
            found.append(f"{one.stop}.{FigureKind.GAP}")
    return Counter(found)


@pytest.mark.parametrize("path", lesson_files(ROOT))
def test_it_asks_for_every_answer_that_counts_and_for_no_other(path: str) -> None:
    for result in work_lesson(ROOT, path, read_library(ROOT)).results.values():
        assert asked(result) == wanted(result)
        assert asked(result)


def test_a_row_that_is_worked_an_open_question_and_one_asked_again_later_are_not_asked(
    tmp_path: Path,
) -> None:
    project = closing_project(tmp_path)
    for path in lesson_files(project):
        for result in work_lesson(project, path, read_library(project)).results.values():
            assert asked(result) == wanted(result)


def test_what_is_right_is_the_ledgers_value(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD)
    figures = {one.id: one.value for one in result.figures}
    questions = [one.question for one in cartridge(result).questions]
    assert len(questions) == 5
    for one in questions:
        assert Decimal(one.right[0]) == figures[one.id]
        assert one.answer


def test_a_number_may_be_typed_as_machines_and_people_write_it() -> None:
    say = Say(library().words["en"])
    assert typed(Decimal(1250), say, "kcal") == ("1250", "1,250", "1250 kcal", "1,250 kcal")
    assert typed(Decimal("2.50"), say) == ("2.5",)


def test_a_question_of_two_choices_gets_a_third_that_is_neither(tmp_path: Path) -> None:
    """The profile takes one choice of at least three; its kind with two is true or false."""
    project = closing_project(tmp_path)
    held_ = [held(one.content) for one in outputs(project) if one.path.endswith("-1.1.imscc")]
    xml = [one for told in held_ for name, one in told.items() if name.endswith(".xml")]
    whole = b"".join(xml).decode()
    assert "I am not sure yet." in whole
    assert "cc.true_false" not in whole


def test_a_count_names_no_food_and_no_unit(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD)
    counts = [
        one.question for one in cartridge(result).questions if one.question.id.endswith(".count")
    ]
    assert len(counts) == 2
    for one in counts:
        told = " ".join((*one.lines, *one.answer, one.title)).lower()
        assert not [word for word in ("oatmeal", "bagel", "apple", "juice", "kcal") if word in told]


def test_where_the_site_has_no_address_nothing_is_made_and_the_notes_say_so(tmp_path: Path) -> None:
    project = closing_project(tmp_path)
    file = project / "site_data/site.yaml"
    lines = file.read_text("utf-8").splitlines()
    file.write_text("\n".join(one for one in lines if not one.startswith("address:")), "utf-8")
    made = {one.path: one for one in outputs(project)}
    assert not [path for path in made if path.endswith(".imscc")]
    notes = next(one.content.decode() for path, one in made.items() if path.endswith("notes.html"))
    assert "this site does not know its own address" in notes


def test_a_preview_makes_none_and_says_so(tmp_path: Path) -> None:
    made = {one.path: one for one in outputs(closing_project(tmp_path), preview=True)}
    assert not [path for path in made if path.endswith(".imscc")]
    notes = next(one.content.decode() for path, one in made.items() if path.endswith("notes.html"))
    assert "a preview has none" in notes


def test_the_same_lesson_makes_the_same_bytes(tmp_path: Path) -> None:
    result, say = worked(tmp_path, GOOD), Say(library().words["en"])
    for version in Version:
        first, second = (
            bytes(cartridge_file(cartridge(result), version, say, lambda _: b"")) for _ in range(2)
        )
        assert first == second


def test_names_stay_when_words_and_numbers_change_and_differ_from_site_to_site(
    tmp_path: Path,
) -> None:
    first = cartridge(worked(tmp_path, GOOD))
    other = GOOD.replace("Two breakfasts", "Three").replace("value: 110", "value: 120")
    again = cartridge(worked(tmp_path, other))
    assert [one.id for one in again.every()] == [one.id for one in first.every()]
    assert [one.id for one in again.questions] == [one.id for one in first.questions]
    elsewhere = cartridge(worked(tmp_path, GOOD), "https://other.example/")
    assert not {one.id for one in elsewhere.every()} & {one.id for one in first.every()}


def test_words_stay_words_whatever_they_look_like() -> None:
    told = element("title", "<b> & \"'\n]]>\x0b\ud83d\ufffe", href="\"><x a='&\n")
    read = fromstring(document(told))  # noqa: S314  # made by the program, in this test
    assert read.text == "<b> & \"'\n]]>"
    assert read.get("href") == "\"><x a='&\n"
    assert not list(read)


def test_more_lessons_than_anybody_imports_at_once_come_alone(tmp_path: Path) -> None:
    around, one = surround(), lesson_entry(worked(tmp_path, GOOD))
    assert all_cartridges([one] * MOST, (), around).files
    told = all_cartridges([one] * (MOST + 1), (), around)
    assert not told.files
    assert "up to 100 lessons" in told.none


def test_what_is_kept_of_a_lesson_is_read_as_it_was(tmp_path: Path) -> None:
    things = cartridge(worked(tmp_path, GOOD)).things
    assert things_from_json(things_to_json(things)) == things
