"""What scripts load by themselves is told as data: held here against what their modules ask for."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.present.assets.brought import BRINGS, brought_by, with_brought
from generator.present.stops.kinds import KINDS
from generator.present.words.say import Say
from generator.steps.surroundings import surroundings
from tests.project import ROOT, library

THEME = ROOT / "theme"
_IMPORTED = re.compile(r'^import .* from "(\..+)";$', re.MULTILINE)
_STYLE = re.compile(r'loadStyle\("([\w-]+\.css)"\)')
_PLAY = "`play-${document.documentElement.lang}.js`"


def asked_for(entry: Path, seen: set[Path]) -> set[str]:
    """What a module and all it imports load, as the table names it."""
    if entry in seen:
        return set()
    seen.add(entry)
    text = entry.read_text("utf-8")
    found = set(_STYLE.findall(text)) | ({"play-{locale}.js"} if _PLAY in text else set())
    for path in _IMPORTED.findall(text):
        found |= asked_for((entry.parent / path).resolve(), seen)
    return found


def assets() -> set[str]:
    return set(surroundings(ROOT, library(), preview=True).assets)


def entries() -> dict[str, Path]:
    """The module that begins each script, by the script's name as the table writes it."""
    begins = {file.stem: file for file in (THEME / "js").glob("*.js")}
    begins |= {kind.name: THEME / f"stops/{kind.name}/element.js" for kind in KINDS if kind.script}
    named = {f"{name}.js": file for name, file in begins.items()}
    named |= {f"{name}-{{locale}}.js": file for name, file in begins.items()}
    made = assets()
    locale = Say(library().words["en"]).locale
    return {
        name: file for name, file in named.items() if f"assets/{name.format(locale=locale)}" in made
    }


@pytest.mark.parametrize(("name", "entry"), entries().items(), ids=entries())
def test_the_table_names_what_the_modules_of_a_script_ask_for(name: str, entry: Path) -> None:
    assert asked_for(entry, set()) - {name} == set(BRINGS.get(name, ()))


def test_every_script_of_the_table_is_made() -> None:
    assert BRINGS.keys() <= entries().keys()


def test_everything_that_is_brought_is_made() -> None:
    made = assets()
    for locale in (Say(words).locale for words in library().words.values()):
        for name in BRINGS:
            assert {*brought_by(name.format(locale=locale), locale)} <= made


def test_what_is_brought_brings_more() -> None:
    assert with_brought(("assets/work-es-US.js", "assets/screen.css"), "es-US") == (
        "assets/play-es-US.js",
        "assets/play.css",
        "assets/screen.css",
        "assets/work-es-US.js",
    )
