"""Two builds at once: one goes on, the other says so and leaves everything as it is."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.cli.commands import commands
from generator.engine.lock import alone
from generator.problems import LessonError
from tests.site_project import copy_project, small_lesson, write_lesson

HOLDER = """
import sys
from pathlib import Path
from generator.engine.lock import alone
with alone(Path(sys.argv[1])):
    print("held", flush=True)
    sys.stdin.readline()
"""


def holder(root: Path) -> subprocess.Popen[str]:
    """Another process that holds the lock until it is told to go, or killed."""
    process = subprocess.Popen(
        [sys.executable, "-c", HOLDER, root],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert process.stdout is not None
    assert process.stdout.readline() == "held\n"
    return process


def test_the_second_is_refused_and_the_next_is_not(tmp_path: Path) -> None:
    with (
        alone(tmp_path),
        pytest.raises(LessonError, match="another build is under way"),
        alone(tmp_path),
    ):
        pass
    with alone(tmp_path):
        pass


def test_a_build_beside_another_is_one_sentence(tmp_path: Path) -> None:
    root = copy_project(tmp_path / "project", lessons=False)
    write_lesson(root, "small", small_lesson())
    with holder(root) as other:
        done = CliRunner().invoke(commands, ["build", "--root", str(root)])
        assert done.exit_code == 1
        assert "another build is under way" in done.stderr
        assert "Traceback" not in done.stderr
        assert sorted(path.name for path in root.glob(".*")) == [".cache"]
        other.communicate("go\n")
    assert CliRunner().invoke(commands, ["build", "--root", str(root)]).exit_code == 0


def test_a_killed_build_leaves_no_lock(tmp_path: Path) -> None:
    with holder(tmp_path) as other:
        other.kill()
        other.wait()
    with alone(tmp_path):
        pass
