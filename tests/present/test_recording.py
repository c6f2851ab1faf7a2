"""The recording pack: times that add up, foods as weighed, and corrections between the captions."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from generator.author.recorded_text import recorded_text
from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.model.recorded import FilmedFigure, FilmedFood, Recorded, RecordedFile
from generator.model.texts import translatable, with_texts
from generator.present.assets.environment import Theme
from generator.present.lesson import LessonInLanguage
from generator.present.pages.page import Build, Surround
from generator.present.pages.page_of_lesson import Reader
from generator.present.recording.corrections import corrected_captions, corrections
from generator.present.recording.filmed import filmed_figures
from generator.present.recording.slides.order import slides
from generator.present.recording.views import PackView, ScriptView, SlidesView
from generator.present.words.say import Say
from generator.read.recorded import read_recorded
from tests.project import ROOT, library
from tests.site_data.test_lessons import RESULTS

SAY = Say(library().words["en"])
RIVER, DAYS = RESULTS["river-walk"], RESULTS["two-days"]
CAPTIONS = "river-walk.en.vtt"
APPLE = FilmedFood(food="apple-raw", amount="1 medium")
PIE = (FilmedFood(food="apple-pie-homemade", amount="1 slice"),)
BEFORE = "This lesson changed after it was filmed. Numbers in the video that are from before"
CAKE = FilmedFood(food="cake", amount="1 slice")
ROW = (APPLE, *PIE)
ALL = (
    *ROW,
    FilmedFood(food="chicken-sandwich-grilled", amount="1 sandwich"),
    FilmedFood(food="pizza-cheese", amount="1 slice"),
    FilmedFood(food="water-tap", amount="8 fl oz"),
    FilmedFood(food="coconut-water", amount="1 cup"),
)


def surround(**site: object) -> Surround:
    return Surround(library().site.model_copy(update=site), SAY, "", (), {}, preview=True)


def pack(result: LessonResult) -> tuple[PackView, ScriptView, SlidesView]:
    lesson = LessonInLanguage(Theme(ROOT / "theme"), result, surround())
    pages = [page.view for page in lesson.pages if page.entry.reader is Reader.EDUCATOR]
    first, _, second, third = pages
    assert isinstance(first, PackView)
    assert isinstance(second, ScriptView)
    assert isinstance(third, SlidesView)
    return first, second, third


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def test_the_cue_sheet_counts_words_and_says_whether_they_fit() -> None:
    """Words counted by hand in the lesson file; 33 × 60 ÷ 130 = 15.2 s; from 0:44 to 1:05 are 21 s."""
    guess = pack(RIVER)[0].cues[1]
    assert (guess.heading, guess.planned, guess.words) == ("Make a guess", "0:44–1:05", "33")
    assert tuple(map(plain, (guess.spoken, guess.given, guess.fits))) == (
        "16 s",
        "21 s",
        "fits, 5 s left",
    )


def test_the_running_time_is_the_words_so_far_and_a_second_after_each_pause() -> None:
    """84 words at 130 a minute take 39 s, 33 take 16 s; then the video waits once."""
    assert [cue.running for cue in pack(RIVER)[0].cues[:3]] == ["0:00", "0:39", "0:56"]


def test_words_that_take_too_long_are_told() -> None:
    """60 more words in a stop of 21 s: 93 × 60 ÷ 130 = 42.9 s, which is 43 − 21 = 22 s too long."""
    lesson = RIVER.lesson
    stops = list(lesson.file.stops)
    stops[1] = stops[1].model_copy(update={"say": f"{stops[1].say} {'word ' * 60}"})
    file = lesson.file.model_copy(update={"stops": tuple(stops)})
    longer = replace(RIVER, lesson=replace(lesson, file=file))
    assert plain(pack(longer)[0].cues[1].fits) == "22 s too long"


def test_the_table_is_laid_with_what_is_weighed() -> None:
    """Weights of SR Legacy portions: coconut water 245 g, 8 fl oz of water 237 g, apple 182 g."""
    shots = {shot.heading: list(map(plain, shot.things)) for shot in pack(RIVER)[0].shots}
    assert shots["Two lunches, three rows"][:3] == [
        "Coconut water: 1 cup, 245 g",
        "Tap water: 8 fl oz, 237 g",
        "Apple: 1 medium, 182 g",
    ]
    assert shots["Turn the gaps into moves"] == [
        "two small bottles, shut tight",
        "a steady chair without wheels",
    ]
    assert "two small bottles shut tight" in shots["For the learner"]


def test_a_day_lays_every_food_of_it() -> None:
    shots = {shot.heading: shot.things for shot in pack(DAYS)[0].shots}
    assert len(shots["A rainy day"]) == 9
    assert len(shots["The day of the long path"]) == 9


@pytest.mark.parametrize("result", RESULTS.values(), ids=RESULTS)
def test_the_script_is_all_that_is_said_and_halts_once_at_each_pause(result: LessonResult) -> None:
    script = pack(result)[1]
    said = " ".join(part.text for stop in script.stops for part in stop.parts)
    assert said.split() == [
        word for stop in result.lesson.file.stops for word in (stop.say or "").split()
    ]
    for stop in script.stops:
        halts = [part.halts for part in stop.parts]
        assert halts == [False] * (len(halts) - 1) + [bool(stop.pause)]


@pytest.mark.parametrize("result", RESULTS.values(), ids=RESULTS)
def test_the_slides_are_those_of_the_rehearsal(result: LessonResult) -> None:
    shown = pack(result)[2].slides
    assert [view.content for view in shown] == [slide.content for slide in slides(result, SAY)]
    for view in shown:
        assert (ROOT / "theme" / "recording" / "slides" / f"{view.layout}.html").is_file()
        assert view.knots.count("here") == 1


@pytest.mark.parametrize("result", RESULTS.values(), ids=RESULTS)
def test_a_record_is_read_as_it_was_written(result: LessonResult, tmp_path: Path) -> None:
    figures = filmed_figures(result, SAY)
    assert figures
    folder = tmp_path / "lessons" / "one"
    folder.mkdir(parents=True)
    text = recorded_text("one", "2026-03-14", figures)
    (folder / "recorded.yaml").write_text(text, "utf-8")
    read = read_recorded(tmp_path, "lessons/one", None, [])
    assert read is not None
    assert read.file.figures == figures


def test_a_number_is_filmed_while_its_slide_stands() -> None:
    """The estimate is spoken from 1:06, a second after the pause; row one from 1:19, row two from 1:48."""
    first = filmed_figures(RIVER, SAY)[0]
    assert [food.food for food in first.foods] == ["coconut-water"]
    assert (first.value, first.start, first.end) == (45, 79, 108)


def test_a_number_that_is_said_once_more_below_is_filmed_there_too() -> None:
    """Looking back: 410 − 90 = 320, and 0 + 410 + 280 = 690; 10 and 310 are hops, no numbers of a row."""
    again = [one for one in filmed_figures(RIVER, SAY) if one.stop == "two-ways"]
    assert [(str(one.kind), int(one.value)) for one in again] == [
        ("holds", 90),
        ("holds", 410),
        ("gap", 320),
        ("total", 555),
        ("total", 690),
    ]


def test_a_number_that_is_said_once_more_is_set_right_there_too() -> None:
    told = corrections(filmed(400, stop="two-ways", **{"from": "2:25", "to": "2:29"}), SAY)
    assert told == {"lunch": ("The video says 400 (Apple pie). It is now 410.",)}


def filmed(value: int, **changed: object) -> LessonResult:
    """The river walk, filmed when the pie had another number."""
    figure = {
        "kind": FigureKind.HOLDS,
        "measure": Measure.ENERGY,
        "foods": PIE,
        "value": Decimal(value),
        "stop": "lunch",
        "from": "0:55",
        "to": "1:08",
        **changed,
    }
    file = RecordedFile(filmed="2026-03-14", figures=(FilmedFigure.model_validate(figure),))
    captions = {CAPTIONS: (ROOT / "lessons" / "river-walk" / CAPTIONS).read_text("utf-8")}
    lesson = replace(RIVER.lesson, recorded=Recorded(file, RIVER.lesson.places, captions))
    return replace(RIVER, lesson=lesson)


def test_a_changed_number_is_set_right_at_its_stop() -> None:
    assert corrections(filmed(400), SAY) == {
        "lunch": ("The video says 400 (Apple pie). It is now 410.",)
    }
    assert corrections(filmed(410), SAY) == {}
    assert corrections(RIVER, SAY) == {}


def test_a_number_that_is_gone_is_said_to_be_of_before_while_the_film_says_it() -> None:
    """At 1:50 the film is at the lunches; no number of today is said in its place."""
    gone = filmed(400, foods=(CAKE,), **{"from": "1:50", "to": "1:58"})
    assert corrections(gone, SAY) == {"lunch": (f"{BEFORE}: 400. Go by the numbers on this page.",)}
    cue = "01:50.000 --> 01:56.000 line:0\nFrom before: 400\n(not in the lesson now)\n\n"
    assert cue in corrected(gone)[CAPTIONS]


def test_a_food_of_another_amount_is_told_with_its_amount() -> None:
    """The film's number is not wrong of the film's amount."""
    less = filmed(200, foods=(FilmedFood(food="apple-pie-homemade", amount="1/2 slice"),))
    assert corrections(less, SAY) == {
        "lunch": ("The video says 200 (Apple pie). Now it is 1 slice, and the number is 410.",)
    }
    assert "Now it is 1 slice: 410\n(Apple pie)" in corrected(less)[CAPTIONS]


@pytest.mark.parametrize(
    ("changed", "says"),
    [
        ({"kind": FigureKind.GAP, "foods": ROW}, "the gap between Apple and Apple pie"),
        ({"kind": FigureKind.COUNT, "foods": ROW}, "the count for Apple and Apple pie"),
        (
            {"kind": FigureKind.COUNT, "foods": ROW, "move": "apple-pick", "stop": "count-it"},
            "count of Pick from the tree",
        ),
        ({"kind": FigureKind.GAP, "foods": ALL}, "the gap of the totals"),
        (
            {"kind": FigureKind.TOTAL, "foods": (ALL[0], ALL[2], ALL[5]), "side": "tilda-s-lunch"},
            "the total of “Tilda's lunch”",
        ),
    ],
)
def test_every_kind_of_number_is_called_something(changed: dict[str, object], says: str) -> None:
    [[line]] = corrections(filmed(1, **changed), SAY).values()
    assert line.startswith(f"The video says 1 ({says}). It is now ")


def corrected(result: LessonResult, languages: tuple[str, ...] = ("en",)) -> Mapping[str, str]:
    return corrected_captions(result, SAY, languages)


def test_the_captions_hold_the_correction_at_that_time_and_all_they_held() -> None:
    text = corrected(filmed(400))[CAPTIONS]
    cue = "00:55.000 --> 01:01.000 line:0\nNow 410, not 400\n(Apple pie)\n\n"
    assert text.count(cue) == 1
    assert text.replace(cue, "") == (ROOT / "lessons" / "river-walk" / CAPTIONS).read_text("utf-8")


def test_a_name_in_a_correction_is_text_and_no_markup() -> None:
    """W3C WebVTT, 4.2.2: `&` and `<` of a cue's text are written as escapes."""
    lesson = filmed(400).lesson
    [path] = [one for _, one, text in translatable(lesson) if text == "Apple pie"]
    file = with_texts(lesson.file, {path: "Mac & <i>"})
    named = work_out(replace(lesson, file=file), library())
    assert "Now 410, not 400\n(Mac &amp; &lt;i&gt;)\n" in corrected(named)[CAPTIONS]


