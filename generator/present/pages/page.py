"""What stands around the content of every page."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from generator.model.site import SiteFile
from generator.present.views.page import LanguageView, LinkView, PageView
from generator.present.words.say import Say

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
    folder: str
    """Where this language's pages stand: ``es/``, or nothing for the first language."""
    links: tuple[tuple[str, str], ...]
    """Hand-written pages: address in the language's folder, and title."""
    elsewhere: Mapping[str, frozenset[str]]
    """By other language: which addresses it has too, a lesson by its folder's name alone."""
    preview: bool
    """Whether the pages are for the educator's own machine."""

    def page(
        self, path: str, title: str, description: str = "", *, paper: bool = False
    ) -> PageView:
        """The surroundings of the page at a path in the language's folder."""
        root = self.root(path)
        mine = root + self.folder
        home = "index.html"
        return PageView(
            language=self.say.locale,
            title=f"{title} · {self.site.programme}" if title else self.site.programme,
            description=description,
            programme=self.site.programme,
            root=root,
            home=LinkView(mine + home, self.say("all_lessons"), path == home),
            links=tuple(
                LinkView(mine + address, label, address == path) for address, label in self.links
            ),
            languages=self._languages(path, root),
            stylesheet=f"{root}assets/{'paper' if paper else 'screen'}.css",
            script=f"{root}assets/paper.js"
            if paper
            else f"{root}assets/lesson-{self.say.locale}.js",
            policy="" if self.preview else POLICY,
        )

    @property
    def has_recording_pack(self) -> bool:
        """Whether pages for filming are made: in the preview always, else where the site asks for it."""
        return self.preview or self.site.publish_recording_pack

    def root(self, path: str) -> str:
        """The site's root as seen from a page at a path in the language's folder."""
        return "../" * (self.folder + path).count("/")

    def beside(self, lesson: str, name: str) -> str:
        """A file beside a lesson, as seen from the lesson's pages in this language."""
        return f"{self.root(f'{lesson}/index.html')}{lesson}/{name}" if self.folder else name

    def address(self, path: str) -> str:
        """Where a page is published; empty while the site has no address."""
        return f"{self.site.address}{self.folder}{path}" if self.site.address else ""

    def _languages(self, path: str, root: str) -> tuple[LanguageView, ...]:
        """The same page in the other languages that have it."""
        name = path.split("/", maxsplit=1)[0]  # a lesson's folder, or the page itself
        first = self.site.languages[0]
        return tuple(
            LanguageView(
                href=f"{root}{'' if language == first else language + '/'}{path}",
                label=self.say.language_name(language),
                language=language,
            )
            for language, addresses in self.elsewhere.items()
            if name in addresses
        )
