"""The site built from nothing, with what each of its lessons says."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from generator.build import WriteByHand, building
from generator.problems import LessonError, Problem
from generator.publish.going_out import GoingOut
from generator.read.site_folder import folder_problems
from generator.steps.filling import fill
from generator.steps.states import current_states


def build_from_nothing(
    root: Path,
    write_by_hand: WriteByHand,
    say: Callable[[tuple[Problem, ...]], None],
    *,
    anew: bool = True,
) -> GoingOut:
    """Build a site into its folder ``site/``, trusting nothing that was made before.

    Args:
        root: folder of the site.
        write_by_hand: makes its pages written by hand.
        say: is told what is questionable.
        anew: whether nothing that was made before is trusted.

    Raises:
        LessonError: something must be put right; the old site is as it was.
    """
    if problems := folder_problems(root):
        raise LessonError(problems)
    with building(root, root / "site", anew=anew) as (run, folder):
        site = run.site()
        by_hand = run.kept_by_hand(site) or run.keep_by_hand(site, write_by_hand(site))
        fill(run, site, by_hand, folder)
        states = {
            lesson: {language: one.state for language, one in held.items()}
            for lesson, held in current_states(site).items()
        }
    say((*site.questions, *by_hand.questions))
    lessons = tuple(one.id for one in site.lessons)
    return GoingOut(root / "site", site.library.site, lessons, states, site.published)
