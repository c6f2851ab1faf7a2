"""Files that a forge does not take, found before a push is refused for them."""

from __future__ import annotations

from collections.abc import Iterable

from generator.publish.git import Git
from generator.publish.refused import NotPublishedError

LARGEST = 100 * 1024 * 1024
"""Bytes of one file that forges take at most (100 MB at GitHub; from memory)."""
_MB = 1024 * 1024
_ELSEWHERE = "make it smaller (`python3 generator video`), or put it on another host and name it under `video: {elsewhere: …}`"


def refuse_large(git: Git, paths: Iterable[str]) -> None:
    """Stop before a file is committed that could never be pushed.

    Args:
        git: in the folder of the site.
        paths: what is about to be committed.

    Raises:
        NotPublishedError: one is over the forge's limit and not kept by git's LFS.
    """
    sizes = {path: (git.root / path).stat().st_size for path in paths if _is_file(git, path)}
    large = [path for path, size in sizes.items() if size > LARGEST]
    over = [path for path in large if path not in _by_lfs(git, large)]
    if over:
        what = f"{over[0]} has {sizes[over[0]] // _MB} MB, and forges refuse files over {LARGEST // _MB} MB"
        hint = f"{_ELSEWHERE}, or keep films by git's LFS (`git lfs track`, where your forge has it); nothing was committed"
        raise NotPublishedError(what, hint)


def refuse_large_commits(git: Git, remote_has: str) -> None:
    """Stop where a commit of before, not pushed yet, holds such a file.

    Args:
        git: in the folder of the site.
        remote_has: the commit up to which the remote has everything; nothing where it has none.

    Raises:
        NotPublishedError: it does, and would be refused with all that came after it.
    """
    if not git.run("rev-parse", "-q", "--verify", "HEAD").well:
        return
    new = ("HEAD", f"^{remote_has}") if remote_has else ("HEAD",)
    names: dict[str, str] = {}
    for line in git.told("rev-list", "--objects", *new).splitlines():
        name, _, path = line.partition(" ")
        names[name] = path
    asked = "".join(f"{name}\n" for name in names)
    told = git.told("cat-file", "--batch-check=%(objectsize) %(objectname)", given=asked)
    for line in told.splitlines():
        size, _, name = line.partition(" ")
        if size.isdigit() and int(size) > LARGEST and names[name]:
            raise _in_a_commit(names[name], int(size), remote_has)


def _in_a_commit(path: str, size: int, remote_has: str) -> NotPublishedError:
    what = f"{path}, {size // _MB} MB large, is in a commit that was not pushed yet, and forges refuse files over {LARGEST // _MB} MB, also where it was deleted since"
    back = f"git reset {remote_has[:12]}" if remote_has else "git update-ref -d HEAD"
    hint = f"{_ELSEWHERE}; then `{back}`, which changes no file, takes those commits back, and publish makes them anew without it"
    return NotPublishedError(what, hint)


def _is_file(git: Git, path: str) -> bool:
    file = git.root / path
    return file.is_file() and not file.is_symlink()


def _by_lfs(git: Git, paths: list[str]) -> set[str]:
    """Those that git keeps as a short note, the file itself elsewhere."""
    if not paths:
        return set()
    told = git.paths("check-attr", "-z", "filter", "--", *paths)
    return {path for path, _, kept in zip(*[iter(told)] * 3, strict=True) if kept == "lfs"}
