"""A reading holds for what was read: whatever is changed at random, exactly that falls away and nothing else."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.author.reviewed import review_of
from generator.author.reviewed_text import reviewed_text
from generator.compute.result import LessonResult
from generator.compute.reviewed import HeldReview, Standing, held_reviews
from generator.model.reviewed import OWN
from generator.model.texts import lesson_texts
from generator.write.reviewed import write_reviewed
from tests.project import worked

LESSON = """\
title: Two breakfasts
summary: Find the gap of {breakfast.total.gap}.
grades: 3-5
minutes: 10
goals: [Subtract., Count in tens.]
stops:
  - ask:
      id: guess
      prompt: Which side holds more?
      reveal: We will see.
      choices: [{says: At home, right: true}, {says: On the way}]
  - compare:
      id: breakfast
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]
        - [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]
        - [{food: water-tap, amount: 8 fl oz}, {food: apple-pie, amount: 1 slice}]
      solve: [gap, count, total]
  - move:
      id: count-it
      for: breakfast
      one_move_per: 10
      moves: [march, side-step, wall-push]
  - talk:
      id: table
      prompt: What do you like?
      ideas: [Something warm, Half of each, Water with it]
"""
Data = dict[str, Any]
Edit = Callable[[Data, int], None]
FOODS = [
    {"food": "banana-raw", "amount": "1 medium"},
    {"food": "pizza-cheese", "amount": "1 slice"},
    {"food": "oatmeal-cooked", "amount": "100 g"},
]


def stop(data: Data, kind: str) -> Data:
    found: Data = next(one[kind] for one in data["stops"] if kind in one)
    return found


def row(data: Data, number: int) -> list[Data]:
    found = stop(data, "compare")["rows"][number % 3]
    foods: list[Data] = found["foods"] if isinstance(found, dict) else found
    return foods


def swap_rows(data: Data, number: int) -> None:
    for rows in (stop(data, "compare")["rows"], stop(data, "move")["moves"]):
        rows.insert(0, rows.pop(number % 3))


def swap_sides(data: Data, number: int) -> None:
    row(data, number).reverse()


def change_food(data: Data, number: int) -> None:
    row(data, number)[number % 2] = dict(FOODS[number % len(FOODS)])


def name_a_row(data: Data, number: int) -> None:
    rows, at = stop(data, "compare")["rows"], number % 3
    taken = {one["id"] for one in rows if isinstance(one, dict)}
    if (name := f"named-{number}") not in taken:
        rows[at] = {"id": name, "foods": row(data, number)}


def change_a_text(data: Data, number: int) -> None:
    stop(data, "talk")["prompt"] = f"What else, {number % 9} times over?"


def swap_ideas(data: Data, number: int) -> None:
    ideas = stop(data, "talk")["ideas"]
    ideas.insert(0, ideas.pop(number % len(ideas)))


def insert_an_idea(data: Data, number: int) -> None:
    stop(data, "talk")["ideas"].insert(number % 2, f"Idea {number % 9}")


def insert_a_stop(data: Data, number: int) -> None:
    talk = {"prompt": f"And you, said {number}?", "ideas": ["Now"], "id": f"more-{number}"}
    if all(one.get("talk", {}).get("id") != talk["id"] for one in data["stops"]):
        data["stops"].insert(0 if number % 2 else len(data["stops"]), {"talk": talk})


def other_answer_is_right(data: Data, _: int) -> None:
    first, second = stop(data, "ask")["choices"]
    first["right"], second["right"] = not first.get("right", False), not second.get("right", False)


def other_step(data: Data, number: int) -> None:
    stop(data, "move")["one_move_per"] = (10, 5, 20)[number % 3]


def rename_a_stop(data: Data, number: int) -> None:
    compare, name = stop(data, "compare"), f"meal-{number % 5}"
    if compare["id"] != name and name not in compare.get("formerly", []):
        compare["formerly"] = [*compare.get("formerly", []), compare["id"]]
        compare["id"] = stop(data, "move")["for"] = name
        data["summary"] = data["summary"].replace(compare["formerly"][-1] + ".", name + ".")


EDITS: tuple[Edit, ...] = (
    swap_rows,
    swap_sides,
    change_food,
    name_a_row,
    change_a_text,
    swap_ideas,
    insert_an_idea,
    insert_a_stop,
    other_answer_is_right,
    other_step,
    rename_a_stop,
)


def plain_numbers(result: LessonResult) -> dict[str, tuple[object, ...]]:
    """Each number of a ledger by its name: its value, and what the ledger's own fields say it is of."""
    return {
        figure.id: (
            result.lesson.file.stops[_index(result, figure.stop)].kind,
            figure.kind,
            figure.value,
            figure.unit,
            figure.side,
            tuple(
                sorted((held.id, held.item.amount or "") for held in figure.foods)
                if figure.row == "total"
                else ((held.id, held.item.amount or "") for held in figure.foods)
            ),
            figure.move,
        )
        for figure in result.figures
    }


