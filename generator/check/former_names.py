"""Names that lessons had before: no lesson has one now, and no two claim the same."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from generator.check.listed import Listed
from generator.problems import Place, Problem


def former_names_apart(lessons: Iterable[Listed]) -> Iterator[Problem]:
    """Each name whose address could lead to two lessons; such a site cannot be built.

    Args:
        lessons: every lesson, in the order of their folders.
    """
    listed = tuple(lessons)
    folders = {one.folder: one for one in listed}
    claimed: dict[str, Place] = {}
    for one in listed:
        for name, place in one.formerly:
            if name in folders:
                what = (
                    f"the folder `{name}` is a lesson of its own, so its address cannot lead here"
                )
                yield Problem(
                    place, what, "take it out of `formerly:`, or give that folder another name"
                )
            elif name in claimed:
                first = claimed[name]
                what = f"{first.path}:{first.line} lists `{name}` under `formerly:` too"
                yield Problem(place, what, "keep it in the lesson that its readers should find")
            claimed.setdefault(name, place)
