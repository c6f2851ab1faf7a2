"""Whoever looks finds whose work runs in the pages: its version and its licence, of all that is shipped."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.html_page import read_page

ROOT = Path(__file__).parents[2]
VENDOR = ROOT / "theme/vendor"
OURS = '(()=>{"use strict";'
"""How a script begins that the program joined of its own (``present/assets/bundle.py``)."""


@pytest.fixture(scope="module")
def told(built_site: Path) -> str:
    return (built_site / "licences.txt").read_text("utf-8")


def test_every_script_is_our_own_or_named_with_its_version(built_site: Path, told: str) -> None:
    copied = {file.read_bytes(): file for file in VENDOR.rglob("*.js")}
    others = [
        script
        for script in built_site.rglob("*.js")
        if not script.read_text("utf-8").startswith(OURS)
    ]
    assert others
    for script in others:
        source = copied[script.read_bytes()]
        assert (source.parent / "VERSION").read_text("utf-8").strip() in told
        assert source.name in told


def test_the_version_told_is_the_one_the_script_says_of_itself(told: str) -> None:
    script = (VENDOR / "plotly/plotly-bars.min.js").read_text("utf-8")
    said = re.search(r"plotly\.js \(bars only\) v([0-9.]+)", script)
    assert said
    assert f"plotly.js {said[1]}, bars only," in told


def test_every_licence_is_there_word_for_word(told: str) -> None:
    folders = [folder for folder in VENDOR.iterdir() if folder.is_dir()]
    assert folders
    for folder in folders:
        assert (folder / "LICENSE").read_text("utf-8").strip() in told
    assert (ROOT / "LICENSE").read_text("utf-8").strip() in told
    assert (ROOT / "LICENSE").read_bytes() == (ROOT / "theme/LICENSE").read_bytes()


def test_what_a_copied_script_holds_of_others_is_named_with_a_licence(told: str) -> None:
    """Its own list, which the script that makes it writes from what went into it."""
    inside = (VENDOR / "plotly/INSIDE.txt").read_text("utf-8")
    names = set(re.findall(r"^---- (.+)$", inside, re.MULTILINE))
    assert {name.rpartition(" ")[0] for name in names} >= {"@plotly/d3", "d3-format", "culori"}
    for name in names:
        part = told.partition(f"---- {name}\n")[2].partition("\n---- ")[0]
        assert re.search(r"Copyright|\(c\)", part), name


@pytest.mark.parametrize("page", ["sources.html", "care.html", "es/sources.html"])
def test_the_pages_about_the_site_lead_there(built_site: Path, page: str) -> None:
    links = {each.get("href", "") for each in read_page(built_site / page).iter("a")}
    assert any(
        ((built_site / page).parent / link).resolve() == built_site / "licences.txt"
        for link in links
    )
