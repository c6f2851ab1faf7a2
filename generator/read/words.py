"""The interface texts of every language, held against the first one."""

from __future__ import annotations

import string
from pathlib import Path

from babel import Locale, UnknownLocaleError

from generator.model.places import Path as DataPath
from generator.model.unit_words import OTHER, Units, read_units
from generator.model.words import Words
from generator.problems import Place, Problem
from generator.read.explain import did_you_mean
from generator.read.overlay import UNITS, read_over
from generator.read.source import Data, Source

_FIRST = "en"
_DIRECTIONS = ("ltr", "rtl")
_LARGEST = 500_000
"""Bytes of a file of words; ours have a tenth of it."""
_BACK = "take it from the last commit"
_UNIT = "write one and several, such as `cup: cups`, below `units:`"


def read_words(
    root: Path,
    languages: tuple[str, ...],
    problems: list[Problem],
    places: dict[DataPath, Place],
) -> dict[str, Words]:
    """Texts of ``site_data/words/<language>.yaml``, laid over the program's; what English has, every language must have.

    The place of each is added to ``places`` as ``("words", language, key)``.
    """
    sources = {
        language: _source(root, language, problems)
        for language in dict.fromkeys((_FIRST, *languages))
    }
    first = sources[_FIRST]
    for language, source in sources.items():
        if source:
            problems += [*_unusable(source), *_unknown_locale(source, language)]
            problems += _unknown_direction(source)
    for language, source in sources.items():
        if source and first and language != _FIRST:
            problems += _differences(source, first)
    for language, source in sources.items():
        for path, place in (source.keys if source else {}).items():
            replaced = path[:1] == ("replaced",) and len(path) > 1
            places["replaced" if replaced else "words", language, *path[replaced:]] = place
    return {
        name: Words(name, _texts(source), _units(source, problems))
        for name, source in sources.items()
        if source
    }


def _source(root: Path, language: str, problems: list[Problem]) -> Source | None:
    path = f"site_data/words/{language}.yaml"
    found: list[Problem] = []
    source = read_over(root, path, "", found, _LARGEST)
    if source is None:
        missing = not (root / path).exists()
        hint = "every language of site_data/site.yaml needs its words"
        problems += [Problem(one.place, one.what, hint if missing else one.hint) for one in found]
        return None
    problems += found
    if isinstance(source.data, dict):
        return source
    if not found:
        problems.append(Problem(Place(path), "this file holds no texts", _BACK))
    return None


def _texts(source: Source) -> dict[str, str | dict[str, str]]:
    data = source.data if isinstance(source.data, dict) else {}
    return {
        key: {form: str(text) for form, text in value.items()}
        if isinstance(value, dict)
        else str(value)
        for key, value in data.items()
        if key != UNITS
    }


def _units(source: Source, problems: list[Problem]) -> Units:
    """The table of units; a line that is none is told and left out."""
    data = source.data.get(UNITS, {}) if isinstance(source.data, dict) else {}
    if not isinstance(data, dict):
        problems.append(Problem(source.places.key(UNITS), "`units` must be a table", _UNIT))
        return {}
    written: dict[str, str | dict[str, str]] = {}
    for one, more in data.items():
        if isinstance(more, str):
            written[one] = more
        elif isinstance(more, dict) and _are_forms(more):
            written[one] = {form: str(text) for form, text in more.items()}
        else:
            place = source.places.key(UNITS, one)
            problems.append(Problem(place, f"what several `{one}` are called is missing", _UNIT))
    return read_units(written)


def _are_forms(more: dict[str, Data]) -> bool:
    return OTHER in more and all(isinstance(text, str) and text.strip() for text in more.values())


def _unusable(source: Source) -> list[Problem]:
    """Entries that hold no text, or whose braces do not pair up."""
    data = source.data if isinstance(source.data, dict) else {}
    found = []
    for key, value in data.items():
        if key == UNITS:
            continue
        forms = value if isinstance(value, dict) else {"": value}
        what = ""
        if isinstance(value, dict) and "other" not in value:
            what = f"`{key}` has plural forms and lacks `other`"
        elif any(text is None or isinstance(text, list | dict) for text in forms.values()):
            what = f"`{key}` must be a text"
        elif any(_names(str(text)) is None for text in forms.values()):
            what = f"a brace in `{key}` is opened and not closed, or holds more than a name"
        if what:
            found.append(Problem(source.places.key(key), what, _BACK))
    return found


def _unknown_locale(source: Source, language: str) -> list[Problem]:
    """A language whose way of writing numbers CLDR does not know."""
    named = str(_texts(source).get("locale", language))
    try:
        Locale.parse(named, sep="-")
    except (UnknownLocaleError, ValueError):
        what = f"how numbers are written in `{named}` is not known"
        hint = "write `locale:` with the tag of a language that writes them alike, such as en-US"
        return [Problem(source.places.key("locale"), what, hint)]
    return []


def _unknown_direction(source: Source) -> list[Problem]:
    """A direction that no browser knows (HTML Standard, 3.2.6.4: ``dir``)."""
    data = source.data if isinstance(source.data, dict) else {}
    written = data.get("direction", _DIRECTIONS[0])
    if written in _DIRECTIONS or written is None or isinstance(written, list):
        return []  # what is no text at all is told as such
    what = f"a language is not written in the direction `{written}`"
    hint = (
        "write `direction: ltr` where it is written from the left, `direction: rtl` from the right"
    )
    return [Problem(source.places.key("direction"), what, hint)]


def _differences(source: Source, first: Source) -> list[Problem]:
    """Texts that are missing, unknown, or that fill other places than the English ones do."""
    here, there = _texts(source), _texts(first)
    found = [
        Problem(source.places.at(), f"the text `{key}` is missing", "translate it from en.yaml")
        for key in there
        if key not in here
    ]
    for key, text in here.items():
        place = source.places.key(key)
        if key not in there:
            found.append(
                Problem(place, f"`{key}` is no text of the site", did_you_mean(key, list(there)))
            )
        elif _fields(text) != _fields(there[key]):
            wanted = ", ".join(f"{{{name}}}" for name in sorted(_fields(there[key]))) or "none"
            found.append(
                Problem(
                    place,
                    f"`{key}` fills other places than the English text",
                    f"it must hold {wanted}",
                )
            )
    return found


def _fields(text: str | dict[str, str]) -> set[str]:
    forms = [text] if isinstance(text, str) else list(text.values())
    return {name for form in forms for name in _names(form) or ()}


def _names(text: str) -> set[str] | None:
    """The names in braces; nothing where the braces cannot be filled in, or ask for a width of millions."""
    try:
        parts = [part for part in string.Formatter().parse(text) if part[1] is not None]
    except ValueError:
        return None
    names = {str(name) for _, name, _, _ in parts}
    if any(form or conversion for _, _, form, conversion in parts):
        return None
    return names if all(name.isidentifier() for name in names) else None
