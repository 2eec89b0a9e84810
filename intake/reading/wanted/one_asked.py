"""Where one mandrel is asked for, only one of the sizes named can be meant; others are doubted."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words
from .each_words import EVERY_ONE, FOR_EACH, JE
from .one_and_one import asks_for_one_and_one
from .told import not_asked

ONE_OF_THESE = "one mandrel is asked for, and more than one size is named"
_ONE = whole_words(
    r"(?:one|1|a|single) (?:\w+ ){0,2}?mandrel | (?:just|only) one",
    r"one (?:only|off|piece|pc)",
    r"1 (?:off|pcs?|piece|ea|each|only|nos?|stk|stück|st|pz|pza|ud|stuks?) | one-off",
    r"(?:qty|quantity|menge|anzahl|quantité|cantidad|quantità|aantal)\W{0,2} ?(?:1|one)",
    r"(?:get|quote|price|want|need|have|take|for) (?:just |only )?(?:one|1)"
    r"(?= (?:for|please|of)|[.,;!?\n]|$)",
    r"(?:einen|ein|einem) (?:\w+)?dorn | un (?:seul )?mandrin | un (?:solo )?mandril",
    r"un (?:solo )?mandrino | un'anima | (?:één|een) doorn",
)
_SEVERAL = whole_words(
    *FOR_EACH,
    r"(?:will|can|could|does|would|should) one (?:mandrel )?(?:cover|do|handle|serve|work|fit|be)",
    r"(?:not|than|or|oder|ou|o|of) (?:two|zwei|deux|dos|due|twee)",
    r"each | per (?:die|size|row|line|radius|tube|item|od|wall|option) | both | another | also",
    r"either | (?:two|2|three|3) (?:ways|options|alternatives|variants|versions) | option",
    r"variante? | alternative | varianten | opción | opzione | optie",
    r"(?:every|all) (?:one|sizes?|tubes?|rad\w+|dies?|of|three|four|five|these|the)",
    r"(?:two|three|four|five|six) (?:\w+ ){0,2}?(?:mandrels?|sizes|tubes|radii|dies|pieces|of)",
    r"apiece | plus | and one | second one | mandrels | dorne | mandrins | mandriles | mandrini",
    rf"doorn(?:en|s) | anime | {JE} | jeweils | beide[rn]? | (?:zwei|drei|vier) dorne",
    r"auch",
    r"chacun\w* | chaque | (?:deux|trois) mandrins | aussi | cada | ambos | (?:dos|tres) mandriles",
    r"también | ogni | ognuno | entrambi | (?:due|tre) mandrini | anche | ciascun\w* | elk | elke",
    r"(?:the )?same(?: again)? (?:in|for|with|but)\b | as well | too(?= ?(?:[.,;!]|$))",
    r"(?:and|plus|und|et|y|e|en) (?:two|three|four|2|3|4|zwei"
    r"|drei|deux|trois|dos|tres|due|tre|twee|drie) (?:for|für|pour|para|per|voor|of|in)",
    r"geht das mit einem | reicht ein(?:er)? | suffit | basta un | volstaat",
    r"beide | (?:twee|drie) doorn(?:en|s) | ook | combinations? | separate(?:ly)?",
    r"[2-9]\d? (?:mandrels|pcs|pieces|ea|off|nos|stück|stk|st|pz|pezzi|pièces|pces|piezas|pzas|uds?"
    r"|unidades|stuks)",
    r"(?:qty|quantity|menge|anzahl|quantité|cantidad|quantità|aantal)\W{0,2} ?[2-9]",
)
_ONE_ALONE = late_pattern(
    r"(?:^|[.;!?:,(]\s?|\bso:?\s|\bjust\s|\bonly\s)(?:just |only )?(?:"
    + any_of(
        r"(?:one|1|a single) mandrel(?: only)?",
        r"(?:just|only) (?:buying |need(?:ing)? )?(?:the )?one",
        r"(?:just |only )?buying (?:just |only )?one | one mandrel is (?:enough|all)",
        r"(?:nur )?(?:ein|einen|1) dorn | un(?: seul)? mandrin | un(?: solo)? mandril | solo uno",
        r"un(?: solo)? mandrino | (?:slechts )?(?:één|een|1) doorn",
    )
    + r")(?=\s?(?:please|pls|only|bitte|svp|s'il vous plaît|por favor|per favore|graag|alstublieft"
    r"|,? thanks)?\s?(?:[.,;!?)]|$))"
)
"""'One mandrel please.': a sentence of its own, whatever else is told."""
_EVERY = whole_words(
    *FOR_EACH,
    rf"each | per | both | apiece | {EVERY_ONE} | mandrels | dorne | mandrins | mandriles",
    rf"mandrini | doorn(?:en|s) | anime | {JE} | jeweils | beide[rn]? | chacun\w* | chaque | cada",
    r"ambos",
    r"ogni | ognuno | entrambi | ciascun\w* | elk | elke | one more | another | and one",
    r"(?:will|can|could|does|would|should) one (?:mandrel )?(?:cover|do|handle|serve|work|be)",
)


def of_one(layout: Layout, groups: Sequence[Group], told: Sequence[str] = ()) -> list[bool]:
    """Which sizes may not be meant where one mandrel is asked for, once, and no word says more:
    all but the one whose sentence asks, or the sentence right behind it. ``told`` are casefolded
    words that speak of a mandrel which is there: that one is not asked for."""
    text = " ".join(layout.text.casefold().replace("’", "'").split())
    for words in told:
        text = text.replace(words, " ")
    ones = len(_ONE.findall(text))
    alone = ones <= 1 and _ONE_ALONE.search(text) is not None and not _EVERY.search(text)
    once = ones == 1 and not _SEVERAL.search(text)
    if not (alone or once) or asks_for_one_and_one(text) or _ends_of_range(groups):
        return [False] * len(groups)
    return not_asked(layout, groups)


def _ends_of_range(groups: Sequence[Group]) -> bool:
    """'Wall .065 to .095': one tube, whose ends are told apart by what is in doubt already."""
    first, *rest = groups
    apart = {
        slot
        for group in rest
        for slot in {*group.slots, *first.slots}
        if group.slots.get(slot) != first.slots.get(slot)
    }
    return len(apart) == 1 and any(
        "range" in figure.notes for group in groups for figure in group.slots.get(min(apart), ())
    )
