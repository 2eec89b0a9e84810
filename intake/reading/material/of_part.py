"""Whether a material is that of a part beside the tube, or only a number in an address or a name.

'It gets welded to 304 flanges', 'posts are aluminum', 'our 4140 die block', 'ship to 304 E 2nd St',
'Matt @ 304 Stainless Works': none says what the tube is of.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .of_tool import is_bent_on_tool, words_behind
from .parts import TUBE

_BEFORE, _AFTER = 64, 48
"""Characters looked at before and after the material."""
_PART = any_of(
    r"flanges? | collectors? | brackets? | blocks? | bungs? | gussets? | tabs? | hubs? | adapt[eo]rs?",
    "couplers? | couplings? | reducers? | sleeves? | ferrules? | end ?caps? | caps? | clamps? | feet",
    "fins? | ailettes? | alett[ea] | aletas? | lamellen? | kühlrippen | lamel | koelribben",
    "vbands? | v-bands? | housings? | shackles? | clevis(?:es)? | tanks? | vessels? | hulls?",
    "flansche?n? | anschweißflansch\\w* | stutzen | schellen? | halter(?:ung(?:en)?)? | laschen?",
    "muffen? | kopfplatten? | brides? | collecteurs? | pattes? | colliers? | bridas? | abrazaderas?",
    "soportes? | colectores? | collettor[ei] | staff[ae] | fascett[ae] | flens | flenzen | beugels?",
)
_OBJECT = any_of(
    "manifolds? | headers? | turbos? | mufflers? | frames? | chassis | rails? | posts? | body | deck",
    "engine | heads? | box(?:es)? | pipework | downpipe | catalyst | converter",
    "krümmer | rahmen | behälter | auspuff | collecteur | cadre | cuve | bastidor | depósito | telaio",
    "serbatoio | frame | tank | uitlaat",
)
_OF_WHAT = r"(?:(?:header|exhaust|mounting|weld(?:ed|ing)?|die|end|base|head|turbo|inlet|outlet|thick)[\s-])"
_PART_AFTER = late_pattern(rf"[\s-]{{1,2}}{_OF_WHAT}{{0,2}}{_PART}(?![^\W_])", re.I)
_OBJECT_AFTER = late_pattern(rf"[\s-]{{1,2}}{_OF_WHAT}{{0,2}}(?:{_PART}|{_OBJECT})(?![^\W_])", re.I)
_TUBE_AFTER = late_pattern(rf"[\s-]{{1,2}}(?:[^\W\d_]+[\s-]){{0,1}}{TUBE}(?![^\W_])", re.I)
_LITTLE = (
    r"(?:(?:the|an?|our|my|some|his|her|their|its|this|that|these|existing|heavy|thick|solid|cast|two"
    r"|dem|den|der|die|das|einen?|einem?|unsere?n?|les?|la|des|une?|el|los|las|una?|uno|gli|i|il|de|een)\s)"
)
_WELDED_TO = late_pattern(
    r"\b(?:weld(?:s|ed|ing)?|bolt(?:s|ed|ing)?|braz(?:es?|ed|ing)|solder(?:s|ed|ing)?|clamp(?:s|ed)"
    r"|attach(?:e[sd]|ing)?|mount(?:s|ed|ing)?|connect(?:s|ed|ing)?|join(?:s|ed|ing)|screw(?:s|ed)"
    r"|butt(?:s|ed)|mate[sd]?|flange[sd]|tack(?:s|ed)?|glue[sd]?|fasten(?:s|ed)?|secured?)\s"
    r"(?:(?:it|them|this|these|those|everything|both|ends?|on|up|directly|right|later|together|down|in"
    r"|the|tubes?|pipes?|other|one|each|all)\s){0,4}(?:to|into|onto)\s"
    rf"{_LITTLE}{{0,2}}$",
    re.I,
)
_GOES_TO = late_pattern(
    r"\b(?:goes|go|going|gets?|slides?|slips?|slid|leads?|runs?|feeds?|dumps?|plugs?|fits|is|sits"
    r"|angeschweißt|geschweißt|kommt|soudée?s?|soldad[oa]s?|saldat[oaie]|gelast)\s"
    r"(?:(?:on|over|out|up|back|right|then|later)\s){0,2}"
    rf"(?:to|into|onto|inside|over|on|in|an|auf|à|aux?|a|al|aan|op)\s{_LITTLE}{{0,2}}$",
    re.I,
)
_TOOL_OR_SCREW = any_of(
    "(?:(?:bend|clamp|pressure|wiper) )?dies? | wipers? | fittings? | bolts? | screws? | nuts?",
    "biegeformen? | biegeform | schrauben? | fittinge? | matrices? | raccords? | vis | boulons?",
    "matriz | matrices | racores | tornillos? | matric[ei] | raccordi | viti | bulloni",
    "matrijs | matrijzen | fittingen | bouten | schroeven",
)
"""'The dies are 4140': no material of the tube's, whatever grade is named."""
_PART_IS = late_pattern(
    r"\b(?:brides?|bridas?|flange|collecteurs?|collettor[ei]|fascett[ae]|abrazaderas?|flenzen)\s$|"
    rf"\b(?:{_PART}|{_TOOL_OR_SCREW}|die ?blocks?|posts?|manifolds?|plates?|pads?|base)\s?"
    r"(?:\b(?:is|are|was|were|will be|sind|ist|est|sont|es|son|è|sono|zijn|made)\b|:|\(|\bin\b|\bof\b|\baus"
    r"|\ben\b|\binox\b|\bvan\b|\bdi\b|\bde\b)\s?(?:(?:made|all|also|of|from|in|out|aus|en)\s){0,3}$",
    re.I,
)
# --- no material at all: an address, the name of a firm ----------------------------------------
_STREET_KIND = (
    r"(?:St|Street|Ave|Avenue|Av|Rd|Road|Blvd|Boulevard|Dr|Drive|Ln|Lane|Ct|Court|Pl|Place|Way|Pkwy"
    r"|Parkway|Hwy|Highway|Cir|Circle|Ter|Terrace|Trl|Trail|Pike|Sq|Square|Loop|Row|Industrial)"
)
_STREET_AFTER = late_pattern(
    r"[A-Z]?\s(?:(?:[NSEW]|NE|NW|SE|SW|North|South|East|West)\.?\s)?"
    rf"(?:(?:\d{{1,3}}(?:st|nd|rd|th|ST|ND|RD|TH)|[A-Z][\w.'-]{{0,20}})\s){{1,3}}{_STREET_KIND}(?![^\W_])"
)
_ADDRESSED = late_pattern(
    r"\b(?:(?:ship|deliver|send|mail)(?:ped|ed|ing)?\s(?:(?:it|them|this|all|everything)\s)?to|address(?: is)?"
    r"|located at)\s?:?\s$",
    re.I,
)
_NAME_AFTER = late_pattern(r"\s(?:[NSEW]\.?\s)?(?:[A-Z][a-z]+|\d{1,3}(?:st|nd|rd|th))(?![^\W_])")
_HOUSE = late_pattern(
    r"\b(?:suite|ste|unit|apt|apartment|room|bldg|building|bay|dock|po box|p\.o\. box|hwy|highway"
    r"|route|rte|lot|gate|door|interstate|county road|cr|extension|ext)\.?\s(?:no\.?\s|\w{1,6},\s)?$"
    r"|(?:stra(?:ß|ss)e|str\.|weg|platz|allee|gasse|damm|laan|straat|\brue [^.\d\n]{2,24}"
    r"|\bcalle [^.\d\n]{2,24}|\bvia [^.\d\n]{2,24}|\bavenida [^.\d\n]{2,24})\s(?:n[°º]\s)?$",
    re.I,
)
_FIRM_AFTER = late_pattern(
    r"\s(?:(?:Stainless|Steel|Alloy|Metal|Custom|Tube|Speed)\s)?"
    r"(?:Works|Fab|Fabs|Fabrications?|Fabricators|Fabworks|Welding|Weldworks|Metalworks?|Motorsports?"
    r"|Racing|Customs|Performance|Designs?|Industries|Engineering|Garage|Choppers|Cycles|Shop|Speed\sShop"
    r"|Werks?|Kustoms|Railings|Products|Solutions|Services?|Supply)(?![^\W_])"
)
_AT_FIRM = late_pattern(r"(?:@|\bhere at|\bthis is \w+ (?:at|from|with))\s?$", re.I)
_CAPITAL_AFTER = late_pattern(r"(?:\s[A-Z][a-z]+){1,3}")


