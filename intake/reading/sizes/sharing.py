"""A wall or radius said once for several sizes goes to each of them that has none."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words
from .groups import Group, Slot

_BOTH = (
    "each | both | every | all | jeweils | beide | alle | chacun | tous | ambos",
    "always | throughout | immer | toujours | siempre | sempre | altijd",
    "cada | entrambi | tutti | ogni | beiden | elk | elke | allebei",
    "allen | toutes | todos | todas | tutte",
)
BOTH = whole_words(*_BOTH)
EITHER = whole_words("either | entweder | soit | o bien | oppure | ofwel")
EACH = whole_words(*_BOTH, "either | any | alles | allemaal | überall | durchgehend | partout")
COMBINED = whole_words(
    "every combination | all combinations | any combination | all four | all six | all eight",
    "jede kombination | alle kombinationen | toutes les combinaisons | todas las combinaciones",
    "tutte le combinazioni | alle combinaties",
)
RESPECTIVELY = whole_words(
    "respectively | small(?:er)? one | big(?:ger)? one | larger? one | the first | the other | bzw",
    "in (?:that|this|the same) order | in dieser reihenfolge | dans cet ordre | en ese orden",
    "en este orden | nell'ordine | in die volgorde",
    "(?:going (?:up|down) )?in (?:the )?order(?! to)",
    "in (?:der (?:gleichen|selben|obigen)|gleicher|selber) reihenfolge | der reihe nach",
    "dans (?:l'|le même )ordre | (?:por|en) (?:el mismo )?orden(?! de) | nello stesso ordine",
    "same order | gleiche reihenfolge | même ordre | mismo orden | stesso ordine | zelfde volgorde",
    "order (?:is |being )?the same | (?:respective|corresponding) order | volgorde (?:is )?gelijk",
    "reihenfolge (?:ist )?(?:gleich|identisch) | ordre (?:est )?identique | orden idéntico",
    "(?:in|nell[ao]?) (?:quest'|quell'|questo |quello )?ordine | en dicho orden",
    "(?:in|op) (?:die |deze |dezelfde )?volgorde | small(?:est)? to (?:large|big|largest|biggest)",
    "(?:small(?:er)?est|largest|biggest|small one|big one) first",
    "jeweils | respectivement | rispettivamente | respectivamente | respectievelijk | resp",
)
_TO_FOLLOW = late_pattern(
    r"[^.;\d]{0,16}\b(?:radius|clr|wall|rayon|radio|raggio|wand\w*)\s(?:is\s|folgt|noch\s)?"
    r"(?:to follow|to be (?:confirmed|decided|advised)|tb[acd]\b|later|unknown|open|not known"
    r"|not decided|offen|folgt|suit|da definire|por definir|à définir|volgt)"
)
_BEHIND = 48
_SAME = whole_words(
    "same | ditto | identical | likewise | gleiche[rnms]? | selbe[rnms]? | même | mismo | misma",
    "(?:wand\\w*|radius) (?:ist )?gleich | stesso | stessa | zelfde | dito | idem | also",
)


def share(layout: Layout, groups: list[Group]) -> None:
    """Fill open walls and radii from the groups that have one, before the first or after the last.

    Groups are added where a size shares a whole list of radii.
    """
    if len(groups) < 2:
        return
    order: tuple[Slot, ...] = ("wall", "clr")  # so that a shared wall goes with every shared radius
    for slot in order:
        holding = sum(slot in group.slots for group in groups)
        if not 0 < holding < len(groups):
            continue
        number = 0
        while number < len(groups):
            group = groups[number]
            number += 1
            if slot in group.slots or not group.slots or not (group.has_tube or slot == "wall"):
                continue
            if _is_left_open(layout, group):
                continue
            donor = _donor(layout, groups, number - 1, slot)
            if donor is not None and not _fills_own_cell(group, donor):
                group.slots[slot] = list(donor)
                group.shared.add(slot)
                more = _with_rest_of_list(groups, group, slot)
                groups[number:number] = more
                number += len(more)


def _fills_own_cell(group: Group, donor: list[Figure]) -> bool:
    """Whether a figure is another row's of the same table: an empty cell stays empty."""
    return group.row is not None and donor[0].row is not None and group.row[:2] == donor[0].row[:2]


def _is_left_open(layout: Layout, group: Group) -> bool:
    """'And also 2 x .083 (radius to follow)'."""
    end = max(figures[-1].end for figures in group.slots.values())
    return _TO_FOLLOW.match(layout.words(end, end + _BEHIND)) is not None


def _with_rest_of_list(groups: list[Group], group: Group, slot: Slot) -> list[Group]:
    """'25x1.5 and 30x1.5 at 2D and 3D': a size that shares one of a list shares the whole list."""
    taken = group.slots[slot][0]
    giver = next(
        other for other in groups
        if other is not group and slot in other.slots and other.slots[slot][0] is taken
    )  # fmt: skip
    found: list[Group] = []
    for other in groups:
        figures = other.slots.get(slot)
        if other in (giver, group) or not figures or slot in other.shared:
            continue
        listed = figures[0].link in LISTED and figures[0].sentence == taken.sentence
        if listed and other.slots.get("od") == giver.slots.get("od"):
            new = group.copy()
            new.slots[slot] = list(figures)
            found.insert(0, new)
    return found


