"""Whatever a remote, or the line to it, does to a push is a sentence with a way out; the commit stays and goes on later."""

from __future__ import annotations

import os
import threading
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest

from tests.publish.own_site import OwnSite, git


def hook(folder: Path, name: str, *lines: str) -> Path:
    """A hook of a repository, which runs these lines."""
    file = folder / "hooks" / name
    file.parent.mkdir(exist_ok=True)
    file.write_text("\n".join(["#!/bin/sh", *lines, ""]), "utf-8")
    file.chmod(0o755)
    return file


def test_others_commits_are_told_and_brought_in_after_a_yes(site: OwnSite, tmp_path: Path) -> None:
    site.colleague("lessons/guide/hello.md", "# Hello\n", tmp_path / "ana")
    site.change()
    done = site.publish(answer="y\ny\n")
    assert done.exit_code == 0, done.output
    assert "Ana: Write lessons/guide/hello.md" in done.output
    assert site.commits() == ["Publish the site", "Write lessons/guide/hello.md", "Begin the site"]
    assert (site.root / "lessons/guide/hello.md").is_file()


def test_others_commits_are_not_brought_in_after_a_no(site: OwnSite, tmp_path: Path) -> None:
    site.colleague("lessons/guide/hello.md", "# Hello\n", tmp_path / "ana")
    site.change()
    done = site.publish(answer="n\n")
    assert done.exit_code == 1
    assert site.git("rev-list", "--count", "HEAD") == "1"
    assert "A lesson of soup" in (site.root / "lessons/soup/lesson.yaml").read_text("utf-8")


def test_work_of_both_that_is_committed_stands_together(site: OwnSite, tmp_path: Path) -> None:
    site.change()
    site.git("commit", "-qam", "Call it soup")
    site.colleague("lessons/guide/hello.md", "# Hello\n", tmp_path / "ana")
    done = site.publish(answer="y\ny\n")
    assert done.exit_code == 0, done.output
    assert {"Call it soup", "Write lessons/guide/hello.md"} < set(site.commits())


def test_the_same_lines_changed_by_both_stop_it_before_anything(
    site: OwnSite, tmp_path: Path
) -> None:
    site.change()
    site.git("commit", "-qam", "Call it soup")
    theirs = (site.root / "lessons/soup/lesson.yaml").read_text("utf-8").replace("soup", "stew")
    site.colleague("lessons/soup/lesson.yaml", theirs, tmp_path / "ana")
    before = site.git("rev-parse", "HEAD")
    done = site.publish()
    assert done.exit_code == 1
    assert "lessons/soup/lesson.yaml" in done.output
    assert "git pull --no-rebase" in done.output
    assert site.git("rev-parse", "HEAD") == before
    assert site.git("status", "--porcelain") == ""
    assert not (site.root / ".git/MERGE_HEAD").exists()


def test_a_file_changed_here_and_by_others_is_committed_first(
    site: OwnSite, tmp_path: Path
) -> None:
    site.change()
    site.colleague("lessons/soup/lesson.yaml", "title: Theirs\n", tmp_path / "ana")
    done = site.publish()
    assert done.exit_code == 1
    assert "git add -A && git commit" in done.output
    assert "A lesson of soup" in (site.root / "lessons/soup/lesson.yaml").read_text("utf-8")


def test_a_file_that_lies_here_is_not_overwritten_by_one_of_others(
    site: OwnSite, tmp_path: Path
) -> None:
    mine = site.write("lessons/guide/hello.md", "# Mine\n")
    site.colleague("lessons/guide/hello.md", "# Theirs\n", tmp_path / "ana")
    done = site.publish()
    assert done.exit_code == 1
    assert "lessons/guide/hello.md" in done.output
    assert mine.read_text("utf-8") == "# Mine\n"


def test_another_repository_behind_the_remote_is_told(site: OwnSite, tmp_path: Path) -> None:
    other = tmp_path / "other.git"
    git(tmp_path, "init", "-q", "--bare", "--initial-branch=main", str(other))
    begun = tmp_path / "begun"
    git(tmp_path, "clone", "-q", str(other), str(begun))
    (begun / "README.md").write_text("# First\n", "utf-8")
    git(begun, "add", "-A")
    git(begun, "-c", "user.name=Ana", "-c", "user.email=ana@example.org", "commit", "-qm", "First")
    git(begun, "push", "-q", "origin", "HEAD:main")
    site.git("remote", "set-url", "origin", str(other))
    done = site.publish()
    assert done.exit_code == 1
    assert "another repository" in done.output


