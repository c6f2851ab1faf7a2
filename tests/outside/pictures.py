"""Shows the sheets of a PDF as pictures, and reads the QR codes in them: PDFium and ZXing, neither of which made them."""

from __future__ import annotations

from typing import Any

import pypdfium2
import zxingcpp

DOTS = 200
"""Dots an inch: of a plain printer, or of a phone held close (common practice, no source)."""


def pictures(pdf: bytes, dots: int = DOTS) -> list[Any]:
    """Each sheet in greys, as rows of bytes."""
    document = pypdfium2.PdfDocument(pdf)
    try:
        return [sheet.render(scale=dots / 72, grayscale=True).to_numpy() for sheet in document]
    finally:
        document.close()


def words_on_sheets(pdf: bytes) -> str:
    """All that they say, without spaces: a long address is broken over lines."""
    document = pypdfium2.PdfDocument(pdf)
    try:
        return "".join(
            "".join(sheet.get_textpage().get_text_bounded().split()) for sheet in document
        )
    finally:
        document.close()


def codes_on_sheets(pdf: bytes, dots: int = DOTS) -> list[list[str]]:
    """What the QR codes of each sheet say, from its top to its foot."""
    return [_codes(picture) for picture in pictures(pdf, dots)]


def _codes(picture: Any) -> list[str]:
    found = zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)
    return [one.text for one in sorted(found, key=lambda one: one.position.top_left.y)]
