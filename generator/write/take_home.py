"""One file with a whole lesson in it, to carry home and open without a network."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from generator.media.content import Content, Joined
from generator.present.addresses import name_in_copy
from generator.present.output import Output
from generator.write.zip_file import Packed, deflated, deflated_once, stored, zip_file

_PACKED = (".mp4", ".webm", ".jpg", ".png", ".webp")
"""Kinds that are small already."""


def take_home(
    folder: str, pages: Iterable[Output], read: Callable[[str], bytes | Content]
) -> Joined:
    """The copy of a lesson; the same bytes wherever and whenever it is made.

    Args:
        folder: the one inside, called like the lesson.
        pages: as they stand in the copy, by their paths on the site; what they need comes along.
        read: gives what a file of the site holds.
    """
    made = {page.path: page for page in pages}
    carried = {*made, *(path for page in made.values() for path in page.needs)}
    return zip_file(
        (
            f"{folder}/{name_in_copy(path)}",
            deflated(made[path].content) if path in made else _packed(path, read(path)),
        )
        for path in sorted(carried)
    )


def _packed(path: str, held: bytes | Content) -> Packed:
    if path.endswith(_PACKED):
        return stored(held)
    if isinstance(held, Content):
        held = b"".join(held.pieces())
    return deflated_once(held) if path.startswith("assets/") else deflated(held)
