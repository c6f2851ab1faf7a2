"""A what-if stop: the learner chooses a change and guesses; the page says which way the gap went."""

from __future__ import annotations

from markupsafe import Markup

from generator.compute.changed import Changed, WhatIf
from generator.compute.gap import Gap
from generator.compute.what_if import Way, likely_guesses, way_of
from generator.model.measure import Measure
from generator.model.stops.compare import Solve
from generator.model.stops.what_if import WhatIfStop
from generator.present.recording.slides.slide import Question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.views.amounts import SourceView
from generator.present.views.notes import AnswerView, LikelyView
from generator.present.views.what_if import ChangeView, TotalsView, WhatIfView
from generator.present.words.amounts import (
    SIDE_KEYS,
    blocks_view,
    gap_sentence,
    holding_view,
    subtraction,
    weighed,
)
from generator.present.words.families import GUESS, WAY, WAY_SHORT
from generator.present.words.foreign import joined
from generator.present.words.number import quantity
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say
from generator.present.words.sources import holding_sources, source_views
from generator.present.words.what_if import (
    becomes,
    change_named,
    change_on_side,
    change_words,
    closest_gap,
    closest_words,
    even_words,
    went,
)


def _view(told: StopInLesson[WhatIfStop]) -> WhatIfView:
    stop, say, worked = told.stop, told.say, _worked(told)
    compare = worked.comparison.stop
    return WhatIfView(
        head=told.head(),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        sides=compare.sides,
        asked_in=compare.id,
        for_stop=compare.title or say("stop_compare"),
        totals_asked=Solve.TOTAL in compare.solve,
        before=_totals(worked.comparison.total, compare.sides, compare.measure, say),
        changes=tuple(_change(worked, one, say) for one in worked.changes),
        ways=tuple((way.value, say(WAY.key(way)), say(WAY_SHORT.key(way))) for way in Way),
        closest=closest_words(worked, say),
        closest_gap=closest_gap(worked, say),
        even=even_words(worked, say),
        reveal=inline(stop.reveal) if stop.reveal else Markup(""),
        sources=_new_sources(worked, say),
    )


def _new_sources(worked: WhatIf, say: Say) -> tuple[SourceView, ...]:
    """Where the numbers come from that the comparison does not tell of already, each once."""
    new = tuple(held for one in worked.changes for held in one.new)
    told = {*source_views(worked.comparison, say)}
    sources = dict.fromkeys(holding_sources(new, worked.measure, say))
    return tuple(source for source in sources if source not in told)


def _worked(told: StopInLesson[WhatIfStop]) -> WhatIf:
    return told.result.of(WhatIf)[told.id]


def _totals(gap: Gap, sides: tuple[str, str], measure: Measure, say: Say) -> TotalsView:
    return TotalsView(
        totals=(quantity(gap.first, measure, say), quantity(gap.second, measure, say)),
        blocks=(blocks_view(gap.first, say), blocks_view(gap.second, say)),
        gap=quantity(gap.size, measure, say),
        left=blocks_view(gap.size, say, opened=100),
        left_key=SIDE_KEYS[gap.holder or 0],
        working=subtraction(gap, say),
        says=gap_sentence(gap, sides, measure, say),
    )


def _change(worked: WhatIf, one: Changed, say: Say) -> ChangeView:
    before, sides, measure = worked.comparison.total, worked.comparison.stop.sides, worked.measure
    side = sides[one.side]
    return ChangeView(
        id=one.id,
        side=side,
        side_key=SIDE_KEYS[one.side],
        label=change_words(worked, one, say),
        named=change_named(worked, one) is not None,
        becomes=becomes(worked, one, say),
        new=tuple(holding_view(held, one.side, side, measure, say) for held in one.new),
        way=way_of(before, one.total).value,
        after=_totals(one.total, sides, measure, say),
        says=went(before, one.total, sides, measure, say),
    )


def _prompt(told: StopInLesson[WhatIfStop]) -> str:
    return plain(told.stop.prompt or told.say("what_if_guess"))


def _slides(told: StopInLesson[WhatIfStop]) -> tuple[Question, ...]:
    """The question, and each change on a slide of its own; what comes of it is found on the page."""
    worked = _worked(told)
    changes = (plain(change_on_side(worked, one, told.say)) for one in worked.changes)
    return tuple(Question(told.plain_heading, text) for text in (_prompt(told), *changes))


def _task(told: StopInLesson[WhatIfStop]) -> str:
    return told.say("slide_task_what_if")


def _table(told: StopInLesson[WhatIfStop]) -> tuple[str, ...]:
    return tuple(weighed(held, told.say) for one in _worked(told).changes for held in one.new)


def _plan(view: WhatIfView, say: Say) -> str:
    return say("plan_what_if", n=len(view.changes))


def _answers(told: StopInLesson[WhatIfStop], view: WhatIfView) -> tuple[AnswerView, ...]:
    """Each change with the guesses to expect, and both questions about all of them."""
    say, worked = told.say, _worked(told)
    changes = tuple(
        AnswerView(
            change_on_side(worked, one, say),
            (_sum(worked, one, say), shown.after.working),
            shown.says,
            _likely(worked, one, say),
        )
        for one, shown in zip(worked.changes, view.changes, strict=True)
    )
    return (
        *changes,
        AnswerView(say("what_if_closest_question"), (), _closest(view), ()),
        AnswerView(say("what_if_even_question"), (), view.even, ()),
    )


def _closest(view: WhatIfView) -> str:
    return joined(" ", [text for text in (view.closest, view.closest_gap) if text])


def _sum(worked: WhatIf, one: Changed, say: Say) -> str:
    """``6 + 6 + 16 + 15 = 43``: what the changed side holds, row by row."""
    parts = [say.number(held.shown.value) for held in worked.foods_after(one, one.side)]
    total = (one.total.first, one.total.second)[one.side]
    return say.from_left(f"{' + '.join(parts) or say.number(0)} = {say.number(total)}")


def _likely(worked: WhatIf, one: Changed, say: Say) -> tuple[LikelyView, ...]:
    before = worked.row_of(one).gap, worked.comparison.total
    return tuple(
        LikelyView(say(WAY_SHORT.key(guess.way)), say(GUESS.key(guess.reason)), "")
        for guess in likely_guesses(before, (one.gap, one.total), one.side)
    )


def _look_for(told: StopInLesson[WhatIfStop]) -> tuple[str, ...]:
    return (told.say("look_what_if"),)


def _sources(view: WhatIfView) -> tuple[SourceView, ...]:
    return view.sources


def _work(view: WhatIfView) -> int:  # noqa: ARG001  # one change is chosen, of however many
    return 3


KIND = StopKind(
    stop=WhatIfStop,
    sees=WhatIfView,
    view=_view,
    holds_player=False,
    paper=Paper.IN_PARTS,
    paper_style=True,
    slides=_slides,
    task=_task,
    table=_table,
    plan=_plan,
    doing=Doing.WORK_OUT,
    work=_work,
    answers=_answers,
    questions=nothing,
    discussion=nothing,
    look_for=_look_for,
    sources=_sources,
    sources_on_page=True,
    cards=nothing,
    styles=("work", "what_if"),
    script="what_if",
    read_aloud=(
        "> p",
        "h3",
        ".sides span",
        ".holding",
        "legend",
        ".choice",
        ".outcome summary",
        ".outcome > p",
        ".asked summary",
        ".asked p",
    ),
)
