"""What went out and is gone is asked about on every run, with the line to write, until somebody writes it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from generator.check.gone import Today, gone_without_a_word
from generator.check.standing import Standing, StandingStop
from generator.model.published import LessonState, Publication, Published
from generator.problems import Place, Weight

DAY = "2026-03-14T08:00:00Z"
STATE = LessonState(
    at=DAY,
    language="en",
    title="Packed for the walk",
    stamps={"worksheet": "K7Q2FM"},
    stops={"hello": "Watch", "lunch": "Two lunches", "talk": "Talk about it"},
    pages=("index.html", "worksheet.html"),
)
SPANISH = replace(STATE, language="es", title="Listos para el paseo")


def stop(name: str, title: str = "", *formerly: str, line: int = 9) -> StandingStop:
    return StandingStop(name, formerly, Place("lessons/walk/lesson.yaml", line), {"en": title})


WALK = Standing(
    folder="walk",
    formerly=(),
    place=Place("lessons/walk/lesson.yaml"),
    titles={"en": "Packed for the walk", "es": "Listos para el paseo"},
    stops=(stop("hello", line=5), stop("lunch", "Two lunches"), stop("talk", line=20)),
)
TODAY = Today((WALK,), (), ("en", "es"), Place("site_data/site.yaml", 4), ("care.html",), True, ())


def told(today: Today, **lessons: tuple[LessonState, ...]) -> list[str]:
    found = list(gone_without_a_word(Published(lessons), today))
    assert {problem.weight for problem in found} <= {Weight.QUESTION}
    assert all(problem.hint for problem in found)
    return [str(problem) for problem in found]


def with_stops(*stops: StandingStop) -> Today:
    return replace(TODAY, lessons=(replace(WALK, stops=stops),))


def test_nothing_is_asked_where_all_is_there_or_nothing_went_out() -> None:
    assert told(TODAY, walk=(STATE, SPANISH)) == []
    assert told(TODAY) == []


@pytest.mark.parametrize(
    ("stops", "line", "listed"),
    [
        ((stop("hello"), stop("noon", "TWO  lunches", line=7), stop("talk")), 7, "[lunch]"),
        ((stop("hello"), stop("lunches", "Other", line=8), stop("talk")), 8, "[lunch]"),
        ((stop("hello"), stop("x", "Other", "y", line=6), stop("talk")), 6, "[y, lunch]"),
        ((stop("hello"), stop("talk", line=3)), 3, "[lunch]"),
    ],
    ids=["of the same title", "of a name like it", "in its place", "what follows"],
)
def test_a_stop_of_another_name(stops: tuple[StandingStop, ...], line: int, listed: str) -> None:
    assert told(with_stops(*stops), walk=(STATE,)) == [
        (
            f"lessons/walk/lesson.yaml:{line}:1: the stop `lunch` (“Two lunches”) went out and is gone; "
            "links sent and sheets printed since 2026-03-14 lead to it: where this stop stands for it "
            f"now, write `formerly: {listed}` in it, else in the one that does"
        )
    ]


def test_the_parting_question_has_no_other_name() -> None:
    asked = replace(STATE, stops={**STATE.stops, "parting": "One last question"})
    assert told(TODAY, walk=(asked,)) == []


def test_a_stop_is_asked_about_after_a_publication_without_it_too() -> None:
    later = replace(STATE, at="2026-04-01T08:00:00Z", stops={"hello": "Watch", "talk": "Talk"})
    without = with_stops(stop("hello"), stop("talk", line=3))
    assert len(told(without, walk=(STATE, later))) == 1
    mended = with_stops(stop("hello"), stop("talk", "", "lunch"))
    assert told(mended, walk=(STATE, later)) == []


def test_a_lesson_of_another_name() -> None:
    for title, name in (("Packed for the walk", "hike"), ("Other", "river-walk")):
        new = replace(WALK, folder=name, formerly=("stroll",), titles={"en": title}, stops=())
        (said,) = told(replace(TODAY, lessons=(new,)), walk=(STATE, SPANISH))
        assert said.startswith(
            "lessons/walk/lesson.yaml:1:1: the lesson `walk` went out and is gone"
        )
        assert "write `formerly: [stroll, walk]` above its stops" in said
    mended = replace(TODAY, lessons=(replace(WALK, folder="hike", formerly=("walk",)),))
    assert told(mended, walk=(STATE, SPANISH)) == []


def test_a_lesson_that_is_gone_for_good() -> None:
    other = replace(WALK, folder="soup", titles={"en": "Soup", "es": "Sopa"})
    empty = replace(TODAY, lessons=(other,))
    (said,) = told(empty, walk=(STATE, replace(STATE, at="2026-04-01", gone=True)))
    assert said.startswith("site_data/site.yaml:1:1: the lesson `walk` went out and is gone")
    assert "write `walk: ` below `formerly:`" in said
    assert told(replace(empty, formerly=("walk",)), walk=(STATE,)) == []
    assert told(replace(empty, held_back=("walk",)), walk=(STATE,)) == []
    assert (
        told(replace(empty, is_whole=False), walk=(STATE,)) == []
    )  # it may be the one that cannot be read


def test_a_lesson_that_went_out_before_is_an_heir_by_its_title_alone() -> None:
    """As after a publication that is taken back: the lesson has its first name again."""
    for title, at in (("Other", "site_data/site.yaml"), (STATE.title, "lessons/walk/lesson.yaml")):
        old = replace(WALK, folder="walks", titles={"en": title}, stops=())
        today = replace(TODAY, lessons=(old,))
        (said,) = told(today, walk=(STATE,), walks=(replace(STATE, stops={}),))
        assert said.startswith(f"{at}:1:1: the lesson `walk` went out and is gone")


def test_a_language_of_a_lesson_until_it_went_out_without() -> None:
    english = replace(TODAY, lessons=(replace(WALK, titles={"en": "Packed for the walk"}),))
    (said,) = told(english, walk=(STATE, SPANISH))
    assert "went out in `es` and has no such translation now" in said
    assert "put `lesson.es.yaml` back" in said
    gone = LessonState(at="2026-04-01T08:00:00Z", language="es", gone=True)
    assert told(english, walk=(STATE, SPANISH, gone)) == []


def test_a_language_of_the_site_is_told_once() -> None:
    english = replace(TODAY, languages=("en",), formerly=("soup",))
    assert told(english, walk=(STATE, SPANISH), soup=(SPANISH,)) == [
        (
            "site_data/site.yaml:4:1: `es` is no longer listed here, and went out with lessons (2): list "
            "it again, or publish: their old addresses then say so and lead to `en`"
        )
    ]
    gone = LessonState(at="2026-04-01T08:00:00Z", language="es", gone=True)
    assert told(english, walk=(STATE, SPANISH, gone)) == []


def test_a_page_in_all_its_languages_is_told_once() -> None:
    pages = (
        "updates-1.html",
        "care.html",
        "cares.html",
        "es/cares.html",
        "deep/er.html",
        "file.pdf",
    )
    out = Publication(DAY, "0.3", "", ("en", "es"), (), pages)
    (said,) = map(str, gone_without_a_word(Published({}, (out,)), TODAY))
    assert said.startswith("site_data/site.yaml:1:1: the page `cares.html` went out and is gone")
    assert "write `cares.html: care.html` below `formerly:`" in said
    for mended in (("cares.html",), ("cares.html", "es/cares.html")):
        today = replace(TODAY, formerly=mended)
        assert list(gone_without_a_word(Published({}, (out,)), today)) == []
