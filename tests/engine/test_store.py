"""What was made is found again under its key, and what is damaged is not."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from generator.engine.contents import write_record
from generator.engine.pack import KEPT, DamagedPackError, read_pack, write_pack
from generator.engine.store import Store

OUTPUTS = [("a/index.html", b"<p>one</p>" * 99), ("a/copy.zip", bytes(range(256))), ("b", b"")]


def test_a_pack_gives_back_what_was_put_in(tmp_path: Path) -> None:
    write_pack(tmp_path / "pack", {"title": "Soup", "stops": ["a", None]}, OUTPUTS)
    pack = read_pack(tmp_path / "pack")
    assert pack is not None
    assert pack.facts == {"title": "Soup", "stops": ["a", None]}
    assert [(entry.path, content) for entry, content in pack.contents()] == OUTPUTS
    assert [entry.size for entry in pack.entries] == [len(content) for _, content in OUTPUTS]
    assert [file.name for file in tmp_path.iterdir()] == ["pack"]


def test_every_damaged_byte_and_every_lost_end_is_noticed(tmp_path: Path) -> None:
    file = tmp_path / "pack"
    write_pack(file, {"n": 1}, OUTPUTS)
    whole = file.read_bytes()
    for at in range(0, len(whole), 3):
        for damaged in (whole[:at], whole[:at] + bytes([whole[at] ^ 1]) + whole[at + 1 :]):
            file.write_bytes(damaged)
            pack = read_pack(file)
            if pack is not None:
                with pytest.raises(DamagedPackError):
                    list(pack.contents())


def test_what_is_kept_and_not_published_is_found_by_its_path_alone(tmp_path: Path) -> None:
    pack = write_pack(tmp_path / "pack", {}, [OUTPUTS[0], (f"{KEPT}a.json", b"{}"), *OUTPUTS[1:]])
    assert [entry.path for entry in pack.published] == [path for path, _ in OUTPUTS]
    assert pack.held(f"{KEPT}a.json") == b"{}"
    assert [pack.held(path) for path, _ in OUTPUTS] == [content for _, content in OUTPUTS]
    with pytest.raises(DamagedPackError):
        pack.held("a/other.html")


def test_a_pack_that_goes_while_it_is_read(tmp_path: Path) -> None:
    pack = write_pack(tmp_path / "pack", {}, OUTPUTS)
    (tmp_path / "pack").unlink()
    with pytest.raises(DamagedPackError):
        list(pack.contents())


@pytest.mark.parametrize("content", [b"", b"plumline 1\n", b"another file\n" * 9])
def test_what_is_no_pack_is_nothing(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "pack").write_bytes(content)
    assert read_pack(tmp_path / "pack") is None
    assert read_pack(tmp_path / "missing") is None


def test_a_key_finds_its_own_pack(tmp_path: Path) -> None:
    store = Store(tmp_path)
    store.keep("aa1", {"n": 1}, OUTPUTS)
    store.keep("aa2", {"n": 2}, OUTPUTS)
    found = [store.find(key) for key in ("aa1", "aa2", "aa3")]
    assert [pack and pack.facts["n"] for pack in found] == [1, 2, None]
    store.drop("aa1")
    store.drop("aa1")
    assert store.find("aa1") is None


def test_orphans_go_but_for_the_newest(tmp_path: Path) -> None:
    store = Store(tmp_path)
    keys = [f"{number:02}x" for number in range(6)]
    for number, key in enumerate(keys):
        store.keep(key, {}, OUTPUTS)
        os.utime(tmp_path / key[:2] / key, (number, number))
    store.sweep(["00x"], spare=2)
    assert [key for key in keys if store.find(key)] == ["00x", "04x", "05x"]


def test_a_pack_made_elsewhere_is_taken_in_where_it_is_whole(tmp_path: Path) -> None:
    here, there = Store(tmp_path / "here"), Store(tmp_path / "there")
    pack = there.keep("ab1", {"n": 1}, OUTPUTS)
    assert here.take_in(pack.file)
    assert here.find("ab1") is not None
    pack.file.write_bytes(b"junk")
    assert not here.take_in(pack.file)
    assert here.find("ab1") is not None


def test_who_is_stopped_while_a_note_is_written_leaves_the_one_before(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def stopped(*_: object) -> None:
        raise KeyboardInterrupt

    note = tmp_path / "note.json"
    write_record(note, "whole")
    monkeypatch.setattr(Path, "replace", stopped)
    with pytest.raises(KeyboardInterrupt):
        write_record(note, "another")
    assert [file.name for file in tmp_path.iterdir()] == ["note.json"]
    assert note.read_text("utf-8") == "whole"
