"""A publication as a commit, and the way of that commit to the remote."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from generator.publish.git import Git
from generator.publish.line import refuse_failed_push
from generator.publish.refused import NotPublishedError
from generator.publish.remote import Remote
from generator.publish.worktree import Changed

TRAILER = "Plumline-Publication"
"""Line at the end of a publication's message that says when it was; so it is found again."""


def message(subject: str, note: str, at: str) -> str:
    """What a publication's commit says.

    Args:
        subject: in the imperative.
        note: what she says of it; nothing where she says nothing.
        at: moment of the publication, as the record has it.
    """
    said = f"{note.strip()}\n\n" if note.strip() else ""
    return f"{subject}\n\n{said}{TRAILER}: {at}\n"


def commit(git: Git, changed: Changed, text: str) -> str:
    """Commit what was chosen; gives the commit's short name.

    Raises:
        NotPublishedError: a hook of hers or git itself says no; what was staged is as it was.
    """
    with _staged_as_before(git):
        _add(git, changed)
        done = git.run("commit", "--quiet", "--cleanup=verbatim", "--file=-", given=text)
        if not done.well:
            raise _refused(done.err + done.out)
    return git.told("rev-parse", "--short", "HEAD")


def _add(git: Git, changed: Changed) -> None:
    paths = [path for path in changed.taken if path not in changed.untracked]
    if not paths:
        return
    listed = "".join(f"{path}\0" for path in paths)
    words = ("--literal-pathspecs", "add", "--all", "--pathspec-from-file=-", "--pathspec-file-nul")
    done = git.run(*words, given=listed)
    if not done.well:
        raise _refused(done.err)


@contextmanager
def _staged_as_before(git: Git) -> Iterator[None]:
    """Give back what was staged where no commit comes of it."""
    before = git.told("write-tree")
    try:
        yield
    except BaseException:
        git.run("read-tree", before)
        git.run("update-index", "-q", "--refresh")
        raise


def _refused(words: str) -> NotPublishedError:
    """What kept a commit from being made, by git's words."""
    if "No space left" in words or "disk quota" in words.lower():
        what, hint = "the disk is full", "make room, then publish again"
    elif "index.lock" in words or "Unable to create" in words:
        what = "another program is at work on this repository"
        hint = "wait until it is done, or close it; then publish again"
    elif "gpg failed to sign" in words or "signing failed" in words:
        what = "your settings ask for signed commits, and the signature did not come about"
        hint = "see whether its key is there and open, or switch it off with git config commit.gpgSign false"
    else:
        what = "git did not make the commit, for itself or for a hook of yours (.git/hooks)"
        hint = "do what it says, then publish again"
    return NotPublishedError(
        f"{what}; your files and what you staged are as they were", hint, words=words
    )


def push(git: Git, remote: Remote) -> None:
    """Push the branch; nothing is forced, and a branch that belongs to no remote is bound to this one.

    Raises:
        NotPublishedError: it does not arrive; the commit stays.
    """
    bind = () if remote.bound else ("--set-upstream",)
    words = ("push", "--no-follow-tags", *bind, remote.name, f"HEAD:refs/heads/{remote.branch}")
    done = git.run(*words)
    if not done.well:
        url = git.says("remote", "get-url", remote.name)
        refuse_failed_push(done.err, remote.name, remote.branch, remote.has, url)
