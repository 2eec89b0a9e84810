"""What the sender says about a figure: not this one, about so much, at least."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..counts.each_but import excepted_count
from ..text.figures import Figure, Layout
from ..text.nearby import words_nearby
from ..text.patterns import any_of, whole_words
from .changed_from import changes_to

_NOT = late_pattern(
    r"\b"
    + any_of(
        "no longer (?:run|use|need|make|bend|want) | changed (?:it )?from | up from | down from",
        "(?:never mind|nevermind|bin|scrap|drop|forget|ignore|skip|lose|disregard)(?: about)?",
        "scratch | scrub",
        "vergessen sie | oubliez | olvid(?:e|en|ad|a) | dimenticate | scordate | vergeet",
        "used to be | originally | formerly | previously | früher | bisher | not | isn't | isnt",
        "(?:do|would|will) (?:i|we) (?:have|need) to (?:go|use|step|move)(?: up)?(?: to)?",
        "wasn't | wasnt | aren't | instead of | rather than | nicht | kein | keine | pas | non",
        "niet | no es | (?<=[,;–-] )no | (?<=[(])no | y no | statt | anstatt | anstelle(?: von)?",
        "in place of | au lieu(?: de)? | à la place(?: de)? | en vez(?: de)? | en lugar(?: de)?",
        "invece di | al posto di | anziché | in plaats van",
        "ikke | inte | nie | nicht (?:mehr|länger) | niet (?:meer|langer) | n'est plus | non plus",
        r"non è(?: più)? | non più(?! di\s*$) | ya no(?: es)?",
    )
    + r"\s*"
    + any_of(
        "the | a | an | our | my | those | of | in | de | di | den | die | das | le | la | les",
        "el | il | of the | at | on a | on | du | del | da",
    )
    + r"?\s*(?:old\s)?$"
)
_EXCEPT = late_pattern(
    r"\b"
    + any_of(
        "except(?: for)? | excepting | apart from | other than | außer | sauf | excepto | tranne",
        "behalve",
    )
    + r"\s*(?:the|on the|in the|for the|dem|der|das|le|la|el|il|de|het)?\s*$"
)
_EXCEPTED = "one size is an exception: which goes with which?"
_PAST = late_pattern(
    r"^\W{0,3}(?:wall |od |clr |ones? )?"
    + any_of(
        r"(?:that )?(?:we|you|i) (?:quoted|made|sold|sent|bought|ordered|had)\b",
        "from last | like last | last time | we had before | we used to",
    )
)
_LIMIT_BEFORE = late_pattern(
    r"\b"
    + any_of(
        "no (?:tighter|smaller|less|more|larger|bigger|greater|thinner|thicker|lower|over) than",
        "not (?:less|more|under|over|tighter|smaller|bigger|larger) than | at least | at most",
        r"minimum(?: of)? | mini?\.? | maximum(?: of)? | maxi?\.? | less than | more than",
        "greater than | smaller than | larger than | bigger than | tighter than",
        # "over an 80 mm radius" is no limit
        r"(?:under|(?<!left )(?<!carried )(?<!taken )(?<!all )over)(?!\s(?:an?|our|my|the)\b)",
        "(?:puede|debe) (?:pasar de|superar|ser mayor (?:de|que)) | (?:peut|doit) pas dépasser",
        "(?:può|deve) superare | (?:darf|soll) nicht grösser (?:sein )?als | nicht über",
        "(?:mag|kan) niet groter (?:zijn )?dan | exceed | go (?:over|under|above|below)",
        "below | (?<!as )above | up to | down to | rated to | rated for | limited to | good for",
        "as (?:tight|small|low|big|large) as | mindestens | höchstens | maximal | minimal",
        "au minimum(?: de)? | au moins | au maximum",
        "minimo | massimo | almeno | mínimo | máximo | al menos | minstens",
        "hooguit | hoogstens | ten hoogste | ten minste | allenfalls | tout au plus | à la rigueur"
        " | como mucho | a lo sumo | al massimo | tutt'al più | no more than | nie mehr als",
        "ten minste | maximaal | minimaal | anything (?:over|under|above|below)",
        ">=? | <=? | ≥ | ≤",
    )
    + r"\s*(?:(?:a|an|the|about|is|of|radius|clr|fi|ø|od|dia|diameter|tube|pipe|wall|r|:|=)\s*)"
    + r"{0,3}$"
)
_OF_ANOTHER = (
    r"\W{0,3}(?:(?:bend(?:ing)?|biege)[\s-]?)?(?:angle|degrees?|winkel|ángulo|angulo|angolo|hoek)\b"
    r"|\.?[ \t][^\W\d]{1,16}(?:[ \t][^\W\d]{1,16}){0,3}[ \t]?[:=]"
)
"""'CLR 4.5', and on the next line 'Max angle: 180' or 'Min. straight length: 3'."""
_LIMIT_AFTER = late_pattern(
    r"^(?:[\"']?\s?(?:mm|in|inch|od|wall|clr|radius|rad)\s|\W{0,2})"
    + any_of(
        rf"(?:min|max)(?:imum)?\b(?!{_OF_ANOTHER})",
        "or (?:more|less|larger|bigger|greater|smaller|tighter|better|so larger|up|under|over"
        "|above|below)",
        r"and (?:up|over|under|larger|above) | \+(?!\s?[/\d.,])",
        "at (?:least|most|the (?:least|most|tightest))",
        "oder (?:mehr|grösser|kleiner|enger) | ou (?:moins|plus|davantage) | o más | o più",
        "o (?:mayor|menor|menos|superiore|inferiore|maggiore|minore) | of (?:meer|groter|kleiner)",
        "is the (?:minimum|maximum|tightest|smallest|least|most) | if possible | if you can",
    )
)
_LIMIT_ENDS = late_pattern(
    r"^[\"']?\s?(?:(?:mm|in|inch|clr|radius|rad)\s)?"
    + any_of(
        "mini | maxi | mindest(?:ens)? | (?:aller)?höchstens | minimal | maximal | minimaal",
        "(?:au|come|como|als|per lo) (?:moins|minimum|maximum|plus|minimo|massimo|mínimo)",
        "minimo | massimo | mínimo | máximo | minima | massima | mínima | máxima | maximaal",
        "almeno | al (?:menos|minimo|massimo|máximo|mínimo) | minstens | hooguit | ten minste",
    )
    + r"(?=\s*(?:[.,;:!?)\n]|$))"
)
"""'Rayon 76 mini.', 'raggio 76 minimo': right behind the figure, and the clause ends."""
_MIN_WALL = any_of(
    r"min(?:imum|\.)?\s?-?(?:wall|wt|thk)(?:\.?\s?(?:thickness|thk))? | m\.?w\b\.?",
    r"mindestwand\w* | (?:paroi|épaisseur)(?: de paroi)? mini\w*",
    "(?:espesor|pared)(?: de pared)? mínim[oa] | spessore(?: di parete)? minimo",
    "minimale wand\\w* | minimalna grubość",
)
# How boiler tube is ordered: a minimum wall is the wall that it has, and no limit to be met.
_MIN_WALL_BEFORE = late_pattern(rf"\b{_MIN_WALL}\s?(?:of |is |von |de |di |van |=|:)?\s*$")
_MIN_WALL_AFTER = late_pattern(rf"^[\"']?\s?(?:mm|in|inch)?\.?\s?{_MIN_WALL}")
_SAID = "".join(
    rf"(?<!\b{verb} )"
    for verb in "talked|spoke|speak|called|wrote|wrote you|told you|told us|emailed|e-mailed|mailed"
    "|phoned|texted|messaged|enquired|inquired|heard".split("|")
)
"""'The mandrels we talked about: 5/8 OD ...'."""
_HEDGE_BEFORE = late_pattern(
    r"(?:\b"
    + any_of(
        r"(?<!what )(?<!how )(?<!talk )(?<!asked )(?<!asking )(?<!ask )"
        rf"(?<!shout )(?<!call )(?<!line )(?<!ring )(?<!enquire )(?<!inquire ){_SAID}about"
        r" | approx\.?",
        r"approximately | roughly | circa | ca\.? | env\.? | aprox\.? | maybe | perhaps | probably",
        "possibly | i think | i believe | i guess | i'd guess | guessing | not sure | unsure",
        "(?:might|could|may) (?:just |equally )?as well be | könnte(?: aber)?(?: auch)?",
        "suppose | supposed to be | looks like | might be | could be | may be | somewhere near",
        "somewhere around | close to | near | nearly | almost | nominally | ish | etwa | ungefähr",
        "rund | zirka | wohl | vermutlich | environ | peut-être | à peu près | sans doute",
        "probablemente | alrededor de | aproximadamente | unos | forse | probabilmente | ongeveer",
        "waarschijnlijk | misschien | omkring | cirka | około",
        "autour de | dans les | aux alentours de | à vue de nez | um die | so um | in etwa",
        "sobre los | en torno a | a ojo | attorno (?:a|ai) | intorno (?:a|ai) | all'incirca",
        "a occhio | zo'n | om en nabij | credo (?:che )?(?:sia|siano) | penso (?:che )?sia",
        "potrebbe (?:anche )?essere | creo que (?:es|son|sea)",
        "podría (?:también )?ser | je crois (?:que c'|qu'il )?est | je crois",
        "pourrait (?:aussi |bien )*être | glaube ich | ich glaube | dürfte | denk ik",
        "ik denk | dacht ik | zou (?:ook )?kunnen zijn | moet ongeveer",
    )
    + r"|~|(?<!together )(?<!built )(?<!based )(?<!designed )"
    + r"\baround(?!\s(?:a|an|the|our|my)\b))\s*"
    + r"(?:it's|its|it is|is het|het is|ist es|es ist|es|is|a|an|the|of|that's|thats|that is|wall"
    + r"|od|clr|radius|at|to be|:|=)*"
    + r"\s*(?:a|an|the)?\s*$"
)
_NO_PRICE = (
    r"(?!\W{1,3}(?:(?:on|upon|vom|von|du|de|del|della|dal|van|het|the|your|den|der|ihrem"
    r"|votre)\s){0,2}"
    r"(?:l')?(?:pric|preis|angebot|prix|prec|prez|prijs|cost|quant|menge|stück|cantidad|aantal"
    r"|deliver"
    r"|liefer|délai|plazo|budget))"
)
_HEDGE_AFTER = late_pattern(
    r'^\W{0,3}(?:mm|in|inch|"|wall|od|o\.d\.|clr|radius|thick|dia|diameter)?\.?\s*'
    + any_of(
        r"\(\?\) | or so\b | ish\b | -ish\b | or thereabouts | i think\b | i believe\b | i guess\b",
        r"approx | give or take | probably | maybe\b | if i remember | if memory | from memory",
        r"as far as i (?:know|remember) | not sure | glaube ich | je crois | creo\b | credo\b",
        r"denk ik | more or less | oder so | ungefähr | we think | we believe | we suppose",
        r"\(approx | \(about | \(not sure | \(i think | , i think | , maybe | , probably",
        ", not sure",
        r"(?:geloof|dacht|vermoed|meen) ik\b | (?:denke|meine?|vermute|schätze) ich\b",
        r"je (?:pense|suppose)\b | il me semble | (?:pienso|supongo|me parece)\b",
        r"(?:penso|suppongo|mi pare|mi sembra)\b | i (?:reckon|suppose|assume)\b | if i recall",
        r"soweit ich (?:weiß|weiss) | que yo sepa | voor zover ik weet | per quanto ne so",
        rf"(?:depends|depending|hängt|je nach|dépend|selon|depende|según|dipende"
        rf"|a seconda)\b{_NO_PRICE}",
        rf"(?:hangt|afhankelijk|ligt eraan)\b{_NO_PRICE}",
    )
)
_DENYING = late_pattern(
    r"\((?:so |and |aber |ma |mais |also )?(?:not|nicht|kein\w*|pas|non|niet|geen|no es|no el"
    r"|no la)\s(?!(?:sure|certain|to|less|more|under|over|tighter|smaller|larger|bigger|greater|yet"
    r"|known|only|nur|sicher|unter|über|sûr|moins|plus|solo|sono|so|meno|più|zeker|alleen)\b)"
    r"(?:(?!\b(?:but|real|really|actual|actually|true|sondern|echt\w*|mais|sino|vrai|maar)\b)"
    r"(?:[^()\d,;]|[,;]\s(?:not|nor|and not|nicht|kein\w*|auch|pas|ni|non|né|niet|geen|no)\b"
    r")){0,24}$"
)
_BEFORE_NOW = late_pattern(
    r"\((?:(?!\b(?:order|quote|deliver|need)\w*)[^()\n]){0,40}?"
    r"\b(?:before|previously|formerly|until now|früher|bisher|vorher|avant|auparavant|antes"
    r"|anteriormente|prima|in passato|vroeger|voorheen)\b"
    r"(?:\)|[,;][^()\d\n]{0,24}\))",
    re.IGNORECASE,
)
_IN_BRACKET = 36
_MACHINE = whole_words(
    "machine | bender | bending machine | capacity | press | maschine | biegemaschine | cintreuse",
    "curvadora | dobladora | curvatubi | macchina | buigmachine | rated",
    "can (?:do|take|bend|handle) | takes | handles | goes(?! down)",
)
_NONE_BUT = late_pattern(
    r"\b(?:none of (?:which|them|these|those)|no(?:ne| need for any)? (?:others?|other sizes?)"
    r"|nothing|keine[rs]? davon"
    r"|(?:von denen|davon) [^.;\d]{0,24}keine[rns]?|aucun d'entre eux|ninguno de ellos|nessuno di"
    r" (?:questi|essi)"
    r"|geen (?:ervan|daarvan))\b[^.;\d]{0,60}?\b(?:apart from|except(?: for)?|other than|but"
    r"|besides|save|außer"
    r"|sauf|à part|excepto|salvo|tranne|eccetto|behalve)\s(?:the\s|for the\s|das\s|dem\s|le\s"
    r"|el\s|il\s|de\s)?$"
)
_REACHES = late_pattern(
    r"\b(?:machine|bender|press|\w*maschine|cintreuse|curvadora|dobladora|curvatubi|macchina"
    r"|\w*machine)\b"
    r"[^.;\d]{0,24}?\b(?:goes (?:only |all the way )?(?:up )?to|is good (?:up )?(?:to|for)|tops"
    r" out at|maxes out at"
    r"|will go (?:up )?to|is rated (?:to|for)|geht bis|schafft|monte jusqu'à|va jusqu'à|llega hasta"
    r"|arriva (?:fino )?a|gaat tot)\s(?:about\s|ca\.?\s|ø\s?)?$"
)
_BACK_TO_MACHINE = 12
_SAID_BEFORE = 120
"""Characters before a figure in which a machine, or a 'none but', is named."""
_SAME_BRACKET = 30
"""Characters between two figures of one bracket: '(max fi 76, wall 4)'."""


def hear_hedges(layout: Layout) -> None:
    """Mark figures that are limits, hedged, or said not to be meant."""
    for figure in layout.figures:
        before, after = words_nearby(layout, figure)
        min_wall = _MIN_WALL_BEFORE.search(before) or _MIN_WALL_AFTER.match(after)
        limit = bool(_LIMIT_BEFORE.search(before)) and not changes_to(before)
        limit = limit or bool(_LIMIT_AFTER.match(after) or _LIMIT_ENDS.match(after))
        if not min_wall and limit:
            figure.notes.append("limit")
        elif _EXCEPT.search(before) and excepted_count(layout, figure) is not None:
            figure.give("noise", "count")  # "one of each except the 2-1/2, two of those"
        elif _EXCEPT.search(before) and not is_the_one(layout, figure):
            figure.negated = True
            for other in layout.near_in_sentence(figure):
                other.notes.append(_EXCEPTED)
        elif _NOT.search(before) or _PAST.match(after) or _in_bracket_aside(layout, figure):
            figure.negated = True
        if _is_hedged(before, after):
            figure.notes.append("hedged")


def is_the_one(layout: Layout, figure: Figure) -> bool:
    """'None of which interest me apart from the 1-1/2': that one is wanted."""
    begin = max(layout.sentence_start(figure.sentence), figure.start - _SAID_BEFORE)
    return _NONE_BUT.search(layout.words(begin, figure.start).casefold()) is not None


def _in_bracket_aside(layout: Layout, figure: Figure) -> bool:
    """'32 mm (non il gas da 1" 1/4!)': a bracket that opens with a 'not' names what isn't meant;
    'frames (80 x 40 profile ones before, now tube)': or what was made until now."""
    opened = layout.text.rfind("(", max(0, figure.start - _IN_BRACKET), figure.start)
    if opened < 0:
        return False
    denied = _DENYING.match(layout.words(opened, figure.start)) is not None
    return denied or _BEFORE_NOW.match(layout.text, opened) is not None


def _is_hedged(before: str, after: str) -> bool:
    if _HEDGE_BEFORE.search(before) or after.lstrip().startswith(("(?)", "?)")):
        return True
    # "4 in, maybe a 5 in": the hedge is the next figure's.
    return _HEDGE_AFTER.match(after) is not None and not _HEDGE_BEFORE.search(after + " ")


def hear_capacity(layout: Layout) -> None:
    """'Our bender (max fi 76, wall 4)', 'the machine takes up to 2 in': what a machine can do."""
    for figure in layout.figures:
        if _is_reach(layout, figure):
            _set_reach_aside(layout, figure)
            continue
        if "limit" not in figure.notes:
            continue
        left = layout.tokens_before(figure, _BACK_TO_MACHINE)
        before = layout.words(left[0].start, figure.start) if left else ""
        if not _MACHINE.search(before):
            continue
        figure.role = "noise"
        behind = layout.after_in_sentence(figure)
        if behind is not None and behind.unit == "sch":
            behind.role = "noise"  # "bender will do up to 2 inch sch 40"
        widest = layout.before(figure) if figure.link == "times" else None
        if widest is not None:
            widest.role = "noise"  # "76 x 3 max capacity"
        other = layout.after_in_sentence(figure) if "(" in before else None
        while other is not None and other.start - figure.end < _SAME_BRACKET:
            if other.start > figure.end and ")" not in layout.text[figure.end : other.start]:
                other.role = "noise"
            other = layout.after_in_sentence(other)


def _is_reach(layout: Layout, figure: Figure) -> bool:
    """'Machine goes to 2" sch 40', 'the bender tops out at 3 x .120'."""
    begin = max(layout.sentence_start(figure.sentence), figure.start - _SAID_BEFORE)
    ahead = layout.words(begin, figure.start).casefold()
    return _REACHES.search(ahead) is not None and any(
        other.is_measured and other.sentence != figure.sentence and other.is_measure
        for other in layout.figures
    )


def _set_reach_aside(layout: Layout, figure: Figure) -> None:
    figure.role = "noise"
    last, after = figure, layout.after(figure)
    while after is not None and (after.link == "times" or after.unit == "sch"):
        after.role = "noise"
        last, after = after, layout.after(after)
    layout.aside.append(" ".join(layout.text[figure.start : last.end].split()))
