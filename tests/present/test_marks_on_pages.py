"""Every text of a lesson marked as foreign: the pages gain elements around texts, and change in nothing else."""

from __future__ import annotations

import re
from dataclasses import replace
from xml.etree.ElementTree import Element

import pytest

from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.making import make_lesson
from generator.model.lesson import Lesson
from generator.model.texts import lesson_texts, with_texts
from generator.present.words.foreign import missing
from generator.steps.surroundings import surroundings
from tests.html_page import read_html
from tests.project import ROOT, library
from tests.site_data.test_lessons import RESULTS

LESSONS = ("river-walk", "two-days")


def marked(lesson: Lesson) -> LessonResult:
    texts = {one.path: missing(one.text, "en") for one in lesson_texts(lesson.file)}
    return work_out(replace(lesson, file=with_texts(lesson.file, texts)), library())


def pages(result: LessonResult) -> dict[str, str]:
    """All pages, those for filming among them."""
    around = surroundings(ROOT, library(), preview=True)
    outputs = make_lesson({"en": result}, around)
    made = {one.path: one.content.decode() for one in outputs if one.path.endswith(".html")}
    return {path: unstamped(page) for path, page in made.items()}


def unstamped(page: str) -> str:
    """A page without its stamp, which is made of the notice too: that is printed."""
    return re.sub(r"\b[2-9A-HJ-NP-Z]{6}\b", "stamp", page)


def written(element: Element) -> str:
    """A page as text, without the elements that mark."""
    if element.get("class") == "untranslated":
        return (element.text or "") + "".join(map(_with_tail, element))
    names = "".join(f' {name}="{value}"' for name, value in sorted(element.items()))
    inside = (element.text or "") + "".join(map(_with_tail, element))
    return f"<{element.tag}{names}>{inside}</{element.tag}>"


def _with_tail(element: Element) -> str:
    return written(element) + (element.tail or "")


@pytest.mark.parametrize("name", LESSONS)
def test_marks_are_elements_and_change_nothing_else(name: str) -> None:
    plain, foreign = pages(RESULTS[name]), pages(marked(RESULTS[name].lesson))
    notice = f'<p class="notice">{library().words["en"].plain("translation_notice")}</p>'
    assert plain.keys() == foreign.keys()
    for path, page in plain.items():
        other = foreign[path].replace(notice + "\n", "")
        assert written(read_html(other)) == written(read_html(page)), path


@pytest.mark.parametrize("name", LESSONS)
def test_every_text_that_is_seen_is_marked(name: str) -> None:
    """Texts of the lesson page; what only a machine or the title bar reads has no element."""
    lesson = RESULTS[name].lesson
    page = read_html(pages(marked(lesson))[f"{name}/index.html"])
    seen = ["".join(one.itertext()) for one in page.iter() if one.get("class") == "untranslated"]
    assert {lesson.file.title, *lesson.file.goals, *lesson.file.you_need} <= set(seen)
