"""A question at a pause point, with its hint and its answer on request."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import ConfigDict, model_validator

from generator.model.asked import Choice, Sum, Which, check_choices
from generator.model.stops.base import PauseStop, StopId
from generator.model.text_marks import Text


class AskStop(PauseStop):
    """Ask, and reveal when the learner wants to check."""

    model_config = ConfigDict(
        json_schema_extra={
            "anyOf": [{"required": ["prompt", "reveal"]}, {"required": ["asks_again"]}]
        }
    )

    kind: Literal["ask"] = "ask"
    prompt: Text | None = None
    """The question; needed unless it `asks_again`."""
    hint: Text | None = None
    """A small step toward the answer."""
    reveal: Text | None = None
    """The answer, shown on request; needed unless it `asks_again`."""
    choices: tuple[Choice, ...] = ()
    """Answers to choose from, one of them with `right: true`; without them the question is open."""
    answer: Sum | None = None
    """Instead of `choices`: the answer as arithmetic over names of numbers, as `trace` prints them."""
    which: Which | None = None
    """Instead of `choices`: which food or side of a comparison it is."""
    asks_again: StopId | None = None
    """Instead of a question of its own: id of an `ask` above, whose question is asked once more. What is answered there is neither right nor wrong yet, and hint and answer wait until here, so that it shows what was learned in between."""

    @model_validator(mode="after")
    def _asks(self) -> Self:
        for key in ("prompt", "reveal"):
            if self.asks_again is None and getattr(self, key) is None:
                raise ValueError(
                    f"has no `{key}:`: add it, or `asks_again:` with the id of an ask stop above"
                )
        return self

    @model_validator(mode="after")
    def _one_answer(self) -> Self:
        check_choices(self.choices)
        if sum((bool(self.choices), self.answer is not None, self.which is not None)) > 1:
            raise ValueError("takes only one of `choices:`, `answer:` and `which:`")
        return self

    @property
    def looked_back_at(self) -> bool:
        """Unless one of its own choices is right."""
        return not (self.choices or self.asks_again)

    @property
    def repeats(self) -> str | None:
        """The stop that asks first."""
        return self.asks_again

    @property
    def right_choice(self) -> int | None:
        """The number of the one that is right, from 0."""
        return next((at for at, one in enumerate(self.choices) if one.right), None)

    @property
    def computed(self) -> tuple[str | None, Which | None] | None:
        """Its sum, or what it chooses among."""
        return (self.answer, self.which) if self.answer or self.which else None

    def _about(self) -> str:
        return self.prompt or ""
