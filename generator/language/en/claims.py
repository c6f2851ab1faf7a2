"""How English claims something about two numbers."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.en.claim_words import (
    AS_MUCH,
    BE,
    BEFORE_MORE,
    COUNTED,
    ENDS,
    HOLDS,
    LEE,
    LEEWAYS,
    MEASURE,
    NOT_OFTEN,
    NUMBER,
    ONLY,
    PART,
    PARTS,
    PERCENT,
    ROWS_WON,
    TIMES,
    UNIT,
    WHAT,
)
from generator.language.en.measures import MEASURES
from generator.language.en.number_words import NUMBER_WORDS
from generator.language.form import Form
from generator.language.grammar import Grammar, Kind, words

_IN = "(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d+)"
_NTH = "(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last)"
_BIG = "(?:biggest|largest|greatest|widest|highest)"
_SMALL = "(?:smallest|least|narrowest|lowest)"
_GAP = "(?:gaps?|differences?)"
_SUM = "(?:gaps?|differences?|totals?)"
_OF_IT = rf"(?!\s+of\s+the\s+time)(?=\s*(?:$|[.,;:!)]|(?:of|in|here|by|and)\b|{WHAT}\b))"
_BUT_ONE = r"(?!\s+(?:but|except|save)\b)"
_NEARLY = LEE.replace("leeway", "nearly")
_SIGNS = {
    Form.TIMES: ("twice", "double", "tripl", "quadrupl", "times", "fold"),
    Form.SHARE: ("half", "third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "percent", "per cent", "%"),
    Form.SAME: ("same", "as much", "as many", "equal", "match", "worth", "ties with", "enough", "tied with", "add up to", "to reach"),
    Form.GAP: ("more", "less", "fewer", " by ", "between"),
    Form.GAP_SHARE: ("more", "less", "fewer", "again", "higher", "lower"),
    Form.MOST: ("most", "highest", "biggest", "largest", "greatest", "widest", "any other", "all the other", "all other", "every other", "no other", "no food", "nothing"),
    Form.LEAST: ("least", "fewest", "lowest", "smallest", "narrowest", "any other", "all the other", "all other", "every other", "no other", "no food", "nothing"),
    Form.MORE: ("more", "higher", "bigger", "larger", "beat", "win", "outdo"),
    Form.LESS: ("less", "fewer", "lower", "smaller", "not hold", "n't hold", "not have", "n't have", "n’t", "lose"),
    Form.ROWS: ("row",),
    Form.EVERY_ROW: ("row",),
}  # fmt: skip
_PLAIN = "the and with without from for one two cup cups side sides food foods row rows our your his her its holds hold has have more less most least same half low"


def _kind(form: Form, text: str, *, both: bool = False) -> Kind:
    return Kind(form, _SIGNS[form], re.compile(rf"\b{text}", re.IGNORECASE), both)


_ROWS = (
    _kind(Form.EVERY_ROW, rf"(?:{ROWS_WON}|(?:holds?|has|have)\s+(?P<less>less|fewer))\s+(?:in\s+)?(?:every(?:\s+single)?|each(?:\s+of\s+the)?|all(?:\s+of)?(?:\s+the)?(?:\s+{_IN})?)\s+rows?\b{_BUT_ONE}"),
    _kind(Form.EVERY_ROW, rf"in\s+(?:every(?:\s+single)?|each|all)\s+rows?{_BUT_ONE},?\s+(?:\w+\s+){{1,5}}?(?:holds?|has|have)\s+(?:more|(?P<less>less|fewer))\b"),
    _kind(Form.ROWS, rf"(?:{ROWS_WON}|(?:holds?|has|have)\s+(?P<less>less|fewer))\s+(?:in\s+)?(?:exactly\s+|only\s+|just\s+)?(?P<n>{_IN})\s+(?:(?:out\s+)?of\s+(?:the\s+|all\s+)?{_IN}\s+)?rows\b"),
    _kind(Form.ROWS, rf"in\s+(?:exactly\s+|only\s+|just\s+)?(?P<n>{_IN})\s+(?:(?:out\s+)?of\s+(?:the\s+|all\s+)?{_IN}\s+)?rows,?\s+(?:\w+\s+){{1,5}}?(?:holds?|has|have)\s+(?:more|(?P<less>less|fewer))\b"),
)  # fmt: skip
_PARTS = (
    _kind(Form.GAP_SHARE, rf"{LEE}?{ONLY}?(?P<n>{PERCENT}|half|{PART})\s+(?:{WHAT}\s+)?(?:more|higher|(?P<less>less|fewer|lower))\b(?=\s*(?:$|[.,;:!)]|(?:than|in|on)\b|{WHAT}\b))"),
    _kind(Form.GAP_SHARE, rf"{LEE}?(?P<n>half|{PART})\s+(?:as\s+(?:much|many)\s+again|again\s+as\s+(?:much|many))\b"),
    _kind(Form.SHARE, rf"{LEE}?{ONLY}?(?P<n>{PERCENT}|{PART})\s+(?:{AS_MUCH})"),
    _kind(Form.SHARE, rf"{HOLDS}{LEE}(?P<n>{PERCENT}|{PART})\s+(?:of\s+)?(?:the|that)\b"),
    _kind(Form.SHARE, rf"{HOLDS}{ONLY}?{LEE}?(?P<n>{PERCENT}|{PART})\s+(?:of\s+)?(?:the|that|an?)\b", both=True),
    _kind(Form.SHARE, rf"{HOLDS}{ONLY}?{LEE}?(?P<n>{PERCENT}|{PART})\s+of\s+(?=\d)", both=True),
)  # fmt: skip
_TIMES = (
    _kind(Form.TIMES, rf"{LEE}?(?P<n>{TIMES})\s+(?:{AS_MUCH}|more\s+(?:{WHAT}|than)\b)"),
    _kind(Form.TIMES, rf"{LEE}(?P<n>double|triple|quadruple)\b(?!\s+of\s+double)"),
    _kind(Form.TIMES, rf"{HOLDS}{ONLY}?{LEE}?(?P<n>{TIMES})\b{NOT_OFTEN}(?=\s|[.,;!]|$)"),
    _kind(Form.TIMES, rf"{LEE}?(?P<n>doubles|triples|quadruples|{NUMBER}(?:-|\s)?fold)\b", both=True),
    _kind(Form.TIMES, rf"{BE}{LEE}?(?P<n>{TIMES})\b{NOT_OFTEN}", both=True),
)  # fmt: skip
_SAME = (
    _kind(Form.LESS, rf"(?:does|do|did)(?:n['’]t|\s+not)\s+(?:hold|have|contain|bring|give|pack)\s+(?:nearly\s+|quite\s+|even\s+)?as\s+(?:much|many)(?:\s+{WHAT})?\s+as\b"),
    _kind(Form.SAME, rf"{LEE}?the\s+same\s+(?:(?:amount|number)\b(?!\s+of\s+(?!{MEASURE}))|{WHAT}\b(?<!number)(?<!amount))"),
    _kind(Form.SAME, rf"(?:holds?|has|have|contains?|gives?|packs?|brings?)\s+{LEE}?{ONLY}?the\s+same{ENDS}"),
    _kind(Form.SAME, rf"{HOLDS}{ONLY}?{LEE}?{ONLY}?as\s+(?:much|many)(?:\s+{WHAT})?\s+as\b"),
    _kind(Form.SAME, rf"{BE}{LEE}?{ONLY}?(?:equal\s+to|worth|level\s+with|tied\s+with)\s+{_NEARLY}?", both=True),
    _kind(Form.SAME, rf"{HOLDS}(?P<leeway>enough(?:\s+{WHAT})?\s+for)\s+(?={NUMBER}\s)", both=True),
    _kind(Form.SAME, rf"{LEE}?(?:equals?|match(?:es)?|ties\s+with)\s+{_NEARLY}?", both=True),
    _kind(Form.SAME, rf"(?:(?:would|will|['’]d|['’]ll)\s+)?(?:needs?|takes?)\s+{LEE}?(?={NUMBER}\s+)[^.;!?]{{1,80}}?\bto\s+(?:match|equal|reach|make\s+up|add\s+up\s+to|get\s+as\s+much|hold\s+as\s+much)\b", both=True),
    _kind(Form.SAME, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}{LEE}?(?:the\s+same|equal|alike))\b"),
)  # fmt: skip
_GAPS = (
    _kind(Form.GAP, rf"{HOLDS}{ONLY}?{LEE}?{ONLY}?(?P<n>{NUMBER})\s*{UNIT}?\s*(?:more|(?P<less>less|fewer))\b(?=\s*(?:[.,;!]|$|than\b|in\b|{WHAT}\b))"),
    _kind(Form.GAP, rf"{LEE}?(?P<n>{NUMBER})\s*(?:{UNIT}\s+(?:of\s+{WHAT}\s+)?)(?:more\b|(?P<less>less|fewer)\b)(?=\s*(?:[.,;!]|$|than\b|{WHAT}\b))"),
    _kind(Form.GAP, rf"{LEE}?(?P<n>{NUMBER})\s+(?:more|(?P<less>less|fewer))\s+(?:{WHAT}\s+)?than\b(?!\s+(?:before|usual|last))"),
    _kind(Form.GAP, rf"{_GAP}\s+between\b[^.;:]*?(?P<claim>{BE}{LEE}?(?P<n>{NUMBER}))\b(?!\s*(?:%|percent|per\s+cent|times))", both=True),
    _kind(Form.GAP, rf"(?:beats?|outdo(?:es)?|leads?)\s+[^.,;:!?]{{1,60}}?\bby\s+{LEE}?(?P<n>\d+(?:,\d{{3}})*(?:\.\d+)?|{NUMBER})\b(?!\s*(?:%|percent|per\s+cent|points?|minutes?|seconds?))", both=True),
    _kind(Form.GAP, rf"{BE}{LEE}?(?:(?:higher|larger|bigger|(?P<less>lower|smaller))|ahead|(?P<behind>behind))\s+(?:by|[^.,;:!?]{{1,60}}?\bby)\s+(?P<n>\d+(?:,\d{{3}})*(?:\.\d+)?|{NUMBER})\b", both=True),
)  # fmt: skip
_EXTREMES = (
    _kind(Form.MOST, rf"(?:{HOLDS}|comes?\s+with\s+)(?:(?:by\s+far|easily)\s+)?the\s+(?:most|highest|largest\s+amount)\b{_OF_IT}"),
    _kind(Form.LEAST, rf"(?:{HOLDS}|comes?\s+with\s+)(?:(?:by\s+far|easily)\s+)?the\s+(?:least|fewest|lowest|smallest\s+amount)\b{_OF_IT}"),
    _kind(Form.MOST, rf"(?:holds?|has|have|contains?)\s+more\s+(?:{WHAT}\s+)?than\s+(?:any|every|all(?:\s+of)?)\s+(?:the\s+)?others?\b"),
    _kind(Form.LEAST, rf"(?:holds?|has|have|contains?)\s+(?:less|fewer)\s+(?:{WHAT}\s+)?than\s+(?:any|every|all(?:\s+of)?)\s+(?:the\s+)?others?\b"),
    _kind(Form.MOST, rf"(?:nothing(?:\s+else)?|no\s+other\s+food|no\s+food)(?:\s+(?:here|of\s+(?:all|them)))?\s+(?:holds?|has|contains?)\s+more(?:\s+{WHAT})?\s+than\b"),
    _kind(Form.LEAST, rf"(?:nothing(?:\s+else)?|no\s+other\s+food|no\s+food)(?:\s+(?:here|of\s+(?:all|them)))?\s+(?:holds?|has|contains?)\s+(?:less|fewer)(?:\s+{WHAT})?\s+than\b"),
    _kind(Form.MOST, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}the\s+{_BIG})\b"),
    _kind(Form.LEAST, rf"{_GAP}\b[^.;:]*?(?P<claim>{BE}the\s+{_SMALL})\b"),
    _kind(Form.MOST, rf"(?:holds?|has|have|shows?)\s+the\s+{_BIG}\s+{_GAP}\b"),
    _kind(Form.LEAST, rf"(?:holds?|has|have|shows?)\s+the\s+{_SMALL}\s+{_GAP}\b"),
    _kind(Form.MOST, rf"the\s+{_BIG}\s+{_GAP}\s+(?:is|stands|comes)\s+(?:in|of|that\s+of)\b"),
    _kind(Form.LEAST, rf"the\s+{_SMALL}\s+{_GAP}\s+(?:is|stands|comes)\s+(?:in|of|that\s+of)\b"),
)  # fmt: skip
_DIRECTIONS = (
    _kind(Form.MORE, rf"(?:but|and|yet)\s+(?:still\s+)?(?P<claim>more\s+(?:{WHAT}\s+)?than)\b(?!\s*\d)"),
    _kind(Form.LESS, rf"(?:but|and|yet)\s+(?:still\s+)?(?P<claim>(?:less|fewer)\s+(?:{WHAT}\s+)?than)\b(?!\s*\d)"),
    _kind(Form.MORE, rf"(?:holds?|held|has|have|contains?|brings?|gives?|packs?)\s+{BEFORE_MORE}?more\b{ENDS}"),
    _kind(Form.LESS, rf"(?:holds?|held|has|have|contains?|brings?|gives?|packs?)\s+{BEFORE_MORE}?(?:less|fewer)\b{ENDS}"),
    _kind(Form.MORE, rf"(?:holds?|has|have|contains?)(?P<not>\s+no)\s+more\s+(?:{WHAT}\s+)?than\b(?!\s*\d)"),
    _kind(Form.LESS, rf"(?:holds?|has|have|contains?)(?P<not>\s+no)\s+less\s+(?:{WHAT}\s+)?than\b(?!\s*\d)"),
    _kind(Form.MORE, rf"there\s+(?:is|are)\s+{BEFORE_MORE}?more\s+(?:{WHAT}\s+)?in\b"),
    _kind(Form.LESS, rf"there\s+(?:is|are)\s+{BEFORE_MORE}?(?:less|fewer)\s+(?:{WHAT}\s+)?in\b"),
    _kind(Form.MORE, rf"{_SUM}\b[^.;:]*?(?P<claim>{BE}{BEFORE_MORE}?(?:bigger|larger|higher|wider|greater|more))\b"),
    _kind(Form.LESS, rf"{_SUM}\b[^.;:]*?(?P<claim>{BE}{BEFORE_MORE}?(?:smaller|lower|narrower|less))\b"),
    _kind(Form.MORE, rf"{BE}{BEFORE_MORE}?(?:higher|more)\s+(?:in\s+{WHAT}\s+)?than\b(?!\s*\d)", both=True),
    _kind(Form.LESS, rf"{BE}{BEFORE_MORE}?(?:lower|less)\s+(?:in\s+{WHAT}\s+)?than\b(?!\s*\d)", both=True),
    _kind(Form.MORE, r"(?:beats?|outdo(?:es)?)\s+", both=True),
)  # fmt: skip


CLAIMS = Grammar(
    claims=(*_ROWS, *_PARTS, *_TIMES, *_SAME, *_GAPS, *_EXTREMES, *_DIRECTIONS),
    numbers={
        "twice": Fraction(2),
        **dict.fromkeys(("double", "doubles"), Fraction(2)),
        **dict.fromkeys(("triple", "triples"), Fraction(3)),
        **dict.fromkeys(("quadruple", "quadruples"), Fraction(4)),
        **dict.fromkeys(("half an", "half a"), Fraction(1, 2)),
        **{
            name: Fraction(n)
            for n, name in enumerate(_NTH.strip("(?:)").split("|")[:-1], 1)
        },
        **PARTS,
    },
    leeways=tuple((leeway, words(*some)) for leeway, some in LEEWAYS.items()),
    measures={measure: words(names) for measure, names in MEASURES.items()},
    doubt=words(
        "not", "never", "no", "nor", "neither", "if", "imagine", "suppose", "would", "could", "might", "may", "whether",
        "whichever", "find", "choose", "pick", "draw", "pretend", "unless", "until", "which", "what if", "nobody", "hardly ever",
    ),
    denial=re.compile(
        r"\bnot\s+(?P<only>even\s+)?$|(?:\b(?:does|do|did|is|are|was|were|has|have|had)(?:n['’]t|\s+not)|\bcannot|\bcan['’]t)\s+(?P<even>even\s+)?"
        r"(?:(?:really|quite|actually|exactly|just)\s+)?(?:(?:hold|have|contain|bring|give|pack|make|come\s+to)\s+)?(?:(?:exactly|just)\s+)?$",
        re.IGNORECASE,
    ),
    reported=re.compile(
        r"(?<!\blabel )(?<!\blabels )(?<!\bnumbers )(?<!\bnumber )(?<!\btable )(?<!\bpage )(?<!\bpackage )(?<!\bcard )"
        r"\b(?:said|says|thinks?|(?<!have )thought|believes?|believed|guess(?:ed|es)?|claims\s+that|claimed|told|tells|wrote|writes|bets?|wonders?|hopes?|expect(?:s|ed)?)\b"
        r"|\b(?:some|people|they|let['’]?s|let\s+us|would|could|might|may|to)\s+(?:\w+\s+)?say\b|\btrue\s+or\s+false\b|\bit\s+(?:looks|seems|sounds)\b|\blooks?\s+like\b|\bseems?\b",
        re.IGNORECASE,
    ),
    supposed=words(
        "suppose", "imagine", "pretend", "what if", "if", "not one", "none of", r"no (?:food|row|side)",
        r"(?:does|do|did)(?:n['’]t|\s+not)\s+(?:hold|have|contain|bring|come)",
        r"(?:nobody|no one|somebody|someone)\s+(?:said|says|thought|thinks|wrote|writes)",
    ),
    states=words(
        r"holds?", "held", "has", "have", "had", "contains?", "brings?", "gives?", "packs?", "makes?", "is", "are", "was", "were",
        r"(?:that|it|there)['’]s", "comes? to", "adds? up", "provides?",
    ),
    telling=words(r"why", r"how come"),
    rows=re.compile(
        rf"\brows?\s+(?:number\s+)?(?P<after>{_IN}(?:(?:,|\s+and)\s+{_IN})*)\b"
        rf"|\b(?P<before>{_NTH}(?:(?:,|\s+and)\s+(?:the\s+)?{_NTH})*)\s+rows?\b",
        re.IGNORECASE,
    ),
    row=words("rows?"),
    last=words("last"),
    total=words("total", "totals", "altogether", "all together", "in all", "added up", "all rows"),
    gap=words(_GAP),
    together=words("together", "combined", "added", "in all"),
    counted=COUNTED,
    percent=re.compile(r"\s*(?:%|percent|per cent)$"),
    said=NUMBER_WORDS,
    amounts=words(
        rf"(?P<n>{NUMBER})\s+(?:cups?|slices?|bowls?|glasses|bottles|cans|servings?|portions?|pieces?|people|friends|spoons|teaspoons)"
    ),
    clauses=re.compile(r"[,;:—–]\s|\b(?:but|while|whereas)\b", re.IGNORECASE),
    plain=frozenset(_PLAIN.split()),
    times_word="times",
)  # fmt: skip
