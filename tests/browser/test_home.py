"""The front page of many lessons: they are chosen by a word, grade, time, topic and language, or simply read."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.front_page import site_of_many
from tests.once import once

Serve = Callable[[Path], str]
SHOWN = "[...document.querySelectorAll('.lessons > li:not([hidden]) h3')].map(each => each.textContent.trim())"


MANY = 12


@pytest.fixture(scope="session")
def site(built_site: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo with each lesson twice on its English front page."""
    del tmp_path_factory
    folder = built_site.parent.parent / "many"
    return once(folder, lambda: site_of_many(built_site, folder, MANY))


@pytest.fixture
def home(page: Page, site: Path, serve: Serve) -> Page:
    page.goto(serve(site) + "index.html")
    page.locator("lesson-filter form").wait_for()
    return page


def test_a_topic_leaves_the_lessons_about_it_and_their_number_is_said(home: Page) -> None:
    home.get_by_label("Topic").select_option("sodium")
    wanted = home.evaluate(
        "[...document.querySelectorAll('.lessons > li[data-topics~=sodium] h3')].map(each => each.textContent.trim())"
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
    browser: Browser, site: Path, serve: Serve
) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(serve(site) + "index.html")
    assert page.locator(".lessons > li:visible").count() == MANY
    dead = page.locator("select:visible, [type=search]:visible, lesson-filter button:visible")
    assert dead.count() == 0
    context.close()


def test_a_word_finds_the_lessons_that_say_it_whatever_its_case_and_marks(home: Page) -> None:
    field = home.get_by_label("Search")
    field.press_sequentially("RÍVER wal")
    assert home.evaluate(SHOWN) == ["Packed for the river walk 3", "Packed for the river walk 9"]
    field.fill("iver")  # no word begins so
    expect(home.locator("lesson-filter [role=status]")).to_have_text(
        "No lesson matches. Try fewer choices."
    )
    field.fill("potassium 4")
    assert home.evaluate(SHOWN) == ["Two baskets at the garden gate 4"]
    field.press("Enter")
    assert home.url.endswith("#word=potassium+4")
    home.reload()
    assert home.evaluate(SHOWN) == ["Two baskets at the garden gate 4"]


def test_show_all_again_takes_every_choice_back(home: Page) -> None:
    again = home.get_by_role("button", name="Show all again")
    expect(again).to_be_hidden()
    home.get_by_label("Topic").select_option("sodium")
    home.get_by_label("Search").fill("nothing of the kind")
    assert home.evaluate(SHOWN) == []
    again.click()
    assert len(home.evaluate(SHOWN)) == MANY
    expect(again).to_be_hidden()
    expect(home.get_by_label("Topic")).to_have_value("")
    expect(home.get_by_label("Search")).to_be_focused()
    assert home.url.partition("#")[2] == ""


def test_lessons_stand_by_what_they_compare_and_a_group_goes_with_its_lessons(home: Page) -> None:
    groups = home.locator("main section")
    titles = groups.locator("> h2").all_inner_texts()
    assert [title.lower() for title in titles] == [
        "fiber",
        "sugars",
        "energy",
        "potassium",
        "sodium",
    ]
    for group, title in zip(groups.all(), titles, strict=True):
        topics = group.locator("li").evaluate_all("all => all.map(each => each.dataset.topics)")
        assert len(topics) > 1
        assert set(topics) == {title.lower()}
    home.get_by_label("Topic").select_option("sodium")
    assert home.locator("main section:visible > h2").all_inner_texts() == titles[-1:]


@pytest.mark.parametrize("width", [320, 1280])
def test_a_narrowed_list_is_accessible(
    page: Page, site: Path, serve: Serve, axe: Callable[[Page], list[str]], width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(f"{serve(site)}index.html#topic=sodium")
    page.locator("lesson-filter form").wait_for()
    assert axe(page) == []
    page.goto(f"{page.url.partition('#')[0]}#grade=99")
    expect(page.locator("lesson-filter select[name=topic]")).to_have_value("")
    assert axe(page) == []
