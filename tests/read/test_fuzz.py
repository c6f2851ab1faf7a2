"""Whatever is typed into a lesson, reading ends in a lesson or in problems that point into the file."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from generator.check import check_lesson
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.problems import Problem
from tests.project import GOOD, library, read

NASTY = (
    "\t", ":", ": ", "- ", "#", " #", '"', "'", "[", "]", "{", "}", "*", "&x ", "!", "|", ">", "%",
    "@", "`", "?", ",", "---", "~", "null", "true", "no", "0", "-1", "1e400", "nan", "1:30",
    "9" * 40, "\x00", "\x07", "\u2028", "\x85", "\ufeff", "é", "🥕", "\\", "\r", "\n", "  ",
    "compare:", "move:", "at:", "id:", "id: main", "food:", "rows:", "for:", "kind:", "none:", "<<: ",
    "1/0 cup", "½ cup", "stops:", "moves: []", "{a: b}", "[[]]", "{}",
)  # fmt: skip
"""What has broken readers of YAML before. Our own list, no source."""


@st.composite
def mutated(draw: st.DrawFn) -> str:
    """The good lesson with a few cuts, pastes, doublings and swaps of lines."""
    text = GOOD
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(text)))
        match draw(st.sampled_from(("paste", "cut", "words", "line", "double", "word"))):
            case "paste":
                text = text[:at] + draw(st.sampled_from(NASTY)) + text[at:]
            case "cut":
                text = text[:at] + text[at + draw(st.integers(1, 40)) :]
            case "words":
                text = text[:at] + draw(st.text(max_size=8)) + text[at:]
            case "line" | "double" as way:
                lines = text.split("\n")
                number = draw(st.integers(0, len(lines) - 1))
                line = lines[number] if way == "double" else lines.pop(number)
                lines.insert(draw(st.integers(0, len(lines))), line)
                text = "\n".join(lines)
            case _:
                words = list(re.finditer(r"[\w.-]+", text))
                word = draw(st.sampled_from(words)) if words else None
                new = draw(st.sampled_from(NASTY))
                text = text[: word.start()] + new + text[word.end() :] if word else new
    return text


def lines_of(text: str) -> list[str]:
    """Lines as YAML ends them."""
    return re.split("\r\n|[\r\n\x85\u2028\u2029]", text)


def held(found: Lesson | list[Problem], text: str) -> None:
    """A lesson that every later step takes, or problems with a place inside the file."""
    if isinstance(found, Lesson):
        result = work_out(found, library())
        assert result.figures is not None
        list(check_lesson(result))
        return
    assert found
    lines = lines_of(text)
    for problem in found:
        assert problem.what
        assert 1 <= problem.place.line <= len(lines), str(problem)
        line = lines[problem.place.line - 1]
        assert 1 <= problem.place.column <= len(line) + 1, str(problem)


@settings(
    max_examples=120, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(text=mutated())
@example(text=GOOD.replace("rows:", "rowz:"))
@example(text="stops: []")
@example(text="- a")
@example(text="video: {file: [a]}\nstops: [{compare: {id: [a], rows: [[{food: [a]}]]}}]")
@example(text="stops: [{move: {for: {a: b}, moves: {a: b}}}, {compare: {rows: {a: b}}}]")
@example(text="stops: [{ask: {at: 5}}, {watch: {from: [1], to: {}}}]")
@example(text='"": 3')
@example(text="stops: [{'': 3}, {ask: {'': 3}}]")
@example(text="video: {captions: {en: {a: b}, '../x': ../y}}")
@example(text=GOOD.replace("value: 110", "&x : 110"))
@example(text="grades: [3]\nminutes: {}\ntitle: 5\nyou_need: {}")
def test_a_mutated_lesson(tmp_path: Path, text: str) -> None:
    held(read(tmp_path, text.encode("utf-8", "surrogatepass")), text.removeprefix("\ufeff"))


@settings(
    max_examples=50, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(data=st.binary(max_size=200), at=st.integers(0, len(GOOD)))
def test_any_bytes(tmp_path: Path, data: bytes, at: int) -> None:
    found = read(tmp_path, GOOD.encode()[:at] + data)
    assert isinstance(found, Lesson) or found


KEYS = st.sampled_from(sorted(set(re.findall(r"\w+(?=:)", GOOD)))) | st.text(max_size=4)
SCALARS = st.sampled_from([*NASTY, *re.findall(r"[\w-]+", GOOD)]) | st.text(max_size=6)


@settings(
    max_examples=80, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(
    data=st.recursive(
        st.none() | st.booleans() | st.integers() | SCALARS,
        lambda inner: st.lists(inner, max_size=4) | st.dictionaries(KEYS, inner, max_size=5),
        max_leaves=30,
    )
)
def test_any_shape_under_the_right_keys(tmp_path: Path, data: object) -> None:
    """JSON is YAML, so any nest of lists and keys can stand where stops should."""
    text = f"{GOOD.split('stops:', maxsplit=1)[0]}stops: {json.dumps(data)}\n"
    held(read(tmp_path, text), text)


@pytest.mark.parametrize("cut", range(0, len(GOOD), 41))
def test_a_lesson_cut_off_anywhere(tmp_path: Path, cut: int) -> None:
    held(read(tmp_path, GOOD[:cut]), GOOD[:cut])
