"""MkDocs by itself makes the same site as our command, and leaves the old one where it cannot."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.engine.small_site import built, small_site
from tests.site_project import EPOCH, hashes, run_mkdocs


def test_mkdocs_build_is_the_same_byte_for_byte(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", EPOCH)
    ours, theirs = small_site(tmp_path / "ours"), small_site(tmp_path / "theirs")
    done = run_mkdocs(theirs, "--strict")
    assert done.exit_code == 0, done.stderr
    assert hashes(theirs / "site") == built(ours)
    assert not [path.name for path in theirs.glob(".site*")]


def test_a_mistake_leaves_what_mkdocs_made_before(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")
    assert run_mkdocs(root).exit_code == 0
    before = hashes(root / "site")
    (root / "lessons/one/lesson.yaml").write_text("title: x\n", "utf-8")
    done = run_mkdocs(root)
    assert done.exit_code == 1
    assert "lessons/one/lesson.yaml:1:1" in done.stderr
    assert "Traceback" not in done.stderr
    assert hashes(root / "site") == before
    assert not [path.name for path in root.glob(".site*")]
