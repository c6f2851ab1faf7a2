"""The take-home copy: the same bytes again, pages that lead out only to the published site, and no page without its files."""

from __future__ import annotations

import shutil
from pathlib import Path
from zipfile import ZipFile

import pytest

from generator.present.pages.take_home import SIZE, Copy, copied_page
from generator.write.lesson_files import lesson_files
from generator.write.take_home import write_take_home

PAGE = (
    '<meta content="media-src &#39;self&#39;">\n<link rel="alternate" hreflang="es" href="../es/a/index.html">\n'
    '<a href="../index.html">Home</a><ul><li><a href="../care.html#b">Care</a></li></ul>'
    '<a href="notes.html#plan">Notes</a><a href="#main">Skip</a><a href="https://x.example/">X</a>'
    '<track src="a.en.vtt"><script src="../assets/lesson.js"></script>'
)
COPY = Copy(
    {
        "a/index.html": "index.html",
        "a/notes.html": "notes.html",
        "assets/lesson.js": "assets/lesson.js",
    },
    {"a/a.en.vtt": b"WEBVTT\n"},
    "https://site.example/",
)


def test_links_out_lead_to_the_published_site() -> None:
    page = copied_page(PAGE, "a/index.html", COPY)
    assert '<a href="https://site.example/index.html">Home</a>' in page
    assert '<a href="https://site.example/care.html#b">Care</a>' in page
    assert 'href="notes.html#plan"' in page
    assert 'href="#main"' in page
    assert 'src="assets/lesson.js"' in page
    assert "alternate" not in page


def test_without_a_published_site_links_out_are_left_out() -> None:
    page = copied_page(PAGE, "a/index.html", Copy(COPY.names, COPY.captions, ""))
    assert "Home" not in page
    assert "Care" not in page
    assert "<ul></ul>" in page
    assert '<a href="https://x.example/">X</a>' in page


def test_captions_stand_in_the_page_and_the_policy_lets_them() -> None:
    """RFC 2397: a `data:` address; `V0VCVlRUCg==` is base64 of `WEBVTT` and a line end (RFC 4648)."""
    page = copied_page(PAGE, "a/index.html", COPY)
    assert '<track src="data:text/vtt;base64,V0VCVlRUCg==">' in page
    assert "media-src &#39;self&#39; data:" in page


def test_the_same_site_makes_the_same_bytes(
    built_site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    made = []
    for name in ("one", "two"):
        shutil.copytree(built_site, tmp_path / name)
        for file in sorted((tmp_path / name).rglob("*"), reverse=name == "two"):
            file.touch()
        made.append(write_take_home(tmp_path / name, "river-walk", "x.zip", "").read_bytes())
    assert made[0] == made[1]
    with ZipFile(tmp_path / "one/river-walk/x.zip") as packed:
        # 1700000000 is 2023-11-14 22:13:20 UTC (date -u -d @1700000000)
        assert {entry.date_time for entry in packed.infolist()} == {(2023, 11, 14, 22, 13, 20)}


def test_every_file_that_a_page_of_the_lesson_names_is_part_of_it(built_site: Path) -> None:
    files = lesson_files(built_site, "es/river-walk")
    assert {"river-walk/river-walk.mp4", "river-walk/river-walk.es.vtt", "assets/later.css"} < set(
        files
    )
    assert not [path for path in files if path.endswith((".zip", "keep.json", "sw.js"))]
    assert all((built_site / path).is_file() for path in files)


def test_the_page_says_how_large_the_copy_is(built_site: Path) -> None:
    for page in built_site.rglob("index.html"):
        for packed in page.parent.glob("*-take-home.zip"):
            size = f"{round(packed.stat().st_size / 1e5) / 10}\N{NO-BREAK SPACE}MB"
            assert size in page.read_text("utf-8")
    assert not [page for page in built_site.rglob("*.html") if SIZE in page.read_text("utf-8")]
