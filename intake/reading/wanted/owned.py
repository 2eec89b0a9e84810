"""Sizes of tooling the sender has already, or had: named, but not asked for."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.cue_sides import WRAPPED
from ..said.dropped_whole import is_tube
from ..text.figures import Figure, Layout
from ..text.nearby import words_nearby
from ..text.patterns import any_of, whole_words
from .owned_anew import is_wanted_anew

_MANDREL = "dorne? | mandrin | mandrino | mandril | doorn"
_TOOLING = "tooling | tools? | werkzeuge? | outillage | utillaje | attrezzatura | gereedschap"
_OWNED = whole_words(
    "(?:we|i|they|he|she) (?:already |still |only |also |just )*"
    "(?:have|has|got|own|owns|bought|had|have got|has got|make do with|made)",
    "we've (?:already )?got | i've (?:already )?got | already (?:have|got|own|bought)",
    "(?:got|have) your",
    "have already | we already | haben (?:wir )?(?:bereits|schon) | avons déjà | ya tenemos",
    "abbiamo già | hebben (?:we )?al | ho già | ich habe schon | j'ai déjà | ya tengo | heb ik al",
    r"haben? ihren(?= (?:\w+ )?\w*dorn\b) | (?:avons|on a|j'ai) votre(?= mandrin)",
    "ten(?:emos|go) (?:vuestro|su)(?= mandril) | (?:abbiamo|ho) il vostro(?= mandrino)",
    "(?:hebben|heb) (?:we |wij |ik )?(?:jullie|uw)(?= doorn)",
    "avons deja | on a d[eé]j[aà] | j'ai deja | abbiamo gi[aà] | ho gia",
)
_STILL = whole_words(
    "already | from you | run fine | runs fine | works? fine | schon | d[eé]j[aà] | ya",
    # copper 'for a still' is for a distillery
    r"(?<!\ba )(?<!the )(?<!our )(?<!my )(?<!pot )still(?![ -]?houses?\b)",
    "gi[aà] | al",
)
# '3.75 CLR, one 90 degree bend': behind a comma one of something else is counted.
_ONE = late_pattern(
    r"^[^\w,;]{0,2}(?:wall\s|mm\s|in\s|inch\s|od\s|\"\s?)?"
    + any_of("ones? | mandrels? | dorn | mandrin | mandrino | doorn | version | tool | set")
    + r"\b"
)
_NEXT = 24
"""So many figures behind a tube of the past the new one is looked for."""
_KEEPS = whole_words(
    "same | otherwise | unchanged | as before | again | stays | remains | still | keep\\w*",
    "gleich\\w* | (?:der|die|das|dem|den)?selbe\\w* | sonst | bleib\\w* | wie bisher",
    "même | reste | inchangé\\w* | comme avant | mism[oa]s? | queda\\w* | igual | stess[oa]",
    "resta\\w* | uguale",
    "zelfde | dezelfde | hetzelfde | blijf\\w*",
)
WANTED = whole_words(
    "need | want | looking | quote | price | require | after | make | buy | order | like | please",
    r"brauchen | benötigen | suchen | bitte | cherchons | besoin | necesit\w+ | serve | cerchiamo",
    r"nodig | zoek\w* | offer | supply | gesucht | such(?:e|en) | cherche | busc(?:o|amos) | cerco",
    "gevraagd | kosten? | prix | precio | prezzo | preis | prijs | offerte | angebot | anfrage",
    "aanvraag | devis | preventivo | oferta | offerta | richiesta | demande | solicitud",
)
_REFUSES = late_pattern(
    r"\b(?:don'?t|do not|no need(?: to)?|needn'?t|not|never|without|nicht|kein\w*|pas|no|non"
    r"|niet)\s(?:to\s|me\s|any\s)?$"
)
_OURS = late_pattern(
    r"\b"
    + any_of(
        "our | my | your | the old | the existing | the current | existing | current | unser",
        "notre | nuestro | il nostro | onze",
    )
    + r"\s(?:\w+\s)?$"
)
_REPLACES = whole_words(r"replac\w+ | another | same | spare | again | duplicate | copy of | like")
_OLD = whole_words(
    "the old (?:one|tube|mandrel|size|job) | old one | previously",
    "last (?:time|order)(?!.{0,16}\\b(?:but|different|new|other|another)\\b)",
    "last year | used to | before that | the previous | before,? (?:we|i) (?:always )?"
    "(?:made|used|did|bent|ran|had) | until now (?:we|i) | früher (?:haben|hatten|war)",
    "bisher (?:haben|hatten) | avant,? (?:on|nous) | antes (?:lo |la )?(?:hac[ií]amos|us[áa]bamos)",
    "prima (?:lo |la )?(?:facevamo|usavamo) | vroeger",
)
_TAKEN_UP = whole_words(
    r"accept\w* | renew\w* | go(?:ing)? ahead | proceed | re-?order\w* | akzeptier\w* | bestell\w*",
    r"accept\w+ | command\w+ | pedimos | ordiniamo",
)
"""'Previously you quoted ..., we accept'."""
_AS_IT_WAS = whole_words(
    "before,? (?:we|i) | previously | used to | until now | früher | bisher | avant | antes",
    "prima | vroeger",
)
_TODAY = whole_words(
    "(?:been|was|were) (?:using|running|bending|doing|making|on)",
    "currently | at the moment | right now | these days | so far | today we | momentan | derzeit",
    "zurzeit | actuellement | actualmente | attualmente | nu",
)
_BUT = whole_words("but | aber | mais | pero | ma | maar")
_TURNS = late_pattern(
    r"\b(?:but|and|yet|aber|und|doch|mais|et|pero|y|ma|e|però|maar|en|,|;)\b[^.;\d]{0,24}?\b"
    + any_of(
        "now | gone (?:down|up|over)? ?to | switched | moved | changed | today | this year | went",
        "jetzt | nun | inzwischen | heute | neuerdings | gewechselt | umgestellt | maintenant",
        "désormais | passés? à | aujourd'hui | ahora | hoy | hemos pasado | adesso | ora | oggi",
        "siamo passati | nu | tegenwoordig | overgestapt | overgegaan",
    )
    + r"(?![\w'])"
)
"""'Used to be ..., but we've gone down to ...': what follows is no longer past."""
_TOOL_OWNED = late_pattern(
    rf"\b{any_of('mandrels?', _MANDREL)}\b[^.;]{{0,12}}\b(?:for|für|pour|per|para|voor)\b"
    r"(?P<what>(?:(?!\b(?:dies?|wipers?|clamps?|formers?)\b)(?:[^.;?!]|\.\d)){1,24}?)\s"
    + any_of(
        "(?:we|i) (?:already )?(?:have|own) | is here | haben wir | ist vorhanden",
        "on a déjà | we've got",
        "already have | hebben we | lo tenemos | ce l'abbiamo",
    )
    # "a mandrel for 2 x .120, we have the 6 inch die" has a die, and no mandrel.
    + r"\b(?=\W*$|\s*[.,;:!)\n]|\s+(?:already|it|that|those|here|now|still|and|but|so|in|on|schon"
    r"|bereits|noch|da|déjà|encore|ya|già|al|nog)\b)"
)
_FOR = late_pattern(r"\b(?:for|für|fur|pour|para|per|voor|with)\b(?P<what>[^;.]{1,40})$")
_A_ONE = (
    "mandrels? | one | einen? | une? | uno | una | er (?:al )?een | it | that | ce qu'il faut"
    " | todo lo necesario | quello che serve"
)
_A_TOOL = late_pattern(rf"^[^;.,]{{0,24}}\b{any_of(_A_ONE, _MANDREL, _TOOLING)}\b")
_MANDREL_FOR = late_pattern(
    r"\b(?:mandrels?|one|dorne?|ball mandrel|plug)\b[^,.;]{0,20}?"
    r"\b(?:for|in|für|pour|para|per|voor)\b"
    r"|\b(?:mandril|mandrin|mandrino|anima|doorn)\s(?:de|di|du|van|da)\b"
)
_DIE = late_pattern(
    r"\b(?:our|my|the|a|that|this)\s[^,;]{0,16}\b(?:die|dies|die set|former)\b"
    r"|\b(?:have|got|own)\s(?:already\s)?(?:(?:both|two|three|some|these|all|of)\s)*(?:\w+\s)?"
    r"(?:dies?|die sets?|formers?)\b"
)
_WITH_MANDREL = late_pattern(
    r"\b(?:die|dies|former)\b[^.;]{0,12}\b(?:and|with|plus)\b[^.;]{0,16}\bmandrels?\b"
)
_BEHIND_TOOL = 24
_WALLS_ACROSS = 4
"""A figure that goes more often than that into the one before it is likely its wall."""
_ON_A = late_pattern(r"^[^.;,]{0,16}\b(?:on|at|for|auf|bei|sur|con|su|op)\s(?:an?\s|the\s|r\s?)?$")
_CLR = late_pattern(r"\W{0,3}(?:mm|in|inch)?\W{0,2}(?:clr|radius|rad|cl\b|cent(?:er|re))")

