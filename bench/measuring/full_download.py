"""A made-up full download of FoodData Central with its packages, as large as one likes.

The layout is that of references.md 11.1. Names, labels and figures are invented by a seed, so the
same size is the same file. `python -m bench.measuring.full_download FILE.zip 20000` makes one.
"""

from __future__ import annotations

import io
import sys
import zipfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from random import Random

FIRST = 1_105_904
"""Id of the first package."""
LABEL_NUTRIENTS = (
    1003,
    1004,
    1005,
    1008,
    2000,
    1079,
    1087,
    1089,
    1092,
    1093,
    1110,
    1253,
    1257,
    1258,
)
"""What a label gives, vitamin D, cholesterol and trans fat among it, which are read over."""
_UNITS = {1008: "KCAL", 1110: "IU"} | dict.fromkeys((1087, 1089, 1092, 1093, 1162, 1253), "MG")
_PLAIN = [
    "cheddar",
    "cheese",
    "soup",
    "bread",
    "bean",
    "corn",
    "oat",
    "bar",
    "milk",
    "apple",
    "rice",
    "cookie",
    "tomato",
    "chicken",
    "pasta",
]
_APART = 1_000
"""Of so many packages one has its last figure at the end of the file."""


def make(file: Path, foods: int) -> int:
    """Write a download of so many packages; returns how many rows its figures take."""
    chance = Random(7)  # noqa: S311  # the same download each time, and no secret
    names = [
        "".join(chance.choices("abdefgilmnoprstu", k=chance.randint(4, 9))) for _ in range(20_000)
    ]
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        archive.writestr("measure_unit.csv", '"id","name"\n"9999","undetermined"\n')
        archive.writestr("food_portion.csv", _head("food_portion"))
        nutrients = sorted({*LABEL_NUTRIENTS, 1162})
        lines = (f'"{n}","Nutrient {n}","{_UNITS.get(n, "G")}","",""\n' for n in nutrients)
        archive.writestr("nutrient.csv", _head("nutrient") + "".join(lines))
        with _table(archive, "food") as write:
            for fdc in range(FIRST, FIRST + foods):
                words = " ".join((*chance.choices(names, k=3), *chance.choices(_PLAIN, k=2)))
                write(f'"{fdc}","branded_food","{words.upper()}","","2026-04-16"\n')
        with _table(archive, "branded_food") as write:
            for fdc in range(FIRST, FIRST + foods):
                write(_label(fdc, chance))
        with _table(archive, "food_nutrient") as write:
            return _write_figures(write, range(FIRST, FIRST + foods))


def _write_figures(write: Callable[[str], object], foods: range) -> int:
    rows, apart = 0, []
    for fdc in foods:
        lines = [
            f'"{fdc}{at}","{fdc}","{nutrient}","{fdc * nutrient % 97}.{at}","","71","","","","","","",""\n'
            for at, nutrient in enumerate(LABEL_NUTRIENTS)
        ]
        if fdc % _APART == 0:
            apart.append(lines.pop())
        write("".join(lines))
        rows += len(lines)
    write("".join(apart))
    return rows + len(apart)


def _label(fdc: int, chance: Random) -> str:
    unit = "ml" if fdc % 7 == 0 else "g"
    serving = chance.choice(("2 cookies", "1 cup", "1 ONZ", "3 pieces", ""))
    inside = ", ".join(['WATER, SALT (""SEA"" SALT), SUGAR'] * 12)
    return (
        f'"{fdc}","Owner {fdc % 900}","Brand {fdc % 4_000}","","{fdc:014d}","{inside}","","{20 + fdc % 90}.0",'
        f'"{unit}","{serving}","Shelf {fdc % 300}","LI","","2026-01-01","2026-01-01","United States",'
        '"","","","",""\n'
    )


@contextmanager
def _table(archive: zipfile.ZipFile, name: str) -> Iterator[Callable[[str], object]]:
    with archive.open(f"{name}.csv", "w", force_zip64=True) as packed:
        text = io.TextIOWrapper(packed, "utf-8")
        text.write(_head(name))
        yield text.write
        text.flush()
        text.detach()


_HEADS = {
    "food": "fdc_id data_type description food_category_id publication_date",
    "nutrient": "id name unit_name nutrient_nbr rank",
    "food_nutrient": (
        "id fdc_id nutrient_id amount data_points derivation_id min max median loq footnote "
        "min_year_acquired percent_daily_value"
    ),
    "food_portion": (
        "id fdc_id seq_num amount measure_unit_id portion_description modifier gram_weight "
        "data_points footnote min_year_acquired"
    ),
    "branded_food": (
        "fdc_id brand_owner brand_name subbrand_name gtin_upc ingredients "
        "not_a_significant_source_of serving_size serving_size_unit household_serving_fulltext "
        "branded_food_category data_source package_weight modified_date available_date "
        "market_country discontinued_date preparation_state_code trade_channel short_description "
        "material_code"
    ),
}


def _head(name: str) -> str:
    return ",".join(f'"{column}"' for column in _HEADS[name].split()) + "\n"


if __name__ == "__main__":
    make(Path(sys.argv[1]), int(sys.argv[2]))
