"""The picture of a bend in words: for screen readers, its labels, and where there is none."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from ...rules.assessment import Decision
from ...rules.readings import stated_reading
from ...rules.request import LENGTH_FIELDS, Shape
from ...rules.units import both_units, format_in, format_mm
from ..wording_tool import plain, round_to
from .bend_shape import MOST_ANGLE_DEG, USUAL_ANGLE_DEG, BendShape, beyond_limits

if TYPE_CHECKING:
    from ...rules.assessment import Assessment, MandrelNeeded
    from ...rules.request import SizeRequest
    from ...rules.shop import Shop

NAMES = {"od": "OD", "wall": "wall", "clr": "CLR"}


def bend_title(assessment: Assessment) -> str:
    """The size on one line, in the sender's unit: '1.75 in OD, 0.095 in wall, 5.25 in CLR'."""
    request = assessment.request
    first = request.written_in
    lengths = ((field, request.length_mm(field)) for field in LENGTH_FIELDS)
    return ", ".join(
        f"{format_in(mm, wall=field == 'wall') if first == 'in' else format_mm(mm)} {first} "
        f"{NAMES[field]}"
        for field, mm in lengths
        if mm is not None
    )


def why_no_bend(assessment: Assessment) -> str:
    """One sentence on why the bend can't be drawn; '' where it can."""
    request = assessment.request
    reading = stated_reading(request)
    if reading.spec is not None:
        return ""
    if request.shape is not Shape.ROUND:
        return "There is no picture of the bend: only round tube is drawn."
    absent = [NAMES[field] for field in LENGTH_FIELDS if request.length_mm(field) is None]
    if absent:
        verb = "is" if len(absent) == 1 else "are"
        names = listed(absent, "and")
        return f"There is no picture of the bend: {names} {verb} not given."
    return f"There is no picture of the bend: there can be none with {bend_title(assessment)}."


def bend_text(assessment: Assessment, shop: Shop | None = None) -> str:
    """What the picture shows, in sentences; without a picture the sentence that says why."""
    if why := why_no_bend(assessment):
        return why
    request = assessment.request
    said = [
        f"Section along the bend of a round tube, to scale: OD {_length(request, 'od')}, wall "
        f"{_length(request, 'wall')}, CLR {_length(request, 'clr')}.",
        "The bend die lies inside the bend; beside it the tube is shown across.",
    ]
    if tool := tool_words(assessment):
        said.append(f"In the tube, its nose just past the tangent, {tool}.")
    return " ".join([*said, *bend_notes(assessment, shop)])


def tool_words(assessment: Assessment) -> str:
    """'a mandrel of 1.55 in (39.37 mm) with 1 ball'; '' where none is drawn."""
    shape = BendShape.of(assessment)
    if shape is None or shape.tool is None or assessment.mandrel is None:
        return ""
    with_balls = f" with {balls}" if (balls := balls_words(assessment)) else ""
    return f"a mandrel of {diameter_words(assessment)}{with_balls}"


def diameter_words(assessment: Assessment) -> str:
    """The mandrel's diameter in both units: one on the shelf exactly, else from low to high."""
    needed, stock, first = assessment.mandrel, assessment.stock, assessment.request.written_in
    assert needed is not None
    if stock is not None:
        return both_units(stock.mandrel_diameter_mm, first)
    written = _spans(needed)
    second = "mm" if first == "in" else "in"
    return f"{written[first]} ({written[second]})"


def _spans(needed: MandrelNeeded) -> dict[str, str]:
    ends = (needed.diameter_low_mm, needed.diameter_high_mm)
    inches = [round_to(end / Decimal("25.4"), 3) for end in ends]
    mms = [round_to(end, 2) for end in ends]
    return {
        "in": f"{' to '.join(dict.fromkeys(inches))} in",
        "mm": f"{' to '.join(dict.fromkeys(mms))} mm",
    }


