"""The command ``plumline``: nothing is loaded to say that nothing has changed, and all else when it is asked for."""

from __future__ import annotations

import sys
from io import TextIOWrapper

from generator.write.fresh import is_fresh

ANEW = "Set the program up anew: delete the folder .venv and write the same once more."
NOTHING_CHANGED = "Nothing has changed since site/ was built.\n"


def main() -> None:
    """Carry out what was typed."""
    match sys.argv[1:]:
        case ["build"] if is_fresh("."):
            sys.stdout.write(NOTHING_CHANGED)
        case ["build", "--root", root] if is_fresh(root):
            sys.stdout.write(NOTHING_CHANGED)
        case _:
            _carry_out()


def _carry_out() -> None:
    import gc  # noqa: PLC0415  # not needed to find that nothing changed
    import signal  # noqa: PLC0415  # as above

    gc.set_threshold(100_000, 20, 20)  # looking for what can be freed took a tenth of a build

    signal.signal(signal.SIGTERM, _stop)
    _write_what_can_be_written()
    try:
        from generator.cli.commands import commands  # noqa: PLC0415  # takes longer to load than to find that

        commands()
    except ModuleNotFoundError as error:
        if (error.name or "generator").partition(".")[0] == "generator":
            raise  # a mistake of ours
        sys.exit(f"The library {error.name} is missing. {ANEW}")


def _write_what_can_be_written() -> None:
    """A sign that the terminal, or the file it is led to, does not know becomes a question mark."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="replace")


def _stop(number: int, frame: object) -> None:
    """End as Ctrl+C does, so that whatever was begun is cleared away."""
    raise KeyboardInterrupt
