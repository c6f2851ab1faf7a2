"""Figures are people: limbs keep their length, joints bend the right way, bodies are held up."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from itertools import pairwise
from math import dist
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
import yaml

from generator.model.move import Moves
from generator.model.pose import Pose, Support, View
from generator.present.pictures.figures import drawing, figure
from generator.present.pictures.figures.skeleton import (
    FLOOR,
    WALL,
    Limb,
    Point,
    flat_feet,
    skeleton,
)

FILE = Path(__file__).parents[2] / "site_data" / "moves.yaml"
HELD = yaml.safe_load(FILE.read_text(encoding="utf-8"))
MOVES = Moves.model_validate_json(
    json.dumps({key: HELD[key] for key in ("sources", "moves")})
).moves
POSES = {
    f"{name}-{number}": pose
    for name, move in MOVES.items()
    for number, pose in enumerate(move.poses + move.seated_poses)
}
SVG = "{http://www.w3.org/2000/svg}"


def each_pose(rule: Callable[[Pose], None]) -> Callable[[], None]:
    """One test of a rule over all poses, which names every pose that breaks it."""

    def of_every_pose() -> None:
        broken = {}
        for name, pose in POSES.items():
            try:
                rule(pose)
            except AssertionError as error:
                broken[name] = str(error)
        assert broken == {}

    of_every_pose.__name__, of_every_pose.__doc__ = rule.__name__, rule.__doc__
    return of_every_pose


def lengths(limb: Limb) -> list[float]:
    return [round(dist((a.x, a.y), (b.x, b.y)), 6) for a, b in pairwise(limb)]


def bend(upper: int, lower: int) -> int:
    """Degrees from one direction to another, the short way round."""
    return (lower - upper + 180) % 360 - 180


def drawn(path: str) -> list[list[tuple[float, float]]]:
    """The polylines of a path."""
    return [
        [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", line)]
        for line in path.split("M")[1:]
    ]


@each_pose
def test_limbs_keep_their_length(pose: Pose) -> None:
    body = skeleton(pose)
    thigh = 10 if (pose.view, pose.support) == (View.FRONT, Support.CHAIR) else 23
    foot = 8 if pose.view is View.SIDE else 4.5
    assert [lengths(arm) for arm in body.arms] == [[15.5, 15.5]] * 2
    assert [lengths(leg) for leg in body.legs] == [[thigh, 23, foot]] * 2
    assert lengths((*body.trunk, body.head)) == [30, 15]


def test_the_drawing_keeps_the_lengths_too() -> None:
    """Hand, elbow, shoulder, hip, knee, heel, toes of a march, to the rounding of one decimal."""
    [line] = drawn(figure(MOVES["march"].poses[0]).split('<path d="')[1].split('"')[0])
    sizes = [dist(a, b) for a, b in pairwise(line)]
    assert sizes == pytest.approx([15.5, 15.5, 30, 23, 23, 8], abs=0.15)


@each_pose
def test_something_holds_the_body(pose: Pose) -> None:
    body = skeleton(pose)
    feet = [max(leg[2].y, leg[3].y) for leg in body.legs]
    if pose.support is Support.CHAIR:
        seat = 99 if pose.view is View.SIDE else 90
        assert body.trunk[0].y == pytest.approx(seat), "the seat is under the hips"
        assert max(feet) == pytest.approx(FLOOR, abs=3), "a foot is on the floor"
    else:
        assert max(feet) == pytest.approx(FLOOR - pose.lift, abs=2), (
            "a foot is on the floor, or both are in the air"
        )


@each_pose
def test_nothing_sinks_into_the_floor(pose: Pose) -> None:
    body = skeleton(pose)
    assert max(joint.y for joint in body.joints()) <= FLOOR + 1.5
    assert body.head.y + 9 <= drawing.GROUND + 2


@each_pose
def test_joints_bend_as_joints_do(pose: Pose) -> None:
    """Normal ranges of motion, American Academy of Orthopaedic Surgeons 1965 (status M, from memory).

    Knee 0 to 135, elbow 0 to 150, hip -30 to 120, spine forward 80 (our trunk is one stroke, so
    hip and spine share it: at most 150), shoulder -60 to 180, ankle up 20 and down 50 degrees;
    5 more for a child. From the front only the size of a bend can be told.
    """
    feet = pose.feet or flat_feet(pose.view)
    for (upper, fore), (thigh, shin), foot in zip(pose.arms, pose.legs, feet, strict=True):
        elbow, knee = bend(upper, fore), -bend(thigh, shin)
        if pose.view is View.FRONT:
            assert abs(elbow) <= 155
            assert abs(knee) <= 140
            continue
        assert -5 <= elbow <= 155
        assert -5 <= knee <= 140
        assert -35 <= bend(-pose.lean, thigh) <= 150
        assert -65 <= (upper + pose.lean + 65) % 360 - 65 <= 185
        assert 90 - 55 <= bend(shin, foot) <= 90 + 25


@each_pose
def test_hands_meet_the_wall(pose: Pose) -> None:
    if pose.support is Support.WALL:
        assert [arm[-1].x for arm in skeleton(pose).arms] == pytest.approx([WALL, WALL], abs=0.5)


@pytest.mark.parametrize("name", ["wall-push", "floor-push"])
def test_hands_and_feet_stay_while_the_elbows_bend(name: str) -> None:
    first, second = (skeleton(pose) for pose in MOVES[name].poses)
    for a, b in ((first.arms[1][-1], second.arms[1][-1]), (first.legs[1][2], second.legs[1][2])):
        assert dist((a.x, a.y), (b.x, b.y)) <= 2


@pytest.mark.parametrize("name", ["floor-push", "table-reach"])
def test_hands_carry_the_body_on_the_floor(name: str) -> None:
    for pose in MOVES[name].poses:
        assert skeleton(pose).arms[1][-1].y == pytest.approx(FLOOR, abs=1.5)


@pytest.mark.parametrize("name", ["curl-up", "bridge"])
def test_lying_moves_rest_on_feet_and_back(name: str) -> None:
    for pose in MOVES[name].poses:
        body = skeleton(pose)
        assert max(point.y for point in body.trunk) == pytest.approx(FLOOR, abs=1.5)
        assert body.legs[1][2].y == pytest.approx(FLOOR, abs=1.5)


def test_standing_up_leaves_feet_and_chair_where_they_are() -> None:
    sitting, standing = MOVES["chair-stand"].poses
    assert skeleton(sitting).legs[1][2].x == pytest.approx(skeleton(standing).legs[1][2].x)
    chair = [drawn(figure(pose).split(' d="')[1].split('"')[0])[1:] for pose in (sitting, standing)]
    assert chair[0] == chair[1]


def test_the_two_moments_differ() -> None:
    for name, move in MOVES.items():
        assert figure(move.poses[0]) != figure(move.poses[1]), name


@each_pose
def test_a_figure_stays_in_its_box_and_is_small(pose: Pose) -> None:
    body, svg = skeleton(pose), figure(pose)
    for point in (
        *body.joints(),
        Point(body.head.x - 6, body.head.y - 6),
        Point(body.head.x + 6, body.head.y),
    ):
        assert 3 <= point.x <= 117
        assert 3 <= point.y <= 125
    assert len(svg.encode()) <= 700


@each_pose
def test_a_figure_is_plain_svg_without_style(pose: Pose) -> None:
    svg = figure(pose)
    root = ET.fromstring(svg.replace("<svg ", f'<svg xmlns="{SVG[1:-1]}" ', 1))  # noqa: S314 - our own text
    assert root.get("aria-hidden") == "true"
    assert [node for node in root.iter() if node.get("style")] == []
    assert len(root.findall(f"{SVG}g[@class='figure-head']")) == 1
    assert re.search(r"\d\.\d\d", "".join(re.findall(r' d="M\d[^"]*"', svg))) is None
