"""What a lesson is, told to machines: schema.org's words as JSON-LD.

Only what is known is told: no day of publishing, no picture and no address that nobody gave.
Nothing is said about exercise or about what anyone eats, though schema.org has words for both:
a lesson is neither. A video that another site shows is that site's to describe.
"""

from __future__ import annotations

from fractions import Fraction

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.compute.rounding import whole
from generator.model.lesson import Video
from generator.present.pages.page import Surround
from generator.present.pages.video import chapters
from generator.present.views.stop import StopView
from generator.present.views.video import ChapterView
from generator.present.words.grades import grades_in_words
from generator.present.words.script_data import script_data

Told = dict[str, object]
_FIRST_AGE = 5
"""Years of a child who begins kindergarten; a grade takes one year (common practice, no source)."""
_FRAMEWORK = "Common Core State Standards for Mathematics"


def open_data(result: LessonResult, surround: Surround) -> Markup:
    """JSON-LD of the lesson, safe inside a script block."""
    file, say = result.lesson.file, surround.say
    page = surround.address(f"{result.lesson.id}/index.html")
    told: Told = {
        "@context": "https://schema.org",
        "@type": "LearningResource",
        "name": file.title,
        "description": file.summary,
        "inLanguage": say.language,
        "isAccessibleForFree": True,
        "learningResourceType": say("open_data_type"),
        "educationalLevel": grades_in_words(file.grades, say),
        "teaches": file.goals,
        "educationalAlignment": [_alignment(code) for code in file.standards],
        "license": surround.site.license,
        "url": page,
    }
    if file.video and file.video.file:
        told |= _video(file.video, result, surround.site.address)
    return _known(told)


def film_data(result: LessonResult, stops: tuple[StopView, ...], surround: Surround) -> Markup:
    """JSON-LD of the recording, its parts and ages, for the page with all that is said: a lesson's page is short of room."""
    file = result.lesson.file
    if not (file.video and file.video.file):
        return Markup()
    page = surround.address(f"{result.lesson.id}/index.html")
    told: Told = {
        "@context": "https://schema.org",
        "name": file.title,
        "description": file.summary,
        "url": page,
        "typicalAgeRange": f"{file.grades.first + _FIRST_AGE}-{file.grades.last + _FIRST_AGE + 1}",
        "hasPart": [_clip(chapter, page) for chapter in chapters(result, stops)],
    }
    return _known(told | _video(file.video, result, surround.site.address))


def _known(told: Told) -> Markup:
    """What has something to say, safe inside a script block."""
    return script_data({name: value for name, value in told.items() if value})


def _alignment(code: str) -> Told:
    return {
        "@type": "AlignmentObject",
        "alignmentType": "teaches",
        "educationalFramework": _FRAMEWORK,
        "targetName": code,
    }


def _video(video: Video, result: LessonResult, site: str) -> Told:
    """The recording, for all languages beside the lesson in its own."""
    lesson = result.lesson
    return {
        "@type": ["VideoObject", "LearningResource"],
        "contentUrl": site and f"{site}{lesson.id}/{video.file}",
        "thumbnailUrl": f"{site}{lesson.id}/{video.poster}" if site and video.poster else "",
        "duration": iso_duration(lesson.duration) if lesson.duration else "",
        "accessibilityFeature": ["captions", "transcript"] if video.captions else [],
    }


def _clip(chapter: ChapterView, page: str) -> Told:
    """The part of the video that leads to one stop; its address opens the page at that stop."""
    told: Told = {
        "@type": "Clip",
        "name": chapter.label,
        "startOffset": chapter.start,
        "endOffset": chapter.end,
    }
    return told | ({"url": page + chapter.href} if page else {})


def iso_duration(seconds: float) -> str:
    """``PT2M50S``: ISO 8601, to the whole second."""
    minutes, rest = divmod(whole(Fraction(seconds)), 60)
    return f"PT{minutes}M{rest}S"
