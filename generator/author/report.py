"""From the files that teachers saved to a report: the steps of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from generator.author.report_names import site_names
from generator.carried import theme_of
from generator.compute.report import Report, report
from generator.compute.small_counts import AT_LEAST, LEAST
from generator.model.tally import LessonKey, Tally
from generator.present.papers.paper import Size
from generator.present.report.names import LessonNames
from generator.present.report.page import report_page
from generator.present.report.paper import report_pdf
from generator.present.report.table import left_out_csv, report_csv
from generator.present.report.view import ReportView
from generator.present.report.viewed import Read, report_view
from generator.present.words.say import Say
from generator.read.finish_codes.counting import MEGABYTES, PACKAGE, NoEngineError, counted
from generator.read.finish_codes.file import LeftOut, read_file
from generator.read.finish_codes.row import CodeRow
from generator.read.library import read_library
from generator.steps.scratch import scratch
from generator.write.installing import how_to_install
from generator.write.whole import write_bytes_whole

__all__ = [
    "AT_LEAST",
    "LEAST",
    "LEFT_OUT",
    "Made",
    "NoReportError",
    "Size",
    "Wishes",
    "make_report",
]

PAGE, PAPER, TABLE, LEFT_OUT = "report.html", "report.pdf", "report.csv", "not-counted.csv"
"""Names of the files; the last one is for whoever makes the report and for nobody else."""


class NoReportError(Exception):
    """Why there can be no report: a sentence without a full stop."""


@dataclass(frozen=True, slots=True)
class Wishes:
    """What a report is to be like."""

    into: Path
    """The folder it is written into."""
    at_least: int
    """The smallest count that is shown."""
    language: str
    """A language of the site; empty for its first one."""
    paper: Size
    """What the PDF is to be printed on."""


@dataclass(frozen=True, slots=True)
class Made:
    """What was made, and what whoever makes it should know."""

    files: tuple[Path, ...]
    """None where no code was read."""
    codes: int
    same: int
    """Codes that are equal to another one of the same file."""
    alike: tuple[tuple[str, str, int], ...]
    """Files that look like one that was sent twice, and how many codes both hold."""
    left_out: tuple[LeftOut, ...]


@dataclass(slots=True)
class _Rows:
    """The rows of all files, one after another; what is left out of them is noted meanwhile."""

    files: Sequence[tuple[Path, str]]
    left_out: list[LeftOut] = field(default_factory=list)

    def __iter__(self) -> Iterator[tuple[int, CodeRow]]:
        for at, (file, name) in enumerate(self.files):
            for row in read_file(file, name):
                if isinstance(row, CodeRow):
                    yield at, row
                else:
                    self._note(row)

    def _note(self, one: LeftOut) -> None:
        """Lines one below the other that are left out for one reason are told together."""
        before = self.left_out[-1] if self.left_out else None
        if before and (before.file, before.why, before.last + 1) == (one.file, one.why, one.first):
            one = LeftOut(one.file, before.first, one.last, one.why, one.hint)
            self.left_out.pop()
        self.left_out.append(one)


def make_report(root: Path, files: Sequence[tuple[Path, str]], wishes: Wishes) -> Made:
    """Read the files and write the report.

    Args:
        root: folder of the site, whose words and titles it takes.
        files: each with what it is called in a message.
        wishes: what it is to be like.

    Raises:
        LessonError: as ``read_library``.
        NoReportError: the engine that counts is not installed, or the site has no such language.
        OSError: the report cannot be written.
    """
    library = read_library(root)
    language = wishes.language or library.site.languages[0]
    if language not in library.site.languages:
        raise NoReportError(
            f"the site has no `{language}`; it has {', '.join(library.site.languages)}"
        )
    say = Say(library.words[language])
    rows = _Rows(files)
    tally = _counted(root, rows)
    codes = sum(one.codes for one in tally.reach)
    left_out = tuple(rows.left_out)
    alike = tuple((files[one.first][1], files[one.second][1], one.codes) for one in tally.alike)
    if not codes:
        return Made((), 0, 0, (), left_out)
    names = site_names(root, (one.key.lesson for one in tally.reach), library, say)
    stops = {one: tuple(named.stops) for one, named in names.items()}
    answers = {LessonKey(one, named.numbers): tuple(named.answers) for one, named in names.items()}
    told = report(tally, stops, answers, wishes.at_least)
    read = Read(sum(one.last - one.first + 1 for one in left_out), len(alike))
    programme = library.site.programme_in.get(say.language, library.site.programme)
    view = report_view(told, read, names, programme, say)
    content = _Content(told, names, view, say)
    made = _write(content, left_out, Path(theme_of(root)), wishes)
    same = sum(one.codes for one in tally.same)
    return Made(made, codes, same, alike, left_out)


def _counted(root: Path, rows: _Rows) -> Tally:
    try:
        with scratch(root) as folder:
            return counted(rows, folder)
    except NoEngineError:
        what = "the part that counts finish codes is not installed"
        raise NoReportError(f"{what}: {how_to_install(PACKAGE, MEGABYTES)}") from None


@dataclass(frozen=True, slots=True)
class _Content:
    report: Report
    names: Mapping[str, LessonNames]
    view: ReportView
    say: Say


def _write(
    made: _Content, left_out: Sequence[LeftOut], theme: Path, wishes: Wishes
) -> tuple[Path, ...]:
    """Everything made first, then written."""
    contents = {
        PAGE: report_page(made.view, made.say, theme).encode(),
        PAPER: report_pdf(made.view, made.say, theme, wishes.paper),
        TABLE: report_csv(made.report, made.names).encode("utf-8-sig"),
    }
    if left_out:
        lines = ((one.file, one.first, one.last, one.why, one.hint) for one in left_out)
        contents[LEFT_OUT] = left_out_csv(lines).encode("utf-8-sig")
    into = wishes.into
    into.mkdir(parents=True, exist_ok=True)
    if not left_out:
        (into / LEFT_OUT).unlink(missing_ok=True)  # it is of a report that was here before
    return tuple(write_bytes_whole(into / name, data) for name, data in contents.items())
