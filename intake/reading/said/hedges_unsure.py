"""Sizes told by somebody who is only 'pretty sure', or could not measure: 'it's .065, but I can't
find my mic'. The figure meant is doubted, not those beside it."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..sizes.groups import Slot, slot_of
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_NEARLY_SURE = any_of(
    "(?:pretty|fairly|almost|nearly|reasonably|mostly|relatively|somewhat|not (?:a )?hundred"
    " percent|not 100 ?%|[89]\\d ?%) (?:sure|certain|confident|positive)",
    "(?:ziemlich|fast|recht|relativ|so gut wie|nicht ganz|nicht 100 ?%) (?:sicher|gewiss)",
    "(?:presque|quasi(?:ment)?|à peu près|pratiquement|assez|pas tout à fait) "
    "(?:sûre?s?|certaine?s?)",
    "(?:casi|bastante|prácticamente|no del todo) segur[oa]s?",
    "(?:quasi|abbastanza|praticamente|piuttosto|non del tutto) (?:sicur|cert)[oaie]",
    "(?:vrij|bijna|redelijk|vrijwel|tamelijk|nagenoeg|niet helemaal) zeker",
    "supposedly | allegedly | reportedly | angeblich | soi-disant | supuestamente | naar verluidt",
)
_MEANT = (
    r"(?:,? (?:that|dass|que|de que|che|dat))?"
    r"(?: (?:it['’]?s|it is|its|that['’]?s|that is|they['’]?re|there['’]?s|es sind"
    r"|es ist|c['’]est|es"
    r"|est|è|is|sia|son|sea|het|the|die|der|das|la|le|el|l['’]|il|lo|de|wall(?:['’]?s)?|od|radius"
    r"|clr|bend|diameter|wand\w*|paroi|épaisseur|pared|espesor|spessore|parete|wanddikte|is het"
    r"|ist|siano|a|an|about))*"
)
_BEFORE = late_pattern(rf"\b{_NEARLY_SURE}{_MEANT}[ :]*$")
_TOOL = any_of(
    "mics? | micrometers? | cal+ipers? | vernier | tape measure | ruler | wall gauge",
    "schieblehre | messschieber | schublehre | mikrometer | messuhr | pied à coulisse | palmer",
    "micromètre | calibre | calibrador | pie de rey | micrómetro | calibro",
    "micrometro | schuifmaat",
    "micrometer",
)
_NOT_TO_HAND = any_of(
    "can['’]?t find | cannot find | couldn['’]?t find | could not find",
    "don['’]?t have | didn['’]?t"
    " have | haven['’]?t got | have no | had no | without | lost | left | no | need a",
    "finde[nt]? | fand | hab(?:e|en)? (?:gerade |leider |hier )?kein\\w* | kein\\w* | ohne",
    "ne trouve (?:pas|plus) | trouve (?:pas|plus) | n['’]ai pas | n['’]avais pas",
    "pas | sans | plus",
    "no encuentro | no tengo | no tenía | sin | perdí | non trovo | non ho | non avevo | senza",
    "vind | heb geen | had geen | zonder | kwijt",
)
_WITHOUT_TOOL = rf"\b{_NOT_TO_HAND}\b[^.?!\n\d]{{0,16}}\b{_TOOL}\b"
_MEASURE = any_of(
    "measured? | mic['’]?d | miked | mike | mic | checked | check | verified | verify | calipered",
    "put (?:a|the) (?:mic|caliper\\w*) (?:on|to)",
)
_NOT_DONE = any_of(
    rf"(?:haven['’]?t|have not|hasn['’]?t|has not|didn['’]?t|did not|couldn['’]?t"
    rf"|could not|not|never"
    rf"|yet to|unable to|no way to|without)(?: (?:yet|actually|been|able|to|had|a chance|the chance"
    rf"|really|properly|personally))* {_MEASURE}",
    "nicht (?:selbst |noch )?(?:nach)?gemessen | (?:noch )?ungemessen | nicht (?:nach)?messen",
    "nicht (?:über|nach)geprüft",
    "(?:pas|jamais)(?: pu| encore| eu)?(?: (?:la|le|l['’]))?(?: ?re)? ?(?:mesur\\w+|vérifi\\w+"
    "|contrôl\\w+)",
    "(?:no|sin) (?:l[oa]s? )?(?:he |hemos |pude |pudimos |haber ?l?[oa]? )?(?:podido )?(?:medi\\w+"
    "|comprob\\w+|verific\\w+)",
    "non (?:l['’] ?|l[oa] )?(?:ho |abbiamo |è stat[oa] )?(?:ancora |potuto )*(?:misurat?\\w*"
    "|verifica\\w*|controlla\\w*)",
    "niet (?:zelf |nog |echt )?(?:kunnen )?(?:na)?(?:gemeten|meten)",
)
_ITSELF = (
    r"(?= (?:it|that|this|them|those|myself|yet|though|so|because|when|up|here|is|est|aber|however"
    r"|the (?:wall|od|tube|pipe|diameter|radius|thickness)|die wand|das rohr"
    r"|den radius|l['’]épaisseur"
    r"|le tube|la pared|el tubo|lo spessore|il tubo|de wand|de buis)\b|\W*$|\W*[,;.)!–-])"
)
"""What was not measured: 'haven't checked the price' says nothing of the wall."""
_SAID_BY = any_of(
    "unless i(?:['’]ve| have)? (?:misread|mis-?measured|am wrong|['’]m wrong)",
    "if (?:the|my|his|their) (?:label|tag|drawing|print|notes?|supplier|paint"
    "|sticker|invoice|listing"
    "|cal+ipers?) (?:is|are|was|were|can be) (?:right|correct|to be believed|believed|accurate"
    "|trusted)",
    "(?:by eye|eyeball\\w*|don['’]?t quote me|don['’]?t hold me to|off the top of my head|going by"
    " (?:memory|eye|the (?:label|tag|sticker)))",
    "as (?:best|far|near) as (?:i|we) can (?:tell|measure|see|make out) | best (?:i|we) can tell",
    "is (?:how|what|the way) (?:i|we)(?:['’]ve)? (?:took|take|taken|read|understood|understand) it",
    "if (?:i|we)(?:['’]ve)? (?:read|understood|got) (?:it|that|this) right",
    "(?:so|wie) (?:ich|wir) (?:es|das) verstehen? | so (?:habe|verstehe) ich (?:es|das)",
    "si (?:j['’]ai|nous avons) bien compris | c['’]est ce que j['’]ai compris | si entendí bien",
    "según (?:lo )?entiend\\w+ | se ho capito bene | così l['’]ho capit[oa]",
    "als ik het goed (?:begrijp|heb) | zo heb ik het begrepen",
    "(?:wenn|falls) (?:das etikett|der aufkleber|die angabe|der zettel) stimmt | nach augenmaß",
    "aus dem kopf | wenn (?:ich mich|wir uns) nicht (?:irren?|täuschen?) | ohne gewähr",
    "wenn mich nicht alles täuscht | de tête | sauf erreur | si je ne me trompe(?: pas)?",
    "à vue d['’](?:œil|oeil) | si l['’]étiquette | si no me equivoco | salvo error",
    "si la etiqueta | se non (?:sbaglio|erro) | salvo errori | se l['’]etichetta",
    "uit (?:het|mijn) hoofd | als ik me niet vergis | op het oog | als het etiket",
)
_AFTER = late_pattern(
    rf"\b{_NEARLY_SURE}\b|{_WITHOUT_TOOL}|\b{_NOT_DONE}\b{_ITSELF}|\b{_SAID_BY}\b"
)
_NAMES: tuple[tuple[Slot, re.Pattern[str]], ...] = (
    ("wall", late_pattern(
        r"\b(?:walls?|thickness|thick|gauge|wand\w*|paroi|épaisseur|pared|espesor|spessore|parete"
        r"|wanddikte)\b"
    )),
    ("clr", late_pattern(
        r"\b(?:radius|radii|clr|bend|rayon|radio|raggio|straal|biegeradius)\b"
    )),
    ("od", late_pattern(
        r"\b(?:od|diameter|durchmesser|diamètre|diámetro|diametro|outside|außen\w*)\b"
    )),
)  # fmt: skip
_CLAUSE = late_pattern(r"[^.,;:!?\n\d]{1,60}")
_LEADS_TO_ONE = late_pattern(rf"{_NEARLY_SURE}{_MEANT}[ :]*(?=\.?\d|[½¼¾Øø])")
_FAR = 90
"""Characters between a figure and the words that take it half back."""
_AHEAD = 70
_AT_ONCE = 30
"""So near its beginning a sentence takes back what the one before says."""
_SURE_OF_ELSE = late_pattern(
    r"\W*(?:we|i|you|they|wir|ich|sie|nous|je|vous|that you|that we|that i|he|she)\b"
)
"""'Pretty sure we spoke last year': that is sure of no size."""


