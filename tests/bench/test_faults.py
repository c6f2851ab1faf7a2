"""The planted faults still stand where they were, and who plants them tells killed from living."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path

import pytest

from bench.faults import ROOT, main
from bench.measuring.fault import Fault, read_faults, why_not

FAULTS = read_faults()


def test_there_are_enough_and_each_has_a_name_of_its_own() -> None:
    assert len(FAULTS) >= 40
    assert len({fault.name for fault in FAULTS}) == len(FAULTS)


@pytest.mark.parametrize("fault", FAULTS, ids=lambda fault: fault.name)
def test_every_fault_can_be_planted(fault: Fault) -> None:
    assert why_not(fault, ROOT) == ""
    assert fault.hurts


ADDED = Fault("adds one too many", "sums.py", "a + b", "a + b + 1", "sums", ("test_sums.py",))


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A project of one function, with a test that holds one half of it."""
    root = tmp_path / "project"
    root.mkdir()
    (root / "sums.py").write_text("def add(a, b):\n    return a + b\n\ndef zero():\n    return 0\n")
    test = "from sums import add\n\ndef test_add():\n    assert add(2, 3) == 5\n"
    (root / "test_sums.py").write_text(test)
    return root


def planted(project: Path, *faults: dict[str, object]) -> int:
    """What the program ends with for these faults, each the first one with something changed."""
    lines = []
    for fault in faults:
        lines += [
            "[[fault]]",
            *(f"{key} = {_toml(value)}" for key, value in (asdict(ADDED) | fault).items()),
        ]
    file = project.parent / "faults.toml"
    file.write_text("\n".join(lines), "utf-8")
    return main(["--root", str(project), "--list", str(file), "--jobs", "2"])


def _toml(value: object) -> str:
    return str(list(value)) if isinstance(value, tuple) else repr(value)


def test_a_fault_that_a_test_notices_is_killed(
    project: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    sound = (project / "sums.py").read_text()
    assert planted(project, {}) == 0
    assert "killed    adds one too many" in capsys.readouterr().out
    assert (project / "sums.py").read_text() == sound


def test_one_that_no_test_notices_is_told_with_whom_it_hurts(
    project: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The second is as long as what it takes the place of, and planted within the same second."""
    zero = {"name": "zero is one", "old": "return 0", "new": "return 1", "hurts": "whoever counts"}
    more = {"name": "adds a little", "new": "a - b"}
    assert planted(project, zero, more) == 1
    said = capsys.readouterr().out
    assert "SURVIVED  zero is one: whoever counts" in said
    assert "killed    adds a little" in said
    assert "1 of 2 faults are killed" in said


@pytest.mark.parametrize(
    ("change", "why"),
    [
        ({"old": "a - b"}, "its old text stands 0 times in sums.py"),
        ({"old": "def "}, "its old text stands 2 times in sums.py"),
        ({"new": "a + b"}, "its new text is the old one"),
        ({"file": "gone.py"}, "there is no gone.py any more"),
        ({"tests": ("test_gone.py",)}, "its tests are not there: test_gone.py"),
        ({"tests": ()}, "its tests are not there: none is named"),
    ],
)
def test_one_that_cannot_be_planted_is_no_pass(
    project: Path, capsys: pytest.CaptureFixture[str], change: dict[str, object], why: str
) -> None:
    assert planted(project, change) == 1
    assert f"gone      adds one too many: {why}" in capsys.readouterr().out


def test_a_change_that_stops_the_tests_from_running_kills_nothing(
    project: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert planted(project, {"new": "a +"}) == 1
    assert "SURVIVED" in capsys.readouterr().out


def test_tests_that_fail_by_themselves_say_nothing(
    project: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (project / "test_sums.py").write_text("def test_add():\n    assert False\n")
    assert planted(project, {}) == 1
    assert "The tests fail without any fault" in capsys.readouterr().out
