"""The browser's arithmetic and clocks, by Node's own test runner, on the cases that Python runs too."""

from __future__ import annotations

import json
import random
import shutil
import subprocess
from decimal import Decimal
from pathlib import Path

import pytest
from babel import Locale
from babel.numbers import format_decimal

from generator.compute.mistakes import gap_answers, gap_mistake

HERE = Path(__file__).parent
OLDEST = 20
"""Node's test runner is stable from this version on."""


ASKED = """
import { readFileSync } from "node:fs";
import { gapMistake } from "../../theme/js/mistakes.js";
const calls = JSON.parse(readFileSync(0, "utf-8"));
console.log(JSON.stringify(calls.map(call => gapMistake(...call))));
"""

READ = """
import { readFileSync } from "node:fs";
import { readings } from "../../theme/js/read-tenths.js";
const calls = JSON.parse(readFileSync(0, "utf-8"));
console.log(JSON.stringify(calls.map(call => readings(...call))));
"""


@pytest.fixture
def node() -> str:
    """Node, where it is new enough."""
    node = shutil.which("node")
    if node is None:
        pytest.skip("no Node here: the browser's arithmetic is not run apart from the pages")
    told = subprocess.run([node, "--version"], capture_output=True, text=True, check=True).stdout
    if int(told.lstrip("v").partition(".")[0]) < OLDEST:
        pytest.skip(f"Node {told.strip()} is too old for its own test runner")
    return node


def test_python_and_the_browser_agree_on_what_no_example_holds(node: str) -> None:
    """Two thousand subtractions of tenths, each with the answer of one of its mistakes."""
    chance = random.Random(1978)  # noqa: S311 - nothing secret: a seed, so that a failure comes back
    calls: list[list[float]] = []
    for _ in range(2000):
        bottom, top = sorted(chance.choices(range(0, 20_000, chance.choice([5, 10, 100])), k=2))
        answers = [answer for made in gap_answers(top, bottom).values() for answer in made]
        calls.append([top, bottom, float(chance.choice(answers))])
    done = subprocess.run(
        [node, "--input-type=module", "-e", ASKED],
        cwd=HERE,
        input=json.dumps(calls),
        capture_output=True,
        text=True,
        check=True,
    )
    exact = [[Decimal(str(number)) / 10 for number in call] for call in calls]
    assert json.loads(done.stdout) == [gap_mistake(*numbers) or "" for numbers in exact]


def test_numbers_are_read_as_cldr_writes_them(node: str) -> None:
    """Numbers of tenths in six languages, as babel 2.18 writes them by CLDR 47, with and without groups."""
    chance = random.Random(1200)  # noqa: S311 - nothing secret: a seed, so that a failure comes back
    calls, wanted = [], []
    for _ in range(1500):
        tenths = chance.randrange(10 ** chance.randint(1, 6))
        locale = chance.choice(["en-US", "es-US", "es-MX", "es-ES", "es", "de-DE", "pt-BR"])
        written = format_decimal(
            Decimal(tenths) / 10,
            locale=Locale.parse(locale, sep="-"),
            group_separator=chance.random() < 0.7,
        )
        calls.append([f"{written}{chance.choice(['', ' g', ' kcal.'])}", locale])
        wanted.append(tenths)
    done = subprocess.run(
        [node, "--input-type=module", "-e", READ],
        cwd=HERE,
        input=json.dumps(calls),
        capture_output=True,
        text=True,
        check=True,
    )
    for call, tenths, found in zip(calls, wanted, json.loads(done.stdout), strict=True):
        assert found == [tenths], call


def test_arithmetic_and_clocks(node: str) -> None:
    files = sorted(str(file) for file in HERE.glob("*.test.js"))
    done = subprocess.run(
        [node, "--test", *files], cwd=HERE, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout
    ran = next(line for line in done.stdout.splitlines() if line.lstrip("ℹ# ").startswith("tests "))
    assert int(ran.split()[-1]) > 100, "the cases are not found any more"
