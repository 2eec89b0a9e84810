"""One radius taken from a list: 'any of our dies would do: 4, 5 or 6 CLR; let us use the 5'.

The radius that is picked stays, the others of its list measure nothing.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..picking.by_rank import rank_asked
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES

_THE = (
    r"(?:the|our|my|a|den|die|das|unseren|le|la|el|la|il|quello|de|het|die)\s"
    r"(?:(?:one (?:with|of)|mit|mit dem|avec|de|del?|da|con|van|met)\s)?(?:r\s?)?"
)
_PICKS = any_of(
    r"(?:use|using|choose|pick|take|run|go(?:ing)? (?:ahead )?(?:with|for)|settle(?:d)? on|opt for"
    r"|stick with|plan on|base (?:it|this|that|everything) on|based on|figure on|assume"
    r"|(?:quote|price)(?: it| this| that| me| us)?(?: for| on| with)?(?: using)?)",
    r"(?:nehmen|verwenden|nutzen|benutzen|wählen)(?: wir| sie| hier)*",
    r"(?:prenons|prendre|utiliser|utilisons|utilisera|choisissons|on prend)",
    r"(?:usamos|usaremos|usar|vamos (?:a usar|con)|tomamos|elegimos)",
    r"(?:usiamo|useremo|usare|prendiamo|scegliamo)",
    r"(?:gebruiken|nemen|kiezen)(?: we| wij)?",
)
_PICKED_AHEAD = late_pattern(rf"\b{_PICKS}\s{_THE}$")
_MANDREL_FOR = late_pattern(
    r"\b"
    + any_of(
        r"mandrels?(?: is| are)? (?:for|on) | (?:biege)?dorne? für | mandrins? (?:pour|sur)",
        r"mandril(?:es)? para | mandrin[oi] per | doorn(?:en)? voor",
    )
    + rf"\s{_THE}$"
)
"""'Our dies are 3, 4.5 and 6 CLR. So a mandrel for the 3', and none of the others is said again."""
_WILL = (
    r"(?:would|will|shall|is going to|is|wird|wäre|ist|sera|serait|será|sería|sarà|sarebbe|wordt)"
)
_PICKED_BEHIND = late_pattern(
    r"^(?:er)?\W{0,2}(?:mm|inch|in)?\W{0,2}(?:clr |radius |die |one |cent\w+ ?line )*"
    + _WILL
    + r" (?:be )?(?:(?:used|the one|best|the choice|our choice|preferred)\b"
    r"|verwendet|genommen|utilisée?|usad[oa]|usat[oa]|gebruikt)"
)
_NOT_SO = late_pattern(
    r"\b(?:not|never|can'?t|won'?t|don'?t|nicht|pas|no|non|niet|if|wenn|si|se|als)\b"
)
_IS_THERE = late_pattern(
    r"\b(?:have|has|had|got|own|already|made|sold|bought|habe[nt]?|hatten?|schon|bereits|avons|ai|déjà"
    r"|tenemos|tengo|ya|abbiamo|ho|già|hebben|heb|al|reeds)\b"
)
_PAIR = 2
_MOST = 200
"""Of so many figures nobody says in prose which radius is picked."""
_BEFORE, _AFTER = 40, 60
"""Characters of a clause on either side of a figure in which it is picked."""


def hear_radius_picked(layout: Layout) -> None:
    """Set the other radii of a list aside where a later figure picks one of them."""
    if len(layout.figures) > _MOST:
        return
    for run in _lists(layout):
        values = [figure.number.value for figure in run]
        for figure in layout.figures[run[-1].index + 1 :]:
            if values.count(figure.number.value) != 1 or not (
                _is_picked(layout, figure) or _has_its_mandrel(layout, figure, run)
            ):
                continue
            kept = run[values.index(figure.number.value)]
            if figure.unit not in (None, kept.unit):
                continue
            for other in run:
                if other is not kept:
                    other.give("noise", "list")
            figure.give("noise", "same")
            break
        else:
            _pick_by_rank(layout, run)


def _pick_by_rank(layout: Layout, run: list[Figure]) -> None:
    """'We have two dies, R 85 and R 127. Only for the bigger one please': of one tube."""
    ods = {figure.number.value for figure in layout.figures if figure.role == "od"}
    if len(run) != _PAIR or len(ods) > 1 or len({figure.unit for figure in run} - {None}) > 1:
        return
    rank = rank_asked(layout.text[run[-1].end :])
    if rank:
        pick = min if rank == "small" else max
        kept = pick(run, key=lambda figure: figure.number.value)
        next(figure for figure in run if figure is not kept).give("noise", "list")


def _lists(layout: Layout) -> list[list[Figure]]:
    """Radii named in one breath: '4, 5 or 6 CLR'."""
    runs: list[list[Figure]] = []
    for figure in layout.figures:
        if figure.role not in RADIUS_ROLES or figure.row is not None or figure.negated:
            continue
        last = runs[-1][-1] if runs else None
        goes_on = last is not None and last.index == figure.index - 1 and figure.link in LISTED
        goes_on = goes_on and all(figure.number.value != f.number.value for f in runs[-1])
        if goes_on and last is not None and last.sentence == figure.sentence:
            runs[-1].append(figure)
        else:
            runs.append([figure])
    return [run for run in runs if len(run) > 1]


def _has_its_mandrel(layout: Layout, figure: Figure, run: list[Figure]) -> bool:
    """Whether a mandrel for that radius is spoken of, and none for another one of the list."""
    others = {other.number.value for other in run} - {figure.number.value}
    later = layout.figures[run[-1].index + 1 :]
    if any(other.number.value in others for other in later) or figure.link in LISTED:
        return False
    following = layout.after(figure)
    if following is not None and following.link in (*LISTED, "times"):
        return False
    begin = max(layout.figures[figure.index - 1].end, figure.start - _BEFORE)
    ahead = " ".join(layout.words(begin, figure.start).casefold().split()) + " "
    if _NOT_SO.search(ahead) or _IS_THERE.search(ahead):
        return False  # "we already have a mandrel for the 3"
    return _MANDREL_FOR.search(ahead) is not None


def _is_picked(layout: Layout, figure: Figure) -> bool:
    """Whether the words of its clause take it, and do not ask whether one could."""
    ahead = layout.words(max(0, figure.start - _BEFORE), figure.start).casefold()
    behind = layout.words(figure.end, figure.end + _AFTER).casefold().replace("’", "'")
    for sign in (". ", "; ", ", ", "\n"):
        ahead = ahead.rpartition(sign)[2]
    ends = [at for sign in (".", ";", "\n", "?") if (at := behind.find(sign)) >= 0]
    if _NOT_SO.search(ahead) or behind[min(ends, default=0) : min(ends, default=0) + 1] == "?":
        return False
    ahead = " ".join(ahead.split()) + " "
    return _PICKED_AHEAD.search(ahead) is not None or _PICKED_BEHIND.match(behind) is not None
