"""Plants the faults of `bench/faults.toml` one at a time in a copy of the project, and says which live.

Run `python bench/faults.py`, which takes about a quarter of an hour, or a part of it. The exit code is
1 where a fault survives its tests, where one no longer stands in its file, and where its tests fail
already without it.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from queue import SimpleQueue
from tempfile import TemporaryDirectory

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from bench.measuring.fault import LIST, Fault, read_faults, why_not  # noqa: E402  # run as a file
from bench.measuring.planting import Copy, Verdict  # noqa: E402


def main(words: Sequence[str]) -> int:
    """Judge the faults that are asked for."""
    asked = _parser().parse_args(words)
    faults = _chosen(read_faults(asked.list), asked.only, asked.part)
    gone = [(fault.name, why) for fault in faults if (why := why_not(fault, asked.root))]
    for name, why in gone:
        print(f"gone      {name}: {why}")
    if gone or not faults:
        print(f"{len(gone)} of {len(faults)} faults can no longer be planted")
        return 1
    with TemporaryDirectory() as folder:
        copies = [Copy(asked.root, Path(folder, str(number))) for number in range(asked.jobs)]
        if complaint := copies[0].complaint(sorted({test for one in faults for test in one.tests})):
            print(f"{complaint}\nThe tests fail without any fault, so nothing can be said.")
            return 1
        living = [_told(*judged) for judged in _judged(faults, copies)].count(False)
    print(f"{len(faults) - living} of {len(faults)} faults are killed")
    return int(living > 0)


def _chosen(faults: Sequence[Fault], words: Sequence[str], part: str) -> Sequence[Fault]:
    """The faults with one of some words in name or file, and of those a part: ``2/5``."""
    named = [one for one in faults if any(word in f"{one.name} {one.file}" for word in words)]
    number, parts = map(int, part.split("/"))
    return (named if words else faults)[number - 1 :: parts]


def _judged(faults: Sequence[Fault], copies: Sequence[Copy]) -> Iterator[tuple[Fault, Verdict]]:
    """Each fault with its verdict, in their order; all copies at work at once."""
    free: SimpleQueue[Copy] = SimpleQueue()
    for copy in copies:
        free.put(copy)

    def judge(fault: Fault) -> Verdict:
        copy = free.get()
        try:
            return copy.judge(fault)
        finally:
            free.put(copy)

    with ThreadPoolExecutor(len(copies)) as crew:
        yield from zip(faults, crew.map(judge, faults), strict=True)


def _told(fault: Fault, verdict: Verdict) -> bool:
    """Print what became of a fault; whether it was killed."""
    if verdict.killed:
        print(f"killed    {fault.name}", flush=True)
    else:
        tests = " ".join(fault.tests)
        print(
            f"SURVIVED  {fault.name}: {fault.hurts}\n{fault.file}: {tests}: {verdict.said}",
            flush=True,
        )
    return verdict.killed


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("only", nargs="*", help="faults with one of these words in name or file")
    parser.add_argument("--part", default="1/1", help="2/5: every fifth from the second on")
    parser.add_argument(
        "--jobs", type=int, default=os.cpu_count() or 1, help="faults tried at once"
    )
    parser.add_argument("--list", type=Path, default=LIST, help="the faults")
    parser.add_argument("--root", type=Path, default=ROOT, help="the project they are planted in")
    return parser


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
