"""What the words of a record say of care: allergens in it, a shape that can choke, raw and eaten cooked."""

from __future__ import annotations

import re

from generator.model.food import Allergen

_ALLERGENS: tuple[tuple[Allergen, str, str], ...] = (
    (
        Allergen.MILK,
        r"milk|cheeses?|queso|butter|buttermilk|cream|creams|yogurts?|whey|custard|pizza|quesadilla|lasagna",
        (
            r"(?:almond|coconut|rice|soy|oat)\s?milk|(?:peanut|almond|sesame|seed|nut|cocoa) butter"
            r"|butternut|without milk|cream (?:soda|of tartar)|milkfish|cream-style"
        ),
    ),
    (Allergen.EGGS, r"eggs?|eggnog|mayonnaise|meringue|omelet|spread", r"eggplant|butter.*spread"),
    (
        Allergen.FISH,
        r"fish|salmon|tuna|cod|tilapia|sardines?|anchov(?:y|ies)|haddock|trout|catfish|surimi",
        r"fish oil, menhaden|passion-?fish",
    ),
    (
        Allergen.SHELLFISH,
        r"crustaceans?|shrimps?|crabs?|lobsters?|crayfish|prawns?",
        r"crab ?apples?",
    ),
    (
        Allergen.TREE_NUTS,
        (
            r"almonds?|cashews?|pecans?|walnuts?|pistachios?|hazelnuts?|filberts?|macadamias?"
            r"|brazilnuts?|pine nuts?|pesto|mixed nuts"
        ),
        "",
    ),
    (Allergen.PEANUTS, r"peanuts?", r"without peanuts?"),
    (
        Allergen.WHEAT,
        (
            r"wheat|flour|bread|breaded|breads|rolls?|buns?|crackers?|pasta|spaghetti|macaroni|noodles?"
            r"|ramen|semolina|farina|bulgur|couscous|cookies?|cakes?|pies?|muffins?|biscuits?|pancakes?"
            r"|waffles?|doughnuts?|croissants?|bagels?|pretzels?|pizza|burritos?|sandwich(?:es)?|wonton"
            r"|pita|chapati|naan|paratha|lasagna|ravioli|hamburger|cheeseburger|soy sauce|gravy|hot ?dogs?"
        ),
        (
            r"buckwheat|rice(?:,| )(?:flour|noodles?|cakes?)|noodles?, rice|corn flour"
            r"|cornmeal bread|sauce, (?:pasta, )?spaghetti|syrups,.*pancake|fruit leather, rolls?"
            r"|bread ?fruit"
        ),
    ),
    (
        Allergen.SOYBEANS,
        r"soy|soya|soybeans?|soyburgers?|soymilk|tofu|tempeh|miso|edamame|shoyu|tamari",
        r"oil, vegetable, soybean, refined|oil, soybean",
    ),
    (Allergen.SESAME, r"sesame|tahini|hummus", ""),
)
"""For each allergen the words that speak of it, and words with them inside that do not.

The allergens are those of FALCPA 2004 and the FASTER Act of 2021. Coconut is none of the tree
nuts (FDA, Questions and Answers Regarding Food Allergens, edition 5, January 2025), nor is a highly
refined oil an allergen (FALCPA). Gravy: Virginia Cooperative Extension, FST-202. That a roll, a
burrito or a pizza is made of wheat, and a lasagna of cheese, is common knowledge, no source.
"""

