"""What the words behind a figure call it: '4.125 is the bend radius', '60 ist der Radius'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..aside.phrases_beside import UNIT
from ..text.roles import Role

_IS_CALLED = late_pattern(
    UNIT
    + r"(?:is|ist|est|es|è|would be|will be|wäre|serait|sarebbe|sería)\s"
    + r"(?:the|my|our|its|de|der|die|le|la|el|il|mein|mon|mi|mijn|notre)\s"
    + r"(?:bend(?:ing)?\s)?(?:"
    + r"(?P<clr>clr|cent(?:er|re)[ -]?line(?: rad(?:ius)?)?|cent(?:er|re) rad(?:ius)?|mean radius"
    + r"|mittelradius|rayon moyen|raggio medio)"
    + r"|(?P<radius>radius|biegeradius|rayon(?: de cintrage)?|radio(?: de curvatura)?"
    + r"|raggio(?: di curvatura)?|straal|buigradius|buigstraal)"
    + r"|(?P<wall>wall(?: thickness)?|wandstärke|wanddicke|paroi|épaisseur|pared|espesor|parete"
    + r"|spessore|wanddikte)"
    + r"|(?P<od>od|outside diameter|au(?:ß|ss)endurchmesser|diamètre extérieur)"
    + r")\b(?!\s(?:of|to|der|du|del|van|i|we|that|which)\s(?:die|my|our|the|have|own|machine))"
)
_WHICH_IS = late_pattern(
    r"[^\d.;]{0,44}?\b(?:which|that)(?:'s|(?:\s[^\W\d]+){0,4}?\s(?:is|means|must be))\s"
    r"(?:(?:the|my|our|its)\s)?(?:bend\s)?"
    r"(?:(?P<clr>clr|cent(?:er|re)[ -]?line(?: rad(?:ius)?)?|cent(?:er|re) rad(?:ius)?|mean radius)"
    r"|(?P<radius>(?:bend(?:ing)? )?radius))\b(?!\s(?:of|to|i|we|and|that|which)\b)"
)
"""'130 is cut into it, which is the centre radius'"""
_CALLED: tuple[Role, ...] = ("clr", "radius", "wall", "od")


def called_behind(after: str) -> Role | None:
    """The role that the words right behind a figure, casefolded, say that it has."""
    called = _IS_CALLED.match(after)
    if called is not None:
        return next((role for role in _CALLED if called[role]), None)
    which = _WHICH_IS.match(after)
    if which is None:
        return None
    return "clr" if which["clr"] else "radius"
