"""A publication by git: checked, built from nothing, shown, asked, recorded, committed and pushed."""

from __future__ import annotations

from generator.model.published import Publication
from generator.publish.both_lines import both_kept
from generator.publish.commit import commit, message, push
from generator.publish.diverged import bring_in, how_far
from generator.publish.found import publications, unrecorded_since, unsent
from generator.publish.git import Git
from generator.publish.going_out import GoingOut, States, Steps, is_recorded, moment, publication
from generator.publish.in_the_way import refuse_unready
from generator.publish.kept_record import forget_cut_off, taken_back
from generator.publish.large import refuse_large, refuse_large_commits
from generator.publish.record import append_publication
from generator.publish.refused import NotPublishedError
from generator.publish.remote import Remote, find_remote
from generator.publish.shown import told_changes, told_commit, told_left
from generator.publish.talk import Talk
from generator.publish.workflow import offer_workflow, will_appear
from generator.publish.worktree import (
    Changed,
    changed_files,
    ignored_yet_named,
    refuse_staged_elsewhere,
)


def publish_by_git(git: Git, steps: Steps, note: str, talk: Talk) -> None:
    """Publish the site; whatever is in the way, no work and no branch is lost.

    Args:
        git: in the folder of the site.
        steps: checks and builds.
        note: what she says of it, or nothing.
        talk: says what is done, and asks.

    Raises:
        NotPublishedError: it did not go out; the sentence says why, and what to do.
        LessonError: something must be put right before.
    """
    remote = ready_remote(git)
    bring_in(git, remote, talk)
    offer_workflow(git, talk)
    steps.check()
    going = steps.build()
    changed = chosen(git, going)
    refuse_large_commits(git, remote.has)
    apart = how_far(git, remote)
    if not changed.taken and is_recorded(going) and not unrecorded_since(git, remote.has):
        talk.tell(told_left(changed.left))
        if not apart.ahead:
            talk.tell("Nothing to publish: all there is went out already.")
            return
        _ask(talk, f"{unsent(apart.ahead)} for {remote.called}. Push now?")
    else:
        talk.tell(told_changes(steps, going))
        talk.tell(told_commit(git, changed, remote.has) + told_left(changed.left))
        _ask(talk, f"Commit this and push it to {remote.called}?")
        line = publication(going, moment(going.past), "git", note)
        record_and_commit(git, line, going.states, changed, "Publish the site")
    push(git, remote)
    talk.tell(f"It is at {remote.called} now. {will_appear(git, going.site.address)}")


def ready_remote(git: Git) -> Remote:
    """Where a repository, in which nothing is in the way, is pushed to.

    Raises:
        NotPublishedError: something is in the way.
    """
    refuse_unready(git)
    refuse_staged_elsewhere(git)
    forget_cut_off(git.root, frozenset(one.at for one in publications(git)[:1]))
    return find_remote(git)


def chosen(git: Git, going: GoingOut) -> Changed:
    """What will be committed; refuses what no forge could build or would take.

    Raises:
        NotPublishedError: a file is too large, half staged, or left out while the site needs it.
    """
    changed = changed_files(git, going.folder)
    if ignored := ignored_yet_named(git, going.folder):
        what = f"the site needs {', '.join(ignored[:5])}, and git was told to leave that out"
        hint = f"take its line out of .gitignore (`git check-ignore -v {ignored[0]}` names it), then publish again"
        raise NotPublishedError(what, hint)
    refuse_large(git, changed.taken)
    return changed


def record_and_commit(
    git: Git, line: Publication, states: States, changed: Changed, subject: str
) -> str:
    """Write the record and commit it with all that was chosen; gives the commit's short name."""
    with both_kept(git) as told, taken_back(git.root, line.at):
        files = append_publication(git.root, line, states)
        named = (file.relative_to(git.root).as_posix() for file in files)
        everything = Changed((*changed.taken, *told, *named), changed.untracked, changed.left)
        return commit(git, everything, message(subject, line.note, line.at))


def _ask(talk: Talk, question: str) -> None:
    if not talk.ask(question):
        what = "nothing of yours was committed, and nothing pushed"
        raise NotPublishedError(what, "publish again whenever you want to")
