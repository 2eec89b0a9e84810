"""Cues for radii to the centre line in German, French, Spanish, Italian and Dutch, put together of
their parts: 'raggio di piega in mezzeria', 'rayon de coude à l'axe', 'radius tot hart buis'.
"""

from __future__ import annotations

from itertools import product

_LANGUAGES: tuple[tuple[tuple[str, ...], tuple[str, ...]], ...] = (
    (
        ("radius", "biegeradius", "bogenradius", "krümmungsradius", "halbmesser", "r"),
        ("mitte", "rohrmitte", "mitte rohr", "bis mitte", "bis rohrmitte", "bis zur rohrmitte",
         "bis mitte rohr", "zur rohrmitte", "mitte des rohrs", "auf mitte", "auf rohrmitte",
         "achse", "rohrachse",
         "bis zur rohrachse", "auf der rohrachse", "mittellinie", "neutrale faser",
         "neutrale achse", "auf der neutralen achse", "in der neutralen achse",
         "zur neutralen achse", "in der neutralen faser", "auf der neutralen faser"),
    ),
    (
        ("rayon", "rayon de cintrage", "rayon de courbure", "rayon de coude", "rayon du coude",
         "r"),
        ("axe", "axe tube", "axe du tube", "d'axe", "axial", "à l'axe", "sur axe", "sur l'axe",
         "axe neutre", "à l'axe neutre", "sur l'axe neutre",
         "à l'axe du tube", "central",
         "au centre", "au centre du tube", "au milieu", "au milieu du tube", "pris à l'axe",
         "mesuré à l'axe", "fn", "à la fn", "fibre neutre", "de la fibre neutre",
         "jusqu'à l'axe du tube"),
    ),
    (
        ("radio", "radio de curvatura", "radio de doblez", "radio de doblado", "radio de plegado",
         "r"),
        ("eje", "eje tubo", "eje del tubo", "al eje", "a eje", "en el eje",
         "eje neutro", "al eje neutro", "en el eje neutro", "sobre el eje neutro",
         "sobre el eje", "por el eje", "al eje del tubo",
         "central", "al centro", "a centro", "al centro del tubo", "medido al centro",
         "medido al eje", "línea media", "de línea media", "a línea central", "de línea central",
         "a la línea central", "fibra neutra", "en fibra neutra", "a la fibra neutra",
         "promedio"),
    ),
    (
        ("raggio", "raggio di curvatura", "raggio di piega", "raggio della curva", "r"),
        ("mezzeria", "in mezzeria", "alla mezzeria", "di mezzeria", "mezzeria tubo", "asse",
         "in asse", "all'asse", "sull'asse", "asse tubo", "asse del tubo",
         "in asse al tubo", "all'asse del tubo",
         "asse neutro", "all'asse neutro", "sull'asse neutro", "in asse neutro",
         "mezzeria del tubo",
         "centrale", "al centro", "a centro tubo", "al centro del tubo", "a metà tubo",
         "a metà del tubo", "fibra neutra", "alla fibra neutra", "sulla fibra neutra",
         "misurato in asse", "misurato all'asse", "baricentrico"),
    ),
    (
        ("radius", "straal", "buigradius", "buigstraal", "bochtradius", "bochtstraal", "r"),
        ("as buis", "op de as", "tot de as", "hart", "hart buis", "hart van de buis",
         "op hart buis", "hartlijn buis", "op hart", "op het hart", "tot hart",
         "tot het hart", "tot hart buis", "tot het hart van de buis", "in het hart", "hartlijn",
         "op hartlijn", "op de hartlijn", "tot de hartlijn", "hart op hart", "h o h", "hoh",
         "midden", "midden buis", "op midden", "op het midden", "tot het midden", "neutraal",
         "neutrale lijn", "neutrale as"),
    ),
)  # fmt: skip

RADII_TO_CENTRE = " | ".join(
    f"{radius} {centre}"
    for radii, centres in _LANGUAGES
    for radius, centre in product(radii, centres)
)
OTHER_RADII = """
    krümmungsradius | halbmesser | rayon de coude | rayon du coude | rayon du galet |
    rayon de galet |
    rayon de forme | rayon de la forme | rayon de l'outil | rayon d'enroulement |
    rayon de cambrage | rayon du cintre | radio de doblez | radio de dobladura |
    radio de plegado | radio del codo | radio de la curva | radio de giro | radio de rolado |
    radio de cimbrado | radio de curvar | radio de la horma | radio de la matriz |
    radio del molde | raggio della curva | raggio di curva | raggio di centinatura |
    raggio di calandratura | raggio della matrice | raggio matrice | raggio del rullo |
    radius van de mal | radius van de bocht | straal van de bocht | radius vom bogen |
    radius vom biegewerkzeug | radius der biegeform | radius der biegung
"""
"""Of the bend, or of the tool that it is bent round: to which line is not said."""
