"""A file that is no YAML, or that YAML would read as something else, is told at its exact place."""

from __future__ import annotations

import pytest

from generator.read.source import read_source

BROKEN = [
    ("a time without quotes", "at: 1:30\n", "1:5", "the time 1:30 has no quotes and YAML reads it as 90"),
    ("a time YAML would not guess", "a: 1\nat: 0:40\n", "2:5", "the time 0:40 has no quotes"),
    ("a time without end", "at: 1" + ":1" * 9 + "\n", "1:5", "has no quotes and YAML reads it as"),
    ("a key twice", "a: 1\nb: 2\na: 3\n", "3:1", "`a` is written twice"),
    ("a key twice, deeper", "x:\n  a: 1\n  a: 2\n", "3:3", "`a` is written twice"),
    ("a tab as indent", "a:\n\tb: 1\n", "2:1", "there is a tab here"),
    ("a tab under a value", "a: 1\n\tb: 1\n", "2:1", "there is a tab here"),
    ("a quote not closed", 'a: 1\nb: "abc\nc: 1\n', "2:4", "a quote is opened and never closed"),
    ("an apostrophe not closed", "b: 'abc\nc: 1\n", "1:4", "a quote is opened and never closed"),
    ("a bracket not closed", "a: 0\nb: [1, 2\nc: 1\n", "2:4", "a bracket is opened and not closed"),
    ("a brace not closed", "a: {b: 1\nc: 1\n", "1:4", "a bracket is opened and not closed"),
    ("a comma forgotten", "a: [{b: 1 c: 2}]\n", "1:5", "a bracket is opened and not closed"),
    ("text after a quote", 'a: "x" y\n', "1:8", "a quoted text ends here"),
    ("a colon inside a text", "a: b: c\n", "1:5", "a colon stands where none can"),
    ("a colon between curly quotes", "a: “b: c”\n", "1:6", "“ and ” are none"),
    ("a colon forgotten above", "x:\n  - talk\n    id: a\n", "2:5", "a key without its colon"),
    ("a text behind a brace", "a: {b} c\n", "1:8", "a text with a brace has no quotes"),
    ("a brace in a list", "a: [b {c} d]\n", "1:7", "a text with a brace has no quotes"),
    ("keys that stand too far in", "a: b\n  c: d\n", "2:4", "does not fit under"),
    ("a quote closed lines below", 'a: "b\nc: "d"\n', "1:4", "a quote is opened and never closed"),
    ("an apostrophe in apostrophes", "a: ['b's c', d]\n", "1:8", "a quoted text ends here"),
    ("a text that stands too far out", "a:\n  say: |\n  B c\n  d: 1\n", "3:3", "does not stand further in"),
    ("an entry without its hyphen", "a:\n  - b: 1\n  c: 2\n", "3:3", "begins no entry of the list"),
    ("a hyphen without its space", "a:\n  - b: 1\n  -c: 2\n", "3:3", "a hyphen has no space"),
    ("a key without its colon", "a: 1\nb\nc: 2\n", "2:1", "a key without its colon"),
    ("a list among keys", "a: 1\n- b\n", "2:1", "does not fit under the one above"),
    ("keys that step back half", "a:\n    b: 2\n  c: 3\n", "3:3", "does not fit under"),
    ("an indent at the top", " a: 1\nb: 2\n", "2:1", "does not fit under"),
    ("an alias of nothing", "a: *nope\n", "1:4", "a word begins with `*`"),
    ("two stars", "a: **bold**\n", "1:5", "a word begins with `*`"),
    ("an ampersand alone", "a: & b\n", "1:5", "a word begins with `&`"),
    ("an at sign", "a: @home\n", "1:4", "a word begins with `@`"),
    ("a percent sign", "a: %50\n", "1:4", "a word begins with `%`"),
    ("a backtick", "a: `x`\n", "1:4", "a word begins with a backtick"),
    ("an exclamation mark", "a: !Look here\n", "1:4", "a word begins with `!`"),
    ("a tag that would build an object", "a: !!python/name:os.system x\n", "1:4", "begins with `!`"),
    ("a value inside itself", "a: &x [1, *x]\n", "1:4", "no value is repeated here"),
    ("a value named to be used again", "a: 1\nb: &same 2\nc: *same\n", "2:4", "no value is repeated here"),
    ("values merged", "a: {b: 1}\nc:\n  <<: {d: 2}\n", "3:3", "`<<` repeats values"),
    ("a list as a key", "? [a, b]\n: c\n", "1:3", "a key must be a word"),
    ("a second document", "a: 1\n---\nb: 2\n", "2:1", "a second document begins here"),
    ("nothing at all", "", "1:1", "the file is empty"),
    ("a comment alone", "# later\n", "1:1", "the file is empty"),
    ("a null alone", "~\n", "1:1", "the file is empty"),
    ("a NUL", "a: x\x00y\n", "1:5", "a character that cannot be shown"),
    ("a bell behind wide signs", "tïtlé: 🥕\nb: c\x07d\n", "2:5", "a character that cannot be shown"),
    ("brackets without end", "a: " + "[" * 100_000 + "\n", "1:1003", "brackets stand inside brackets"),
    ("brackets too deep", "a: " + "[" * 300 + "]" * 300, "1:44", "more inside one another"),
    ("lists too deep on one line", "- " * 5000 + "a", "1:1999", "brackets stand inside brackets"),
    ("a carriage return before each line feed", "a: 1\r\nb: 0:40\r\n", "2:4", "the time 0:40"),
    ("old line ends", "a: 1\rb: 0:40\r", "2:4", "the time 0:40"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "at", "what"), [pytest.param(*c[1:], id=c[0]) for c in BROKEN])
