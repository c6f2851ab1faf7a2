"""What the teaching notes of a lesson are made of, for the list of their parts."""

from __future__ import annotations

from generator.present.views.notes import NotesView
from generator.present.views.page import LinkView
from generator.present.words.say import Say


def notes_parts(view: NotesView, say: Say) -> tuple[LinkView, ...]:
    """A link to each part that these notes have, in their order."""
    every = (
        ("goals", say("goals"), view.goals),
        ("standards", say("notes_standards"), view.standards),
        ("plan", say("notes_plan"), view.plan),
        ("class-link", say("link_title"), True),
        ("class", say("notes_class"), view.for_class),
        ("answers", say("notes_answers"), view.answers),
        ("look-for", say("notes_look_for"), view.look_for),
        ("questions", say("notes_questions"), view.questions),
        ("talk", say("notes_talk"), view.talks),
        ("count", say("notes_count"), view.count_says),
        ("adapt", say("notes_adapt"), view.adaptations),
        ("upset", say("notes_upset"), True),
        ("care", say("notes_care"), True),
        ("reviewed", say("reviewed_title"), view.reviewed),
        ("next", say("notes_next"), True),
        ("sources", say("notes_sources"), True),
        ("brings", say("notes_brings"), view.brings),
        ("on-paper", say("on_paper"), True),
        ("platform", say("cartridge_title"), True),
        ("class-site", say("embed_notes"), True),
    )
    return tuple(LinkView(f"#{name}", words) for name, words, shown in every if shown)
