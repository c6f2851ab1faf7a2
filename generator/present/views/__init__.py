"""What the templates see: words and numbers ready to print, and nothing to compute.

Every text here is in the page's language and every number already formatted. A template
prints them, decides nothing, and escapes everything but ``Markup``.
"""

from generator.present.views.amounts import (
    BlocksView,
    ColumnView,
    HoldingView,
    OftenView,
    SourceView,
    WorkingView,
)
from generator.present.views.comparison import BarView, ChartView, RowView, TotalView
from generator.present.views.components import ComponentsView
from generator.present.views.home import FilterView, HomeView, LessonCardView, ProseView
from generator.present.views.lesson import LessonView
from generator.present.views.notes import (
    AnswerView,
    CountTruthView,
    LikelyView,
    NotesView,
    PlanView,
    StopSourcesView,
)
from generator.present.views.page import LanguageView, LinkView, PageView
from generator.present.views.paper import CardSheetView, CardsView, SheetView
from generator.present.views.practice import PracticePageView, PracticeView, SizeView
from generator.present.views.stops import (
    AskView,
    CompareView,
    DayView,
    EatenView,
    MoveCardView,
    MoveView,
    StopView,
    TalkView,
    WatchView,
)
from generator.present.views.video import (
    ChapterView,
    ElsewhereView,
    SaidView,
    TrackView,
    TranscriptView,
    VideoView,
)

__all__ = [
    "AnswerView",
    "AskView",
    "BarView",
    "BlocksView",
    "CardSheetView",
    "CardsView",
    "ChapterView",
    "ChartView",
    "ColumnView",
    "CompareView",
    "ComponentsView",
    "CountTruthView",
    "DayView",
    "EatenView",
    "ElsewhereView",
    "FilterView",
    "HoldingView",
    "HomeView",
    "LanguageView",
    "LessonCardView",
    "LessonView",
    "LikelyView",
    "LinkView",
    "MoveCardView",
    "MoveView",
    "NotesView",
    "OftenView",
    "PageView",
    "PlanView",
    "PracticePageView",
    "PracticeView",
    "ProseView",
    "RowView",
    "SaidView",
    "SheetView",
    "SizeView",
    "SourceView",
    "StopSourcesView",
    "StopView",
    "TalkView",
    "TotalView",
    "TrackView",
    "TranscriptView",
    "VideoView",
    "WatchView",
    "WorkingView",
]
