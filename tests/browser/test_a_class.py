"""25 learners go from one link to 25 codes, to their teacher's table, to the report; nobody's figures are taken from a page."""

from __future__ import annotations

import csv
import io
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner
from playwright.sync_api import Browser, Locator, Page, expect
from scipy.stats import binom, binomtest

from generator.cli.commands import commands
from generator.compute.base32 import decode
from tests.browser.class_of_25 import CLASS, PLACES, Learner, Way
from tests.browser.watched import watch
from tests.conftest import PATIENCE

FORMS = {
    "broth": "#soups--soup-chicken-broth_soup-vegetable-broth",
    "beans": "#soups--soup-black-bean-canned_soup-black-bean-restaurant",
    "total": "#soups--total",
    "again": "#the-most-again form",
    "pot": "#whole-pot form",
    "end": "#parting form",
}
ROWS = ("broth", "beans", "total")
MOST = "soup-black-bean-canned 1 cup"
NAMES = {
    "broth.gap": "soups.soup-chicken-broth_soup-vegetable-broth.gap",
    "broth.count": "soups.soup-chicken-broth_soup-vegetable-broth.count",
    "beans.gap": "soups.soup-black-bean-canned_soup-black-bean-restaurant.gap",
    "beans.count": "soups.soup-black-bean-canned_soup-black-bean-restaurant.count",
    "total": "soups.total.gap",
    "again": "the-most-again.answer",
    "pot": "whole-pot.answer",
    "end": "parting.answer",
}
ASKED = ("the-most", "soups", "the-most-again", "whole-pot", "table-talk", "parting")
"""Stops that the teacher chose, 6 of 11."""
SAID = {"right": "right", "wrong": "not right", "none": "not answered"}


def enter(form: Locator, written: str, way: Way) -> None:
    """Write one try and have it checked."""
    if written in ("yes", "no"):
        wanted = f"[value='{MOST}']" if written == "yes" else f":not([value='{MOST}'])"
        form.locator(f"input{wanted}").first.check()
    else:
        for box, text in zip(form.locator("input").all(), written.split("/"), strict=True):
            box.fill(text.replace("_", " "))
    if way is Way.KEYS and written not in ("yes", "no"):
        form.locator("input").last.press("Enter")
    else:
        form.locator("[data-check]").click()
    expect(form.locator("[data-band]")).not_to_be_empty()


def work(page: Page, link: str, learner: Learner) -> str:
    """One learner's evening with the page; returns the code it shows her."""
    page.goto(link)
    if learner.way is Way.SPANISH:
        page.get_by_role("link", name="Español").click()
        page.wait_for_url("**/es/**")
    expect(page.locator("finish-code button").first).to_be_visible()
    if learner.way is Way.BLOCKS:
        page.locator("[data-care] > summary").click()
        page.get_by_role("button", name="Blocks only").click()
    for tried in learner.tries("before"):
        enter(page.locator("#the-most form"), tried, learner.way)
    if learner.way is Way.LOOKS:
        page.locator(f"{FORMS['broth']} [data-working] > summary").click()
    for place in PLACES:
        for tried in learner.tries(place):
            enter(page.locator(FORMS[place]), tried, learner.way)
        if place == ROWS[-1] and learner.way is Way.RELOAD:
            page.reload()
            expect(page.locator("finish-code button").first).to_be_visible()
    if learner.talks:
        page.locator("#table-talk [data-go-on]").click()
    page.locator("finish-code button").first.click()
    return page.locator("finish-code output").inner_text()


def link_of(page: Page, notes: str) -> str:
    """The link that the teacher makes on the notes; it says in words what it opens."""
    page.goto(notes)
    page.locator(".for-monday a[href='#class-link']").click()
    stops = page.locator("class-link [name=stop]")
    expect(stops).to_have_count(11)
    for stop in stops.all():
        if stop.get_attribute("value") not in ASKED:
            stop.uncheck()
    expect(page.locator("[data-says]")).to_contain_text("in English: 6 of 11 stops, answers as")
    return page.locator("output[data-link]").inner_text()


@pytest.fixture
def codes(
    browser: Browser,
    page: Page,
    complaints: list[str],
    built_site: Path,
    serve: Callable[[Path], str],
) -> list[str]:
    """The code of each, on a device of her own."""
    link, shown = link_of(page, f"{serve(built_site)}soup-night/notes.html"), []
    for learner in CLASS:
        context = browser.new_context(viewport={"width": 390, "height": 844})
        context.set_default_timeout(PATIENCE)
        watch(context, complaints)
        shown.append(work(context.new_page(), link, learner))
        context.close()
    return shown


