"""The list by which a page keeps its lesson for where there is no network."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from functools import lru_cache
from hashlib import sha256

from generator.media.content import Content, size_of
from generator.present.addresses import seen_from


def keep_list(
    folder: str,
    title: str,
    own: Mapping[str, bytes | Content],
    way_in: Iterable[tuple[str, int]],
    extra: frozenset[str] = frozenset(),
) -> bytes:
    """Each file with its bytes and what it holds, as a hash.

    The front page is a way in where there is no network. It changes with every other lesson, so
    it has neither size nor hash here and makes no copy out of date.

    Args:
        folder: of the lesson on the site: ``es/river-walk``.
        title: of the lesson.
        own: what the lesson's files hold, by path from the site's root.
        way_in: path and bytes of the front page and of what it loads.
        extra: paths among its own of what is large and can be done without: kept when it is asked for.
    """
    held = {path: _hash(content) for path, content in sorted(own.items())}
    files = [(path, size_of(own[path]), hashed) for path, hashed in held.items()]
    files += [(path, size, "") for path, size in way_in if path not in own]
    version = "".join(f"{path} {hashed}\n" for path, hashed in held.items())
    listed = {
        "title": title,
        "version": file_hash(version.encode()),
        "files": [_listed(one, folder) for one in files if one[0] not in extra],
        "extra": [_listed(one, folder) for one in files if one[0] in extra],
    }
    return json.dumps(listed, ensure_ascii=False, separators=(",", ":")).encode()


def _listed(file: tuple[str, int, str], folder: str) -> dict[str, str | int]:
    path, size, hashed = file
    return {"path": seen_from(path, folder), "bytes": size, "hash": hashed}


@lru_cache(maxsize=512)  # most files of a lesson are those of every other
def file_hash(content: bytes) -> str:
    """What a file holds: the first sixteen signs of SHA-256 (FIPS 180-4), which a browser works out too."""
    return sha256(content).hexdigest()[:16]


def _hash(held: bytes | Content) -> str:
    """The same of a file that is in memory or not."""
    if isinstance(held, bytes):
        return file_hash(held)
    whole = sha256()
    for piece in held.pieces():
        whole.update(piece)
    return whole.hexdigest()[:16]
