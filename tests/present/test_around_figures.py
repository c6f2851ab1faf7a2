"""A firm chair stands at the wall, hands lie on a wall, a rope turns, a bottle is held."""

from __future__ import annotations

import re

import pytest

from generator.model.pose import Hold, Pose, Support, View
from generator.present.pictures.figures import figure
from generator.present.pictures.figures.around import BEHIND_CHAIR, GROUND, wall_behind
from generator.present.pictures.figures.skeleton import (
    FLOOR,
    WALL,
    skeleton,
)
from tests.present.figure_poses import (
    MOVES,
    drawn,
    each_pose,
)


def rope(pose: Pose) -> tuple[tuple[float, float], tuple[float, float], float]:
    """Both ends of a rope, and the height of its middle, by the polynomials of a cubic curve."""
    [(x0, y0, y1, y2, x3, y3)] = re.findall(
        r'd="M([\d.]+) ([\d.]+)C-?[\d.]+ (-?[\d.]+) -?[\d.]+ (-?[\d.]+) ([\d.]+) ([\d.]+)"',
        figure(pose),
    )
    middle = (float(y0) + 3 * float(y1) + 3 * float(y2) + float(y3)) / 8
    return (float(x0), float(y0)), (float(x3), float(y3)), middle


@each_pose
def test_hands_meet_the_wall(pose: Pose) -> None:
    if pose.support is Support.WALL:
        assert [arm[-1].x for arm in skeleton(pose).arms] == pytest.approx([WALL, WALL], abs=0.5)


def test_standing_up_leaves_feet_and_chair_where_they_are() -> None:
    sitting, standing = MOVES["chair-stand"].poses
    assert skeleton(sitting).legs[1][2].x == pytest.approx(skeleton(standing).legs[1][2].x)
    chair = [drawn(figure(pose).split(' d="')[1].split('"')[0])[1:] for pose in (sitting, standing)]
    assert chair[0] == chair[1]


@each_pose
def test_a_chair_stands_firm_with_its_back_to_the_wall(pose: Pose) -> None:
    """No wheels, four legs (two are seen) on the floor, the wall behind; nobody leans into the wall."""
    if pose.support not in {Support.CHAIR, Support.CHAIR_BEHIND}:
        return
    lines, chair = (drawn(path) for path in re.findall(r' d="([^"]*)"', figure(pose))[:2])
    assert [y for _, y in (point for line in chair for point in line)].count(GROUND - 1) == 2
    assert "circle" not in figure(pose)
    if pose.view is View.FRONT:
        assert len(lines) == 3, "the floor, and the foot of the wall on both sides of the chair"
        return
    wall = lines[1]
    assert wall[0][0] == wall[1][0] == pytest.approx(wall_behind(pose), abs=0.1)
    assert min(x for line in chair for x, _ in line) - wall[0][0] == pytest.approx(BEHIND_CHAIR)
    body = skeleton(pose)
    assert min(joint.x for joint in body.joints()) - 2 > wall_behind(pose)
    assert body.head.x - 9 > wall_behind(pose)


def test_a_rope_turns_over_the_head_and_below_the_feet() -> None:
    for over, below in (MOVES["rope-jump"].poses, MOVES["rope-jump"].seated_poses):
        for pose in (over, below):
            body, (start, end, turn) = skeleton(pose), rope(pose)
            assert {start, end} == {(round(arm[-1].x, 1), round(arm[-1].y, 1)) for arm in body.arms}
            feet = max(leg[-1].y for leg in body.legs)
            if pose.hold is Hold.ROPE_OVERHEAD:
                assert turn < body.head.y - 14
            else:
                assert feet < turn <= FLOOR


def test_a_bottle_is_held_in_each_hand_and_keeps_upright() -> None:
    for pose in (*MOVES["bottle-lift"].poses, *MOVES["bottle-lift"].seated_poses):
        bottles = re.findall(r"M([\d.]+) ([\d.]+)m4-3v10.5h-8", figure(pose))
        assert sorted((float(x), float(y)) for x, y in bottles) == sorted(
            (round(arm[-1].x, 1), round(arm[-1].y, 1)) for arm in skeleton(pose).arms
        )
