"""The last publication taken back: the files of the one before it, by a new commit."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace

from generator.model.published import PUBLISHED, Publication
from generator.publish.by_git import ready_remote, record_and_commit
from generator.publish.commit import push
from generator.publish.diverged import how_far
from generator.publish.found import Commit, later_commits, publications
from generator.publish.git import Git
from generator.publish.going_out import States, Steps, moment, publication, states_at
from generator.publish.in_the_way import git_folder
from generator.publish.refused import NotPublishedError
from generator.publish.remote import Remote
from generator.publish.shown import told_files
from generator.publish.talk import Talk
from generator.publish.workflow import will_appear
from generator.publish.worktree import Changed, changed_files
from generator.read.published import read_published

_BUT_RECORD = ("--", ".", f":(exclude){PUBLISHED}")
"""What was published stays written down: the record only grows."""


def undo(git: Git, steps: Steps, note: str, talk: Talk) -> None:
    """Put the files of the publication before the last one back, by a new commit, and push it.

    Args:
        git: in the folder of the site.
        steps: checks and builds.
        note: what she says of it, or nothing.
        talk: says what is done, and asks.

    Raises:
        NotPublishedError: it did not come about; the sentence says why, and what to do.
        LessonError: the files of before cannot be built by today's program; all is as it was.
    """
    remote = ready_remote(git)
    last, before = _both(git)
    _refuse_unsettled(git, remote, last)
    if not (files := _files(git, before)):
        what = (
            "the last publication changed nothing but the record, so there is nothing to take back"
        )
        raise NotPublishedError(what, "leave it as it is")
    talk.tell(_told(git, last, before) + told_files(files))
    if told := steps.changes(before.name[:12]):
        talk.tell(f"What is taken back with it:\n{told}")
    if not talk.ask("Take the last publication back?"):
        raise NotPublishedError("nothing was taken back", "all is as it was")
    with _files_of(git, before):
        line, states = _state(git, steps, before, talk, other_program=_of_program(files))
        line = replace(
            line,
            at=moment(read_published(git.root)),
            to="git",
            note=" ".join(note.split()),
            undoes=last.at,
        )
        subject = f"Take back the publication of {_day(last.at)}"
        staged = Changed((), frozenset(), ())  # the patch is staged already
        record_and_commit(git, line, states, staged, subject)
    push(git, remote)
    talk.tell(f"Taken back at {remote.called}. {will_appear(git, line.address)}")


def _of_program(files: tuple[str, ...]) -> bool:
    """Whether the program itself goes back as well."""
    return any(file.startswith("generator/") for file in files)


def _state(
    git: Git, steps: Steps, before: Commit, talk: Talk, *, other_program: bool
) -> tuple[Publication, States]:
    """What goes out then: as it is built today, or as the record has it where another program will build it."""
    if not other_program:
        steps.check()
        going = steps.build()
        return publication(going, before.at, "git", ""), going.states
    past = read_published(git.root)
    line = next((one for one in past.publications if one.at == before.at), None)
    if line is None:
        what = f"the record of publications has no line of {_day(before.at)} any more, and all is as it was"
        raise NotPublishedError(what, "see in git what became of site_data/published/site.jsonl")
    talk.tell(
        f"The program goes back to {line.program} with it; your forge checks and builds with that one."
    )
    return line, states_at(past, before.at)


def _both(git: Git) -> tuple[Commit, Commit]:
    """The last publication and the one before it."""
    match publications(git):
        case []:
            what = "nothing was published from this branch yet, so there is nothing to take back"
            raise NotPublishedError(what, "`publish` without `--undo` publishes")
        case [_]:
            what = "this was the first publication, and no state stands before it that could be put back"
            hint = "change the files and publish again; to take the whole site away, switch its pages off at your forge"
            raise NotPublishedError(what, hint)
        case found:
            return found[0], found[1]


def _refuse_unsettled(git: Git, remote: Remote, last: Commit) -> None:
    """Work that an undo would take along, or would be in the way of."""
    if how_far(git, remote).behind:
        what = f"{remote.called} has commits that you do not have, and it is not sure what an undo would take away"
        raise NotPublishedError(
            what, "publish first, which brings them in and asks you; then --undo"
        )
    if changed_files(git, git.root / "site").taken:
        what = "something is changed here and not committed, and an undo changes files"
        hint = "publish it, or commit it (git add -A && git commit); then see whether --undo is still what you want"
        raise NotPublishedError(what, hint)
    if later := later_commits(git, last):
        what = f"{later} commit{'s'[: later != 1]} came after the last publication, and an undo would take their work away as well"
        hint = "publish first, then --undo takes back only what that publishes; a single commit is taken back by git revert NAME"
        raise NotPublishedError(what, hint)


def _files(git: Git, before: Commit) -> tuple[str, ...]:
    return git.paths("diff", "--name-only", "--relative", "-z", "HEAD", before.name, *_BUT_RECORD)


def _told(git: Git, last: Commit, before: Commit) -> str:
    undone = git.says("log", "-1", "--format=%s", last.name)
    again = (
        " It was itself an undo, so what it took away comes back." if "Take back" in undone else ""
    )
    return (
        f"The last publication is that of {_day(last.at)}.{again} "
        f"The state of {_day(before.at)} comes back by a new commit, and these files change:\n"
    )


def _day(at: str) -> str:
    """``2026-11-26T17:03:00Z`` for people."""
    return f"{at[:10]} {at[11:16]} UTC"


@contextmanager
def _files_of(git: Git, before: Commit) -> Iterator[None]:
    """Give the folder the files of a commit; where what follows fails, those of now again.

    As a patch, which git takes whole or not at all and never lays over a file it does not know.
    """
    patch = git_folder(git) / "plumline-undo.patch"
    words = (
        "diff",
        "--binary",
        "--full-index",
        "--no-renames",
        "--no-ext-diff",
        "--no-textconv",
        "--no-relative",
    )
    git.told(*words, f"--output={patch}", "HEAD", before.name, *_BUT_RECORD)
    try:
        _apply(git, str(patch))
        try:
            yield
        except BaseException:
            git.run("apply", "--index", "--whitespace=nowarn", "--reverse", str(patch))
            raise
    finally:
        patch.unlink(missing_ok=True)


def _apply(git: Git, patch: str) -> None:
    done = git.run("apply", "--index", "--whitespace=nowarn", patch)
    if not done.well:
        what = "the files of before cannot be put back here, and all is as it was"
        hint = "move what it names out of the way, then say --undo again"
        raise NotPublishedError(what, hint, words=done.err)
