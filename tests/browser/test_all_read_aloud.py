"""Whatever a learner is to read in a stop can be heard as well: every text of every kind that is marked so."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page

from generator.model.base import Frozen
from generator.model.lesson import Lesson
from generator.model.stops import STOP_KINDS
from generator.model.stops.ask import AskStop
from generator.model.text_marks import For, marked_fields
from generator.model.texts import LessonText, lesson_texts
from generator.present.words.prose import plain
from tests.browser.test_read_aloud import OURS, SAID, SPEECH
from tests.browser.watched import OPEN_ALL
from tests.kinds_of_stop import held_by
from tests.project import read
from tests.site_project import build_project, copy_project
from tests.stop_examples import example_of

HEAD = """\
title: One of each
summary: Every kind of stop.
grades: 3-5
minutes: 10
stops:
"""
IN_TIME = ("watch", "ask", "compare", "what_if", "day", "move", "talk")
"""The kinds in the order of the times that their examples have."""
LESSON = HEAD + "".join(f"{example_of(kind).strip()}\n" for kind in IN_TIME)


def of_learners(lesson: Lesson) -> Iterator[LessonText]:
    """What the learner reads in the stops."""
    for one in lesson_texts(lesson.file, For.LEARNER_READS):
        if one.stop is not None:
            yield one


def told(lesson: Lesson, text: LessonText) -> Iterator[int]:
    """The stops in which a text stands: its own, and one that asks its question once more."""
    assert text.stop is not None
    yield text.stop
    for at, stop in enumerate(lesson.file.stops):
        if isinstance(stop, AskStop) and stop.asks_again == lesson.ids[text.stop].stop:
            yield at


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Lesson:
    made = read(copy_project(tmp_path_factory.mktemp("heard") / "project", lessons=False), LESSON)
    assert isinstance(made, Lesson), list(map(str, made))
    return made


def fields_of(model: type[Frozen], kind: str) -> Iterator[str]:
    """Each field whose words a learner reads, as ``compare.sides``."""
    for field in marked_fields(model):
        if field.mark and field.mark.whom is For.LEARNER_READS:
            yield f"{kind}.{field.key}"
        for inner in held_by(model.model_fields[field.name].annotation):
            yield from fields_of(inner, kind)


def test_the_examples_fill_every_field_that_a_learner_reads(lesson: Lesson) -> None:
    """A title is a field of every kind and stands in the same heading; one of them is enough."""
    filled = {
        f"{one.path[2]}.{next(key for key in reversed(one.path) if isinstance(key, str))}"
        for one in of_learners(lesson)
    }
    there = {name for kind, model in STOP_KINDS.items() for name in fields_of(model, kind)}
    assert any(name.endswith(".title") for name in filled)
    assert {name for name in there - filled if not name.endswith(".title")} == set()


def test_every_text_that_a_learner_reads_is_heard(
    page: Page, lesson: Lesson, tmp_path: Path, serve: Callable[[Path], str]
) -> None:
    project = copy_project(tmp_path / "project", lessons=False)
    read(project, LESSON)
    page.add_init_script(SPEECH % json.dumps([OURS]))
    page.goto(f"{serve(build_project(project))}meal/index.html")
    page.locator(".who").wait_for()
    page.evaluate(OPEN_ALL)
    heard: dict[int, str] = {}
    for index, stop in enumerate(page.locator(".stop").all()):
        page.evaluate("said.length = 0")
        stop.get_by_role("button", name="Read this to me").click()
        heard[index] = " ".join(" ".join(text for _, text in page.evaluate(SAID)).split())
    unheard = [
        f"{'.'.join(map(str, one.path))}: {one.text}"
        for one in of_learners(lesson)
        if not any(" ".join(plain(one.text).split()) in heard[at] for at in told(lesson, one))
    ]
    assert unheard == []
    assert len(heard) == len(lesson.file.stops)
