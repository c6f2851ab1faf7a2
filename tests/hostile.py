"""The demo with words that look like markup in every field that an educator may write some into.

The same site with plain words of the same length stands beside it, so that what is made of both can
be compared. Each field has a mark of its own, by which it is found again in what is published.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import yaml

from generator.author.reviewed import keep_review
from generator.model.texts import LessonText, lesson_texts
from generator.problems import LessonError
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from tests.project import put
from tests.site_project import copy_project, make_papers
from tests.stop_examples import example_of

HOSTILE = (
    '</title></script></style></textarea><script>alert(1)</script><img src=x onerror="x"> '
    "\"'><b onclick='x' title=\"y\">bold</b> & &lt; {{ view.page }} {% for %} {{7*7}} <!-- ]]> -- "
    "\ue000x\ue001y\ue002"
)
PLAIN = re.sub(r"[^\w\s]", "x", HOSTILE)
"""As many letters and as many words, so that nothing is laid out otherwise for its length."""
SHORT = "<script>alert(1)</script>'\"><b onclick=x>"
"""For names that may be no longer."""
_VTT = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;"})
HEAD = "title: Each change\nsummary: All of them.\ngrades: 3-5\nminutes: 10\nstops:\n"
"""Before the stops of an example."""
Write = Callable[[str, str], str]
"""Makes the words of a field: what stood there and the field's name."""


def mark(field: str) -> str:
    """A word by which a field is found again: letters alone, for digits are read as numbers."""
    return "zz" + "".join(chr(ord("a") + ord(sign) % 26) for sign in field) + "zz"


def twice(text: str) -> str:
    """A text of a lesson whose braces are meant as braces."""
    return text.replace("{", "{{").replace("}", "}}")


def writer(words: str) -> Write:
    """Puts its mark and the same words behind the text of every field."""
    braced = words.replace("{", "(").replace("}", ")")

    def write(text: str, field: str) -> str:
        # braces have a meaning in the site's own words
        return f"{text} {mark(field)} {braced if field.startswith('words') else words}"

    return write


def write_site(folder: Path, words: str, *papers: str) -> Path:
    """A project like the demo with these words in every field; it makes these papers, or the usual ones."""
    project = copy_project(folder)
    if papers:
        make_papers(project, *papers)
    put(project, f"{HEAD}{example_of('what_if')}", "each-change")
    write = writer(words)
    library = read_library(project)
    lessons = []
    for file in sorted((project / "lessons").glob("*/lesson.yaml")):
        lesson = read_lesson(project, file.relative_to(project).as_posix(), library)
        if isinstance(lesson, list):
            raise LessonError(lesson)
        lessons.append((file, list(lesson_texts(lesson.file))))
    for file, texts in lessons:
        _lesson(file, texts, write)
    for name, change in (("foods", _foods), ("moves", _moves), ("site", _site)):
        _rewrite(
            project / f"site_data/{name}.yaml", lambda data, change=change: change(data, write)
        )
    for file in (project / "site_data/words").glob("*.yaml"):
        _rewrite(file, lambda data: _words(data, write))
    for file in [*(project / "lessons").glob("*.md"), *(project / "lessons/es").glob("*.md")]:
        text = file.read_text("utf-8").replace("<", "(")
        safe = write("", f"page.{file.stem}").replace("<", "&lt;").replace("{", "&#123;")
        file.write_text(f"{text}\n\n## A heading `{safe.replace('`', '')}`\n\n{safe}\n", "utf-8")
    role = f"cook {mark('role')} {_short(write)}"
    keep_review(project, "soup-night", {"": role}, "2026-03-14", ("en", "es"))
    return project


def _rewrite(file: Path, change: Callable[[Any], Any]) -> None:
    data = yaml.load(file.read_text("utf-8"), yaml.CSafeLoader)  # safe, and in C
    file.write_text(json.dumps(change(data), ensure_ascii=False, indent=1), "utf-8")


def _words(data: dict[str, Any], write: Write) -> dict[str, Any]:
    """All but the direction, which is one of two words and is read by nobody."""
    return {
        key: value if key == "direction" else _text(value, f"words.{key}", write)
        for key, value in data.items()
    }


def _text(value: Any, field: str, write: Write) -> Any:
    """Every text in a value with its words, keys as they are."""
    if isinstance(value, dict):
        return {key: _text(one, field, write) for key, one in value.items()}
    if isinstance(value, list):
        return [_text(one, field, write) for one in value]
    return write(value, field) if isinstance(value, str) else value


