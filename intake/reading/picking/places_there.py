"""Lines of a numbered list that are there already, or asked for, by bare numbers: 'I already have
mandrels for 1, 3 and 5, so please quote 2 and 4'.

Such numbers measure nothing. Where only the request names them, as in 'please quote 2 and 4', they
may count mandrels, and which lines are wanted is in doubt.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of
from .place_names import ENDS, NO_MEASURE, NOUN

_AND = r"(?:and|und|et|y|e|en|sowie|&|\+)"
_NUMBER = rf"\(?(?:no\.?\s?|nr\.?\s?|#)?\d{{1,2}}\)?{NO_MEASURE}"
_MORE = rf"(?:\s?,\s?(?:{_AND}\s)?|\s{_AND}\s){_NUMBER}"
_LIST = rf"(?P<list>(?:(?:the\s|die\s|den\s|les\s|los\s|le\s|de\s)?{NOUN}\s)?{_NUMBER}(?:{_MORE})*)"
_SEVERAL = rf"(?P<list>{_NUMBER}(?:{_MORE})+)"
_TOOL = (
    r"(?:\w+\s)?(?:mandrels?|plugs?|\w*dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:en)?|ones?"
    r"|einen|welche)"
)
_HAVE = any_of(
    r"(?:we|i)(?:'ve)?\s(?:already\s|still\s|do\s|both\s)*(?:have|own|got)(?:\salready|\sgot"
    r"|\sstill)*",
    r"(?:already|still)\s(?:have|own|got)",
    r"(?:wir haben|ich habe|haben wir|habe? ich)\s(?:schon|bereits|noch)",
    r"(?:on a|nous avons|j['’]ai)\s(?:déjà|encore) | ya\s(?:tenemos|tengo) | (?:abbiamo|ho)\sgià",
    r"(?:we hebben|ik heb|hebben we|heb ik)\s(?:al|nog)",
)
_A = (
    r"(?:(?:the|a|an|good|my|our|your|both|all|die|einen|gute|les|des|un|le|los|el|i|il|een|de)\s)"
    r"{0,3}"
)
_FOR = r"(?:for|on|für|zu|pour|para|per|voor|de|van)\s"
_IS_THERE = any_of(
    r"(?:we|i)(?:'ve)?\s(?:already\s|still\s)*(?:have|own|got)\b",
    r"(?:are|is)\s(?:already\s|still\s|all\s)*(?:here|in stock|on the shelf|covered|on hand)\b",
    r"(?:haben wir|habe? ich|sind|ist|liegen)\s(?:schon|bereits|noch|da|vorhanden)\b",
    r"(?:on les a|nous les avons|je les ai|on a|nous avons|j['’]ai)\sdéjà\b",
    r"ya\s(?:l[oa]s?\s)?(?:tenemos|tengo)\b | (?:(?:li|le|lo)\s)?(?:abbiamo|ho)\sgià\b",
    r"(?:hebben we|heb ik|zijn er)\s(?:al|nog)\b",
)
_GOES_ON = (
    r"(?=\s*(?:$|[.,;:!)]|already\b|so\b|but\b|here\b|now\b|in stock\b|(?:and|then|und|et|y|e|en)\s"
    r"(?:please|need|want|would|only|just|brauch|bitte|il|necesit|ci|graag|so|i|we)|schon\b"
    r"|bereits\b"
    r"|déjà\b|ya\b|già\b|al\b))"
)
_THERE = (
    late_pattern(rf"\b{_HAVE}\s{_A}{_TOOL}\s(?:already\s)?{_FOR}{_LIST}{_GOES_ON}", re.IGNORECASE),
    late_pattern(rf"\b{_TOOL}\s{_FOR}{_LIST},?\s{_IS_THERE}", re.IGNORECASE),
    late_pattern(
        rf"(?:^|[.;:!,]\s){_FOR}{_LIST},?\s(?:{_IS_THERE}|{_HAVE})(?:\s{_A}{_TOOL})?(?=\s*(?:$"
        rf"|[.,;!)]|und"
        rf"\b|and\b|so\b|et\b|y\b|e\b|en\b|already\b))",
        re.IGNORECASE,
    ),
    late_pattern(rf"\b{_HAVE}\s(?P<list>{_NUMBER}(?:{_MORE})+){_GOES_ON}", re.IGNORECASE),
)
_FOR_THEM = late_pattern(
    r"\b(?:mandrels?|\w*dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:en)?)\s"
    rf"(?:each\s)?{_FOR}{_SEVERAL}(?!,?\s{_IS_THERE}){ENDS}",
    re.IGNORECASE,
)
_TAKEN = late_pattern(
    r"\b(?:quote|price|need|want|offer|brauchen?|benötigen|anbieten|chiffrer|besoin de|falta|faut"
    r"|cotizar"
    r"|necesitamos|servono|quotare|nodig|offreren)\s(?:me\s|us\s|only\s|just\s|for\s|up\s|bitte\s"
    r"|nur\s)?"
    rf"{_SEVERAL}{ENDS}",
    re.IGNORECASE,
)
_REFUSED = late_pattern(
    r"\b(?:don'?t|do not|no|not|never|if|when|unless|whether|kein\w*|nicht|wenn|pas|si|no|non|se"
    r"|niet|geen"
    r"|als)\s(?:\w+\s){0,2}$",
    re.IGNORECASE,
)
_AGAIN = late_pattern(
    r"(?:[^.;!?]|[.]\d)*\b"
    + any_of(
        r"worn | broken? | spares? | again | replac\w+ | all | every | also | too | as well | but"
        r" | though",
        r"another | new | fresh | verschlissen | kaputt | ersatz | alle | auch | aber | noch"
        r" einmal | usée?s?",
        r"cassée?s? | mais | aussi | tou[st] | gastad[oa]s? | rot[oa]s? | pero | también | todos "
        r"| usurat[oaie]",
        r"rott[oaie] | ma | anche | tutti | versleten | kapot | maar | ook | alle",
    )
    + r"\b",
    re.IGNORECASE,
)
"""'... but it is worn', '... but want spares': they are wanted all the same."""
_ALL = late_pattern(
    r"\b(?:quote|price|need|want)\s(?:me\s|us\s)?(?:all|both|every\w*)\b|\b(?:also|as well|too"
    r"|auch|aussi"
    r"|también|anche|ook)\b",
    re.IGNORECASE,
)
_AHEAD = 80
_LABEL = late_pattern(r"^[ \t>*-]*\(?(?P<label>\d{1,2})\s?[).:][^\n]*?\d", re.MULTILINE)
_DIGITS = re.compile(r"\d+")
_BACK = 24


def labels_of(text: str) -> list[str]:
    """The numbers that the lines of a list open with, in rising order; else none."""
    found = [match["label"] for match in _LABEL.finditer(text)]
    values = [int(label) for label in found]
    return found if len(found) > 1 and values == sorted({*values}) else []


def numbers_there(words: str, names: Sequence[str], sizes: Sequence[Decimal]) -> set[int]:
    """Indexes of the lines that the words say there are mandrels for, or leave out of a request.

    ``names`` are what the lines are called, ``sizes`` figures of theirs: a number alone that is one
    of those names no line.
    """
    said = _without_there(words)
    there = _meant(words, _THERE, names, sizes)
    asked = _meant(said, (_FOR_THEM,), names, sizes)
    if there:
        taken = _meant(said, (_FOR_THEM, _TAKEN), names, sizes)
        return set() if there & taken or len(there) == len(names) else there
    return {*range(len(names))} - asked if asked and not _ALL.search(said) else set()


def is_picked_unsurely(words: str, names: Sequence[str], sizes: Sequence[Decimal]) -> bool:
    """'Please quote 2 and 4', and nothing is said of the others: those two, or so many?"""
    taken = _meant(words, (_TAKEN,), names, sizes)
    return 0 < len(taken) < len(names) and not numbers_there(words, names, sizes)


def _without_there(words: str) -> str:
    for pattern in _THERE:
        words = pattern.sub(lambda match: " " * len(match[0]), words)
    return words


def set_places_aside(layout: Layout) -> None:
    """Say of the bare numbers of lines that they measure nothing."""
    names = labels_of(layout.text)
    if not names:
        return
    layout.places = [
        match.span("list")
        for pattern in (*_THERE, _FOR_THEM, _TAKEN)
        for match in pattern.finditer(layout.text)
        if _is_list(match["list"], names, ())
    ]
    for figure in layout.figures:
        if figure.unit is None and any(begin <= figure.start < end for begin, end in layout.places):
            figure.give("noise", "place")


def _meant(
    words: str,
    patterns: Sequence[re.Pattern[str]],
    names: Sequence[str],
    sizes: Sequence[Decimal],
) -> set[int]:
    found: set[int] = set()
    for pattern in patterns:
        for match in pattern.finditer(words):
            refused = _REFUSED.search(words, max(0, match.start() - _BACK), match.start())
            again = patterns is _THERE and _AGAIN.match(words, match.end(), match.end() + _AHEAD)
            if refused is None and not again and _is_list(match["list"], names, sizes):
                found |= {names.index(number) for number in _DIGITS.findall(match["list"])}
    return found


def _is_list(said: str, names: Sequence[str], sizes: Sequence[Decimal]) -> bool:
    """Whether each of the numbers is a line's; one alone must not be one of its figures."""
    numbers = _DIGITS.findall(said)
    if any(number not in names for number in numbers):
        return False
    return len(numbers) > 1 or not {*map(Decimal, numbers)} & {*sizes}
