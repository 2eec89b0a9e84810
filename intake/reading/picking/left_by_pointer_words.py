"""Words by which a size is left out that only a place, a rank or a name points to.

Searched in one casefolded sentence. ``name`` is what points to the size.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words, word_set

_THE = r"(?:(?:the|our|my|der|die|das|den|dem|le|la|les|el|los|las|il|lo|i|de|het)\s|l')"
_NAME = r"(?P<name>[^\W\d]+(?:[ -][^\W\d]+){0,2}?)"
_NOUN = (
    r"(?:\s(?:ones?|sizes?|tubes?|pipes?|mandrels?|jobs?|stuff|parts?|rohre?|\w*dorn|grösse|tubos?"
    r"|mandrin|mandril|tubi|mandrino|buis|doorn|maat))?"
)
_TOOL = r"(?:mandrels?|one|tool|\w*dorn|einen|welchen|mandrin|un|mandril|uno|mandrino|doorn|een)"
_END = (
    r"(?=\s?(?:[.,;:!)–-]|$|and\b|so\b|already\b|now\b|for now\b|too\b|from\b|since\b|thanks\b"
    r"|und\b|also\b|et\b|donc\b|y\b|e\b|quindi\b|en\b|dus\b))(?!\s?(?:by|until|till)\b)"
)
_ON_HOLD = any_of(
    r"(?:is|are|was|were|has been|have been|got|gets?)(?: now| still| currently| all)? (?:on hold"
    r"|on ice|postponed|cancell?ed|dropped|off|off the table|shelved|parked|put off|put on hold"
    r"|delayed|out|pushed (?:out|back)|dead)",
    r"(?:can|will|has to|must)(?: just| probably)? wait | (?:is|are|can be) (?:for )?later",
    r"(?:ist|sind|wurde|wurden)(?: erst ?mal| vorerst| noch)? (?:zurückgestellt|verschoben"
    r"|storniert|gestrichen|auf eis) | (?:kann|können)(?: noch)? warten | entfällt | fällt weg",
    r"(?:est|sont|a été|ont été) (?:en attente|en suspens|reportée?s?|annulée?s?"
    r"|suspendue?s?) | (?:peut|peuvent|peux) attendre",
    r"(?:está|están|queda|quedan|ha sido) (?:en espera|aplazad[oa]s?|anulad[oa]s?|cancelad[oa]s?"
    r"|parad[oa]s?|suspendid[oa]s?) | (?:puede|pueden) esperar",
    r"(?:è|sono|è stat[oa]) (?:in sospeso|sospes[oa]|rimandat[oa]|annullat[oa]|rinviat[oa])"
    r" | (?:può|possono) aspettare",
    r"(?:is|zijn|staat|staan)(?: nog| voorlopig)? (?:uitgesteld|geannuleerd|in de wacht|vervallen"
    r"|on hold) | (?:kan|kunnen)(?: nog)? wachten | vervalt",
)
"""'... is on hold', '... can wait'."""
_IS_THERE = any_of(
    r"(?:we|i)(?: already|'ve| still)* (?:have|got|own)(?: got)?(?: already| covered| sorted)?",
    r"(?:is|are)(?: all| already)* (?:covered|sorted|taken care of|here|in stock|on hand|done"
    r"|tooled)",
    r"(?:already )?(?:has|have|got|gets) (?:its own|an?|one|a)(?: \w+)? ?(?:mandrel)?",
    r"(?:haben|hätten) wir (?:schon|bereits|ja schon) | habe? ich (?:schon|bereits) | (?:ist|sind|"
    r"liegt) (?:schon|bereits) (?:da|vorhanden|hier)",
    r"(?:on l'a|nous l'avons|je l'ai|est) déjà(?: là| en stock)? | ya (?:l[oa]s? )?(?:tenemos"
    r"|tengo) | ya está",
    r"(?:ce l'abbiamo|l'abbiamo|ce l'ho|l'ho) già | è già (?:qui|disponibile)",
    r"(?:hebben we|heb ik|is er) al",
)
_NEEDS_NONE = any_of(
    r"(?:does not|doesn't|don't|do not|will not|won't)(?: really)? need (?:an? |any |one)?"
    r"(?:mandrel)?",
    r"needs? (?:no mandrel|none|nothing)",
    r"(?:one )?(?:we|i)(?: can|'ll| will| could)? (?:bend|do|make|roll)(?: it)? (?:without(?: an?"
    r"| any| one)?(?: mandrel)?|empty|by hand)",
    r"(?:is|are|gets?)(?: bent| done| made)? without(?: an?)?(?: mandrel)?",
    r"braucht (?:keinen|nichts) | (?:brauchen|benötigen) wir nicht | (?:biegen|machen) wir ohne",
    r"n'(?:a|ont) pas besoin | on l[ae] cintre sans | no (?:necesita|hace falta) | (?:lo|la)"
    r" (?:doblamos|curvamos) sin | non serve | (?:lo|la) pieghiamo senza",
    r"(?:hebben|heb) (?:we|ik) niet nodig | (?:heeft|hoeft) (?:er )?geen | (?:buigen|doen) we"
    r" zonder",
)
BEHIND = late_pattern(
    rf"(?:^|[.;:,!]\s|\b(?:and|but|as|since|und|et|y|e|en)\s){_THE}{_NAME}{_NOUN},?\s"
    rf"{any_of(_ON_HOLD, _IS_THERE, _NEEDS_NONE)}{_END}"
)
"""'The second one can wait', 'the rear hoop we already have'."""

_FOUND = any_of(
    rf"(?:have|got|own|found|borrowed|bought|ordered|made|turned|sourced|located)(?: already| us"
    rf"| ourselves| got| up)* (?:an?|the|your|another|one)(?: \w+){{0,2}}?(?: {_TOOL})?",
    r"(?:haben|habe)(?: wir| ich)?(?: schon| bereits| noch)* (?:einen|den)(?: \w*dorn)?",
    r"(?:on a|nous avons|j'ai) (?:déjà |trouvé )+(?:un|le)(?: mandrin)?",
    r"(?:ya )?(?:tenemos|tengo|encontramos) (?:un|el|uno)(?: mandril)?",
    r"(?:abbiamo|ho)(?: già| trovato)+ (?:un|il|uno)(?: mandrino)?",
    r"(?:hebben|heb)(?: we| ik)?(?: al| nog)* (?:een|de)(?: doorn)?",
)
_WHERE = (
    r"(?: (?:already|here|elsewhere|somewhere|online|on the shelf|in (?:the|our) (?:shop|drawer"
    r"|rack|stock)|im (?:regal|haus|lager)|en stock|in magazzino|op voorraad))*"
)
_FOR = r"(?:for|für|fürs|pour|para|per|voor)"
_LEAVES = any_of(
    r"(?:skip|omit|drop|scrap|forget(?: about)?|ignore|disregard|leave out|leave off|hold off on"
    r"|cancel|exclude|no need (?:for|to quote|to price|to do)|(?:don't|do not|needn't|please don't)"
    r" (?:need|quote|price|bother with|worry about|do)(?: an?| a mandrel| one)?(?: for| on)?)",
    r"(?:ohne|außer|nicht) (?:für )? | (?:streichen sie|vergessen sie)",
    r"(?:oubliez|laissez tomber|pas besoin de(?: mandrin pour)?|ne chiffrez pas)",
    r"(?:olvidad|olvide|no cotice(?:n)?|no hace falta(?: mandril para)?)",
    r"(?:lasciate stare|non quotate|non serve(?: il mandrino per)?)",
    r"(?:vergeet|laat|sla)",
)
AHEAD = late_pattern(rf"\b(?:{_FOUND}{_WHERE}\s{_FOR}|{_LEAVES})\s{_THE}{_NAME}{_NOUN}{_END}")
"""'We found a mandrel in the shop for the second one', 'skip the rear one'."""
THEIR_TOOL = late_pattern(
    rf"\b(?:already|schon|bereits|déjà|ya|già|al)\s(?:(?:have|got|own|haben|tenemos)\s)?"
    rf"(?:the|your|den|le|el|il|de)\s(?:(?:mandrin|mandril|mandrino)\s(?:du|de la|del|della)\s)?"
    rf"{_NAME}(?:\s(?:mandrels?|\w*dorn|doorn))?{_END}"
)
"""'We already have the bumper mandrel'."""

ALL_THE_SAME = whole_words(
    r"but | though | however | yet | anyway | all the same | worn | broken? | cracked | spare"
    r" | dies? | former | wiper | drawings? | both | also | as well | all of | unless | if | until"
    r" | till | by the | how(?: much)? | would | should | except | other than",
    r"aber | trotzdem | verschlissen | kaputt | biegeform | beide | auch | falls | wenn | bis",
    r"mais | usé | cassé | matrice | les deux | aussi | jusqu\w* | sauf | pero | gastado | roto"
    r" | matriz | ambos | también | hasta | excepto",
    r"però | consumato | rotto | entrambi | anche | fino | tranne | maar | versleten | kapot"
    r" | matrijs | allebei | ook | tot | behalve",
)
"""It may be wanted all the same, or the die, or only by a day."""

RANKS = {
    **dict.fromkeys(
        (
            "bigger biggest larger largest big large grössere grösste grosse grösseren grossen"
            " gros grande mayor maggiore grote grotere grootste"
        ).split(),
        False,
    ),
    **dict.fromkeys(
        (
            "smaller smallest small little kleinere kleinste kleine kleineren kleinen petit petite"
            " pequeño pequeña menor piccolo piccola minore kleiner"
        ).split(),
        True,
    ),
}
"""Whether the least is meant."""
SIZE_NOUNS = word_set(
    "one ones size tube pipe tubing line row item job part mandrel rohr tubo tubi buis maat grösse"
)
"""With a place or a rank before it, it is one of the sizes."""
GENERIC = SIZE_NOUNS | word_set(
    """bend radius wall od clr list rest other thing order drawing mail quote price po inch mm in
    the and or for with on at bent der die das den le la el il de steel dom tool centerline
    centreline center wiper machine bender"""
)
"""Words of a line that are no name of its tube."""
