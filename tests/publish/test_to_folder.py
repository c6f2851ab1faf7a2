"""A site published into a folder of her own stands there whole, or the one before does."""

from __future__ import annotations

import errno
import os
import shutil
from pathlib import Path

import pytest

from generator.publish import to_folder
from generator.publish.ours import MARK
from generator.publish.refused import NotPublishedError
from generator.publish.to_folder import place_of, put_into
from generator.read.published import read_published
from tests.publish.own_site import OwnSite
from tests.site_project import hashes

PAGES = ("404.html", "_headers", "assets/a.css", "index.html", "sw.js")


def a_site(folder: Path, *also: str) -> Path:
    """A folder with what is at the top of every built site, each file holding the folder's name."""
    for name in (*PAGES, *also):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(folder.name, "utf-8")
    return folder


def without_mark(folder: Path) -> dict[str, str]:
    return {name: held for name, held in hashes(folder).items() if name != MARK}


def test_the_whole_site_goes_there_with_its_record_and_no_repository(site: OwnSite) -> None:
    www = site.root.parent / "www"
    shutil.rmtree(site.root / ".git")
    says = (site.root / "site_data/site.yaml").read_text("utf-8")
    site.write("site_data/site.yaml", f"{says}publish: {{folder: ../www}}\n")
    done = site.publish("--note", "For the shelf")
    assert done.exit_code == 0, done.output
    assert str(www) in done.output
    assert without_mark(www) == hashes(site.root / "site")
    (one,) = read_published(site.root).publications
    assert (one.to, one.note) == ("folder", "For the shelf")
    site.change()
    assert site.publish().exit_code == 0
    assert "A lesson of soup" in (www / "soup/index.html").read_text("utf-8")
    undone = site.publish("--undo")
    assert undone.exit_code == 1
    assert "folder or a server" in undone.output


def test_a_second_site_takes_the_first_ones_place_and_leaves_the_hosts_own_files(
    tmp_path: Path,
) -> None:
    one, two = a_site(tmp_path / "one", "old.html"), a_site(tmp_path / "two")
    www = tmp_path / "www"
    put_into(one, www)
    (www / ".well-known").mkdir()
    (www / ".well-known/host").write_text("mine", "utf-8")
    (www / ".git").mkdir()
    put_into(two, www)
    assert not (www / "old.html").exists()
    assert (www / "index.html").read_text("utf-8") == "two"
    assert (www / ".well-known/host").read_text("utf-8") == "mine"
    assert (www / ".git").is_dir()
    assert sorted(one.name for one in tmp_path.iterdir()) == ["one", "two", "www"]


def test_a_folder_with_anything_else_in_it_is_refused_and_left(tmp_path: Path) -> None:
    www = a_site(tmp_path / "www")
    put_into(a_site(tmp_path / "one"), www)
    (www / "family.jpg").write_text("x", "utf-8")
    with pytest.raises(NotPublishedError, match=r"family\.jpg"):
        put_into(tmp_path / "one", www)
    assert (www / "family.jpg").is_file()
    other = tmp_path / "letters"
    other.mkdir()
    (other / "letter.txt").write_text("x", "utf-8")
    with pytest.raises(NotPublishedError, match=r"letter\.txt"):
        put_into(tmp_path / "one", other)


@pytest.mark.parametrize("at", range(4))
def test_cut_off_anywhere_the_old_site_stands_and_the_next_run_clears_up(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, at: int
) -> None:
    """Every rename there is may be the last thing that is done, also where two names cannot change places at once."""
    one, two = a_site(tmp_path / "one"), a_site(tmp_path / "two")
    www = tmp_path / "www"
    put_into(one, www)
    (www / ".git").mkdir()
    monkeypatch.setattr(to_folder, "exchange", lambda *_: False)
    left = at
    rename = Path.rename

    def cut(self: Path, target: Path) -> Path:
        nonlocal left
        if not left:
            raise KeyboardInterrupt
        left -= 1
        return rename(self, target)

    with monkeypatch.context() as patch:
        patch.setattr(Path, "rename", cut)
        patch.setattr(to_folder, "remove", lambda _: None)
        if at < 3:  # as many as there are
            with pytest.raises(KeyboardInterrupt):
                put_into(two, www)
        else:
            put_into(two, www)
    put_into(two, www)
    assert (www / "index.html").read_text("utf-8") == "two"
    assert (www / ".git").is_dir()
    assert sorted(one.name for one in tmp_path.iterdir()) == ["one", "two", "www"]


def test_cut_off_between_two_renames_the_old_site_is_given_back(tmp_path: Path) -> None:
    www = a_site(tmp_path / "www")
    www.rename(tmp_path / ".www.plumline-old")
    a_site(tmp_path / ".www.plumline-new")
    to_folder.clear_up(www)
    assert (www / "index.html").read_text("utf-8") == "www"
    assert sorted(one.name for one in tmp_path.iterdir()) == ["www"]


def test_no_room_is_told_and_the_old_site_stands(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    one, two = a_site(tmp_path / "one"), a_site(tmp_path / "two")
    www = tmp_path / "www"
    put_into(one, www)

    def full(*_: object, **__: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    with monkeypatch.context() as patch:
        patch.setattr(shutil, "copytree", full)
        with pytest.raises(NotPublishedError, match="no room"):
            put_into(two, www)
    assert (www / "index.html").read_text("utf-8") == "one"
    assert sorted(one.name for one in tmp_path.iterdir()) == ["one", "two", "www"]


@pytest.mark.parametrize("said", [".", "site", "lessons/www", "..", "../.."])
def test_a_folder_in_the_site_or_around_it_is_refused(tmp_path: Path, said: str) -> None:
    root = tmp_path / "above/site"
    root.mkdir(parents=True)
    with pytest.raises(NotPublishedError, match=r"\.\./www"):
        place_of(root, said)


def test_a_folder_whose_disk_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(NotPublishedError, match="see whether the disk is there"):
        put_into(a_site(tmp_path / "one"), tmp_path / "gone/www")


@pytest.mark.parametrize(
    ("written", "told"),
    [
        ("{folder: ../a, server: 'me@host:/b'}", "names no place, or two"),
        ("{}", "names no place, or two"),
        ("{server: 'host:/a b;rm'}", "user@host:/path"),
        ("{server: nowhere}", "user@host:/path"),
        ("{foldr: ../www}", "did you mean `folder`?"),
        ("../www", "folder"),
    ],
)
def test_a_place_that_cannot_be_is_told_with_its_line(
    site: OwnSite, written: str, told: str
) -> None:
    says = (site.root / "site_data/site.yaml").read_text("utf-8")
    site.write("site_data/site.yaml", f"{says}publish: {written}\n")
    done = site.publish()
    assert done.exit_code == 1
    assert told in done.output
    assert f"site_data/site.yaml:{says.count(chr(10)) + 1}" in done.output
