"""Where a preview listens: the wanted port or the next free one, at an address of this machine."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest

from generator.plugin import server
from generator.plugin.server import PreviewServer, address_in_network, bound_to


def test_a_taken_port_gives_way_to_the_next() -> None:
    with bound_to("127.0.0.1", 0) as one:
        taken = one.getsockname()[1]
        with bound_to("127.0.0.1", taken) as other:
            assert other.getsockname()[1] != taken


def test_where_all_near_ports_are_taken_the_system_chooses(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(server, "_NEXT", 0)
    with bound_to("127.0.0.1", 0) as one, bound_to("127.0.0.1", one.getsockname()[1]) as other:
        assert other.getsockname()[1] > 0


def test_the_last_port_there_is_has_none_after_it() -> None:
    with bound_to("127.0.0.1", 65_535) as one, bound_to("127.0.0.1", 65_535) as other:
        assert {one.getsockname()[1], other.getsockname()[1]} > {65_535}


@pytest.mark.parametrize("host", ["203.0.113.7", "no-such-host.invalid"])
def test_an_address_of_another_machine_is_refused(host: str) -> None:
    """203.0.113.0/24 is nobody's (RFC 5737), and so is every name in .invalid (RFC 2606); both from memory."""
    with pytest.raises(OSError, match=r".+"):
        bound_to(host, 0)


def test_without_a_network_there_is_no_address_in_it(monkeypatch: pytest.MonkeyPatch) -> None:
    class Alone(socket.socket):
        def connect(self, *_: object) -> None:
            raise OSError(101, "Network is unreachable")

    monkeypatch.setattr(server.socket, "socket", Alone)
    assert address_in_network() == ""


def test_the_address_in_a_network_is_never_this_machine_alone(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    class Loop(socket.socket):
        def connect(self, *_: object) -> None:
            super().connect(("127.0.0.1", 9))

    monkeypatch.setattr(server.socket, "socket", Loop)
    assert address_in_network() == ""


@pytest.mark.parametrize(
    ("own", "shown"), [("<h1>Not here</h1>", "Not here"), ("", "404 Not Found")]
)
def test_what_is_not_there_is_answered_by_the_sites_own_page(
    tmp_path: Path, own: str, shown: str
) -> None:
    if own:
        (tmp_path / "404.html").write_text(own, "utf-8")
    told: list[str] = []
    with bound_to("127.0.0.1", 0) as bound:
        preview = PreviewServer(lambda: None, bound, tmp_path, "/")
        asked = {"PATH_INFO": "/gone/page.html", "REQUEST_METHOD": "GET"}
        answer = preview.serve_request(asked, lambda status, _: told.append(status))
        assert shown in b"".join(answer).decode()
    assert told == ["404 Not Found"]
