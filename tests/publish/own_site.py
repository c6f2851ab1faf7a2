"""A small site of somebody's own in a repository, with a real bare remote beside it, and `publish` run in it."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.site_project import copy_project, small_lesson, write_lesson

OF_NOBODY = {
    "GIT_CONFIG_GLOBAL": os.devnull,
    "GIT_CONFIG_SYSTEM": os.devnull,
    "GIT_CONFIG_NOSYSTEM": "1",
}
"""What git knows of the machine and of who tests: nothing."""


@dataclass(frozen=True)
class OwnSite:
    """The site, and where it is pushed to."""

    root: Path
    remote: Path

    def publish(self, *words: str, answer: str = "y\n") -> Result:
        """`publish` in the site, with what is answered to its questions."""
        return CliRunner().invoke(
            commands, ["publish", "--root", str(self.root), *words], input=answer
        )

    def git(self, *words: str, given: str | None = None) -> str:
        """What git says in the site; fails where it does not go well."""
        return git(self.root, *words, given=given)

    def there(self, *words: str) -> str:
        """What git says in the remote."""
        return git(self.remote, *words)

    def write(self, path: str, text: str) -> Path:
        """Write a file of the site."""
        file = self.root / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
        return file

    def change(self, old: str = "A small lesson", new: str = "A lesson of soup") -> None:
        """Change a word of the lesson."""
        file = self.root / "lessons/soup/lesson.yaml"
        text = file.read_text("utf-8")
        assert old in text
        file.write_text(text.replace(old, new), "utf-8")

    def commits(self) -> list[str]:
        """The subjects of the remote's commits, the newest first."""
        return self.there("log", "--format=%s", "main").splitlines()

    def colleague(self, path: str, text: str, folder: Path) -> None:
        """Somebody else writes a file and pushes it."""
        git(folder.parent, "clone", "-q", str(self.remote), str(folder))
        name_self(folder, "Ana")
        file = folder / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
        git(folder, "add", "-A")
        git(folder, "commit", "-q", "-m", f"Write {path}")
        git(folder, "push", "-q")


def git(folder: Path, *words: str, given: str | None = None) -> str:
    done = subprocess.run(
        ["git", *words],
        cwd=folder, env=os.environ | OF_NOBODY, input=given,
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert not done.returncode, done.stderr
    return done.stdout.strip()


def name_self(folder: Path, name: str = "Mara") -> None:
    git(folder, "config", "user.name", name)
    git(folder, "config", "user.email", f"{name.lower()}@example.org")


@cache
def _begun() -> Path:
    """A site with one lesson, one commit and a remote that has it, made once for all tests of a process."""
    folder = Path(mkdtemp(prefix="plumline-publish-"))
    root = copy_project(folder / "site", lessons=False)
    _only_english(root)
    write_lesson(root, "soup", small_lesson())
    shutil.copy(Path(__file__).parents[2] / "generator/starter/gitignore", root / ".gitignore")
    shutil.copy(
        Path(__file__).parents[2] / "generator/starter/gitattributes", root / ".gitattributes"
    )
    (root / ".github/workflows").mkdir(parents=True)
    shutil.copy(
        Path(__file__).parents[2] / ".github/workflows/publish.yml", root / ".github/workflows"
    )
    git(folder, "init", "-q", "--bare", "--initial-branch=main", "remote.git")
    git(root, "init", "-q", "--initial-branch=main")
    name_self(root)
    git(root, "remote", "add", "origin", "../remote.git")
    git(root, "add", "-A")
    git(root, "commit", "-q", "-m", "Begin the site")
    git(root, "push", "-q", "-u", "origin", "main")
    return folder


def _only_english(root: Path) -> None:
    file = root / "site_data/site.yaml"
    lines = file.read_text("utf-8").splitlines()
    kept = [one for one in lines if not one.startswith(("languages:", "programme_in:"))]
    file.write_text("\n".join([*kept, "languages: [en]", ""]), "utf-8")


def own_site(
    folder: Path, patch: pytest.MonkeyPatch, said: Mapping[str, str] = OF_NOBODY
) -> OwnSite:
    """A copy of it for one test, in which git knows nothing of the machine."""
    for name, value in said.items():
        patch.setenv(name, value)
    shutil.copytree(_begun(), folder / "own", symlinks=True)
    return OwnSite(folder / "own/site", folder / "own/remote.git")
