"""The list to keep a lesson by: true sizes, hashes that follow the content, a front page that makes nothing out of date."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from generator.write.keep_list import write_keep_list


@pytest.fixture
def site(built_site: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(built_site, tmp_path / "site"))


def listed(site: Path) -> dict[str, object]:
    file = write_keep_list(site, "river-walk", "index.html", "River walk")
    read = json.loads(file.read_text("utf-8"))
    assert isinstance(read, dict)
    return read


def test_sizes_are_those_of_the_files(site: Path) -> None:
    read = listed(site)
    assert isinstance(read["files"], list)
    for file in read["files"]:
        assert (site / "river-walk" / file["path"]).stat().st_size == file["bytes"]


def test_it_stays_the_same_while_nothing_changes(site: Path) -> None:
    assert listed(site) == listed(site)


@pytest.mark.parametrize(
    "path", ["river-walk/river-walk.mp4", "river-walk/notes.html", "assets/screen.css"]
)
def test_its_version_follows_every_file(site: Path, path: str) -> None:
    before = listed(site)["version"]
    with (site / path).open("ab") as file:
        file.write(b" ")
    assert listed(site)["version"] != before


def test_a_front_page_that_changes_makes_no_copy_out_of_date(site: Path) -> None:
    before = listed(site)["version"]
    (site / "index.html").write_text("<p>New lessons", "utf-8")
    read = listed(site)
    assert read["version"] == before
    assert {"path": "../index.html", "bytes": 14, "hash": ""} in read["files"]  # type: ignore[operator]  # a list, from JSON
