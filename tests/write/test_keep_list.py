"""The list to keep a lesson by: true sizes, hashes that follow the content, a front page that makes nothing out of date."""

from __future__ import annotations

import json
from hashlib import sha256

import pytest

from generator.write.keep_list import keep_list

OWN = {"es/soup/index.html": b"<p>Sopa", "soup/soup.mp4": b"film", "assets/screen.css": b"h1{}"}
WAY_IN = (("es/index.html", 0), ("assets/home.css", 12))


def listed(
    own: dict[str, bytes], way_in: tuple[tuple[str, int], ...] = WAY_IN
) -> dict[str, object]:
    read = json.loads(keep_list("es/soup", "Sopa", own, way_in))
    assert isinstance(read, dict)
    return read


def test_every_file_is_there_with_its_size_and_what_it_holds() -> None:
    """The hashes are the first 8 bytes of SHA-256 (FIPS 180-4), by Python's own."""
    files = listed(OWN)["files"]
    film = sha256(b"film").hexdigest()[:16]
    assert isinstance(files, list)
    assert {"path": "../../soup/soup.mp4", "bytes": 4, "hash": film} in files
    assert [file["path"] for file in files] == [
        "../../assets/screen.css",
        "index.html",
        "../../soup/soup.mp4",
        "../index.html",
        "../../assets/home.css",
    ]


def test_it_stays_the_same_while_nothing_changes() -> None:
    assert listed(OWN) == listed(dict(reversed(OWN.items())))


@pytest.mark.parametrize("path", OWN)
def test_its_version_follows_every_file(path: str) -> None:
    assert listed({**OWN, path: OWN[path] + b" "})["version"] != listed(OWN)["version"]


def test_a_front_page_that_changes_makes_no_copy_out_of_date() -> None:
    changed = listed(OWN, (("es/index.html", 0), ("assets/home.css", 13)))
    assert changed["version"] == listed(OWN)["version"]
    assert {"path": "../index.html", "bytes": 0, "hash": ""} in listed(OWN)["files"]  # type: ignore[operator]  # a list, from JSON


def test_what_is_large_and_can_be_done_without_is_listed_apart() -> None:
    both = json.loads(keep_list("es/soup", "Sopa", OWN, WAY_IN, frozenset({"assets/screen.css"})))
    all_in_one = listed(OWN)
    assert [file["path"] for file in both["extra"]] == ["../../assets/screen.css"]
    assert both["files"] == all_in_one["files"][1:]  # type: ignore[index]  # a list, from JSON
    assert both["version"] == all_in_one["version"], "a new one of it makes a copy out of date"
