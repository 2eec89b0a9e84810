"""What joins two neighbouring figures: a times sign, a comma, a bracket, or nothing."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise
from typing import Literal

from ...late_pattern import late_pattern
from ..naming.bracketed_tubes import brackets_tube
from .figures import LISTED, Figure, Layout, Link
from .patterns import word_set
from .roles import RADIUS_ROLES
from .tokens import Token

_Mark = Literal["x", "/", "and", "or", "to", "same", "line"]

_AND = word_set("and & bzw resp und sowie et y e en evenals och og i plus ,")
_OR = word_set(
    "or oder ou o u of eller lub ó might could may maybe perhaps misschien vielleicht eventuell",
    "peut-être quizá quizás forse possibly oppure ofwel",
)
_BESIDE_OR = word_set("but aber mais pero ma maar is it it's ist es het est c'est sia sea evt")
"""Words that join two figures only beside an 'or': '2 mm, but maybe it is 1.5'."""
_ALSO = word_set("also auch aussi también anche ook zudem additionally")
_TO = word_set("to until bis à hasta jusqu'à fino thru through tot till til -")
_TO_WHAT = word_set("a an bend make fit suit do form roll")
_RESTATE = word_set("( = ie i.e so that's thats meaning equals == aka")
_THAT_IS = late_pattern(
    r"\W{0,3}(?:(?:long|short) radius\W{1,3})?"
    r"(?:i\.?\s?e\.?|d\.?\s?h\.?|viz\.?|that is|that's|namely|in other words|das heißt|nämlich"
    r"|c'est[- ]à[- ]dire|c\.?-?à-?d\.?|es decir|o sea|cioè|ossia|oftewel|oftwel|dat is)\W{1,3}"
)
_ANOTHER_TIME = late_pattern(
    r"\s?(?:mm|cm|in|inch|\"|clr|radius)?\s?(?:(?:on|for) (?:one|the one|some)(?: \w+)?)?,?\s?"
    r"(?:and|und|en|et|y|e|then)\s(?:then\s)?"
    r"(?:(?:once|one time|another time|the other time|other times|sometimes)"
    r"|einmal|ein andermal|das andere mal|beim anderen(?: mal)?|eens|de andere keer|een andere keer"
    r"|une (?:autre )?fois|l'autre fois|d'autres fois|otra vez|otra|la otra(?: vez)?"
    r"|un'altra volta|l'altra(?: volta)?|una volta)\s"
    r"(?:(?:at|on|with|mit|auf|bei|met|op|avec|sur|à|con|a|de|di|r|radius)\s){0,2}"
)
"""'Once on 150 and once on 200', 'de ene keer R 150 en de andere keer 200': two radii."""
_PASS = word_set(
    "be with \" ' mm . ) a the both each all about approx od wall clr radius either from ~ +"
)
_BETWEEN = word_set("between zwischen entre tra fra tussen")
_WHICH = word_set(
    "small big bigger smaller larger large first second other latter former thin thick petit gros",
    "grand pequeño grande chico piccolo kleine kleinen große großen kleinste grote erste ersten",
    "zweite zweiten primero segundo primo secondo",
)
_WHICH |= word_set(
    "front back rear top bottom left right upper lower start end vorne hinten oben unten links",
    "rechts avant arrière davanti dietro delante detrás voorkant achterkant",
)
_FOR_THE = word_set("on for in at pour para für per voor bei sur à en auf")
_THE = word_set("the le la l' el il den das die de dem der het lo")
_ONE = word_set("one tube rohr tubo")
_SAID_AGAIN = word_set("de da di von van für for pour para per voor")
"""'De 20, de 25 y de 30'"""
_MOST_COUNTED = 10
_LONGEST_AGAIN = 3
"""So many words are said again between two figures: 'one in 2.5" and one in 3"'."""
_STEP = word_set("step steps stepped stepping stufe gestuft étagé escalonado")
_TO_A_STEP = _STEP | word_set("then up down to into out from auf à a the and it , (")
_LEAST_SLASHED, _MOST_GROWN, _TWO_UNITS = 3, 5, 2
"""So many figures with slashes between are a list, where none is so many times the first."""
_FAR_GAUGES = 6
"""Gauges that one sender wavers between, or lists, lie no further apart."""
_WIDEST_OD = 6
"""A whole number up to that before a gauge is likelier an OD in inches than a gauge too."""
_THIN = Decimal("0.3")
"""A wall is less than this share of its OD where only dashes say that it is one."""


def link_figures(layout: Layout) -> None:
    """Say of every figure how it hangs on the one before it."""
    for left, right in pairwise(layout.figures):
        between = layout.between(left, right)
        right.link = _link(layout, left, right, between)
        if right.link == "restate" and brackets_tube(layout, left, right):
            right.link = "apart"
        if right.link == "slash" and _is_twin(left, right):
            right.link = "restate"
        if right.link in LISTED and not any(token.kind == "cue" for token in between):
            _share_gauge(layout, left, right)
    for left, right in reversed(list(pairwise(layout.figures))):
        if right.link == "list" and right.is_gauge:
            _share_gauge(layout, left, right)  # "11, 13 and 16 gauge", now that the 13 is one
    _read_dashes(layout)
    _read_slashes(layout)


def _read_slashes(layout: Layout) -> None:
    """'38/42/45, 2 mm wall': three diameters that grow, with slashes between them, are a list."""
    run: list[Figure] = []
    for figure in (*layout.figures, None):
        if figure is not None and run and figure.link == "slash":
            run.append(figure)
            continue
        if len(run) >= _LEAST_SLASHED and _grow(run) and (figure is None or figure.link != "times"):
            for listed in run[1:]:
                listed.link = "list"
        run = [figure] if figure is not None and figure.link != "times" else []


def _grow(run: list[Figure]) -> bool:
    """Whether figures are like diameters, each larger than the one before: no wall, no bore."""
    values = [figure.number.value for figure in run]
    units = {figure.unit for figure in run} - {None}
    like = values[0] >= _THIN and values[-1] <= values[0] * _MOST_GROWN and len(units) < _TWO_UNITS
    return like and all(a < b for a, b in pairwise(values)) and units <= {"in", "mm"}


def _link(layout: Layout, left: Figure, right: Figure, between: list[Token]) -> Link:
    if left.role == "noise" or right.role == "noise":
        return "apart"
    if _THAT_IS.fullmatch(layout.words(left.end, right.start)):
        return "restate"
    if _ANOTHER_TIME.fullmatch(layout.words(left.end, right.start)):
        named = [*layout.tokens_before(left, 2), layout.tokens[left.token], *between]
        if any(cue.role in RADIUS_ROLES for token in named for cue in token.cues):
            return "list"
    words = {token.text for token in between}
    if left.unit == "D" and words == {":"}:
        return "restate"  # "radius 3D: 145 mm"
    if words & _STEP and words <= _TO_A_STEP:
        return "list"  # stepped headers: "1.75 then step to 1.875"
    marks: list[_Mark] = []
    loose = False
    joining = _without_said_again(layout, left, _without_one(between))
    for previous, token in zip((None, *joining), joining, strict=False):
        if token.kind in ("gap", "material", "cue"):
            if token.text == "up to" and _says_from(layout, left):
                marks.append("to")
            continue
        if token.kind in ("para", "block", "number"):
            return "apart"
        if token.kind == "line":
            if not (marks and marks[-1] in ("x", "and", "or", "to")):
                marks.append("line")
        elif token.text == ")" and "same" in marks:
            marks.remove("same")  # closed before the figure: "radius (centerline) 6-3/4"
        elif token.text in _ALSO and marks[-1:] == ["and"] and previous and previous.text != ",":
            pass  # "76 and also 102"; but "innen 60, also Mitte 80" is one radius
        elif token.text == "er" and previous is None:
            pass  # "22er und 18er"
        elif token.text == "of" and previous is not None and previous.kind in ("cue", "word"):
            pass  # "a radius of 2" is English; between two figures "of" is Dutch for "or"
        elif (
            token.text in _SAID_AGAIN and marks[-1:] == ["and"] and _says_again(layout, left, token)
        ):
            pass
        else:
            mark = "or" if _says_either(layout, left, token) else _mark(token)
            labelled = previous is not None and previous.kind == "cue" and token.text == "="
            if labelled and {"line", "and"} & set(marks):
                return "apart"  # "radius = 1.5D", and on the next line "Qty = 3"
            if mark is not None:
                marks.append(mark)
            elif token.text in _BESIDE_OR:
                loose = True
            elif token.text not in _PASS:
                return "apart"
    if loose and "or" not in marks:
        return "apart"
    return _joined(marks, layout, left, right, between)


def _says_either(layout: Layout, left: Figure, token: Token) -> bool:
    """'Soit 2 soit 2,6'; one alone says that the second is the first again."""
    return token.text == "soit" and any(t.text == "soit" for t in layout.tokens_before(left, 1))


def _says_again(layout: Layout, left: Figure, token: Token) -> bool:
    """'Mandriles de 20, de 25'"""
    return not _may_count(left) and any(
        before.text == token.text for before in layout.tokens_before(left, 1)
    )


def _without_said_again(layout: Layout, left: Figure, tokens: list[Token]) -> list[Token]:
    """'In 2.5" and in 3"' is a list like '2.5" and 3"': the words before the first figure stand
    before the second again."""
    if _may_count(left):
        return tokens
    for many in range(min(_LONGEST_AGAIN, len(tokens) - 1), 0, -1):
        again, joint = tokens[-many:], tokens[-many - 1]
        ahead = layout.tokens_before(left, many)
        same = [token.text for token in ahead] == [token.text for token in again]
        plain = all(token.kind == "word" for token in again)
        if same and plain and _mark(joint) in ("and", "or"):
            return tokens[:-many]
    return tokens


def _may_count(figure: Figure) -> bool:
    """'Price for 1 and for 3' counts."""
    counts = figure.number.style == "integer" and figure.unit is None
    return counts and figure.number.value <= _MOST_COUNTED


def _mark(token: Token) -> _Mark | None:
    """What a single word or sign says of the two figures around it."""
    if token.kind == "times":
        return "x"
    text = token.text
    if text in ("/", "\\"):
        return "/"
    if text in _AND:
        return "and"
    if text in _OR:
        return "or"
    if text in _TO:
        return "to"
    return "same" if text in _RESTATE else None


def _joined(
    seen: list[_Mark], layout: Layout, left: Figure, right: Figure, between: list[Token]
) -> Link:
    marks = [mark for mark in seen if mark != "line"]
    if "same" in marks:
        return "restate"
    if "line" in seen and any(token.kind == "material" for token in between):
        return "apart"  # "53 x 1,5 / R 80 / 1.4404", and on the next line another size
    if marks == ["x"]:
        return "times"
    if marks == ["/"]:
        return "slash"
    texts = [token.text for token in between]
    if any(first == "to" and second in _TO_WHAT for first, second in pairwise(texts)):
        return "apart"  # "1-1/2 in 4130 to a 6 in radius", "a 2-3/4 CLR die to bend 1-1/2 tube"
    if marks in (["to"], ["and", "to"]) and "line" not in seen:
        if "-" in texts and any(token.kind == "material" for token in between):
            return "apart"  # "1-1/2 inch stainless - 2-7/8 radius"
        tight = not any(token.kind in ("cue", "material") for token in between)
        return "range" if right.number.value > left.number.value or not tight else "apart"
    if "or" in marks and set(marks) <= {"or", "and"}:
        return "or"
    if set(marks) != {"and"} or "line" in seen:
        return "apart"
    if any(token.kind == "material" for token in between) or (")" in texts and "(" not in texts):
        return "apart"
    ranged = _says_between(layout, left) and "," not in layout.text[left.end : right.start]
    return "range" if ranged else "list"


def _says_between(layout: Layout, figure: Figure) -> bool:
    """'between 16 and 14 gauge' is a range."""
    before = layout.tokens[max(0, figure.token - 2) : figure.token]
    return any(token.text in _BETWEEN for token in before)


def _says_from(layout: Layout, figure: Figure) -> bool:
    """'walls from .049 up to .065' is a range; 'a .049, up to 2 in OD' is none."""
    before = layout.tokens[max(0, figure.token - 1) : figure.token]
    return any(token.text == "from" for token in before)


def _without_one(tokens: list[Token]) -> list[Token]:
    """'1-1/8 on the small one and 1-1/2 on the big one' is a list like '1-1/8 and 1-1/2'."""
    for at in range(len(tokens) - 2):
        joint, article, which = (token.text for token in tokens[at : at + 3])
        if joint in _FOR_THE and article in _THE and which in _WHICH:
            one = at + 3 < len(tokens) and tokens[at + 3].text in _ONE
            rest = tokens[:at] + tokens[at + (4 if one else 3) :]
            return [token for token in rest if token.text != "de"]
    return tokens


def _is_twin(left: Figure, right: Figure) -> bool:
    """'50.8mm/2" OD, 1.65mm/.065 wall': after mm only the same in inches can stand."""
    if right.unit is None and left.unit == "mm":
        length = left.number.value
        return abs(length - right.number.value * Decimal("25.4")) <= length / 50
    return {left.unit, right.unit} == {"in", "mm"}


def _share_gauge(layout: Layout, left: Figure, right: Figure) -> None:
    """'16 or 14 gauge', 'might be 16 gauge, might be 18': one word for both.

    Not in '10 ga - 14 CLR': what has a word of its own needs no other's.
    """
    if abs(left.number.value - right.number.value) > _FAR_GAUGES or (
        right.link == "list" and left.number.value <= _WIDEST_OD
    ):
        return  # "4, 12 ga": a 4 in tube
    pairs = [(left, right)]
    if right.link != "list":
        pairs.append((right, left))  # in "16 gauge, 6 CLR" the 6 is no gauge
    for plain, named in pairs:
        follows = layout.tokens[plain.token + 1 : plain.token + 2]
        if follows and follows[0].kind == "cue" and plain is right:
            continue
        whole = plain.unit is None and plain.number.style == "integer" and plain.role is None
        if whole and named.is_gauge and plain.number.value <= 36:
            plain.unit = named.unit


def _read_dashes(layout: Layout) -> None:
    """'1.500-.065-4.500': dashes between an OD, a wall and a radius stand for times signs."""
    for left, right in pairwise(layout.figures):
        if right.role == "noise" or left.role == "noise" or left.is_gauge or right.unit == "D":
            continue
        if not left.number.value or right.number.style not in ("decimal", "fraction"):
            continue
        if right.number.value / left.number.value > _THIN or not _only_dash(layout, left, right):
            continue
        right.link = "times"
        third = layout.after(right)
        if third is not None and _only_dash(layout, right, third):
            third.link = "times"


def _only_dash(layout: Layout, left: Figure, right: Figure) -> bool:
    return layout.text[left.end : right.start].strip(" \t") == "-"
