"""Which noun a number counts: mandrels, pieces, or something else."""

from __future__ import annotations

from bisect import bisect_left
from functools import lru_cache

from ..text.phrases import words_of
from . import bare_words as b
from . import verbs as v
from . import words as w
from .context import Context
from .numbers import Count, Numbers

ENDS: frozenset[str] = frozenset(("", "\n", "\n\n", ".", "!", "?"))
MARKS = ENDS | frozenset(",;:)-/&([+")
_ENDS_SHY = frozenset((".", "\n", "\n\n", "", ")"))
"""Behind '1 no' these make it a piece."""
_PLACES = frozenset(
    "ground floor deck wall table bench line edge end price road back front top bottom face center"
    " centre centerline road roof ceiling total bender benders machine press rig scrapyard".split()
)
_AGED = frozenset("old older big little small other scrapped".split())
_OFF_SOMETHING = frozenset("a an my his her their some somebody someone ebay".split())
"""'One off an old bender': what it came from, where 'one off' would count pieces."""
_RUNS = frozenset(
    "order orders job jobs run runs contract project production batch batches lot serie"
    " series".split()
)
_MOST_BETWEEN = 9
"""Words between a count and the noun it counts."""
_AHEAD_OF_ANOTHER = frozenset("for on at a qty maybe even pour fur bei".split())


