"""Roles by the words beside a number: '1.75 OD', 'wall .095', 'CLR = 5.25', 'Ø 25'."""

from __future__ import annotations

import re
from decimal import Decimal

from ...rules.grades import family_of_designation
from ...rules.standards import bwg_of, nps_of_dn, nps_of_inches
from .cues import Cue
from .figures import Figure, Layout
from .lexer import Token

LENGTH_ROLES = frozenset(
    {"od", "id", "wall", "clr", "radius", "inside_r", "outside_r", "bend_dia", "centres"}
)
RADIUS_ROLES = frozenset(
    {"clr", "radius", "inside_r", "outside_r", "bend_dia", "centres", "times_d"}
)

_FILLER_LEFT = frozenset(
    """of is the a an at with be was are will approx approximately about around ca circa roughly to
    on nominal nom ist von mit est de du di da van es el la le il het measured measures measuring
    actual real true : = - ( ~ [ . ) required desired needed say maybe probably max min maximum
    minimum currently now being should also only just exactly stamped has needs der die das ungefähr
    environ aproximadamente here there over in mm inch inches | bis zur des bogens rohrs rohres biegung each total finished axis axe asse eje osi osy line hart fibre fibra neutre neutra neutrale faser middle mikes miked measures calipers gemessen mesuré misurato medido gemeten son sono sind zijn sont como máximo máx mín mínimo no tighter than least more less most smaller larger bigger mindestens höchstens maximal minimal minstens au moins plus maximum menos almeno under over below above ? m mittig comes out reads always""".split()
)
_WHOLE_LIST = frozenset("all both each alle beide".split())
_QUALIFIERS = frozenset(
    "center centre centro mittig centres aussen außen innen outside inside extérieur intérieur esterno interno buiten binnen mitte".split()
)
_NUMBERED = frozenset(": = no nr # . - (".split())
_OTHER_THINGS = frozenset(
    "old mandrel,mandrel body,mandrel dia,mandrel diameter,capacity,max capacity,maximum capacity,rod,mandrel rod,draw bar,drawbar,thread,shank,drill,bolt,ball,balls,wheel,washer,bar,shaft,pin,hole".split(
        ","
    )
)


def _other_thing(layout: Layout, at: int) -> bool:
    """Whether the diameter cue at ``at`` is that of a rod, a thread, a machine's capacity."""
    return at > 0 and layout.tokens[at - 1].text in _OTHER_THINGS


_LOOSE = frozenset("in on with for by at , . )".split())
_MEASURED_TO = frozenset("measured gemessen mesuré medido misurato gemeten taken".split())
_FILLER_RIGHT = _WHOLE_LIST | frozenset(
    "of the in nominal nom - ~ actual mm inch inches our your ] max min by er ers apart de di du d von van".split()
)


def assign_by_cue(layout: Layout) -> None:
    """Give each figure the role that a neighbouring cue names, reading left to right.

    A cue serves one figure: in '1.75 OD .095 wall' the OD is used up by the 1.75, so the .095
    takes what follows it; in 'OD 1.75 wall .095' it is the other way round.
    """
    used: set[int] = set()
    for position, figure in enumerate(layout.figures):
        if figure.role is not None and figure.role != "noise":
            continue
        token = layout.tokens[figure.token]
        if token.cues and figure.role is None:
            _take(figure, token.cues[0], "sign")
            _inner_or_outer(layout, figure, used)
            continue
        if figure.unit == "noise:m" and figure.number.value < 4:
            _metres(layout, figure, used)
            continue
        left = _cue_left(layout, figure, used)
        if left is None or left[1].role == "label":
            said = _said_of(layout, figure, used)
            after = layout.figures[position + 1] if position + 1 < len(layout.figures) else None
            whole = after is not None and after.link == "times"
            if said is not None and said[1].role == "noise" and whole:
                # "The gap on the shelf is 50.8 x 1.6": a whole size is no gap, but a rod can be one.
                said = said if layout.tokens[said[0]].text in _OTHER_THINGS else None
            left = said or left
        right = _cue_right(layout, figure)
        chosen = _choose(layout, position, left, right)
        if chosen is None:
            continue
        index, cue = chosen
        if cue.role != "noise":  # an o-ring's two figures are both the o-ring's
            used.add(index)
        if figure.role is None:
            _take(figure, _bent_diameter(layout, figure, cue), "cue")


def _metres(layout: Layout, figure: Figure, used: set[int]) -> None:
    """'Radius 0.6 m': metres are lengths of stock, unless a radius is said to be so."""
    left = _cue_left(layout, figure, used)
    if left is not None and left[1].role in RADIUS_ROLES:
        figure.role, figure.how, figure.unit = left[1].role, "cue", "m"


