"""How much of a room the tests walk is counted over all its files, lines and branches together."""

from __future__ import annotations

from bench.covered import GOAL, by_room, table, unwalked


def counted(lines: int, of: int, branches: int = 0, out_of: int = 0) -> dict[str, int]:
    return {
        "covered_lines": lines,
        "num_statements": of,
        "covered_branches": branches,
        "num_branches": out_of,
    }


def test_a_room_is_all_its_files_and_a_file_at_the_top_a_room() -> None:
    found = by_room(
        {
            "generator/read/a.py": counted(10, 10, 2, 4),
            "generator/read/vtt/b.py": counted(4, 6),
            "generator/build.py": counted(3, 4),
            "generator/engine/__init__.py": counted(0, 0),
            "generator/__main__.py": counted(0, 50),
        }
    )
    assert found == {"build.py": 75, "read": 80}


def test_what_lies_under_the_goal_is_marked() -> None:
    lines = list(table({"check": GOAL, "read": GOAL - 0.1}))
    assert [line.endswith(f"under {GOAL}") for line in lines] == [False, True]


def test_what_no_test_walks_is_named_by_line_and_by_branch() -> None:
    summary = counted(1, 2)
    files = {
        "generator/read/a.py": {
            "summary": summary,
            "missing_lines": [7],
            "missing_branches": [[3, 7], [9, -4]],
        },
        "generator/read/b.py": {"summary": summary, "missing_lines": [], "missing_branches": []},
        "generator/__main__.py": {"summary": summary, "missing_lines": [1], "missing_branches": []},
    }
    assert list(unwalked(files)) == ["generator/read/a.py: 7, 3->7, 9->end"]
