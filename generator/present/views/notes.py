"""The teaching notes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.amounts import BringsView, SourceView
from generator.present.views.cartridges import CartridgesView
from generator.present.views.class_link import ClassLinkView
from generator.present.views.embed import SnippetView
from generator.present.views.page import LinkView, PageView
from generator.present.views.reviewed import ReviewedView


@dataclass(frozen=True, slots=True)
class PlanView:
    """One line of the time plan."""

    at: str
    """Time in the video, or empty."""
    heading: str
    does: str
    """What the class does there, in a few words."""
    href: str
    """Link to the stop."""
    minutes: str
    """Whole minutes of the class; together those of the lesson."""


@dataclass(frozen=True, slots=True)
class LikelyView:
    """A wrong answer, and what it tells."""

    answer: str
    means: str
    say_next: str
    """What to say next, as the page says it; empty where the page has no words for it."""


@dataclass(frozen=True, slots=True)
class AnswerView:
    """The answer to one question, for the teacher."""

    legend: str
    lines: tuple[str, ...]
    says: str
    likely: tuple[LikelyView, ...]


@dataclass(frozen=True, slots=True)
class LookForView:
    """What to look for while children work at one stop."""

    heading: str
    """Of the stop."""
    lines: tuple[str, ...]
    """One sign a line; at least one."""


@dataclass(frozen=True, slots=True)
class DiscussionView:
    """Something to talk over."""

    prompt: Markup
    ideas: tuple[Markup, ...]


@dataclass(frozen=True, slots=True)
class CountTruthView:
    """One move's count beside the real computation; for adults only."""

    takes: str
    """``Bottle lift: 14 counts take under a minute.``"""
    says: str
    """Minutes of the move for a typical child, or that nothing is published."""
    computed: str
    """The computation with every number, and its row in the source; empty without minutes."""


@dataclass(frozen=True, slots=True)
class StopSourcesView:
    """Where the numbers of one stop come from."""

    id: str
    """Of the stop."""
    heading: str
    href: str
    """Link to the stop, which shows them itself; empty where only the notes have them."""
    sources: tuple[SourceView, ...]
    """Empty where the stop shows them."""


@dataclass(frozen=True, slots=True)
class NeighbourView:
    """A lesson before or after this one."""

    href: str
    title: str
    place: str
    """Which of both it is."""
    needs: str
    """What a child must be able to do for it; empty where it does not say so."""


@dataclass(frozen=True, slots=True)
class NotesView:
    """The teacher's page of a lesson."""

    template: ClassVar[str] = "notes.html"
    page: PageView
    title: str
    meta: str
    back: LinkView
    whole_class: tuple[LinkView, ...]
    """What is shown to the whole class at once."""
    codes: str
    """Path of the page that reads finish codes."""
    updates: str
    """Path of the page that says what each publication changed."""
    class_link: ClassLinkView
    summary: Markup
    goals: tuple[str, ...]
    standards: tuple[tuple[str, str], ...]
    """Code and paraphrase."""
    you_need: tuple[str, ...]
    plan: tuple[PlanView, ...]
    minutes: str
    """Of the whole lesson."""
    for_class: tuple[str, ...]
    """Materials, groups, room and two halves, for a class of 25."""
    answers: tuple[AnswerView, ...]
    look_for: tuple[LookForView, ...]
    """Signs of understanding, a stop each."""
    questions: tuple[str, ...]
    """About how something was found."""
    frames: tuple[str, ...]
    """Sentences with gaps to fill."""
    words: tuple[tuple[str, str], ...]
    """Word and what it means."""
    talks: tuple[DiscussionView, ...]
    count_says: str
    """What the count is and is not; empty where no moves are counted."""
    count_why: tuple[str, ...]
    """Why it is no energy, for adults."""
    count_truth: tuple[CountTruthView, ...]
    count_from: str
    """Where the minutes come from, with all values; empty without minutes."""
    adaptations: tuple[str, ...]
    neighbours: tuple[NeighbourView, ...]
    """The lessons before and after it, in this order; none where there is no other."""
    care: tuple[str, ...]
    """What the lesson's own foods ask for; the rest stands on its page."""
    reviewed: tuple[ReviewedView, ...]
    """Who read it; nobody where no reading holds."""
    sources: tuple[StopSourcesView, ...]
    brings: tuple[BringsView, ...]
    """Of each portion that has a record."""
    day_needs: tuple[str, ...]
    """What each day took, as its equation with every value."""
    downloads: tuple[LinkView, ...]
    cartridges: CartridgesView
    """The lesson for a learning platform."""
    snippets: tuple[SnippetView, ...]
    """For a page of a class site, one for each stop; none where the site has no address."""
    address: str
    """Where the lesson is published, for the code on paper; empty while the site has no address."""
    contents: tuple[LinkView, ...] = ()
    """Its parts, by what of the above it has."""
