"""What a standard says, in the language of a page."""

from __future__ import annotations

from generator.model.site import Standard
from generator.present.words.foreign import missing


def standard_words(standard: Standard, language: str, first: str) -> str:
    """Its words in a language, else those of the site's first language or of any, marked as foreign.

    Args:
        standard: as the site has it.
        language: tag of BCP 47 of the page; words without a region serve every region.
        first: the first language of the site.
    """
    says = standard.in_languages(first)
    own = says.get(language) or says.get(language.partition("-")[0])
    if own:
        return own
    tag, words = (first, says[first]) if first in says else next(iter(says.items()), (first, ""))
    return missing(words, tag)