_BENT = frozenset("bent bend rolled roll formed form curved coiled wound gebogen cintré curvado curvato".split())


def _bent_diameter(layout: Layout, figure: Figure, cue: Cue) -> Cue:
    """'Bent to a 12 inch diameter' is the diameter of the bend, not of the tube."""
    if cue.role != "od":
        return cue
    left, right = tokens_beside(layout, figure, 4, 1)
    plain = bool(right) and right[0].text in ("diameter", "dia", "durchmesser", "diamètre", "diámetro")
    near = [token.text for token in left if token.number is None]
    to = "to" in near or "zu" in near or "auf" in near
    return Cue("bend_dia") if plain and to and _BENT.intersection(near) else cue


def _inner_or_outer(layout: Layout, figure: Figure, used: set[int]) -> None:
    """'Ø34 inside' is a bore: the word after the number says more than the sign before it."""
    if figure.role != "od":
        return
    right = _cue_right(layout, figure)
    left = _cue_left(layout, figure, used)
    if right is not None and right[1].role in ("od", "id", "noise") and right[2] == 0:
        figure.role = right[1].role
        used.add(right[0])
    elif left is not None and left[1] == Cue("noise", "both") and left[2] == 0:
        figure.role = "noise"  # "max capacity fi 51"


def _take(figure: Figure, cue: Cue, how: str) -> None:
    times = figure.unit == "D" and cue.role in RADIUS_ROLES
    figure.role, figure.how = ("times_d" if times else cue.role), how


Found = tuple[int, Cue, int]
"""(token index, cue, how far away: 0 is touching)."""


def _choose(
    layout: Layout, position: int, left: Found | None, right: Found | None
) -> tuple[int, Cue] | None:
    figure = layout.figures[position]
    if left is not None and not _fits(figure, left[1]):
        left = None
    if right is not None and not _fits(figure, right[1]):
        right = None
    if left is not None and right is not None:
        weak = ("label", "die", "quantity")
        if left[1].role in weak and right[1].role not in weak:
            if _next_is_likelier(layout, position, right):
                right = None  # "tube 40 ép. 2"
            else:
                left = None
        elif right[1].role in weak and left[1].role not in weak:
            right = None
        elif right[1].role == "noise" and right[2] == 0 and left[2] > 0:
            left = None  # "316L EP (10 Ra)"
        elif left[1].role == "noise" and layout.tokens[left[0]].text in _OTHER_THINGS:
            right = None  # "the rod is 1 in diameter"
        elif left[1].role == "noise" and right[1].role in LENGTH_ROLES and right[2] <= 1:
            left = None  # "the bend is 4.000 CLR"
        elif left[2] >= 2 and right[2] == 0 and not _serves_next(layout, position, right[0]):
            left = None
    if left is not None:
        return left[0], left[1]
    if right is not None and _next_is_likelier(layout, position, right):
        right = None
    if right is not None:
        return right[0], right[1]
    return None


def _own_right(layout: Layout, position: int) -> bool:
    """Whether a figure has a size cue of its own directly after it."""
    found = _cue_right(layout, layout.figures[position])
    return found is not None and found[1].role in LENGTH_ROLES and found[2] == 0


def _next_is_likelier(layout: Layout, position: int, right: Found) -> bool:
    """'1.75 wall .095': the cue between two figures is the next one's where only that can be it."""
    role = right[1].role
    if role not in LENGTH_ROLES or not _serves_next(layout, position, right[0]):
        return False
    figure, after = layout.figures[position], layout.figures[position + 1]
    if layout.tokens[after.token].cues:
        return False  # "35 ID R76": the next figure has its own sign
    if _own_right(layout, position + 1) or after.sentence != figure.sentence:
        return False
    if family_of_designation("number", layout.text[after.number.start : after.number.end]):
        return False  # "2 C.L.R. 304"
    thousandths = figure.unit is None and figure.number.style != "decimal"
    if role == "wall" and thousandths and bwg_of(figure.number.value * Decimal("0.0254")):
        return False  # "120 wall 1-1/2 DOM"
    if after.link in ("list", "or", "range") and after.unit == figure.unit and role != "wall":
        return after.number.value > figure.number.value * 6
    if role == "wall":
        return after.number.value * 2 < figure.number.value
    return after.number.value > figure.number.value * Decimal("1.5") and after.unit != "D"


