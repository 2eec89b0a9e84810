"""A size whose own sentence only tells of it, and that is asked for right behind: 'We're bending
44.5 x 1.5 on 100 CLR. Could you offer a mandrel?', '52 x 1.5 - R 78, one mandrel, the urgent one'.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures, slot_of
from ..text.figures import Layout
from ..text.patterns import any_of

_WHOLE = 3
"""OD, wall and radius of its own."""
_MANDREL = any_of(
    "mandrels? | dorne? | biegedorne? | mandrins? | mandril(?:es)? | mandrin[oi] | anim[ae]",
    "doorn(?:en|s)?",
)
_ASKED = late_pattern(
    r"^\W{0,4}(?:(?:so|and|now|hi|please|also|und|also|et|donc|y|e|en|dus)\W{1,2})?(?:"
    + any_of(
        r"(?:can|could|would|will) you (?:please )?(?:offer|quote|make|price|supply|do|build|sell)",
        "(?:please )?(?:quote|offer|price|make|supply) | (?:i|we)(?:'d| would)? (?:like|need|want)",
        "need | looking for | how much (?:for|is|would) | what would | price (?:for|on)",
        "(?:können|könnten|könnt|könntet) (?:sie|ihr) | bitte | (?:wir )?(?:brauchen|benötigen)",
        "(?:ich )?(?:brauche|bräuchte) | was kostet",
        "(?:pouvez|pourriez)-vous | merci de | il (?:nous|me) faut | combien (?:coûte|pour)",
        "¿?(?:pueden|podrían|podéis|puede) | (?:necesito|necesitamos) | cuánto (?:cuesta|sale)",
        "(?:potete|potreste|può) | (?:ci|mi) serve | quanto costa | (?:vorrei|vorremmo)",
        "(?:kunt u|kunnen jullie|kun je) | graag | (?:wij hebben|we hebben|ik heb) | wat kost",
    )
    + r")\b[^.;?!\n]{0,40}?\b(?:an?|one|1|eine?n?|une?|un[oa]?|een|één)\s(?:\w+\s){0,2}?"
    r"(?:mandrel|\w*dorn|mandrin|mandril|mandrino|anima|doorn)\b"
)
"""One, for this size: 'need mandrels' may ask for others named before as well."""
_FOR_ANOTHER = late_pattern(
    r"\b(?:other|others|new|second|another|next|following|below|instead|these|those|different"
    r"|anderen?|neue[nrs]?|zweiten?|folgende[nrs]?|autre|nouveau|suivant|deuxième|second"
    r"|otro|nuevo|siguiente|segundo|altro|nuovo|seguente|secondo|andere|nieuwe|volgende|tweede"
    r"|if|when|wenn|falls|si|quand|cuando|se|quando|als|whether|ob|no|not|kein\w*|pas|non|niet)\b"
)
_COUNTED = late_pattern(
    r"[^\n.;?!]{0,12}?\s?[,–=-]\s?(?:one|two|three|four|\d{1,2}|eine?n?|zwei|drei|une?|deux|trois|un[oa]?"
    r"|dos|tres|due|tre|één|een|twee|drie)\s"
    rf"(?:{_MANDREL}|off|pcs?|pieces?|stück|stk|pièces?|piezas?|pezz[oi]|stuks?)\b"
)


def is_asked_behind(layout: Layout, group: Group) -> bool:
    """Whether the words right behind a whole size ask for it, and no other size comes between."""
    own = own_figures(group)
    if len({slot_of(figure) for figure in own}) < _WHOLE:
        return False
    last = own[-1]
    if _COUNTED.match(layout.text, last.end) and last.sentence == own[0].sentence:
        return _begins_line(layout, own[0].start)
    following = last.sentence + 1
    if following >= len(layout.spans) or "\n\n" in layout.words(
        last.end, layout.sentence_start(following)
    ):
        return False
    words = layout.sentence_text(following).casefold().replace("’", "'")
    if any(slot_of(figure) for figure in layout.in_sentence(following)):
        return False
    earlier = (f for f in layout.figures if f.index < own[0].index and slot_of(f))
    if any(f.paragraph == own[0].paragraph for f in earlier):
        return False
    return _ASKED.match(words) is not None and not _FOR_ANOTHER.search(words)


def _begins_line(layout: Layout, place: int) -> bool:
    return not layout.text[layout.text.rfind("\n", 0, place) + 1 : place].strip(" \t-*•>")
