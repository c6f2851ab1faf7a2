"""A compare stop as a gap calculator."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.compute.count import Count
from generator.compute.holding import Holding
from generator.compute.result import Comparison
from generator.model.figure import FigureKind
from generator.model.stops.compare import CompareStop, Solve
from generator.present.pictures.chart import chart_view
from generator.present.recording.slides.slide import Content, Held, Question, RowOfTwo
from generator.present.recording.spoken import paragraphs
from generator.present.stops.compare_questions import compare_questions
from generator.present.stops.estimate import estimate_answer, estimate_view
from generator.present.stops.hanging import hanging_view
from generator.present.stops.in_lesson import StopInLesson, in_lesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.stops.row import row_view, total_view
from generator.present.views.amounts import BringsView, SourceView
from generator.present.views.comparison import ChartView, HangingView, RowView, TotalView
from generator.present.views.estimate import EstimateView
from generator.present.views.notes import AnswerView, LikelyView
from generator.present.views.page import LinkView
from generator.present.views.stop import Head
from generator.present.words.amounts import holding_view, weighed
from generator.present.words.brings import brings_rule, brings_views
from generator.present.words.families import ABOUT, MEASURE
from generator.present.words.likely import count_likely, gap_likely, sum_likely
from generator.present.words.look_for import while_comparing
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say
from generator.present.words.sources import source_views


@dataclass(frozen=True, slots=True)
class CompareView:
    """A gap calculator."""

    head: Head
    prompt: Markup
    measure: str
    """``energy``, in the page's language."""
    unit: str
    about: str
    """What the measure is, in one sentence for a child."""
    sides: tuple[str, str]
    hanging: HangingView
    """Its gaps, to be hung when they are found."""
    estimate: EstimateView | None
    """A number to say first."""
    rows: tuple[RowView, ...]
    total: TotalView | None
    """Where the total is asked for or there is more than one row."""
    ask_total: bool
    reveal: Markup
    look_back: tuple[LinkView, ...]
    """Back to the guess and to the estimate, where the gaps are found, by their ids on the page."""
    chart: ChartView
    sources: tuple[SourceView, ...]
    brings: tuple[BringsView, ...]
    """Of each portion that has a record."""
    brings_says: str
    """What is looked at for it, in a sentence."""


def _view(told: StopInLesson[CompareStop]) -> CompareView:
    stop, say = told.stop, told.say
    comparison = told.result.comparisons[stop.id]
    asked_for = told.result.lesson.file.asks_for_an_amount(stop.id)
    brings = brings_views(comparison.holdings, say)
    asks_total = Solve.TOTAL in stop.solve
    return CompareView(
        head=told.head(),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        measure=say(MEASURE.key(stop.measure)),
        unit=stop.measure.unit,
        about=say(ABOUT.key(stop.measure)),
        sides=stop.sides,
        hanging=hanging_view(comparison, told.result),
        estimate=estimate_view(comparison, say),
        rows=tuple(
            row_view(at, comparison, say, asked_for=asked_for) for at in range(len(comparison.rows))
        ),
        total=total_view(comparison, say) if asks_total or len(comparison.rows) > 1 else None,
        ask_total=asks_total,
        reveal=inline(stop.reveal) if stop.reveal else Markup(""),
        look_back=tuple(_look_back(told)),
        chart=chart_view(comparison, say, told.folder),
        sources=source_views(comparison, say),
        brings=brings,
        brings_says=brings_rule(brings, say),
    )


def _look_back(told: StopInLesson[CompareStop]) -> Iterator[LinkView]:
    """The last guess before this stop that no other comparison has come back to, and the estimate."""
    stops, say = told.result.lesson.file.stops, told.say
    for index in range(told.index - 1, -1, -1):
        if isinstance(stops[index], CompareStop):
            break
        again = told.result.lesson.asked_again  # asking again looks back
        if stops[index].looked_back_at and told.result.lesson.stop_id(index) not in again:
            guess = in_lesson(index, told.result, say)
            yield LinkView(guess.id, say("look_back_guess", heading=guess.plain_heading))
            break
    if told.stop.estimate:
        yield LinkView(f"{told.id}--estimate", say("look_back_estimate"))


