"""Which of two values a sender leans to: '.058 or .065, the tags fell off. I think .065.' It stays
in doubt; the likelier one is named first."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import any_of

LIKELIER = any_of(
    "i think | i believe | i guess | i reckon | i'd say | i would say | my guess is | probably",
    "most likely | more likely | pretty sure | fairly sure | leaning (?:to|towards?) | likely",
    "ich glaube | ich denke | vermutlich | wahrscheinlich | eher | wohl | am ehesten",
    "je pense | je crois | sans doute | probablement | plutôt | sûrement",
    "creo que | supongo que | seguramente | probablemente | más bien | lo más seguro",
    "credo | penso | probabilmente | sicuramente | più probabile",
    "ik denk | ik geloof | waarschijnlijk | vermoedelijk | eerder",
    "please (?:use|go with|assume|take|work with|quote|price)",
    r"(?:bitte|rechnen sie|rechnet) (?:erst ?mal |erst einmal |vorerst |vorläufig |zunächst )?mit",
    "comptez | prenez | calculen con | consideren | considerate | calcolate | reken voorlopig met",
)
_FILLERS = (
    r",?\s(?:(?:it|that|this|it's|it is|that's|is|the|wall|tube|of|es|ist|c'est|le|la|que|sia"
    r"|è|het|de|el|il|von|auf"
    r"|es ist|die|das|das|dass)\s){0,4}"
)
_LEANS = late_pattern(
    rf"(?<!don't )(?<!not )\b{LIKELIER}{_FILLERS}"
    r"(?P<number>\d{0,4}[.,]?\d{1,4})(?![\d/]|[.,]\d)"
    r"(?!\"?\s?(?:or|oder|ou|o|of|to|-|x|×|/)(?:\s|\d))"
)
_LEANS_BEFORE = late_pattern(rf"(?<!don't )(?<!not )\b{LIKELIER}{_FILLERS}$")
_OR = late_pattern(r"\b(?:or|oder|ou|soit|o|oppure|of)\b|/")
_FIELDS = ("od", "wall", "clr")
_INCH = Decimal("25.4")
_MOST_APART = 4
_NEAR = Decimal("0.001")


def hear_leaning(layout: Layout) -> None:
    """'Either .095 or .120, most likely .120': the second .120 tells no further value."""
    for figure in layout.figures[2:]:
        first, second = layout.figures[figure.index - 2 : figure.index]
        if figure.number.value not in (first.number.value, second.number.value):
            continue
        near = first.sentence == second.sentence == figure.sentence and figure.link != "times"
        offered = _OR.search(layout.words(first.end, second.start).casefold())
        said = " ".join(layout.words(second.end, figure.start).split())
        if near and offered and _LEANS_BEFORE.search(said.casefold() + " "):
            figure.give("noise", "same")


def with_leaning(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The one request with the value first that the sender holds for likelier; several as they are.

    ``text`` is the sender's own. A figure that is none of the two, or both, changes nothing.
    """
    if len(requests) != 1:
        return list(requests)
    words = " ".join(text.casefold().replace("’", "'").split())
    numbers = [_number(found["number"]) for found in _LEANS.finditer(words)]
    return [_leaning(requests[0], numbers)] if numbers else list(requests)


def _number(written: str) -> Decimal:
    plain = written.replace(",", ".")
    return Decimal(f"0{plain}" if plain.startswith(".") else plain)


def _leaning(request: SizeRequest, numbers: Sequence[Decimal]) -> SizeRequest:
    update: dict[str, object] = {}
    doubts: list[Doubt] = []
    for doubt in request.doubts:
        meant = {value for value in doubt.readings if _is_one_of(value, numbers)}
        if doubt.field in _FIELDS and len(doubt.readings) == 2 and len(meant) == 1:
            first = meant.pop()
            if not _are_alike(doubt.readings):
                doubts.append(doubt)
                continue
            rest = tuple(value for value in doubt.readings if value != first)
            doubt = doubt.model_copy(update={"readings": (first, *rest)})
            update[f"{doubt.field}_mm"] = first
        doubts.append(doubt)
    return request.model_copy(update={**update, "doubts": tuple(doubts)}) if update else request


def _are_alike(readings: Sequence[Decimal | str]) -> bool:
    """Whether they are two sizes, and not one figure in two units."""
    lengths = [value for value in readings if isinstance(value, Decimal)]
    return len(lengths) == len(readings) and max(lengths) < min(lengths) * _MOST_APART


def _is_one_of(value: Decimal | str, numbers: Sequence[Decimal]) -> bool:
    return isinstance(value, Decimal) and any(
        abs(value - number * unit) <= value * _NEAR for number in numbers for unit in (1, _INCH)
    )
