"""One mandrel of each line, but where a line says otherwise: 'one per line except where I put a
number', 'je ein Dorn, wo nichts anderes steht'.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures
from ..text.figures import Layout
from ..text.patterns import any_of

_ONE = r"(?:one|1|a|a single|je 1|je ein(?:en)?|ein(?:en)?|un[ao]?|une|een|één)"
_MANDREL = (
    r"(?:mandrels?|biegedorne?|dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:s|en)?|pcs?|pieces?"
    r"|off|stück|stk\.?|pièces?|pieza|pezzo|stuks?)"
)
_EACH = any_of(
    "each | apiece | (?:per|for each|for every|of each|of every|off each)(?: (?:line|row|item|size"
    "|tube|one))? | (?:je|pro)(?: (?:zeile|größe|rohr|position))? | jeweils | von jede[mr]",
    "(?:par|pour chaque|de chaque)(?: (?:ligne|taille|tube|repère))? | chacun",
    "(?:por|de|para) cada(?: (?:línea|medida|tubo|una))? | por (?:línea|medida) | cada una?",
    "(?:per|di|per ogni)(?: (?:ogni|riga|misura|tubo))* | ciascun[oa]?",
    "(?:per|van elke?|voor elke?)(?: (?:regel|maat|buis))?",
)
_UNLESS = any_of(
    "(?:except|unless|but|apart from)(?: for)?(?: where| when| if| those| the ones)?[^.;\\n]{0,24}?"
    "(?:noted|marked|stated|shown|listed|number|figure|count|otherwise|says?|written|different"
    "|indicated|given|specified|bracket\\w*|parenthes\\w+|qty|quantity)",
    "(?:wo|wenn|sofern|soweit|falls) nichts? anderes? | außer wo | wo nicht anders | sonst steht",
    "sauf (?:indication|mention|là où|où|si|quand) | salvo (?:donde|indicaci|dove|diversa|que se)"
    " | excepto donde | eccetto dove | tenzij | behalve waar",
)
_RULE = late_pattern(
    rf"(?<![\w.,/]){_ONE}\s(?:{_MANDREL}\s)?{_EACH}[^.;:!?\n]{{0,24}}?\s?,?\s"
    rf"{_UNLESS}|(?<![\w.,/])je\sein(?:en)?\s{_MANDREL},?\s{_UNLESS}"
)
_WORDS = {
    word: number
    for number, words in enumerate(
        ("two zwei deux dos due twee", "three drei trois tres tre drie", "four vier quatre cuatro"),
        start=2,
    )
    for word in words.split()
}
_COUNT = late_pattern(
    r"[\s.,;:–—-]{0,12}(?:\(\s?)?(?:(?:qty|quantity|menge|qté|cant|q\.tà|aantal)\.?\s?[:=]?\s?"
    rf"|[x×]\s?)?(?P<count>\d{{1,2}}|{'|'.join(_WORDS)})\s?"
    rf"(?:[x×]|{_MANDREL}|ea\.?|st\.?|pz\.?|uds?\.?)?\s?\)?\s{{0,12}}$"
)


def counts_each_unless(layout: Layout, groups: Sequence[Group]) -> dict[int, int | None]:
    """The count of every size, by its index; empty where no such rule is said or none has one."""
    text = layout.text.lower()
    if _RULE.search(" ".join(text.split())) is None:
        return {}
    found: dict[int, int | None] = {}
    ends: set[int] = set()
    for number, group in enumerate(groups):
        own = own_figures(group)
        last = max((figure.end for figure in own), default=-1)
        end = text.find("\n", last)
        end = end if end >= 0 else len(text)
        if last < 0 or end in ends:
            return {}  # two sizes on one line: whose is the count?
        ends.add(end)
        rest = text[last:end].lstrip("\"”' ")
        rest = rest.removeprefix("clr").removeprefix("mm").removeprefix("in")
        match = _COUNT.match(rest)
        said = match["count"] if match else "1"
        found[number] = int(said) if said.isdecimal() else _WORDS[said]
    return found if any(count != 1 for count in found.values()) else {}
