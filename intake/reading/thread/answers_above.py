"""A reply above the quoted mail that answers its questions: by their numbers ('1. .065'), or in
their order, an answer a line ('.065' and '304'), or the one question with hardly more than a
figure ('its .083', '2 mm', 'just two').

Only answers that name no length themselves: 'wall is .065' needs nobody to say which it is.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from ...late_pattern import late_pattern
from ...model import OwnText, Prompt
from ...words_relying import NEEDS
from ..counts.words import ARTICLES, COUNTS
from ..material.grades import grade_at
from ..material.materials import find_materials
from ..text.cue_fillers import FILLER_LEFT
from ..text.lexer import lex
from ..text.patterns import any_of, word_set
from ..text.plain import flatten
from ..text.roles import LENGTH_ROLES
from ..text.tokens import Token
from .staying import Field, fields_asked

_LONGEST = 240
"""Characters of a reply that says hardly more than its answers."""
_MOST_WORDS = 6
"""Words beside the figure of one answer."""
_MOST_NAMES = 4
_NUMBERED = late_pattern(r"^[ \t]*(?P<number>[1-9])[ \t]?[.):][ \t]+(?P<said>\S[^\n]*)$", re.M)
_ITEM = late_pattern(r"^[ \t]*(?:[-*•·–]|[1-9][.)])[ \t]+(?P<said>\S[^\n]*)$", re.M)
_QUESTION = late_pattern(r"[^\n.?!:]*(?:\n[^\n.?!:]+)?\?")
_GREETS = late_pattern(
    any_of(
        "hi | hello | hey | dear | good (?:morning|afternoon|day) | thanks | thank you | guten",
        "hallo | moin | servus | danke | bonjour | salut | merci | hola | buen[oa]s? | gracias",
        "buongiorno | ciao | salve | grazie | goede\\w* | dag | beste | bedankt | dank",
    )
    + r"\b[^\d\n]{0,40}(?:[,!.:–-]\s|[,!.:–-]?$)",
    re.IGNORECASE,
)
_APART = re.compile(r"[ \t]*(?:[,;|]|/(?=[ \t])|\b(?:and|und|et|y|e|en)\b)[ \t]+")
_WORD = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)?")
_SAID_BESIDE = FILLER_LEFT | word_set(
    """it's its it's that's thats that we i run use using have our they is tube tubing pipe please
    thanks thx wall sir hi there yes ok okay answer es sind ist bitte danke rohr c'est ce sont nous
    avons merci tube svp son usamos tenemos gracias tubo è sono grazie het zijn graag buis dank you
    if could be measured measures inch inches millimetre millimeter millimeters ga gauge ja oui sí
    si just only nur seulement solo sólo solamente soltanto maar slechts need want take will we'll
    brauchen nehmen wir il nous en faut necesitamos ce ne servono ne prendiamo hebben er nodig
    mandrel mandrels dorn dorne mandrin mandrins mandril mandriles mandrino mandrini doorn doornen
    pc pcs piece pieces stück stk pièces piezas unidades pezzi pz stuks off of them davon"""
)
_ORDERS = word_set(
    """go ahead with ok okay for send order quote at price make it mejor que sean mandar mandate
    dann nehmen bestellen we'd i'd like would good perfect great looks fine prendiamo pues alors
    parfait on va prendre allora facciamo d'accordo akkoord doen dan gut passt gern schicken"""
)
"""Beside a count, these order so many; a length that they stand beside is none."""
_COUNT_WORDS = frozenset(word for word, count in COUNTS.items() if count <= 20)
_ROLES: dict[Field, frozenset[str]] = {
    "od": frozenset({"od"}),
    "wall": frozenset({"wall"}),
    "clr": frozenset({"clr", "radius", "inside_r", "outside_r"}),
}


class _Part(NamedTuple):
    """Words of the reply that may be one answer."""

    start: int
    said: str


def answers_above(own: OwnText) -> tuple[Prompt, ...]:
    """Each answer with the question that it answers; none where that isn't plain."""
    mail = own.quoted[0] if own.quoted else None
    words = own.text[own.body_start :]
    if mail is None or mail.by_sender or own.prompts or len(words.strip()) > _LONGEST:
        return ()
    questions = _questions(mail.text)
    if not questions or any(len(fields_asked(_asking(one))) > 1 for one in questions):
        return ()
    parts = _parts(words)
    by_number = _by_number(parts, len(questions))
    if by_number is None and len(parts) == 1 < len(questions):
        parts = _split(parts[0])
    pairs = by_number or (list(enumerate(parts)) if len(parts) == len(questions) else [])
    prompts: list[Prompt] = []
    for number, part in pairs:
        (field,) = fields_asked(_asking(questions[number])) or (None,)
        if field is None or not _is_bare(part.said, field):
            if by_number is None:
                return ()  # who tells one in so many words may have left out another
            continue
        start = own.body_start + part.start
        asked = _asking(questions[number])
        prompts.append(Prompt(start=start, end=start + len(part.said), question=asked))
    return tuple(prompts)


