"""A drawing's general note is no radius of the tube: 'all radii R3 unless specified'.

Where another radius is given it is left out; where it is the only one, it is doubted.
"""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import RADIUS_ROLES

_DEFAULT = late_pattern(
    r"\b"
    + any_of(
        r"(?:unless|if not) (?:otherwise )?(?:specified|noted|stated|shown|indicated|marked|given"
        r"|called out|dimensioned)",
        "unless otherwise | u\\.?o\\.?[sn]\\b | undimensioned | not (?:otherwise )?dimensioned",
        r"(?:sofern|wenn|soweit|falls) nichts? ander(?:s|es)",
        "(?:un|nicht )(?:bemaßte|bemasste)[nrs]? | nicht angegebene[nrs]? radien",
        "sauf (?:indication|mention|avis|spécification)s? (?:contraires?|autres?) | non cotée?s",
        r"salvo (?:indicación|que se indique|se indique) | a menos que se indique",
        "si no se indica | no acotad[oa]s",
        r"salvo (?:divers[ae]|altr[ae]|contrari[ae]) (?:indicazion[ei]|specific\\w+)",
        r"salvo indicazion[ei] | se non (?:diversamente|altrimenti) | non quotat[ie]",
        r"tenzij anders | indien niet anders | o ile nie (?:podano|zaznaczono) | om ing?et annat",
    ),
    re.IGNORECASE,
)
_DOCUMENT = whole_words(
    r"drawings? | prints? | dwg | note | title block | sheet | zeichnung\w* | schriftfeld",
    r"plans? | cartouche | plano | nota | cajetín | disegno | cartiglio | tekening | rysun\w+",
    "ritning\\w*",
)
_BENDS = late_pattern(r"\bbend|\bbieg|\bbogen|\bcintr|\bcoude|\bcurv|\bpieg|\bbuig|\bbocht|\bgięc")
_CENTRELINE = late_pattern(
    r"\bc/?l\b|\bc\.?l\.?r\b|\bcent(?:re|er)[- ]?lines?\b|\b(?:rohr|biege)?(?:mitte|achse)\b"
    r"|\bneutrale[nr]? faser|\b(?:à l'|de l')axe\b|\bfibre neutre|\bal eje\b|\ball'asse\b"
    r"|\bhart(?:lijn)?\b"
)
_NEAR = 70
_ONLY = "only a drawing's general note gives it"
_SMALLEST = Decimal("0.5")
"""So many times the OD is the smallest radius that a bend can have."""


def set_defaults_aside(layout: Layout) -> None:
    """Say of a radius that a general note gives that it is none, or doubt it."""
    radii = [f for f in layout.figures if f.role in RADIUS_ROLES and not f.negated]
    defaults = [figure for figure in radii if _is_default(layout, figure)]
    if not defaults:
        return
    given = len(radii) > len(defaults)
    ods = [figure for figure in layout.figures if figure.role == "od"]
    smallest = {
        unit: min((f.number.value for f in ods if f.unit in (None, unit)), default=Decimal(0))
        for unit in {figure.unit for figure in defaults}
    }
    for figure in defaults:
        noted = layout.says(figure.sentence, _DOCUMENT) or _is_quoted(layout, figure)
        # 'R3' on a tube of 50 is that of an edge.
        edge = figure.number.value < smallest[figure.unit] * _SMALLEST
        if edge or (given and noted):
            figure.give("noise", "cue")
        elif not _is_of_tube(layout, figure):
            figure.notes.append(_ONLY)


def _is_default(layout: Layout, figure: Figure) -> bool:
    """Whether the words between the neighbouring figures say that it counts in general."""
    before, after = layout.before(figure), layout.after(figure)
    first, last = layout.spans[figure.sentence]
    begin = max(layout.tokens[first].start, figure.start - _NEAR, before.end if before else 0)
    end = min(
        layout.tokens[last].end, figure.end + _NEAR, after.start if after else figure.end + _NEAR
    )
    if _DEFAULT.search(layout.text[figure.end : end]):
        return True
    said = _DEFAULT.search(layout.text[begin : figure.start])
    if said is None:
        return False
    # "CLR 100 unless noted, and the tail R 80": it is said of the nearer radius.
    other = before is not None and before.role in RADIUS_ROLES and begin == before.end
    return not other or said.start() > figure.start - begin - said.end()


def _is_of_tube(layout: Layout, figure: Figure) -> bool:
    """'Bend radii 2.00 to tube C/L unless otherwise specified': no edge has a centreline."""
    end = min(len(layout.text), figure.end + _NEAR)
    around = layout.words(max(0, figure.start - _NEAR), end)
    return _BENDS.search(around) is not None and _CENTRELINE.search(around) is not None


def _is_quoted(layout: Layout, figure: Figure) -> bool:
    around = layout.text[max(0, figure.start - _NEAR) : figure.start]
    return any(around.count(mark) % 2 for mark in ('"', "“", "„", "«"))
