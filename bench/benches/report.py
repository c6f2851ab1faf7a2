"""How long `report` takes for a hundred thousand finish codes of four thousand teachers, and how much memory."""

from __future__ import annotations

import csv
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

from bench.measuring.process import PLUMLINE, ROOT, middle, run
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told

CODES = 100_000
A_CLASS = 25
HEAD = ("label", "lesson", "numbers", "code", "stops", "answers", "before", "after", "minutes")
STOPS = "hello tomatoes the-most soups pairs-of-tens stir-it whole-pot table-talk goodbye parting"
FOODS = (
    "soup-chicken-broth_soup-vegetable-broth",
    "soup-black-bean_soup-lentil",
    "bread-whole-wheat_roll",
)
ANSWERS = (
    *(f"soups.{row}.{what}" for row in FOODS for what in ("gap", "count")),
    "whole-pot.gap",
    "parting.answer",
)
HOWS = ("first", "later", "no", "first", "first", "later", "no")
ANSWERED = ("right", "wrong", "wrong", "none", "right", "wrong", "wrong")


def rows(case: Case) -> Iterator[Row]:
    """Time and memory of the whole command, with page, paper and table."""
    number = 200 if case.small else CODES
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "site"
        for part in ("lessons", "site_data"):
            shutil.copytree(ROOT / part, folder / part)
        files = list(_classes(Path(name) / "classes", number))
        command = (*PLUMLINE, "report", *map(str, files), "--into", str(folder / "report"))
        done = [run(command, folder) for _ in range(case.runs)]
        table = (folder / "report/report.csv").read_text("utf-8-sig")
        if f"codes in all,{number}," not in table:
            raise NothingMeasuredError("the report does not count what was handed in")
    yield told("finish codes, files", len(files), "files")
    yield row("report", middle(done).seconds, f"of {number:,}")
    yield row("report_memory", max(one.peak for one in done), f"of {number:,}")


def _classes(folder: Path, number: int) -> Iterator[Path]:
    """The files of so many classes, with made-up codes."""
    folder.mkdir()
    stops = STOPS.split()
    for first in range(0, number, A_CLASS):
        file = folder / f"class-{first // A_CLASS:05}.csv"
        with file.open("w", encoding="utf-8", newline="") as text:
            writer = csv.writer(text)
            writer.writerow(HEAD)
            for at in range(first, first + A_CLASS):
                before, after = (ANSWERED[(2 * at + one) % len(ANSWERED)] for one in (0, 1))
                lesson = "soup-night" if at % 3 else "river-walk"
                code = f"7K3M-{at * 7919 % 10**8:08}-4"
                done = " ".join(stops[: 2 + at % 9])
                twice = f"the-most={before}", f"the-most={after}"
                hows = (HOWS[(at + one) % len(HOWS)] for one in range(len(ANSWERS)))
                found = " ".join(map("=".join, zip(ANSWERS, hows, strict=True)))
                label = f"Learner {at}"
                writer.writerow((label, lesson, "1204", code, done, found, *twice, "10 to 14"))
        yield file
