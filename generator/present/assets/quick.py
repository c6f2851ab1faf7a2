"""Templates that are filled thousands of times: no more is asked of a value than ours can answer.

Jinja asks every value that is called, or looked into, whether it wants more than its arguments, and
makes an object of every text it writes. Views are plain objects with the attributes they have, and
what is written goes into a page at once; leaving the questions out takes a third off a page.
"""

from __future__ import annotations

import re
from collections.abc import Callable, MutableMapping
from types import CodeType
from typing import Any

from jinja2 import Environment, Template
from jinja2.runtime import Context, Macro
from markupsafe import Markup, escape


class _QuickContext(Context):
    """What stands around one page while it is filled."""

    def call(self, called: Callable[..., object], /, *args: object, **named: object) -> object:
        """What a call in a template gives; only macros are told how texts are written here."""
        if isinstance(called, Macro):
            return super().call(called, *args, **named)
        named.pop("_loop_vars", None)
        named.pop("_block_vars", None)
        return called(*args, **named)


class _QuickTemplate(Template):
    """A template whose texts are written at once."""

    @classmethod
    def from_code(
        cls,
        environment: Environment,
        code: CodeType,
        globals: MutableMapping[str, Any],  # noqa: A002  # the name that jinja gives it
        uptodate: Callable[[], bool] | None = None,
    ) -> Template:
        """The template of what it is compiled to."""
        made = super().from_code(environment, code, globals, uptodate)
        made.root_render_func.__globals__["escape"] = _written
        return made


class QuickEnvironment(Environment):
    """Where templates are found and filled."""

    context_class = _QuickContext
    template_class = _QuickTemplate
    getattr = staticmethod(getattr)  # type: ignore[assignment]  # fewer questions is what this is for
    """An attribute that is not there is a mistake of ours, and is told as one."""


_SIGNS = re.compile("[&<>\"'\x02\x03]")
_NO_PLACES = {ord(sign): None for sign in "\x02\x03"}
"""Signs that mark open places (``present/form.py``); a text that holds them is none."""


def _written(value: object) -> str:
    """How a value stands in a page."""
    if type(value) is Markup:
        return value
    if type(value) is not str:
        return escape(value)
    return escape(value.translate(_NO_PLACES)) if _SIGNS.search(value) else value
