"""Edits that an educator, an editor or an accident makes to a site, chosen by chance."""

from __future__ import annotations

import json
import os
import shutil
from collections.abc import Callable
from pathlib import Path
from random import Random

from tests.engine.small_site import FOODS, lesson_with

Snapshot = dict[str, bytes]
PLACES = ("lessons", "site_data", "theme")


class Hand:
    """Changes a site, and can take back what it did."""

    def __init__(self, root: Path, seed: int) -> None:
        self.root = root
        self.chance = Random(seed)  # noqa: S311  # nothing secret
        self.number = 0
        self.past = [self.snapshot()]

    def edit(self) -> str:
        """Make one edit; says which."""
        self.number += 1
        edit = self.chance.choice(EDITS)
        edit(self)
        self.past.append(self.snapshot())
        return edit.__name__

    def snapshot(self) -> Snapshot:
        """Everything the site is made from."""
        return {
            file.relative_to(self.root).as_posix(): file.read_bytes()
            for place in PLACES
            for file in sorted((self.root / place).rglob("*"))
            if file.is_file()
        }

    def lesson(self) -> Path:
        """Any lesson's folder."""
        return self.chance.choice(
            sorted(file.parent for file in self.root.glob("lessons/*/lesson.yaml"))
        )

    def replace(self, file: Path, old: str, new: str) -> None:
        """Other words in a file, where it has those."""
        file.write_text(file.read_text("utf-8").replace(old, new), "utf-8")

    def write(self, path: str, content: bytes | None) -> None:
        """What a file holds now; nothing removes it."""
        file = self.root / path
        if content is None:
            file.unlink()
        else:
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(content)


def retitle(hand: Hand) -> None:
    file = hand.lesson() / "lesson.yaml"
    lesson = json.loads(file.read_text("utf-8"))
    file.write_text(json.dumps({**lesson, "title": f"Title {hand.number}"}, indent=1), "utf-8")


def other_food(hand: Hand) -> None:
    food = hand.chance.choice(FOODS[1:])
    (hand.lesson() / "lesson.yaml").write_text(
        json.dumps(lesson_with(food, title=f"With {food}")), "utf-8"
    )


def other_amount(hand: Hand) -> None:
    hand.replace(hand.lesson() / "lesson.yaml", "150 g", f"{100 + hand.number} g")


def new_lesson(hand: Hand) -> None:
    folder = hand.root / f"lessons/new-{hand.number}"
    folder.mkdir()
    (folder / "lesson.yaml").write_text(json.dumps(lesson_with("carrot-raw")), "utf-8")


def lesson_gone(hand: Hand) -> None:
    if len(list(hand.root.glob("lessons/*/lesson.yaml"))) > 2:
        shutil.rmtree(hand.lesson())


def lesson_renamed(hand: Hand) -> None:
    hand.lesson().rename(hand.root / f"lessons/renamed-{hand.number}")


def translated(hand: Hand) -> None:
    text = f"title: Título {hand.number}\n"
    (hand.lesson() / "lesson.es.yaml").write_text(text, "utf-8")


def translation_gone(hand: Hand) -> None:
    for file in hand.root.glob("lessons/*/lesson.es.yaml"):
        file.unlink()


def food_figure(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/foods.yaml", "sodium: ", f"sodium: {hand.number % 9}")


def food_name(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/foods.yaml", "en: Banana", "en: Ripe banana")


def food_lost(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/foods.yaml", "bagel-plain:", "bagel-gone:")


def move_name(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/moves.yaml", "name: March", "name: Marching")


def word(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/words/en.yaml", "one half", f"one half {hand.number}")


def programme(hand: Hand) -> None:
    hand.replace(hand.root / "site_data/site.yaml", "programme: ", "programme: Our ")


def style(hand: Hand) -> None:
    file = hand.root / "theme/css/tokens.css"
    file.write_text(file.read_text("utf-8") + f":root{{--new-{hand.number}:1px}}\n", "utf-8")


def page(hand: Hand) -> None:
    name = hand.chance.choice(("index.md", "about.md", "es/about.md", f"page-{hand.number}.md"))
    hand.write(f"lessons/{name}", f"# Page {hand.number}\n\n{{lessons}}\n".encode())


def page_gone(hand: Hand) -> None:
    for file in hand.root.glob("lessons/page-*.md"):
        file.unlink()


def picture(hand: Hand) -> None:
    hand.write("lessons/pot.png", f"picture {hand.number}".encode())
    hand.write("lessons/about.md", b"# About\n\n![A pot](pot.png)\n")


def dead_link(hand: Hand) -> None:
    hand.write("lessons/about.md", b"# About\n\n[x](nowhere.md)\n")


def captions(hand: Hand) -> None:
    for file in hand.root.glob("lessons/*/film.en.vtt"):
        hand.replace(file, "Hello", "Hello again")


def held_back(hand: Hand) -> None:
    """A lesson becomes a draft, or a draft is ready."""
    file = hand.lesson() / "lesson.yaml"
    lesson = json.loads(file.read_text("utf-8"))
    draft = not lesson.get("draft", False)
    file.write_text(json.dumps({**lesson, "draft": draft}, indent=1), "utf-8")


def mistake(hand: Hand) -> None:
    hand.replace(hand.lesson() / "lesson.yaml", "3-5", "9-11")


def reverted(hand: Hand) -> None:
    """Everything as it was at some time."""
    for place in PLACES[:2]:
        shutil.rmtree(hand.root / place)
    for path, content in hand.chance.choice(hand.past).items():
        hand.write(path, content)


def one_file_reverted(hand: Hand) -> None:
    path = hand.chance.choice(sorted(hand.past[0]))
    hand.write(path, hand.past[0][path])


def times_set_back(hand: Hand) -> None:
    """As many bytes as before, and the times there were."""
    file = hand.lesson() / "lesson.yaml"
    before = file.stat()
    text = file.read_text("utf-8")
    file.write_text(
        text.replace("One row.", "One cow.")
        if "One row." in text
        else text.replace("One cow.", "One row."),
        "utf-8",
    )
    os.utime(file, ns=(before.st_atime_ns, before.st_mtime_ns))


def site_touched(hand: Hand) -> None:
    """Somebody's hand, or another program's, in the finished site."""
    files = sorted(file for file in (hand.root / "site").rglob("*") if file.is_file())
    for file in hand.chance.sample(files, 3):
        hand.chance.choice((file.unlink, lambda one=file: one.write_bytes(b"")))()
    hand.write("site/left-over.html", b"of nobody")


def cache_damaged(hand: Hand) -> None:
    files = sorted(file for file in (hand.root / ".cache").rglob("*") if file.is_file())
    for file in hand.chance.sample(files, min(len(files), 4)):
        held = file.read_bytes()
        at = hand.chance.randrange(len(held) + 1)
        file.write_bytes(hand.chance.choice((held[:at], held[:at] + b"\0" + held[at + 1 :], b"")))


def cache_gone(hand: Hand) -> None:
    shutil.rmtree(hand.root / ".cache")


EDITS: tuple[Callable[[Hand], None], ...] = (
    retitle, other_food, other_amount, new_lesson, lesson_gone, lesson_renamed, translated,
    translation_gone, food_figure, food_name, food_lost, move_name, word, programme, style, page,
    page_gone, picture, dead_link, captions, held_back, mistake, reverted, reverted, one_file_reverted,
    one_file_reverted, times_set_back, site_touched, cache_damaged, cache_gone,
)  # fmt: skip
