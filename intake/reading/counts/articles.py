"""Whether 'a mandrel' asks for one: an article is a number only where the mandrel is wanted."""

from __future__ import annotations

from ..text.phrases import PhraseTable
from . import bare_words as b
from . import making, wishes
from . import verbs as v
from . import words as w
from .context import Context
from .nouns import MARKS
from .prompts import ARTICLE

_FAR = 11
"""Words looked back for the verb that governs a mandrel; keeps the search linear."""
_NAMED_BEFORE = 60
"""Words looked back for the mandrel that 'a new one' stands for."""
_BEFORE_ALONE = frozenset(("\n", "\n\n", "-", ":", "*", ",", "nog", "de", "nuevo"))
_MOST_WORDS = 25
_IN_A_LIST = 8
"""Words of one part of a list of figures: 'raggio 81 mm in mezzeria'."""
_VERBS = frozenset(
    "is are was were be would will has have had can could may might should must does do did costs"
    " cost runs made broke works worked sits needs makes fits helps costing ist sind war waren wäre"
    " hat haben hatte kostet wird wurde kann soll reicht passt geht läuft est sont était coûte ont"
    " a sera peut va es son era fue cuesta tiene han puede vale è sono ha costa può serve kost"
    " heeft kan moet zou werd wordt zijn past s".split()
)
_BETWEEN = frozenset("noch uns mir nur auch just only encore ook nog also us me".split())
_WIPERS = frozenset("wiper faltenglätter faltenglatter racleur rascador raschiatore".split())
_PLEASE_FOR = frozenset("bitte please pls plz graag gelieve".split())
_WITH = frozenset("with mit avec a à con de met".split())
_TO = frozenset("l la nous livrer cintrer fournir chiffrer coter recevoir".split())
_PLAIN_ENDS = ("", "\n", "\n\n", "?", ".", ",", "!")