def test_the_cues_stay_in_the_order_of_their_times() -> None:
    """W3C WebVTT: a cue begins no earlier than the cues before it (references.md 6.1, status M)."""
    times = re.findall(r"^(\d\d:\d\d\.\d{3}) -->", corrected(filmed(400))[CAPTIONS], re.MULTILINE)
    assert times == sorted(times)


def test_the_lines_of_a_correction_are_no_longer_than_those_of_a_caption() -> None:
    """32 letters: the older DCMP Captioning Key (references.md 6.2, R)."""
    text = corrected(filmed(400))[CAPTIONS]
    assert all(len(line) <= 32 for line in text.split("line:0\n")[1].split("\n\n")[0].split("\n"))


@pytest.mark.parametrize(
    ("languages", "corrects"), [(("en",), True), (("en", "es"), True), (("es", "en"), True)]
)
def test_each_language_corrects_its_own_captions(
    languages: tuple[str, ...], corrects: bool
) -> None:
    assert bool(corrected(filmed(400), languages)) is corrects
    spanish = Say(library().words["es"]) if "es" in library().words else None
    if spanish:
        assert corrected_captions(filmed(400), spanish, ("en", "es")) == {}


def test_captions_in_a_language_without_pages_go_with_the_first() -> None:
    result = filmed(400)
    video = result.lesson.file.video
    assert video is not None
    other = video.model_copy(update={"captions": {"fr": CAPTIONS}})
    file = result.lesson.file.model_copy(update={"video": other})
    result = replace(result, lesson=replace(result.lesson, file=file))
    assert list(corrected(result, ("en", "es"))) == [CAPTIONS]


def test_what_to_film_again_stands_on_the_first_page() -> None:
    assert pack(filmed(400))[0].again == ("0:55 to 1:08: Apple pie was 400, and is 410 now.",)
    gone = pack(filmed(400, foods=(CAKE,)))[0].again
    assert gone == ("0:55 to 1:08: 400 (cake) is not in the lesson any more.",)
    assert "python3 generator recorded two-days" in pack(DAYS)[0].again[0]


@pytest.mark.parametrize(("wanted", "made"), [(True, True), (False, False)])
def test_the_published_site_has_the_pack_only_where_it_is_asked_for(
    wanted: bool, made: bool
) -> None:
    around = replace(surround(publish_recording_pack=wanted), preview=False)
    assert (Build.FILMING in around.builds) is made


def test_the_end_of_a_number_is_never_before_its_beginning() -> None:
    for result in RESULTS.values():
        for one in filmed_figures(result, SAY):
            assert Decimal(0) <= one.start < one.end
