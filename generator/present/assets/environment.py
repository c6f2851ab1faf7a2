"""The templates of ``theme/``, strict: everything escaped, nothing silently missing."""

from __future__ import annotations

import re
from pathlib import Path

from jinja2 import FileSystemLoader, StrictUndefined
from markupsafe import Markup

from generator.present.addresses import Addresses
from generator.present.assets.compiled import Compiled
from generator.present.assets.quick import QuickEnvironment
from generator.present.form import At, Form
from generator.present.pictures.plums.plum import PLUM
from generator.present.views.page import View
from generator.present.words.foreign import unmarked
from generator.present.words.say import Say

_EMPTY_LINES = re.compile(r"\n{2,}")


class Theme:
    """Templates ready to be filled."""

    def __init__(self, folder: Path, kept: Path | None = None) -> None:
        """The templates of a folder.

        Args:
            folder: the theme.
            kept: folder in which to keep what they are compiled to.
        """
        self.folder, self._kept = folder, kept
        self._environment = QuickEnvironment(
            loader=FileSystemLoader(folder),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
            auto_reload=False,
            bytecode_cache=Compiled(kept) if kept else None,
        )
        self._environment.filters["unmarked"] = unmarked
        self._environment.globals["plum_outline"] = PLUM

    def __reduce__(self) -> tuple[type[Theme], tuple[Path, Path | None]]:
        """A process of its own reads the templates itself: what they are compiled to cannot be sent."""
        return Theme, (self.folder, self._kept)

    def form(self, view: View, say: Say) -> Form:
        """A whole page but for its addresses.

        Args:
            view: what it shows; names its template.
            say: the words of its language.
        """
        at = At()
        template = self._environment.get_template(view.template)
        return Form(_packed(template.render(view=view, w=say, at=at)), at)

    def fill(self, view: View, say: Say, at: Addresses) -> str:
        """A whole page where it stands."""
        return self.form(view, say).put(at)

    def fill_part(self, view: View, say: Say, at: Addresses) -> Markup:
        """A part of a page."""
        return Markup(self.fill(view, say, at))  # noqa: S704  # the template escapes its texts


def _packed(page: str) -> str:
    """A page without the empty lines that macros leave behind; where lines are shown as they stand, all of them."""
    return page if "<pre" in page else _EMPTY_LINES.sub("\n", page)
