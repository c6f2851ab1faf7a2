"""The sheet of numbers to say: what the film shows and says, in its order, and after filming what it says wrongly."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from generator.check.recorded import numbers_as_filmed
from generator.compute.result import LessonResult
from generator.compute.showing import showings
from generator.language import language_of
from generator.model.recorded import FilmedFigure, Recorded, RecordedFile
from generator.present.assets.environment import Theme
from generator.present.lesson import LessonInLanguage
from generator.present.pages.page import Surround
from generator.present.recording.filmed import filmed_figures, heard_as_either
from generator.present.recording.views import NumbersView, NumberView, StopNumbersView
from generator.present.words.say import Say
from tests.project import ROOT, library
from tests.site_data.test_lessons import RESULTS

SAY = Say(library().words["en"])
RIVER, BASKETS = RESULTS["river-walk"], RESULTS["garden-baskets"]


def sheet(result: LessonResult) -> NumbersView:
    around = Surround(library().site, SAY, "", (), {}, preview=True)
    pages = LessonInLanguage(Theme(ROOT / "theme"), result, around).pages
    [view] = [page.view for page in pages if isinstance(page.view, NumbersView)]
    return view


def flat(stops: tuple[StopNumbersView, ...]) -> list[NumberView]:
    return [one for stop in stops for one in stop.numbers]


def filmed(result: LessonResult, figures: tuple[FilmedFigure, ...]) -> LessonResult:
    kept = Recorded(RecordedFile(filmed="2026-03-14", figures=figures), result.lesson.places)
    return replace(result, lesson=replace(result.lesson, recorded=kept))


def value(one: NumberView) -> Decimal:
    return Decimal(one.key.rpartition(" ")[2])


@pytest.mark.parametrize("result", RESULTS.values(), ids=RESULTS)
def test_it_has_what_a_record_would_keep_and_what_could_be_two_things_in_the_order_of_the_film(
    result: LessonResult,
) -> None:
    new = replace(result, lesson=replace(result.lesson, recorded=None))
    view, either = sheet(new), heard_as_either(result, SAY)
    kept = [one.value for one in filmed_figures(result, SAY)]
    found = flat(view.to_say)
    assert sorted(map(value, found)) == sorted(
        [*kept, *(numbers[0].figure.value for numbers, _ in either)]
    )
    times = [tuple(map(int, one.at.split(":"))) for one in found]
    assert times == sorted(times)
    known = {one.figure.value for one in showings(result)}
    assert {value(one) for one in found} <= known
    assert (view.filmed, view.gone) == ((), ())


def test_a_number_is_told_with_its_food_its_side_and_its_words() -> None:
    line, _ = (one for one in flat(sheet(RIVER).filmed) if "Apple pie, 1 slice" in one.what)
    assert (line.at, line.what, line.side) == ("1:48", "Apple pie, 1 slice", "Omar's lunch")
    assert line.shown.replace("\N{NO-BREAK SPACE}", " ") == "410 kcal"
    assert line.said == "four hundred ten"
    spell = language_of("en").spelled
    assert spell
    assert all(one.said == spell(value(one)) for one in flat(sheet(RIVER).filmed))


def test_a_total_that_is_also_that_of_a_change_is_told_as_either_and_kept_in_no_record() -> None:
    """The script says *1,070 in the North basket*; the South basket comes to as much with zucchini."""
    line, *_ = (one for one in flat(sheet(BASKETS).to_say) if "1,070" in one.shown)
    assert line.what.startswith("the total of “South basket” with this change: Cooked zucchini")
    assert line.what.endswith(" / the total of “North basket”")
    assert Decimal(1070) not in {one.value for one in filmed_figures(BASKETS, SAY)}


def test_a_film_that_is_right_has_nothing_to_film_again() -> None:
    view = sheet(RIVER)
    assert (view.to_say, view.gone) == ((), ())
    assert view.says == "Nothing has changed since the video was filmed."
    assert len(flat(view.filmed)) == len(filmed_figures(RIVER, SAY))


def test_only_what_check_names_is_to_be_filmed_again() -> None:
    """All that is of the pie was ten more when the film was made, and one number was of a food that is gone."""
    figures = list(filmed_figures(RIVER, SAY))
    for at, one in enumerate(figures):
        if "apple-pie-homemade" in {food.food for food in one.foods}:
            figures[at] = one.model_copy(update={"value": one.value + 10})
    cake = figures[1].foods[0].model_copy(update={"food": "cake", "fdc": None})
    figures.append(figures[1].model_copy(update={"foods": (cake,)}))
    result = filmed(RIVER, tuple(figures))
    view, asked = sheet(result), [one.what for one in numbers_as_filmed(result)]
    told = {one.key.split(" ")[1] for one in flat(view.to_say)}
    assert told == {part.split("`")[1] for part in asked if "any more" not in part}
    assert len(view.gone) == len([one for one in asked if "any more" in one]) == 1
    assert all(one.was.startswith("the video says ") for one in flat(view.to_say))
    assert not told & {one.key.split(" ")[1] for one in flat(view.filmed)}


def test_a_row_that_is_new_since_the_film_is_to_be_filmed() -> None:
    figures = filmed_figures(RIVER, SAY)
    without = tuple(one for one in figures if "apple-raw" not in {food.food for food in one.foods})
    new = flat(sheet(filmed(RIVER, without)).to_say)
    assert new
    assert all("pple" in one.what or "Tilda" in one.what for one in new if one.at < "3:00")
    assert all(one.was == "" for one in new)
