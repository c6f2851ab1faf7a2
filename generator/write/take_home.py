"""One file with a whole lesson in it, to carry home and open without a network."""

from __future__ import annotations

import os
import shutil
from datetime import UTC, datetime
from pathlib import Path
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile, ZipInfo

from generator.present.pages.take_home import Copy, copied_page
from generator.write.lesson_files import lesson_files

_PACKED = {".mp4", ".webm", ".jpg", ".png", ".webp"}
"""Kinds that are small already."""
_EARLIEST = 315_532_800
"""1 January 1980 in seconds since 1970: a zip file knows no earlier time."""
_READABLE = 0o644 << 16
_BY_NETWORK_ONLY = ("plotly-basic.min.js", "plotly-basic.LICENSE.txt", ".chart.json")
"""The chart to explore needs data that no browser fetches from a folder."""


def write_take_home(site: Path, folder: str, name: str, address: str) -> Path:
    """Write the copy into the lesson's folder; the same bytes wherever and whenever it is made.

    Args:
        site: folder of the finished site.
        folder: of the lesson on the site: ``es/river-walk``.
        name: of the file; the folder inside is called like the lesson.
        address: of the published site; empty where it has none.
    """
    files = [path for path in lesson_files(site, folder) if not path.endswith(_BY_NETWORK_ONLY)]
    copy = Copy(
        names={path: _name(path) for path in files},
        captions={path: (site / path).read_bytes() for path in files if path.endswith(".vtt")},
        address=address,
    )
    target = site / folder / name
    with ZipFile(target, "w") as packed:
        for path in files:
            _add(packed, site / path, f"{Path(folder).name}/{copy.names[path]}", path, copy)
    return target


def _name(path: str) -> str:
    """Where a file lies in the copy: what all lessons share in ``assets``, all else beside the page."""
    return path if path.startswith("assets/") else path.rpartition("/")[2]


def _add(packed: ZipFile, file: Path, inside: str, path: str, copy: Copy) -> None:
    entry = ZipInfo(inside, _time())
    entry.external_attr = _READABLE
    entry.create_system = 3  # Unix, whatever machine this is
    entry.compress_type = ZIP_STORED if file.suffix in _PACKED else ZIP_DEFLATED
    if file.suffix == ".html":
        packed.writestr(entry, copied_page(file.read_text("utf-8"), path, copy))
        return
    entry.file_size = file.stat().st_size
    with file.open("rb") as content, packed.open(entry, "w") as out:
        shutil.copyfileobj(content, out)


def _time() -> tuple[int, int, int, int, int, int]:
    """The time of every entry: the build's own where it is told, else the earliest there is."""
    told = int(os.environ.get("SOURCE_DATE_EPOCH") or _EARLIEST)
    when = datetime.fromtimestamp(max(told, _EARLIEST), UTC)
    return when.year, when.month, when.day, when.hour, when.minute, when.second
