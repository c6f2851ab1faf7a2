"""A move stop as cards with their counts."""

from __future__ import annotations

from markupsafe import Markup

from generator.compute.result import MoveCount
from generator.model.pose import Pose
from generator.model.stops.compare import CompareStop, Solve
from generator.model.stops.move import MoveStop
from generator.present.pictures.figures import figure, picture_name
from generator.present.stops.compare import row_names
from generator.present.stops.head import Telling, head
from generator.present.views.stops import MoveCardView, MoveView
from generator.present.words.move_text import move_text
from generator.present.words.number import number
from generator.present.words.prose import inline


def move_view(index: int, stop: MoveStop, telling: Telling) -> MoveView:
    """The moves of a comparison, one for each row."""
    say = telling.say
    identity = head(index, stop, telling)
    movement = telling.result.movements[identity.id]
    measure = movement.comparison.stop.measure
    return MoveView(
        head=identity,
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        rule=say(
            "move_rule",
            per=say.quantity(stop.one_move_per, measure),
            measure=say(f"measure_{measure}"),
        ),
        cards=tuple(
            _card(counted, movement.comparison.stop, place, telling)
            for place, counted in enumerate(movement.counts, 1)
        ),
        before=tuple(say(f"before_moving_{number}") for number in range(1, 5)),
    )


def _card(counted: MoveCount, compare: CompareStop, place: int, telling: Telling) -> MoveCardView:
    say = telling.say
    move, count, measure = counted.move, counted.count, compare.measure
    text = move_text(move, say)
    row, gap = row_names(counted.row, say), say.quantity(counted.row.gap.size, measure)
    return MoveCardView(
        id=counted.move_id,
        name=text.name,
        count=number(count.whole, say),
        left_over=say.quantity(count.left_over, measure) if count.left_over else "",
        count_is=say("one_count_is", count_is=text.count_is),
        steps=text.steps,
        seated=text.seated,
        care=text.care,
        room=say("room_" + move.room.replace(" ", "_")),
        noise=say(f"noise_{move.noise}"),
        pace=move.pace,
        figures=tuple(Markup(figure(pose)) for pose in move.poses),  # noqa: S704  # drawn from numbers only
        seated_figures=tuple(Markup(figure(pose)) for pose in move.seated_poses),  # noqa: S704  # drawn from numbers only
        pictures=_pictures(counted.move_id, move.poses, telling, seated=False),
        seated_pictures=_pictures(counted.move_id, move.seated_poses, telling, seated=True),
        for_row=say("card_for_row", row=row, gap=gap, per=say.number(count.per)),
        row=row,
        division=f"{gap} ÷ {say.number(count.per)}",
        asked_in=f"{compare.id}-row-{place}" if {Solve.GAP, Solve.COUNT} & {*compare.solve} else "",
    )


def _pictures(
    move: str, poses: tuple[Pose, ...], telling: Telling, *, seated: bool
) -> tuple[str, ...]:
    """Addresses of the poses' pictures from the lesson page."""
    numbers = range(1, len(poses) + 1)
    return tuple(telling.to_root + picture_name(move, number, seated=seated) for number in numbers)
