"""The report as a table for a spreadsheet: a figure a row, hidden ones left empty and said."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Mapping

from generator.compute.learned import Learned
from generator.compute.report import LessonReport, Report
from generator.compute.small_counts import Hidden, Part
from generator.compute.wilson import wilson
from generator.present.report.names import LessonNames

_COLUMNS = (
    "part", "lesson", "numbers", "of", "figure", "count", "out_of", "percent", "low", "high", "value", "hidden",
)  # fmt: skip
_FORMULA = ("=", "+", "-", "@", "\t", "\r")
"""What a spreadsheet takes for the beginning of a formula (OWASP, CSV Injection; from memory)."""
Cells = dict[str, str]


def report_csv(report: Report, names: Mapping[str, LessonNames]) -> str:
    """The table, its first line the names of the columns; lessons, stops and questions by their ids.

    Args:
        report: what may be said.
        names: of the lessons that the site has; what it does not have and few codes name may be a word
            that slipped into the wrong cell, and is left empty.
    """
    text = io.StringIO()
    writer = csv.DictWriter(text, _COLUMNS, restval="", lineterminator="\r\n")
    writer.writeheader()
    for row in _rows(report, names):
        writer.writerow({name: _harmless(cell) for name, cell in row.items()})
    return text.getvalue()


def left_out_csv(lines: Iterable[tuple[str, int, int, str, str]]) -> str:
    """Lines that are not counted: file, first and last line, why, and what to do."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow(("file", "first_line", "last_line", "why", "what_to_do"))
    for file, first, last, why, hint in lines:
        writer.writerow((_harmless(file), first, last, why, hint))
    return text.getvalue()


def _harmless(cell: str) -> str:
    """A cell that no spreadsheet reckons with."""
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def _rows(report: Report, names: Mapping[str, LessonNames]) -> Iterator[Cells]:
    yield {"part": "reach", "figure": "codes in all"} | _count(report.codes)
    yield {"part": "reach", "figure": "codes of the lessons shown"} | _count(report.codes_shown)
    if report.same:
        yield {"part": "reach", "figure": "codes equal to another of the same file"} | _part(
            report.same
        )
    for one in report.lessons:
        known = names.get(one.key.lesson)
        named = {"lesson": one.key.lesson, "numbers": one.key.numbers}
        if one.codes is None and not known:
            named = {}
        yield {"part": "reach", **named, "figure": "codes"} | _count(one.codes)
        yield from ({**row, **named} for row in _of_lesson(one, known.stops if known else {}))


def _of_lesson(one: LessonReport, known: Mapping[str, str]) -> Iterator[Cells]:
    if one.minutes is not None:
        yield {
            "part": "reach",
            "figure": "minutes, half of the codes at least",
            "value": str(one.minutes),
        }
    for stop in one.stops:
        few = stop.done.count in (Hidden.FEW, Hidden.UNTOLD) and stop.stop not in known
        yield {"part": "stops", "of": "" if few else stop.stop, "figure": "done"} | _part(stop.done)
    for answer in one.answers:
        yield {"part": "answers", "of": answer.answer, "figure": "right at first"} | _part(
            answer.first
        )
        yield {"part": "answers", "of": answer.answer, "figure": "right at last"} | _part(
            answer.last
        )
    for learned in one.learned:
        few = learned.pairs is None and learned.question not in known
        of = "" if few else learned.question
        yield from ({"part": "learned", "of": of, **row} for row in _learned(learned))


def _learned(one: Learned) -> Iterator[Cells]:
    yield {"figure": "codes with both answers"} | _count(one.pairs)
    for figure, part in (("right before", one.before), ("right after", one.after)):
        if part:
            yield {"figure": figure} | _part(part)
    if one.cells:
        cells = one.cells
        yield {"figure": "right both times"} | _count(cells.stayed_right)
        yield {"figure": "right, then wrong"} | _count(cells.worse)
        yield {"figure": "wrong, then right"} | _count(cells.better)
        yield {"figure": "wrong both times"} | _count(cells.stayed_wrong)
    yield {"figure": "verdict", "value": str(one.verdict)}
    if one.chance:
        least, most = one.chance.least, one.chance.most
        for figure, low, high in (
            ("McNemar exact p", least.exact, most.exact),
            ("McNemar mid-p", least.mid_p, most.mid_p),
        ):
            if one.chance.one:
                yield {"figure": figure, "value": f"{float(low):.6g}"}
            else:
                yield {"figure": figure, "low": f"{float(low):.6g}", "high": f"{float(high):.6g}"}


def _count(count: int | None) -> Cells:
    return {"hidden": "yes"} if count is None else {"count": str(count)}


def _part(part: Part) -> Cells:
    if not isinstance(part.count, int):
        return {"out_of": str(part.of), "hidden": str(part.count)}
    interval = wilson(part.count, part.of)
    return {
        "count": str(part.count),
        "out_of": str(part.of),
        "percent": f"{100 * part.count / part.of:.1f}",
        "low": f"{100 * interval.low:.1f}",
        "high": f"{100 * interval.high:.1f}",
    }
