"""Sites of many lessons, and the same words for plain MkDocs with a theme of one line."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from itertools import cycle, islice
from pathlib import Path

from bench.measuring.row import NothingMeasuredError
from tests.site_project import ROOT, copy_project

BARE = "<!doctype html><html lang=en><meta charset=utf-8><title>{{ page.title }}</title>{{ page.content }}"
FOOD = "bench-food"
"""A food that the first lesson alone uses."""


def make_ours(project: Path, lessons: int) -> Path:
    """The demo's lessons over and over under other names, without their videos, translations, papers and order.

    Plain MkDocs makes no PDF files either. Two lessons of one place in the lists would be asked about in every build.
    """
    copy_project(project, lessons=False)
    sources = sorted((ROOT / "lessons").glob("*/lesson.yaml"))
    texts = [_without("video|order", file.read_text("utf-8")) for file in sources]
    for number, text in enumerate(islice(cycle(texts), lessons)):
        folder = project / "lessons" / f"lesson-{number:05}"
        folder.mkdir()
        titled = re.sub(r"^title: .*", f"title: Lesson {number}", text, count=1, flags=re.MULTILINE)
        (folder / "lesson.yaml").write_text(titled, "utf-8")
    _give_it_a_food(project)
    return project


def _without(keys: str, text: str) -> str:
    return re.sub(rf"^(?:{keys}):.*\n(?:[ ].*\n)*", "", text, flags=re.MULTILINE)


def _give_it_a_food(project: Path) -> None:
    """The first food of the first lesson under a name of its own, in the library and in that lesson."""
    lesson = project / "lessons/lesson-00000/lesson.yaml"
    text = lesson.read_text("utf-8")
    name = _found(r"food: ([\w-]+)", text)
    foods = project / "site_data/foods.yaml"
    library = foods.read_text("utf-8")
    entry = _found(rf"^  {name[1]}:\n(?:    .*\n)+", library)
    copied = entry[0].replace(f"  {name[1]}:", f"  {FOOD}:", 1)
    copied = re.sub(r"fdc: \d+", "fdc: 1", copied)  # no record stands there twice
    foods.write_text(library.replace(entry[0], entry[0] + copied, 1), "utf-8")
    # In the names of its numbers too: rows are called by their foods.
    named = re.sub(rf"(?<![a-z-]){name[1]}(?![a-z-])", FOOD, text)
    lesson.write_text(named, "utf-8")


def change_lesson(project: Path) -> None:
    """Another word in one lesson."""
    file = project / "lessons/lesson-00000/lesson.yaml"
    text = file.read_text("utf-8")
    file.write_text(
        re.sub(r"^title: (.*)", r"title: \1 again", text, count=1, flags=re.MULTILINE), "utf-8"
    )


def change_food(project: Path) -> None:
    """Another record title for the food that one lesson uses."""
    file = project / "site_data/foods.yaml"
    text = file.read_text("utf-8")
    found = _found(rf"^  {FOOD}:\n(?:    .*\n)*?    record: \"?", text)
    file.write_text(text[: found.end()] + "Again, " + text[found.end() :], "utf-8")


def _found(pattern: str, text: str) -> re.Match[str]:
    found = re.search(pattern, text, re.MULTILINE)
    if found is None:
        raise NothingMeasuredError(f"nothing like {pattern} stands there any more")
    return found


def make_plain(project: Path, site: Path) -> Path:
    """The words of every page of a site of ours as Markdown paragraphs."""
    (project / "theme").mkdir(parents=True)
    (project / "theme/main.html").write_text(BARE, "utf-8")
    (project / "mkdocs.yml").write_text(
        "site_name: Plain\ntheme: {name: null, custom_dir: theme}\nplugins: []\nuse_directory_urls: false\n",
        "utf-8",
    )
    for page in site.rglob("*.html"):
        file = (project / "docs" / page.relative_to(site)).with_suffix(".md")
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text("\n\n".join(words(page.read_text("utf-8"))), "utf-8")
    return project


def words(html: str) -> list[str]:
    """The texts of a page, one paragraph each, safe as Markdown."""
    found: list[str] = []
    reader = HTMLParser()
    reader.handle_data = lambda data: found.append(data.strip())  # type: ignore[method-assign]  # shorter than a class
    reader.feed(re.sub(r"<(script|style)\b.*?</\1>", "", html, flags=re.DOTALL))
    return [re.sub(r"([\\`*_{}\[\]<>#])", r"\\\1", text) for text in found if text]
