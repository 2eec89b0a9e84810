"""What stands around a material: whether figures are a grade at all, and whether it is wanted.

Only a bounded stretch before and after is ever looked at.
"""

from __future__ import annotations

import re
from functools import lru_cache

from ...late_pattern import late_pattern
from .grades import Strength

_BEFORE, _AFTER = 48, 40

# --- are these figures a grade? -----------------------------------------------------------------

_UNITS = (
    r"mm|cm|m|inch|inches|ft|feet|foot|yd|thou|mils?|kgs?|lbs?|tons?|psi|bar(?! tub)|mpa|ksi|kn|"
    r"pcs?|pieces?|stk|stück|szt|ea|"
    r"each|off|qty(?!\W{0,3}\d)|sets?|units?|parts|bends|dies|people|years?|days?|hours?|"
    r"hrs?|minutes|weeks?|miles|"
    r"km|usd|eur|euros?|dollars|cc|rpm|hp|kw|grit|deg|degrees?|of|percent|meters?|metres?"
)
_STREET = (
    r"(?:[NSEW]\.?\s)?(?:[A-Z][\w'.-]{0,19}\s){1,3}(?:St|Street|Ave|Avenue|Rd|Road|Dr|Drive|Blvd|"
    r"Boulevard|Ln|Lane|"
    r"Way|Ct|Court|Hwy|Highway|Pkwy|Parkway|Pl|Place|Cir|Loop|Pike|Terrace|Sq|Square)(?![^\W_])"
)
_NO_GRADE_BEFORE = late_pattern(
    rf"[ ]?(?:[\"'°%€$£²³#]|(?:-\s?)?(?:{_UNITS})(?![^\W_]))|[.,]\d|-\d|[ \t]?[xX*]\s?\d|:\d|"
    rf"/\d(?!\d\dL?(?!\d))|"
    # "cut at 430 long"
    r"\s(?:long|lang|de long|de large|de largo|lungh[ie]|di lunghezza)(?![^\W_])|"
    r"[-.\s)]{1,2}\d{3}[-.\s]\d{3,4}(?!\d)|@",
    re.I,
)
_BEFORE_STREET = late_pattern(rf"\s{_STREET}")
_NO_GRADE_AFTER = late_pattern(
    r"\b(?:cut|cropped|chopped|sawn) (?:off |down )?(?:at|to) (?:about |ca\.? )?$|"
    r"\b(?:abgelängt|zugeschnitten|gesägt|abgesägt|geschnitten) auf (?:ca\.? )?$|"
    r"\bcoupée?s? à $|\bcortad[oa]s? a $|\btagliat[oaie] a $|\b(?:ge|af)zaagd op $|"
    r"\d[.,'-]$|(?<![^\W_])[.]$|[$€£#@]\s?$|\+$|\d{3}[\s)-]{1,2}\d{3}[\s-]$|"
    r"\b(?:tel|telephone|phone|ph|fax|mobile|cell)\b"
    r"(?:[^\n.]|\.(?!\s[A-Z][a-z]+\s)){0,20}$",
    re.I,
)
# '724 304 0190' is a telephone number; in '.035 304 1500 pcs' the .035 is a wall.
_AREA_CODE = late_pattern(r"(?<![.\d])\d{3}[\s)-]{1,2}$")
_LAST_FOUR = late_pattern(r"[\s-]\d{4}(?!\d)")
_MEASURED = late_pattern(r"\s?(?:mm|cm|kg|pcs|pieces)(?![^\W_])|[.,]\d", re.I)
# Cues that make figures something else, unless a material stands right beside them.
_CUE_AFTER = late_pattern(
    r"(?:\b(?:no|nr|num|number|qty|quantity|ext|extension|suite|ste|room|rm|part|item|pos|order|"
    r"po|rfq|inv|invoice|"
    r"tel|telephone|phone|ph|fax|mobile|cell|drawing|dwg|rev|page|box|bldg|building|hwy|route|"
    r"job|quote|ref|model|"
    r"about|approx|ca|roughly|around|year|since|anfrage|zeichnung|auftrag|artikel|bestellung|"
    r"kunden)\b|p/n|s/n)"
    r"[\s.:#=-]{0,3}$|[Øø~^]\s?$|\d\s?[xX*]\s?$",
    re.I,
)
_SIZE_CUE = late_pattern(
    r"\b(?:clr|radius|radii|rad|r|od|o\.d|id|i\.d|dia|diameter|length|long|lg|l|wall|"
    r"x)\b[\s.:#=-]{0,3}$",
    re.I,
)
# '1.500 x .065 1020 on a 4.500 CLR', also set in columns: '.120 wall     1018     CLR 4.000'
_AFTER_WALL = late_pattern(
    r"(?<![\d.,])[.,]\d{2,4}[\"']?\s?(?:thick\s)?(?:wall|wt)\.?,?\s[ \t]{0,12}$"
    r"|(?<![\d.,])[.,]\d{2,4}[\"']?(?:\s(?:wall|wt))?[ \t]{2,12}$"
    r"|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twenty|thirty|forty|fifty|sixty|seventy"
    r"|eighty|ninety)\s(?:thick\s)?(?:wall|wt)\s$"
    r"|[xX]\s?\d{0,2}[.,]\d{1,4}[\"']?\s?(?:(?:mm|in|wall|w|wt)\.?)?,?\s[ \t]{0,12}$"
    # '1.5 x .058 x 4130': no radius stands there
    r"|[xX*]\s?0?\.\d{2,4}[\"']?\s?[xX*]\s?$",
    re.I,
)
# All seamless 1010; 3/4 x .065 welded 1010; cold drawn 1026.
_HOW_MADE = (
    r"(?:seamless|welded|smls|dom|erw|hrew|crew|cds|cdw|annealed|normali[sz]ed"
    r"|(?:cold|hot)[- ](?:drawn|rolled|finished)"
    r"|pickled"
    r"|alumini[sz]ed|galvani[sz]ed)"
)
_MADE = late_pattern(rf"\b{_HOW_MADE}\s$", re.I)
# '1-7/8 x 16 ga 1010', '1.66 x .140, 5 inch CLR, 1020': behind a gauge, or at the end of the size.
_BEHIND_SIZE = late_pattern(
    r"\d\s?(?:ga|gauge|gage)\.?,?\s$|\b(?:clr|cl|radius|centerline|centreline),\s$", re.I
)
_MADE_BEHIND = late_pattern(rf"\s{_HOW_MADE}\b", re.I)
_ENDS_SIZE = late_pattern(rf"\s?(?:[.,;)](?!\d)|$|\n|\s{_HOW_MADE}\b)", re.I)
# '38 x 2 mm, 347, radius 76'; where no radius follows, the number may be one.
_AFTER_WALL_MM = late_pattern(r"\d\s?[xX*]\s?\d{1,2}(?:[.,]\d{1,2})?(?:\s?mm)?[,;/]\s?$")
_RADIUS_FOLLOWS = late_pattern(
    r"[,;/]?\s(?:[^\W\d_]+\s){0,3}?(?:(?:bend(?:ing)?\s|biege)?radi(?:us|i)|clr|rayon|radio|raggio"
    r"|straal|r)\s?(?:[:=]|of|de|von|di|van|is)?\s?\d",
    re.I,
)
# Stainless, carbon, alloy and aluminium numbers; 110 or 625 there would be a count or a length.
_NUMBER_AFTER_WALL = late_pattern(
    r"3[0-4]\d|4(?!00)[0-4]\d|10[0-4]\d|4[1-3]\d\d|[5-7]0\d\d|300[34]|86[23]0"
)
_CARBON_STEEL = late_pattern(r"10[0-4]\d")
# 'Tube is 1010 throughout.'; a length would have its unit or a word behind it.
_STEEL_NUMBER = late_pattern(r"10[0-4]\d|11[1-4]\d|1215|41[34]\d")
_TUBE_IS = late_pattern(
    r"\b(?:(?:tub(?:e|ing|es)|pipe|everything|stock|all|rohre?|tubes?|tubos?|tubi|buis|buizen)\s)"
    r"(?:of\sthem\s|lines\s|sizes\s)?(?:is|are|will\sbe|ist|sind|est|sont|es|son|è|sono|zijn)\s"
    r"(?:(?:all|plain|alle|tout|todo|tutto|allemaal|in|aus|en|van)\s){0,2}$",
    re.I,
)
_FOR_ALL = late_pattern(
    r"\s?(?:[.;,)](?!\d)|$|\n)|\s(?:throughout|everywhere|on\sall|for\sall|across|in\sall\scases"
    r"|either\sway|all\sround|durchweg|überall|partout|en\stodos|dappertutto|overal)\b",
    re.I,
)
_ENDS_IN_LENGTH = late_pattern(r"\d[\"']{0,2}[\s-]?(?:mm|in|inch|ga|gauge)?\.?[\s-]?$", re.I)
_OF_TUBE = late_pattern(r"(?:outside|outer|tube)\s$", re.I)


