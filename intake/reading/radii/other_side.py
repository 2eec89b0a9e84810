"""A radius with what it comes to on the other side of the tube: '76 radius (inside it's 57)'.

The second figure only checks the first. Where the two lie half an OD apart, that settles which is
the centre line; where they don't, the radius is doubted.
"""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import RADIUS_ROLES, Role

_SIDES = {
    "in": any_of(
        r"(?:to |on |at )?(?:the )?(?:inside|inner|ins)(?: (?:radius|edge|face|of (?:the )?(?:bend"
        r"|curve|tube"
        r"|pipe)|the (?:bend|curve)|rad|wall|side))?",
        r"(?:am )?innen(?:radius|seite)? | an der innenseite",
        r"(?:à |sur )?(?:l'|l’)?intérieur(?: du (?:coude|cintre|tube))? | (?:à l')?intrados",
        r"(?:en el |al |por el |radio )?interior | por dentro | (?:all'|all’|raggio )?intern[oa]",
        r"(?:aan de |op de )?binnen(?:kant|zijde|straal|bocht)?",
    ),
    "out": any_of(
        r"(?:to |on |at )?(?:the )?(?:outside|outer)(?: (?:radius|edge|face|of (?:the )?(?:bend"
        r"|curve|tube"
        r"|pipe)|the (?:bend|curve)|rad|wall|side))?",
        r"(?:am )?(?:außen|aussen)(?:radius|seite)? | an der außenseite",
        r"(?:à |sur )?(?:l'|l’)?extérieur(?: du (?:coude|cintre|tube))? | (?:à l')?extrados",
        r"(?:en el |al |por el |radio )?exterior | por fuera | (?:all'|all’|raggio )?estern[oa]",
        r"(?:aan de |op de )?buiten(?:kant|zijde|straal|bocht)?",
    ),
}
_IS = any_of(
    r"which | it'?s | it is | is | that'?s | that is | which is | makes(?: it)?",
    r"comes (?:out )?(?:to|at)",
    r"comes out | works out(?: (?:to|at))? | gives | would be | should be | being | = | : | i get",
    r"sind es | ist es | ist | sind | das sind | also | ergibt | macht | wären | ça fait | fait",
    r"c'est | soit | donc | ce qui fait | son | es | sería | serían | da | sale | sono | è | fa",
    r"sarebbe | viene | is dat | dus | wordt | dat is | is het | so",
)
_BY = r"(?:about |roughly |approx\.? |ca\.? |around |exactly |genau |a |un |una |the |r ?)?"
_AHEAD = {
    side: late_pattern(
        rf"(?:[(\[,;/–-]|\s|and|und|et|y|e|en|or|oder|ou|o|of)*"
        rf"\b{words}(?:[\s,]*{_IS}){{0,2}}\s?{_BY}$"
    )
    for side, words in _SIDES.items()
}
"""'76 radius (inside the bend it is' 57."""
_BEHIND = {
    side: late_pattern(rf"\s?(?:mm|cm|in(?:ch(?:es)?)?\b|[\"”″'])?\s?{words}\b")
    for side, words in _SIDES.items()
}
_BEHIND_LEADS = late_pattern(
    rf"\s?(?:mm|cm|in(?:ch(?:es)?)?\b|[\"”″'])?\s?(?:radius|rad|clr|rayon|radio|raggio|straal)?"
    rf"\s?(?:[(\[,;–-]\s?(?:{_IS}\s?)+|[(\[,;–-]?\s?\b(?:or|oder|ou|o|of)\s){_BY}$"
)
"""'3 in radius (that's' 2.25 to the inside."""
_CENTRE = re.compile(
    r"cent(?:re|er)|clr|mitte|neutral|axe|eje|asse|hart|middle"
    r"|\bnot\b|nicht|\bpas\b|\bno\b|\bnon\b|niet",
    re.IGNORECASE,
)
_OR = re.compile(
    r"^\s?(?:mm|cm|in(?:ch(?:es)?)?\b|[\"”″'])?,?\s?\(?(?:or|oder|ou|o|of)\b", re.IGNORECASE
)
"""'R 76 or 57 inside': the same radius where the two lie half an OD apart, else a choice."""
_OF_A_TUBE = re.compile(
    r"di[aàáâ]m|durchmesser|doorsne|Ø|\b(?:tub[eio]|rohr|buis|pipe)", re.IGNORECASE
)
"""'rayon 70 et pour tube diamètre extérieur 76,1': the next tube's side, not this bend's."""
_SAID_AS = ("radius", "clr", "inside_r", "outside_r")
_FAR, _BACK = 72, 24
_CLOSE = Decimal("0.06")
"""Of the OD: sums done in the head are rounded."""
_HALF = Decimal("0.5")
_ROUNDED = Decimal("0.02")
"""Of the OD: so near comes the centre line that somebody reckons from a side."""
_FAR_RECKONED = 120
_TO_CENTRE = late_pattern(
    r"cent(?:re|er)|\bclr\b|mitte|neutral|\b(?:axe|eje|asse)\b|hartlijn|middle"
)
_RECKONS = whole_words(
    "so | which | gives | giving | ought to be | makes | making | comes | works out | therefore",
    "meaning | less | minus",
    "half the (?:tube|od|diameter) | i make | also | ergibt | macht | donc | soit | o sea",
    "así que | quindi | dunque | dus",
)
_ANOTHER = whole_words(
    "another | second | other one | both | each | auch | zweite\\w* | noch | aussi | deuxième",
    "también | segundo | anche | secondo | ook | tweede",
)


