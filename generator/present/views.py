"""What the templates see: words and numbers ready to print, and nothing to compute.

Every text here is in the page's language and every number already formatted. A template
prints them, decides nothing, and escapes everything but ``Markup``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from markupsafe import Markup


@dataclass(frozen=True, slots=True)
class LinkView:
    """A link on the page."""

    href: str
    """Relative to the page, so that the site opens from a folder."""
    label: str
    here: bool = False
    """Whether it leads to the page it stands on."""


@dataclass(frozen=True, slots=True)
class LanguageView:
    """The same page in another language."""

    href: str
    label: str
    """Name of the language, in that language."""
    language: str
    """Language tag."""


@dataclass(frozen=True, slots=True)
class PageView:
    """What every page has around its content."""

    language: str
    title: str
    """For the title bar: the page and the programme."""
    description: str
    programme: str
    root: str
    """Relative address of the site's front page folder: empty or ``../`` so many times."""
    home: LinkView
    links: tuple[LinkView, ...]
    """Pages for everyone: teachers, sources, care and privacy."""
    languages: tuple[LanguageView, ...]
    """The same page in the other languages that have it."""
    stylesheet: str
    script: str
    script_words: Markup
    """The browser's texts as JSON, safe inside a script block."""
    policy: str
    """Content security policy, or empty in the preview."""


@dataclass(frozen=True, slots=True)
class BlocksView:
    """Base-ten blocks of one number."""

    label: str
    """Said instead of the picture: ``3 hundreds, 2 tens``."""
    hundreds: int
    tens: int
    ones: int
    half: bool


@dataclass(frozen=True, slots=True)
class HoldingView:
    """One side of a row."""

    side: str
    """Name of the side."""
    side_key: str
    """``first`` or ``second``: which colour and pattern it wears."""
    name: str
    """The food."""
    amount: str
    value: str
    """Formatted number without its unit."""
    unit: str
    number: str
    """The number for a machine: digits and a point."""
    blocks: BlocksView
    teaspoons: str
    """For sugars: ``about 9 ¾ teaspoons``; else empty."""
    grams: str
    """Weight of the amount, ``182 g``; empty where it is not known."""


@dataclass(frozen=True, slots=True)
class WorkingView:
    """How a row is worked out, line by line."""

    lines: tuple[str, ...]
    """``410 − 90 = 320``, ``320 ÷ 10 = 32``, in the order they are done."""
    says: str
    """One sentence with the answer."""


@dataclass(frozen=True, slots=True)
class ColumnView:
    """One place-value column of a subtraction on paper."""

    place: str
    """``hundreds``, ``tens`` ... ``hundredths``; the words have its short head as ``place_hundreds``."""
    larger: str
    smaller: str
    gap: str
    """One digit each, or empty."""
    after_point: bool
    """Whether the decimal point stands before it."""


@dataclass(frozen=True, slots=True)
class RowView:
    """One row of a gap calculator."""

    id: str
    """Address of the row on the page: ``lunch-row-1``."""
    number: int
    """Counted from 1."""
    legend: str
    """``Row 1: Apple and Apple pie``, for a screen reader."""
    first: HoldingView
    second: HoldingView
    gap: str
    """Formatted, with its unit."""
    gap_number: str
    """Digits and a point."""
    larger_number: str
    smaller_number: str
    holder: str
    """Name of the side that holds more; empty where both hold the same."""
    left: BlocksView
    """What is left of the larger when both are matched."""
    left_key: str
    """``first`` or ``second``: whose blocks are left."""
    line: Markup
    """Number line from the smaller to the larger number; empty where both are the same."""
    ask_gap: bool
    ask_count: bool
    count: str
    """Whole counts, formatted; empty where nothing is counted."""
    count_number: str
    left_over: str
    """What the count leaves over, formatted with unit; empty when nothing is."""
    per_number: str
    """How much of the gap is one count; empty where nothing is counted."""
    hint: str
    working: WorkingView
    columns: tuple[ColumnView, ...]
    """The subtraction digit under digit, for paper."""


@dataclass(frozen=True, slots=True)
class BarView:
    """One bar of the chart in the page."""

    label: str
    """The food."""
    side_key: str
    value: str
    """Formatted, with its unit."""
    width: str
    """Percent of the longest bar, 0 to 100."""


