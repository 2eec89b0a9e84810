"""What a whole phrase tells to be no part of a size: a length, a machine, a box, an angle."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from .counted_beside import counts_bends, counts_of_these, is_price_break
from .lengths_of_pieces import is_length_of_pieces, is_straight_or_spoilt
from .tool_itself import is_of_tool

_FINISH = late_pattern(r"^\s?(?:µm\s?|um\s?)?ra\b|^\s?hundred (?:block|and)\b")
"""'0.8 Ra': how smooth it is."""
UNIT = r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\s*"
"""A unit that may stand between a number and the words behind it."""
_RADIUS_WORD = whole_words(
    "radi(?:us|i) | clr | bends? | bent | bending | curve | rayon | cintrage | raggio | curva",
    "radio | biegeradius | bogen | straal | bocht",
)
_ACROSS = late_pattern(UNIT + r"(?:across|wide|tall|high|overall|end to end|von ende zu ende)\b")
_ROUND = whole_words("circle | diameter | curve[ds]? | arc | radius | ring | half | bend | bent")
_WHEELS = late_pattern(
    r"\b(?:interasse|entraxe|distancia entre ejes|achsabstand|asafstand|wheelbase)\b[^.;\d]{0,12}"
    r"\b(?:ruote|roues|ruedas|räder|wielen|wheels)\b[^.;\d]{0,8}$"
)
_ON_A_MACHINE = late_pattern(
    UNIT + r"(?:(?!(?:od|id|wall|clr|radius|rad|die|for|on|to|in|with|and|of|at|by|the|my|our"
    r"|notre|ma|unsere|meine|die|nuestra|mi|nostra|la|onze|mijn|de)\b)"
    r"[a-z-]{2,14}\s){0,2}(?:machine|bender|press|brake|lathe|vise)\b(?![^.;,:]{0,24}[:=])"
)
"""'It's on a 76 mm electric machine.'"""
TEMPERS = frozenset({220, 250, 290})
_COPPER_BEFORE = late_pattern(
    r"\b(?:kupfer|copper|cuivre|cobre|rame|koper|en[ -]1057|cu[ -]?dhp|cu)\w*(?:\s(?:tube|pipe|rohr"
    r"|tubo|buis))?\W*(?:temper|zustand|état|stato|estado|toestand)?\W*$"
)
_HARDNESS = (
    r"(?:(?:half|semi|quarter|full)?[ -]?(?:hard|soft)|hard[ -]?drawn|annealed|weich|halb[ -]?hart"
    r"|hart|écroui|recuit|demi[ -]?dur|dur|mou|(?:semi)?[ -]?duro|recocido|crudo|blando|ricotto"
    r"|incrudito|cotto|half[ -]?hard|zacht|temper|zustand)"
)
_HARD_BEFORE = late_pattern(rf"\b{_HARDNESS}[\s(/=:-]{{0,3}}$")
_HARD_AFTER = late_pattern(rf"^\W{{0,3}}{_HARDNESS}\b")
_ANGLE_BEFORE = late_pattern(
    r"\b(?:(?:none|nothing|never|not|all) (?:over|under|above|past|more than)|bends? at"
    r"|the|a|an|full|ein|eine|der|un|à|one|each)\s$"
)
_ANGLES = frozenset({45, 90, 135, 180, 360})
_FROM_END = late_pattern(
    UNIT
    + r"(?:away\s)?(?:back\s)?"
    + any_of(
        r"(?:in\s)?from (?:the|each|either|one|its|both|this|that) (?:\w+\s)?"
        r"(?:ends?|edges?|weld|face)",
        r"from (?:the )?(?:tangent|tube end) | vom (?:rohr)?ende | vom rand | du bout",
        "del extremo | dal bordo | dall'estremità | van het (?:eind|uiteinde)",
    )
)
_MACHINES = any_of(
    "machine(?:'s| is)? | bender(?:'s| is)? | press(?: is)? | biegemaschine | maschine",
    r"bending (?:cent(?:re|er)|cell)(?!\s?-?(?:line|r\b|rad))",
    r"\w*biege(?:zentrum|zelle|anlage|automat|bank)",
    r"\w*biegemaschine | biegepresse | buigcentrum | centre de cintrage",
    "centro (?:de curvado|di curvatura)",
    "cintreuse | curvadora | dobladora | curvatubi | macchina | buigmachine | buigbank",
)
_NAMED_MACHINE = late_pattern(rf"\b{_MACHINES}\b\W{{0,3}}(?:(?:max|bis|up to|for)\b\W{{0,3}})?$")
_MACHINE_TO = late_pattern(
    rf"\b{_MACHINES}"
    r"\b[^.;:\d]{0,32}?(?:\b(?:(?:max|top)(?:e?s|ed)? out at|capacity (?:is|of)"
    r"|to|till|until|bis|jusqu'à|hasta|fino a|tot|max(?:imal|imum|i|\.)?)"
    r"\s(?:about\s|ca\.?\s)?(?:[øØ]|fi|di[aáà]\w*\.?|durchmesser)?|\s[øØ])\s*$"
)
_OTHER_THING = late_pattern(
    # "he wrote on the carton: 1-1/8, 14 ga": what is written there is the tube
    r"\b(?<!on the )(?<!on a )(?<!on my )(?<!on our )(?<!auf dem )(?<!auf der )(?<!auf einem )"
    r"(?<!sur le )(?<!sur la )(?<!en la )(?<!sulla )(?<!sul )(?<!op de )"
    + any_of(
        r"washers? | o-?rings? | gaskets? | nipples? | bolts? | screws? | spigots? | bushings?",
        r"bearings? | box(?:es)? | crates? | cartons? | pallets? | rollers? | flat bars?",
        r"angle iron | scheiben? | unterlegscheiben? | dichtungen? | rondelles?",
        r"joints? toriques? | arandelas? | juntas? | rondelle | guarnizioni?",
        r"ringen? | kartons? | kisten?",
    )
    + r"\b(?!\s(?:cage|frame|hoop|rack|guard|bracket|handle|rail|arm|stand|support|bed|carrier"
    r"|gate)\b)"
    r",?(?:(?!tube|tubing|pipe|rohr|tubo|buis|mandrel|\bradi(?:us|o)\b|\bclr\b)[^.;,\d]){0,24}$"
)
_ROLL = late_pattern(r"\brollers?\b")
_RADIUS_OF = late_pattern(r"\b(?:radius|rad|clr)\b[^.;\d]{0,12}$")
_RADIUS_BEHIND = late_pattern(
    UNIT + r"(?:cent(?:re|er)[ -]?line\b|(?:to|on) (?:the )?cent(?:re|er)\b|radius\b|rad\b|clr\b)"
)
_MADE_THING = late_pattern(
    r"\b(?:rack|sheet|plate|frame|table|enclosure|cabinet) (?:is|measures|size|of)\b"
    r",?(?:(?!tube|tubing|pipe|rohr|tubo|buis|mandrel)[^.;,\d]){0,24}$"
)
"""'The rack is 400 x 300'; but 'the frame is 2-3/8 OD x .154' and 'the frame is 38 x 2' are
tubes."""
_AS_A_TUBE = late_pattern(
    UNIT + r"(?:o\.?d\b|outside dia|outer dia|diameter|dia\b|wall\b|tub(?:e|ing)\b|pipe\b"
    r"|sch\b|schedule\b|\d{1,2} ?ga\b)"
)
_THIN = Decimal("0.25")
"""A wall is less than that share of its OD."""
_ACROSS_A_HOOP = late_pattern(
    r"\b(?:outside|overall|width|wide|across|span|total)\b[^.;\d]{0,16}"
    r"\b(?:hoop|loop|arch|frame|bow|ring|u|piece|part|bügel|bogen|cintre|arco)\b[^.;,\d]{0,10}$"
)
_BUILDING_WALL = late_pattern(
    r"\b(?:to|from|off|against|along|on|through) (?:the|a|my|our) wall\b[^.;,\d]{0,12}$"
)
_CUT_TO = late_pattern(
    r"\b"
    + any_of(
        "cut (?:off )?(?:to|at)(?: length)? | trimmed to | cropped to | sheared to | sawn to",
        "abgelängt auf | geschnitten auf | zugeschnitten auf | coupés? à | cortad[oa]s? a",
        "tagliat[oaie] a | gezaagd op | standing | stands | reach(?:es)? | travel(?: is| of)?",
    )
    + r"\s*(?:about|ca\.?)?\s*$"
)
_OF_A_TUBE = late_pattern(UNIT + r"(?:round\s)?(?:tub(?:e|ing)|pipe|rohr|tubo|buis|tuyau)\b")
"""'a soap box racer with 3/4 inch tubing'"""
_OF_TUBE = late_pattern(
    UNIT
    + any_of(
        r"of (?:straight |spare |raw )?(?:tube|tubing|pipe|material|stock|straight|length|hose)\b",
        "de (?:tube|tubo|tuyau) | di tubo | van de buis | rohr(?:länge|stück) | lang\\b | long\\b",
        r"(?:is |ist )?(?:too short|enough|long enough|spare|left over|to hold)\b",
    )
)
_RATED = late_pattern(
    r"\b"
    + any_of(
        "rated(?: to| for| at)? | mill certs? (?:run|runs|say|show) | certs? (?:run|runs|say|show)",
        "ausgelegt (?:für|bis) | tolerances? (?:is|are|of)",
    )
    + r"\s*(?:about|ca\.?)?\s*$"
)
_LARGEST_IN = 4
_LONG_MM, _LONG_IN = 120, 8
"""A tube of more is not what this trade bends, and "410 mm of tube" is a length."""


