"""Figures that change one said before: '6.5, not 6', 'same but 1.625', 'scratch that wall'."""

from __future__ import annotations

import re
from decimal import Decimal

from ...late import Late
from ...late_pattern import late_pattern
from ...words_relying import CHANGES, CORRECTS
from ..naming.place_tests import wall_follows
from ..text.figures import Figure, How, Layout
from ..text.patterns import any_of
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from ..thread.staying import takes_the_rest

_CHANGED: frozenset[Role] = LENGTH_ROLES | {"times_d", "nps", "dn"}
_FAR = 60
_NEAREST = 2
"""Figures to either side of one that is denied, of which one takes its place."""
_BACK = 60
"""Characters before a figure in which 'same but' stands."""
_CHANGES, _CORRECTS = Late(CHANGES), Late(CORRECTS)
_LONGEST_REMARK = 120
_ITS = late_pattern(
    r"\b(?:it'?s|it is|its|should be|make it|es ist|es sind|ist|c'est|ce sont|es|son|è|sono|is"
    r"|het is)\s(?:an?\s|the\s)?$"
)
_SAME_BUT = late_pattern(
    r"\bsame\b[^.;]{0,30}\b(?:but|except|only|just|with)\b(?:(?!\d).){0,16}$"
    r"|\b(?:also|another|plus)\b[^.;\d]{0,24}$"
)
_NAMED: tuple[tuple[Role, re.Pattern[str]], ...] = (
    ("wall", late_pattern(any_of(
        "wall | thickness | gauge | gage | wandst | épaisseur | espesor | spessore | wanddikte"
    ))),
    ("radius", late_pattern(any_of(
        "clr | radius | centerline | centreline | rayon | radio | raggio | straal"
    ))),
    ("od", late_pattern(any_of(
        r"\bod\b | o\.d | diameter | tube size | durchmesser | diamètre | diámetro | diametro"
    ))),
)  # fmt: skip


def puts_right(layout: Layout, figure: Figure) -> bool:
    """'6.5, not 6': give the figure the role of the value it puts right; False where none is."""
    changes = figure.corrects or _changes_quoted(layout, figure)
    if changes and figure.is_measured and _corrects_named(layout, figure):
        return True
    if figure.corrects and is_alone(layout, figure) and _is_put_right(layout, figure):
        return True
    before = layout.before(figure)
    if (
        before is not None
        and before.negated
        and before.role in _CHANGED
        and before.sentence == figure.sentence
        and figure.is_measured
        and _share_of(figure, before, Decimal("0.3"), Decimal("3.4"))
        and _ITS.search(layout.words(before.end, figure.start))
    ):
        figure.give(before.role, "place")  # "ignore the 4 inch CLR I gave, it's 4.5"
        return True
    denied = [other for other in layout.near_in_sentence(figure, _FAR) if other.negated]
    if not denied:
        return False
    held: dict[Decimal, Figure] = {}
    for earlier in _held(layout, figure):
        held.setdefault(earlier.number.value, earlier)
    for other in denied:
        wrong = held.get(other.number.value)
        if wrong is not None:
            figure.give(wrong.role, _how(wrong))
            figure.corrects = True
            return True
    return False


def is_alone(layout: Layout, figure: Figure) -> bool:
    """'Wrong radius, it is 5.': a whole number behind which nothing stands that it may count."""
    ahead = layout.words(max(0, figure.start - _BACK), figure.start)
    behind = layout.tokens_after(figure, 1)
    whole = figure.number.style == "integer" and figure.unit is None
    ends = not behind or behind[0].text in (".", ",", ";", "!", ")")
    return whole and ends and _ITS.search(ahead) is not None


def mark_changes(layout: Layout) -> None:
    """'Wall 2.6 instead of 2.0', 'make it 1.75 OD', where the quoted mail says otherwise."""
    if not layout.earlier:
        return
    before = {held.role: held.number.value for held in layout.earlier}
    wrong = {f.index for f in layout.figures if f.negated and f.number.value in before.values()}
    for figure in layout.figures:
        role = "clr" if figure.role in RADIUS_ROLES else figure.role
        if not figure.is_measure or role not in before or figure.number.value == before[role]:
            continue
        near = range(figure.index - _NEAREST, figure.index + _NEAREST + 1)
        denied = any(
            n in wrong
            and layout.figures[n].number.value == before[role]
            and layout.figures[n].sentence == figure.sentence
            for n in near
        )
        if denied or _CORRECTS.search(layout.sentence_text(figure.sentence)):
            figure.how = "changes"


