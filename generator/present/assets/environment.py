"""The templates of ``theme/``, strict: everything escaped, nothing silently missing."""

from __future__ import annotations

from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from generator.present.addresses import Addresses
from generator.present.views.page import View
from generator.present.words.foreign import unmarked
from generator.present.words.say import Say


class Theme:
    """Templates ready to be filled."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._environment = Environment(
            loader=FileSystemLoader(folder),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
            auto_reload=False,
        )
        self._environment.filters["unmarked"] = unmarked

    def __reduce__(self) -> tuple[type[Theme], tuple[Path]]:
        """A process of its own reads the templates itself: what they are compiled to cannot be sent."""
        return Theme, (self._folder,)

    def fill(self, view: View, say: Say, at: Addresses) -> str:
        """A whole page.

        Args:
            view: what it shows; names its template.
            say: the words of its language.
            at: makes every address it writes.
        """
        return self._environment.get_template(view.template).render(view=view, w=say, at=at)

    def fill_part(self, view: View, say: Say, at: Addresses) -> Markup:
        """A part of a page."""
        return Markup(self.fill(view, say, at))  # noqa: S704  # the template escapes its texts
