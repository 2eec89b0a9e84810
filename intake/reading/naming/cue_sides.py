"""Looking left and right of a figure for the word that says what it is."""

from __future__ import annotations

from dataclasses import dataclass

from ..text.cue_fillers import FILLER_LEFT, NEW_VALUE, VALUES
from ..text.cues import Cue
from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES


@dataclass(frozen=True, slots=True)
class Found:
    """A cue beside a figure."""

    token: int
    """Index of its token."""
    cue: Cue
    distance: int
    """How far away: 0 is touching."""


_FARTHEST_LEFT = 5
_FARTHEST_RIGHT = 2
_LONGEST_BRACKET = 9
WRAPPED = 48
"""A line of more characters was broken by its length, not by its writer."""
_OF_ORDER = word_set("same that this")
_WHOLE_LIST = word_set("all both each alle beide")
_FILLER_RIGHT = _WHOLE_LIST | word_set(
    """of the in nominal nom - ~ actual mm inch inches our your ] max min by er ers apart de di du d
    von van"""
)
QUALIFIERS = word_set(
    """center centre centro mittig centres aussen außen innen outside inside extérieur intérieur
    esterno interno buiten binnen mitte inner outer"""
)
"""Words that say which radius or diameter it is, between the noun and its number."""
_NUMBERED = word_set(": = no nr # . - (")
_LOOSE = word_set("in on with for by at , . )")
_COMPARED = word_set("than more less tighter smaller")
COPULA = word_set(
    "son sono sind zijn sont is are was be = : ist beträgt bedraagt est es è will equals measures"
)
_ARTICLES = word_set("the der die das den le la les el il lo de het our unser")
_STANDS = word_set("steht liegt stays remains will has hangs reste queda resta blijft staat volgt")
_MOVING = word_set("moving moved move stepping stepped step bumping bumped jumping jumped")
_ON = word_set("on at @ auf")
_OF = word_set("of der des de van")
_OF_THAT = word_set("van voor")
"""Before these 'die' is the Dutch 'the one'."""
_GOES = word_set(
    "go goes going fit fits fitting slip slips slide slides mandrel plug used run runs works work",
    "sits sit",
)
_COLD_ROLLED = "cr"
"""The centre radius, too: 'CR 57'."""
_MAY_BE_OF_TUBE = frozenset(
    ("wheel", "wheels", "rim", "engine", "axle", "axles", "target", "hub", _COLD_ROLLED)
)
_WALLS_ACROSS = 6
_MEASURED_TO = word_set("measured gemessen mesuré medido misurato gemeten taken")
_OTHER_THINGS = frozenset((
    "old mandrel", "mandrel body", "mandrel dia", "mandrel diameter", "capacity", "max capacity",
    "maximum capacity", "rod", "mandrel rod", "draw bar", "drawbar", "thread", "shank", "drill",
    "bolt", "ball", "balls", "wheel", "washer", "bar", "shaft", "pin", "hole",
))  # fmt: skip

_TUBE_NAMED = ("tube ", "tubing ", "pipe ", "rohr ")
_KINDS = frozenset(("ball", "balls", "plug"))


def names_other_thing(layout: Layout, at: int) -> bool:
    """Whether the token is a rod, a thread, a machine's capacity: things with diameters."""
    return layout.tokens[at].text in _OTHER_THINGS


def cue_left(layout: Layout, figure: Figure, used: set[int]) -> Found | None:
    """The cue before a figure that speaks of it, with nothing but filler words between.

    ``used`` holds the tokens of cues that have their figure already.
    """
    distance = 0
    passed: set[str] = set()
    crossed = False  # a label alone on the line above
    at = figure.token - 1
    while at >= 0 and distance <= _FARTHEST_LEFT:
        token = layout.tokens[at]
        if token.text == "up to" and figure.link == "range":
            return None  # "walls from .049 up to .065"
        if token.text == "up to" and at and layout.tokens[at - 1].text in _MOVING:
            return None  # "now I'm moving up to 1.5 x .095"
        if token.kind == "cue":
            if at in used or (layout.sentence_of[at] != figure.sentence and not crossed):
                return None
            if _is_kind_of_mandrel(layout, at):
                return None
            if not _is_aside(layout, at, passed):
                cue = _spoken_on(layout, at, passed)
                if token.text in _MAY_BE_OF_TUBE and begins_tube(layout, figure):
                    return None
                if token.text == _COLD_ROLLED and _is_of_steel(layout, figure):
                    return None
                return Found(at, cue, distance) if cue is not None else None
            distance += 1
        elif token.kind == "line":
            # "Der Radius / ist außen gemessen 160 mm" is a sentence that was wrapped.
            if not passed & COPULA:
                if not _labels_next_line(layout, at - 1) and not _is_wrapped(layout, at, distance):
                    return None
                if _ends_named(layout, figure):
                    return None
                crossed = True
        elif token.kind == "gap" or token.text in (":", "="):
            pass
        elif token.text == ")" and (bracket := _bracket_before(layout, at)):
            distance += 1  # "radio de curvatura (a eje) de 67 mm"
            at = bracket
        elif token.text == "," and distance <= 1 and (opened := _aside_before(layout, at)):
            distance += 1  # "radius, taken to the middle of the tube, is 5 in"
            at = opened
        elif token.text == "," and distance == 0 and _opens_clause(layout, at - 1):
            distance += 2  # "its true outside size, five eighths"
        elif token.kind in ("word", "punct") and (
            token.text in FILLER_LEFT or (token.text in NEW_VALUE and passed & VALUES)
        ):
            distance += 2 if token.text in (",", ".", ")") else 1
            passed.add(token.text)
        elif token.kind == "material" and distance <= 1:
            distance += 1  # "wall 304 .065", "tube alu 6060 de 40"
        else:
            return None
        at -= 1
    return None


