"""What a sentence says of two numbers is asked about where it is wrong, and nowhere else.

The sets in ``tests/said/`` hold each sentence with its truth, which is arithmetic on their rows.
"""

from __future__ import annotations

import pytest

from tests.said.asked import of_sentence
from tests.said.sets import LANGUAGES, NOT_YET, SENTENCES, Sentence, about, sentences

EVERY = [(name, one) for name in SENTENCES for tag in LANGUAGES for one in sentences(name, tag)]


@pytest.mark.parametrize(("name", "sentence"), EVERY, ids=str)
def test_a_sentence_is_asked_about_where_it_is_wrong(name: str, sentence: Sentence) -> None:
    asked = of_sentence(about(name, sentence.language), sentence.text)
    assert bool(asked) is (sentence.truth == "F"), asked


@pytest.mark.parametrize("name", SENTENCES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_not_read_yet_is_moved_up_once_it_is(name: str, language: str) -> None:
    for sentence in sentences(name, language, NOT_YET):
        asked = of_sentence(about(name, language), sentence.text)
        assert bool(asked) is not (sentence.truth == "F"), sentence
