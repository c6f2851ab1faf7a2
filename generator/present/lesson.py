"""The pages of one lesson in one language: made once, and put on the site or into a copy."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from generator.compute.result import LessonResult
from generator.present.addresses import Addresses, InCopy, OnSite
from generator.present.assets.brought import with_brought
from generator.present.assets.environment import Theme
from generator.present.cartridge.lesson import lesson_cartridge
from generator.present.cartridge.parts import Cartridge
from generator.present.form import Form
from generator.present.output import Output
from generator.present.pages.cartridges import has_cartridges
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.page import Surround
from generator.present.pages.page_of_lesson import LessonPage, Reader
from generator.present.pages.table import (
    SHEETS,
    START,
    lesson_links,
    lesson_pages,
    page_around,
    page_path,
)
from generator.present.pages.take_home import take_home_view
from generator.present.papers.links import papers_on_page
from generator.present.papers.stamps import paper_stamps
from generator.present.papers.table import lesson_papers
from generator.present.stamps.sheets import SHEETS_FILE, sheets_json
from generator.present.views.page import View


@dataclass(frozen=True, slots=True)
class ViewedPage:
    """A page of a lesson, wherever it will stand."""

    entry: LessonPage
    path: str
    """From the site's root."""
    view: View
    form: Form
    """The view in its template, but for its addresses."""


class LessonInLanguage:
    """A lesson ready to be filled into its templates."""

    def __init__(self, theme: Theme, result: LessonResult, surround: Surround) -> None:
        """Make the pages, which do not depend on where they will stand."""
        self._theme, self.result, self.surround = theme, result, surround
        stops = stop_views(result, surround)  # made once: most pages show the same stops
        links = lesson_links(result, surround)
        told = PageInLesson(result, stops, surround, page_around(START, result, surround), links)
        others = tuple(
            self._viewed(entry, told)
            for entry in lesson_pages(result, surround.builds)
            if entry is not SHEETS
        )
        stamps = {
            page.entry.sheet: page.form.stamp
            for page in others
            if page.form.stamp and page.entry.reader is not Reader.EDUCATOR
        }
        self.told = replace(told, stamps={**stamps, **paper_stamps(told, theme.folder)})
        """What the views of its papers, and its cartridge, are made from."""
        self.pages = (*others, self._viewed(SHEETS, self.told))

    def on_site(
        self, copy_size: int | None, papers: Mapping[str, int] = MappingProxyType({})
    ) -> Iterator[Output]:
        """The pages as they are published.

        Args:
            copy_size: bytes of the copy to take home; nothing where there is none.
            papers: bytes of each paper that is there as a file, by its path.
        """
        lesson, surround = self.result.lesson, self.surround
        files = {
            one: papers[one.path]
            for one in lesson_papers(self.result, surround)
            if one.path in papers
        }
        for page in self.pages:
            at = OnSite(page.path, preview=surround.preview)
            if copy_size is not None and page.entry is START:
                offer = take_home_view(self.result, copy_size, surround)
                at.bring("take-home", self._theme.fill_part(offer, surround.say, at))
            for part in papers_on_page(page.entry.name, files, surround.say):
                at.bring(part.name, self._theme.fill_part(part, surround.say, at))
            yield self._put(page, at, lesson.file.title if page.entry is START else "")

    def in_copy(self, read: Callable[[str], bytes]) -> Iterator[Output]:
        """The pages as they stand in the copy to take home, by their paths on the site.

        Args:
            read: gives what a file of the site holds.
        """
        carried = tuple(page for page in self.pages if page.entry.in_copy)
        names: Mapping[str, str] = {page.path: page.entry.name for page in carried}
        for page in carried:
            yield self._put(page, InCopy(names, read, self.surround.site.address), "")

    def cartridge(self) -> Cartridge | None:
        """The lesson for a learning platform; nothing where no address is known for what it links to."""
        return lesson_cartridge(self.told) if has_cartridges(self.surround) else None

    def past_sheets(self) -> Iterator[Output]:
        """What is fetched of its sheets that were printed before; nothing where there are none."""
        if told := sheets_json(self.told):
            path = f"{self.surround.folder}{self.result.lesson.id}/{SHEETS_FILE}"
            yield Output(path, told.encode(), source=self.result.lesson.places.file)

    def kept(self, pages: Iterable[Output]) -> tuple[Output, ...]:
        """Those of the pages that are of use without a network."""
        offline = {page.path for page in self.pages if page.entry.offline}
        return tuple(page for page in pages if page.path in offline)

    def _viewed(self, entry: LessonPage, told: PageInLesson) -> ViewedPage:
        view = entry.view(replace(told, page=page_around(entry, self.result, self.surround)))
        path = page_path(entry, self.result, self.surround)
        return ViewedPage(entry, path, view, self._theme.form(view, self.surround.say))

    def _put(self, page: ViewedPage, at: Addresses, title: str) -> Output:
        content = page.form.put(at).encode()
        needs = with_brought(at.needs, self.surround.say.locale)
        return Output(page.path, content, title, self.result.lesson.places.file, needs)
