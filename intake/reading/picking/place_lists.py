"""Lines of a list that are asked for by their places, one or several in one breath.

'Just lines 1, 3 and 5', 'nur Pos. 2 und 3', 'price for a) and b)', 'I need the middle one'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words
from ..wanted.asked_words import ASKS
from ..wanted.told_words import NOT_HERE
from .place_names import (
    ARTICLE,
    BARE,
    COUNTED,
    COUNTED_PLACE,
    ENDS,
    LAST,
    MIDDLE,
    NAME,
    NEEDS_ONE,
    NO_MEASURE,
    NOUN,
    TUBE,
    places,
)
from .place_spoken import CLEFT_BEFORE, CLEFT_BEHIND

_AND = r"(?:and|und|et|y|e|en|sowie|&|\+)"
_THEN = rf"(?:\s?,\s?(?:{_AND}\s)?|\s?/\s?|\s{_AND}\s)"


def _unnamed(pattern: str) -> str:
    """The pattern without names of groups, so that it may stand in another several times."""
    return pattern.replace("(?P<number>", "(?:").replace("(?P<counted>", "(?:")


_ITEM = late_pattern(BARE, re.IGNORECASE)
_FIRST = _unnamed(rf"{ARTICLE}(?:{NOUN}\s?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE})")
_NAMED = rf"{_FIRST}(?:{_THEN}{_unnamed(BARE)})*"
_BARE_ITEM = _unnamed(rf"\(?{NAME}{NO_MEASURE}")
_SEVERAL = rf"{_BARE_ITEM}(?:{_THEN}{_BARE_ITEM})+"
_LETTERED = r"\(?[a-h]\)" + rf"(?:{_THEN}\(?[a-h]\))*"
_ONLY = any_of(
    "only | just | solely | nur | bloß | seulement | uniquement | solo | sólo | solamente",
    r"soltanto | alleen | enkel | lediglich | ausschließlich | ne \w+ (?:compte )?que",
)
_ONLY_BEHIND = any_of(
    "only | seulement | uniquement | nur | solamente | soltanto | alleen | alone | allein | seul",
    r"(?:is|are) the ones? (?:i|we) (?:need|want|are after|am after)",
    r"(?:is|are) the ones? (?:for you|to (?:quote|price|make))",
    r"(?:is|are) all (?:i|we) (?:need|want)",
)
_QUOTE = any_of(
    r"quot(?:e|es|ation) | prices? | pricing | offer | mandrels? | angebot | preise? | dorne?",
    "prix | devis | mandrins? | precios? | oferta | presupuesto | mandril(?:es)? | prezz[oi]",
    r"offert[ae] | preventivo | mandrin[oi] | prij[sz]\w* | doorn(?:en)?",
)
_FOR = any_of("for | on | für | zu | pour | para | per | voor | de | du | des | di | van")
_TAKE = any_of(
    "needs? | want | take | (?:re-?)?quote(?: up| on| us| me)? | price(?: up| out)? | order | buy",
    "(?:we|i)(?:'d| would) like | go(?:ing)? (?:ahead )?with | go for | cost up",
    "look at | interested in | anbieten | bepreisen",
    "chiffre[rz] | coter | deviser | cotizar | cotice | presupuestar | ofertar | quotare",
    "preventivare",
    "offrire | aanbieden | offreren | prijzen",
    "go ahead with | go ahead and quote | let'?s (?:do|take|go with) | brauchen? | nehmen(?: wir)?",
    "prenons | prenez | voulons | necesitamos | queremos | tomamos | quiero | prendiamo | vogliamo",
    "serve | ci serve | nemen | willen | wil",
)
_ASKED_END = any_of(
    "please | pls | bitte(?: anbieten)? | anbieten | bepreisen | s'il vous plaît | svp | por favor",
    "per favore | aanbieden | offreren | graag | alstublieft | aub",
)
_AHEAD_OF_END = any_of(
    r"(?:könnt|können|könnten|kannst) (?:ihr|sie|du)(?: bitte| uns| mir)* | (?:kunt|kun|kan|zou) "
    r"(?:u|je|jij)(?: ons| mij)? | bitte | graag | wir bitten(?: sie)? | nur",
)
_ALONE = late_pattern(rf"\b{_ONLY}\s(?:[^\W\d]+\s){{0,7}}?(?P<list>{_NAMED})", re.IGNORECASE)
_BEHIND = late_pattern(rf"(?<![\w.,/-])(?P<list>{_NAMED})\s{_ONLY_BEHIND}\b", re.IGNORECASE)
_ALONE_BARE = late_pattern(
    rf"\b{_ONLY}\s(?:(?:for|für|per|pour|para|voor|quote|need|want|the)\s){{0,2}}"
    rf"(?P<list>{_SEVERAL}|{_LETTERED}){ENDS}",
    re.IGNORECASE,
)
_BEHIND_BARE = late_pattern(
    rf"(?<![\w.,/-])(?P<list>{_SEVERAL}|{_LETTERED})\s{_ONLY_BEHIND}\b{ENDS}", re.IGNORECASE
)
_ASKED = late_pattern(
    rf"\b{_QUOTE}\s(?:(?:only|just)\s)?{_FOR}\s(?P<list>{_NAMED}|{_LETTERED}){ENDS}", re.IGNORECASE
)
_TAKEN = late_pattern(rf"\b{_TAKE}\s(?P<list>{_NAMED}){ENDS}", re.IGNORECASE)
_PLEASE = (
    late_pattern(
        rf"(?:^|[.!?:;,]\s)(?:just\s|only\s)?(?P<list>{_NAMED}),?\s{_ASKED_END}{ENDS}",
        re.IGNORECASE,
    ),
    late_pattern(rf"\b{_AHEAD_OF_END}\s(?P<list>{_NAMED})\s{_ASKED_END}{ENDS}", re.IGNORECASE),
)
"""'Items 1 and 3 please', 'Könnt ihr Pos. 1 und 3 anbieten?'."""
_CLEFT = (
    late_pattern(
        rf"\b{CLEFT_BEFORE}\s?(?P<list>{_NAMED}),?\s{CLEFT_BEHIND}\b{ENDS}", re.IGNORECASE
    ),
    late_pattern(rf"(?:^|[.!?:;,]\s)(?P<list>{_NAMED})\s{CLEFT_BEHIND}\b{ENDS}", re.IGNORECASE),
    late_pattern(
        rf"\b(?:es geht|het gaat) (?:\w+ ){{0,2}}(?:um|om) (?P<list>{_NAMED}){ENDS}", re.IGNORECASE
    ),
)
"""'It's the middle one we're after', 'den mittleren brauchen wir'."""
_PLACE_NAMED = late_pattern(
    rf"\b{NOUN}\s?\(?{NAME}{NO_MEASURE}(?!\s?[:)–-]|\s[\dØø.])", re.IGNORECASE
)
"""'line 2' in running words, and not as the head of its own line."""
_LETTER_NAMED = late_pattern(rf"(?<!\w){_FOR}\s\(?(?P<number>[a-h])\)(?!\s[\dØø.])", re.IGNORECASE)
"""'For (b) we'd take two.'"""
_PLURAL = (
    r"(?:lines|items|rows|positions|positionen|pos\.?|nos\.?|numbers|lignes|repères|reperes|marks"
    r"|regels|righe|voci|l[ií]neas|filas|partidas|zeilen|sizes|entries)"
)
_MADE_SURE = late_pattern(rf",?\s(?:{_ONLY_BEHIND}|{CLEFT_BEHIND}|{NEEDS_ONE})\b", re.IGNORECASE)
_IS_PLURAL = late_pattern(rf"^{ARTICLE}{_PLURAL}\b", re.IGNORECASE)
_TIGHT = late_pattern(rf"\b{_PLURAL}\s?\d{{1,2}}(?:,\d{{1,2}})+(?![\d.])", re.IGNORECASE)
_RANGE = late_pattern(
    rf"(?P<noun>\b{_PLURAL}\s?)(?P<first>\d{{1,2}})\s?(?:-|–|to|bis|through|thru|à|t/m|al?)\s?"
    r"(?P<last>\d{1,2})\b(?![\d.,]\d)",
    re.IGNORECASE,
)
_LONGEST = 20
_NEAR = 32
_OF_THOSE = late_pattern(
    r"\b(?:for|of|on|to|with|from|if|für|zu|von|wenn|pour|de|si|para|per|di|se|voor|van|als)"
    r"\s(?:[^\W\d]+\s)?$",
    re.IGNORECASE,
)
"""'The dies for A and C we have' says nothing of the mandrels."""
_JOINS = re.compile(rf"\s{_AND}\s")
_HAS_NOUN = late_pattern(rf"(?:{NOUN}|{TUBE}|(?:them|these|those))$", re.IGNORECASE)
_AT_END = late_pattern(ENDS, re.IGNORECASE)
_GOES_ON = late_pattern(
    rf"\s?(?:,\s?)?(?:{_AND}|plus|or|oder|ou|o|of)\s(?!the rest|the other|the remaining)"
    r"(?:the|an?|one|two|maybe|der|die|das|le|la|les|un|el|los|il|de|het|een|\d)\b"
    r"|\s?(?:-|–|to|bis|à|t/m)\s?\d"
    r"|,\s?\d{1,2}\b(?!\s?(?:mm|pcs|off|mandrels?|pieces|x|of))",
    re.IGNORECASE,
)
"""More of the list than was understood: 'only line 1 and the bigger one'."""
NO_REQUEST = whole_words(
    r"have | has | had | got | own | not | no | don'?t | doesn'?t | never | without | except",
    r"skip | already | drop | scrap | cancel\w* | ignore | made | sold | sent | haben | hat",
    "kein(?:en?)? | nicht | schon | bereits | ohne | avons | pas | déjà | sans | tenemos | ya",
    "sin | abbiamo | non | già | senza | hebben | geen | niet | al | zonder | vorhanden | if",
    "unless | or | ours | leave | covered | sorted | omit | delete | remove | streichen | but",
)
"""Words that take a clause out of what is asked for."""
_OTHER_NEWS = whole_words(
    "problem | question | issue | difference | change | stock | sell | keep | trouble | doubt",
    "frage | unterschied | question | duda | dubbio | vraag | problema | probleem",
)
_TELLS = late_pattern(
    r"\s(?:(?:come|comes|go|goes|get|gets|take|takes|fit|fits|runs?|works?|exists?|kommt|kommen|gibt"
    r"|geht|passt|vient|viennent|vienen?|vengono|komt|komen)\b"
    r"|(?:is|are|was|were|has|have|had|will|can|ist|sind|hat|haben|est|sont|ont|es|tiene"
    r"|tienen|è|sono|hanno|heeft|hebben|zijn)\b"
    r"(?!\s(?:(?:be |get |see )?(?:any |of )?(?:use|used|bent|ordered|bought|made|needed|required"
    r"|gebraucht|benötigt|verwendet|utilisée?s?|usad[oa]s?|usat[oaie]|gebruikt|nodig)\b"
    r"|needed|required|wanted|for (?:you|us)|to be|of interest"
    r"|relevant|nötig|gefragt|gewünscht|interessant|nodig|necessari\w+|à chiffrer|the one))"
    r"|(?:that|which|first|most|soonest|urgent\w*|before|qui|che|que)\b)",
    re.IGNORECASE,
)
_ALL_TOO = whole_words(
    r"all (?:of|the|lines|items|sizes|rows|two|three|four|five|six|\d) | (?:quote|price) all",
    r"(?<!mandrel )(?<!mandrels )(?<!one )(?<!1 )(?<!off )(?<!pc )(?<!two )(?<!2 )each | every",
    r"also | as well | too | both | separate(?:ly)? | alle(?! \d) | jede[rnms]? ",
    "jeweils | auch | beide | toute?s | chaque | chacun | aussi | tod[oa]s | cada | también",
    "tutt[ie] | ogni | anche | allemaal | elke? | ook",
)


