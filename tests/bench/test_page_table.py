"""The table of what the pages cost stands beside what was found before, and hides no missing figure."""

from __future__ import annotations

from pathlib import Path

import pytest

from bench.benches.engines import counted
from bench.goals import GOALS
from bench.measuring.row import NothingMeasuredError, Row, row
from bench.page_table import LINES, table

FLOWS = """<testsuites><testsuite>
<testcase name="test_end[chromium]"/>
<testcase name="test_end[firefox]"><failure message="late">…</failure></testcase>
<testcase name="test_end[webkit]"><skipped message="not here"/></testcase>
<testcase name="test_seek[chromium]"/>
<testcase name="test_seek[firefox]"><error message="gone">…</error></testcase>
</testsuite></testsuites>"""


def some_rows() -> list[Row]:
    rows = [row(line.goal, 0.5, "one page") for line in LINES]
    return [*rows, row("move_screens", 1.25, "another"), row("flows", 2, "firefox, 7 flows")]


def test_every_thing_has_its_line_with_the_worst_figure() -> None:
    lines = list(table(some_rows()))
    assert len(lines) == len(LINES)
    moves = next(line for line in lines if line.startswith(f"| {GOALS['move_screens'].name}"))
    assert moves.endswith("| 2.9 screens | 1.25 screens (another) | 1.5 |")


def test_what_goes_wrong_is_added_up_over_the_engines() -> None:
    flows = next(line for line in table(some_rows()) if line.startswith("| flows"))
    assert flows.endswith("| 2.5 found (one page; firefox, 7 flows) | 0 |")


def test_a_thing_without_a_figure_is_no_line() -> None:
    rows = [one for one in some_rows() if not one.name.startswith(GOALS["kept"].name)]
    with pytest.raises(NothingMeasuredError):
        list(table(rows))


def test_a_flow_that_was_skipped_was_not_tried(tmp_path: Path) -> None:
    told = tmp_path / "flows.xml"
    told.write_text(FLOWS, encoding="utf-8")
    tried, wrong = counted(told)
    assert tried == {"chromium": 2, "firefox": 2}
    assert {engine: wrong[engine] for engine in tried} == {"chromium": 0, "firefox": 2}
