"""From an educator's files to a whole site: the table of contents of the program."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from generator.engine.lock import alone
from generator.problems import LessonError, Problem
from generator.read.site_folder import folder_problems
from generator.steps.by_hand import ByHand
from generator.steps.filling import fill
from generator.steps.run import Run, begin, forget
from generator.steps.site import Site
from generator.write.swap import replaced

WriteByHand = Callable[[Site], ByHand]
"""Makes the hand-written pages of a site whose lessons are made."""


def build(root: Path, write_by_hand: WriteByHand, *, anew: bool = False) -> tuple[Problem, ...]:
    """Build the whole site and put it in the place of the old one; gives what is questionable.

    Args:
        root: folder of the site, the one that holds ``lessons/``.
        write_by_hand: called only where something written by hand has changed.
        anew: whether nothing that was made before is trusted.

    Raises:
        LessonError: with every problem, when at least one must be put right; the old site is untouched.
    """
    if problems := folder_problems(root):
        raise LessonError(problems)
    with building(root, root / "site", anew=anew) as (run, folder):
        site = run.site()
        by_hand = run.kept_by_hand(site) or run.keep_by_hand(site, write_by_hand(site))
        fill(run, site, by_hand, folder)
    return (*site.questions, *by_hand.questions)


@contextmanager
def building(root: Path, target: Path, *, anew: bool = False) -> Iterator[tuple[Run, Path]]:
    """Build alone, in an empty folder that takes the target's place at the end, and remember how.

    Raises:
        LessonError: another build is under way, or the target leads elsewhere.
    """
    with alone(root) as lock:
        if anew:
            forget(root)
        run = begin(root, target, keep_out=lock)
        try:
            with replaced(target) as folder:
                yield run, folder
        except LessonError:
            run.remember_made()
            raise
        run.remember()
