"""'The radius has gone from 150 to 120': the first figure is past, the second is what is wanted."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..naming.cue_fits import fits
from ..naming.cue_sides import cue_right
from ..naming.place_tests import is_thin
from ..text.cues import Cue
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, word_set
from ..text.roles import LENGTH_ROLES

_FROM = late_pattern(
    r"\b"
    + any_of(
        r"(?:chang|switch|mov|reduc|increas|dropp?|went|gone)(?:es|ed|e|s)?\b[^.;,:\d]{0,24}\bfrom",
        r"(?:chang|switch|mov|reduc|increas|dropp|stepp|bump)ing\b[^.;,:\d]{0,24}\bfrom",
        r"(?:we|i|they|he|she|customer|client)(?:'re|'m|'s|\sare|\sam|\sis)\s(?:now\s)?going"
        r"\b[^.;,:\d]{0,24}\bfrom",
        r"(?:want|wants|wanted|need|needs|like|decided|have|had|plan|hope|hoping|planning|us|trying)"
        r"\sto\s(?:go|move|switch|change|step|upgrade)\b[^.;,:\d]{0,16}\bfrom",
        r"(?:wollen|möchten|müssen|sollen|steigen|stellen|wechseln|gehen)\b[^.;,:\d]{0,16}\bvon",
        r"passer\b[^.;,:\d]{0,12}\bd[eu] | pasar\b[^.;,:\d]{0,12}\bde",
        r"passare\b[^.;,:\d]{0,12}\bdal? | (?:willen|moeten|gaan)\b[^.;,:\d]{0,12}\bvan",
        r"(?:go|drop|step|move|bump)\s(?:up|down)\b[^.;,:\d]{0,16}\bfrom",
        r"(?:ändert|geändert|wechselt|wandert|reduziert|erhöht)\w*\b[^.;,:\d]{0,24}\bvon",
        r"(?:passé?e?|chang[eé]e?|réduit)\b[^.;,:\d]{0,16}\bde",
        r"(?:pasa|pasó|cambia|cambió|cambiad[oa])\b[^.;,:\d]{0,16}\bde",
        r"(?:passa|passat[oa]|cambia|cambiat[oa]|ridott[oa])\b[^.;,:\d]{0,16}\bda",
        r"(?:gaat|wijzigt|gewijzigd|veranderd?t?)\b[^.;,:\d]{0,24}\bvan",
    )
    + r"\s*(?:an?|the|our|the old)?\s*$"
)
_CHANGES_TO = late_pattern(
    r"\b(?:"
    + any_of(
        r"(?:want|wants|wanted|need|needs|needed|like|likes|have|has|had|decided|plan|hoping|trying)"
        r"\s(?:us\s|me\s)?to\s(?:go|drop|move|step|switch|change|bump|thin)\b[^.;,:\d]{0,12}?"
        r"\s(?:(?:up|down)\s)?to",
        r"(?:are|is|am|'re|'m|'s|now|be)\s(?:now\s)?going\s(?:up|down)\sto",
        r"(?:dropping|moving|stepping|switching|changing|bumping|dropped|moved|stepped|switched"
        r"|changed|bumped|went|gone)\s(?:it\s|us\s)?(?:(?:up|down)\s)to",
    )
    + r")\s*(?:an?|the|our)?\s*$"
)
"""'We want to go down to .058 wall': no limit, but what it is from now on."""
_ONLY_GOT = late_pattern(
    r"^\s(?:\w+\s)?(?:,\s)?(?:but|aber|mais|pero|ma|maar)\s"
    + any_of(
        r"(?:we |i |they |he |she |the mill )?(?:can|could|now|will|ll)?\s?(?:now )?only"
        r" (?:get|find|got|have|has|buy|source|stock|sell|comes? in)",
        "(?:bekommen|kriegen|haben|gibt es) (?:wir |jetzt |nur ){1,3}",
        "(?:on ne trouve|on n'a|il n'y a) (?:plus )?que",
        "solo (?:hay|encontramos|tenemos|troviamo)",
        "(?:we kunnen|we hebben) (?:nu )?alleen",
    )
    + r"\s*(?:the|in|du|de)?\s*$"
)
_ABLE = late_pattern(r"\b(?:can|could|may|might|able|capable|capacity|rated|machine|bender)\b")
_BACK_FROM = late_pattern(r"^[^.;:\d]{0,24}\bfrom\s(?:an?\s|the\s|our\s|my\s|old\s){0,2}$")
_TO = word_set("to auf zu a à naar al")
_LEAD = 64
"""Characters before the first figure in which the words stand."""


def hear_changes(layout: Layout) -> None:
    """Deny the first figure of 'changed from A to B', and give B what the sentence speaks of."""
    _hear_back_from(layout)
    _hear_only_got(layout)
    for old in layout.figures:
        new = layout.after_in_sentence(old)
        if new is None or not any(t.text in _TO for t in layout.between(old, new)):
            continue
        begin = max(layout.sentence_start(old.sentence), old.start - _LEAD)
        if not _FROM.search(layout.words(begin, old.start)):
            continue
        old.negated = True
        new.link = "apart"
        cue = spoken_of(layout, old)
        own = cue_right(layout, new)
        if cue is not None and new.role is None and own is None and fits(new, cue):
            new.give(cue.role, "cue")


def _hear_only_got(layout: Layout) -> None:
    """'We quoted it with .095 but can only get .120 now': the second is what there is."""
    for old in layout.figures:
        new = layout.after_in_sentence(old)
        if new is None or old.negated or "times" in (old.link, new.link):
            continue
        if (
            old.role is not None
            or new.role is not None
            or not _ONLY_GOT.search(layout.words(old.end, new.start))
        ):
            continue
        if is_thin(old) and is_thin(new):
            old.negated = True
            new.link = "apart"
            new.give("wall", "cue")


def changes_to(before: str) -> bool:
    """Whether the words before a figure, casefolded, say that it is so from now on."""
    return _CHANGES_TO.search(before) is not None and not _ABLE.search(before)


def _hear_back_from(layout: Layout) -> None:
    """'We want to go up to .095 wall from .065': the second is past."""
    for new in layout.figures:
        old = layout.after_in_sentence(new)
        if old is None or not _BACK_FROM.match(layout.words(new.end, old.start)):
            continue
        begin = max(layout.sentence_start(new.sentence), new.start - _LEAD)
        if changes_to(layout.words(begin, new.start)):
            old.negated = True
            old.link = "apart"


def spoken_of(layout: Layout, figure: Figure) -> Cue | None:
    """The last length that the sentence names before a figure."""
    first, _ = layout.spans[figure.sentence]
    for at in range(figure.token - 1, first - 1, -1):
        token = layout.tokens[at]
        if token.number is not None:
            return None
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is not None and cue.role in LENGTH_ROLES:
            return cue
    return None
