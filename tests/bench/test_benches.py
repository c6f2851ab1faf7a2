"""Each bench measures, can miss its goal, and never passes where there was nothing to measure."""

from __future__ import annotations

import json
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from pathlib import Path

import pytest

from bench import goals
from bench.measuring import demo
from bench.measuring.row import Case, Row
from bench.run import BENCHES, main, measured

SMALL = Case(lessons=3, runs=1, small=True)


@pytest.fixture(autouse=True)
def _the_demo_of_the_tests(built_site: Path) -> None:
    demo.choose(built_site)


@pytest.mark.parametrize("name", BENCHES)
def test_each_bench_measures_its_smallest_case_and_can_miss(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    unheard_of = {
        key: replace(goal, bound=-1e9 if isinstance(goal, goals.AtMost) else 1e9)
        for key, goal in goals.GOALS.items()
    }
    monkeypatch.setattr("bench.measuring.row.GOALS", unheard_of)
    # In a thread of its own: a process may hold the browser of other tests, and one thread takes one.
    with ThreadPoolExecutor(1) as apart:
        rows = apart.submit(lambda: list(measured([name], SMALL))).result()
    asked = [row for row in rows if row.goal is not None]
    assert asked
    assert not any(row.ok for row in asked)
    assert all(row.figure >= 0 or row.unit == "ms" for row in rows)


@pytest.mark.parametrize("name", ["first_view", "pages"])
def test_an_empty_site_is_no_pass(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["--only", name, "--site", str(tmp_path), "--json"]) == 1
    assert "nothing was measured" in capsys.readouterr().err


def test_rows_are_told_as_json_and_a_miss_is_the_exit_code(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = [Row("one", 1.5, "s", 2.0, ok=True), Row("other", 3.0, "s", 2.0, ok=False)]
    monkeypatch.setattr("bench.run.measured", lambda *_: iter(rows))
    assert main(["--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert told[0] == {"name": "one", "figure": 1.5, "goal": 2.0, "unit": "s", "ok": True}
    monkeypatch.setattr("bench.run.measured", lambda *_: iter(rows[:1]))
    assert main(["--json"]) == 0
    monkeypatch.setattr("bench.run.measured", lambda *_: iter(()))
    assert main(["--json"]) == 1
