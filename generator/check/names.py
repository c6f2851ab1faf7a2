"""Names of foods, portions and moves that a language of the site lacks."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from generator.carried import is_place
from generator.compute.lacking_names import LackingName
from generator.model.move import MoveText
from generator.model.places import Path
from generator.model.wording import FALLBACK
from generator.problems import Place, Problem, Weight


def names_complete(
    lacking: Iterable[LackingName], places: Mapping[Path, Place]
) -> Iterator[Problem]:
    """A question for each name, once, at its place in the library.

    Args:
        lacking: what the lessons of a site lack, in any order and as often as they lack it.
        places: of the library's names, by their paths.
    """
    for name in dict.fromkeys(lacking):
        what, hint = _told(name)
        place = places[name.at]
        if is_place(place.path):
            hint = f"{_own(name)}; until then pages show “{name.original}” marked"
        yield Problem(place, what, hint, Weight.QUESTION)


def _own(name: LackingName) -> str:
    """The lines by which a site names what stands in the program's library."""
    kind, entry, *inside = name.at
    keys = ", ".join(f"{key}: …" for key in MoveText.model_fields)
    if kind == "moves":
        lines = f"texts: {{{name.language}: {{{keys}}}}}"
    elif inside == ["names"]:
        lines = f"names: {{{name.language}: …}}"
    else:
        lines = f"portions: [{{names: {{{FALLBACK}: {name.original}, {name.language}: …}}}}]"
    return f"write `{entry}: {{{lines}}}` below `{kind}:` in your own site_data/{kind}.yaml"


def _told(name: LackingName) -> tuple[str, str]:
    language, until = name.language, f"until then pages show “{name.original}” marked"
    kind, entry, *inside = name.at
    if kind == "moves":
        keys = ", ".join(MoveText.model_fields)
        what = f"the move `{entry}` has no texts in {language}"
        return what, f"write {keys} below `{language}:`, as below `{FALLBACK}:`; {until}"
    whose = f"`{entry}`" if inside == ["names"] else f"the portion “{name.original}” of `{entry}`"
    return f"{whose} has no name in {language}", f"add `{language}: …` to its `names:`; {until}"
