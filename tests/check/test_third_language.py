"""A language of which the program knows nothing and the library has no names: told, and marked."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path

import pytest

from generator.author.translation import begin_translation
from generator.check.interface_words import interface_translated
from generator.check.languages import checked_less
from generator.model.library import Library
from generator.model.words import Words
from generator.problems import Problem, Weight
from generator.steps.work import work
from tests.made import outputs
from tests.site_project import copy_project
from tests.worked import library

BINARY = (".zip", ".pdf", ".imscc")
"""What is no text."""
LESSON = """\
title: Two snacks
summary: Two snacks for one break.
grades: 3-5
minutes: 10
goals: [Subtract.]
stops:
  - compare:
      id: snack
      measure: energy
      sides: [Bag, Box]
      rows:
        - [{food: apple-raw, amount: 1 medium}, {food: banana-raw, amount: 100 g, name: Yellow one}]
        - [{food: grapes-raw, amount: 1 cup, name: Purple ones}, {food: apple-raw, amount: 1 medium}]
  - move: {id: moving, for: snack, one_move_per: 10, moves: [march, march]}
"""
FRENCH = """\
title: Deux goûters
summary: Deux goûters pour une pause.
goals: [Soustraire.]
stops:
  snack: {sides: [Sac, Boîte]}
foods: {Yellow one: La jaune, Purple ones: Les violets}
"""


def french_site(folder: Path) -> Path:
    """A site in English and French whose French words are a copy of the English ones."""
    root = copy_project(folder, lessons=False)
    words = (root / "site_data/words/en.yaml").read_text("utf-8")
    words = re.sub("^locale: .*", "locale: fr-FR", words, flags=re.MULTILINE)
    (root / "site_data/words/fr.yaml").write_text(words, "utf-8")
    site = root / "site_data/site.yaml"
    text = re.sub(
        "^languages: .*", "languages: [en, fr]", site.read_text("utf-8"), flags=re.MULTILINE
    )
    site.write_text(text, "utf-8")
    for name in ("two-snacks", "the-same-again"):
        lesson = root / "lessons" / name
        lesson.mkdir()
        (lesson / "lesson.yaml").write_text(LESSON, "utf-8")
        (lesson / "lesson.fr.yaml").write_text(FRENCH, "utf-8")
    return root


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site, for tests that read it."""
    return french_site(tmp_path_factory.mktemp("french") / "site")


@pytest.fixture(scope="module")
def told(project: Path) -> tuple[Problem, ...]:
    """What is said of it, after it was built."""
    return work(project).questions


@pytest.fixture(scope="module")
def pages(project: Path) -> Mapping[str, str]:
    """What stands on its French pages."""
    made = [one for one in outputs(project) if one.path.startswith("fr/two-snacks/")]
    return {one.path: one.content.decode() for one in made if not one.path.endswith(BINARY)}


def line_of(project: Path, file: str, start: str, key: str) -> int:
    """The line of a key below an entry, found as an educator would: from the entry on."""
    lines = (project / file).read_text("utf-8").splitlines()
    at = lines.index(start)
    return next(number for number in range(at, len(lines)) if f"{key}:" in lines[number]) + 1


def test_it_is_told_once_what_nobody_checks_there(told: tuple[Problem, ...]) -> None:
    (one,) = [problem for problem in told if problem.place.path == "site_data/site.yaml"]
    assert one.weight is Weight.QUESTION
    assert one.what == (
        "in fr this is not checked: claims about numbers, numbers in words, words of guilt and payment, the reading level"
    )


def test_the_line_is_that_of_the_languages(project: Path, told: tuple[Problem, ...]) -> None:
    (one,) = [problem for problem in told if problem.place.path == "site_data/site.yaml"]
    line = (project / "site_data/site.yaml").read_text("utf-8").splitlines()[one.place.line - 1]
    assert line[one.place.column - 1 :] == "fr]"


def test_english_and_spanish_are_checked_whole() -> None:
    assert list(checked_less(library())) == []


