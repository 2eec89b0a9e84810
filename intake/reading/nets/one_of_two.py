"""A net: two sizes that differ in one figure, where one of the two is meant.

Two papers that do not agree ('the drawing says 35 x 2, the parts list 35 x 1.5'), and a second
choice ('one or the other? Then the .095'). The figure in which they differ is doubted on the
likelier size, and the whole of the other.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from ...late_pattern import late_pattern
from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

PAPERS = "two papers do not agree: which is right?"
RATHER = "one of the two is meant, if one mandrel does not serve both"

_PAPER = late_pattern(
    r"\b"
    + any_of(
        r"drawings? | prints? | dwg | sketch | bom | bill of materials? | parts list | spec(?:s|"
        r"ification)? | order | po | label | tag | model | data ?sheet | cert(?:ificate)?",
        r"zeichnung | stückliste | bestellung | datenblatt | etikett | zeugnis | skizze",
        r"plan | nomenclature | commande | fiche | étiquette | certificat | croquis",
        r"plano | lista de (?:piezas|materiales) | pedido | ficha | etiqueta | certificado",
        r"disegno | distinta | ordine | scheda | etichetta | certificato",
        r"tekening | stuklijst | bestelling | datablad | certificaat",
    )
    + r"\b"
)
_ONE = whole_words(
    r"(?:one|1|a|single) mandrel | (?:ein|einen|1) \w{0,6}dorn | (?:un|1) mandrin",
    r"(?:un|1) mandril | (?:un|1) mandrino | (?:een|één|1) doorn",
)
_IF_ONE = whole_words(
    r"one or the other | if not | otherwise | if (?:it|i) (?:has|have) to (?:be|pick|choose)",
    r"wenn nicht | falls nicht | sonst | sinon | si no | de lo contrario | altrimenti | se no",
    r"zo niet | anders | entweder oder | l'un ou l'autre | una de las dos | uno dei due",
)
_NAMED_FAR = 40


def one_of_two(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """The size of each such pair that is doubted in whole; the other's figure gets its note."""
    for first, second in pairwise(groups):
        slot = _only_difference(first, second)
        if slot is None or first.row is not None or first.doubtful or second.doubtful:
            continue
        if slot not in ("od", "wall", "clr"):
            continue
        kept, other, why = _told(layout, first, second, slot)
        if kept is not None and other is not None:
            kept.notes.append((slot, why))
            yield other, why


def _only_difference(first: Group, second: Group) -> Slot | None:
    """The one slot in which two sizes have different values; a unit may be said once for both."""
    if set(first.slots) != set(second.slots):
        return None
    apart = [slot for slot in first.slots if not _alike(first, second, slot)]
    return apart[0] if len(apart) == 1 else None


def _alike(first: Group, second: Group, slot: Slot) -> bool:
    one, two = first.slots[slot][0], second.slots[slot][0]
    units = {one.unit, two.unit} - {None}
    return one is two or (one.number.value == two.number.value and len(units) < 2)


def _told(
    layout: Layout, first: Group, second: Group, slot: Slot
) -> tuple[Group | None, Group | None, str]:
    """Which of the two is likelier, which is the other, and why."""
    one, two = first.slots[slot][0], second.slots[slot][0]
    text = layout.text.casefold()
    if _of_papers(layout, _begins(first, slot), _begins(second, slot)):
        return first, second, PAPERS
    if _IF_ONE.search(text) and _ONE.search(text):
        again = [f for f in layout.figures[two.index + 1 :] if f.number.value in _values(one, two)]
        named = {figure.number.value for figure in again if _is_wanted(layout, figure)}
        if len(named) == 1:
            rather = one.number.value in named
            return (first, second, RATHER) if rather else (second, first, RATHER)
    return None, None, ""


def _values(one: Figure, two: Figure) -> set[object]:
    return {one.number.value, two.number.value}


def _begins(group: Group, slot: Slot) -> Figure:
    """The first figure of a size that is told anew for it."""
    own = [f for name, figures in group.slots.items() if name not in group.shared for f in figures]
    return min([*own, group.slots[slot][0]], key=lambda figure: figure.start)


def _of_papers(layout: Layout, one: Figure, two: Figure) -> bool:
    """Whether a paper is named right before each, and not the same one."""
    named = []
    for figure in (one, two):
        before = layout.figures[figure.index - 1].end if figure.index else 0
        begin = max(before, figure.start - _NAMED_FAR)
        found = list(_PAPER.finditer(layout.words(begin, figure.start).casefold()))
        if not found:
            return False
        named.append(found[-1][0])
    return named[0] != named[1]


def _is_wanted(layout: Layout, figure: Figure) -> bool:
    """'I want the .095', 'dann den für 1,5'."""
    before = layout.figures[figure.index - 1].end if figure.index else 0
    ahead = layout.words(max(before, figure.start - _NAMED_FAR), figure.start).casefold()
    return _WANTED.search(" ".join(ahead.split()) + " ") is not None


_WANTED = late_pattern(
    r"\b(?:want|take|need|prefer|then|rather|dann|lieber|nehme\w*|alors|plutôt|prends|prenons"
    r"|entonces|quiero|prefiero|allora|prendo|preferisco|dan|liever|neem)\b[^.;?!\d]{0,24}$"
)
