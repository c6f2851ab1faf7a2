"""What stands around the content of every page."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import Enum

from generator.model.published import LessonState
from generator.model.site import SiteFile
from generator.present.pages.neighbours import ALONE, Neighbours
from generator.present.views.page import LanguageView, LinkView, PageView
from generator.present.words.say import Say

ICON = "assets/favicon.svg"
"""The picture in a browser's tab."""


STAMPS = "stamps.html"
"""Path in its language's folder of the page where a stamp is typed."""


class Build(Enum):
    """What a site is made as; a page says in which of them it is made."""

    PREVIEW = "preview"
    """For the educator's own machine."""
    PUBLISHED = "published"
    FILMING = "filming"
    """With the pages for filming: in the preview always, else where the site asks for it."""


@dataclass(frozen=True, slots=True)
class Look:
    """Which of the shared styles and scripts a page begins with, by their names in ``assets/``."""

    styles: tuple[str, ...] = ("screen", "below")
    script: str = "page-{locale}"
    """Where it holds texts of the site, it is made once for each language."""


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
    neighbours: Neighbours = ALONE
    """Around a lesson's pages: the lessons before and after it."""
    past: tuple[LessonState, ...] = ()
    """Around a lesson's pages: what was published of it in every language, the oldest first."""

    def page(
        self,
        path: str,
        title: str,
        description: str = "",
        *,
        look: Look = Look(),  # frozen
        searched: bool = True,
    ) -> PageView:
        """The surroundings of the page at a path in the language's folder."""
        home, programme = "index.html", self.site.name_in(self.say.language)
        languages = self._languages(path)
        return PageView(
            language=self.say.locale,
            mirrored=self.say.direction == "rtl",
            title=f"{title} · {programme}" if title else programme,
            description=description,
            programme=programme,
            home=LinkView(self.folder + home, self.say("all_lessons"), path == home),
            links=tuple(
                LinkView(self.folder + address, label, address == path)
                for address, label in self.links
            ),
            languages=languages,
            alternates=tuple(self._alternates(path, languages)),
            styles=tuple(f"assets/{style}.css" for style in look.styles),
            script=f"assets/{look.script.format(locale=self.say.locale)}.js",
            searched=searched,
            preview=self.preview,
            stamps=self.folder + STAMPS,
            still_right=self.still_right,
        )

    @property
    def builds(self) -> frozenset[Build]:
        """What the site is made as."""
        filming = self.preview or self.site.publish_recording_pack
        made = Build.PREVIEW if self.preview else Build.PUBLISHED
        return frozenset({made, Build.FILMING} if filming else {made})

    def address(self, path: str) -> str:
        """Where a page is published; empty while the site has no address."""
        return f"{self.site.address}{self.folder}{path}" if self.site.address else ""

    @property
    def still_right(self) -> str:
        """The line on paper that says where to ask whether it still holds; empty while the site has no address."""
        if not self.site.address:
            return ""
        return self.say("still_right", address=self.address(STAMPS).partition("://")[2])

    def _alternates(self, path: str, others: tuple[LanguageView, ...]) -> Iterator[tuple[str, str]]:
        """Each language of a page, itself among them, and which one is for all the rest."""
        address = self.site.address or ""
        if address and others:
            yield self.say.language, f"{address}{self.folder}{path}"
            first = self.site.languages[0]
            known = {other.language: other.href for other in others}
            yield "x-default", address + known.get(first, self.folder + path)
        for other in others:
            yield other.language, address + other.href

    def _languages(self, path: str) -> tuple[LanguageView, ...]:
        """The same page in the other languages that have it."""
        name = path.split("/", maxsplit=1)[0]  # a lesson's folder, or the page itself
        first = self.site.languages[0]
        return tuple(
            LanguageView(
                href=f"{'' if language == first else language + '/'}{path}",
                label=self.say.language_name(language),
                language=language,
            )
            for language, addresses in self.elsewhere.items()
            if name in addresses
        )