def test_a_copied_file_of_words_is_told_once(told: tuple[Problem, ...]) -> None:
    (one,) = [problem for problem in told if problem.place.path == "site_data/words/fr.yaml"]
    still, of = map(int, re.findall(r"in (\d+) of (\d+) texts", one.what)[0])
    assert one.what.startswith("words/fr.yaml is still English")
    assert still == of > 200


def test_one_text_left_in_english_is_named() -> None:
    english = library().words["en"]
    french = dict.fromkeys(english.texts, "Du français partout") | {
        "all_lessons": english.texts["all_lessons"]
    }
    words = {"en": english, "fr": Words("fr", french), "en-GB": Words("en-GB", english.texts)}
    (one,) = interface_translated(Library({}, {}, words, library().site))
    assert one.hint == "translate `all_lessons`"
    assert "in 1 of " in one.what


def test_every_name_is_told_once_at_its_place(project: Path, told: tuple[Problem, ...]) -> None:
    """However many lessons lack it; what can choke is called by the library's name too."""
    foods = [p for p in told if p.place.path == "site_data/foods.yaml"]
    assert sorted(problem.what for problem in foods) == [
        "`apple-raw` has no name in fr",
        "`grapes-raw` has no name in fr",
        "the portion “1 cup” of `grapes-raw` has no name in fr",
        "the portion “1 medium” of `apple-raw` has no name in fr",
    ]
    apple = line_of(project, "site_data/foods.yaml", "  apple-raw:", "names")
    assert apple in {problem.place.line for problem in foods}
    (move,) = [p for p in told if p.place.path == "site_data/moves.yaml"]
    assert move.what == "the move `march` has no texts in fr"
    assert "write name, count_is, steps, seated, care below `fr:`" in move.hint
    assert move.place.line == line_of(project, "site_data/moves.yaml", "  march:", "texts")
    assert {problem.weight for problem in (*foods, move)} == {Weight.QUESTION}


def test_every_name_is_marked_on_every_page(pages: Mapping[str, str]) -> None:
    named = {
        "index": "Apple",
        "worksheet": "Apple",
        "answers": "Apple",
        "cards": "March in place",
    }
    for page, name in named.items():
        html = pages[f"fr/two-snacks/{page}.html"]
        assert f'<span lang="en" class="untranslated">{name}</span>' in html, page


@pytest.mark.parametrize("page", ["index", "cards", "worksheet", "answers", "notes"])
def test_no_name_stands_on_a_page_without_a_mark(pages: Mapping[str, str], page: str) -> None:
    html = pages[f"fr/two-snacks/{page}.html"]
    unmarked = re.sub(
        r"<(script|title)\b.*?</\1>|<span lang=\"en\"[^>]*>.*?</span>|<[^>]*>",
        "",
        html,
        flags=re.DOTALL,
    )
    march = library().moves["march"].text("en").words
    texts = (march.name, march.count_is, *march.steps, march.seated, march.care)
    for words in ("Apple", "1 medium", "1 cup", *texts):
        assert not re.search(rf"\b{re.escape(words.rstrip('.'))}\b", unmarked), words


def test_the_lesson_s_own_wording_is_translated_with_it(pages: Mapping[str, str]) -> None:
    assert "La jaune" in pages["fr/two-snacks/index.html"]


def test_the_page_says_that_parts_of_it_are_in_another_language(pages: Mapping[str, str]) -> None:
    assert "are underlined with dots" in pages["fr/two-snacks/index.html"]


def test_no_mark_is_left_in_any_file(pages: Mapping[str, str]) -> None:
    assert not [
        path
        for path, text in pages.items()
        if re.search("[\ue000-\uf8ff]", text.replace("\ue010", ""))
    ]


def test_a_begun_translation_lists_the_names_with_their_places(tmp_path: Path) -> None:
    root = french_site(tmp_path / "site")
    (root / "lessons/two-snacks/lesson.fr.yaml").unlink()
    file, lacking = begin_translation(root, "two-snacks", "fr")
    text = file.read_text("utf-8")
    line = line_of(root, "site_data/foods.yaml", "  grapes-raw:", "names")
    assert lacking == 5
    assert f"#   site_data/foods.yaml:{line}  grapes-raw: `fr: …` in `names:`  # Grapes" in text
    assert "march: `fr:` below `texts:`  # March in place" in text
