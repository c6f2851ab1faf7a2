"""Only what a lesson or a page names is published; whatever else lies in `lessons/` stays at home and is told."""

from __future__ import annotations

import re
import shutil
from pathlib import Path
from zipfile import ZipFile

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.media_files import box, chunk, exif_of_a_phone, jpeg, png, segment
from tests.site_project import ROOT, copy_project, small_lesson, write_lesson

STRAY = (
    "small/class-list.csv", "small/consent.docx", "small/notes.txt", "small/lesson.yaml~",
    "small/lesson.yaml.bak", "small/old-take.mp4", "small/note.md", "small/evil.html",
    "small/evil.js", "small/evil.svg", "small/make.py", "small/.hidden.png", "small/photos/ana.jpg",
    "small/lesson.es.yaml", "small/recorded.yaml.old", "CNAME", "robots.txt", "Thumbs.db",
    "drafts/idea.md", "drafts/idea.png",
)  # fmt: skip
NAMED = ("pot.png", "pictures/pan.jpg", "menu.pdf")


NOTES = segment(0xFE, b"Ana Lopez, 9") + segment(0xE1, b"Exif\0\0" + exif_of_a_phone())


def add_place(film: Path) -> None:
    """Put a place and a name behind a film, as some phones do."""
    notes = box(
        b"udta", box(b"\xa9xyz", b"\0\x12\x15\xc7+48.2+016.3/") + box(b"\xa9ART", b"Ana Lopez, 9")
    )
    film.write_bytes(film.read_bytes() + notes)


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site whose educator keeps her desk in her lessons' folders."""
    folder = copy_project(tmp_path_factory.mktemp("desk"), lessons=False)
    video = {"file": "small.mp4", "captions": {"en": "small.en.vtt"}, "poster": "small.jpg"}
    write_lesson(folder, "small", small_lesson(video=video))
    demo = ROOT / "lessons/two-days"
    shutil.copy(demo / "two-days.mp4", folder / "lessons/small/small.mp4")
    shutil.copy(demo / "two-days.en.vtt", folder / "lessons/small/small.en.vtt")
    (folder / "lessons/small/small.jpg").write_bytes(jpeg(NOTES))
    add_place(folder / "lessons/small/small.mp4")
    for name in (*STRAY, *NAMED):
        file = folder / "lessons" / name
        file.parent.mkdir(exist_ok=True)
        file.write_text("title: Una" if name.endswith("es.yaml") else "Ana Lopez, 9", "utf-8")
    (folder / "lessons/pot.png").write_bytes(png(chunk(b"tEXt", b"Author\0Ana Lopez, 9")))
    (folder / "lessons/pictures/pan.jpg").write_bytes(jpeg(NOTES))
    page = "# Us\n\n![Pot](pot.png) [Menu](menu.pdf)\n\n<img src='pictures/pan.jpg' alt='Pan'>\n"
    (folder / "lessons/about.md").write_text(page, "utf-8")
    outside = folder.parent / "private.txt"
    outside.write_text("Ana Lopez, 9", "utf-8")
    for link, target in (("small/secret.txt", outside), ("small/gone.png", "/nowhere/at/all")):
        (folder / "lessons" / link).symlink_to(target)
    (folder / "lessons/linked.md").symlink_to(outside)
    return folder


@pytest.fixture(scope="module")
def site(project: Path) -> Path:
    """What is published of it."""
    done = plumline(project, "build")
    assert done.exit_code == 0, done.output
    return project / "site"


def test_nothing_that_nobody_named_is_published(site: Path) -> None:
    ours = {"html", "css", "js", "json", "zip", "imscc", "xml", "gz"}
    there = {path.relative_to(site).as_posix() for path in site.rglob("*") if path.is_file()}
    theirs = {
        path for path in there if path.rpartition(".")[2] not in ours and "assets" not in path
    }
    named = {*NAMED, "small/small.mp4", "small/small.en.vtt", "small/small.jpg"}
    made = {"_headers", "licences.txt"}
    made |= {f"small/plums{kind}" for kind in (".svg", "-flat.svg", "-numbers.svg", ".png")}
    made.add("es/small/plums-numbers.svg")
    assert {path for path in theirs if "chapters" not in path} == named | made
    assert not there & {
        *STRAY,
        "linked.html",
        "small/note.html",
        "small/evil.html",
        "drafts/idea.html",
    }


def test_no_byte_of_a_stray_file_is_in_the_site(site: Path) -> None:
    for path in site.rglob("*"):
        if path.is_file() and path.name != "menu.pdf":
            held = path.read_bytes()
            assert not any(word in held for word in (b"Ana Lopez", b"Ana Ruiz", b"+48.2")), path


def test_what_is_left_out_of_a_file_is_told_and_the_file_stays(project: Path, site: Path) -> None:
    said = plumline(project, "check").stderr
    for name in ("pot.png", "pan.jpg", "small.jpg", "small.mp4"):
        assert re.search(rf"`{name}` also tells .*; that is left out of what is published", said)
    own = (project / "lessons/small/small.mp4").read_bytes()
    assert b"+48.2" in own
    assert len(own) == (site / "small/small.mp4").stat().st_size
    assert b"Ana Ruiz" in (project / "lessons/small/small.jpg").read_bytes()


