"""A missing or wrong `mkdocs.yml` is one plain sentence, in `check` and in `build`."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands as main
from tests.site_project import copy_project


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site without a lesson."""
    return copy_project(tmp_path, lessons=False)


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(main, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.mark.parametrize("word", ["check", "build", "preview"])
def test_a_folder_that_is_no_site_is_one_sentence(tmp_path: Path, word: str) -> None:
    done = plumline(tmp_path, word)
    assert done.exit_code == 1
    assert done.stderr.splitlines() == [
        "mkdocs.yml:1:1: this is not the folder of a site: it holds no lessons/ and no site_data/",
        "        go to the folder that does, or name it with --root",
        "1 thing to put right. Nothing was written.",
    ]
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (("plugins: [plumline]", "plugins: ["), "the file cannot be read|a bracket is opened"),
        (("plugins: [plumline]", ""), "1:1: nothing here asks for the lessons' pages"),
        (("plugins: [plumline]", "plugins: [plumbline]"), "6:1: `plugins` cannot be used"),
        (("docs_dir: lessons", "docs_dir: lesson"), "3:1: `docs_dir` cannot be used"),
        (("validation:", "nav: [gone.md]\nvalidation:"), ":7: `nav:` names `gone.md`"),
        (("site_name: Plumline", "site_name: [Plumline"), "mkdocs.yml:"),
        (("custom_dir: theme", "custom_dir: them"), "5:1: `theme` cannot be used"),
        (("watch:", "wotch: 1\nwatch:"), "`wotch` cannot be used"),
    ],
)  # fmt: skip
def test_wrong_settings_are_told_with_their_line(
    project: Path, change: tuple[str, str], told: str
) -> None:
    file = project / "mkdocs.yml"
    text = file.read_text("utf-8")
    assert change[0] in text
    file.write_text(text.replace(*change), "utf-8")
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1, done.output
        assert any(part in done.stderr for part in told.split("|")), done.stderr
        assert done.stderr.startswith("mkdocs.yml:")
    assert not (project / "site").exists()


def test_settings_that_are_gone(project: Path) -> None:
    (project / "mkdocs.yml").unlink()
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1
        assert "mkdocs.yml:1:1: this file is missing" in done.stderr


@pytest.mark.parametrize("time", ["", "abc", "-5", "1e9", "99999999999999", "4294967296", "١٢"])
def test_a_time_that_is_none(project: Path, monkeypatch: pytest.MonkeyPatch, time: str) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", time)
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1
        assert f"gives SOURCE_DATE_EPOCH as `{time}`, which is no number" in done.stderr


@pytest.mark.parametrize("time", ["0", "1767225600"])
def test_a_time_that_is_one(project: Path, monkeypatch: pytest.MonkeyPatch, time: str) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", time)
    assert plumline(project, "build").exit_code == 0
