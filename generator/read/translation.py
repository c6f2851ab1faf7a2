"""The translations beside a lesson file: ``lesson.es.yaml``, texts only."""

from __future__ import annotations

from pathlib import Path

from generator.model.lesson import Lesson
from generator.model.places import Path as DataPath
from generator.model.texts import longest_texts
from generator.model.translation import Translation, dotted
from generator.problems import MOST_A_FILE, Problem
from generator.read.explain import did_you_mean
from generator.read.files import LARGEST_LESSON, read_text
from generator.read.source import Data, Source, read_source

_MADE_FROM = "made_from"


def read_translations(
    root: Path, lesson: Lesson, languages: tuple[str, ...], problems: list[Problem]
) -> dict[str, Translation]:
    """Every translation that is there; a language without one is simply not offered."""
    folder = Path(lesson.places.file).parent
    found: dict[str, Translation] = {}
    for language in languages:
        path = (folder / f"lesson.{language}.yaml").as_posix()
        if (root / path).is_file():
            translation = _read(root, path, language, lesson, problems)
            if translation:
                found[language] = translation
    return found


def _read(
    root: Path, path: str, language: str, lesson: Lesson, problems: list[Problem]
) -> Translation | None:
    text = read_text(root, path, LARGEST_LESSON)
    if isinstance(text, Problem):
        problems.append(text)
        return None
    source = read_source(path, text)
    problems += source.problems
    if not isinstance(source.data, dict):
        return None
    marks = source.data.pop(_MADE_FROM, None)
    texts: dict[DataPath, str] = {}
    wanted = longest_texts(lesson)
    names = sorted({dotted(path) for path in wanted})
    _collect(source.data, (), texts, source, problems)
    unknown = [key for key in texts if key not in wanted]
    problems += [
        _unknown(key, names if number < MOST_A_FILE else [], source)
        for number, key in enumerate(unknown)
    ]
    problems += [
        _too_long(key, wanted[key], source)
        for key, text in texts.items()
        if key in wanted and len(text) > wanted[key]
    ]
    made_from = {name: str(mark) for name, mark in marks.items()} if isinstance(marks, dict) else {}
    return Translation(language, texts, made_from, source.places)


def _collect(
    data: Data, path: DataPath, texts: dict[DataPath, str], source: Source, problems: list[Problem]
) -> None:
    """All texts below a value; a number where a text belongs is told."""
    if isinstance(data, dict):
        for key, value in data.items():
            _collect(value, (*path, key), texts, source, problems)
    elif isinstance(data, list):
        for index, value in enumerate(data):
            _collect(value, (*path, index), texts, source, problems)
    elif isinstance(data, str) and data.strip():
        texts[path] = data.strip()
    elif data is not None and data != "":
        what = f"`{path[-1]}` must be words, not `{data}`"
        problems.append(Problem(source.places.at(*path), what, "put it in quotes"))


def _unknown(key: DataPath, names: list[str], source: Source) -> Problem:
    what = f"the lesson has no text `{dotted(key)}`"
    return Problem(source.places.at(*key), what, did_you_mean(dotted(key), names) if names else "")


def _too_long(key: DataPath, longest: int, source: Source) -> Problem:
    hint = f"use at most {longest} characters"
    return Problem(source.places.at(*key), f"`{key[-1]}` is too long", hint)