def changes_one(layout: Layout, figure: Figure) -> bool:
    """'Same thing but 1.625': give the figure the role of whichever value it is nearest to.

    One with a wall right behind it opens a tube: 'We also need one for 3-1/2 in .120 wall'.
    """
    if not figure.is_measured or wall_follows(layout, figure):
        return False
    far = max(0, figure.start - _BACK)
    begin = max(far, layout.text.rfind("\n", far, figure.start) + 1)
    if not _SAME_BUT.search(layout.words(begin, figure.start)):
        return False
    near = {
        held.role for held in _held(layout, figure)
        if _share_of(figure, held, Decimal("0.62"), Decimal("1.6"))
    }  # fmt: skip
    if len(near) != 1:
        return False
    figure.give(near.pop(), "place")
    return True


def _held(layout: Layout, figure: Figure) -> list[Figure]:
    """Figures with a role that stand before this one, the nearest of them."""
    before = [*layout.earlier, *layout.figures[max(0, figure.index - _FAR) : figure.index]]
    return [other for other in before if other.role in _CHANGED and not other.negated]


def _share_of(figure: Figure, held: Figure, least: Decimal, most: Decimal) -> bool:
    """Whether a figure is between so many times another."""
    return bool(held.number.value) and least < figure.number.value / held.number.value < most


def _is_put_right(layout: Layout, figure: Figure) -> bool:
    """'Scratch that wall. It's .095': the correction names what it corrects."""
    sentence = figure.sentence
    named = [
        role for role, words in _NAMED
        if layout.says(sentence, words)
        or (layout.says(sentence - 1, words) and _is_of_one(layout, sentence - 1, role))
    ]  # fmt: skip
    held = _held(layout, figure)
    wrong = [other for other in held if len(named) == 1 and _is_put_for(other, named[0], figure)]
    if wrong:
        figure.give(named[0], _how(wrong[-1]))
    return bool(wrong)


def _corrects_named(layout: Layout, figure: Figure) -> bool:
    """The same, or the size of the figure tells what it corrects."""
    if _is_put_right(layout, figure):
        return True
    held = _held(layout, figure)
    if any(other.number.value == figure.number.value for other in held):
        return False  # "PS: the 2.375 is urgent" names a size, and changes none
    alike = [other for other in held if other.unit == figure.unit] or held
    near = [other for other in alike if _share_of(figure, other, Decimal("0.5"), Decimal(2))]
    if len({other.role for other in near}) == 1:
        figure.give(near[-1].role, _how(near[-1]))
        return True
    return False


def _is_of_one(layout: Layout, sentence: int, role: Role) -> bool:
    """Whether a sentence has figures of that one role at the most: the "radius" of a whole size
    does not name what the next sentence puts right."""
    held = RADIUS_ROLES if role == "radius" else {role}
    return all(f.role in held or not f.is_measure for f in layout.in_sentence(sentence))


def _how(wrong: Figure) -> How:
    """What gives the right figure its role: the wrong one, here or in the mail it answers."""
    return "changes" if wrong.how == "quoted" else "place"


def _changes_quoted(layout: Layout, figure: Figure) -> bool:
    """'Customer changed his mind. Make it .120 instead': a change to what the quoted mail says."""
    if not layout.earlier:
        return False
    sentence = figure.sentence
    said = layout.sentence_text(sentence)
    if _CHANGES.search(said) or takes_the_rest(said):
        return True
    if takes_the_rest(layout.sentence_text(sentence + 1)):
        return True  # "2.0 mm please. Everything else as quoted."
    before = layout.sentence_text(sentence - 1)
    alone = not layout.in_sentence(sentence - 1) and len(before) < _LONGEST_REMARK
    return alone and _CHANGES.search(before) is not None


def _is_put_for(held: Figure, role: Role, figure: Figure) -> bool:
    """Whether the figure can be what puts a held one of this role right: of like size."""
    same = held.role == role or (role == "radius" and held.role in RADIUS_ROLES)
    return same and _share_of(figure, held, Decimal("0.3"), Decimal("3.4"))
