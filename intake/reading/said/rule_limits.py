"""What a rule book asks of a wall that was told already: '1 x .095 (rules say 0.095 minimum)'. The
limit is the rule's, the sender's own figure stands."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of

_BACK, _BEHIND = 48, 24
"""Characters before such a figure, and behind it, in which the rule and the limit stand."""
_RULE = late_pattern(
    r"\b"
    + any_of(
        "rules? | rule ?book | regs? | regulations? | class | sanctioning body | inspectors?",
        r"code | tech | spec | law | nhra | scca | sfi | fia | reglements? | vorschrift\w*",
        "regelwerk | règlements? | norme | reglamento | normativa | regolamento | regels",
    )
    + r"\b[^.;\n]{0,36}$"
)
_LIMIT = late_pattern(
    r"\b(?:min(?:imum|dest\w*|imo|imaal|\.)?|at least|au moins|al menos|almeno|mínim[oa]"
    r"|no less than|or (?:more|better|thicker)|mini)\b"
)


def set_rule_limits_aside(layout: Layout) -> None:
    """A figure that words of a rule call a least one, where the same stands before without them."""
    told = set()
    for figure in layout.figures:
        value = figure.number.value
        if value in told and not figure.negated:
            begin = max(layout.sentence_start(figure.sentence), figure.start - _BACK)
            ahead = layout.words(begin, figure.start)
            around = ahead + layout.words(figure.start, figure.end + _BEHIND)
            if _RULE.search(ahead) and _LIMIT.search(around):
                figure.give("noise", "")
                figure.notes.clear()
        told.add(value)
