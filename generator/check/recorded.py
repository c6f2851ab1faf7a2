"""A film that says a number which the lesson no longer has."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.model.moment import clock
from generator.problems import Place, Problem, Weight


@rule
def numbers_as_filmed(result: LessonResult) -> Iterator[Problem]:
    """Each time to be filmed again, with the value that was filmed and the one there is now."""
    for changed in changed_figures(result):
        filmed = changed.filmed
        now = "is not in the lesson any more"
        if changed.now is not None:
            now = f"is {changed.now:,} {filmed.unit} now"
        yield Problem(
            _place(changed, result),
            f"from {clock(filmed.start)} to {clock(filmed.end)} the video has "
            f"{filmed.value:,} {filmed.unit}, and `{filmed.id}` {now}",
            f"film that part again, then run `python3 generator recorded {result.lesson.id}`",
            Weight.QUESTION,
        )


def _place(changed: ChangedFigure, result: LessonResult) -> Place:
    """The stop in the lesson file; the entry of the record where there is no such stop any more."""
    lesson = result.lesson
    for index, stop in enumerate(lesson.file.stops):
        if lesson.stop_id(index) == changed.filmed.stop:
            return lesson.places.at("stops", index, stop.kind)
    recorded = lesson.recorded
    return recorded.places.at("figures", changed.number) if recorded else lesson.places.at()