def is_of_part(text: str, start: int, end: int) -> bool:
    """Whether the words around a material at that place of ``text`` give it to something else."""
    before = re.sub(r"[ \t\n]+", " ", text[max(0, start - _BEFORE) : start])
    after = re.sub(r"[ \t\n]+", " ", words_behind(text, start, end, _AFTER))
    if _is_address_or_name(text, start, end, before, after):
        return True
    if _TUBE_AFTER.match(after):
        return False
    if _PART_AFTER.match(after) or _WELDED_TO.search(before):
        return True
    if _PART_IS.search(before) and not is_bent_on_tool(before):
        return True
    return bool(_GOES_TO.search(before) and _OBJECT_AFTER.match(after))


def _is_address_or_name(text: str, start: int, end: int, before: str, after: str) -> bool:
    line = text[max(0, start - _BEFORE) : start].rpartition("\n")[2]
    figures = text[start:end].replace(",", "").replace(" ", "").isdecimal()
    if figures and (
        _STREET_AFTER.match(after)
        or _HOUSE.search(line)
        or (_ADDRESSED.search(before) and _NAME_AFTER.match(after))
    ):
        return True
    named = _AT_FIRM.search(before) and _CAPITAL_AFTER.match(after)
    return bool(_FIRM_AFTER.match(after) or named)
