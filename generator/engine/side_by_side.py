"""Many things made at once, on every core the machine lends us; a few are made right here."""

from __future__ import annotations

import errno
import gc
import multiprocessing
import os
import signal
import sys
import threading
from collections.abc import Callable, Generator, Sequence
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing.context import BaseContext
from typing import TypeVar

Task = TypeVar("Task")
Done = TypeVar("Done")
_FEW = 12
"""As many as are made here sooner than processes begin."""
_AT_ONCE = 8
"""Tasks handed over together: fewer keep the processes waiting, more leave one working at the end."""


def each_made(
    make: Callable[[Task], Done],
    tasks: Sequence[Task],
    *,
    keep_out: int | None = None,
    cores: int | None = None,
) -> Generator[Done]:
    """What ``make`` gives for each task, in their order.

    Whoever may stop before the end closes the iterator; then no process works on.

    Args:
        make: made where its process begins from nothing by sending it there, with all it holds.
        tasks: likewise.
        keep_out: a file of ours that no other process may hold open.
        cores: how many to use; all that we may, without it.

    Raises:
        OSError: the system ended one of the processes.
    """
    many = min(cores or _cores(), -(-len(tasks) // _AT_ONCE))
    if len(tasks) <= _FEW or many < 2:
        yield from map(make, tasks)
        return
    context, copies = _context()
    with ProcessPoolExecutor(many, context, _begin, (keep_out if copies else None,)) as pool:
        try:
            yield from pool.map(make, tasks, chunksize=_AT_ONCE)
        except BrokenProcessPool:
            raise OSError(errno.ENOMEM, os.strerror(errno.ENOMEM)) from None
        finally:
            pool.shutdown(cancel_futures=True)


def _begin(keep_out: int | None) -> None:
    """Leave Ctrl+C to the process that began us, end with it, however it ends, and be quick."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    if keep_out is not None:
        os.close(keep_out)
    gc.set_threshold(100_000, 20, 20)  # looking for what can be freed took a tenth of the time
    threading.Thread(target=_end_with_parent, daemon=True).start()


def _end_with_parent() -> None:
    if parent := multiprocessing.parent_process():
        parent.join()
        os._exit(1)


def _context() -> tuple[BaseContext, bool]:
    """How processes begin: as copies of this one, with all it has loaded, where that is safe."""
    copies = sys.platform == "linux" and _threads() == 1
    return multiprocessing.get_context("fork" if copies else "spawn"), copies


def _threads() -> int:
    """Threads of this process, those of libraries among them: a copy has none of them, and waits for them forever."""
    try:
        return len(os.listdir("/proc/self/task"))  # noqa: PTH208  # names alone are counted
    except OSError:
        return threading.active_count()


def _cores() -> int:
    """How many we may use, which may be fewer than there are."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
