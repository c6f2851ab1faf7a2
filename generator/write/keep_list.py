"""The list by which a page keeps its lesson for where there is no network."""

from __future__ import annotations

import json
from hashlib import blake2b, file_digest
from pathlib import Path
from posixpath import relpath

from generator.write.lesson_files import lesson_files, named_files

NAME = "keep.json"


def write_keep_list(site: Path, folder: str, home: str, title: str) -> Path:
    """Write the list into the lesson's folder: each file with its bytes and what it holds, as a hash.

    The front page is a way in where there is no network. It changes with every other lesson, so
    it has no hash and makes no copy out of date.

    Args:
        site: folder of the finished site.
        folder: of the lesson on the site: ``es/river-walk``.
        home: the front page of its language, from the site's root.
        title: of the lesson.
    """
    own = {path: _hash(site / path) for path in lesson_files(site, folder)}
    way_in = {path: "" for path in named_files(site, home) if path not in own}
    files = [
        {"path": relpath(path, folder), "bytes": (site / path).stat().st_size, "hash": held}
        for path, held in {**own, **way_in}.items()
    ]
    version = blake2b(
        "".join(f"{path} {held}\n" for path, held in own.items()).encode(), digest_size=8
    )
    listed = {"title": title, "version": version.hexdigest(), "files": files}
    file = site / folder / NAME
    file.write_text(json.dumps(listed, ensure_ascii=False, separators=(",", ":")), "utf-8")
    return file


def _hash(file: Path) -> str:
    with file.open("rb") as content:
        return file_digest(content, lambda: blake2b(digest_size=8)).hexdigest()
