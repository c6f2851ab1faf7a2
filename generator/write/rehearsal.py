"""A rehearsal as files: a silent MP4 of the slides, and the caption draft beside it.

The encoder is ffmpeg as imageio-ffmpeg brings it, an optional part of the installation.
"""

from __future__ import annotations

import subprocess
from collections.abc import Iterator, Sequence
from itertools import accumulate
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.present.rehearsal import Picture, Rehearsal

FRAMES_A_SECOND = 10
"""A pause point falls on a frame to a tenth of a second, and a still slide costs next to nothing."""
_MARK = b"Plumline rehearsal"
"""Stands in the video's own description: a film of someone's has no such mark and is never replaced."""


class RehearsalError(Exception):
    """A rehearsal that cannot be made; the message is a sentence for the educator, with a way out."""


def write_rehearsal(made: Rehearsal, folder: Path) -> Path:
    """Write the video and its captions beside the lesson; returns the video.

    Raises:
        RehearsalError: no stop has a time, the encoder is not installed or fails, or a file of
            the same name was not made by this function.
    """
    video, captions = folder / made.video, folder / made.captions
    if not made.pictures:
        raise RehearsalError('No stop of this lesson has a time: give its stops `at: "0:40"` and the like first')
    if video.exists() and _MARK not in video.read_bytes():
        raise RehearsalError(f"{video.name} is a film and no rehearsal: move it away, or give `video: file:` another name")
    encode(made.pictures, video)
    if not captions.exists() or made.draft_note in captions.read_text("utf-8"):
        captions.write_text(made.webvtt, "utf-8", newline="\n")
    return video


def encode(pictures: Sequence[Picture], out: Path) -> None:
    """Pictures of equal size into one MP4: H.264, a key frame at every picture, playable while it loads.

    Raises:
        RehearsalError: the encoder is not installed, or fails.
    """
    program = _program()
    with TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "slides.txt").write_text("\n".join(_list(pictures, folder)), "utf-8")
        command = [program, *_options(pictures), str(folder / "video.mp4")]
        done = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=False)  # noqa: S603  # our own list of arguments, no shell
        if done.returncode:
            raise RehearsalError(f"ffmpeg could not make the video: {done.stderr.strip().splitlines()[-1]}")
        finished = out.with_name(f".{out.name}.part")  # beside it, so that the swap below is one step on any disk
        finished.write_bytes((folder / "video.mp4").read_bytes())
        finished.replace(out)


def _program() -> str:
    """Path of ffmpeg."""
    try:
        import imageio_ffmpeg  # noqa: PLC0415  # an optional part: 30 MB that only rehearsing needs
    except ImportError:
        raise RehearsalError('The part that makes videos is not installed: run `pip install "plumline[video]"` once') from None
    return str(imageio_ffmpeg.get_ffmpeg_exe())


def _list(pictures: Sequence[Picture], folder: Path) -> Iterator[str]:
    """The pictures as ffmpeg's concat format wants them; the last is named twice, or its time is lost."""
    yield "ffconcat version 1.0"
    for number, picture in enumerate(pictures):
        (folder / f"{number}.png").write_bytes(picture.png)
        yield f"file {number}.png"
        yield f"duration {picture.seconds:.3f}"
    yield f"file {len(pictures) - 1}.png"


def _options(pictures: Sequence[Picture]) -> list[str]:
    starts = [0.0, *accumulate(picture.seconds for picture in pictures)]
    length, keys = starts[-1], ",".join(f"{start:.3f}" for start in starts[:-1])
    return [
        *("-v", "error", "-f", "concat", "-i", "slides.txt", "-t", f"{length:.3f}"),
        *("-vf", f"scale=out_color_matrix=bt709:out_range=tv,format=yuv420p,fps={FRAMES_A_SECOND}", "-an"),
        *("-colorspace", "bt709", "-color_primaries", "bt709", "-color_trc", "bt709", "-color_range", "tv"),
        *("-c:v", "libx264", "-preset", "veryfast", "-tune", "stillimage", "-crf", "31", "-threads", "2"),
        *("-x264-params", "bframes=0:ref=1:weightp=0:me=dia:subme=0"),  # nothing moves, so nothing is searched for
        *("-force_key_frames", keys, "-g", "100000", "-sc_threshold", "0"),  # no key frame but those at a slide
        *("-map_metadata", "-1", "-metadata", f"comment={_MARK.decode()}"),
        *("-fflags", "+bitexact", "-flags:v", "+bitexact", "-movflags", "+faststart"),
    ]
