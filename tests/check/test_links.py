"""A link in a lesson that is not made is told; one that is made says nothing of where it was followed."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check import check_lesson
from generator.present.words.prose import blocks
from tests.project import GOOD, worked

REFUSED = (
    "http://a.example/",
    "//evil.example/",
    "blob:https://a/b",
    "javascript:x",
    "data:x",
    "ftp://a",
)
MADE = ("https://a.example/", "mailto:a@b.example", "../care.html", "notes.html#plan", "#lunch")


@pytest.mark.parametrize("address", REFUSED)
def test_a_link_that_leads_astray_is_no_link_and_is_told(tmp_path: Path, address: str) -> None:
    assert "<a" not in blocks(f"See [this]({address}).")
    told = check_lesson(
        worked(tmp_path, GOOD.replace("What do you like?", f"See [this]({address})."))
    )
    assert [one.what.partition(" is not")[0] for one in told if "link" in one.what] == [
        f"the link `{address}`"
    ]


@pytest.mark.parametrize("address", MADE)
def test_a_link_that_is_made(tmp_path: Path, address: str) -> None:
    rel = ' rel="noreferrer"' if ":" in address else ""
    assert f'<a href="{address}"{rel}>this</a>' in blocks(f"See [this]({address}).")
    told = check_lesson(
        worked(tmp_path, GOOD.replace("What do you like?", f"'See [this]({address}).'"))
    )
    assert not [one for one in told if "link" in one.what]
