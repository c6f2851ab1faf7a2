"""What every stop of a lesson has, whatever its kind."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import TYPE_CHECKING, Annotated, ClassVar

from pydantic import Field, StringConstraints

from generator.model.base import Frozen
from generator.model.moment import Moment
from generator.model.names import InnerIds
from generator.model.text_marks import Code, Heading, Script

if TYPE_CHECKING:
    from generator.model.asked import Which

StopId = Annotated[Code, StringConstraints(pattern=r"^[a-z][a-z0-9]*(-[a-z0-9]+)*$", max_length=40)]
"""The stop's address on the page, and the name other stops call it by."""
FormerId = Annotated[Code, StringConstraints(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60)]
"""An address the stop had before, given or made of its words."""


class BaseStop(Frozen):
    """The common part of a stop."""

    entries_alone: ClassVar[Mapping[str, str]] = {}
    """Lists whose entries may be written as a list alone, and the key under which that list then belongs."""

    id: Annotated[
        StopId | None,
        Field(
            description="Address of the stop; without one it is made of the title, or of what the stop asks."
        ),
    ] = None
    formerly: Annotated[
        tuple[FormerId, ...],
        Field(
            max_length=20,
            description="Addresses the stop had before; old links and printed codes that name one lead here.",
        ),
    ] = ()
    title: Heading | None = None
    """Heading, where the kind's own word does not serve."""
    say: Script | None = None
    """Script the educator reads at this stop."""

    if TYPE_CHECKING:  # each kind declares both in its own way
        kind: str
        """The key that begins it in a lesson file."""

        @property
        def at(self) -> Moment | None:
            """Where it begins in the video, in seconds."""

    @classmethod
    def kind_name(cls) -> str:
        """The key that begins a stop of this class in a lesson file."""
        field = cls.model_fields.get("kind")
        return str(field.default) if field else ""

    @property
    def times(self) -> Mapping[str, Moment]:
        """The moments it names in the video, in seconds, by their keys and in their order."""
        return {} if self.at is None else {"at": self.at}

    @property
    def until(self) -> Moment | None:
        """Where it is watched through to; nothing where the player halts at its pause point."""
        return None

    @property
    def counts(self) -> tuple[str, Decimal] | None:
        """The stop whose gaps it counts, by its id, and how much of a gap stands for one count."""
        return None

    @property
    def looked_back_at(self) -> bool:
        """Whether its answer is a guess that a comparison below comes back to."""
        return False

    @property
    def computed(self) -> tuple[str | None, Which | None] | None:
        """How the answer to its question is computed, as arithmetic or as a choice; nothing where it is not."""
        return None

    @property
    def repeats(self) -> str | None:
        """The stop above whose question it asks once more, by its id; nothing for a question of its own."""
        return None

    @property
    def right_choice(self) -> int | None:
        """Which of its own choices is right, from 0; nothing where it has none."""
        return None

    @property
    def own_numbers(self) -> tuple[Decimal, ...]:
        """Numbers its page shows as the educator wrote them, besides those in its words."""
        return ()

    @property
    def inner_ids(self) -> InnerIds:
        """Names of what stands in it and has numbers; two may be equal here, which reading refuses."""
        return InnerIds()

    @property
    def called(self) -> str:
        """What the id is made of where the educator gave none, from the title down to the kind."""
        return self.title or self._about() or self.say or self.kind_name()

    def _about(self) -> str:
        """What the stop asks, or whom or what it is about; empty where its kind says nothing of it."""
        return ""


class PauseStop(BaseStop):
    """A stop that may halt the video."""

    at: Moment | None = None
    """Pause point, written as ``"1:10"``; held in seconds."""
