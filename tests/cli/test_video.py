"""The films of a lesson made from a camera's file, as ffmpeg and our own reader see them."""

from __future__ import annotations

import re
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.media.film import read_film
from generator.model.film import Film, Sound
from generator.write import encoder
from tests.media_files import ffmpeg
from tests.project import GOOD, put
from tests.site_project import copy_project

MADE = {"file": "web.mp4", "smaller": "small.mp4", "slides": "slides.mp4", "poster": "poster.jpg"}
CAMERA = (
    "-v error -f lavfi -i testsrc2=s=1920x1080:d=3:r=30 -f lavfi -i sine=d=3 -shortest -c:v libx264"
    " -preset ultrafast -pix_fmt yuv422p -metadata artist=Ana -metadata location=+48.2082+016.3738/"
)


@pytest.fixture(scope="module")
def camera(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Three seconds as no browser plays them, with a place and a name."""
    file = tmp_path_factory.mktemp("camera") / "take 1.mov"
    ffmpeg(*CAMERA.split(), file)
    return file


@pytest.fixture
def root(tmp_path: Path) -> Path:
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, GOOD, "meal")
    return project


def plumline(root: Path, *words: str | Path) -> Result:
    line = [*map(str, words), "--root", str(root)]
    return CliRunner().invoke(commands, line, catch_exceptions=False)


def looked_at(file: Path) -> Film:
    with file.open("rb") as film:
        return read_film(film)


@pytest.fixture(scope="module")
def made(camera: Path, tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str]:
    """A site whose lesson has its films, and what was said."""
    project = copy_project(tmp_path_factory.mktemp("made") / "project", lessons=False)
    put(project, GOOD, "meal")
    done = plumline(project, "video", "meal", camera)
    assert done.exit_code == 0, done.output
    return project, done.stdout


def test_each_film_plays_in_browsers_and_begins_at_once(made: tuple[Path, str]) -> None:
    """H.264 high, 8 bit, 4:2:0 and AAC: ffmpeg's own words for what it finds."""
    folder = made[0] / "lessons/meal"
    for name, width, height in (("web", 1280, 720), ("small", 640, 360)):
        said = ffmpeg("-i", folder / f"meal-{name}.mp4", "-f", "null", "-")
        assert re.search(rf"Video: h264 \(High\).*yuv420p.*{width}x{height}", said), said
        assert "Audio: aac" in said
    for key in ("web", "small", "slides"):
        film = looked_at(folder / f"meal-{key}.mp4")
        assert film.begins_at_once
        assert film.sound is Sound.PLAYED
        assert film.seconds == pytest.approx(3, abs=0.2)


def test_each_is_smaller_than_the_one_before(made: tuple[Path, str]) -> None:
    """Three seconds at 350 and 48 kbit/s are 149 kB, and a buffer of 88 kB; ours, no source."""
    folder = made[0] / "lessons/meal"
    web, small, slides = (
        (folder / f"meal-{one}.mp4").stat().st_size for one in ("web", "small", "slides")
    )
    assert web > small > slides
    assert small < 240_000


def test_no_film_says_who_made_it_and_where(made: tuple[Path, str]) -> None:
    for file in (made[0] / "lessons/meal").glob("meal-*"):
        held = file.read_bytes()
        assert not [word for word in (b"Ana", b"+48.2082") if word in held], file


def test_it_says_what_it_made_and_what_to_write(made: tuple[Path, str]) -> None:
    root, said = made
    for name in MADE.values():
        assert re.search(rf"^lessons/meal/meal-{name}: \d+\.\d MB, ", said, re.MULTILINE)
    block = said.partition("\n\n")[2]
    assert block == "video:\n" + "".join(f"  {key}: meal-{name}\n" for key, name in MADE.items())
    put(root, GOOD.replace('"1:20"', '"0:50"').replace("stops:\n", block + "stops:\n"), "meal")
    checked = plumline(root, "check")
    assert (
        "beyond the end of the video" in checked.stderr
    )  # the lesson is longer than three seconds
    assert "meal-web.mp4` " not in checked.stderr


def test_it_writes_nowhere_else_and_leaves_nothing_lying(
    made: tuple[Path, str], camera: Path
) -> None:
    names = {file.name for file in (made[0] / "lessons/meal").iterdir()}
    assert names == {"lesson.yaml", *(f"meal-{name}" for name in MADE.values())}
    assert {file.name for file in camera.parent.iterdir()} == {camera.name}


def test_made_again_the_old_ones_are_replaced_and_somebodys_are_not(
    made: tuple[Path, str], root: Path, camera: Path
) -> None:
    theirs = root / "lessons/meal/meal-small.mp4"
    theirs.write_bytes(b"a film of someone")
    done = plumline(root, "video", "meal", camera)
    assert done.exit_code == 1
    assert "`meal-small.mp4` is there already and was not made by this command" in done.stderr
    assert {file.name for file in theirs.parent.iterdir()} == {"lesson.yaml", "meal-small.mp4"}
    theirs.write_bytes((made[0] / "lessons/meal/meal-small.mp4").read_bytes())
    silent = camera.with_name("silent.mp4")
    ffmpeg("-v", "error", "-i", camera, "-t", "1", "-an", silent)
    again = plumline(root, "video", "meal", silent)
    silent.unlink()
    assert again.exit_code == 0, again.output
    assert "No slides with the voice" in again.stdout
    assert looked_at(theirs).seconds == pytest.approx(1, abs=0.2)


def test_a_wide_range_of_light_is_brought_into_that_of_every_screen(
    root: Path, tmp_path: Path
) -> None:
    """ITU-R BT.2408 puts the white of a page at 75 % of HLG; on a usual screen it must not be grey."""
    source = tmp_path / "wide.mov"
    wide = "setparams=color_primaries=bt2020:color_trc=arib-std-b67:colorspace=bt2020nc"
    white = "color=c=0xbfbfbf:s=320x180:d=1:r=5"
    made = f"-v error -f lavfi -i {white} -vf {wide},format=yuv420p10le -c:v libx264"
    ffmpeg(*made.split(), source)
    assert plumline(root, "video", "meal", source).exit_code == 0
    said = ffmpeg(
        "-i",
        root / "lessons/meal/meal-web.mp4",
        "-vf",
        "signalstats,metadata=print:file=-",
        "-f",
        "null",
        "-",
    )
    assert re.search(r"Video: h264 \(High\).*yuv420p\(tv, bt709", said), said
    level = float(re.findall(r"signalstats.YAVG=([\d.]+)", said)[0])
    assert level > 180, "16 is black and 235 is white"


@pytest.mark.parametrize("held", [b"", b"no film at all", b"\0\0\0\x10ftypisom\0\0\0\0"])
def test_what_is_no_film_leaves_everything_as_it_was(
    root: Path, tmp_path: Path, held: bytes
) -> None:
    source = tmp_path / "take.mp4"
    source.write_bytes(held)
    done = plumline(root, "video", "meal", source)
    assert done.exit_code == 1
    assert "no film could be made of `take.mp4`" in done.stderr
    assert "Traceback" not in done.output
    assert [file.name for file in (root / "lessons/meal").iterdir()] == ["lesson.yaml"]


def test_without_a_film_the_way_to_name_one_is_told(root: Path) -> None:
    said = plumline(root, "video", "meal").stderr
    assert "names no film that others could be made from" in said
    assert "python3 generator video meal FILE" in said


def test_a_moment_that_is_none(root: Path, camera: Path) -> None:
    done = plumline(root, "video", "meal", camera, "--poster-at", "five")
    assert done.exit_code == 2
    assert "`five` is no moment; write minutes and seconds, such as 0:05" in done.stderr


def test_a_missing_encoder_is_told(
    root: Path, camera: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("generator.author.video.encoder", lambda: None)
    assert encoder.encoder() is not None
    done = plumline(root, "video", "meal", camera)
    assert "not installed" in done.stderr
    assert "pip install imageio-ffmpeg" in done.stderr


def test_stopped_it_leaves_the_folder_as_it_was(root: Path, camera: Path) -> None:
    """As a terminal stops it, and as a cut of the power does: the next run clears up after that."""
    folder = root / "lessons/meal"
    line = [sys.executable, "-c", "from generator.cli import main; main()", "video", "meal"]
    for sign in (signal.SIGINT, signal.SIGKILL):
        begun = subprocess.Popen(
            [*line, str(camera), "--root", str(root)], stderr=subprocess.DEVNULL
        )
        while not (folder / ".films-being-made/web.mp4").exists():
            assert begun.poll() is None
            time.sleep(0.01)
        begun.send_signal(sign)
        begun.wait()
        seen = [file.name for file in folder.iterdir() if not file.name.startswith(".")]
        assert seen == ["lesson.yaml"]
    done = plumline(root, "video", "meal", camera)
    assert done.exit_code == 0
    assert not [file for file in folder.iterdir() if file.name.startswith(".")]
