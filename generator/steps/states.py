"""What the lessons of a site say today, taken from what is kept of them."""

from __future__ import annotations

from collections.abc import Mapping

from generator.engine.pack import KEPT
from generator.present.state import STATE_FILE, KeptState, state_from_json
from generator.steps.lessons import KeptLesson
from generator.steps.site import Site


def states_of(kept: KeptLesson) -> dict[str, KeptState]:
    """By language, what a lesson says, with its texts.

    Raises:
        DamagedPackError: what is kept of it must be made anew.
        ValueError: so must it.
    """
    paths = [
        entry.path
        for entry in kept.pack.entries
        if entry.path.startswith(KEPT) and entry.path.endswith(f"/{STATE_FILE}")
    ]
    found = (state_from_json(kept.pack.held(path)) for path in paths)
    return {one.state.language: one for one in found}


def current_states(site: Site) -> Mapping[str, Mapping[str, KeptState]]:
    """By lesson and language, what the site says as it stands; raises as ``states_of``."""
    return {lesson.id: states_of(lesson) for lesson in site.lessons}
