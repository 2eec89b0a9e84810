"""Every place in a text that counts mandrels, with how surely it does."""

from __future__ import annotations

from dataclasses import dataclass, replace

from . import quantity_words as w
from .figures import Layout
from .quantity_context import Context
from .quantity_numbers import Count, Numbers

LABELLED, COUNTED, PROMPTED, BARE, ALONE, ARTICLE = 9, 7, 6, 4, 3, 2
_MOST = 500
_MOST_PIECES = 60
"""'Order of 500 pcs' are bent parts; nobody asks for that many mandrels without naming them."""
_MOST_BARE = 24
_MOST_ALONE = 12
_LABEL_TABLE = w.labelled_pieces()
_STARTS = frozenset(("", "\n", "\n\n"))
_ENDS = _STARTS | frozenset(".!?")
_MARKS = _ENDS | frozenset(",;:)-/&([+")


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
        self.context = Context(self.words)
        self.label_at: dict[int, int] = {}
        """Index behind a label: index of its first word."""
        self.asked: set[int] = set()
        """Indexes behind 'just', 'I'd take', 'price for'."""
        self.last = -1
        """Index of the last number that counted a mandrel."""
        for index in range(len(self.words)):
            label = self.words.phrase(index, w.LABELS) or self.words.phrase(index, _LABEL_TABLE)
            if label:
                self.label_at.setdefault(index + label, index)
            asks = self.words.phrase(index, w.ASKS_BARE)
            if asks:
                self.asked.add(index + asks)

    def run(self) -> list[Mention]:
        found: list[Mention] = []
        index = 0
        while index < len(self.words):
            count = self.numbers.at(index)
            mention = None
            if count is not None:
                mention = self._counted(count)
            elif self.text[index] in w.ARTICLES:
                mention = self._article(index)
            if mention is not None:
                found.append(mention)
                self.last = index
            index = max(index + 1, count.after if count is not None and mention else 0)
        return found

    # --- numbers --------------------------------------------------------------------------------

    def _counted(self, count: Count) -> Mention | None:
        if count.value > _MOST:
            return None
        if self._is_labelled(count):
            end = self._noun(count)[0] or count.after
            return self._mention(count, end, LABELLED)
        end, piece = self._noun(count)
        if end:
            if piece and count.value > _MOST_PIECES:
                return None
            if self.context.is_rejected(count, end, piece=piece, named=not piece):
                return None
            return self._mention(count, end, COUNTED)
        if count.value > _MOST_BARE:
            return None
        if count.shy and self.words.at(count.first - 1) not in w.ASKS_SHYLY:
            return None
        if self._leads_line(count):
            return self._mention(count, count.after, COUNTED)
        rank = self._bare(count)
        if rank and not self.context.is_rejected(count, count.after, piece=False, named=False):
            return self._mention(count, count.after, rank)
        if count.bracket and self._begins_line(count.first):
            mention = self._mention(count, count.after, ALONE)
            return replace(mention, bracket=True)
        return None

    def _mention(self, count: Count, end: int, rank: int) -> Mention:
        value: int | None = count.value
        if self._one_of_several(count, end):
            value = None
        else:
            value = count.value + self._spares(end)
        if rank < LABELLED and self.context.is_conditional(count, end):
            rank -= 1
        return Mention(
            self.words.start[count.first],
            self.words.end[end - 1],
            value,
            rank,
            each=self.context.says_each(count.first, count.after, end),
            corrects=self.context.corrects(count.first),
            number_end=self.words.end[count.after - 1],
        )

    def _is_labelled(self, count: Count) -> bool:
        """'Qty: 2', 'Quantity required ...... three (3)', 'Anzahl Dorne: 2'."""
        at, label = count.first, None
        for _ in range(8):
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
            if before not in w.FILLERS:
                return False
            at -= 1
        if label is None or self.words.at(label - 1) in w.NOT_LABEL:
            return False
        if self.context.speaks_of_other_tooling(label) or not self._ends_label(count, label):
            return False
        if self.words.at(label) in w.MORE:
            return False
        if self.words.at(label) == "n" and self.words.at(label - 1) not in _MARKS:
            return False  # "n. 3" counts in Italian; "rif. n. 3" is a reference
        return not self._counts_others(count.after)

    def _ends_label(self, count: Count, label: int) -> bool:
        """'Qty: 2' counts; 'Dorne: 38 x 1,5' begins a size."""
        after = self.words.at(count.after)
        if after in w.MEASURES:
            return False
        if not w.is_mandrel(self.text[label]):
            return True
        return after in _MARKS or after in w.FOLLOWERS or bool(self._noun(count)[0])

    def _counts_others(self, at: int) -> bool:
        """'Qty 200 tubes', '4 pcs of tube': what is counted is no mandrel."""
        at += self.words.phrase(at, w.PIECES)
        for index in range(at, at + 4):
            word = self.words.at(index)
            if word in w.OTHERS:
                following = self.words.at(index + 1)
                return word not in w.SIZE_NOUNS or following not in w.MANDRELS | w.SIZE_NOUNS
            if word in w.MANDRELS or word in _MARKS or (word in w.STOPS and word != "of"):
                break
        return self.context.is_rate(at)

    def _noun(self, count: Count) -> tuple[int, bool]:
        """(index behind the noun that is counted, whether it only says 'pieces'); 0 is none."""
        at = count.after
        if self.words.at(at) in ("x", "*"):
            at += 1
        while self.words.at(at) in w.MORE or self.words.at(at) in ("separate", "identical", "new"):
            at += 1
        used = self.words.phrase(at, w.PIECES)
        if not used:
            return self._mandrel(count, at), False
        shy = self.words.at(at) in w.SHY_PIECES
        behind = at + used
        at = behind + (self.words.at(behind) == ".")
        mandrel = self._mandrel(count, at)
        if mandrel:
            return mandrel, False
        if self._counts_others(behind) or self._counts_others(at):
            return 0, False
        if shy and self.words.at(behind) != ".":
            return 0, False
        return behind, True

    def _mandrel(self, count: Count, at: int) -> int:
        """Index behind the mandrel noun that a few words on is counted, or 0."""
        if self.words.at(at) in ("of", "de", "di", "von", "d"):
            at += 1
            if self.words.at(at) in w.SOMEBODYS:
                return 0  # "one of your mandrels"
        if self.words.at(at) == "-":
            at += 1
        if self.words.at(at) in ("ball", "balls", "kugel", "billes", "bolas") and count.value > 1:
            return 0  # "a two ball mandrel", and "2 ball mandrels" may be either
        if self.words.at(at) == "\n" and not self.text[count.first].isdigit():
            at += 1
        for index in range(at, at + (3 if count.shy else 6)):
            word = self.words.at(index)
            if w.is_mandrel(word) or (word in w.TOOLS and index <= at + 1):
                return 0 if self._is_compound(index) else index + 1
            if word in w.SIZE_NOUNS and index + 1 < len(self.words):
                continue
            if word in w.OTHERS or word in w.STOPS or word in w.COUNTS or word in w.WORDED:
                return 0
            if not (word.isalnum() or word in ("-", '"', "/", "(", ")", ".")):
                return 0
            if not self.words.together(count.first, index):
                return 0
        return 0

    def _is_compound(self, at: int) -> bool:
        """'Mandrel bends', 'a mandrel bender': English only."""
        english = self.text[at].startswith(("mandrel", "mandral", "mandrill"))
        return english and self.words.at(at + 1) in w.COMPOUND

    def _bare(self, count: Count) -> int:
        """Rank of a number without a noun: 'just one', 'two please', 'x2', ', 1?'."""
        behind = count.after
        while self.words.at(behind) in w.MORE:
            behind += 1
        before, after = self.words.at(count.first - 1), self.words.at(behind)
        open_end = after in _MARKS or after in w.FOLLOWERS
        if after == "of":
            open_end = self.words.at(behind + 1) in w.EACH | {"them", "these", "those"}
        if before in ("x", "*") and open_end:
            return self._times(count.first - 2)
        if self.text[count.after - 1] in w.PAIRS | w.DOZENS:
            open_end = open_end or self.numbers.is_size(behind)
        if open_end and (self._is_asked(count.first) or self._goes_on(count.first, after)):
            return BARE
        if before not in w.DETERMINERS and not before.isdigit():
            if self.words.phrase(count.after, w.STRONG_AFTER):
                return PROMPTED
            if self.words.phrase(count.after, w.ASKS_BARE_AFTER):
                return BARE
        return ALONE if self._stands_alone(count, before, after) else 0

    def _times(self, at: int) -> int:
        """'Mandrel x 2', and 'x2 please' on its own; a number before it makes it a size."""
        ahead = self.words.at(at)
        if w.is_mandrel(ahead) or (ahead in _MARKS and not self.words.at(at - 1).isdigit()):
            return PROMPTED
        return 0 if ahead.isdigit() or ahead in ('"', "mm", "in", "wall", ")") else BARE

    def _is_asked(self, at: int) -> bool:
        for _ in range(3):
            if at in self.asked:
                return True
            if self.words.at(at - 1) not in ("the", "just", "only", "like", "also", "(", "us", "me", "a"):
                return False
            at -= 1
        return False

    def _goes_on(self, at: int, after: str) -> bool:
        """'One mandrel for the 1.5 and two for the 2 in': the noun is not said again."""
        if self.last < 0 or not self.words.together(self.last, at):
            return False
        return after in w.FOR and self.words.at(at - 1) in w.JOINING

    def _stands_alone(self, count: Count, before: str, after: str) -> bool:
        if count.value > _MOST_ALONE or after not in _ENDS:
            return False
        if not self.text[count.first].isdigit() and not count.bracket:
            return before in _ENDS or before in (",", ":", ";", "-")
        return before in (",", ":") and self.context.names_mandrel(count.first)

    def _begins_line(self, at: int) -> bool:
        before = self.words.at(at - 1)
        return before in _STARTS or (before in "-*" and self.words.at(at - 2) in _STARTS)

    def _leads_line(self, count: Count) -> bool:
        """'2x 1-3/4 x .120 x 6 clr' at the start of a line."""
        if self.words.at(count.after) != "x" or not self._begins_line(count.first):
            return False
        glued = self.words.start[count.after] == self.words.end[count.after - 1]
        behind = count.after + 1
        return (
            glued
            and behind < len(self.words)
            and self.words.start[behind] > self.words.end[count.after]
            and self.numbers.is_size(behind)
        )

    def _one_of_several(self, count: Count, end: int) -> bool:
        """'1 and 5', '1, 5 and 10 pcs', '2-3 mandrels', 'one mandrel or two'."""
        before = self.words.at(count.first - 1)
        if before in w.ANY_OF - {",", "of"} and self.numbers.ends_at(count.first - 1):
            return True
        at = end
        if self.words.at(at) not in w.ANY_OF:
            return False
        while self.words.at(at) in w.ANY_OF:
            at += 1
        while self.words.at(at) in ("for", "at", "a", "qty", "maybe", "even", "pour", "fur", "bei"):
            at += 1
        other = self.numbers.at(at)
        if other is None or other.value == count.value or other.shy:
            return False
        if self.words.at(other.after) in w.ANY_OF - {"-"}:
            return self.numbers.at(other.after + 1) is not None or self.words.at(
                other.after
            ) in (",",)
        return self.words.at(other.after) in _ENDS or bool(self._noun(other)[0])

    def _spares(self, end: int) -> int:
        """'One mandrel and one spare' are two."""
        if self.words.at(end) not in w.JOINING:
            return 0
        at = end + 1
        while self.words.at(at) in w.JOINING:
            at += 1
        count = self.numbers.at(at)
        if count is not None:
            added, at = count.value, count.after
        elif self.words.at(at) in w.ARTICLES:
            added, at = 1, at + 1
        else:
            return 0
        if self.words.at(at) not in w.SPARE or self.words.at(at + 1) in w.OTHERS:
            return 0
        return added

    # --- "a mandrel" ----------------------------------------------------------------------------

    def _article(self, at: int) -> Mention | None:
        """'I need a mandrel' asks for one; 'can you make a mandrel' asks whether."""
        count = Count(at, at + 1, 1)
        pieces = 0 if self.text[at] in ("a", "an") else self.words.phrase(at + 1, w.PIECES)
        if pieces and not self._counts_others(at + 1):
            if self.context.is_rejected(count, at + 1 + pieces, piece=True, named=False):
                return None
            return self._mention(count, at + 1 + pieces, COUNTED)  # "un pezzo", "ein Stück"
        noun = self._noun_of_article(at)
        if not noun:
            return None
        before, after = self.words.at(at - 1), self.text[at + 1 : noun + 2]
        written = self.numbers.written(at)
        numeral = (
            before in w.NUMERAL_BEFORE
            or "é" in written  # Dutch "één" is one, "een" is an article
            or bool(w.NUMERAL_AFTER & set(after))
            or self.context.says_each(at, noun, noun)
        )
        if numeral or self._is_asked(at) and before in ("just", "only"):
            if self.context.is_rejected(count, noun, piece=False, named=True):
                return None
            return self._mention(count, noun, COUNTED)
        if not self.context.asks_for(at, noun):
            return None
        return self._mention(count, noun, ARTICLE)

    def _noun_of_article(self, at: int) -> int:
        for index in range(at + 1, at + 7):
            word = self.words.at(index)
            if word in w.SINGULAR or word.endswith(("dorn", "doorn")):
                return 0 if self._is_compound(index) else index + 1
            plain = word.isalnum() or word in ("-", '"', "/", ".", "Ø", "ø")
            if not plain or word in w.STOPS:
                return 0
        return 0
