"""What it means when a remote is not reached or does not take a push, by the words git has for it."""

from __future__ import annotations

import re
from typing import NoReturn

from generator.publish.refused import NotPublishedError

Meant = tuple[re.Pattern[str], str, str]


def _of(words: str) -> re.Pattern[str]:
    return re.compile(words, re.IGNORECASE)


_LINE: tuple[Meant, ...] = (
    (
        _of(
            r"could not read (Username|Password)|terminal prompts disabled|Authentication failed|Permission denied \(|Invalid username|HTTP Basic: Access denied"
        ),
        "{remote} asks who you are, and git has no key or token for it",
        "sign in with your git client, or set up a key as your forge's help says; then publish again",
    ),
    (
        _of(r"Host key verification failed"),
        "this machine has never spoken with {remote}, and nobody has said that it is the right one",
        "once, by hand: git fetch {remote}, and compare the fingerprint with the one your forge names",
    ),
    (
        _of(r"Repository not found|returned error: 40[34]|denied to|You are not allowed to"),
        "{remote} does not know this repository, or does not let you in",
        "see whether {url} is right (git remote set-url {remote} ADDRESS) and whether your account may write there",
    ),
    (
        _of(
            r"Could not resolve host|Connection (refused|timed out|reset)|Network is unreachable|Operation timed out|unable to access|No route to host"
        ),
        "{remote} cannot be reached",
        "see whether the internet is there, then publish again",
    ),
    (
        _of(r"does not appear to be a git repository|No such file or directory"),
        "there is no repository where {remote} should be",
        "see whether {url} is right and there; if it moved: git remote set-url {remote} ADDRESS",
    ),
    (
        _of(r"No space left on device|disk quota|insufficient (disk )?space"),
        "there is no room left on a disk",
        "make room here, or ask whoever runs {remote}; then publish again",
    ),
    (
        _of(r"hung up|early EOF|unexpected disconnect|broken pipe|index-pack|unpack"),
        "the line to {remote} was cut midway",
        "publish again once it is back",
    ),
)
"""In order; the first that fits. Words of git 2.39 and of what its helpers say."""

_REFUSED: tuple[Meant, ...] = (
    (
        _of(r"GH001|exceeds .*file size limit|larger than|too large"),
        "{remote} refuses a file for its size",
        "make it smaller or name it elsewhere; `git reset {has}` takes your commit back and changes no file",
    ),
    (
        _of(r"protected branch|GH006|not allowed to push|refusing to update|cannot be updated"),
        "{remote} lets nobody push to `{branch}` directly",
        "push it under another name and ask for it to be taken in: git push {remote} HEAD:refs/heads/from-me, then open a request at your forge",
    ),
    (
        _of(r"\[rejected\]|non-fast-forward|fetch first|stale info|cannot lock ref"),
        "somebody else pushed to {remote} in the meantime",
        "publish again: what they did is brought in first, and you are asked",
    ),
    (
        _of(r"pre-receive hook declined|hook declined|\[remote rejected\]"),
        "{remote} does not take this push",
        "do what it says, or ask whoever runs it; then publish again",
    ),
)


def refuse_failed_line(said: str, remote: str, url: str) -> NoReturn:
    """Stop, for a remote could not be asked; nothing was changed.

    Raises:
        NotPublishedError: with what it means.
    """
    what, hint = _meaning(_LINE, said, {"remote": remote, "url": url or "its address"})
    raise NotPublishedError(f"{what}, and nothing was changed", hint, words=said)


def refuse_failed_push(said: str, remote: str, branch: str, has: str, url: str) -> NoReturn:
    """Stop, for a push did not go through; the commit stays.

    Raises:
        NotPublishedError: with what it means.
    """
    names = {"remote": remote, "branch": branch, "has": has[:12] or "HEAD~1", "url": url}
    what, hint = _meaning((*_REFUSED, *_LINE), said, names)
    kept = "your commit is kept here, and `publish` pushes it on without a second one"
    raise NotPublishedError(f"{what}; {kept}", hint, words=said)


def _meaning(table: tuple[Meant, ...], said: str, names: dict[str, str]) -> tuple[str, str]:
    for words, what, hint in table:
        if words.search(said):
            return what.format(**names), hint.format(**names)
    what = "{remote} does not answer as expected".format(**names)
    return what, "see what it says, then publish again"