REFUSALS = {
    "a protected branch": (
        "pre-receive",
        ("echo 'error: GH006: Protected branch update failed for refs/heads/main.' >&2", "exit 1"),
        ("lets nobody push to `main`", "refs/heads/from-me"),
    ),
    "a hook of the remote": (
        "pre-receive",
        ("echo 'Wednesdays only' >&2", "exit 1"),
        ("does not take this push", "Wednesdays only"),
    ),
    "a file too large for it": (
        "pre-receive",
        ("echo 'GH001: Large files detected, x.mp4 exceeds the file size limit' >&2", "exit 1"),
        ("refuses a file for its size", "git reset"),
    ),
    "no room there": (
        "pre-receive",
        ("echo 'fatal: write error: No space left on device' >&2", "exit 1"),
        ("does not take this push", "No space left"),
    ),
}


@pytest.mark.parametrize("name", REFUSALS)
def test_a_refused_push_keeps_the_commit_and_the_next_one_takes_it_along(
    site: OwnSite, name: str
) -> None:
    which, lines, told = REFUSALS[name]
    file = hook(site.remote, which, *lines)
    site.change()
    done = site.publish()
    assert done.exit_code == 1
    assert [one for one in (*told, "your commit is kept here") if one not in done.output] == []
    assert site.commits() == ["Begin the site"]
    file.unlink()
    again = site.publish()
    assert again.exit_code == 0, again.output
    assert "1 commit waits here" in again.output
    assert site.commits() == ["Publish the site", "Begin the site"]
    assert site.git("status", "--porcelain") == ""


def test_a_remote_gone_midway_loses_nothing(site: OwnSite) -> None:
    """The remote is there when it is asked, and gone when something is pushed."""
    away = site.remote.with_name("away.git")
    hook(site.root / ".git", "post-commit", f"mv '{site.remote}' '{away}'")
    site.change()
    done = site.publish()
    assert done.exit_code == 1
    assert "your commit is kept here" in done.output
    assert "there is no repository where origin should be" in done.output
    (site.root / ".git/hooks/post-commit").unlink()
    gone = site.publish()
    assert gone.exit_code == 1
    assert "nothing was changed" in gone.output
    away.rename(site.remote)
    assert site.publish().exit_code == 0
    assert site.commits() == ["Publish the site", "Begin the site"]


def test_somebody_pushed_between_the_look_and_the_push(site: OwnSite, tmp_path: Path) -> None:
    ana = tmp_path / "ana"
    site.colleague("lessons/guide/hello.md", "# Hello\n", ana)
    site.git("pull", "-q", "--ff-only")
    (ana / "lessons/guide/hello.md").write_text("# Hello again\n", "utf-8")
    git(ana, "commit", "-qam", "Hello again")
    hook(
        site.root / ".git",
        "post-commit",
        f"unset GIT_DIR GIT_INDEX_FILE GIT_WORK_TREE; cd '{ana}' && git push -q",
    )
    site.change()
    done = site.publish()
    assert done.exit_code == 1
    assert "somebody else pushed" in done.output
    (site.root / ".git/hooks/post-commit").unlink()
    again = site.publish(answer="y\ny\n")
    assert again.exit_code == 0, again.output
    assert {"Publish the site", "Hello again"} < set(site.commits())


def test_a_hook_of_hers_that_says_no_is_shown_and_what_was_staged_stays(site: OwnSite) -> None:
    hook(site.root / ".git", "pre-commit", "echo 'spelling: soop' >&2", "exit 1")
    site.change()
    site.write("lessons/guide/hello.md", "# Hello\n")
    site.git("add", "lessons/guide/hello.md")
    before = site.git("status", "--porcelain")
    done = site.publish()
    assert done.exit_code == 1
    assert "spelling: soop" in done.output
    assert site.git("status", "--porcelain") == before
    assert not list((site.root / "site_data/published").rglob("*.jsonl"))
    (site.root / ".git/hooks/pre-commit").unlink()
    assert site.publish().exit_code == 0


