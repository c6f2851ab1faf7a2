"""A rehearsal as files: a silent MP4 of the slides, and the caption draft beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.media.film import is_marked
from generator.present.recording.rehearsal import REHEARSAL_MARK, Picture, Rehearsal
from generator.problems import LessonError, Place, Problem
from generator.write.encoder import EncoderError, encoder, how_to_install, run
from generator.write.recorded import RECORDED

FRAMES_A_SECOND = 10
"""A pause point falls on a frame to a tenth of a second, and a still slide costs next to nothing."""


@dataclass(frozen=True, slots=True)
class Rehearsed:
    """What was written."""

    video: Path
    captions: Path
    drafted: bool
    """Whether the captions are a draft made just now; edited ones stay as they are."""
    seconds: int
    """Length of the video, rounded."""
    recorded: bool
    """Whether the numbers of an older film are kept beside it."""
    named: bool = False
    """Whether the lesson names both files."""


def write_rehearsal(made: Rehearsal, folder: Path) -> Rehearsed:
    """Write the video and its captions beside the lesson.

    Captions that were edited, and have lost the note of a draft, stay as they are.

    Raises:
        LessonError: no stop has a time, a film of the same name is in the way, or the encoder is
            not installed or fails.
    """
    video, captions = folder / made.video, folder / made.captions
    if not made.pictures:
        raise _problem(
            made, "no stop of this lesson has a time", 'give its stops `at: "0:40"` and the like'
        )
    if video.exists() and not is_marked(video, REHEARSAL_MARK):
        raise _problem(
            made,
            f"`{video.name}` is a film and no rehearsal",
            "move it away, or give the video another name",
        )
    program = encoder()
    if program is None:
        raise _problem(
            made,
            "the part that makes videos is not installed",
            how_to_install(),
        )
    said = encode(made.pictures, video, program)
    if said:
        raise _problem(
            made, f"ffmpeg could not make the video ({said})", "look whether the disk is full"
        )
    drafted = not captions.exists() or made.draft_note in captions.read_text("utf-8")
    if drafted:
        captions.write_text(made.webvtt, "utf-8", newline="\n")
    return Rehearsed(video, captions, drafted, made.seconds, (folder / RECORDED).exists())


def encode(pictures: Sequence[Picture], out: Path, program: str) -> str:
    """Pictures of equal size into one MP4: H.264, a key frame at every picture, playable while it loads.

    Returns:
        What went wrong, in the encoder's words; empty when all went well.
    """
    with TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "slides.txt").write_text("\n".join(_list(pictures, folder)), "utf-8")
        try:
            run(program, [*_options(pictures), "video.mp4"], folder)
        except EncoderError as error:
            return str(error)
        finished = out.with_name(
            f".{out.name}.part"
        )  # beside it, so that the swap below is one step on any disk
        finished.unlink(missing_ok=True)  # never write through a link
        finished.write_bytes((folder / "video.mp4").read_bytes())
        finished.replace(out)
    return ""


def _problem(made: Rehearsal, what: str, hint: str) -> LessonError:
    return LessonError([Problem(Place(made.source), what, hint)])


def _list(pictures: Sequence[Picture], folder: Path) -> Iterator[str]:
    """The pictures as ffmpeg's concat format wants them; the last is named twice, or its time is lost."""
    yield "ffconcat version 1.0"
    for number, picture in enumerate(pictures):
        (folder / f"{number}.png").write_bytes(picture.png)
        yield f"file {number}.png"
        yield f"duration {picture.seconds:.3f}"
    yield f"file {len(pictures) - 1}.png"


_LOOK = f"""
-vf scale=out_color_matrix=bt709:out_range=tv,format=yuv420p,fps={FRAMES_A_SECOND}
-colorspace bt709 -color_primaries bt709 -color_trc bt709 -color_range tv
"""
_ENCODER = """
-an -c:v libx264 -preset veryfast -tune stillimage -crf 31 -threads 2
-x264-params bframes=0:ref=1:weightp=0:me=dia:subme=0 -g 100000 -sc_threshold 0
"""
"""Nothing moves, so nothing is searched for; and there is no key frame but those at a slide."""
_FILE = "-map_metadata -1 -fflags +bitexact -flags:v +bitexact -movflags +faststart"


def _options(pictures: Sequence[Picture]) -> list[str]:
    starts = [0.0, *accumulate(picture.seconds for picture in pictures)]
    length, keys = starts[-1], ",".join(f"{start:.3f}" for start in starts[:-1])
    return [
        *f"-f concat -i slides.txt -t {length:.3f}".split(),
        *_LOOK.split(),
        *_ENCODER.split(),
        *f"-force_key_frames {keys}".split(),
        *_FILE.split(),
        *("-metadata", f"comment={REHEARSAL_MARK}"),
    ]
