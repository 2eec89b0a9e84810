"""A mandrel sent back for its money asks for nothing; other mail that names a size or a tool and
wants only an answer. The sentences are made up; no published source.
"""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

_TODAY = date(2026, 11, 25)


def _kind(text: str) -> Kind:
    return understand(text_message(text, _TODAY)).kind


@pytest.mark.parametrize(
    "text",
    [
        "I am sending back the mandrel for the 1-3/8 x .095 tube. Please refund to the same card. "
        "I do not need a replacement.",
        "We are returning the 38 x 1.5 mandrel unused. Please credit our account. We don't need "
        "another one.",
        "Wir senden den Dorn für 38 x 1,5 ungebraucht zurück. Bitte den Betrag erstatten, Ersatz "
        "brauchen wir nicht.",
        "Nous retournons le mandrin 38 x 1,5 non utilisé. Merci de nous rembourser. Nous n'avons "
        "pas besoin d'un autre.",
        "Devolvemos el mandril de 38 x 1,5 sin usar. Por favor reembolsen. No necesitamos otro.",
        "Restituiamo il mandrino per 38 x 1,5. Chiediamo il rimborso. Non ne serve un altro.",
        "We sturen de doorn voor 38 x 1,5 terug. Graag het bedrag terugstorten. Een nieuwe hebben "
        "we niet nodig.",
    ],
)
def test_a_mandrel_sent_back_is_no_request(text: str) -> None:
    assert _kind(text) is Kind.OTHER


@pytest.mark.parametrize(
    "text",
    [
        "We are sending back the 38 x 1.5 mandrel, wrong wall. Please credit it and make us one "
        "for 38 x 2, CLR 76.",
        "I returned a mandrel last year for credit. Now I need a mandrel for 38 x 1.5, CLR 76.",
        "Please quote a mandrel for 38 x 1.5 return bends, CLR 57. What are your credit terms?",
    ],
)
def test_one_in_its_place_is_a_request(text: str) -> None:
    assert _kind(text) is Kind.SIZES


@pytest.mark.parametrize(
    "text",
    [
        "The mandrel you made for us last year (1.5 x .065, 3 inch CLR) squeaks when it pulls out. "
        "Nothing wrong with the bends. Is that lack of lube? No need to quote anything.",
        "Our mandrel for 2 x .083 is chattering a bit. Is it worn, or do we need more lube? I'm "
        "not looking for a quote.",
        "Der Dorn für 38 x 1,5, den ihr uns gemacht habt, quietscht beim Ziehen. Fehlt Schmierung "
        "oder ist das Gelenk verschlissen? Kein Angebot nötig.",
        'What is the difference between a plug and a ball mandrel? My boss told me to "order the '
        'mandrel" and left without telling me anything else.',
        'How do I know which mandrel I need? The customer just wrote "order a mandrel".',
        "Are you folks open between Christmas and New Year? I am about 2-1/2 hours away.",
        "Habt ihr zwischen den Jahren offen?",
        "Êtes-vous ouverts entre Noël et le Nouvel An ?",
        "Zijn jullie open tussen kerst en nieuwjaar?",
    ],
)
def test_an_answer_is_wanted_and_no_tool(text: str) -> None:
    assert _kind(text) is Kind.QUESTION
