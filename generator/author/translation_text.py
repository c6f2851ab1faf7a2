"""The text of a translation file: a first one to fill in, and the marks of what it was made from."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence

from generator.compute.lacking_names import LackingName
from generator.model.lesson import Lesson
from generator.model.places import Path
from generator.model.texts import translatable
from generator.model.translation import Translation, dotted, text_mark
from generator.problems import Place

_MARKS = re.compile(r"^made_from:.*\Z", re.MULTILINE | re.DOTALL)
_PARAGRAPHS = re.compile(r"\n[ \t]*\n\s*")
_HEAD = "made_from:  # written by python3 generator translated; says which original each text was made from\n"


def first_draft(
    lesson: Lesson, language: str, lacking: Sequence[tuple[Place, LackingName]] = ()
) -> str:
    """A file with every text of the lesson to translate, each original above its empty place.

    Args:
        lesson: what is translated.
        language: tag of BCP 47.
        lacking: names that the libraries lack, each with its place there; the file lists them.
    """
    texts = {key: original for key, _, original in translatable(lesson)}
    lines = [
        f"# {lesson.file.title}, in {language}. Write each text between the quotes, or indented below its |."
    ]
    return "\n".join([*lines, *_names(lacking, language), *_lines(texts, (), 0)]) + "\n"


def with_marks(text: str, lesson: Lesson, translation: Translation) -> str:
    """The file's text, saying anew which original each of its texts was made from."""
    marks = [
        f"  {json.dumps(dotted(key), ensure_ascii=False)}: {text_mark(original)} {text_mark(made)}"
        for key, _, original in translatable(lesson)
        if (made := translation.texts.get(key))
    ]
    return _MARKS.sub("", text).rstrip() + "\n" + _HEAD + "\n".join(dict.fromkeys(marks)) + "\n"


def _names(lacking: Sequence[tuple[Place, LackingName]], language: str) -> Iterator[str]:
    """Comments that say where each lacking name is to be written."""
    if lacking:
        yield f"# These names have no {language} yet. Write them where they stand, not here:"
    for place, name in lacking:
        key = (
            f"`{language}:` below `texts:`"
            if name.at[0] == "moves"
            else f"`{language}: …` in `names:`"
        )
        yield f"#   {place.path}:{place.line}  {name.at[1]}: {key}  # {name.original}"


def _lines(texts: dict[Path, str], path: Path, depth: int) -> Iterator[str]:
    """The texts below a path, nested; entries of a list keep their order."""
    indent = "  " * depth
    for part in dict.fromkeys(key[len(path)] for key in texts if key[: len(path)] == path):
        inner = (*path, part)
        key = (
            f"{json.dumps(part, ensure_ascii=False)}:"
            if isinstance(part, str) and not part.isidentifier()
            else f"{part}:"
        )
        head = "-" if isinstance(part, int) else key
        if inner in texts:
            yield from _to_fill_in(texts[inner], head, indent)
        else:
            yield f"{indent}{head}"
            yield from _lines(texts, inner, depth + 1)


def _to_fill_in(original: str, head: str, indent: str) -> Iterator[str]:
    """An original as comments, and its empty place; of a script, paragraph by paragraph: there the slides turn."""
    parts = [" ".join(part.split()) for part in _PARAGRAPHS.split(original.strip())]
    for number, part in enumerate(parts):
        if number:
            yield f"{indent}#"
        yield f"{indent}# {part}"
    yield f'{indent}{head} ""' if len(parts) == 1 else f"{indent}{head} |"
