"""What a whole phrase says of a figure, where no single word beside it does.

'The legs end up 8 inches apart, centre to centre', 'an inch and three-eighths on the inside',
'starts 6 in from the end', 'our bender is good to 2-3/8'. Heard before the words beside a figure.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..naming.as_drawn import is_radius_as_drawn
from ..naming.bores import RADIUS_WORD, hear_bores
from ..naming.called_behind import called_behind
from ..naming.told_centre import told_centre
from ..radii.across_bend import across_bend, is_own_radius, signed_diameter
from ..radii.across_words import CALLED_RADIUS
from ..radii.from_pivot import from_pivot
from ..radii.inside_of_die import inside_of_die
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import RADIUS_ROLES, Role
from ..text.tokens import Token
from .finishes import without_finishes
from .legs_apart import APART_BEFORE, LEGS_AHEAD, ON_CENTRE, RETURNS, is_apart, is_of_legs
from .other_things import hear_other_things
from .phrases_beside import TEMPERS, UNIT, is_named_machine, stands_beside

_BENT = whole_words(
    r"radi(?:us|i) | rad | bend(?:s|ing)? | bent | arc | curve[ds]? | rayon | cintrage | raggio",
    r"curva | radio | bieg\w* | bogen | straal | bocht | coude",
)
_WORD_OF_TUBE = whole_words("tube | od | dia(?:meter)? | ø | rohr | wall | wand | id | bore")
_INSIDE_AFTER = late_pattern(
    r"^[\"'”″ ]{0,3}(?:mm|cm|in|inch(?:es)?)?\s*"
    + any_of(
        r"on the inside\b | in the bore\b",
        r"(?:dia(?:meter)?\s)?inside\b(?!\s(?:rad|r\b|bend|of|dia|measure))",
        r"innen\b(?!\W?(?:biege)?radius) | à l'intérieur | all'interno | por dentro | van binnen",
        "internally",
    )
)
_MEASURED_INSIDE = late_pattern(
    r"\b"
    + any_of(
        r"(?:rohre?|tubes?|tubos?|tubi|buis|buizen|pipe)\b[^.;\d]{0,16}\b(?:innen|inside|dentro"
        r"|intérieur|binnen)",
        "(?:innen|inside|intérieur|interno|interior|binnen) "
        "(?:gemessen|measured|measures|mesuré|misurato|medido|gemeten|it is|is)",
        "(?:gemessen|measured|measures|mesuré|misurato|medido|gemeten) "
        "(?:innen|inside|à l'intérieur|all'interno|por dentro|binnen)",
    )
    + r"\W{0,3}(?:about|ca\.?|circa)?\s*$"
)
_OUTSIDE_AFTER = late_pattern(UNIT + r"(?:por fuera|buitenom|rundherum)\b")
_OF_A_SIZE = late_pattern(r"^er\b(?!\s(?:reihe|jahre))")
"""'63,5er Edelstahl'"""
_ER = late_pattern(r"[ -]?er\b")
"""On the figure's own line: 'radius 75 / Er zitten ...' is Dutch."""
_BIKE_WHEEL = 29
_GERMAN_NOUN = late_pattern(r"^er(?:\s|-)(?:rohr|dorn|biegedorn|stahl|edelstahl|alu|tubo|buis)")
_NAMED = late_pattern(r"^[\"'”″ ]{0,3}(?:mm|in|inch)?\s?(?:o\.?d\b|wall\b|clr\b|outside dia)")
_DEGREES = ("noise:°", "noise:deg", "noise:grad", "noise:degr")
_ANDS = frozenset((",", "and", "&", "/", "or", "und", "et", "y", "e", "en", "oder"))
_ER_RADIUS = late_pattern(r"^er\s+(?:biege)?radi(?:us|en)")
_ER_WALL = late_pattern(r"^er\s+wand")
_TO_EDGE_AFTER = late_pattern(
    UNIT
    + r"(?:\w+\s)?(?:to|on|at|along|of|zur|an der|am|auf der|à|sur|au|al|alla|sul|aan de|tot de)\s"
    + r"(?:the\s|la\s|l['’]|el\s|de\s|der\s)?(?:very\s)?(?P<which>"
    + any_of(
        "outer | outside | far | outermost | inner | inside | near | innermost | extrados",
        "intrados",
        "außenseite | innenseite | außenkante | innenkante | extérieur | intérieur | exterior",
        "interior | esterno | interno | buitenkant | binnenkant | buitenzijde | binnenzijde",
    )
    + r")\b(?P<edge>\s(?:edge|face|line|kante))?(?!\s(?:dia|diameter|od\b))"
)
_ONLY_IS = late_pattern(
    r"(?:\sof the (?:bend|curve|tube)|\s(?:du|de la) (?:coude|courbe|cintre|tube))?\W*"
    r"(?:is|of|ist|von|est|de|es|è|di|van|r)?\W*$"
)
_OUTER_EDGE = late_pattern(r"out|far|extr|auß|ext|exterior|est|buiten")
_OUTER = whole_words(
    r"au(?:ß|ss)endurchmesser | buitendiameter",
    "outside | outer | od | außen | aussen | extérieur | exterior | esterno | buiten | external",
)
_OUTER_BEFORE = late_pattern(
    r"\b(?:außen|aussen|outside|outer|à l'extérieur|extérieur|exterior|esterno|van buiten|buiten"
    r"|por fuera|di fuori|außenrum|buitenom)\s*"
    r"(?:is|ist|=|:)?\s*$"
)
_INNER = whole_words(
    "innen | inside | inner | à l'intérieur | intérieur | interior | interno | binnen | internal"
)
_WALL_NEXT = late_pattern(
    r"^\W{0,3}(?:mm|in|inch)?\W{0,3}(?:and|und|et|y|e|en)?\s?(?:die |la |the |de )?"
    + any_of(
        "wand | wandstärke | wanddicke | wall | pared | paroi | parete | spessore | espesor",
        "épaisseur | wanddikte | thickness",
    )
    + r"\b"
)
_AND_INNER = late_pattern(
    r"(?:^|\W)(?:and|und|et|e|ed|y|en|,|/|;)?\s*"
    + any_of("innen | inside | inner | intérieur | interior | interno | binnen | internal")
    + r"\s*(?:is|ist|sind|dia\w*|ø|=|:)?\s*$"
)
_RADIUS_AS = re.compile(
    r"\b(?:gives?|shows?|states?|calls?|specif(?:y|ies)|lists?|puts?|angibt|gibt|donne|da|indica)\b"
    r"[^.;\d]{0,16}\b(?:radius|rayon|radio|raggio|biegeradius)\b[^.;\d]{0,40}"
    r"\b(?:as|at|mit|comme|como|come)\s*$"
)
_RADIUS_GIVEN = (
    late_pattern(
        r"\b(?:radius|rayon|radio|raggio|straal|biegeradius)\b[^.;\d]{0,60}"
        r"\b(?:mit|with|as|at|avec|con|met|à)\s*$"
    ),
    late_pattern(
        UNIT
        + any_of(
            "angegeben | genannt | vorgegeben | given | specified | stated | indicated | donné",
            "indiqué | indicado | indicato | opgegeven",
        )
    ),
)


