"""The readings of a lesson as YAML, a line for each number and for each place of texts."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from generator.model.reviewed import OWN, ReadNumber, Review
from generator.present.words.say import digits


def reviewed_text(lesson: str, reviews: Iterable[Review]) -> str:
    """The file as YAML.

    Args:
        lesson: id of the lesson.
        reviews: in their order.
    """
    head = [
        "# Who read this lesson, and what was read. A role stands here and never a name.",
        "# `python3 generator check` says what changed since, `python3 generator reviewed` writes the file.",
        f"lesson: {_quoted(lesson)}",
    ]
    lines = [line for one in reviews for line in _review(one)]
    return "\n".join([*head, "reviews:" if lines else "reviews: []", *lines]) + "\n"


def _review(one: Review) -> Iterator[str]:
    yield f"  - by: {_role(one)}"
    yield f"    on: {_quoted(one.on)}"
    yield f"    languages: [{', '.join(map(_quoted, one.languages))}]"
    yield "    numbers:" if one.numbers else "    numbers: {}"
    for name, number in one.numbers.items():
        yield f"      {_quoted(name)}: {_number(number)}"
    yield "    facts:" if one.facts else "    facts: {}"
    for name, says in one.facts.items():
        yield f"      {_quoted(name)}: {_quoted(says)}"
    yield "    texts:" if one.texts else "    texts: {}"
    for language, marks in one.texts.items():
        yield f"      {_quoted(language)}:" if marks else f"      {_quoted(language)}: {{}}"
        for name, every in marks.items():
            yield f"        {_quoted(name)}: [{', '.join(map(_quoted, every))}]"


def _role(one: Review) -> str:
    if set(one.by) == {OWN}:
        return _quoted(one.by[OWN])
    return f"{{{', '.join(f'{_quoted(tag)}: {_quoted(says)}' for tag, says in one.by.items())}}}"


def _number(one: ReadNumber) -> str:
    value = digits(one.value)
    return f"{{kind: {one.kind}, value: {value}, unit: {one.unit}, of: {_quoted(one.of)}}}"


def _quoted(text: str) -> str:
    """In quotes, which YAML reads the way JSON does: a mark such as ``123e45`` is no number."""
    return json.dumps(text, ensure_ascii=False)