def _serves_next(layout: Layout, position: int, cue_index: int) -> bool:
    """Whether the cue to the right stands directly before the next figure."""
    if position + 1 >= len(layout.figures):
        return False
    gap = layout.tokens[cue_index + 1 : layout.figures[position + 1].token]
    return all(token.text in _FILLER_LEFT and token.text not in ",.)" for token in gap)


def _fits(figure: Figure, cue: Cue) -> bool:
    """Whether a number of this spelling can be what the cue says."""
    unit = figure.unit
    if cue.role == "quantity":
        return (
            unit is None
            and figure.number.style in ("integer", "words")
            and figure.number.value <= 500
            and figure.link not in ("times", "slash")
        )
    if unit in ("ga", "bwg", "swg"):
        return cue.role == "wall"
    if unit == "sch":
        return False
    if cue.role == "nps" and cue.side == "after":
        value = figure.number.value  # "0.049 nominal" is a wall, "50 NB" a DN
        whole = value == value.to_integral_value()
        return nps_of_inches(value) is not None or (whole and nps_of_dn(int(value)) is not None)
    if unit == "D":
        return cue.role in ("clr", "radius", "times_d", "inside_r")
    if cue.role in RADIUS_ROLES and unit in ("in", None) and figure.number.value < Decimal("0.2"):
        return False
    if cue.role == "id" and figure.number.value < (2 if unit == "mm" else Decimal("0.1")):
        return False  # "weld bead inside max 0.3 mm"
    if cue.role == "wall" and unit == "mm":
        return figure.number.value <= 25  # "38 mm dick" is a diameter
    if cue.role == "wall" and unit in ("in", "mm", None):
        return not (unit == "in" and figure.number.value > 13)
    return not (cue.role == "od" and unit == "in" and figure.number.value < 0.1)


def _cue_left(layout: Layout, figure: Figure, used: set[int]) -> Found | None:
    distance = 0
    passed: set[str] = set()
    crossed = False  # a label alone on the line above
    at = figure.token - 1
    while at >= 0 and distance <= 5:
        token = layout.tokens[at]
        if token.kind == "cue":
            if at in used:
                return None
            if layout.sentence_of[at] != figure.sentence and not crossed:
                return None
            if token.text in ("bend", "bends", "curve") and layout.tokens[at - 1].text in (
                "the",
                "of",
            ):
                at, distance = at - 1, distance + 1
                continue  # "to the inside of the bend is 5 in"
            side = next((cue for cue in token.cues if cue.side in ("before", "both")), None)
            named_before = at > 0 and any(
                c.role in RADIUS_ROLES or c.role == "noise" for c in layout.tokens[at - 1].cues
            )
            if token.text in _QUALIFIERS and (side is None or named_before):
                at, distance = at - 1, distance + 1
                continue  # "der Radius ist außen 160 mm"
            if token.text == "no" and passed & {"than", "more", "less", "tighter", "smaller"}:
                at, distance = at - 1, distance + 1
                continue  # "CLR of no more than 4.5"
            if side is not None and side.role == "noise" and passed & _COPULA and _complement(layout, at):
                return None
            if side is not None and side.role == "noise" and passed & _LOOSE:
                return None  # "bends in 2 inch sch 40"
            if (
                side is not None
                and side.role == "noise"
                and side.side == "before"
                and passed - _NUMBERED
            ):
                return None  # "the radius in our drawing is 130 mm": not drawing 130
            if side is not None and side.role in ("od", "id") and _other_thing(layout, at):
                side = Cue("noise")  # "max capacity fi 51"
            return (at, side, distance) if side else None
        if token.kind == "line" and passed & _COPULA:
            at -= 1  # "Der Radius / ist außen gemessen 160 mm": a sentence that was wrapped
            continue
        if token.kind == "line":
            if at == 0 or layout.tokens[at - 1].kind not in ("cue", "punct"):
                return None
            if layout.tokens[at - 1].text not in (":", "=", "?") and not _alone_on_line(
                layout, at - 1
            ):
                return None
            at, crossed = at - 1, True
            continue
        if token.kind == "gap" or token.text in (":", "="):
            at -= 1
            continue
        if token.text == "," and distance == 0 and _opens_clause(layout, at - 1):
            distance, at = distance + 2, at - 1  # "its true outside size, five eighths"
            continue
        if token.kind in ("word", "punct") and token.text in _FILLER_LEFT:
            distance += 2 if token.text in (",", ".", ")") else 1
            passed.add(token.text)
            at -= 1
            continue
        if token.kind == "material" and distance <= 1:
            at -= 1  # "wall 304 .065", "tube alu 6060 de 40"
            distance += 1
            continue
        return None
    return None


