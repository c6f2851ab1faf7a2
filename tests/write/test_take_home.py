"""The take-home copy: the same bytes again, and pages that lead out only to the published site."""

from __future__ import annotations

from io import BytesIO
from zipfile import ZipFile

import pytest

from generator.present.pages.take_home import Copy, copied_page
from generator.write.take_home import take_home

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
FILES = {"a/index.html": PAGE.encode(), "assets/lesson.js": b"1", "a/a.mp4": b"film"}


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


def test_the_same_files_make_the_same_bytes(monkeypatch: pytest.MonkeyPatch) -> None:
    first = take_home("a", FILES, "")
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    assert take_home("a", dict(reversed(FILES.items())), "") == first
    with ZipFile(BytesIO(first)) as packed:
        assert packed.namelist() == ["a/a.mp4", "a/index.html", "a/assets/lesson.js"]
        assert {entry.date_time for entry in packed.infolist()} == {(1980, 1, 1, 0, 0, 0)}
