"""English words that make food a matter of guilt, or movement its price, and what to say instead."""

from __future__ import annotations

from generator.language.kind_words import UnkindWords

_WHOLE = r"(foods?|snacks?|drinks?|lunch(es)?|breakfasts?|dinners?|suppers?|meals?|choices?|sides?|options?|plates?|swaps?|eating)"
_SWEET = r"(dessert|seconds|sweets|(the |a |some |that )?(\w+ )?(pie|cake|cookies?|pizza|ice cream|treats?))"

UNKIND_WORDS = (
    UnkindWords(
        r"burn(s|ed|ing|t)?( \w+){0,3} (off|calories|energy|kcal|kilocalories)",
        "say what the food gives, or count the moves as a game",
    ),
    UnkindWords(
        r"work(ed|ing)? off|work(s|ed|ing)? (it|them|that|this|(the|your|our|my) \w+) off"
        r"|(jump|march|dance|sweat|hop|squat|run|walk|exercise)(s|ed|ing)? (it|them|(the|that|this|your|our|my) \w+) (away|off)"
        r"|(must|have to|need to|want to|can|will) undo (?!\w+ (knots?|buttons?|zips?|laces?|lids?|belts?))\w+ \w+",
        "movement is play and pays for nothing",
    ),
    UnkindWords(
        r"(earn|deserve)(s|ed|ing)?( (a|the|your|my|our|some)( \w+)? (treats?|rewards?))?",
        "food is never earned",
    ),
    UnkindWords(
        r"(a|an|the|your|my|our|little|sweet|special) treats?|treats (come|for|after|later|only)|treat (yourself|himself|herself|themselves|ourselves)"
        r"|(a|the|your|my|our|as) rewards?|reward(s|ed|ing)? (yourself|yourselves|him|her|them|us|me)",
        "name the food: it is food, and no prize",
    ),
    UnkindWords(
        r"(pay|pays|paid|paying) for|make up for|compensat\w+|balanc(e|es|ed|ing) (it |that |them )?out"
        rf"|(make|makes|made|save|saved) room for {_SWEET}",
        "movement is play and pays for nothing, and no food has to make up for another",
    ),
    UnkindWords(
        r"cheat(s|ed|ing)?|guilt|guilty|sinful|a sin|sins|naughty|indulg(e|es|ed|ing|ent|ence)",
        "name the food and say nothing about it",
    ),
    UnkindWords(
        rf"(good|bad|clean|junk|(un)?healthy|lighter) {_WHOLE}|eat(s|ing)? clean|healthier"
        r"|light (choices?|options?|lunch(es)?|dinners?|suppers?|meals?|snacks?)",
        "say `holds more` or `holds less`",
    ),
    UnkindWords(
        r"(lose|losing|lost|gain|gaining)( \w+)? weight|fat(ter|tening)|skinny|slim(mer|ming)?|overweight|obes\w+|diet(s|ing)?"
        r"|(watch|watches|watching|mind|minding) (your|his|her|their|our|my) (figure|weight|waist\w*|portions?)|portion control",
        "leave bodies out of the lesson",
        of_bodies=True,
    ),
    UnkindWords(
        r"skip(s|ped|ping)? (a |the |your |his |her |their )?(meals?|breakfasts?|lunch(es)?|dinners?|suppers?)",
        "nobody leaves out a meal; say what stands on the table",
    ),
    UnkindWords(
        r"(empty |extra |too many |count(s|ed|ing)? )?calories",
        "say `energy`, and kilocalories for its number",
    ),
    UnkindWords(
        r"(good|bad|healthier|unhealthy) for (you|us|him|her|them|(your|our|the) \w+)|(is|are|was|were|so|very) (bad|junk|(un)?healthy)",
        "say what the food gives, and how much of it",
    ),
    UnkindWords(
        rf"(better|best|worse|worst|smarter|smartest) ({_WHOLE}|changes?)"
        r"|(swaps?|changes?|choices?|options?) (is|are|was|were) (the )?(better|best|worse|worst|smarter|smartest)",
        "no food and no change is better than another: say which way the gap goes",
    ),
)
