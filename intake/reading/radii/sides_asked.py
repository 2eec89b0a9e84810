"""A radius whose side the sender asks or wonders about, with no figure in the words that do.

'Radius 80 (inside? centre? no idea)', 'a 38 mm former. Is that the centre or the inside?': such
words name no bore and settle no side. They are taken out of the text, and the radius is doubted.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import Role

_CENTRE = any_of(
    r"cent(?:re|er)(?:\s?-?lines?|s)?\b | clr\b | middle\b | neutral\w*(?: ax[ie]s| line| faser)?",
    r"(?:rohr)?mitte\b | mittellinie\b | mittelachse\b | (?:l['’]\s?)?axe\b | fibre neutre\b",
    r"(?:le |la )?(?:ligne )?neutre\b | centro\b | eje\b | mezzeria\b | asse\b | (?:all|in) ?['’]?asse\b",
    r"hart(?:lijn)?\b | midden\b | milieu\b | linea (?:media|neutra)\b",
)
_SIDE = any_of(
    r"outside\b | outer\b | au(?:ß|ss)en(?:radius|seite)?\b | extérieur\w* | exterieur\b",
    r"exterior\b | estern[oa]\b | buiten(?:kant|radius)?\b | fuera\b | extrados\b",
    r"inside\b | inner\b | inn?en(?:radius|seite)?\b | inner(?:er|en)\b | intérieur\w* | interieur\b",
    r"interior\b | intern[oa]\b | all['’]interno\b | binnen(?:kant|radius)?\b | dentro\b | intrados\b",
)
_OPENS = r"(?:\b(?:or|oder|ou|o|of|ob|vs|versus|if|whether|si|se)\b|[?/|])"
_BETWEEN = rf"[^.\d\n()]{{0,24}}{_OPENS}[^.\d\n()]{{0,24}}?"
_BOTH = rf"(?:\b{_CENTRE}{_BETWEEN}\b{_SIDE}|\b{_SIDE}{_BETWEEN}\b{_CENTRE})"
_UNSURE = any_of(
    r"no idea | not sure | unsure | unclear | don'?t know | do not know | didn'?t know | dunno",
    r"did not know | can'?t tell | cannot tell | can'?t say | couldn'?t (?:tell|say) | who knows",
    r"doesn'?t say | does not say | didn'?t say | didn't ask | forgot to ask | no clue | beats me",
    r"not certain | wasn'?t sure | nobody (?:knows?|could say|can say) | haven'?t a clue",
    r"keine ahnung | weiß (?:ich )?(?:leider )?nicht | weiss (?:ich )?nicht | wusste (?:er|es|sie)",
    r"unklar | unsicher | nicht sicher | steht nicht d(?:a|rauf|abei)",
    r"aucune idée | (?:je )?ne? sais? pas | sais pas | pas sûr\w* | on ne sait pas | ne dit pas",
    r"ni idea | no (?:lo )?s[ée]\b | no (?:lo )?sab(?:e|ía|emos)\b | no estoy segur[oa] | no lo dice",
    r"non (?:lo )?so\b | non saprei | non (?:lo )?sapeva | non (?:ne )?sono sicur[oa] | non si sa",
    r"nessuna idea | boh\b | geen idee | weet (?:ik )?(?:het )?niet | wist (?:hij|ze) (?:het )?niet",
    r"niet zeker | onduidelijk",
)
_ASKED = late_pattern(_BOTH, re.IGNORECASE)
_SAYS = any_of(
    "says? | said | thinks? | reckons? | claims? | believes? | guess(?:es)? | swears? | i'd say",
    "sagt | meint | glaubt | denkt | sage | meine | glaube | dit | pense | croit | dice | cree",
    "creo | digo | pensa | penso | dico | zegt | denkt | zeg | denk",
)


def _disputed(one: str, other: str) -> str:
    """'Bob says inside, I say centreline'."""
    words = r"(?:[^\W\d]|[ '’:]){0,24}?"
    return rf"\b{_SAYS}\b{words}\b{one}[^.\d\n()]{{0,32}}?\b{_SAYS}\b{words}\b{other}"


_TO_WHERE = any_of(
    r"to where | where to\b | to (?:what|which)(?: (?:side|point|line|edge))?(?=\s?(?:[.,;:!?)]|$))",
    r"where (?:it|that|this)(?:['’]s| is) (?:measured|taken|to)\b | from where | which side",
    r"wohin | bis wohin | worauf | auf welche seite | welche seite | wie gemessen",
    r"jusqu['’]où | par rapport à quoi | de quel côté | à quelle ligne | hasta dónde | a qué lado",
    r"desde dónde | fin dove | rispetto a (?:che )?cosa | a quale lato | tot waar | waartoe",
    r"welke kant | waar (?:het|hij|dat) gemeten is",
)
_NOT_SAID = any_of(
    r"(?:doesn['’]t|does not|didn['’]t|don['’]t|not) (?:say|tell|state|show|specify|give|mention)",
    r"without (?:saying|telling|stating|a word on|specifying) | but not | isn['’]t clear | no word on",
    r"is not clear | unclear | never says | aber nicht | steht nicht(?: dabei| drauf| drin)?,?",
    r"sans (?:dire|préciser|indiquer) | mais pas | sin (?:decir|indicar) | no (?:dice|indica)",
    r"pero no | senza (?:dire|indicare) | non (?:dice|indica) | ma non | maar niet",
    r"(?:staat|zegt) (?:er )?niet(?: bij)?",
)
_UNTOLD = late_pattern(
    rf"\b(?:{_NOT_SAID}),?\s(?:\w{{1,8}}\s){{0,2}}?(?:{_TO_WHERE})"
    rf"|{_disputed(_SIDE, _CENTRE)}|{_disputed(_CENTRE, _SIDE)}",
    re.IGNORECASE,
)
"""'R 3.00, and does not say to where'; 'Bob says inside, I say centreline': no side is told."""
_UNSURE_WORDS = late_pattern(rf"\b(?:{_UNSURE})", re.IGNORECASE)
_OURS = late_pattern(
    r"\b(?:(?:do|does|would|are|is) (?:you|your)\b(?! know)|you (?:need|want|use|measure|quote|go|work"
    r"|mean|prefer|take|ask)|your (?:radius|radii|list|catalogue|catalog|form|site|dies|mandrels)"
    r"|(?:brauchen|möchten|messen|rechnen|meinen) sie|(?:voulez|prenez|mesurez|comptez)[- ]vous"
    r"|(?:quieren|necesitan|miden)\b|(?:volete|misurate|intendete)\b|(?:wilt|meet|bedoelt) u)",
    re.IGNORECASE,
)
"""A question how the shop measures: it casts no doubt on a radius that has its side beside it."""
_AFTER = 60
"""Characters behind the words in which they are asked, or nobody knows: '... He didn't know.'"""
_BEFORE = 60
_NEAR = 160
"""Characters between a radius and the words that wonder about it; beyond it, whichever is told."""
_BESIDE = 24
_RADII: tuple[Role, ...] = ("radius", "clr", "inside_r", "outside_r")
_SAYS_CENTRE = late_pattern(rf"\b(?:{_CENTRE})", re.IGNORECASE)