def test_from_one_link_to_the_report(
    codes: list[str], page: Page, built_site: Path, serve: Callable[[Path], str], tmp_path: Path
) -> None:
    page.goto(f"{serve(built_site)}codes.html")
    page.locator("textarea").fill(as_pasted(codes))
    page.get_by_role("button", name="Read the codes").click()
    expect(page.locator("code-reader [role=status]")).to_contain_text("25 codes read.")
    rows = page.locator("code-reader tbody tr").all()
    assert [row.locator("th, td").all_inner_texts()[:-1] for row in rows] == [
        as_in_the_table(learner) for learner in CLASS
    ]
    assert page.locator("code-reader h2 + ul li").all_inner_texts() == [
        "Lines 1 to 2: there is no code.",
        "Line 16: a character of the code is wrong, or two changed places.",
    ]
    with page.expect_download() as download:
        page.get_by_role("button", name="Save as a table (CSV)").click()
    file = tmp_path / "codes.csv"
    download.value.save_as(file)
    lines = list(csv.DictReader(io.StringIO(file.read_text("utf-8-sig"))))
    assert [(one["label"], decode(one["code"]), one["stops"], one["answers"]) for one in lines] == [
        (learner.name, decode(code), " ".join(learner.done()), answers_of(learner))
        for learner, code in zip(CLASS, codes, strict=True)
    ]
    told(built_site.parent, file, tmp_path)


def as_pasted(codes: list[str]) -> str:
    """As they come in a teacher's messages: with labels, greetings, empty lines, small letters and O for 0."""
    ways = (
        "{name} {code}",
        "{name}: {code}",
        "  {code}\t{name}  ",
        "{name} - {small}",
        "{name}, {bare}",
    )
    lines = ["Good morning!", "25 children, 4 sick, see room 12-B"]
    for at, (learner, code) in enumerate(zip(CLASS, codes, strict=True)):
        small, bare = code.replace("0", "O").lower(), code.replace("-", "")
        lines.append(
            ways[at % len(ways)].format(name=learner.name, code=code, small=small, bare=bare)
        )
        lines += [""] * (at % 3 == 0)
    wrong = codes[0][:-3] + ("A" if codes[0][-3] != "A" else "B") + codes[0][-2:]
    return "\r\n".join([*lines[:15], f"Zoe {wrong}", *lines[15:]])


def as_in_the_table(learner: Learner) -> list[str]:
    """Her row without the minutes, which hang on how busy the machine is."""
    found = Counter(learner.found().values())
    before, after = learner.twice()
    return [
        learner.name,
        "Soup night in the hall",
        f"{len(learner.done())} of {len(ASKED)}; 5 not asked",
        f"{found['first']} of 8",
        f"{found['first'] + found['later']} of 8",
        f"{SAID[before]}, then {SAID[after]}" if before != after or before != "none" else "",
    ]


def answers_of(learner: Learner) -> str:
    return " ".join(f"{NAMES[name]}={learner.found().get(name, 'no')}" for name in NAMES)


def told(project: Path, file: Path, folder: Path) -> None:
    """What the report says of them, at the usual smallest count and at the smallest that may be asked for."""
    pairs = Counter(learner.twice() for learner in CLASS)
    worse, better = pairs["right", "wrong"], pairs["wrong", "right"]
    both = {pair: count for pair, count in pairs.items() if "none" not in pair}
    before = sum(count for (first, _), count in both.items() if first == "right")
    after = sum(count for (_, last), count in both.items() if last == "right")
    usual = figures(project, file, folder / "usual")
    assert usual["", "codes"]["count"] == "25"
    assert usual["the-most", "codes with both answers"]["count"] == str(sum(both.values()))
    for figure, count in (("right before", before), ("right after", after)):
        shown(usual["the-most", figure], count, sum(both.values()))
    assert ("the-most", "right, then wrong") not in usual
    least = figures(project, file, folder / "least", "--at-least", "5")
    assert least["the-most", "right, then wrong"]["count"] == str(worse)
    assert least["the-most", "wrong, then right"]["count"] == str(better)
    exact = binomtest(worse, worse + better, 0.5).pvalue
    mid_p = exact - binom.pmf(worse, worse + better, 0.5)
    assert float(least["the-most", "McNemar exact p"]["value"]) == pytest.approx(exact, rel=1e-5)
    assert float(least["the-most", "McNemar mid-p"]["value"]) == pytest.approx(mid_p, rel=1e-5)
    done = Counter(stop for learner in CLASS for stop in learner.done())
    for stop, count in done.items():
        if 5 <= count <= 20:
            shown(least[stop, "done"], count, 25)
        else:
            assert least[stop, "done"]["count"] == ""


def shown(row: dict[str, str], count: int, of: int) -> None:
    """A share with Wilson's interval, by scipy."""
    interval = binomtest(count, of).proportion_ci(method="wilson")
    assert (row["count"], row["out_of"]) == (str(count), str(of))
    assert [row["low"], row["high"]] == [f"{100 * end:.1f}" for end in interval]


def figures(
    project: Path, file: Path, into: Path, *options: str
) -> dict[tuple[str, str], dict[str, str]]:
    """The rows of the report's table, by what they are of and their figure."""
    words = ["report", str(file), "--into", str(into), "--root", str(project), *options]
    done = CliRunner().invoke(commands, words, catch_exceptions=False)
    assert done.exit_code == 0, done.output
    text = (into / "report.csv").read_text("utf-8-sig")
    return {(one["of"], one["figure"]): one for one in csv.DictReader(io.StringIO(text))}
