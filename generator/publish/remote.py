"""Where a branch is pushed to, what is there, and whether both go together."""

from __future__ import annotations

from dataclasses import dataclass

from generator.publish.git import Git
from generator.publish.line import refuse_failed_line
from generator.publish.refused import NotPublishedError


@dataclass(frozen=True, slots=True)
class Remote:
    """The branch of a remote that a publication is pushed to."""

    name: str
    """As ``git remote`` lists it."""
    branch: str
    """Its branch there."""
    has: str
    """The commit that branch stands at; nothing where it is not there yet."""
    bound: bool
    """Whether the branch here knows it as its own (upstream)."""

    @property
    def called(self) -> str:
        """Its name for people."""
        return f"{self.name}/{self.branch}"


def find_remote(git: Git) -> Remote:
    """The remote branch that belongs to the branch here, asked anew what it holds.

    Raises:
        NotPublishedError: there is no remote, it cannot be reached, or the forge builds another branch.
    """
    here = git.told("symbolic-ref", "--short", "HEAD")
    name, branch = _named(git, here)
    done = git.run("ls-remote", "--symref", name, "HEAD", f"refs/heads/{branch}")
    if not done.well:
        refuse_failed_line(done.err or done.out, name, git.says("remote", "get-url", name))
    usual, has = _read(done.out, branch)
    if usual and usual != branch:
        what = f"you are on the branch `{here}`, and {name} builds the site from `{usual}`"
        hint = f"bring it there, git switch {usual} && git merge {here}, and publish again; or push it and ask for it to be taken in"
        raise NotPublishedError(what, hint)
    if has:
        _fetch(git, name, branch)
    bound = bool(git.says("config", f"branch.{here}.merge"))
    return Remote(name, branch, has, bound)


def _named(git: Git, here: str) -> tuple[str, str]:
    """The remote and its branch, by what the branch is bound to, else the one remote there is."""
    known = git.told("remote").splitlines()
    bound = git.says("config", f"branch.{here}.remote")
    if bound in known:
        merge = git.says("config", f"branch.{here}.merge").removeprefix("refs/heads/")
        return bound, merge or here
    if not known:
        what = "this repository has no remote, so nobody else would see what is committed"
        hint = "make an empty repository at your forge and name it: git remote add origin ADDRESS; or name a folder or server under `publish:` in site_data/site.yaml"
        raise NotPublishedError(what, hint)
    if len(known) > 1 and "origin" not in known:
        what = f"this repository has several remotes ({', '.join(known)}), and the branch `{here}` belongs to none"
        hint = f"say which one publishes, once: git push --set-upstream {known[0]} {here}"
        raise NotPublishedError(what, hint)
    return ("origin" if "origin" in known else known[0]), here


def _read(told: str, branch: str) -> tuple[str, str]:
    """The branch a remote builds from, and the commit ours stands at there."""
    usual, has = "", ""
    for line in told.splitlines():
        what, _, ref = line.partition("\t")
        if what.startswith("ref: ") and ref == "HEAD":
            usual = what.removeprefix("ref: refs/heads/")
        elif ref == f"refs/heads/{branch}":
            has = what
    return usual, has


def _fetch(git: Git, name: str, branch: str) -> None:
    done = git.run("fetch", "--quiet", "--no-tags", name, f"refs/heads/{branch}")
    if not done.well:
        refuse_failed_line(done.err, name, git.says("remote", "get-url", name))
