"""How long stops are on a phone: the figures asked for hold in every lesson of the demo."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from bench.benches.lengths import screens
from bench.goals import GOALS
from bench.measuring.files import lesson_pages
from bench.measuring.screens import PHONE


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """The demo, served."""
    return serve(built_site)


def test_stops_to_compare_and_to_move_at_are_short(
    page: Page, address: str, built_site: Path
) -> None:
    """Findings, 7.3: 3.0 and 2.9 screens of 390 x 844 were measured; 1.7 and 1.5 are asked for."""
    page.set_viewport_size({"width": PHONE["width"], "height": PHONE["height"]})
    measured = [
        (key, length, lesson.parent.name)
        for lesson in lesson_pages(built_site)
        for key, length in screens(page, address + lesson.relative_to(built_site).as_posix())
    ]
    assert {key for key, *_ in measured} == {"compare_screens", "move_screens"}
    assert [each for each in measured if each[1] > GOALS[each[0]].bound] == []