def test_the_copy_to_take_home_holds_no_stray_file(site: Path) -> None:
    with ZipFile(site / "small/small-take-home.zip") as packed:
        names = {name.partition("/")[2] for name in packed.namelist()}
        inside = b"".join(packed.read(name) for name in packed.namelist())
    assert {"small.mp4", "small.jpg", "index.html"} <= names
    assert not names & {Path(name).name for name in (*STRAY, "small/secret.txt", "small/gone.png")}
    assert not any(word in inside for word in (b"Ana Lopez", b"Ana Ruiz", b"+48.2"))


@pytest.mark.parametrize("name", ["pot.png", "pictures/pan.jpg"])
def test_a_page_shows_no_picture_that_is_none(project: Path, name: str) -> None:
    """A page of someone's under the name of a picture would be published and could be opened."""
    file = project / "lessons" / name
    held = file.read_bytes()
    try:
        file.write_text("<script>alert(1)</script>", "utf-8")
        done = plumline(project, "check")
    finally:
        file.write_bytes(held)
    assert done.exit_code == 1
    assert f"lessons/{name}:1:1: `{file.name}` is no " in done.stderr
    assert "whatever its name says" in done.stderr


def test_what_stays_at_home_is_told_once_for_a_folder(project: Path) -> None:
    done = plumline(project, "check")
    assert done.exit_code == 0, done.output
    heads = [line for line in done.stderr.splitlines() if line.startswith("lessons")]
    told = [head for head in heads if "not published" in head]
    assert told == [
        "lessons:1:1: `CNAME`, `Thumbs.db`, `linked.md` and 1 more stay here and are not published",
        "lessons/drafts:1:1: the folder `drafts` holds no lesson.yaml and is not published",
        "lessons/small:1:1: `class-list.csv`, `consent.docx`, `evil.html` and 11 more stay here and are not published",
        "lessons/small/photos:1:1: the folder `photos` stays here and is not published",
    ]


def test_a_page_cannot_lead_to_what_could_run(project: Path) -> None:
    page = project / "lessons/risky.md"
    try:
        page.write_text("# R\n\n[x](small/evil.html)\n", "utf-8")
        done = plumline(project, "check")
    finally:
        page.unlink()
    assert done.exit_code == 1
    assert "lessons/risky.md:3:5: the link `small/evil.html` leads to no page" in done.stderr
    assert done.stderr.count("it is there and stays at home") == 1


def test_a_page_shows_no_drawing_that_could_run(project: Path) -> None:
    page, drawing = project / "lessons/risky.md", project / "lessons/evil.svg"
    try:
        page.write_text("# R\n\n![y](evil.svg)\n", "utf-8")
        drawing.write_text('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>', "utf-8")
        done = plumline(project, "check")
    finally:
        page.unlink()
        drawing.unlink()
    assert done.exit_code == 1
    assert (
        "lessons/evil.svg:1:1: `evil.svg` holds `script`, which is more than a drawing"
        in done.stderr
    )


@pytest.mark.parametrize("where", ["lessons/album", "lessons/small/album", "lessons/loop"])
def test_a_linked_folder_is_refused(tmp_path: Path, where: str) -> None:
    project = copy_project(tmp_path / "site", lessons=False)
    write_lesson(project, "small", small_lesson())
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / "private.png").write_text("Ana Lopez, 9")
    (project / where).symlink_to(project / "lessons" if "loop" in where else outside)
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1
        assert f"{where}:1:1: the folder `{Path(where).name}` is a link" in done.stderr
    assert not (project / "site").exists()


def test_a_linked_lesson_is_refused(tmp_path: Path) -> None:
    project = copy_project(tmp_path / "site", lessons=False)
    write_lesson(project, "small", small_lesson())
    outside = tmp_path / "outside"
    shutil.move(project / "lessons/small", outside)
    (project / "lessons/small").symlink_to(outside)
    for word in (("check",), ("rehearse", "small"), ("recorded", "small")):
        done = plumline(project, *word)
        assert done.exit_code == 1
        assert "lessons/small/lesson.yaml:1:1: this is a link to another place" in done.stderr
    assert [file.name for file in outside.iterdir()] == ["lesson.yaml"]


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("spring/lesson.yml", "lessons/spring/lesson.yml:1:1: this folder is no lesson"),
        ("spring/Lesson.yaml", "lessons/spring/Lesson.yaml:1:1: this folder is no lesson"),
        ("spring/lesson.yaml.txt", "lessons/spring/lesson.yaml.txt:1:1: this folder is no lesson"),
        ("spring/soup/lesson.yaml", "lessons/spring/soup/lesson.yaml:1:1: the lesson in `spring/soup`"),
    ],
)  # fmt: skip
def test_a_lesson_that_is_not_seen_is_told(tmp_path: Path, name: str, told: str) -> None:
    project = copy_project(tmp_path, lessons=False)
    file = project / "lessons" / name
    file.parent.mkdir(parents=True)
    file.write_text("title: A\n", "utf-8")
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1
        assert told in done.stderr
