"""What was copied from elsewhere is what its maker published: each file has the checksum beside it."""

from __future__ import annotations

import re
from hashlib import sha256
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
LISTS = {
    "tests/vendor/README.md": "tests/vendor",
    "theme/vendor/plotly/VERSION": "theme/vendor/plotly",
    "theme/vendor/lean-qr/VERSION": "theme/vendor/lean-qr",
    "theme/vendor/noto-sans/VERSION": "theme/vendor/noto-sans",
}
NAMED = {
    f"{folder}/{name}": checksum
    for told, folder in LISTS.items()
    for line in (ROOT / told).read_text("utf-8").splitlines()
    for name in re.findall(r"[\w.-]+\.(?:js|ttf)\b", line)
    for checksum in re.findall(r"\b[0-9a-f]{64}\b", line)
}


def test_every_copied_file_is_named_with_a_checksum() -> None:
    there = {
        file.relative_to(ROOT).as_posix()
        for folder in ("tests/vendor", "theme/vendor")
        for kind in ("js", "ttf")
        for file in (ROOT / folder).rglob(f"*.{kind}")
    }
    assert there
    assert set(NAMED) == there


@pytest.mark.parametrize("file", NAMED)
def test_it_is_as_it_was_published(file: str) -> None:
    assert sha256((ROOT / file).read_bytes()).hexdigest() == NAMED[file]
