"""The pages of a site that are no lesson's: front page, hand-written pages, components."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.model.published import Published
from generator.present.addresses import FromAnywhere, OnSite
from generator.present.assets.environment import Theme
from generator.present.entry import LessonEntry
from generator.present.output import Output
from generator.present.pages.cartridges import CARTRIDGES, all_cartridges
from generator.present.pages.class_link import MAKER, class_links_view
from generator.present.pages.codes import CODES, codes_view
from generator.present.pages.components import PATH, components_view
from generator.present.pages.formerly import Former, formerly_view
from generator.present.pages.home import FRONT, PROSE, home_view
from generator.present.pages.lesson_list import LIST, lesson_list
from generator.present.pages.lesson_table import LESSONS, lesson_table
from generator.present.pages.not_found import NOT_FOUND, from_root, not_found_view
from generator.present.pages.page import STAMPS, Surround
from generator.present.pages.stamps import stamps_view
from generator.present.updates.feed import updates_feed
from generator.present.updates.page import updates_pages
from generator.present.views.home import ProseView
from generator.present.views.page import LinkView, View
from generator.present.words.prose import contents, first_words

_OfLessons = Callable[[Sequence[LessonEntry], Sequence[LessonEntry], Surround], View]
GUIDE = "guide/index.html"
"""First page of the guide for educators, which is written in the site's first language alone."""


class Presenter:
    """Makes the pages of one site in one language."""

    def __init__(self, theme: Theme, surround: Surround) -> None:
        self._theme = theme
        self._say = surround.say
        self.surround = surround
        """The same for all its pages."""

    def home(self, entries: Iterable[LessonEntry], intro: Markup, *, headed: bool) -> str:
        """The front page, below an introduction that the educator wrote.

        Args:
            entries: the lessons of the language.
            intro: HTML.
            headed: whether it has a main heading of its own.
        """
        view = home_view(entries, intro, self.surround, headed=headed)
        return self._fill(view, FRONT)

    def components(self, results: Iterable[LessonResult]) -> Output:
        """The page of all components in all states, for a preview."""
        view = components_view(results, self.surround)
        page = self._fill(view, PATH)
        return Output(self.surround.folder + PATH, page.encode())

    def codes(self, entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry]) -> Output:
        """The page that reads finish codes, of the lessons of its language and of the first one."""
        view = codes_view(entries, untranslated, self.surround)
        return Output(self.surround.folder + CODES, self._fill(view, CODES).encode())

    def stamps(
        self, entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], signs: int
    ) -> Output:
        """The page where a stamp is typed; arguments as of ``stamps_view``."""
        view = stamps_view(entries, untranslated, signs, self.surround)
        return Output(self.surround.folder + STAMPS, self._fill(view, STAMPS).encode())

    def lesson_table(
        self, entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry]
    ) -> Output:
        """The page with all lessons in a table, of its language and of the first one."""
        view = lesson_table(entries, untranslated, self.surround)
        return Output(self.surround.folder + LESSONS, self._fill(view, LESSONS).encode())

    def updates(
        self, published: Published, leads_on: Mapping[str, str], there: Collection[str]
    ) -> Iterator[Output]:
        """The pages that say what each publication changed; where the site has an address, their feed too.

        Args:
            published: the record.
            leads_on: by id of a lesson that was renamed, the id it has today.
            there: ids of the lessons that the language has today.
        """
        for path, view in updates_pages(published, leads_on, there, self.surround):
            yield Output(self.surround.folder + path, self._fill(view, path).encode())
            if view.feed:
                begun = min((one.at for one in published.publications), default="")
                yield Output(view.feed, updates_feed(view, begun, self.surround))

    def prose(self, path: str, title: str, body: str, *, headed: bool, draft: bool = False) -> str:
        """A hand-written page at a path in the language's folder, its body already HTML.

        Args:
            path: in the folder.
            title: of the page.
            body: HTML.
            headed: whether it has a main heading of its own.
            draft: whether only a preview shows it.
        """
        lost = self.surround.folder + path == NOT_FOUND
        if lost:
            body = from_root(body, self._from_anywhere())
        page = self.surround.page(path, title, first_words(body), look=PROSE, searched=not lost)
        heading, end, rest = Markup(body).partition("</h1>")  # noqa: S704  # made by MkDocs from a trusted file
        view = ProseView(
            page,
            title="" if headed else title,
            heading=heading + end if end else Markup(),
            body=rest if end else heading,
            contents=contents(body),
            draft=draft,
            guide=LinkView(GUIDE, self._say("guide_link")) if _in_guide(path) else None,
        )
        return self._fill(view, path)

    def with_lessons(
        self, body: str, entries: Sequence[LessonEntry], untranslated: Sequence[LessonEntry]
    ) -> str:
        """The body of a hand-written page with what is made of the lessons in the place of its mark."""
        made: dict[str, _OfLessons] = {
            LIST: lesson_list,
            MAKER: class_links_view,
            CARTRIDGES: all_cartridges,
        }
        for mark, view_of in made.items():
            if mark in body:
                view = view_of(entries, untranslated, self.surround)
                body = body.replace(mark, self._theme.fill_part(view, self._say, self._at(FRONT)))
        return body

    def not_found(
        self, told: Mapping[Presenter, Sequence[LessonEntry]], formerly: str = ""
    ) -> Output:
        """The page in the place of one that is not there, for the whole site.

        Args:
            told: the lessons of each language, by who makes its pages; this one first.
            formerly: path of the list of older names of lessons, where there is one.
        """
        parts = ((one.surround, entries) for one, entries in told.items())
        view = not_found_view(parts, formerly)
        return Output(NOT_FOUND, self._fill(view, NOT_FOUND).encode())

    def formerly(self, one: Former) -> Output:
        """The page at an address that something had before."""
        view = formerly_view(one, self.surround)
        at = OnSite(one.path, preview=self.surround.preview)
        return Output(one.path, self._theme.fill(view, self._say, at).encode())

    def _fill(self, view: View, path: str) -> str:
        return self._theme.fill(view, self._say, self._at(path))

    def _at(self, path: str) -> OnSite:
        """The addresses of a page in the language's folder."""
        page = self.surround.folder + path
        if page == NOT_FOUND:
            return self._from_anywhere()
        return OnSite(page, preview=self.surround.preview)

    def _from_anywhere(self) -> FromAnywhere:
        site, preview = self.surround.site, self.surround.preview
        published = "" if preview else site.address  # a preview stands at the root of its host
        return FromAnywhere(published, preview=preview)


def _in_guide(path: str) -> bool:
    """Whether a page is one of the guide's further pages."""
    return path != GUIDE and path.startswith("guide/")
