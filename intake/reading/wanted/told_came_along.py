"""A mandrel that came with the machine: 'dabei lagen Dorne für 32 x 1,5 und 25 x 2'.

It is there, mostly for another tube. What is said of it afterwards, that it does not fit or is of
no use, is no complaint about a mandrel of ours.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.patterns import whole_words
from .asked_words import NEWLY
from .told_plainly_words import WANTED_ALL_THE_SAME
from .words_on_size import Said

_NONE = "no|not|without|but|dies?|formers?|kein\\w*|ohne|aber"
_GAP = rf"(?:(?!\b(?:{_NONE})\b)(?:[^.;?]|[.]\d)){{0,40}}?"
"""Between the verb and its mandrel: 'came with a die for ... but no mandrel' has none."""
_MACHINE = (
    r"(?:(?:the|this|that|my|our|his) )?(?:\w+ )?(?:machine|bender|lot|press|tooling|set|deal|it)"
)
_MASCHINE = r"(?:der |dieser |die |zur |zu der )?(?:\w+)?(?:maschine|bieger|presse|anlage)"
_CINTREUSE = r"(?:la |cette |notre )?(?:machine|cintreuse|presse)"
_MAQUINA = r"(?:la |esta |nuestra )?(?:máquina|curvadora|dobladora)"
_MACCHINA = r"(?:la |questa |nostra )?(?:macchina|curvatrice|piegatrice|curvatubi)"
_PLUG = r"(?:mandrels?|plugs?)"
_DORN = r"\w*dorne?n?"
_ANIMA = r"(?:anim[ae]|mandrin[oi])"

CAME_ALONG = whole_words(
    rf"(?:came|comes|come|arrived|was sold|was supplied|got it|bought it)(?: \w+)? with"
    rf" {_GAP}{_PLUG}",
    rf"{_PLUG} {_GAP}(?:came|come|comes|included|thrown in|were|was)(?: \w+)?"
    rf" (?:with|in) {_MACHINE}",
    rf"(?:there (?:was|were)|included) {_GAP}{_PLUG} (?:with|in) {_MACHINE}",
    rf"with {_MACHINE} (?:came|comes|(?:i|we) (?:also )?got|there (?:was|were)|was|were)"
    rf" {_GAP}{_PLUG}",
    rf"(?:included|supplied|sold) with {_MACHINE} (?:was|were|is|are) {_GAP}{_PLUG}",
    rf"(?:threw|thrown|throws) in {_GAP}{_PLUG}",
    rf"(?:dabei|mit dabei) (?:war(?:en)?|lag(?:en)?|ist|sind|gab es) {_GAP}{_DORN}",
    rf"{_DORN} {_GAP}\d[^.;?]{{0,24}} (?:(?:mit )?dabei|mit drin)",
    rf"(?:bei|mit|zu|in) {_MASCHINE} (?:war(?:en)?|lag(?:en)?|kam(?:en)?|gab es|gehört(?:en?)?)"
    rf" {_GAP}{_DORN}",
    rf"(?:mitgeliefert|mitgekommen|mitgegeben) (?:wurden?|war(?:en)?|ist|sind) {_GAP}{_DORN}",
    rf"(?:zum|im) lieferumfang (?:war(?:en)?|gehört(?:en?)?) {_GAP}{_DORN}",
    r"(?:arrivée?|livrée?|vendue?|fournie?|venue?|achetée?) (?:complète )?avec"
    r" (?:\w+ ){1,4}?mandrins?",
    rf"avec {_CINTREUSE},? (?:il y avait|on a eu|j'ai eu|nous avons eu|étaient? livrés?)"
    r" (?:\w+ ){1,4}?mandrins?",
    r"(?:venía|vino|llegó|viene|vendieron|compramos) con (?:\w+ ){0,4}?mandril(?:es)?",
    rf"con {_MAQUINA} (?:venían?|vin[oi]\w*|lleg\w+|había|nos dieron)"
    r" (?:\w+ ){0,4}?mandril(?:es)?",
    rf"(?:arrivata|venduta|consegnata|fornita|comprata|presa) con (?:\w+ ){{0,4}}?{_ANIMA}",
    rf"(?:nella dotazione|in dotazione|con {_MACCHINA}) (?:c'erano|c'era|abbiamo trovato"
    rf"|sono arrivat\w+|è arrivat\w+|ci hanno dato) (?:\w+ ){{0,4}}?{_ANIMA}",
    r"(?:kwam|geleverd|verkocht|gekocht) met (?:\w+ ){0,4}?doorn(?:en|s)?",
    r"(?:bij|met) (?:de |deze |onze )?(?:\w+)?(?:machine|buigbank|buiger) (?:zat(?:en)?|kwam(?:en)?"
    r"|kregen we|lag(?:en)?) (?:\w+ ){0,4}?doorn(?:en|s)?",
)
_LISTED_ON = late_pattern(
    r"\W*(?:(?:and|und|et|y|e|en) )?(?:(?:also |auch )?(?:an?other|one|a|eine[rn]?|un|uno|een)"
    r"(?: (?:mandrel|\w*dorn|mandrin|mandril|mandrino|doorn))?"
    r" (?:for|für|pour|para|per|voor) )?(?=\W?\d)"
)
"""'..., one for 63.5 x 3.2': the list goes on in which the last one stood."""
_OF_NO_USE = whole_words(
    r"(?:neither|none|they|it|that|which|both)?(?: of (?:them|which|these))? ?(?:don'?t|doesn'?t"
    r"|do not|does not|won'?t|didn'?t|did not)? ?(?:fits?|suits?|match(?:es)?) (?:our|my|the|this)"
    r" (?:\w+ )?(?:tub(?:e|ing)|pipe|size|bars?)",
    r"(?:the )?wrong (?:size|ones?|wall|diameter) | (?:of )?no (?:good|use|help)(?: to (?:us|me))?",
    r"(?:don'?t|doesn'?t|does not|do not) fit",
    r"(?:bit |slightly |a little )?(?:worn|chew\w*|chipped|galled|damaged) but (?:still )?"
    r"(?:usable|serviceable|fine|ok|okay|good|works?)",
)


def came_along(part: Said, sizes: Sequence[Said]) -> bool:
    """Whether it came with a machine, and nothing says that it is wanted anew."""
    words = part.words
    ahead = part.ahead
    before = next((other for other in sizes if other.end == part.begin), None)
    if before is not None and _LISTED_ON.match(words):
        words, ahead = f"{before.words} {words}", f"{before.words} {ahead}"
    found = CAME_ALONG.search(words)
    if found is None or NEWLY.search(ahead, found.start()):
        return False
    said = _OF_NO_USE.sub(" ", " . ".join([words.replace(found[0], " "), *part.behind[:1]]))
    return WANTED_ALL_THE_SAME.search(said) is None
