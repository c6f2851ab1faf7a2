"""Firefox by Marionette, which every Firefox speaks: JSON with its length before it, over a socket."""

from __future__ import annotations

import json
import socket
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from time import sleep

from tests.browser.engines.engine import ELEMENT, PATIENCE, Engine

_PREFERENCES = {
    "app.update.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "full-screen-api.warning.timeout": 0,
    "media.autoplay.default": 0,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "toolkit.telemetry.reportingpolicy.firstRun": False,
}


class _Marionette:
    """Commands of W3C WebDriver under Marionette's names."""

    def __init__(self, port: int) -> None:
        self._line = _connected(port)
        self._line.settimeout(PATIENCE / 1_000 + 30)
        self._heard()  # it greets
        self._told("WebDriver:NewSession", {"strictFileInteractability": False})
        self._told("WebDriver:SetTimeouts", {"script": PATIENCE, "pageLoad": PATIENCE})
        self._told("WebDriver:SetWindowRect", {"width": 900, "height": 900})

    def navigate(self, address: str) -> None:
        self._told("WebDriver:Navigate", {"url": address})

    def script(self, text: str, *arguments: object) -> object:
        return self._told("WebDriver:ExecuteAsyncScript", {"script": text, "args": list(arguments), "sandbox": None})  # fmt: skip

    def find(self, selector: str) -> str:
        found = self._told("WebDriver:FindElement", {"using": "css selector", "value": selector})
        assert isinstance(found, dict)
        return str(found[ELEMENT])

    def click(self, element: str) -> None:
        self._told("WebDriver:ElementClick", {"id": element})

    def quit(self) -> None:
        self._told("Marionette:Quit", {"flags": ["eForceQuit"]})
        self._line.close()

    def _told(self, command: str, values: dict[str, object]) -> object:
        text = json.dumps([0, 1, command, values]).encode()
        self._line.sendall(b"%d:%s" % (len(text), text))
        _, _, error, result = self._heard()
        assert not error, f"{command}: {error}"
        return (
            result.get("value") if isinstance(result, dict) and set(result) == {"value"} else result
        )

    def _heard(self) -> list[object]:
        size = b""
        while (sign := self._line.recv(1)) != b":":
            assert sign, "Firefox has hung up"
            size += sign
        text = b""
        while len(text) < int(size):
            text += self._line.recv(int(size) - len(text))
        heard = json.loads(text)
        return heard if isinstance(heard, list) else [heard]


def _connected(port: int) -> socket.socket:
    for _ in range(600):
        try:
            return socket.create_connection(("127.0.0.1", port))
        except ConnectionRefusedError:
            sleep(0.1)
    raise AssertionError("Firefox does not answer")


@contextmanager
def firefox(program: str, folder: Path, port: int) -> Iterator[Engine]:
    """A Firefox without a window.

    Args:
        program: to start.
        folder: empty, for its profile.
        port: free, for Marionette.
    """
    wanted = _PREFERENCES | {"marionette.port": port}
    lines = [
        f"user_pref({json.dumps(name)}, {json.dumps(value)});" for name, value in wanted.items()
    ]
    (folder / "user.js").write_text("\n".join(lines), encoding="utf-8")
    command = [program, "--headless", "--no-remote", "--marionette", "--profile", str(folder)]
    with subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) as running:
        try:
            wire = _Marionette(port)
            yield Engine("Firefox", wire)
            wire.quit()
        finally:
            running.kill()