@dataclass(frozen=True, slots=True)
class ChartView:
    """The two sides as bars, and where the figure to explore is kept."""

    label: str
    """What the picture shows, in a sentence."""
    bars: tuple[BarView, ...]
    figure: str
    """Address of the interactive figure's data, relative to the page."""
    library: str
    """Address of the script that draws it, relative to the page."""


@dataclass(frozen=True, slots=True)
class SourceView:
    """Where the numbers of one food come from."""

    food: str
    says: str
    """Record, portion weight and rounding, in one sentence."""


@dataclass(frozen=True, slots=True)
class TotalView:
    """The totals of a comparison."""

    first: str
    second: str
    """Formatted with unit."""
    first_number: str
    second_number: str
    gap: str
    gap_number: str
    working: WorkingView


@dataclass(frozen=True, slots=True)
class StopView:
    """What every stop shows."""

    kind: str
    id: str
    heading: str
    at: str
    """``1:10``, or empty."""
    at_seconds: str
    """Seconds for the player, or empty."""
    number: int
    """Its place along the thread, counted from 1."""


@dataclass(frozen=True, slots=True)
class WatchView(StopView):
    """A stretch of the video."""

    until: str
    """``0:40``"""
    until_seconds: str
    says: str
    """``Watch from 0:00 to 0:40.``"""


@dataclass(frozen=True, slots=True)
class AskView(StopView):
    """A question with hint and reveal."""

    prompt: Markup
    hint: Markup
    """Empty where there is none."""
    reveal: Markup


@dataclass(frozen=True, slots=True)
class CompareView(StopView):
    """A gap calculator."""

    prompt: Markup
    measure: str
    """``energy``, in the page's language."""
    unit: str
    about: str
    """What the measure is, in one sentence for a child."""
    sides: tuple[str, str]
    rows: tuple[RowView, ...]
    total: TotalView | None
    """Where the total is asked for or there is more than one row."""
    ask_total: bool
    reveal: Markup
    chart: ChartView
    often: tuple[OftenView, ...]
    """How often each food fits in; foods without a word are left out."""
    sources: tuple[SourceView, ...]


@dataclass(frozen=True, slots=True)
class MoveCardView:
    """A move with its count."""

    id: str
    """Id in the moves library."""
    name: str
    count: str
    """Formatted whole number."""
    count_number: str
    left_over: str
    count_is: str
    """``One count is one knee up.``"""
    steps: tuple[str, ...]
    seated: str
    care: str
    room: str
    noise: str
    pace: int
    """Counts a minute."""
    figures: tuple[Markup, ...]
    """Line figures of the move."""
    seated_figures: tuple[Markup, ...]
    pictures: tuple[str, ...]
    """Addresses of the figures as files, for pages that should stay small."""
    seated_pictures: tuple[str, ...]
    for_row: str
    """``Apple and Apple pie: 320 ÷ 10``"""
    row: str
    """``Apple and Apple pie``"""
    division: str
    """``320 kcal ÷ 10``"""
    asked_in: str
    """Address of the row whose gap or count the learner works out; empty where that is not asked."""


@dataclass(frozen=True, slots=True)
class MoveView(StopView):
    """The moves of a comparison."""

    prompt: Markup
    rule: str
    """``One move for every 10 kcal of the gap.``"""
    cards: tuple[MoveCardView, ...]
    before: tuple[str, ...]
    """Room check and stop signs, before anyone moves."""


@dataclass(frozen=True, slots=True)
class OftenView:
    """How often a food fits in."""

    food: str
    says: str
    """The frequency in words."""
    dots: int
    """3, 2 or 1."""


@dataclass(frozen=True, slots=True)
class EatenView:
    """A food of a day."""

    when: str
    """The meal, or empty where it is the same as above."""
    name: str
    amount: str
    value: str
    """Energy with its unit."""


