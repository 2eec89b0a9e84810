"""A net for tube that is there and measures otherwise: 'Wand 2 mm ... in der Werkstatt liegt 3 mm'.

Which of the two will be bent nobody says; the wall, or the OD, that was said first is doubted.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

THERE_OTHERWISE = "the tube that is there seems to measure otherwise"

THERE = whole_words(
    r"(?:in|on|from|at|around) (?:the|our|my) (?:work ?shop|shop|rack|racks|shelf|floor|yard"
    r"|stores?"
    r"|stock|warehouse|garage|bench|pile) | in stock | on hand | on site | lying (?:here|about"
    r"|around)"
    r" | we (?:actually )?have here | that (?:came|arrived|was delivered|got delivered)",
    r"(?:tube|tubing|pipe|stuff|material) (?:here|that came|delivered|i have here|we have here)",
    r"in der (?:werkstatt|halle) | im (?:regal|lager|hof) | auf lager | liegt (?:hier|bei uns)",
    r"am lager | geliefert wurde | dans l'atelier | à l'atelier | en stock | au magasin",
    r"en (?:el )?(?:taller|almacén|estante) | en existencia | in (?:officina|magazzino) "
    r"| a magazzino",
    r"in de (?:werkplaats|hal|loods) | op voorraad | in het (?:rek|magazijn)",
)
_OTHER_THINGS = whole_words(
    r"plates? | sheets? | dies? | formers? | mandrels? | bend(?:er|ing machine)s? | rods? | bolts?"
    r" | bars?"
    r"| flats? | angles? | lengths? | pieces | weeks? | days? | sticks? | long | feet | metres? "
    r"| meters?"
    r"| blech\w* | stangen? | platten? | dorne? | biegeform\w* | länge\w* | meter | lang | tôles? "
    r"| barres?"
    r"| mandrins? | matrices? | chapas? | barras? | mandril(?:es)? | lamier\w+ | barre "
    r"| mandrin[oi]"
    r"| plaat | platen | staven | doorn(?:en)? | mallen",
    r"washers? | shims? | pins? | shaft | ball | balls | prints? | drawings? | not | no",
)
_RANGES: tuple[tuple[Slot, Decimal, Decimal], ...] = (
    ("wall", Decimal("0.3"), Decimal(3)),
    ("od", Decimal("0.7"), Decimal("1.4")),
)


_A_TOOL_THERE = whole_words(
    r"already | same | schon | bereits | gleiche\w* | déjà | même | ya | mism[oa] | già "
    r"| stess[oa] | al",
    r"zelfde",
)
"""'In stock we have already the same with wall 2 mm': a mandrel."""


def is_tube_there(words: str) -> bool:
    """Whether casefolded words on a size speak of tube that is there."""
    return THERE.search(words) is not None and _A_TOOL_THERE.search(words) is None


def doubt_there(layout: Layout, groups: Sequence[Group]) -> None:
    """Note on the wall or the OD of each size that tube which is there has another."""
    held = {f.index for group in groups for figures in group.slots.values() for f in figures}
    if not THERE.search(layout.text.casefold()):
        return
    there = {sentence for sentence in layout.by_sentence if _is_there(layout, sentence)}
    for figure in layout.figures:
        if figure.sentence not in there or figure.index in held or figure.row is not None:
            continue
        if not _may_measure(figure):
            continue
        for group in groups:
            slot = _other_than(group, figure)
            if slot is not None:
                group.notes.append((slot, THERE_OTHERWISE))


def _is_there(layout: Layout, sentence: int) -> bool:
    words = layout.sentence_text(sentence).casefold()
    return THERE.search(words) is not None and _OTHER_THINGS.search(words) is None


def _may_measure(figure: Figure) -> bool:
    if figure.negated or figure.put_off or figure.points or figure.role not in (None, "wall", "od"):
        return False
    return figure.unit in ("mm", "in") or figure.is_measured or figure.is_gauge


def _other_than(group: Group, figure: Figure) -> Slot | None:
    for slot, least, most in _RANGES:
        for own in group.slots.get(slot, ())[:1]:
            if own.is_gauge != figure.is_gauge or {own.unit, figure.unit} == {"mm", "in"}:
                continue
            share = figure.number.value / own.number.value if own.number.value else Decimal(0)
            if share != 1 and least <= share <= most:
                return slot
    return None