def _opens_clause(layout: Layout, at: int) -> bool:
    """Whether the cue at ``at`` has no figure before it that it could belong to."""
    if at < 0 or layout.tokens[at].kind != "cue":
        return False
    for back in range(at - 1, max(-1, at - 5), -1):
        token = layout.tokens[back]
        if token.number is not None:
            return False
        if token.kind in ("line", "para") or token.text in (",", ".", ";", ":"):
            return True
    return True


_COPULA = frozenset("son sono sind zijn sont is are was be = : ist beträgt est es è will equals measures".split())
_ARTICLE = frozenset("a an the about approx approximately around also still now our".split())


def _complement(layout: Layout, at: int) -> bool:
    """Whether a cue only completes another: '... of the two legs'."""
    return any(token.text in ("of", "der", "des", "de", "van") for token in layout.tokens[max(0, at - 3) : at])


def _said_of(layout: Layout, figure: Figure, used: set[int]) -> Found | None:
    """'The radius in our drawing is 130 mm': the subject of the clause, words between."""
    at = figure.token - 1
    while at >= 0 and layout.tokens[at].text in _ARTICLE:
        at -= 1
    if at < 0 or layout.tokens[at].text not in _COPULA:
        return None
    for back in range(at - 1, max(-1, at - 10), -1):
        token = layout.tokens[back]
        if token.number is not None or layout.sentence_of[back] != figure.sentence:
            return None
        if token.text in (",", ";", "and", "but", "with"):
            return None
        if token.kind == "cue" and back not in used:
            if token.text in ("bend", "bends", "bending"):
                continue  # "the radius to the inside of the bend is 5 in"
            side = next((c for c in token.cues if c.role in LENGTH_ROLES | {"noise", "die"}), None)
            if side is not None and side.role == "noise" and _complement(layout, back):
                continue  # "the distance between axes of the two legs is 152"
            if side is not None and (side.side == "both" or side.role != "noise"):
                return back, side, 2
    return None


def _alone_on_line(layout: Layout, index: int) -> bool:
    """Whether a cue has its line to itself, as a label above its value has."""
    return index == 0 or layout.tokens[index - 1].kind in ("line", "para")


def _cue_right(layout: Layout, figure: Figure) -> Found | None:
    distance = 0
    at = figure.token + 1
    while at < len(layout.tokens) and distance <= 2:
        token = layout.tokens[at]
        if token.kind == "cue":
            side = next((cue for cue in token.cues if cue.side in ("after", "both")), None)
            bracket = layout.tokens[at - 1].text == "("  # "Ø38 (tol. ±0.2)"
            if side is not None and side.role == "noise" and (distance or bracket):
                return None  # '0.058" - the weight guys say': not a weight
            return (at, side, distance) if side else None
        if token.kind == "gap":
            at += 1
            continue
        if token.kind == "material" and distance == 0:
            at += 1  # "1.75 304 OD"
            distance += 1
            continue
        if token.text == "(" and distance == 0:
            inner = layout.tokens[at + 1] if at + 1 < len(layout.tokens) else None
            if inner is not None and inner.kind == "cue":
                at += 1  # "57 mm (Mitte)"
                continue
            return None
        if token.text == ")" and figure.link == "restate" and distance == 0:
            at += 1  # '5.25" (133.35mm) centerline radius'
            continue
        following = layout.tokens[at + 1].text if at + 1 < len(layout.tokens) else ""
        if token.text == "," and following in _MEASURED_TO:
            at += 2  # "4-1/2, measured to the middle of the pipe"
            at += 1 if at < len(layout.tokens) and layout.tokens[at].kind == "line" else 0
            continue
        if token.text == "," and following in _WHOLE_LIST:
            at += 1  # "76.2, 101.6 and 152.4, all centre line"
            continue
        if token.kind in ("word", "punct") and token.text in _FILLER_RIGHT:
            distance += 1
            at += 1
            continue
        return None
    return None


def refine_radii(layout: Layout) -> None:
    """A plain radius becomes centre, inside or outside by words elsewhere in its sentence.

    'The radius is 130 mm and it is measured to the OUTSIDE of the bend (extrados)'.
    """
    for figure in layout.figures:
        if figure.role not in RADIUS_ROLES:
            continue
        around = _around_radius(layout, figure)
        if _LIMIT.search(around):
            figure.notes.append("limit")
        if figure.role != "radius":
            continue
        kinds = [kind for kind, words in _RADIUS_KINDS if any(word in around for word in words)]
        if kinds and _UNSURE.search(around):
            figure.notes.append("hedged")
        if kinds == ["clr"] or not kinds:
            continue
        stated = [kind for kind in kinds if kind != "clr"]
        if len(stated) == 1 and "clr" in kinds and _EITHER.search(around):
            figure.notes.append("inside or centreline radius")
        elif len(stated) == 1:
            figure.role = stated[0]
            if "clr" in kinds:
                figure.notes.append("inside or centreline radius")
        else:
            figure.notes.append("inside, outside or centreline radius")


