"""A film that says a number which the lesson no longer has."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind
from generator.model.moment import clock
from generator.model.recorded import FilmedFigure, Recorded
from generator.problems import Place, Problem, Weight


@rule
def numbers_as_filmed(result: LessonResult) -> Iterator[Problem]:
    """Each time to be filmed again, with the value that was filmed and the one there is now."""
    recorded = result.lesson.recorded
    if recorded and recorded.by_place:
        yield _by_place(recorded, result)
    for changed in changed_figures(result):
        filmed = changed.filmed
        if changed.now is None:
            now = f" {_of(filmed)}, which is not in the lesson any more"
        else:
            figure = changed.now.figure
            now = f", and `{figure.id}` is {figure.value:,} {filmed.unit} now"
        yield Problem(
            _place(changed, result),
            f"from {clock(filmed.start)} to {clock(filmed.end)} the video has "
            f"{filmed.value:,} {filmed.unit}{now}",
            f"film that part again, then run `python3 generator recorded {result.lesson.id}`",
            Weight.QUESTION,
        )


def _of(filmed: FilmedFigure) -> str:
    """What a filmed number is of, by the names the record keeps."""
    foods = " and ".join(
        f"`{one.food}`" + (f", {one.amount}" if one.amount else "") for one in filmed.foods
    )
    called = {
        FigureKind.HOLDS: f"of {foods}",
        FigureKind.GAP: f"between {foods}",
        FigureKind.COUNT: f"of `{filmed.move}` for {foods}" if filmed.move else f"for {foods}",
        FigureKind.LEFT_OVER: f"left over of {foods}",
        FigureKind.ANSWER: "as an answer",
        FigureKind.ESTIMATE: "as an estimate",
        FigureKind.TOTAL: f"of `{filmed.side}` in all ({foods})",
    }
    return called.get(filmed.kind, f"of the day of {filmed.person}")


def _by_place(recorded: Recorded, result: LessonResult) -> Problem:
    on = recorded.file.filmed
    return Problem(
        recorded.places.at("figures"),
        "this record is of an older shape, which does not say what its numbers are of, so none is used",
        f"if the film still says what the pages show, run `python3 generator recorded "
        f"{result.lesson.id} --on {on}`; if not, film it again first",
        Weight.QUESTION,
    )


def _place(changed: ChangedFigure, result: LessonResult) -> Place:
    """The stop in the lesson file; the entry of the record where nothing of it is left there."""
    lesson = result.lesson
    if changed.now is not None:
        for index, stop in enumerate(lesson.file.stops):
            if lesson.stop_id(index) == changed.now.stop:
                return lesson.places.at("stops", index, stop.kind)
    recorded = lesson.recorded
    return recorded.places.at("figures", changed.number) if recorded else lesson.places.at()
