"""How fast a FoodData Central download of a million rows is read, and how much memory that takes.

Run `python bench/import.py`, or with another number of rows: `python bench/import.py 5000000`.
The download is made up here, in the official layout; SR Legacy holds about 640,000 such rows.
"""

from __future__ import annotations

import io
import json
import resource
import subprocess
import sys
import tempfile
import time
import zipfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
KEPT = (1003, 1004, 1005, 1008, 1063, 1079, 1093, 1258, 2000, 2047, 2048)
NUTRIENTS = (*KEPT, *range(1100, 1169))
"""80 for each food, as in a full SR Legacy record; the rest is skipped, as vitamins are."""
UNITS = {1008: "KCAL", 2047: "KCAL", 2048: "KCAL", 1093: "MG"}
ROWS_A_SECOND, MEGABYTES = 50_000, 300
"""What must be reached."""


def main(rows: int) -> int:
    """Measure three runs, each in a process of its own; prints the median and the largest."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "download.zip"
        _make(file, rows // len(NUTRIENTS))
        runs = [_run(file, Path(folder) / str(number)) for number in range(3)]
    seconds = sorted(run["seconds"] for run in runs)[1]
    megabytes = max(run["megabytes"] for run in runs)
    speed = rows / seconds
    print(f"{rows:,} nutrient rows in {seconds:.1f} s: {speed:,.0f} rows a second")
    print(f"  {speed / ROWS_A_SECOND:.1f} times the {ROWS_A_SECOND:,} asked for")
    print(f"{megabytes:.0f} MB of memory at the most, of {MEGABYTES} MB allowed")
    return 0 if speed >= ROWS_A_SECOND and megabytes <= MEGABYTES else 1


def measure(file: Path, root: Path) -> None:
    """One import, as the command does it; prints seconds and megabytes for `main` to read."""
    sys.path.insert(0, str(ROOT))
    from generator.author.foods import import_download  # noqa: PLC0415  # after the path is set

    before = time.perf_counter()
    import_download(root, file, lambda _read, _total: None)
    seconds = time.perf_counter() - before
    kilobytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    print(json.dumps({"seconds": seconds, "megabytes": kilobytes / 1024}))


def _run(file: Path, root: Path) -> dict[str, float]:
    root.mkdir()
    command = [sys.executable, __file__, "--measure", str(file), str(root)]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
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


if __name__ == "__main__":
    if sys.argv[1:2] == ["--measure"]:
        measure(Path(sys.argv[2]), Path(sys.argv[3]))
    else:
        sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000))
