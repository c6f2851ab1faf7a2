"""What stands around the content of every page."""

from __future__ import annotations

import json
from dataclasses import dataclass

from markupsafe import Markup

from generator.model.site import SiteFile
from generator.present.say import Say
from generator.present.views import LinkView, PageView

_NOTHING = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='"
"""Hash of the empty string: the plotting library adds an empty style element and fills it by script."""
POLICY = (
    f"default-src 'none'; script-src 'self'; style-src 'self' {_NOTHING}; img-src 'self' data:; "
    "media-src 'self'; connect-src 'self'; form-action 'none'; base-uri 'none'"
)
"""Content security policy of every published page; the preview's reload script would break it."""


@dataclass(frozen=True, slots=True)
class Surround:
    """The same for all pages of one language."""

    site: SiteFile
    say: Say
    links: tuple[tuple[str, str], ...]
    """Hand-written pages: address from the root, and title."""
    preview: bool
    """Whether the pages are for the educator's own machine."""

    def page(
        self, path: str, title: str, description: str = "", *, paper: bool = False
    ) -> PageView:
        """The surroundings of the page at a path from the site's root."""
        root = "../" * path.count("/")
        home = "index.html"
        return PageView(
            language=self.say.language,
            title=f"{title} · {self.site.programme}" if title else self.site.programme,
            description=description,
            programme=self.site.programme,
            root=root,
            home=LinkView(root + home, self.say("all_lessons"), path == home),
            links=tuple(
                LinkView(root + address, label, address == path) for address, label in self.links
            ),
            stylesheet=f"{root}assets/{'paper' if paper else 'screen'}.css",
            script=f"{root}assets/{'paper' if paper else 'lesson'}.js",
            script_words=_json(self.say),
            policy="" if self.preview else POLICY,
        )


def _json(say: Say) -> Markup:
    """The browser's words; ``<`` is written as an escape, so that no text can end the script block."""
    text = json.dumps(
        say.starting_with("js_"), ensure_ascii=False, separators=(",", ":"), sort_keys=True
    )
    return Markup(text.replace("<", "\\u003c"))  # noqa: S704  # escaped for a script block just here
