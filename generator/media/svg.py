"""SVG drawings that do nothing but show themselves: W3C SVG 2, chapters 2 (conformance), 15 (scripting), 16 (linking).

A list of what is let through, not of what is not: whatever it does not name is refused with its line.
"""

from __future__ import annotations

import re
from xml.parsers import expat

from generator.media.content import UnfitError
from generator.model.personal import Personal

_SVG = "http://www.w3.org/2000/svg"
_ELEMENTS = frozenset(
    [
        "svg",
        "g",
        "defs",
        "symbol",
        "use",
        "title",
        "desc",
        "path",
        "rect",
        "circle",
        "ellipse",
        "line",
        "polyline",
        "polygon",
        "text",
        "tspan",
        "textPath",
        "linearGradient",
        "radialGradient",
        "stop",
        "clipPath",
        "mask",
        "pattern",
        "marker",
        "filter",
        "feBlend",
        "feColorMatrix",
        "feComponentTransfer",
        "feComposite",
        "feDropShadow",
        "feFlood",
        "feFuncA",
        "feFuncB",
        "feFuncG",
        "feFuncR",
        "feGaussianBlur",
        "feMerge",
        "feMergeNode",
        "feMorphology",
        "feOffset",
        "style",
        "switch",
        "view",
    ]
)
_LINKS = {"href", "http://www.w3.org/1999/xlink href", "src"}
_FOREIGN = re.compile(r"url\(\s*['\"]?(?!#)|@import|image-set|src\(|javascript:|\\", re.IGNORECASE)
_LARGEST = 1_000_000
"""Bytes; a drawing of a map has a tenth of it."""
_HINT = "save it as a plain SVG, or as PNG"


def clean_svg(data: bytes) -> tuple[bytes, set[Personal]]:
    """The drawing without its comments; what else is no drawing is refused, not taken out.

    Raises:
        UnfitError: it is no drawing, or could run, fetch or tell something.
    """
    if len(data) > _LARGEST:
        raise UnfitError("is far too large for a drawing: it can have 1 MB", "save it as PNG")
    reader = expat.ParserCreate("utf-8", namespace_separator=" ")
    reader.buffer_text, reader.buffer_size = True, _LARGEST + 1  # a rule is seen whole
    seen = _Seen(reader)
    try:
        reader.Parse(data, True)  # noqa: FBT003  # the last part of it
    except expat.ExpatError:
        what = "is no SVG drawing, whatever its name says"
        raise UnfitError(what, "save it again as SVG or as PNG") from None
    for start in reversed(seen.comments):
        data = data[:start] + data[data.index(b"-->", start) + 3 :]
    return data, set()


class _Seen:
    """Looks at each part of a drawing as it comes."""

    def __init__(self, reader: expat.XMLParserType) -> None:
        self._reader, self._is_first = reader, True
        self.comments: list[int] = []
        """Where each begins, in bytes."""
        reader.StartElementHandler = self.start
        reader.CharacterDataHandler = self.text
        reader.CommentHandler = self.comment
        reader.StartDoctypeDeclHandler = self.doctype
        reader.ProcessingInstructionHandler = self.instruction

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """An element: one that is drawn, with nothing in it that acts or leads elsewhere."""
        space, _, element = name.rpartition(" ")
        if self._is_first and (space, element) != (_SVG, "svg"):
            raise UnfitError("is no SVG drawing, whatever its name says", _HINT)
        self._is_first = False
        if space != _SVG or element not in _ELEMENTS:
            raise UnfitError(f"holds `{element}`, which is more than a drawing", _HINT)
        for key, value in attributes.items():
            if " " in key and key not in _LINKS and not key.startswith("http://www.w3.org/XML/"):
                raise UnfitError(f"holds `{key.rpartition(' ')[2]}`, a note of a program", _HINT)
            if key.lower().startswith("on"):
                raise UnfitError(f"holds `{key}`, which runs a script", _HINT)
            if (key in _LINKS and not value.startswith("#")) or _FOREIGN.search(value):
                raise UnfitError(f"leads to another file by its `{key.rpartition(' ')[2]}`", _HINT)

    def text(self, words: str) -> None:
        """Words, or a style's rules."""
        if _FOREIGN.search(words):
            raise UnfitError("leads to another file in its style", _HINT)

    def comment(self, _: str) -> None:
        """A comment: programs write their names there, and people theirs."""
        self.comments.append(self._reader.CurrentByteIndex)

    def doctype(self, *_: object) -> None:
        """A document type, which could define texts that grow without end."""
        raise UnfitError("holds a document type", _HINT)

    def instruction(self, *_: object) -> None:
        """An instruction to a program, such as a style sheet elsewhere."""
        raise UnfitError("holds an instruction to a program", _HINT)