def _bracket_before(layout: Layout, at: int) -> int:
    """Where the bracket that closes at ``at`` opens, if it holds a few words and no number; 0."""
    for back in range(at - 1, max(0, at - _LONGEST_BRACKET), -1):
        token = layout.tokens[back]
        if token.text == "(":
            return back
        if token.kind == "cue" and "(" in layout.text[token.start : token.end]:
            return back + 1  # "radius (to the outside of the tube)": the bracket is in the cue
        if token.number is not None or token.kind in ("line", "para", "material"):
            break
    return 0


def _aside_before(layout: Layout, at: int) -> int:
    """Where the comma stands before the words that the one at ``at`` ends, if they only tell where
    a length is measured to; 0."""
    if not any(cue.side == "after" for cue in layout.tokens[at - 1].cues):
        return 0
    for back in range(at - 2, max(0, at - _LONGEST_BRACKET), -1):
        token = layout.tokens[back]
        if token.text == ",":
            return back
        if token.text not in FILLER_LEFT and token.text not in _MEASURED_TO:
            break
    return 0


def _is_aside(layout: Layout, at: int, passed: set[str]) -> bool:
    """Whether the cue at ``at`` only qualifies another before it."""
    text = layout.tokens[at].text
    before = layout.tokens[at - 1] if at else None
    if text in ("bend", "bends", "curve") and before is not None and before.text in ("the", "of"):
        return True  # "to the inside of the bend is 5 in"
    if text in QUALIFIERS or _only_after(layout.tokens[at].cues):
        named = before is not None and any(
            cue.role in RADIUS_ROLES or cue.role == "noise" for cue in before.cues
        )
        if named or _only_after(layout.tokens[at].cues):
            return True  # "der Radius ist außen 160 mm"
    if text == "order" and before is not None and before.text in _OF_ORDER:
        return True  # "the radii are in the same order 60, 75 and 90"
    return text == "no" and bool(passed & _COMPARED)  # "CLR of no more than 4.5"


def _only_after(cues: tuple[Cue, ...]) -> bool:
    """Whether a cue only ever follows its number: "all'asse", 'on centre'."""
    return all(cue.side == "after" for cue in cues)


def _spoken_on(layout: Layout, at: int, passed: set[str]) -> Cue | None:
    """What the cue at ``at`` says of a number behind it, or None where it speaks of another."""
    cue = next((cue for cue in layout.tokens[at].cues if cue.side != "after"), None)
    if cue is None or (layout.tokens[at].text == "die" and passed & _OF_THAT):
        return None  # "die van 26,9 hebben we niet meer nodig"
    if cue.role == "noise":
        if passed & COPULA and is_complement(layout, at):
            return None
        counted = at > 0 and layout.tokens[at - 1].block == "count"
        if counted and passed & _OF:
            return None  # "400 lengths of 20 x 1.5"
        if passed & _LOOSE or ("of" in passed and layout.tokens[at].text.startswith("wall ")):
            return None  # "bends in 2 inch sch 40", "the wall factor of 1.75 x .083"
        if cue.side == "before" and passed - _NUMBERED:
            return None  # "the radius in our drawing is 130 mm": not drawing 130
    if cue.role == "id" and "of" in passed:
        return None  # "for the inside of 63.5 x 1.5 tube"
    if cue.role == "id" and at and layout.tokens[at - 1].text in _GOES:
        return None  # "a mandrel to go inside 3/8 x .049"
    of_tube = layout.tokens[at].text.startswith(_TUBE_NAMED)  # "handle bar tube dia 22.2"
    if cue.role in ("od", "id") and at and not of_tube and names_other_thing(layout, at - 1):
        return Cue("noise")  # "max capacity fi 51"
    return cue


def _labels_next_line(layout: Layout, at: int) -> bool:
    """Whether a line ends with a label for the line below: 'OD:', or a cue that stands alone."""
    if at < 0 or layout.tokens[at].kind not in ("cue", "punct"):
        return False
    alone = at == 0 or layout.tokens[at - 1].kind in ("line", "para")
    return alone or layout.tokens[at].text in (":", "=", "?")


