"""The front page shows what each lesson is about: its gaps as plums, flatter on a narrow screen, and in words."""

from __future__ import annotations

import re
from pathlib import Path

import pytest


@pytest.mark.parametrize("folder", ["", "es/"])
def test_every_lesson_has_its_cover(built_site: Path, folder: str) -> None:
    page = (built_site / folder / "index.html").read_text("utf-8")
    entries = re.findall(r"<article.*?</article>", page, re.DOTALL)
    assert entries
    for entry in entries:
        [wide] = re.findall(r'<img src="([^"]+)"', entry)
        [flat] = re.findall(r'<source media="[^"]+" srcset="([^"]+)"', entry)
        [says] = re.findall(r'alt="([^"]+)"', entry)
        for picture in (wide, flat):
            assert (built_site / folder / picture).is_file()
        assert wide != flat
        assert re.fullmatch(r"\w+ (gap|diferencia)s?\b[^\d]*\.", says), says
