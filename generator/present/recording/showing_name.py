"""What a number of the lesson is called beside the video: a food, a move, a gap."""

from __future__ import annotations

from generator.compute.changed import WhatIf
from generator.compute.result import LessonResult
from generator.compute.showing import Showing
from generator.model.figure import FigureKind
from generator.model.names import TOTAL
from generator.present.words.amounts import food_name
from generator.present.words.move_text import move_text
from generator.present.words.say import Say
from generator.present.words.what_if import change_words

_OF_MOVE = {
    FigureKind.COUNT: "correction_count",
    FigureKind.LEFT_OVER: "correction_left_over",
}
_OF_DAY = {
    FigureKind.EATEN: "correction_eaten_of_day",
    FigureKind.NEEDED: "correction_needed_of_day",
    FigureKind.GAP: "correction_gap_of_day",
}
_OF_TOTALS = {
    FigureKind.GAP: "correction_gap_of_totals",
    FigureKind.ESTIMATE: "correction_estimate",
    FigureKind.COUNT: "correction_count_of_totals",
    FigureKind.LEFT_OVER: "correction_left_over_of_totals",
}
_OF_ROW = {
    FigureKind.GAP: "correction_gap_of_row",
    FigureKind.ESTIMATE: "correction_estimate",
    FigureKind.COUNT: "correction_count_of_row",
    FigureKind.LEFT_OVER: "correction_left_over_of_row",
}


def showing_name(showing: Showing, result: LessonResult, say: Say) -> str:
    """In the language of ``say``: ``Apple pie``, ``count of Side step``, ``the gap of the totals``."""
    figure = showing.figure
    if figure.kind is FigureKind.HOLDS:
        return food_name(figure.foods[0], say)
    if showing.move:
        moves = {one.move_id: one.move for one in result.movements[showing.stop].counts}
        return say(_OF_MOVE[figure.kind], move=move_text(moves[showing.move], say).name)
    if figure.kind is FigureKind.ANSWER:
        return say("correction_answer")
    if showing.person:
        return say(_OF_DAY[figure.kind], person=showing.person)
    if figure.change:
        return _of_change(showing, result, say)
    if figure.kind is FigureKind.TOTAL:
        sides = result.comparisons[figure.stop].stop.sides
        return say("correction_total", side=sides[figure.side or 0])
    if figure.row == TOTAL:
        return say(_OF_TOTALS[figure.kind])
    foods = say.listed(tuple(food_name(held, say) for held in figure.foods))
    return say(_OF_ROW[figure.kind], foods=foods)


def _of_change(showing: Showing, result: LessonResult, say: Say) -> str:
    """The total or the gap of a what-if stop, which only its change tells from another."""
    figure, worked = showing.figure, result.of(WhatIf)[showing.figure.stop]
    changed = next(one for one in worked.changes if one.id == figure.change)
    change = change_words(worked, changed, say)
    if figure.kind is FigureKind.TOTAL:
        side = worked.comparison.stop.sides[changed.side]
        return say("correction_total_of_change", side=side, change=change)
    return say("correction_gap_of_change", change=change)
