"""Whether two figures may be one length, said twice."""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import Figure

_INCH = Decimal("25.4")
_SCALES = (Decimal(1), _INCH, 1 / _INCH)


def same_size(left: Figure, right: Figure) -> bool:
    """Whether two figures may be one length in two spellings (within 1.5 %, inch or mm)."""
    if left.is_gauge or right.is_gauge:
        plain = right if left.is_gauge else left
        return left.unit != right.unit and plain.number.value < (12 if plain.unit == "mm" else 1)
    return _within(left, right, Decimal("0.015"), _SCALES)


def nearly(left: Figure, right: Figure) -> bool:
    """Whether two figures are within 3 % in whichever unit brings them closest."""
    scales = _SCALES[:1] if left.unit == right.unit else _SCALES
    return _within(left, right, Decimal("0.03"), scales)


def restates(held: Figure, figure: Figure) -> bool:
    """Whether a figure says again what another has said, in either unit."""
    roles = {held.role, figure.role}
    if roles & {"times_d", "schedule", "nps", "dn", "dash"}:
        return held.role == figure.role and held.number.value == figure.number.value
    if held.is_gauge != figure.is_gauge:
        return False
    if roles & {"inside_r", "outside_r"} and len(roles) > 1:
        return False
    a, b = held.number.value, figure.number.value
    if held.unit == figure.unit or None in (held.unit, figure.unit):
        near = Decimal("0.01") if held.role == "wall" else Decimal("0.002")
        if abs(a - b) <= max(a, b) * near:
            return True  # "1.498 by the calipers, so 1.5"
        if held.unit == figure.unit and (held.unit is not None or held.role != "wall"):
            return False  # but "1.24 wall (1 1/8 x .049)" is one wall, in two units
    return any(abs(a * scale - b) <= b * Decimal("0.012") for scale in _SCALES[1:])


def _within(left: Figure, right: Figure, share: Decimal, scales: tuple[Decimal, ...]) -> bool:
    a, b = left.number.value, right.number.value
    return bool(a and b) and any(abs(a * scale - b) <= b * share for scale in scales)
