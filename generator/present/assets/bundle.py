"""Joins the browser's modules, and the style sheets, into one small file each.

The pages must also work from a folder, where browsers refuse ES modules, and one file is one
request on a thin line. So that joining needs no parser, the sources keep to a convention:

- a script has only ``import { name, other } from "./file.js";`` and ``export`` before a
  function, class or const; no default, no renaming, no cycles;
- what a module declares at its top starts in the first column, and no two modules declare
  the same name, for in the joined file they share one scope;
- a style sheet has only ``@import "./file.css";``, before its rules.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from posixpath import dirname, join, normpath

from rcssmin import cssmin
from rjsmin import jsmin

from generator.present.assets.script_texts import TEXTS, keys_said

_IMPORT = re.compile(
    r'^import \{(\s*[\w$]+\s*(?:,\s*[\w$]+\s*)*,?\s*)\} from "(\.\.?/[\w./-]+\.js)";$', re.MULTILINE
)
_EXPORT = re.compile(r"^export (?=(?:async )?function\b|class\b|const\b)", re.MULTILINE)
_DECLARED = re.compile(
    r"^(export )?(?:async )?(?:function|class|const|let|var)\b\*? *([\w$]+|\S)", re.MULTILINE
)
_STRAY = re.compile(r"^\s*(?:import|export)\b(?![.(]).*", re.MULTILINE)
_CSS_IMPORT = re.compile(r'^@import "(\.\.?/[\w./-]+\.css)";$', re.MULTILINE)
_Files = Mapping[str, str]
_Words = Mapping[str, str | Mapping[str, str]]
_Imports = Callable[[str, _Files], list[str]]


def sources(theme: Path, kind: str) -> dict[str, str]:
    """The theme's files of a kind, ``css`` or ``js``: texts by name, such as ``js/lesson.js``.

    They stand in the folder of that name, and what belongs to one kind of stop in ``stops/``.
    """
    files = [file for part in (kind, "stops") for file in sorted((theme / part).rglob(f"*.{kind}"))]
    return {file.relative_to(theme).as_posix(): file.read_text("utf-8") for file in files}


def join_script(entry: str, files: _Files, words: _Words | None = None) -> str:
    """Join a module and all it imports into one classic script in strict mode.

    Args:
        entry: name of the module that starts everything, such as ``js/lesson.js``.
        files: texts by name, with ``/`` between folders.
        words: the site's texts by key, of which the script brings along those that it says.

    Raises:
        ValueError: a file is missing or leaves the convention; the message names it.
    """
    names = list(_in_order(entry, files, _script_imports))
    _refuse_shared_names(names, files)
    _refuse_missing_names(names, files)
    said = keys_said(names, files)
    if said and words is not None:
        files = {**files, TEXTS: _texts_module(entry, said, words)}
    body = "\n".join(_EXPORT.sub("", _IMPORT.sub("", files[name])) for name in names)
    return str(jsmin(f'(()=>{{"use strict";\n{body}\n}})();')) + "\n"


def _texts_module(entry: str, said: tuple[str, ...], words: _Words) -> str:
    if missing := [key for key in said if key not in words]:
        raise ValueError(f"{entry}: the site's words have no {', '.join(missing)}")
    texts = json.dumps({key: words[key] for key in said}, ensure_ascii=False)
    return f"export const texts = {texts};\n"


def join_styles(entry: str, files: _Files) -> str:
    """Join a style sheet and all it imports, each once, where it is first imported.

    Raises:
        ValueError: a file is missing or leaves the convention; the message names it.
    """
    names = _in_order(entry, files, _style_imports)
    return str(cssmin("\n".join(_CSS_IMPORT.sub("", files[name]) for name in names))) + "\n"


def _in_order(entry: str, files: _Files, imports: _Imports) -> Iterator[str]:
    """The entry and what it imports, directly or not: each once, after all that it needs."""
    finished: set[str] = set()

    def visit(name: str, above: tuple[str, ...]) -> Iterator[str]:
        if name in above:
            raise ValueError(
                f"{name}: imports itself, by way of {', '.join(above[above.index(name) + 1 :]) or 'nothing'}"
            )
        if name not in files:
            raise ValueError(f"{above[-1] if above else name}: there is no {name}")
        for needed in imports(name, files):
            if needed not in finished:
                yield from visit(needed, (*above, name))
        finished.add(name)
        yield name

    yield from visit(entry, ())


def _script_imports(name: str, files: _Files) -> list[str]:
    """The modules a module imports, once it is sure that joining will not change what it does."""
    text = files[name]
    stray = _STRAY.search(_EXPORT.sub("", _IMPORT.sub("", text)))
    if stray:
        raise ValueError(f"{name}: `{stray[0].strip()}` is outside what bundle.py can join")
    return [_beside(name, path) for _, path in _IMPORT.findall(text)]


def _style_imports(name: str, files: _Files) -> list[str]:
    if "@import" in _CSS_IMPORT.sub("", files[name]):
        raise ValueError(f"{name}: has an @import outside what bundle.py can join")
    return [_beside(name, path) for path in _CSS_IMPORT.findall(files[name])]


def _refuse_shared_names(names: list[str], files: _Files) -> None:
    owners: dict[str, str] = {}
    for name in names:
        for _, declared in _DECLARED.findall(files[name]):
            if not declared.isidentifier():
                raise ValueError(
                    f"{name}: takes something apart at its top, where bundle.py needs plain names"
                )
            if owners.setdefault(declared, name) != name:
                raise ValueError(f"{name}: declares {declared}, and so does {owners[declared]}")


def _refuse_missing_names(names: list[str], files: _Files) -> None:
    for name in names:
        for words, path in _IMPORT.findall(files[name]):
            module = _beside(name, path)
            exported = {declared for export, declared in _DECLARED.findall(files[module]) if export}
            for word in re.findall(r"[\w$]+", words):
                if word not in exported:
                    raise ValueError(f"{name}: {module} exports no {word}")


def _beside(name: str, path: str) -> str:
    return normpath(join(dirname(name), path))
