"""Questions as a cartridge has them: IMS QTI 1.2.1 in the profile of Common Cartridge 1.1.

Source: ``ccv1p1_qtiasiv1p2p1_v1p0.xsd`` with its rules. Of its kinds of question two are used: a
blank to fill in, which is compared letter by letter, and one choice of at least three. A question
with two choices gets *I am not sure yet* as the third: the profile's kind with two is true or false.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache, lru_cache
from html import escape

from generator.present.cartridge.parts import Asked, Thing
from generator.present.cartridge.version import QTI
from generator.present.cartridge.xml import Xml, document, element, joined
from generator.present.views.question import QuestionView
from generator.present.words.say import Say

_BLANK, _CHOICE = "cc.fib.v0p1", "cc.multiple_choice.v0p1"
_FEWEST_CHOICES = 3
_ANSWER = "answer"
"""What a response is called inside of its question."""
_UNSURE = "unsure"


def bank_file(bank: str, questions: tuple[Asked, ...], say: Say) -> bytes:
    """Questions to choose from.

    Args:
        bank: id of all together.
        questions: at least one.
        say: the words of the lesson's language.
    """
    items = (_item(one.id, one, say) for one in questions)
    return _file(element("objectbank", *items, ident=bank))


def quiz_file(quiz: Thing, say: Say) -> bytes:
    """Questions that are given together; each has an id of its own beside the one in the bank."""
    fields = (
        ("cc_profile", "cc.exam.v0p1"),
        ("qmd_assessmenttype", "Examination"),
        ("qmd_scoretype", "Percentage"),
        ("qmd_feedbackpermitted", "Yes"),
        ("qmd_hintspermitted", "Yes"),
        ("qmd_solutionspermitted", "Yes"),
    )
    items = (_item(f"{one.id}-asked", one, say) for one in quiz.questions)
    section = element("section", *items, ident=f"{quiz.id}-all")
    told = element("assessment", _metadata(fields), section, ident=quiz.id, title=quiz.title)
    return _file(told)


def _file(inside: Xml) -> bytes:
    return document(element("questestinterop", inside, xmlns=QTI))


def _item(name: str, one: Asked, say: Say) -> Xml:
    return element("item", _inside(one, say), ident=name, title=one.question.title)


@lru_cache(
    maxsize=256
)  # the same in the bank and among the questions given together, in both versions
def _inside(one: Asked, say: Say) -> Xml:
    asked = one.question
    kind = _CHOICE if asked.options else _BLANK
    return joined(
        element("itemmetadata", _metadata((("cc_profile", kind), ("qmd_computerscored", "Yes")))),
        element("presentation", _material(*asked.lines, see=(one.address, say)), _room(asked, say)),
        element("resprocessing", *_processing(asked)),
        *_feedback(asked, say),
    )


def _metadata(fields: tuple[tuple[str, str], ...]) -> Xml:
    told = (
        element("qtimetadatafield", element("fieldlabel", label), element("fieldentry", entry))
        for label, entry in fields
    )
    return element("qtimetadata", *told)


def _room(asked: QuestionView, say: Say) -> Xml:
    """Where the answer goes."""
    if not asked.options:
        blank = element("render_fib", fibtype="String", prompt="Box", columns="12")
        return element("response_str", blank, ident=_ANSWER, rcardinality="Single")
    options = [(one.value, one.says) for one in asked.options]
    if len(options) < _FEWEST_CHOICES:
        options.append((_UNSURE, say("platform_unsure")))
    labels = (
        element("response_label", _material(says), ident=value, rshuffle="No")
        for value, says in options
    )
    choice = element("render_choice", *labels, shuffle="No")
    return element("response_lid", choice, ident=_ANSWER, rcardinality="Single")


def _processing(asked: QuestionView) -> Iterator[Xml]:
    """What is right gives all points; what is wrong says why, as far as it is known, and takes none."""
    score = {"varname": "SCORE", "vartype": "Decimal", "minvalue": "0", "maxvalue": "100"}
    yield element("outcomes", element("decvar", **score))
    points = element("setvar", "100", varname="SCORE", action="Set")
    afterwards = (_shown("Solution", "solution"),) if asked.answer else ()
    for right in asked.right:
        yield _when(_is(right), points, _shown("Response", "right"), *afterwards)
    for number, wrong in enumerate(asked.wrong):
        for answer in wrong.answers:
            yield _when(_is(answer), _shown("Response", f"wrong-{number}"))
    first_step = (_shown("Hint", "hint"),) if asked.hint else ()
    yield _when(element("other"), _shown("Response", "other"), *first_step)


def _is(answer: str) -> Xml:
    return element("varequal", answer, respident=_ANSWER, case="No")


def _when(condition: Xml, *then: Xml) -> Xml:
    return Xml(
        f'<respcondition continue="No"><conditionvar>{condition}</conditionvar>'
        f"{joined(*then)}</respcondition>"
    )


@cache
def _shown(kind: str, name: str) -> Xml:
    return element("displayfeedback", feedbacktype=kind, linkrefid=name)


def _feedback(asked: QuestionView, say: Say) -> Iterator[Xml]:
    """What is said to each answer, then hint and working."""
    yield _said("right", say("right"))
    for number, wrong in enumerate(asked.wrong):
        yield _said(f"wrong-{number}", wrong.says)
    yield _said("other", say("platform_not_yet"))
    if asked.hint:
        step = element("hint", element("hintmaterial", _flow(asked.hint)))
        yield element("itemfeedback", step, ident="hint")
    if asked.answer:
        working = element("solution", element("solutionmaterial", _flow(*asked.answer)))
        yield element("itemfeedback", working, ident="solution")


def _said(name: str, words: str) -> Xml:
    return element("itemfeedback", _flow(words), ident=name)


def _flow(*lines: str) -> Xml:
    return element("flow_mat", _material(*lines))


def _material(*lines: str, see: tuple[str, Say] | None = None) -> Xml:
    """Lines as paragraphs of HTML, escaped twice: as HTML, and as what stands in an XML file."""
    paragraphs = [f"<p>{escape(line)}</p>" for line in lines]
    if see:
        address, say = see
        label = escape(say("platform_see"))
        paragraphs.append(f'<p><a href="{escape(address)}" target="_blank">{label}</a></p>')
    return element("material", element("mattext", "".join(paragraphs), texttype="text/html"))
