"""Whether a material is the tube's, or that of a mandrel, of balls, of something in the yard."""

from __future__ import annotations

import re

from ....rules.request import Material
from ...late_pattern import late_pattern
from .marks import marks_the_tube

_BEFORE, _AFTER = 48, 40
"""Characters looked at before and after the material."""

_MANDREL = r"(?:mandrels?|mandrin|mandril|mandrino|doorns?|dorne?|biegedorne?|dornen)"
_OTHER_TOOL = (
    # "Aluminium. Die Wand ist ..." is German
    r"(?:(?:bend\s|clamp\s|wiper\s)?dies?(?!\s(?:wand|rohr|radi|dorn|bieg|stück|maße|teile|bögen))|wipers?|balls?|kugeln?|formers?|tooling|tools?|rods?|"
    r"shanks?|plugs?|nose|links?|inserts?|bushings?|bearings?)"
)
_OTHER_THING = (
    r"(?:yards?|mills?|suppliers?|dealers?|merchants?|stockists?|plates?|sheets?|angles?|bars?|"
    r"flats?|flat\sbars?|wire|racks?|shelf|shelves|shelving|buildings?|warehouse|"
    r"service\scent(?:er|re)s?|wool|brush|tables?|bench|toe|shops?|wheels?|compan(?:y|ies)|inc|llc|"
    r"ltd|gmbh|ag|corp|co|corporation|fabricat(?:ion|ions|ors?|ing)|industries|group|sa|spa|bv|ab|"
    r"look|coloured|colored|effect|optik|tone|plated|plating|coated|coating|finish|grease|lube"
    r"|lubricants?|disulfide|drum|band|"
    r"strap(?:ping)?|bolts?|screws?|handel|bau|trading|beams?|roofs?|castings?|forgings?|string|"
    r"cable|rope|fittings?|nuts?)"
)
_KIND_OF_TOOL = r"(?:(?:bending|ball|plug|bend|hard|flexible|segmented)\s)?"
_THING_AFTER = late_pattern(
    rf"[\s-]{{1,2}}{_KIND_OF_TOOL}(?:{_OTHER_TOOL}|{_OTHER_THING})(?![^\W_])", re.I
)
# 'stainless mandrel bends' are bends, 'steel mandrel' is a mandrel of steel.
_MANDREL_AFTER = late_pattern(
    rf"[\s-]{{1,2}}{_KIND_OF_TOOL}{_MANDREL}(?!\s(?:bend|bends|bent|bending|for|tubing|tube))"
    r"(?![^\W_])",
    re.I,
)
# 'Edelstahl Schmidt GmbH' sells it; the firm below a mail says nothing of the tube.
_FIRM_AFTER = late_pattern(
    r"[ -](?:[A-ZÄÖÜ&][\w&.-]{0,20} ){1,3}(?:GmbH|AG|KG|OHG|e\. ?K\.|Ltd|Inc|LLC|Corp|B\.?V|SpA|"
    r"S\.p\.A|Srl|S\.r\.l|SARL|S\.L)(?![^\W_])"
)
_TOOL_STEEL = late_pattern(
    r"\b(?:tool|hardened|hard|chromed|chrome|hard-chrome|hard-chromed|chrome-plated|nitrided|"
    r"spring|"
    r"gehärteter|gehärtetem|verchromter|hartverchromter|high\sspeed|gehard|temprado|trempé|cast|"
    r"scrap|d2|a2|h13|o1|s7)[\s-]{1,2}$",
    re.I,
)
_MADE_OF = late_pattern(
    rf"\b(?:{_MANDREL}|{_OTHER_TOOL})\s(?:(?:is|are|be|to|should|shall|must)\s){{0,3}}(?:made\s)?"
    r"(?:in|of|from|out\sof|aus|en|de|di|van|is|are|be|materials?)\s?:?\s"
    r"(?:(?:hardened|hard|chromed|either|the|bronze\sor)\s){0,2}$"
    r"|\bbronze\s(?:or|oder|ou|vs\.?|versus)\s(?:[^\W\d_]{3,12}\s){0,2}$",
    re.I,
)
_BRONZE = late_pattern(
    r"[\s-]{1,2}bronzes?(?![^\W_])|\s(?:or|oder)\s(?:\w{1,10}\s)?bronze(?![^\W_])", re.I
)
_LABEL_NEXT = late_pattern(
    r"[ \t]*\n[ \t]*[^\W\d_][\w'./]{0,16}(?:[ \t][\w'./]{1,16}){0,3}[ \t]?(?:[:=]|[–-]\s)"
)
_LABELLED = late_pattern(
    r"(?:^|\n)[ \t]*(?:tube\s)?(?:mat|matl|mat'l|material|alloy|grade|werkstoff|mati[èe]re"
    r"|mat[ée]riau|materiale|materiaal)\.?"
    r"(?:[ \t]{0,3}[:=–-][ \t]{0,3}|[ \t]{1,3})$",
    re.I,
)
"""'Material: brass', and on the next line 'Mandrels needed: 4': the brass is no mandrel's."""
_BENT_ON = late_pattern(
    r"\b(?:on|over|round|around|auf|um|sur|autour de|sobre|en|su|op|om)\s"
    r"(?:the|that|this|our|my|a|one|de[mnr]|demselben|denselben|dasselbe|dieselbe|la|le|l[ao]s?|el"
    r"|il|lo|het|de|dezelfde|un[ae]?|een|ein(?:e[mnr]?)?)\s(?:[^\W\d_]{2,12}\s){0,2}"
    r"(?:dies?|formers?|tooling|tools?|werkzeug|matrize|biegeform|form|forme|matrice|outil|matriz"
    r"|stampo|matrijs|gereedschap)\s(?:is|are|ist|sind|est|sont|es|son|è|sono|zijn)\s"
    r"(?:(?:in|of|aus|en|de|di|van)\s)?$",
    re.I,
)
"""'The 2 x .083 on that same die is mild': the tube is."""
_OF_BEFORE = late_pattern(
    r"\b(?:(?:the|our|my|your|his|that|this)\s)?(?:last|old|previous|former|other|existing|current)\s"
    r"(?:(?:one|guy|fell[ao]w?|shop|supplier|vendor|maker|bloke|outfit|mandrel)(?:['’]?s)?"
    r"(?:\s(?:we|i)\s(?:have|had|got|use|used))?)\s(?:one\s|mandrel\s)?(?:was|were|is|are)\s"
    r"(?:just\s|only\s|plain\s|made\s|of\s|from\s|in\s|a\s)*$"
    r"|\b(?:der|unser|mein)\s(?:alte|letzte|bisherige|vorige)\s(?:dorn\s)?(?:ist|war)\s(?:aus\s)?$"
    r"|\bl['’](?:ancien|actuel)\s(?:mandrin\s)?(?:est|était)\s(?:en\s)?$"
    r"|\bel\s(?:viejo|anterior|actual)\s(?:mandril\s)?(?:es|era)\s(?:de\s)?$"
    r"|\bil\s(?:vecchio|precedente|attuale)\s(?:mandrino\s)?(?:è|era)\s(?:di\s|in\s)?$"
    r"|\bde\s(?:oude|vorige|huidige)\s(?:doorn\s)?(?:is|was)\s(?:van\s)?$",
    re.I,
)
_WORE = late_pattern(
    r"\s(?:and|but|und|et|y|e|en|,)?\s?(?:it\s|that\s|er\s|il\s|hij\s)?(?:gall|scratch|scor|mark|rust|wore|wear|stuck"
    r"|pick(?:ed|s)\sup|fraß|fress|verkratz|griffe|ray|raya|graff|kras)",
    re.I,
)
"""'Last fella's was steel and it galled': of a mandrel, whatever its tube is."""
# Nobody makes a mandrel of stainless, moly or aluminium: 'a moly mandrel' is one for moly tube.
_OF_MANDRELS = (Material.CARBON_STEEL, Material.BRASS, Material.OTHER)


