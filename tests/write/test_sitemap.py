"""The list of pages for search engines, and the day it gives."""

from __future__ import annotations

import gzip
import subprocess
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from generator.problems import LessonError
from generator.write.day import day_of
from generator.write.sitemap import sitemap

SPACE = "{http://www.sitemaps.org/schemas/sitemap/0.9}"
ADDRESS = "https://kitchen.example/a/"


def addresses(content: bytes, inner: str) -> list[str]:
    root = ET.fromstring(content)  # noqa: S314  # our own file
    return [str(one.findtext(f"{SPACE}loc")) for one in root.iter(f"{SPACE}{inner}")]


def test_every_page_has_its_whole_address() -> None:
    plain, packed = sitemap(ADDRESS, ["index.html", "soup&bread/index.html"], "2026-11-25")
    assert (plain.path, packed.path) == ("sitemap.xml", "sitemap.xml.gz")
    assert gzip.decompress(packed.content) == plain.content
    assert packed.content[4:8] == bytes(4), "no time of packing (RFC 1952, MTIME)"
    assert addresses(plain.content, "url") == [
        ADDRESS + "index.html",
        ADDRESS + "soup&bread/index.html",
    ]
    assert plain.content.count(b"<lastmod>2026-11-25</lastmod>") == 2


def test_no_day_is_better_than_a_wrong_one() -> None:
    assert b"lastmod" not in next(sitemap(ADDRESS, ["index.html"], "")).content


def test_more_pages_than_a_list_may_hold_have_several() -> None:
    """50,000 addresses in a list at most (sitemaps.org, protocol); here two."""
    made = {one.path: one.content for one in sitemap(ADDRESS, list("abcde"), "", most=2)}
    lists = addresses(made["sitemap.xml"], "sitemap")
    assert lists == [f"{ADDRESS}sitemap-{number}.xml" for number in (1, 2, 3)]
    held = [addresses(made[one.removeprefix(ADDRESS)], "url") for one in lists]
    assert [len(one) for one in held] == [2, 2, 1]


def test_the_day_is_what_the_builder_says(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """1700000000 seconds after 1970 are 14 November 2023, 22:13:20 UTC (computed)."""
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    assert day_of(tmp_path) == "2023-11-14"


@pytest.mark.parametrize("told", ["abc", "-99999999999999", "99999999999999"])
def test_what_is_no_time_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, told: str
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", told)
    with pytest.raises(LessonError, match="which is no time"):
        day_of(tmp_path)


def test_else_it_is_the_day_of_the_last_commit(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    assert day_of(tmp_path) == ""
    commit(tmp_path, monkeypatch)
    assert day_of(tmp_path) == "2024-02-29"


@pytest.mark.parametrize("kind", ["shallow clone", "worktree"])
def test_the_same_commit_has_the_same_day_however_it_was_checked_out(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, kind: str
) -> None:
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    (tmp_path / "whole").mkdir()
    commit(tmp_path / "whole", monkeypatch)
    commit(tmp_path / "whole", monkeypatch, "2024-03-01T12:00:00Z")
    other = tmp_path / "other"
    words = {
        "shallow clone": ["clone", "-q", "--depth=1", f"file://{tmp_path}/whole", str(other)],
        "worktree": ["-C", str(tmp_path / "whole"), "worktree", "add", "-q", str(other)],
    }
    subprocess.run(["git", *words[kind]], check=True, capture_output=True)
    assert day_of(other) == day_of(tmp_path / "whole") == "2024-03-01"


def commit(root: Path, monkeypatch: pytest.MonkeyPatch, when: str = "2024-02-29T12:00:00Z") -> None:
    """A commit of this moment, in a repository that is made if there is none."""
    for role in ("AUTHOR", "COMMITTER"):
        monkeypatch.setenv(f"GIT_{role}_NAME", "a")
        monkeypatch.setenv(f"GIT_{role}_EMAIL", "a@b")
    monkeypatch.setenv("GIT_COMMITTER_DATE", when)
    for words in (["init", "-q"], ["commit", "-q", "--allow-empty", "-m", "One"]):
        subprocess.run(["git", *words], cwd=root, check=True)
