"""Stops builds at random moments, and runs two at once: `python -m tests.engine.kills --count 1000 --seed 7`.

Each build is a copy of this process that ends itself at a moment drawn among all that it asks the
system for (PEP 578): by a kill, by SIGTERM or by Ctrl+C. A moment is a number, so a seed gives the
same moments on every machine.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import random
import shutil
import signal
import sys
import tempfile
from collections import Counter
from collections.abc import Callable
from pathlib import Path

from generator.cli import main
from tests.engine.small_site import small_site
from tests.site_project import hashes

KILL, TERM, CTRL_C = signal.SIGKILL, signal.SIGTERM, signal.SIGINT
TITLES = ("Lesson one", "Lesson uno")
Site = dict[str, str]


def build(root: Path, at: int = 0, stop: signal.Signals = KILL, *options: str) -> int:
    """Build in a copy of this process, stopped at a moment; gives how it ended, as ``os.waitstatus_to_exitcode``."""
    child = os.fork()
    if not child:
        _be_the_build(root, at, stop, options)
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def moments(root: Path) -> int:
    """How many moments a build has in which it could be stopped."""
    told, tell = os.pipe()
    child = os.fork()
    if not child:
        seen = Counter[int]()
        sys.addaudithook(lambda *_: seen.update((0,)))
        with contextlib.suppress(SystemExit):
            _run(root, ("--anew",))
        os.write(tell, str(seen[0]).encode())
        os._exit(0)
    os.close(tell)
    os.waitpid(child, 0)
    return int(os.read(told, 20))


def _be_the_build(root: Path, at: int, stop: signal.Signals, options: tuple[str, ...]) -> None:
    left = [at]

    def count(*_: object) -> None:
        left[0] -= 1
        if left[0] == 0:
            os.kill(os.getpid(), stop)

    sys.addaudithook(count)
    code = 0
    try:
        _run(root, options)
    except SystemExit as end:
        code = end.code if isinstance(end.code, int) else int(bool(end.code))
    except BaseException:  # noqa: BLE001  # whatever it is, a copy of this process must not go on as it
        code = 99
    os._exit(code)


def _run(root: Path, options: tuple[str, ...]) -> None:
    quiet = os.open(os.devnull, os.O_WRONLY)
    for stream in (1, 2):
        os.dup2(quiet, stream)
    sys.argv = ["plumline", "build", *options, "--root", str(root)]
    main()


def turn(root: Path, title: str) -> None:
    """Bring the site's files into one of two states."""
    file = root / "lessons/one/lesson.yaml"
    text = file.read_text("utf-8")
    for other in TITLES:
        text = text.replace(other, title)
    file.write_text(text, "utf-8")


def whole_sites(root: Path) -> list[Site]:
    """The site of each state, built from nothing."""
    sites = []
    for title in TITLES:
        turn(root, title)
        assert build(root, 0, KILL, "--anew") == 0
        sites.append(hashes(root / "site"))
    assert sites[0] != sites[1]
    return sites


def left_behind(root: Path) -> list[str]:
    """What a build keeps only while it runs, and did not clear."""
    scratch = root / ".cache/scratch"
    beside = [*root.glob(".site*"), *root.glob(".cache/*.new"), *scratch.glob("*")]
    return [path.relative_to(root).as_posix() for path in beside]


def try_kills(root: Path, count: int, seed: int) -> Counter[str]:
    """Stop builds at random moments; after each the site is whole, and the next build makes what it should.

    Gives how many ended in which way.
    """
    draw, sites, seen = random.Random(seed), whole_sites(root), Counter[str]()  # noqa: S311  # nothing secret
    last = moments(root)
    while sum(seen.values()) < count:
        now = draw.randrange(2)
        turn(root, TITLES[now])
        stop = draw.choices((KILL, TERM, CTRL_C), (2, 1, 1))[0]
        anew = ("--anew",) if draw.random() < 0.5 else ()
        at = draw.randint(1, last if anew else last // 4)
        code = build(root, at, stop, *anew)
        where = f"seed {seed}, {stop.name} at {at} {anew}"
        assert code != 99, f"a traceback: {where}"
        assert hashes(root / "site") in sites, f"half a site: {where}"
        if code == 0:
            continue  # it was done before that moment, and counts for nothing
        left = left_behind(root)
        assert stop == KILL or not left, f"{left} left by {where}"
        seen[f"{stop.name}{', something left' if left else ''}"] += 1
        assert build(root) == 0, f"the next build: {where}"
        assert hashes(root / "site") == sites[now], f"the next build makes another site: {where}"
        assert not left_behind(root), f"the next build clears nothing: {where}"
    return seen


def try_pairs(root: Path, count: int, seed: int) -> Counter[str]:
    """Begin two builds at once; one at least does its work, the other does it too or says why not."""
    draw, sites, seen = random.Random(seed), whole_sites(root), Counter[str]()  # noqa: S311  # as above
    for _ in range(count):
        now = draw.randrange(2)
        turn(root, TITLES[now])
        first = _begun(lambda: build(root, 0, KILL, "--anew"))
        second = _begun(lambda: build(root, 0, KILL, "--anew"))
        codes = sorted(os.waitstatus_to_exitcode(os.waitpid(one, 0)[1]) for one in (first, second))
        assert codes in ([0, 0], [0, 1]), f"seed {seed}: ended with {codes}"
        assert hashes(root / "site") == sites[now], f"seed {seed}: not the site of its files"
        assert not left_behind(root), f"seed {seed}: {left_behind(root)} left"
        seen["one refused" if codes == [0, 1] else "one after the other"] += 1
    return seen


def _begun(work: Callable[[], int]) -> int:
    child = os.fork()
    if not child:
        os._exit(work())
    return child


def run() -> None:
    """Do what was asked for, and print the counts."""
    asked = argparse.ArgumentParser(
        description="Stop builds at random moments, and run two at once."
    )
    asked.add_argument("--count", type=int, default=50, help="builds that are stopped")
    asked.add_argument("--pairs", type=int, default=4, help="pairs of builds at once")
    asked.add_argument("--seed", type=int, default=9)
    words = asked.parse_args()
    folder = Path(tempfile.mkdtemp())
    try:
        root = small_site(folder / "site")
        kills = try_kills(root, words.count, words.seed)
        pairs = try_pairs(root, words.pairs, words.seed)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    print(f"seed {words.seed}: {kills.total()} builds stopped, {_told(kills)}")  # noqa: T201  # for whoever asked
    print(f"{pairs.total()} pairs of builds at once, {_told(pairs)}")  # noqa: T201  # as above


def _told(seen: Counter[str]) -> str:
    return ", ".join(f"{what}: {number}" for what, number in sorted(seen.items()))


if __name__ == "__main__":
    run()
