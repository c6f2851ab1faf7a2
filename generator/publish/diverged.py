"""What others pushed since: told, and brought in where no file is in two minds about it."""

from __future__ import annotations

from dataclasses import dataclass

from generator.publish.git import Git
from generator.publish.refused import NotPublishedError
from generator.publish.remote import Remote
from generator.publish.talk import Talk

_TOLD = 10
"""Commits of others that are told one by one."""


@dataclass(frozen=True, slots=True)
class Apart:
    """How far the branch here and that of the remote are from each other."""

    ahead: int
    """Commits here that are not there."""
    behind: int
    """Commits there that are not here."""


def how_far(git: Git, remote: Remote) -> Apart:
    """Count what each side has alone; a repository without a commit has nothing."""
    if not git.says("rev-parse", "-q", "--verify", "HEAD"):
        return Apart(0, int(bool(remote.has)))
    if not remote.has:
        return Apart(int(git.told("rev-list", "--count", "HEAD")), 0)
    told = git.told("rev-list", "--left-right", "--count", f"HEAD...{remote.has}").split()
    return Apart(int(told[0]), int(told[1]))


def bring_in(git: Git, remote: Remote, talk: Talk) -> None:
    """Merge what others pushed, once it is sure that no file is in the way and she said yes.

    Raises:
        NotPublishedError: a file would be in conflict, or she said no; nothing was changed.
    """
    apart = how_far(git, remote)
    if not apart.behind:
        return
    talk.tell(_told(git, remote, apart.behind))
    _refuse_unrelated(git, remote)
    _refuse_conflict(git, remote)
    _refuse_overlap(git, remote)
    if not talk.ask(f"Bring {_commits(apart.behind)} from {remote.called} in, and go on?"):
        what = f"{remote.called} has {_commits(apart.behind)} that you do not have, and nothing was changed"
        raise NotPublishedError(what, "publish again when you want them: git never overwrites them")
    done = git.run("merge", "--no-edit", "--quiet", remote.has)
    if not done.well:
        git.run("merge", "--abort")
        what = f"git could not bring in what {remote.called} has, and all is as it was"
        raise NotPublishedError(
            what, "do what it says, then publish again", words=done.err or done.out
        )
    talk.tell(
        f"Brought in. {_commits(apart.behind).capitalize()} of {remote.called} and yours stand together now."
    )


def _told(git: Git, remote: Remote, behind: int) -> str:
    told = git.told(
        "log",
        f"--max-count={_TOLD}",
        "--date=short",
        "--format=  %ad %an: %s",
        f"HEAD..{remote.has}",
    )
    more = f"\n  and {behind - _TOLD} more" if behind > _TOLD else ""
    return f"{remote.called} has {_commits(behind)} that you do not have yet:\n{told}{more}"


def _commits(number: int) -> str:
    return f"{number} commit{'s'[: number != 1]}"


def _refuse_unrelated(git: Git, remote: Remote) -> None:
    if git.run("merge-base", "HEAD", remote.has).well:
        return
    what = f"{remote.called} holds another repository: no commit there is one of yours"
    hint = "make an empty repository at your forge, without a first file, and name it: git remote set-url origin ADDRESS"
    raise NotPublishedError(f"{what}, and nothing was changed", hint)


def _refuse_conflict(git: Git, remote: Remote) -> None:
    """Try the merge in git's own memory: no file and no branch is touched (git 2.38 and later)."""
    words = ("merge-tree", "--write-tree", "--name-only", "--no-messages", "-z")
    tried = git.run(*words, "HEAD", remote.has)
    if tried.well:
        return
    if tried.code != 1:
        what = f"this git cannot try out beforehand whether your work and that of {remote.called} go together"
        hint = "bring it in by your git client (pull), then publish again"
        raise NotPublishedError(f"{what}, and nothing was changed", hint, words=tried.err)
    both = [one for one in tried.out.split("\0")[1:] if one]
    what = f"you and somebody else changed the same lines of {', '.join(both[:5])}, and nothing was changed here"
    hint = f"git pull --no-rebase marks both versions with <<<<<<< and >>>>>>>; keep of each what holds, then git add {both[0]}, git commit, and publish again"
    raise NotPublishedError(what, hint)


def _refuse_overlap(git: Git, remote: Remote) -> None:
    """A file changed here, or lying here, that theirs changes too stops git midway."""
    theirs = set(git.paths("diff", "--name-only", "--no-relative", "-z", f"HEAD...{remote.has}"))
    mine = set(git.paths("diff", "--name-only", "--no-relative", "-z", "HEAD"))
    lying = {path for path in theirs - mine if _lies_here(git, path)}
    if staged := git.paths("diff", "--cached", "--name-only", "-z"):
        mine |= set(staged)
        lying |= set(staged)
    if both := sorted((theirs & mine) | lying):
        what = f"{', '.join(both[:5])} is changed here and not committed, while {remote.called} brings commits of others"
        hint = 'commit yours first, git add -A && git commit -m "Change it", and publish again'
        raise NotPublishedError(f"{what}, and nothing was changed", hint)


def _lies_here(git: Git, path: str) -> bool:
    """Whether a file lies here that git does not know, under a name that theirs brings."""
    top = git.told("rev-parse", "--show-toplevel")
    known = git.run("ls-files", "--error-unmatch", "--", f":(top){path}").well
    return not known and (git.root / top / path).exists()
