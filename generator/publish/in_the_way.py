"""What must be settled in a repository before anything is published from it."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

from generator.publish.git import Git
from generator.publish.refused import NotPublishedError

_UNDER_WAY = {
    "MERGE_HEAD": ("a merge", "merge"),
    "rebase-merge": ("a rebase", "rebase"),
    "rebase-apply": ("a rebase", "rebase"),
    "CHERRY_PICK_HEAD": ("a cherry-pick", "cherry-pick"),
    "REVERT_HEAD": ("a revert", "revert"),
    "BISECT_LOG": ("a bisect", "bisect"),
}
"""By a file below ``.git``: what was begun and not ended, and git's word for it."""
_FRESH = 600
"""Seconds for which a lock may well be held by somebody: nothing git does with a site takes longer."""


def refuse_unready(git: Git) -> None:
    """Stop where a repository is not ready to be committed to.

    Raises:
        NotPublishedError: the first thing that is in the way.
    """
    for one in _IN_ORDER:
        one(git)


def git_folder(git: Git) -> Path:
    """The folder in which git keeps this working copy's own state."""
    return (git.root / git.told("rev-parse", "--git-dir")).resolve()


def _no_repository(git: Git) -> None:
    done = git.run("rev-parse", "--is-inside-work-tree")
    if done.well and done.out.strip() == "true":
        return
    if "dubious ownership" in done.err:
        what = "this folder belongs to another account of this machine, and git does not trust it"
        hint = "work in a copy of your own, or do what git says here"
        raise NotPublishedError(what, hint, words=done.err)
    what = "this folder is not a git repository, so there is nothing to publish from"
    hint = 'in it: git init && git add -A && git commit -m "Begin the site"; or name a folder or server under `publish:` in site_data/site.yaml'
    raise NotPublishedError(what, hint)


def _under_way(git: Git) -> None:
    folder = git_folder(git)
    for name, (called, word) in _UNDER_WAY.items():
        if not (folder / name).exists():
            continue
        what = f"{called} was begun here and is not ended"
        end = "git bisect reset" if word == "bisect" else f"git {word} --continue"
        if word == "merge":
            end = "git commit"
        give_up = "" if word == "bisect" else f", or give it up: git {word} --abort"
        hint = f"end it: {_settle(git)}{end}{give_up}; then publish again"
        raise NotPublishedError(what, hint)


def _settle(git: Git) -> str:
    """What comes before a merge can be ended, by the files that are in conflict."""
    both = git.paths("diff", "--name-only", "--diff-filter=U", "-z")
    return f"settle {', '.join(both[:5])}, `git add` each, then " if both else ""


def _conflict(git: Git) -> None:
    if both := git.paths("diff", "--name-only", "--diff-filter=U", "-z"):
        what = f"two versions of {', '.join(both[:5])} are not settled yet"
        hint = "keep of each what holds, `git add` it, then publish again"
        raise NotPublishedError(what, hint)


def _locked(git: Git) -> None:
    lock = git_folder(git) / "index.lock"
    if not lock.exists():
        return
    if time.time() - lock.stat().st_mtime < _FRESH:
        what = "another program is at work on this repository (.git/index.lock)"
        hint = "wait until it is done, or close it; then publish again"
    else:
        what = f"a program was cut off at work on this repository, and left {lock} behind"
        hint = "see that no git program is running, delete that one file, then publish again"
    raise NotPublishedError(what, hint)


def _detached(git: Git) -> None:
    if git.says("symbolic-ref", "-q", "HEAD"):
        return
    what = "you are looking at an old commit and stand on no branch, so nobody would find what is committed now"
    hint = f"go back to your branch: git switch {_branch_before(git)}; what you made here meanwhile: git switch -c NAME keeps it"
    raise NotPublishedError(what, hint)


def _branch_before(git: Git) -> str:
    before = git.says("rev-parse", "--abbrev-ref", "@{-1}")
    return before if before not in {"", "HEAD"} else "main"


def _nameless(git: Git) -> None:
    """Every commit says whom it is by, and nobody else makes that up."""
    for role in ("GIT_AUTHOR_IDENT", "GIT_COMMITTER_IDENT"):
        if not git.run("-c", "user.useConfigOnly=true", "var", role).well:
            what = "git does not know who you are, and every commit says whom it is by"
            hint = 'tell it, once: git config --global user.name "Your name" and git config --global user.email "you@example.org"; then publish again'
            raise NotPublishedError(what, hint)


_IN_ORDER: tuple[Callable[[Git], None], ...] = (
    _no_repository,
    _under_way,
    _conflict,
    _locked,
    _detached,
    _nameless,
)
