"""Words by which a size is what was bent until now, and another has come in its place.

As ``told_plainly_words``: searched in casefolded words on one size.
"""

from __future__ import annotations

from ..text.patterns import whole_words

_UNTIL_NOW = {
    "en": r"(?:until|till|up to|up until) (?:now|today|recently)|so far|originally|previously"
    r"|formerly|before|in the past|at first",
    "de": r"bisher|bislang|bis jetzt|bis heute|bis dato|früher|vorher|zuvor|davor|ursprünglich"
    r"|anfangs|zunächst|damals",
    "fr": r"jusqu'à présent|jusqu'à maintenant|jusqu'ici|avant|auparavant|précédemment|à l'origine"
    r"|au départ|initialement",
    "es": r"hasta ahora|hasta hoy|antes|anteriormente|originalmente|al principio|inicialmente"
    r"|en un principio",
    "it": r"finora|fino ad oggi|fino a ora|fino ad ora|prima|in precedenza|precedentemente"
    r"|in origine|originariamente|all'inizio|inizialmente",
    "nl": r"tot nu toe|tot nu|tot op heden|voorheen|vroeger|eerder|oorspronkelijk|eerst|voordien"
    r"|in het begin",
}
_WAS = {
    "en": r"(?:(?:it|that|this|the (?:tube|size|pipe)|ours) was|(?:we|i) (?:had|ran|used|bent))",
    "de": r"(?:war(?:en)?(?: (?:es|das rohr|das))?|(?:hatten|bogen|verwendeten|nahmen) wir)",
    "fr": r"(?:c'était(?: du)?|(?:nous|on) (?:avions|avait|cintrions|cintrait|utilisions|utilisait)"
    r"(?: du)?|le tube était)",
    "es": r"(?:era(?:n)?|el tubo era|teníamos|curvábamos|usábamos|hacíamos)",
    "it": r"(?:era(?:no)?|il tubo era|avevamo|curvavamo|usavamo|piegavamo|facevamo)",
    "nl": r"(?:was(?: (?:het|dat|de buis))?|(?:hadden|bogen|gebruikten) we)",
}
WAS_BEFORE = whole_words(
    r"(?<!\w )was (?=\.?\d) | (?:before|previously|formerly|originally)(?: it| that| this)? was",
    *(rf"(?:{when}),? {_WAS[language]}" for language, when in _UNTIL_NOW.items()),
    r"(?:it|that|this|the (?:tube|size|pipe)) (?:used to be|was (?:previously|originally"
    r"|formerly))",
    r"(?:we|i) (?:used to (?:have|run|use|bend)|(?:previously|originally|formerly)"
    r" (?:had|ran|used|bent)) | auparavant",
    rf"wir (?:hatten|bogen|verwendeten|nahmen) (?:{_UNTIL_NOW['de']})",
    r"(?:the|our) (?:old|previous|former) (?:tube|size|pipe|one) was",
    r"(?:das|unser) (?:alte|bisherige|frühere) (?:rohr|maß) war",
    r"(?:l'ancien|le) (?:tube|format) (?:précédent )?était",
    r"el tubo (?:anterior|antiguo|viejo) era | il (?:vecchio|precedente) tubo era"
    r" | il tubo (?:precedente|vecchio) era | de (?:oude|vorige) (?:buis|maat) was",
)
"""'It is now 1.5 x .083 (was 1.5 x .065)'."""
BESIDE = whole_words(
    r"also | too | as well | additional\w* | besides | without (?:a )?mandrel | auch | außerdem",
    r"zusätzlich | dazu | ohne dorn | aussi | en plus | sans mandrin | también | además",
    r"back to | zurück | revien\w+ | retour | vuelve\w* | volvemos | torna\w* | terug",
    r"sin mandril | anche | inoltre | senza (?:mandrino|anima) | ook | daarnaast | zonder doorn",
)
"""With these, what was until now has not gone, comes again, or was bent without a mandrel."""
