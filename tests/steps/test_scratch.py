"""A folder that lasts as long as its process: a killed one's goes with the next, a running one's stays."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from generator.steps.scratch import scratch

HOLDER = """
import sys
from pathlib import Path
from generator.steps.scratch import scratch
with scratch(Path(sys.argv[1])) as folder:
    (folder / "page.html").touch()
    print(folder, flush=True)
    sys.stdin.readline()
"""


def test_it_is_empty_and_gone_afterwards(tmp_path: Path) -> None:
    with scratch(tmp_path) as one, scratch(tmp_path) as other:
        assert one != other
        assert list(one.iterdir()) == list(other.iterdir()) == []
        (one / "page.html").touch()
    assert list((tmp_path / ".cache/scratch").iterdir()) == []


def test_it_goes_where_its_work_fails(tmp_path: Path) -> None:
    with pytest.raises(RuntimeError), scratch(tmp_path):
        raise RuntimeError
    assert list((tmp_path / ".cache/scratch").iterdir()) == []


def test_only_what_nobody_uses_any_more_is_cleared(tmp_path: Path) -> None:
    command = [sys.executable, "-c", HOLDER, tmp_path]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as other:
        assert other.stdout
        folder = Path(other.stdout.readline().strip())
        with scratch(tmp_path):
            assert (folder / "page.html").exists()
        other.kill()
        other.wait()
        assert (folder / "page.html").exists()
        with scratch(tmp_path):
            assert not folder.exists()
    assert list((tmp_path / ".cache/scratch").iterdir()) == []
