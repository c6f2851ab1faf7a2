"""Marks around texts that are not translated become elements, and only where an element can stand."""

from __future__ import annotations

from markupsafe import Markup

from generator.present.words.foreign import is_marked, missing, settle, stale
from generator.present.words.prose import inline


def test_a_missing_text_is_said_in_its_own_language() -> None:
    page = settle(f"<p>{missing('Half of each')}</p>", "en")
    assert page == '<p><span lang="en" class="untranslated">Half of each</span></p>'


def test_a_stale_text_keeps_the_page_s_language() -> None:
    assert settle(stale("La mitad"), "en") == '<span class="untranslated">La mitad</span>'


def test_marks_go_through_markdown_and_escaping() -> None:
    page = settle(f"<p>{inline(missing('*Half* & half'))}</p>", "en")
    assert page == '<p><span lang="en" class="untranslated"><em>Half</em> &amp; half</span></p>'


def test_no_element_stands_in_a_tag_a_title_or_a_script() -> None:
    text = Markup.escape(missing('a "quoted" > word'))
    page = settle(
        f'<title>{text}</title><a aria-label="{text}">x</a><script>"{text}"</script>', "en"
    )
    assert "untranslated" not in page
    assert not is_marked(page)


def test_a_page_without_marks_stays_as_it_is() -> None:
    assert settle("<p>Half of each</p>", "en") == "<p>Half of each</p>"
