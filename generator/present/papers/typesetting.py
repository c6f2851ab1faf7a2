"""Papers set by typst in the letters of the theme, from memory; no letter and no moment of the machine is in them."""

from __future__ import annotations

from pathlib import Path

import typst

_MAIN = b'#import "/papers/frame.typ": whole\n#whole\n'


class Typesetting:
    """Its letters and what it has read of the theme are loaded once."""

    def __init__(self, theme: Path) -> None:
        letters = typst.Fonts(
            include_system_fonts=False,  # they are other ones on every machine
            font_paths=[str(theme / "vendor" / "noto-sans")],
        )
        self._compiler = typst.Compiler(_MAIN, root=str(theme), font_paths=letters)

    def pdf(self, given: str) -> bytes:
        """A tagged PDF (PDF/UA-1, ISO 14289-1) of what the templates are given, as JSON."""
        made = self._compiler.compile(
            _MAIN,
            format="pdf",
            sys_inputs={"given": given},
            pdf_standards=["ua-1"],
            timestamp=0,
        )
        if not isinstance(made, bytes):
            what = "typst gave no file"
            raise TypeError(what)
        return made
