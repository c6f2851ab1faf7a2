"""A file beside a lesson or a page as it is published: looked into, and without what it tells of people."""

from __future__ import annotations

import os
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import BinaryIO

from generator.media.avif import refuse_avif
from generator.media.content import Content, Kept, Part, UnfitError
from generator.media.film_parts import film_parts
from generator.media.gif import clean_gif
from generator.media.jpeg import clean_jpeg
from generator.media.png import clean_png
from generator.media.svg import clean_svg
from generator.media.webm import webm_parts
from generator.media.webp import clean_webp
from generator.model.personal import Personal

_Clean = Callable[[bytes], tuple[bytes, set[Personal]]]
_CLEANED: Mapping[str, _Clean] = {
    ".gif": clean_gif,
    ".jpeg": clean_jpeg,
    ".jpg": clean_jpeg,
    ".png": clean_png,
    ".svg": clean_svg,
    ".webp": clean_webp,
}
_Parts = Callable[[BinaryIO, int], tuple[tuple[Part, ...], frozenset[Personal]]]
_FILMS: Mapping[str, _Parts] = {".m4a": film_parts, ".mp4": film_parts, ".webm": webm_parts}
_LARGEST = 30_000_000
"""Bytes of a picture; one from a camera has a third of it."""


def published(file: Path) -> Content:
    """What goes out of a file.

    Raises:
        UnfitError: it is not what its name says, or is damaged.
        OSError: it cannot be read.
    """
    ending = file.suffix.lower()
    size = file.stat().st_size
    if parts := _FILMS.get(ending):
        with file.open("rb") as film:
            return Content(file, *parts(film, size))
    if ending not in _CLEANED and ending != ".avif":
        return Content(file, (Kept(0, size),))
    if size > _LARGEST:
        raise UnfitError(
            f"is far too large for a picture: it can have {_LARGEST // 1_000_000} MB",
            "save it smaller, at most 2,000 pixels wide",
        )
    data = file.read_bytes()
    if ending == ".avif":
        refuse_avif(data)
        return Content(file, (Kept(0, size),))
    kept, told = _CLEANED[ending](data)
    return Content(file, (kept,), frozenset(told))


def checked(file: Path) -> Content:
    """What goes out of a file that was looked into before.

    Raises:
        OSError: it cannot be read, or somebody has just changed it.
    """
    try:
        return published(file)
    except UnfitError as error:
        raise OSError(5, f"the file {error.what}", os.fspath(file)) from error


def publish(source: Path, target: Path) -> None:
    """Write what goes out of a file; the file itself stays as it is.

    Raises:
        OSError: it cannot be read any more as it was checked, or not be written.
    """
    content = checked(source)
    with target.open("wb") as file:
        file.writelines(content.pieces())
