"""Walls that a question only asks about: 'would the same one also work on 18 ga?'.

The mandrel is for another wall, which is told elsewhere; nobody asks for a second one.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words

_MANDREL = any_of("mandrel | tool | one | dorn | mandrin | mandril | mandrino | anima | doorn")
_SAME_ONE = late_pattern(
    r"\b(?:"
    rf"(?:the |that |this )?same {_MANDREL}|(?:that|this|the) (?:mandrel|one)|one mandrel"
    rf"|derselbe {_MANDREL}|der gleiche {_MANDREL}|dieser {_MANDREL}|le même(?: {_MANDREL})?"
    rf"|el mismo(?: {_MANDREL})?|l[ao] stess[ao](?: {_MANDREL})?|dezelfde(?: {_MANDREL})?"
    r"|(?:would|will|does|can|could|is) it)\b"
)
_WORKS = whole_words(
    r"works? | do | does | fits? | suits? | serve | cover | handle | run | good | ok | okay | fine",
    r"usable | used? | geht | passt | funktioniert | taugt | verwenden | nehmen | irait | va | ira",
    r"convien\w+ | utiliser | march\w+ | sirv\w+ | serviría | vale | valdría | funciona\w*",
    r"va bene | andrebbe | funzion\w+ | usare | werkt | past | gaat | gebruiken",
)
_ORDERS = whole_words(
    r"quot\w+ | pric\w+ | need\w* | order\w* | want\w* | please | make | offer | cost\w* | buy",
    r"angebot\w* | anbiet\w* | brauch\w* | bitte | kost\w+ | prix | devis | besoin | faut",
    r"precio | presupuest\w+ | necesit\w+ | cuesta\w* | prezz\w+ | preventiv\w+ | bisogno",
    r"prijs\w* | offerte | nodig | or | oder | ou | of | two | second",
)
_MOST = 4


def set_walls_asked_about_aside(layout: Layout) -> None:
    """Set the walls of such a question aside, where another sentence tells the tube's."""
    walls = [f for f in layout.figures if f.role == "wall" and f.is_measure]
    for sentence in {figure.sentence for figure in walls}:
        figures = [f for f in layout.in_sentence(sentence) if f.is_measure]
        elsewhere = any(wall.sentence < sentence for wall in walls)
        only_walls = len(figures) <= _MOST and all(f.role == "wall" for f in figures)
        if not (elsewhere and only_walls) or any(f.row is not None for f in figures):
            continue
        words = layout.sentence_text(sentence)
        behind = layout.words(figures[-1].end, layout.tokens[layout.spans[sentence][1]].end + 1)
        if "?" not in behind or _ORDERS.search(words):
            continue
        if _SAME_ONE.search(words) and _WORKS.search(words):
            layout.aside.append(" ".join(words.split()))
            for figure in figures:
                figure.negated = True
