"""The list of lessons that a hand-written page asks for with ``{lessons}`` on a line of its own."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from markupsafe import Markup

from generator.present.entry import LessonEntry
from generator.present.pages.lesson_table import LESSONS
from generator.present.pages.page import Surround
from generator.present.views.home import LessonListView, ListedView
from generator.present.words.families import MEASURE

LIST = "<p>{lessons}</p>"
"""What Markdown makes of the line."""


def lesson_list(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], surround: Surround
) -> LessonListView:
    """Every lesson with what a teacher chooses it by; last those that are in their own language only.

    Args:
        entries: the lessons in the page's language.
        untranslated: those that are in the site's first language and not in it.
    """
    listed = (*_listed(entries, surround), *_untranslated(untranslated, surround))
    return LessonListView(surround.folder + LESSONS, listed)


def _listed(entries: Iterable[LessonEntry], surround: Surround) -> Iterator[ListedView]:
    for entry in entries:
        href = f"{surround.folder}{entry.id}/index.html"
        yield ListedView(href, _safe(entry.title), "", "", *_chosen_by(entry, surround))


def _untranslated(entries: Iterable[LessonEntry], surround: Surround) -> Iterator[ListedView]:
    """Lessons of the first language on a page of another."""
    for entry in entries:
        href = f"{entry.id}/index.html"
        name = surround.say.language_name(entry.language)
        topic = _topic(entry, surround)
        yield ListedView(href, _safe(entry.title), entry.language, name, topic, "")


def _chosen_by(entry: LessonEntry, surround: Surround) -> tuple[str, str]:
    """What a lesson compares, and the arithmetic it needs: in its own words, else by its standards."""
    site, language = surround.site, surround.say.language
    known = {code: one.in_languages(site.languages[0]) for code, one in site.standards.items()}
    says = [known.get(code, {}).get(language, code) for code in entry.standards]
    return _topic(entry, surround), _safe(entry.arithmetic) or " ".join(says)


def _safe(text: str) -> Markup:
    return Markup(text)  # noqa: S704  # made safe when it was written down


def _topic(entry: LessonEntry, surround: Surround) -> str:
    """The measures; before them, of a draft, that it is one."""
    say = surround.say
    topics = say.listed(tuple(say(MEASURE.key(one)) for one in entry.topics))
    return " · ".join([say("draft_mark"), topics] if entry.draft else [topics])
