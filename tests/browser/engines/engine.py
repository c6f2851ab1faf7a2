"""What a flow asks of any browser: open a page, run a script in it, tap, press a key."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

ELEMENT = "element-6066-11e4-a52e-4f735466cecf"
"""Key under which an element is handed over (W3C WebDriver, 11)."""
PATIENCE = 60_000
"""Milliseconds that a script may take."""


class Wire(Protocol):
    """How commands of W3C WebDriver reach a browser."""

    def navigate(self, address: str) -> None:
        """Open a page and wait until it has loaded."""

    def script(self, text: str, *arguments: object) -> object:
        """Run the body of an asynchronous function; its last argument is called with what it gives."""

    def click(self, element: str) -> None:
        """Tap an element as a hand would."""

    def find(self, selector: str) -> str:
        """The first element."""

    def quit(self) -> None:
        """End the browser."""


@dataclass(frozen=True, slots=True)
class Engine:
    """One running browser."""

    name: str
    wire: Wire

    def open(self, address: str) -> None:
        """Open a page and wait until all of it is there."""
        self.wire.navigate(address)
        self.until(
            "document.readyState === 'complete' && !document.querySelector(':not(:defined)')"
        )

    def ask(self, expression: str) -> object:
        """What an expression gives on the page."""
        return self.wire.script(f"arguments[arguments.length - 1]((() => ({expression}))())")

    def until(self, condition: str) -> None:
        """Wait for an expression; ``video`` is the page's film.

        Raises:
            AssertionError: it did not come true.
        """
        said = self.wire.script(f"""
            const done = arguments[arguments.length - 1];
            let turn = 0;
            const look = () => {{
              const video = document.querySelector("video");
              if ({condition}) done("");
              else if (turn++ > {PATIENCE // 20}) done("in vain at " + video?.currentTime);
              else setTimeout(look, 10);
            }};
            look();""")
        assert said == "", f"{self.name}: waited {said} for {condition}"

    def tap(self, selector: str) -> None:
        """Tap the first element of a selector."""
        self.wire.click(self.wire.find(selector))
