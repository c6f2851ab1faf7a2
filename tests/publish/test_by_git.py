"""`plumline publish` sends out what the site is made of, once, with a record, and says where it appears."""

from __future__ import annotations

from generator.read.published import read_published
from tests.publish.own_site import OwnSite, git, name_self


def test_a_change_goes_out_with_its_record_and_a_second_time_nothing_does(site: OwnSite) -> None:
    site.change()
    done = site.publish("--note", "The title says soup now.")
    assert done.exit_code == 0, done.output
    assert "lessons/soup/lesson.yaml" in done.output
    assert "https://kitchen.example.org/" in done.output
    assert site.commits() == ["Publish the site", "Begin the site"]
    assert site.git("status", "--porcelain") == ""
    assert "The title says soup now." in site.there("log", "-1", "--format=%b", "main")
    (one,) = read_published(site.root).publications
    assert (one.to, one.note, one.lessons) == ("git", "The title says soup now.", ("soup",))
    state = read_published(site.root).last("soup", "en")
    assert state
    assert state.title == "A lesson of soup"
    again = site.publish()
    assert again.exit_code == 0, again.output
    assert "Nothing to publish" in again.output
    assert len(site.commits()) == 2


def test_no_is_no(site: OwnSite) -> None:
    site.change()
    before = site.git("status", "--porcelain")
    done = site.publish(answer="n\n")
    assert done.exit_code == 1
    assert "nothing of yours was committed" in done.output
    assert site.git("status", "--porcelain") == before
    assert site.commits() == ["Begin the site"]
    assert not (site.root / "site_data/published").exists()


def test_nobody_there_to_answer_is_said_and_a_script_says_yes(site: OwnSite) -> None:
    site.change()
    done = site.publish(answer="")
    assert done.exit_code == 1
    assert "--yes" in done.output
    assert site.publish("--yes", answer="").exit_code == 0
    assert site.commits()[0] == "Publish the site"


def test_what_lies_beside_a_lesson_stays_at_home_until_it_is_added(site: OwnSite) -> None:
    site.change()
    site.write("lessons/soup/class-list.csv", "Ana Lopez, 9\n")
    site.write("notes.txt", "Ask Ana's mother.\n")
    site.write("lessons/bread/lesson.yaml", "draft: true\ntitle: Bread\n")
    done = site.publish()
    assert done.exit_code == 0, done.output
    listed = site.there("ls-tree", "-r", "--name-only", "main").splitlines()
    assert "lessons/bread/lesson.yaml" in listed
    assert not {"lessons/soup/class-list.csv", "notes.txt"} & set(listed)
    assert not [one for one in listed if one.startswith(("site/", ".cache/"))]
    assert "lessons/soup/class-list.csv" in done.output.partition("stay on this machine")[2]
    site.git("add", "notes.txt")
    assert site.publish().exit_code == 0
    assert "notes.txt" in site.there("ls-tree", "-r", "--name-only", "main").splitlines()


def test_a_built_site_that_was_once_committed_is_told_and_not_renewed(site: OwnSite) -> None:
    site.write("site/index.html", "Old\n")
    site.git("add", "-f", "site/index.html")
    site.git("commit", "-qm", "Keep the built site")
    site.change()
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert "git rm -r --cached site" in done.output
    assert site.there("show", "main:site/index.html") == "Old"


def test_a_file_git_was_told_to_forget_stays_forgotten(site: OwnSite) -> None:
    site.git("rm", "-q", "--cached", "lessons/soup/lesson.yaml")
    done = site.publish()
    assert "lessons/soup/lesson.yaml" not in site.there("ls-tree", "-r", "--name-only", "main")
    assert done.exit_code == 0, done.output
    assert (site.root / "lessons/soup/lesson.yaml").is_file()


def test_a_mistake_stops_it_with_its_line_and_changes_nothing(site: OwnSite) -> None:
    site.change("apple-raw", "aple-raw")
    done = site.publish()
    assert done.exit_code == 1
    assert "did you mean `apple-raw`?" in done.output
    assert site.commits() == ["Begin the site"]
    assert site.git("rev-list", "--count", "HEAD") == "1"