def strength_here(text: str, start: int, end: int, strength: Strength) -> Strength | None:
    """How far a designation can be a grade where it stands; None where it can't.

    '304' in '304.8', '304 mm', '724-304-0190', '$304' or '304 Main Street' is none; after 'ext',
    'radius' or 'x' it counts only beside a material of the same family. After '1.5 OD' it is one.
    """
    before, after = text[max(0, start - 32) : start], text[end : end + 80]
    return _strength(before, text[start:end], after, strength)


@lru_cache(maxsize=1024)
def _strength(before: str, written: str, after: str, strength: Strength) -> Strength | None:
    if not written[0].isdigit():
        clean = not before.endswith(("@", "#")) and not _MEASURED.match(after)
        return strength if clean else None
    if _NO_GRADE_AFTER.search(before) or (
        before.endswith("/") and not re.search(r"[A-Za-z]/$|\d{3}L?/$", before)
    ):
        return None
    if strength == "sure":
        return strength
    if _AREA_CODE.search(before) and _LAST_FOUR.match(after):
        return None
    if _NO_GRADE_BEFORE.match(after) or _BEFORE_STREET.match(after):
        return None
    if _NUMBER_AFTER_WALL.fullmatch(written) and _AFTER_WALL.search(before):
        return "bare"
    if _CARBON_STEEL.fullmatch(written) and (
        _MADE.search(before)
        or _MADE_BEHIND.match(after)
        or (_BEHIND_SIZE.search(before) and _ENDS_SIZE.match(after))
    ):
        return "bare"
    if (
        _NUMBER_AFTER_WALL.fullmatch(written)
        and _AFTER_WALL_MM.search(before)
        and _RADIUS_FOLLOWS.match(after)
    ):
        return "bare"
    if _STEEL_NUMBER.fullmatch(written) and _TUBE_IS.search(before) and _FOR_ALL.match(after):
        return "bare"
    cue = _SIZE_CUE.search(before)
    sized = cue is not None and not _has_its_length(before[: cue.start()], cue[0])
    return "weak" if sized or _CUE_AFTER.search(before) else strength


