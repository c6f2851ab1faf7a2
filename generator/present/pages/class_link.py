"""What the maker of class links shows: on the notes of a lesson, and where a page asks for ``{class-link}``."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from markupsafe import Markup

from generator.compute.answers import PARTING
from generator.compute.class_link import Answers, ClassLink, class_link
from generator.compute.practice_set import SIZES
from generator.present.entry import LessonEntry
from generator.present.finish_file import FINISH_FILE
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Surround
from generator.present.pages.practice import LEAST_LARGE
from generator.present.views.class_link import ClassLinkView, InLanguageView, LinkableView
from generator.present.views.page import LinkView

MAKER = "<p>{class-link}</p>"
"""What Markdown makes of the line on which a hand-written page asks for it."""
LIBRARY = "assets/lean-qr.min.js"
_TRIED = ClassLink(answers=Answers.TRY)


def class_link_view(told: PageInLesson) -> ClassLinkView:
    """Links to one lesson, from a page of it."""
    lesson, surround = told.result.lesson, told.surround
    named = [(stop.head.id, stop.head.heading) for stop in told.stops]
    if lesson.file.parting:
        named.append((PARTING, surround.say("parting_title")))
    href = told.links.lesson.href
    languages = tuple(_in_languages(lesson.id, surround))
    file = f"{surround.folder}{lesson.id}/{FINISH_FILE}"
    linkable = LinkableView(lesson.id, lesson.file.title, languages, file, tuple(named))
    ready = LinkView(f"{href}#{class_link(_TRIED, lesson.id)}", lesson.file.title)
    return _view((linkable,), ready, surround)


def class_links_view(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], surround: Surround
) -> ClassLinkView:
    """Links to any lesson, from a page written by hand.

    Args:
        entries: the lessons in the page's language.
        untranslated: those that are in the site's first language and not in it.
        surround: of the page's language.
    """
    found = [_listed(one, surround, surround.folder) for one in entries]
    found += [_listed(one, surround, "") for one in untranslated]
    return _view(tuple(found), None, surround)


def _view(
    lessons: tuple[LinkableView, ...], ready: LinkView | None, surround: Surround
) -> ClassLinkView:
    say = surround.say
    return ClassLinkView(
        lessons=lessons,
        sizes=tuple(
            (size, say("practice_size", largest=say.number(size)))
            for size in SIZES
            if size <= LEAST_LARGE
        ),
        ready=ready,
        script=f"assets/for-class-{say.locale}.js",
        library=LIBRARY,
    )


def _listed(entry: LessonEntry, surround: Surround, folder: str) -> LinkableView:
    """A lesson of a list; where its folder is not that of the page's language, it is not there in it."""
    languages = tuple(_in_languages(entry.id, surround))
    known = languages if folder == surround.folder else languages[1:]
    title = Markup(entry.title)  # noqa: S704  # an entry holds safe HTML
    return LinkableView(entry.id, title, known, f"{folder}{entry.id}/{FINISH_FILE}", ())


def _in_languages(lesson: str, surround: Surround) -> Iterator[InLanguageView]:
    """The lesson's page in the language of the page, then in each other that has it."""
    say, site, path = surround.say, surround.site.address or "", f"{lesson}/index.html"
    own = (say.language, say.language_name(say.language), surround.folder + path)
    others = ((one.language, one.label, one.href) for one in surround.page(path, "").languages)
    for language, label, href in (own, *others):
        yield InLanguageView(language, label, href, f"{site}{href}" if site else "")