def _ends_named(layout: Layout, figure: Figure) -> bool:
    """'What wall, and what radius? / 1.5 wall': the word that ends its line names the figure."""
    behind = layout.tokens[figure.token + 1 : figure.token + 3]
    if not behind or not any(cue.role in LENGTH_ROLES for cue in behind[0].cues):
        return False
    return len(behind) == 1 or behind[1].kind in ("line", "para", "punct")


def _is_wrapped(layout: Layout, at: int, distance: int) -> bool:
    """Whether the line that ends there was broken by its length: '..., wall thickness / 3, T6'."""
    end = layout.tokens[at].start
    begin = layout.text.rfind("\n", 0, end) + 1
    return not distance and len(layout.text[begin:end].strip()) >= WRAPPED


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


def is_complement(layout: Layout, at: int) -> bool:
    """Whether a cue only completes another: '... of the two legs'."""
    return any(token.text in _OF for token in layout.tokens[max(0, at - 3) : at])


def _is_kind_of_mandrel(layout: Layout, at: int) -> bool:
    """'MANDREL, BALL, 1.250 OD X .065 W X 2.500 CLR': as lists of parts have it, noun first."""
    ahead = [token.text for token in layout.tokens[max(0, at - 2) : at]]
    return layout.tokens[at].text in _KINDS and ahead == ["mandrel", ","]


def begins_tube(layout: Layout, figure: Figure) -> bool:
    """Whether an OD with its wall begins there: '1.5 x .065', not '2 x 1/4 x 3 long'."""
    wall, after = layout.after(figure), None
    if wall is None or wall.link != "times" or figure.link == "times":
        return False
    after = layout.after(wall)
    if after is not None and after.link == "times":
        return False
    return wall.is_gauge or wall.number.value * _WALLS_ACROSS <= figure.number.value


def _is_of_steel(layout: Layout, figure: Figure) -> bool:
    """'16 ga CR 1.5 OD': a word behind the figure says what it is, or another names the radius."""
    before, right = layout.before(figure), cue_right(layout, figure)
    if before is not None and before.is_gauge:
        return True
    if right is not None and right.distance == 0 and right.cue.role in LENGTH_ROLES:
        return True
    return any(
        cue.role in RADIUS_ROLES and token.text != _COLD_ROLLED
        for token in layout.tokens
        for cue in token.cues
    )


def _opens_next_line(layout: Layout, at: int, distance: int) -> bool:
    """'... Four inch / centerline.': a cue that a broken line carries over, and no label there."""
    cue, behind = [*layout.tokens[at + 1 : at + 3], None, None][:2]
    if cue is None or cue.kind != "cue" or not _is_wrapped(layout, at, distance):
        return False
    return behind is None or (behind.number is None and behind.text not in (":", "=", "is"))


def cue_right(layout: Layout, figure: Figure) -> Found | None:
    """The cue behind a figure that speaks of it: '.095 wall', '1.75 304 OD'."""
    distance = 0
    at = figure.token + 1
    while at < len(layout.tokens) and distance <= _FARTHEST_RIGHT:
        token = layout.tokens[at]
        following = layout.tokens[at + 1] if at + 1 < len(layout.tokens) else None
        after = following.text if following is not None else ""
        if token.kind == "cue":
            joined = layout.after(figure) if token.text == "up to" else None
            if joined is not None and joined.link == "range":
                return None
            cue = next((cue for cue in token.cues if cue.side != "before"), None)
            if token.text == "only" and layout.tokens[figure.token - 1].text in _ON:
                return None  # "48.3 x 2 on 120 only"
            if layout.tokens[at - 1].text in _ARTICLES and after in COPULA | _STANDS:
                return None  # "42.4 x 2.6 P235 the radius is still open"
            bracket = layout.tokens[at - 1].text == "("  # "Ø38 (tol. ±0.2)"
            if cue is None or (cue.role == "noise" and (distance or bracket)):
                return None  # '0.058" - the weight guys say': not a weight
            return Found(at, cue, distance)
        if token.kind == "gap" or (token.kind == "line" and _opens_next_line(layout, at, distance)):
            pass
        elif token.kind == "material" and distance == 0:
            distance += 1  # "1.75 304 OD"
        elif token.text == "(" and distance == 0:
            if following is None or following.kind != "cue":
                return None  # "57 mm (Mitte)" goes on
        elif token.text == ")" and figure.link == "restate" and distance == 0:
            pass  # '5.25" (133.35mm) centerline radius'
        elif token.text == "," and after in _MEASURED_TO:
            # "4-1/2, measured to the middle of the pipe", perhaps wrapped
            wrapped = at + 2 < len(layout.tokens) and layout.tokens[at + 2].kind == "line"
            at += 2 if wrapped else 1
        elif token.text == "," and after in _WHOLE_LIST:
            pass  # "76.2, 101.6 and 152.4, all centre line"
        elif token.kind in ("word", "punct") and token.text in _FILLER_RIGHT:
            distance += 1
        else:
            return None
        at += 1
    return None
