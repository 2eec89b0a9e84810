"""Numbers that count mandrels without naming them: 'Qty: 2', 'just one', 'two please', 'x2'."""

from __future__ import annotations

from functools import lru_cache

from ..text.phrases import Words, words_of
from . import bare_words as b
from . import verbs as v
from . import wishes
from . import words as w
from .context import Context
from .nouns import ENDS, MARKS, Nouns
from .numbers import Count, Numbers

LABELLED, COUNTED, PIECES, PROMPTED, BARE, ALONE, ARTICLE, NOUN = 10, 8, 7, 6, 4, 3, 2, 1
"""How surely a number counts mandrels; one less where it hangs on a condition."""
_MOST_ALONE = 12
_LEADERS = 64
"""So many dots may lead from a label to its count; a word costs as much as eight of them."""
_LABEL_TABLE = w.labelled_pieces()
_RADIUS = frozenset("r clr radius rad centerline centreline rayon raggio radio straal".split())
_OF_NUMBER = frozenset((*"-/.,:=\"'", "mm", "in", "inch", "is"))
_LONGEST_SUM = 4
"""Words of the longest phrase that sums up."""
_RADIUS_FAR = 10
"""Words from a radius to its name: '4-1/2"' is six."""
_STARTERS = frozenset((*w.LABELS, *_LABEL_TABLE, *b.ASKS_BARE))
_STARTS = frozenset(("", "\n", "\n\n"))
_CLAUSE_ENDS = ENDS | {",", ";"}
_STOPS = frozenset((".", "!", "?", "\n", "\n\n"))
_SHORTENED = frozenset("in ga sch dia approx rad".split())
_ONE_OF_THEM = frozenset("einer eine davon waarvan dont one un una uno".split())
"""'Zwei, einer davon als Ersatz.'"""
_OF_THEM = frozenset("them these those that this em it his hers theirs mine ours yours".split())
_OF_OTHERS = frozenset("of the these those matching new same size".split())
_THEM = frozenset(("them", "those", "these"))
_THEREFORE = frozenset(("so", "as", "because"))
_BEFORE_A_COUNT = frozenset(("\n", *"the just only like also ( us me a".split()))


