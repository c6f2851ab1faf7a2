"""What one file of the download says that the next ones need."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field

from generator.read.fooddata.layout import KINDS, Kind
from generator.read.fooddata.marks import Marks
from generator.read.fooddata.table import whole

_BY_MARK = (None, *KINDS.values())
_MARKS = {kind: mark for mark, kind in enumerate(KINDS, 1)}
_OTHER = 255


@dataclass(slots=True)
class Seen:
    """Which foods there are, and what was left out of each kind."""

    _marks: Marks = field(default_factory=Marks, repr=False)
    """Kind of every record of ``food.csv``, samples too."""
    published: dict[str, str] = field(default_factory=dict)
    """Newest publication date of each data type that is kept."""
    others: Counter[str] = field(default_factory=Counter)
    """Records of other data types."""
    foods: Counter[str] = field(default_factory=Counter)
    """Foods that are kept, by data type."""
    values: Counter[str] = field(default_factory=Counter)
    """Amounts that are kept, by data type."""
    portions: Counter[str] = field(default_factory=Counter)
    """Portions that are kept, by data type."""
    weightless: Counter[str] = field(default_factory=Counter)
    """Portions with an amount or a weight of 0, by data type."""
    unmeasured: Counter[str] = field(default_factory=Counter)
    """Portions of a quantity that is not specified, by data type."""
    unfit: Counter[str] = field(default_factory=Counter)
    """Figures of labels that are none, by data type."""
    unsized: Counter[str] = field(default_factory=Counter)
    """Packages whose serving has no unit we know, by data type."""

    def note(self, fdc: int, data_type: str) -> bool:
        """Remember a record; whether it is the first of its id."""
        if self._marks[fdc]:
            return False
        self._marks[fdc] = _MARKS.get(data_type, _OTHER)
        return True

    def drop(self, fdc: int, data_type: str) -> None:
        """Leave out a package whose figures are for nobody knows how much."""
        self._marks[fdc] = _OTHER
        self.foods[data_type] -= 1
        self.unsized[data_type] += 1

    def knows(self, fdc: str) -> bool:
        """Whether ``food.csv`` has a record of this id."""
        return self._mark(fdc) != 0

    def kind(self, fdc: str) -> Kind | None:
        """The kind of a food that is kept; nothing for a sample and for what is no food."""
        mark = self._mark(fdc)
        return _BY_MARK[mark] if mark < len(_BY_MARK) else None

    def _mark(self, fdc: str) -> int:
        id_ = whole(fdc)
        return self._marks[id_] if id_ is not None else 0
