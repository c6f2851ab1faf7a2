"""Letters of a PDF: every one lies in the file and can be read back as a character (ISO 32000-1, 9.6 to 9.10, from memory, status M)."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from pypdf.generic import DictionaryObject

from tests.outside.pdf_parts import Opened

_NO_CHARACTERS = {"", "\0", "\ufeff", "\ufffe"}
_HEX = rb"<([0-9A-Fa-f\s]+)>"


def of_fonts(file: Opened) -> Iterator[str]:
    """Fonts that are not in the file, and letters that no program can read."""
    seen: dict[int, tuple[DictionaryObject, set[bytes]]] = {}
    for _, painted in file.pages:
        for one in painted:
            if one.what == "text" and one.font is not None:
                seen.setdefault(id(one.font), (one.font, set()))[1].add(one.shown)
    for font, shown in seen.values():
        yield from _embedded(font)
        yield from _read_back(font, b"".join(shown))


def _embedded(font: DictionaryObject) -> Iterator[str]:
    if font["/Subtype"] == "/Type3":
        return
    held = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
    told = held.get("/FontDescriptor", {})
    if not any(name in told for name in ("/FontFile", "/FontFile2", "/FontFile3")):
        yield f"31-009: the font {font.get('/BaseFont')} is not in the file"


def _read_back(font: DictionaryObject, shown: bytes) -> Iterator[str]:
    if "/ToUnicode" not in font:
        yield f"31-027: letters of {font.get('/BaseFont')} stand for no characters"
        return
    wide = 2 if font["/Subtype"] == "/Type0" else 1
    codes = {int.from_bytes(shown[at : at + wide]) for at in range(0, len(shown), wide)}
    stands = _characters(font["/ToUnicode"].get_data())
    if wide == 2 and 0 in codes:
        yield f"31-030: {font.get('/BaseFont')} has no letter for something that is shown"
    if unread := sorted(code for code in codes if stands.get(code, "") in _NO_CHARACTERS):
        yield f"10-001: {font.get('/BaseFont')}: letters {unread[:5]} stand for no character"


@cache
def _characters(told: bytes) -> dict[int, str]:
    """What each letter stands for, by a ToUnicode map (9.10.3)."""
    found: dict[int, str] = {}
    for part in re.findall(rb"beginbfchar(.*?)endbfchar", told, re.DOTALL):
        found |= {int(one, 16): _text(to) for one, to in re.findall(_HEX + rb"\s*" + _HEX, part)}
    for part in re.findall(rb"beginbfrange(.*?)endbfrange", told, re.DOTALL):
        spans = re.findall(
            _HEX + rb"\s*" + _HEX + rb"\s*(?:" + _HEX + rb"|\[(.*?)\])", part, re.DOTALL
        )
        for low, high, to, listed in spans:
            many = range(int(low, 16), int(high, 16) + 1)
            each = re.findall(_HEX, listed) or [to]
            for at, code in enumerate(many):
                found[code] = _text(each[at]) if len(each) > 1 else _next(_text(each[0]), at)
    return found


def _text(hexes: bytes) -> str:
    return bytes.fromhex(hexes.decode()).decode("utf-16-be")


def _next(text: str, by: int) -> str:
    return text[:-1] + chr(ord(text[-1]) + by)
