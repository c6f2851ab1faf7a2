"""What a publication changed of the site itself, in sentences."""

from __future__ import annotations

from collections.abc import Iterator

from generator.present.updates.line import Line, one_line
from generator.present.updates.moment import day_in_words
from generator.present.updates.publications import SiteChange, Update
from generator.present.words.say import Say

_MOST_PAGES = 6


def site_lines(update: Update, say: Say) -> Iterator[Line]:
    """The sentences; nothing where only lessons changed."""
    if update.undoes:
        yield Line(say("update_undoes", day=day_in_words(update.undoes, say)))
    if update.undone:
        yield Line(say("update_undone", day=day_in_words(update.undone, say)))
    if update.first:
        yield Line(say("update_first", n=update.lessons_there))
    yield from _changes(update.site, say)


def _changes(site: SiteChange, say: Say) -> Iterator[Line]:
    if site.address:
        yield Line(say("update_address", address=one_line(site.address)))
    if site.languages_new:
        yield Line(say("update_site_languages_new", languages=_named(site.languages_new, say)))
    if site.languages_gone:
        yield Line(say("update_site_languages_gone", languages=_named(site.languages_gone, say)))
    if site.pages_new:
        yield Line(say("update_files_new", files=_paths(site.pages_new, say)))
    if site.pages_gone:
        yield Line(say("update_files_gone", files=_paths(site.pages_gone, say)))
    if site.program:
        yield Line(say("update_program", version=one_line(site.program)))


def _named(languages: tuple[str, ...], say: Say) -> str:
    return say.listed(tuple(say.language_name(one_line(one)) for one in languages))


def _paths(pages: tuple[str, ...], say: Say) -> str:
    shown = [one_line(page) for page in pages[:_MOST_PAGES]]
    if more := len(pages) - len(shown):
        shown.append(say("update_more", n=more))
    return say.listed(tuple(shown))
