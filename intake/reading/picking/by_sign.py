"""Lines of a list that are asked for, or set aside, by a sign that they bear: a star, an arrow, a
tick.

'Only the lines with a star need a mandrel', 'die mit Stern haben wir schon', '* = mandrel needed'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words

_STAR, _ARROW, _TICK = (
    r"[*＊★☆⭐]+",
    r"(?:-{1,3}>|={1,2}>|→|⇒|➔|<-{1,3}|←|>{1,3})",
    (r"(?:\[[xX*✓✔]\]|\([xX✓✔]\)|[✓✔√☑✅☒])"),
)
_CALLED = {
    _STAR: any_of(
        r"stars? | starred | asterisk(?:s|ed)? | stern(?:chen)? | étoiles? | asterisco?s?",
        r"astérisques? | estrell(?:a|ita)s? | stell(?:a|ina) | asterischi | sterretjes? | \*",
    ),
    _ARROW: any_of(
        "arrows? | arrowed | pfeil(?:en)? | flèches? | flechas? | frecc(?:ia|e) | pijl(?:tje)?s?",
        "-> | → | =>",
    ),
    _TICK: any_of(
        r"ticks? | ticked | tick ?marks? | check ?marks? | checked | crosse[sd] | haken | häkchen",
        r"angehakt\w* | angekreuzt\w* | coche | cochée?s? | marcad[oa]s | spunt[aei]\w*",
        r"vinkjes? | aangevinkt\w* | aangekruist\w* | ✓ | ✔ | \[x\]",
    ),
}
_SIGN = any_of(*(f"(?P<s{n}>{words})" for n, words in enumerate(_CALLED.values())))
_LINES = any_of(
    "rows? | lines? | items? | ones? | those | entr(?:y|ies) | sizes? | tubes? | zeilen?",
    "die | jene",
    "positionen | rohre | lignes? | celles? | ceux | celui | tubes | filas? | l[ií]neas? | l[ao]s",
    "righe | riga | voc[ei] | quell[eio] | regels? | rijen | buizen",
)
_WITH = any_of(
    r"(?:that |which |i |we )?(?:have |has |'ve |are )?(?:marked|flagged|tagged|with|having"
    r"|bearing)",
    r"(?:by|with)?(?: an?| the| one)? | with the | (?:markiert )?mit(?: einem| dem)?",
    r"avec(?: une?)?",
    r"(?:marqué\w* )?(?:d'une?|avec une?|par une?) | con(?: una?| el| l')? | met(?: een)?",
    "marked | mit | marcad[oa]s con(?: una?)? | segnat[ei] con(?: una?)?",
)
_FLAGGED = any_of(
    r"marked | highlighted | flagged | tagged | markierten? | gekennzeichneten? | hervorgehobenen?",
    r"marquée?s? | surlignée?s? | cochée?s? | marcad[oa]s | resaltad[oa]s | señalad[oa]s",
    r"segnat[ei]",
    r"evidenziat[ei] | contrassegnat[ei] | gemarkeerde | aangekruiste | aangevinkte | aangeduide",
)
_POLITE = any_of(
    "please | only | pls | bitte | anbieten | svp | s'il vous plaît | por favor | per favore",
    "graag",
    "alstublieft | nur | seulement | solo | alleen",
)
_NAMED = (
    rf"(?:(?<!\w){_LINES}\s(?:{_WITH}\s){{1,3}}[\"'(]?{_SIGN}[\"')]?(?!\w)"
    rf"|(?<!\w){_SIGN.replace('(?P<s', '(?P<t')}[\"')]?(?:\s|-marked\s){_LINES}(?!\w)"
    rf"|(?<!\w)(?:{_FLAGGED}\s{_LINES}|{_LINES}\s{_FLAGGED})(?:\s{_POLITE}){{0,2}}\s?[(\[]"
    rf"(?:{_WITH}\s){{0,3}}[\"']?{_SIGN.replace('(?P<s', '(?P<u')}[\"']?[)\]])"
)
_LEGEND = late_pattern(
    rf"(?:^|[\n(])[ \t]*\(?(?P<sign>{_STAR}|{_ARROW}|{_TICK})\)?[ \t]*(?:=|:|-|–|means)?[ \t]*"
    r"(?P<what>[^\W\d][^\n)]{2,60})"
)
"""'* = mandrel needed', on a line of its own or in brackets."""
_MANDREL = r"(?:mandrels?|plugs?|dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:en)?)"
_END = (
    r"(?:\s(?:please|pls|only|for now|yet|bitte|svp|graag|por favor|per favore|at all|already|today"
    r"|thanks|anbieten|chiffrer|aan))*(?=\s*(?:$|[.,;:!?)]))"
)
_ASKED_AHEAD = any_of(
    r"(?:only|just) | (?:quote|price|prices?|offer|need|want|after)(?: (?:us|me|you|only|just"
    r"|for))*",
    rf"{_MANDREL}(?: only| each)? (?:for|für|pour|para|per|voor)(?: only)? | nur | seulement",
    r"uniquement",
    r"s[oó]lo | solamente | soltanto | alleen | enkel",
    r"(?:anbieten|angebot|preise?|devis|prix|precios?"
    r"|cotizar|prezz[oi]|preventivo|offerte|prijs) (?:für|pour|para|de|per|voor) | chiffrer",
)
_ASKED_BEHIND = any_of(
    rf"(?:need|needs|want|get|require)(?: an?| one)? {_MANDREL}(?: each)? | please",
    r"(?:is|are)(?: the ones?)? (?:needed|wanted|required|to (?:be )?quoted?|(?:i|we) (?:need"
    r"|want))",
    r"only | nur | seulement | alleen",
    rf"(?:brauchen|braucht|benötigen)(?: einen?| wir)?(?: {_MANDREL})? | anbieten",
    rf"(?:ont|a) besoin d'un {_MANDREL} | (?:sont|est) à chiffrer",
    rf"necesitan? (?:un )?{_MANDREL} | servono | serve (?:un )?{_MANDREL} | zijn nodig",
)
_THERE_AHEAD = any_of(
    r"(?:don'?t|do not|no need(?: to)?)(?: need to)? (?:quote|price|offer|need|want)"
    r"(?: us| me| for)?",
    r"(?:skip|ignore|leave out|forget)",
    rf"(?:we|i)(?: already)? (?:have|own|have got)(?: already)? (?:an? |the )?{_MANDREL} for",
    r"nicht anbieten | pas besoin (?:de|pour)",
)
_THERE_BEHIND = any_of(
    r"(?:we |i )?(?:already |do )?(?:have|own|got)(?: (?:already|these|those|it|them|that|one|here)"
    rf"| (?:an? |the )?{_MANDREL}(?: for)?)*",
    r"(?:is|are)(?: already| all)* (?:here|in stock|covered|done|owned|made|not (?:needed|wanted"
    r"|required))",
    rf"needs? (?:no|nothing) ?(?:{_MANDREL})?",
    rf"(?:don'?t|do not|doesn'?t|does not) need (?:an? |any )?"
    rf"{_MANDREL} | (?:haben|hab) (?:wir|ich) (?:schon|bereits)",
    r"sind (?:schon|bereits) (?:da|vorhanden)",
    rf"brauchen (?:wir nicht|keinen {_MANDREL}) | (?:on les|nous les) (?:a|avons) déjà",
    r"ya las tenemos",
    r"ya los tenemos | (?:li|le) abbiamo già | hebben we al",
)
_THE = r"(?:the|those|all|die|den|les|le|la|l'|l[ao]s|el|il|gli|quell[aei]|de|het)"
_ASKED = (
    late_pattern(rf"\b{_ASKED_AHEAD}\s(?:{_THE}\s)?{_NAMED}(?:\s{_ASKED_BEHIND})?{_END}"),
    late_pattern(rf"(?:{_THE}\s)?{_NAMED}\s{_ASKED_BEHIND}{_END}"),
)
_THERE = (
    late_pattern(rf"\b{_THERE_AHEAD}\s(?:{_THE}\s)?{_NAMED}{_END}"),
    late_pattern(rf"(?:{_THE}\s)?{_NAMED}\s{_THERE_BEHIND}{_END}"),
)
_LEGEND_ASKED = late_pattern(
    r"(?:please |we |i )*"
    + any_of(
        rf"(?:{_MANDREL} )?(?:is |are )?(?:needed|wanted|required|to (?:be )?quoted?)",
        rf"(?:need|want|quote|price)s?(?: (?:this|these|those|it|them|one|ones|an?|{_MANDREL}))*",
        rf"(?:{_MANDREL} )?(?:benötigt|gebraucht|gesucht|nötig|bitte anbieten|anbieten|gewünscht)",
        rf"(?:{_MANDREL} )?(?:nécessaire|à chiffrer|demandé|necesario|necessario|richiesto"
        rf"|nodig|gewenst)",
    )
    + _END
)
_LEGEND_THERE = late_pattern(
    r"(?:we |i )?"
    + any_of(
        r"(?:already )?(?:have|own|got)(?: (?:already|this|these|those|it|them|that|one|ones))*",
        r"(?:already )?(?:in stock|owned|covered|done|here)",
        rf"(?:no|without) {_MANDREL}(?: needed)?",
        r"not (?:needed|wanted|required) | skip | schon vorhanden | haben wir schon",
        rf"ohne {_MANDREL}",
        r"déjà en stock | en stock | ya tenemos | già disponibile | già presente | al aanwezig",
    )
    + _END
)
_OTHERS_TOO = late_pattern(
    r"(?:others?|rest|remaining|anderen|übrigen|autres|otr[ao]s|altr[ie]|andere)\b(?![^.;\n]{0,40}"
    r"\b(?:no|not|without|fine|have|bends?|ok|okay|well|already|don'?t|ohne|nicht|sans|pas|sin|senza"
    r"|zonder|niet|later|on hold)\b)"
)
"""'..., the others one each': those are wanted too."""
_ALL = whole_words(
    r"(?:quote|price|need|want|offer)(?: for)? (?:all|both|every\w*)",
    r"all (?:of them|three|four|five"
    r"|six|lines|sizes) | alle (?:anbieten|drei|vier) | tou[st]e?s? les | tod[oa]s l[oa]s",
    r"tutt[ie]",
    r"as well | also",
)
_IF_OR_NOT = whole_words(
    r"if | unless | whether | not | no | don'?t | do not | never | wenn | falls | nicht",
    r"kein\w* | si | pas",
    "se | non | sin | als | niet | geen | have | got",
)
_FAR = 60


def picked_by_sign(words: str, lines: Sequence[str]) -> set[int]:
    """Indexes of the lines asked for; empty where no sign says it, or not plainly.

    ``words`` are the message without its lines, ``lines`` those lines, each one's whole text.
    """
    folded = words.casefold().replace("’", "'")
    if _ALL.search(folded):
        return set()
    spaced = " ".join(folded.split())
    found: set[int] = set()
    for patterns, there in ((_ASKED, False), (_THERE, True)):
        for pattern in patterns:
            for match in pattern.finditer(spaced):
                if there or not (_goes_on(spaced, match) or _is_open(spaced, match)):
                    found |= _meant(_bearing(lines, _sign_of(match)), there=there)
    for match in _LEGEND.finditer(folded):
        bearing = _bearing(lines, re.escape(match["sign"]))
        if _LEGEND_ASKED.match(match["what"]) and not _goes_on(folded, match):
            found |= _meant(bearing, there=False)
        elif _LEGEND_THERE.match(match["what"]):
            found |= _meant(bearing, there=True)
    return found


def _sign_of(match: re.Match[str]) -> str:
    """The pattern of the sign that was named."""
    return next(
        sign
        for number, sign in enumerate(_CALLED)
        if any(match[f"{how}{number}"] is not None for how in "stu")
    )


def _goes_on(words: str, match: re.Match[str]) -> bool:
    return _OTHERS_TOO.search(words, match.end(), match.end() + _FAR) is not None


def _is_open(words: str, match: re.Match[str]) -> bool:
    """'If you have a mandrel for the one with the star', 'we don't need the ones with ...'."""
    begin = max(words.rfind(sign, 0, match.start()) for sign in ".;!?") + 1
    return _IF_OR_NOT.search(words, begin, match.start()) is not None


def _meant(bearing: Sequence[bool], *, there: bool) -> set[int]:
    """The lines that bear the sign, or where those are ``there`` already the others."""
    if all(bearing) or not any(bearing):
        return set()
    return {at for at, bears in enumerate(bearing) if bears != there}


def _bearing(lines: Sequence[str], sign: str) -> list[bool]:
    mark = re.compile(
        rf"^\s*(?:\(?\w{{1,2}}(?:[.)]\s*|\s+)|[-•–]\s+)?[(\[]?{sign}|{sign}[)\]]?\s*$|[\t|;]\s*{sign}\s*[\t|;]"
    )
    return [mark.search(line) is not None for line in lines]
