"""A language is a folder: each has the same files, is known by its tag, and says what it lacks."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import generator.language
from generator.language import KNOWN, language_of
from generator.language.plain import plain

ROOM = Path(str(generator.language.__file__)).parent


def files(folder: Path) -> set[str]:
    """Names of the modules of a language."""
    return {file.name for file in folder.glob("*.py")}


def test_every_folder_but_the_plain_one_is_known() -> None:
    folders = {file.parent.name for file in ROOM.glob("*/__init__.py")}
    assert folders - {"plain"} == set(KNOWN)
    assert [one.tag for one in KNOWN.values()] == list(KNOWN)


def test_every_language_has_the_same_files() -> None:
    assert {tag: files(ROOM / tag) for tag in KNOWN} == dict.fromkeys(KNOWN, files(ROOM / "en"))


def test_a_language_is_found_whatever_its_region() -> None:
    assert language_of("es-MX") is KNOWN["es"]
    assert language_of("pt-BR").tag == "pt"


def test_a_language_says_what_it_takes_from_the_plain_one() -> None:
    whole, bare = KNOWN["es"], plain("xx")
    assert [one.unchecked for one in KNOWN.values()] == [()] * len(KNOWN)
    assert len(bare.unchecked) == 4
    assert replace(whole, claims=bare.claims).unchecked == ("claims about numbers",)
    assert replace(whole, number_words=bare.number_words).unchecked == ("numbers in words",)
    assert replace(whole, unkind_words=()).unchecked == ("words of guilt and payment",)
    assert replace(whole, reading_level=None).unchecked == ("the reading level",)
