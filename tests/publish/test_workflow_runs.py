"""What the workflows run is run: each line of them, in a fresh clone of a small site, as a forge does."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml

from tests.publish.own_site import OwnSite, git

ROOT = Path(__file__).parents[2]
GITHUB = ROOT / ".github/workflows"
GITLAB = ROOT / "generator/forges/gitlab/.gitlab-ci.yml"
STARTS = """\
import sys

del sys.path[0]
from generator.cli import main

main()
"""
"""Stands for the set-up file: the same program, without an installation that would ask a registry."""


@pytest.fixture
def forge(site: OwnSite, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A fresh clone as a forge has it for a request: the commit that brings two others together, and these two."""
    site.write("generator/__main__.py", STARTS)
    site.git("add", "-A")
    site.git("commit", "-qm", "Carry the program")
    site.git("switch", "-qc", "spring")
    site.change()
    site.git("commit", "-qam", "Call it soup")
    site.git("switch", "-q", "main")
    site.git("merge", "-q", "--no-ff", "--no-edit", "spring")
    site.git("push", "-q", "origin", "main")
    git(tmp_path, "clone", "-q", "--depth", "2", site.remote.as_uri(), "clone")
    programs = tmp_path / "programs"
    programs.mkdir()
    (programs / "python3").write_text(f'#!/bin/sh\nexec "{sys.executable}" "$@"\n', "utf-8")
    (programs / "python3").chmod(0o755)
    monkeypatch.setenv("PATH", str(programs), prepend=os.pathsep)
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    return tmp_path / "clone"


def run(folder: Path, lines: str, **also: str) -> subprocess.CompletedProcess[str]:
    """Lines as a forge's shell runs them: the first that fails ends them."""
    return subprocess.run(
        ["bash", "-e", "-o", "pipefail", "-c", lines],  # whichever bash there is
        cwd=folder, env=os.environ | also, capture_output=True, text=True, check=False,
    )  # fmt: skip


def jobs(name: str) -> dict[str, Any]:
    found: dict[str, Any] = yaml.safe_load((GITHUB / name).read_text("utf-8"))["jobs"]
    return found


def runs(job: dict[str, Any]) -> Iterator[str]:
    return (str(step["run"]) for step in job["steps"] if "run" in step)


def test_a_request_is_checked_built_and_told_what_it_changes(forge: Path, tmp_path: Path) -> None:
    summary = tmp_path / "summary.md"
    for lines in runs(jobs("publish.yml")["build"]):
        done = run(forge, lines, GITHUB_STEP_SUMMARY=str(summary), GITHUB_ACTIONS="true")
        assert done.returncode == 0, lines + done.stdout + done.stderr
    assert "A lesson of soup" in (forge / "site/soup/index.html").read_text("utf-8")
    assert "A lesson of soup" in summary.read_text("utf-8")


def test_a_mistake_ends_it_at_the_first_line(forge: Path) -> None:
    file = forge / "lessons/soup/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace("apple-raw", "aple-raw"), "utf-8")
    first = next(runs(jobs("publish.yml")["build"]))
    done = run(forge, first, GITHUB_ACTIONS="true")
    assert done.returncode == 1
    assert "::error file=lessons/soup/lesson.yaml" in done.stdout


def test_a_large_file_in_the_site_stops_it(forge: Path) -> None:
    """The film is a hole and takes no room."""
    (sizes,) = [one for one in runs(jobs("publish.yml")["build"]) if "du -sm" in one]
    (forge / "site").mkdir()
    with (forge / "site/film.mp4").open("wb") as film:
        film.truncate(101 * 1024 * 1024)
    done = run(forge, sizes)
    assert done.returncode == 1
    assert "site/film.mp4" in done.stdout


def test_shares_of_many_machines_make_the_site(forge: Path) -> None:
    found = jobs("publish-in-parts.yml")
    (make,) = runs(found["part"])
    for part in found["part"]["strategy"]["matrix"]["part"]:
        done = run(forge, make.replace("${{ matrix.part }}", str(part)))
        assert done.returncode == 0, done.stderr
    (forge / "parts").mkdir()
    for share in sorted(forge.glob("part-*")):
        share.rename(forge / "parts" / share.name)
    (join,) = runs(found["build"])
    done = run(forge, join)
    assert done.returncode == 0, done.stderr
    assert (forge / "site/soup/index.html").is_file()


def test_the_other_forge_runs_its_lines_as_well(forge: Path) -> None:
    told = yaml.safe_load(GITLAB.read_text("utf-8"))
    variables = {
        "CI_PIPELINE_SOURCE": "merge_request_event",
        "CI_MERGE_REQUEST_TARGET_BRANCH_NAME": "main",
    }
    for lines in (*told["build"]["script"], *told["pages"]["script"]):
        done = run(forge, lines, **variables)
        assert done.returncode == 0, lines + done.stdout + done.stderr
    assert (forge / "public/soup/index.html").is_file()
    assert re.fullmatch(
        r"\[\s*\]|\[\{.*\}\]", (forge / "problems.json").read_text("utf-8"), re.DOTALL
    )
