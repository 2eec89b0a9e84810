"""Lines of a list whose end, or whose beginning, says how it stands with each: 'have', 'NEED',
'cancelled', 'on order'.

Only a list in which some lines are said to be needed, or the request is for those 'we need', has
others set aside; a status that is not plain ('have, worn') is doubted and sets nothing aside.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

UNCLEAR_STATUS = "its line may say that it is not wanted"

_TOOLS = r"(?:mandrels?|\w*dorn|mandrin|mandril|mandrino|anima|doorn)"
_NEED = any_of(
    "(?:we |i )?(?:still |urgently |badly |do )?(?:need(?:s|ed)?|want(?:ed)?)",
    "(?:to be )?(?:quoted?|priced?)",
    "to (?:quote|buy|order|make) | (?:pls|please) (?:quote|price|make|do|build|supply|send)",
    "required | missing",
    "must have | brauche[nr]? | benötigt | gebraucht | fehlt | gesucht",
    "nötig | (?:bitte )?(?:anfragen|anbieten|bestellen) | (?:avons )?besoin",
    "manque | nécessaire | à (?:chiffrer|commander) | il (?:en )?(?:nous )?faut | falta",
    "necesit\\w+ | hace falta | cotizar | serve | servono | manca | occorre",
    "da (?:quotare|ordinare) | nodig | ontbreekt | gewenst | (?:graag )?offerte",
)
_NEED_SHORT = any_of(
    "buy | order | yes | lost | new | do | open | ja | oui | faut | sí | sì | pedir | short",
)
_URGENT = any_of(
    "urgent(?:ly|e)? | asap | dringend | eilig | priority | rush | first | spoed | pressé",
)
_THERE = any_of(
    "(?:already |do |still |we |i )*(?:have|got|own)(?: got)? | (?:we|i)'ve (?:already )?got",
    "(?:already )?in stock | on (?:the |our )?(?:hand|shelf|rack|order)",
    "in (?:the |our )?(?:rack|shop|drawer) | (?:already )?ordered | covered | owned",
    "not used(?: any ?more)? | obsolete | existing",
    "(?:schon |bereits |ist |noch )*(?:vorhanden|bestellt) | haben(?: wir)?(?: schon)?",
    "auf lager | en stock | (?:on l'a|on a|nous avons) déjà | déjà(?: en stock)? | commandé",
    "tenemos | (?:ya )?hay | ya (?:lo |la )?(?:tenemos|está) | en almacén",
    "(?:ce l')?abbiamo(?: già)? | già (?:presente|ordinato|disponibile)",
    "hebben we(?: al)? | aanwezig | in huis | al besteld | op voorraad",
    rf"{_TOOLS} (?:ist |sind )?(?:schon |bereits |noch )?(?:vorhanden|da|hier|auf lager|gut|ok)",
    rf"{_TOOLS} (?:there|on hand|in stock|available|owned|in the rack)",
    rf"{_TOOLS} (?:(?:déjà )?(?:présent|en stock|disponible|là))",
    rf"{_TOOLS} (?:ya (?:hay|lo tenemos)|disponible|en almacén)",
    rf"{_TOOLS} (?:(?:già )?(?:presente|disponibile|a magazzino))",
    rf"{_TOOLS} (?:al )?(?:aanwezig|in huis|op voorraad)",
)
_THERE_SHORT = any_of(
    "done | there | here | ok(?:ay)?(?: as is)? | fine | good | (?:schon |ist )?da | gut | passt",
    "in ordnung | erledigt | on l'a | bon | pedido | presente | c'è | goed",
)
_GONE = any_of(
    "not (?:needed|required|wanted|now|this time|yet|bent) | no (?:need|mandrel) | none | nope",
    "no longer (?:needed|used|required) | forget(?: it| that| this)? | skip | drop(?:ped)?",
    "cancell?(?:ed)? | scrapped | leave (?:it|this|that) out | don'?t (?:need|want|quote)(?: it)?",
    "do not (?:quote|need) | n/?a | dead | discontinued | bent outside | bought[ -]in",
    "nicht (?:nötig|benötigt|gebraucht|mehr|anbieten|jetzt) | entfällt | gestrichen | storniert",
    "nein | kein(?:en)? (?:bedarf|dorn) | fällt weg",
    "brauchen wir nicht | pas (?:besoin|nécessaire|maintenant|cette fois) | annulé",
    "non | abandonné | inutile | supprimé | no (?:hace falta|necesario|se necesita) | anulad[oa]",
    "cancelad[oa] | non (?:serve|necessario|occorre) | annullat[oa]",
    "niet (?:nodig|meer|nu) | vervalt | vervallen | geannuleerd | nee",
    r"(?:wird |werden )?(?:im lohn|auswärts|extern|fremd)\s?(?:gebogen|vergeben|gefertigt)?",
    "(?:sent out|farmed out|sub-?contracted|bought bent|bent by others|outside job)",
    "(?:done )?elsewhere",
    "(?:en )?sous-traité(?:e|s|es)? | en sous-traitance | (?:se )?subcontrata(?:do)? | fuera",
    "(?:fatto )?(?:da terzi|in conto terzi|esterno|fuori) | uitbesteed | (?:gaat )?naar buiten",
)
_WAITS = any_of(
    "(?:maybe |for )?later | (?:for |maybe )?next year | some ?day | (?:on )?hold | parked",
    "postponed | can wait | (?:erst )?(?:später|nächstes jahr) | plus tard | más adelante",
    "più avanti | volgend jaar",
)
_END = r"(?=\s*(?:$|[.,;:!)\]|*]|[-–—]\s))"
_LEAD = r"(?:(?:status|stand|statut|estado|stato)\s?[:=]\s?)?[\[(\"'*]{0,2}"
_BREAK = r"(?:\.{2,}|…|[-–—=]+>|\s[-–—=]+|→|[|:;,(\[\t<*]|\s{2})[\s.…(\[*\t|]*"
_ROLE = (
    r"(?:\W{0,3}\b(?:clr|rad(?:ius)?|r|mm|in(?:ch(?:es)?)?|od|wall|dom|cl|center ?line)\b)*"
    r"[\s\"'.]+"
)
_KINDS = (
    ("gone", rf"(?:{_GONE}){_END}"),
    ("waits", rf"(?:{_WAITS}){_END}"),
    ("there", rf"(?:{_THERE}(?!\w)|{_THERE_SHORT}{_END})"),
    ("need", rf"(?:{_NEED}(?!\w)|{_NEED_SHORT}{_END})"),
    ("urgent", rf"(?:{_URGENT}){_END}"),
)
_BEHIND = tuple(
    (name, late_pattern(rf"(?:{_ROLE}|[^\n]{{0,60}}?{_BREAK}){_LEAD}(?<!\w){words}"))
    for name, words in _KINDS
)
_AHEAD = tuple(
    (
        name,
        late_pattern(
            rf"^[ \t>*•–-]*(?:\w{{1,2}}[.):]\s*)?[\[(\"]?(?<!\w){words}"
            rf"(?:[\])\"]\s*|\s*(?:[-–—=]+>?|→|[|:\t])|\s{{2,}})"
        ),
    )
    for name, words in (("gone", _GONE), ("waits", _WAITS), ("there", _THERE), ("need", _NEED))
)
_PLAINLY_NONE = late_pattern(
    rf"\b(?:no {_TOOLS}(?: is|s are)? (?:needed|wanted|required|necessary)"
    rf"|{_TOOLS} not (?:needed|wanted|required)|(?:needs|need) no {_TOOLS}|(?:don'?t|do not)"
    rf" quote(?: this| it)?(?= ?(?:[.,;!)]|$))"
    rf"|kein(?:en)? {_TOOLS} (?:nötig|erforderlich|benötigt)|braucht keinen {_TOOLS}"
    rf"|(?:pas (?:besoin )?(?:de|d'un)|aucun) {_TOOLS} (?:nécessaire|requis|besoin)|(?:no "
    rf"(?:necesita|hace falta))"
    rf" {_TOOLS}|(?:non serve|nessun) {_TOOLS}(?: necessari[oa])?|geen {_TOOLS} nodig)\b"
)
"""A line that says so needs none, whatever is said of the others."""
_ANYWHERE_GONE = whole_words(
    r"forget (?:it|that|this) | not (?:needed|required|wanted)|no longer (?:needed|required)",
    r"skip (?:it|this|that) | leave (?:it|this|that) (?:out|off) | cancel?led | no mandrel needed",
    "don'?t (?:need|quote|want) (?:it|this|that|one)",
)
_WORN = whole_words(
    r"worn(?: out)? | broken? | cracked | bent | damaged | chipped | seized | galled | shot | dead",
    r"scored | knackered | replace\w* | re-?order | again | another | spare | more | but | except",
    r"verschlissen | kaputt | defekt | usé\w* | cassé\w* | gastad[oa] | rot[oa] | usurat[oa]",
    r"rott[oa] | versleten | kapot | aber | mais | pero | ma | maar",
)
_BUT = whole_words("but | though | aber | mais | pero | ma | maar | yet | until | so far | now")
_ANOTHER_THING = late_pattern(
    r"[\s:]*(?:(?:the|our|a|of|die|den|la|le|el|il|de)\s)?"
    r"(?:dies?|formers?|wipers?|tub\w+|pipe|material|machine|bender|biegeform\w*|rohr\w*"
    r"|matri\w+)\b"
)
"""'Existing die', 'have the tube'."""
_STILL_GOOD = whole_words(
    r"but (?:still )?(?:ok|okay|fine|good|usable|works|working|serviceable|alright)",
    r"(?:will|can) do",
    r"aber (?:noch )?(?:ok|gut|brauchbar) | mais (?:encore )?(?:ok|bon|utilisable)",
    r"pero (?:aún )?(?:sirve|vale|bien) | ma (?:ancora )?(?:ok|buon[oa]|va bene)",
    r"maar (?:nog )?(?:ok|goed|bruikbaar)",
)
_WANTS_THEM = whole_words(
    r"needs? | needed | wants? | wanted | quote | price | brauch\w+ | besoin | faut | necesit\w+",
    "hace falta | serve | nodig",
)
_REFUSES = late_pattern(
    r"\b(?:no|not|don'?t|do not|nicht|pas|non|no se|niet|won'?t|longer|be)\s(?:\w+\s)?$"
)
_ALL = whole_words(
    r"(?:quote|price|need|want|offer)(?: me| us)?(?: for)? (?:all|both|every\w*|each|the lot)",
    r"all (?:of them|of these|\w+ lines|the same) | alle (?:anbieten|positionen)",
    r"regardless|anyway|all the same",
)
_OF_OTHER_THINGS = late_pattern(
    r"\b(?:dies?|formers?|wipers?|tubes?|tubing|material|biegeformen|matrices|rohre?)\b"
    r"[^.\n]{0,24}\b(?:status|column|need|have|in stock|on hand|availab\w+|vorhanden)\b"
    r"|\b(?:status|have|need|last column)\b[^.\n]{0,20}\b(?:is|are|refers?|of|means?)\b[^.\n]{0,16}"
    r"\b(?:the )?(?:dies?|formers?|tub\w+|material)\b"
)
"""'Status is that of the dies': no mandrel is there."""
_THOSE_WE_NEED = late_pattern(
    r"\b(?:(?:the )?(?:ones?|those|lines|rows|items|sizes|what)(?: that| which)? (?:we|i)"
    r"(?: still)? (?:need|want|don'?t have|are missing|lack)"
    r"|(?:the )?(?:missing|needed|open) (?:ones?|lines|items|sizes)"
    r"|(?:was|die) (?:wir )?(?:brauchen|fehlt|fehlen|noch fehlen)|"
    r"ce qui (?:nous )?manque|lo que (?:nos )?falta|"
    r"quell[io] che (?:ci )?(?:servono|mancano)|wat (?:we )?(?:nodig|missen|ontbreekt))\b"
)
_LONGEST, _LABEL = 140, 48
"""Characters of a line of a list, and of what stands in it before its first figure."""
_SENTENCE = late_pattern(r"[.!?]\s+[A-ZÄÖÜÉ]")
"""What is no line of a list, but prose."""
_CLEAR = 2
"""Lines with figures of a size that make a list."""


def set_aside(layout: Layout) -> list[list[Figure]]:
    """The figures of each line that is plainly not asked for."""
    told = _told(layout)
    all_of_it = {status for status, _ in told}
    none = [figures for status, figures in told if status == "none"]
    if none and len(none) < len(told) and not _is_of_others(layout):
        return [*none, *_aside(layout, told, all_of_it)]
    return _aside(layout, told, all_of_it)


def _aside(
    layout: Layout, told: Sequence[tuple[str, list[Figure]]], all_of_it: set[str]
) -> list[list[Figure]]:
    asked = _THOSE_WE_NEED.search(_plain(layout.text)) is not None and "" in all_of_it
    if len(told) < _CLEAR or not (asked or all_of_it & {"need", "urgent"}):
        return []
    if _is_of_others(layout):
        return []
    gone = {"there", "gone", "waits"} if asked or "need" in all_of_it else {"there", "gone"}
    return [figures for status, figures in told if status in gone]


def statuses_unclear(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """Sizes that were not set aside, though their line has a status that may do so."""
    told = _told(layout)
    if min(len(told), len(groups)) < _CLEAR:
        return
    doubtful = {
        figure.index
        for status, figures in told
        if status in ("there", "gone", "waits", "unclear")
        for figure in figures
    }
    for group in groups:
        own = {f.index for slot, fs in group.slots.items() if slot not in group.shared for f in fs}
        if own & doubtful:
            yield group, UNCLEAR_STATUS


def _is_of_others(layout: Layout) -> bool:
    words = _plain(layout.text)
    return _ALL.search(words) is not None or _OF_OTHER_THINGS.search(words) is not None


def _told(layout: Layout) -> list[tuple[str, list[Figure]]]:
    """What is said of each line that has two figures or more."""
    lines: dict[int, list[Figure]] = {}
    for figure in layout.figures:
        lines.setdefault(figure.line, []).append(figure)
    return [(_status(layout, figures), figures) for figures in lines.values() if len(figures) > 1]


def _status(layout: Layout, figures: Sequence[Figure]) -> str:
    """One of the names in ``_KINDS``, 'unclear' where the words say more, or nothing."""
    begin = layout.text.rfind("\n", 0, figures[0].start) + 1
    end = layout.text.find("\n", figures[0].end)
    end = len(layout.text) if end < 0 else end
    prose = _SENTENCE.search(layout.text, figures[0].start, figures[-1].start) is not None
    if prose or end - begin > _LONGEST or figures[0].start - begin > _LABEL:
        return ""
    rest = _plain(layout.text[figures[-1].end : end])
    if _PLAINLY_NONE.search(rest) and not _asks(_PLAINLY_NONE.sub(" ", rest)):
        return "unclear" if "?" in rest or _BUT.search(rest) else "none"
    ahead = _plain(layout.text[begin : figures[0].start], keep=True)
    for name, pattern in _AHEAD:
        found = pattern.match(ahead)
        if found is None or ahead[found.end() :].strip(" \t-:.)"):
            continue
        if not _in_cell(layout, begin + found.start(), begin + found.end()):
            return _weighed(name, "")
    for figure in figures[1:]:
        behind = _plain(layout.text[figure.end : end], keep=True)
        for name, pattern in _BEHIND:
            found = pattern.match(behind)
            last = figure.end + found.end() if found is not None else 0
            if found is not None and not _in_cell(layout, last - 1, last):
                return _weighed(name, behind[found.end() :])
    behind = _plain(layout.text[figures[-1].end : end], keep=True)
    if _ANYWHERE_GONE.search(behind) and not _asks(behind):
        return "gone"
    return ""


def _in_cell(layout: Layout, begin: int, end: int) -> bool:
    """Whether words stand in a table where a length would: 'n/a' below 'Wall' is no status."""
    return any(first < end and begin < last for first, last in layout.without_figure)


def _weighed(name: str, rest: str) -> str:
    """A status by the words behind it: 'have, worn' is neither there nor needed."""
    if name in ("need", "urgent"):
        return name
    if name == "there" and _ANOTHER_THING.match(rest):
        return ""
    if "?" in rest or _asks(rest) or (_WORN.search(rest) and not _STILL_GOOD.search(rest)):
        return "unclear"
    return name


def _asks(words: str) -> bool:
    return any(not _REFUSES.search(words[: m.start()]) for m in _WANTS_THEM.finditer(words))


def _plain(text: str, *, keep: bool = False) -> str:
    folded = text.casefold().replace("’", "'")
    return folded if keep else " ".join(folded.split())
