"""What `check` says to an educator, to another program, and to a forge."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.project import GOOD, put
from tests.site_project import copy_project

UNKNOWN = GOOD.replace("food: apple-raw", "food: aple-raw")
ASKED = GOOD.replace("What do you like?", "Is it a guilty lunch?")


@pytest.fixture
def root(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A site with one lesson in which something must be put right, and one with something to look at."""
    monkeypatch.delenv("GITHUB_ACTIONS", raising=False)
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, UNKNOWN, "wrong")
    put(project, ASKED, "asked")
    return project


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.mark.parametrize(
    "named",
    ["asked", "asked/", "lessons/asked", "lessons/asked/lesson.yaml", "lessons/asked/lesson.es.yaml",
     "./lessons/asked/"],
)  # fmt: skip
def test_a_lesson_by_its_name_or_a_path(root: Path, named: str) -> None:
    done = plumline(root, "check", named)
    assert done.exit_code == 0, done.output
    assert "1 lesson checked" in done.stdout
    assert "wrong" not in done.stderr


def test_a_lesson_by_a_path_from_where_she_stands(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(root / "lessons/asked")
    for named in (".", "lesson.yaml", "../asked", str(root / "lessons/asked")):
        assert "1 lesson checked" in plumline(root, "check", named).stdout


def test_several_lessons_and_one_that_is_not_there(root: Path) -> None:
    done = plumline(root, "check", "asked", "lessons/wrong", "asked")
    assert done.exit_code == 1
    assert "guilty" in done.stderr
    assert "lessons/wrong/lesson.yaml:22:19" in done.stderr
    missing = plumline(root, "check", "asked", "guide")
    assert missing.exit_code == 2
    assert "there is no lesson `guide`; there are asked, wrong" in missing.stderr


def test_a_list_for_another_program(root: Path) -> None:
    done = plumline(root, "check", "--json")
    assert done.exit_code == 1
    assert done.stderr == ""
    asked, wrong = json.loads(done.stdout)
    assert wrong == {
        "file": "lessons/wrong/lesson.yaml",
        "line": 22,
        "column": 19,
        "what": "there is no food `aple-raw` in site_data/foods.yaml",
        "hint": "did you mean `apple-raw`?",
        "weight": "must",
    }
    assert (asked["file"], asked["weight"]) == ("lessons/asked/lesson.yaml", "question")


def test_a_list_where_the_data_of_the_site_is_broken(root: Path) -> None:
    (root / "site_data/site.yaml").write_text("~\n", "utf-8")
    done = plumline(root, "check", "--json")
    assert done.exit_code == 1
    assert json.loads(done.stdout)[0]["file"] == "site_data/site.yaml"


def test_strict_ends_with_1_where_there_is_something_to_look_at(root: Path) -> None:
    assert plumline(root, "check", "asked").exit_code == 0
    assert plumline(root, "check", "asked", "--strict").exit_code == 1
    put(root, GOOD, "asked")
    assert plumline(root, "check", "asked", "--strict").exit_code == 0


def test_lines_that_github_shows_beside_the_code(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Workflow commands for GitHub Actions: `::error file={name},line={line},col={column}::{message}`,
    in which %, carriage return and line feed are %25, %0D and %0A (from memory, status M).
    """
    monkeypatch.setenv("GITHUB_ACTIONS", "true")
    monkeypatch.chdir(root.parent)
    asked, wrong = plumline(root, "check").stdout.splitlines()
    assert wrong == (
        "::error file=project/lessons/wrong/lesson.yaml,line=22,col=19::"
        "there is no food `aple-raw` in site_data/foods.yaml: did you mean `apple-raw`?"
    )
    assert asked.startswith("::warning file=project/lessons/asked/lesson.yaml,line=")
    put(root, GOOD.replace("food: apple-raw", "food: 50%25"), "wrong")
    assert "there is no food `50%2525` in" in plumline(root, "check", "wrong").stdout


def test_a_report_that_gitlab_shows_beside_the_code(root: Path, tmp_path: Path) -> None:
    """GitLab, "Code Quality report format": description, check_name, fingerprint, severity,
    location.path and location.lines.begin (from memory, status M).
    """
    report = tmp_path / "report.json"
    done = plumline(root, "check", "--code-quality", str(report))
    assert done.exit_code == 1
    asked, wrong = json.loads(report.read_text("utf-8"))
    assert wrong["location"]["lines"] == {"begin": 22}
    assert wrong["location"]["path"].endswith("project/lessons/wrong/lesson.yaml")
    assert (asked["severity"], wrong["severity"]) == ("minor", "major")
    assert asked["fingerprint"] != wrong["fingerprint"]
    put(root, f"# moved down\n{UNKNOWN}", "wrong")
    plumline(root, "check", "--code-quality", str(report))
    moved = json.loads(report.read_text("utf-8"))[1]
    assert moved["location"]["lines"] == {"begin": 23}
    assert moved["fingerprint"] == wrong["fingerprint"]


@pytest.mark.parametrize("encoding", ["cp1252", "cp437", "ascii"])
@pytest.mark.parametrize("words", [("trace", "asked"), ("foods", "find", "jalapeño"), ("check",)])
def test_no_code_page_ends_in_a_traceback(
    root: Path, encoding: str, words: tuple[str, ...]
) -> None:
    """A window of Windows, and whatever is redirected there, knows few signs beside those of English."""
    put(root, GOOD.replace("title: Two", "titel: “Two” ≥ ñ 🥕"), "wrong")
    done = subprocess.run(
        [sys.executable, "-c", "from generator.cli import main; main()", *words, "--root", root],
        env={**os.environ, "PYTHONIOENCODING": encoding, "PYTHONUTF8": "0"},
        capture_output=True,
        check=False,
    )
    assert b"Traceback" not in done.stderr
    assert done.stdout + done.stderr