class Articles:
    """Questions about 'a mandrel', asked by the indexes of its article and behind its noun."""

    def __init__(self, context: Context) -> None:
        self.context = context
        self.words = context.words
        self.text = context.text

    def rank(self, article: int, noun: int) -> int:
        """ARTICLE where words ask for the mandrel; 0 where it is asked about, owned or compared."""
        if self._is_asked_about(article, noun):
            return 0
        if self.context.ends_with(article, v.PRICE_FOR):
            behind = self.words.at(noun)
            plain = behind in _PLAIN_ENDS or behind in w.FOR | v.PRICED_AS
            plain = plain or behind.isdecimal() or self._is_with_wiper(noun)
            return ARTICLE if plain else 0
        if self._is_begged(article, noun):
            return ARTICLE
        if any(self.context.ends_with(article - between, v.HAVING) for between in (0, 1)):
            return ARTICLE
        if self._is_booked(article) or self._may_be_made(article, noun):
            return ARTICLE
        near = {self.text[at] for at in self.words.after(noun, 4)}
        if near & wishes.WISHED_BEHIND:
            return ARTICLE
        for at in self.words.before(article, _FAR):
            said = self._says(at, article, noun)
            if said is not None:
                return said
        if self._asks_behind(article, noun):
            return ARTICLE
        return ARTICLE if self._stands_alone(article, noun) else 0

    def _is_with_wiper(self, noun: int) -> bool:
        """'How much for a mandrel and wiper': one of each."""
        joined = self.words.at(noun) in w.JOINING
        return joined and any(self.text[at] in _WIPERS for at in range(noun + 1, noun + 3))

    def begs_for_one(self, article: int) -> bool:
        """'Bitte noch einen für 18 x 1': the noun is not said again."""
        following = self.words.at(article + 2)
        return (
            self.words.at(article + 1) in w.FOR
            and (following.isdecimal() or following in w.SIZE_NOUNS or following in ("ø", "."))
            and self._is_begged(article, article + 1)
            and self.stands_for_mandrel(article)
        )

    def _is_begged(self, article: int, noun: int) -> bool:
        """'Bitte noch einen Dorn für 18 x 1', 'please, a mandrel for this': no verb follows."""
        at = article - 1
        while self.words.at(at) in _BETWEEN or self.words.at(at) == ",":
            at -= 1
        if self.words.at(at) not in _PLEASE_FOR or not self.words.together(at, article):
            return False
        return self.words.at(noun) in w.FOR or self.words.at(noun) in _PLAIN_ENDS

    def _is_asked_about(self, article: int, noun: int) -> bool:
        before = self.words.at(article - 1)
        if self.context.asks_which(article, noun) or before in v.WHETHER_BEFORE:
            return True
        # "Bent with a mandrel"; but "can you help us out with a mandrel" asks for one.
        wished = self.context.ends_with(article, wishes.WISHED) or self._is_booked(article)
        return before in v.TOOL_IN_USE and not wished

    def _says(self, at: int, article: int, noun: int) -> int | None:
        """What a phrase before the article says of it: a rank, or None where it says nothing."""
        if self.words.phrase(at, v.ADVICE):
            return 0
        if self._is_wished(at, article):
            return ARTICLE
        ability = self.words.phrase(at, v.ABILITY)
        if ability:
            return self._of_ability(at, at + ability, article, noun)
        might = self.words.phrase(at, making.MIGHT)
        if might and self._is_to_be_made(at, at + might, article, noun):
            return ARTICLE
        if self.text[at] in v.COSTS and at + 3 > article:
            return ARTICLE  # "wat kost een doorn"
        wanted = self.words.phrase(at, v.WANTS)
        if wanted and at + wanted <= article:
            refused = self.context.ends_with(at, v.NEGATIONS)
            asked = self.words.at(at - 1) in v.WISHES_FOR
            if asked and self.words.at(at - 2) in v.WHETHER_BEFORE:
                return 0  # "he asked me whether we need a mandrel"
            return 0 if refused or self.context.ends_with(at, v.ADVISES) else ARTICLE
        if self.text[at] in v.POLITE and self._is_offer(at + 1, article, noun):
            return ARTICLE
        if self.words.phrase(at, v.OWNS) and not self.context.is_wish(at):
            # In Dutch one has a need: "ik heb een doorn nodig".
            behind = self.text[noun : self.words.behind[article]]
            return ARTICLE if "nodig" in behind else 0
        return None

    def _is_wished(self, at: int, article: int) -> bool:
        """'My boss asked me to ask you for a mandrel', 'auf der Suche nach einem Dorn'."""
        wished = self.words.phrase(at, wishes.WISHED)
        return 0 < wished <= article - at and not self.context.ends_with(at, v.NEGATIONS)

    def _of_ability(self, at: int, behind: int, article: int, noun: int) -> int:
        """'Could you quote a mandrel' asks for one, 'can you make a mandrel' does too."""
        if self._is_offer(behind, article, noun) or self._is_to_be_made(at, behind, article, noun):
            return ARTICLE
        if set(self.text[behind:article]) & v.WHETHER:
            return 0
        if set(self.text[max(behind - 4, self.words.first[article]) : article]) & wishes.FOR_US:
            return ARTICLE
        later = self.words.after(noun, _FAR)
        this = any(self.words.phrase(at, wishes.FOR_THIS) for at in later)
        return (
            ARTICLE if this or any(self.words.phrase(at, wishes.COST_OF_IT) for at in later) else 0
        )

    def _is_offer(self, behind: int, article: int, noun: int) -> bool:
        """'Could you quote a mandrel', 'könnt ihr einen Dorn anbieten'."""
        between = set(self.text[behind:article])
        later = {self.text[at] for at in self.words.after(noun, 2 * _FAR)}
        return not between & v.WHETHER and bool((between | later) & v.OFFERS)

    def _is_booked(self, article: int) -> bool:
        """'Pencil me in for a mandrel', 'faites-moi un mandrin'."""
        at = self._before_phrase(article, making.BOOKED)
        return at >= 0 and not self.context.ends_with(at, v.NEGATIONS)

    def _may_be_made(self, article: int, noun: int) -> bool:
        """'Can a mandrel be made for that?', 'könnte ein Dorn dafür gefertigt werden?'."""
        can = self.words.at(article - 1) in making.CAN
        return can and self._is_to_be_made(article - 1, article, article, noun)

    def _before_phrase(self, behind: int, table: PhraseTable) -> int:
        """Where a phrase begins that ends right before a word, or -1."""
        for used in range(1, 7):
            at = behind - used
            if at >= 0 and self.words.phrase(at, table) == used:
                return at
        return -1

    def _is_to_be_made(self, at: int, behind: int, article: int, noun: int) -> bool:
        """'Could you make a mandrel', 'könnten Sie einen Dorn für die Strebe drehen'; not 'how
        small can you make a mandrel', nor 'could you make a mandrel that does both'. 'Can you make
        a mandrel for 1.5 x .065?' only asks whether; 'can you do one' asks for it."""
        ahead = set(self.text[max(self.words.first[article], at - _FAR) : at])
        between = set(self.text[behind:article])
        later = {self.text[i] for i in self.words.after(noun, _FAR) if self.text[i - 1] != "at"}
        if (ahead | between) & making.IN_GENERAL or between & (v.WHETHER | making.ADVISED):
            return False
        if later & making.FOR_SEVERAL:
            return False
        if self.words.phrase(at, making.STATED) and not ahead & making.HOPED:
            ends = (self.text[i] for i in range(noun, self.words.behind[article]))
            if "?" not in ends:
                return False  # "I was told you can make a mandrel for anything"
        if self._names_its_size(noun) and "do" not in between:
            return False
        made = {self.text[i] for i in self.words.after(noun, 2 * _FAR)} & making.MADE
        return bool(between & making.MAKING or made)

    def _names_its_size(self, noun: int) -> bool:
        """Whether 'for 1.5 x .065', 'für ein Rohr 28 x 1,5' follows: no tube known already."""
        if self.words.at(noun) not in w.FOR:
            return False
        at = noun + 1
        while self.words.at(at) in w.SIZE_NOUNS | w.ARTICLES | making.BEFORE_A_SIZE:
            at += 1
        return self.words.at(at).isdecimal() or self.words.at(at) == "."

    def may_stand_for_mandrel(self, at: int) -> int:
        """Index behind 'mine needs to be' where a mandrel was named before and what it is for
        follows, or 0."""
        used = self.words.phrase(at, making.MINE)
        if not used:
            return 0
        follows = self.text[at + used : at + used + 4]
        sized = any(word in w.FOR or word.isdecimal() or word in w.SIZE_NOUNS for word in follows)
        return at + used if sized and self.stands_for_mandrel(at) else 0

    def _asks_behind(self, article: int, noun: int) -> bool:
        """'A mandrel for 1.5 x .065 please', 'ein Dorn reicht', 'what would a mandrel cost'."""
        behind = [self.text[at] for at in self.words.after(noun, 25)]
        near = set(behind[:7])
        if near & v.PLEASE or any(
            self.words.phrase(i, v.WELCOME) for i in self.words.after(noun, 7)
        ):
            return True
        if v.COSTS & set(behind[:12]):
            asked = self.context.ends_with(article, v.COST_OF)
            return asked or self.words.at(article - 1) in v.MODALS
        if self.words.at(article - 1) in v.SUFFICES:
            return True  # "für unsere 3 Maschinen reicht ein Dorn"
        return bool(near & v.SUFFICES or set(behind) & (v.PLEASE | v.NEEDED_BEHIND))

    def _stands_alone(self, article: int, noun: int) -> bool:
        """'Un mandrin.', 'Erst mal ein Dorn', 'Toujours un mandrin': a sentence without a verb."""
        at = self.words.first[article]
        if self._heads_a_size(article, noun):
            return True
        noun += self.words.phrase(noun, wishes.FOR_NOW) or self._links(noun)
        if self.words.at(noun) not in _PLAIN_ENDS or self.words.at(noun) == "?":
            return False
        if self._ends_list(article, noun):
            return True
        while at < article:
            said = self.words.phrase(at, wishes.FOR_NOW)
            if not said and self.text[at] not in wishes.STILL | _BEFORE_ALONE:
                return False
            at += said or 1
        return at == article

    def _links(self, noun: int) -> int:
        """How many words say of how many balls it is: 'a mandrel with 1 ball'."""
        with_, many, ball = (self.words.at(noun + far) for far in range(3))
        linked = ball in w.LINKS and (many.isdecimal() or many in w.COUNTS or many in w.ARTICLES)
        return 3 if with_ in _WITH and linked else 0

    def _ends_list(self, article: int, noun: int) -> bool:
        """'Inox 304, raggio 81, un mandrino.': the last of the figures that make a request."""
        if self.words.at(article - 1) not in (",", ";", "/") or self.words.at(noun) == ",":
            return False
        begin = self.words.first[article]
        ahead = self.text[max(begin, article - 1 - _IN_A_LIST) : article - 1]
        parted = [at for at, word in enumerate(ahead) if word in (",", ";", ":")]
        last = ahead[parted[-1] + 1 :] if parted else ahead
        return bool(parted) and len(last) <= _IN_A_LIST and any(map(str.isdecimal, last))

    def _heads_a_size(self, article: int, noun: int) -> bool:
        """'Ein Dorn für Rohr 28 x 1,5, R 84.', 'A mandrel: 1.5 x .065': no verb."""
        behind = self.words.at(noun)
        if behind not in w.FOR and behind != ":" and not behind.isdecimal():
            return False
        begin, end = self.words.first[article], self.words.behind[article]
        if article - begin > _FAR:
            return False
        ahead = set(self.text[begin:article])
        if ahead - wishes.STILL - _BEFORE_ALONE - w.JOINING:
            return False
        rest = self.text[noun : min(end, noun + _MOST_WORDS)]
        sized = any(word.isdecimal() for word in rest[:7])
        said = {word for at, word in enumerate(rest) if not _of_size(rest, at)}
        return sized and "?" not in rest and not _VERBS & said

    def new_one(self, article: int) -> int:
        """Index behind 'a new one', 'einen neuen' where a mandrel is meant that was named before,
        or 0."""
        used = self.words.phrase(article + 1, wishes.NEW_ONE)
        if not used:
            return 0
        noun = article + 1 + used
        after = self.words.at(noun)
        if after not in MARKS | b.FOLLOWERS | v.PLEASE | wishes.BEHIND_NEW_ONE:
            return 0
        return noun if self.stands_for_mandrel(article) else 0

    def stands_for_mandrel(self, place: int) -> bool:
        """Whether what was named last before a place is a mandrel: not a bender or a die."""
        for at in range(place - 1, max(-1, place - _NAMED_BEFORE), -1):
            if self.text[at] in wishes.OTHER_THINGS:
                return False
            if w.is_mandrel(self.text[at]):
                return True
        return False


def _of_size(rest: tuple[str, ...], at: int) -> bool:
    """Whether an 's' is that of 'S235', and not that of 'it's'; an 'a' that of 'à l'axe'."""
    behind = rest[at + 1] if at + 1 < len(rest) else ""
    return (rest[at] == "s" and behind.isdecimal()) or (rest[at] == "a" and behind in _TO)
