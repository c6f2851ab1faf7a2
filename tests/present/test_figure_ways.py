"""What moves between the two moments of a move is drawn, from where it was to where it is."""

from __future__ import annotations

from math import dist

from generator.present.pictures.figures import figures
from generator.present.pictures.figures.dotted import dotted_ways
from generator.present.pictures.figures.point import Point
from generator.present.pictures.figures.skeleton import (
    LEG,
    skeleton,
)
from generator.present.pictures.figures.ways import ways
from tests.present.figure_poses import (
    MOVES,
    PAIRS,
    dotted,
    drawn,
    exchanged,
    parts,
)


def test_every_move_has_two_seated_moments() -> None:
    assert {name for name, move in MOVES.items() if len(move.seated_poses) != 2} == set()


def test_the_two_moments_of_a_move_are_seen_to_differ() -> None:
    """Some hand, foot, knee or head is elsewhere by more than a limb is thick: no shade alone."""
    for name, (first, second) in PAIRS.items():
        one, other = skeleton(first), skeleton(second)
        places = zip((*one.joints(), one.head), (*other.joints(), other.head), strict=True)
        moved = max(dist((a.x, a.y), (b.x, b.y)) for a, b in places)
        assert moved >= LEG or first.hold is not second.hold, name


def test_what_moves_is_drawn_from_where_it_was_to_where_it_is() -> None:
    """Unless the sides change places; an arrow ends near what moved, or lies beside its way."""
    bare = {name for name, poses in PAIRS.items() if not dotted_ways(*poses)}
    assert bare == {name for name, poses in PAIRS.items() if exchanged(*poses)}
    for name, (first, second) in PAIRS.items():
        for part, way in ways(first, second):
            one, other = skeleton(first), skeleton(second)
            ends = (parts(one)[part], parts(other)[part])
            for end, there in zip((way[0], way[-1]), ends, strict=True):
                assert min(end.far_from(at) for at in there) < 0.1, name
        for line in drawn(dotted(first, second)):
            reach = [
                at
                for body in (first, second)
                for kind in parts(skeleton(body)).values()
                for at in kind
            ]
            assert min(Point(*line[-1]).far_from(at) for at in reach) <= 30, name


def test_a_far_hand_or_foot_that_moves_has_a_way() -> None:
    """A hand that goes farther than a forearm is told, by its own way or its fellow's."""
    for name, (first, second) in PAIRS.items():
        if exchanged(first, second):
            continue
        told = [way for _, way in ways(first, second)]
        for a, b in zip(skeleton(first).arms, skeleton(second).arms, strict=True):
            if a[-1].far_from(b[-1]) > 31:
                assert any(way[-1].far_from(b[-1]) < 10 for way in told), name


def test_a_limb_goes_round_by_its_numbers() -> None:
    """The rainbow goes over the head, the swimmer's hand under the body and back."""
    over = [way for part, way in ways(*MOVES["rainbow"].poses) if part == "hand"]
    assert over
    head = skeleton(MOVES["rainbow"].poses[0]).head
    assert all(min(at.y for at in way) < head.y for way in over)
    near = next(way for part, way in ways(*MOVES["swim-arms"].poses) if part == "hand")
    assert max(at.y for at in near) > max(near[0].y, near[-1].y) + 3
    assert near[-1].x < near[0].x - 30


def test_the_foot_that_stays_is_where_it_was() -> None:
    first, second = (skeleton(pose) for pose in MOVES["side-step"].poses)
    assert first.legs[0][2].far_from(second.legs[0][2]) <= 3
    assert second.legs[1][2].x - first.legs[1][2].x > 25
    for name in ("toe-tap", "heel-raise", "half-squat", "front-kick", "back-lunge"):
        one, other = (skeleton(pose) for pose in MOVES[name].poses)
        stays = min(a[3].far_from(b[3]) for a, b in zip(one.legs, other.legs, strict=True))
        assert stays <= 3, name


def test_ways_stay_in_the_box_and_figures_are_small() -> None:
    """The limit is ours: a card of four figures takes no more than a small photograph's head."""
    for name, poses in PAIRS.items():
        for x, y in (point for line in drawn(dotted(*poses)) for point in line):
            assert 1 <= x <= 119, name
            assert 1 <= y <= 127, name
        assert all(len(svg.encode()) <= 2_000 for svg in figures(poses)), name
