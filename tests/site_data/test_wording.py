"""No text of the site, the guide or the library holds words that an editor struck out."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NotRequired, TypedDict

import pytest
import yaml

from generator.model.food import Food
from tests.project import ROOT, library


class Rule(TypedDict):
    """One entry of the data, as the file explains it."""

    language: str
    never: str
    why: str
    like: str
    unlike: str
    # Where it is looked for, if not in all texts:
    in_: NotRequired[list[str]]


RULES: list[Rule] = [
    {("in_" if key == "in" else key): value for key, value in rule.items()}
    for rule in yaml.safe_load((ROOT / "tests/examples/wording.yaml").read_text("utf-8"))
]
each_rule = pytest.mark.parametrize(
    "rule", [pytest.param(rule, id=f"{rule['language']}: {rule['like']}") for rule in RULES]
)
KINDS = ("pages", "words", "moves", "lessons", "foods", "portions", "messages")
CODE = re.compile(r"```.*?```|`[^`\n]*`|<[^>\n]*>|\]\([^)\n]*\)|\b[A-Z]{6,}\b", re.DOTALL)
"""What of a page is no words: code, marks, addresses."""
ENGLISH_PAGES = ("README.md", "lessons/*.md", "lessons/guide/*.md", "generator/starter/README.md")
CUE_TIME = re.compile(r"^[\d:.]+ --> .*$", re.MULTILINE)


def texts(kind: str, language: str) -> Iterator[tuple[str, str]]:
    """Where a text stands, and the text."""
    match kind:
        case "pages":
            globs = ENGLISH_PAGES if language == "en" else (f"lessons/{language}/*.md",)
            for file in (file for each in globs for file in sorted(ROOT.glob(each))):
                yield _named(file), CODE.sub(" ", file.read_text("utf-8"))
        case "words":
            yield from _values(ROOT / f"site_data/words/{language}.yaml")
        case "moves":
            for name, move in library().moves.items():
                told = move.texts[language]
                for said in (told.name, told.count_is, *told.steps, told.seated, told.care):
                    yield name, said
        case "lessons":
            yield from _of_lessons(language)
        case "foods":
            yield from ((food.id, food.entry.names[language]) for food in _foods())
        case "portions":
            for food in _foods():
                yield from ((food.id, one.names[language]) for one in food.entry.portions)
        case _:
            yield from _messages() if language == "en" else ()


def _of_lessons(language: str) -> Iterator[tuple[str, str]]:
    name = "lesson.yaml" if language == "en" else f"lesson.{language}.yaml"
    files = (*sorted(ROOT.glob(f"lessons/*/{name}")), ROOT / "site_data/new_lesson.yaml")
    for file in files if language == "en" else files[:-1]:
        yield from _values(file)
    for file in sorted(ROOT.glob(f"lessons/*/*.{language}.vtt")):
        yield _named(file), " ".join(CUE_TIME.sub("", file.read_text("utf-8")).split())


def _values(file: Path) -> Iterator[tuple[str, str]]:
    """Every text of a YAML file, with the keys that lead to it."""
    waiting: list[tuple[str, object]] = [(_named(file), yaml.safe_load(file.read_text("utf-8")))]
    while waiting:
        where, value = waiting.pop()
        if isinstance(value, dict):
            waiting += [(f"{where}: {key}", one) for key, one in value.items()]
        elif isinstance(value, list):
            waiting += [(where, one) for one in value]
        elif isinstance(value, str) and ": made_from:" not in where:
            yield where, value


@cache
def _messages() -> tuple[tuple[str, str], ...]:
    """What the program says in a terminal: strings of several words that are no docstring."""
    found: list[tuple[str, str]] = []
    for file in sorted((ROOT / "generator").rglob("*.py")):
        tree = ast.parse(file.read_text("utf-8"))
        docs = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
        found += [
            (f"{_named(file)}:{node.lineno}", node.value)
            for node in ast.walk(tree)
            if isinstance(node, ast.Constant)
            and isinstance(node.value, str)
            and id(node) not in docs
            and node.value.count(" ") > 1
        ]
    return tuple(found)


def _foods() -> tuple[Food, ...]:
    return tuple(library().foods.values())


def _named(file: Path) -> str:
    return file.relative_to(ROOT).as_posix()


@each_rule
def test_struck_out_words_stand_nowhere(rule: Rule) -> None:
    found = [
        f"{where}: {one[0]} ({text[max(0, one.start() - 30) : one.end() + 30]!r})"
        for kind in rule.get("in_", KINDS)
        for where, text in texts(kind, rule["language"])
        for one in re.finditer(rule["never"], text, re.IGNORECASE)
    ]
    assert found == [], rule["why"]


@each_rule
def test_each_pattern_finds_what_it_is_for_and_no_more(rule: Rule) -> None:
    assert re.search(rule["never"], rule["like"], re.IGNORECASE)
    assert not re.search(rule["never"], rule["unlike"], re.IGNORECASE)
    assert set(rule.get("in_", KINDS)) <= set(KINDS)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_text_is_read(kind: str, language: str) -> None:
    if (kind, language) != ("messages", "es"):
        assert len(list(texts(kind, language))) > 3
