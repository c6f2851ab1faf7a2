"""A site is swapped in whole: no run that fails or is cut off loses the one before."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from generator.problems import LessonError
from generator.write import swap
from generator.write.exchange import exchange
from generator.write.swap import remove, replaced


def write(target: Path, text: str) -> None:
    with replaced(target) as folder:
        assert list(folder.iterdir()) == []
        (folder / "index.html").write_text(text, encoding="utf-8")


def holds(target: Path) -> str:
    assert [path.name for path in target.parent.iterdir()] == [target.name], "something was left"
    return (target / "index.html").read_text(encoding="utf-8")


def fail(target: Path) -> None:
    with replaced(target) as folder:
        (folder / "index.html").write_text("half", encoding="utf-8")
        raise RuntimeError


def broken(target: Path) -> None:
    with pytest.raises(RuntimeError):
        fail(target)


@pytest.fixture(params=["in one step", "in two renames"], autouse=True)
def way(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whether the machine can let two folders change names."""
    if request.param == "in two renames":
        monkeypatch.setattr(swap, "exchange", lambda *_: False)


def test_the_first_and_the_next(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    assert holds(site) == "one"
    write(site, "two")
    assert holds(site) == "two"


def test_a_file_in_the_place_of_the_folder_gives_way(tmp_path: Path) -> None:
    site = tmp_path / "site"
    site.write_text("no folder", "utf-8")
    write(site, "one")
    assert holds(site) == "one"


def test_a_run_that_fails_changes_nothing(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    broken(site)
    assert holds(site) == "one"


@pytest.mark.skipif(sys.platform != "linux", reason="only Linux is sure to know the call")
def test_folders_change_names_in_one_step(tmp_path: Path) -> None:
    for name in ("one", "other"):
        (tmp_path / name).mkdir()
        (tmp_path / name / name).touch()
    assert exchange(tmp_path / "one", tmp_path / "other")
    assert (tmp_path / "one/other").exists()
    assert (tmp_path / "other/one").exists()
    assert not exchange(tmp_path / "one", tmp_path / "missing")


def test_what_a_cut_off_run_left_behind_is_cleared(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    for name in (".site.new", ".site.old", ".site.17.new", ".site.17.old"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "junk").touch()
    write(site, "two")
    assert holds(site) == "two"


@pytest.mark.parametrize("next_run", [broken, lambda target: write(target, "one")])
def test_a_run_cut_off_between_its_two_steps_loses_no_site(
    tmp_path: Path, next_run: Callable[[Path], None]
) -> None:
    site = tmp_path / "site"
    write(site, "one")
    site.rename(tmp_path / ".site.17.old")
    (tmp_path / ".site.17.new").mkdir()
    next_run(site)
    assert holds(site) == "one"


def test_a_link_is_not_cut_off(tmp_path: Path) -> None:
    (tmp_path / "served").mkdir()
    (tmp_path / "served/index.html").write_text("old", "utf-8")
    site = tmp_path / "site"
    site.symlink_to("served")
    with pytest.raises(LessonError, match="`site` is a link to served") as told:
        write(site, "new")
    assert told.value.problems[0].hint.startswith("remove the link")
    assert (site / "index.html").read_text("utf-8") == "old"
    assert sorted(path.name for path in tmp_path.iterdir()) == ["served", "site"]


@pytest.mark.parametrize("kind", ["folder", "file"])
def test_a_branch_of_its_own_stays_one(tmp_path: Path, kind: str) -> None:
    """A clone has a folder `.git`, a worktree a file (gitrepository-layout)."""
    site = tmp_path / "site"
    write(site, "one")
    git = site / ".git"
    if kind == "folder":
        git.mkdir()
        (git / "HEAD").write_text("ref", "utf-8")
    else:
        git.write_text("ref", "utf-8")
    write(site, "two")
    broken(site)
    assert holds(site) == "two"
    assert (git / "HEAD" if kind == "folder" else git).read_text("utf-8") == "ref"


def test_a_branch_survives_a_run_cut_off_after_the_swap(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    left = tmp_path / ".site.17.new"
    left.mkdir()
    (left / ".git").write_text("ref", "utf-8")
    write(site, "two")
    assert (site / ".git").read_text("utf-8") == "ref"
    assert not left.exists()


@pytest.mark.skipif(os.name != "posix", reason="other systems ask for leave in other ways")
def test_a_site_made_read_only_is_replaced_all_the_same(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    (site / "deep").mkdir()
    (site / "deep/page.html").touch()
    for closed in (site / "deep", site):
        closed.chmod(0o500)
    if os.geteuid() == 0:  # a superuser is refused nothing: nobody tries
        for path in (tmp_path, site, *site.rglob("*")):
            os.chown(path, 65534, 65534)
    script = "import os, sys; from pathlib import Path; from generator.write.swap import remove\n"
    script += "os.chdir(sys.argv[1]); os.geteuid() or os.setuid(65534); remove(Path('site'))"
    subprocess.run([sys.executable, "-c", script, tmp_path], check=True)
    assert not site.exists()


def test_nothing_is_removed_where_there_is_nothing(tmp_path: Path) -> None:
    remove(tmp_path / "missing")
