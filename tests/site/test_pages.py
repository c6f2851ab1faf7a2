"""Every page of the built site is sound HTML, says what it is, and holds a strict policy."""

from __future__ import annotations

import json
import re
from collections import Counter
from itertools import pairwise
from pathlib import Path

from tests.html_page import HEADINGS, pages, read_page, text
from tests.policy import POLICY
from tests.site_project import SAID

DATA = ("application/json", "application/ld+json")
"""Types of script blocks that no browser runs (WHATWG HTML, 4.12.1: data blocks)."""
LESSON_PAGES = ("index", "cards", "worksheet", "answers")


def test_a_strict_build_passes_without_a_warning(built_site: Path) -> None:
    """Every warning of Python is shown, and MkDocs' own end a strict build."""
    said = (built_site.parent / SAID).read_text("utf-8")
    assert "built" in said.lower()
    assert not re.search("warning|error|deprecat|traceback", said, re.IGNORECASE)


def test_every_lesson_has_its_pages(built_site: Path) -> None:
    lessons = sorted((built_site.parent / "lessons").glob("*/lesson.yaml"))
    assert lessons
    for lesson in lessons:
        for name in LESSON_PAGES:
            assert (built_site / lesson.parent.name / f"{name}.html").is_file()


def test_every_page_passes_a_strict_parser(built_site: Path) -> None:
    for page in pages(built_site):
        read_page(page)


def test_every_page_says_its_language_and_its_own_title(built_site: Path) -> None:
    titles = Counter[str]()
    for page in pages(built_site):
        root = read_page(page)
        assert root.get("lang")
        titles[text(next(root.iter("title")))] += 1
    assert "" not in titles
    assert [title for title, times in titles.items() if times > 1] == []


def test_every_page_has_one_first_heading_and_no_level_left_out(built_site: Path) -> None:
    for page in pages(built_site):
        levels = [int(str(each.tag)[1]) for each in read_page(page).iter() if each.tag in HEADINGS]
        assert levels.count(1) == 1, page
        assert levels[0] == 1, page
        assert all(below <= above + 1 for above, below in pairwise(levels)), page


def test_every_id_is_there_once(built_site: Path) -> None:
    for page in pages(built_site):
        ids = Counter(each.get("id") for each in read_page(page).iter() if each.get("id"))
        assert [name for name, times in ids.items() if times > 1] == [], page


def test_every_name_that_an_attribute_refers_to_is_on_the_page(built_site: Path) -> None:
    for page in pages(built_site):
        root = read_page(page)
        ids = {each.get("id") for each in root.iter()}
        for each in root.iter():
            for attribute in ("aria-labelledby", "aria-describedby", "aria-controls", "for"):
                assert set(each.get(attribute, "").split()) <= ids, page


def test_every_page_has_a_strict_policy_and_nothing_it_forbids(built_site: Path) -> None:
    """Directives of Content Security Policy Level 3, W3C."""
    for page in pages(built_site):
        root = read_page(page)
        metas = [
            meta
            for meta in root.iter("meta")
            if meta.get("http-equiv") == "Content-Security-Policy"
        ]
        assert len(metas) == 1, page
        content = metas[0].get("content", "")
        assert content == "; ".join(f"{name} {value}" for name, value in POLICY.items()), page
        for each in root.iter():
            assert each.tag != "style", page
            assert "style" not in each.attrib, page
            assert not [name for name in each.attrib if name.startswith("on")], page
            if each.tag == "script":
                assert each.get("src") or each.get("type") in DATA, page


def test_the_policy_comes_before_all_that_it_governs(built_site: Path) -> None:
    for page in pages(built_site):
        head = next(read_page(page).iter("head"))
        order = [child.get("http-equiv") or str(child.tag) for child in head]
        policy = order.index("Content-Security-Policy")
        assert not {"script", "link"} & set(order[:policy]), page


def test_no_page_tells_where_somebody_came_from(built_site: Path) -> None:
    """Referrer Policy, W3C: the value of a meta element named referrer."""
    for page in pages(built_site):
        metas = [one for one in read_page(page).iter("meta") if one.get("name") == "referrer"]
        assert [one.get("content") for one in metas] == ["no-referrer"], page


def test_json_in_a_page_is_json_with_texts_only(built_site: Path) -> None:
    for page in pages(built_site):
        for script in read_page(page).iter("script"):
            if script.get("type") == "application/json":
                words = json.loads(script.text or "")
                assert words, page
                assert all(isinstance(word, str | dict) for word in words.values()), page


def test_a_page_without_javascript_lacks_nothing(built_site: Path) -> None:
    """What is hidden from the start is a control that only a script could serve, or true by a script alone."""
    controls = {
        "button",
        "clear-device",
        "form",
        "keep-lesson",
        "kept-lessons",
        "label",
        "print-button",
    }
    for page in pages(built_site):
        root = read_page(page)
        players = {each for player in root.iter("pause-player") for each in player.iter()}
        makers = {each for maker in root.iter("class-link") for each in maker.iter()}
        # A maker of links says in its own words that it needs a script.
        hidden = {each for each in root.iter() if "hidden" in each.attrib} - players - makers
        hidden -= {each for each in hidden if "data-place-kept" in each.attrib}  # scripts keep it
        hidden -= {each for each in hidden if each.get("class") == "dealt"}  # a script fills it
        assert {str(each.tag) for each in hidden} <= controls, page
