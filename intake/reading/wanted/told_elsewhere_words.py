"""Words that say plainly that a size was ordered of somebody else, runs well as it is, or is not
needed any more.

As ``told_plainly_words``: searched in casefolded words on one size.
"""

from __future__ import annotations

from ..text.patterns import whole_words

_GAP = r"(?:[^.;]|[.]\d){0,40}?"

ELSEWHERE = whole_words(
    r"(?:bei|von) (?:einem|einer|dem|der|unserem|'nem)? ?(?:anderen|andern|zweiten) (?:lieferant\w*"
    r"|hersteller|firma|anbieter) " + _GAP + r"(?:bestellt|gekauft|bezogen|machen lassen|bekommen)",
    r"(?:woanders|anderswo|anderweitig) (?:schon |bereits )?(?:bestellt|gekauft|bezogen|vergeben)",
    r"(?:commandée?s?|achetée?s?|prise?s?|fait faire) (?:chez|à|auprès d[e'])\s?(?:un|une) (?:autre"
    r"|concurrent\w*) | (?:commandée?s?|achetée?s?|prise?s?) ailleurs",
    r"(?:pedid|comprad|encargad)[oa]s? (?:ya )?(?:a|en) (?:otr[oa] \w+|la competencia)",
    r"(?:ordinat|comprat|pres)[oaie] (?:già )?(?:da|presso) (?:un |una |un')?(?:altr[oa]\b"
    r"|concorrente) | (?:ordinat|comprat|pres)[oaie] altrove",
    r"(?:bij|van) (?:een|onze) andere? (?:leverancier|firma|bedrijf|fabrikant) "
    + _GAP
    + r"(?:besteld"
    r"|gekocht|laten maken) | elders (?:al )?(?:besteld|gekocht)",
    r"(?:ordered|bought|had made)(?: it| that| this)? (?:already )?(?:(?:from|off|with|at|by)"
    r" (?:another|a different|some other) \w+|elsewhere|from somebody else|from someone else)",
)
"""'Den Dorn für 54 x 1,5 haben wir bei einem anderen Lieferanten bestellt'."""
RUNS_WELL = whole_words(
    r"\w*dorn\w* " + _GAP + r"(?:läuft|funktioniert|arbeitet|hält) (?:\w+ ){0,3}(?:super|gut|prima"
    r"|einwandfrei|tadellos|bestens|perfekt|toll)",
    r"mandrin " + _GAP + r"(?:marche|fonctionne|va|tourne) (?:\w+ ){0,2}(?:bien|parfaitement"
    r"|impeccable|nickel)",
    r"mandril " + _GAP + r"(?:va|funciona|trabaja) (?:\w+ ){0,2}(?:bien|perfecto|perfectamente"
    r"|estupendo|de maravilla)",
    r"(?:mandrino|anima) " + _GAP + r"(?:va|funziona|lavora) (?:\w+ ){0,2}(?:bene|benissimo"
    r"|perfettamente|alla grande)",
    r"(?:that|it|those|they|this|which)(?: one| size)? (?:bends?|works?|runs?|goes) (?:\w+ )?(?:ok"
    r"|okay|fine|well|good|great|alright|all right)(?: enough)? with"
    r" (?:what|the (?:one|mandrel|tool)"
    r"|my|our)",
    r"(?:das|die|der) (?:läuft|laufen|geht|gehen|klappt) (?:\w+ )?(?:gut|prima|bestens) mit (?:dem"
    r"|unserem|meinem)",
    r"(?:ça|il|ils|celui-là) (?:va|vont|marchent?|passent?|se cintrent?) (?:\w+ )?bien avec (?:ce"
    r"|celui|mon|notre)",
    r"(?:ese|eso|esos|se) (?:va|van|sale|salen|dobla|curva) (?:\w+ )?bien con"
    r" (?:lo que|mi|nuestro)",
    r"(?:quello|quelli|si) (?:va|vanno|viene|piega|curva) (?:\w+ )?bene con"
    r" (?:quello che|il nostro)",
    r"(?:dat|die) (?:gaat|gaan|buigt|loopt) (?:\w+ )?(?:goed|prima) met (?:wat|onze|mijn)",
    r"doorn " + _GAP + r"(?:loopt|werkt|bevalt) (?:\w+ ){0,2}(?:goed|prima|perfect|uitstekend"
    r"|super)",
)
"""'Le mandrin 54x2 de l'an dernier marche très bien'."""
NOT_ANY_MORE = whole_words(
    r"(?:brauch\w*|benötig\w*) (?:wir |ich )?(?:\w+ )?nicht mehr",
    r"(?:wird|werden) nicht mehr (?:gebraucht|benötigt)",
    r"n'en (?:a|avons|ai) plus (?:besoin|l'utilité) | n'est plus nécessaire",
    r"ya no (?:l[oae]s? |nos )?(?:necesit\w+|hace falta|hacen falta)",
    r"non (?:ci |mi |vi )?(?:serve|servono|occorre|occorrono) più | non ne abbiamo più bisogno",
    r"(?:hebben|heb) (?:we|wij|ik) (?:\w+ )?niet meer nodig | (?:is|zijn) niet meer nodig",
    r"(?:no longer|don'?t) (?:need|require|want)(?: (?:it|that|one))? any ?more",
    r"no longer (?:needed|required|wanted)",
)
"""'Quello da 26,9 non serve più': the need in it is denied."""
