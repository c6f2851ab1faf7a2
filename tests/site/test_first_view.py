"""A lesson page begins with little; what its first picture does not need is linked further down, in order."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.html_page import pages

_SCRIPT = re.compile(r'<script defer src="[^"]*/([a-z_]+)-[\w-]+\.js">')


@pytest.fixture
def lessons(built_site: Path) -> list[str]:
    """The family's pages; what a class site shows in a frame is no first view."""
    texts = [page.read_text() for page in pages(built_site) if page.name == "index.html"]
    found = [text for text in texts if "<lesson-thread" in text]
    assert found
    return found


def test_a_lesson_begins_with_one_script(lessons: list[str]) -> None:
    for page in lessons:
        assert _SCRIPT.findall(page.partition("</head>")[0]) == ["lesson"]


def test_the_thread_is_there_before_the_stops_tell_it_what_they_remember(
    lessons: list[str],
) -> None:
    for page in lessons:
        scripts = _SCRIPT.findall(page)
        assert scripts[1] == "thread"
        assert len(scripts) == len(set(scripts))
