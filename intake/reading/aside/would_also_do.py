"""Walls and tubes that a question only asks about: 'would the same one also work on 18 ga?', 'my
question is whether the same mandrel would do for 43 x 2'.

Or whether it would take another mandrel: 'would I need a different one for .083 wall?'
The mandrel is for another wall, which is told elsewhere; nobody asks for a second one.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words

_MANDREL = any_of("mandrel | tool | one | dorn | mandrin | mandril | mandrino | anima | doorn")
_SAME_ONE = late_pattern(
    r"\b(?:"
    rf"(?:the |that |this )?same (?:\d[\d.,x×/ ]*)?{_MANDREL}|(?:that|this|the) (?:mandrel|one)"
    rf"|one mandrel"
    rf"|derselbe {_MANDREL}|der gleiche {_MANDREL}|dieser {_MANDREL}|le même(?: {_MANDREL})?"
    rf"|el mismo(?: {_MANDREL})?|l[ao] stess[ao](?: {_MANDREL})?|dezelfde(?: {_MANDREL})?"
    r"|(?:would|will|does|can|could|is) it)\b"
)
_WORKS = whole_words(
    r"works? | do | does | fits? | suits? | serve | cover | handle | run | good | ok | okay | fine",
    r"usable | used? | using | go | take | suitable | right",
    r"geht | passt | passend | funktioniert | taugt | tauglich | geeignet | brauchbar | nutzbar",
    r"verwenden | verwendet | verwendbar | benutz\w+ | nutzen | nehmen | einsetz\w+",
    r"eingesetzt | irait | va | ira | aller | convien\w+ | convenir | utilis\w+ | march\w+",
    r"serv\w+ | sert | compatible | adapté",
    r"sirv\w+ | serviría | vale | valdría | valer | funciona\w* | usar\w* | utilizar\w* | apto",
    r"va bene | andrebbe | andare | funzion\w+ | usar\w+ | usato | utilizza\w+ | adatto",
    r"werkt | werken | past | passen | gaat | gebruik\w* | inzet\w* | ingezet | bruikbaar",
    r"geschikt",
)
_ANOTHER = any_of("another | different | separate | second | new | its own")
_NEEDS_ANOTHER = late_pattern(
    rf"\b(?:(?:would|will|do|does) (?:i|we|that|it) (?:then )?(?:need|take|want) an? {_ANOTHER}"
    rf"|is an? {_ANOTHER} mandrel (?:needed|required|necessary)"
    r"|(?:brauche|bräuchte|brauchen|bräuchten|benötige|benötigen) (?:ich|wir) (?:dann |dafür )*"
    r"einen (?:anderen|eigenen|zweiten|neuen|extra)"
    r"|(?:me |nous )?fa(?:ut|udra(?:it)?)[- ]il un (?:autre|second|nouveau)"
    r"|(?:necesito|necesitamos|necesitaría|hace falta|haría falta) otro"
    r"|(?:mi |ci )?(?:serve|servirebbe|occorre) un (?:altro|secondo)"
    r"|(?:heb|hebben) (?:ik|wij|we) (?:dan |daar )*een (?:andere|aparte|tweede)) "
)
_ORDERS = whole_words(
    r"quot\w+ | pric\w+ | need\w* | order\w* | want\w* | please | make | offer | cost\w* | buy",
    r"angebot\w* | anbiet\w* | brauch\w* | bitte | kost\w+ | prix | devis | besoin | faut",
    r"precio | presupuest\w+ | necesit\w+ | cuesta\w* | prezz\w+ | preventiv\w+ | bisogno",
    r"prijs\w* | offerte | nodig | or | oder | ou | of | two | second",
)
_WONDERS = whole_words(
    r"(?:question|wonder\w*)(?: is| was)?(?: just)? (?:is |if|whether)"
    r" | would be good to know (?:if"
    r"|whether) | frage(?: ist)?,? ob | (?:ich )?frage mich,? ob | interessiert (?:uns|mich),? ob",
    r"question est de savoir si | (?:je me|nous nous) demand\w+ si | (?:je|nous) (?:voudrais"
    r"|voudrions|aimerais|aimerions) savoir si",
    r"pregunta es si | (?:me|nos) pregunt\w+ si | (?:quería|quisiera|querríamos) saber si",
    r"domanda è se | (?:mi|ci) chied\w+ se | (?:vorrei|vorremmo) sapere se",
    r"vraag is of | vra(?:ag|gen) (?:me|mij|ons) af of | (?:zou|willen) graag weten of",
)
"""A question without its mark."""
_MOST = 4
_TUBE = frozenset(("od", "wall"))


def set_walls_asked_about_aside(layout: Layout) -> None:
    """Set the walls and tubes of such a question aside, where another sentence tells the tube's."""
    walls = [f for f in layout.figures if f.role == "wall" and f.is_measure]
    for sentence in {figure.sentence for figure in walls}:
        figures = [f for f in layout.in_sentence(sentence) if f.is_measure]
        elsewhere = any(wall.sentence < sentence for wall in walls)
        only_tubes = len(figures) <= _MOST and all(f.role in _TUBE for f in figures)
        if not (elsewhere and only_tubes) or any(f.row is not None for f in figures):
            continue
        words = layout.sentence_text(sentence)
        behind = layout.words(figures[-1].end, layout.tokens[layout.spans[sentence][1]].end + 1)
        if "?" not in behind and not _WONDERS.search(words):
            continue
        words = _WONDERS.sub(" ", words)
        same = _SAME_ONE.search(words) and _WORKS.search(words) and not _ORDERS.search(words)
        if same or (_NEEDS_ANOTHER.search(words) and all(f.role == "wall" for f in figures)):
            layout.aside.append(" ".join(layout.sentence_text(sentence).split()))
            for figure in figures:
                figure.negated = True
