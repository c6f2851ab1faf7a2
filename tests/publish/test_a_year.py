"""An educator's year in one piece: at each step the page, the feed, the old sheet and the old link say what is true.

Cheese pizza: 107 g a slice. By 21 CFR 101.9(c)(1), over 50 kcal to the nearest 10: 266 kcal in 100 g are 284.6, so 280;
276 are 295.3, so 300. Beside the chicken sandwich of 420 the gap is 140, then 120; counts are tens of it.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.publish.year import FILMED, Year, begin, words
from tests.site_project import hashes

LESSON = f"lessons/{FILMED}/lesson.yaml"
PIE = """        - help: hops
          foods: [{food: apple-raw, amount: 1 medium}, {food: apple-pie-homemade, amount: 1 slice, name: Apple pie}]
"""
PIZZA = """        - [{food: chicken-sandwich-grilled, amount: 1 sandwich, name: Chicken sandwich}, {food: pizza-cheese, amount: 1 slice}]
"""
FILM_SAYS = {"280", "690", "14"}
"""What the film says otherwise once the pizza is corrected: the slice, Omar's lunch, and the count of its row."""
OF_THE_RECORD = re.compile(
    r"(^|/)(updates.*|sheets\.(html|json)|keep\.json|.*\.zip)$|^stamps/|^sitemap"
)
"""Files that tell what went out before; they change with each publication."""


def test_a_year(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    year = begin(tmp_path, monkeypatch)
    first_publication(year)
    filmed(year)
    food_corrected(year)
    rows_swapped(year)
    lesson_renamed(year)
    language_dropped(year)
    program_updated(year, monkeypatch)
    taken_back(year)


def first_publication(year: Year) -> None:
    year.publish("--note", "Our first lessons.")
    year.holds()
    assert "Our first lessons." in year.latest()
    assert "2 lessons" in year.latest()
    assert "2 lecciones" in year.latest("es/")


def filmed(year: Year) -> None:
    """What was filmed is kept, and goes out; nothing that anybody sees is another."""
    assert "keeps 15 numbers" in year.run("recorded", FILMED)
    year.publish()
    year.holds()
    assert year.corrections() == set()
    assert "Nothing changed" in year.latest()


def food_corrected(year: Year) -> None:
    year.edit("site_data/foods.yaml", ("energy: 266, ", "energy: 276, "))
    year.edit(LESSON, ("holds 280", "holds 300"), ("comes to 690", "comes to 710"))
    year.edit(
        f"lessons/{FILMED}/lesson.es.yaml", ("tiene 280", "tiene 300"), ("suma 690", "suma 710")
    )
    told = year.run("changes")
    for said in (
        "Cheese pizza, 1 slice: 300 kcal now, 280 kcal before.",
        "The gap (Chicken sandwich, Cheese pizza): 120 kcal now, 140 kcal before.",
        "At 1:58 the film says 280",
    ):
        assert said in told
    old = year.stamp(f"{FILMED}/worksheet.html")
    assert old in told
    year.publish()
    year.holds()
    assert year.corrections() == FILM_SAYS
    for line in (
        "300 kcal now, 280 kcal before",
        "120 kcal now, 140 kcal before",
        "12 now, 14 before",
        old,
    ):
        assert line in year.latest()
        assert line in words("".join(year.feed()[0].itertext()))
    assert "300 kcal ahora, 280 kcal antes" in year.latest("es/")
    sheet = year.past_sheet(FILMED, old)
    assert "300 kcal" in sheet
    assert "280 kcal" in sheet


def rows_swapped(year: Year) -> None:
    """A row that stands elsewhere is no correction: the film speaks of its food, not of its place."""
    year.edit(LESSON, (PIE + PIZZA, PIZZA + PIE))
    year.edit(
        LESSON, ("[swim-arms, apple-pick, bottle-lift]", "[swim-arms, bottle-lift, apple-pick]")
    )
    first, old = year.printed[f"{FILMED}/worksheet.html"][0], year.stamp(f"{FILMED}/worksheet.html")
    assert re.findall(r"\d(?: kcal)? now, ", year.run("changes")) == []
    year.publish()
    year.holds()
    assert year.corrections() == FILM_SAYS
    assert "numbers are as before" in year.latest()
    assert "No number of the lesson has" in year.past_sheet(FILMED, old)
    assert "280 kcal" in year.past_sheet(FILMED, first)


def lesson_renamed(year: Year) -> None:
    (year.site.root / "lessons/soup").rename(year.site.root / "lessons/noon")
    assert "`formerly: [soup]`" in year.run("check")
    year.edit("lessons/noon/lesson.yaml", ('"title"', '"formerly": ["soup"], "title"'))
    assert "formerly" not in year.run("check")
    told = year.publish()
    assert "another address (it was soup)" in told
    year.holds()
    for page in ("index.html", "worksheet.html", "notes.html"):
        assert year.led_to(f"soup/{page}") == f"noon/{page}"
        assert year.led_to(f"es/soup/{page}") == f"es/noon/{page}"
    assert year.led_to("embed/soup/stop.html") == "embed/noon/stop.html"
    assert "It has a new address" in year.latest()
    first = year.printed["soup/worksheet.html"][0]
    assert {one.lesson for one in year.asked(first)} == {"noon"}
    assert "280 kcal" in year.past_sheet("noon", first)


def language_dropped(year: Year) -> None:
    year.edit("site_data/site.yaml", ("languages: [en, es]", "languages: [en]"))
    assert "`es` is no longer listed here" in year.run("check")
    year.publish()
    year.holds()
    assert "not in Español any more" in year.latest()
    for old, new in (("soup", "noon"), ("noon", "noon"), (FILMED, FILMED)):
        assert year.led_to(f"es/{old}/index.html") == f"{new}/index.html"
    assert year.led_to("es/index.html") == "index.html"
    spanish = year.printed[f"es/{FILMED}/worksheet.html"][-1]
    assert all(one.gone for one in year.asked(spanish))


def program_updated(year: Year, patch: pytest.MonkeyPatch) -> None:
    """Another look and another version; whatever is printed is the same, so every sheet holds."""
    patch.setattr("generator.publish.going_out.__version__", "9.0.0")
    year.edit("theme/sheet.html", ("<footer><p>", '<footer class="end"><p>'))
    before = {path: year.stamp(path) for path in year.sheets()}
    assert "To be told" not in year.run("changes")
    year.publish()
    year.holds()
    assert {path: year.stamp(path) for path in year.sheets()} == before
    assert "9.0.0" in year.latest()


def taken_back(year: Year) -> None:
    """The last publication is undone: the site is what it was before it."""
    was = hashes(year.seen[-2])
    year.publish("--undo")
    year.holds()
    assert "took back" in year.latest()
    now = hashes(year.public)
    others = {path for path in was.keys() | now.keys() if was.get(path) != now.get(path)}
    assert {path for path in others if not OF_THE_RECORD.search(path)} == set()
