"""What a program can see of PDF/UA-1 in a file: each point is named as the Matterhorn Protocol names it.

ISO 14289-1 and the protocol's version 1.02 from memory (status M). What a person must judge (is the order of reading
right, does a picture's text say what it shows) is not here. `07-001: …` is the point, then what is wrong.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import pairwise

from pypdf.generic import DictionaryObject

from tests.outside.pdf_fonts import of_fonts
from tests.outside.pdf_nesting import of_nesting
from tests.outside.pdf_parts import Opened, kids, opened

_STANDARD = frozenset(
    re.findall(
        r"\w+",
        "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl "
        "LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP "
        "Warichu WT WP Figure Formula Form",
    )
)
"""Types of ISO 32000-1, 14.8.4."""


def broken_points(pdf: bytes) -> list[str]:
    """Every point that the file breaks; an empty list is what is wanted."""
    file = opened(pdf)
    return [told for look in _LOOKS for told in look(file)]


def _of_document(file: Opened) -> Iterator[str]:
    held = file.root
    marked = held.get("/MarkInfo", {})
    if not _yes(marked, "/Marked"):
        yield "7.1: the file does not say that it is tagged"
    if _yes(marked, "/Suspects"):
        yield "01-007: its tags are said to be suspect"
    wishes = held.get("/ViewerPreferences", {})
    if "/DisplayDocTitle" not in wishes:
        yield "07-001: it does not say whether the title is shown"
    elif not _yes(wishes, "/DisplayDocTitle"):
        yield "07-002: the title is not shown"
    if not re.fullmatch(r"[a-z]{2,3}(-[A-Z]{2})?", str(held.get("/Lang", ""))):
        yield f"11-006: no language of the whole: {held.get('/Lang')!r}"
    if file.reader.is_encrypted:
        yield "26-001: it is encrypted"
    if "/AcroForm" in held:
        yield "25-001: it has a form, and no paper of ours has one"


def _yes(held: DictionaryObject, key: str) -> bool:
    return key in held and bool(held[key].value)  # type: ignore[attr-defined]  # a truth of pypdf


def _of_metadata(file: Opened) -> Iterator[str]:
    stream = file.root.get("/Metadata")
    if stream is None:
        yield "06-001: no metadata"
        return
    told = stream.get_object().get_data().decode("utf-8")
    if not re.search(r"<pdfuaid:part>1</pdfuaid:part>|pdfuaid:part=.1.", told):
        yield "06-002: it does not say that it is PDF/UA-1"
    title = re.search(r"<dc:title>.*?<rdf:li[^>]*>([^<]+)</rdf:li>", told, re.DOTALL)
    if title is None or not title[1].strip():
        yield "06-003: no title"


def _of_roles(file: Opened) -> Iterator[str]:
    named = file.roles
    for own, stands in named.items():
        if stands.removeprefix("/") not in _STANDARD:
            yield f"02-001: {own} stands for {stands}, which is no standard type"
        if own.removeprefix("/") in _STANDARD:
            yield f"02-004: the standard type {own} stands for another"
    for part in file.parts:
        if part.kind not in _STANDARD:
            yield f"02-001: {part.kind} is no standard type"


def _of_content(file: Opened) -> Iterator[str]:
    for number, (_, painted) in enumerate(file.pages, 1):
        for one in painted:
            decor = [tag for tag, _ in one.marks if tag == "/Artifact"]
            meant = [mark for _, mark in one.marks if mark is not None]
            if decor and meant:
                yield f"01-003: page {number}, {one.what} is tagged and decoration at once"
            elif not decor and not meant:
                yield f"01-005: page {number}, {one.what} is neither tagged nor decoration"


def _of_marks(file: Opened) -> Iterator[str]:
    """Each mark of a page has one place in the structure, and the other way about (14.7.4)."""
    named = Counter(mark for part in file.parts for mark in part.marks)
    shown = {
        (page.indirect_reference.idnum, mark)
        for page, painted in file.pages
        if page.indirect_reference
        for one in painted
        for _, mark in one.marks
        if mark is not None
    }
    if lost := shown - set(named):
        yield f"01-006: {len(lost)} marks are in no element: {sorted(lost)[:3]}"
    if twice := [mark for mark, times in named.items() if times > 1]:
        yield f"01-006: {len(twice)} marks are in two elements: {twice[:3]}"


def _of_headings(file: Opened) -> Iterator[str]:
    kinds = [part.kind for part in file.parts]
    levels = [int(kind[1]) for kind in kinds if re.fullmatch(r"H[1-6]", kind)]
    if "H" in kinds:
        yield "14-007: a heading without a level beside those that have one"
    if not levels or levels[0] != 1:
        yield "14-002: the first heading is not of the first level"
    for before, after in pairwise(levels):
        if after > before + 1:
            yield f"14-003: a heading of level {after} follows one of level {before}"


def _of_pictures(file: Opened) -> Iterator[str]:
    for part in file.parts:
        said = str(part.held.get("/Alt", part.held.get("/ActualText", ""))).strip()
        if part.kind == "Figure" and not said:
            yield "13-004: a picture without a text in its place"
        if part.kind == "Formula" and not said:
            yield "17-002: a formula without a text in its place"
        if part.kind == "Note" and "/ID" not in part.held:
            yield "19-003: a note without a name"


def _of_links(file: Opened) -> Iterator[str]:
    inside = {
        kid.raw_get("/Obj").idnum
        for part in file.parts
        if part.kind == "Link"
        for kid in kids(part.held)
        if isinstance(kid, dict) and "/Obj" in kid
    }
    for number, (page, _) in enumerate(file.pages, 1):
        notes = page.get("/Annots", [])
        if notes and page.get("/Tabs") != "/S":
            yield f"28-009: page {number}, the key Tab does not follow the structure"
        for note in notes:
            held = note.get_object()
            if held["/Subtype"] != "/Link":
                yield f"28-004: page {number}, {held['/Subtype']} is no link"
            if note.idnum not in inside:
                yield f"28-011: page {number}, a link stands in no element for it"
            if not str(held.get("/Contents", "")).strip():
                yield f"28-012: page {number}, a link does not say where it leads"


_LOOKS: tuple[Callable[[Opened], Iterator[str]], ...] = (
    _of_document,
    _of_metadata,
    _of_roles,
    _of_content,
    _of_marks,
    _of_headings,
    _of_pictures,
    _of_links,
    of_nesting,
    of_fonts,
)
