"""The file of all lessons for platforms is right though what is kept of one of them was damaged."""

from __future__ import annotations

from pathlib import Path

from generator.engine.pack import KEPT, read_pack
from tests.engine.small_site import built, built_cold, small_site


def damage(file: Path) -> bool:
    """Change a byte of what a pack keeps and does not publish; says whether it keeps any."""
    pack = read_pack(file)
    at = pack.start if pack else 0
    for entry in pack.entries if pack else ():
        if entry.path.startswith(KEPT):
            held = bytearray(file.read_bytes())
            held[at + entry.held // 2] ^= 1
            file.write_bytes(held)
            return True
        at += entry.held
    return False


def test_what_is_damaged_is_made_anew(tmp_path: Path) -> None:
    """The lessons themselves are taken over from the old site, so nobody else reads their packs."""
    root = small_site(tmp_path / "site")
    shown = built(root)
    assert isinstance(shown, dict)
    assert "all-lessons-1.1.imscc" in shown
    assert sum(map(damage, (root / ".cache/lessons").glob("*/*"))) == 4
    about = root / "lessons/about.md"
    about.write_text(about.read_text("utf-8") + "\nMore.\n", "utf-8")
    now = built(root)
    assert now == built_cold(root, tmp_path / "cold")
    assert now != shown
