"""The templates of ``theme/``, strict: everything escaped, nothing silently missing."""

from __future__ import annotations

from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

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

    def __reduce__(self) -> tuple[type[Theme], tuple[Path]]:
        """A process of its own reads the templates itself: what they are compiled to cannot be sent."""
        return Theme, (self._folder,)

    def fill(self, template: str, view: object, say: Say) -> str:
        """A whole page."""
        return self._environment.get_template(template).render(
            view=view, page=getattr(view, "page", None), w=say
        )

    def fill_part(self, template: str, view: object, say: Say) -> Markup:
        """A part of a page."""
        return Markup(self.fill(template, view, say))  # noqa: S704  # the template escapes its texts