def _has_its_length(ahead: str, cue: str) -> bool:
    """Whether a length right before a cue is the cue's: '1.5 tube OD', not '2 tube CLR'."""
    if cue.casefold().startswith(("o", "dia")):
        ahead = _OF_TUBE.sub("", ahead)
    return _ENDS_IN_LENGTH.search(ahead) is not None


# --- is it wanted? ------------------------------------------------------------------------------

_FILLER = (
    r"(?:(?:the|a|an|our|your|that|this|these|it|its|it's|in|on|for|of|from|with|be|been|to|use|"
    r"using|used|made|usual|"
    r"normal|same|old|plain|type|grade|wall|any|more|dem|den|der|die|das|aus|mit|wie|de|du|le|la|"
    r"l'|en|el|van|uit|"
    r"het|di|in|z|av|i|från|do|da)\s|\d{0,2}[.,]?\d{1,3}[\"']?\s){0,4}"
)
_REJECTS = late_pattern(
    rf"(?:\b(?:not|isn't|isnt|ain't|wasn't|never|no|without|nor|neither|except|but\snot|"
    rf"don't\s(?:want|need|use)|do\snot\s(?:want|need|use)|"
    rf"instead\sof|rather\sthan|other\sthan|in\splace\sof|in\slieu\sof|as\sopposed\sto|"
    rf"replac(?:e|es|ing)|"
    rf"used\sto\s(?:use|bend|run|buy|get|have|do|be|make|order|take)|previously|formerly|"
    rf"last\stime(?:,?\s(?:it|we|they))?(?:\s(?:was|were|had|used|did|ordered))?|"
    rf"moved\s(?:away\s)?from|switch(?:ed|ing)?\sfrom|chang(?:ed|ing)\sfrom|"
    rf"nicht|kein|keine|keinen|keinem|statt|anstatt|anstelle(?:\svon)?|früher|bisher|"
    rf"sondern\snicht|"
    rf"pas|au\slieu|plutôt\sque|sans|niet|geen|in\splaats|no\ses|en\slugar|en\svez|non|invece|"
    rf"al\sposto|"
    rf"nie|zamiast|inte|istället\sför|i\sstället\sför|não|nao|em\svez|ikke)\s{_FILLER})$",
    re.I,
)
_NOT_REJECTING = late_pattern(
    r"\b(?:not\s(?:sure|only|just|necessarily|certain|decided)|no\s(?:matter|preference|problem|"
    r"idea)|if\snot|"
    r"whether\sor\snot|nicht\snur|pas\ssûr)\b[^.;\n]{0,30}$|\bno\.\s?$",
    re.I,
)
_REJECTED_AFTER = late_pattern(
    r"\s(?:is\sout|is\sno\sgood|is\swrong|won't\s(?:do|work)|will\snot\s(?:do|work)|no\slonger|"
    r"(?:was|were)\s(?:a\smistake|wrong|before|last\stime)|before,?\sbut)",
    re.I,
)
# 'His was for stainless, mine's aluminium'; both halves must be heard.
_THEIRS = late_pattern(
    r"(?:\b(?:his|hers|theirs|yours|(?:the|that)\s(?:old|last|first|other|previous|earlier)\sone"
    r"|(?:his|her|their)\s(?:tube|one|job|stuff))(?:'s|\sis|\swas|\sare|\swere)"
    r"|\b(?:seiner|seine|ihrer|deren|der\salte|der\sletzte)\s(?:war|ist|waren|sind)"
    r"|\b(?:le\ssien|le\sleur|l'ancien)\s(?:était|est)|\b(?:el\ssuyo|el\santerior|el\sviejo)\s"
    r"(?:era|es)"
    r"|\b(?:il\ssuo|il\sloro|il\svecchio)\s(?:era|è)|\b(?:de\szijne|die\svan\shem|de\soude)\s("
    r"?:was|is))"
    rf"\s(?:(?:für|pour|para|per|voor)\s)?{_FILLER}$",
    re.I,
)
_MINE = late_pattern(
    r"[^.;!?\n]{0,24}[,;.–—-]\s?(?:(?:but|and|while|whereas|so|aber|mais|pero|ma|maar|e|y|et|u"
    r"nd|en)\s)?"
    r"(?:mine|ours|this\sone|the\snew\sone|meiner|meine|unserer|unseres|dieser|le\smien|le\snôtre"
    r"|celui-ci|el\smío|el\snuestro|este|il\smio|il\snostro|questo|de\smijne|de\sonze|deze)\b"
    r"(?![^.;!?\n]{0,20}\b(?:same|too|also|as\swell|likewise|auch|gleich\w*|aussi|pareil|también|igual"
    r"|anche|uguale|ook|hetzelfde)\b)",
    re.I,
)
# 'Also in red brass someday, not now'; '304, not yet in stock' is wanted.
_NOT_NOW = late_pattern(
    r"(?:,?\s(?:maybe|perhaps|but|someday|some\sday|one\sday|later(?:\son)?|next\syear|vielleicht|"
    r"später|irgendwann|aber|plus\stard|mais|más\sadelante|pero|più\savanti|ma|maar)){0,3},?\s"
    r"(?:not\s(?:now|yet|this\stime)|jetzt\snoch\snicht|(?:jetzt|noch)\snicht|pas\s(?:maintenant|"
    r"encore)|ahora\sno|todavía\sno|non\s(?:ora|ancora)|n[ou]g?\sniet)(?=\s*(?:[.,;!)\n]|$))",
    re.I,
)
_NO = r"(?:no|nope|nah|nein|non|nee|nej|nie|não)"
# '4130? no - plain mild steel', 'brass, sorry, steel', 'Messing? nein, doch Stahl'
_PUT_RIGHT = late_pattern(
    rf"\s?(?:\?\s*(?:\w{{2,4}}\s)?{_NO}\b|[\s,;:.(–—-]{{1,4}}(?:{_NO}\s?[,;:–—-]|(?:{_NO}\s)?(?:wait|sorry"
    r"|actually|correction|scratch\sthat|strike\sthat|make\sthat|i\smean|i\smeant|or\srather|pardon"
    r"|entschuldigung|korrektur|korrigiere|ich\smeine|vielmehr|besser\sgesagt|quatsch|plutôt"
    r"|je\sveux\sdire|perdón|mejor\sdicho|quiero\sdecir|anzi|scusate|volevo\sdire|correctie"
    r"|ik\sbedoel)\b))[\s,;:.)–—-]{0,4}(?:[^\W\d_']+[’']?[^\W\d_]*,?\s){0,4}?",
    re.I,
)
# 'Brass? No.', but not '304? No idea.' or 'steel? No thinning over 20 %.'
_DENIED = late_pattern(
    rf"\s?\?\s{{0,2}}{_NO}\b(?=\s{{0,2}}(?:[.,;:!?)–—-]|$|\n)|\s(?:it|it's|its|that|that's|this|we|i"
    r"|they|he|she|sir|way|not|hang|hold|wait|sorry|actually|scratch|make|plain|just|mate|der|die|das|es|ist|ich|wir|c'est|on|ce|son|è|sono|het|dat|is|wij|ik)\b)",
    re.I,
)
_ANSWERS = late_pattern(rf"\?\s{{0,2}}{_NO}\b\W{{0,4}}(?:[^\W\d_]+\W{{1,2}}){{0,3}}$", re.I)
# 'We switched from 304 to 316L': the second is the one wanted.
_CHANGED_TO = late_pattern(
    r"\b(?:from|von|de|da|van)\s\S{2,16}\s(?:steel\s)?(?:to|auf|zu|à|a|naar)\s(?:the\s)?$", re.I
)
_OR = (
    r"(?:or|and/or|oder|bzw\.?|beziehungsweise|ou|o|of|eller|lub|albo|oppure|vagy|nebo|"
    r"vs\.?|versus)"
)
_ALTERNATIVE = late_pattern(
    rf"\s?,\s?|\s?/\s?|,?\s?\(?(?:{_OR})\s(?:[^\W\d_'-]{{1,12}}\s){{0,3}}"
    rf"|[^.;:!?\n\d]{{0,45}}\b{_OR}\s(?:[^\W\d_]{{1,12}}\s){{0,2}}",
    re.I,
)
_LIST_OF_REJECTED = late_pattern(rf",?\s(?:{_OR}|nor|and|und|et|e|y|en|noch)\s(?:the\s)?", re.I)


