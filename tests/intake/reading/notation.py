"""A tube and bend, drawn at random, written down in one of the notations that customers use.

Everything drawn here could stand in a real mail, and says one thing only. Standard sizes, gauges
(BWG) and pipe walls are typed from the tables, so that what must be read back is arithmetic:
inches x 25.4, gauge by table, n x OD.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from hypothesis import strategies as st

IN = Decimal("25.4")


@dataclass(frozen=True)
class Tube:
    """Lengths as the sender thinks of them, in his own unit; ``clr_d`` where the CLR is n x OD."""

    unit: str
    od: Decimal
    wall: Decimal
    clr: Decimal
    gauge: str = ""
    clr_d: str = ""

    @property
    def mm(self) -> tuple[Decimal, Decimal, Decimal]:
        """OD, wall and CLR in mm."""
        factor = IN if self.unit == "in" else Decimal(1)
        return self.od * factor, self.wall * factor, self.clr * factor


# BWG column of the gauge table, inches (the heavier and lighter ones are rare on tube).
BWG = {
    "10": ".134", "11": ".120", "12": ".109", "13": ".095", "14": ".083",
    "16": ".065", "18": ".049", "20": ".035", "22": ".028",
}  # fmt: skip
_INCH_ODS = [
    "0.25", "0.3125", "0.375", "0.5", "0.625", "0.75", "0.875", "1", "1.125", "1.25", "1.375",
    "1.5", "1.625", "1.75", "1.875", "2", "2.25", "2.5", "3", "3.5", "4",
]  # fmt: skip
_MM_ODS = [
    "6", "8", "10", "12", "15", "16", "18", "20", "22", "25", "28", "30", "32", "35", "38", "40",
    "42", "42.4", "44.5", "45", "48.3", "50", "54", "57", "60", "60.3", "63.5", "70", "76.1", "88.9",
]  # fmt: skip
_MM_WALLS = ["0.8", "1", "1.2", "1.5", "1.6", "1.8", "2", "2.5", "2.6", "2.9", "3", "3.2", "4", "5"]


@st.composite
def inch_tubes(draw: st.DrawFn) -> Tube:
    """Standard OD, a BWG wall, CLR in eighths between 1.5 and 6 x OD."""
    od = Decimal(draw(st.sampled_from(_INCH_ODS)))
    walls = [g for g, w in BWG.items() if od / 40 < Decimal(w) < od / 5]
    gauge = draw(st.sampled_from(walls))
    multiple = draw(st.sampled_from(["", "", "", "2", "3", "1.5"]))
    if multiple:
        clr = od * Decimal(multiple)
    else:
        low, high = int(od * 12) + 1, int(od * 48)
        clr = Decimal(draw(st.integers(low, high))) / 8
    return Tube("in", od, Decimal(BWG[gauge]), clr, gauge, multiple)


@st.composite
def metric_tubes(draw: st.DrawFn) -> Tube:
    """Common metric OD and wall, CLR in whole mm between 1.5 and 6 x OD."""
    od = Decimal(draw(st.sampled_from(_MM_ODS)))
    wall = Decimal(draw(st.sampled_from([w for w in _MM_WALLS if od / 45 < Decimal(w) < od / 5])))
    multiple = draw(st.sampled_from(["", "", "", "2", "3", "2.5"]))
    clr = (
        od * Decimal(multiple)
        if multiple
        else Decimal(draw(st.integers(int(od * 3 / 2) + 1, int(od * 6))))
    )
    return Tube("mm", od, wall, clr, clr_d=multiple)


# --- how one number is spelled -------------------------------------------------------------------

_SIGNS = {(1, 2): "½", (1, 4): "¼", (3, 4): "¾", (1, 8): "⅛", (3, 8): "⅜", (5, 8): "⅝", (7, 8): "⅞"}


def fraction(value: Decimal, joint: str) -> str:
    """'1-3/4' with joint '-', '1 3/4' with ' ', '1¾' with the sign where there is one."""
    whole, rest = int(value), Fraction(value) % 1
    if not rest:
        return str(whole)
    sign = _SIGNS.get((rest.numerator, rest.denominator)) if joint == "½" else None
    part = sign or f"{rest.numerator}/{rest.denominator}"
    joint = "" if sign else ("-" if joint == "½" else joint)
    return f"{whole}{joint}{part}" if whole else part


def inches(value: Decimal) -> st.SearchStrategy[str]:
    """An inch value in decimals or as a fraction, without its unit."""
    plain = format(value.normalize(), "f")
    spellings = [plain, plain.removeprefix("0") if value < 1 else plain, f"{value:.3f}"]
    if Decimal(f"{value:.3f}") != value:
        spellings.pop()
    if Fraction(value).denominator in (1, 2, 4, 8, 16):
        spellings += [fraction(value, "-"), fraction(value, " "), fraction(value, "½")]
    return st.sampled_from(spellings)


def millimetres(value: Decimal, comma: bool) -> str:
    """A metric value; with a decimal comma where the writer uses one."""
    plain = format(value.normalize(), "f")
    return plain.replace(".", ",") if comma else plain


# --- how a whole size is written -----------------------------------------------------------------

_BEFORE = ["", "Need a mandrel for ", "Please quote one mandrel: ", "Hi,\n\nwe bend ", "Mandrel, "]
_LIKE_A_COUNT = ("1,", "2,", "3,", "4,")
_AFTER = [
    "",
    " 304",
    " DOM",
    ", 6061-T6",
    ", 4130 tubing",
    "\n\nThanks,\nPat",
    ". What's the lead time?",
]


@st.composite
def inch_line(draw: st.DrawFn, tube: Tube, *, whole_mail: bool = True) -> str:
    """'1-3/4" OD x .095 wall, 5.25 CLR' in its many forms."""
    od = draw(inches(tube.od)) + draw(
        st.sampled_from(['"', '" OD', " in", " inch", "-inch OD", " OD", " O.D.", "", "” OD", "″"])
    )
    wall = draw(_wall(tube))
    clr = draw(_inch_clr(tube))
    joint = draw(st.sampled_from([" x ", "x", " × ", " X ", " by ", "*", ", "]))
    if joint in ("x", "*") and od[-1].isalpha():
        joint = f" {joint} "
    if draw(st.booleans()):
        text = (
            f"{od}{joint}{wall}{draw(st.sampled_from([', ', ' on a ', ' at ', '; ', ' - ']))}{clr}"
        )
    else:
        text = f"{clr}, {od}{joint}{wall}"
    if not whole_mail:
        return text + draw(st.sampled_from(["", " 304", ", DOM", ", 4130"]))
    # "Mandrel, 2, .120 wall" may ask for two.
    before = "" if text[:2] in _LIKE_A_COUNT else draw(st.sampled_from(_BEFORE))
    return before + text + draw(st.sampled_from(_AFTER))


def _wall(tube: Tube) -> st.SearchStrategy[str]:
    plain = format(tube.wall, "f").removeprefix("0")
    return st.sampled_from(
        [
            f"{plain} wall", f"0{plain} wall", f'{plain}" wall', f"{plain}", f"{plain} wall thickness",
            f"{plain} w.t.", f"{tube.gauge} ga", f"{tube.gauge} gauge", f"{tube.gauge}ga wall",
            f"{plain} thick", f"{tube.gauge} gauge ({plain})",
        ]
    )  # fmt: skip


@st.composite
def _inch_clr(draw: st.DrawFn, tube: Tube) -> str:
    if tube.clr_d and draw(st.booleans()):
        return f"{tube.clr_d}{draw(st.sampled_from(['D bend', 'D', ' x OD radius', ' x D']))}"
    number = draw(inches(tube.clr))
    return draw(
        st.sampled_from(
            [
                f"{number} CLR", f"CLR {number}", f'{number}" CLR', f"{number} inch radius",
                f"{number} in centerline radius", f"centerline radius of {number}", f'R{number}"',
                f"{number} bend radius", f"bend radius {number} inches", f"{number} C.L.R.",
            ]
        )
    )  # fmt: skip


@st.composite
def metric_line(draw: st.DrawFn, tube: Tube, *, whole_mail: bool = True) -> str:
    """'Ø42,4 x 2,0 mm, R 85 mm' in its many forms."""
    comma = draw(st.booleans())
    od, wall, clr = (millimetres(v, comma) for v in (tube.od, tube.wall, tube.clr))
    # "6 x 0.8" without a unit could be inches: he would ask. "38 x 1.5" could not.
    bare = f"Ø{od} x {wall}" + (" mm" if tube.od < 13 else "")
    size = draw(
        st.sampled_from(
            [
                f"{od} x {wall} mm", bare, f"Ø {od} × {wall} mm", f"{od}x{wall} mm",
                f"{od} mm x {wall} mm", f"{od}mm OD x {wall}mm wall", f"OD {od} mm, wall {wall} mm",
                f"{od} mm OD, {wall} mm wall thickness", f"{od} mm O.D. {wall} mm thick",
            ]
        )
    )  # fmt: skip
    radius = draw(
        st.sampled_from(
            [
                f"R{clr}", f"R {clr} mm", f"R = {clr} mm", f"CLR {clr} mm", f"{clr} mm CLR",
                f"bend radius {clr} mm", f"radius {clr} mm", f"centre line radius {clr} mm",
                *([f"{millimetres(Decimal(tube.clr_d), comma)} x D", f"{tube.clr_d}D"] if tube.clr_d else []),
            ]
        )
    )  # fmt: skip
    order = draw(
        st.sampled_from([f"tube {size}, {radius}", f"{size}, {radius}", f"{radius}, tube {size}"])
    )
    if not whole_mail:
        return order + draw(st.sampled_from(["", ", 1.4301", ", E235"]))
    return (
        draw(st.sampled_from(_BEFORE))
        + order
        + draw(st.sampled_from(["", ", 1.4301", ", E235", ". 2 pcs"]))
    )


# The words of labelled fields: OD, wall, radius (centre line where the word has no other meaning).
LABELS = {
    "en": ("OD", "Wall", "CLR"),
    "en-long": ("Outside diameter", "Wall thickness", "Bend radius"),
    "de": ("Außendurchmesser", "Wandstärke", "Biegeradius"),
    "fr": ("Diamètre extérieur", "Épaisseur", "Rayon de cintrage"),
    "es": ("Diámetro exterior", "Espesor", "Radio de curvatura"),
    "it": ("Diametro esterno", "Spessore", "Raggio di curvatura"),
    "nl": ("Buitendiameter", "Wanddikte", "Buigradius"),
}


@st.composite
def labelled_fields(draw: st.DrawFn, tube: Tube) -> str:
    """One field a line, in any order, as forms and purchasing systems write it."""
    language = draw(st.sampled_from(list(LABELS) if tube.unit == "mm" else ["en", "en-long"]))
    comma = language not in ("en", "en-long") and draw(st.booleans())
    unit = draw(st.sampled_from([" mm", " mm"] if tube.unit == "mm" else [" in", '"']))
    mark = draw(st.sampled_from([": ", " : ", " = ", ":\t", " - "]))
    lines = [
        f"{label}{mark}{millimetres(value, comma)}{unit}"
        for label, value in zip(LABELS[language], (tube.od, tube.wall, tube.clr), strict=True)
    ]
    return "\n".join(draw(st.permutations(lines)))


@st.composite
def text_table(draw: st.DrawFn, tube: Tube) -> str:
    """A header row and one row of figures, by tabs, wide spaces, bars or semicolons."""
    labels = list(LABELS[draw(st.sampled_from(["en", "en-long"]))])
    cells = [millimetres(v, comma=False) for v in (tube.od, tube.wall, tube.clr)]
    # "6 | 0.8 | 10" without a unit could be inches: he would ask. "38 | 1.5 | 57" could not.
    if draw(st.booleans()) or (tube.unit == "mm" and tube.od < 13):
        labels = [f"{label} ({tube.unit})" for label in labels]
    columns = draw(st.permutations(list(zip(labels, cells, strict=True))))
    style = draw(st.sampled_from(["tabs", "spaces", "bars", "semicolons"]))
    rows = [[label for label, _ in columns], [cell for _, cell in columns]]
    join: dict[str, Callable[[list[str]], str]] = {
        "tabs": "\t".join,
        "spaces": lambda row: "   ".join(cell.ljust(20) for cell in row).rstrip(),
        "bars": lambda row: f"| {' | '.join(row)} |",
        "semicolons": ";".join,
    }
    return "\n".join(join[style](row) for row in rows)
