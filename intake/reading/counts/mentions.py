"""Every place in a text that counts mandrels, with how surely it does."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.phrases import words_of
from . import bare_words as b
from . import verbs as v
from . import words as w
from .articles import Articles
from .context import Context
from .had_before import were_had_before
from .making import MINE
from .nouns import MARKS, Nouns
from .numbers import Count, Numbers
from .parts_counted import counts_parts, counts_tubes
from .prompts import ALONE, ARTICLE, BARE, COUNTED, LABELLED, NOUN, PIECES, Prompts
from .wishes import OTHER_THINGS

_COUNTED_WRONG = late_pattern(
    r",?\s(?:and\s|und\s|et\s|y\s|e\s|en\s)?(?:not|instead of|rather than|nicht|statt|anstatt|pas"
    r"|non|au lieu de|no|en lugar de|en vez de|invece di|anziché|niet"
    r"|in plaats van)\s(?:just\s|only\s"
    r"|nur\s)?(?:\d{1,2}|one|two|three|eine[mnr]?|zwei|drei|une?|deux|trois|dos|tres|uno|due|tre|één"
    r"|twee|drie)(?=\s?(?:[.,;!)\n]|$))"
)
"""'Servono 2 pezzi, non 1': whatever another mail says, that is put right."""
_MOST = 200
"""'304 mandrels' are for stainless tube; nobody asks for so many."""
_MOST_PIECES = 60
"""'Order of 500 pcs' are bent parts; nobody asks for that many mandrels without naming them."""
_MOST_TOOLS = 12
"""So many pieces may be mandrels though one was named with its article."""
_NEAR_BEHIND = 5
_FAR_BACK = 40
_MOST_BARE = 24


@dataclass(frozen=True, slots=True)
class Mention:
    """A count of mandrels in the text."""

    start: int
    end: int
    count: int | None
    """None where several counts are named, as for price breaks ('price for 1 and 5')."""
    rank: int
    each: bool = False
    """Said of every size: 'one each'."""
    corrects: bool = False
    """'Make that three': what was said before no longer holds."""
    total: bool = False
    """Of all sizes together: 'so four mandrels in all'."""
    bracket: bool = False
    """'(2) 1-1/4 x .083': a count, unless the brackets only number the lines."""
    number_end: int = 0
    """Where the number alone ends: its noun may take in a size ('two 1-3/4 mandrels')."""


def mentions(layout: Layout, sizes: frozenset[int]) -> list[Mention]:
    """All counts in order. ``sizes`` are the places of figures that are part of a size."""
    return _Finder(layout, sizes).run()


class _Finder:
    def __init__(self, layout: Layout, sizes: frozenset[int]) -> None:
        self.numbers = Numbers(layout, sizes)
        self.words = self.numbers.words
        self.text = self.words.text
        self.folded = layout.text.lower().replace("’", "'")
        self.context = Context(self.words)
        self.articles = Articles(self.context)
        self.nouns = Nouns(self.numbers, self.context)
        self.prompts = Prompts(self.numbers, self.context, self.nouns)
        self.last = -1
        """Index of the last number that counted a mandrel."""
        self.past = 0
        """Index behind the last count and the spares that were added to it."""

    def run(self) -> list[Mention]:
        found: list[Mention] = []
        reached = 0
        for index in _worth_a_look(self.numbers.plain):
            if index < reached:
                continue
            word = self.text[index]
            mention = None
            number = word.isdecimal() or word in w.COUNTS or word in w.HALF
            number = number or (
                word in w.ARTICLES and self.words.at(index + 1) in w.HALF | w.PAIRED
            )
            count = self.numbers.at(index) if number else None
            if count is not None:
                mention = self._counted(count)
            elif word in w.SOLE_PIECE or self.words.phrase(index, w.SOLE_PHRASES):
                mention = self._sole_piece(index)
            elif word in w.ARTICLES:
                mention = self._article(index)
            elif w.is_mandrel(word):
                mention = self._without_article(index)
            if mention is None and word in MINE:
                mention = self._mine(index)
            if mention is not None:
                found.append(mention)
                self.last = index
            reached = max(count.after, self.past) if count is not None and mention else 0
        return found

    def _counted(self, count: Count) -> Mention | None:
        if not 0 < count.value <= _MOST or self.nouns.is_off_a_place(count.after):
            return None
        if self.prompts.is_labelled(count):
            if count.value > _MOST_TOOLS and self._one_follows(count):
                return None
            end = self.nouns.behind(count)[0] or count.after
            return self._mention(count, end, LABELLED)
        end, piece = self.nouns.behind(count)
        if end:
            if piece and count.value > _MOST_PIECES:
                return None
            named = not piece or self._follows_mandrel(count)
            if not named and (
                (count.value > _MOST_TOOLS and self._one_is_named(count))
                or counts_parts(self.words, count.first, count.value)
                or counts_tubes(self.words, end, count.value)
            ):
                return None
            if self.context.is_rejected(count, end, piece=not named, named=named):
                return None
            first, last = self.words.start[count.first], self.words.end[end - 1]
            if named and were_had_before(self.folded, first, last):
                return None
            return self._mention(count, end, COUNTED if named else PIECES)
        if count.value > _MOST_BARE or self._counts_links(count):
            return None
        if count.value > 1 and self.words.at(count.first - 1) == "a" and self._is_figure(count):
            return None  # "might want a 4 in one some day": what it is called by
        if self.words.at(count.first - 1) == "new" and not self._is_new_mandrel(count):
            return None
        polite = self.words.at(count.first - 1) in v.PLEASE
        if count.bracket and w.is_mandrel(self.words.at(count.first - 1 - polite)):
            return self._mention(count, count.after, COUNTED)  # "a mandrel (1)"
        if count.shy and self.words.at(count.first - 1) not in b.ASKS_SHYLY:
            return None
        if self.prompts.leads_line(count):
            return self._mention(count, count.after, COUNTED)
        rank = self.prompts.rank(count, self.last)
        if rank and not self.context.is_rejected(count, count.after, piece=False, named=False):
            return self._mention(count, count.after, rank)
        if count.bracket and self.prompts.begins_line(count.first):
            mention = self._mention(count, count.after, ALONE)
            return replace(mention, bracket=True)
        return None

    def _is_figure(self, count: Count) -> bool:
        return self.text[count.first].isdecimal() and count.after == count.first + 1

    def _counts_links(self, count: Count) -> bool:
        """'A three-ball mandrel': balls, whatever asks for the mandrel."""
        at = count.after + (self.words.at(count.after) == "-")
        return count.value > 1 and self.words.at(at) in w.LINKS

    def _one_is_named(self, count: Count) -> bool:
        """'Un mandrin pour 38 x 2, 50 pièces à cintrer': so many pieces beside one mandrel."""
        near = range(max(1, count.first - _FAR_BACK), min(count.after + _FAR_BACK, len(self.words)))
        return any(
            self.words.at(at) in w.SINGULAR and self.words.at(at - 1) in w.ARTICLES for at in near
        )

    def _one_follows(self, count: Count) -> bool:
        """'Pieces: 40' and, on the next line, 'One mandrel': the pieces are what is bent."""
        near = range(count.after + 1, count.after + _NEAR_BEHIND)
        ones = w.ARTICLES | {"1", "one"}
        return any(w.is_mandrel(self.words.at(n)) and self.words.at(n - 1) in ones for n in near)

    def _is_new_mandrel(self, count: Count) -> bool:
        """'The bender broke, we need a new one': no mandrel. Where nothing was named, it is."""
        named = self.text[max(0, count.first - 60) : count.first]
        return not set(named) & OTHER_THINGS or self.articles.stands_for_mandrel(count.first)

    def _follows_mandrel(self, count: Count) -> bool:
        """'Bending mandrel 2 pcs', 'Dorn: 2 Stück'."""
        before = self.words.at(count.first - 1)
        if before in (":", "-", ",", "="):
            before = self.words.at(count.first - 2)
        return w.is_mandrel(before)

    def _mention(self, count: Count, end: int, rank: int) -> Mention:
        several = self.nouns.is_one_of_several(count, end)
        more, self.past = self.nouns.spares(end)
        value = None if several else count.value + more
        if rank < LABELLED and self.context.is_conditional(count, end):
            rank -= 1
        return Mention(
            self.words.start[count.first],
            self.words.end[end - 1],
            value,
            rank,
            each=self.context.says_each(count.first, count.after, end),
            corrects=self.context.corrects(count.first, end)
            or self.prompts.sums_up(count.first)
            or _COUNTED_WRONG.match(self.folded, self.words.end[end - 1]) is not None,
            total=self.context.says_total(count.first, end),
            number_end=self.words.end[count.after - 1],
        )

    def _pronoun(self, count: Count) -> Mention | None:
        """'Nur einen bitte', 'eén is genoeg': an article that stands for its noun."""
        if self.text[count.first] in ("a", "an"):
            return None
        enough = self.words.phrase(count.after, b.ASKS_BARE_AFTER) > 0
        offered = self.words.at(count.after) in v.OFFERS  # "bitte einen anbieten"
        enough = enough or (offered and self.words.at(count.first - 1) in v.POLITE)
        begged = self.articles.begs_for_one(count.first)
        if not enough and not begged and not self.prompts.is_for_this(count):
            each = self.words.at(count.first - 1) in w.EACH
            after = self.words.at(count.after)
            if not (each or self.prompts.is_asked(count.first)):
                return None
            if after not in MARKS and after not in v.PLEASE and after not in b.LIKE:
                return None
        if self.context.is_rejected(count, count.after, piece=False, named=False):
            return None
        return self._mention(count, count.after, BARE)

    def _sole_piece(self, at: int) -> Mention | None:
        """'Was kostet das als Einzelstück?', 'en pièce unique'."""
        count = Count(at, at + (self.words.phrase(at, w.SOLE_PHRASES) or 1), 1)
        if self.nouns.counts_others(count.after):
            return None
        if self.context.is_rejected(count, count.after, piece=True, named=False):
            return None
        return self._mention(count, count.after, BARE)

    def _without_article(self, at: int) -> Mention | None:
        """'Need mandrel 1 3/4 x .120', 'brauche Biegedorn': typed in haste, one is meant."""
        if self.text[at] not in w.SINGULAR and not self.text[at].endswith(("dorn", "doorn")):
            return None
        count = Count(at, at + 1, 1)
        wished = self.context.is_bare_wish(at) or self.context.is_definite_wish(at)
        if self.nouns.is_compound(at) or not wished:
            return None
        return self._mention(count, at + 1, NOUN)

    def _mine(self, at: int) -> Mention | None:
        """'My friend got a mandrel off you. Mine needs to be for 28 x 1.5'."""
        behind = self.articles.may_stand_for_mandrel(at)
        return self._mention(Count(at, behind, 1), behind, ARTICLE) if behind else None

    def _article(self, at: int) -> Mention | None:
        """'I need a mandrel' asks for one; 'can you make a mandrel' asks whether."""
        count = Count(at, at + 1, 1)
        pieces = 0 if self.text[at] in ("a", "an") else self.words.phrase(at + 1, w.PIECES)
        if pieces and not self.nouns.counts_others(at + 1):
            if self.context.is_rejected(count, at + 1 + pieces, piece=True, named=False):
                return None
            return self._mention(count, at + 1 + pieces, COUNTED)  # "un pezzo", "ein Stück"
        noun = self.nouns.of_article(at)
        ends = self.words.at(at + 1) in MARKS
        if ends and self.text[at] not in ("a", "an") and self.prompts.is_labelled(count):
            return self._mention(count, at + 1, LABELLED)  # "aantal: één"
        if not noun:
            new = self.articles.new_one(at)
            rank = self.articles.rank(at, new) if new else 0
            return self._mention(count, new, rank) if rank else self._pronoun(count)
        before, after = self.words.at(at - 1), self.text[at + 1 : noun + 2]
        written = self.numbers.written(at)
        numeral = (
            (before in w.NUMERAL_BEFORE and (before != "je" or self.context.is_each(at - 1)))
            or "é" in written  # Dutch "één" is one, "een" is an article
            or bool(w.NUMERAL_AFTER & set(after))
            or self.context.says_each(at, noun, noun)
        )
        if numeral or (before in ("just", "only") and self.prompts.is_asked(at)):
            if self.context.is_rejected(count, noun, piece=False, named=True):
                return None
            return self._mention(count, noun, COUNTED)
        rank = self.articles.rank(at, noun) or self._goes_on(at, noun)
        return self._mention(count, noun, rank) if rank else None

    def _goes_on(self, article: int, noun: int) -> int:
        """'Zwei Dorne 38 x 1,5 und ein Dorn 42 x 2': the rank where it goes on with the sizes."""
        joined = self.words.at(article - 1) in w.JOINING and self.last >= 0
        if not joined or not self.words.together(self.last, article):
            return 0
        return ARTICLE if self.numbers.is_size(noun) or self.words.at(noun) in w.FOR else 0


@lru_cache(maxsize=16)
def _worth_a_look(text: str) -> tuple[int, ...]:
    """Indexes of the words that may count a mandrel; the last few texts are kept."""
    words = words_of(text)
    return tuple([at for at in range(len(words)) if _may_count(words.text[at])])


@lru_cache(maxsize=8192)
def _may_count(word: str) -> bool:
    return (
        word.isdecimal()
        or word in w.COUNTS
        or word in w.HALF
        or word in w.SOLE_PIECE
        or word in w.SOLE_PHRASES
        or word in w.ARTICLES
        or w.is_mandrel(word)
        or word in MINE
    )
