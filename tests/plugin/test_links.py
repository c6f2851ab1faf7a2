"""A dead link of a hand-written page is a sentence with its line, in `check`, `build` and `mkdocs build`."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands as main
from tests.site_project import copy_project, hashes, run_mkdocs, small_lesson, write_lesson


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site with one lesson and two pages by hand."""
    folder = copy_project(tmp_path, lessons=False)
    write_lesson(folder, "small", small_lesson())
    (folder / "lessons/care.md").write_text("# Care\n\n## Slowly\n", "utf-8")
    return folder


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(main, [*words, "--root", str(root)], catch_exceptions=False)


def write(project: Path, text: str) -> None:
    (project / "lessons/about.md").write_text(text, "utf-8")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("# A\n\n[x](nowhere.md)\n", "3:5: the link `nowhere.md` leads to no page"),
        ("# A\n\nSee [x](caer.md).\n", "3:9: the link `caer.md` leads to no page"),
        ("# A\n\n![A pot](pot.png)\n", "3:10: the picture `pot.png` leads to no page"),
        ("# A\n\n[x](small/answer.html)\n", "3:5: the link `small/answer.html` leads"),
        ("# A\n\n[x](care.md#fast)\n", "3:5: the link `care.md#fast` leads to a place"),
        ("# A\n\n[x](#fast)\n", "3:5: the link `#fast` leads to a place on its page"),
        ("# A\n\n[x](small/index.html#dinner)\n", "3:5: the link `small/index.html#dinner` leads"),
        ("# A\n\n[x](small)\n", "3:5: the link `small` leads to no page"),
        ("# A\n\n<a href='gone.html'>x</a>\n", "3:10: the link `gone.html` leads to no page"),
        ("[x](a.md)\n\n[y](a.md)\n", "3:5: the link `a.md` leads"),
        ("[x]: b.md\n\nsee [x]\n", "1:6: the link `b.md` leads"),
        ("# A\n\n[x](//[)\n", "3:5: an address on this page cannot be read"),
    ],
)  # fmt: skip
def test_a_dead_link_is_told_with_its_line(project: Path, text: str, told: str) -> None:
    write(project, text)
    done = plumline(project, "check")
    assert done.exit_code == 1
    assert f"lessons/about.md:{told}" in done.stderr


def test_a_dead_link_stops_a_build_and_leaves_the_site(project: Path) -> None:
    plumline(project, "build")
    before = hashes(project / "site")
    write(project, "# A\n\n[x](nowhere.md)\n")
    done = plumline(project, "build")
    assert done.exit_code == 1
    assert "lessons/about.md:3:5: the link `nowhere.md` leads to no page" in done.stderr
    assert "strict mode" not in done.output
    assert hashes(project / "site") == before


@pytest.mark.parametrize("options", [(), ("--strict",)])
def test_mkdocs_tells_the_same_and_leaves_the_site(project: Path, options: tuple[str]) -> None:
    plumline(project, "build")
    before = hashes(project / "site")
    write(project, "# A\n\n[x](nowhere.md)\n")
    done = run_mkdocs(project, *options)
    assert done.exit_code == 1
    assert "lessons/about.md:3:5: the link `nowhere.md` leads to no page" in done.stderr
    assert "Traceback" not in done.stderr
    assert hashes(project / "site") == before


def test_links_that_lead_somewhere_are_left_alone(project: Path) -> None:
    write(
        project,
        "# A\n\n[a](care.md#slowly) [b](small/index.html#lunch) [c](small/notes.html) <x@y.org> "
        "[d](https://example.org/) [e](mailto:x@y.org) [f](#a)\n",
    )
    done = plumline(project, "check")
    assert (done.exit_code, done.stderr) == (0, "")
    assert plumline(project, "build").exit_code == 0


def test_a_near_name_is_proposed(project: Path) -> None:
    write(project, "[x](caer.md)\n")
    assert "did you mean `care.md`?" in plumline(project, "check").stderr


def test_validation_says_how_much_a_link_matters(project: Path) -> None:
    file = project / "mkdocs.yml"
    file.write_text(
        file.read_text("utf-8").replace("links: {", "links: {not_found: info, "), "utf-8"
    )
    write(project, "[x](nowhere.md) [y](#gone)\n")
    done = plumline(project, "check")
    assert done.stderr.count("lessons/about.md") == 2
    assert "1 thing to put right" in done.stderr
    write(project, "[x](nowhere.md)\n")
    assert plumline(project, "check").exit_code == 0
    file.write_text(
        file.read_text("utf-8").replace("not_found: info", "not_found: ignore"), "utf-8"
    )
    assert plumline(project, "check").stderr == ""
    assert plumline(project, "build").exit_code == 0


@pytest.mark.parametrize("text", [b"# A\n\nCaf\xe9\n"])
def test_a_page_that_is_not_utf_8_is_told(project: Path, text: bytes) -> None:
    (project / "lessons/about.md").write_bytes(text)
    for word in ("check", "build"):
        assert (
            "lessons/about.md:3:4: this file is not saved as UTF-8"
            in plumline(project, word).stderr
        )
