"""Answers between quoted lines: what the quoted question asks is what the number below it is."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late import Late
from ...model import OwnText, Prompt
from ...words_relying import HOW_MANY
from ..naming.cue_fits import fits
from ..radii.radius_kind import DENIED_SIDE, NO_CENTRE, TO_CENTRE
from ..text.cues import Cue
from ..text.figures import Figure, Layout
from ..text.lexer import lex
from ..text.patterns import whole_words
from ..text.plain import Plain, flatten
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .answers_above import count_alone

_HOW_MANY = Late(HOW_MANY)
_COUNT = re.compile(
    r"[^\w\n]{0,3}(\d{1,2})\s?(?:pcs?|pieces?|stück|stk|pièces?|piezas?|uds?|pezzi|pz|stuks?|st)?"
    r"\.?\s?(?:[.,;!]\s|$|please|bitte|svp|s'il|por favor|per favore|graag)",
    re.IGNORECASE | re.MULTILINE,
)
"""'2', '2 pcs.', '3 bitte': nothing else on its line, so that it measures nothing."""
_ELIDED = re.compile(r"\b[ld]['’](?=\w)", re.IGNORECASE)
"""'L'épaisseur?' asks for the épaisseur."""
_INNER = whole_words(
    r"inside | inner | internal | intrados | innen\w* | innere[nr]? | intérieur\w* | interior",
    r"interno | interna | binnen\w* | dentro",
)
_OUTER = whole_words(
    r"outside | outer | external | extrados | au(?:ß|ss)en\w* | extérieur\w* | exterior | esterno",
    r"buiten\w* | fuera",
)
_MAY_BE_RADIUS: frozenset[Role | None] = frozenset({None, "label", "id", "od"})
_BEHIND = 32
_OPEN: frozenset[Role | None] = frozenset({None, "label"})


def assign_by_prompt(layout: Layout, plain: Plain, offset: int, prompts: Sequence[Prompt]) -> None:
    """Give the first figure of each answer the role that its question names; or what puts it
    right, and then the first one measures nothing.

    '> Wall?' and '17 ga'; '> tube OD 1.750"' and 'No sir, 1-7/8.'. A figure that its own words
    or its place in 'OD x wall' explain keeps what they say.
    """
    for prompt in prompts:
        cue = _asked(prompt.question)
        if cue is None:
            continue
        answers = [
            figure
            for figure in layout.figures
            if prompt.start <= plain.span(figure.start, figure.end)[0] + offset < prompt.end
        ]
        put_right = [figure for figure in answers if figure.corrects]
        for figure in put_right[-1:] or answers[:1]:
            _answer(layout, figure, cue)
            if figure.how == "asked":
                for other in answers[: answers.index(figure)]:
                    if other.role in _OPEN:
                        other.give("noise", "asked")  # "63.5. No, hang on, make that 70 mm."


def count_answered(own: OwnText) -> int | None:
    """The count that stands as an answer to 'How many?', a figure by itself; None where none is."""
    counts = []
    for prompt in own.prompts:
        if _HOW_MANY.search(prompt.question):
            found = _COUNT.match(own.text, prompt.start, prompt.end)
            said = own.text[prompt.start : prompt.end].strip()
            counts.append(int(found[1]) if found is not None else count_alone(said))
    told = [count for count in counts if count]
    return told[0] if len(told) == 1 else None


def _answer(layout: Layout, figure: Figure, cue: Cue) -> None:
    side = _side_told(layout, figure) if cue.role in RADIUS_ROLES else None
    if side is not None and (figure.role in _MAY_BE_RADIUS or figure.role in RADIUS_ROLES):
        figure.give(side, "asked")
        return
    after = layout.after(figure)
    chained = after is not None and after.link in ("times", "slash")
    if figure.role == cue.role:
        figure.how = "asked"
    elif _is_open(layout, figure, cue) and not figure.negated and not chained and fits(figure, cue):
        times = figure.unit == "D" and cue.role in RADIUS_ROLES
        figure.give("times_d" if times else cue.role, "asked")


def _is_open(layout: Layout, figure: Figure, cue: Cue) -> bool:
    """Whether nothing else says what the figure is: 'die is 2 mm' is Dutch for 'it is', and in
    'tot het hart van de buis' the tube is only where it is measured to."""
    if figure.role == "die":
        return cue.role == "wall"
    if figure.role == "od" and cue.role in RADIUS_ROLES:
        behind = layout.words(figure.end, figure.end + _BEHIND)
        return TO_CENTRE.search(re.split(r"[.;!?]", behind)[0]) is not None
    return figure.role in _OPEN


def _side_told(layout: Layout, figure: Figure) -> Role | None:
    """'I only have the inside radius, that's 50': the side of the bend that an answer names."""
    before, after = layout.before(figure), layout.after(figure)
    first, last = layout.spans[figure.sentence]
    begin, end = layout.tokens[first].start, layout.tokens[last].end
    if before is not None:
        begin = max(begin, before.end)
    if after is not None:
        end = min(end, after.start)
    ahead = layout.words(begin, figure.start)
    behind = re.split(r"[,;(=]", layout.words(figure.end, max(figure.end, end)))[0]
    said = DENIED_SIDE.sub(" ", f"{ahead} | {behind}")
    sides: list[Role] = []
    if _INNER.search(said):
        sides.append("inside_r")
    if _OUTER.search(said):
        sides.append("outside_r")
    return sides[0] if len(sides) == 1 and not TO_CENTRE.search(NO_CENTRE.sub(" ", said)) else None


def _asked(question: str) -> Cue | None:
    """The one length that a question names, or None: 'wall and radius?' leaves it open."""
    tokens = lex(flatten(_ELIDED.sub("  ", question)).text)
    told = {at for at, token in enumerate(tokens) if token.number is not None and "?" in question}
    cues = [
        cue
        for at, token in enumerate(tokens)
        for cue in token.cues[:1]
        # "Which wall does the 1.125 OD pipe have?": the OD is told
        if cue.role in LENGTH_ROLES and not told & {at - 1, at}
    ]
    kinds = {"radius" if cue.role in RADIUS_ROLES else cue.role for cue in cues}
    if len(kinds) != 1:
        return None
    return next((cue for cue in cues if cue.role != "radius"), cues[0])
