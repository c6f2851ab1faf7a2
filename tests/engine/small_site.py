"""A small site in all that a site can have, built in this process in a moment."""

from __future__ import annotations

import json
import shutil
from functools import cache, partial
from pathlib import Path

import yaml

from generator.build import build
from generator.plugin import write_by_hand
from generator.problems import LessonError
from tests.site_project import (
    ROOT,
    copy_project,
    hashes,
    make_papers,
    small_lesson,
    write_lesson,
)

FOODS = ("apple-raw", "pizza-cheese", "banana-raw", "carrot-raw", "bagel-plain")
MOVES = ("march", "side-step", "wall-push")


def small_site(root: Path) -> Path:
    """Four lessons, one with a film and one translated, five foods, three moves, two pages by hand."""
    copy_project(root, lessons=False)
    make_papers(root, "worksheet", "a4")
    for name, entries in (("foods", FOODS), ("moves", MOVES)):
        (root / f"site_data/{name}.yaml").write_text(_only(name, entries), "utf-8")
    for name, food in zip(("one", "two", "three"), FOODS[1:], strict=False):
        write_lesson(root, name, lesson_with(food, title=f"Lesson {name}"))
    demo = Path(__file__).parents[2] / "lessons/river-walk"
    film = root / "lessons/film"
    write_lesson(
        root,
        "film",
        lesson_with(
            "banana-raw",
            title="Filmed",
            video={"file": "film.mp4", "captions": {"en": "film.en.vtt"}},
        ),
    )
    shutil.copy(demo / "river-walk.mp4", film / "film.mp4")
    (film / "film.en.vtt").write_text("WEBVTT\n\n00:01.000 --> 00:04.000\nHello there.\n", "utf-8")
    (root / "lessons/two/lesson.es.yaml").write_text(
        "title: Lección dos\nsummary: Una fila.\n", "utf-8"
    )
    (root / "lessons/index.md").write_text("# Welcome\n\nCome in.\n", "utf-8")
    (root / "lessons/about.md").write_text(
        "# About\n\n{lessons}\n\n[One](one/index.html#lunch)\n", "utf-8"
    )
    (root / "lessons/es").mkdir()
    (root / "lessons/es/about.md").write_text("# Acerca\n\nHola.\n", "utf-8")
    return root


def lesson_with(food: str, **fields: object) -> dict[str, object]:
    """A lesson that compares an apple with this food."""
    text = json.dumps(small_lesson(**fields)).replace("pizza-cheese", food)
    text = text.replace('"1 slice"', '"150 g"')
    made: dict[str, object] = json.loads(text)
    return made


def built(root: Path, *, anew: bool = False) -> dict[str, str] | list[str]:
    """What every file of the site holds after a build, or what must be put right."""
    try:
        build(root, partial(write_by_hand, root), anew=anew)
    except LessonError as error:
        return [str(problem) for problem in error.problems]
    return hashes(root / "site")


def built_cold(root: Path, elsewhere: Path) -> dict[str, str] | list[str]:
    """The same for a copy of the site that nothing is known of."""
    shutil.rmtree(elsewhere, ignore_errors=True)
    shutil.copytree(root, elsewhere, ignore=shutil.ignore_patterns("site", ".cache"))
    return built(elsewhere)


@cache
def _only(key: str, names: tuple[str, ...]) -> str:
    """A file of the library with only some of its entries."""
    data = yaml.load((ROOT / f"site_data/{key}.yaml").read_text("utf-8"), yaml.CSafeLoader)
    data[key] = {name: data[key][name] for name in names}
    text: str = yaml.dump(data, Dumper=yaml.CSafeDumper, allow_unicode=True, sort_keys=False)
    return text
