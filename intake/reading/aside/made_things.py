"""The measures of what is built out of the tube: 'the cart is 48 x 24', 'Gestell 800 x 600'."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

_THING = any_of(
    "carts? | trolleys? | gates? | bench(?:es)? | beds? | trailers? | smokers? | grills? | doors?",
    "windows? | desks? | shel(?:f|ves) | cribs? | stands? | chairs? | stools? | signs? | canop\\w+",
    "awnings? | tents? | greenhouse | hoop house | coops? | cages? | rooms? | garage | panels?",
    "tanks? | (?:table |desk |bench )?tops? | decks? | dolly | workbench | trays? | platforms?",
    "openings? | lift | sofas? | couch | pergola | arbou?r | trellis | tables? | frames? | racks?",
    "cabinets? | enclosures? | consoles? | counters? | hatch | screens? | mirrors? | booths?",
    "pools? | shops? | barns? | sheds? | buildings? | lathe | mill(?:ing machine)? | keyway | pond",
    "halle | werkstatt | schuppen | taller | nave | piscina | officina | capannone | atelier",
    "hangar | piscine | werkplaats | hal | loods | zwembad",
    "footprint | whole thing | finished (?:thing|piece|size)",
    "gestelle? | tische? | tischplatte | wagen | tore? | bank | bänke | bett(?:en)? | anhänger",
    "regale? | rahmen | schränke? | schrank | türe?n? | stühle? | stuhl | käfige? | plattform",
    "chariots? | portails? | bancs? | lits? | remorques? | cadres? | étagères? | châssis | portes?",
    "mesas? | carros? | puertas? | portón | bancos? | camas? | remolques? | marcos?",
    "bastidor(?:es)? | estantes? | tavol[oi] | carrell[oi] | cancell[oi] | panc[ah]e?",
    "lett[oi] | rimorchi[o]? | tela[io]{1,2} | scaffal[ei] | tafels? | karr?(?:en)? | hek(?:ken)?",
    "aanhangers? | rek(?:ken)? | poort(?:en)? | plateaus?",
)
_MEASURES = any_of(
    "is | are | was | be | being | measures | measuring | of | size | will | about | roughly",
    "swings | is a | is an | approx | around | ca | circa | overall | outside | = | : "
    "| has to be | needs? to be | it's",
    "at | comes out | ends up | ist | sind | wird | misst | messen | maße | fait | font | mesure",
    "est | mide | miden | es | son | misura | misurano | è | sono | meet | meten | zijn | van",
    "von | de | di",
)
_THING_BEFORE = late_pattern(rf"\b{_THING}(?:\W{{1,3}}(?:{_MEASURES})){{0,3}}\W{{0,3}}$")
_OF_SECTION = whole_words(
    "square | rectangular | rect | box | shs | rhs | hss | section | profile? | vierkant\\w*",
    "quadrat\\w* | rechteck\\w* | carré\\w* | rectang\\w+ | cuadrad\\w+ | quadr[oi] | koker\\w*",
)
_TUBE_BEHIND = late_pattern(
    r"^[\s\"']{0,3}(?:mm|cm|in|inch(?:es)?)?\s?(?:[\w-]+\s){0,2}?(?:tub(?:e|es|ing|os?|i)|pipes?"
    r"|rohre?|buis|buizen|o\.?d|wall|sch|dom|erw)\b"
)
_WALLS = Decimal(4)
"""A tube is at least so many walls across; two sides of a thing are nearer each other."""
_FAR = 60
"""Figures to either side among which a tube is named."""
_LEAD = 1000
"""Characters before the first side, blanks and all, among which the thing is named."""
_LEAST_SIDE = Decimal("1.5")
_MOST_SIDES = 3


def set_made_things_aside(layout: Layout) -> None:
    """Say of a thing's two or three sides that they are no size, where a tube is named besides."""
    for figure in layout.figures[:-1]:
        sides = _sides(layout, figure)
        if sides and _is_thing(layout, sides) and _names_tube(layout, sides):
            for side in sides:
                side.give("noise", "cue")


def _sides(layout: Layout, figure: Figure) -> list[Figure]:
    """The figures multiplied from that one on, if they can be sides."""
    if figure.link in ("times", "slash"):
        return []
    sides = [figure]
    while (following := layout.after(sides[-1])) is not None and following.link == "times":
        sides.append(following)
        if len(sides) > _MOST_SIDES:
            return []
    if len(sides) < 2:
        return []
    values = [side.number.value for side in sides]
    far = min(values) * _WALLS < max(values) if len(sides) == 2 else min(values) * 9 < max(values)
    usable = all(
        side.role is None and not side.is_gauge and not layout.tokens[side.token].cues
        for side in sides
    )
    return sides if usable and not far and min(values) >= _LEAST_SIDE else []


def _is_thing(layout: Layout, sides: list[Figure]) -> bool:
    first, last = sides[0], sides[-1]
    begin = max(layout.sentence_start(first.sentence), first.start - _LEAD)
    ahead = " ".join(layout.words(begin, first.start).split())[-60:]
    end = layout.tokens[layout.spans[last.sentence][1]].end
    if not _THING_BEFORE.search(ahead) or layout.says(first.sentence, _OF_SECTION):
        return False
    return not _TUBE_BEHIND.match(layout.words(last.end, end))


def _names_tube(layout: Layout, sides: list[Figure]) -> bool:
    """Whether an OD with its wall stands elsewhere: else the two may be what is asked for."""
    first = sides[0].index
    for figure in layout.figures[max(0, first - _FAR) : first + _FAR]:
        if figure in sides or figure.role == "noise":
            continue
        wall = layout.after(figure)
        if wall is None or wall in sides or wall.role == "noise":
            continue
        thin = wall.number.value * _WALLS <= figure.number.value or wall.is_gauge
        if thin and (wall.link == "times" or wall.sentence == figure.sentence):
            return True
    return False
