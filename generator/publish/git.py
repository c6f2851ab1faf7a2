"""The program git, asked in a clean surrounding: text in, text out, no question, no editor, no pager."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from generator.publish.refused import NotPublishedError

_OF_ONE_REPOSITORY = (
    *("GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_PREFIX", "GIT_COMMON_DIR"),
    *("GIT_OBJECT_DIRECTORY", "GIT_ALTERNATE_OBJECT_DIRECTORIES", "GIT_NAMESPACE"),
    *("GIT_CONFIG", "GIT_CONFIG_PARAMETERS", "GIT_CONFIG_COUNT", "GIT_SHALLOW_FILE"),
)
"""Variables that lead git to another repository than the one asked about, as inside of a hook.

After ``git rev-parse --local-env-vars`` (git 2.39).
"""
_QUIET = {
    "LC_ALL": "C",  # its words are read, and must be the same everywhere
    "LANGUAGE": "",
    "GIT_TERMINAL_PROMPT": "0",  # a question for a password would wait for ever
    "GIT_PAGER": "cat",
    "GIT_EDITOR": "true",
    "GIT_SEQUENCE_EDITOR": "true",
    "GIT_MERGE_AUTOEDIT": "no",
    "GIT_OPTIONAL_LOCKS": "0",  # looking must not be in the way of another program
}
SSH = "ssh -oBatchMode=yes -oConnectTimeout=30"
"""Asks for no password either, and gives up where nobody answers."""


@dataclass(frozen=True, slots=True)
class Done:
    """What became of one call."""

    code: int
    """0 where it went well."""
    out: str
    err: str

    @property
    def well(self) -> bool:
        """Whether git did what it was asked."""
        return not self.code


@dataclass(frozen=True)
class Git:
    """git in one folder."""

    root: Path
    """Folder of the site; paths are told from there."""

    def run(self, *words: str, given: str = "", also: Mapping[str, str] | None = None) -> Done:
        """What git says to some words, whether it goes well or not.

        Args:
            words: behind ``git``.
            given: what it reads.
            also: further variables of its surrounding.

        Raises:
            NotPublishedError: git is not on this machine.
        """
        done = subprocess.run(
            [self._program, "-c", "core.quotePath=false", *words],
            cwd=self.root,
            env=self._surrounding | dict(also or {}),
            input=given.encode("utf-8", "surrogateescape"),
            capture_output=True,
            check=False,
        )
        return Done(done.returncode, _text(done.stdout), _text(done.stderr))

    def told(self, *words: str, given: str = "") -> str:
        """What git says to some words, without the last line end.

        Raises:
            NotPublishedError: it does not go well; the sentence has git's own words.
        """
        done = self.run(*words, given=given)
        if not done.well:
            what = f"`git {words[0]}` did not go well, and nothing was published"
            hint = "put right what it says, then publish again"
            raise NotPublishedError(what, hint, words=done.err or done.out)
        return done.out.removesuffix("\n")

    def says(self, *words: str) -> str:
        """What git says to some words; nothing where it does not go well."""
        done = self.run(*words)
        return done.out.removesuffix("\n") if done.well else ""

    def paths(self, *words: str, given: str = "") -> tuple[str, ...]:
        """The paths that git lists to some words, among them ``-z``."""
        return tuple(one for one in self.told(*words, given=given).split("\0") if one)

    @cached_property
    def _program(self) -> str:
        if found := shutil.which("git"):
            return found
        hint = "install it from git-scm.com or by your system's store, then say it again"
        raise NotPublishedError("git is not on this machine", hint)

    @cached_property
    def _surrounding(self) -> dict[str, str]:
        kept = {name: value for name, value in os.environ.items() if name not in _OF_ONE_REPOSITORY}
        own = "GIT_SSH_COMMAND" in kept or "GIT_SSH" in kept or self._own_ssh(kept)
        return kept | _QUIET | ({} if own else {"GIT_SSH_COMMAND": SSH})

    def _own_ssh(self, kept: dict[str, str]) -> bool:
        """Whether her settings name the program for ssh; then it is hers to be quiet."""
        asked = [self._program, "config", "core.sshCommand"]
        done = subprocess.run(asked, cwd=self.root, env=kept, capture_output=True, check=False)
        return not done.returncode


def _text(raw: bytes) -> str:
    """A name that is no UTF-8 keeps its bytes, so that git knows it again."""
    return raw.decode("utf-8", "surrogateescape").replace("\r\n", "\n")