def _index(result: LessonResult, name: str) -> int:
    return [ids.stop for ids in result.lesson.ids].index(name)


TEXTS = {"title", "summary", "prompt", "reveal", "says", "name", "source"}
LISTS = {"goals", "ideas", "sides"}


def plain_texts(data: Data) -> set[tuple[str, ...]]:
    """The texts of a lesson file as YAML has them, each with its stop, its key, and whether it is the right choice."""
    found: set[tuple[str, ...]] = set()

    def walk(value: Any, where: str, right: str) -> None:
        for key, one in value.items() if isinstance(value, dict) else ():
            if key in TEXTS and isinstance(one, str):
                stands = "" if key in {"name", "source"} else where
                found.add((stands, key if stands or not where else "own", right, one))
            elif key in LISTS:
                found.update((where, key, "", text) for text in one)
            else:
                down(one, where)

    def down(one: Any, where: str) -> None:
        for inner in one if isinstance(one, list) else [one]:
            if isinstance(inner, list):
                down(inner, where)
            else:
                right = str(bool(inner.get("right"))) if isinstance(inner, dict) else ""
                walk(inner, where, right if isinstance(inner, dict) and "says" in inner else "")

    walk({key: one for key, one in data.items() if key != "stops"}, "", "")
    for one in data["stops"]:
        ((kind, inner),) = one.items()
        # its names change, and what stands in it is known by its kind; other talks have ids of their own
        walk(inner, f"{kind} {inner['id'] if kind == 'talk' else ''}", "")
    return found


def reviewed_and_edited(
    edits: list[tuple[int, int]],
) -> tuple[Data, Data, LessonResult, LessonResult]:
    """The lesson as it was read, and as it is now with its file of readings beside it."""
    before = yaml.safe_load(LESSON)
    after = copy.deepcopy(before)
    for at, number in edits:
        EDITS[at](after, number)
    with TemporaryDirectory() as folder:
        first = worked(Path(folder), json.dumps(before))
        review = review_of({"en": first}, {OWN: "registered dietitian"}, "2026-03-14")
        write_reviewed(Path(folder) / "lessons/meal", reviewed_text("meal", [review]))
        return before, after, first, worked(Path(folder), json.dumps(after))


def held(result: LessonResult) -> HeldReview:
    (one,) = held_reviews(result)
    return one


@settings(max_examples=80)
@given(
    st.lists(
        st.tuples(st.integers(0, len(EDITS) - 1), st.integers(0, 1000)), min_size=0, max_size=5
    )
)
def test_exactly_what_changed_falls_away(edits: list[tuple[int, int]]) -> None:
    before, after, first, now = reviewed_and_edited(edits)
    one = held(now)
    old, new = plain_numbers(first), plain_numbers(now)
    assert set(one.numbers) == {name for name, of in new.items() if of not in old.values()}
    gone = {name for name, of in old.items() if of not in new.values()}
    assert {name.partition(".")[2] for name in one.numbers_gone} <= {
        name.partition(".")[2] for name in gone
    }
    words = {text[3] for text in plain_texts(after) - plain_texts(before)}
    shown = {text.path: text.text for text in lesson_texts(now.lesson.file)}
    # the words of what fell away, as they are written; a text with braces stands filled in the lesson
    assert {
        now.lesson.fillings[text.path].written
        if text.path in now.lesson.fillings
        else shown[text.path]
        for text in one.texts
        if text.path
    } == words
    lost = plain_texts(before) - plain_texts(after)
    changed = words or one.numbers or gone or lost or one.facts
    assert one.standing is (Standing.BUT_FOR if changed else Standing.WHOLE)
