"""What of a lesson the cartridge of all lessons is made from, kept as JSON beside the lesson's files."""

from __future__ import annotations

from functools import cache

from pydantic import TypeAdapter

from generator.present.cartridge.parts import Thing


def things_path(folder: str, lesson: str) -> str:
    """Where it lies in the lesson's pack; nothing below ``.kept/`` goes out.

    Args:
        folder: of the language on the site: ``es/``, or nothing.
        lesson: its id.
    """
    return f".kept/{folder}{lesson}/cartridge.json"


def things_to_json(things: tuple[Thing, ...]) -> bytes:
    """The folders of a lesson's cartridge, with all that is in them."""
    return _adapter().dump_json(things)


def things_from_json(told: bytes) -> tuple[Thing, ...]:
    """Back again.

    Raises:
        ValueError: these are no things of a cartridge.
    """
    return _adapter().validate_json(told)


@cache
def _adapter() -> TypeAdapter[tuple[Thing, ...]]:
    return TypeAdapter(tuple[Thing, ...])