class Prompts:
    """What around a number makes it a count although no noun follows."""

    def __init__(self, numbers: Numbers, context: Context, nouns: Nouns) -> None:
        self.numbers = numbers
        self.context = context
        self.nouns = nouns
        self.words = numbers.words
        self.text = self.words.text
        self.label_at, self.asked = _prompts(numbers.plain)

    def is_labelled(self, count: Count) -> bool:
        """'Qty: 2', 'Quantity required ...... three (3)', 'Anzahl Dorne: 2'."""
        at, label = count.first, None
        steps = _LEADERS
        while steps > 0:
            label = self.label_at.get(at)
            if label is not None:
                break
            before = self.words.at(at - 1)
            if before == "\n":
                # A label with its figure on the next line stands alone on its own.
                label = self.label_at.get(at - 1) or self.label_at.get(at - 2)
                if label is None or self.words.at(label - 1) not in _STARTS:
                    return False
                break
            if before not in b.FILLERS:
                return False
            steps -= 1 if before == "." else _LEADERS // 8
            at -= 1
        if label is None or self.words.at(label - 1) in b.NOT_LABEL:
            return False
        if self.context.speaks_of_other_tooling(label) or not self._ends_label(count, label):
            return False
        if self.words.at(label) in w.MORE:
            return False
        if self.words.at(label) == "n" and (
            self.words.at(label - 1) not in MARKS or self.words.at(count.after) == ":"
        ):
            return (
                False  # "n. 3" counts in Italian; "rif. n. 3" is a reference, "n. 3: Ø 40" an item
            )
        return not self.nouns.counts_others(count.after)

    def _ends_label(self, count: Count, label: int) -> bool:
        """'Qty: 2' counts; 'Dorne: 38 x 1,5' begins a size."""
        after = self.words.at(count.after)
        if after in w.MEASURES:
            return False
        if not w.is_mandrel(self.text[label]):
            return True
        return after in MARKS or after in b.FOLLOWERS or bool(self.nouns.behind(count)[0])

    def rank(self, count: Count, last: int) -> int:
        """Rank of a number without a noun, or 0. ``last``: the count before it, or -1."""
        behind = count.after
        while self.words.at(behind) in w.MORE:
            behind += 1
        before, after = self.words.at(count.first - 1), self.words.at(behind)
        open_end = after in MARKS or after in b.FOLLOWERS
        if after == "of":
            open_end = self.words.at(behind + 1) in w.EACH | _OF_THEM
            if self.words.at(behind + 1) in _CLAUSE_ENDS:
                return BARE  # "one of, please": a slip for "off"
            if self._says_of_them(before, behind + 1):
                return BARE
            if self.numbers.is_size(behind + 1):
                return BARE  # "three mandrels of ..., and 1 of 2 x .065"
        if before in b.CLOCK and not self.is_asked(count.first):
            return 0
        if after == "x" and self._is_glued(behind) and not before.isdecimal():
            ahead = self.words.at(behind + 1)
            return PROMPTED if ahead in v.PLEASE | b.TIMES_X | _STARTS else 0
        if before in ("x", "*") and open_end:
            return self._times(count.first - 2)
        if self.text[count.after - 1] in w.PAIRS | w.DOZENS:
            open_end = open_end or self.numbers.is_size(behind)
        if not open_end and not self.text[count.first].isdecimal():
            open_end = self.numbers.is_size(behind) and before in w.JOINING  # "e uno 42 x 2"
        if open_end and (self.is_asked(count.first) or self._goes_on(count.first, after, last)):
            return BARE
        if open_end and self.sums_up(count.first):
            return BARE
        if before == ":" and after in w.FOR and self.numbers.is_size(behind + 1):
            return BARE  # "same again: 2 for 38 x 1.5"
        if self.is_for_this(count):
            return BARE
        if before in ("would", "will", "does") and after in v.COSTS:
            return BARE  # "what would one cost?"
        if before not in b.DETERMINERS and not before.isdecimal():
            if self.words.phrase(count.after, b.STRONG_AFTER):
                return PROMPTED
            used = self.words.phrase(count.after, b.ASKS_BARE_AFTER)
            others = after in w.EACH and self._names_others(count.after + used)
            if used and not others:
                return BARE
        return ALONE if self._stands_alone(count, before, after) else 0

    def _says_of_them(self, before: str, them: int) -> bool:
        """'... 1020 DOM, two of them so I have a spare': no verb says it of anything else."""
        parted = before in _STARTS or before in _CLAUSE_ENDS
        follows = self.words.at(them + 1)
        ends = follows in _CLAUSE_ENDS or follows in v.PLEASE or follows in _THEREFORE
        if not (parted and ends and self.words.at(them) in _THEM):
            return False
        said = self.text[self.words.first[them] : them - 2]
        return not any(word in w.OTHERS or word in v.OTHER_TOOLING for word in said)

    def is_for_this(self, count: Count) -> bool:
        """'So one for that please': a sentence that begins with the count."""
        if not self.words.phrase(count.after, wishes.FOR_THIS):
            return False
        first = count.first - 1
        while self.words.at(first) in wishes.SO or self.words.at(first) == ",":
            first -= 1
        return first < self.words.first[count.first] or self.words.at(first) in _STARTS

    def _names_others(self, at: int) -> bool:
        """'2 each of the matching nuts', '4 ea tubes'."""
        while self.words.at(at) in _OF_OTHERS:
            at += 1
        return self.words.at(at) in w.OTHERS or self.words.at(at) in v.OTHER_TOOLING

    def _is_glued(self, at: int) -> bool:
        return self.words.start[at] == self.words.end[at - 1]

    def _times(self, at: int) -> int:
        """'Mandrel x 2', and 'x2 please' on its own; a number before it makes it a size."""
        ahead = self.words.at(at)
        if w.is_mandrel(ahead) or (ahead in MARKS and not self.words.at(at - 1).isdecimal()):
            return PROMPTED
        if self._ends_radius(at):
            return PROMPTED
        return 0 if ahead.isdecimal() or ahead in ('"', "mm", "in", "wall", ")") else BARE

    def _ends_radius(self, at: int) -> bool:
        """'CLR 4-1/2 x3', 'R76 x 2': a radius is multiplied by nothing."""
        for back in range(at, max(-1, at - _RADIUS_FAR), -1):
            word = self.words.at(back)
            if word in _RADIUS:
                return True
            if not (word.isdecimal() or word in _OF_NUMBER):
                return False
        return False

    def sums_up(self, at: int) -> bool:
        """'One and a spare, so two', 'Also bitte zwei': whether that word tells the sum."""
        if self.words.at(at - 1) == "also" and self.words.at(at) in b.SUMS_GERMAN:
            return self.words.at(at - 2) in _CLAUSE_ENDS | _STARTS
        return any(
            self.words.phrase(at - used, b.SUMS) == used
            and self.words.at(at - used - 1) in _CLAUSE_ENDS | _STARTS
            for used in range(1, min(at, _LONGEST_SUM) + 1)
        )

    def is_asked(self, at: int) -> bool:
        """Whether 'just', 'I'd take', 'price for' leads to that word."""
        for _ in range(3):
            if at in self.asked:
                return True
            if self.words.at(at - 1) not in _BEFORE_A_COUNT:
                return False
            at -= 1
        return False

    def _goes_on(self, at: int, after: str, last: int) -> bool:
        """'One mandrel for the 1.5 and two for the 2 in': the noun is not said again."""
        sized = not self.text[at].isdecimal() and self.numbers.is_size(at + 1)
        if last < 0 or not (after in w.FOR or sized) or not self._in_one_breath(last, at):
            return False
        if self.words.at(at - 1) == ":":  # "six mandrels: 3 for 1.5 x .065"
            return self.words.at(at + 2)[:1].isdigit() or self.words.at(at + 2) == "."
        return self.words.at(at - 1) in w.JOINING

    def _in_one_breath(self, left: int, right: int) -> bool:
        """Whether no sentence ends between two words; the point of '2 in. OD' ends none."""
        for at in range(left, right):
            if self.text[at] in _STOPS and not (
                self.text[at] == "."
                and (self._is_glued(at + 1) or self.words.at(at - 1) in _SHORTENED)
            ):
                return False
        return True

    def _stands_alone(self, count: Count, before: str, after: str) -> bool:
        polite = after == "," and self.words.at(count.after + 1) in v.PLEASE | _ONE_OF_THEM
        if count.value > _MOST_ALONE or not (after in ENDS or polite):
            return False
        if not self.text[count.first].isdecimal() and not count.bracket:
            return before in ENDS or before in (",", ":", ";", "-") or before in wishes.SO
        return before in (",", ":") and self.context.names_mandrel(count.first)

    def begins_line(self, at: int) -> bool:
        """Whether a word begins its line, but for a bullet."""
        before = self.words.at(at - 1)
        return before in _STARTS or (before in "-*" and self.words.at(at - 2) in _STARTS)

    def leads_line(self, count: Count) -> bool:
        """'2x 1-3/4 x .120 x 6 clr' at the start of a line, or of an item in one."""
        if self.words.at(count.after) != "x":
            return False
        before = self.words.at(count.first - 1)
        if not (self.begins_line(count.first) or before in w.JOINING or before in (":", ";")):
            return False
        glued = self.words.start[count.after] == self.words.end[count.after - 1]
        behind = count.after + 1
        if self.words.at(behind) == "ø" and not self.numbers.is_size(behind):
            behind += 1
        return (
            glued
            and behind < len(self.words)
            and self.words.start[behind] > self.words.end[count.after]
            and self.numbers.is_size(behind)
        )


@lru_cache(maxsize=16)
def _prompts(text: str) -> tuple[dict[int, int], set[int]]:
    """Index behind a label: index of its first word; and the indexes behind 'just', 'I'd take',
    'price for'. The last few texts are kept."""
    words = words_of(text)
    label_at: dict[int, int] = {}
    asked: set[int] = set()
    for index in range(len(words)):
        word = words.text[index]
        if word == "after" and words.at(index - 1) in _CLAUSE_ENDS:
            asked.add(index + 1)  # "u do mandrels? after 2", "call me after 2"
        if word not in _STARTERS:
            continue
        label = words.phrase(index, w.LABELS) or words.phrase(index, _LABEL_TABLE)
        if label:
            label_at.setdefault(index + label, index)
        asks = words.phrase(index, b.ASKS_BARE)
        if asks and not (word == "maar" and _ends_figure(words, index - 1)):
            asked.add(index + asks)
    return label_at, asked


def _ends_figure(words: Words, at: int) -> bool:
    """'Niet 1,5 mm maar 2': behind a figure the Dutch word is 'but', and not 'only'."""
    return words.at(at - (words.at(at) == "mm"))[-1:].isdecimal()
