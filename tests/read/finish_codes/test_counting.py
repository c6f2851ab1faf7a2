"""What the engine counts is what a plain count of the rows gives."""

from __future__ import annotations

import builtins
import random
from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

import pytest

from generator.model.tally import Alike, LessonKey, Reach, RightAnswers, StopDone, Twice
from generator.read.finish_codes.counting import NoEngineError, counted
from generator.read.finish_codes.row import CodeRow


def row(code: str, **other: str) -> CodeRow:
    usual = {
        "lesson": "soup",
        "numbers": "A1",
        "stops": "hello",
        "pairs": "",
        "answers": "",
        "minutes": "10",
    }
    return CodeRow(code=code, **(usual | other))


def test_against_a_plain_count(tmp_path: Path) -> None:
    """12,000 rows, more than go in at once."""
    luck = random.Random(7)  # noqa: S311  # the same numbers every time
    rows = [
        (
            at // 25,
            row(
                f"C{luck.randrange(9_000):06}",
                lesson=luck.choice(["soup", "walk"]),
                numbers=luck.choice(["A1", "B2"]),
                stops=" ".join(one for one in ("hello", "rows", "end") if luck.random() < 0.6),
                pairs=luck.choice(["", "q=rw", "q=wr p=nr", "q=ww p=rr", "q=rn", "q=rr"]),
                answers=luck.choice(["", "gap=f", "gap=l lean=f", "gap=n lean=l", "lean=n"]),
                minutes=luck.choice(["0", "5", "10"]),
            ),
        )
        for at in range(12_000)
    ]
    tally = counted(rows, tmp_path)
    keys = Counter(LessonKey(one.lesson, one.numbers) for _, one in rows)
    assert {one.key: one.codes for one in tally.reach} == keys
    stops = Counter(
        (LessonKey(one.lesson, one.numbers), stop) for _, one in rows for stop in one.stops.split()
    )
    assert {(one.key, one.stop): one.codes for one in tally.stops} == stops
    pairs = Counter(
        (LessonKey(one.lesson, one.numbers), *pair.split("="))
        for _, one in rows
        for pair in one.pairs.split()
    )
    assert tally.twice == tuple(
        Twice(key, question, *(pairs[key, question, told] for told in ("rr", "rw", "wr", "ww")))
        for key, question in sorted({(key, question) for key, question, _ in pairs})
    )
    right = Counter(
        (LessonKey(one.lesson, one.numbers), *answer.split("="))
        for _, one in rows
        for answer in one.answers.split()
    )
    assert tally.right == tuple(
        RightAnswers(
            key,
            answer,
            sum(right[key, answer, how] for how in "fln"),
            right[key, answer, "f"],
            right[key, answer, "l"],
        )
        for key, answer in sorted({(key, answer) for key, answer, _ in right})
    )
    same = Counter((at, one.lesson, one.numbers, one.code) for at, one in rows)
    twins: Counter[LessonKey] = Counter()
    for (_, lesson, numbers, _), times in same.items():
        twins[LessonKey(lesson, numbers)] += times if times > 1 else 0
    assert {one.key: one.codes for one in tally.same} == +twins
    assert tally.same
    assert tally.alike == ()


def test_minutes_that_half_of_the_codes_reach(tmp_path: Path) -> None:
    rows = [(0, row(f"C{at}", minutes=str(at))) for at in (0, 5, 10, 15, 20)]
    assert counted(rows, tmp_path).reach == (Reach(LessonKey("soup", "A1"), 5, 10),)


def files(*codes: Sequence[str]) -> list[tuple[int, CodeRow]]:
    return [(at, row(code)) for at, file in enumerate(codes) for code in file]


@pytest.mark.parametrize(
    ("sent", "alike"),
    [
        ((["A", "B", "C"], ["D", "B", "C"], ["A", "B", "C"]), (Alike(0, 2, 3),)),
        ((["A", "B", "C", "D"], ["A", "B", "C"]), (Alike(0, 1, 3),)),
        ((["A", "B", "C"], ["A", "B", "CC"]), ()),
        ((["A", "B"], ["A", "B"]), ()),
        ((["A", "A", "A"], ["A", "A", "A"]), ()),
        ((["A", "B", "C"], ["C", "B", "A"]), ()),
    ],
    ids=["again", "gone on", "another code", "too few", "all equal", "another order"],
)
def test_files_that_look_like_one_sent_twice(
    tmp_path: Path, sent: tuple[list[str], ...], alike: tuple[Alike, ...]
) -> None:
    assert counted(files(*sent), tmp_path).alike == alike


def test_a_stop_is_counted_of_its_own_lesson(tmp_path: Path) -> None:
    rows = [(0, row("A")), (0, row("B", lesson="walk", stops="hello rows"))]
    assert counted(rows, tmp_path).stops == (
        StopDone(LessonKey("soup", "A1"), "hello", 1),
        StopDone(LessonKey("walk", "A1"), "hello", 1),
        StopDone(LessonKey("walk", "A1"), "rows", 1),
    )


def test_nothing_to_count(tmp_path: Path) -> None:
    assert counted([], tmp_path).reach == ()


def test_without_the_engine(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    real = builtins.__import__

    def refuse(name: str, *rest: Mapping[str, object]) -> object:
        if name == "duckdb":
            raise ModuleNotFoundError(name=name)
        return real(name, *rest)  # type: ignore[arg-type]  # handed on as it came

    monkeypatch.setattr(builtins, "__import__", refuse)
    with pytest.raises(NoEngineError):
        counted([], tmp_path)