def test_what_is_wrong_and_where(text: str, at: str, what: str) -> None:
    first = read_source("f.yaml", text).problems[0]
    assert (str(first.place), what in first.what) == (f"f.yaml:{at}", True), str(first)
    assert first.hint


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("no", "no"),
        ("yes", "yes"),
        ("on", "on"),
        ("012", "012"),
        ("0x1F", "0x1F"),
        ("1_000", "1_000"),
        ("1.50", "1.50"),
        ("1e3", "1e3"),
        (".nan", ".nan"),
        ("2026-03-14", "2026-03-14"),
        ('"1:30"', "1:30"),
        ("'12'", "12"),
        ("12", 12),
        ("-3", -3),
        ("0", 0),
        ("true", True),
        ("false", False),
        ("", None),
        ("~", None),
        ("9" * 5000, "9" * 5000),
    ],
)
def test_a_scalar_stays_what_was_written(text: str, value: object) -> None:
    """YAML 1.1 reads `no` as false, `012` as 10 and `1_000` as 1000."""
    source = read_source("f.yaml", f"a: {text}\n")
    assert source.problems == []
    assert source.data == {"a": value}
    assert type(source.data["a"]) is type(value)


@pytest.mark.parametrize("text", ['"*a & <<"', "'&a'", "Soup & bread", "3 * 4", '"<<"'])
def test_the_signs_in_a_text_are_words(text: str) -> None:
    assert read_source("f.yaml", f"a: {text}\n").problems == []


def test_aliases_that_multiply_are_one_sentence() -> None:
    """Ten lists of ten of the list before: a hundred million values from four hundred bytes."""
    lines = ["a0: &a0 [" + ",".join("x" * 10) + "]"]
    lines += [f"a{i}: &a{i} [" + ",".join([f"*a{i - 1}"] * 10) + "]" for i in range(1, 9)]
    source = read_source("f.yaml", "\n".join(lines))
    assert [str(one.place) for one in source.problems] == ["f.yaml:1:5"]
    assert source.data is None


def test_every_value_and_key_has_its_place() -> None:
    places = read_source("f.yaml", "a: 1\nb:\n  - c: [x, yy]\n").places
    assert str(places.at("a")) == "f.yaml:1:4"
    assert str(places.key("b", 0, "c")) == "f.yaml:3:5"
    assert str(places.at("b", 0, "c", 1)) == "f.yaml:3:12"
    assert str(places.at("b", 0, "nothing", "there")) == "f.yaml:3:5"
