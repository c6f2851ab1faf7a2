"""Addresses: short on the site, all in one folder in a copy, and out of it only to the published site."""

from __future__ import annotations

import pytest

from generator.present.addresses import InCopy, OnSite

PAGES = {"es/a/index.html": "index.html", "es/a/notes.html": "notes.html"}
TRACK = b"WEBVTT\n"


def copy(published: str = "https://site.example/") -> InCopy:
    return InCopy(PAGES, {"a/a.es.vtt": TRACK}.__getitem__, published)


@pytest.mark.parametrize(
    ("page", "target", "address"),
    [
        ("a/index.html", "a/notes.html#plan", "notes.html#plan"),
        ("a/index.html", "index.html", "../index.html"),
        ("es/a/index.html", "a/a.mp4", "../../a/a.mp4"),
        ("es/a/index.html", "es/care.html", "../care.html"),
        ("es/a/recording/index.html", "es/a/index.html", "../index.html"),
        ("index.html", "a/index.html", "a/index.html"),
        ("index.html", "#main", "#main"),
        ("index.html", "https://x.example/#b", "https://x.example/#b"),
    ],
)
def test_on_the_site_every_page_is_reached_from_where_it_stands(
    page: str, target: str, address: str
) -> None:
    assert OnSite(page).link(target) == address


def test_what_a_page_shows_is_remembered_and_where_it_leads_is_not() -> None:
    at = OnSite("es/a/index.html")
    assert at.file("assets/screen.css") == "../../assets/screen.css"
    assert at.track("a/a.es.vtt") == "../../a/a.es.vtt"
    assert at.fetched("es/a/b.chart.json") == "b.chart.json"
    at.link("es/a/notes.html")
    assert at.needs == ("a/a.es.vtt", "assets/screen.css", "es/a/b.chart.json")


@pytest.mark.parametrize(
    ("page", "root"), [("index.html", ""), ("a/index.html", "../"), ("es/a/b.html", "../../")]
)
def test_the_root_is_so_many_folders_up(page: str, root: str) -> None:
    assert OnSite(page).root == root


def test_in_a_copy_links_out_lead_to_the_published_site() -> None:
    at = copy()
    assert at.link("es/index.html") == "https://site.example/es/index.html"
    assert at.link("es/care.html#b") == "https://site.example/es/care.html#b"
    assert at.link("es/a/notes.html#plan") == "notes.html#plan"
    assert at.link("#main") == "#main"


def test_without_a_published_site_no_way_leads_out_of_a_copy() -> None:
    at = copy("")
    assert at.link("es/care.html#b") == ""
    assert at.link("https://x.example/") == "https://x.example/"


def test_in_a_copy_captions_stand_in_the_page_and_the_policy_lets_them() -> None:
    """RFC 2397: a `data:` address; `V0VCVlRUCg==` is base64 of `WEBVTT` and a line end (RFC 4648)."""
    at = copy()
    assert at.track("a/a.es.vtt") == "data:text/vtt;base64,V0VCVlRUCg=="
    assert "media-src 'self' blob: data:;" in at.policy
    assert "media-src 'self' blob:;" in OnSite("a/index.html").policy


def test_in_a_copy_all_lies_beside_the_page_and_nothing_is_fetched() -> None:
    at = copy()
    assert at.file("a/a.mp4") == "a.mp4"
    assert at.file("assets/figures/march-1.svg") == "assets/figures/march-1.svg"
    assert at.fetched("es/a/b.chart.json") == ""
    assert at.needs == ("a/a.mp4", "assets/figures/march-1.svg")


def test_a_preview_has_no_policy_for_its_reload_script_would_break_it() -> None:
    assert OnSite("a/index.html", preview=True).policy == ""
