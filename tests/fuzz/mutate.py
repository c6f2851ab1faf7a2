"""Files as nobody meant to write them: each by a seed, so that any of them can be made again."""

from __future__ import annotations

import re
from collections.abc import Callable
from random import Random

NASTY = (
    "\t", ":", ": ", "- ", "#", " #", '"', "'", "[", "]", "{", "}", "*", "*a", "&x ", "!", "!!str ", "|",
    ">", "%", "@", "`", "?", "? ", ",", "---", "...", "~", "null", "true", "no", "yes", "0", "-1", "1e400",
    "-1e-400", "nan", ".inf", "1:30", "0x1F", "0o17", "1_000", "9" * 40, "9" * 400, "1" + "0" * 30 + ".5",
    "2026-11-25", "\x00", "\x07", "\x7f", "\u2028", "\x85", "\ufeff", "\u200b", "\u202e", "\u00a0", "e\u0301",
    "\u0301", "é", "ß", "İ", "🥕", "👩‍👧", "\ufffd", "\ue000", "\\", "\\x", "\\u12", "\r", "\r\n", "\n", "\n\n",
    "  ", "compare:", "move:", "at:", "id:", "id: main", "food:", "rows:", "for:", "kind:", "none:", "<<: ",
    "<<: *a", "1/0 cup", "½ cup", "stops:", "moves: []", "{a: b}", "[[]]", "{}", "{gap!x}", "{gap:{gap}}", "{}",
    "{0}", "{n", "}", "{{", "../../x", "/etc/passwd", "C:\\x", "a/b", ".", "..", "con", "x" * 3_000, "a b " * 900,
    "(" * 60, "[" * 60, "{" * 60, "*" * 300, "_" * 300, "> " * 60, "- " * 60, "[a](b)" * 60, "<" * 300,
    "<script>", "javascript:x", "http://x", "//x", "https://[::1", "mailto:", "00:00.000 --> 00:01.000",
    "00:00:01.000 --> 00:00:00.000", "99:99.999 --> 99:99.999", "-->", "NOTE", "STYLE", "REGION", "WEBVTT",
    "<v ", "<00:01.000>", "&amp", "&#0;", "almost double ", "twice as many as ", "120 kcal ", "one hundred ",
)  # fmt: skip
"""What has broken readers of text before. Our own list, no source."""
Way = Callable[[Random, str], str]


def mutant(text: str, number: int) -> bytes:
    """The file after one to four changes, as bytes; now and then in another encoding. The same for a number."""
    random = Random(number)  # noqa: S311  # to be made again, not to be kept secret
    for _ in range(random.choice((1, 1, 1, 2, 2, 3, 4))):
        text = random.choice(WAYS)(random, text)
    return random.choice(ENCODINGS)(random, text)


def _lines(change: Callable[[Random, list[str], int], None]) -> Way:
    """A way that changes a list of lines at one of them."""

    def way(random: Random, text: str) -> str:
        lines = text.split("\n")
        change(random, lines, random.randrange(len(lines)))
        return "\n".join(lines)

    return way


def _words(pattern: str, make: Callable[[Random, str], str]) -> Way:
    """A way that puts something in the place of one thing that is found."""
    found_by = re.compile(pattern, re.MULTILINE)

    def way(random: Random, text: str) -> str:
        found = list(found_by.finditer(text))
        if not found:
            return text + random.choice(NASTY)
        one = random.choice(found)
        return text[: one.start()] + make(random, one[0]) + text[one.end() :]

    return way


def _paste(random: Random, text: str) -> str:
    at = random.randint(0, len(text))
    return text[:at] + random.choice(NASTY) + text[at:]


def _cut(random: Random, text: str) -> str:
    at = random.randint(0, len(text))
    return text[:at] + text[at + random.randint(1, 60) :]


def _move(random: Random, lines: list[str], at: int) -> None:
    lines.insert(random.randint(0, len(lines) - 1), lines.pop(at))


def _double(random: Random, lines: list[str], at: int) -> None:
    many = lines[at : at + random.randint(1, 8)]
    lines[at:at] = many * random.choice((1, 1, 2, 30))


def _indent(random: Random, lines: list[str], at: int) -> None:
    for number in range(at, min(len(lines), at + random.randint(1, 4))):
        lines[number] = random.choice(("  ", " ", "\t", "- ")) + lines[number]


def _outdent(random: Random, lines: list[str], at: int) -> None:
    lines[at] = lines[at][random.randint(1, 4) :]


def _drop(random: Random, lines: list[str], at: int) -> None:
    del lines[at : at + random.randint(1, 5)]


def _nest(random: Random, lines: list[str], at: int) -> None:
    lines[at] = re.sub(
        r"(:|-) .*", r"\1 " + random.choice(("[", "{a: ")) * random.randint(1, 60), lines[at]
    )


def _nasty(random: Random, _: str) -> str:
    return random.choice(NASTY)


def _twisted(random: Random, word: str) -> str:
    at = random.randrange(len(word))
    return random.choice(
        (
            word[::-1],
            word[:at] + word[at + 1 :],
            word.upper(),
            word + word,
            f'"{word}"',
            f"[{word}]",
        )
    )


def _number(random: Random, number: str) -> str:
    return random.choice(
        (f"-{number}", f"{number}0000000", f"{number}.{number}", f"{number}e9", f'"{number}"', "0")
    )


WAYS: tuple[Way, ...] = (
    _paste,
    _cut,
    _words(r"[\w.-]+", _nasty),
    _words(r"(?<=: ).+$", _nasty),
    _words(r"^\s*[\w-]+(?=:)", _nasty),
    _words(r"[\w-]+", _twisted),
    _words(r"\d+", _number),
    _lines(_move),
    _lines(_double),
    _lines(_indent),
    _lines(_outdent),
    _lines(_drop),
    _lines(_nest),
)


def _plain(_: Random, text: str) -> bytes:
    return text.encode("utf-8", "surrogatepass")


def _broken(random: Random, text: str) -> bytes:
    content = bytearray(_plain(random, text))
    for _ in range(random.randint(1, 5)):
        content[random.randrange(len(content)) if content else 0 : 0] = random.randbytes(
            random.randint(1, 3)
        )
    return bytes(content)


ENCODINGS: tuple[Callable[[Random, str], bytes], ...] = (
    *[_plain] * 30,
    _broken,
    lambda _, text: text.encode("utf-16"),
    lambda _, text: text.encode("latin-1", "replace"),
    lambda _, text: b"\xef\xbb\xbf" + text.encode("utf-8", "surrogatepass"),
    lambda _, text: text.replace("\n", "\r\n").encode("utf-8", "surrogatepass"),
    lambda _, text: text.replace("\n", "\r").encode("utf-8", "surrogatepass"),
    lambda random, text: text.encode("utf-8", "surrogatepass")[: random.randint(0, len(text))],
)
