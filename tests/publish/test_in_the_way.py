"""Whatever is in the way in her repository is a sentence with a way out, and nothing in it is changed."""

from __future__ import annotations

import os
import time
from collections.abc import Callable

import pytest

from tests.publish.own_site import OwnSite, git

Fault = Callable[[OwnSite], object]
TITLE = ' "title": "A small lesson",'
LESSON = "lessons/soup/lesson.yaml"


def two_versions(site: OwnSite) -> None:
    """A branch that changes the same line as the one she is on."""
    site.git("switch", "-qc", "spring")
    site.change(new="A lesson of spring")
    site.git("commit", "-qam", "Spring")
    site.git("switch", "-q", "main")
    site.change()
    site.git("commit", "-qam", "Soup")


def merging(site: OwnSite) -> None:
    two_versions(site)
    with pytest.raises(AssertionError):
        site.git("merge", "spring")


def rebasing(site: OwnSite) -> None:
    two_versions(site)
    with pytest.raises(AssertionError):
        site.git("rebase", "spring")


def locked(site: OwnSite, seconds: int = 0) -> None:
    lock = site.root / ".git/index.lock"
    lock.touch()
    os.utime(lock, (time.time() - seconds,) * 2)


def half_staged(site: OwnSite) -> None:
    site.change()
    site.git("add", LESSON)
    site.change("A lesson of soup", "A lesson of stew")


def nameless(site: OwnSite) -> None:
    site.git("config", "--unset", "user.name")
    site.git("config", "--unset", "user.email")


FAULTS: dict[str, tuple[Fault, tuple[str, ...]]] = {
    "a merge": (merging, (LESSON, "git merge --abort", "git commit")),
    "a rebase": (rebasing, (LESSON, "git rebase --abort", "git rebase --continue")),
    "no branch": (lambda site: site.git("switch", "-q", "--detach"), ("git switch main",)),
    "a fresh lock": (locked, ("another program", "index.lock")),
    "an old lock": (lambda site: locked(site, 3600), ("cut off", "delete that one file")),
    "nobody known": (nameless, ("user.name", "user.email")),
    "no remote": (lambda site: site.git("remote", "remove", "origin"), ("git remote add origin",)),
    "half staged": (half_staged, (LESSON, "git add", "git restore --staged")),
    "a mark of a merge": (
        lambda site: site.change(TITLE, f"<<<<<<< HEAD\n{TITLE}\n=======\n{TITLE}\n>>>>>>> spring"),
        (f"{LESSON}:2:1", "merge"),
    ),
    "another branch": (
        lambda site: site.git("switch", "-qc", "spring"),
        ("`spring`", "`main`", "git merge spring"),
    ),
    "an address of nobody": (
        lambda site: site.write(
            "site_data/site.yaml",
            (site.root / "site_data/site.yaml")
            .read_text("utf-8")
            .replace("kitchen.example.org", "kitchen.larkmead.example"),
        ),
        ("kitchen.larkmead.example", "write where yours will stand"),
    ),
}


def kept(site: OwnSite) -> tuple[object, ...]:
    """All that could be lost: commits, what is staged, what lies in the folder."""
    files = {file: file.read_bytes() for file in (site.root / "lessons").rglob("*.yaml")}
    asked = ("-c", "core.fsmonitor=false", "ls-files", "--stage")
    refs = git(site.root, "for-each-ref")
    return refs, git(site.root, *asked), git(site.root, "stash", "list"), files


@pytest.mark.parametrize("name", FAULTS)
def test_what_is_in_the_way_is_told_with_a_way_out_and_left_alone(site: OwnSite, name: str) -> None:
    fault, told = FAULTS[name]
    fault(site)
    before = kept(site)
    done = site.publish()
    assert done.exit_code == 1, done.output
    assert [one for one in told if one not in done.output] == [], done.output
    assert "Traceback" not in done.output
    assert kept(site) == before
    assert site.commits() == ["Begin the site"]


def test_no_repository(site: OwnSite) -> None:
    (site.root / ".git").rename(site.root.parent / "elsewhere")
    done = site.publish()
    assert done.exit_code == 1
    assert "git init" in done.output


def test_no_git(site: OwnSite, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PATH", str(site.root))
    done = site.publish()
    assert done.exit_code == 1
    assert "git is not on this machine" in done.output


def test_a_larger_repository_keeps_what_is_staged_beside_the_site(site: OwnSite) -> None:
    """The site in a folder of a repository that holds other things too."""
    above = site.root.parent
    (site.root / ".git").rename(above / ".git")
    (above / ".git/info/exclude").write_text("remote.git\n", "utf-8")
    (above / "letter.txt").write_text("Dear Ana\n", "utf-8")
    git(above, "add", "letter.txt")
    done = site.publish()
    assert done.exit_code == 1
    assert "letter.txt" in done.output
    assert "letter.txt" in git(above, "diff", "--cached", "--name-only")
