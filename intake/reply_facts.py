"""All that a reply template may use, by name. reply_templates/parts.j2 tells the owner the same.

Everything is text ready to print, or a truth; '' is 'does not apply'. Adding a field here makes it
a variable of the templates.
"""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from .bend_words import BendWords


@dataclass(frozen=True, slots=True)
class Words:
    """Words that are spelled in two ways; templates write ``{{ words.centreline }}``."""

    aluminium: str
    centreline: str


BRITISH = Words(aluminium="aluminium", centreline="centreline")
AMERICAN = Words(aluminium="aluminum", centreline="centerline")


@dataclass(frozen=True, slots=True)
class ShopWords:
    """``shop`` in the templates."""

    name: str
    signature: tuple[str, ...]
    wall_factor_max: str
    wall_factor_reason: str
    d_of_bend_min: str
    d_of_bend_reason: str
    stock_days: int
    """Usual working days until a mandrel on hand leaves; likewise one made to order."""
    custom_days: int
    clearance: str = ""
    """'0.1 to 0.3 mm (0.004 to 0.012 in)'; '' where it depends on the OD."""
    clearance_reason: str = ""


@dataclass(frozen=True, slots=True)
class StockWords:
    """``size.stock`` in the templates: the mandrel on the shelf."""

    part: str
    diameter: str
    balls: int
    surface: str
    on_hand: int
    price: str
    """'' unless the shop's catalogue has a price."""


@dataclass(frozen=True, slots=True)
class NoteWords:
    """One of ``size.notes``: what a rule noted, and the rule's id to choose by."""

    rule: str
    text: str


@dataclass(frozen=True, slots=True)
class AlternativeWords:
    """One of ``size.alternatives``: a nearby bend that would be feasible."""

    summary: str
    why: str


@dataclass(frozen=True, slots=True)
class SizeWords:
    """One of ``sizes`` in the templates. Text that does not apply is ''."""

    number: int
    summary: str
    """'1.75 in (44.45 mm) OD x 0.095 in (2.413 mm) wall, 5.25 in (133.35 mm) CLR, DOM carbon
    steel'."""
    tube: str
    """The same without the material, for lists whose material is said once."""
    material: str
    decision: str
    wall_factor: str
    d_of_bend: str
    wall_factor_over: bool
    """Declined for its wall factor."""
    d_of_bend_under: bool
    """Declined for its D of bend."""
    other_reasons: tuple[str, ...]
    """Why it is declined, beside the two limits."""
    warnings: tuple[str, ...]
    rule_books: tuple[str, ...]
    """What a rule book for the use named forbids, though it changes no decision."""
    notes: tuple[NoteWords, ...]
    """Information for whom it may serve; our templates show few of them."""
    questions: tuple[str, ...]
    confirmations: tuple[str, ...]
    alternatives: tuple[AlternativeWords, ...]
    stock: StockWords | None
    mandrel: str
    """'1.547 to 1.555 in (39.3 to 39.5 mm) diameter, 2 to 3 balls, bronze or chrome'."""
    quantity: int
    """Mandrels asked for; 0 where not said."""
    needed_by: str
    """'4 December 2026', '' where not said."""
    lead_time: str
    """Whether that date is likely to be met, '' where it was not judged."""


Unread = Literal["", "attachment", "missing attachment", "earlier order"]


@dataclass(frozen=True, slots=True)
class AskedWords:
    """One of ``questions`` in a reply on several sizes."""

    text: str
    about: str
    """'size 2', 'sizes 1 and 3', '' where it is about all."""


def _no_bend() -> BendWords:
    from .bend_words import BendWords

    return BendWords(None, None, BRITISH)


@dataclass(frozen=True, slots=True)
class Facts:
    """All that a reply template may use; reply_templates/parts.j2 tells the owner the same."""

    first_name: str
    shop: ShopWords
    words: Words
    sizes: tuple[SizeWords, ...] = ()
    material: str = ""
    needed_by: str = ""
    lead_times: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    rule_books: tuple[str, ...] = ()
    questions: tuple[AskedWords, ...] = ()
    answers: tuple[str, ...] = ()
    says_what_to_send: bool = False
    open_questions: tuple[str, ...] = ()
    uses: tuple[str, ...] = ()
    unread: Unread = ""
    unread_name: str = ""
    goes_on: bool = False
    bend: BendWords = field(default_factory=_no_bend)

    def as_variables(self) -> dict[str, object]:
        """Name to value, for a template."""
        return {one.name: getattr(self, one.name) for one in fields(self)}
