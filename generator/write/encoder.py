"""The encoder of films: ffmpeg as imageio-ffmpeg brings it, an optional part of the installation."""

from __future__ import annotations

import subprocess
from collections.abc import Sequence
from pathlib import Path

from generator.write import installing


class EncoderError(Exception):
    """The encoder could not do what was asked; carries its last words."""


def encoder() -> str | None:
    """Path of ffmpeg; nothing where the optional part is not installed."""
    try:
        import imageio_ffmpeg  # noqa: PLC0415  # 30 MB that only making films needs
    except ImportError:
        return None
    return str(imageio_ffmpeg.get_ffmpeg_exe())


def run(program: str, options: Sequence[str], folder: Path) -> None:
    """Let the encoder work in a folder; it asks nobody and reads nothing but files.

    Raises:
        EncoderError: it failed.
    """
    command = [program, "-v", "error", "-nostdin", "-y", *options]
    done = subprocess.run(  # noqa: S603  # our own list of arguments, no shell
        command, cwd=folder, capture_output=True, text=True, errors="replace", check=False
    )
    if done.returncode:
        raise EncoderError((done.stderr.strip().splitlines() or ["no word"])[-1])


def described(program: str, file: Path) -> str:
    """What the encoder says of a film; of what is none, that it is none."""
    command = [
        program,
        "-hide_banner",
        "-nostdin",
        "-protocol_whitelist",
        "file",
        "-i",
        f"file:{file}",
    ]
    done = subprocess.run(  # noqa: S603  # as above
        command, capture_output=True, text=True, errors="replace", check=False
    )
    return done.stderr


def how_to_install() -> str:
    """The way to have it, as it is typed in this folder."""
    return installing.how_to_install("imageio-ffmpeg", 30)
