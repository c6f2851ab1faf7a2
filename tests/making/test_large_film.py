"""A lesson with a large film: from its folder to the site and into the copy, never in memory as a whole."""

from __future__ import annotations

import struct
import tracemalloc
from hashlib import sha256
from pathlib import Path
from zipfile import ZipFile

from generator.engine.pack import write_pack
from generator.making import make_lesson
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from generator.write.fill import Piece, Unpacker
from tests.media_files import PICTURE, START, box, film, head
from tests.project import GOOD, put
from tests.site_project import copy_project

SIZE = 90_000_000
"""Bytes of pictures: more than all else of a lesson together."""


def large_film(file: Path) -> None:
    """A film whose pictures are a hole in the disk, with a place noted before them."""
    place = box(b"udta", box(b"\xa9xyz", b"+48.2082+016.3738/"))
    with file.open("wb") as held:
        held.write(START + box(b"moov", head(90) + PICTURE + place))
        held.write(struct.pack(">I4s", SIZE, b"mdat"))
        held.truncate(held.tell() - 8 + SIZE)


def test_it_is_read_bit_by_bit(tmp_path: Path) -> None:
    root = copy_project(tmp_path / "project", lessons=False)
    put(root, GOOD.replace("stops:", "video: {file: meal.mp4}\nstops:"))
    file = root / "lessons/meal/meal.mp4"
    file.write_bytes(film())
    library = read_library(root)
    around = surroundings(root, library)
    make_lesson(
        work_lesson(root, "lessons/meal/lesson.yaml", library).results, around
    )  # all is loaded
    large_film(file)
    tracemalloc.start()
    results = work_lesson(root, "lessons/meal/lesson.yaml", library).results
    outputs = make_lesson(results, around)
    pack = write_pack(tmp_path / "pack", {}, ((one.path, one.held) for one in outputs))
    out = tmp_path / "site"
    assert Unpacker(str(out))(Piece("meal", "key", pack, {"meal/meal.mp4": file})) == ""
    most = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert most < SIZE / 3, f"{most:,} bytes"
    with ZipFile(out / "meal/meal-take-home.zip") as packed, packed.open("meal/meal.mp4") as copied:
        carried = sha256(copied.read()).digest()
    shown = out / "meal/meal.mp4"
    assert sha256(shown.read_bytes()).digest() == carried
    assert shown.stat().st_size == file.stat().st_size
    assert b"+48.2082" not in shown.read_bytes()[:5_000]
