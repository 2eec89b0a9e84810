"""Which radius is meant: to the centre line, the inside or the outside of the bend."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..aside.finishes import without_finishes
from ..naming.cue_sides import QUALIFIERS
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words, word_set
from ..text.roles import RADIUS_ROLES, Role
from .side_marks import side_behind
from .side_of_fault import without_faults
from .sided_multiples import measure_to_centre
from .within_time import without_times

_KINDS: tuple[tuple[Role, tuple[str, ...]], ...] = (
    ("clr", (
        "centre", "center", "mitte", "neutral", "middle", "à l'axe", "all'asse", "in asse",
        "al eje", "hartlijn", "mean", "clr", "moyen", "medio",
    )),
    ("inside_r", (
        "to the inside", "inside of the bend", "inside rad", "inner radius", "intrados",
        "por dentro", "inside edge", "inside of the curve", "on the inside", "inside face",
        "inside of bend", "inside bend", "inside of curve", "inside curve", "inside of arc",
        "to the inner", "inner wall", "inside wall", "inner side", "inner face",
        "inner surface", "inner curve",
        "concave side", "hollow side", "throat", "crotch of the",
        "inner edge", "inside the bend", "innen", "intérieur", "interieur", "binnen", "interno",
        "interior", "inwendig", "binnenste", "intradós", "intradosso", "creux du coude",
        "creux de la courbe", "in der kehle", "inneren bogen", "bogeninn",
    )),
    ("outside_r", (
        "to the outside", "outside of the bend", "outside rad", "outer radius", "extrados",
        "por fuera", "outer edge", "outside edge", "outside of the curve", "on the outside of",
        "outside of bend", "outside bend", "outside of curve", "to the outer", "outer wall",
        "outer side", "outer face", "outer surface", "outer curve", "convex side",
        "the heel", "at heel", "to heel", "back of the bend", "back of the elbow",
        "it is outside", "radius outside", "outside the bend", "aussenseite", "aussen gemessen",
        "aussenradius", "außenradius", "extérieur", "esterno", "exterior", "buitenzijde",
        "buitenkant", "buitenradius", "uitwendig", "buitenste", "buitenbocht", "rugzijde",
        "over de rug", "rug van de bocht", "extradós", "estradosso", "dorso della curva",
        "dorso del codo", "dorso de la curva", "sul dorso", "espalda del codo",
        "espalda de la curva", "lomo del codo", "lomo de la curva", "dos du coude",
        "dos de la courbe", "dos du cintre", "bogenrücken", "über den rücken",
        "rücken des bogens", "rücken gemessen", "äusseren bogen",
    )),
)  # fmt: skip
_LIMIT = whole_words(
    "minimum i can | minimum we can | min(?:imum)? is | smallest | tightest | at least",
    "no tighter | no smaller | or (?:bigger|larger|tighter|smaller)",
    "(?:bigger|larger) is (?:ok|fine)",
)
_RANK = whole_words("tightest | smallest")
_OTHERS_WIDER = whole_words(
    r"(?:(?:all |the )*others?(?: bends?| ones?)?|the rest) (?:is|are) (?:all |much"
    r" |a lot )?(?:larger"
    r"|bigger|wider|easier|gentler|slacker|rolled|open)",
)
_SMALLEST_DIE = whole_words(
    r"(?:the |their |our )?(?:smallest|tightest) (?:die|former|shoe|block|one)"
    r" (?:that )?(?:they|we|he|she|i|you) (?:have|has|had|got|own|stock)(?: got)?",
)
"""'CLR 52.5 (the smallest die they have)': that is the die."""
_AND = whole_words("and | then | plus")
_FOR_THE = late_pattern(
    r"^[\"']{0,2}(?:\s?(?:in|inch|inches|mm|clr|radius|r|centre ?line|center ?line))*"
    r"\s(?:for|on) (?:the|all|my|our)\b"
)
_LEAST = whole_words(
    r"min(?:imum|imal\w*)? | down to | kleinste[rn]? | engste[rn]? | mini | plus (?:petit|serré)",
    r"minimale? | mínim[oa] | menor | minim[oa] | più (?:piccolo|stretto) | krapste | jusqu'à",
)
_MACHINE = whole_words(
    r"machine | bender | \w*maschine | cintreuse | curvadora | dobladora | curvatubi | macchina",
    r"\w*machine | máquina",
)
_CENTRE_LINE = whole_words(
    r"cent(?:re|er)\s?-?lines? | to (?:the )?cent(?:re|er) | clr | rohrmitte | neutrale faser",
    "fibre neutre | ligne neutre | in asse | all'asse | al eje | hartlijn | neutral axis",
)
_UNNAMED = "taken for the radius"
_EITHER = whole_words("or | oder | ou | o | of | either | if | whether")
_OPEN = whole_words("or | oder | ou | o | of | if | whether | but | aber | mais | ma | pero | maar")
_UNSURE = whole_words(
    "we suppose | i suppose | we think | i think | i believe | we believe | not sure | unsure",
    "cannot know | can't tell | acho que | creo que | no sé | não sei | ne sais pas | weiß nicht",
    "don't know | dont know | do not know | maybe | perhaps | probably | i guess | could be",
    "doesn't say | does not say | no dice | ne dit pas | non dice | zegt niet | sagt nicht",
    "non so | nobody here | can't say | unclear | no idea | unklar | unsicher | keine ahnung | ob",
    "geen idee | weet niet | on ne sait pas | sais pas | no sabemos | could (?:also )?be",
    "ich weiß",
    "might be | vermutlich | vielleicht | peut-être | quizás | forse | misschien",
)
_REFERS_BACK = (
    "it is", "it's", "its ", "that is", "that's", "this is", "we suppose", "i think", "measured",
    "i believe", "we think", "don't know if", "not sure if", "das ist", "c'est",
)  # fmt: skip
_OF_NEED = late_pattern(
    r"\W*(?:i|we) (?:think|believe|suppose|guess) (?:that )?(?:i|we|you|he|she|they|it|this|that)"
    r"(?:'d|'ll| will| would| may| might)? (?:also )?(?:need|want|take|order|have|calls? for)\b"
)
"""'I think I need one of your mandrels': of the tool, and no remark on the radius."""
_BRACKET = late_pattern(r"\s*\([^()\d]{1,60}\)")
DENIED_SIDE = late_pattern(
    r"\b(?:not|non|nicht|pas|niet|no|kein)\s(?:(?:to|on|the|l|à|all|al|von|van|am)['’\s]\s?){0,2}"
    r"(?:inside|inner|intern[oa]|interior|intérieur|innen|binnen|outside|outer|estern[oa]|exterior"
    r"|extérieur|aussen|außen|buiten)\w*"
)
_SIDE_FIRST = late_pattern(
    r"\W*(?:on |at |along )?(?:the )?(?:(?P<inner>inside)|outside|au(?:ß|ss)en|an der au(?:ß"
    r"|ss)enseite"
    r"|à l'extérieur|por (?:el )?exterior|all'esterno|(?:aan de )?buiten(?:kant|zijde)?),?\s"
    r"(?:(?:the bend|der bogen) )?(?:the |der |le |el |il |de )?(?:soll\w*|muss|müsste|ist|sind"
    r"|beträgt|brauch\w+|radius|biegeradius|rayon|radio|raggio|straal|it|must|should|has|is|we|i"
    r"|debe|tiene|deve|moet)\b"
)
"""'Außen soll der Radius 60 sein', where the sentence begins so."""
_SOME_SIDE = late_pattern(
    r"\b(?P<side>inside|inner|inward|outside|outer)\b"
    r"(?!\s(?:dia|od\b|the (?:tube|pipe|line|box|garage|house|shop)|my|our|your|diam|bore|weld|bead"
    r"|and|tube|pipe|rail|frame|it\b|of (?:the |a |my |our )?(?!bend|curve|arc|radius|the |a )\w+))"
)
"""A side named in words that no list here has: then it may be any radius."""
_SIDE_OF = word_set("of am an du de del della dell' der des van edge edges line face")
NO_CENTRE = late_pattern(
    r"\b(?:not|non|nicht|pas|niet|no|kein(?:en?)?)\s"
    r"(?:(?:to|on|at|the|la|le|l|à|a|al|all|in|sul|sull|nel|auf|zur|zum|die|der|de|het|op|von"
    r"|del|by"
    r"|sur|au|en)['’\s]\s?){0,3}"
    r"(?:cent(?:re|er)\s?-?(?:lines?)?|clr|middle|mid\b|axis|mitte\w*|rohrmitte|achse|neutral\w*"
    r"|neutre|fibre|axe|milieu|eje|medio|centro|asse|mezzeria|hart\w*|midden\w*)"
)
"""'60, but on the inside, not to the centre line'."""
_WRINKLES = late_pattern(
    r"(?:^|[,;:–-]\s|\b(?:and|und|et|y|e|en|but|aber|mais|pero|ma"
    r"|maar)\s)(?P<of>(?:(?![,;:–]\s)\D){0,60}?"
    r"\b(?:wrinkl|kink|buckl|rippl|pucker|crease|crush|collaps|\w{0,8}falt(?:e|ig)|knick|beul"
    r"|stauch|pliss"
    r"|pli[es]|plis|rides|arrug|pliegu|ondul|grinz|piegh|rimpel|plooi|kreuk|knik)\w*"
    r"(?:(?![,;:–]\s)\D){0,60})"
)
"""'... innen kommen lauter Falten': where it wrinkles, not to where the radius is measured."""
_NEAR = 56
_LONGEST_REMARK = 300
_LABELS: frozenset[Role] = frozenset({"od", "id", "wall", "label"})


TO_CENTRE = whole_words(
    r"cent(?:re|er)(?:line)?\w* | middle | mid | milieu | medio | mezzo | midden | axis | mitte\w*",
    r"achse | rohrmitte | axe | l'axe | eje | asse",
    "all'asse | sull'asse | dell'asse | hart | hartlijn | neutral\\w* | fibra",
)
_MEASURED_TO: tuple[Role, ...] = ("radius", "clr", "inside_r", "outside_r")
_TO_OUTSIDE = whole_words(
    r"outside | outer | au(?:ß|ss)en\w* | extérieur | esterno | buiten\w* | exterior"
)
_TO_INSIDE = whole_words(
    r"outside | outer | au(?:ß|ss)en\w* | extérieur | esterno | buiten\w* | exterior",
    r"inside | inner | internal | intrados | innen\w* | innere[nr]? | intérieur\w* | interior",
    r"all'interno | interno | intern[ae] | binnen\w* | dentro",
)


def doubt_radii(layout: Layout) -> None:
    """'The arrow could point at the inner edge or the centre, nobody can tell': whatever radius
    is told, it may be either."""
    for sentence in layout.spans:
        if not (layout.says(sentence, TO_CENTRE) and layout.says(sentence, _TO_INSIDE)):
            continue
        if not (layout.says(sentence, _UNSURE) and layout.says(sentence, _OPEN)):
            continue
        near = [
            figure
            for figure in layout.figures
            if figure.role in _MEASURED_TO and abs(figure.sentence - sentence) < 2
        ]
        for number, figure in enumerate(near):
            if any(figure.number.value == other.number.value for other in near[:number]):
                figure.give("noise", "same")  # "... I'm not sure if my 4 is to the inside"
                continue
            outer = figure.role == "outside_r" or layout.says(sentence, _TO_OUTSIDE)
            figure.role = "radius"
            figure.notes.append(f"{'outside' if outer else 'inside'} or centreline radius")


def _ranked_away(layout: Layout, figure: Figure, around: str) -> str:
    """The words around it; without 'tightest' where a further radius follows that is told what it
    is for: 'tightest bend 2-1/4 CLR, and 3 for the sweeps' ranks two that are both bent; nor where
    'all others are larger and can be rolled'."""
    around = _SMALLEST_DIE.sub(" ", around)
    if layout.says(figure.sentence, _OTHERS_WIDER):
        return _RANK.sub(" ", around)
    after = layout.after_in_sentence(figure)
    if after is None or (after.role is not None and after.role not in RADIUS_ROLES):
        return around
    between = layout.words(figure.end, after.start)
    behind = layout.words(after.end, after.end + _NEAR)
    if _AND.search(between) and _FOR_THE.match(behind):
        return _RANK.sub(" ", around)
    return around


def refine_radii(layout: Layout) -> None:
    """A plain radius becomes centre, inside or outside by words elsewhere in its sentence.

    'The radius is 130 mm and it is measured to the OUTSIDE of the bend (extrados)'.
    """
    for figure in layout.figures:
        if figure.role not in RADIUS_ROLES:
            continue
        if figure.how == "table":
            continue  # its head has said all: "Ø binnen" is that of the next column
        around = _words_around(layout, figure)
        limit = _LIMIT.search(_ranked_away(layout, figure, around))
        if limit or (_LEAST.search(around) and _MACHINE.search(around)):
            figure.notes.append("limit")  # "min CLR our bender does is 110"
        if figure.role == "radius":
            if figure.how == "place" and _CENTRE_LINE.search(around):
                figure.notes = [note for note in figure.notes if not note.startswith(_UNNAMED)]
            _refine(figure, around)
        side = side_behind(layout, figure)
        asked = _EITHER.search(around) and TO_CENTRE.search(around)  # "60 inside, or centreline?"
        sure = not (_UNSURE.search(around) or asked)
        if figure.role == "times_d":
            if side is not None and not sure:
                figure.notes.append(f"{side} or centreline radius")
            measure_to_centre(layout, figure, side)
            continue
        if side is None or figure.role not in ("radius", "clr"):
            continue
        named_centre = figure.role == "clr"  # "CLR 57 inside"
        if named_centre or not sure:
            figure.notes.append(f"{side} or centreline radius")
        else:
            figure.notes = [note for note in figure.notes if "or centreline" not in note]
        if sure:
            figure.role = "inside_r" if side == "inside" else "outside_r"


def _refine(figure: Figure, around: str) -> None:
    around = without_times(without_finishes(around))
    denied = NO_CENTRE.search(around) is not None
    around = without_faults(NO_CENTRE.sub(" ", DENIED_SIDE.sub(" ", around)))
    kinds = [kind for kind, words in _KINDS if any(word in around for word in words)]
    if kinds and _UNSURE.search(around):
        figure.notes.append("hedged")
    stated = [kind for kind in kinds if kind != "clr"]
    if len(stated) > 1:
        figure.notes.append("inside, outside or centreline radius")
    elif stated and "clr" in kinds:
        figure.notes.append("inside or centreline radius")
        if not _EITHER.search(around):
            figure.role = stated[0]
    elif stated:
        figure.role = stated[0]
    elif denied:
        figure.notes.append("inside or centreline radius")  # "60, not the centreline"
    elif not kinds and (first := _SIDE_FIRST.match(around)) is not None:
        figure.role = "inside_r" if first["inner"] else "outside_r"
    elif not kinds:
        side = _SOME_SIDE.search(around)
        if side is not None:
            inner = side["side"].startswith("in")
            figure.notes.append(f"{'inside' if inner else 'outside'} or centreline radius")


def _only_qualifies(layout: Layout, at: int) -> bool:
    """Whether a word goes with the figure before: not in 'inside of the bend is 3 inch radius'."""
    behind = layout.tokens[at + 1].text if at + 1 < len(layout.tokens) else ""
    return layout.tokens[at].text in QUALIFIERS and behind not in _SIDE_OF


def _words_around(layout: Layout, figure: Figure) -> str:
    """The words between the neighbouring figures, and a remark behind that refers back."""
    first, last = layout.spans[figure.sentence]
    before, after = layout.before(figure), layout.after_in_sentence(figure)
    begin = before.token + 1 if before and before.sentence == figure.sentence else first
    end = after.token if after is not None else last + 1
    for index in range(figure.token + 1, end):
        token = layout.tokens[index]
        label = any(cue.role in _LABELS for cue in token.cues)
        before_next = after is not None and end - index <= 3
        if label and (token.text not in QUALIFIERS or before_next):
            end = index  # "Raggio: 57 mm, Diametro esterno: 38": the next figure's label
            break
    if before is not None and begin == before.token + 1:
        while begin < figure.token and any(c.role in _LABELS for c in layout.tokens[begin].cues):
            begin += 1  # "30 mm exterior con radio 60"
    if before is not None and before.role in ("od", "id"):
        # "43 intérieur, cintré à R 68": that tells of the figure before
        commas = (n for n in range(begin, figure.token) if layout.tokens[n].text == ",")
        begin = next(commas, begin)
    while first < begin < figure.token and _only_qualifies(layout, begin):
        begin += 1  # but "Innen soll der Radius 40 sein" begins with its own
    begin_text, end_text = layout.tokens[begin].start, layout.tokens[max(begin, end - 1)].end
    # "Ø30/Ø26 (outside/inside), radius 90": the bracket explains the diameters before it.
    bracket = _BRACKET.match(layout.text, begin_text, layout.tokens[figure.token].start)
    text = _WRINKLES.sub(" ", layout.words(bracket.end() if bracket else begin_text, end_text))
    following = figure.sentence + 1
    if not layout.in_sentence(following):
        remark = layout.sentence_text(following)[:_LONGEST_REMARK]
        if remark.lstrip().startswith(_REFERS_BACK) and not _OF_NEED.match(remark):
            text += " " + remark
    return text