def test_a_file_the_site_needs_and_git_leaves_out_is_told(site: OwnSite) -> None:
    site.write(".gitignore", "/site/\n/.cache/\nlesson.es.yaml\n")
    site.write("lessons/soup/lesson.es.yaml", "title: Una lección\n")
    done = site.publish()
    assert done.exit_code == 1
    assert "lessons/soup/lesson.es.yaml" in done.output
    assert ".gitignore" in done.output


def test_without_a_workflow_nothing_will_build_it_and_that_is_said(site: OwnSite) -> None:
    site.git("rm", "-rq", ".github")
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert "Nothing will build it" in done.output
    assert "github/publish.yml" in done.output


def test_a_forge_that_is_known_is_offered_its_workflow(site: OwnSite) -> None:
    site.git("rm", "-rq", ".github")
    site.git("commit", "-qm", "Do without")
    forge = site.root.parent / "gitlab.example.org"
    forge.mkdir()
    site.remote.rename(forge / "remote.git")
    there = OwnSite(site.root, forge / "remote.git")
    site.git("remote", "set-url", "origin", str(there.remote))
    site.write("generator/requirements.lock", "plumline==0.2.0\n")
    done = there.publish(answer="y\ny\n")
    assert done.exit_code == 0, done.output
    assert "Nothing will build it" not in done.output
    written = there.there("show", "main:.gitlab-ci.yml")
    assert "generator/requirements.lock" in written


def test_a_site_in_a_folder_of_a_larger_repository_goes_out_alone(site: OwnSite) -> None:
    above = site.root.parent
    (site.root / ".git").rename(above / ".git")
    (above / ".git/info/exclude").write_text("remote.git\n", "utf-8")
    git(above, "remote", "set-url", "origin", str(site.remote))
    git(above, "add", "-A")
    git(above, "commit", "-qm", "Put the site into a folder")
    (above / "letter.txt").write_text("Dear Ana\n", "utf-8")
    first = (site.root / "lessons/soup/lesson.yaml").read_text("utf-8")
    assert site.publish().exit_code == 0
    site.change()
    done = site.publish()
    assert done.exit_code == 0, done.output
    listed = site.there("ls-tree", "-r", "--name-only", "main").splitlines()
    assert "site/site_data/published/site.jsonl" in listed
    assert "letter.txt" not in listed
    assert "A lesson of soup" in site.there("show", "main:site/lessons/soup/lesson.yaml")
    done = site.publish("--undo")
    assert done.exit_code == 0, done.output
    assert (site.root / "lessons/soup/lesson.yaml").read_text("utf-8") == first
    assert git(above, "status", "--porcelain") == "?? letter.txt"


def test_a_site_begun_before_the_record_keeps_the_lines_of_two_who_publish(site: OwnSite) -> None:
    old = site.root / ".gitattributes"
    old.write_text("* text=auto eol=lf", "utf-8")
    site.git("commit", "-qam", "As it was before")
    assert site.publish().exit_code == 0
    held = old.read_text("utf-8")
    assert held.startswith("* text=auto eol=lf\n")
    assert "merge=union" in held
    assert site.git("status", "--porcelain") == ""
    site.change()
    assert site.publish().exit_code == 0
    assert old.read_text("utf-8") == held


def test_commits_of_her_own_go_along_and_are_recorded(site: OwnSite) -> None:
    site.change()
    site.git("commit", "-qam", "Call it soup")
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert site.commits() == ["Publish the site", "Call it soup", "Begin the site"]
    assert len(read_published(site.root).publications) == 1


def test_the_first_push_of_a_branch_binds_it(site: OwnSite) -> None:
    site.git("config", "--unset", "branch.main.merge")
    site.git("config", "--unset", "branch.main.remote")
    site.change()
    assert site.publish().exit_code == 0
    assert site.git("rev-parse", "--abbrev-ref", "@{upstream}") == "origin/main"


def test_a_repository_without_a_commit_goes_to_an_empty_remote(site: OwnSite) -> None:
    (site.root / ".git").rename(site.root.parent / "old")
    (site.remote).rename(site.root.parent / "old.git")
    git(site.root.parent, "init", "-q", "--bare", "--initial-branch=main", str(site.remote))
    site.git("init", "-q", "--initial-branch=main")
    name_self(site.root)
    site.git("remote", "add", "origin", str(site.remote))
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert site.commits() == ["Publish the site"]
    assert "site_data/site.yaml" in site.there("ls-tree", "-r", "--name-only", "main")
