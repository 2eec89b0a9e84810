"""What measures the tool itself: 'mandrel 45 mm dia', 'the old one is worn to .560'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_A_BODY = late_pattern(
    r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\s*(?:im\s|in\s|de\s|di\s)?"
    r"(?:durchmesser|diam\w*|di[áà]m\w*|dia\b|ø|body|long|lang)"
)
"""A mandrel's own diameter; "the old one was 1.75 x .095" is a tube."""
_OLD_TOOL = late_pattern(
    r"\b(?:the old (?:one|mandrel)|der alte(?: dorn)?|le vieux|l'ancien|el viejo|il vecchio"
    r"|de oude)\s(?:hat|has|had|is|was|measures|fait|mide|misura|heeft|war|ist)\b[^.;\d]{0,24}$"
)
_ROD_ACROSS = late_pattern(
    r"\b"
    + any_of(
        "shafts? | rods? | spindles? | arbors? | \\w*stange | \\w*welle",
        "\\w*schaft | tige | varilla | vástago | barra | asta | codolo | gambo | \\w*stang",
    )
    + r"\b(?:(?!\b(?:tub|rohr|buis|pipe))(?:[^.;,:\d]|m\d{1,2}\b)){0,48}"
    r"\b(?:diameter|durchmesser|dia|diam[èe]tre|di[áa]metro)\b\s?(?:is|of|von|ist|de|est|es|di|è|van"
    r"|=|:)?\s*$"
)
"""'Shaft of our machine has thread M20 and diameter 36': what the mandrel is screwed to."""
_WORN = late_pattern(
    r"\b"
    + any_of(
        r"(?:worn|wore|wears|ground|turned|polished)\s(?:down\s)?to",
        r"(?:mandrel|plug|nose|ball)\s(?:now\s)?(?:is\s)?(?:now\s|only\s)?(?:down to|measures"
        r"|measured|mics|mikes|miked|calipers|reads)(?:\s(?:at|out at|only|just|about|now))*",
        r"(?:dorn|dornkopf)\s(?:hat|misst)\s(?:nur\s)?(?:noch|jetzt)(?:\snur)?",
        r"usée? à | gastado a | desgastado a | consumat[oa] a | versleten tot",
    )
    + r"\s*(?:about|ca\.?|approx\.?|the)?\s*$"
)
_WORN_BEHIND = late_pattern(r"^\W{0,3}(?:mm|in)?\s?(?:abgenutzt|verschlissen|abgeschliffen)\b")
_TOOL_BEFORE = late_pattern(
    r"\b(?:mandrel|plug|dorn|mandrin|mandrino|mandril|doorn)\s(?:is\s|of\s)?$"
)
_TOOL_ACROSS = late_pattern(
    r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\s*(?:durchmesser|diam\w*|di[áà]m\w*|dia\b|ø)"
)
_TUBE_BEHIND = late_pattern(
    r"^\W{0,3}(?:\w{1,24}\W{1,3}){0,6}?(?:tub(?:e|es|ing)|pipe|rohr|tubo|buis|tuyau)\b"
)
"""'a mandrel 57 mm dia 304 tube': what is bent stands behind its diameter."""
_FOR_BEHIND = late_pattern(r"\b(?:for|to|für|zum|pour|para|per|voor)\b")
_WALL_BEHIND = late_pattern(
    r"^\W{0,3}(?:mm|in|inch)?\W{0,3}(?:wall|thick|wt\b|wand|dick|épais|paroi|pared|espesor|parete"
    r"|spess|wanddik)"
)


def is_of_tool(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    """Whether the words around a figure, casefolded, say that it measures a mandrel."""
    if _OLD_TOOL.search(before) is not None and _A_BODY.match(after) is not None:
        return True
    if _ROD_ACROSS.search(before) is not None:
        return True
    return _is_across(layout, figure, before, after) or _is_worn(layout, figure, before, after)


def _is_across(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    across = _TOOL_ACROSS.match(after) if _TOOL_BEFORE.search(before) else None
    if across is None:
        return False
    behind = after[across.end() :]
    if _FOR_BEHIND.search(behind):
        return True  # "a mandrel 45 mm dia for 48.3 tube"
    if _TUBE_BEHIND.match(behind):
        return False
    following = layout.after_in_sentence(figure)
    if following is None:
        return True
    # "a mandrel 20 mm dia 2.5 mm wall", "a mandrel 1-5/8 dia 11 gauge"
    wall = _WALL_BEHIND.match(layout.words(following.end, following.end + 16))
    return not (following.is_gauge or wall)


def _is_worn(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    """'Old mandrel is worn to .560': the tool as it is; 'worn to 1.5 x .065' would be a tube."""
    following = layout.after_in_sentence(figure)
    if following is not None and following.link == "times":
        return False
    if before.endswith(("auf", "auf ")):
        return _WORN_BEHIND.match(after) is not None
    return _WORN.search(before) is not None
