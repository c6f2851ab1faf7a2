"""The program as a whole: words it does not know, a reader who has had enough, and what it writes of itself."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.author.reference import reference_page
from generator.author.schema import lesson_schema
from generator.cli import NOTHING_CHANGED, main
from generator.cli.commands import COMMANDS, commands
from generator.read.library import read_library
from tests.site_project import copy_project, small_lesson, write_lesson


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site with one good lesson."""
    project = copy_project(tmp_path / "project", lessons=False)
    write_lesson(project, "small", small_lesson())
    return project


def test_a_word_that_is_no_command_is_told() -> None:
    done = CliRunner().invoke(commands, ["chekc"])
    assert done.exit_code == 2
    assert "there is no command `chekc`; did you mean `check`?" in done.stderr
    assert "Usage: python3 generator" in done.stderr


def test_every_command_of_the_list_is_there_and_says_what_it_does() -> None:
    for name in COMMANDS:
        done = CliRunner().invoke(commands, [name, "--help"])
        assert done.exit_code == 0, name
        assert done.output.startswith(f"Usage: python3 generator {name}")


def test_a_reader_who_has_had_enough_is_no_mistake(root: Path) -> None:
    """As with `plumline trace small | head -1`."""
    trace = [sys.executable, "-c", "from generator.cli import main; main()", "trace", "small"]
    with subprocess.Popen(
        [*trace, "--root", root], stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as run:
        assert run.stdout is not None
        assert run.stderr is not None
        run.stdout.close()
        assert run.stderr.read() == b""


@pytest.mark.parametrize("options", [[], ["--root", "."]])
def test_in_her_own_folder_a_build_of_nothing_new_says_so(
    root: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    options: list[str],
) -> None:
    monkeypatch.chdir(root)
    assert CliRunner().invoke(commands, ["build"]).exit_code == 0
    monkeypatch.setattr("sys.argv", ["plumline", "build", *options])
    main()
    assert capsys.readouterr().out == NOTHING_CHANGED


def test_reference_page_and_schema_are_written_where_the_site_keeps_them(root: Path) -> None:
    read = read_library(root)
    done = CliRunner().invoke(commands, ["reference", "--root", str(root)])
    assert done.exit_code == 0, done.output
    assert done.stdout == (
        "site_data/lesson.schema.json is written.\nlessons/guide/lesson-file.md is written.\n"
    )
    assert (root / "site_data/lesson.schema.json").read_text("utf-8") == lesson_schema(
        read.foods, read.moves
    )
    assert (root / "lessons/guide/lesson-file.md").read_text("utf-8") == reference_page()