_Value = tuple[Decimal, str | None]


def hear_owned(layout: Layout) -> None:
    """'We already have the .120 one': that figure asks for nothing."""
    gone: set[_Value] = set()
    for sentence, figures in layout.by_sentence.items():
        text = layout.sentence_text(sentence)
        owned = _OWNED.search(text)
        if owned is not None and not is_wanted_anew(text, owned, figures, layout):
            begin = layout.sentence_start(sentence)
            clause = _line_start(layout, begin, begin + owned.start())
            on_line = [figure for figure in figures if figure.start >= clause]
            gone.update(_owned_before(text, begin, owned, on_line))
            _owned_behind(layout, text, begin, owned, figures)
    _drop(layout, gone)


def _line_start(layout: Layout, begin: int, at: int) -> int:
    """Where the line begins in which 'we already have' stands; the sentence, where its lines were
    only broken by their length: '... 304L / Nous avons déjà un mandrin pour 30x2' are two."""
    end = layout.text.rfind("\n", begin, at)
    if end < 0:
        return begin
    short = end - layout.text.rfind("\n", 0, end) <= WRAPPED
    capital = layout.text[end + 1 : end + 2].isupper()
    return end + 1 if short or capital else begin


def _owned_before(
    text: str, begin: int, owned: re.Match[str], figures: list[Figure]
) -> Iterator[_Value]:
    """'For R 135 we already have a mandrel': the figure before is owned, wherever it stands."""
    named = _FOR.search(text[: owned.start()])
    if named is None or not _A_TOOL.match(text[owned.end() :]):
        return
    for figure in figures:
        if named.start() <= figure.start - begin < owned.start() and figure.role != "noise":
            yield figure.number.value, figure.unit


