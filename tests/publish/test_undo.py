"""`plumline publish --undo` puts back what stood before the last publication, by a new commit, and says so first."""

from __future__ import annotations

from pathlib import Path

from generator.read.published import read_published
from tests.publish.own_site import OwnSite
from tests.site_project import small_lesson, write_lesson

LESSON = "lessons/soup/lesson.yaml"


def two_publications(site: OwnSite) -> tuple[str, str]:
    """The lesson as it was at the first and as it was at the second."""
    file = site.root / LESSON
    told = []
    for old, new in (("A small lesson", "A lesson of soup"), ("of soup", "of stew")):
        site.change(old, new)
        assert site.publish().exit_code == 0
        told.append(file.read_text("utf-8"))
    return told[0], told[1]


def test_the_state_before_comes_back_by_a_new_commit_and_so_does_the_later_one(
    site: OwnSite,
) -> None:
    first, second = two_publications(site)
    done = site.publish("--undo", "--note", "Too early.")
    assert done.exit_code == 0, done.output
    assert LESSON in done.output.partition("Take the last publication back?")[0]
    assert (site.root / LESSON).read_text("utf-8") == first
    assert site.git("status", "--porcelain") == ""
    assert site.commits()[0].startswith("Take back the publication of ")
    assert site.commits()[1:] == ["Publish the site", "Publish the site", "Begin the site"]
    record = read_published(site.root)
    assert [one.undoes for one in record.publications] == ["", "", record.publications[1].at]
    state = record.last("soup", "en")
    assert state
    assert state.title == "A lesson of soup"
    again = site.publish("--undo")
    assert "itself an undo" in again.output
    assert (site.root / LESSON).read_text("utf-8") == second


def test_no_leaves_all_as_it_is(site: OwnSite) -> None:
    _, second = two_publications(site)
    done = site.publish("--undo", answer="n\n")
    assert done.exit_code == 1
    assert (site.root / LESSON).read_text("utf-8") == second
    assert len(site.commits()) == 3


def test_nothing_and_one_publication_cannot_be_taken_back(site: OwnSite) -> None:
    assert "nothing was published" in site.publish("--undo").output
    site.change()
    site.publish()
    done = site.publish("--undo")
    assert done.exit_code == 1
    assert "first publication" in done.output


def test_work_that_an_undo_would_take_along_stops_it(site: OwnSite) -> None:
    two_publications(site)
    site.change("of stew", "of bread")
    done = site.publish("--undo")
    assert done.exit_code == 1
    assert "not committed" in done.output
    site.git("commit", "-qam", "Bread")
    done = site.publish("--undo")
    assert done.exit_code == 1
    assert "1 commit came after" in done.output
    assert "of bread" in (site.root / LESSON).read_text("utf-8")


def test_a_state_that_cannot_be_built_any_more_is_not_put_back(site: OwnSite) -> None:
    """A food was renamed by a commit of the library since, which belongs to neither publication's lesson."""
    first, second = two_publications(site)
    site.git("rm", "-q", "--cached", "lessons/soup/lesson.yaml")
    file = site.root / LESSON
    file.write_text(first.replace("apple-raw", "aple-raw"), "utf-8")
    site.git("add", LESSON)
    site.git("commit", "-q", "-m", "Break it\n\nPlumline-Publication: 2026-01-01T00:00:00Z")
    file.write_text(second, "utf-8")
    assert site.publish().exit_code == 0
    done = site.publish("--undo")
    assert done.exit_code == 1, done.output
    assert "did you mean `apple-raw`?" in done.output
    assert file.read_text("utf-8") == second
    assert site.git("status", "--porcelain") == ""


def test_a_file_that_lies_where_one_comes_back_is_not_overwritten(site: OwnSite) -> None:
    picture = site.write("theme/note.txt", "Theirs\n")
    site.publish()
    site.git("rm", "-q", "theme/note.txt")
    site.publish()
    site.write(".git/info/exclude", "note.txt\n")
    picture.write_text("Mine\n", "utf-8")
    done = site.publish("--undo")
    assert done.exit_code == 1, done.output
    assert "theme/note.txt" in done.output
    assert picture.read_text("utf-8") == "Mine\n"
    assert site.git("status", "--porcelain") == ""


def test_a_lesson_that_was_added_goes_again_and_comes_back(site: OwnSite) -> None:
    site.change()
    assert site.publish().exit_code == 0
    write_lesson(site.root, "bread", small_lesson(title="Bread"))
    assert site.publish().exit_code == 0
    done = site.publish("--undo")
    assert done.exit_code == 0, done.output
    assert not (site.root / "lessons/bread/lesson.yaml").exists()
    gone = read_published(site.root).last("bread", "en")
    assert gone
    assert gone.gone
    again = site.publish("--undo")
    assert again.exit_code == 0, again.output
    back = read_published(site.root).last("bread", "en")
    assert back
    assert back.title == "Bread"


def test_a_program_of_before_goes_back_with_what_the_record_says(site: OwnSite) -> None:
    """Today's program may make nothing of the files of before, and it is not the one that will build them."""
    site.write("generator/requirements.lock", "plumline==0.2.0\n")
    site.change()
    assert site.publish().exit_code == 0
    site.write("generator/requirements.lock", "plumline==0.3.0\n")
    site.change("of soup", "of stew")
    assert site.publish().exit_code == 0
    done = site.publish("--undo")
    assert done.exit_code == 0, done.output
    assert "The program goes back to" in done.output
    assert "0.2.0" in site.there("show", "main:generator/requirements.lock")
    state = read_published(site.root).last("soup", "en")
    assert state
    assert state.title == "A lesson of soup"


def test_what_others_pushed_meanwhile_stops_it(site: OwnSite, tmp_path: Path) -> None:
    _, second = two_publications(site)
    site.colleague("lessons/guide/hello.md", "# Hello\n", tmp_path / "ana")
    done = site.publish("--undo")
    assert done.exit_code == 1
    assert "publish first" in done.output
    assert (site.root / LESSON).read_text("utf-8") == second


def test_an_undo_that_does_not_arrive_is_pushed_on_by_the_next_publication(site: OwnSite) -> None:
    first, _ = two_publications(site)
    hook = site.remote / "hooks/pre-receive"
    hook.write_text("#!/bin/sh\nexit 1\n", "utf-8")
    hook.chmod(0o755)
    done = site.publish("--undo")
    assert done.exit_code == 1
    assert "your commit is kept here" in done.output
    assert (site.root / LESSON).read_text("utf-8") == first
    hook.unlink()
    assert site.publish().exit_code == 0
    assert site.commits()[0].startswith("Take back")
