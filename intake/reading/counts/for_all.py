"""A line that says how many mandrels are wanted of every size: 'qty 2 for all', 'Pro Position 2'.

Such a line stands above or below a table, in few words; in it 'Position 2' and 'lines: 2' name no
place of the list.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_COUNTS = {
    word: number
    for number, words in enumerate(
        (
            "one ein einen einem un une uno una één een",
            "two zwei deux dos due twee",
            "three drei trois tres tre drie",
            "four vier quatre cuatro quattro",
        ),
        start=1,
    )
    for word in words.split()
}
_COUNT = rf"(?P<count>\d{{1,2}}|{'|'.join(_COUNTS)})(?:x(?=\s))?(?![\w/\"”'-]|[.,]\d|\s?mm)"
_PIECES = any_of(
    r"(?:ball )?mandrels? | numbers | nos?\.?",
    r"pcs?\.? | pieces? | off | units? | stück | stk\.? | biegedorne? | dorne?",
    r"mandrins? | pièces? | pcs | mandril(?:es)? | uds\.? | unidad(?:es)? | piezas?",
    r"mandrin[oi] | pezz[oi] | pz\.? | doorn(?:s|en)? | stuks? | st\.?",
)
_PLACE = any_of(
    "line | item | size | row | position | pos\\. | tube | part number | type | code | wall | die",
    "combination | combo | reference | entry | diameter | radius",
    "zeile | größe | rohr | sorte | abmessung | durchmesser | wand(?:stärke)? | kombination",
    "ligne | référence | réf\\. | taille | dimension | repère | poste | tube | diamètre | code",
    "combinaison | épaisseur | rayon",
    "línea | medida | partida | referencia | tipo | tubo | posición | diámetro | código",
    "combinación | espesor | radio",
    "riga | misura | voce | codice | diametro | combinazione",
    "regel | maat | positie | buis | combinatie | straal",
)
_LABEL = any_of(
    "(?:mandrel )?(?:qty|quantity)\\.? | quantity of mandrels | qty of mandrels | mandrels",
    "menge | stückzahl | anzahl(?: dorne)? | quantité | qté | cantidad | cant\\.",
    "quantità | q\\.tà | aantal(?: doorns)?",
)
_EACH = any_of(
    rf"(?:per|pro|je|par|por|for each|for every|of each|of every|per elke|voor elke|voor iedere) "
    rf"(?:ogni |ciascuna )?{_PLACE}",
    rf"(?:de chaque|de cada|di ogni|van elke)(?: {_PLACE})?",
    rf"(?:for|on|of) all(?: (?:the )?(?:{_PLACE}s?|of them|sizes))?",
    "throughout | across the board",
    "each | ea | of each | apiece | jeweils | von jede[rm] | de chaque | chacun | de cada un[oa]",
    "a misura",
    "cada un[oa] | per tipo | per ciascun[oa] | ciascun[oa] | van elk | elk | per stuk | für alle",
    "pour tous | pour toutes | para tod[oa]s | per tutt[ie] | voor alle(?:maal)?",
)
_ALL_PLACES = any_of(
    "all (?:lines|items|sizes|rows|positions|tubes)",
    "alle (?:zeilen|positionen|größen|rohre|abmessungen|regels|posities|maten|buizen)",
    "toutes les (?:lignes|références|tailles|dimensions) | tous les (?:postes|tubes)",
    "todas las (?:líneas|medidas|partidas|referencias) | todos los (?:tubos|tipos)",
    "tutte le (?:righe|misure|voci|posizioni) | tutti i (?:tubi|codici)",
)
_ASKING = (
    r"(?:(?:we |i )?(?:need|want|require)|please (?:quote|price|offer)|quote|bitte|wir (?:brauchen"
    r"|benötigen)|merci de chiffrer|necesitamos|ci servono|graag)"
)
_POLITE = (
    r"(?: please| pls| bitte| svp| s'il vous plaît| por favor| per favore| graag| anbieten"
    r"| a\.u\.b\.?)?"
)
_COUNT_TOOLS = rf"{_COUNT.replace('<count>', '<tools>')}\s?(?:x\s)?{_PIECES}\s(?:of\s)?{_EACH}"
_COUNT_TIMES = rf"(?P<times>\d{{1,2}})\s?[x×]\s{_EACH}"
_ANYWHERE = late_pattern(
    rf"(?<![\w.,/×-])(?<!\d\s)(?<!\sx\s)(?:{_COUNT_TOOLS}|{_COUNT_TIMES}|"
    rf"(?:^|(?<=[,;:.]\s))(?:{_EACH}|je)\s{_COUNT.replace('<count>', '<listed>')}(?:\s{_PIECES})?)"
    rf"{_POLITE}(?=\s*(?:[.,;:!?)]|$|(?:in\s)?(?:mm|inch(?:es)?)\b|(?:and|und|et|y|e|en)\s))",
    re.IGNORECASE | re.MULTILINE,
)
"""'Set doorns, elk 1:', 'un mandrin par ligne' behind the comma of a list."""
_FOR_ALL = late_pattern(
    rf"(?:^|[.!?,;:]\s)[ \t*-]{{0,4}}(?:{_ASKING} )?(?:"
    rf"(?:{_LABEL}\s?[:=]?\s)?{_COUNT}\s?(?:x\s)?(?:{_PIECES}\s)?{_EACH}"
    rf"|{_LABEL}\s{_EACH}\s?[:=]?\s?{_COUNT.replace('<count>', '<behind>')}(?:\s{_PIECES})?"
    rf"|{_EACH}\s?[:,]?\s?{_COUNT.replace('<count>', '<after>')}(?:\s{_PIECES})?"
    rf"|(?:all(?: {_PLACE}s?)?|{_ALL_PLACES})(?:\s?:)? (?:are )?{_LABEL}\s?[:=]?\s?"
    rf"{_COUNT.replace('<count>', '<all>')}(?:\s{_PIECES})?"
    rf"|{_ALL_PLACES}\s?[:,]\s?(?:je\s)?{_COUNT.replace('<count>', '<lines>')}(?:\s{_PIECES})?"
    rf"){_POLITE}[ \t]*(?=[.!]?[ \t]*$)",
    re.IGNORECASE | re.MULTILINE,
)


def count_for_all(text: str) -> int | None:
    """How many of every size such a line asks for; None where none does, or two disagree."""
    counts = set()
    for match in (*_FOR_ALL.finditer(text), *_ANYWHERE.finditer(text)):
        said = next(one for one in match.groupdict().values() if one)
        counts.add(int(said) if said.isdecimal() else _COUNTS[said.casefold()])
    return counts.pop() if len(counts) == 1 and 0 not in counts else None
