"""What stands around a number: does it count mandrels that are wanted now?"""

from __future__ import annotations

from ..text.phrases import PhraseTable, Words
from . import verbs as v
from . import words as w
from .numbers import Count

_JOINTS = frozenset(", ; : and but so und aber et mais y pero e ma en maar".split())
_STARTS = frozenset(("", "\n", "\n\n"))
_ASKED = frozenset("do does would if to that which you".split())
_OURS = frozenset("our unsere unserer unseren nos nuestros nostri onze".split())
"""'Half of our 6 mandrels are worn': those are not wanted."""
_FAR = 11
"""Words looked back for the verb that governs a count; keeps the search linear."""


class Context:
    """Questions about the neighbourhood of a count."""

    def __init__(self, words: Words) -> None:
        self.words = words
        self.text = words.text

    def ends_with(self, at: int, table: PhraseTable) -> bool:
        """Whether a phrase of ``table`` ends right before ``at``."""
        return any(
            at >= used and self.words.phrase(at - used, table) == used for used in range(1, 5)
        )

    def is_rejected(self, count: Count, end: int, *, piece: bool, named: bool) -> bool:
        """Whether it counts what is owned, shared, made, compared or for later.

        ``piece``: only pieces are counted; ``named``: mandrels are.
        """
        return (
            self.ends_with(count.first, v.INSTEAD)
            or (
                self.words.at(count.first - 1) in v.TOOL_IN_USE
                and self.words.at(end) not in v.SUFFICES  # "con uno basta"
                and not self.ends_with(count.first, v.SUPPLIED_WITH)
            )
            or self.is_rate(end)
            or self._is_discounted_from(count.first)
            or self._is_usage(count.first)
            or self._is_owned(count.first, end, piece=piece)
            or (named and self.words.at(count.first - 1) in _OURS)
            or self._is_shared(count.first, end)
            or self._is_asked_whether(count.first)
            or self._is_later(count, end)
            or self._is_otherwise(count.first)
            or self.asks_which(count.first, end)
            or (not named and self.speaks_of_other_tooling(count.first))
        )

    def _is_usage(self, first: int) -> bool:
        """'Annual usage 3 mandrels', 'Jahresbedarf 4 Stück'."""
        near: set[str] = set()
        for at in self.words.before(first, 5):
            if self.text[at] == ",":
                break  # "Jahresbedarf 2000 Bögen, 2 Dorne"
            near.add(self.text[at])
        return bool(near & v.USAGE) and not any(
            self.words.phrase(at, v.WANTS) for at in self.words.before(first, 4)
        )

    def _is_discounted_from(self, first: int) -> bool:
        """'Korting is 5 % vanaf 10 stuks', 'bei Abnahme von 10 Stück gibt es Rabatt'."""
        if self.words.at(first - 1) not in v.FROM_SO_MANY:
            return False
        begin = max(self.words.first[first], first - 2 * _FAR)
        sentence = self.text[begin : min(self.words.behind[first], first + 2 * _FAR)]
        return any(word in v.DISCOUNTS or word.endswith("rabatt") for word in sentence)

    def _is_asked_whether(self, first: int) -> bool:
        """'Or do we need one each?'; 'if we do need it, quote me one' is a wish."""
        for at in self.words.before(first, 5):
            if self.text[at] in v.QUOTES:
                return False
            if self.words.phrase(at, v.ASKS_WHETHER):
                return True
        return False

    def is_rate(self, at: int) -> bool:
        """'20 pcs a day', '3 per frame'; 'one for a run of 75' is none."""
        for index in (at, at + 1):
            if self.words.at(index) in v.RATE_SIGNS and self.words.at(index + 1) in v.RATES:
                if self.text[index] == "/" and self.words.at(index + 2).isdecimal():
                    return False  # "1 pc / wk 46"
                ahead = self.words.at(index - 1) if index else ""
                return not (self.text[index] in ("a", "the") and ahead in w.FOR)
        return False

    def _is_owned(self, first: int, end: int, *, piece: bool) -> bool:
        if any(self.words.phrase(at, v.OWNED_AFTER) for at in self.words.after(end, 2)):
            return True
        if self.ends_with(first, v.HAVING):
            return False  # "have you one on the shelf"
        if "nodig" in self.text[end : end + 4]:
            return False  # "ik heb er eentje nodig": in Dutch one has a need
        crossed = False
        for at in self.words.before(first, _FAR):
            word = self.text[at]
            if self.words.phrase(at, v.WANTS):
                return self.ends_with(at, v.NEGATIONS)
            if crossed:
                continue
            if self.words.phrase(at, v.OWNS) and not self.is_wish(at):
                return True
            if piece and word in v.PRODUCES and not self._is_of_size(at):
                return True
            crossed = word in _JOINTS
        return False

    def _is_of_size(self, at: int) -> bool:
        """'Bend radius 57', '38 x 2 bent on R 90': of the size, and of no parts."""
        behind = self.words.at(at + 1)
        return behind in v.OF_A_BEND or (self.text[at] in v.BENT and behind in v.BENT_ON)

    def is_wish(self, at: int) -> bool:
        before, ahead = self.words.at(at - 1), self.words.at(at - 2)
        return before in v.WISHES or (before in v.WISHES_FOR and ahead in v.WISHES)

    def _is_shared(self, first: int, end: int) -> bool:
        """'Will one mandrel cover both?' asks for advice."""
        before = self.words.at(first - 1)
        wished = any(self.words.phrase(at, v.WANTS) for at in (first - 1, first - 2) if at >= 0)
        direct = before in v.MODALS or (self.words.at(first - 2) in v.MODALS and not wished)
        if any(self.words.at(at) in ("what", "whats", "much") for at in (first - 2, first - 3)):
            return False  # "what would two mandrels run"
        if not direct:
            return False
        if any(self.words.phrase(at, v.MAKE_IT) for at in self.words.after(end, 2 * _FAR)):
            return False  # "would one mandrel do the lot and could you make it?"
        return any(self.text[at] in v.SHARING for at in self.words.after(end, 12))

    def _is_later(self, count: Count, end: int) -> bool:
        # "two mandrels here no later than May" are wanted now.
        # "one mandrel as follows:" is wanted now.
        behind = self.words.after(end, 3)
        after = [self.text[at] for at in behind if self.words.at(at - 1) != "as"]
        if set(after) & v.LATER and not set(after) & {"no", "not", "than"}:
            return True
        more = any(word in w.MORE for word in self.text[count.after : end + 2])
        if not more:
            return False
        around = [*self.words.before(count.first, 12), *self.words.after(end, 6)]
        return any(self.text[at] in v.LATER | v.CONDITIONS for at in around)

    def _is_otherwise(self, first: int) -> bool:
        return any(self.text[at] in v.OTHERWISE for at in self.words.before(first, _FAR))

    def asks_which(self, first: int, end: int) -> bool:
        """'Do I need one mandrel or two?', 'serve un'anima per ogni raggio o ne basta una?'."""
        if any(self.text[at] in v.QUOTES for at in self.words.before(first, _FAR)):
            return False
        if any(self.text[at] in w.OR for at in self.words.before(first, 5)):
            return self._is_question(end)
        behind = list(self.words.after(end, 14))
        for place, at in enumerate(behind):
            if self.text[at] in w.OR:
                rest = behind[place + 1 : place + 6]
                more = any(self.text[index] in v.HOW_MANY for index in rest)
                return more and self._is_question(at)
        return False

    def _is_question(self, at: int) -> bool:
        marks = (mark for mark in self.text[at : at + 16] if mark in ("?", ".", "!"))
        return next(marks, "") == "?"

    def speaks_of_other_tooling(self, first: int) -> bool:
        """'Wiper die to suit line 20. Qty 4.': the line names other tooling and no mandrel."""
        for at in range(first - 1, max(-1, first - 16), -1):
            word = self.text[at]
            if word in w.MANDRELS or word in _STARTS:
                return False
            if word in v.OTHER_TOOLING:
                return not self._wishes_anew(at, first)
        return False

    def _wishes_anew(self, other: int, first: int) -> bool:
        """'We have a wiper die. Need 1 pc': a wish of its own, and none for the other tooling."""
        begin = self.words.first[min(first, len(self.words) - 1)]
        if self.words.together(other, first) or other >= begin:
            return False
        return any(self.words.phrase(at, v.WANTS) for at in range(begin, first)) and not any(
            self.words.phrase(at, v.WANTS)
            for at in range(self.words.first[other], self.words.behind[other])
        )

    def is_conditional(self, count: Count, end: int) -> bool:
        """'x2 if you do a deal' weighs less than what is asked for plainly."""
        if any(self.text[at] in v.CONDITIONS for at in self.words.after(end, 4)):
            return True
        return any(
            self.text[at] in v.CONDITIONS and self.words.at(at + 1) not in ("so", "yes", "ja", "si")
            for at in self.words.before(count.first, 8)
        )

    def says_each(self, first: int, after: int, end: int) -> bool:
        """'One each', 'per size 2', 'je ein Dorn'."""
        behind = list(self.words.after(after, end - after + 4))
        for place, at in enumerate(behind):
            if at > end and self._counts_anew(at):
                # "Two mandrels, one per size", "zwei Dorne, je einer"
                behind = [i for i in behind[:place] if i < at - 1 or not self.is_each(i)]
                break
        near = [*self.words.before(first, 4), *behind]
        if any(self.words.phrase(at, v.EACH_BY) for at in near):
            return True
        if any(self.is_each(at) and not self._ends_count(at) for at in self.words.before(first, 4)):
            return True
        for at in behind:
            if self.is_each(at):
                return True
            word = self.text[at]
            if at >= end and (word.isdecimal() or word in w.COUNTS or word in ("$", "€", "\n")):
                return False  # a price each, or another count: "two mandrels, one of each"
        return False

    def _ends_count(self, at: int) -> bool:
        """'Two for the long ones each, four for ...': of the count before it."""
        counted = (self.text[i] for i in self.words.before(at, 7))
        return self.words.at(at + 1) in (",", ";") and any(
            word in w.COUNTS or word.isdecimal() for word in counted
        )

    def _counts_anew(self, at: int) -> bool:
        """'Zwei Dorne, je einer', '2 Dorne, je 1 Stück': another count begins there."""
        if self.text[at] in w.COUNTS or self.text[at] in w.ARTICLES:
            return True
        return self.text[at].isdecimal() and self.words.phrase(at + 1, w.PIECES) > 0

    def is_each(self, at: int) -> bool:
        """Whether a word says 'each'; in 'wil je een doorn' the 'je' is no German one, and 'one
        that does both' is one."""
        you = self.text[at] == "je" and self.words.at(at - 1) in v.BESIDE_YOU
        shared = self.text[at] == "both" and self.words.at(at - 1) in v.SHARING
        return self.text[at] in w.EACH and not you and not shared

    def says_total(self, first: int, end: int) -> bool:
        """'So four mandrels together', 'insgesamt zwei Dorne'."""
        near = [*self.words.before(first, 3), *self.words.after(end, 3)]
        return any(self.words.phrase(at, w.TOTAL) for at in near)

    def corrects(self, first: int, end: int) -> bool:
        """'Sorry, make that three', 'but two this time'."""
        around = [*self.words.before(first, 4), *self.words.after(end, 3)]
        return any(self.words.phrase(at, v.THIS_TIME) for at in around) or any(
            self.words.phrase(at, v.CORRECTIONS) for at in self.words.before(first, 6)
        )

    def names_mandrel(self, at: int) -> bool:
        """Whether the sentence so far names a mandrel."""
        return any(self.text[index] in w.MANDRELS for index in self.words.before(at, 30))

    def is_definite_wish(self, noun: int) -> bool:
        """'Price for the mandrel', 'send us the mandrel', 'le prix du mandrin': the one that the
        message is about."""
        at = noun - 1
        if self.words.at(at) not in w.DEFINITE:
            return False
        at += self.words.at(at) in w.OF_THE_ONE
        while self.words.at(at - 1) in w.TO_THE_ONE:
            at -= 1
        if not self.ends_with(at, v.WANTS_THE):
            return False
        asked = any(
            self.words.phrase(i, v.ADVICE) or self.text[i] in v.WHETHER_BEFORE
            for i in self.words.before(at, 5)
        )
        return not asked and not self.ends_with(at - 1, v.NEGATIONS)

    def _is_in_question(self, verb: int) -> bool:
        """'Does 2 x .065 need mandrel support', 'the ones that need mandrel bending'."""
        return any(self.text[at] in _ASKED for at in self.words.before(verb, 2 * _FAR))

    def is_bare_wish(self, noun: int) -> bool:
        """Whether 'need', 'brauche' leads straight to the noun, or with one word between."""
        for at in (noun, noun - 1):
            between = "" if at == noun else self.words.at(at)
            if between and not between.isalpha():
                return False
            if between in w.STOPS | w.OTHERS | w.ARTICLES or between in w.COUNTS:
                return False
            if self.ends_with(at, v.BARE_WISHES):
                verb = at - 1
                asked = any(
                    self.words.phrase(i, v.ABILITY) or self.words.phrase(i, v.ADVICE)
                    for i in self.words.before(verb + 1, 3)
                )
                negated = self.ends_with(verb, v.NEGATIONS)
                return not asked and not negated and not self._is_in_question(verb)
        return False
