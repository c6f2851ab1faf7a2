"""Paths begin where the command was typed, and a command that is nearly there is proposed."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.cli.commands import commands
from tests.project import GOOD, put
from tests.site_project import copy_project


def test_a_file_is_looked_for_where_she_stands(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The set-up file goes into the site's folder, and says from where it was called."""
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, GOOD, "meal")
    (tmp_path / "downloads").mkdir()
    (tmp_path / "downloads/foods.zip").write_text("no zip", "utf-8")
    monkeypatch.chdir(project)
    monkeypatch.setenv("PLUMLINE_FROM", str(tmp_path / "downloads"))
    found = CliRunner().invoke(commands, ["foods", "import", "foods.zip"])
    assert "there is no such file" not in found.output
    assert "zip" in found.output
    done = CliRunner().invoke(
        commands, ["check", "../project/lessons/meal", "--code-quality", "r.json"]
    )
    assert done.exit_code == 0, done.output
    assert (tmp_path / "downloads/r.json").read_text("utf-8") == "[]"


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["chekc"], "there is no command `chekc`; did you mean `check`?"),
        (["foods", "fnd"], "there is no command `fnd`; did you mean `find`?"),
        (["xyzzy"], "No such command 'xyzzy'"),
    ],
)
def test_a_command_that_is_not_there(words: list[str], says: str) -> None:
    done = CliRunner().invoke(commands, words)
    assert done.exit_code == 2
    assert says in done.stderr


def test_a_title_of_several_words(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    done = CliRunner().invoke(commands, ["new", "Soup", "for", "two", "--root", str(project)])
    assert done.exit_code == 0, done.output
    assert 'title: "Soup for two"' in (project / "lessons/soup-for-two/lesson.yaml").read_text(
        "utf-8"
    )
