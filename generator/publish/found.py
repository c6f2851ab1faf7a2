"""Publications found among the commits of a repository."""

from __future__ import annotations

from dataclasses import dataclass

from generator.publish.commit import TRAILER
from generator.publish.git import Git


@dataclass(frozen=True, slots=True)
class Commit:
    """The commit of a publication."""

    name: str
    """Its whole name."""
    at: str
    """The publication's moment, as the record has it."""


def publications(git: Git) -> tuple[Commit, ...]:
    """Every publication that the branch holds, the newest first."""
    form = f"--format=%H %(trailers:key={TRAILER},valueonly,separator=%x20)"
    told = git.says("log", "--topo-order", f"--grep=^{TRAILER}: ", form).splitlines()
    found = (line.partition(" ") for line in told)
    return tuple(Commit(name, at.strip()) for name, _, at in found if at.strip())


def later_commits(git: Git, since: Commit) -> int:
    """How many commits came after a publication; those that only put two branches together do not count."""
    return int(git.told("rev-list", "--count", "--no-merges", f"{since.name}..HEAD"))


def unrecorded_since(git: Git, remote_has: str) -> bool:
    """Whether a commit that was not pushed yet came after the last publication, and no record has it."""
    known = publications(git)[:1]
    without = [f"^{one}" for one in (remote_has, *(one.name for one in known)) if one]
    return bool(int(git.told("rev-list", "--count", "--no-merges", "HEAD", *without)))


def unsent(ahead: int) -> str:
    """How many commits wait to be pushed, as the beginning of a sentence."""
    return f"{ahead} commit{'s'[: ahead != 1]} wait{'s'[: ahead == 1]} here"
