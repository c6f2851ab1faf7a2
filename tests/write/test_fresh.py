"""A site that nothing changed for is left alone, and one that anything changed for is not."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.build import building
from generator.cli.commands import commands
from generator.write import fresh
from generator.write.fresh import is_fresh, mark_fresh, sources
from tests.site_project import copy_project, small_lesson, write_lesson

PAGE = "site/small/index.html"


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site of one lesson, and what might be its pages, marked as built."""
    root = copy_project(tmp_path / "project", lessons=False)
    write_lesson(root, "small", small_lesson())
    (root / "requirements.lock").write_text("plotly==7.1\n", "utf-8")
    (root / ".git/logs").mkdir(parents=True)
    (root / ".git/logs/HEAD").write_text("0 1 commit\n", "utf-8")
    page = root / PAGE
    page.parent.mkdir(parents=True)
    page.write_text("a page\n", "utf-8")
    mark_fresh(str(root), sources(str(root)))
    return root


def times_set_back(file: Path, change: Callable[[], object]) -> None:
    """Change a file and give it the times it had, as `touch -r` and `cp -p` do."""
    before = file.stat()
    change()
    os.utime(file, ns=(before.st_atime_ns, before.st_mtime_ns))
    assert file.stat().st_mtime_ns == before.st_mtime_ns


def more(file: Path) -> None:
    """The file and one line end."""
    file.write_bytes(file.read_bytes() + b"\n")


def other_bytes(file: Path) -> None:
    """As many bytes as before, and other ones."""
    held = file.read_bytes()
    file.write_bytes(bytes([held[0] ^ 1]) + held[1:])


CHANGES: dict[str, Callable[[Path], object]] = {
    "a file of the site altered": lambda root: more(root / PAGE),
    "a file of the site emptied": lambda root: (root / PAGE).write_text(""),
    "a file of the site deleted": lambda root: (root / PAGE).unlink(),
    "a file of the site added": lambda root: (root / "site/small/more.html").touch(),
    "a folder of the site added": lambda root: (root / "site/more").mkdir(),
    "a file of the site under another name": lambda root: (root / PAGE).rename(
        root / "site/small/other.html"
    ),
    "the site gone": lambda root: shutil.rmtree(root / "site"),
    "a page altered and its times set back": lambda root: times_set_back(
        root / PAGE, lambda: other_bytes(root / PAGE)
    ),
    "a lesson altered and its times set back": lambda root: times_set_back(
        root / "lessons/small/lesson.yaml", lambda: other_bytes(root / "lessons/small/lesson.yaml")
    ),
    "a page replaced by a copy with its times": lambda root: times_set_back(
        root / PAGE, lambda: shutil.move(shutil.copy2(root / PAGE, root / "copy"), root / PAGE)
    ),
    "a lesson": lambda root: more(root / "lessons/small/lesson.yaml"),
    "a file beside a lesson": lambda root: (root / "lessons/small/note.txt").touch(),
    "a lesson gone": lambda root: shutil.rmtree(root / "lessons/small"),
    "foods": lambda root: more(root / "site_data/foods.yaml"),
    "the theme": lambda root: more(root / "theme/css/tokens.css"),
    "the lock": lambda root: (root / "requirements.lock").write_text("plotly==7.2\n"),
    "the lock gone": lambda root: (root / "requirements.lock").unlink(),
    "mkdocs.yml": lambda root: more(root / "mkdocs.yml"),
    "a commit": lambda root: more(root / ".git/logs/HEAD"),
    "the record itself": lambda root: (root / ".cache/built").write_bytes(b"junk"),
    "half a record": lambda root: (root / ".cache/built").write_bytes(
        (root / ".cache/built").read_bytes()[:-9]
    ),
}