_RADIUS_KINDS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("clr", ("centre", "center", "mitte", "neutral", "middle", "à l'axe", "all'asse", "al eje", "hartlijn", "mean", "clr", "moyen", "medio")),
    ("inside_r", (
        "to the inside", "inside of the bend", "inside radius", "inner radius", "intrados", "innenseite", "lato interno", "por dentro", "à l'intérieur", "all'interno", "binnenzijde", "lado interior", "côté intérieur", "inside edge", "inside of the curve", "on the inside", "innen", "intérieur", "interieur", "binnen", "interno", "interior", "inside face", "inside rad", "inner edge", "inside the bend",
    )),
    ("outside_r", (
        "to the outside", "outside of the bend", "outside radius", "outer radius", "extrados", "aussenseite", "lato esterno", "por fuera", "à l'extérieur", "all'esterno", "buitenzijde", "lado exterior", "côté extérieur", "aussen gemessen", "extérieur", "esterno", "exterior", "buitenkant", "outer edge", "outside edge", "outside of the curve", "on the outside of", "aussenradius", "außenradius", "extérieur du", "rayon extérieur", "buitenradius", "it is outside", "raggio esterno", "radio exterior", "outside rad", "radius outside", "outside the bend",
    )),
)  # fmt: skip


_LIMIT = re.compile(
    r"\b(?:minimum i can|minimum we can|min(?:imum)? is|smallest|tightest|at least|no tighter|no smaller|or (?:bigger|larger|tighter|smaller)|(?:bigger|larger) is (?:ok|fine))\b"
)
_EITHER = re.compile(r"\b(?:or|oder|ou|o|of|either|if|whether)\b")
_UNSURE = re.compile(
    r"\b(?:we suppose|i suppose|we think|i think|i believe|we believe|not sure|unsure|cannot know|can't tell|acho que|creo que|no sé|não sei|ne sais pas|weiß nicht|don't know|dont know|do not know|maybe|perhaps|probably|i guess|could be|might be|vermutlich|vielleicht|peut-être|quizás|forse|misschien)\b"
)


def _around_radius(layout: Layout, figure: Figure) -> str:
    """The words between the neighbouring figures, and those of a short sentence that refers back."""
    inside = layout.in_sentence(figure.sentence)
    at = inside.index(figure)
    first, last = layout.spans[figure.sentence]
    begin = inside[at - 1].token + 1 if at else first
    end = inside[at + 1].token if at + 1 < len(inside) else last + 1
    for index in range(figure.token + 1, end):
        token = layout.tokens[index]
        label = any(c.role in ("od", "id", "wall", "label") for c in token.cues)
        if label and (token.text not in _QUALIFIERS or end - index <= 3):
            end = index  # "Raggio: 57 mm, Diametro esterno: 38": the next figure's label
            break
    text = layout.text[layout.tokens[begin].start : layout.tokens[max(begin, end - 1)].end].casefold()
    following = layout.sentence_text(figure.sentence + 1)
    if _refers_back(following) and not layout.in_sentence(figure.sentence + 1):
        text += " " + following
    return text


def _refers_back(text: str) -> bool:
    return any(
        text.lstrip().startswith(begin)
        for begin in ("it is", "it's", "its ", "that is", "that's", "this is", "we suppose", "i think", "measured", "i believe", "we think", "don't know if", "not sure if", "das ist", "c'est")
    )  # fmt: skip


def tokens_beside(
    layout: Layout, figure: Figure, before: int, after: int
) -> tuple[list[Token], list[Token]]:
    """Up to that many tokens before and after a figure, within its sentence."""
    left: list[Token] = []
    for at in range(figure.token - 1, max(-1, figure.token - 1 - before), -1):
        if layout.sentence_of[at] != figure.sentence or layout.tokens[at].kind == "para":
            break
        left.insert(0, layout.tokens[at])
    right: list[Token] = []
    for at in range(figure.token + 1, min(len(layout.tokens), figure.token + 1 + after)):
        if layout.sentence_of[at] != figure.sentence or layout.tokens[at].kind == "para":
            break
        right.append(layout.tokens[at])
    return left, right
