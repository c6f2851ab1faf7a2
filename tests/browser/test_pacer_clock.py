"""The count comes from the time alone, in the browser's own arithmetic as in the written cases."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypedDict

import pytest
from playwright.sync_api import Page

from tests.site_project import ROOT

EXAMPLES = json.loads((ROOT / "tests" / "examples" / "pacer.json").read_text(encoding="utf-8"))
Serve = Callable[[Path], str]


class ClockCase(TypedDict):
    """What happens to a count, and what it reads."""

    title: str
    pace: int
    steps: list[dict[str, Any]]


@pytest.fixture
def clock(tmp_path: Path, serve: Serve, page: Page) -> Page:
    """A blank page beside the modules."""
    shutil.copytree(ROOT / "theme" / "js", tmp_path / "js")
    (tmp_path / "index.html").write_text("<!doctype html><title>Blank</title>", encoding="utf-8")
    page.goto(serve(tmp_path))
    return page


PLAYED = """async ({pace, steps}) => {
  const all = await import('/js/pacer-clock.js');
  let pacing = all.still(pace);
  return steps.map(step => {
    if (step.do === 'run') pacing = all.run(pacing, step.at);
    if (step.do === 'pause') pacing = all.pause(pacing, step.at);
    if (step.do === 'pace') pacing = all.atPace(pacing, step.at, step.pace);
    return step.do ? null : all.numberAt(pacing, step.at);
  });
}"""


@pytest.mark.parametrize("case", EXAMPLES["cases"], ids=lambda case: case["title"])
def test_the_number_comes_from_the_time_alone(clock: Page, case: ClockCase) -> None:
    wanted = [step.get("number") for step in case["steps"]]
    assert clock.evaluate(PLAYED, case) == wanted


def test_beats_are_due_where_a_minute_divides(clock: Page) -> None:
    found = clock.evaluate(
        "async cases => { const all = await import('/js/pacer-clock.js');"
        " return cases.map(({pace, number}) => all.dueAt(all.run(all.still(pace), 0), number)); }",
        EXAMPLES["due"],
    )
    assert found == [case["due"] for case in EXAMPLES["due"]]


def test_paces_go_in_fives_and_stay_within_what_a_child_can_do(clock: Page) -> None:
    found = clock.evaluate(
        "async cases => { const all = await import('/js/pacer-clock.js');"
        " return cases.map(({pace, steps, own}) => all.nextPace(pace, steps, own)); }",
        EXAMPLES["paces"],
    )
    assert found == [case["next"] for case in EXAMPLES["paces"]]
