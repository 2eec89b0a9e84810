"""A text read as one, from its characters to groups of figures: every step in order."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from ..model import Prompt
from .aside.angle_behind import set_angles_aside
from .aside.die_marks import set_die_marks_aside
from .aside.die_stamps import part_stamps
from .aside.drawing_defaults import set_defaults_aside
from .aside.made_things import set_made_things_aside
from .aside.other_radii import set_other_radii_aside
from .aside.phrases_around import hear_phrases
from .aside.stock_lengths import hear_stock_lengths
from .aside.wall_left import set_wall_left_aside
from .aside.would_also_do import set_walls_asked_about_aside
from .counts.quantity import set_counts_aside
from .gather import gather
from .naming.also_another import hear_also_another
from .naming.bands import hear_bands
from .naming.bracketed_tubes import hear_bracketed_tubes
from .naming.called_by_wall import hear_called_by_wall
from .naming.chains import assign_by_chain
from .naming.cue_roles import assign_by_cue
from .naming.gauge_system import name_gauges
from .naming.labelled_lists import hear_labelled_lists
from .naming.leftovers import assign_leftovers
from .naming.lists import join_lines, share_lists
from .naming.mandrels_for import hear_mandrels_for
from .naming.named_order import assign_named_order
from .naming.on_lines import hear_on_lines
from .naming.perhaps_parted import doubt_parted
from .naming.pipe_called import join_pipes
from .naming.pipes import note_names
from .naming.places import assign_by_place
from .naming.radii_below import name_radii_below
from .naming.restated import hear_walls_named, join_names, join_restated
from .naming.round_the_tube import hear_round_the_tube
from .naming.run_together import hear_run_together
from .naming.same_but import hear_same_but
from .naming.same_wall import hear_same_wall
from .naming.side_again import join_sides
from .naming.sole_cues import assign_by_sole_cue
from .naming.thick_tubes import hear_thick_tubes
from .naming.tubes_listed import hear_tubes_listed
from .naming.wall_ahead import hear_walls_ahead, hear_walls_in
from .naming.wall_behind_word import hear_walls_behind_words
from .naming.wall_for_all import hear_wall_for_all
from .naming.walls_of import hear_walls_of
from .naming.walls_with_materials import hear_walls_with_materials
from .naming.wide_bores import set_wide_bores_aside
from .nets.heard_gaps import fill_gaps
from .picking.own_labels import with_items_named, with_options_named
from .picking.places_there import set_places_aside
from .radii.across_bend import settle_diameters
from .radii.centres_again import join_centres, join_diameters
from .radii.dies_then_tubes import hear_dies_then_tubes
from .radii.form_radius import doubt_forms
from .radii.in_brackets import hear_bracketed_radii
from .radii.multiple_again import set_products_aside
from .radii.on_radius import hear_on_radius
from .radii.other_side import set_other_sides_aside
from .radii.radii_by_place import hear_radii_by_place
from .radii.radius_again import join_radii
from .radii.radius_kind import doubt_radii, refine_radii
from .radii.radius_picked import hear_radius_picked
from .radii.same_radius import hear_same_figure
from .radii.sides_asked import doubt_sides_asked, without_sides_asked
from .radii.some_edge import doubt_edges
from .radii.tied_ahead import hear_tied_ahead
from .radii.tighter import hear_tighter
from .radii.told_bends import hear_told_bends
from .said.changed_from import hear_changes
from .said.either_tube import hear_either_tube
from .said.given_up import name_settled
from .said.hedges_unsure import doubt_unsure
from .said.leaning import hear_leaning
from .said.may_become import hear_may_become
from .said.not_but import hear_not_but
from .said.put_right import mark_changes
from .sizes.choices import Unit
from .sizes.gatherer import MOST_GROUPS
from .sizes.groups import Group
from .sizes.habits import usual_unit
from .tables.legends import assign_by_legend
from .tables.pasted_csv import tabulate
from .tables.rows import fill_forms
from .tables.text_tables import RowFacts, read_tables
from .talk import listen
from .text.figures import Figure, Layout, Row
from .text.layout import lay_out
from .text.lexer import lex
from .text.plain import Plain, flatten
from .text.tokens import Token
from .text.wrapped import unwrap
from .thread.prompts import assign_by_prompt
from .wanted.came_with import set_machine_tooling_aside
from .wanted.dies_listed import set_listed_dies_aside
from .wanted.other_dies import set_other_dies_aside

MOST_CHARACTERS = 10_000
"""So much of one text is read, some five pages: nobody writes more about a tube."""


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
    is_cut: bool
    """Whether there was more than is ever read of one text."""

    def in_tables(self) -> set[int]:
        """Where figures begin in the message that stand in rows of a table."""
        rows = [f for f in self.layout.figures if f.row is not None and f.how == "table"]
        return {self.plain.span(f.start, f.end)[0] + self.offset for f in rows}


def read_stretch(
    original: str,
    offset: int,
    earlier: tuple[Figure, ...] = (),
    prompts: Sequence[Prompt] = (),
    told: str = "",
) -> Stretch:
    """Read a text that begins at ``offset`` in the message. Never raises on any text.

    ``earlier`` is what the mail says that it answers, ``prompts`` are the lines quoted of that
    with an answer below, ``told`` are words beside the text that may pick out lines of it.
    """
    stretch = _read(original, offset, earlier, prompts, told)
    layout = stretch.layout
    if not layout.lines_out or stretch.is_cut:
        return stretch
    # Lines that are not wanted are read no more: nor is a material or a count that they name.
    shown = original
    for first, last in (stretch.plain.span(*span) for span in layout.lines_out):
        shown = shown[:first] + _INK.sub(" ", shown[first:last]) + shown[last:]
    again = _read(shown, offset, earlier, prompts, None, layout.left_out)
    same = [group.place("od") for group in again.groups]
    if same != [group.place("od") for group in stretch.groups]:
        return stretch
    return replace(again, original=original)


_INK = re.compile(r"\S")


def _read(
    original: str,
    offset: int,
    earlier: tuple[Figure, ...],
    prompts: Sequence[Prompt],
    told: str | None,
    left_out: Sequence[str] = (),
) -> Stretch:
    plain = unwrap(tabulate(flatten(original[:MOST_CHARACTERS])))
    told = with_options_named(told, plain.text) if told else told
    known, sides_asked = without_sides_asked(with_items_named(plain.text))
    plain = replace(plain, text=known)
    tokens = lex(plain.text)
    text = plain.text[: tokens[-1].end] if tokens else ""
    is_cut = len(original) > MOST_CHARACTERS or bool(plain.text[len(text) :].strip())
    layout, rows = _lay_out(tokens, text if is_cut else plain.text)
    if layout.lengths:
        layout, rows = _lay_out(lex(plain.text, layout.lengths), layout.text)
    layout.earlier = earlier
    assign_by_legend(layout, rows)
    hear_labelled_lists(layout)
    set_angles_aside(layout)
    set_made_things_aside(layout)
    hear_run_together(layout)
    hear_called_by_wall(layout)
    hear_stock_lengths(layout)
    hear_round_the_tube(layout)
    hear_leaning(layout)
    hear_either_tube(layout)
    hear_phrases(layout)
    hear_bracketed_radii(layout)
    hear_walls_in(layout)
    hear_same_wall(layout)
    hear_also_another(layout)
    hear_same_but(layout)
    hear_walls_of(layout)
    hear_on_lines(layout)
    hear_walls_behind_words(layout)
    assign_named_order(layout)
    hear_changes(layout)
    hear_not_but(layout)
    hear_tied_ahead(layout)
    part_stamps(layout)
    assign_by_cue(layout)
    fill_forms(layout)
    hear_dies_then_tubes(layout)
    hear_thick_tubes(layout)
    hear_bracketed_tubes(layout)
    assign_by_chain(layout)
    join_sides(layout)
    hear_walls_ahead(layout)
    hear_on_radius(layout)
    hear_tighter(layout)
    hear_same_figure(layout)
    hear_may_become(layout)
    assign_by_prompt(layout, plain, offset, prompts)
    name_radii_below(layout)
    join_lines(layout)
    share_lists(layout)
    hear_radii_by_place(layout)
    assign_by_place(layout)
    if assign_by_sole_cue(layout):
        assign_by_place(layout)  # an OD that is known now makes walls of what stands near it
    hear_told_bends(layout)
    hear_bands(layout)
    name_settled(layout)
    share_lists(layout)
    join_restated(layout)
    name_gauges(layout)
    join_names(layout)
    join_pipes(layout)
    hear_walls_named(layout)
    hear_mandrels_for(layout)
    hear_walls_with_materials(layout)
    hear_tubes_listed(layout)
    hear_wall_for_all(layout)
    assign_leftovers(layout)
    set_die_marks_aside(layout)
    set_defaults_aside(layout)
    set_other_radii_aside(layout)
    set_other_sides_aside(layout)
    refine_radii(layout)
    set_products_aside(layout)
    set_wide_bores_aside(layout)
    settle_diameters(layout)
    join_centres(layout)
    join_diameters(layout)
    join_radii(layout)
    doubt_radii(layout)
    doubt_edges(layout)
    doubt_sides_asked(layout, sides_asked)
    doubt_forms(layout)
    doubt_parted(layout)
    doubt_unsure(layout)
    note_names(layout)
    mark_changes(layout)
    hear_radius_picked(layout)
    set_listed_dies_aside(layout)
    set_other_dies_aside(layout)
    set_machine_tooling_aside(layout)
    set_walls_asked_about_aside(layout)
    set_wall_left_aside(layout)
    if left_out:
        layout.left_out[:] = left_out
    groups = gather(layout, told, rows)
    fill_gaps(layout, groups)
    is_cut = is_cut or len(groups) >= MOST_GROUPS
    return Stretch(original, offset, plain, layout, groups, rows, usual_unit(layout), is_cut=is_cut)


def _lay_out(tokens: list[Token], text: str) -> tuple[Layout, dict[Row, RowFacts]]:
    layout = lay_out(tokens, text)
    set_places_aside(layout)
    listen(layout)
    set_counts_aside(layout)
    return layout, read_tables(layout)
