"""Which files a publication commits: what the site is made of, and nothing that only lies beside it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from generator.publish.git import Git
from generator.publish.refused import NotPublishedError

_PROGRAM = (".github", "generator", "theme", "tests", "bench")
"""Folders of the program and of its forge."""
_AT_ROOT = {
    *("mkdocs.yml", "README.md", "LICENSE", "CHANGELOG.md", "DEVELOPERS.md", "CODEOWNERS"),
    *(".gitignore", ".gitattributes", ".gitlab-ci.yml", "pyproject.toml"),
    *("requirements.lock", "requirements-test.lock"),
}
_DATA = {".yaml", ".json", ".jsonl"}
_GUIDE = ("lessons", "guide")
MADE = ("site/", ".cache/", "part-", "report/")
"""What the program makes; no publication commits it, also where somebody once did."""
_NEW = "??"
_UNTRACKED = "D "
"""As ``git status`` writes it: a file git does not know; one that it is to know no more."""


@dataclass(frozen=True, slots=True)
class Changed:
    """What is in the folder and not in the last commit."""

    taken: tuple[str, ...]
    """Paths that go into the commit: changed, gone, or new and part of the site."""
    untracked: frozenset[str]
    """Those of them that git was told to forget (``git rm``), also where the file stays: staged, and not to be added again."""
    left: tuple[str, ...]
    """New files that nothing of the site names: they stay on this machine."""


def changed_files(git: Git, site: Path) -> Changed:
    """Part what has changed since the last commit.

    What git was told of by hand (``git add``) is meant to be there. A new file nobody added goes
    out only where the site needs it: a list of names beside a lesson must never follow by itself.

    Args:
        git: in the folder of the site.
        site: the built site, which says what is published.

    Raises:
        NotPublishedError: a file was staged as it is neither in the last commit nor in the folder.
    """
    entries = [one for one in _entries(git) if not one[1].startswith(MADE)]
    if halves := [path for mark, path in entries if mark != _NEW and " " not in mark]:
        raise _half_staged(halves)
    gone = {path for mark, path in entries if mark == _UNTRACKED}
    new = [path for mark, path in entries if mark == _NEW and path not in gone]
    taken = [path for mark, path in entries if mark != _NEW]
    taken += [path for path in new if _of_the_site(path, site)]
    left = [path for path in new if not _of_the_site(path, site)]
    return Changed(tuple(sorted(taken)), frozenset(gone), tuple(sorted(left)))


def refuse_staged_elsewhere(git: Git) -> None:
    """Stop where something outside of the site's folder is staged, for it would go along.

    Raises:
        NotPublishedError: the site is a folder of a larger repository, and that is so.
    """
    prefix = git.told("rev-parse", "--show-prefix").strip()
    if not prefix:
        return
    staged = git.paths("diff", "--cached", "--name-only", "--no-relative", "-z")
    if other := [path for path in staged if not path.startswith(prefix)]:
        what = f"{', '.join(other[:5])}, outside of the site's folder, is staged and would go along"
        hint = "commit that first, or `git restore --staged` it; then publish again"
        raise NotPublishedError(what, hint)


def _entries(git: Git) -> list[tuple[str, str]]:
    """The two letters of ``git status`` and the path, a file that was moved as one gone and one new."""
    prefix = git.told("rev-parse", "--show-prefix").strip()
    words = ("status", "--porcelain=v1", "-z", "--no-renames", "--untracked-files=all", "--", ".")
    return [(one[:2], one[3:].removeprefix(prefix)) for one in git.paths(*words)]


def _half_staged(paths: list[str]) -> NotPublishedError:
    named = ", ".join(paths[:5])
    what = (
        f"{named} was staged (`git add`) and changed again since: one of two versions would be lost"
    )
    hint = "`git add` takes it as it is now, `git restore --staged` forgets the earlier one; then publish again"
    return NotPublishedError(what, hint)


def _of_the_site(path: str, site: Path) -> bool:
    """Whether a new file is part of what the site is made of."""
    name = PurePosixPath(path)
    match name.parts:
        case ("lessons", *_):
            return _of_lessons(name, site)
        case ("site_data", *_):
            return name.suffix in _DATA
        case (top, _, *_):
            return top in _PROGRAM
        case _:
            return path in _AT_ROOT


def _of_lessons(name: PurePosixPath, site: Path) -> bool:
    """A definition, a page of the guide, or a file that is published under the same name."""
    inside = name.relative_to("lessons")
    if name.suffix == ".yaml" or name.parts[:2] == _GUIDE:
        return True
    published = inside.with_suffix(".html") if name.suffix == ".md" else inside
    return (site / published).is_file()


def ignored_yet_named(git: Git, site: Path) -> tuple[str, ...]:
    """Files the site is made of that git was told to leave out, so that no forge would have them."""
    words = ("ls-files", "--others", "--ignored", "--exclude-standard", "-z", "--")
    found = git.paths(*words, "lessons", "site_data", "mkdocs.yml")
    return tuple(path for path in found if not _of_an_editor(path) and _of_the_site(path, site))


def _of_an_editor(path: str) -> bool:
    return path.endswith("~") or PurePosixPath(path).name.startswith(".")
