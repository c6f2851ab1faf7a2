"""Measures what a site costs to build and to read, and prints each figure beside its goal.

Run `python bench/run.py`; with `--lessons 1000` it takes about a quarter of an hour. The exit code
is 1 where a goal is missed or nothing was measured.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterator
from importlib import import_module
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from bench.measuring.row import Case, NothingMeasuredError, Row  # run as a file

BENCHES = (
    "startup",
    "first_view",
    "lengths",
    "kept",
    "engines",
    "builds",
    "changes",
    "preview",
    "pages",
    "home",
    "inp",
    "rehearsal",
    "said",
    "food_import",
    "food_pairs",
    "report",
    "pacer",
    "pauses",
)
"""Every bench in `bench/benches/`, in the order it is run."""


def main(words: list[str]) -> int:
    """Run the benches that are asked for."""
    chosen = _parser().parse_args(words)
    if chosen.site:
        from bench.measuring.demo import choose  # noqa: PLC0415  # brings the tests' tools along

        choose(chosen.site)
    case = Case(chosen.lessons, chosen.runs, chosen.small)
    names = [*(chosen.only or BENCHES), *(["peers"] if chosen.peers else [])]
    rows = []
    try:
        for row in measured(names, case):
            rows.append(row)
            if not chosen.json:
                print(row, flush=True)
    except NothingMeasuredError as error:
        print(f"nothing was measured: {error}", file=sys.stderr)
        return 1
    if chosen.json:
        print(json.dumps([row.as_json() for row in rows], indent=1))
    return int(not rows or not all(row.ok for row in rows))


def measured(names: list[str], case: Case) -> Iterator[Row]:
    """The rows of each bench, as soon as they are known."""
    for name in names:
        yield from import_module(f"bench.benches.{name}").rows(case)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--lessons", type=int, default=1000)
    parser.add_argument("--runs", type=int, default=3, help="how often each figure is taken")
    parser.add_argument("--json", action="store_true", help="a list of rows, for a program")
    parser.add_argument("--only", nargs="+", choices=(*BENCHES, "peers"), help="these benches")
    parser.add_argument("--peers", action="store_true", help="other makers of sites as well")
    parser.add_argument("--site", type=Path, help="a built site; otherwise the demo is built")
    parser.add_argument("--small", action="store_true", help="a few of everything: do they work?")
    return parser


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