_CHOKING: tuple[tuple[str, str], ...] = (
    (r"^nuts,(?!.*milk)|\bpeanuts\b(?<!without peanuts)|trail mix", "nuts"),
    (r"^seeds,(?! chia)|\bseed kernels", "seeds"),
    (r"^(?:peanut butter|nuts, almond butter|seeds, .*butter)", "thick butter of nuts or seeds"),
    (r"popcorn", "popcorn"),
    (r"\bchips\b(?!, chocolate)|nachos|puffs or twists|pork skins", "chips and the like"),
    (r"pretzels, hard", "hard pretzels"),
    (r"granola", "granola"),
    (r"rice cakes", "rice cakes"),
    (r"candies, hard|chewing gum", "hard candy, gum"),
    (
        r"candies, (?:marshmallows|caramels|gumdrops|jellybeans|fruit snacks|tamarind)|fruit leather",
        "sticky or chewy candy",
    ),
    (r"^candies, milk chocolate", "small pieces of chocolate"),
    (r"\braisins,|\bdried\b.*(?:uncooked|sweetened)|dates,|prunes", "dried fruit"),
    (r"frankfurter|corn dogs?|pork sausage, link|^pepperoni|jerky", "rounds and sticks of sausage"),
    (r"beef.*steak|chuck for stew|\(chops\)", "tough meat"),
    (r"cheese, (?:cheddar|swiss|mozzarella)", "chunks of cheese"),
    (
        r"grapes, .*raw|cherries, .*raw|tomatoes, .*raw|litchis|blueberries|olives",
        "round and whole",
    ),
    (
        (
            r"(?:carrots|celery|broccoli|cauliflower|radishes|jicama\)|peppers, sweet,.*|cucumber.*"
            r"|peas, edible-podded), raw|waterchestnuts|yambean"
        ),
        "hard raw vegetables",
    ),
    (
        (
            r"^(?:apples|pears|peaches|nectarines|plums|apricots|guavas|melons|watermelon|mangos|papayas"
            r"|pineapple|jackfruit),.* ?raw"
        ),
        "large pieces of raw fruit",
    ),
)
"""Words of a record, and the shape in them that a child under four can choke on.

Nuts, popcorn, chips, gum, hard candy, rounds of sausage, tough meat, whole grapes, cherry tomatoes,
large pieces of raw fruit and vegetables, thick peanut butter: USDA's page of food safety for
preschoolers (R). Seeds, hard pretzels, granola, raisins and other dried fruit, marshmallows, whole
cherries: USDA, Building Blocks for Healthy Meals, FNS-305, spring 2000 (S). Rice cakes, raw peas:
Caring for Our Children, standard 4.5.0.10 (S). Chunks of cheese, sticky or chewy candy: American
Academy of Pediatrics, as quoted in 2008 (S). Berries, granola bars, snacks like chips, jelly beans,
caramels, gum drops: University of Illinois Extension, Prevent choking (S). Small bars of chocolate:
common practice, no source.
"""

_MEATS = r"beef|pork|lamb|veal|game|poultry|sausages|finfish|shellfish|fish"
_RAW = (
    (_MEATS, r"\braw\b|\bunprepared\b|\buncooked\b"),
    (r"legume", r"\braw\b"),
    (r"dairy|egg", r"^eggs?,.*\braw\b"),
    (r"cereal grains", r"\bflour\b|\b(?:raw|dry|uncooked)\b"),
    (r"baked", r"\bdough\b"),
    (
        r"",
        r"^(?:cassava|taro|yam|yautia|pokeberry shoots|potatoes|sweet potato|bamboo shoots|rhubarb|cookie dough)\b.*\braw\b",
    ),
)
"""For each shelf of the records, words that say a food is raw and is eaten only cooked. Cassava,
taro and bamboo shoots are poisonous raw, and so are dry beans; from memory. Flour is raw too (FDA, from memory)."""
_READY = re.compile(r"peanuts|tofu|\bmilk\b|ready-to-eat|\b(?:cooked|baked)\b", re.IGNORECASE)


def allergens_said(record: str) -> tuple[Allergen, ...]:
    """The allergens that a record's own words speak of."""
    words = record.lower()
    found = []
    for allergen, speaks, not_so in _ALLERGENS:
        rest = re.sub(not_so, " ", words) if not_so else words
        if re.search(rf"\b(?:{speaks})\b", rest):
            found.append(allergen)
    return tuple(found)


def choking_shape(record: str) -> str:
    """The shape in a record's words that can choke a child under four; empty where none is said."""
    words = record.lower()
    return next((shape for said, shape in _CHOKING if re.search(said, words)), "")


def eaten_cooked(record: str, shelf: str) -> bool:
    """Whether a record's words and shelf say that it is raw, and that nobody eats it so."""
    if _READY.search(record):
        return False
    return any(
        re.search(of, shelf.lower()) and re.search(said, record.lower()) for of, said in _RAW
    )
