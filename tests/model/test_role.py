"""A role may be kept; what looks like somebody's name, or leads to somebody, is refused with a sentence."""

from __future__ import annotations

import pytest

from generator.model.role import not_a_name


@pytest.mark.parametrize(
    "role",
    [
        "registered dietitian",
        "registered dietitian (RDN)",
        "school nurse",
        "teacher of grade 4",
        "teacher of grade K",
        "SNAP educator",
        "dietista registrada",
        "maestra de 4.º grado",
        "médica de familia",
    ],
)
def test_a_role_is_kept_as_it_is(role: str) -> None:
    assert not_a_name(role) == role


@pytest.mark.parametrize(
    "name",
    [
        "Jane Miller",
        "jane Miller",
        "J. miller",
        "JANE MILLER",
        "MILLER the nurse",
        "Dr. miller",
        "dr miller",
        "sra. pérez",
        "dietitian Ana",
        "Ángela",
        "nurse O'Neill",
    ],
)
def test_what_may_be_a_name_is_refused_with_a_word_on_privacy(name: str) -> None:
    with pytest.raises(ValueError, match="may be somebody's name: no name is kept; write what"):
        not_a_name(name)


@pytest.mark.parametrize("way", ["nurse@school.example", "nurse, 555 0100", "https://a.example"])
def test_what_leads_to_one_person_is_refused(way: str) -> None:
    with pytest.raises(ValueError, match="leads to one person"):
        not_a_name(way)


def test_signs_alone_are_no_role() -> None:
    with pytest.raises(ValueError, match="says no role"):
        not_a_name("4 +")
