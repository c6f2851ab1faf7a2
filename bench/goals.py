"""Every figure that is asked for, in one table."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class AtMost:
    """The figure may be no larger."""

    name: str
    bound: float
    unit: str


@dataclass(frozen=True, slots=True)
class AtLeast:
    """The figure may be no smaller."""

    name: str
    bound: float
    unit: str


PLAIN = "x plain"
"""Times what plain MkDocs with a bare theme takes for a full build of the same words, on this machine."""

GOALS: dict[str, AtMost | AtLeast] = {
    "full": AtMost("full build from nothing", 0.5, PLAIN),
    "growth": AtMost("time of ten times as many lessons, per tenfold", 10.5, "times"),
    "bytes": AtMost("bytes a page, many lessons to a tenth of them", 1.02, "times"),
    "memory": AtMost("peak memory of a full build, largest process", 1.5, PLAIN),
    "lesson": AtMost("one lesson changed", 0.03, PLAIN),
    "food": AtMost("one food of one lesson changed", 0.06, PLAIN),
    "nothing": AtMost("nothing changed", 0.060, "s"),
    "preview": AtMost("preview, from an edit to its page", 0.15, PLAIN),
    "changes": AtMost("what changed, told out of what was kept", 5.0, "s"),
    "help": AtMost("plumline --help", 0.25, "s"),
    # Ten segments of 1,460 bytes, what a server may send before it hears back (RFC 6928).
    "first_view": AtMost(
        "first view, HTML, styles and script of the head, packed", 14_600, "bytes"
    ),
    "compare_screens": AtMost(
        "stop to compare at, rows found, longest, on a phone of 390 x 844", 1.7, "screens"
    ),
    "move_screens": AtMost("stop to move at, longest, on a phone of 390 x 844", 1.5, "screens"),
    "parser": AtMost("mistakes a strict HTML parser finds", 0, "found"),
    "care": AtMost("texts of care that a lesson page lacks", 0, "found"),
    "shift": AtMost("layout shift of a lesson page, largest", 0, "score"),
    "ready": AtMost("ready after its HTML came, 4 times throttled", 1000, "ms"),
    # WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 CSS px; a hundredth less for rounding.
    "target": AtLeast("smallest control on touch", 43.99, "px"),
    "order": AtMost("controls out of the order of the page", 0, "found"),
    "policy": AtMost("breaches of the content security policy", 0, "found"),
    "axe": AtMost("violations axe finds", 0, "found"),
    # "Good" of Interaction to Next Paint (web.dev; from memory).
    "choice": AtMost(
        "front page, slowest first choice to the next picture, 4 times throttled", 200, "ms"
    ),
    "inp": AtMost("first touch to the next picture, 4 times throttled", 100, "ms"),
    "kept": AtMost("a lesson kept for days without internet", 1000, "kB"),
    "flows": AtMost("flows of a pause that go wrong", 0, "found"),
    "listed": AtMost("front page, wrong lists after a choice", 0, "found"),
    "pause_median": AtMost("pause point, how late the player halts, median", 50, "ms"),
    "pause_worst": AtMost("pause point, how late the player halts, worst", 150, "ms"),
    "pause_early": AtLeast("pause point, how early the player halts, worst", -60, "ms"),
    "pacer": AtMost("pacer, how late a number comes on a busy page", 50, "ms"),
    "rehearsal": AtMost("rehearsal video of three minutes", 3.0, "s"),
    "recall": AtLeast("wrong sentences that are asked about", 95, "%"),
    "precision": AtLeast("sentences asked about that are wrong", 98, "%"),
    "import": AtLeast("food download, rows read", 50_000, "rows/s"),
    "import_memory": AtMost("food download, peak memory", 300, "MiB"),
    "full_import": AtMost("full food download with all packages, read", 120, "s"),
    "full_import_memory": AtMost("full food download with all packages, peak memory", 300, "MiB"),
    "full_find": AtMost("a food found among all packages", 1.0, "s"),
    "report": AtMost("report of finish codes, all of it", 10, "s"),
    "report_memory": AtMost("report of finish codes, peak memory", 300, "MiB"),
    "pairs": AtMost("foods pairs, ten thousand pairs", 1.0, "s"),
}
