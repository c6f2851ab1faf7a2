"""Many things made at once come out as one after the other, and no process outlives who began it."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import closing
from functools import partial
from pathlib import Path

import pytest

from generator.engine import side_by_side
from generator.engine.lock import alone
from generator.engine.side_by_side import each_made
from generator.problems import LessonError


def squared(number: int) -> tuple[int, int]:
    return number * number, os.getpid()


@pytest.mark.parametrize("begin", ["fork", "spawn"])
def test_in_order_on_several_cores(begin: str, monkeypatch: pytest.MonkeyPatch) -> None:
    context = side_by_side.multiprocessing.get_context(begin)
    monkeypatch.setattr(side_by_side, "_context", lambda: (context, begin == "fork"))
    done = list(each_made(squared, range(40), cores=2))
    assert [number for number, _ in done] == [number * number for number in range(40)]
    assert os.getpid() not in {pid for _, pid in done}


THREADED = """
import typst
from generator.engine.side_by_side import _context
print(_context()[1])
typst.compile(b"= One", format="pdf")
print(_context()[1])
"""


@pytest.mark.skipif(sys.platform != "linux", reason="processes begin as copies on Linux alone")
def test_one_with_threads_of_a_library_makes_no_copies_of_itself() -> None:
    """Typst sets papers with threads; a copy has none of them, and waited for them for ever."""
    done = subprocess.run(
        [sys.executable, "-c", THREADED], capture_output=True, text=True, check=True
    )
    assert done.stdout.split() == ["True", "False"]


@pytest.mark.parametrize(("tasks", "cores"), [(3, 2), (40, 1), (0, 2)])
def test_a_few_or_one_core_stay_here(tasks: int, cores: int) -> None:
    done = list(each_made(squared, range(tasks), cores=cores))
    assert {pid for _, pid in done} <= {os.getpid()}
    assert len(done) == tasks


def killed(number: int) -> int:
    if number == 20:
        os.kill(os.getpid(), signal.SIGKILL)
    return number


def test_a_process_that_the_system_ends_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    context = side_by_side.multiprocessing.get_context("spawn")
    monkeypatch.setattr(side_by_side, "_context", lambda: (context, False))
    with pytest.raises(OSError, match=os.strerror(errno.ENOMEM)):
        list(each_made(killed, range(40), cores=2))


def noted(folder: Path, number: int) -> int:
    (folder / str(number)).touch()
    time.sleep(0.01)
    return number


def test_what_is_stopped_before_its_end_goes_no_further(tmp_path: Path) -> None:
    with closing(each_made(partial(noted, tmp_path), range(400), cores=2)) as made:
        assert next(made) == 0
    there = len(list(tmp_path.iterdir()))
    time.sleep(0.2)
    assert len(list(tmp_path.iterdir())) == there < 400


PARENT = """
import os, sys, time
from pathlib import Path
from generator.engine.lock import alone
from generator.engine.side_by_side import each_made

def slow(number):
    os.write(1, f"{os.getpid()}\\n".encode())  # whole: print writes the end of a line by itself
    time.sleep(60)

if __name__ == "__main__":
    with alone(Path(sys.argv[1])) as held:
        list(each_made(slow, range(40), keep_out=held, cores=2))
"""


@pytest.mark.skipif(sys.platform != "linux", reason="looks for processes in /proc")
def test_processes_end_with_who_began_them_and_hold_no_lock(tmp_path: Path) -> None:
    """Killed with no time to say good-bye: signal 9."""
    program = tmp_path / "parent.py"
    program.write_text(PARENT, "utf-8")
    with subprocess.Popen(
        [sys.executable, program, tmp_path], stdout=subprocess.PIPE, text=True
    ) as parent:
        assert parent.stdout is not None
        workers = [int(parent.stdout.readline()) for _ in range(2)]
        with pytest.raises(LessonError), alone(tmp_path):
            pass
        parent.kill()
        parent.wait()
        soon(lambda: free(tmp_path))
        soon(lambda: not any(Path(f"/proc/{worker}").exists() for worker in workers))


def free(root: Path) -> bool:
    """Whether nobody holds the lock."""
    try:
        with alone(root):
            return True
    except LessonError:
        return False


def soon(holds: Callable[[], bool]) -> None:
    """Wait for what must come true in a moment."""
    for _ in range(200):
        if holds():
            return
        time.sleep(0.05)
    pytest.fail("it never came true")
