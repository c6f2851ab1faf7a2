"""The page of updates and its feed: every kind of change planted in a record is read there, in each language."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from lxml import etree, html

from generator.model.published import Published
from generator.present.output import Output
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.run import begin
from generator.steps.site import Site
from tests.hostile import HOSTILE, SHORT
from tests.publications import DAYS, gone, number, publication, record, state
from tests.site_project import copy_project, small_lesson, write_lesson

FIRST, SECOND, THIRD, *_ = DAYS
ATOM = {"a": "http://www.w3.org/2005/Atom"}


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Site:
    """A site in two languages with one lesson."""
    root = copy_project(tmp_path_factory.mktemp("updates") / "site", lessons=False)
    write_lesson(root, "soup", small_lesson())
    return begin(root, root / "shown", preview=True, last={}).site()


def made(site: Site, published: Published) -> dict[str, bytes]:
    return {one.path: one.content for one in replace(site, published=published).updates()}


def page_text(content: bytes) -> str:
    main = html.document_fromstring(content.decode()).find(".//main")
    assert main is not None
    return " ".join(main.text_content().split())


def feed_text(content: bytes) -> str:
    entries = etree.fromstring(content).iterfind("a:entry/a:content", ATOM)
    shown = [html.fragment_fromstring(one.text or "", create_parent="div") for one in entries]
    return " ".join(" ".join(one.itertext()) for one in shown)


OTHER = {"worksheet": "AAAAAA", "answers": "BBBBBB"}
KINDS = {
    "holds": "Broth: 920 mg now, 910 mg before.",
    "gap": "The gap (Broth): 920 mg now, 910 mg before.",
    "count": "The count (Two soups): 920 now, 910 before.",
    "left-over": "What is left over (Two soups): 920 now, 910 before.",
    "total": "The total (Broth): 920 mg now, 910 mg before.",
    "one-move-per": "What one count stands for (Two soups): 920 mg now, 910 mg before.",
    "estimate": "An estimate (Broth): 920 mg now, 910 mg before.",
    "answer": "The answer (Broth): 920 mg now, 910 mg before.",
    "minutes": "Minutes in the teaching notes changed.",
    "eaten": "What the day gave (Broth): 920 mg now, 910 mg before.",
    "needed": "What the day took (Broth): 920 mg now, 910 mg before.",
}


@pytest.mark.parametrize("kind", KINDS)
def test_each_kind_of_number_is_told_and_no_count_names_a_food(site: Site, kind: str) -> None:
    unit = "times" if kind == "count" else "mg"
    states = [
        state(at, numbers={"soups.one": number(value, "Broth", kind, unit)})
        for at, value in ((FIRST, "910"), (SECOND, "920"))
    ]
    files = made(site, record(publication(FIRST), publication(SECOND), soup=tuple(states)))
    for shown in (page_text(files["updates.html"]), feed_text(files["updates.xml"])):
        assert KINDS[kind] in shown.replace("\N{NO-BREAK SPACE}", " ")
        if kind in {"count", "left-over"}:
            assert "Broth" not in shown
        if kind == "minutes":
            assert "920" not in shown


PLANTED: dict[str, tuple[dict[str, object], tuple[str, str]]] = {
    "title": (
        {"title": "Broth night"},
        (
            "This lesson is called “Broth night” now. It was “Soup night”.",
            "Esta lección ahora se llama “Broth night”. Antes era “Soup night”.",
        ),
    ),
    "another food": (
        {"numbers": {"soups.broth": number("40", "Pea soup, 1 cup")}},
        (
            "Pea soup, 1 cup: 40 mg now. In its place before: Chicken broth",
            "Pea soup, 1 cup: 40 mg ahora. Antes, en su lugar: Chicken",
        ),
    ),
    "a number gone": (
        {"numbers": {"soups.total.gap": number("320", "all rows", "gap")}},
        (
            "No longer here: Chicken broth, 1 cup. It was 910 mg.",
            "Ya no está: Chicken broth, 1 cup. Era 910 mg.",
        ),
    ),
    "same numbers, other sheets": (
        {"stamps": OTHER},
        (
            "numbers are as before. Words or looks changed on: Worksheet (stamp AAAAAA now, K7Q2FM before)",
            "son los de antes. Cambiaron palabras o el aspecto en: Hoja de trabajo (sello AAAAAA ahora, K7Q2FM antes)",
        ),
    ),
    "other numbers, other sheets": (
        {"stamps": OTHER, "numbers": {"soups.broth": number("920")}},
        (
            "If you printed these before March 2, 2026, print them again or change the numbers by hand: Worksheet",
            "Si imprimiste esto antes del 2 de marzo de 2026",
        ),
    ),
    "a film": (
        {"numbers": {"soups.broth": number("920")}},
        ("The video may still say what was before", "El video quizá todavía diga lo de antes"),
    ),
    "a stop less, one more": (
        {"stops": {"talk": "Talk"}, "numbers": {}, "stamps": OTHER},
        (
            "The part “Two soups” is no longer here. A new part: “Talk”. If you printed these before March 2",
            "La parte “Two soups” ya no está. Una parte nueva: “Talk”. Si imprimiste esto antes del 2 de marzo",
        ),
    ),
    "a stop's heading": (
        {"stops": {"soups": "Three soups"}},
        (
            "The part “Two soups” is called “Three soups” now.",
            "La parte “Two soups” ahora se llama “Three soups”.",
        ),
    ),
    "times": (
        {"times": {"soups": "1:20"}},
        (
            "“Two soups” is at 1:20 in the video now, before at 1:10.",
            "ahora está en 1:20 del video",
        ),
    ),
    "words": (
        {"texts": "0000"},
        ("Some texts are worded differently.", "Algunos textos están escritos de otra manera."),
    ),
    "pages": (
        {"pages": ("index.html", "notes.html", "practice.html")},
        (
            "No longer here: Movement cards. New: Teaching notes and Practice.",
            "Nuevo: Notas para docentes y Práctica.",
        ),
    ),
}


@pytest.mark.parametrize("planted", PLANTED)
def test_each_change_of_a_lesson_is_read_on_page_and_feed_in_both_languages(
    site: Site, planted: str
) -> None:
    otherwise, words = PLANTED[planted]
    states = tuple(
        state(at, language, **told)
        for at, told in ((FIRST, {}), (SECOND, otherwise))
        for language in ("en", "es")
    )
    files = made(site, record(publication(FIRST), publication(SECOND), soup=states))
    for folder, wanted in zip(("", "es/"), words, strict=True):
        for shown in (
            page_text(files[f"{folder}updates.html"]),
            feed_text(files[f"{folder}updates.xml"]),
        ):
            assert wanted in " ".join(shown.split()), planted


SITE = {
    "new": "This lesson is new.",
    "gone": "This lesson is no longer here.",
    "renamed": "It has a new address. Links and printed codes of before lead on to it.",
    "language": "It is in Español as well now.",
    "site": "The site stands at https://soup.example.org/ now.",
    "languages": "The site is not in Español any more.",
    "program": "The site was made with version 0.4.0 of its program.",
    "pages": "New files or pages: care.html. Files or pages here no more: teachers.html.",
    "note": "We read the record again.",
    "undoes": "This took back what was published on March 2, 2026.",
    "undone": "This was taken back on March 3, 2026.",
    "first": "Published with a record for the first time, with 2 lessons.",
}


def test_what_became_of_lessons_and_site_is_told(site: Site) -> None:
    second = publication(
        SECOND,
        program="0.4.0",
        address="https://soup.example.org/",
        languages=("en",),
        pages=("care.html",),
        note="We read the record again.",
    )
    published = record(
        publication(FIRST),
        second,
        publication(THIRD, undoes=SECOND),
        broth=(state(FIRST, title="Broth"), gone(SECOND)),
        soup=(state(SECOND), state(THIRD, "es")),
        walk=(state(FIRST, title="Walk"), gone(SECOND)),
        talk=(state(SECOND, title="Talk"),),
    )
    (lesson,) = site.lessons
    formerly = replace(lesson.facts.listed, formerly=(("broth", lesson.facts.listed.order_at),))
    renamed = replace(lesson, facts=replace(lesson.facts, listed=formerly))
    files = made(replace(site, lessons=(renamed,)), published)
    for shown in (page_text(files["updates.html"]), feed_text(files["updates.xml"])):
        for name, words in SITE.items():
            assert words in " ".join(shown.split()), name


def test_without_a_record_page_and_feed_say_nothing_untrue(site: Site) -> None:
    files = made(site, Published())
    assert files.keys() == {f"{one}updates.{end}" for one in ("", "es/") for end in ("html", "xml")}
    assert "Nothing was published with a record yet." in page_text(files["updates.html"])
    assert "Todavía no se publicó nada con registro." in page_text(files["es/updates.html"])
    assert feed_text(files["updates.xml"]) == ""


def test_a_publication_that_changed_nothing_here_says_so(site: Site) -> None:
    files = made(site, record(publication(FIRST), publication(SECOND), soup=(state(FIRST),)))
    assert "Nothing changed in this language." in page_text(files["updates.html"])


def test_a_value_of_food_goes_with_blocks_only(site: Site) -> None:
    numbers = {"soups.broth": number("920")}
    published = record(
        publication(FIRST), publication(SECOND), soup=(state(FIRST), state(SECOND, numbers=numbers))
    )
    root = html.document_fromstring(made(site, published)["updates.html"].decode())
    for line in root.iter("li"):
        assert ("data-with-numbers" in line.attrib) == (
            " mg" in line.text_content().replace("\xa0", " ")
        )
    assert len(root.findall(".//li[@data-with-numbers]")) == 2


@pytest.mark.parametrize("hostile", [HOSTILE, SHORT, "a\x00b\x07\ud800\ufffe]]>&amp;<![CDATA["])
def test_no_text_of_a_record_becomes_markup(site: Site, hostile: str) -> None:
    calm = "Quiet words"

    def files(words: str) -> dict[str, bytes]:
        first = publication(FIRST, address="https://kitchen.example.org/")
        second = publication(
            SECOND, note=words, pages=(words,), program=words, languages=("en", words)
        )
        numbers = {"soups.one": number("1", words), "soups.two": number("2", words, "gap", words)}
        told = {"title": words, "numbers": numbers, "stops": {"soups": words, "more": words}}
        states = (
            state(FIRST),
            state(SECOND, stamps={words: "X", "worksheet": words}, pages=(words,), **told),
        )
        return made(site, record(first, second, soup=states))

    wanted, found = files(calm), files(hostile)
    assert found.keys() == wanted.keys()
    for path in wanted:
        if path.endswith("html"):
            assert _tags(found[path].decode()) == _tags(wanted[path].decode()), path
        else:
            assert _elements(found[path]) == _elements(wanted[path]), path


def _tags(text: str) -> list[tuple[str, list[str]]]:
    every = html.document_fromstring(text).iter(etree.Element)
    return [(str(one.tag), sorted(one.attrib)) for one in every]


def _elements(content: bytes) -> list[str]:
    root = etree.fromstring(content)
    inside = (one.text or "" for one in root.iterfind("a:entry/a:content", ATOM))
    return [str(one.tag) for one in root.iter()] + [str(_tags(f"<p>{one}")) for one in inside]


def test_a_page_of_that_name_written_by_hand_stays(site: Site) -> None:
    mine = ByHand((Output("updates.html", b"<p>Mine</p>", "Updates"),), ())
    files = {
        one.path: one.content.decode() for one in other_files(site, mine) if "updates" in one.path
    }
    assert "Mine" in files["updates.html"]
    assert "Cambios" in files["es/updates.html"]
    assert {"updates.html", "es/updates.html"} <= site.map.lessons.keys()


def test_older_publications_stand_on_pages_that_stay_as_they_are(site: Site) -> None:
    moments = [
        f"2026-{month:02}-{day:02}T08:00:00Z" for month in range(1, 9) for day in range(1, 29)
    ]
    pages = []
    for length in (180, 181):
        states = tuple(state(at, texts=str(number)) for number, at in enumerate(moments[:length]))
        published = record(*map(publication, moments[:length]), soup=states)
        pages.append(
            {path: one for path, one in made(site, published).items() if path.endswith("html")}
        )
    short, long = pages
    assert set(short) == {
        f"{folder}updates{part}.html" for folder in ("", "es/") for part in ("", "-1", "-2", "-3")
    }
    assert (short["updates-1.html"], short["updates-2.html"]) == (
        long["updates-1.html"],
        long["updates-2.html"],
    )
    for told, length in ((short, 180), (long, 181)):
        english = [one.decode() for path, one in told.items() if "/" not in path]
        found = [at for text in english for at in re.findall(r'<time datetime="([^"]+)"', text)]
        assert sorted(found) == moments[:length]
        leads = set(re.findall(r'href="(updates-\d+\.html)"', told["updates.html"].decode()))
        assert leads == {path for path in told if path.startswith("updates-")}


def test_of_many_lessons_those_with_the_same_to_tell_stand_together(site: Site) -> None:
    states = {
        f"lesson_{one:03}": (
            state(FIRST, title=f"L{one:03}"),
            state(SECOND, title=f"L{one:03}", stamps=OTHER, texts="x"),
        )
        for one in range(99)
    }
    other = {
        "soup": (state(FIRST), state(SECOND, stamps=OTHER, numbers={"soups.broth": number("920")}))
    }
    published = record(publication(FIRST), publication(SECOND), **states, **other)
    shown = page_text(made(site, published)["updates.html"])
    assert "99 lessons L000 · L001 · L002" in shown
    assert shown.count("Some texts are worded differently") == 1
    assert "Worksheet (stamp AAAAAA now, K7Q2FM before)" in shown  # of the one with another number
    published = record(publication(FIRST), publication(SECOND), **states)
    assert "All 99 lessons" in page_text(made(site, published)["updates.html"])


def test_a_site_without_an_address_has_no_feed(tmp_path: Path) -> None:
    root = copy_project(tmp_path / "site", lessons=False)
    file = root / "site_data/site.yaml"
    file.write_text(re.sub(r"(?m)^address:.*$", "address:", file.read_text("utf-8")), "utf-8")
    found = {
        one.path: one.content
        for one in begin(root, root / "x", preview=True, last={}).site().updates()
    }
    assert found.keys() == {"updates.html", "es/updates.html"}
    assert b"atom" not in b"".join(found.values())