def without_sides_asked(text: str) -> tuple[str, list[tuple[int, int]]]:
    """The text with words blanked that only wonder about a side, and where they stood."""
    spans = [found.span() for found in _ASKED.finditer(text) if _wonders(text, *found.span())]
    spans += [found.span() for found in _UNTOLD.finditer(text)]
    for begin, end in spans:
        text = text[:begin] + re.sub(r"[^\s.?!]", " ", text[begin:end]) + text[end:]
    return text, spans


def _wonders(text: str, begin: int, end: int) -> bool:
    behind = text[end : end + _AFTER].split("\n\n", 1)[0]
    before = _last_sentence(text[max(0, begin - _BEFORE) : begin])
    if re.match(r"[^.!\n;,\d]{0,40}\?", behind) or "?" in text[begin:end]:
        return True
    return _UNSURE_WORDS.search(before) is not None or _UNSURE_WORDS.search(behind) is not None


def _last_sentence(text: str) -> str:
    return re.split(r"[.!?\n]\s", text)[-1]


def doubt_sides_asked(layout: Layout, spans: Sequence[tuple[int, int]]) -> None:
    """Doubts every radius that such words may be about."""
    for begin, end in spans:
        radii = [figure for figure in layout.figures if figure.role in _RADII]
        near = [f for f in radii if f.start - end > -_NEAR and begin - f.end < _NEAR]
        ours = _OURS.search(_last_sentence(layout.text[max(0, begin - _BEFORE) : begin]))
        for figure in near or radii:
            if ours is not None and _has_side(layout, figure):
                continue
            figure.role = "radius"
            if not any("or centreline" in note for note in figure.notes):
                figure.notes.append("inside or centreline radius")


def _has_side(layout: Layout, figure: Figure) -> bool:
    """Whether the centre line is named right beside a radius: 'CLR 76', '76 to the centre'."""
    around = layout.text[max(0, figure.start - _BESIDE) : figure.end + _BESIDE]
    return _SAYS_CENTRE.search(around) is not None
