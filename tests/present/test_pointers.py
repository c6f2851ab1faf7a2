"""What answers to a pointer that hovers does so only where there is one: a tap leaves nothing behind."""

from __future__ import annotations

import re

import pytest

from tests.project import ROOT

THEME = ROOT / "theme"
_WHERE_IT_HOVERS = re.compile(r"@media \(hover: hover\) \{.*?\n *\}\n *\}", re.DOTALL)


@pytest.mark.parametrize(
    "name",
    sorted(
        file.relative_to(THEME).as_posix()
        for file in THEME.rglob("*.css")
        if ":hover" in file.read_text("utf-8")
    ),
)
def test_nothing_stays_hovered_after_a_tap(name: str) -> None:
    """Media Queries Level 4, section 6.2: without ``hover`` a browser may keep the state after a tap."""
    style = (THEME / name).read_text("utf-8")
    assert ":hover" not in _WHERE_IT_HOVERS.sub("", style)
