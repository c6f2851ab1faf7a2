"""QR codes are read back as the addresses they were made of."""

from __future__ import annotations

import pytest

from generator.present.pictures.qr import qr_code
from tests.qr_reader import read_code


@pytest.mark.parametrize("letters", [0, 10, 14, 20, 30, 40, 50, 60, 70])
def test_a_code_is_read_as_its_address(letters: int) -> None:
    """Of every size from version 2 to 6."""
    address = (
        f"https://kitchen.larkmead.example/{'soup-night'[: letters % 10 or 10] * (letters // 10)}"
    )
    assert read_code(qr_code(address)) == address


def test_without_an_address_there_is_no_code() -> None:
    assert qr_code("") == ""
