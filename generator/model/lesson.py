"""A lesson: one folder with a lesson file and its media."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Annotated, Self
from urllib.parse import urlsplit

from pydantic import ConfigDict, Field, StringConstraints, field_validator, model_validator

from generator.model.base import Frozen
from generator.model.captions import CaptionFile, CaptionLimits
from generator.model.filling import Filling
from generator.model.film import Film
from generator.model.grades import GradeSpan
from generator.model.ids import StopIds
from generator.model.parting import Parting
from generator.model.personal import LeftOut
from generator.model.places import Path, Places
from generator.model.recorded import Recorded
from generator.model.reviewed import Reviewed
from generator.model.stops import Stop
from generator.model.text_marks import Code, Heading, TeacherText, Text
from generator.model.translation import Translation


class Video(Frozen):
    """The recording of a lesson: a file beside the lesson file, a page of another site, or both."""

    model_config = ConfigDict(
        json_schema_extra={"anyOf": [{"required": ["file"]}, {"required": ["elsewhere"]}]}
    )

    file: Code | None = None
    """MP4 or WebM beside the lesson file."""
    captions: Mapping[Code, Code] = {}
    """WebVTT file by language."""
    poster: Code | None = None
    """A still picture shown before the video; without one, the gaps of the lesson as plums."""
    smaller: Code | None = None
    """The same film as a smaller MP4, for homes whose internet is metered."""
    slides: Code | None = None
    """The slides with the film's sound as MP4, the smallest of the three."""
    silent: bool = False
    """`true` where the film is meant to have no sound."""
    elsewhere: Annotated[Code, Field(pattern=r"^https://[^\s/]+/\S*$", max_length=2_000)] | None = (
        None
    )
    """Address of a page of another site that shows the recording; the lesson only links to it."""

    @field_validator("elsewhere")
    @classmethod
    def _names_a_host(cls, address: str | None) -> str | None:
        if address is None or _host(address):
            return address
        raise ValueError("names no site: write the whole address, beginning with https://")

    @model_validator(mode="after")
    def _is_somewhere(self) -> Self:
        if self.file or self.elsewhere:
            return self
        raise ValueError(
            "names no recording: add `file:` with an MP4 beside the lesson file, "
            "or `elsewhere:` with the address of the page that shows it"
        )


def _host(address: str) -> str | None:
    """The site an address leads to; nothing where it is no address for all its slashes."""
    try:
        return urlsplit(address).hostname
    except ValueError:
        return None


FormerFolder = Annotated[
    Code, StringConstraints(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=80)
]
"""A name that the folder of a lesson had before."""


class LessonHead(Frozen):
    """What a lesson file says before its stops."""

    title: Heading
    """What the lesson is called."""
    summary: Text
    """One or two sentences for the list of lessons."""
    grades: GradeSpan
    """School grades: ``K-2``, ``3-5`` or ``4``. Caps on moves follow the youngest."""
    minutes: Annotated[int, Field(gt=0, le=120)]
    """How long the whole lesson takes, moving and talking included."""
    order: Annotated[int, Field(ge=1, le=9999)] | None = None
    """Its place in the lists of lessons: 1 stands first. Lessons without one come after, by the names of their folders. The notes name the lessons before and after it among those of its grades by the same order."""
    reading_grade: Annotated[int, Field(ge=1, le=12)] | None = None
    """Grade the learner's texts should read like; without it the last of ``grades``."""
    you_need: tuple[Text, ...] = ()
    """What to have at hand."""
    goals: tuple[Text, ...] = ()
    """What the learner will be able to do."""
    standards: tuple[Code, ...] = ()
    """Codes of the Common Core State Standards for Mathematics."""
    cooking: bool = False
    """`true` where a pot or a stove is shown: the lesson then says how food is warmed up and kept."""
    arithmetic: TeacherText | None = None
    """The arithmetic it needs, for teachers: `subtracting within 1,000`. Without it, what `standards` say."""
    video: Video | None = None
    """The recording; a lesson works without one."""
    parting: Parting | None = None
    """One last question at the end of the page, with an answer the lesson computes."""
    formerly: Annotated[tuple[FormerFolder, ...], Field(max_length=20)] = ()
    """Names its folder had before, the oldest first; old links and printed codes that name one lead to the lesson."""
    draft: bool = False
    """With `true` the lesson is seen in the preview, published nowhere, and its mistakes stop nobody."""


class LessonFile(LessonHead):
    """What a lesson file says."""

    stops: Annotated[tuple[Annotated[Stop, Field(discriminator="kind")], ...], Field(min_length=1)]
    """In the order of the page."""

    def asks_for_an_amount(self, comparison: str) -> bool:
        """Whether one of its questions asks which food of a comparison, by its id, holds so much."""
        last = (self.parting.answer, self.parting.which) if self.parting else None
        asked = (*(stop.computed for stop in self.stops), last)
        found = (which for _, which in filter(None, asked) if which)
        return any(which.of == comparison and which.asks_for_an_amount for which in found)


@dataclass(frozen=True, slots=True)
class Lesson:
    """A lesson as read, with the place of each of its parts."""

    id: str
    """Name of its folder, and its address on the site."""
    file: LessonFile
    """What its file says."""
    places: Places
    """Where each part of it stands."""
    ids: tuple[StopIds, ...] = field(repr=False)
    """The names of its stops and of what stands in them; the same in every translation."""
    duration: float | None = None
    """Length of the video in seconds, where there is one."""
    translations: Mapping[str, Translation] = field(default_factory=dict, repr=False)
    """Translations by language."""
    language: str = "en"
    """Language of the texts in ``file``."""
    captions: Mapping[str, CaptionFile] = field(default_factory=dict, repr=False)
    """What is heard in the video, by language."""
    caption_limits: CaptionLimits = field(default_factory=CaptionLimits, repr=False)
    """What the site holds captions to."""

    films: Mapping[str, Film] = field(default_factory=dict, repr=False)
    """What the files of its recording are, by the keys of `video:`; none where it names none."""
    left_out: tuple[LeftOut, ...] = field(default=(), repr=False)
    """What is taken out of its files before they are published."""
    standards: Mapping[str, frozenset[str]] = field(default_factory=dict, repr=False)
    """Codes of standards for which the site has words, and the languages it has them in."""
    fillings: Mapping[Path, Filling] = field(default_factory=dict, repr=False)
    """By its path, every text with braces as it was written; ``file`` holds it filled."""
    recorded: Recorded | None = field(default=None, repr=False)
    """What the numbers were when the lesson was filmed; nothing while no record is kept."""
    reviewed: Reviewed | None = field(default=None, repr=False)
    """Who read the lesson, by role; nothing while no reading is kept."""

    @property
    def first_id(self) -> str:
        """The name it had first: what was made of that, such as its practice, stays as it was printed."""
        return self.file.formerly[0] if self.file.formerly else self.id

    @property
    def film(self) -> Film | None:
        """The film that the page shows."""
        return self.films.get("file")

    @property
    def asked_again(self) -> Mapping[str, str]:
        """By the id of a stop whose question is asked once more, the id of the stop that does so."""
        pairs = zip(self.file.stops, self.ids, strict=True)
        return {stop.repeats: ids.stop for stop, ids in pairs if stop.repeats}

    def stop_id(self, index: int) -> str:
        """The stop's address on the page, and its name in the ledger."""
        return self.ids[index].stop
