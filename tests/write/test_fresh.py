"""A site that nothing changed for is left alone, and one that anything changed for is not."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.cli import main
from generator.write.fresh import fingerprint, is_fresh, mark_fresh
from tests.site_project import copy_project, small_lesson, write_lesson


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site of one lesson."""
    root = copy_project(tmp_path / "site", lessons=False)
    write_lesson(root, "small", small_lesson())
    return root


def test_the_second_build_finds_nothing_changed_and_writes_nothing(project: Path) -> None:
    run = CliRunner().invoke
    assert "The site is in site/" in run(main, ["build", "--root", str(project)]).output
    page = project / "site/small/index.html"
    before = page.stat().st_mtime_ns
    assert "Nothing has changed" in run(main, ["build", "--root", str(project)]).output
    assert page.stat().st_mtime_ns == before
    assert "The site is in site/" in run(main, ["build", "--anew", "--root", str(project)]).output


@pytest.mark.parametrize(
    "name",
    ["lessons/small/lesson.yaml", "site_data/foods.yaml", "theme/css/tokens.css", "mkdocs.yml"],
)
def test_a_file_that_was_touched_makes_the_site_old(project: Path, name: str) -> None:
    before = fingerprint(project)
    file = project / name
    os.utime(file, ns=(file.stat().st_atime_ns, file.stat().st_mtime_ns + 1))
    assert fingerprint(project) != before


def test_a_new_file_and_a_lost_one_make_the_site_old(project: Path) -> None:
    before = fingerprint(project)
    extra = project / "lessons/small/note.txt"
    extra.write_text("x", "utf-8")
    assert fingerprint(project) != before
    extra.unlink()
    assert fingerprint(project) == before


def test_a_link_that_leads_nowhere_is_no_file_of_the_site(project: Path) -> None:
    """Some editors put one beside a file that is open."""
    before = fingerprint(project)
    (project / "lessons/small/.#lesson.yaml").symlink_to("somebody@somewhere.17")
    assert fingerprint(project) == before


def test_a_site_that_is_gone_is_not_fresh(project: Path) -> None:
    site = project / "site"
    mark_fresh(project, fingerprint(project))
    assert not is_fresh(project, site)
    site.mkdir()
    (site / "index.html").write_text("x", "utf-8")
    assert is_fresh(project, site)


def test_a_change_during_a_build_is_seen_by_the_next(project: Path) -> None:
    before = fingerprint(project)
    write_lesson(project, "other", small_lesson())
    mark_fresh(project, before)
    (project / "site").mkdir()
    (project / "site/index.html").write_text("x", "utf-8")
    assert not is_fresh(project, project / "site")