_AFTER_BENDING = any_of(
    r"(?:after|once|when) (?:it is |it's )?(?:bending|bent|the bend) | nach dem biegen",
    "après (?:le )?cintrage | después del? (?:curvado|doblado) | dopo (?:la )?(?:curvatura|piega)",
    "na (?:het )?buigen | (?:at|on|in) the (?:extrados|outside of the bend) | an der außenfaser",
)
_LEFT_AFTER = late_pattern(rf"^[^.;,\d]{{0,20}}\b{_AFTER_BENDING}\b")
_LEFT_BEFORE = late_pattern(
    rf"\b(?:wall|thickness|thinning|wand\w*|épaisseur|paroi|espesor|pared|spessore|parete)\b"
    rf"[^.;,\d]{{0,16}}\b{_AFTER_BENDING}\b[^.;,\d]{{0,24}}$"
)


def stands_beside(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    """Whether the words around a figure, casefolded, say that it measures another thing."""
    return (
        _is_angle(figure, before, after)
        or _FINISH.match(after) is not None
        or _is_temper(layout, figure, before, after)
        or _is_length(layout, figure, before, after)
        or _is_of_machine(before, after)
        or counts_of_these(figure, before, after)
        or counts_bends(layout, figure)
        or any(words.search(before) for words in (_BUILDING_WALL, _CUT_TO, _WHEELS, _RATED))
        or (
            _OTHER_THING.search(before) is not None
            and _OF_A_TUBE.match(after) is None
            and not _is_radius_of_roll(before, after)
        )
        or is_price_break(layout, figure, before)
        or _is_left_after_bending(before, after)
        or _is_of_made_thing(layout, figure, before, after)
        or is_of_tool(layout, figure, before, after)
    )


def _is_radius_of_roll(before: str, after: str) -> bool:
    """'My roller has radius 90 mm in axis of tube': the roll that the tube is drawn round."""
    return _ROLL.search(before) is not None and (
        _RADIUS_OF.search(before) is not None or _RADIUS_BEHIND.match(after) is not None
    )


def _is_left_after_bending(before: str, after: str) -> bool:
    """'The wall must not go under 1.2 mm after bending': what is left, not what is bought."""
    wall = _LEFT_BEFORE.search(before) is not None
    return wall or (_LEFT_AFTER.match(after) is not None and not _RADIUS_WORD.search(before))


def _is_of_made_thing(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    if not _MADE_THING.search(before) or _AS_A_TUBE.match(after):
        return False
    second = layout.after_in_sentence(figure)
    if figure.number.style in ("decimal", "mixed") and figure.number.value <= _LARGEST_IN:
        return False  # "the frame is 1.5 and the rack 1.25, both .065 wall"
    if second is None or second.link != "times":
        return second is None or not second.is_gauge
    return second.number.value >= figure.number.value * _THIN


def _is_angle(figure: Figure, before: str, after: str) -> bool:
    """'after the 180.'"""
    bare = figure.unit is None and figure.number.value in _ANGLES
    return bare and _ANGLE_BEFORE.search(before) is not None and not after.strip(" .,;)")


def _is_length(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    if _FROM_END.match(after) or _ACROSS_A_HOOP.search(before):
        return True
    if is_length_of_pieces(before, after) or is_straight_or_spoilt(before, after):
        return True
    if figure.number.value < (_LONG_IN if figure.unit == "in" else _LONG_MM):
        return False
    across = _ACROSS.match(after) and not layout.says(figure.sentence, _ROUND)
    return bool(across or _OF_TUBE.match(after))


def is_named_machine(before: str) -> bool:
    """Whether nothing but 'max.' stands between a bending machine and the sign of a diameter."""
    return _NAMED_MACHINE.search(before) is not None


def _is_of_machine(before: str, after: str) -> bool:
    reach = _MACHINE_TO.search(before) and not _RADIUS_WORD.match(after.lstrip(' "'))
    return bool(reach or _ON_A_MACHINE.match(after))


def _is_temper(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    """'Kupferrohr R220', '(R290)', 'half hard R250': a temper of copper tube (EN 1057), where no mm
    stands."""
    written = layout.text[figure.start : figure.end]
    if figure.number.value not in TEMPERS or not written.upper().startswith("R"):
        return False
    bracket = layout.text[max(0, figure.start - 1) : figure.start] == "("
    if bracket or _COPPER_BEFORE.search(before) is not None:
        return True
    return _HARD_BEFORE.search(before) is not None or _HARD_AFTER.match(after) is not None