class Nouns:
    """The nouns behind the numbers of a text."""

    def __init__(self, numbers: Numbers, context: Context) -> None:
        self.numbers = numbers
        self.context = context
        self.words = numbers.words
        self.text = self.words.text
        self.places = _tools(numbers.plain)
        """Indexes of the nouns that name mandrels."""

    def behind(self, count: Count) -> tuple[int, bool]:
        """(index behind the noun that is counted, whether it only says 'pieces'); 0 is none."""
        at = count.after
        if self.words.at(at) in ("x", "*"):
            at += 1
        while self.words.at(at) in w.MORE or self.words.at(at) in ("separate", "identical", "new"):
            at += 1
        stands_for_it = at > count.after or self.words.at(at + 1) in MARKS
        if self.words.at(at) in w.ONES and stands_for_it and not self.counts_others(at):
            return at + 1, True  # "two new ones", "uno nuevo"
        if self.words.at(at) == "-" and self.words.at(at + 1) == "off":
            if self.words.at(at + 2) in _RUNS:
                return 0, False  # "it's for a 4-off batch"
            return (at + 2, True) if self._is_sole(count, at + 2) else (0, False)
        used = self.words.phrase(at, w.PIECES)
        if not used:
            return self._mandrel(count, at), False
        shy = self.words.at(at) in w.SHY_PIECES
        behind = at + used
        if self.words.at(behind) in _RUNS:
            return 0, False  # "this is for a 40 piece order"
        at = behind + (self.words.at(behind) == ".")
        if at > behind and self._begins_sentence(behind - 1, at):
            return behind, True
        mandrel = self._mandrel(count, at)
        if mandrel:
            return mandrel, False
        if self.counts_others(behind) or self.counts_others(at):
            return 0, False
        if shy and self.words.at(behind) not in _ENDS_SHY:
            return 0, False
        return behind, True

    def is_off_a_place(self, off: int) -> bool:
        """'The seat is 15 off the ground', 'the former is one off an old bender': 'off' is no piece
        there."""
        if self.words.at(off) != "off":
            return False
        if self.words.at(off + 1) in _OFF_SOMETHING:
            return True
        at = off + 2 + (self.words.at(off + 2) in _AGED)
        return self.words.at(off + 1) in ("the", "our") and self.words.at(at) in _PLACES

    def _is_sole(self, count: Count, behind: int) -> bool:
        """'What would a one-off be?', '2-off mandrels'; 'it's a one-off job' counts nothing."""
        if self.text[count.first].isdecimal():
            return True
        ahead = self.words.at(count.first - 2)
        said = self.words.at(count.first - 1) == "a" and ahead in ("s", "is", "was", "as")
        after = self.words.at(behind)
        return not said and (
            after in MARKS | b.FOLLOWERS | {"be", "cost", "price", "run"}
            or bool(self._mandrel(count, behind))
        )

    def _begins_sentence(self, piece: int, at: int) -> bool:
        """'1 pc. Rod is 3/4-16': what follows the point is not what is counted."""
        if self.text[piece] not in w.SENTENCE_PIECES or at >= len(self.words):
            return False
        first = self.numbers.plain[self.words.start[at]]
        return first.isupper() and not w.is_mandrel(self.text[at])

    def _mandrel(self, count: Count, at: int) -> int:
        """Index behind the mandrel noun that a few words on is counted, or 0."""
        following = bisect_left(self.places, at)
        if following == len(self.places) or self.places[following] > at + _MOST_BETWEEN:
            return 0
        if self.words.at(at) in ("of", "de", "di", "von", "d"):
            at += 1
            if self.words.at(at) in w.SOMEBODYS and not (
                self.words.at(at) in w.YOURS
                and any(self.words.phrase(i, v.WANTS) for i in self.words.before(count.first, 4))
            ):
                return 0  # "one of your mandrels" broke; "I'd like to buy two of your mandrels"
        if self.words.at(at) == "-":
            at += 1
            if self.words.at(at).isdecimal() and w.names_tool(self.words.at(at + 1)):
                return 0  # "rayon 50 - 1 mandrin": the second counts
        if self.words.at(at + 1) in w.LINKS and self.words.at(at) in w.COUNTS:
            at += 2  # "2 three ball mandrels"
        if self.words.at(at) in w.LINKS and count.value > 1:
            if count.bracket:
                return at + 2 if self.words.at(at + 1) in w.MANDRELS - w.SINGULAR else 0
            return 0  # "a two ball mandrel", and "2 ball mandrels" may be either
        if self.words.at(at) == "\n" and not self.text[count.first].isdecimal():
            at += 1
        for index in range(at, at + (3 if count.shy else 6)):
            word = self.words.at(index)
            if not self.words.together(count.first, index):
                return 0  # "radius 200. Mandrel in stock?"
            if w.is_mandrel(word) or (word in w.TOOLS and index <= at + 1):
                return 0 if self.is_compound(index) else index + 1
            worded = index > count.after and self.text[index - 1].isalpha()
            if worded and w.names_tool(self.words.at(index + 1)) and self.numbers.at(index):
                return 0  # "the 4 needs 3 mandrels"
            if word in w.SIZE_NOUNS and index + 1 < len(self.words):
                continue
            if word in w.ARTICLES and index > count.after:
                return 0  # "R 85 - un mandrin": the noun has an article of its own
            if word in w.OTHERS or word in w.STOPS or word in w.COUNTS or word in w.WORDED:
                return 0
            if not (word.isalnum() or word in ("-", '"', "/", "(", ")", ".")):
                return 0
        return 0

    def is_compound(self, at: int) -> bool:
        """Whether it only says what the next noun is like, as in 'mandrel bends': English only."""
        english = self.text[at].startswith(("mandrel", "mandral", "mandrill"))
        return english and self.words.at(at + 1) in w.COMPOUND

    def of_article(self, at: int) -> int:
        """Index behind the mandrel that an article belongs to, or 0."""
        for index in range(at + 1, at + 7):
            word = self.words.at(index)
            if not self.words.together(at, index):
                return 0
            if word in w.SINGULAR or word.endswith(("dorn", "doorn")):
                return 0 if self.is_compound(index) else index + 1
            if word in w.PAPERS and index > at:
                return 0  # "un prix unitaire de mandrin"
            plain = word.isalnum() or word in ("-", '"', "/", ".", "Ø", "ø", "\n")
            if not plain or word in w.STOPS:
                return 0
        return 0

    def counts_others(self, at: int) -> bool:
        """'Qty 200 tubes', '4 pcs of tube': what is counted is no mandrel."""
        at += self.words.phrase(at, w.PIECES)
        if self.words.phrase(at, v.THIS_TIME):
            return False
        for index in range(at, at + 4):
            word = self.words.at(index)
            if word in w.EACH:
                break  # "one pc of each size"
            if word in w.OTHERS:
                following = self.words.at(index + 1)
                return word not in w.SIZE_NOUNS or following not in w.MANDRELS | w.SIZE_NOUNS
            if word in w.MANDRELS or word in MARKS or (word in w.STOPS and word != "of"):
                break
        return self.context.is_rate(at)

    def is_one_of_several(self, count: Count, end: int) -> bool:
        """'1 and 5', '1, 5 and 10 pcs', '2-3 mandrels', 'one mandrel or two'."""
        before = self.words.at(count.first - 1)
        if before in w.ANY_OF - {",", "of"} and self.numbers.ends_at(count.first - 1):
            return True
        at = end
        if self.words.at(at) not in w.ANY_OF:
            return False
        while self.words.at(at) in w.ANY_OF:
            at += 1
        while self.words.at(at) in _AHEAD_OF_ANOTHER:
            at += 1
        other = self.numbers.at(at)
        if other is None or other.value == count.value or other.shy:
            return False
        if self.words.at(other.after) in w.ANY_OF - {"-"}:
            return self.words.at(other.after) == "," or self.numbers.ends_at(other.after + 2)
        return self.words.at(other.after) in ENDS or bool(self.behind(other)[0])

    def spares(self, end: int) -> tuple[int, int]:
        """'One mandrel and one spare', '1 right away and 1 for the shelf' are two: how many more,
        and the index behind the words."""
        soon = self.words.phrase(end, w.AT_ONCE)
        if self.words.at(end + soon) not in w.JOINING:
            return 0, end
        at = end + soon + 1
        while self.words.at(at) in w.JOINING:
            at += 1
        joined = [self.words.at(index) for index in range(end + soon, at)]
        count = self.numbers.at(at)
        if count is not None:
            added, at = count.value, count.after
        elif self.words.at(at) in w.ARTICLES:
            added, at = 1, at + 1
        else:
            return 0, end
        shelf = self.words.phrase(at, w.FOR_THE_SHELF)
        if shelf and joined == [","]:
            return 0, end  # "two mandrels, one as a spare": one of the two
        if shelf:
            return added, at + shelf
        further = self.words.at(at) in w.MORE and w.is_mandrel(self.words.at(at + 1))
        if not further and self.words.at(at) not in w.SPARE:
            return 0, end
        if not further and self.words.at(at + 1) in w.OTHERS:
            return 0, end
        return added, at + 1 + further  # "1 mandrel + 1 extra mandrel"


@lru_cache(maxsize=16)
def _tools(text: str) -> tuple[int, ...]:
    """Indexes of the nouns that name mandrels or tools; the last few texts are kept."""
    words = words_of(text)
    return tuple([at for at in range(len(words)) if w.names_tool(words.text[at])])