def hear_phrases(layout: Layout) -> None:
    """Give figures the role that a phrase around them names."""
    for figure in layout.figures:
        free = figure.role is None and not figure.negated and figure.link != "times"
        measured = from_pivot(*_around(layout, figure)) if free else None
        if measured is not None:
            figure.give(measured, "cue")
    hear_other_things(layout)
    hear_bores(layout)
    for figure in reversed(layout.figures):
        before = layout.before(figure)
        if before is not None and _is_listed_angle(layout, before, figure):
            before.give("noise", "cue")  # "60 and 30 deg"
    for figure in layout.figures:
        if figure.role is None and not figure.negated:
            heard = _may_be_heard(layout, figure)
            role = (_role if heard else _signed_role)(layout, figure)
            if figure.is_gauge and role not in ("wall", "noise"):
                role = None  # "16 gauge, radius to the outside of bend 3-3/8"
            if role is not None:
                figure.give(role, "cue")
            after = layout.after(figure)
            cut = role == "noise" and after is not None and after.link in LISTED
            if layout.tokens[figure.token].cues:
                cut = False  # "copper R250, bend radius 84"
            if after is not None and _NAMED.match(layout.words(after.end, after.end + 16)):
                cut = False  # '30 inches long, 5/8" OD'
            second = layout.after(after) if after is not None else None
            if second is not None and second.link == "times":
                cut = False  # "12 in long, tube 2 x .065"
            if cut and after is not None and (after.link == "range" or after.role is None):
                after.give("noise", "cue")


def _is_listed_angle(layout: Layout, before: Figure, figure: Figure) -> bool:
    """Whether a bare number is joined to one that is said to be degrees, or to a further one."""
    degrees = (figure.unit or "").startswith(_DEGREES) or (
        figure.unit is None and figure.how == "cue" and figure.role == "noise"
    )
    if not degrees or before.role is not None or before.unit is not None:
        return False
    if before.link == "times":
        return False  # "50 x 2, 90°-Bogen"
    ahead = layout.tokens_before(before, 1)
    if layout.tokens[before.token].cues or (ahead and _names_radius(ahead[0])):
        return False  # "R57, 180°", "Radius 63, 90°"
    joint = layout.text[before.end : figure.start].strip().casefold()
    return before.number.style == "integer" and joint in _ANDS and before.number.value <= 180


def _names_radius(token: Token) -> bool:
    return any(cue.role in RADIUS_ROLES and cue.side != "after" for cue in token.cues)


