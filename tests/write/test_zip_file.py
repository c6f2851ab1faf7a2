"""Zip files of our own making, held against Python's own reader and Info-ZIP's rules for names."""

from __future__ import annotations

from io import BytesIO
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile

from generator.write.zip_file import deflated, deflated_once, stored, zip_file

FILES = {"soup/índice.html": b"<p>Sopa" * 100, "soup/soup.mp4": b"film", "soup/empty.txt": b""}
ENTRIES = [
    ("soup/índice.html", deflated(FILES["soup/índice.html"])),
    ("soup/soup.mp4", stored(FILES["soup/soup.mp4"])),
    ("soup/empty.txt", deflated(b"")),
]


def test_every_file_is_read_back_whole() -> None:
    """`testzip` reads every file and holds it against its CRC-32."""
    with ZipFile(BytesIO(bytes(zip_file(ENTRIES)))) as packed:
        assert packed.testzip() is None
        assert {name: packed.read(name) for name in packed.namelist()} == FILES
        assert packed.namelist() == [name for name, _ in ENTRIES]


def test_what_is_small_already_is_not_packed_again() -> None:
    with ZipFile(BytesIO(bytes(zip_file(ENTRIES)))) as packed:
        assert packed.getinfo("soup/soup.mp4").compress_type == ZIP_STORED
        page = packed.getinfo("soup/índice.html")
        assert page.compress_type == ZIP_DEFLATED
        assert page.compress_size < page.file_size


def test_every_file_is_of_the_earliest_day_and_for_all_to_read() -> None:
    """PKWARE APPNOTE.TXT 4.4.6: MS-DOS dates begin with 1 January 1980."""
    with ZipFile(BytesIO(bytes(zip_file(ENTRIES)))) as packed:
        assert {entry.date_time for entry in packed.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        assert {entry.external_attr >> 16 for entry in packed.infolist()} == {0o100644}


def test_what_is_shared_is_packed_once() -> None:
    content = b"h1{margin:0}" * 50
    assert deflated_once(content) is deflated_once(bytes(bytearray(content)))
    assert deflated_once(content) == deflated(content)