@dataclass(frozen=True, slots=True)
class DayView(StopView):
    """An invented person's day, to decide about and then check."""

    prompt: Markup
    person: str
    """Who it is, in a sentence."""
    ate: tuple[EatenView, ...]
    did: tuple[str, ...]
    choices: tuple[tuple[str, str], ...]
    """Value and wording of each way the day may lean."""
    lean: str
    """The value of the way it does lean."""
    answer: str
    """Which way, in a sentence."""
    eaten: str
    needed: str
    """Energy with unit."""
    sum: str
    """``170 + 90 = 260``, in shown numbers."""
    tilt: str
    """Degrees clockwise of the beam; negative where the eaten side, on the left, is lower."""
    beam: str
    """What the picture shows, in a sentence."""
    band: str
    """How wide ``about even`` is, in a sentence."""
    reveal: Markup
    sources: tuple[SourceView, ...]
    """For the teaching notes: a day has many foods, and its page links there."""
    sources_at: str
    """Address of that part of the notes."""


@dataclass(frozen=True, slots=True)
class TalkView(StopView):
    """Something to talk over."""

    prompt: Markup
    ideas: tuple[Markup, ...]


@dataclass(frozen=True, slots=True)
class TrackView:
    """A caption file of the video."""

    src: str
    language: str
    label: str
    default: bool


@dataclass(frozen=True, slots=True)
class ChapterView:
    """The part of the video that leads to a stop."""

    label: str
    """Heading of the stop."""
    href: str
    """Address of the stop on the page."""
    at: str
    """``0:41``: where the part begins."""
    start: float
    end: float
    """Seconds."""
    pause: str
    """``0:54``: the pause point at its end, or empty."""


@dataclass(frozen=True, slots=True)
class ElsewhereView:
    """A recording that another site shows."""

    href: str
    says: str
    """Where the link leads, and whose rules hold there."""


@dataclass(frozen=True, slots=True)
class VideoView:
    """The recording."""

    src: str
    """Address of the file, or empty where only another site shows it."""
    poster: str
    """Address of a still, or empty."""
    tracks: tuple[TrackView, ...]
    chapters_track: str
    """Address of the chapters as WebVTT, or empty."""
    pauses: tuple[tuple[str, str], ...]
    """Seconds and the stop each pause belongs to."""
    chapters: tuple[ChapterView, ...]
    transcript: str
    """Address of the page with what is said, or empty where there are no captions."""
    elsewhere: ElsewhereView | None


@dataclass(frozen=True, slots=True)
class LessonView:
    """A lesson page."""

    page: PageView
    id: str
    title: str
    summary: Markup
    notice: str
    """That parts are not translated yet, or empty."""
    meta: str
    """``grades 3–5 · 18 minutes``"""
    you_need: tuple[str, ...]
    goals: tuple[str, ...]
    video: VideoView | None
    stops: tuple[StopView, ...]
    corrections: Mapping[str, tuple[str, ...]]
    """By stop: numbers that changed after the video was made."""
    open_data: Markup
    """What the lesson is, as schema.org JSON-LD, safe inside a script block."""
    downloads: tuple[LinkView, ...]
    """Cards, worksheet, answer key."""
    notes: LinkView
    """The teaching notes."""
    styles_at: Mapping[str, tuple[str, ...]]
    """By id of the stop that first needs them: addresses of styles the page begins without."""
    pack: LinkView | None
    """The recording pack, where it is made."""
    take_home: LinkView | None
    """The lesson as one file to unpack; none in the preview."""
    care: tuple[str, ...]
    allergens: str
    """``Foods shown contain wheat and milk.``, or empty."""
    stamp: str


@dataclass(frozen=True, slots=True)
class SaidView:
    """A sentence of the video."""

    at: str
    """``0:41``"""
    text: str


@dataclass(frozen=True, slots=True)
class TranscriptView:
    """All that is said in a video."""

    page: PageView
    title: str
    back: LinkView
    language: str
    """Of what is said; the page around it may be in another."""
    parts: tuple[tuple[LinkView, tuple[SaidView, ...]], ...]
    """A link to the stop that each part leads to, and its sentences."""


@dataclass(frozen=True, slots=True)
class CardSheetView:
    """One sheet of four cards."""

    cards: tuple[MoveCardView, ...]
    number: int


@dataclass(frozen=True, slots=True)
class CardsView:
    """The movement cards of a lesson."""

    page: PageView
    title: str
    back: LinkView
    sheets: tuple[CardSheetView, ...]
    stops: tuple[MoveView, ...]
    qr: Markup
    """SVG of the lesson's address; empty while the site has none."""
    address: str
    stamp: str


