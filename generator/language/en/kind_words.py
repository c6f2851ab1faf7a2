"""English words that make food a matter of guilt, or movement its price, and what to say instead."""

from __future__ import annotations

from generator.language.kind_words import UnkindWords

UNKIND_WORDS = (
    UnkindWords(
        r"burn(s|ed|ing|t)?( \w+){0,3} (off|calories|energy|kcal|kilocalories)",
        "say what the food gives, or count the moves as a game",
    ),
    UnkindWords(
        r"work(ed|ing)? off|work(s|ed|ing)? (it|them|that|this|(the|your|our|my) \w+) off",
        "movement is play and pays for nothing",
    ),
    UnkindWords(r"(earn|deserve)(s|ed|ing)?", "food is never earned"),
    UnkindWords(r"(pay|pays|paid|paying) for|make up for", "movement is play and pays for nothing"),
    UnkindWords(
        r"cheat(s|ed|ing)?|guilt|guilty|sinful|naughty", "name the food and say nothing about it"
    ),
    UnkindWords(
        r"(good|bad|clean|junk|unhealthy) (foods?|snacks?|drinks?|lunch(es)?|meals?|choices?|sides?)",
        "say `holds more` or `holds less`",
    ),
    UnkindWords(
        r"(lose|losing|lost|gain|gaining)( \w+)? weight|fat(ter|tening)|skinny|overweight|obes\w+|diet(s|ing)?",
        "leave bodies out of the lesson",
        of_bodies=True,
    ),
    UnkindWords(
        r"(good|bad|healthier|unhealthy) for (you|us|him|her|them|(your|our|the) \w+)|(is|are|was|were) (bad|junk|unhealthy)",
        "say what the food gives, and how much of it",
    ),
)
