"""A tube told by its lengths and then called by its pipe's name: '2-3/8 OD x .154, yes I know
that's 2 inch sch 40', '1.9 OD .145 wall. It's inch and a half black pipe.' No further tube."""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards
from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from .restated import names_pipe

_INCH = Decimal("25.4")
_NEAR = 4
"""Figures back to the tube that is called so."""
_FAR = 32
"""Characters behind the name in which 'pipe' stands."""
_SAME_PIPE = Decimal("0.01")
_CALLED = late_pattern(
    r"\b(?:that'?s|that is|which is|it'?s|i\.?e|in other words|aka|known as|call(?:ed|s|it)?"
    r"|sold as|meaning|basically|really|plain(?: old)?|das ist|also|sprich|c'est|soit|es decir"
    r"|o sea|cioè|dus)\b[^.;]{0,24}$"
)
_CALLED_ANEW = late_pattern(
    r"^\W{0,3}(?:it'?s|it is|this is|that'?s|that is|that would be|das ist|es ist|c'est|ce sont|es"
    r"|è|dit is|dat is|het is)\b[^.;]{0,24}$"
)
"""What begins the next sentence; 'tube 2 is 1-1/2 pipe' is another."""
_PIPE = late_pattern(r"^[^.,;:\d\n]{0,24}\b(?:pipes?|\w{0,4}rohre?|gasbuis|buis)\b")


def join_pipes(layout: Layout) -> None:
    """A pipe's name for the tube just told measures nothing anew, nor does its schedule."""
    for figure in layout.figures[1:]:
        if figure.role not in (None, "od", "nps") or figure.negated:
            continue
        schedule = layout.after_in_sentence(figure)
        schedule = schedule if schedule is not None and schedule.unit == "sch" else None
        if schedule is None and not _is_called_pipe(layout, figure):
            continue
        for before in layout.figures[max(0, figure.index - _NEAR) : figure.index]:
            if before.role != "od" or before.negated or not names_pipe(figure, before):
                continue
            if _is_called(layout, before, figure) and _has_its_wall(
                layout, before, figure, schedule
            ):
                figure.give("noise", "same")
                if schedule is not None:
                    schedule.give("noise", "same")
                break


def _is_called_pipe(layout: Layout, figure: Figure) -> bool:
    return _PIPE.search(layout.words(figure.end, figure.end + _FAR)) is not None


def _is_called(layout: Layout, tube: Figure, name: Figure) -> bool:
    """Whether the words between say that the pipe is the tube."""
    if name.sentence == tube.sentence:
        return _CALLED.search(layout.words(tube.end, name.start)) is not None
    begin = layout.sentence_start(name.sentence)
    near = layout.figures[name.index - 1].sentence < name.sentence <= tube.sentence + 2
    return near and _CALLED_ANEW.search(layout.words(begin, name.start)) is not None


def _has_its_wall(layout: Layout, tube: Figure, name: Figure, schedule: Figure | None) -> bool:
    """Whether a wall is told already, and is the schedule's, where there is one."""
    told = [f for f in layout.figures[tube.index + 1 : name.index] if f.role == "wall"]
    if schedule is None:
        return bool(told)
    nominal = standards.nps_of_inches(name.number.value)
    wall = standards.pipe_wall_mm(nominal, schedule.schedule) if nominal is not None else None
    return wall is not None and any(
        abs(one.number.value * scale - wall) <= wall * _SAME_PIPE
        for one in told
        for scale in (Decimal(1), _INCH)
    )
