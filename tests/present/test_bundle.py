"""Joining modules and style sheets: what comes out runs as one script, what cannot be joined is named."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from generator.present.assets.bundle import join_script, join_styles

THEME = Path(__file__).parents[2] / "theme"

SCRIPTS = {
    "entry.js": 'import { double } from "./double.js";\nimport { one, two } from "./parts/numbers.js";\n\nshow(double(one + two));\n',
    "double.js": "/** @param {number} x */\nexport function double(x) {\n  return x * 2; // twice\n}\n",
    "parts/numbers.js": 'import { double } from "../double.js";\n\nexport const one = 1;\nexport const two = double(one);\n',
}


def test_every_module_stands_before_the_one_that_needs_it() -> None:
    assert join_script("entry.js", SCRIPTS) == (
        '(()=>{"use strict";function double(x){return x*2;}\nconst one=1;const two=double(one);show(double(one+two));})();\n'
    )


@pytest.mark.parametrize(
    ("name", "text", "says"),
    [
        ("double.js", "export default 1;\n", "double.js: `export default 1;`"),
        ("double.js", "const a = 1;\nexport { a };\n", "double.js: `export { a };`"),
        ("double.js", 'import * as all from "./a.js";\n', "double.js: `import"),
        ("double.js", 'import "./a.js";\n', "double.js: `import"),
        ("entry.js", 'import { double as twice } from "./double.js";\n', "entry.js: `import"),
        ("entry.js", 'import { double } from "elsewhere";\n', "entry.js: `import"),
        (
            "entry.js",
            'import { triple } from "./double.js";\n',
            "entry.js: double.js exports no triple",
        ),
        ("entry.js", 'import { triple } from "./triple.js";\n', "entry.js: there is no triple.js"),
        (
            "double.js",
            'import { one } from "./parts/numbers.js";\nexport function double() {}\n',
            "imports itself",
        ),
        (
            "entry.js",
            'import { one } from "./parts/numbers.js";\nconst double = 3;\n',
            "entry.js: declares double, and so does double.js",
        ),
        ("entry.js", "const [a] = [1];\n", "entry.js: takes something apart"),
    ],
)
def test_what_cannot_be_joined_is_named(name: str, text: str, says: str) -> None:
    with pytest.raises(ValueError, match="js") as caught:
        join_script("entry.js", {**SCRIPTS, name: text})
    assert says in str(caught.value)


def test_style_sheets_are_joined_once_each_in_the_order_of_their_imports() -> None:
    files = {
        "screen.css": '@import "./tokens.css";\n@import "./parts/card.css";\n\nbody { color: var(--ink); }\n',
        "tokens.css": ":root { --ink: #2A1A2C; }\n",
        "parts/card.css": '@import "../tokens.css";\n.card { margin: 0 auto; }\n',
    }
    assert (
        join_styles("screen.css", files)
        == ":root{--ink:#2A1A2C}.card{margin:0 auto}body{color:var(--ink)}\n"
    )


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('@import url("https://fonts.example/x.css");', "screen.css: has an @import"),
        ('@import "./absent.css";', "screen.css: there is no absent.css"),
        ('@import "./screen.css";', "screen.css: imports itself"),
    ],
)
def test_a_style_sheet_that_cannot_be_joined_is_named(text: str, says: str) -> None:
    with pytest.raises(ValueError, match="css") as caught:
        join_styles("screen.css", {"screen.css": text})
    assert says in str(caught.value)


SAYING = {
    "js/entry.js": 'import { keys, say } from "./say.js";\nconst SHAPES = keys({ circle: "shape_circle" });\nsay(here ? "size" : "lessons", { n: 1 });\nsay(SHAPES.circle);\n',
    "js/say.js": 'import { texts } from "./texts.js";\nexport function say(key) {\n  return texts[key];\n}\nexport function keys(table) {\n  return table;\n}\n',
    "js/texts.js": "export const texts = {};\n",
}
WORDS = {"size": "3 MB", "lessons": {"other": "{n}"}, "shape_circle": "circle", "other": "no"}


def test_a_script_brings_the_texts_it_says_and_no_others() -> None:
    script = join_script("js/entry.js", SAYING, WORDS)
    texts = script.partition("const texts=")[2].partition(";")[0]
    assert json.loads(texts) == {
        "lessons": {"other": "{n}"},
        "shape_circle": "circle",
        "size": "3 MB",
    }


def test_a_text_that_the_words_lack_is_named() -> None:
    with pytest.raises(ValueError, match="words have no shape_circle, size"):
        join_script("js/entry.js", SAYING, {"lessons": ""})


@pytest.mark.parametrize("said", ["say(key)", "say(`shape_${one}`)", "say(all[one])"])
def test_a_key_that_is_not_written_out_is_refused(said: str) -> None:
    files = {**SAYING, "js/entry.js": f'import {{ say }} from "./say.js";\n{said};\n'}
    with pytest.raises(ValueError, match="needs its key written out"):
        join_script("js/entry.js", files, WORDS)
