"""Words of guilt and payment on hand-written pages are asked about at their line, in any language of the site."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.check.page_words import page_words
from generator.cli.commands import commands as main
from generator.problems import Weight
from tests.project import ROOT
from tests.site_project import copy_project, small_lesson, write_lesson


@pytest.mark.parametrize(
    ("text", "tag", "at"),
    [
        ("# A\n\nNow burn it off.\n", "en", ["3:5"]),
        ("- One.\n- No guilt.\n", "en", ["2:6"]),
        ("# A\n\nSin culpa.\n", "es", ["3:5"]),
        ("Do not say `burn it off`, nor `guilt`.\n", "en", []),
        ("```\nburn it off\n```\n\nNow burn it off.\n", "en", ["5:5"]),
        ("See [this](guilt.html). <!-- no guilt -->\n", "en", []),
    ],
)
def test_a_page(text: str, tag: str, at: list[str]) -> None:
    found = list(page_words("lessons/a.md", text, tag))
    assert [f"{one.place.line}:{one.place.column}" for one in found] == at
    assert all(one.weight is Weight.QUESTION and one.hint for one in found)


def test_check_asks_about_the_pages_of_each_language(tmp_path: Path) -> None:
    folder = copy_project(tmp_path, lessons=False)
    write_lesson(folder, "small", small_lesson())
    for path, text in (
        ("a.md", "Burn it off."),
        ("es/a.md", "Sin culpa."),
        ("small/a.md", "Guilt."),
    ):
        (folder / "lessons" / path).parent.mkdir(exist_ok=True)
        (folder / "lessons" / path).write_text(f"# A\n\n{text}\n", "utf-8")
    done = CliRunner().invoke(main, ["check", "--root", str(folder)], catch_exceptions=False)
    for path in ("a.md:3:1", "es/a.md:3:5"):
        assert f"lessons/{path}: " in done.output


def test_the_pages_of_the_demo_have_none() -> None:
    pages = [*(ROOT / "lessons").glob("*.md"), *(ROOT / "lessons/guide").glob("*.md")]
    told = [one for page in pages for one in page_words(page.name, page.read_text("utf-8"), "en")]
    spanish = (ROOT / "lessons/es").glob("*.md")
    told += [
        one for page in spanish for one in page_words(page.name, page.read_text("utf-8"), "es")
    ]
    assert list(map(str, told)) == []
