"""What the page for finish codes saves is what the report reads."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path

import pytest

from generator.read.finish_codes.file import read_file
from generator.read.finish_codes.row import CodeRow

HERE = Path(__file__).parent
SAVED = """
import { readFileSync } from "node:fs";
import { csvOf } from "../../theme/js/class-csv.js";
import { cellsOf } from "../../theme/js/class-rows.js";
process.stdout.write(csvOf(JSON.parse(readFileSync(0, "utf-8")).map(cellsOf)));
"""
TOLD = {
    "numbers": 1204,
    "stops": [{"id": "hello"}, {"id": "rows"}],
    "answers": [{"id": "rows.apple-raw_pear-raw.gap", "stop": "rows"}],
    "twice": [{"id": "hello", "again": 0}],
}
BEGINS = ("0", "5", "10", "15", "20", "30", "45", "60")
"""Where each step of minutes begins."""


def test_every_row_is_read(tmp_path: Path) -> None:
    """Labels as somebody may type them, and every step of minutes."""
    node = shutil.which("node")
    if node is None:
        pytest.skip("no Node here: what the page saves is not made apart from it")
    labels = ("Zoë", '=1+1, "A"', "two\nlines", "", "'", "@b", "a;b", "tab\tbed")
    rows = [
        {
            "label": label,
            "code": "7K3M-9QRT-4",
            "folder": "soup-night",
            "told": TOLD,
            "finished": {
                "stops": [1, step % 2],
                "answers": [2],
                "before": [1],
                "after": [step % 3],
                "step": step,
            },
        }
        for step, label in enumerate(labels)
    ]
    done = subprocess.run(
        [node, "--input-type=module", "-e", SAVED],
        cwd=HERE, input=json.dumps(rows), capture_output=True, encoding="utf-8", check=True,
    )  # fmt: skip
    file = tmp_path / "class.csv"
    file.write_text(done.stdout, "utf-8", newline="")
    assert list(read_file(file, file.name)) == [
        CodeRow(
            "soup-night",
            "1204",
            "7K3M9QRT4",
            "hello rows" if step % 2 else "hello",
            f"hello=w{'nwr'[step % 3]}",
            "rows.apple-raw_pear-raw.gap=f",
            begins,
        )
        for step, begins in enumerate(BEGINS)
    ]
