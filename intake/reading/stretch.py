"""A text read as one, from its characters to groups of figures: every step in order."""

from __future__ import annotations

from dataclasses import dataclass

from .chains import assign_by_chain
from .choices import Unit
from .cue_roles import assign_by_cue
from .figures import Layout, Row
from .gather import MOST_GROUPS, gather
from .groups import Group
from .habits import usual_unit
from .layout import lay_out
from .lexer import lex
from .lists import share_lists
from .pipes import note_names
from .places import assign_by_place
from .plain import Plain, flatten, tabulate
from .quantity import set_counts_aside
from .radius_kind import refine_radii
from .talk import listen
from .text_tables import RowFacts, read_tables


@dataclass(frozen=True, slots=True)
class Stretch:
    """The body, the subject, or an attachment, with the sizes that its figures make."""

    original: str
    offset: int
    """Where ``original`` begins in the message."""
    plain: Plain
    layout: Layout
    groups: list[Group]
    rows: dict[Row, RowFacts]
    unit: Unit | None
    """The unit that its figures mostly use."""

    @property
    def is_cut(self) -> bool:
        """Whether there was more than is ever read of one text."""
        tokens = self.layout.tokens
        rest = self.plain.text[tokens[-1].end if tokens else 0 :]
        return len(self.groups) >= MOST_GROUPS or bool(rest.strip())


def read_stretch(original: str, offset: int) -> Stretch:
    """Read a text that begins at ``offset`` in the message. Never raises on any text."""
    plain = tabulate(flatten(original))
    layout = lay_out(lex(plain.text), plain.text)
    listen(layout)
    set_counts_aside(layout)
    rows = read_tables(layout)
    assign_by_cue(layout)
    assign_by_chain(layout)
    share_lists(layout)
    assign_by_place(layout)
    share_lists(layout)
    refine_radii(layout)
    note_names(layout)
    return Stretch(original, offset, plain, layout, gather(layout), rows, usual_unit(layout))
