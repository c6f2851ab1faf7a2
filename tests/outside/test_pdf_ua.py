"""The points of PDF/UA-1 are seen where they are broken, and what breaks none passes."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from io import BytesIO
from typing import Any

import pytest
import typst
from pypdf import PdfWriter
from pypdf.generic import ArrayObject, BooleanObject, DictionaryObject, NameObject, TextStringObject

from tests.outside.pdf_ua import broken_points

WHOLE = """
#set document(title: "Whole", date: none)
#set text(lang: "en")
#set page(footer: align(center)[1 / 1])
= One
Words, and #link("https://kitchen.larkmead.example/")[a way].
== Two
- first
- second
#table(columns: 2, table.header[Side][Holds], [Door], [460], [Stove], [80])
#image(bytes("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M0 0h9v9z'/></svg>"), alt: "A plum", width: 9mm)
"""
Change = Callable[[PdfWriter], Any]


@cache
def whole(source: str = WHOLE) -> bytes:
    return bytes(typst.compile(source.encode(), format="pdf", pdf_standards=["ua-1"], timestamp=0))


def changed(change: Change) -> bytes:
    writer = PdfWriter(clone_from=BytesIO(whole()))
    change(writer)
    written = BytesIO()
    writer.write(written)
    return written.getvalue()


def top(writer: PdfWriter) -> Any:
    return writer.root_object


def elements(held: Any) -> list[Any]:
    below = held.get("/K", [])
    below = below.get_object() if hasattr(below, "get_object") else below
    each = [one.get_object() for one in (below if isinstance(below, list) else [below])]
    found = [one for one in each if isinstance(one, dict) and "/S" in one]
    return [*found, *(deeper for one in found for deeper in elements(one))]


def first(writer: PdfWriter, kind: str) -> Any:
    tree = top(writer)["/StructTreeRoot"].get_object()
    return next(one for one in elements(tree) if one["/S"] == f"/{kind}")


def becomes(kind: str, other: str) -> Change:
    return lambda writer: first(writer, kind).update({NameObject("/S"): NameObject(f"/{other}")})


def loses(kind: str, key: str) -> Change:
    return lambda writer: first(writer, kind).pop(key)


def content(old: bytes, new: bytes) -> Change:
    """Other marks in what the page paints."""

    def change(writer: PdfWriter) -> None:
        page = writer.pages[0]
        stream = page["/Contents"].get_object()
        told = stream.get_data()
        assert old in told
        stream.set_data(told.replace(old, new, 1))

    return change


def under_decoration(writer: PdfWriter) -> None:
    stream = writer.pages[0]["/Contents"].get_object()
    stream.set_data(b"/Artifact BMC " + stream.get_data() + b" EMC")


def names_no_head(writer: PdfWriter) -> None:
    first(writer, "TD")["/A"][0].update(
        {NameObject("/Headers"): ArrayObject([TextStringObject("gone")])}
    )


def font(change: Callable[[Any], Any]) -> Change:
    def of_page(writer: PdfWriter) -> None:
        fonts = writer.pages[0]["/Resources"]["/Font"].get_object()
        change(next(iter(fonts.values())).get_object())

    return of_page


def no_file(held: Any) -> None:
    told = held["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
    for key in [one for one in told if one.startswith("/FontFile")]:
        del told[key]


def metadata(old: bytes, new: bytes) -> Change:
    """Other words in what the file tells of itself."""

    def change(writer: PdfWriter) -> None:
        stream = top(writer)["/Metadata"].get_object()
        told = stream.get_data()
        assert old in told
        stream.set_data(told.replace(old, new))

    return change


def formula_without_words(writer: PdfWriter) -> None:
    becomes("Figure", "Formula")(writer)
    loses("Formula", "/Alt")(writer)


def no_link(writer: PdfWriter) -> None:
    note = writer.pages[0]["/Annots"][0].get_object()  # type: ignore[index]  # there is one
    note.update({NameObject("/Subtype"): NameObject("/Text")})


NO = BooleanObject(False)
YES = BooleanObject(True)
PLANTED: dict[str, tuple[str, Change]] = {
    "not tagged": ("7.1", lambda w: top(w)["/MarkInfo"].update({NameObject("/Marked"): NO})),
    "suspect": ("01-007", lambda w: top(w)["/MarkInfo"].update({NameObject("/Suspects"): YES})),
    "no word of the title": ("07-001", lambda w: top(w).pop("/ViewerPreferences")),
    "title not shown": (
        "07-002",
        lambda w: top(w)["/ViewerPreferences"].update({NameObject("/DisplayDocTitle"): NO}),
    ),
    "no language": ("11-006", lambda w: top(w).pop("/Lang")),
    "a form": ("25-001", lambda w: top(w).update({NameObject("/AcroForm"): DictionaryObject()})),
    "locked": ("26-001", lambda w: w.encrypt("", "key", algorithm="RC4-128")),
    "not said to be accessible": ("06-002", metadata(b"pdfuaid:part", b"pdfuaid:parts")),
    "no title": ("06-003", metadata(b"Whole", b" ")),
    "no metadata": ("06-001", lambda w: top(w).pop("/Metadata")),
    "a type of its own": ("02-001", becomes("L", "Pile")),
    "a standard type for another": (
        "02-004",
        lambda w: (
            top(w)["/StructTreeRoot"]
            .get_object()
            .update(
                {NameObject("/RoleMap"): DictionaryObject({NameObject("/P"): NameObject("/H1")})}
            )
        ),
    ),
    "not marked": ("01-005", content(b"/Artifact", b"/Span")),
    "decoration and text": ("01-003", under_decoration),
    "a mark in no element": ("01-006", loses("P", "/K")),
    "level left out": ("14-003", becomes("H2", "H4")),
    "no first level": ("14-002", becomes("H1", "H2")),
    "no level": ("14-007", becomes("H2", "H")),
    "picture without words": ("13-004", loses("Figure", "/Alt")),
    "formula without words": ("17-002", formula_without_words),
    "note without a name": ("19-003", becomes("P", "Note")),
    "no link": ("28-004", no_link),
    "link without words": (
        "28-012",
        lambda w: w.pages[0]["/Annots"][0].get_object().pop("/Contents"),  # type: ignore[index]  # there is one
    ),
    "link in no element": ("28-011", becomes("Link", "Span")),
    "tab goes elsewhere": ("28-009", lambda w: w.pages[0].pop("/Tabs")),
    "list without a list": ("09-005", becomes("L", "Div")),
    "row without a table": ("09-004", becomes("Table", "Div")),
    "cell is missing": (
        "7.5",
        lambda w: first(w, "TR").__setitem__(NameObject("/K"), ArrayObject()),
    ),
    "head of nothing": ("15-003", loses("TH", "/A")),
    "cell names no head": ("15-003", names_no_head),
    "font not in the file": ("31-009", font(no_file)),
    "letters for nothing": ("31-027", font(lambda held: held.pop("/ToUnicode"))),
    "letters for no character": (
        "10-001",
        font(lambda held: held["/ToUnicode"].get_object().set_data(b"")),
    ),
}


def test_what_is_whole_breaks_nothing() -> None:
    assert broken_points(whole()) == []


@pytest.mark.parametrize(("point", "change"), PLANTED.values(), ids=list(PLANTED))
def test_each_point_is_seen(point: str, change: Change) -> None:
    told = broken_points(changed(change))
    assert any(one.startswith(f"{point}:") for one in told), told