def is_about_tool(text: str, start: int, end: int, *, family: Material, graded: bool) -> bool:
    """Whether the material is not the tube's: 'hardened steel mandrel', 'aluminium bronze',
    'brass balls', 'steel yard', 'nickel plated'.

    A grade before 'mandrel' stays the tube's ('a 304 mandrel' is a mandrel for 304), unless the
    steel is called a tool steel.
    """
    before = re.sub(r"\s+", " ", text[max(0, start - _BEFORE) : start])
    after = re.sub(r"\s+", " ", words_behind(text, start, end, _AFTER))
    steel = family is Material.CARBON_STEEL
    if (steel and _TOOL_STEEL.search(before)) or _BRONZE.match(after):
        return True
    if graded:
        return False
    if _FIRM_AFTER.match(after):
        return True
    if steel and _OF_BEFORE.search(before) and _WORE.search(after):
        return True
    if steel and marks_the_tube(before, after):
        return True
    of_mandrels = family in _OF_MANDRELS and (
        _MANDREL_AFTER.match(after) or (_MADE_OF.search(before) and not is_bent_on_tool(before))
    )
    return bool(of_mandrels or _THING_AFTER.match(after))


def is_bent_on_tool(before: str) -> bool:
    """Whether the tool named last before a material is only what its tube is bent on."""
    return _BENT_ON.search(before) is not None


def words_behind(text: str, start: int, end: int, many: int) -> str:
    """So many characters behind a material; only its line, where the next has a label of its own or
    the material is what a label names."""
    after = text[end : end + many]
    labelled = _LABELLED.search(text[max(0, start - _BEFORE) : start])
    return after.partition("\n")[0] if labelled or _LABEL_NEXT.match(after) else after