def test_a_full_disk_is_told(site: OwnSite) -> None:
    """A hook stands for git, whose words these are."""
    hook(
        site.root / ".git",
        "pre-commit",
        "echo 'fatal: write error: No space left on device' >&2",
        "exit 1",
    )
    site.change()
    done = site.publish()
    assert done.exit_code == 1
    assert "the disk is full" in done.output
    assert site.git("status", "--porcelain") == "M lessons/soup/lesson.yaml"


@pytest.mark.parametrize(
    ("url", "told"),
    [
        ("https://127.0.0.1:9/kitchen.git", "cannot be reached"),
        ("ssh://127.0.0.1:9/kitchen.git", "cannot be reached"),
        ("../nowhere.git", "there is no repository where origin should be"),
    ],
)
def test_a_remote_that_is_not_reached(site: OwnSite, url: str, told: str) -> None:
    site.git("remote", "set-url", "origin", url)
    site.change()
    before = site.git("status", "--porcelain")
    done = site.publish()
    assert done.exit_code == 1
    assert told in done.output
    assert site.git("status", "--porcelain") == before


def test_a_remote_that_asks_who_she_is_is_not_waited_for(
    site: OwnSite, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A stand-in for ssh that refuses as OpenSSH does where it has no key and may not ask."""
    stand_in = tmp_path / "ssh"
    stand_in.write_text(
        '#!/bin/sh\necho "$@" > \'' + str(tmp_path / "asked") + "'\n"
        "echo 'git@kitchen: Permission denied (publickey).' >&2\nexit 255\n",
        "utf-8",
    )
    stand_in.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path), prepend=os.pathsep)
    site.git("remote", "set-url", "origin", "ssh://git@kitchen.example.org/site.git")
    done = site.publish()
    assert done.exit_code == 1
    assert "asks who you are" in done.output
    assert "BatchMode=yes" in (tmp_path / "asked").read_text("utf-8")


class Closed(BaseHTTPRequestHandler):
    """A forge that lets nobody in without a password."""

    def do_GET(self) -> None:  # the library looks for this name
        self.send_response(401)
        self.send_header("WWW-Authenticate", 'Basic realm="kitchen"')
        self.send_header("Content-Length", "0")
        self.end_headers()

    def log_message(self, *_: object) -> None:
        """Say nothing."""


def test_a_remote_that_wants_a_password_is_not_waited_for(
    site: OwnSite, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("GIT_ASKPASS", "SSH_ASKPASS"):
        monkeypatch.delenv(name, raising=False)
    with ThreadingHTTPServer(("127.0.0.1", 0), Closed) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        site.git("remote", "set-url", "origin", f"http://127.0.0.1:{server.server_port}/site.git")
        done = site.publish()
        server.shutdown()
    assert done.exit_code == 1
    assert "asks who you are" in done.output
    assert "nothing was changed" in done.output


def test_a_file_over_the_forges_limit_is_told_before_anything_is_committed(site: OwnSite) -> None:
    """100 MB at GitHub, from memory; the file is a hole and takes no room."""
    film = site.root / "theme/film.mp4"
    with film.open("wb") as file:
        file.truncate(101 * 1024 * 1024)
    done = site.publish()
    assert done.exit_code == 1
    assert "theme/film.mp4 has 101 MB" in done.output
    assert site.git("rev-list", "--count", "HEAD") == "1"
    site.write(".gitattributes", "*.mp4 filter=lfs\n")
    site.git(
        "config", "filter.lfs.clean", "git hash-object --stdin"
    )  # a stand-in: keeps a short note
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert int(site.there("cat-file", "-s", "main:theme/film.mp4")) < 100


def test_a_large_file_in_an_earlier_commit_is_told_with_the_way_back(site: OwnSite) -> None:
    film = site.root / "theme/film.mp4"
    with film.open("wb") as file:
        file.truncate(101 * 1024 * 1024)
    site.git("add", "-A")
    site.git("commit", "-qm", "Add the film")
    film.unlink()
    site.git("commit", "-qam", "Take it out again")
    done = site.publish()
    assert done.exit_code == 1
    assert "theme/film.mp4" in done.output
    (back,) = [one for one in done.output.split("`") if one.startswith("git reset ")]
    site.git(*back.split()[1:])
    assert site.publish().exit_code == 0
    assert "theme/film.mp4" not in site.there("log", "--name-only", "--format=", "main")
