"""The band of a preview follows a page that is left as it is, and its texts are written as they are."""

from __future__ import annotations

from generator.present.pages.problem_band import with_band

PAGE = "<!doctype html><title>A</title><p>1 < 2"


def test_what_is_wrong_follows_the_page() -> None:
    band = with_band(PAGE, [("lesson.yaml:3:1", "`<b>` is no food", "a & b")])
    assert band.startswith(PAGE + '<div role="alert" tabindex="0"')
    assert "<code>lesson.yaml:3:1</code> `&lt;b&gt;` is no food<br>a &amp; b" in band


def test_a_page_with_nothing_wrong_stays_as_it_is() -> None:
    assert with_band(PAGE, []) == PAGE
