"""The front page lists the lessons, and hand-written pages stand beside them."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.html_page import read_page, text
from tests.media_files import jpeg
from tests.site_project import build_project, copy_project, small_lesson, write_lesson

STRAYS = (
    "notes/plan.txt",
    "empty/.keep",
    ".drafts/lesson.yaml",
    ".hidden",
    "small/.DS_Store",
    "small/old/lesson.yaml",
)


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site with one small lesson and no page written by hand."""
    copy_project(tmp_path, lessons=False)
    write_lesson(tmp_path, "small", small_lesson())
    return tmp_path


def listed(site: Path) -> list[str | None]:
    """Where the list leads to; the second way to the first lesson, "Begin here", and pages of the site left out."""
    main = next(read_page(site / "index.html").iter("main"))
    links = [link.get("href") for link in main.iter("a") if link.get("data-begins") is None]
    return [href for href in links if href not in {"lessons.html", "updates.html", "stamps.html"}]


def test_without_a_page_of_its_own_the_front_page_lists_the_lessons(project: Path) -> None:
    site = build_project(project)
    assert listed(site) == ["small/index.html"]
    assert len(list(site.glob("index*"))) == 1


@pytest.mark.parametrize("name", ["index.md", "README.md"])
def test_an_introduction_written_by_hand_stands_above_the_list(project: Path, name: str) -> None:
    (project / "lessons" / name).write_text("Welcome to **our** kitchen.\n", "utf-8")
    site = build_project(project)
    assert listed(site) == ["small/index.html"]
    main = text(next(read_page(site / "index.html").iter("main")))
    assert main.index("Welcome to our kitchen.") < main.index("A small lesson")


def test_a_site_without_lessons_has_a_front_page(tmp_path: Path) -> None:
    assert listed(build_project(copy_project(tmp_path, lessons=False))) == []


def test_the_front_page_lists_every_lesson_of_the_demo_once(built_site: Path) -> None:
    lessons = (built_site.parent / "lessons").glob("*/lesson.yaml")
    wanted = {f"{file.parent.name}/index.html" for file in lessons}
    shown = [href for href in listed(built_site) if href in wanted]
    assert len(shown) == len(wanted) == len(set(shown))


def test_lessons_stand_in_the_order_somebody_chose_then_by_their_folders(project: Path) -> None:
    (project / "lessons/index.md").write_text("Welcome.\n\n{lessons}\n", "utf-8")
    write_lesson(project, "early", small_lesson(title="Early", order=2))
    write_lesson(project, "zest", small_lesson(title="Zest", order=1))
    write_lesson(project, "apple", small_lesson(title="Apple"))
    wanted = [f"{name}/index.html" for name in ("zest", "early", "apple", "small")]
    assert listed(build_project(project)) == wanted * 2  # in the text by hand, and below it
    file = project / "lessons/zest/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace('"order": 1', '"order": 3'), "utf-8")
    wanted = [f"{name}/index.html" for name in ("early", "zest", "apple", "small")]
    assert listed(build_project(project)) == wanted * 2


def test_a_page_written_by_hand_wears_the_theme_and_is_linked_from_every_page(
    project: Path,
) -> None:
    (project / "lessons/visit.md").write_text(
        "# Visit *us*\n\nCome by. See [the lesson](small/index.html).\n\n## When\n\nFridays.\n",
        "utf-8",
    )
    site = build_project(project)
    page = read_page(site / "visit.html")
    assert [text(heading) for heading in page.iter("h1")] == ["Visit us"]
    assert "Come by." in text(next(page.iter("main")))
    for other in ("index.html", "small/index.html"):
        hrefs = {link.get("href") for link in read_page(site / other).iter("a")}
        assert "visit.html" in {str(href).removeprefix("../") for href in hrefs}


def test_a_page_written_by_hand_begins_with_one_heading(project: Path) -> None:
    (project / "lessons/index.md").write_text("# Welcome, *all*\n\nCome in.\n", "utf-8")
    (project / "lessons/visit-us.md").write_text("Come by.\n", "utf-8")
    site = build_project(project)
    for name, heading in (("index", "Welcome, all"), ("visit-us", "Visit us")):
        assert [text(each) for each in read_page(site / f"{name}.html").iter("h1")] == [heading]


def test_a_picture_beside_a_lesson_comes_along_where_a_page_shows_it(project: Path) -> None:
    (project / "lessons/small/market.jpg").write_bytes(jpeg())
    (project / "lessons/visit.md").write_text("![The market](small/market.jpg)\n", "utf-8")
    assert (build_project(project) / "small/market.jpg").read_bytes() == jpeg()


def test_the_lesson_file_itself_stays_at_home(built_site: Path) -> None:
    assert not [*built_site.rglob("*.yaml"), *built_site.rglob("*.md"), *built_site.rglob("*.py")]


def test_files_that_are_no_lesson_do_no_harm(project: Path) -> None:
    for stray in STRAYS:
        file = project / "lessons" / stray
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text("not: a lesson\n", "utf-8")
    (project / "lessons/idea").mkdir()
    site = build_project(project)
    assert listed(site) == ["small/index.html"]
    assert list(site.rglob(".*")) == []