def _slides(told: StopInLesson[CompareStop]) -> tuple[Content, ...]:
    """The estimate's question where the script has time for it, then a slide for each row."""
    stop, say = told.stop, told.say
    of_rows_alone = stop.say is not None and len(paragraphs(stop.say)) == len(stop.rows)
    estimate = None if of_rows_alone else stop.estimate
    first = (Question(told.plain_heading, plain(estimate.prompt)),) if estimate else ()
    rows = tuple(
        RowOfTwo(
            heading=told.plain_heading,
            first=_held(row.sides[0], 0, stop, say),
            second=_held(row.sides[1], 1, stop, say),
            question=say("paper_how_much_more"),
            shows=told.result.ids_of(stop.id, row.id, FigureKind.HOLDS),
        )
        for row in told.result.comparisons[stop.id].rows
    )
    return (*first, *rows)


def _held(held: Holding, side: int, stop: CompareStop, say: Say) -> Held:
    view = holding_view(held, side, stop.sides[side], stop.measure, say)
    side_name, food = plain(view.side), plain(view.name)
    return Held(side_name, food, view.amount, view.value.text, view.unit, view.blocks)


def _task(told: StopInLesson[CompareStop]) -> str:
    return told.say("slide_task_compare")


def _table(told: StopInLesson[CompareStop]) -> tuple[str, ...]:
    holdings = told.result.comparisons[told.stop.id].holdings
    return tuple(weighed(held, told.say) for held in holdings)


def _plan(view: CompareView, say: Say) -> str:
    return say("plan_compare", n=len(view.rows), measure=view.measure)


def _answers(told: StopInLesson[CompareStop], view: CompareView) -> tuple[AnswerView, ...]:
    """Every row with the wrong answers that are likely, and the total."""
    say, worked = told.say, told.result.comparisons[told.stop.id]
    rows = tuple(
        AnswerView(
            row.legend,
            row.working.lines,
            row.working.says,
            (*gap_likely(one.gap, say), *count_likely(one.gap, count, say)),
        )
        for row, one, count in zip(view.rows, worked.rows, _counts(worked), strict=True)
    )
    first = estimate_answer(view.estimate, say)
    if not view.total:
        return (*first, *rows)
    working = view.total.working
    return (
        *first,
        *rows,
        AnswerView(say("total"), working.lines, working.says, _likely_total(worked, say)),
    )


def _counts(worked: Comparison) -> tuple[Count | None, ...]:
    """Of each row, where it is asked."""
    if worked.counts and Solve.COUNT in worked.stop.solve:
        return worked.counts.rows
    return (None,) * len(worked.rows)


def _likely_total(worked: Comparison, say: Say) -> tuple[LikelyView, ...]:
    """Of the sum of each side, and of the gap between them."""
    sides = ([row.sides[side].shown.value for row in worked.rows] for side in (0, 1))
    sums = tuple(wrong for side in sides for wrong in sum_likely(side, say))
    return (*sums, *gap_likely(worked.total, say))


def _look_for(told: StopInLesson[CompareStop]) -> tuple[str, ...]:
    return tuple(while_comparing(told.result.comparisons[told.stop.id], told.say))


def _sources(view: CompareView) -> tuple[SourceView, ...]:
    return view.sources


def _work(view: CompareView) -> int:
    """Two shares a row, one for the total, one for an estimate."""
    return 2 * len(view.rows) + int(view.ask_total) + int(view.estimate is not None)


KIND = StopKind(
    stop=CompareStop,
    sees=CompareView,
    view=_view,
    holds_player=False,
    paper=Paper.IN_PARTS,
    paper_style=False,
    slides=_slides,
    task=_task,
    table=_table,
    plan=_plan,
    doing=Doing.WORK_OUT,
    work=_work,
    answers=_answers,
    questions=compare_questions,
    discussion=nothing,
    look_for=_look_for,
    sources=_sources,
    sources_on_page=True,
    cards=nothing,
    styles=("work",),
    script="work",
    read_aloud=("> p", "estimate-line > p", ".sides span", ".question", ".holding"),
)
