"""The record of a film is written whole, or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.write.recorded import write_recorded


def test_it_takes_the_place_of_an_older_record(tmp_path: Path) -> None:
    write_recorded(tmp_path, "old\n")
    assert write_recorded(tmp_path, "new\n").read_bytes() == b"new\n"
    assert [file.name for file in tmp_path.iterdir()] == ["recorded.yaml"]


def test_a_disk_that_is_full_leaves_the_older_record(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = write_recorded(tmp_path, "old\n")

    def full(*_: object, **__: object) -> int:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "write_text", full)
    with pytest.raises(OSError, match="No space left"):
        write_recorded(tmp_path, "new\n")
    assert file.read_bytes() == b"old\n"
