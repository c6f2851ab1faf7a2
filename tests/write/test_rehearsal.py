"""The rehearsal video, probed with ffmpeg itself."""

from __future__ import annotations

import re
import subprocess
from dataclasses import replace
from pathlib import Path

import imageio_ffmpeg
import pytest

from generator.present.recording.rehearsal import Rehearsal, rehearsal
from generator.present.words.say import Say
from generator.problems import LessonError
from generator.read.media import video_seconds
from generator.write import rehearsal as writing
from generator.write.rehearsal import write_rehearsal
from tests.project import ROOT, library, worked

TEXT = (ROOT / "lessons" / "soup-night" / "lesson.yaml").read_text("utf-8")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Rehearsal:
    """A lesson of three minutes, without the videos it names."""
    text = re.sub(r"^video:\n(  .*\n)+", "", TEXT, flags=re.MULTILINE)
    return rehearsal(
        worked(tmp_path_factory.mktemp("soup"), text), Say(library().words["en"]), ROOT / "theme"
    )


@pytest.fixture(scope="module")
def video(made: Rehearsal, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return write_rehearsal(made, tmp_path_factory.mktemp("out")).video


def ffmpeg(*options: str) -> str:
    """Run ffmpeg; what it says."""
    done = subprocess.run(
        [imageio_ffmpeg.get_ffmpeg_exe(), "-hide_banner", *options],
        capture_output=True,
        text=True,
        check=False,
    )
    return done.stdout + done.stderr


def starts(made: Rehearsal) -> list[float]:
    """When each picture begins, in seconds."""
    found = [0.0]
    for picture in made.pictures[:-1]:
        found.append(found[-1] + picture.seconds)
    return found


def test_it_lasts_as_long_as_its_pictures(made: Rehearsal, video: Path) -> None:
    length = video_seconds({"file": video.name}, video.parent)
    assert length == pytest.approx(sum(picture.seconds for picture in made.pictures), abs=0.1)
    assert length > 180


def test_it_is_small_enough_for_a_metered_connection(video: Path) -> None:
    assert video.stat().st_size <= 450_000


def test_it_is_h264_in_the_one_pixel_format_every_browser_plays(video: Path) -> None:
    said = ffmpeg("-i", str(video))
    assert re.search(r"Video: h264 .*yuv420p\(tv, bt709.*960x540.* 10 fps", said), said
    assert "Audio" not in said


def test_a_key_frame_stands_at_the_start_of_every_slide_and_nowhere_else(
    made: Rehearsal, video: Path
) -> None:
    said = ffmpeg("-skip_frame", "nokey", "-i", str(video), "-vf", "showinfo", "-f", "null", "-")
    keys = [float(time) for time in re.findall(r"pts_time:([\d.]+)", said)]
    assert keys == pytest.approx(starts(made), abs=0.1)


def test_a_moment_shows_its_own_slide(made: Rehearsal, video: Path, tmp_path: Path) -> None:
    """The picture at a pause point is nearest, of all slides, to that pause's own slide."""
    begins = starts(made)
    for index in (4, 8, 12):
        at = begins[index] + made.pictures[index].seconds / 2
        ffmpeg(
            "-ss",
            f"{at:.2f}",
            "-i",
            str(video),
            "-frames:v",
            "1",
            "-y",
            str(tmp_path / "frame.png"),
        )
        distances = [
            _distance(tmp_path / "frame.png", picture.png, tmp_path) for picture in made.pictures
        ]
        assert distances.index(max(distances)) == index


def _distance(frame: Path, png: bytes, folder: Path) -> float:
    """Peak signal to noise ratio of two pictures in dB; larger is nearer."""
    (folder / "slide.png").write_bytes(png)
    said = ffmpeg(
        "-i",
        str(frame),
        "-i",
        str(folder / "slide.png"),
        "-lavfi",
        "[0]format=yuv444p[a];[1]format=yuv444p[b];[a][b]psnr",
        "-f",
        "null",
        "-",
    )
    found = re.search(r"average:([\d.]+|inf)", said)
    assert found, said
    return float(found[1])


def test_it_can_play_before_it_has_loaded(video: Path) -> None:
    """The index comes before the pictures (ISO/IEC 14496-12: boxes moov and mdat)."""
    data = video.read_bytes()
    assert data.index(b"moov") < data.index(b"mdat")


def test_it_is_the_same_every_time(made: Rehearsal, video: Path, tmp_path: Path) -> None:
    assert write_rehearsal(made, tmp_path).video.read_bytes() == video.read_bytes()


def test_captions_stand_beside_it(made: Rehearsal, video: Path) -> None:
    assert (video.parent / made.captions).read_text("utf-8") == made.webvtt


def test_a_film_is_never_replaced(made: Rehearsal, tmp_path: Path) -> None:
    (tmp_path / made.video).write_bytes(b"a film of someone")
    with pytest.raises(LessonError, match="is a film and no rehearsal"):
        write_rehearsal(made, tmp_path)
    assert (tmp_path / made.video).read_bytes() == b"a film of someone"


def test_edited_captions_are_never_replaced(made: Rehearsal, tmp_path: Path) -> None:
    (tmp_path / made.captions).write_text("WEBVTT\n\n00:01.000 --> 00:02.000\nMine.\n", "utf-8")
    write_rehearsal(replace(made, pictures=made.pictures[:1]), tmp_path)
    assert "Mine." in (tmp_path / made.captions).read_text("utf-8")


def test_a_draft_is_made_anew(made: Rehearsal, tmp_path: Path) -> None:
    (tmp_path / made.captions).write_text(f"WEBVTT\n\nNOTE {made.draft_note}\n", "utf-8")
    write_rehearsal(replace(made, pictures=made.pictures[:1]), tmp_path)
    assert (tmp_path / made.captions).read_text("utf-8") == made.webvtt


def test_a_lesson_without_times_is_told_so(made: Rehearsal, tmp_path: Path) -> None:
    with pytest.raises(LessonError, match="no stop of this lesson has a time: give its stops"):
        write_rehearsal(replace(made, pictures=()), tmp_path)


def test_a_missing_encoder_is_told_with_the_way_to_get_it(
    made: Rehearsal, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(writing, "encoder", lambda: None)
    with pytest.raises(
        LessonError, match=r"not installed: run `\S+ -m pip install imageio-ffmpeg` once"
    ):
        write_rehearsal(made, tmp_path)
    assert not list(tmp_path.iterdir())


def test_a_failing_encoder_leaves_the_old_rehearsal(
    made: Rehearsal, video: Path, tmp_path: Path
) -> None:
    old = tmp_path / made.video
    old.write_bytes(video.read_bytes())
    broken = replace(made, pictures=(replace(made.pictures[0], png=b"no picture"),))
    with pytest.raises(LessonError, match="ffmpeg could not make the video"):
        write_rehearsal(broken, tmp_path)
    assert old.read_bytes() == video.read_bytes()
