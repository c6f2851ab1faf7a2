"""All lessons of a language in one file for learning platforms, made of what is kept of each lesson."""

from __future__ import annotations

from collections.abc import Iterator

from generator.engine.pack import DamagedPackError
from generator.media.content import Held
from generator.present.cartridge.kept import things_from_json, things_path
from generator.present.cartridge.lesson import cartridge_of_all
from generator.present.cartridge.parts import Thing
from generator.present.cartridge.version import Version
from generator.present.output import Output
from generator.present.pages.cartridges import all_name, makes_all
from generator.present.pages.page import Surround
from generator.steps.lessons import KeptLesson
from generator.steps.run import Run
from generator.steps.site import Site
from generator.write.cartridge import cartridge_file


def cartridges_of_all(run: Run, site: Site) -> Iterator[Output]:
    """The file of each language in each version, where the site has an address and not too many lessons."""
    for language, presenter in site.presenters.items():
        order = [entry.id for entry in site.entries(language)]
        if makes_all(len(order), presenter.surround):
            every = {lesson.id: lesson for lesson in site.lessons}
            yield from _of_language([every[name] for name in order], presenter.surround, run)


def _of_language(lessons: list[KeptLesson], surround: Surround, run: Run) -> Iterator[Output]:
    whole: dict[str, KeptLesson] = {}
    things: list[Thing] = []
    for lesson in lessons:
        kept = things_path(surround.folder, lesson.id)
        found, told = _held(lesson, kept, run)
        things += things_from_json(told)
        whole |= {entry.path: found for entry in found.pack.published}
    cartridge = cartridge_of_all(surround, tuple(things))

    def held(path: str) -> Held:
        return whole[path].pack.held(path)

    for version in Version:
        file = cartridge_file(cartridge, version, surround.say, held)
        yield Output(surround.folder + all_name(version), bytes(file))


def _held(lesson: KeptLesson, path: str, run: Run) -> tuple[KeptLesson, bytes]:
    """What is kept of a lesson; one whose pack is damaged is made anew."""
    try:
        return lesson, lesson.pack.held(path)
    except DamagedPackError:
        (again,) = run.make_again([lesson.id])
        return again, again.pack.held(path)
