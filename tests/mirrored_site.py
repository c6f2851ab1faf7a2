"""The demo in a made-up language that is written from the right: its words are the English ones in Hebrew letters."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

from tests.site_project import build_project, copy_project

LANGUAGE = "qaa"
"""A tag that ISO 639-2 leaves for private use."""
_LETTERS = str.maketrans("abcdefghijklmnopqrstuvwxyz", "אבגדהוזחטיכלמנסעפצקרשתאבגד")
_TEXT = re.compile(r"\{\w+\}|&\w+;|`[^`]*`|<[^>]*>|https?://\S+|%\w|\\\w+|(?P<word>[A-Za-z]+)")
_ENTRY = re.compile(r"^(\w+): (?![{|>])(.*)$|(\b(?:one|other): )(\"[^\"]*\"|[^,}]*)", re.MULTILINE)
_KEPT = {"locale", "direction", "capital_names"}


def build_mirrored(folder: Path) -> Path:
    """Build it strictly; returns the folder of the site."""
    project = copy_project(folder)
    for spanish in [*project.glob("lessons/*/*.es.*"), project / "lessons/es"]:
        shutil.rmtree(spanish) if spanish.is_dir() else spanish.unlink()
    for file in (*project.glob("lessons/*/lesson.yaml"), project / "site_data/site.yaml"):
        told = file.read_text("utf-8").replace("languages: [en, es]", f"languages: [{LANGUAGE}]")
        file.write_text(re.sub(r", es: [\w.-]+", "", told), "utf-8")
    words = (project / "site_data/words/en.yaml").read_text("utf-8")
    (project / f"site_data/words/{LANGUAGE}.yaml").write_text(in_hebrew_letters(words), "utf-8")
    return build_project(project)


def in_hebrew_letters(words: str) -> str:
    """Every text of a file of words in other letters, written from the right; keys and places stay."""
    said = _ENTRY.sub(_entry, words)
    return said.replace("locale: en-US", "locale: he-IL").replace(
        "direction: ltr", "direction: rtl"
    )


def _entry(found: re.Match[str]) -> str:
    if found[1] in _KEPT:
        return found[0]
    begins = f"{found[1]}: " if found[1] else found[3]
    return begins + _TEXT.sub(_word, found[2] or found[4] or "")


def _word(found: re.Match[str]) -> str:
    return found[0].lower().translate(_LETTERS) if found["word"] else found[0]