def doubt_unsure(layout: Layout) -> None:
    """Note on every figure that its own words take half back that the message is not sure."""
    sized = [figure for figure in layout.figures if slot_of(figure) and figure.is_measure]
    if not sized:
        return
    text = layout.words(0, len(layout.text))
    for figure in sized:
        if _BEFORE.search(text, max(0, figure.start - _AHEAD), figure.start):
            _hedge(figure)
    for said in _AFTER.finditer(text):
        meant = _meant(layout, sized, text, said)
        if meant is not None:
            _hedge(meant)


def _meant(layout: Layout, sized: list[Figure], text: str, said: re.Match[str]) -> Figure | None:
    """The figure that words behind it take half back; None where they are about none of them."""
    if _SURE_OF_ELSE.match(text, said.end()):
        return None
    if _LEADS_TO_ONE.match(text, said.start()):
        return None  # "pretty sure it's .065": of the one behind
    before = [f for f in sized if f.end <= said.start() and said.start() - f.end <= _FAR]
    if not before:
        return None
    last = before[-1]
    ends = layout.tokens[layout.spans[last.sentence][1]].end
    if ends < said.start() - _AT_ONCE or "\n\n" in layout.text[last.end : said.start()]:
        return None
    near = [f for f in before if f.sentence == last.sentence]
    behind = _CLAUSE.match(text, said.end())
    ahead = max(text.rfind(mark, last.end, said.start()) for mark in ".,;:!?\n")
    begin = ahead if ahead >= 0 else last.end
    named = _named(text[begin : behind.end() if behind else said.end()])
    if named is not None:
        return next((f for f in reversed(near) if slot_of(f) == named), None)
    return last


def _named(words: str) -> Slot | None:
    """The part of the size that the words name, if they name one."""
    found = [slot for slot, names in _NAMES if names.search(words)]
    return found[0] if len(found) == 1 else None


def _hedge(figure: Figure) -> None:
    if "hedged" not in figure.notes:
        figure.notes.append("hedged")
