"""How the inside or the outside of a tube is finished: 'innen poliert', 'galvanized outside'.

Such a side is the tube's, and no side that a radius is measured to.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_DONE = any_of(
    r"(?:hot[- ]dip )?galvani[sz]ed | zinc(?:ed|[- ]plated)? | (?:nickel |chrome )?plated"
    r" | chromed?",
    r"(?:powder[- ])?(?:coated|painted) | polished | primed? | primer | smooth | brushed"
    r" | clean(?:ed)?",
    "lacquered | anodi[sz]ed | deburred | pickled | bright | rusty | bare | scaled? | raw | rough",
    r"as[- ](?:drawn|welded|rolled) | untreated | unfinished | oiled | greased | ground | honed",
    r"mill[- ]finish(?:ed)?",
    "(?:feuer)?verzinkt | poliert | lackiert | beschichtet | glatt | blank | geschliffen"
    " | entgratet",
    "sauber | gebeizt | grundiert | verchromt | rostig | roh | unbehandelt | matt | gehont | rau",
    "geölt | gefettet | gereinigt | gebürstet | walzblank | ungeschliffen",
    "polie?s? | peinte?s? | galvanisée?s? | zinguée?s? | lisses? | propres? | brossée?s?"
    " | ébavurée?s? | brute?s? | nus? | rugueu(?:x|se) | traitée?s? | bruts? de laminage",
    "pulid[oa]s? | pintad[oa]s? | galvanizad[oa]s? | lis[oa]s? | limpi[oa]s? | cromad[oa]s?",
    "crud[oa]s? | en bruto | brut[oa]s? | desbarbad[oa]s? | oxidad[oa]s? | cepillad[oa]s?",
    "grezz[oaie] | sbavat[oaie] | spazzolat[oaie] | arrugginit[oaie]",
    "lucidat[oaie] | verniciat[oaie] | zincat[oaie] | lisci[oae] | pulit[oaie] | cromat[oaie]",
    "gepolijst | gelakt | geverfd | glad | schoon | verchroomd | gegalvaniseerd | onbehandeld",
    "ruw | ontbraamd | geslepen | verzinkt | geborsteld | roestig",
)
_HOW = (
    r"(?:(?:lightly|slightly|a (?:bit|little)|leicht|etwas|légèrement|un peu|ligeramente"
    r"|leggermente|un po'|licht|een beetje|completely|ganz|nicht|not|non|niet|no|pas)\s)?"
)
_SIDE = (
    r"(?:(?:on|at|from) (?:the )?)?(?:(?:the |dem |die )?(?:inside|outside|inner side|outer side"
    r"|innen(?:seite|fläche)?|au(?:ß|ss)en(?:seite|fläche)?)|(?:à )?l'(?:intérieur|extérieur)"
    r"|intérieur|extérieur|por (?:dentro|fuera)|(?:en el )?(?:interior|exterior)"
    r"|(?:all')?(?:intern[oa]|estern[oa])|(?:aan de )?(?:binnen|buiten)(?:kant|zijde)?)"
)
_AND = r"(?:\s?,\s|\s(?:and|und|et|y|e|en|&)\s)"
_BETWEEN = (
    r"(?:\s(?:of the (?:bend|tube|pipe)|(?:has|have|must|should|needs?) (?:to )?be|is|are|surface"
    r"|face"
    r"|must|muss|soll(?:te)?|ist|sein|sind|doit être|est|debe ser|es|deve essere|è|moet|is))*\s"
)
_SOME_SIDE = re.compile(
    "inside|outside|inner|outer|innen|au(?:ß|ss)en|int[eé]ri|ext[eé]ri|intern|estern|dentro|fuera"
    "|binnen|buiten|trados"
)
_FINISH = late_pattern(
    rf"\b(?:{_DONE}\s{_SIDE}(?:{_AND}(?:{_DONE}\s)?{_SIDE})?"
    rf"|{_SIDE}(?:{_AND}{_SIDE})?{_BETWEEN}{_HOW}{_DONE}(?:{_AND}{_SIDE}\s{_DONE})?)(?![\w-])"
)


def names_side(words: str) -> bool:
    """Whether casefolded words name an inside or an outside at all: few do."""
    return _SOME_SIDE.search(words) is not None


def without_finishes(words: str) -> str:
    """Casefolded words without those on the finish of a side."""
    return _FINISH.sub(" ", words) if names_side(words) else words
