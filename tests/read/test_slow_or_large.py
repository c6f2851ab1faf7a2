"""Files that once kept the program busy for seconds or filled the memory: each is refused by its size, or told shortly.

The cases of a table that was measured by hand, with the sizes it had. What they took then is not
looked at here; that little is done now is.
"""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from generator.problems import MOST_A_FILE, shortened
from generator.read.source import Source, read_source
from tests.project import GOOD, problems

_LETTERS = "abcdefghijklm"
_ROW = "        - [{food: bagel-plain, amount: 1 bagel}, {food: oatmeal-cooked, amount: 1 cup}]\n"


def bomb(levels: int) -> str:
    """Nine times nine times nine … of one value, in a few lines."""
    rest = (
        f"{new}: &{new} [{','.join([f'*{old}'] * 9)}]\n"
        for old, new in pairwise(_LETTERS[: levels + 1])
    )
    return "a: &a [x]\n" + "".join(rest)


def saying(words: str, times: int) -> str:
    return GOOD.replace("Hello from Larkmead.", (words * times).strip())


def with_rows(rows: str) -> str:
    return GOOD.replace("      rows:\n", "      rows:\n" + rows, 1)


CASES = {
    "an alias bomb of 6 lines": (bomb(5), "no value is repeated here"),
    "an alias bomb of 12 lines": (bomb(12), "no value is repeated here"),
    "100 kB repeated 199,000 times": (f"a: &a {'x' * 100_000}\nb: [{'*a,' * 199_000}]\n", "far too large"),
    "1,000 unknown foods": (
        with_rows("".join(f"        - [{{food: x{i}, amount: 1 cup}}, {{food: y{i}, amount: 1 cup}}]\n" for i in range(500))),
        "there is no food `x0`",
    ),
    "5,000 stops": (GOOD + "".join(f"  - talk: {{id: t{i}, prompt: a}}\n" for i in range(5_000)), "far too large"),
    "almost double 1,500 times": (saying("almost double ", 1_500), "`say` is too long"),
    "one 5,000 times": (saying("one ", 5_000), "`say` is too long"),
    "twice as many as 1,000 times": (saying("twice as many as ", 1_000), "`say` is too long"),
    "120 kcal 2,000 times": (saying("120 kcal ", 2_000), "`say` is too long"),
    "250,000 quoted keys and a wrong line": (
        "{" + ",".join(f'"k{i}": 1' for i in range(250_000)) + "}\n - wrong: [",
        "far too large",
    ),
    "20,000 rows": (with_rows(_ROW * 20_000), "far too large"),
    "5,000 times the same key": (GOOD + "minutes: 5\n" * 5_000, "`minutes` is written twice"),
    "3,000 unknown keys": (GOOD + "".join(f"k{i}: 1\n" for i in range(3_000)), "k0"),
    "2,000 wrong stops": (GOOD + "  - foo: {}\n" * 2_000, "foo"),
    "a title of 10 MB": (GOOD.replace("title: ", f"title: {'x' * 10_000_000}", 1), "far too large"),
    "10,000 brackets": ("[" * 10_000, "brackets stand inside brackets"),
}  # fmt: skip


@pytest.mark.parametrize(("text", "what"), CASES.values(), ids=CASES)
def test_it_is_told_shortly(tmp_path: Path, text: str, what: str) -> None:
    told = shortened(problems(tmp_path, text))
    assert any(what in one.what for one in told), [str(one) for one in told[:5]]
    assert len(told) <= MOST_A_FILE + 1
    assert sum(len(str(one)) for one in told) < 20_000


@pytest.mark.parametrize(
    "name", [name for name, (_, what) in CASES.items() if what == "far too large"]
)
def test_what_is_far_too_large_is_not_taken_apart(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    apart: list[str] = []

    def noted(path: str, text: str) -> Source:
        apart.append(path)
        return read_source(path, text)

    monkeypatch.setattr("generator.read.lesson.read_source", noted)
    assert len(problems(tmp_path, CASES[name][0])) == 1
    assert apart == []


def test_a_file_with_many_problems_is_parted_into_lines_once() -> None:
    source = read_source("a.yaml", "a: 1\nb: 2\n")
    assert source.places.lines == ("a: 1", "b: 2")
    assert source.places.lines is source.places.lines
