"""The command `foods pairs`: rows to paste, what would have to give, and a sentence for each slip."""

from __future__ import annotations

import pytest
import yaml
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.project import ROOT


def run(*words: str, code: int = 0) -> Result:
    result = CliRunner().invoke(commands, ["foods", "pairs", *words, "--root", str(ROOT)])
    assert result.exit_code == code, result.output
    return result


def test_rows_are_ready_to_paste_and_say_why() -> None:
    told = run(
        "--gap", "320", "--per", "10", "--left", "0", "--with", "apple-raw",
        "--groups", "fruit,sweets", "--without", "Milk", "--rows", "1",
    ).stdout  # fmt: skip
    assert yaml.safe_load(told.partition("\n\n")[0]) == [
        [
            {"food": "apple-pie-homemade", "amount": "1 slice"},
            {"food": "apple-raw", "amount": "1 medium"},
        ]
    ]
    # 410 − 90, FDC 175012 and 171688 [R]; on paper the hundred is traded, and no 0 stands between
    why = "# 410 − 90 = 320: with trading; 320 ÷ 10 = 32, nothing left over; within the caps of "
    assert told.lstrip().startswith(why)
    assert "; fruit beside sweets\n" in told or "; sweets beside fruit\n" in told
    assert "rows in energy, for grades 3-5." in told
    assert "our own order, no source" in told


def test_what_would_have_to_give() -> None:
    told = run("--gap", "100-400", "--per", "10", "--left", "0", "--trading", "zero").stdout
    lines = told.splitlines()
    assert lines[0] == "No row has all of this. Give up one:"
    assert [line.split(":")[0].strip() for line in lines[1:]] == [
        "--trading",
        "--per",
        "--left",
    ]


def test_a_gap_that_is_not_there_is_told_the_nearest() -> None:
    """No two of energy above 50 kcal, which a label rounds to tens, lie 33 to 34 apart."""
    told = run("--gap", "33-34", "--groups", "grains", "--with", "bagel-plain").stdout
    assert "  --gap: " in told
    assert told.strip().endswith("; the nearest gaps are 30 and 40 kcal")


def test_two_wishes() -> None:
    told = run("--gap", "900", "--groups", "fruit", "--with", "cola").stdout
    assert "no single wish is enough to give up. Give up two:" in told
    assert "  --gap and --with: " in told


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("--with aple-raw", "there is no `aple-raw`; did you mean `apple-raw`?"),
        ("--groups fruits", "did you mean `fruit`?"),
        ("--without nuts", "did you mean `peanuts`?"),
        ("--without gluten", "it can be eggs, fish, milk, peanuts"),
        ("--gap 60-20", "`60-20` runs backwards; write 20-60"),
        ("--gap few", "`few` is no such number; write 40 or 2.5"),
        ("--gap 20-", "`` is no such number"),
        ("--per 0", "no move stands for 0; write 5 or 10"),
        ("--per 1e9", "is no such number"),
        ("--per 0.25", "is no such number"),
        ("--left 2", "add --per, such as --per 10"),
        ("--per 5 --left 5", "less than 5 is left over"),
        ("--grades 5-3", "must run from a lower to a higher grade"),
        ("--measure sugars --with amaranth-cooked", "has no value for sugars; choose another food"),
        ("--rows 0", "is not in the range"),
    ],
)
def test_a_slip_gets_a_sentence(words: str, says: str) -> None:
    result = run(*words.split(), code=2)
    assert says in " ".join(result.output.split())
