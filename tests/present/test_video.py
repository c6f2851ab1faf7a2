"""What stands around a recording: chapters, captions, what is said, and the way to another site."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.captions import Cue
from generator.model.lesson import Lesson
from generator.present.assets.environment import Theme
from generator.present.entry import lesson_entry
from generator.present.lesson import LessonInLanguage, ViewedPage
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.page import Surround
from generator.present.pages.transcript import sentences
from generator.present.pages.video import shown_language, video_view
from generator.present.views.lesson import LessonView
from generator.present.views.video import TranscriptView, VideoView
from generator.present.words.say import Say
from generator.problems import Place
from tests.media_files import box, film
from tests.project import GOOD, ROOT, library, problems, read

CASES = json.loads((ROOT / "tests/examples/transcript.json").read_text("utf-8"))
THERE = "https://films.example/watch/17"
VTT = "WEBVTT\n\n00:01.000 --> 00:04.000\nHello from Larkmead.\n\n00:21.000 --> 00:24.000\nLook\n\n00:24.000 --> 00:26.000\nclosely.\n"


def surround(language: str = "en", folder: str = "") -> Surround:
    """Around the pages of one language; Spanish pages stand in a folder of their own."""
    return Surround(library().site, Say(library().words[language]), folder, (), {}, preview=False)


def lesson(folder: Path, video: str, captions: Mapping[str, str] = {}) -> LessonResult:
    """The good lesson with a recording, and caption files beside it."""
    beside = folder / "lessons" / "meal"
    beside.mkdir(parents=True)
    for name, text in captions.items():
        (beside / name).write_text(text, "utf-8")
    made = read(folder, GOOD.replace("stops:", f"video: {video}\nstops:", 1))
    assert isinstance(made, Lesson), list(map(str, made))
    return work_out(made, library())


def shown(result: LessonResult, around: Surround) -> VideoView:
    view = video_view(result, stop_views(result, around), around)
    assert view is not None
    return view


def viewed(result: LessonResult, around: Surround) -> tuple[ViewedPage, ...]:
    """The lesson's pages, ready for their templates."""
    return LessonInLanguage(Theme(ROOT / "theme"), result, around).pages


def transcript(result: LessonResult, around: Surround) -> TranscriptView:
    [view] = [one.view for one in viewed(result, around) if isinstance(one.view, TranscriptView)]
    return view


def test_a_chapter_begins_where_its_stop_is_led_up_to(tmp_path: Path) -> None:
    view = shown(lesson(tmp_path, f"{{elsewhere: {THERE}}}"), surround())
    assert [(one.at, one.label, one.href, one.pause) for one in view.chapters] == [
        ("0:00", "Watch", "#hello-from-larkmead", ""),
        ("0:21", "Work out the gap", "#breakfast", "0:40"),
        ("0:41", "Move", "#move-breakfast", "1:20"),
    ]  # the question at 0:20 takes no time of its own: it stands where the watching ends


def test_pauses_are_the_stops_with_a_time_and_nothing_to_watch(tmp_path: Path) -> None:
    view = shown(lesson(tmp_path, f"{{elsewhere: {THERE}}}"), surround())
    assert view.pauses == (("20", "guess"), ("40", "breakfast"), ("80", "move-breakfast"))


def test_elsewhere_says_where_it_leads(tmp_path: Path) -> None:
    view = shown(lesson(tmp_path, f"{{elsewhere: {THERE}}}"), surround())
    assert view.src == ""
    assert view.elsewhere is not None
    assert view.elsewhere.href == THERE
    assert "films.example" in view.elsewhere.says
    assert "own rules" in view.elsewhere.says


@pytest.mark.parametrize(
    ("video", "what"),
    [
        ("{captions: {}}", "names no recording"),
        ("{elsewhere: http://films.example/17}", "cannot be `http://films.example/17`"),
        ("{elsewhere: films.example}", "cannot be `films.example`"),
        ("{elsewhere: https://films.example/a b}", "cannot be"),
    ],
)
def test_a_recording_that_is_nowhere_is_a_sentence(tmp_path: Path, video: str, what: str) -> None:
    found = problems(tmp_path, GOOD.replace("stops:", f"video: {video}\nstops:", 1))
    assert len(found) == 1, list(map(str, found))
    assert what in found[0].what
    assert "elsewhere" in found[0].hint or "https://" in found[0].hint


def test_the_page_in_another_language_finds_the_files_of_the_lesson(tmp_path: Path) -> None:
    captions = {"v.en.vtt": VTT, "v.es.vtt": VTT}
    video = f"{{elsewhere: {THERE}, captions: {{en: v.en.vtt, es: v.es.vtt}}}}"
    view = shown(lesson(tmp_path, video, captions), surround("es", "es/"))
    assert [(track.src, track.default) for track in view.tracks] == [
        ("meal/v.es.vtt", True),
        ("meal/v.en.vtt", False),
    ]


@pytest.mark.parametrize(
    ("there", "page", "language"),
    [
        (["en", "es"], "es", "es"),
        (["en"], "es", "en"),
        (["es", "en"], "fr", "es"),
        ([], "en", None),
    ],
)
def test_which_captions_are_shown(there: list[str], page: str, language: str | None) -> None:
    assert shown_language(dict.fromkeys(there), page) == language


