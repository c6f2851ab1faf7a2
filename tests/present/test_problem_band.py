"""The band above a page of the preview says what is to be put right, as it was written."""

from __future__ import annotations

from generator.present.pages.problem_band import with_band
from tests.html_page import read_html, text

PAGE = "<!doctype html>\n<html lang=en><head><title>A</title></head><body><h1>A</h1></body></html>"


def test_place_mistake_and_way_out_stand_above_the_page() -> None:
    page = read_html(
        with_band(PAGE, [("lessons/a/lesson.yaml:3:1", "no such food", "did you mean `b`?")])
    )
    body = next(page.iter("body"))
    band = next(iter(body))
    assert band.get("role") == "alert"
    [line] = band.iter("li")
    assert text(line) == "lessons/a/lesson.yaml:3:1 no such fooddid you mean `b`?"
    assert [text(place) for place in line.iter("code")] == ["lessons/a/lesson.yaml:3:1"]


def test_what_is_wrong_is_text_whatever_it_holds() -> None:
    hostile = "<script>alert(1)</script><img src=x onerror=alert(1)>"
    page = read_html(with_band(PAGE, [(hostile, hostile, hostile)]))
    assert not list(page.iter("script"))
    assert not list(page.iter("img"))
    assert text(page).count(hostile) == 3


def test_a_page_of_lessons_in_which_nothing_is_wrong_stays_as_it_is() -> None:
    assert with_band(PAGE, []) == PAGE
