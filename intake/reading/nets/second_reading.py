"""A second reader: sizes whose figures are not spoken of as lengths that are asked for.

It knows figures only by what labelled mail has taught (``roles_learnt.py``), nothing of the rules,
and it states nothing: where it finds that the figures of a size are hardly lengths, or hardly of a
size that is asked for, the size is in doubt. Of several sizes it also compares how surely each is
asked for: one far behind another is in doubt, one far ahead of all others loses the doubts that
only say that another may be meant. What is said is what it goes by, so that it leaves
alone a size of a bare row or label, one whose figures a table names, and a single figure, unless
that hardly is a length at all.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from math import log
from statistics import fmean

from ....rules.request import LENGTH_FIELDS, SizeRequest
from ...late_pattern import late_pattern
from ..requests import wholly_doubted
from ..wanted.asked_for import BESIDE
from ..wanted.asked_outright import asked_outright
from ..wanted.one_asked import ONE_OF_THESE
from .around_figure import LONGEST, MOST, Figures, overlapping
from .roles_learnt import shares

UNASKED = -2.0
"""A size whose figures score less [log odds] for being lengths that are asked for is in doubt.
Chosen on labelled mail that nothing was learnt from (tests/corpus/asked/README.md)."""
BEHIND, HARDLY = 1.5, -0.5
"""A size that scores less than the latter, and is so far behind another of the message, is in doubt
as told of beside it;"""
NO_LENGTHS, FAR_BEHIND = -3.0, 2.0
"""one of one or two figures that no other size shares, that scores less than the former and is so
far behind, wherever it stands: no size at all, most likely;"""
ALONE_AHEAD = 2.0
"""and one so far ahead of all others is the one that is meant. Chosen on 300 short messages with
sizes of both kinds that nothing was learnt from: one asked for of 268 fell behind."""
FEW_WORDS = 4
"""A line of fewer words says nothing of its figures."""
_OF_SEVERAL = frozenset({BESIDE, ONE_OF_THESE})
_BEFORE = 60
_ALSO = late_pattern(
    r"\b(?:also|as well|plus|auch|außerdem|zusätzlich|aussi|également|también|además|anche|inoltre"
    r"|ook|daarnaast)\b[^.!?\n]*$"
)
"""'We also have 2 x .120 to do': a further size, whatever else is said of it."""
_POINTS_BACK = late_pattern(
    r"\b(?:"
    r"(?:of|for|on) (?:those|these|his|hers|theirs)\b(?! (?:mandrels|tubes|sizes))"
    r"|the (?:first|second|third|last|former|latter|thick(?:er)?|thin(?:ner)?|small(?:er)?"
    r"|big(?:ger)?|large[rst]*|heav(?:y|ier)|light(?:er)?|old(?:er)?)"
    r"(?: (?:one|stuff|tube|pipe|size|wall))?[.?!,]"
    r"|(?:ours|mine|the one (?:we|i)(?:'ve)? (?:have|had|got|own)|remake|replace|on reflection"
    r"|skip|rather|instead|scratch|forget|unsere[nrs]?|stattdessen|lieber|plutôt|à la place"
    r"|más bien|en su lugar|piuttosto|invece|liever|in plaats)\b"
    r"|(?:wrong|mistaken?|typo|misread|correction|my (?:bad|error))\b"
    r"|(?:den|dem|die|der|das) (?:erste|zweite|dritte|letzte|dick|dünn|größer|kleiner)\w*"
    r"|falsch\w*|irrtum|tippfehler|versehen"
    r"|l[ea] (?:premi|deuxi|second|derni|plus (?:gros|grand|petit|épais|min))\w*|erreur"
    r"|el (?:primer|segund|últim|más (?:grande|grues|delgad|pequeñ))\w*|equivoca\w*|error"
    r"|(?:il|la|quell[oa]) (?:prim|second|ultim|più (?:grande|piccol|spess|sottil))\w*"
    r"|errore|sbagliat\w*|(?:de|het) (?:eerste|tweede|laatste|dikke|dunne|grote|kleine)\w*"
    r"|fout|vergissing|vergist"
    r")"
)
"""Words that say which of the sizes is meant without naming it, or that one is not right."""
_WHY = "what is said around it sounds like something else than a size that is asked for"


def with_second_reading(
    requests: Sequence[SizeRequest], text: str, in_tables: Collection[int] = ()
) -> tuple[list[SizeRequest], float | None]:
    """The requests, in doubt where a second reader would not read them so; and the score [log odds]
    of the size that is most surely asked for, of those with a tube and a wall or a radius.

    ``text`` is the sender's own, which the evidence points into, and ``in_tables`` where figures
    begin that stand in rows: the words beside them are heads, labels, remarks.
    """
    if not requests or len(text) > LONGEST:
        return list(requests), None
    figures = Figures(text)
    if len(figures.at) > MOST:
        return list(requests), None
    heard = [_Heard(request, figures, text, in_tables) for request in requests]
    scores = [one.score for one in heard if one.score is not None and one.is_size]
    outright = len(requests) == 1 and asked_outright(text, _begin(requests[0]))
    asked = {line for h in heard if h.is_asked for line in h.lines}
    best = max(scores, default=None)
    plain = len(heard) > 1 and not _POINTS_BACK.search(text.casefold())
    judged: list[SizeRequest] = []
    for one in heard:
        hardly_asked = one.is_behind(UNASKED) and not outright and not asked & one.lines
        hardly_asked = hardly_asked and not _is_listed(one, [h for h in heard if h.is_asked])
        # Of a list in one line the words are said of all.
        told = one.is_told and (
            hardly_asked or (best is not None and _is_behind_others(one, heard))
        )
        if told or _is_none(one, heard):
            judged.append(wholly_doubted(one.request, _WHY))
        elif best is not None and one.score == best and plain and _is_alone_ahead(one, heard):
            judged.append(_sure_to_be_asked(one.request))
        else:
            judged.append(one.request)
    return judged, best


class _Heard:
    """One size, and how surely what is said around its figures asks for it."""

    def __init__(
        self, request: SizeRequest, figures: Figures, text: str, in_tables: Collection[int]
    ) -> None:
        self.request = request
        self.places = places = _places(request, figures)
        self.score = _score(places, figures)
        self.lines = _lines(places, figures)
        self.makes = {figures.make_of(line) for line in self.lines}
        self.sentences = {figures.sentence_of(at) for one in places for at in one}
        self.is_row = _is_row(request, in_tables)
        self.is_told = _is_told(places, figures) and not self.is_row
        self.is_size = _is_size(request)
        begin = _begin(request)
        self.is_further = _ALSO.search(text[max(0, begin - _BEFORE) : begin].casefold()) is not None

    @property
    def is_asked(self) -> bool:
        return self.score is not None and self.score >= UNASKED

    def is_behind(self, score: float) -> bool:
        return self.score is not None and self.score < score


def _is_behind_others(one: _Heard, heard: Sequence[_Heard]) -> bool:
    """Whether a size of another sentence is far more surely asked for."""
    if one.is_further or not one.is_behind(HARDLY):
        return False
    others = [h for h in heard if h is not one and h.score is not None and h.is_size]
    if any(one.sentences & h.sentences for h in others):
        return False  # of sizes in one sentence, words are said of all
    ahead = [h for h in others if h.score is not None and one.is_behind(h.score - BEHIND)]
    return bool(ahead) and not _is_listed(one, others)


def _is_none(one: _Heard, heard: Sequence[_Heard]) -> bool:
    """Whether one or two figures are likelier no lengths at all, beside a size that is asked for:
    'the 60s come in bent from a supplier'."""
    if one.is_row or one.is_further or len(one.places) > 2 or not one.is_behind(NO_LENGTHS):
        return False
    others = [h for h in heard if h is not one]
    own = [at for place in one.places for at in place]
    if any(own[0] <= at <= own[-1] for h in others for place in h.places for at in place):
        return False  # '16 ga: 1", 1-1/4", 1-1/2"': nothing is said of each
    sizes = [h.score for h in others if h.is_size and h.score is not None]
    ahead = any(one.is_behind(score - FAR_BEHIND) for score in sizes)
    return ahead and not _is_listed(one, others)


def _is_listed(one: _Heard, others: Sequence[_Heard]) -> bool:
    """Whether its line begins as another's does: of a list, words are said of all."""
    return any(h.makes & one.makes and not h.lines & one.lines for h in others)


