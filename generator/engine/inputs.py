"""Everything a site is made from, as checksums, parted by what depends on it."""

from __future__ import annotations

import os
import platform
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from zlib import crc32

from generator import carried
from generator.engine.contents import Contents, combined
from generator.engine.installed import installed
from generator.engine.versions import versions
from generator.model.published import PUBLISHED
from generator.problems import Place
from generator.read.draft import draft_place
from generator.read.lesson_head import head_text

_PROGRAM = Path(__file__).parents[1]
LESSON = "lesson.yaml"
OWN_HEAD = ""
"""Stands for the lesson file itself among the heads of a lesson."""
_LESSON_FILE = re.compile(r"lessons/(?P<lesson>[^/]+)/lesson(?:\.(?P<language>[^/]+))?\.yaml")
"""A lesson file, or one of its translations."""

_RECORD = re.compile(rf"{PUBLISHED}/(?:lessons/(?P<lesson>[^/]+)\.jsonl|.*)")
"""The record of publications: each lesson is made of its own, and of no other."""


@dataclass(frozen=True, slots=True)
class Inputs:
    """What the files of a site hold; nothing in it depends on where they lie or when they were written."""

    program: str
    """Our code, what it brings along and lies below the site's own, Python, the libraries and the lock file."""
    theme: str
    words: str
    """Who makes the site, and the interface texts."""
    library: str
    """All of ``site_data/`` but the record of publications."""
    lessons: Mapping[str, str] = field(repr=False)
    """By folder of a lesson: its name, everything that lies in it, and what was published of it. Drafts only for a preview."""
    records: Mapping[str, str] = field(repr=False)
    """By name of a lesson, also of one that has another name now: what was published of it."""
    heads: Mapping[str, Mapping[str, str]] = field(repr=False)
    """By folder of a lesson: the top of its file, and of each translation by its language."""
    drafts: Mapping[str, Place] = field(repr=False)
    """By folder of a lesson that is a draft: where it says so."""
    by_hand: Mapping[str, str] = field(repr=False)
    """By path below ``lessons/``: every other file, and what lies beside a lesson and is no YAML."""
    settings: str
    """``mkdocs.yml`` and what it names."""


def inputs_of(root: Path, contents: Contents, *, preview: bool = False) -> Inputs:
    """The checksums of a site's files, most of them remembered.

    Args:
        root: folder of the site.
        contents: of its files.
        preview: whether drafts are lessons like others.
    """
    files = [path for path in contents.marks if not path.endswith("/")]
    here = os.path.abspath(root)  # noqa: PTH100  # as the marks have it
    own = {name: path for name, path in _below(here, files) if not name.startswith(".git/")}
    parts: dict[str, dict[str, str]] = {"lessons": {}, "site_data": {}, "theme": {}, "": {}}
    records: dict[str, str] = {}
    for name, path in own.items():
        if recorded := _RECORD.fullmatch(name):
            if recorded["lesson"]:
                records[recorded["lesson"]] = contents[path]
            continue
        top, _, rest = name.partition("/")
        parts[top if top in parts and rest else ""][rest or name] = contents[path]
    words = {name: held for name, held in parts["site_data"].items() if _is_words(name)}
    lessons, by_hand = _parted(parts["lessons"], records)
    drafts = dict(_drafts(root, lessons, contents))
    made = {name: sum_ for name, sum_ in lessons.items() if preview or name not in drafts}
    return Inputs(
        program=_program(here, files, contents, parts[""].get("requirements.lock", "")),
        theme=combined(parts["theme"]),
        words=combined(words),
        library=combined(parts["site_data"]),
        lessons=made,
        records=records,
        heads=_heads(root, made, own, contents),
        drafts=drafts,
        by_hand=by_hand,
        settings=combined(parts[""]),
    )


def _drafts(root: Path, names: Iterable[str], contents: Contents) -> Iterator[tuple[str, Place]]:
    """The lessons that say they are drafts; a file is asked again when it is another one."""
    for name in names:
        path = f"lessons/{name}/{LESSON}"
        file = os.path.join(os.path.abspath(root), path.replace("/", os.sep))  # noqa: PTH100, PTH118  # as the marks have it
        place = contents.word(f"draft:{file}", contents.marks[file], partial(_draft, root, path))
        if place:
            line, _, column = place.partition(":")
            yield name, Place(path, int(line), int(column))


def _heads(
    root: Path, lessons: Iterable[str], own: Mapping[str, str], contents: Contents
) -> dict[str, dict[str, str]]:
    """The tops of all lessons' files; each is read again when it is another one."""
    found: dict[str, dict[str, str]] = {name: {} for name in lessons}
    for path, file in own.items():
        named = _LESSON_FILE.fullmatch(path)
        if named and named["lesson"] in found:
            head = contents.word(
                f"head:{file}", contents.marks[file], partial(head_text, root, path)
            )
            found[named["lesson"]][named["language"] or OWN_HEAD] = head
    return found


def _draft(root: Path, path: str) -> str:
    """Line and column where a lesson says that it is a draft, or nothing."""
    place = draft_place(root, path)
    return f"{place.line}:{place.column}" if place else ""


def _program(here: str, files: list[str], contents: Contents, lock: str) -> str:
    code = {name: contents[path] for name, path in _below(str(_PROGRAM), files)}
    for folder in carried.beside(here):
        top = os.path.basename(folder)  # noqa: PTH119  # as the marks have it
        brought = ((f"{top}/{name}", path) for name, path in _below(folder, files))
        code |= {
            f"carried/{name}": contents[path]
            for name, path in brought
            if not _RECORD.fullmatch(name)
        }
    ours = str(Path(carried.HOME, "requirements.lock"))
    around = {
        "the lock": lock,
        "our lock": contents[ours] if ours in contents.marks else "",
        "python": platform.python_version(),
        "libraries": contents.word("libraries", crc32("".join(installed()).encode()), versions),
    }
    return combined(code | around)


def _below(folder: str, files: list[str]) -> Iterator[tuple[str, str]]:
    """The files in a folder, by their names below it with forward slashes."""
    above = folder + os.sep
    for path in files:
        if path.startswith(above):
            yield path[len(above) :].replace(os.sep, "/"), path


def _is_words(name: str) -> bool:
    return name == "site.yaml" or name.startswith("words/")


def _parted(
    held: Mapping[str, str], records: Mapping[str, str]
) -> tuple[dict[str, str], dict[str, str]]:
    """The files below ``lessons/``: by lesson, and those written by hand."""
    folders = {
        name.partition("/")[0]
        for name in held
        if name.endswith(f"/{LESSON}") and name.count("/") == 1 and not name.startswith(".")
    }
    of: dict[str, dict[str, str]] = {folder: {} for folder in sorted(folders)}
    by_hand: dict[str, str] = {}
    for name, sum_ in held.items():
        folder, _, rest = name.partition("/")
        if folder in of and rest:
            of[folder][rest] = sum_
            if rest.endswith(".yaml"):
                continue
        by_hand[name] = sum_
    # A lesson's name is its address: two with the same files are two.
    owns = {folder: {**files, "": folder} for folder, files in of.items()}
    for folder, sum_ in records.items():
        if folder in owns:
            owns[folder]["../published"] = sum_
    return {folder: combined(own) for folder, own in owns.items()}, by_hand
