"""The front page: lessons are chosen by grade, time, topic and language, or simply read."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

Serve = Callable[[Path], str]
SHOWN = "[...document.querySelectorAll('.lessons > li:not([hidden]) h2')].map(each => each.textContent.trim())"


@pytest.fixture
def home(page: Page, built_site: Path, serve: Serve) -> Page:
    page.goto(serve(built_site) + "index.html")
    page.locator("lesson-filter form").wait_for()
    return page


def test_a_topic_leaves_the_lessons_about_it_and_their_number_is_said(home: Page) -> None:
    home.get_by_label("Topic").select_option("sodium")
    wanted = home.evaluate(
        "[...document.querySelectorAll('.lessons > li[data-topics~=sodium] h2')].map(each => each.textContent.trim())"
    )
    assert home.evaluate(SHOWN) == wanted
    expect(home.locator("lesson-filter [role=status]")).to_have_text(
        f"{len(wanted)} lesson{'s' if len(wanted) != 1 else ''}"
    )


def test_choices_are_taken_together(home: Page) -> None:
    home.get_by_label("Also in").select_option("es")
    both = home.evaluate(SHOWN)
    home.get_by_label("Topic").select_option("sodium")
    one = home.evaluate(SHOWN)
    assert 0 < len(one) < len(both)
    assert set(one) < set(both)


def test_time_is_the_longest_wanted(home: Page) -> None:
    time = home.get_by_label("Time")
    longest = time.locator("option").nth(1).get_attribute("value")
    time.select_option(longest)
    minutes = home.evaluate(
        "[...document.querySelectorAll('.lessons > li:not([hidden])')].map(each => Number(each.dataset.minutes))"
    )
    assert minutes
    assert max(minutes) <= int(longest or 0)


def test_the_choice_stands_in_the_address_and_is_taken_from_it(home: Page) -> None:
    home.get_by_label("Also in").select_option("es")
    home.get_by_label("Topic").select_option("sodium")
    shown, address = home.evaluate(SHOWN), home.url
    assert address.endswith("#topic=sodium&language=es")
    home.goto("about:blank")
    home.goto(address)
    home.locator("lesson-filter form").wait_for()
    assert home.evaluate(SHOWN) == shown
    expect(home.get_by_label("Topic")).to_have_value("sodium")


def test_energy_can_be_left_out(home: Page) -> None:
    """A family may need fewer numbers about food (product.md, Care)."""
    about_energy = home.locator(".lessons > li[data-topics~=energy]").count()
    everything = len(home.evaluate(SHOWN))
    home.get_by_label("Topic").select_option("Not energy")
    assert 0 < about_energy < everything
    assert home.locator(".lessons > li[data-topics~=energy]:visible").count() == 0
    assert len(home.evaluate(SHOWN)) == everything - about_energy
    assert home.url.endswith("#topic=-energy")
    home.reload()
    assert len(home.evaluate(SHOWN)) == everything - about_energy


@pytest.mark.parametrize("hash_", ["#topic=moon&grade=99", "#%E0%A4%A&&=&language", "#main"])
def test_an_address_that_chooses_what_is_not_there_chooses_nothing(home: Page, hash_: str) -> None:
    all_of_them = home.evaluate(SHOWN)
    home.get_by_label("Topic").select_option("sodium")
    assert home.evaluate(SHOWN) != all_of_them
    home.goto(home.url.partition("#")[0] + hash_)
    expect(home.get_by_label("Topic")).to_have_value("")
    assert home.evaluate(SHOWN) == all_of_them


def test_without_script_all_lessons_are_there_and_no_dead_filter(
    browser: Browser, built_site: Path, serve: Serve
) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(serve(built_site) + "index.html")
    lessons = sorted(built_site.glob("*/keep.json"))
    assert page.locator(".lessons > li").count() == len(lessons) > 0
    assert page.locator("select").first.is_visible() is False
    context.close()


def test_the_thread_is_not_cut_off_where_entries_are_laid_out_late(home: Page) -> None:
    """`content-visibility` paints nothing outside an entry's box (CSS Containment 2, section 4)."""
    for entry in home.locator(".lessons > li").all():
        box, knot = entry.bounding_box(), entry.locator(".stop-head").bounding_box()
        assert box is not None
        assert knot is not None
        assert knot["x"] - box["x"] > 30


def test_one_thread_ends_at_the_last_lesson_that_is_shown(home: Page) -> None:
    """Drawn in one piece and covered below the last knot: pieces of broken pixels would not meet."""
    covers = (
        "all => all.filter(each => getComputedStyle(each, '::before').content !== 'none')"
        ".map(each => each.querySelector('h2').textContent.trim())"
    )
    for topic in ("", "sodium"):
        home.get_by_label("Topic").select_option(topic)
        assert home.locator(".lessons > li").evaluate_all(covers) == home.evaluate(SHOWN)[-1:]


@pytest.mark.parametrize("width", [320, 1280])
@pytest.mark.parametrize("path", ["index.html", "es/index.html"])
def test_a_narrowed_list_is_accessible(
    page: Page,
    built_site: Path,
    serve: Serve,
    axe: Callable[[Page], list[str]],
    path: str,
    width: int,
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(f"{serve(built_site)}{path}#topic=sodium")
    page.locator("lesson-filter form").wait_for()
    assert axe(page) == []
    page.goto(f"{page.url.partition('#')[0]}#grade=99")
    expect(page.locator("lesson-filter select[name=topic]")).to_have_value("")
    assert axe(page) == []
