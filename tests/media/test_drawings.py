"""A drawing goes out when it is nothing but a drawing: W3C SVG 2, chapters 15 (scripting) and 16 (linking)."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.media.content import UnfitError
from generator.media.published import published

HEAD = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9">'
DRAWN = (
    '<?xml version="1.0" encoding="UTF-8"?>' + HEAD + "<title>Una olla</title>"
    '<defs><linearGradient id="a"><stop offset="0" stop-color="#6a1f4f"/></linearGradient></defs>'
    "<style>.b { fill: url(#a); }</style>"
    '<g class="b" style="stroke: #000"><path d="M0 0h9v9z" fill="url(#a)"/><use href="#a"/></g></svg>'
)


def out(folder: Path, text: str) -> str:
    file = folder / "a.svg"
    file.write_text(text, "utf-8")
    sent = b"".join(published(file).pieces()).decode()
    assert file.read_text("utf-8") == text, "the file itself was changed"
    return sent


def test_a_drawing_goes_out_as_it_is(tmp_path: Path) -> None:
    assert out(tmp_path, DRAWN) == DRAWN


def test_a_comment_stays_at_home(tmp_path: Path) -> None:
    noted = DRAWN.replace("<defs>", "<!-- Ana, ñ, /home/ana --><defs>").replace(
        "</g>", "</g><!--x-->"
    )
    assert out(tmp_path, noted) == DRAWN


@pytest.mark.parametrize(
    ("inside", "what"),
    [
        ("<script>alert(1)</script>", "holds `script`"),
        ("<SCRIPT/>", "holds `SCRIPT`"),
        ('<x:script xmlns:x="http://www.w3.org/2000/svg"/>', "holds `script`"),
        ("<foreignObject><p/></foreignObject>", "holds `foreignObject`"),
        ('<set attributeName="href" to="javascript:alert(1)"/>', "holds `set`"),
        ('<a href="https://evil.example/"><path/></a>', "holds `a`"),
        ('<image href="https://evil.example/p.png"/>', "holds `image`"),
        ('<h:p xmlns:h="http://www.w3.org/1999/xhtml"/>', "holds `p`"),
        ("<metadata>Ana</metadata>", "holds `metadata`"),
        ('<path onclick="alert(1)"/>', "runs a script"),
        ('<path OnLoad="alert(1)"/>', "runs a script"),
        ('<use href="other.svg#a"/>', "leads to another file by its `href`"),
        ('<use xlink:href="https://evil.example/#a"/>', "leads to another file by its `href`"),
        ('<path fill="url(https://evil.example/)"/>', "leads to another file by its `fill`"),
        ('<path style="fill: URL( //evil.example )"/>', "leads to another file by its `style`"),
        ("<style>@import 'https://evil.example/';</style>", "leads to another file in its style"),
        ("<style>a { fill: u\\72l(//evil.example) }</style>", "leads to another file in its style"),
        ("<style>a { fill: url('//evil.example') }</style>", "leads to another file in its style"),
        ('<path xmlns:i="http://www.inkscape.org/" i:label="Ana"/>', "a note of a program"),
        ('<?xml-stylesheet href="https://evil.example/"?>', "an instruction"),
    ],
)
def test_more_than_a_drawing_is_refused(tmp_path: Path, inside: str, what: str) -> None:
    with pytest.raises(UnfitError, match=what):
        out(tmp_path, f"{HEAD}{inside}</svg>")


@pytest.mark.parametrize(
    "text",
    [
        "",
        "Ana Lopez, 9",
        "<html><body/></html>",
        "<svg/>",
        HEAD,
        "<!DOCTYPE svg><svg/>",
        f"{HEAD}</svg><p/>",
    ],
)
def test_what_is_no_drawing_is_refused(tmp_path: Path, text: str) -> None:
    with pytest.raises(UnfitError):
        out(tmp_path, text)


def test_a_text_that_grows_without_end_is_refused(tmp_path: Path) -> None:
    bomb = "".join(f'<!ENTITY a{n} "{f"&a{n - 1};" * 10}">' for n in range(1, 9))
    with pytest.raises(UnfitError, match="a document type"):
        out(tmp_path, f'<!DOCTYPE svg [<!ENTITY a0 "ha">{bomb}]>{HEAD}<text>&a8;</text></svg>')


@given(data=st.data())
def test_whatever_was_done_to_it_it_goes_out_or_is_refused(
    tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
) -> None:
    whole = bytearray(DRAWN.replace("<defs>", "<!-- Ana --><defs>").encode())
    for _ in range(data.draw(st.integers(1, 4))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    file = tmp_path_factory.getbasetemp() / "x.svg"
    file.write_bytes(whole[: data.draw(st.integers(0, len(whole)))])
    try:
        found = published(file)
    except UnfitError:
        return  # a sentence and a way out are what it is made of
    assert b"<script" not in b"".join(found.pieces())