def balls_words(assessment: Assessment) -> str:
    """'1 ball', '1 to 2 balls'; '' where nobody has said how many."""
    needed, stock = assessment.mandrel, assessment.stock
    if stock is not None:
        return _balls(str(stock.balls))
    if needed is None or needed.balls_low is None or needed.balls_high is None:
        return ""
    few, many = needed.balls_low, needed.balls_high
    if (few, many) == (0, 1):
        return "1 ball or none"
    return _balls(str(few) if few == many else f"{few} to {many}")


def _is_range(assessment: Assessment) -> bool:
    needed = assessment.mandrel
    return assessment.stock is None and needed is not None and needed.balls_low != needed.balls_high


def _balls(count: str) -> str:
    return {"0": "no balls", "1": "1 ball"}.get(count, f"{count} balls")


def bend_notes(assessment: Assessment, shop: Shop | None = None) -> tuple[str, ...]:
    """What the picture can't show by itself: the two ratios, what is assumed, what is in doubt."""
    request = assessment.request
    notes = [_ratio_note(assessment, shop)]
    shape = BendShape.of(assessment)
    if beyond_limits(assessment):
        as_read = "Not" if assessment.decision is Decision.DECLINE else "As first read, not"
        notes.append(f"{as_read} likely to be feasible on our tooling: drawn without a mandrel.")
    elif shape is not None and shape.tool is None:
        notes.append("Drawn without a mandrel: a person has to choose it.")
    elif shape is not None and assessment.stock is None and not balls_words(assessment):
        notes.append("Drawn without balls: a person has to choose how many.")
    elif shape is not None and shape.tool is not None and _is_range(assessment):
        notes.append(f"Drawn with {_balls(str(shape.tool.balls))}.")
    notes.append(_angle_note(request))
    for field in LENGTH_FIELDS:
        if (doubt := request.doubt_on(field)) is not None:
            lengths = [one for one in doubt.readings if isinstance(one, Decimal)]
            if len(lengths) > 1:
                either = listed(
                    [both_units(one, request.written_in, wall=field == "wall") for one in lengths],
                    "or",
                )
                notes.append(f"In doubt: {NAMES[field]} {either}.")
            else:
                notes.append(f"In doubt: {NAMES[field]} ({doubt.why}).")
    return tuple(note for note in notes if note)


def _ratio_note(assessment: Assessment, shop: Shop | None) -> str:
    thin, tight = assessment.wall_factor, assessment.d_of_bend
    if thin is None or tight is None:
        return ""
    limits = ("", "")
    if shop is not None:
        most, least = shop.limits.wall_factor_max.value, shop.limits.d_of_bend_min.value
        limits = (f" (our limit {plain(most)})", f" (our limit {plain(least)})")
    return f"Wall factor {ratio(thin)}{limits[0]}, D of bend {ratio(tight)}{limits[1]}."


def _angle_note(request: SizeRequest) -> str:
    angle_deg = request.angle_deg
    if angle_deg is None or angle_deg <= 0:
        return f"Drawn as a bend of {USUAL_ANGLE_DEG:g}°, since no angle was given."
    if angle_deg > MOST_ANGLE_DEG:
        return f"The bend goes to {plain(angle_deg)}°; {MOST_ANGLE_DEG:g}° of it are drawn."
    return f"Bend of {plain(angle_deg)}°."


def listed(words: list[str], joined_by: str) -> str:
    """'OD, wall and CLR'."""
    *before, last = words
    return f"{', '.join(before)} {joined_by} {last}" if before else last


def ratio(value: Decimal) -> str:
    """A wall factor or D of bend with two decimals at most."""
    return round_to(value, 2)


def _length(request: SizeRequest, field: str) -> str:
    mm = {"od": request.od_mm, "wall": request.wall_mm, "clr": request.clr_mm}[field]
    assert mm is not None
    return both_units(mm, request.written_in, wall=field == "wall")
