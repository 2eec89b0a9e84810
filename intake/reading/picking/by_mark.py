"""Lines that are asked for, or set aside, by a word that stands in them: 'so the two "no" ones
please', 'we do not need lines marked HOLD'."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words
from .place_lists import NO_REQUEST, clause_of

_ROWS = any_of(
    r"rows? | lines? | items? | ones? | entry | entries | sizes? | zeilen? | positionen | die |"
    r" lignes?",
    r"filas? | l[ií]neas? | righe | riga | voc[ei] | regels? | rijen | partidas? | anything |"
    r" those",
)
_MARKED = any_of(
    r"(?:that are |which are )?(?:marked|flagged|tagged|labell?ed)(?: with| as)?(?: an?)?",
    r"(?:that says?|saying|showing|with status|with(?: an?)?|where (?:the )?status is|where it"
    r" says|on)",
    r"(?:die )?(?:mit|markiert mit|gekennzeichnet mit)(?: einem)? | (?:marquée?s?|avec"
    r"|marcad[oa]s con|con"
    r"|segnat[ei] con|gemarkeerd met|met)(?: une?| la)?",
)
_QUOTES = "\"'“”„«»‚‘’"
_MARK = (
    rf"(?P<mark>(?<=[{_QUOTES}])\w{{1,10}}(?=[{_QUOTES}])|(?-i:[A-Z]{{2,8}}|[XYN])\b)[{_QUOTES}]?"
)
_THE = r"(?:the |any |those |all |die |les |las |los |le |i |de |alle )?"
_NOT_MARKED = (
    late_pattern(
        r"\b(?:(?:don'?t|do not|no need(?: to)?|needn'?t|please don'?t)\s(?:need|want|quote|price"
        r"|offer|bother with"
        r"|require)(?:\s(?:me|us|for|on))?|ignore|skip|omit|leave (?:out|off)|excluding|except(?:"
        r" for)?"
        rf"|disregard|ignorier\w*(?: sie)?|sans|sauf|sin|excepto|senza|tranne|zonder"
        rf"|behalve)\s{_THE}{_ROWS}"
        rf"\s{_MARKED}\s[{_QUOTES}]?{_MARK}",
        re.IGNORECASE,
    ),
    late_pattern(
        rf"\b{_ROWS}\s{_MARKED}\s[{_QUOTES}]?{_MARK}\s(?:(?:is|are)\s(?:not\s(?:needed|wanted"
        rf"|required)|out"
        r"|dropped|off)|(?:brauchen wir|bitte) nicht|nicht anbieten|ne sont pas|no (?:hacen falta"
        r"|se necesitan)"
        r"|non servono|zijn niet nodig|can be (?:ignored|skipped|dropped))",
        re.IGNORECASE,
    ),
)
_CALLED = late_pattern(
    r"\b(?:the|die|les|las|los|i|le|de)\s(?:(?:two|three|four|zwei|drei|deux|trois|dos|tres|due"
    r"|tre|twee|drie"
    rf"|\d)\s)?[{_QUOTES}](?P<mark>\w{{1,10}})[{_QUOTES}]\s(?:ones?|rows?|lines?|items?|sizes?"
    rf"|zeilen?|lignes"
    r"|filas|righe|regels|tubes?)",
    re.IGNORECASE,
)
_WANTS = whole_words(
    r"only | just | quote | price | need\w* | want\w* | please | pls | nur | anbieten | bitte |"
    r" brauch\w+",
    "seulement | uniquement | chiffrer | devis | svp | solo | sólo | cotizar | por favor | quotare",
    "per favore | offerta | preventivo | alleen | offerte | graag",
)
_CELLS = re.compile(r"[,;|\t]|\s{2,}|\s[-–<]+\s")


def picked_by_word(words: str, lines: Sequence[str]) -> set[int]:
    """Indexes of the lines that are asked for; empty where the words pick none."""
    spaced = " ".join(words.split())
    everything = {*range(len(lines))}
    for pattern in _NOT_MARKED:
        for match in pattern.finditer(spaced):
            gone = bearing(lines, match["mark"].casefold())
            if gone and gone != everything:
                return everything - gone
    for match in _CALLED.finditer(spaced):
        clause = clause_of(spaced, match.start(), match.end())
        said = clause.replace(match["mark"].casefold(), " ")
        if _WANTS.search(clause) and not NO_REQUEST.search(said):
            return bearing(lines, match["mark"].casefold())
    return set()


def bearing(lines: Sequence[str], mark: str) -> set[int]:
    """The lines a cell of which is the mark, or opens with it: 'need 2'."""
    return {at for at, line in enumerate(lines) if _bears(line, mark)}


def _bears(line: str, mark: str) -> bool:
    cells = (cell.strip(" \"'()[]<>-*").casefold() for cell in _CELLS.split(line))
    return any(cell == mark or (len(mark) > 1 and cell.startswith(f"{mark} ")) for cell in cells)
