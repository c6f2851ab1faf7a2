"""After any edit a site is, byte for byte, what it would be if it were built from nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.engine.edits import Hand
from tests.engine.small_site import built, built_cold, small_site
from tests.site_project import hashes


@pytest.mark.parametrize("seed", range(4))
def test_a_site_after_each_of_twenty_edits(tmp_path: Path, seed: int) -> None:
    """Eighty in all, among them mistakes, which leave the site as it was, and what takes them back."""
    root = small_site(tmp_path / "site")
    shown = built(root)
    hand, made = Hand(root, seed), []
    for _ in range(20):
        made.append(hand.edit())
        before = hashes(root / "site")
        now, cold = built(root), built_cold(root, tmp_path / "cold")
        assert now == cold, made
        if isinstance(now, list):
            assert hashes(root / "site") == before, made
        else:
            shown = now
    assert shown
