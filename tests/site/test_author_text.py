"""What an educator writes is shown as text: it never becomes markup, script or template."""

from __future__ import annotations

import json
import re
from collections import Counter
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest
import yaml

from tests.hostile import twice
from tests.html_page import pages, read_page, text
from tests.site_project import build_project, copy_project, write_lesson

HOSTILE = (
    "</title></script></textarea><script>alert(1)</script><b onclick='x' title=\"y\">bold</b> & &lt; "
    "{{ view.page }} {% for %} <!-- ]]> --"
)
UNBRACED = HOSTILE.replace("{", "(").replace("}", ")")
"""For texts of the interface, whose braces have a meaning."""
LONGEST = 120
"""Signs of a programme's name."""
PLAIN = "Nothing to see here"
CODE = ("<script>", "{{ view.page }}", "{% for %}", "<b onclick")


def lesson(words: str) -> dict[str, object]:
    """A lesson with the same words wherever an educator may write some."""
    told = twice(words)
    food = {"name": words, "value": 120, "source": words, "amount": words}
    return {
        "title": told,
        "summary": told,
        "grades": "3-5",
        "minutes": 10,
        "you_need": [told],
        "goals": [told],
        "stops": [
            {
                "ask": {"id": "ask", "prompt": told, "hint": told, "reveal": told},
                "title": told,
                "say": told,
            },
            {
                "compare": {
                    "id": "lunch",
                    "title": told,
                    "measure": "energy",
                    "sides": [told, f"other {told}"],
                    "prompt": told,
                    "reveal": told,
                    "rows": [[food, {"food": "apple-raw", "amount": "1 medium", "name": words}]],
                    "solve": ["gap", "count", "total"],
                }
            },
            {"move": {"for": "lunch", "one_move_per": 10, "moves": ["march"], "prompt": told}},
            {"talk": {"id": "talk", "prompt": told, "ideas": [told]}},
        ],
    }


def site_with(folder: Path, words: str, interface: str) -> Path:
    project = copy_project(folder, lessons=False)
    write_lesson(project, "small", lesson(words))
    site = project / "site_data/site.yaml"
    settings = yaml.safe_load(site.read_text("utf-8")) | {
        "programme": words[:LONGEST],
        "programme_in": {},
    }
    site.write_text(yaml.safe_dump(settings, allow_unicode=True), "utf-8")
    names = project / "site_data/words/en.yaml"
    texts = yaml.safe_load(names.read_text("utf-8")) | dict.fromkeys(
        ("right", "hint", "check"), interface
    )
    names.write_text(yaml.safe_dump(texts, allow_unicode=True), "utf-8")
    return build_project(project)


@pytest.fixture(scope="module")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site full of words that look like markup."""
    return site_with(tmp_path_factory.mktemp("hostile"), HOSTILE, UNBRACED)


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The same site with plain words."""
    return site_with(tmp_path_factory.mktemp("plain"), PLAIN, PLAIN)


def bones(root: Element) -> Counter[tuple[str, tuple[str, ...]]]:
    """Every element with the names of its attributes, counted."""
    return Counter((str(each.tag), tuple(sorted(each.attrib))) for each in root.iter())


def test_the_words_of_an_educator_change_no_markup(hostile: Path, plain: Path) -> None:
    assert [page.relative_to(hostile) for page in pages(hostile)] == [
        page.relative_to(plain) for page in pages(plain)
    ]
    for page in pages(hostile):
        same = read_page(plain / page.relative_to(hostile))
        assert bones(read_page(page)) == bones(same), page


def test_they_are_read_as_they_were_written(hostile: Path) -> None:
    root = read_page(hostile / "small/index.html")
    assert text(next(root.iter("h1"))) == " ".join(HOSTILE.split())
    assert HOSTILE in (next(root.iter("title")).text or "")
    for page in pages(hostile):
        shown = text(read_page(page))
        assert all(code in shown for code in CODE), page


def test_a_script_says_them_as_they_were_written(hostile: Path) -> None:
    scripts = [file.read_text("utf-8") for file in hostile.glob("assets/*-en-US.js")]
    written = [
        json.loads(text)
        for script in scripts
        for text in re.findall(r'"right": ?("(?:[^"\\]|\\.)*")', script)
    ]
    assert written
    assert set(written) == {UNBRACED}


@pytest.mark.parametrize(
    "address", ["javascript:alert(1)", "JaVaScRiPt:alert(1)", "data:text/html,x", "vbscript:x"]
)
def test_a_link_in_a_prompt_cannot_run_anything(tmp_path: Path, address: str) -> None:
    project = copy_project(tmp_path, lessons=False)
    write_lesson(
        project, "small", lesson(f"[look]({address}) ![seen](https://elsewhere.invalid/x.png)")
    )
    for page in pages(build_project(project)):
        for each in read_page(page).iter():
            assert (
                not each.get("href", "").lower().startswith(("javascript:", "data:", "vbscript:"))
            )
            assert "elsewhere.invalid" not in each.get("src", "")  # the figures of moves are ours