def _owned_behind(
    layout: Layout, text: str, begin: int, owned: re.Match[str], figures: list[Figure]
) -> None:
    wanted = next(
        (m for m in WANTED.finditer(text, owned.end()) if not _REFUSES.search(text[: m.start()])),
        None,
    )
    end = wanted.start() if wanted is not None else len(text)
    kept = (
        wanted is None
        and _STILL.search(text) is not None
        and (_DIE.search(text) is None or _WITH_MANDREL.search(text) is not None)
    )
    named = _MANDREL_FOR.search(text, owned.end())
    has_die = _DIE.search(text, owned.end()) is not None
    for figure in figures:
        place = figure.start - begin
        if not owned.start() <= place <= end or figure.role == "noise":
            continue
        if kept or _ONE.match(words_nearby(layout, figure)[1]):
            figure.negated = figure.owned = True
        elif named is not None and named.end() <= place:
            # "the .120 one for our 1-3/4 die (6 CLR)": the die is still the one meant.
            figure.context_only = figure.context_only or has_die
            figure.negated = figure.negated or not has_die


def _drop(layout: Layout, gone: set[_Value]) -> None:
    """A value owned already is not wanted, wherever else it is named; but a wall is, beside another
    OD: 'the mandrel for 1.5 x .065 we have, need 1.75 x .065'."""
    if not gone:
        return
    for figure in layout.figures:
        before = layout.before(figure) if len(gone) > 1 else None
        of_another = (
            before is not None
            and (
                figure.link == "times" or figure.number.value * _WALLS_ACROSS < before.number.value
            )
            and (before.number.value, before.unit) not in gone
        )
        if (figure.number.value, figure.unit) in gone and not of_another:
            figure.negated = True


