"""The pages of one lesson in one language: their views, made once, and filled for the site or for a copy."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from generator.compute.result import LessonResult
from generator.present.addresses import Addresses, InCopy, OnSite
from generator.present.assets.brought import with_brought
from generator.present.assets.environment import Theme
from generator.present.output import Output
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.page import Surround
from generator.present.pages.page_of_lesson import LessonPage
from generator.present.pages.table import (
    START,
    lesson_links,
    lesson_pages,
    page_around,
    page_path,
)
from generator.present.pages.take_home import take_home_view
from generator.present.views.lesson import LessonView
from generator.present.views.page import View


@dataclass(frozen=True, slots=True)
class ViewedPage:
    """A page of a lesson, ready for its template."""

    entry: LessonPage
    path: str
    """From the site's root."""
    view: View


class LessonInLanguage:
    """A lesson ready to be filled into its templates."""

    def __init__(self, theme: Theme, result: LessonResult, surround: Surround) -> None:
        """Make the views, which do not depend on where the pages will stand."""
        self._theme, self.result, self.surround = theme, result, surround
        stops = stop_views(result, surround)  # made once: most pages show the same stops
        links = lesson_links(result, surround)
        self.pages = tuple(
            ViewedPage(
                one,
                page_path(one, result, surround),
                one.view(
                    PageInLesson(result, stops, surround, page_around(one, result, surround), links)
                ),
            )
            for one in lesson_pages(result, surround.builds)
        )

    def on_site(self, copy_size: int | None) -> Iterator[Output]:
        """The pages as they are published.

        Args:
            copy_size: bytes of the copy to take home; nothing where there is none.
        """
        lesson = self.result.lesson
        for page in self.pages:
            at = OnSite(page.path, preview=self.surround.preview)
            view = page.view
            if copy_size is not None and isinstance(view, LessonView):
                taken = take_home_view(self.result, copy_size, self.surround)
                view = replace(view, take_home=taken)
            yield self._filled(page, view, at, lesson.file.title if page.entry is START else "")

    def in_copy(self, read: Callable[[str], bytes]) -> Iterator[Output]:
        """The pages as they stand in the copy to take home, by their paths on the site.

        Args:
            read: gives what a file of the site holds.
        """
        carried = tuple(page for page in self.pages if page.entry.in_copy)
        names: Mapping[str, str] = {page.path: page.entry.name for page in carried}
        for page in carried:
            at = InCopy(names, read, self.surround.site.address)
            yield self._filled(page, page.view, at, "")

    def kept(self, pages: Iterable[Output]) -> tuple[Output, ...]:
        """Those of the pages that are of use without a network."""
        offline = {page.path for page in self.pages if page.entry.offline}
        return tuple(page for page in pages if page.path in offline)

    def _filled(self, page: ViewedPage, view: View, at: Addresses, title: str) -> Output:
        say = self.surround.say
        content = self._theme.fill(view, say, at).encode()
        needs = with_brought(at.needs, say.locale)
        return Output(page.path, content, title, self.result.lesson.places.file, needs)
