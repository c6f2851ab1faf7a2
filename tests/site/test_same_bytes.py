"""The same files give the same bytes, wherever and whenever they are built."""

from __future__ import annotations

import shutil
from functools import partial
from pathlib import Path

import pytest

from generator.build import build
from generator.plugin import write_by_hand
from tests.site_project import EPOCH, build_project, copy_project, hashes


def test_two_builds_in_two_places_are_the_same(built_site: Path, tmp_path: Path) -> None:
    again = build_project(copy_project(tmp_path / "somewhere" / "else"))
    assert hashes(again) == hashes(built_site)


def test_building_again_over_the_old_site_changes_nothing(built_site: Path, tmp_path: Path) -> None:
    project = shutil.copytree(built_site.parent, tmp_path / "project")
    (project / "site" / "left-over.html").write_text("of a lesson that is gone", "utf-8")
    assert hashes(build_project(project)) == hashes(built_site)


def test_our_own_command_builds_what_mkdocs_builds(
    built_site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    project = copy_project(tmp_path)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", EPOCH)
    build(project, partial(write_by_hand, project))
    assert hashes(project / "site") == hashes(built_site)
