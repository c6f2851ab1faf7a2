"""What each publication changed, from the record alone: every kind of change is told, and nothing else."""

from __future__ import annotations

from generator.model.published import LessonState, Published
from generator.present.updates.differences import ChangeKind
from generator.present.updates.lesson_updates import LessonUpdate, Went
from generator.present.updates.publications import Update, updates
from tests.publications import DAYS, gone, number, publication, record, state

FIRST, SECOND, THIRD, FOURTH, *_ = DAYS
BROTH = {"soups.broth": number("920"), "soups.total.gap": number("320", "all rows", "gap")}


def told(published: Published, language: str = "en", **leads_on: str) -> tuple[Update, ...]:
    return updates(published, language, leads_on)


def numbers(told: LessonUpdate) -> list[str]:
    """Ids of the numbers that changed."""
    return [one.name for one in told.differences if one.kind is ChangeKind.NUMBER]


def test_of_the_first_publication_all_is_new_and_of_later_ones_what_changed() -> None:
    found = told(
        record(
            *map(publication, DAYS[:4]),
            soup=(state(FIRST), state(SECOND, numbers=BROTH), gone(FOURTH)),
            walk=(state(THIRD, title="River walk"),),
        )
    )
    assert [one.at for one in found] == [FOURTH, THIRD, SECOND, FIRST]
    went = [[(each.lesson, each.went) for each in one.lessons] for one in found]
    assert went == [
        [("soup", Went.GONE)],
        [("walk", Went.NEW)],
        [("soup", Went.CHANGED)],
        [("soup", Went.NEW)],
    ]
    assert [one.first for one in found] == [False, False, False, True]
    assert [one.lessons_there for one in found] == [1, 2, 1, 1]
    assert numbers(found[2].lessons[0]) == ["soups.broth"]


def test_a_lesson_that_came_back_is_told_as_that() -> None:
    found = told(
        record(*map(publication, DAYS[:3]), soup=(state(FIRST), gone(SECOND), state(THIRD)))
    )
    assert [one.lessons[0].went for one in found] == [Went.BACK, Went.GONE, Went.NEW]


def test_a_renamed_lesson_is_joined_with_what_it_was_and_its_numbers_are_compared() -> None:
    """Twice renamed: the record knows each step, the lesson of today both names."""
    found = told(
        record(
            *map(publication, DAYS[:3]),
            soup=(state(FIRST), gone(SECOND)),
            broth=(state(SECOND, numbers=BROTH), gone(THIRD)),
            stew=(state(THIRD, numbers=BROTH),),
            walk=(state(FIRST, title="Walk"), gone(SECOND)),
        ),
        soup="stew",
        broth="stew",
    )
    last, middle = found[0].lessons, found[1].lessons
    assert [(one.lesson, one.lesson_before, one.went) for one in last] == [
        ("stew", "broth", Went.RENAMED)
    ]
    assert {(one.lesson, one.lesson_before, one.went) for one in middle} == {
        ("broth", "soup", Went.RENAMED),
        ("walk", "", Went.GONE),
    }
    (renamed,) = (one for one in middle if one.went is Went.RENAMED)
    assert numbers(renamed) == ["soups.broth"]
    assert last[0].differences == ()


def test_a_lesson_gone_without_another_in_its_place_is_gone_whatever_leads_on_later() -> None:
    found = told(
        record(*map(publication, DAYS[:2]), soup=(state(FIRST), gone(SECOND))), soup="stew"
    )
    assert [one.went for one in found[0].lessons] == [Went.GONE]


def test_a_lesson_of_the_same_title_at_another_address_is_moved_and_no_link_is_promised() -> None:
    """As after a renaming was taken back: the lesson of today no longer says what it was called."""
    found = told(
        record(
            *map(publication, DAYS[:3]),
            soup=(state(FIRST), gone(SECOND), state(THIRD)),
            stew=(state(SECOND, numbers=BROTH), gone(THIRD)),
        )
    )
    went = [[(one.lesson, one.lesson_before, one.went) for one in each.lessons] for each in found]
    assert went[:2] == [[("soup", "stew", Went.MOVED)], [("stew", "soup", Went.MOVED)]]
    assert numbers(found[1].lessons[0]) == ["soups.broth"]


