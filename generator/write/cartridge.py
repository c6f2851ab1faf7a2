"""A cartridge as one file, the same bytes wherever and whenever it is made."""

from __future__ import annotations

from collections.abc import Callable

from generator.media.content import Held, Joined, pieces_of
from generator.present.cartridge.files import cartridge_files
from generator.present.cartridge.parts import Cartridge
from generator.present.cartridge.version import Version
from generator.present.words.say import Say
from generator.write.zip_file import Packed, deflated, deflated_once, stored, zip_file

_PACKED = ".pdf"
"""A kind that is small already."""
_LONG = 5_000
"""Bytes from which on packing a file once for both versions saves more than it costs to remember it."""


def cartridge_file(
    cartridge: Cartridge, version: Version, say: Say, held: Callable[[str], Held]
) -> Joined:
    """The file to take into a learning platform; arguments as of ``cartridge_files``."""
    return zip_file(
        (name, _packed(name, _whole(content)))
        for name, content in cartridge_files(cartridge, version, say, held)
    )


def _packed(name: str, content: bytes) -> Packed:
    """Questions are long, and the same in both versions."""
    if name.endswith(_PACKED):
        return stored(content)
    return deflated_once(content) if len(content) > _LONG else deflated(content)


def _whole(held: Held) -> bytes:
    return held if isinstance(held, bytes) else b"".join(pieces_of(held))
