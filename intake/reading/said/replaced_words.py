"""Words that tell that a figure is past: what was bent to it went wrong, it is gone, or the sender
stops to think; and words that bring in the one that takes its place.

Searched in casefolded words.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words

FAILED = whole_words(
    r"went (?:bang|pop|wrong|flat|oval|badly) | split | cracked | tore | ripped | kinked | burst",
    r"collapsed | wrinkled | flattened | buckled | crumpled | folded | broke | snapped | failed",
    r"did(?: not|n't) (?:work|hold|go well|turn out) | no good | scrapped | a disaster | a mess",
    r"(?:ist|sind|hat|war|wurde|es)?\s?(?:\w+ )?(?:gerissen|aufgerissen|eingerissen|geplatzt"
    r"|geknickt|eingeknickt|gebrochen|aufgeplatzt|eingefallen|schiefgegangen|misslungen)",
    r"riss | platzte | knickte | hat nicht (?:geklappt|funktioniert|gehalten) | ging schief"
    r" | ging nicht",
    r"(?:a|ont|s'est|est|sont) (?:\w+ )?(?:éclaté|cassé|fissuré|fendu|plissé|plié|écrasé|déchiré"
    r"|craqué|raté)e?s? | n'a pas (?:marché|tenu)",
    r"reventó | (?:se )?(?:rompió|agrietó|rajó|arrugó|aplastó|partió|abrió) | falló | salió mal",
    r"(?:se )?ha(?:n)? (?:roto|rajado|agrietado|arrugado|aplastado|reventado) | no (?:funcionó"
    r"|aguantó)",
    r"(?:si )?(?:è|sono) (?:\w+ )?(?:spaccat|rott|crepat|strappat|schiacciat|piegat|raggrinzit)"
    r"[oaie](?: male)? | non ha (?:funzionato|tenuto) | è andat[oa] male | scoppiat[oa]",
    r"scheurde | gescheurd | (?:ge)?knapte? | geknikt | knikte | barstte | gebarsten | brak",
    r"gebroken | ging mis | mislukte? | (?:werkte|lukte|hield) niet",
)
"""'It went bang on the first bend at 150 CLR.'"""
GONE = whole_words(
    r"(?:is|are|'s|was|has) (?:\w+ )?(?:gone(?! (?:up|down|from|to))|sold|old|outdated|obsolete"
    r"|superseded|history|wrong"
    r"|out of date|not available|unavailable|not there any ?more|out) | no longer (?:holds"
    r"|applies|valid|available|right)",
    r"(?:ist|sind) (?:\w+ )?(?:überholt|veraltet|weg|hinfällig|verkauft|falsch|nicht mehr"
    r" (?:aktuell|da|gültig|verfügbar)) | gilt nicht mehr | stimmt nicht mehr",
    r"(?:est|sont|n'est) (?:\w+ )?(?:périmée?|dépassée?|vendue?|partie?|caduque?|plus (?:valable"
    r"|disponible|bon|d'actualité)) | ne vaut plus",
    r"ya no (?:vale|está|es válid[oa]|sirve|lo tienen) | (?:está|quedó) (?:obsolet|anulad)[oa]",
    r"non (?:vale|è) più(?: valid[oa]| disponibile)? | è (?:superat|vendut)[oa]",
    r"(?:geldt|klopt) niet meer | is (?:achterhaald|verkocht|vervallen|weg|verouderd)",
)
"""'The R 6 in the subject is old', 'the 4 is gone'."""
STOPS = late_pattern(
    r"[.…;–-]\s*(?:\b(?:hmm+|hm|er|oh|ah|no|nein|non|nee)\b[\s.…,;:–-]*)?\b"
    + any_of(
        r"hang on | hold on | wait(?: a (?:sec\w*|minute|moment))? | one moment | scratch",
        r"moment(?:chen|je)? | halt | stopp? | warte\w* | augenblick | attende[zs] | un (?:instant"
        r"|moment) | minute | espere?n? | un momento | aspett\w+ | un attimo | wacht(?: even)?",
    )
    + r"\b"
)
"""'Tube is 1.75 x .120 ... hang on.'"""
_NOW = any_of(
    r"new plan | (?:so )?now(?: it'?s| it is| on| at| to| with)? | (?:the )?new (?:radius|one|die)"
    r"(?: is| will be)? | (?:it|that|they)(?:'ll| will) (?:now )?be | we(?:'re| are) (?:now )?going"
    r" (?:up |down |over )?(?:to|for|with|on) | going (?:with|to|up to) | (?:go|went) (?:with|to"
    r"|up to|over to) | (?:changed|switched|moved) to | (?:next|second) (?:try|go|attempt)"
    r"(?: is| will be)?(?: on| at)?",
    r"(?:i|we)(?:'ve| have)? (?:just |now )?(?:bought|got|made|ordered)(?: a| an)? | these days"
    r"(?: it'?s| we use)? | nowadays(?: it'?s)? | we get(?: is)? | from (?:here|now) on",
    r"neuer plan | (?:der )?neue radius(?: ist)? | jetzt | nun | inzwischen | mittlerweile"
    r" | stattdessen | nächster versuch | künftig | ab sofort | wird es | gehen wir (?:jetzt"
    r" |nun )?"
    r"auf | wir gehen (?:jetzt |nun )?auf | nehmen wir | wir nehmen",
    r"nouveau plan | (?:le )?nouveau rayon(?: est)? | maintenant | désormais | dorénavant"
    r" | on passe"
    r" (?:à|sur) | nous passons (?:à|sur) | on (?:part|prend) | ce sera | à présent",
    r"nuevo plan(?: es)? | (?:el )?nuevo radio(?: es)? | ahora | en adelante | pasamos a | vamos a"
    r" | será | hoy en día",
    r"nuovo piano | (?:il )?nuovo raggio(?: è)? | adesso | ora | ormai | d'ora in poi | passiamo a"
    r" | andiamo (?:a|su) | sarà",
    r"nieuw plan | (?:de )?nieuwe straal(?: is| wordt)? | nu | voortaan | tegenwoordig | we gaan"
    r" (?:nu )?naar | wordt het | het wordt | nemen we | we nemen",
)
_LITTLE = r"(?:\W{0,3}\b[^\W\d]+\b){0,4}\W{0,6}$"
NOW = late_pattern(rf"\b{_NOW}\b{_LITTLE}")
"""Right before the figure that takes the place."""
NOW_BEHIND = late_pattern(
    r"^[^\d.;!?]{0,16}\b(?:instead|from (?:here|now) on|these days|now|stattdessen|jetzt|inzwischen"
    r"|désormais|maintenant|ahora|en su lugar|de ahora en adelante|adesso|ora|d'ora in poi|voortaan"
    r"|nu|in plaats daarvan)\b"
)
TOO = whole_words(
    r"too | also | as well | both | each | either | or | plus | another | second one",
    r"auch | beide[nrs]? | zusätzlich | außerdem | dazu | oder | aussi | les deux | également",
    r"también | ambos | además | anche | entrambi | inoltre | ook | allebei | bovendien | of",
)
"""Then the second is wanted with the first."""
BOTH = whole_words(
    r"both | either | each (?:radius|die|bend) | (?:two|2) (?:radii|dies|bends)",
    r"beide[nrs]? | jeweils | les deux | ambos | los dos | entrambi | tutti e due | allebei",
)
"""So are two radii in the next sentence."""
