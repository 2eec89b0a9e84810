"""Days of several sizes and of quotations, sides only asked about, guessed counts, rule books."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand


def _read(text: str):  # type: ignore[no-untyped-def]
    head = "From: a@example.com\nDate: Tue, 06 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    return understand(parse_message((head + text).encode()))


@pytest.mark.parametrize(
    "text",
    [
        "38 x 1.5, radius 80 (inside? centre? no idea). One mandrel.",
        "38 x 1.5, radius 80 - inside? centre? no idea. One mandrel.",
        "Tube 38 x 1.5, R80 (centre/inside?). One mandrel.",
        "38 x 1.5, 80 mm radius former. Is that the centre or the inside? The man didn't know. One mandrel.",
        "Rohr 38 x 1,5, Radius 80 (innen? Mitte? keine Ahnung). Ein Dorn bitte.",
        "Tube 38 x 1,5, rayon 80 (intérieur ? axe ? aucune idée). Un mandrin svp.",
        "Tubo 38 x 1,5, radio 80 (¿interior? ¿al eje? ni idea). Un mandril.",
        "Tubo 38 x 1,5, raggio 80 (interno? asse? non lo so). Un'anima per favore.",
        "Buis 38 x 1,5, straal 80 (binnen? hart? geen idee). Een doorn graag.",
    ],
)
def test_a_side_only_asked_about_doubts_the_radius_alone(text: str) -> None:
    (size,) = _read(text).requests
    assert (float(size.od_mm), float(size.wall_mm)) == (38, 1.5)
    assert size.doubt_on("clr")


_TWO = "Mandrels: 38 x 1.5, R 76 and 42 x 1.5, R 84, one each. "


@pytest.mark.parametrize(
    "text",
    [
        "Need A 38 x 1.5, R 76 by 4 December 2026 and B 42 x 1.5, R 84 by 15 January 2027, one mandrel each.",
        _TWO + "We need the 38 by 4 December 2026, the 42 by 15 January 2027.",
        _TWO + "By 4 December 2026 for the 38 and by 15 January 2027 for the 42.",
        "pos. 10 - mandrel 38 x 1.5, R 76\npos. 20 - mandrel 42 x 1.5, R 84\n\nPos. 10 needed latest 4 December 2026, pos. 20 has time until 15 January 2027.",
        "Pos 1: Dorn 38 x 1,5, R 76, 1 Stück\nPos 2: Dorn 42 x 1,5, R 84, 1 Stück\nPos 1 bis 04.12.2026, Pos 2 bis 15.01.2027.",
        "1) anima tubo 38 x 1,5, R 76\n2) anima tubo 42 x 1,5, R 84\nLa prima ci serve entro il 04/12/2026, la seconda entro il 15/01/2027. Una per tipo.",
    ],
)
def test_each_size_has_its_own_day(text: str) -> None:
    days = [str(size.needed_by) for size in _read(text).requests]
    assert days == ["2026-12-04", "2027-01-15"]


def test_days_that_name_no_size_are_doubted_on_all() -> None:
    sizes = _read(_TWO + "One by 4 December 2026, the other by 15 January 2027.").requests
    assert len(sizes) == 2
    assert all(size.doubt_on("needed_by") for size in sizes)


_ONE = "1 mandrel, tube 44.45 x 1.5, CLR 89. "


@pytest.mark.parametrize(
    ("text", "day"),
    [
        (
            _ONE + "Quotes to be with us no later than 16/10/2026. Required on site 23/11/2026.",
            "2026-11-23",
        ),
        (_ONE + "All quotations in hand by 16 October 2026.", "None"),
        (_ONE + "Ihr Angebot muss bis spätestens 16.10.2026 bei uns sein.", "None"),
        (_ONE + "Remise des offres avant le 16/10/2026.", "None"),
        (_ONE + "Presentar oferta antes del 16/10/2026.", "None"),
        (_ONE + "Offerte entro il 16/10/2026.", "None"),
        (_ONE + "We hebben uw prijs nodig voor 16/10/2026.", "None"),
        (_ONE + "Please quote for delivery by 16 October 2026.", "2026-10-16"),
        (_ONE + "What's the price to have it here by 16 October 2026?", "2026-10-16"),
    ],
)
def test_the_day_of_a_quotation_is_none_of_delivery(text: str, day: str) -> None:
    (size,) = _read(text).requests
    assert str(size.needed_by) == day


@pytest.mark.parametrize(
    ("text", "doubted"),
    [
        ("Just one mandrel I think he wants, 1.5 x .065, 4.5 CLR.", True),
        ("Dorn 38 x 1,5, R 76, wahrscheinlich zwei Stück.", True),
        ("Mandrin 38 x 1,5, R 76, deux pièces je crois.", True),
        ("Mild steel, CDS I think, 2 off mandrels please, 1.5 x .065, 4.5 CLR.", False),
        ("1.5 x .065, 4.5 CLR. One mandrel, and I think we will order in spring.", False),
        ("tube 20mm\nwall 1.5mm\ncentre radius 50mm\nmandrel 1", False),
        ("Odd one perhaps. Tube 1.5 x .065, 4.5 CLR. I'd like to buy a mandrel.", False),
        ("A tricky one I think: a mandrel for 1.5 x .065, 4.5 CLR please.", False),
    ],
)
def test_a_guessed_count_is_doubted(text: str, doubted: bool) -> None:
    (size,) = _read(text).requests
    assert size.quantity in (1, 2)
    assert (size.doubt_on("quantity") is not None and bool(size.doubt_on("quantity"))) is doubted


def test_a_rules_other_size_is_doubted() -> None:
    sizes = _read(
        "My sanctioning body says min 1.5 x .095 for cars under 2500 lb and 1.75 x .095 over that. Mine is 2740 so it's the 1.75 I need. 4130. CLR 5.25. Send me a price on one."
    ).requests
    assert [bool(size.doubts) for size in sizes] == [True, False]


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        (
            "Just wanted to say the mandrel turned up. 38.1 x 1.6 round a 76 former and not a ripple.",
            "other",
        ),
        (
            "Nur kurz: der Dorn ist angekommen. 38 x 1,5 auf R 76, keine Falten. Vielen Dank!",
            "other",
        ),
        (
            "The mandrel turned up. 38.1 x 1.6 round a 76 former and not a ripple, so two more please.",
            "sizes",
        ),
        ("Mandrel arrived, thanks. How much for 50.8 x 1.5, R 100?", "sizes"),
    ],
)
def test_praise_is_no_request(text: str, kind: str) -> None:
    assert _read(text).kind.value == kind
