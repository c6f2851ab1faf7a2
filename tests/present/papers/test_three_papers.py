"""Movement cards, family sheet and teaching notes as files: sheets, letters, words and figures."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.author.papers import papers_of
from generator.present.papers.paper import Size
from tests.made_papers import info, structure, words
from tests.outside.pdf_parts import opened
from tests.outside.pictures import pictures
from tests.paper_lesson import every_move, write_lesson

MOST_SHEETS = {"family": 1, "family-large": 2, "notes": 5}
"""A family gets one sheet; a teacher carries five."""

LINE = 0.3
"""What of a column of dots is dark where a dashed line goes down most of the sheet, and nowhere else."""


def of(made: Path, name: str) -> list[Path]:
    found = sorted(made.rglob(f"papers/{name}-*.pdf"))
    assert found, name
    return found


@pytest.mark.parametrize("name", MOST_SHEETS)
def test_no_paper_takes_more_sheets_than_are_carried(made_papers: Path, name: str) -> None:
    large = name.endswith("large")
    for file in of(made_papers, name):
        if large or "-large-" not in file.name:
            assert int(info(file)["Pages"]) <= MOST_SHEETS[name], file


def test_a_card_has_its_count_two_figures_and_the_seated_way(made_papers: Path) -> None:
    file = made_papers / "soup-night/papers/cards-a4.pdf"
    said, tags = words(file), structure(file)
    # 270 and 430 by twenties, by hand: 13 and 10 left over, 21 and 10 left over.
    for one in ("270 ÷ 20 = 13, and 10 left over", "430 ÷ 20 = 21, and 10 left over"):
        assert one in said
    assert said.count("Seated: ") == 2
    assert len(re.findall(r"^\s*Figure\b", tags, re.MULTILINE)) == 2 * (2 + 2 + 1)  # with the codes
    assert len(re.findall(r"^\s*H2\b", tags, re.MULTILINE)) == 2 + 1  # with the adult's


@pytest.mark.parametrize(
    ("lesson", "says"),
    [
        ("soup-night", "Knee to hands, seated, picture 2 of 2"),
        ("es/soup-night", "Rodilla a las manos, en silla, dibujo 2 de 2"),
    ],
)
def test_figures_are_told_in_words(made_papers: Path, lesson: str, says: str) -> None:
    parts = opened((made_papers / lesson / "papers/cards-a4.pdf").read_bytes()).parts
    told = [part.held.get("/Alt") for part in parts]
    assert says in told


def test_lines_to_cut_lie_alike_on_both_sides(made_papers: Path) -> None:
    """Their middle is the middle of the paper, so that two sheets back to back are cut at once."""
    for file in of(made_papers, "cards"):
        sheet = pictures(file.read_bytes(), 72)[0]
        dark = (sheet < 200).mean(axis=0)
        columns = [at for at, share in enumerate(dark) if share > LINE]
        assert columns, file
        assert abs(columns[0] + columns[-1] - (sheet.shape[1] - 1)) <= 1, file


def test_notes_have_a_table_with_heads(made_papers: Path) -> None:
    parts = opened((made_papers / "soup-night/papers/notes-a4.pdf").read_bytes()).parts
    kinds = [part.kind for part in parts]
    assert kinds.count("TH") >= 3
    assert kinds[: kinds.index("Table")].count("H1") == 1


def test_notes_print_all_that_their_page_prints(made_papers: Path) -> None:
    said = words(made_papers / "soup-night/papers/notes-a4.pdf")
    for heading in ("Goals", "Standards", "Plan", "With a class of 25", "What to look for", "Care"):
        assert heading in said
    assert "METy" not in said, "the computation stays on the screen, for adults"


def test_the_gap_to_find_again_is_told_only_upside_down(made_papers: Path) -> None:
    """1,200 − 770 = 430, by hand; a family sees the other gaps of the lesson above it."""
    said = words(made_papers / "soup-night/papers/family-a4.pdf")
    above, turned = said.split("Answer:")
    assert "430" not in above
    assert "430 mg more" in turned
    for other in ("380 mg more", "270 mg more", "160 mg more"):
        assert other in above


@pytest.mark.parametrize(("moves", "sheets"), [(1, 1), (4, 1), (5, 2), (9, 3)])
def test_many_cards_go_four_to_a_sheet(tmp_path: Path, moves: int, sheets: int) -> None:
    """And one sheet more for the adult; every card is whole on its sheet."""
    write_lesson(tmp_path, every_move()[:moves])
    files = {one.path: one.content for one in papers_of(tmp_path, sizes=[Size.LETTER])}
    file = tmp_path / "cards.pdf"
    file.write_bytes(files["print/papers/cards-letter.pdf"])
    assert int(info(file)["Pages"]) == sheets + 1
    assert words(file).count("Seated: ") == moves