def _questions(text: str) -> list[str]:
    """What the quoted mail asks, in its order: numbered or in a list, else sentence by sentence."""
    listed = [found["said"] for found in _ITEM.finditer(text)]
    asked = [one for one in listed if "?" in one]
    if asked:
        return [one for one in asked if fields_asked(_asking(one))]
    heads = [line for line in text.split("\n") if line.rstrip().endswith(":")]
    if listed and any(re.search(one, head, re.IGNORECASE) for head in heads for one in NEEDS):
        return [one for one in listed if fields_asked(_asking(one))]
    return [found[0] for found in _QUESTION.finditer(text) if fields_asked(_asking(found[0]))]


def _asking(question: str) -> str:
    """A question as one: an item of a list may have no mark, and tells in brackets why it asks."""
    said = " ".join(re.sub(r"\([^()]{12,}\)", " ", question).split())
    return said if said.endswith("?") else f"{said}?"


def _parts(words: str) -> list[_Part]:
    """The lines of the reply, a greeting taken off."""
    parts: list[_Part] = []
    at = 0
    for line in words.split("\n"):
        said = line.strip()
        begin = at + len(line) - len(line.lstrip())
        at += len(line) + 1
        hello = _GREETS.match(said)
        if hello is not None:
            begin, said = begin + hello.end(), said[hello.end() :]
        if said and parts and _is_name(said) and not words[: at - len(line) - 1].split("\n")[-1]:
            break
        if said:
            parts.append(_Part(begin, said))
    return parts


def _is_name(said: str) -> bool:
    """'Jo', 'Jo Smith': what may stand below an empty line under the answers."""
    names = all(word[:1].isupper() and word.isalpha() for word in said.split())
    return names and len(said.split()) <= _MOST_NAMES and not find_materials(said)


def _split(part: _Part) -> list[_Part]:
    """'.065, 304' in one line."""
    found: list[_Part] = []
    at = 0
    for mark in _APART.finditer(part.said):
        found.append(_Part(part.start + at, part.said[at : mark.start()]))
        at = mark.end()
    return [*found, _Part(part.start + at, part.said[at:])]


def _by_number(parts: Sequence[_Part], most: int) -> list[tuple[int, _Part]] | None:
    """The answers by the numbers of their questions; None where a line has none."""
    found: list[tuple[int, _Part]] = []
    for part in parts:
        match = _NUMBERED.match(part.said)
        number = int(match["number"]) if match is not None else 0
        if match is None or not 1 <= number <= most or number - 1 in dict(found):
            return None
        found.append((number - 1, _Part(part.start + match.start("said"), match["said"])))
    return found


def _is_bare(said: str, field: Field) -> bool:
    """Whether an answer is hardly more than its figure, its count or its material."""
    words = [word.casefold() for word in _WORD.findall(said)]
    tokens = lex(flatten(said).text)
    numbers = [token for token in tokens if token.number is not None and not token.block]
    if field == "material":
        places = re.finditer(r"(?<![\w.,/-])\w", said)
        named = bool(find_materials(said)) or any(grade_at(said, at.start()) for at in places)
        return named and len(words) <= _MOST_WORDS
    if field == "quantity":
        return count_alone(said) is not None
    if len(numbers) != 1 or any(token.kind == "times" for token in tokens):
        return False
    roles = {cue.role for token in tokens for cue in token.cues if cue.role in LENGTH_ROLES}
    return roles <= _ROLES[field] and _is_alone(numbers[0], said)


def _is_alone(number: Token, said: str) -> bool:
    """Whether only fillers stand beside the figure and its unit."""
    rest = f"{said[: number.start]} {said[number.end :]}".casefold()
    beside = _WORD.findall(rest)
    return len(beside) <= _MOST_WORDS and all(word in _SAID_BESIDE for word in beside)


def count_alone(said: str) -> int | None:
    """The count of an answer that is hardly more: '2 please', 'just two', 'zwei Stück'."""
    words = _WORD.findall(said.casefold())
    counts = [COUNTS[word] for word in words if word in _COUNT_WORDS and word not in ARTICLES]
    figures = re.findall(r"(?<![\w.,])\d{1,2}(?![\w.,/]\d|\w)", said)
    beside = all(word in _SAID_BESIDE | _ORDERS or word in _COUNT_WORDS for word in words)
    found = [*counts, *map(int, figures)]
    digits = len(re.findall(r"\d+", said))
    return found[0] if beside and len(found) == 1 and digits == len(figures) else None
