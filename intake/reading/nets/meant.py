"""Nets for one length of which the message has two: 'nominal .083, actual .079', 'same D'."""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, slot_of
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

MEASURED = "one wall is called and another is measured: which counts?"
SAME_MULTIPLE = "the radius is said to be as many diameters as that of the other tube"
_MEASURED = whole_words(
    r"mikes? | miked | mics? | mic'?d | micrometers? | calipers? | callipers? | measur\w+ | actual(?:ly)?",
    r"in reality | comes out at | really is | true wall | messschieber | mikrometer | gemessen | misst",
    r"tatsächlich | mesuré\w* | mesure | pied à coulisse | mide | medid[oa]s? | calibre | misura(?:t[oa])?",
    "calibro | gemeten | meet | schuifmaat",
)
_CALLED = whole_words(
    r"nominal(?:ly)? | supposed to be | called | sold as | listed as | labell?ed | should be | spec\w*",
    "marked | stamped | ordered as | says | advertised | nennwand\\w* | nominell | angeblich | sollte",
    "laut | nominale? | théorique | censée? | selon | teóric[oa] | según | debería | teoric[oa]",
    "dovrebbe | nominaal | volgens | zou",
)
_SAME_D = late_pattern(
    r"\b[Ss]ame (?:D(?![\w'’]|\.\w)|(?:\d )?D of bend|(?:bend )?ratio|multiple|number of (?:D|diameters)|D[- ]bend)"
)


def doubt_meant(layout: Layout, groups: Sequence[Group]) -> None:
    """Note on each group which of its lengths may be meant otherwise; see the module."""
    _doubt_measured(layout, groups)
    _doubt_multiples(layout, groups)


def _doubt_measured(layout: Layout, groups: Sequence[Group]) -> None:
    """A sentence with a wall as it is called and as it measures: either may be meant."""
    for sentence, figures in layout.by_sentence.items():
        walls = [f for f in figures if slot_of(f) == "wall" and not f.is_gauge]
        if len({f.number.value for f in walls}) < 2 or not layout.says(sentence, _MEASURED):
            continue
        if not layout.says(sentence, _CALLED):
            continue
        for group in groups:
            held = group.slots.get("wall", ())
            if any(f in walls for f in held):
                group.notes.append(("wall", MEASURED))


def _doubt_multiples(layout: Layout, groups: Sequence[Group]) -> None:
    """'We also run 2.5 and 3 inch, same D': a radius in figures taken over to them is not meant."""
    if _SAME_D.search(layout.text) is None:
        return
    first: Figure | None = None
    for group in groups:
        radius = next(iter(group.slots.get("clr", ())), None)
        if radius is not None and radius is first and radius.role != "times_d":
            group.notes.append(("clr", SAME_MULTIPLE))
        first = first or radius
