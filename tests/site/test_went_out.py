"""Every page that ever went out is there, or its address holds a page that says what became of it, and leads on."""

from __future__ import annotations

from pathlib import Path
from posixpath import normpath
from typing import NamedTuple

import pytest

from generator.model.published import LessonState, Publication
from generator.publish.record import append_publication
from generator.read.published import read_published
from tests.html_page import read_page
from tests.project import GOOD, put
from tests.site.test_formerly import NEW, OLD, main, renamed
from tests.site_project import build_project, run_mkdocs

DAY = "2026-03-14T08:00:00Z"


class Went(NamedTuple):
    """An address that went out, what its page says today, and where that leads."""

    path: str
    says: str
    to: str


TOLD = (
    Went(f"{NEW}/quiz.html", "This lesson no longer has that page", f"{NEW}/index.html"),
    Went(f"es/{NEW}/quiz.html", "Esta lección ya no tiene esa página", f"es/{NEW}/index.html"),
    Went(f"{OLD}/index.html", "This lesson has another address now", f"{NEW}/index.html"),
    Went(f"{OLD}/quiz.html", "This lesson no longer has that page", f"{NEW}/index.html"),
    Went(f"fr/{OLD}/index.html", "It is here in another one: English", f"{NEW}/index.html"),
    Went("fr/index.html", "This page is no longer here in this language", "index.html"),
    Went("fr/old.html", "It is here in another one: English", "index.html"),
    Went("fr/teachers.html", "It is here in another one: English", "teachers.html"),
    Went("es/meal/index.html", "Está en otro: English", "meal/index.html"),
    Went("es/meal/notes.html", "Está en otro: English", "meal/notes.html"),
    Went("embed/es/meal/stop.html", "Está en otro: English", "meal/index.html"),
    Went("supper/cards.html", "This lesson is no longer here", "index.html"),
    Went("es/supper/index.html", "Esta lección ya no está aquí", "es/index.html"),
    Went("tea/index.html", "This page has another address now", "teachers.html"),
    Went("es/tea/index.html", "Esta página ahora tiene otra dirección", "es/teachers.html"),
    Went("dinner/worksheet.html", "This lesson has another address now", "meal/worksheet.html"),
    Went("lost/index.html", "This lesson is no longer here", "index.html"),
    Went("recipes.html", "This page has another address now", "teachers.html"),
    Went("es/recipes.html", "Esta página ahora tiene otra dirección", "es/teachers.html"),
    Went("es/recetas.html", "Esta página ahora tiene otra dirección", "es/teachers.html"),
    Went("old-soup.html", "This page has another address now", "meal/index.html"),
)
SITE_FORMERLY = """
formerly:
  recipes.html: teachers.html#papers
  old-soup.html: meal
  es/recetas.html: es/teachers.html
  dinner: meal
  tea: teachers.html
  supper:
  lost:
"""


def state(language: str, title: str, *pages: str) -> LessonState:
    return LessonState(
        "", language, title, pages=("index.html", "stop.html", "papers/worksheet-a4.pdf", *pages)
    )


def record(project: Path) -> None:
    """Two publications: one with all that is gone today, and one that went out without some of it."""
    walk = {one: state(one, "Walk", "quiz.html", "cards.html") for one in ("en", "es")}
    creek = walk | {"fr": state("fr", "Marche")}
    meal = {one: state(one, "Meal", "notes.html") for one in ("en", "es")}
    supper = {one: state(one, "Supper & <tea>", "cards.html") for one in ("en", "es")}
    everything = {NEW: walk, OLD: creek, "meal": meal, "supper": supper, "tea": meal}
    pages = ("fr/index.html", "fr/old.html", "fr/teachers.html", "teachers.html")
    first = Publication(DAY, "0.3", "", ("en", "es", "fr"), tuple(everything), pages)
    append_publication(project, first, everything)
    later = Publication("2026-04-01T08:00:00Z", "0.3", "", ("en", "es"), (NEW,))
    append_publication(project, later, {NEW: walk})


def with_past(folder: Path) -> Path:
    """A site of two lessons and one page, and the record of what went out of it before."""
    project = renamed(folder)
    put(project, GOOD)
    for name in ("teachers.md", "es/teachers.md"):
        page = project / "lessons" / name
        page.parent.mkdir(exist_ok=True)
        page.write_text("# Teachers' page\n\n## Papers\n\nWords.\n", "utf-8")
    with (project / "site_data/site.yaml").open("a", encoding="utf-8") as file:
        file.write(SITE_FORMERLY)
    record(project)
    return project


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """That site, built."""
    return build_project(with_past(tmp_path_factory.mktemp("went-out")))


