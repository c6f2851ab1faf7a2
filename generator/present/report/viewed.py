"""From what may be said to what is shown: names, words and bars."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from generator.compute.learned import Learned
from generator.compute.report import LessonReport, Report, StopReport
from generator.compute.small_counts import Hidden
from generator.model.tally import LessonKey
from generator.present.report.answers import answers_view, missed_by_most
from generator.present.report.names import LessonNames
from generator.present.report.told import share, verdict
from generator.present.report.view import (
    BarView,
    LessonView,
    QuestionView,
    ReachView,
    ReportView,
    ShareView,
)
from generator.present.words.say import Say

_NO_NAMES = LessonNames("", {}, {})


@dataclass(frozen=True, slots=True)
class Read:
    """How the files were read."""

    left_out: int
    """Lines that are not counted."""
    alike: int
    """Pairs of files that look like one that was sent twice."""


def report_view(
    report: Report, read: Read, names: Mapping[str, LessonNames], programme: str, say: Say
) -> ReportView:
    """The report in a language.

    Args:
        report: what may be said.
        read: how the files were read.
        names: of the lessons that the site has, by id.
        programme: name of the site's programme.
        say: the language.
    """
    viewed = _Viewed(report, names, say)
    return ReportView(
        say.language,
        say("report_title"),
        programme,
        tuple(_summary(report, read, say)),
        viewed.lessons(),
        tuple(viewed.detail(one) for one in report.lessons if one.codes),
        tuple(_cautions(say)),
    )


def _summary(report: Report, read: Read, say: Say) -> Iterator[str]:
    few = say.number(report.at_least)
    if report.codes is None:
        n = report.codes_shown
        if n:
            yield say("report_codes_shown", n=n, number=say.number(n))
        yield say("report_codes_hidden")
    else:
        yield say("report_codes", n=report.codes, number=say.number(report.codes))
    yield say("report_small", few=few)
    if report.same and isinstance(report.same.count, int):
        yield say("report_same", n=report.same.count, number=say.number(report.same.count))
    elif report.same and report.same.count is Hidden.FEW:
        yield say("report_same_few", few=few)
    elif report.same and report.same.count is Hidden.ALL_BUT_FEW:
        yield say("report_same_most")
    if read.alike:
        yield say("report_alike", n=read.alike, number=say.number(read.alike))
    if read.left_out:
        yield say("report_left_out", n=read.left_out, number=say.number(read.left_out))


def _cautions(say: Say) -> Iterator[str]:
    yield say("report_no_child")
    yield say("report_no_proof")
    yield say("report_no_rank")
    yield say("report_no_cause")
    yield say("report_method")


@dataclass(frozen=True, slots=True)
class _Viewed:
    report: Report
    names: Mapping[str, LessonNames]
    say: Say

    def lessons(self) -> tuple[ReachView, ...]:
        most = max((one.codes or 0 for one in self.report.lessons), default=0)
        return tuple(self._reach(one, most) for one in self.report.lessons)

    def _reach(self, one: LessonReport, most: int) -> ReachView:
        known = one.key.lesson in self.names
        if one.codes is None or one.minutes is None:
            # What nobody knows and few have may be a word that slipped into the wrong cell.
            title = self._title(one.key) if known else self.say("report_lesson_unnamed")
            hidden = self.say("report_hidden")
            return ReachView(title, known=True, told=hidden, minutes="", bar=None, codes=None)
        bar = BarView(f"{one.codes * 100 / most:.2f}")
        told, minutes = self.say.number(one.codes), self.say.number(one.minutes)
        return ReachView(self._title(one.key), known, told, minutes, bar, one.codes)

    def detail(self, one: LessonReport) -> LessonView:
        """Stops and questions of a lesson."""
        names = self.names.get(one.key.lesson, _NO_NAMES)
        stops = tuple(self._stop(stop, names) for stop in one.stops)
        questions = tuple(self._question(learned, names) for learned in one.learned)
        called = names.answers if names.numbers == one.key.numbers else {}
        missed = missed_by_most(one.answers, called)
        says = self.say("report_missed") if missed else self.say("report_missed_none")
        return LessonView(
            self._title(one.key),
            one.key.lesson in self.names,
            stops,
            answers_view(one.answers, called, self.report.at_least, self.say),
            says if one.answers else "",
            missed,
            questions,
        )

    def _stop(self, one: StopReport, names: LessonNames) -> ShareView:
        known = one.stop in names.stops
        shown = known or one.done.count not in (Hidden.FEW, Hidden.UNTOLD)
        name = names.stops.get(one.stop, one.stop) if shown else self.say("report_stop_unnamed")
        few = self.report.at_least
        return share(name, one.done, few, self.say, known=known or not shown)

    def _title(self, key: LessonKey) -> str:
        """The title, or the id as it stands; with the mark of its numbers where a lesson has several."""
        title = self.names[key.lesson].title if key.lesson in self.names else key.lesson
        several = sum(one.key.lesson == key.lesson for one in self.report.lessons) > 1
        return self.say("report_numbers", lesson=title, numbers=key.numbers) if several else title

    def _question(self, one: Learned, names: LessonNames) -> QuestionView:
        say, few = self.say, self.report.at_least
        known = one.question in names.stops
        name = names.stops.get(one.question, one.question)
        if one.pairs is None:
            name = name if known else say("report_stop_unnamed")
            pairs = say("report_pairs_few", few=say.number(few))
        else:
            pairs = say("report_pairs", n=one.pairs, number=say.number(one.pairs))
        told = ((say("report_before"), one.before), (say("report_after"), one.after))
        return QuestionView(
            name,
            known or one.pairs is None,
            names.questions.get(one.question, ""),
            pairs,
            tuple(share(name, part, few, say) for name, part in told if part),
            self._changes(one),
            verdict(one, say),
        )

    def _changes(self, one: Learned) -> tuple[tuple[str, str], ...]:
        say, cells = self.say, one.cells
        if cells is None:
            return ()
        return (
            (say("report_stayed_right"), say.number(cells.stayed_right)),
            (say("report_worse"), say.number(cells.worse)),
            (say("report_better"), say.number(cells.better)),
            (say("report_stayed_wrong"), say.number(cells.stayed_wrong)),
        )
