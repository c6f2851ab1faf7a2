"""What a publication will change, in plain words, before anything is asked."""

from __future__ import annotations

from collections.abc import Sequence

from generator.publish.git import Git
from generator.publish.going_out import GoingOut, Steps
from generator.publish.worktree import Changed

_TOLD = 20
"""Files that are told one by one."""


def told_changes(steps: Steps, going: GoingOut) -> str:
    """What differs by meaning from the last publication; of the first one, which lessons go out."""
    told = steps.changes("") if going.past.publications else ""
    return told or _told_lessons(going)


def told_commit(git: Git, changed: Changed, remote_has: str) -> str:
    """The files that change on the remote, those of commits of before among them."""
    files = sorted({*changed.taken, *_committed(git, remote_has)})
    told = f"In these files:\n{told_files(files)}" if files else "No file changes but the record."
    return told + _told_built(git)


def _told_built(git: Git) -> str:
    """That git keeps the built site as well, which grows with every build and is made anew by the forge."""
    if not git.paths("ls-files", "-z", "--", "site"):
        return ""
    return "\nThe built site is in git too, and stays there as it was: `git rm -r --cached site` takes it out."


def told_left(left: tuple[str, ...]) -> str:
    """Files that stay at home, and how to take one along."""
    if not left:
        return ""
    return (
        "\nThese stay on this machine, for nothing of the site names them "
        f"(`git add FILE` takes one along):\n{told_files(left)}"
    )


def _committed(git: Git, remote_has: str) -> tuple[str, ...]:
    """What commits changed that were not pushed yet."""
    if not remote_has:
        return git.paths("ls-tree", "-r", "--name-only", "-z", "HEAD") if _begun(git) else ()
    return git.paths("diff", "--name-only", "--relative", "-z", remote_has, "HEAD")


def _begun(git: Git) -> bool:
    return git.run("rev-parse", "-q", "--verify", "HEAD").well


def told_files(files: Sequence[str]) -> str:
    """Files, each on its line; of many, the first."""
    lines = "\n".join(f"  {file}" for file in files[:_TOLD])
    more = len(files) - _TOLD
    return lines + (f"\n  and {more} more" if more > 0 else "")


def _told_lessons(going: GoingOut) -> str:
    """Which lessons go out, are new, say something else or go out no more, after the record."""
    before = set(going.past.publications[-1].lessons) if going.past.publications else set()
    lines = [
        *(f"  {one}: new" for one in going.lessons if one not in before),
        *(f"  {one}: says something else" for one in going.lessons if _says_otherwise(going, one)),
        *(f"  {one}: goes out no more" for one in sorted(before - set(going.lessons))),
    ]
    if not lines:
        return "Every lesson says what it said when it last went out."
    return "This goes out:\n" + "\n".join(lines)


def _says_otherwise(going: GoingOut, lesson: str) -> bool:
    """Whether a lesson that went out before says something else in one of its languages now."""
    for language, state in going.states[lesson].items():
        before = going.past.last(lesson, language)
        if before is not None and not before.says_as(state):
            return True
    return False