def _may_be_heard(layout: Layout, figure: Figure) -> bool:
    """Whether no sign before a figure says what it is, but for an R that may be a temper."""
    return not layout.tokens[figure.token].cues or figure.number.value in TEMPERS


def _signed_role(layout: Layout, figure: Figure) -> Role | None:
    before, after = _around(layout, figure)
    signs = layout.tokens[figure.token].cues
    across = bool(signs) and signs[0].role == "od"
    alone = across and figure.index and layout.after_in_sentence(figure) is None
    if alone and is_named_machine(before):
        return "noise"  # "Biegezelle max. Ø 52"
    return signed_diameter(layout, figure, before, after)


def _role(layout: Layout, figure: Figure) -> Role | None:
    before, after = _around(layout, figure)
    if _OF_A_SIZE.match(after) and figure.unit is None and _stands_for_size(layout, figure):
        if figure.number.value == _BIKE_WHEEL and not _GERMAN_NOUN.match(after):
            return "noise"  # "for a bike frame, 29er"
        if _ER_RADIUS.match(after):
            return "radius"
        return "wall" if _ER_WALL.match(after) else "od"
    if inside_of_die(layout, figure, before, after):
        return "inside_r"
    if APART_BEFORE.search(before) and is_own_radius(before, after):
        return None  # "legs 1.75 centre to centre, so the bend is .875 CLR"
    across = across_bend(layout, figure, before, after)
    if across is not None:
        return across
    if stands_beside(layout, figure, before, after):
        return "noise"
    if _RADIUS_AS.search(before):
        return "radius"
    if _RADIUS_GIVEN[0].search(before) and _RADIUS_GIVEN[1].match(after):
        return "radius"
    if is_radius_as_drawn(before):
        return "radius"
    told = told_centre(before, after)
    if told is not None and figure.link not in ("times", "slash"):
        return told
    edge = _TO_EDGE_AFTER.match(after)
    if (
        edge
        and (edge["edge"] or layout.says(figure.sentence, _BENT))
        and not _WORD_OF_TUBE.search(before.rpartition(",")[2])
        and not _leads_on(layout, figure, after, edge.end())
    ):
        return "outside_r" if _OUTER_EDGE.match(edge["which"]) else "inside_r"
    if (
        not CALLED_RADIUS.search(before)
        and is_apart(layout, figure, before, after)
        and is_of_legs(layout, figure)
    ):
        return "centres"
    legs = RETURNS.search(after) or RETURNS.search(before) or LEGS_AHEAD.search(before)
    if ON_CENTRE.match(after) and legs:
        return "centres"
    outer = _OUTER_BEFORE.search(before)
    if outer and (
        layout.says(figure.sentence, _INNER)
        or (
            _WALL_NEXT.match(layout.words(figure.end, figure.end + 24)) and not _BENT.search(before)
        )
    ):
        return "od"
    called = called_behind(after)
    if called is not None:
        return called
    if _OUTSIDE_AFTER.match(after) and not RADIUS_WORD.search(before):
        return "od"
    beside_outer = _AND_INNER.search(before) and layout.says(figure.sentence, _OUTER)
    inside = _INSIDE_AFTER.match(after) or _MEASURED_INSIDE.search(before) or beside_outer
    after_it = layout.after(figure)
    whole = after_it is not None and after_it.link == "times"  # "inner: 1.000 x .035"
    if inside and not whole and not RADIUS_WORD.search(before):
        return "id"
    return None


def _stands_for_size(layout: Layout, figure: Figure) -> bool:
    """Whether 'er' is glued to a figure, and that is no wall: 'ein 20x1,5er Rohr'."""
    glued = _ER.match(layout.words(figure.end, figure.end + 4))
    return glued is not None and figure.link != "times"


def _leads_on(layout: Layout, figure: Figure, after: str, end: int) -> bool:
    """'25 x 1.5, radius on the inside 38': the side is the next figure's."""
    behind = layout.after_in_sentence(figure)
    return behind is not None and "," in after[:end] and _ONLY_IS.match(after, end) is not None


def _around(layout: Layout, figure: Figure) -> tuple[str, str]:
    """The sentence's words since the figure before and up to the figure behind, casefolded."""
    first, last = layout.spans[figure.sentence]
    begin, end = layout.tokens[first].start, layout.tokens[last].end
    before, after = layout.before(figure), layout.after(figure)
    if before is not None and before.role != "noise":
        begin = max(begin, before.end)
    if after is not None:
        end = min(end, after.start)
    words = " ".join(layout.words(begin, figure.start).split())
    joined = words + (" " if layout.text[figure.start - 1 : figure.start].isspace() else "")
    behind = layout.words(figure.end, max(figure.end, end))
    return without_finishes(joined), without_finishes(" ".join(behind.split()))