def set_other_sides_aside(layout: Layout) -> None:
    """Set aside a figure that only tells a radius again as measured to the other side."""
    for figure in layout.figures:
        if figure.role not in _SAID_AS or not figure.is_measure:
            continue
        _hear_reckoned(layout, figure)
        _drop_reckoned(layout, figure)
        for at in (figure.index + 1, figure.index + 2):
            other = layout.figures[at] if at < len(layout.figures) else None
            if other is None or other.start - figure.end > _FAR:
                break
            side = _side_of(layout, layout.figures[at - 1], other)
            if side is not None:
                offered = _OR.search(layout.text[figure.end : other.start]) is not None
                _weigh(layout, figure, other, side, offered=offered)


def _side_of(layout: Layout, before: Figure, other: Figure) -> str | None:
    """Which side a figure is said to be measured to, beside the one before; None where it isn't."""
    between = layout.text[before.end : other.start].casefold()
    behind = layout.text[other.end : other.end + _BACK].casefold()
    if "\n" in between or _CENTRE.search(between):
        return None
    for side in ("in", "out"):
        told = _AHEAD[side].search(between)
        if told is not None and not _OF_A_TUBE.search(between[: told.start()]):
            return side
    if _BEHIND_LEADS.search(between):
        for side in ("in", "out"):
            if _BEHIND[side].match(behind):
                return side
    return None


def _hear_reckoned(layout: Layout, figure: Figure) -> None:
    """'The block has a 5" radius, the 1.25 tube lies against it, so the CLR is 5.625': a radius to
    a side of the tube, as what it is said to come to tells."""
    if figure.role != "radius" or figure.negated or figure.row is not None:
        return
    for other in layout.figures[figure.index + 1 : figure.index + 5]:
        if other.start - figure.end > _FAR_RECKONED or other.role not in ("clr", "radius", None):
            continue
        between = layout.words(figure.end, other.start)
        tube = _tube_of(layout, figure, other)
        if any(
            f.role == "od" and f is not tube for f in layout.figures[figure.index : other.index]
        ):
            return
        named = other.role == "clr" or _TO_CENTRE.search(between) is not None
        if not (named and _RECKONS.search(between)) or tube is None:
            continue
        side: Role = "inside_r" if other.number.value > figure.number.value else "outside_r"
        if _is_reckoned(figure, other, tube, side):
            figure.role = side
            figure.notes = [note for note in figure.notes if "centreline" not in note]
            return


def _drop_reckoned(layout: Layout, figure: Figure) -> None:
    """'Outside radius 111, so take off half the tube and the CLR is 88.8': the same radius, and the
    figure that was measured is the better one."""
    if figure.role not in ("inside_r", "outside_r") or figure.negated:
        return
    for other in layout.figures[figure.index + 1 : figure.index + 5]:
        between = layout.words(figure.end, other.start)
        named = _TO_CENTRE.search(between) is not None
        told = named or other.role == "clr" or _RECKONS.search(between) is not None
        if other.start - figure.end > _FAR_RECKONED or _ANOTHER.search(between):
            return
        if told and other.role in ("clr", "radius", None, "od" if named else None):
            if _is_reckoned(figure, other, _tube_of(layout, figure, other), figure.role):
                other.give("noise", "same")
            return


def _is_reckoned(figure: Figure, other: Figure, tube: Figure | None, side: Role) -> bool:
    """Whether the other is what the side comes to on the centre line of the tube."""
    if tube is None or len({f.unit for f in (figure, other, tube) if f.unit in ("in", "mm")}) > 1:
        return False
    half = tube.number.value * _HALF
    reckoned = figure.number.value + (half if side == "inside_r" else -half)
    return abs(reckoned - other.number.value) <= tube.number.value * _ROUNDED


def _tube_of(layout: Layout, figure: Figure, other: Figure) -> Figure | None:
    """The tube that a radius is most likely of: the last before it, else the first of all."""
    tubes = [f for f in layout.figures if f.role in ("od", "id") and f.is_measure and f != other]
    before = [f for f in tubes if f.index < figure.index]
    return before[-1] if before else tubes[0] if tubes else None


def _weigh(layout: Layout, figure: Figure, other: Figure, side: str, *, offered: bool) -> None:
    tube = _tube_of(layout, figure, other)
    units = {f.unit for f in (figure, other, tube) if f is not None and f.unit in ("in", "mm")}
    if tube is None or len(units) > 1 or other.role not in (None, "od", "id", *RADIUS_ROLES):
        return
    half = tube.number.value * _HALF
    apart = figure.number.value - other.number.value
    whole = abs(abs(apart) - tube.number.value) <= tube.number.value * _CLOSE
    if whole and (apart > 0) == (side == "in") and figure.role != "clr":
        figure.role = "outside_r" if side == "in" else "inside_r"
        other.give("noise", "same")  # "122.5 to the outside, 87.5 to the inside"
    elif figure.role == ("outside_r" if side == "in" else "inside_r"):
        return
    elif abs((apart if side == "in" else -apart) - half) <= tube.number.value * _CLOSE:
        figure.role = "clr"
        figure.notes = [note for note in figure.notes if "centreline" not in note]
        other.give("noise", "same")
    elif offered:
        figure.notes.append("another radius is offered beside it, measured to a side of the tube")
        if other.role not in RADIUS_ROLES:
            other.give("noise", "same")
    elif (apart > 0) == (side == "in") and abs(apart) < tube.number.value * 2:
        if other.role in ("od", "id") and other.number.value < tube.number.value:
            return  # a bore: "radius 75, outside 38, inside 34"
        if figure.role != "clr":
            figure.role = "clr"
            figure.notes.append("inside or centreline radius")
        other.give("noise", "same")
