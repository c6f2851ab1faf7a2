"""A lesson of few moves has others of the library to deal from; one of three or more has its own."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from generator.compute.more_moves import more_moves
from generator.model.move import Noise, Room
from generator.model.pose import Hold, Support
from tests.project import GOOD, library, worked

TWO = "moves: [march, side-step]"


def test_a_lesson_of_two_moves_has_two_more_that_need_nothing_and_nobody_hears(
    tmp_path: Path,
) -> None:
    more = more_moves(worked(tmp_path, GOOD))
    assert len(more) == 2
    assert not {"march", "side-step"} & more.keys()
    for move in more.values():
        assert move.room is Room.ONE_SPOT
        assert move.noise is Noise.QUIET
        assert {(pose.support, pose.hold) for pose in move.poses} == {(Support.FLOOR, Hold.NOTHING)}
        assert move.seated_poses


def test_a_move_that_stands_in_two_rows_is_one_move(tmp_path: Path) -> None:
    assert len(more_moves(worked(tmp_path, GOOD.replace(TWO, "moves: [march, march]")))) == 3


def test_a_lesson_of_three_moves_deals_its_own(tmp_path: Path) -> None:
    third = "        - [{food: apple-raw, amount: 1 large}, {food: bagel-plain, amount: 1 bagel}]\n"
    three = GOOD.replace("      solve:", f"{third}      solve:")
    three = three.replace(TWO, "moves: [march, side-step, toe-tap]")
    assert more_moves(worked(tmp_path, three)) == {}


def test_a_lesson_without_moves_deals_nothing(tmp_path: Path) -> None:
    begin, end = GOOD.index("  - move:"), GOOD.index("  - talk:")
    still = (GOOD[:begin] + GOOD[end:]).replace("[gap, count, total]", "[gap, total]")
    assert more_moves(worked(tmp_path, still)) == {}


def test_a_library_of_few_moves_brings_what_it_has(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD)
    held = {name: library().moves[name] for name in ("march", "side-step", "star-jump")}
    assert more_moves(replace(result, library=replace(library(), moves=held))) == {}
