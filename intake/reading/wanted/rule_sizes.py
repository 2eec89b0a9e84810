"""Sizes of a rule: 'the rule book says 1.5 x .095 under 2500 lb and 1.75 x .095 over that'.

A rule tells what others must have. Only the one of its sizes that is named again outside the rule
is asked for in so many words; each other one is doubted, and where none is, all are, but for one
that is the only sure size of the mail.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import SizeRequest
from ..requests import wholly_doubted
from ..text.patterns import whole_words
from .asked_words import TOOL

_WHY = "a rule names it, and no other words ask for it"
_RULE = whole_words(
    r"rule ?-?books? | the rules? | class rules? | rules? (?:say|call|require|want|ask)s?",
    r"regs | regulations? | sanction\w+(?: body)? | governing body | tech (?:inspect\w+|rules?)",
    r"scrutineer\w* | inspectors? | nhra | ihra | sfi | fia | scca | imca | wissota | building code",
    r"(?:the )?code (?:says?|calls|requires?) | (?:race|racing) (?:body|series|club)",
    r"reglements? | regelwerk\w* | vorschrift\w* | tüv | prüfer\w* | norm (?:sagt|verlangt|fordert)",
    r"règlements? | la norme | le contrôle technique | la fédération | reglamento | la norma",
    r"la federación | la itv | regolamento | la federazione | het reglement | de regels | de keuring",
)
_BRACKET = re.compile(r"\([^()]{0,120}\)")
_SENTENCE = re.compile(r"(?:[^.!?\n]|[.](?=\d|\w)|\n(?!\s*\n))+")


def with_rule_sizes_doubted(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The requests with a doubt on each that only a rule names. ``text`` is the sender's own."""
    if len(requests) < 2:
        return [*requests]
    ruled = [found.span() for found in _SENTENCE.finditer(text) if _is_rule(found[0].casefold())]
    if not ruled:
        return [*requests]
    outside = _without(text, ruled)
    named = [_is_named(request, outside) for request in requests]
    inside = [_stands_in(request, ruled) for request in requests]
    ruled_only = [within and not again for within, again in zip(inside, named, strict=True)]
    sure = [all(doubt.about != "size" for doubt in request.doubts) for request in requests]
    if sum(sure) == 1 and ruled_only[sure.index(True)]:
        return [*requests]  # "last week I asked for 2 x .120, but the rule book wants 1.75 x .120"
    return [
        wholly_doubted(request, _WHY) if only else request
        for request, only in zip(requests, ruled_only, strict=True)
    ]


def _is_rule(words: str) -> bool:
    """'Mandrels to FIA rules for 45 x 2.5' asks for them; a bracket only says why: '1 x .095 wall
    (rules say .095 minimum)'."""
    words = _BRACKET.sub(" ", words)
    return _RULE.search(words) is not None and TOOL.search(words) is None


def _without(text: str, spans: Sequence[tuple[int, int]]) -> str:
    for begin, end in spans:
        text = text[:begin] + re.sub(r"\S", " ", text[begin:end]) + text[end:]
    return text


def _stands_in(request: SizeRequest, spans: Sequence[tuple[int, int]]) -> bool:
    places = [item.start for item in request.evidence if item.field == "od"]
    return bool(places) and all(
        any(begin <= place < end for begin, end in spans) for place in places
    )


def _is_named(request: SizeRequest, outside: str) -> bool:
    """Whether its OD is written again outside the rules."""
    surfaces = {item.surface.strip(" \"'") for item in request.evidence if item.field == "od"}
    return any(
        re.search(rf"(?<![\w.,/]){re.escape(surface)}(?![\w/]|[.,]\d)", outside)
        for surface in surfaces
        if surface
    )
