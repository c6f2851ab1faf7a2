"""Compiled templates are kept, and a damaged one, or one of another text, is compiled anew."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from jinja2 import DictLoader, Environment

from generator.present.assets.compiled import Compiled


class Counting(Environment):
    """Counts what it compiles."""

    compiled = 0

    def _generate(self, *given: object, **named: object) -> str:
        self.compiled += 1
        return super()._generate(*given, **named)  # type: ignore[arg-type]


def filled(kept: Path, text: str = "{{ 1 + n }}") -> tuple[str, int]:
    """A page, and how many templates were compiled for it."""
    environment = Counting(loader=DictLoader({"page": text}), bytecode_cache=Compiled(kept))
    page = environment.get_template("page").render(n=1)
    return page, environment.compiled


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[Path]:
    folder = tmp_path / "deep" / "templates"
    assert filled(folder) == ("2", 1)
    yield folder
    assert [file.name for file in folder.iterdir() if "." in file.name] == []


def test_a_template_is_compiled_once(kept: Path) -> None:
    assert filled(kept) == ("2", 0)


def test_another_text_under_the_same_name_is_another_template(kept: Path) -> None:
    assert filled(kept, "{{ 2 + n }}") == ("3", 1)


@pytest.mark.parametrize("place", [0, 20, -1])
def test_a_damaged_one_is_never_used(kept: Path, place: int) -> None:
    (file,) = kept.iterdir()
    held = bytearray(file.read_bytes())
    held[place] ^= 1
    file.write_bytes(held)
    assert filled(kept) == ("2", 1)
    assert filled(kept) == ("2", 0)


def test_where_nothing_can_be_kept_pages_are_made_all_the_same(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    assert filled(tmp_path / "file" / "templates") == ("2", 1)
