"""A number of a text that is the same on any machine: for seeds and short checks, and for no secret."""

from __future__ import annotations


def text_hash(text: str) -> int:
    """32 bits of a text by FNV-1a (Fowler, Noll and Vo; RFC 9923), from memory of its constants."""
    state = 0x811C9DC5
    for byte in text.encode():
        state = (state ^ byte) * 0x01000193 & 0xFFFFFFFF
    return state
