"""The templates of papers, and which texts of the site they say."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from generator.present.pictures.columns import PLACES

_SAID = re.compile(r'\bw\(\s*"(\w+)"\s*[,)]')


def sources(theme: Path) -> tuple[Path, ...]:
    """Every file a paper may be made by: templates, parts of stops, letters."""
    papers, stops = sorted(theme.glob("papers/*")), sorted(theme.glob("stops/*/paper.typ"))
    return (*papers, *stops, *sorted(theme.glob("vendor/noto-sans/*.ttf")))


@cache  # asked for each lesson; a template changes with the program alone
def keys_in(template: Path) -> tuple[str, ...]:
    """The texts that one template says itself."""
    return tuple(sorted(set(_SAID.findall(template.read_text("utf-8")))))


def keys_said(theme: Path) -> tuple[str, ...]:
    """The texts by their keys, each once."""
    files = (file for file in sources(theme) if file.suffix == ".typ")
    said = {key for file in files for key in _SAID.findall(file.read_text("utf-8"))}
    return tuple(sorted(said | {*PLACES}))
