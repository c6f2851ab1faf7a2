"""A move stop as cards with their counts."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.compute.more_moves import more_moves
from generator.compute.result import Comparison, CountedMove
from generator.model.figure import FigureKind
from generator.model.pose import Hold, Support
from generator.model.stops.compare import CompareStop, Help, Solve
from generator.model.stops.move import MoveStop
from generator.present.pictures.figures.file import drawn_alone
from generator.present.recording.slides.slide import Before, Content, MoveCount
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.stops.library_move import library_move, library_moves
from generator.present.stops.row import row_address
from generator.present.views.move_card import LibraryMoveView, MoveCardView
from generator.present.views.stop import Head
from generator.present.words.amounts import division
from generator.present.words.care import before_moving
from generator.present.words.look_for import while_moving
from generator.present.words.move_text import move_text
from generator.present.words.number import number
from generator.present.words.prose import inline
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class MoveView:
    """The moves of a comparison."""

    head: Head
    prompt: Markup
    rule: str
    """``One move for every 10 in the gap.``"""
    cards: tuple[MoveCardView, ...]
    still: tuple[str, ...]
    """``Row 2: nothing to move.``, for each row without a card."""
    together: str
    """``50 counts for the whole team.``; empty where there are not several counts to add."""
    before: tuple[str, ...]
    """Room check and stop signs, before anyone moves."""
    more: tuple[LibraryMoveView, ...]
    """In a lesson of few moves, at its first move stop: what is dealt along with them."""


def _view(told: StopInLesson[MoveStop]) -> MoveView:
    stop, say = told.stop, told.say
    movement = told.result.movements[told.id]
    return MoveView(
        head=told.head(),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        rule=say("move_rule", per=say.number(stop.one_move_per)),
        cards=tuple(
            _card(counted, movement.comparison.stop, counted.number, told)
            for counted in movement.moved
        ),
        still=tuple(
            say("nothing_to_move", row=say("card_row", number=place)) for place in movement.still
        ),
        together=_together(movement.moved, say),
        before=before_moving(say),
        more=_more(told),
    )


def _more(told: StopInLesson[MoveStop]) -> tuple[LibraryMoveView, ...]:
    first = told.id == next(iter(told.result.movements))
    return library_moves(more_moves(told.result), told.say) if first else ()


def _together(moved: tuple[CountedMove, ...], say: Say) -> str:
    whole = sum(counted.count.whole for counted in moved)
    return say("move_together", n=whole, counts=say.number(whole)) if len(moved) > 1 else ""


def _card(
    counted: CountedMove, compare: CompareStop, place: int, told: StopInLesson[MoveStop]
) -> MoveCardView:
    say = told.say
    move, count = counted.move, counted.count
    worked = compare.rows[place - 1].help is Help.WORKED
    asked = {Solve.GAP, Solve.COUNT} & {*compare.solve} and not worked
    return MoveCardView(
        move=library_move(counted.move_id, move, say),
        count=number(count.whole, say),
        left_over=say.number(count.left_over) if count.left_over else "",
        pace=move.pace,
        for_stop=compare.title or say("stop_compare"),
        row=say("card_row", number=place),
        division=division(counted.row.gap, count, say),
        asked_in=row_address(compare.id, counted.row.id) if asked else "",
    )


def _slides(told: StopInLesson[MoveStop]) -> tuple[Content, ...]:
    say, movement = told.say, told.result.movements[told.id]
    return (
        Before(say("before_you_move"), before_moving(say)),
        *(_slide(told, movement.comparison, counted) for counted in movement.moved),
    )


def _slide(told: StopInLesson[MoveStop], comparison: Comparison, counted: CountedMove) -> MoveCount:
    say, text, left = told.say, move_text(counted.move, told.say), counted.count.left_over
    kinds = (FigureKind.COUNT, FigureKind.LEFT_OVER) if left else (FigureKind.COUNT,)
    return MoveCount(
        heading=told.plain_heading,
        name=text.name,
        count=say.number(counted.count.whole),
        count_is=say("one_count_is", count_is=text.count_is),
        left_over=say("left_over", rest=say.number(left)) if left else "",
        team=say("move_team"),
        figures=drawn_alone(counted.move.poses),
        shows=told.result.ids_of(comparison.stop.id, counted.row.id, *kinds),
    )


def _task(told: StopInLesson[MoveStop]) -> str:
    return told.say("slide_task_move")


def _table(told: StopInLesson[MoveStop]) -> tuple[str, ...]:
    """A chair for the seated versions, and what hands, back and knees need."""
    moves = [counted.move for counted in told.result.movements[told.id].moved]
    poses = [pose for move in moves for pose in (*move.poses, *move.seated_poses)]
    needed = {
        "recording_bottles": any(pose.hold is Hold.BOTTLES for pose in poses),
        "recording_chair": any(
            pose.support in {Support.CHAIR, Support.CHAIR_BEHIND} for pose in poses
        ),
        "recording_wall": any(pose.support is Support.WALL for pose in poses),
        "recording_rug": any(pose.support is Support.RUG for pose in poses),
    }
    return tuple(told.say(key) for key, asked in needed.items() if asked)


def _plan(view: MoveView, say: Say) -> str:
    return say("plan_move", n=len(view.cards))


def _look_for(told: StopInLesson[MoveStop]) -> tuple[str, ...]:
    return tuple(while_moving(told.result.movements[told.id], told.say))


def _cards(view: MoveView) -> tuple[MoveCardView, ...]:
    return view.cards


def _work(view: MoveView) -> int:
    """One share to make room, one for each card."""
    return 1 + len(view.cards)


KIND = StopKind(
    stop=MoveStop,
    sees=MoveView,
    view=_view,
    holds_player=False,
    paper=Paper.WHOLE,
    paper_style=False,
    slides=_slides,
    task=_task,
    table=_table,
    plan=_plan,
    doing=Doing.MOVE,
    work=_work,
    answers=nothing,
    questions=nothing,
    discussion=nothing,
    look_for=_look_for,
    sources=nothing,
    sources_on_page=False,
    cards=_cards,
    styles=("work",),
    script="work",
    read_aloud=("> p", ".before li"),
)
