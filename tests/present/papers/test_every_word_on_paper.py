"""Words that typst could take for its own marks, in every field of a site: all papers hold them as they were written."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path

from generator.author.papers import papers_of
from generator.present.papers.paper import Size
from tests.hostile import write_site
from tests.made_papers import words
from tests.outside.pdf_parts import opened

TYPST = '#panic(1) #eval("2") $x^2$ *b* _i_ `r` @ref <label> = no // gone /* c */ [d] #[e] \\ ~ <b>'
MARKDOWN = {"Span", "Em", "Strong", "Code"}
"""What an educator's own marks in a sentence may become."""
PLAIN = re.sub(r"[^\w\s]", "x", TYPST)
"""As many letters and as many words."""


def made(folder: Path, said: str) -> dict[str, Path]:
    """The A4 papers of a lesson in a site with these words in every field, by name."""
    project = write_site(folder / "site", said)
    files = {}
    for one in papers_of(project, ["soup-night"], [Size.A4]):
        file = folder / one.path.replace("/", "-")
        file.write_bytes(one.content)
        files[file.name] = file
    return files


def kinds(file: Path) -> Counter[str]:
    """Every tag of a file, counted."""
    parts = opened(file.read_bytes()).parts
    found = (part.kind for part in parts)
    return Counter(kind for kind in found if kind not in MARKDOWN)


def test_all_papers_hold_them_as_words(tmp_path: Path) -> None:
    """Nothing is run, and no tag comes or goes."""
    hostile, plain = made(tmp_path / "hostile", TYPST), made(tmp_path / "plain", PLAIN)
    assert hostile.keys() == plain.keys()
    assert len(hostile) == 2 * 6  # six papers in two languages
    for name, file in hostile.items():
        said = words(file)
        for one in ("#panic(1)", "$x^2$", "*b*", "`r`", "@ref", "<label> = no", "// gone", "#[e]"):
            assert one in said, (name, one)
        assert kinds(file) == kinds(plain[name]), name
