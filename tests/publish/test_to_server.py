"""A site published to a server by rsync over ssh stands there whole, or the one before does.

The server is a folder of this machine: a stand-in for ssh runs there what it is given.
"""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from generator.publish.ours import MARK
from generator.publish.refused import NotPublishedError
from generator.publish.to_server import Server, put_on, refuse_unready_server, server_of
from tests.publish.own_site import OwnSite
from tests.publish.test_to_folder import a_site, without_mark
from tests.site_project import hashes

needs_rsync = pytest.mark.skipif(not shutil.which("rsync"), reason="rsync is not on this machine")


@pytest.fixture
def server(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Server:
    stand_in(tmp_path, monkeypatch)
    return Server("kitchen", str(tmp_path / "www"))


def stand_in(folder: Path, monkeypatch: pytest.MonkeyPatch, *before: str) -> None:
    """Runs what ssh would run on the server, after these lines."""
    file = folder / "ssh"
    lines = ("#!/bin/sh", 'test "$1" != -l || shift 2', "shift", *before, 'exec sh -c "$*"', "")
    file.write_text("\n".join(lines), "utf-8")
    file.chmod(0o755)
    monkeypatch.setenv("RSYNC_RSH", str(file))


@needs_rsync
def test_the_whole_site_goes_there_and_the_next_takes_its_place(
    tmp_path: Path, server: Server
) -> None:
    www = tmp_path / "www"
    one, two = a_site(tmp_path / "one", "old.html"), a_site(tmp_path / "two", "es/new.html")
    refuse_unready_server(server)
    put_on(one, server)
    assert without_mark(www) == hashes(one)
    (www / ".htaccess").write_text("mine", "utf-8")
    refuse_unready_server(server)
    put_on(two, server)
    assert without_mark(www) == hashes(two) | {".htaccess": hashes(www)[".htaccess"]}
    assert sorted(file.name for file in tmp_path.glob("www*")) == ["www"]


@needs_rsync
def test_publish_goes_to_the_server_that_site_yaml_names(
    site: OwnSite, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    stand_in(tmp_path, monkeypatch)
    says = (site.root / "site_data/site.yaml").read_text("utf-8")
    site.write("site_data/site.yaml", f"{says}publish: {{server: 'mara@kitchen:{tmp_path}/www'}}\n")
    done = site.publish()
    assert done.exit_code == 0, done.output
    assert without_mark(tmp_path / "www") == hashes(site.root / "site")


@needs_rsync
@pytest.mark.parametrize("cut", ["rsync", "sh -s"])
def test_cut_off_midway_the_old_site_stands_and_the_next_run_goes_on(
    tmp_path: Path, server: Server, monkeypatch: pytest.MonkeyPatch, cut: str
) -> None:
    """The line goes before anything arrives, or when all has arrived and the two are to change places."""
    www = tmp_path / "www"
    one, two = a_site(tmp_path / "one"), a_site(tmp_path / "two")
    put_on(one, server)
    stand_in(tmp_path, monkeypatch, f'case "$*" in "{cut}"*) exit 255;; esac')
    with pytest.raises(NotPublishedError, match="the site that stands there is as it was"):
        put_on(two, server)
    assert without_mark(www) == hashes(one)
    stand_in(tmp_path, monkeypatch)
    refuse_unready_server(server)
    put_on(two, server)
    assert without_mark(www) == hashes(two)
    assert sorted(file.name for file in tmp_path.glob("www*")) == ["www"]


@needs_rsync
def test_cut_off_between_two_renames_the_old_site_is_given_back(
    tmp_path: Path, server: Server
) -> None:
    put_on(a_site(tmp_path / "one"), server)
    (tmp_path / "www").rename(tmp_path / "www.plumline-old")
    refuse_unready_server(server)
    assert (tmp_path / "www/index.html").read_text("utf-8") == "one"
    assert not (tmp_path / "www.plumline-old").exists()


@needs_rsync
def test_half_an_upload_never_takes_the_place(tmp_path: Path, server: Server) -> None:
    """What lies beside a site has no mark before all of it has arrived."""
    put_on(a_site(tmp_path / "one"), server)
    half = tmp_path / "www.plumline-new"
    half.mkdir()
    (half / "index.html").write_text("half", "utf-8")
    refuse_unready_server(server)
    assert (tmp_path / "www/index.html").read_text("utf-8") == "one"
    assert not (half / MARK).exists()


@needs_rsync
def test_a_folder_with_anything_else_in_it_is_refused_and_left(
    tmp_path: Path, server: Server
) -> None:
    www = tmp_path / "www"
    www.mkdir()
    (www / "shop.php").write_text("x", "utf-8")
    with pytest.raises(NotPublishedError, match=r"shop\.php"):
        refuse_unready_server(server)
    (www / "shop.php").unlink()
    put_on(a_site(tmp_path / "one"), server)
    (www / "shop.php").write_text("x", "utf-8")
    with pytest.raises(NotPublishedError, match=r"shop\.php"):
        refuse_unready_server(server)
    assert (www / "shop.php").is_file()


@needs_rsync
@pytest.mark.usefixtures("server")
def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(NotPublishedError, match="make it"):
        refuse_unready_server(Server("kitchen", str(tmp_path / "gone/www")))


@needs_rsync
@pytest.mark.parametrize(
    ("lines", "told"),
    [
        (("echo 'Permission denied (publickey).' >&2", "exit 255"), "ssh-copy-id kitchen"),
        (("echo 'Host key verification failed.' >&2", "exit 255"), "compare the fingerprint"),
        (("echo 'rsync: write failed: No space left on device (28)' >&2", "exit 11"), "make room"),
        (("echo 'sh: rsync: command not found' >&2", "exit 127"), "has no rsync"),
        (("echo 'ssh: connect: Connection timed out' >&2", "exit 255"), "once the line is back"),
    ],
)
def test_what_a_server_says_is_explained(
    tmp_path: Path,
    server: Server,
    monkeypatch: pytest.MonkeyPatch,
    lines: tuple[str, ...],
    told: str,
) -> None:
    stand_in(tmp_path, monkeypatch, *lines)
    with pytest.raises(NotPublishedError, match=told):
        put_on(a_site(tmp_path / "one"), server)


def test_without_rsync_it_is_said_how_to_get_it(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", "")
    with pytest.raises(NotPublishedError, match="apt install rsync"):
        refuse_unready_server(server)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("me@host.example.org:/srv/www/", Server("me@host.example.org", "/srv/www")),
        ("host:www", Server("host", "www")),
        ("host:~/www", Server("host", "~/www")),
    ],
)
def test_a_server_is_read_as_ssh_reads_it(said: str, meant: Server) -> None:
    assert server_of(said) == meant