def _is_alone_ahead(one: _Heard, heard: Sequence[_Heard]) -> bool:
    """Whether each other size is far less surely asked for."""
    if one.score is None:
        return False
    others = [h for h in heard if h is not one]
    # "The drawing says 35 x 2, the list 35 x 1.5": of those in one sentence either may be meant.
    elsewhere = any(not h.sentences <= one.sentences for h in others)
    return elsewhere and all(h.is_behind(one.score - ALONE_AHEAD) for h in others)


def _sure_to_be_asked(request: SizeRequest) -> SizeRequest:
    """A request without doubts that only say that another size of the message may be meant."""
    left = tuple(d for d in request.doubts if not (d.about == "size" and d.why in _OF_SEVERAL))
    return request.model_copy(update={"doubts": left})


def _places(request: SizeRequest, figures: Figures) -> list[Sequence[int]]:
    """For each length that the text names in figures, which of its pieces these are."""
    own = (e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id)
    found = (overlapping(figures, e.start, e.end) for e in own if e.surface)
    return [at for at in found if at]


def _score(places: Sequence[Sequence[int]], figures: Figures) -> float | None:
    """How surely the figures are lengths of a size, as the mean of their log odds."""
    shared = [max(sum(shares(figures.traits(at)).values()) for at in one) for one in places]
    return fmean(log(one / max(1 - one, 1e-9)) for one in shared) if shared else None


def _lines(places: Sequence[Sequence[int]], figures: Figures) -> set[int]:
    return {figures.line_of(at) for one in places for at in one}


def _is_told(places: Sequence[Sequence[int]], figures: Figures) -> bool:
    """Whether there are words on the size: a bare row of a list has none of its own."""
    spoken = any(figures.words_beside(at) >= FEW_WORDS for one in places for at in one)
    return spoken and len(places) > 1


def _is_row(request: SizeRequest, in_tables: Collection[int]) -> bool:
    own = [e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id]
    return any(e.start in in_tables for e in own if e.surface)


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _begin(request: SizeRequest) -> int:
    """Where in the text the first of its lengths stands."""
    own = (e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id)
    return min((e.start for e in own if e.surface), default=0)
