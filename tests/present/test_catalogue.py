"""Every text of the site is said somewhere, and everything that is said is a text of the site."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from generator.present.assets.bundle import sources
from generator.present.assets.script_texts import keys_said
from generator.present.words.families import FAMILIES
from tests.project import ROOT, library

CODE = sorted((ROOT / "generator").rglob("*.py"))
TEMPLATES = [file for end in ("html", "typ") for file in sorted((ROOT / "theme").rglob(f"*.{end}"))]
BY_NAME = re.compile(r"^language_\w+$")
"""What a language calls itself, where CLDR's name is not ours: asked for by a tag the site names."""
SETTINGS = {"locale"}
"""Entries of the words that are no text."""


def words() -> set[str]:
    return set(library().words["en"].texts) - SETTINGS


def constants(file: Path) -> Iterator[str]:
    """Every string that is written in a file of the program."""
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            yield node.value


def said(file: Path) -> Iterator[ast.expr]:
    """What `say` is given first, wherever a file calls it by that name."""
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.Call) and node.args:
            called = node.func
            name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
            if name == "say":
                yield node.args[0]


def test_every_text_is_said_somewhere() -> None:
    written = {text for file in CODE for text in constants(file)}
    written |= {
        key for file in TEMPLATES for key in re.findall(r"[\"'](\w+)[\"']", file.read_text("utf-8"))
    }
    scripts = sources(ROOT / "theme", "js")
    written |= set(keys_said(scripts, scripts))
    written |= {key for family in FAMILIES for key in family.keys}
    assert sorted(key for key in words() - written if not BY_NAME.match(key)) == []


def test_everything_that_is_said_is_a_text() -> None:
    scripts = sources(ROOT / "theme", "js")
    keys = set(keys_said(scripts, scripts)) | {key for family in FAMILIES for key in family.keys}
    for file in TEMPLATES:
        keys |= set(re.findall(r"\bw\(\s*[\"'](\w+)[\"']", file.read_text("utf-8")))
    for file in CODE:
        if file.name != "__main__.py":  # it speaks before there are words
            keys |= {one.value for one in said(file) if isinstance(one, ast.Constant)}
    assert sorted(keys - words()) == []


@pytest.mark.parametrize("file", CODE, ids=lambda file: file.relative_to(ROOT).as_posix())
def test_no_key_is_put_together_where_it_is_said(file: Path) -> None:
    """A key that is written nowhere cannot be searched for, and is missed only in a build."""
    if file.name != "__main__.py":
        assert not [
            ast.unparse(one) for one in said(file) if isinstance(one, ast.JoinedStr | ast.BinOp)
        ]


@pytest.mark.parametrize("file", TEMPLATES, ids=lambda file: file.relative_to(ROOT).as_posix())
def test_no_template_puts_a_key_together(file: Path) -> None:
    assert not re.findall(r"\bw\([^()]*~", file.read_text("utf-8"))


def test_a_family_knows_its_members_only() -> None:
    [allergen] = [family for family in FAMILIES if family.begins == "allergen_"]
    assert allergen.key("tree nuts") == "allergen_tree_nuts"
    with pytest.raises(KeyError, match="has no rye"):
        allergen.key("rye")
