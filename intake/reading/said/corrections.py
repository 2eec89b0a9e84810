"""'No wait', 'sorry, that should be': figures that replace what was said before."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from re import Pattern

from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of, whole_words

_COMMA_LOST = any_of(
    r"(?:decimals?|(?:decimal )?points?|commas?|dots?)(?: (?:is|are|was|were|went|got))? (?:missing"
    r"|lost|left out|dropped|forgotten)",
    r"(?:forgot|missed|missing|lost|dropped|left out|omitted) (?:the |a |my )?(?:decimals?|commas?"
    r"|(?:decimal )?points?|dots?)",
    r"fehl(?:t|en|te|ten) (?:\w+ )?(?:das |die |ein )?(?:kommas?|dezimalpunkte?)",
    r"kommas? (?:vergessen|fehl(?:t|en)|verrutscht|verloren|vertauscht)",
    r"manqu(?:e|ent|ait) (?:la|les|une|des) virgules? | oublié (?:la|les|une) virgules?",
    r"virgules? oubliées? | faltan? (?:la|las|el|los) (?:comas?|puntos?)",
    r"olvid\w+ (?:la|las|el|los) (?:comas?|puntos?)",
    r"manca(?:no)? (?:la|le|il|i) (?:virgol[ae]|punt[oi]) | dimenticato (?:la|le|il) (?:virgol[ae]"
    r"|punto)",
    r"komma'?s? (?:ontbreekt|ontbreken|vergeten|mist) | ontbreekt (?:de|een) komma",
)
"""'There the commas are missing: 25,0 x 2,0': put right, though 'forgot' may add."""
_CORRECTION = whole_words(
    _COMMA_LOST,
    r"(?<![\w,] )(?<!-)ups(?=[,!]) | upps | hoppla | huch | oups | ops(?=[,.!: ]) | oeps",
    r"(?<![a-z] )no(?=, (?:\d|\.\d))",
    r"(?:sorry|oh|ah|oops|whoops|er|um|erm),? (?:no|nope|nee|nein)(?=[,.:]? \W?\.?\d)",
    r"(?:désolée?|scus[ai]|perdona|perdone),? non?(?=[,.:]? \W?\.?\d)",
    "no wait | wait no | wait(?=,) | scratch that | strike that | correction | i meant | i mean",
    r"sorry(?=,| -|\.) | sorry\b(?=.{0,30}\b(?:is|it's|should|meant|wrong|not)\b) | my mistake",
    r"nein,? (?:moment|halt|stopp?|warte\w*|doch nicht|quatsch|falsch|sorry) | ach nein"
    r" | moment(?=,)"
    r" | quatsch(?=[,.]) | stopp(?=,) | (?:ah )?non,? (?:attendez|attends|pardon|excusez)"
    r" | attendez"
    r"(?=,) | no,? (?:espera\w*|perdone|disculpe\w*|aspett\w+|scus\w+) | (?:espere|aspetti|wacht"
    r"|momento|momentje)(?=,) | nee,? (?:wacht|sorry|momentje|toch niet)",
    "let's say | lets say | let's make (?:it|that) | sagen wir | disons | digamos | diciamo",
    "laten we zeggen",
    "my bad | oops | whoops | edit(?=:) | typo | actually",
    # "Make it two." counts mandrels
    r"make (?:that|it)(?! (?:a pair|one|two|three|four|five|six|\d)(?:\W*$|[.,;!?]\s|\s(?:of"
    r"|pieces?"
    r"|pcs|mandrels?|please|pls|each|off|thanks)\b))",
    "should (?:be|have been|read|say) | should've been | ignore (?:that|the|my|what)",
    "should(?: have|'ve) (?:said|read|written|put|typed|gone|told you) | i wanted to (?:say|write)",
    "hätte (?:hei(?:ß|ss)en|lauten|stehen) (?:sollen|müssen) | sollte (?:hei(?:ß|ss)en|lauten)",
    "aurais dû (?:dire|écrire|mettre) | debí (?:decir|poner|escribir)",
    "avrei dovuto (?:dire|scrivere)",
    "dovevo (?:dire|scrivere) | had moeten (?:zijn|staan)",
    r"forget (?:that|the|what) | on second thought | nope",
    r"(?:scrub|scrap|scratch|strike) (?:that|the)(?= (?:clr |radius )?\d)",
    # "PS you did a 2 inch one for my brother" puts nothing right
    # nor does "PS: the 42 x 2 arrived yesterday"
    r"p\.?\s?s\.?(?!\W{0,3}(?:[\w']+\s){1,3}?(?:did|made|built|sold|bought|met|said|loves?)\b)"
    r"(?!\W{0,3}(?:the|your|der|le|el|il|de)\s(?:[^\W\d]+\s){0,2}\W?\d[^.?!;\n]{0,4}(?:[.,]\d+)?"
    r"\s?[x×]\s?\d?(?:[.,]\d+)?\s?(?:mm\s)?(?:arrived|came|works?|runs?|has (?:arrived|come)|kam"
    r"|läuft|ist (?:da|angekommen)|marche|est (?:bien )?arrivé|funciona|llegó|ha llegado|funziona"
    r"|è arrivat[oa]|werkt|loopt|is (?:here|aangekomen|binnen))\b)",
    "not .{1,18}, (?:it's|its|but)",
    "korrektur | korrigiere | ich meine | ich meinte | entschuldigung | sondern | erratum | pardon",
    "je voulais dire | plutôt | perdón | perdon | quiero decir | corrección | mejor dicho | anzi",
    r"ho sbagliato,? (?:è|era|sono)(?= \W?\d) | (?:i|we) (?:was|were|got it|had it) wrong,? it"
    r"(?:'?s| is)(?= \W?\d)",
    r"i made a mistake,? it(?:'?s| is| should be)(?= \W?\d)",
    r"(?:habe?|hatte) mich (?:vertan|geirrt|verschrieben|vertippt),? (?:es ist|es sind|richtig "
    r"(?:ist|sind)"
    r"|ist|sind)(?= \W?\d)",
    r"je me suis trompée?,? (?:c'est|ce sont)(?= \W?\d) | me (?:he )?equivo(?:qué|cado),? (?:es"
    r"|son)(?= \W?\d)",
    r"ik heb me vergist,? het (?:is|moet)(?= \W?\d) | hang on,? that'?s (?:the )?(?:old|wrong)",
    "scusate | volevo dire | correzione | intendevo | correctie | ik bedoel | excuus | instead",
)
_WEAK = whole_words(
    r"no,? (?:hang|hold) on | (?:hang|hold) on(?=,)",
    # "no 2: 60 OD" is the second of a list
    r"(?<![a-z] )no(?= (?:\d|\.\d))(?! \d\d?(?:\s?[:)]|\s[–-]\s))",
    "no(?=,? (?:it's|make|sorry|that's))",
    r"stop(?=,) | halt(?=,) | (?:erreur|fehler|errore|error|fout)(?=[,:.])",
    "but (?:we|i) (?:actually |really |always |now |will )?(?:run|use|buy|bend|order|get)",
    "that(?:'?s| is| was)? (?:wrong|not right|incorrect) | thats not (?:it|right)",
    r"(?:gave|told|sent|quoted|wrote|put|typed) (?:you |down )?(?:the |a )?wrong (?:\w+ )?"
    r"(?:radius|wall|size|od|diameter|clr|number|figure|gauge|thickness|dimension|one)",
    r"(?:i|we) (?:had|got) (?:the \w+|it|that|them) wrong | i misread | misread (?:it|that|the)",
    r"das (?:ist|war|stimmt) (?:falsch|nicht) | stimmt nicht",
    r"falsche[nrs]? (?:radius|wand\w*|maß)",
    r"vertippt | verschrieben | hab(?:e)? mich (?:geirrt|vertan) | c'est faux | me suis trompée?",
    r"mauvais (?:rayon|diamètre) | mauvaise épaisseur | me (?:he )?equivo(?:qué|cado)",
    r"(?:radio|espesor|diámetro) equivocado | mi sono sbagliat[oa] | (?:raggio|spessore) sbagliato",
    r"let'?s (?:just )?(?:go (?:with|for|to|up to|down to)|use|run|take|make|do)",
    r"after all(?! \w)",
    r"(?:machen|nehmen) wir (?:doch |mal )?lieber | nehmen wir doch | doch lieber | lieber doch",
    r"stattdessen | finalement | en fin de compte | à la place(?! d) | après tout",
    r"mejor (?=pon|con|de |a |\d|que sea) | al final | en su lugar | facciamo | alla fine",
    r"doe (?:dan )?(?:toch )?maar | toch (?:maar|liever) | in plaats daarvan | maak er",
    r"dat klopt niet | (?:ik heb me|heb me) vergist | verkeerde (?:straal|wanddikte|maat|diameter)",
)
"""What often corrects, and as often goes on to another tube: 'but we use 1.75 x .095 on gates'."""
_COMMA = whole_words(_COMMA_LOST)
_ADDS = whole_words(
    "and (?:what|how) about | also | another | add | adding | plus | additional",
    "additionally | forgot | in addition",
    "auch | noch | zusätzlich | außerdem | vergessen | ergänzend | aussi | ajout\\w+ | également",
    "oublié | también | además | añad\\w+ | agreg\\w+ | olvid\\w+ | anche | inoltre | aggiung\\w+",
    "dimenticat\\w+ | ook | nog | bovendien | toevoegen | vergeten",
)
"""'Oops, forgot: another for 2 x .065' adds a size and replaces none."""
_AT_END = late_pattern(
    r"(?:instead(?! of)|after all|stattdessen|à la place(?! d)|après tout|en su lugar"
    r"|in plaats daarvan)\b"
)
"""'Go with 2 mm instead': said behind what it puts in."""
_LIST_BEGINS = late_pattern(r":[ \t]*\n[ \t]*(?:[-*•–]|[^\W\d]{0,8}[ .#]{0,2}\d{0,2}[.):]?)[ \t]*$")
_LABEL = 40
_LONGEST_REMARK = 120
"""'No wait. It is 1.75.': a correcting sentence without figures is short."""


def hear_corrections(layout: Layout) -> None:
    """After 'no wait' a figure replaces the one of its role, until the paragraph ends."""
    correcting = doubtful = False
    paragraph = -1
    first_size: int | None = None
    for sentence, figures in sorted(layout.by_sentence.items()):
        if figures[0].paragraph != paragraph:
            paragraph = figures[0].paragraph
            correcting = doubtful = False
        first = figures[0].start
        if _LIST_BEGINS.search(layout.text, max(0, first - _LABEL), first):
            correcting = doubtful = False  # "Pasting it again:", and the list below
        place = _mark_in(layout, sentence, first, _CORRECTION)
        if place is not None or _marked_before(layout, sentence, first_size, _CORRECTION):
            correcting = True
        elif not correcting:
            place = _mark_in(layout, sentence, first, _WEAK)
            doubtful = (
                doubtful or place is not None or _marked_before(layout, sentence, first_size, _WEAK)
            )
        if _adds(layout, sentence, place):
            correcting, doubtful, place = False, False, None
        start = first if place is None else place
        said = correcting or (doubtful and not _names_another(layout, figures, start))
        replaces = said if first_size is not None else place is not None and first < start and said
        if replaces:
            if figures[0].start >= start and figures[0].link in LISTED:
                figures[0].link = "apart"  # "CLR 4. No, 4.5"
            for figure in figures:
                figure.corrects = figure.corrects or figure.start >= start
        first_size = sentence if first_size is None else first_size


def _adds(layout: Layout, sentence: int, place: int | None) -> bool:
    """Whether the words before the next figure add something, from the mark on if there is one."""
    begin = layout.sentence_start(sentence) if place is None else place
    after = next((f.start for f in layout.in_sentence(sentence) if f.start >= begin), begin)
    return _ADDS.search(_COMMA.sub(" ", layout.words(begin, after).casefold())) is not None


def _names_another(layout: Layout, figures: Sequence[Figure], start: int) -> bool:
    """Whether the figures from a place on name a whole tube of an OD that was not said before: a
    further size, and no figure put right."""
    behind = [figure for figure in figures if figure.start >= start]
    tube = next((a for a, b in pairwise(behind) if b.link == "times"), None)
    if tube is None:
        return False
    return all(f.number.value != tube.number.value for f in layout.figures[: tube.index])


def _mark_in(layout: Layout, sentence: int, first: int, marks: Pattern[str]) -> int | None:
    """Where in the text the sentence corrects itself; ``first`` is where its first figure is.

    'Sorry I said .095, it should be .083': the mark that follows a figure is the one, if another
    figure follows it ('I meant .120, sorry').
    """
    begin = layout.sentence_start(sentence)
    said = layout.sentence_text(sentence)
    places = [
        begin if _AT_END.match(said, mark.start()) else begin + mark.start()
        for mark in marks.finditer(said)
    ]
    last = layout.in_sentence(sentence)[-1].start
    behind = (p for p in places if first < p <= last or (p > first and p == places[0]))
    return next(behind, places[0] if places else None)


def _marked_before(
    layout: Layout, sentence: int, first_size: int | None, marks: Pattern[str]
) -> bool:
    """A correcting sentence without figures of its own: 'No wait. It is 1.75.'"""
    before = sentence - 1
    if first_size is None or before <= first_size or layout.in_sentence(before):
        return False
    short = len(layout.sentence_text(before)) < _LONGEST_REMARK
    return short and layout.says(before, marks)
