"""What a kind of stop that was only half made still lacks, so that it is told before a page is made of it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from importlib.util import find_spec
from pathlib import Path
from pkgutil import iter_modules
from typing import NamedTuple

from generator.model import stops as models
from generator.model.stops import STOP_KINDS
from generator.model.text_marks import unmarked_fields
from generator.model.words import Words
from generator.present.stops.kind import Paper, StopKind
from generator.present.stops.kinds import AnyKind, record_of

_SAID = re.compile(r'\b(?:w|say)\(\s*"(\w+)"\s*[,)]')
"""A text of the site that a template, an element or a record says by its whole name."""


class MissingPart(NamedTuple):
    """Something a kind lacks."""

    path: str
    """The file it belongs into, from the project's root."""
    what: str
    """A sentence without a full stop."""
    hint: str
    """The same."""


def missing_parts(theme: Path, words: Mapping[str, Words]) -> Iterator[MissingPart]:
    """Every part that a kind lacks.

    Args:
        theme: folder of templates, styles and scripts.
        words: the site's texts by language.
    """
    yield from _models(theme)
    for name in STOP_KINDS:
        record = record_of(name)
        if isinstance(record, StopKind):
            yield from _files(record, theme)
            yield from _texts(record, theme, words)
        else:
            hint = "DEVELOPERS.md lists the parts of a kind"
            yield MissingPart(f"generator/present/stops/{name}.py", record, hint)


def _models(theme: Path) -> Iterator[MissingPart]:
    """Files and folders that are named for a kind no model declares."""
    files = {module.name for module in iter_modules(models.__path__)} - {"base"}
    folders = {folder.name for folder in theme.glob("stops/*")}
    for name, model in STOP_KINDS.items():
        for field in sorted(unmarked_fields(model)):
            what = f"the field `{field}` of the kind `{name}` does not say who reads it"
            hint = "make it a `Text` of model/text_marks.py, or a `Code` where it holds no words"
            yield MissingPart(f"generator/model/stops/{name}.py", what, hint)
    for name in sorted((files | folders) - STOP_KINDS.keys()):
        what = f"there is no stop of the kind `{name}` in it"
        hint = f'declare a PauseStop or a BaseStop with `kind: Literal["{name}"] = "{name}"`'
        yield MissingPart(f"generator/model/stops/{name}.py", what, hint)


def _files(kind: AnyKind, theme: Path) -> Iterator[MissingPart]:
    """What stands in a kind's folder, against what its record says of it."""
    script = theme / "js" / f"{kind.script}.js"
    told = {
        "page.html": True,
        "paper.html": kind.paper is not Paper.LEFT_OUT,
        "paper.typ": kind.paper is not Paper.LEFT_OUT,
        "paper.css": kind.paper_style,
        "style.css": kind.name in kind.styles or _brought(kind, "style.css", _shared(kind, theme)),
        "element.js": kind.script == kind.name or _brought(kind, "element.js", [script]),
    }
    for part, said in told.items():
        file = f"stops/{kind.name}/{part}"
        if said and not (theme / file).exists():
            what = f"this file is missing, and the kind `{kind.name}` says that it has it"
            yield MissingPart(f"theme/{file}", what, "add it, or change the kind's record")
        elif not said and (theme / file).exists():
            what = f"nothing brings this file: the record of `{kind.name}` does not lead to it"
            yield MissingPart(f"theme/{file}", what, "name it in the kind's record")
    entries = [*_shared(kind, theme), *([script] if kind.script not in {None, kind.name} else [])]
    for entry in entries:
        if not entry.exists():
            where = f"theme/{entry.relative_to(theme).as_posix()}"
            what = f"this file is missing, and the kind `{kind.name}` names it"
            yield MissingPart(where, what, "add it, or change the kind's record")


def _shared(kind: AnyKind, theme: Path) -> list[Path]:
    """The entries of ``theme/css/`` that a kind names; its own style is none of them."""
    return [theme / "css" / f"{style}.css" for style in kind.styles if style != kind.name]


def _brought(kind: AnyKind, part: str, entries: list[Path]) -> bool:
    """Whether one of the entries imports a part of the kind."""
    wanted = f"stops/{kind.name}/{part}"
    return any(wanted in file.read_text("utf-8") for file in entries if file.exists())


def _texts(kind: AnyKind, theme: Path, words: Mapping[str, Words]) -> Iterator[MissingPart]:
    """The kind's own words, and every text that its templates, element and record say by name."""
    files = [
        file for end in ("html", "js", "typ") for file in theme.glob(f"stops/{kind.name}/*.{end}")
    ]
    spec = find_spec(f"{__package__}.{kind.name}")
    if spec and spec.origin:
        files.append(Path(spec.origin))
    said = {key for file in files for key in _SAID.findall(file.read_text("utf-8"))}
    for language, texts in words.items():
        for key in sorted({f"stop_{kind.name}", f"beside_{kind.name}", *said} - texts.texts.keys()):
            what = f"the text `{key}` is missing, which the kind `{kind.name}` says"
            yield MissingPart(f"site_data/words/{language}.yaml", what, "add it in every language")