def _donor(layout: Layout, groups: list[Group], number: int, slot: Slot) -> list[Figure] | None:
    """The figures of another group that are meant for this one too, or None."""
    group = groups[number]
    anchor = group.anchor
    # In a table each mark says by itself what is the same (`table_dittos`).
    if anchor is not None and group.row is None and layout.says(anchor.sentence, _SAME):
        meant = _pointed_to(layout, groups, anchor)
        if meant is not None and slot in meant.slots:
            return meant.slots[slot]
        before = next((g for g in reversed(groups[:number]) if slot in g.slots), None)
        if before is not None:
            return before.slots[slot]
    heads = [g for g in groups[:number] if slot in g.slots and slot not in g.shared]
    if heads and all(g.place(slot) < g.place("od") and g.row is None for g in heads):
        return heads[-1].slots[slot]  # ".065 wall: 1.5, 1.75 and 2 in"
    closing = _said_at_the_end(groups, slot)
    if closing is not None:
        figure = closing.slots[slot][0]
        if figure.row is not None:
            return None
        if _is_for_all(layout, closing, figure, anchor):
            return closing.slots[slot]
    return _said_in_sentence(groups[number + 1 :], anchor, slot) or _said_of_each(
        layout, groups, slot
    )


def _pointed_to(layout: Layout, groups: list[Group], anchor: Figure) -> Group | None:
    """The group whose OD a figure after ``anchor`` names again: 'same radius as the 26.9'."""
    values = {f.number.value for f in layout.in_sentence(anchor.sentence) if f.points}
    return next(
        (g for g in groups if "od" in g.slots and g.slots["od"][0].number.value in values), None
    )


def _said_at_the_end(groups: list[Group], slot: Slot) -> Group | None:
    """The last tube, if it alone has the slot of its own."""
    od = groups[-1].slots.get("od")
    holding = [group for group in groups if slot in group.slots]
    tail = [group for group in holding if group.slots.get("od") == od]
    alone = all(group.slots.get("od") == od or slot in group.shared for group in holding)
    return tail[0] if tail and alone else None


def _is_for_all(layout: Layout, closing: Group, figure: Figure, anchor: Figure | None) -> bool:
    """Whether what closes a list goes back to its beginning: not from one line of several."""
    od = closing.slots.get("od", [figure])[0]
    several_lines = anchor is not None and anchor.line != od.line
    return not several_lines or figure.line != od.line or layout.says(figure.sentence, EACH)


def _said_in_sentence(later: list[Group], anchor: Figure | None, slot: Slot) -> list[Figure] | None:
    """'1.5 or 1.75 x .095, and 2 x .120': said with the next of a list in the same sentence."""
    after = next((group for group in later if slot in group.slots), None)
    if after is None or anchor is None:
        return None
    donor = after.slots[slot]
    od = after.slots.get("od", donor)[0]
    together = donor[0].sentence == od.sentence == anchor.sentence
    return donor if together and od.link in ("list", "or") else None


def _said_of_each(layout: Layout, groups: list[Group], slot: Slot) -> list[Figure] | None:
    """'All in .065 wall': the one value that a sentence says of every size."""
    each = [
        group.slots[slot] for group in groups
        if slot in group.slots and layout.says(group.slots[slot][0].sentence, EACH)
    ]  # fmt: skip
    return each[0] if len({figures[0].start for figures in each}) == 1 else None


_CLAUSE = late_pattern(
    r"[,;\n]|\b(?:and|und|et|y|e|en)\b(?=\s(?:the|die|der|les|los|las|i|le|de)\s)"
)


_ONE_EACH = late_pattern(
    r"\b(?:one|a|an|two|three|\d+)\s(?:mandrels?|pieces?|pcs?|pc|off|tools?)?\s?(?:of|for|from)?\s?"
    r"(?:each|both)\b"
)
"""'R 66 and 90, one mandrel each': how many, not on which radius."""


def says_each(layout: Layout, run: Sequence[Figure]) -> bool:
    """Whether the clause of a list says 'each', 'both': not that of the wall before it, '16 ga
    on all of them and the dies are 3 and 4'."""
    if not layout.says(run[0].sentence, EACH):
        return False
    text, begin = layout.text, layout.sentence_start(run[0].sentence)
    last = layout.tokens[layout.spans[run[0].sentence][1]].end
    ahead = text[begin : run[0].start].casefold()
    cut = max((m.end() for m in _CLAUSE.finditer(ahead)), default=0)
    line_end = text.find("\n", run[-1].end, last)  # "CLR: 5.25 and 4.5\nMandrels for both please"
    behind = text[run[0].start : line_end if line_end >= 0 else last]
    clause = _ONE_EACH.sub(" ", ahead[cut:] + " " + behind.casefold())
    return EACH.search(clause) is not None