def is_rejected(text: str, start: int, end: int) -> bool:
    """Whether the sender says that it is not this one: 'not 304', 'instead of steel'."""
    before = _clause(text[max(0, start - _BEFORE) : start])
    if _NOT_REJECTING.search(before):
        return False
    if _CHANGED_TO.search(before) or _ANSWERS.search(text[max(0, start - _BEFORE) : start]):
        return False
    return bool(
        _REJECTS.search(before)
        or (_THEIRS.search(before) and _MINE.match(text, end, end + 2 * _AFTER))
        or _REJECTED_AFTER.match(text, end, end + _AFTER)
        or _NOT_NOW.match(text, end)
        or _DENIED.match(text, end)
    )


def is_put_right(text: str, left_end: int, right_start: int) -> bool:
    """Whether the words between two materials take back the first: '4130, sorry, mild steel'."""
    return right_start - left_end <= _BEFORE and bool(
        _PUT_RIGHT.fullmatch(text, left_end, right_start)
    )


def shares_rejection(text: str, left_end: int, right_start: int) -> bool:
    """Whether 'not 304 or 316' rejects the second as it rejects the first."""
    return right_start - left_end <= 12 and bool(
        _LIST_OF_REJECTED.fullmatch(text, left_end, right_start)
    )


def are_alternatives(text: str, left_end: int, right_start: int) -> bool:
    """Whether the words between two materials leave it open which: '304 or 316'.

    Figures between them mean a second tube, not a choice: '1.5 DOM or 2 in 304'.
    """
    return 0 < right_start - left_end <= 60 and bool(
        _ALTERNATIVE.fullmatch(text, left_end, right_start)
    )


def _clause(before: str) -> str:
    """The piece of ``before`` since the last end of a sentence; a wrapped line is no end."""
    piece = re.split(r"[.!?;]\s|\n\s*\n|[,:]\s(?=it's\s|its\s|this\s)", before)[-1]
    return re.sub(r"\s+", " ", piece)
