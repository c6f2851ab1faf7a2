"""A revision as a folder called by git's name of its tree: laid out below ``.cache/`` and nowhere else."""

from __future__ import annotations

import os
import re
import shutil
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from generator.carried import is_home
from generator.engine.store import STATES
from generator.publish.git import Done, Git
from generator.publish.refused import NotPublishedError
from generator.write.swap import remove

_KEPT = 4
"""States that stay laid out, the one used last among them."""
_PLAIN = (
    *("-c", "filter.lfs.smudge=", "-c", "filter.lfs.process=", "-c", "filter.lfs.required=false"),
    *("-c", "core.sparseCheckout=false", "-c", "core.fsmonitor=false"),
)  # fmt: skip
"""Nothing is fetched while a state is laid out, and no program of somebody's runs."""
_POINTER = re.compile(rb"version https://git-lfs\.github\.com/spec/v1\noid sha256:([0-9a-f]{64})\n")
"""What git keeps in the place of a file that git LFS has (git-lfs, "The pointer")."""
_LONGEST_POINTER = 1024
"""Bytes, by the same."""


class NoStateError(Exception):
    """There is no such state of the site, or none that can be made; says why in a sentence."""


@dataclass(frozen=True, slots=True)
class Revision:
    """A commit, and the site in it."""

    name: str
    """As it was asked for."""
    commit: str
    """All its letters."""
    tree: str
    """git's name of what the site's folder held."""
    at: str
    """When it was committed, as ``2026-11-26T17:03:00+00:00``."""

    def __str__(self) -> str:
        return f"{self.name} ({self.commit[:8]}, {self.at[:10]})"


