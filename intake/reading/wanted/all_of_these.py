"""Words that ask for all that is listed, and say so by what is not asked for: 'only these two,
nothing else', 'nur diese Zeilen, sonst nichts'. They pick no size out of the list.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_COUNTS = {
    word: number
    for number, words in enumerate(
        (
            "both beiden deux dos due beide",
            "three drei trois tres tre drie",
            "four vier quatre cuatro quattro",
            "five fünf cinq cinco cinque vijf",
            "six sechs seis sei zes",
            "seven sieben sept siete sette zeven",
            "eight acht huit ocho otto",
            "nine neun neuf nueve nove negen",
            "ten zehn dix diez dieci tien",
        ),
        start=2,
    )
    for word in words.split()
} | {"two": 2, "zwei": 2, "twee": 2}
_COUNT = rf"(?P<count>\d{{1,2}}|{'|'.join(sorted(_COUNTS))})"
_LINES = any_of(
    "lines? | rows? | items? | ones | sizes? | positions? | tubes? | mandrels?",
    "zeilen? | positionen | pos\\.? | größen | rohre | dorne | lignes? | repères? | tailles?",
    "tubes? | mandrins? | líneas? | filas? | medidas? | tubos? | partidas? | mandriles | righe",
    "voci | misure | tubi | mandrini | regels? | posities | maten | buizen | doorns?",
)
_THESE = any_of("these | those | diese[nr]? | ces | est[ao]s | quest[ei] | deze | die")
_HERE = any_of(
    r"(?:in|of|on|from) (?:this|my|the) (?:e-?mail|mail|message|list|table|sheet)",
    "(?:listed|shown|given|named|written)? ?(?:above|below|here)",
    r"(?:in|aus) dieser (?:mail|e-?mail|liste|tabelle|nachricht) | hier | oben | unten",
    r"(?:de|dans) (?:ce|cette) (?:mail|e-?mail|message|liste|tableau) | ci-dess(?:us|ous)",
    r"de (?:este|esta) (?:correo|mensaje|lista|tabla) | de (?:arriba|abajo)",
    r"(?:di|in) quest[ao] (?:mail|e-?mail|messaggio|lista|tabella) | (?:qui )?(?:sopra|sotto)",
    r"(?:in|uit) (?:deze|dit) (?:mail|e-?mail|bericht|lijst|tabel) | hier(?:boven|onder)",
)
_LIST = (
    rf"(?:{_THESE}(?: {_COUNT})?(?: {_LINES})?(?: {_HERE})?"
    r"|(?:the |die |les |l[ao]s |le |i |gli |de )?"
    rf"(?:{_LINES}|what(?:'s| is)|was|everything) {_HERE}"
    r"|this list|the (?:list|lot)|diese liste|cette liste|esta lista|questa lista|deze lijst)"
)
_ONLY = any_of("only | just | nur | bloß | seulement | uniquement | s[oó]lo | soltanto | alleen")
_ASKS = any_of(
    r"(?:please )?(?:quote|price|offer)(?: me| us)? | (?:we |i )?(?:just |only )?(?:need|want)",
    "bitte | wir brauchen | merci de chiffrer | cotizar? | quotare | graag",
)
_NOTHING_ELSE = any_of(
    r"nothing (?:else|more|further) | no others? | none other | sonst nichts | nichts weiter",
    "nichts anderes | nichts sonst | rien d'autre | rien de plus | nada más | nient'altro",
    "niente altro | verder niets | niets anders",
)
_ALL = late_pattern(
    rf"\b(?:(?:{_ONLY}|{_ASKS})(?: for)?:? {_LIST}(?: please| bitte| svp| graag)?"
    rf"[,.;:–-]{{0,2}} ?(?:and |but |und |et |y |e |en )?(?:please |bitte )?{_NOTHING_ELSE}"
    rf"|{_ONLY} (?:the |die |les |l[ao]s |le |de )?{_LINES} {_HERE})"
    r"(?: (?:needed|required|wanted|please|for now|bitte|nötig))?(?! (?:than|als|que|che|dan)\b)"
    r"(?=\W|$)"
)


def spans_of_all_listed(said: str, sizes: int) -> Iterator[tuple[int, int]]:
    """Where such words stand in a casefolded text of so many sizes: 'these two' of five pick."""
    for match in _ALL.finditer(said):
        if _number(match) in (None, sizes):
            yield match.span()


def _number(match: re.Match[str]) -> int | None:
    count = match["count"]
    if count is None:
        return None
    return int(count) if count.isdecimal() else _COUNTS[count]
