"""'And 2 more for ...': further mandrels are of the size behind the words, not of every size."""

from __future__ import annotations

import pytest

from .support import read_text

FIRST = {
    "en": "We need three mandrels for 38 x 1.5 mm tube, radius 76 mm. {} 50 x 2, radius 100.",
    "inch": "Need 3 mandrels for 1.5 x .065, 4.5 CLR. {} 2 x .083, 6 CLR.",
    "de": "Wir brauchen drei Dorne für Rohr 38 x 1,5, Radius 76. {} 50 x 2, Radius 100.",
    "fr": "Il nous faut trois mandrins pour du tube 38 x 1,5, rayon 76. {} 50 x 2, rayon 100.",
    "it": "Ci servono tre anime per tubo 38 x 1,5, raggio 76. {} 50 x 2, raggio 100.",
    "es": "Necesitamos tres mandriles para tubo 38 x 1,5, radio 76. {} 50 x 2, radio 100.",
    "nl": "Graag drie doornen voor buis 38 x 1,5, radius 76. {} 50 x 2, radius 100.",
}

FURTHER: list[tuple[str, str, int]] = [
    ("en", "And one more for", 1),
    ("en", "Plus one additional mandrel for", 1),
    ("en", "Also another two for", 2),
    ("en", "Then another for the bigger tube,", 1),
    ("inch", "And 1 more for", 1),
    ("inch", "Plus 2 more for the", 2),
    ("inch", "And two further ones for", 2),
    ("de", "Und 1 weiteren für", 1),
    ("de", "Dazu noch zwei für", 2),
    ("de", "Außerdem einen weiteren Dorn für Rohr", 1),
    ("fr", "Et 1 autre pour", 1),
    ("fr", "Et encore deux pour du", 2),
    ("it", "E un'altra per tubo", 1),
    ("it", "Poi altre 2 per", 2),
    ("es", "Y 1 más para", 1),
    ("es", "Y otro para tubo de", 1),
    ("nl", "En nog 1 voor", 1),
    ("nl", "Plus nog twee extra voor buis", 2),
]


@pytest.mark.parametrize(("language", "said", "more"), FURTHER)
def test_further_mandrels_are_of_the_size_behind(language: str, said: str, more: int) -> None:
    requests = read_text(FIRST[language].format(said))
    assert [request.quantity for request in requests] == [3, more]


AGAIN = "{} 38 x 1.5, radius 76, and one for 50 x 2, radius 100, E235. {}"


@pytest.mark.parametrize(
    ("first", "said", "counts"),
    [
        ("We need two mandrels for", "And one spare for the 50.", [2, 2]),
        ("We need one mandrel for", "And one additional mandrel for the 50.", [1, 2]),
        ("We need one mandrel for", "Plus 2 more for the 38.", [3, 1]),
    ],
)
def test_more_of_a_size_told_before_are_added(first: str, said: str, counts: list[int]) -> None:
    requests = read_text(AGAIN.format(first, said))
    assert [request.quantity for request in requests] == counts


@pytest.mark.parametrize(
    "text",
    [
        'Need pricing for 3 mandrels. Tube is 1.5" OD x .065 wall, 304, bent to a 4.5" CLR. And 1 '
        'more for 2" OD x .083 wall, 304 too, 6" CLR.',
        "Wir brauchen 3 Dorne. Das Rohr ist 38,1 x 1,65, Radius 114,3. Dazu 1 weiteren für "
        "50,8 x 2,11, Radius 152,4.",
    ],
)
def test_what_the_mandrels_are_for_is_asked_for(text: str) -> None:
    first, second = read_text(text)
    assert (first.quantity, second.quantity) == (3, 1)
    assert not first.doubts