def revision(root: Path, name: str) -> Revision:
    """A revision by what somebody calls it.

    Args:
        root: folder of the site.
        name: a commit, branch or tag, in any way that git reads.

    Raises:
        NoStateError: git does not know it, keeps nothing of the site, or is not there.
    """
    if _git(root, "rev-parse", "--is-inside-work-tree") != "true":
        raise NoStateError(
            "this site is not kept by git, so there is no revision to compare with; begin with: git init"
        )
    commit = _git(root, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{name}^{{commit}}")  # fmt: skip
    if not commit:
        raise NoStateError(_unknown(root, name))
    above = _git(root, "rev-parse", "--show-prefix").rstrip("/")
    tree = _git(root, "rev-parse", "--verify", "--quiet", f"{commit}:{above}")
    if not tree or not _git(root, "rev-parse", "--verify", "--quiet", f"{tree}:lessons"):
        raise NoStateError(
            f"there was no site in {name} yet: it holds no lessons/; name a later revision"
        )
    at = _git(root, "show", "--no-patch", "--format=%cI", commit)
    return Revision(name, commit, tree, at)


def last_change(root: Path, path: str) -> str:
    """The last commit that changed a file; empty where none did, or the file differs from it now."""
    if _git(root, "status", "--porcelain", "--", path):
        return ""
    return _git(root, "log", "-1", "--format=%H", "--", path)


def laid_out(root: Path, of: Revision) -> Path:
    """The folder of a revision's site, laid out now or before; the work tree and git's index stay as they are.

    Raises:
        NoStateError: a part of it is kept elsewhere and not here.
        OSError: it cannot be written.
    """
    states = root / ".cache" / STATES
    folder = states / of.tree
    if folder.is_dir():
        os.utime(folder)
    else:
        _begin(root, of, states, folder)
    if is_home(root):
        _take_theme_of_today(root, folder)
    return folder


def _begin(root: Path, of: Revision, states: Path, folder: Path) -> None:
    """The folder is there whole or not at all."""
    states.mkdir(parents=True, exist_ok=True)
    growing = states / f"{of.tree}.{os.getpid()}"
    remove(growing)
    try:
        _lay_out(root, of, growing)
        _fill_pointers(root, of, growing)
        growing.rename(folder)
    finally:
        remove(growing)
        growing.with_suffix(".index").unlink(missing_ok=True)
    _sweep(states)


def _take_theme_of_today(root: Path, folder: Path) -> None:
    """In the program's own repository the theme is a part of the program, which is that of today."""
    remove(folder / "theme")
    shutil.copytree(root / "theme", folder / "theme")


def _lay_out(root: Path, of: Revision, folder: Path) -> None:
    """By an index of its own, which no other program looks at."""
    _refuse_submodules(root, of)
    index = {"GIT_INDEX_FILE": str(folder.with_suffix(".index").resolve())}
    top = Path(_git(root, "rev-parse", "--show-toplevel"))
    _must(top, "read-tree", of.tree, also=index)
    _must(top, "checkout-index", "--all", "--force", f"--prefix={folder.resolve()}/", also=index)
    folder.mkdir(exist_ok=True)


def _refuse_submodules(root: Path, of: Revision) -> None:
    """A repository within the site would be an empty folder: its lessons would seem to be gone."""
    for line in _git(root, "ls-tree", "-r", "-z", "--full-tree", of.tree).split("\0"):
        told, _, path = line.partition("\t")
        if told.startswith("160000 ") and path.startswith(("lessons/", "site_data/", "theme/")):
            raise NoStateError(
                f"{path} of {of.name} is a repository of its own (a submodule), which is not followed: "
                "compare within it, or take its files into this one"
            )


def _fill_pointers(root: Path, of: Revision, folder: Path) -> None:
    """Put the files of git LFS in their places, as far as they are on this machine; nothing is fetched."""
    store = Path(_git(root, "rev-parse", "--path-format=absolute", "--git-common-dir"), "lfs")
    for file in (folder / "lessons").rglob("*"):
        if file.is_symlink() or not file.is_file() or file.stat().st_size > _LONGEST_POINTER:
            continue
        found = _POINTER.match(file.read_bytes())
        if found is None:
            continue
        name, sum_ = file.relative_to(folder).as_posix(), found[1].decode()
        for held in (store / "objects" / sum_[:2] / sum_[2:4] / sum_, root / name):
            if held.is_file() and sha256(held.read_bytes()).hexdigest() == sum_:
                shutil.copyfile(held, file)
                break
        else:
            raise NoStateError(
                f"{name} of {of.name} is kept by git LFS and not on this machine; fetch it with: "
                f"git lfs fetch origin {of.commit[:12]}"
            )


def _sweep(states: Path) -> None:
    """Only the states used last are kept."""
    folders = [one for one in states.iterdir() if one.is_dir()]
    for old in sorted(folders, key=lambda one: one.stat().st_mtime_ns, reverse=True)[_KEPT:]:
        remove(old)


def _unknown(root: Path, name: str) -> str:
    if not _git(root, "rev-parse", "--verify", "--quiet", "HEAD"):
        return "nothing of this site was committed yet, so there is nothing to compare with"
    more = ""
    if _git(root, "rev-parse", "--is-shallow-repository") == "true":
        more = "; this copy has the latest commits only, the rest comes with: git fetch --unshallow"
    return f"git knows no revision `{name}`: name a commit, a branch, a tag, or HEAD~1{more}"


def _git(root: Path, *words: str) -> str:
    """What git answers, without the last line end; nothing where it has nothing good to say.

    Raises:
        NoStateError: git is not on this machine.
    """
    done = _run(root, words, {})
    return done.out.rstrip("\n") if done.well else ""


def _must(root: Path, *words: str, also: dict[str, str]) -> None:
    done = _run(root, words, also)
    if not done.well:
        said = done.err.strip().replace("\n", "; ")
        raise NoStateError(f"git could not give the revision (`git {words[0]}` said: {said})")


def _run(root: Path, words: tuple[str, ...], also: dict[str, str]) -> Done:
    try:
        return Git(root).run(*_PLAIN, *words, also=also)
    except NotPublishedError as error:
        raise NoStateError(f"{error.what}: {error.hint}") from None