def wanted(words: str, names: Sequence[str], *, labelled: bool) -> set[int]:
    """Indexes of the lines that ``words`` ask for alone; empty where that isn't plain.

    ``names`` are what the lines are called, ``labelled`` where they bear those names in the text.
    """
    said = _RANGE.sub(_counted_out, _TIGHT.sub(lambda m: m[0].replace(",", ", "), words))
    found: set[int] = set()
    asked: set[int] = set()
    loose = () if _ALL_TOO.search(said.casefold()) else (_ASKED, _TAKEN, *_PLEASE)
    bare = (_ALONE_BARE, _BEHIND_BARE) if labelled else ()
    for pattern in (_ALONE, _BEHIND, *_CLEFT, *bare, *loose):
        for match in pattern.finditer(said):
            if pattern in loose and not _is_asked(said, match):
                continue
            if pattern not in loose and _says_of(said, match):
                continue
            indexes = _listed(said, match.start("list"), match.end("list"), names)
            if indexes is None:
                return set()
            (asked if pattern in loose else found).update(indexes)
    # "First quote line 1, then line 2": without an 'only', no other line may be named, but for
    # what is said of it: "line 4 is rolled by someone else".
    others = (
        {
            index
            for match in [*_PLACE_NAMED.finditer(said), *_LETTER_NAMED.finditer(said)]
            if asked and not _is_told_of(said, match)
            for index in places(match["number"], None, names)
        }
        - asked
        - found
    )
    return found if others else found | asked


