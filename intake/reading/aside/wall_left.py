"""How thick the wall is still to be when it is bent: 'does the wall stay above 2.3 mm on the
outside? That's our minimum.' No wall of a tube that is bought."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words

_ABOVE = late_pattern(
    r"\b"
    + any_of(
        r"above | over | at least | more than | (?:no |not )?less than | under | below"
        r" | thinner than"
        r" | down to | über | unter | mindestens | (?:mehr|weniger|dünner) als | oberhalb(?: von)?",
        r"(?:au-dessus|en dessous|au-dessous|plus|moins) d[eu]s? | au moins | sous (?:les|la)?",
        r"(?:por encima|por debajo|más|menos) de(?: los)? | al menos | como mínimo | sopra(?: i"
        r"| gli)?"
        r" | sotto(?: i| gli)? | almeno | (?:più|meno) d(?:i|ei) | boven(?: de)? | onder(?: de)?"
        r" | minstens | (?:meer|minder|dunner) dan",
    )
    + r"\s*(?:the |die |den |unsere? |our |les |nos |ces )?$"
)
_STAYS = whole_words(
    r"stays? | remains? | keeps? | (?:still |left |end up )be | be | left | ends? up | holds?"
    r" | is it"
    r" | drops? | falls? | gets? | goes?",
    r"bleib\w* | liegt | haben | behalt\w* | ist | fällt | wird | kommt",
    r"rest\w+ | garde\w* | tomb\w+ | descend\w* | sera\w* | aura | reste(?:ra)?-t-elle",
    r"qued\w+ | mantien\w+ | baj\w+ | será | cae | permanec\w+",
    r"riman\w+ | mantien\w+ | scend\w+ | sarà | cala",
    r"blijft | blijven | houden | zakt | wordt | komt | komen | zakken",
)
_BENT = whole_words(
    r"after (?:bending|the bend) | (?:in|on) the bend | outside | outer | extrados | thin(?:s"
    r"|ning)?",
    r"nach dem biegen | im bogen | außen\w* | außenseite | rücken | après (?:le )?cintrage",
    r"à l'extérieur | extérieure? | tras (?:el )?(?:doblado|curvado) | exterior | por fuera",
    r"dopo la (?:curvatura|piega) | estern[oa] | all'esterno | na het buigen | buiten\w*",
)
_FAR = 40


def set_wall_left_aside(layout: Layout) -> None:
    """Set what is to be left of the wall aside, where another sentence tells the tube's own."""
    walls = [figure for figure in layout.figures if figure.role == "wall" and figure.is_measure]
    for figure in layout.figures:
        if not figure.is_measure or figure.link == "times" or figure.row is not None:
            continue
        begin = layout.sentence_start(figure.sentence)
        ahead = layout.words(max(begin, figure.start - _FAR), figure.start)
        own = [wall for wall in walls if wall.sentence != figure.sentence]
        if not own or not _ABOVE.search(ahead) or figure.number.value > own[0].number.value:
            continue
        words = layout.sentence_text(figure.sentence)
        if _STAYS.search(words) and _BENT.search(words):
            layout.aside.append(" ".join(words.split()))
            figure.negated = True