@dataclass(frozen=True, slots=True)
class PracticeView:
    """A practice problem made from a seed."""

    number: int
    says: str
    """``240 − 160 =``"""
    answer: str
    larger_number: str
    smaller_number: str
    """Digits for a machine."""


@dataclass(frozen=True, slots=True)
class SizeView:
    """How large the numbers of practice are."""

    largest: int
    label: str
    """``up to 1,000``"""
    chosen: bool
    """Whether it is the one of the lesson's grades."""


@dataclass(frozen=True, slots=True)
class PracticePageView:
    """Problems without end to practice subtraction, the first of them complete without script."""

    page: PageView
    title: str
    back: LinkView
    seed: str
    sizes: tuple[SizeView, ...]
    problems: tuple[PracticeView, ...]
    stamp: str


@dataclass(frozen=True, slots=True)
class SheetView:
    """The worksheet, or the answer key: the same problems, with answers or with room for them."""

    page: PageView
    title: str
    meta: str
    back: LinkView
    answers: bool
    """Whether the answers are printed."""
    stops: tuple[StopView, ...]
    """In the order of the lesson; what is only watched is left out."""
    practice: tuple[PracticeView, ...]
    qr: Markup
    address: str
    stamp: str


@dataclass(frozen=True, slots=True)
class LessonCardView:
    """A lesson in the list on the front page."""

    href: str
    title: str
    summary: Markup
    meta: str
    topic: str
    """Measures it compares."""
    grades: str
    """Every grade it is for, ``3 4 5``; kindergarten is 0."""
    minutes: int
    topics: str
    """Names of the topics, ``energy sodium``."""
    languages: str
    """Tags of the languages it is there in, ``en es``."""


@dataclass(frozen=True, slots=True)
class FilterView:
    """Something to choose lessons by."""

    name: str
    """Also the name in the page's address."""
    label: str
    choices: tuple[tuple[str, str], ...]
    """Value and wording; the first chooses every lesson."""


@dataclass(frozen=True, slots=True)
class HomeView:
    """The front page."""

    page: PageView
    title: str
    intro: Markup
    filters: tuple[FilterView, ...]
    lessons: tuple[LessonCardView, ...]
    count: str
    """``5 lessons``"""


@dataclass(frozen=True, slots=True)
class ProseView:
    """A hand-written page."""

    page: PageView
    title: str
    body: Markup


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


@dataclass(frozen=True, slots=True)
class LikelyView:
    """A wrong answer, and what it tells."""

    answer: str
    means: str


@dataclass(frozen=True, slots=True)
class AnswerView:
    """The answer of one row, for the teacher."""

    legend: str
    lines: tuple[str, ...]
    says: str
    likely: tuple[LikelyView, ...]


@dataclass(frozen=True, slots=True)
class CountTruthView:
    """One move's count beside the real computation; for adults only."""

    move: str
    count: str
    says: str
    """Minutes of the move for a typical child with the formula, or that nothing is published."""


@dataclass(frozen=True, slots=True)
class StopSourcesView:
    """Where the numbers of one stop come from."""

    id: str
    """Of the stop."""
    heading: str
    sources: tuple[SourceView, ...]


@dataclass(frozen=True, slots=True)
class NotesView:
    """The teacher's page of a lesson."""

    page: PageView
    title: str
    meta: str
    back: LinkView
    summary: Markup
    goals: tuple[str, ...]
    standards: tuple[tuple[str, str], ...]
    """Code and paraphrase."""
    you_need: tuple[str, ...]
    plan: tuple[PlanView, ...]
    answers: tuple[AnswerView, ...]
    talks: tuple[TalkView, ...]
    count_truth: tuple[CountTruthView, ...]
    adaptations: tuple[str, ...]
    care: tuple[str, ...]
    allergens: str
    sources: tuple[StopSourcesView, ...]
    days: bool
    """Whether a day's need was estimated."""
    downloads: tuple[LinkView, ...]
    stamp: str


@dataclass(frozen=True, slots=True)
class ComponentsView:
    """The page of all components in all states."""

    page: PageView
    stops: tuple[StopView, ...]
    """One of each kind."""
    piles: tuple[BlocksView, ...]
    tens: BlocksView
    """A number with its hundreds taken apart."""
    days: tuple[DayView, ...]
    """One day leaning each way; none where no lesson has a day."""
