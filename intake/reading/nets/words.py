"""Words that ``nets`` looks for: taken back, offered instead, wrong, only one of them.

The text searched is casefolded.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words

TAKES_BACK = late_pattern(
    r"(?<![\w-])"
    + any_of(
        r"no(?!\. ?\d) | not | nope | wrong | scratch | oops | sorry | mistake | error | wait",
        r"hang on | actually | instead | rather | i mean | i meant | should (?:be|have|read)",
        r"correction | corrected | my bad | misread | typo | nein | nicht | falsch | sondern",
        r"statt | fehler | korrektur | moment | verschrieben | vertippt | richtig ist | non",
        r"faux | pardon | erreur | plutôt | au lieu | je voulais dire | perdón | error",
        r"mejor dicho | equivoc\w+ | en vez",
        r"sbagliat\w* | anzi | scusi | scusate | errore | invece | nee | niet | fout | foutje",
        r"in plaats | vergis\w* | verkeerd\w* | klopt niet | stimmt nicht",
    )
    + r"(?![\w-])"
)
PERHAPS = whole_words(
    "maybe | perhaps | possibly | might (?:also )?be | could (?:also )?be | may be | or(?: even)?",
    "not sure | unsure | i think | vielleicht | evtl\\.? | eventuell | oder | könnte | unsicher",
    "peut-être | ou(?: bien)? | sûr | quizás? | tal vez | puede ser | o | forse | oppure",
    "può essere | misschien | of | kan ook | eller",
)
ONLY = whole_words(
    "only | just | nur | bloß | lediglich | seulement | uniquement | solo | sólo",
    "(?<!ainsi )(?<!même )(?<!alors )(?<!tandis )que pour",
    "solamente | únicamente | soltanto | solamente | alleen | enkel | slechts",
)
ONE_FOR = late_pattern(
    r"\b(?:one|1|einer?n?|un[oae]?|één|een)\s(?:for|für|pour|para|per|voor)\s[^\d.;]{0,12}$"
)
MANDREL = whole_words(
    r"mandrels? | (?:biege)?dorne? | mandrins? | mandril(?:es)? | mandrin[oi] | doorn(?:en)?"
)
WANTED = whole_words(
    r"need\w* | want\w* | quot\w+ | mandrels? | after | brauch\w+ | benötig\w+ | dorne?",
    r"mandrins? | besoin | faut | mandril(?:es)? | necesit\w+ | mandrin[oi] | serv\w+",
    r"doorn(?:en)? | nodig",
)
OTHER_THINGS = whole_words(
    r"washers? | o-?rings? | bars? | rods? | bolts? | shafts? | pins? | threads? | flanges?",
    r"fittings?",
    "scheiben? | stangen? | wellen? | bolzen | gewinde | rondelles? | arandelas? | rondell[ae]",
)
PUTS_RIGHT = late_pattern(
    r"(?<![\w-])"
    + any_of(
        r"(?:was|is|were|are|had|got|have|gave|wrote|said|sent|put|quoted|typed)"
        r" (?:\w+ ){0,3}wrong",
        r"wrong (?:radius|wall|size|od|diameter|clr|number|figure|tube|gauge|thickness|info)",
        r"(?:my|a|the|made an?) (?:mistake|error|typo) | correction to | misread | mis-read",
        r"(?:that|this|it)(?:'s| is| was)? wrong | should(?: have|'ve) (?:said|read|been|written)",
        r"hätte (?:heissen|lauten) (?:sollen|müssen) | aurais dû (?:dire|écrire|mettre)",
        r"debí (?:decir|poner|escribir) | (?:avrei dovuto|dovevo) (?:dire|scrivere) | typo",
        r"falsche[nrms]? (?:radius|wand\w*|maß\w*|angabe\w*)",
        r"falsch (?:angegeben|geschrieben|gemessen|notiert) | (?:mein|ein) fehler | korrektur",
        r"vertippt | verschrieben | (?:me suis|je me suis) trompée? | mauvais (?:rayon|diamètre)",
        r"mauvaise épaisseur | une erreur | mon erreur | me equivoqué",
        r"(?:radio|espesor) equivocado",
        r"un error | me he equivocado | mi sono sbagliat[oa] | (?:raggio|spessore) sbagliato",
        r"un errore | verkeerde (?:straal|wanddikte|maat|diameter) | vergist | een fout",
    )
    + r"(?![\w-])"
)
OF_WHICH = whole_words(
    r"(?:need\w*|want\w*|quote|price|mandrel|one|it)(?: is)?(?: only)? for (?:the|that) "
    r"(?:second|first|third|latter|former|bigger|smaller|larger|other|last|big|small|thinner"
    r"|thicker|thinnest|thickest|heavier|lighter)(?! (?:jobs?|projects?|cars?|bikes?|customers?"
    r"|machines?|orders?|shop|guys?|half|day|week|month))",
    r"(?:dorn|brauch\w+|benötig\w+|angebot)\b[^.;\n]{0,24}\bfür (?:den|die|das)"
    r" (?:zweite|erste|letzte|größere|kleinere|grosse|große|kleine|dünnere|dickere)[nrs]?",
    r"mandrin\b[^.;\n]{0,24}\bpour (?:le|la) (?:second|deuxième|premi(?:er|ère)|dernière?"
    r"|plus (?:grand|petit)e?)",
    r"mandril\b[^.;\n]{0,24}\bpara (?:el|la) (?:segund[oa]|primer[oa]?|últim[oa]|más \w+)",
    r"(?:mandrino|anima)\b[^.;\n]{0,24}\bper (?:il|la) (?:second[oa]|prim[oa]|ultim[oa]|più \w+)",
    r"doorn\b[^.;\n]{0,24}\bvoor (?:de|het) (?:tweede|eerste|laatste|grootste|kleinste)",
)
"""Which of the sizes is meant, by its place or its rank."""
OTHER_LATER = whole_words(
    r"start (?:off )?with (?:a|one|the|just|only)\b[^.;\n]{0,30}\bfor the \w+",
    r"(?:we'?ll|we will|will) see about the (?:others?|rest|second)",
    r"(?:might|may) add the (?:others?|rest|second|third|last)",
    r"(?:be )?back for the (?:other|others|rest|second)",
    r"(?:order|get|buy|do|take) the (?:other|others|rest|second)(?: one)? (?:later|next|after)",
    r"the (?:other|others|rest|second)(?: one)? (?:can wait|comes? later|will follow|later on)",
    r"(?:fangen|anfangen) (?:wir )?mit dem | (?:der|die|das) andere[nr]? (?:kommt )?später",
    r"commenc\w+ par (?:le|la|un) | l'autre (?:viendra )?plus tard | les autres plus tard",
    r"empe(?:zar|zamos|cemos) (?:con|por) (?:el|la|uno) | (?:el otro|la otra) más adelante",
    r"(?:cominciamo|iniziamo) con (?:il|la|uno) | l'altr[oa] più avanti",
    r"(?:beginnen|starten) (?:we )?met de | de andere (?:komt )?later",
)
"""Only one of the sizes is wanted for now."""
CHANGED = whole_words(
    "chang(?:e|es|ed|ing) | switch(?:ed|ing)? | went from | goes from | going from",
    r"instead(?! of (?:\w+ing|(?:\w+ )?(?:elbows?|fittings?|bends|mitres?|joints?))\b)",
    "geändert\\w* | änder(?:t|ung|n)\\w* | statt | anstatt | stattdessen | umgestellt",
    "chang(?:é|er|ement)\\w* | modifi\\w+ | au lieu | passe de | en vez",
    "cambi(?:o|a|ado|ato|amo)\\w*",
    "invece | passa da | pasa de | gewijzigd\\w* | wijzig\\w* | in plaats | verander\\w*",
)
"""The message changes a size: two that differ in one figure are the old and the new one."""
ASKED_BEFORE = whole_words(
    "previously | originally | earlier | at first | first asked | formerly | in the past",
    "last time | used to | bisher | früher | ursprünglich | zuerst | vorher",
    "avant | précédemment | auparavant",
    "d'abord | antes | anteriormente | al principio | prima | in precedenza | precedentemente",
    "all'inizio | vroeger | eerder | voorheen | aanvankelijk",
)
"""Shortly before a figure: it was asked for, or used, at another time."""
