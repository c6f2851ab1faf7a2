"""A publication that came to nothing leaves no line in the record, however it ended."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from generator.publish.kept_record import forget_cut_off, taken_back

ROOT = Path(__file__).parents[2]
AT = "2026-11-26T17:03:00Z"
BEFORE = '{"at": "2026-11-01T08:00:00Z"}\n'


@pytest.fixture
def record(tmp_path: Path) -> Path:
    """The folder of a record that has one publication."""
    folder = tmp_path / "site_data/published"
    (folder / "lessons").mkdir(parents=True)
    (folder / "site.jsonl").write_text(BEFORE, "utf-8")
    return folder


def add(record: Path) -> None:
    """What a publication adds: a line, and a file of a lesson that is new."""
    with (record / "site.jsonl").open("a", encoding="utf-8") as file:
        file.write(f'{{"at": "{AT}"}}\n')
    (record / "lessons/soup.jsonl").write_text("{}\n", "utf-8")


def add_and_stop(record: Path) -> None:
    add(record)
    raise KeyboardInterrupt


def cut_off(root: Path) -> None:
    """A program that adds them and is gone at once, as where a machine is switched off."""
    lines = (
        "import os; from pathlib import Path",
        "from generator.publish.kept_record import taken_back",
        "from tests.publish.test_kept_record import AT, add",
        f"root = Path({str(root)!r})",
        "with taken_back(root, AT): add(root / 'site_data/published'); os._exit(9)",
    )
    done = subprocess.run([sys.executable, "-c", "\n".join(lines)], cwd=ROOT, check=False)
    assert done.returncode == 9


def is_as_before(record: Path) -> bool:
    held = (record / "site.jsonl").read_text("utf-8")
    return held == BEFORE and not (record / "lessons/soup.jsonl").exists()


def test_where_it_fails_the_lines_go(tmp_path: Path, record: Path) -> None:
    with pytest.raises(KeyboardInterrupt), taken_back(tmp_path, AT):
        add_and_stop(record)
    assert is_as_before(record)


def test_where_it_goes_well_they_stay(tmp_path: Path, record: Path) -> None:
    with taken_back(tmp_path, AT):
        add(record)
    forget_cut_off(tmp_path, frozenset())
    assert not is_as_before(record)


def test_cut_off_the_next_run_takes_them_back(tmp_path: Path, record: Path) -> None:
    cut_off(tmp_path)
    assert not is_as_before(record)
    forget_cut_off(tmp_path, frozenset())
    assert is_as_before(record)


def test_cut_off_after_its_commit_they_stay(tmp_path: Path, record: Path) -> None:
    cut_off(tmp_path)
    forget_cut_off(tmp_path, frozenset({AT}))
    assert not is_as_before(record)