def _lesson(file: Path, texts: list[LessonText], write: Write) -> None:
    data = yaml.safe_load(file.read_text("utf-8"))
    own: dict[str, str] = {}
    """The educator's own names of foods, by which a translation calls them."""
    for one in texts:
        if one.path[-1] != "amount":  # the library's words, by which a portion is found
            field = field_of(one)
            own[one.text] = write(one.text, "by_words") if one.mark.by_words else ""
            told = one.text + twice(write("", field)) if one.mark.tells else write(one.text, field)
            _set(data, one.path, own[one.text] or told)
    for change in (one for stop in data["stops"] for one in _changes(stop)):
        change["change"] = own.get(change["change"]) or change["change"]  # called by its own name
    file.write_text(json.dumps(data, ensure_ascii=False, indent=1), "utf-8")
    for other in file.parent.glob("lesson.*.yaml"):
        _rewrite(other, lambda told: _translation(told, own, write))
    for captions in file.parent.glob("*.vtt"):
        said = write("", "captions").translate(_VTT)
        blocks = captions.read_text("utf-8").strip().split("\n\n")
        captions.write_text("\n\n".join(_cue(block, said) for block in blocks) + "\n", "utf-8")
    if (file.parent / "recorded.yaml").is_file():
        _rewrite(file.parent / "recorded.yaml", lambda told: _recorded(told, write))


def _changes(stop: dict[str, Any]) -> list[dict[str, Any]]:
    """The changes of a what-if stop, each of which names a food of its comparison."""
    found: list[dict[str, Any]] = (stop.get("what_if") or {}).get("changes", [])
    return found


def field_of(one: LessonText) -> str:
    """A field by its kind of stop and the keys that lead to it: ``compare.sides``."""
    keys = [str(key) for key in one.path if isinstance(key, str)]
    return ".".join(keys[1:] if keys[0] == "stops" else keys)


def _set(data: Any, path: tuple[str | int, ...], text: str) -> None:
    """Put a text where the model has it; a file may have it beside its kind, and a row without a name."""
    *way, last = path
    if way and way[0] == "stops":
        stop = data["stops"][way[1]]
        inside = stop if (path[3] in stop) else stop[way[2]]
        data, way = inside, way[3:]
    for key in way:
        data = data if isinstance(data, list) and isinstance(key, str) else data[key]
    data[last] = text


def _translation(told: dict[str, Any], own: dict[str, str], write: Write) -> dict[str, Any]:
    told.pop("made_from", None)
    foods = told.pop("foods", {})
    new: dict[str, Any] = _text(
        told, "translation", lambda text, field: text + twice(write("", field))
    )
    return new | {"foods": {own[key]: write(text, "translation") for key, text in foods.items()}}


def _cue(block: str, said: str) -> str:
    if "-->" not in block:
        return block
    time, _, text = block.partition("\n")
    return f"{time}\n<v Tilda \"onclick='x'>{text}</v>\n{said}"


def _recorded(told: dict[str, Any], write: Write) -> dict[str, Any]:
    for figure in told["figures"]:
        for food in figure.get("foods", ()):
            food["food"] = write(food["food"], "recorded.food")
            food.pop("fdc", None)  # by which it would be known under any name
    return told


def _foods(data: dict[str, Any], write: Write) -> dict[str, Any]:
    source = data["source"]
    data["source"] = source | {
        key: write(source[key], f"source.{key}") for key in ("name", "licence")
    }
    for food in data["foods"].values():
        for key in ("names", "group", "record", "release"):
            if key in food:
                food[key] = _text(food[key], f"food.{key}", write)
        for portion in food["portions"]:
            portion["record"] = write(portion["record"], "portion.record")
            for language in set(portion["names"]) - {
                "en"
            }:  # the English one is how it is asked for
                portion["names"][language] = write(portion["names"][language], "portion.names")
    return data


def _moves(data: dict[str, Any], write: Write) -> dict[str, Any]:
    for source in data["sources"].values():
        source["name"] = write(source["name"], "energy.name")
    for move in data["moves"].values():
        for texts in move["texts"].values():
            texts |= {key: _text(texts[key], f"move.{key}", write) for key in texts}
    return data


def _short(write: Write) -> str:
    return SHORT if HOSTILE in write("", "x") else re.sub(r"\W", "x", SHORT)


def _site(data: dict[str, Any], write: Write) -> dict[str, Any]:
    short = _short(write)
    standards = {
        code: {"says": {tag: write(says, "standard.says") for tag, says in told["says"].items()}}
        for code, told in data["standards"].items()
    }
    data |= {
        "programme": f"{data['programme']} {mark('programme')} {short}",
        "programme_in": {"es": f"Cocina {mark('programme_in')} {short}"},
        "standards": standards,
    }
    return data | {"publish_recording_pack": True}


def fields(project: Path) -> Iterator[str]:
    """The names of all fields that were written into a project, as ``mark`` knows them."""
    library = read_library(project)
    for file in (project / "lessons").glob("*/lesson.yaml"):
        lesson = read_lesson(project, file.relative_to(project).as_posix(), library)
        if isinstance(lesson, list):
            raise LessonError(lesson)
        for one in lesson_texts(lesson.file):
            if one.path[-1] != "amount":
                yield "by_words" if one.mark.by_words else field_of(one)
    yield from (
        "translation",
        "captions",
        "recorded.food",
        "programme",
        "programme_in",
        "standard.says",
        "role",
    )
    yield from ("food.names", "food.group", "food.record", "portion.record", "portion.names")
    yield from ("source.name", "source.licence", "energy.name")
    yield from (f"move.{key}" for key in ("name", "count_is", "steps", "seated", "care"))
    yield from (f"words.{key}" for key in library.words["en"].texts)
    yield from ("page.care", "page.index", "page.sources", "page.teachers")
