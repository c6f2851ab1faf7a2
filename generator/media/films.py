"""Films by the container that their names promise."""

from __future__ import annotations

from pathlib import Path

from generator.media.content import UnfitError
from generator.media.film import film_seconds, read_film
from generator.media.webm import read_webm
from generator.model.film import Film

FILM_ENDINGS = (".mp4", ".webm")
"""How the files of films end that browsers play."""
LARGEST = 4_000_000_000
"""Bytes; a zip file, in which a lesson is carried home, says no more than 4 GiB."""


def look(film: Path) -> Film:
    """What a film is.

    Raises:
        UnfitError: it is no film that browsers play.
        OSError: it cannot be read.
    """
    if film.stat().st_size > LARGEST:
        what = (
            f"is larger than {LARGEST // 1_000_000_000} GB, more than a copy to take home can hold"
        )
        raise UnfitError(what, "let `python3 generator video` make it smaller")
    with film.open("rb") as file:
        return read_webm(file) if film.suffix.lower() == ".webm" else read_film(file)


def seconds_of(film: Path) -> float | None:
    """Length of a film in seconds; nothing where it holds none or is damaged.

    Raises:
        OSError: it cannot be read.
    """
    if film.suffix.lower() == ".webm":
        try:
            return look(film).seconds
        except UnfitError:
            return None
    with film.open("rb") as file:
        return film_seconds(file)