def lead(page: Path, site: Path) -> str:
    """Where the page leads, from the site's root and without a place."""
    (link,) = [link for link in main(page).iter("a") if link.get("data-way") is not None]
    href = (link.get("href") or "").partition("#")[0]
    return normpath((page.parent.relative_to(site) / href).as_posix())


@pytest.mark.parametrize("went", TOLD, ids=lambda went: went.path)
def test_what_an_address_of_before_says_is_so(site: Path, went: Went) -> None:
    page = site / went.path
    assert went.says in " ".join("".join(main(page).itertext()).split())
    assert lead(page, site) == went.to
    assert (site / went.to).is_file()
    assert '<meta name="robots" content="noindex">' in page.read_text("utf-8")


def test_a_title_in_a_language_of_before_is_marked(site: Path) -> None:
    (heading,) = main(site / f"fr/{OLD}/index.html").iter("h1")
    assert [(one.get("lang"), one.text) for one in heading] == [("fr", "Marche")]
    (heading,) = main(site / "es/meal/index.html").iter("h1")
    assert list(heading) == []


def test_no_page_that_went_out_is_lost(site: Path) -> None:
    for lesson, states in read_published(site.parent).lessons.items():
        for one in states:
            folder = "" if one.language == "en" else f"{one.language}/"
            for name in (page for page in one.pages if page.endswith(".html")):
                below = Path("embed", folder) if name == "stop.html" else Path(folder)
                page = site / below / lesson / name
                assert page.is_file(), page
                links = [a for a in main(page).iter("a") if a.get("data-way") is not None]
                assert not links or (site / lead(page, site)).is_file()


def test_no_page_stands_where_none_ever_was(site: Path) -> None:
    assert not [file for file in site.rglob("stop.html") if "embed" not in file.parts]


def test_a_page_of_today_is_never_written_over(site: Path) -> None:
    for path in (f"{NEW}/index.html", f"{NEW}/cards.html", "meal/index.html", "teachers.html"):
        assert "data-way" not in (site / path).read_text("utf-8")


def test_titles_of_before_are_words_and_no_markup(site: Path) -> None:
    (title,) = read_page(site / "supper/cards.html").iter("h1")
    assert "".join(title.itertext()) == "Supper & <tea>"


def test_pages_for_frames_lead_out_of_them_where_no_frame_may_follow(site: Path) -> None:
    text = (site / "embed/es/meal/stop.html").read_text("utf-8")
    assert '<base target="_blank">' in text
    assert "<header" not in text


LEADS_NOWHERE = {
    "teachers.html: meal": "`teachers.html` is a page of the site, so its address leads to itself",
    "meal: teachers.html": "`meal` is a lesson of the site, so its address leads to itself",
    f"{OLD}: meal": f"a lesson lists `{OLD}` under its own `formerly:`",
    "recipes.html: teacher.html": "there is no `teacher.html` on the site to lead to: did you mean `teachers.html`?",
}
NO_ADDRESS = {
    "soups.html: https://elsewhere.example/": "`soups.html` is no address on this site: write a page",
    "../up.html: meal": "`../up.html` is no address on this site: write a page",
}


@pytest.mark.parametrize("wrong", [LEADS_NOWHERE, NO_ADDRESS], ids=["nowhere", "no address"])
def test_each_line_that_cannot_be_followed_is_told_at_its_place(
    tmp_path: Path, wrong: dict[str, str]
) -> None:
    project = renamed(tmp_path)
    put(project, GOOD)
    (project / "lessons/teachers.md").write_text("# Teachers' page\n", "utf-8")
    file = project / "site_data/site.yaml"
    lines = len(file.read_text("utf-8").splitlines())
    with file.open("a", encoding="utf-8") as more:
        more.write("\n  ".join(["formerly:", *wrong]) + "\n")
    done = run_mkdocs(project)
    assert done.exit_code == 1
    for number, says in enumerate(wrong.values(), lines + 2):
        (told,) = [one for one in done.stderr.splitlines() if f"site.yaml:{number}:" in one]
        assert says in told
