"""A template writes no address of its own: all come from ``at``, so that a copy can be made of the same views."""

from __future__ import annotations

import re

import pytest

from tests.project import ROOT

THEME = ROOT / "theme"
_ADDRESS = re.compile(
    r'\b(?:href|src|poster|data-(?:later|figure|library|keep|worker|root))="([^>]{0,30})'
)
_ALLOWED = re.compile(r"\{\{ at\.(?:file|link|track|root)\b|#|\{\{ (?:figure|library) \}\}")


@pytest.mark.parametrize(
    "name", sorted(file.relative_to(THEME).as_posix() for file in THEME.rglob("*.html"))
)
def test_every_address_is_asked_for(name: str) -> None:
    written = _ADDRESS.findall((THEME / name).read_text("utf-8"))
    assert [address for address in written if not _ALLOWED.match(address)] == []


def test_a_template_s_own_address_is_found() -> None:
    text = '<a class="b" href="{{ link.href }}">x</a><img src="assets/a.svg"><a href="#{{ id }}">'
    found = [one for one in _ADDRESS.findall(text) if not _ALLOWED.match(one)]
    assert found == ['{{ link.href }}"', 'assets/a.svg"']
