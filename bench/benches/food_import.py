"""How fast a FoodData Central download of a million rows is read, and how much memory that takes.

The download is made up here, in the official layout; SR Legacy holds about 640,000 such rows.
"""

from __future__ import annotations

import io
import json
import shutil
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Iterator
from pathlib import Path
from statistics import median

from bench.measuring import full_download
from bench.measuring.process import PLUMLINE, ROOT, environment, middle, run
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told

ROWS = 1_000_000
PACKAGES = 2_000_000
"""About as many as the release of 30 April 2026 holds: references.md 11.1."""
SEARCHES = (
    ("cheddar", "soup"),
    ("brocoli",),
    ("001105904",),
    ("soup", "--measure", "sodium", "--from", "300", "--to", "500"),
)
"""Words that many packages have, a slip of the finger, a number, and a value."""
MILLIGRAMS = (1087, 1089, 1092, 1093, 1162)
KEPT = (1003, 1004, 1005, 1008, 1063, 1079, *MILLIGRAMS, 1258, 2000, 2033, 2047, 2048)
NUTRIENTS = (*KEPT, *range(1100, 1162), *range(1163, 1165))
"""80 for each food, as in a full SR Legacy record; the rest is skipped, as most vitamins are."""
UNITS = dict.fromkeys((1008, 2047, 2048), "KCAL") | dict.fromkeys(MILLIGRAMS, "MG")
_IMPORT = """
import json, resource, sys, time
from pathlib import Path
from generator.author.foods import import_download
before = time.perf_counter()
done = import_download(Path(sys.argv[2]), Path(sys.argv[1]), lambda read, total: None)
seconds = time.perf_counter() - before
unit = 1024**2 if sys.platform == "darwin" else 1024
peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / unit
told = {"values": sum(one.values for one in done), "foods": sum(one.foods for one in done)}
print(json.dumps({"seconds": seconds, "peak": peak, **told}))
"""
"""One import, as the command does it, in a process of its own."""


def rows(case: Case) -> Iterator[Row]:
    """Medians of several runs; the largest memory."""
    number = 8_000 if case.small else ROWS
    with tempfile.TemporaryDirectory() as name:
        file = Path(name) / "download.zip"
        _make(file, number // len(NUTRIENTS))
        runs = [_run(file, Path(name) / str(turn)) for turn in range(case.runs)]
    if not all(run["values"] for run in runs):
        raise NothingMeasuredError("no value was read")
    yield told("food download, rows", number, "rows")
    yield row("import", number / median(run["seconds"] for run in runs))
    yield row("import_memory", max(run["peak"] for run in runs))
    yield from _full(case)


def _full(case: Case) -> Iterator[Row]:
    """The download with all packages, once: two million of them fill two gigabytes of disk."""
    foods = 2_000 if case.small else PACKAGES
    with tempfile.TemporaryDirectory() as name:
        root = Path(name) / "site"
        shutil.copytree(ROOT / "site_data", root / "site_data")
        (root / "lessons").mkdir()
        figures = full_download.make(Path(name) / "full.zip", foods)
        done = _run(Path(name) / "full.zip", root)
        if done["foods"] != foods:
            raise NothingMeasuredError(f"{done['foods']:.0f} of {foods} packages were read")
        yield told("full food download, packages", foods, "foods")
        yield told("full food download, rows of figures", figures, "rows")
        yield row("full_import", done["seconds"])
        yield row("full_import_memory", done["peak"])
        for words in SEARCHES[:1] if case.small else SEARCHES:
            command = (*PLUMLINE, "foods", "find", *words)
            found = middle(run(command, root) for _ in range(case.runs))
            yield row("full_find", found.seconds, " ".join(words))


def _run(file: Path, root: Path) -> dict[str, float]:
    root.mkdir(exist_ok=True)
    command = [sys.executable, "-c", _IMPORT, str(file), str(root)]
    done = subprocess.run(
        command, check=True, capture_output=True, text=True, env=environment(root)
    )
    measured: dict[str, float] = json.loads(done.stdout)
    return measured


def _make(file: Path, foods: int) -> None:
    ids = range(200_000, 200_000 + foods)
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        archive.writestr("measure_unit.csv", '"id","name"\n"9999","undetermined"\n')
        lines = [f'"{n}","Nutrient {n}","{UNITS.get(n, "G")}"\n' for n in NUTRIENTS]
        archive.writestr("nutrient.csv", '"id","name","unit_name"\n' + "".join(lines))
        head = '"fdc_id","data_type","description","food_category_id","publication_date"\n'
        lines = [f'"{i}","sr_legacy_food","Food {i}, cooked","1","2019-04-01"\n' for i in ids]
        archive.writestr("food.csv", head + "".join(lines))
        head = (
            '"id","fdc_id","seq_num","amount","measure_unit_id","portion_description",'
            '"modifier","gram_weight"\n'
        )
        lines = [f'"{i}","{i}","1","1","9999","","cup","{100 + i % 90}"\n' for i in ids]
        archive.writestr("food_portion.csv", head + "".join(lines))
        with archive.open("food_nutrient.csv", "w", force_zip64=True) as packed:
            _write_nutrients(io.TextIOWrapper(packed, "utf-8"), ids)


def _write_nutrients(text: io.TextIOWrapper, foods: range) -> None:
    text.write(
        '"id","fdc_id","nutrient_id","amount","data_points","derivation_id","min","max","median",'
        '"footnote","min_year_acquired"\n'
    )
    for food in foods:
        text.writelines(
            f'"{food}{number}","{food}","{nutrient}","{(food + nutrient) % 97}.{number}","1","4",'
            '"","","","",""\n'
            for number, nutrient in enumerate(NUTRIENTS)
        )
    text.flush()
    text.detach()