def hear_ours(layout: Layout) -> None:
    """'Our 1.25 x .049 mandrel is fine', 'the old one was .120': not what is asked for now."""
    gone: set[_Value] = set()
    first = min((f.sentence for f in layout.figures if f.role != "noise"), default=0)
    last = max((f.sentence for f in layout.figures if f.role != "noise"), default=-1)
    for sentence, figures in layout.by_sentence.items():
        text = layout.sentence_text(sentence)
        begin = layout.sentence_start(sentence)
        tool = _TOOL_OWNED.search(text)
        if tool is not None:
            first, end = tool.span("what")
            gone.update((f.number.value, f.unit) for f in figures if first <= f.start - begin < end)
        chain = _first_chain(figures)
        behind = layout.words(chain[-1].end, chain[-1].end + _BEHIND_TOOL)
        if (
            _ONE.match(behind)
            and _OURS.search(words_nearby(layout, figures[0])[0])
            and not _REPLACES.search(text)
        ):
            for figure in [*chain, *_radius_behind(layout, figures, chain)]:
                figure.negated = figure.owned = True
        elif layout.says(sentence, _TODAY) and _drop_before_but(text, begin, figures):
            continue
        elif _OLD.search(text[: max(0, figures[0].start - begin)]) and not _TAKEN_UP.search(text):
            past = _still_past(text, begin, figures)
            for figure in past:
                figure.negated = figure.negated or len(past) < len(figures)
            replaced = _has_another_behind(layout, past, sentence)
            for figure in past:
                if replaced:
                    figure.negated = True
                elif last > sentence:
                    figure.context_only = True
                elif first < sentence and _AS_IT_WAS.search(text):
                    figure.negated = True  # "... The bend is 2D. Before we made it with 3D"
    _drop(layout, gone)


def _has_another_behind(layout: Layout, past: list[Figure], sentence: int) -> bool:
    """Whether a whole tube of the past has another one behind it, of which nothing says that it
    has the same wall or radius: then neither is the new tube's."""
    if not past or not is_tube(layout, past[0]) or layout.says_anywhere(_KEEPS):
        return False
    tubes = {figure.number.value for figure in past}
    return any(
        after.sentence > sentence and after.number.value not in tubes and is_tube(layout, after)
        for after in layout.figures[past[-1].index + 1 :][:_NEXT]
    )


def _still_past(text: str, begin: int, figures: list[Figure]) -> list[Figure]:
    """Those of the figures that are of the past: 'used to be 28 x 2 but we've gone to 25 x 2'."""
    turn = _TURNS.search(text, max(0, figures[0].end - begin))
    if turn is None or figures[-1].start - begin <= turn.start():
        return figures
    return [figure for figure in figures if figure.start - begin < turn.start()]


def _drop_before_but(text: str, begin: int, figures: list[Figure]) -> bool:
    """'Currently I do 1.25 x .065, but now I need ...': what is done today is not asked for."""
    but = _BUT.search(text)
    if but is None or figures[-1].start - begin <= but.start():
        return False
    for figure in figures:
        if figure.start - begin < but.start():
            figure.negated = True
    return True


def _radius_behind(layout: Layout, figures: list[Figure], chain: list[Figure]) -> list[Figure]:
    """'He uses your 1.625 x .083 mandrel on a 5 clr': the radius goes with it."""
    rest = figures[len(chain) :]
    if not rest or not _ON_A.search(layout.words(chain[-1].end, rest[0].start)):
        return []
    return rest[:1] if _CLR.match(layout.words(rest[0].end, rest[0].end + 16)) else []


def _first_chain(figures: list[Figure]) -> list[Figure]:
    """The first figure and what is joined to it by times signs."""
    end = 1
    while end < len(figures) and figures[end].link in ("times", "slash"):
        end += 1
    return figures[:end]