@pytest.mark.parametrize("by", ["times", "contents"])
@pytest.mark.parametrize("what", CHANGES)
def test_every_change_is_noticed(
    project: Path, what: str, by: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By times that nobody can set back, and by contents where a system has no such times."""
    monkeypatch.setattr(fresh, "TRUSTS_TIMES", by == "times")
    mark_fresh(str(project), sources(str(project)))
    assert is_fresh(str(project))
    CHANGES[what](project)
    noticed = not is_fresh(str(project))
    # The same bytes by other means are the same file to whoever reads it.
    assert noticed == (by == "times" or what != "a page replaced by a copy with its times")


def test_a_file_that_mkdocs_yml_names_and_a_variable_it_reads(
    project: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    config, hook = project / "mkdocs.yml", project / "hook.py"
    hook.write_text("one = 1\n", "utf-8")
    config.write_text(
        config.read_text("utf-8") + "hooks: [hook.py]\ncopyright: !ENV [HOLDER, nobody]\n", "utf-8"
    )
    monkeypatch.delenv("HOLDER", raising=False)
    mark_fresh(str(project), sources(str(project)))
    assert is_fresh(str(project))
    monkeypatch.setenv("HOLDER", "Larkmead")
    assert not is_fresh(str(project))
    monkeypatch.delenv("HOLDER")
    assert is_fresh(str(project))
    hook.write_text("two = 2\n", "utf-8")
    assert not is_fresh(str(project))


def test_the_time_a_build_takes_for_its_own(project: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1800000000")
    assert not is_fresh(str(project))


def test_the_program_itself(project: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    program = tmp_path / "generator"
    (program / "write").mkdir(parents=True)
    monkeypatch.setattr(fresh, "_PROGRAM", str(program))
    mark_fresh(str(project), sources(str(project)))
    assert is_fresh(str(project))
    (program / "write/new.py").touch()
    assert not is_fresh(str(project))


def test_another_version_of_a_library(
    project: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its name holds the version (PyPA specifications, recorded installed projects)."""
    packages = tmp_path / "site-packages"
    (packages / "markdown_it_py-4.3.0.dist-info").mkdir(parents=True)
    monkeypatch.syspath_prepend(str(packages))
    mark_fresh(str(project), sources(str(project)))
    assert is_fresh(str(project))
    (packages / "markdown_it_py-4.3.0.dist-info").rename(
        packages / "markdown_it_py-4.3.1.dist-info"
    )
    assert not is_fresh(str(project))


@pytest.mark.parametrize("by", ["times", "contents"])
def test_what_makes_no_difference(project: Path, by: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """An editor's lock leads nowhere, a program leaves compiled code, a file comes and goes."""
    monkeypatch.setattr(fresh, "TRUSTS_TIMES", by == "times")
    mark_fresh(str(project), sources(str(project)))
    (project / "lessons/small/.#lesson.yaml").symlink_to("somebody@somewhere.17")
    (project / "theme/__pycache__").mkdir()
    (project / "lessons/small/note.txt").touch()
    (project / "lessons/small/note.txt").unlink()
    assert is_fresh(str(project))


def test_a_site_elsewhere_is_not_taken_for_this_one(project: Path, tmp_path: Path) -> None:
    copy = shutil.copytree(project, tmp_path / "copy")
    assert is_fresh(str(project))
    assert not is_fresh(str(copy))


def test_a_site_that_was_never_built(tmp_path: Path) -> None:
    assert not is_fresh(str(tmp_path))


def test_a_change_during_a_build_is_seen_by_the_next(project: Path) -> None:
    before = sources(str(project))
    write_lesson(project, "other", small_lesson())
    mark_fresh(str(project), before)
    assert not is_fresh(str(project))


def test_a_change_while_the_site_is_written_is_seen_by_the_next(project: Path) -> None:
    with building(project, project / "site") as (_, folder):
        (folder / "index.html").touch()
        write_lesson(project, "other", small_lesson())
    assert not is_fresh(str(project))
    with building(project, project / "site") as (_, folder):
        (folder / "index.html").touch()
    assert is_fresh(str(project))


def test_a_change_within_the_tick_in_which_it_was_looked_at_shows(project: Path) -> None:
    """Two changes within one tick of the system's clock, 4 ms on most, have the same times."""
    file = project / "lessons/small/lesson.yaml"
    for _ in range(5):
        other_bytes(file)
        mark_fresh(str(project), sources(str(project)))
        other_bytes(file)
        assert not is_fresh(str(project))


def test_the_second_build_finds_nothing_changed_and_writes_nothing(project: Path) -> None:
    run = CliRunner().invoke
    options = ["build", "--root", str(project)]
    assert "The site is in site/" in run(commands, [*options, "--anew"]).output
    before = (project / PAGE).stat().st_ctime_ns
    assert "Nothing has changed" in run(commands, options).output
    assert (project / PAGE).stat().st_ctime_ns == before
    whole = (project / PAGE).read_text("utf-8")
    (project / PAGE).write_text("", "utf-8")
    assert "The site is in site/" in run(commands, options).output
    assert (project / PAGE).read_text("utf-8") == whole


def test_the_program_says_so_before_it_loads_anything(project: Path) -> None:
    """What takes long to load is not asked for; the rest is a matter of milliseconds."""
    script = (  # what Python itself has loaded by then, and what counts the lines of tests, is left out
        "import sys; before = set(sys.modules)\n"
        "from generator.cli import main; main(); print(*sorted({*sys.modules} - before))"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, "build", "--root", project],
        capture_output=True,
        text=True,
        check=True,
    )
    said, loaded = done.stdout.splitlines()
    assert said == "Nothing has changed since site/ was built."
    assert {"click", "mkdocs", "pydantic", "pathlib", "hashlib", "re"}.isdisjoint(loaded.split())


def test_who_is_stopped_while_a_build_is_noted_leaves_the_note_before(
    project: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """SIGTERM ends a build as Ctrl+C does: with KeyboardInterrupt, at any moment."""

    def stopped(*_: object) -> None:
        raise KeyboardInterrupt

    note = project / fresh._RECORD
    before = note.read_bytes()
    monkeypatch.setattr("os.replace", stopped)
    with pytest.raises(KeyboardInterrupt):
        mark_fresh(str(project), sources(str(project)), "another note")
    assert note.read_bytes() == before
    assert list(note.parent.glob("*.new")) == []


def test_a_commit_in_a_worktree(project: Path, tmp_path: Path) -> None:
    """Its `.git` is a file that leads to the repository (git's gitrepository-layout)."""
    log = tmp_path / "main/.git/worktrees/project/logs/HEAD"
    log.parent.mkdir(parents=True)
    log.write_text("0 1 commit\n", "utf-8")
    shutil.rmtree(project / ".git")
    (project / ".git").write_text("gitdir: ../main/.git/worktrees/project\n", "utf-8")
    mark_fresh(str(project), sources(str(project)))
    assert is_fresh(str(project))
    more(log)
    assert not is_fresh(str(project))
