"""Materials of sizes named by their place alone: '#1 is 4130', 'A is 304', 'the second is mild',
'ersteres aus 1.4301'."""

from __future__ import annotations

from ...late_pattern import late_pattern

_IS = (
    r"(?:\s?[:=]\s?|\s(?:(?:is|are|ist|sind|est|es|è|son|sono|zijn)\s)?"
    r"(?:in|aus|en|de|van|di|made of|of|plain|just)\s|\s(?:is|are|ist|sind|est|es|è|son|sono)\s)$"
)
_NOUN = r"(?:\s(?:one|size|tube|pipe|job|rohr|tubo|buis|maat|größe|taille|medida|misura))?"
_NUMBERED = late_pattern(
    r"(?:#|(?<![^\W_])(?:no|nr|n°|number|nummer|numéro|número|numero|size|tube|job|rohr|tubo|buis"
    rf"|maat|größe|taille|medida|misura)\.?\s?)(\d{{1,2}}){_IS}"
)
_LETTERED = late_pattern(rf"(?:^|[.;,(:]\s?|\s)(?:tube\s|size\s|rohr\s)?([A-D])\)?{_IS}")
_RANKED = (
    late_pattern(
        r"(?<![^\W_])(?:ersteres,?\s$|(?:first|former|erste[rs]?|premi(?:er|ère)|primer[oa]?"
        rf"|prim[oa]|eerste){_NOUN},?{_IS})"
    ),
    late_pattern(
        r"(?<![^\W_])(?:letzteres,?\s$|(?:second|latter|zweite[rs]?|deuxième|seconde?|segund[oa]"
        rf"|second[oa]|tweede){_NOUN},?{_IS})"
    ),
    late_pattern(
        rf"(?<![^\W_])(?:third|dritte[rs]?|troisième|tercer[oa]?|terz[oa]|derde){_NOUN},?{_IS}"
    ),
)
_LOOK = 32


def place_before(text: str, start: int) -> tuple[int, ...]:
    """The place in the list that leads to a word, the first being 1; none is empty."""
    before = text[max(0, start - _LOOK) : start]
    lettered = _LETTERED.search(before)
    if lettered is not None:
        return ("ABCD".index(lettered[1]) + 1,)
    before = before.casefold()
    numbered = _NUMBERED.search(before)
    if numbered is not None:
        return (int(numbered[1]),)
    return tuple(place for place, rank in enumerate(_RANKED, 1) if rank.search(before))
