"""Every page and file of the site, in order, ready to be written."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.model.move import Move
from generator.present.assets.bundle import join_script, join_styles, sources
from generator.present.assets.environment import Theme
from generator.present.assets.kind_files import (
    style_entries,
    with_paper_styles,
)
from generator.present.entry import LessonEntry
from generator.present.output import Output
from generator.present.pages.components import PATH, components_view
from generator.present.pages.home import home_view
from generator.present.pages.lesson_list import LIST, lesson_list
from generator.present.pages.lesson_page import lesson_view, stop_views
from generator.present.pages.notes import notes_view
from generator.present.pages.page import Surround
from generator.present.pages.paper import cards_view, sheet_view
from generator.present.pages.practice import practice_view
from generator.present.pages.transcript import transcript_view
from generator.present.pictures.chart import figure_json
from generator.present.pictures.figures import picture_file, picture_name
from generator.present.recording.chapters import chapters_file, chapters_track
from generator.present.recording.corrections import corrected_captions
from generator.present.recording.pack import FOLDER, draft, draft_name, pack_pages
from generator.present.views.home import ProseView
from generator.present.views.stop import StopView
from generator.present.words.foreign import settle, without_marks


class Presenter:
    """Makes the files of one site in one language."""

    def __init__(self, theme: Theme, surround: Surround) -> None:
        self._theme = theme
        self._say = surround.say
        self._surround = surround

    def lesson(self, result: LessonResult) -> Iterator[Output]:
        """The pages of one lesson, and the figures of its charts."""
        lesson, say = result.lesson, self._say
        stops = stop_views(result, self._surround)  # made once: most pages show the same stops
        views: dict[str, tuple[str, object]] = {
            "index": ("lesson", lesson_view(result, stops, self._surround)),
            "worksheet": ("sheet", sheet_view(result, stops, self._surround, answers=False)),
            "answers": ("sheet", sheet_view(result, stops, self._surround, answers=True)),
            "practice": ("practice", practice_view(result, self._surround)),
            "notes": ("notes", notes_view(result, stops, self._surround)),
        }
        if result.movements:
            views["cards"] = ("cards", cards_view(result, stops, self._surround))
        if transcript := transcript_view(result, stops, self._surround):
            views["transcript"] = ("transcript", transcript)
        for name, (template, view) in views.items():
            title = lesson.file.title if name == "index" else ""
            path = f"{self._surround.folder}{lesson.id}/{name}.html"
            page = settle(self._theme.fill(f"{template}.html", view, say), self._original).encode()
            yield Output(path, page, title, lesson.places.file)
        for comparison in result.comparisons.values():
            path = f"{self._surround.folder}{lesson.id}/{comparison.stop.id}.chart.json"
            figure = without_marks(figure_json(comparison, say)).encode()
            yield Output(path, figure, source=lesson.places.file)
        if name := chapters_file(result, say):
            path = f"{self._surround.folder}{lesson.id}/{name}"
            track = without_marks(chapters_track(result, say)).encode()
            yield Output(path, track, source=lesson.places.file)
        for name, text in corrected_captions(result, say, self._surround.site.languages).items():
            yield Output(
                f"{lesson.id}/{name}", without_marks(text).encode(), source=lesson.places.file
            )
        if self._surround.has_recording_pack:
            yield from self._recording_pack(result, stops)

    def _recording_pack(
        self, result: LessonResult, stops: tuple[StopView, ...]
    ) -> Iterator[Output]:
        """What whoever films the lesson needs."""
        lesson = result.lesson
        folder = f"{self._surround.folder}{lesson.id}/{FOLDER}/"
        for name, template, view in pack_pages(result, stops, self._surround):
            page = settle(self._theme.fill(template, view, self._say), self._original).encode()
            yield Output(folder + name, page, source=lesson.places.file)
        text = without_marks(draft(result)).encode()
        yield Output(folder + draft_name(result, self._say), text, source=lesson.places.file)

    def home(self, entries: Iterable[LessonEntry], intro: Markup) -> str:
        """The front page, below an introduction that the educator wrote."""
        page = self._theme.fill("home.html", home_view(entries, intro, self._surround), self._say)
        return settle(page, self._original)

    def components(self, results: Iterable[LessonResult]) -> Output:
        """The page of all components in all states, for a preview."""
        view = components_view(results, self._surround)
        page = self._theme.fill("components.html", view, self._say)
        return Output(self._surround.folder + PATH, settle(page, self._original).encode())

    def prose(self, path: str, title: str, body: str) -> str:
        """A hand-written page at a path in the language's folder, its body already HTML."""
        view = ProseView(self._surround.page(path, title), title, Markup(body))  # noqa: S704  # made by MkDocs from a trusted file
        return settle(self._theme.fill("prose.html", view, self._say), self._original)

    def with_lessons(
        self, body: str, entries: Sequence[LessonEntry], originals: Iterable[LessonEntry]
    ) -> str:
        """The body of a hand-written page with the list of lessons in the place of its mark."""
        if LIST not in body:
            return body
        view = lesson_list(entries, originals, self._surround)
        listed = self._theme.fill_part("parts/lesson-list.html", view, self._say)
        return body.replace(LIST, listed)

    @property
    def _original(self) -> str:
        """Language the lessons are written in."""
        return self._surround.site.languages[0]


_STYLES = ("screen", "reading", "paper")
_SCRIPTS = ("paper",)
"""Entries of theme/css/ and theme/js/, each joined into one file with all it imports; the kinds of stop name more."""


def shared_files(folder: Path, *, recording: bool) -> Iterator[Output]:
    """Styles, scripts and pictures that the pages of all languages share.

    Args:
        folder: the theme's.
        recording: whether there are pages for filming, which have a style and a script of their own.
    """
    styles, scripts = with_paper_styles(sources(folder, "css")), sources(folder, "js")
    own = ("recording",) if recording else ()
    entries = {name: f"css/{name}.css" for name in (*_STYLES, *own)} | style_entries(styles)
    for name, entry in entries.items():
        yield Output(f"assets/{name}.css", join_styles(entry, styles).encode())
    for name in (*_SCRIPTS, *own):
        yield Output(f"assets/{name}.js", join_script(f"js/{name}.js", scripts).encode())
    vendor = folder / "vendor" / "plotly"
    yield Output("assets/plotly-basic.min.js", (vendor / "plotly-basic.min.js").read_bytes())
    yield Output("assets/plotly-basic.LICENSE.txt", (vendor / "LICENSE").read_bytes())
    for picture in sorted((folder / "img").glob("*.svg")):
        yield Output(f"assets/{picture.name}", picture.read_bytes())


def move_pictures(moves: Mapping[str, Move]) -> Iterator[Output]:
    """The figures of moves, by their ids, each in a file of its own."""
    for name, move in moves.items():
        for seated, poses in ((False, move.poses), (True, move.seated_poses)):
            for number, pose in enumerate(poses, 1):
                path = picture_name(name, number, seated=seated)
                yield Output(path, picture_file(pose).encode())


def moves_of(results: Iterable[LessonResult]) -> dict[str, Move]:
    """Every move that a lesson asks for."""
    counted = [
        one for result in results for move in result.movements.values() for one in move.counts
    ]
    return {one.move_id: one.move for one in counted}
