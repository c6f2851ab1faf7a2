"""What a PDF is made of, by pypdf: its structure as a tree, and what its pages paint under which mark.

Numbers of clauses are those of ISO 32000-1, from memory (status M).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from io import BytesIO
from typing import Any

from pypdf import PageObject, PdfReader
from pypdf.generic import ContentStream, DictionaryObject

_SHOWS = {b"Tj", b"TJ", b"'", b'"'}
_PAINTS = {b"f", b"F", b"f*", b"B", b"B*", b"b", b"b*", b"S", b"s", b"sh", b"EI", b"INLINE IMAGE"}


@dataclass(frozen=True, slots=True)
class Part:
    """An element of the structure (14.7.2)."""

    kind: str
    """Its standard type, after the role map."""
    held: DictionaryObject
    parent: Part | None
    parts: tuple[Part, ...]
    marks: frozenset[tuple[int, int]]
    """Its own marked content: number of the page's object, and mark."""

    def all(self) -> Iterator[Part]:
        """It and all below it, in reading order."""
        yield self
        for part in self.parts:
            yield from part.all()

    def attribute(self, name: str, fallback: Any = None) -> Any:
        """A value of its attributes, whoever owns them (14.7.5)."""
        held = _plain(self.held.get("/A", []))
        for one in held if isinstance(held, list) else [held]:
            found = _plain(one)
            if isinstance(found, dict) and name in found:
                return _plain(found[name])
        return fallback


@dataclass(frozen=True, slots=True)
class Painted:
    """One thing that a page paints."""

    what: str
    marks: tuple[tuple[str, int | None], ...]
    """Tags it stands under, the outermost first, each with its mark, if it has one."""
    font: DictionaryObject | None = None
    shown: bytes = b""


@dataclass(frozen=True, slots=True)
class Opened:
    """A file, and all that is asked of it more than once."""

    reader: PdfReader
    root: DictionaryObject
    """Its catalog (7.7.2)."""
    roles: dict[str, str]
    """What types of its own stand for."""
    parts: tuple[Part, ...]
    """Every element of the structure, in reading order."""
    pages: tuple[tuple[PageObject, tuple[Painted, ...]], ...]
    """Each page with all that it paints."""


def opened(pdf: bytes) -> Opened:
    """The file, read strictly: what is amiss in its objects raises."""
    reader = PdfReader(BytesIO(pdf), strict=True)
    root = _plain(reader.trailer["/Root"])
    tree = _plain(root.get("/StructTreeRoot", {}))
    roles = {str(own): str(stands) for own, stands in _plain(tree.get("/RoleMap", {})).items()}
    tops = _below(tree, None, roles, 0)
    pages = tuple((page, tuple(_painted(reader, page))) for page in reader.pages)
    return Opened(reader, root, roles, tuple(part for top in tops for part in top.all()), pages)


def _below(
    held: DictionaryObject, parent: Part | None, named: dict[str, str], page: int
) -> Iterator[Part]:
    for one in kids(held):
        if isinstance(one, dict) and "/S" in one:
            yield _part(one, parent, named, _page_of(one, page))


def _part(held: DictionaryObject, parent: Part | None, named: dict[str, str], page: int) -> Part:
    own = str(held["/S"])
    marks = frozenset(mark for one in kids(held) if (mark := _mark(one, page)))
    bare = Part(named.get(own, own).removeprefix("/"), held, parent, (), marks)
    return Part(bare.kind, held, parent, tuple(_below(held, bare, named, page)), marks)


def _mark(kid: Any, page: int) -> tuple[int, int] | None:
    if isinstance(kid, int):
        return page, int(kid)
    if isinstance(kid, dict) and kid.get("/Type") == "/MCR":
        return _page_of(kid, page), int(kid["/MCID"])
    return None


def _page_of(held: DictionaryObject, otherwise: int) -> int:
    return int(held.raw_get("/Pg").idnum) if "/Pg" in held else otherwise


def kids(held: DictionaryObject) -> list[Any]:
    """What stands below an element, or the tree."""
    found = _plain(held.get("/K", []))
    return [_plain(one) for one in (found if isinstance(found, list) else [found])]


def _painted(reader: PdfReader, page: PageObject) -> Iterator[Painted]:
    """All that a page paints, forms it places included (8.10)."""
    contents = page.get_contents()
    if contents is not None:
        yield from _paint(reader, contents, _plain(page.get("/Resources", {})), ())


def _paint(
    reader: PdfReader, stream: Any, resources: DictionaryObject, under: tuple[Any, ...]
) -> Iterator[Painted]:
    marks, font = list(under), None
    for operands, operator in ContentStream(stream, reader).operations:
        if operator in (b"BMC", b"BDC"):
            marks.append((str(operands[0]), _mcid(operands, resources)))
        elif operator == b"EMC":
            marks.pop()
        elif operator == b"Tf":
            font = _plain(_plain(resources["/Font"])[operands[0]])
        elif operator in _SHOWS:
            yield Painted("text", tuple(marks), font, _bytes(operands))
        elif operator in _PAINTS:
            yield Painted(operator.decode(), tuple(marks))
        elif operator == b"Do":
            placed = _plain(_plain(resources["/XObject"])[operands[0]])
            if placed["/Subtype"] == "/Form":
                own = _plain(placed.get("/Resources", resources))
                yield from _paint(reader, placed, own, tuple(marks))
            else:
                yield Painted("image", tuple(marks))
    assert len(marks) == len(under), "marked content that begins and does not end"


def _mcid(operands: list[Any], resources: DictionaryObject) -> int | None:
    if len(operands) < 2:
        return None
    said = operands[1]
    if isinstance(said, str):
        said = _plain(_plain(resources["/Properties"])[said])
    return int(said["/MCID"]) if "/MCID" in said else None


def _bytes(operands: list[Any]) -> bytes:
    parts = operands[-1] if isinstance(operands[-1], list) else [operands[-1]]
    return b"".join(_raw(one) for one in parts if isinstance(one, (str, bytes)))


def _raw(one: Any) -> bytes:
    return bytes(one) if isinstance(one, bytes) else bytes(one.original_bytes)


def _plain(one: Any) -> Any:
    """The object itself, where it is named by its number."""
    return one.get_object() if hasattr(one, "get_object") else one
