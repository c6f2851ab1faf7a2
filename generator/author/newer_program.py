"""A newer program as it is handed over: one file, looked into before anything of it is run."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path
from zipfile import BadZipFile, ZipFile

from generator.author.program_file import built_from
from generator.author.rewriting import version
from generator.problems import LessonError, Place, Problem

_NAME = re.compile(r"plumline-(?P<version>\d+(?:\.\d+)*)-py3-none-any\.whl")
_CARRIED = "generator/carried_files/"
_LARGEST = 20_000_000
"""Bytes of one text in it; the longest has a hundredth."""


@dataclass(frozen=True, slots=True)
class NewerProgram:
    """A program to move to."""

    file: Path
    version: str
    changelog: str
    lock: str
    """Of its libraries, exact versions with hashes."""
    set_up: str
    """What sets it up: the file that is started."""


def newer_program(given: Path, folder: Path, now: str) -> NewerProgram:
    """Take what is handed over: a wheel, or a folder with the program's repository.

    Args:
        given: the file or folder.
        folder: where a wheel is made of a repository.
        now: version of the program there is.

    Raises:
        LessonError: it is none, or not newer.
    """
    file = built_from(given, folder) if given.is_dir() and (given / "generator").is_dir() else given
    found = _NAME.fullmatch(file.name)
    if not found or not file.is_file():
        raise _none(given)
    if version(found["version"]) <= version(now):
        which = "the one you have" if found["version"] == now else f"older than yours, {now}"
        what = f"this program is {found['version']}, {which}"
        raise LessonError([Problem(Place(str(given)), what, "to go back, use `update --back`")])
    try:
        with ZipFile(file) as wheel:
            changelog, lock, set_up = (
                _text(wheel, name)
                for name in (
                    f"{_CARRIED}CHANGELOG.md",
                    f"{_CARRIED}requirements.lock",
                    "generator/__main__.py",
                )
            )
    except (BadZipFile, KeyError, ValueError, OSError):
        raise _none(given) from None
    return NewerProgram(file, found["version"], changelog, lock, set_up)


def version_in(folder: Path) -> str:
    """The version of the program in a folder; nothing where there is none."""
    found = [one["version"] for file in folder.glob("*.whl") if (one := _NAME.fullmatch(file.name))]
    return found[0] if len(found) == 1 else ""


def _text(wheel: ZipFile, name: str) -> str:
    if wheel.getinfo(name).file_size > _LARGEST:
        raise ValueError(name)
    return wheel.read(name).decode("utf-8")


def _none(given: Path) -> LessonError:
    what = "this is no program of Plumline's"
    hint = "hand over the file of a release, `plumline-….whl` as it was named, or a folder with the program's repository"
    return LessonError([Problem(Place(str(given)), what, hint)])
