"""'Yesterday I put 2 mm wall and it's 1.5 mm', above the mail that says so and without one."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

from .support import read_text

QUOTED = {
    "es": "> El 5 oct 2026, Pat escribió:\n> Hola, necesito mandril para tubo de aluminio 6063 de 40 mm, espesor 2 mm, radio al eje 100 mm. Son 350 piezas.",
    "en": "On 5 Oct 2026, Pat wrote:\n> Hello, please quote one mandrel for 40 mm OD aluminium 6063 tube, wall 2 mm, centreline radius 100 mm.",
    "de": "Am 5.10.2026 schrieb Pat:\n> Hallo, ich brauche einen Dorn für Alurohr 6063, 40 mm, Wand 2 mm, Radius 100 mm Mitte.",
    "fr": "Le 5 oct. 2026, Pat a écrit :\n> Bonjour, il me faut un mandrin pour tube alu 6063 de 40 mm, épaisseur 2 mm, rayon à l'axe 100 mm.",
    "it": "Il 5 ott 2026, Pat ha scritto:\n> Buongiorno, mi serve un mandrino per tubo alluminio 6063 da 40 mm, spessore 2 mm, raggio in asse 100 mm.",
    "nl": "Op 5 okt 2026 schreef Pat:\n> Hallo, ik zoek een doorn voor aluminium buis 6063, 40 mm, wanddikte 2 mm, straal hart 100 mm.",
}


def _reply(words: str, language: str) -> tuple[SizeRequest, ...]:
    head = "From: a@example.com\nSubject: Re: mandrel\nDate: Tue, 06 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    return understand(parse_message(f"{head}{words}\n\n{QUOTED[language]}".encode())).requests


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("es", "perdón, en el correo de ayer puse 2 mm de espesor y son 1,5 mm. Lo demás sigue igual. Sólo un mandril."),
        ("es", "Me equivoqué: escribí 2 mm de espesor y son 1,5 mm. Lo demás sigue igual."),
        ("es", "En mi correo dije 2 mm de pared pero es 1,5 mm. El resto igual."),
        ("en", "Sorry, yesterday I put 2 mm wall and it's 1.5 mm. Rest unchanged."),
        ("en", "In my mail I wrote 2 mm wall, it is 1.5 mm. Everything else stays."),
        ("en", "I said 2 mm wall but it's actually 1.5. The rest is as below."),
        ("en", "I told you 2 mm, it turns out to be 1.5 mm wall. The rest stays."),
        ("de", "In meiner Mail habe ich 2 mm Wand geschrieben, es sind aber 1,5 mm. Rest bleibt."),
        ("de", "Gestern hatte ich 2 mm Wand angegeben, richtig sind 1,5 mm. Der Rest bleibt gleich."),
        ("fr", "Hier, j'ai mis 2 mm d'épaisseur et c'est 1,5 mm. Le reste ne change pas."),
        ("fr", "Dans mon mail j'ai écrit 2 mm d'épaisseur mais c'est 1,5 mm. Le reste est inchangé."),
        ("it", "Ieri ho scritto 2 mm di spessore ma sono 1,5 mm. Il resto rimane uguale."),
        ("it", "Nella mail ho messo 2 mm di spessore e invece sono 1,5 mm. Il resto invariato."),
        ("nl", "Gisteren schreef ik 2 mm wanddikte maar het is 1,5 mm. De rest blijft gelijk."),
        ("nl", "In mijn mail heb ik 2 mm wand gezet en het is 1,5 mm. De rest blijft hetzelfde."),
    ],
)  # fmt: skip
def test_the_wall_is_the_one_put_right(language: str, words: str) -> None:
    (size,) = _reply(words, language)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, Decimal("1.5"), 100)
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "I need one mandrel for 40 mm OD 6063, CLR 100. I put 2 mm wall in the form and it's 1.5 mm.",
        "Tubo 6063 de 40 mm, radio al eje 100. En el formulario puse 2 mm de espesor y son 1,5 mm. Un mandril.",
    ],
)
def test_so_it_is_in_one_mail(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, Decimal("1.5"), 100)


@pytest.mark.parametrize(
    ("text", "od", "wall"),
    [
        ("Ich habe 40 mm Rohr, das ist 1,5 mm dick, 6063, R 100 Mitte. Ein Dorn.", 40, "1.5"),
        ("Ik heb buis van 40 mm, dat is 1,5 mm dik, 6063, straal 100 hart. Een doorn.", 40, "1.5"),
        ("I told you 40 mm OD and it's 1.5 mm wall, 6063, CLR 100. One mandrel.", 40, "1.5"),
        ("I put 2 mm shims in the die and it's 1.5 mm wall tube, 40 mm OD, 6063, CLR 100. One mandrel.", 40, "1.5"),
    ],
)  # fmt: skip
def test_two_lengths_of_one_tube_are_both_kept(text: str, od: float, wall: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm) == (od, Decimal(wall))
