"""A lesson in one language as things for a cartridge: what a class opens, and what its teacher does."""

from __future__ import annotations

from collections.abc import Iterator
from hashlib import sha256

from generator.compute.answers import PARTING
from generator.model.papers import PaperWord
from generator.present.cartridge.parts import Asked, Cartridge, Kind, Thing
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Surround
from generator.present.pages.page_of_lesson import Reader
from generator.present.pages.parting import parting_question
from generator.present.papers.paper import PaperFile, Size
from generator.present.papers.table import lesson_papers
from generator.present.stops.in_lesson import in_lesson, stop_names
from generator.present.stops.kinds import kind_of
from generator.present.views.page import LinkView
from generator.present.views.question import QuestionView
from generator.present.words.grades import grades_in_words
from generator.present.words.prose import plain
from generator.present.words.standards import standard_words

_ANSWERS = "answers"
"""A family may look at the key; in a class it is the teacher's."""
_LETTER = ("-US", "-CA", "-MX", "-PH", "-CL", "-CO", "-VE", "-GT", "-CR", "-PA", "-PR", "-SV")
"""Regions that print on US Letter, as CLDR's territory data has them (from memory); all others on A4."""


def lesson_cartridge(told: PageInLesson) -> Cartridge:
    """The cartridge of one lesson, where the site has an address."""
    lesson, surround = told.result.lesson, told.surround
    file, site = lesson.file, surround.site
    known = [(code, site.standards.get(code)) for code in file.standards]
    return Cartridge(
        id=_id(surround, lesson.first_id),
        title=plain(file.title),
        about=plain(file.summary),
        language=surround.say.locale,
        level=grades_in_words(file.grades, surround.say),
        standards=tuple(
            (code, standard_words(one, surround.say.language, site.languages[0]) if one else "")
            for code, one in known
        ),
        license=site.license,
        bank=_id(surround, lesson.first_id, "bank"),
        things=(lesson_things(told),),
    )


def cartridge_of_all(surround: Surround, things: tuple[Thing, ...]) -> Cartridge:
    """The cartridge of all lessons of a language.

    Args:
        surround: of the language.
        things: a folder for each lesson, in the order of the lists.
    """
    say, programme = surround.say, surround.site.name_in(surround.say.language)
    return Cartridge(
        id=_id(surround),
        title=programme,
        about=say("platform_all_says", n=len(things), program=programme),
        language=say.locale,
        level="",
        standards=(),
        license=surround.site.license,
        bank=_id(surround, "bank"),
        things=things,
    )


def lesson_things(told: PageInLesson) -> Thing:
    """One folder with all of a lesson: the lesson, its stops, its questions, its papers, the teacher's."""
    result, surround = told.result, told.surround
    lesson, say = result.lesson, surround.say
    found = (
        _link("lesson", LinkView(told.links.lesson.href, say("platform_whole_lesson")), told),
        _folder("stops", say("platform_stops"), tuple(_stops(told)), told),
        _quiz(told),
        _folder("paper", say("on_paper"), tuple(_paper(told)), told),
        *(_link(one.href, one, told) for one in told.links.screens),
        _folder("teacher", say("notes_title_link"), tuple(_teacher(told)), told),
    )
    inside = tuple(one for one in found if one.kind or one.inside)
    return Thing(_id(surround, lesson.first_id, "all"), plain(lesson.file.title), inside=inside)


def _stops(told: PageInLesson) -> Iterator[Thing]:
    for stop, name in stop_names(told.result, told.surround.say).items():
        yield _link(f"stop {stop}", LinkView(f"{told.links.lesson.href}#{stop}", name), told)


def _paper(told: PageInLesson) -> Iterator[Thing]:
    """For the class: files where the site makes them, else the pages that print."""
    files = {one.name.value: one for one in _files(told)}
    for one in told.links.paper:
        name = _name(one.href)
        if name != _ANSWERS and name not in files:
            yield _link(one.href, one, told)
    for name, file in files.items():
        if not _is_teachers(file):
            yield _file(name, file, told)


def _teacher(told: PageInLesson) -> Iterator[Thing]:
    """For whoever teaches: the notes always, for their links; the key as a file where the site makes one."""
    files = {one.name.value: one for one in _files(told) if _is_teachers(one)}
    keys = (
        one for one in told.links.paper if _ANSWERS not in files and _name(one.href) == _ANSWERS
    )
    for one in (*told.links.teachers, *keys):
        yield _link(one.href, one, told, teacher=True)
    for name, file in files.items():
        yield _file(name, file, told, teacher=True)


def _files(told: PageInLesson) -> tuple[PaperFile, ...]:
    """Each paper once, in usual print and in one size; the packet is the same papers again."""
    made = lesson_papers(told.result, told.surround)
    usual = [one for one in made if not one.large and one.name != PaperWord.PACKET]
    letter = told.surround.say.locale.endswith(_LETTER)
    wanted = Size.LETTER if letter else Size.A4
    has_both = len({one.size for one in usual}) > 1
    return tuple(one for one in usual if one.size is wanted or not has_both)


def _is_teachers(file: PaperFile) -> bool:
    return file.name == PaperWord.ANSWERS or file.papers[0].reader is Reader.TEACHER


def _name(href: str) -> str:
    """``worksheet`` of ``soup/worksheet.html``, as papers are called too."""
    return href.rpartition("/")[2].removesuffix(".html")


def _file(name: str, file: PaperFile, told: PageInLesson, *, teacher: bool = False) -> Thing:
    surround = told.surround
    id_ = _id(surround, told.result.lesson.first_id, f"paper {name}")
    title = surround.say("platform_paper", title=surround.say(file.title))
    return Thing(id_, title, Kind.PAPER, file.path, teacher)


def _folder(name: str, title: str, inside: tuple[Thing, ...], told: PageInLesson) -> Thing:
    return Thing(_id(told.surround, told.result.lesson.first_id, name), title, inside=inside)


def _link(name: str, to: LinkView, told: PageInLesson, *, teacher: bool = False) -> Thing:
    surround = told.surround
    id_ = _id(surround, told.result.lesson.first_id, name)
    return Thing(id_, to.label, Kind.LINK, surround.site.address + to.href, teacher)


def _quiz(told: PageInLesson) -> Thing:
    """The questions that are checked; without one, a folder of nothing, which is left out."""
    say, lesson = told.surround.say, told.result.lesson.first_id
    asked = tuple(
        Asked(
            _id(told.surround, lesson, f"question {one.id}"),
            one,
            f"{told.surround.site.address}{told.links.lesson.href}#{stop}",
        )
        for stop, one in _questions(told)
    )
    title = say("platform_quiz", title=plain(told.result.lesson.file.title))
    kind = Kind.QUIZ if asked else None
    return Thing(_id(told.surround, lesson, "quiz"), title, kind, questions=asked)


def _questions(told: PageInLesson) -> Iterator[tuple[str, QuestionView]]:
    """By stop, in the order of the page."""
    result, say = told.result, told.surround.say
    for index, view in enumerate(told.stops):
        stop = in_lesson(index, result, say)
        for one in kind_of(view).questions(stop, view):
            yield stop.id, one
    for one in parting_question(result, say):
        yield PARTING, one


def _id(surround: Surround, *names: str) -> str:
    """A name that nothing else has, on this site or another, and that XML takes as one.

    It is made of what does not change from build to build: the site's address, the language, and
    the ids of the lesson file.
    """
    told = "\n".join((surround.site.address, surround.say.language, *names))
    return f"p{sha256(told.encode()).hexdigest()[:32]}"