def test_two_lessons_of_one_title_are_not_taken_for_each_other() -> None:
    found = told(
        record(
            *map(publication, DAYS[:2]),
            soup=(state(FIRST), gone(SECOND)),
            stew=(state(SECOND),),
            broth=(state(SECOND),),
        )
    )
    assert [one.went for one in found[0].lessons] == [Went.NEW, Went.GONE, Went.NEW]


def test_what_leads_on_from_a_lesson_is_no_page_of_the_site() -> None:
    pages = ("teachers.html", "soup/index.html", "es/soup/cards.html", "embed/soup/stop.html")
    published = record(publication(FIRST), publication(SECOND, pages=pages), soup=(state(FIRST),))
    assert told(published)[0].site.pages_new == ()


def test_a_language_that_comes_or_goes_is_told_to_those_of_the_others() -> None:
    published = record(
        *map(publication, DAYS[:3]),
        soup=(state(FIRST), state(SECOND, "es"), gone(THIRD, "es")),
    )
    third, second, _ = told(published)
    assert second.lessons[0].languages_new == ("es",)
    assert third.lessons[0].languages_gone == ("es",)
    third, second, first = told(published, "es")
    assert [one.went for one in second.lessons] == [Went.NEW]
    assert third.lessons[0].went is Went.GONE
    assert third.lessons[0].languages_there == ("en",)
    assert first.lessons == ()


def test_the_site_itself_is_compared() -> None:
    found = told(
        record(
            publication(FIRST),
            publication(
                SECOND,
                program="0.4.0",
                address="https://soup.example.org/",
                languages=("en", "so"),
                pages=("care.html", "updates-1.html", "es/updates-1.html"),
                note="Read again.",
            ),
            publication(THIRD, undoes=SECOND),
        )
    )
    site = found[1].site
    assert (site.program, site.address) == ("0.4.0", "https://soup.example.org/")
    assert (site.languages_new, site.languages_gone) == (("so",), ("es",))
    assert (site.pages_new, site.pages_gone) == (("care.html",), ("teachers.html",))
    assert found[1].notes == ("Read again.",)
    assert (found[1].undone, found[0].undoes) == (THIRD, SECOND)
    assert found[2].site == type(site)()


def test_two_publications_of_one_second_are_told_as_one() -> None:
    """Two educators, whose records git put side by side; the last of two states of a lesson counts."""
    found = told(
        record(
            publication(FIRST),
            publication(SECOND, note="Broth."),
            publication(SECOND, note="Walk.", to="folder"),
            soup=(state(FIRST), state(SECOND, texts="a"), state(SECOND, numbers=BROTH)),
            walk=(state(SECOND, title="River walk"),),
        )
    )
    assert [one.at for one in found] == [SECOND, FIRST]
    assert found[0].notes == ("Broth.", "Walk.")
    assert [(one.lesson, one.went) for one in found[0].lessons] == [
        ("walk", Went.NEW),
        ("soup", Went.CHANGED),
    ]


def test_records_of_two_educators_put_together_are_told_by_time() -> None:
    mine: tuple[LessonState, ...] = (state(FIRST), state(THIRD, texts="c"))
    found = told(
        record(
            *map(publication, DAYS[:4]),
            soup=(mine[0], state(SECOND, numbers=BROTH), mine[1]),
        )
    )
    changed = [[bool(numbers(one)) for one in each.lessons] for each in found]
    assert changed == [[], [True], [True], [False]]


def test_a_state_without_its_publication_is_told_all_the_same() -> None:
    found = told(record(publication(FIRST), soup=(state(FIRST), state(SECOND, numbers=BROTH))))
    assert [one.at for one in found] == [SECOND, FIRST]
    assert found[0].address == "https://kitchen.example.org/"