def shown(words: str, names: Sequence[str], said: str, *, labelled: bool) -> set[int]:
    """Indexes of the lines that are named in one breath before ``said``: 'A and C we have'."""
    bare = rf"|{_SEVERAL}" if labelled else ""
    pattern = re.compile(rf"(?<![\w.,/-])(?P<list>{_NAMED}{bare}),?\s{said}", re.IGNORECASE)
    found: set[int] = set()
    for match in pattern.finditer(words):
        of_it = _OF_THOSE.search(words, max(0, match.start() - _NEAR), match.start())
        items = list(_ITEM.finditer(match["list"]))
        # "Only the first two, the third one we have": a comma alone joins no places in words.
        parted = any(item["counted"] for item in items) and not _JOINS.search(match["list"])
        if len(items) > 1 and of_it is None and not parted:
            found.update(_listed(words, match.start("list"), match.end("list"), names) or ())
    return found


def _is_told_of(words: str, match: re.Match[str]) -> bool:
    """Whether a line is named only to say that it is bought elsewhere, there already, for later."""
    clause = clause_of(words, match.start(), match.end())
    if words[match.end() : match.end() + 1] == ",":  # 'La ligne 2, on l'achète cintrée'
        clause = clause_of(words, match.start(), match.end() + 1)
    return NOT_HERE.search(clause) is not None and ASKS.search(clause) is None


