"""What copies of the project share in the tests is what each would have worked out, told with its own file."""

from __future__ import annotations

from collections.abc import Callable
from types import CodeType

from generator.present.assets.quick import QuickEnvironment
from tests.once_each import once_each


def compiled(folder: str, text: str = "{{ view.name }}") -> CodeType:
    compile_: Callable[..., CodeType] = QuickEnvironment().compile
    return compile_(text, "page.html", f"{folder}/page.html")


def test_a_template_is_compiled_once_and_keeps_the_file_of_each_copy() -> None:
    alone = compiled("here")
    with once_each():
        first, second = compiled("here"), compiled("there")
    assert (first.co_filename, second.co_filename) == ("here/page.html", "there/page.html")
    assert first.co_code == second.co_code == alone.co_code
    inner = [one for one in second.co_consts if isinstance(one, CodeType)]
    assert inner
    assert {one.co_filename for one in inner} == {"there/page.html"}


def test_another_text_is_another_template() -> None:
    with once_each():
        first, second = compiled("here"), compiled("here", "{{ view.title }}")
    assert "title" in _names(second)
    assert "title" not in _names(first)


def _names(code: CodeType) -> str:
    inner = (_names(one) for one in code.co_consts if isinstance(one, CodeType))
    return " ".join((*map(str, code.co_consts), *code.co_names, *inner))


def test_what_is_shared_ends_with_the_block() -> None:
    whole = QuickEnvironment.compile
    with once_each():
        assert QuickEnvironment.compile is not whole
    assert QuickEnvironment.compile is whole
