"""What was kept under the names of before is led on, and nothing of it is lost."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.test_who_is_here import FULL, GAP, KEYS, LESSON

OLD = {"circle": "boat", "square": "kettle", "triangle": "wheel", "leaf": "leaf"}
"""What things were called while they were shapes."""


@pytest.fixture
def lesson(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Page:
    page.goto(serve(built_site) + LESSON)
    page.locator(".who").wait_for()
    return page


@pytest.mark.parametrize("old", OLD)
def test_what_a_family_wrote_under_an_older_name_is_led_on(lesson: Page, old: str) -> None:
    lesson.locator(GAP).fill("55")
    written = lesson.evaluate("localStorage.getItem('plumline-2 / boat/river-walk')")
    lesson.evaluate(
        """([old, written]) => {
          localStorage.clear();
          localStorage.setItem('plumline-2 / device', JSON.stringify({shape: old, 'blocks-only': ''}));
          for (const shape of ['circle', 'square', 'triangle', 'leaf'])
            for (const lesson of ['river-walk', 'soup-night'])
              localStorage.setItem(`plumline-2 / ${shape}/${lesson}`, shape === old ? written : '{"x": "1"}');
        }""",
        [old, written],
    )
    before = lesson.evaluate("({...localStorage})")
    lesson.reload()
    expect(lesson.get_by_role("button", name=f"Here: {OLD[old]}")).to_be_visible()
    expect(lesson.locator(GAP)).to_have_value("55")
    after = lesson.evaluate("({...localStorage})")
    own = f"plumline-2 / {old}/river-walk"
    assert after.pop(f"plumline-2 / {OLD[old]}/river-walk") == written
    before.pop(own)
    assert after == before  # nobody else's, and no other lesson's


def test_what_was_written_under_both_names_is_laid_together(lesson: Page) -> None:
    """A copy of a lesson that was kept before may still write under the older name."""
    lesson.evaluate(
        """() => {
          localStorage.setItem('plumline-2 / circle/river-walk', '{"a": "old", "b": "old"}');
          localStorage.setItem('plumline-2 / boat/river-walk', '{"b": "new"}');
        }"""
    )
    lesson.reload()
    lesson.locator(".who").wait_for()
    kept = lesson.evaluate("JSON.parse(localStorage.getItem('plumline-2 / boat/river-walk'))")
    assert (kept["a"], kept["b"]) == ("old", "new")
    assert "plumline-2 / circle/river-walk" not in lesson.evaluate(KEYS)


def test_what_is_led_on_and_finds_no_room_stays_where_it_is(lesson: Page) -> None:
    lesson.evaluate("localStorage.setItem('plumline-2 / circle/river-walk', '{\"a\": \"old\"}')")
    lesson.add_init_script(FULL)
    lesson.reload()
    lesson.locator(".who").wait_for()
    assert lesson.evaluate(KEYS) == ["plumline-2 / circle/river-walk"]


@pytest.mark.parametrize("unknown", ["pentagon", "constructor", "__proto__", ""])
def test_a_name_that_nobody_knows_is_the_boat_and_keeps_what_it_has(
    lesson: Page, unknown: str
) -> None:
    lesson.evaluate(
        """(unknown) => {
          localStorage.setItem('plumline-2 / device', JSON.stringify({shape: unknown}));
          localStorage.setItem(`plumline-2 / ${unknown}/river-walk`, '{"a": "b"}');
        }""",
        unknown,
    )
    lesson.reload()
    expect(lesson.get_by_role("button", name="Here: boat")).to_be_visible()
    own = lesson.evaluate(f"localStorage.getItem('plumline-2 / {unknown}/river-walk')")
    assert own == '{"a": "b"}'


def test_what_was_kept_before_keys_had_a_path_is_carried_over(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    lesson.evaluate("""() => { for (const key of Object.keys(localStorage)) {
      localStorage.setItem(key.replace('plumline-2 / boat', 'plumline-1-circle'), localStorage.getItem(key));
      localStorage.removeItem(key);
    } }""")
    assert [key[:11] for key in lesson.evaluate(KEYS)] == ["plumline-1-"]
    lesson.reload()
    expect(lesson.locator(GAP)).to_have_value("55")
    assert lesson.evaluate(KEYS) == ["plumline-2 / boat/river-walk"]