def _is_asked(words: str, match: re.Match[str]) -> bool:
    """Whether nothing speaks against it, as in 'we have a mandrel for item 2'."""
    bare = match["list"].casefold() in {*COUNTED, *LAST, *MIDDLE}
    clause = clause_of(words, match.start(), match.end())
    return not bare and not NO_REQUEST.search(clause)


def _says_of(words: str, match: re.Match[str]) -> bool:
    """Whether the words tell of a line, and do not ask for it: 'only line 2 has a seam'."""
    ahead = words[match.start() : match.start("list")].casefold()
    if NO_REQUEST.search(ahead) or _OTHER_NEWS.search(ahead):
        return True
    return _TELLS.match(words, match.end()) is not None


def _counted_out(match: re.Match[str]) -> str:
    """'Lines 2 to 4' as 'lines 2, 3, 4'."""
    first, last = int(match["first"]), int(match["last"])
    if not first < last <= first + _LONGEST:
        return match[0]
    return match["noun"] + ", ".join(str(number) for number in range(first, last + 1))


def clause_of(words: str, begin: int, end: int) -> str:
    """What stands between the signs around a stretch of the words, casefolded."""
    start = max(words.rfind(sign, 0, begin) for sign in (". ", ", ", "; ", "(", "! ", "? "))
    ends = (words.find(sign, end) for sign in (".", ",", ";", "(", "!", "?"))
    stop = min((at for at in ends if at >= 0), default=len(words))
    return words[start + 1 : stop].casefold()


def _listed(words: str, begin: int, end: int, names: Sequence[str]) -> list[int] | None:
    """The lines of one list of places; empty where it is none, None where it isn't understood."""
    said = words[begin:end]
    items = list(_ITEM.finditer(said))
    counted = items[-1]["counted"] is not None
    named = not counted or _HAS_NOUN.search(items[-1][0]) or _AT_END.match(words, end)
    if not named and not _MADE_SURE.match(words, end):
        return []
    numbers = len(items) > 1 and all(item["number"] is not None for item in items)
    if numbers and not _JOINS.search(said) and not _IS_PLURAL.match(said):
        return None
    if _GOES_ON.match(words, end):
        return None
    found = [places(item["number"], item["counted"], names) for item in items]
    if len(items) > 1 and not all(found):
        return None
    return [index for indexes in found for index in indexes]