@pytest.mark.parametrize("case", CASES, ids=[case["title"] for case in CASES])
def test_captions_become_sentences(case: dict[str, Any]) -> None:
    """The page's script is held to the same cases."""
    cues = [
        Cue(int(at * 1000), int(at * 1000) + 1000, tuple(text.split("\n")), Place("v.vtt"))
        for at, text in case["cues"]
    ]
    assert [[at / 1000, text] for at, text in sentences(cues)] == case["lines"]


def test_what_is_said_stands_under_the_stop_it_leads_to(tmp_path: Path) -> None:
    video = f"{{elsewhere: {THERE}, captions: {{en: v.en.vtt}}}}"
    result = lesson(tmp_path, video, {"v.en.vtt": VTT})
    around = surround("es", "es/")
    view = transcript(result, around)
    assert view.language == "en"
    said = [(link.href, [(one.at, one.text) for one in lines]) for link, lines in view.parts]
    assert said == [
        ("es/meal/index.html#hello-from-larkmead", [("0:01", "Hello from Larkmead.")]),
        ("es/meal/index.html#breakfast", [("0:21", "Look closely.")]),
    ]


def test_without_captions_there_is_no_page_of_them(tmp_path: Path) -> None:
    result = lesson(tmp_path, f"{{elsewhere: {THERE}}}")
    assert "meal/transcript.html" not in {page.path for page in viewed(result, surround())}


def test_what_is_said_stands_under_the_lesson_where_no_stop_has_a_time(tmp_path: Path) -> None:
    video = f"{{elsewhere: {THERE}, captions: {{en: v.en.vtt}}}}"
    made = lesson(tmp_path, video, {"v.en.vtt": VTT})
    each = zip(made.lesson.file.stops, made.lesson.ids, strict=True)
    stops, ids = zip(*((stop, named) for stop, named in each if stop.kind == "talk"), strict=True)
    file = made.lesson.file.model_copy(update={"stops": stops})
    view = transcript(replace(made, lesson=replace(made.lesson, file=file, ids=ids)), surround())
    assert [(link.href, len(said)) for link, said in view.parts] == [("meal/index.html", 2)]


def filmed(folder: Path, video: str, **sizes: int) -> LessonResult:
    """The lesson with films of these sizes in bytes, each as long as the lesson."""
    beside = folder / "lessons/meal"
    beside.mkdir(parents=True)
    for key, size in sizes.items():
        made = film(90)
        (beside / f"{key}.mp4").write_bytes(made + box(b"free", bytes(size - len(made) - 8)))
    made = read(folder, GOOD.replace("stops:", f"video: {video}\nstops:", 1))
    assert isinstance(made, Lesson), list(map(str, made))
    return work_out(made, library())


ALL = "{file: file.mp4, smaller: smaller.mp4, slides: slides.mp4}"


@pytest.mark.parametrize(
    ("language", "folder", "labels", "meta"),
    [
        ("en", "", ["The whole video: 24 MB", "A smaller picture: 3.2 MB", "Slides with the voice: 0.9 MB"],
         "Grades 3–5 · 10 minutes · video 24 MB, or 0.9 MB"),
        ("es", "es/", ["El video completo: 24 MB", "Con la imagen más pequeña: 3.2 MB", "Láminas con la voz: 0.9 MB"],
         "video de 24 MB, o de 0.9 MB"),
    ],
)  # fmt: skip
def test_smaller_films_are_offered_with_their_megabytes(
    tmp_path: Path, language: str, folder: str, labels: list[str], meta: str
) -> None:
    """A megabyte is a million bytes: IEC 80000-13."""
    result = filmed(tmp_path, ALL, file=24_000_000, smaller=3_200_000, slides=900_000)
    view = shown(result, surround(language, folder))
    assert [(one.src, one.label) for one in view.films] == [
        (f"meal/{key}.mp4", label.replace(" MB", "\xa0MB"))
        for key, label in zip(("file", "smaller", "slides"), labels, strict=True)
    ]
    [page] = [
        one.view
        for one in viewed(result, surround(language, folder))
        if isinstance(one.view, LessonView)
    ]
    assert meta in page.meta.replace("\xa0", " ")


def test_what_a_lesson_costs_is_said_where_there_is_one_film(tmp_path: Path) -> None:
    result = filmed(tmp_path, "{file: file.mp4}", file=40_000_000)
    assert shown(result, surround()).films == ()
    assert lesson_entry(result).film_sizes == (40_000_000,)
    [page] = [one.view for one in viewed(result, surround()) if isinstance(one.view, LessonView)]
    assert page.meta.endswith(" · video 40\xa0MB")


def test_a_lesson_without_a_film_of_its_own_costs_nothing(tmp_path: Path) -> None:
    assert lesson_entry(lesson(tmp_path, f"{{elsewhere: {THERE}}}")).film_sizes == ()


def test_the_copy_to_take_home_carries_one_film_and_leads_to_the_others(tmp_path: Path) -> None:
    result = filmed(tmp_path, ALL, file=24_000, smaller=3_200, slides=900)
    made = LessonInLanguage(Theme(ROOT / "theme"), result, surround())
    [page] = [one for one in made.in_copy(lambda _: b"") if one.path == "meal/index.html"]
    assert [need for need in page.needs if need.endswith("mp4")] == ["meal/file.mp4"]
    assert "https://kitchen.larkmead.example/meal/smaller.mp4" in page.content.decode()
