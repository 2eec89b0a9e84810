"""What a careful sales engineer would ask back, and which reading he would write down meanwhile.

``test_doubts.py`` holds the cases where only the doubt is certain, not which reading comes first.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

DOUBTS = [
    case("limit-no-tighter", "1.75 x .095 tube, radius no tighter than 6 in", inch("1.75", "0.095", "6", "clr")),
    case("limit-at-least", "38 x 1.5 mm, radius at least 150 mm", mm("38", "1.5", "150", "clr")),
    case("limit-max", "1.5 x .065, CLR max 4.5 in", inch("1.5", "0.065", "4.5", "clr")),
    case("limit-no-more-than", "1.5 x .065 tube, clr of no more than 4.5 inches", inch("1.5", "0.065", "4.5", "clr")),
    case("limit-de", "Rohr 38 x 1,5 mm, Biegeradius mindestens 76 mm", mm("38", "1.5", "76", "clr")),
    case("limit-fr", "tube 38 x 1,5 mm, rayon 76 mm minimum", mm("38", "1.5", "76", "clr")),
    case("hedge-about", "1.5 x .065 wall, about a 4 inch radius", inch("1.5", "0.065", "4", "clr")),
    case("hedge-i-think", "1-1/2 OD, wall .083 I think, 6 clr", inch("1.5", "0.083", "6", "wall")),
    case("hedge-probably", "2 OD, probably .095 wall, 6 clr", inch("2", "0.095", "6", "wall")),
    case("hedge-roughly", "1.75 x .095, roughly 5.25 clr", inch("1.75", "0.095", "5.25", "clr")),
    case("hedge-question-mark", "1.75 OD, .095 (?) wall, 5.25 clr", inch("1.75", "0.095", "5.25", "wall")),
    case("hedge-tilde", "38 x 1.5 mm tube, CLR ~57 mm", mm("38", "1.5", "57", "clr")),
    case("hedge-not-sure", "Tube is 1.5 OD, not sure but I believe .120 wall, 4.5 clr", inch("1.5", "0.12", "4.5", "wall")),
    case("hedge-de", "Rohr 38 x 1,5 mm, Radius ca. 57 mm", mm("38", "1.5", "57", "clr")),
    case("hedge-fr", "tube 38 x 1,5 mm, rayon environ 57 mm", mm("38", "1.5", "57", "clr")),
    case("lost-decimal-wall", "1.5 OD x .95 wall, 6 clr", inch("1.5", "0.095", "6", "wall")),
    case("lost-decimal-od", "OD 175, wall .095, 5.25 clr", inch("1.75", "0.095", "5.25", "od")),
    case("slipped-decimal-wall", "1.75 x .0095 wall, 5.25 clr", inch("1.75", "0.095", "5.25", "wall")),
    case("lost-comma", "Rohr 25 x 20, R 50, 2 Stück Dorn", mm("25", "2", "50", "wall shape")),
    case("15/8", "15/8 x .083, 5 clr", inch("1.625", "0.083", "5", "od")),
    case("13/4", "13/4 od .095 wall 5.25 clr", inch("1.75", "0.095", "5.25", "od")),
    case("11/2", '11/2" OD x .120, 6" clr', inch("1.5", "0.12", "6", "od")),
    case("51/4-clr", "1-3/4 x .095 on a 51/4 clr", inch("1.75", "0.095", "5.25", "clr")),
    case("inches-marked-mm", "pipe OD 1.625mm, wall 0.083mm, CLR 4.875mm", inch("1.625", "0.083", "4.875", "od wall clr")),
    case("whole-inches-marked-mm", "OD is 3.0 mm and wall .065 mm, CLR 4.5 mm", inch("3", "0.065", "4.5", "od wall clr")),
    case("more-inches-marked-mm", "OD 4 mm, wall .120 mm, CLR 12 mm", inch("4", "0.120", "12", "od wall clr")),
    case("capillary", "capillary tube 3 mm x 0.2 mm, R 12 mm", mm("3", "0.2", "12")),
    case("bend-diameter", "2 x .065 tube bent to a 12 inch diameter", inch("2", "0.065", "6", "clr")),
    case("bend-diameter-label", "OD 2 in, wall .065, bend diameter 16 in", inch("2", "0.065", "8", "clr")),
    case("circle", '1-1/2 x .065 tube bent into a 24" circle', inch("1.5", "0.065", "12", "clr")),
    case("supposed-outside", "50 x 2 mm, R 130 mm, I suppose outside radius", mm("50", "2", "105", "clr")),
    case("radius-too-small-for-mm", "38 x 1.5 mm tube, radius 3", mm("38", "1.5", "76.2", "clr")),
    case("one-d-said-twice", "3 x .065 304, 1D bend, the die is 3 in centerline", inch("3", "0.065", "3")),
    case("one-d-in-brackets", "76.2 x 1 mm titanium, 76.2 mm CLR (1D)", mm("76.2", "1", "76.2")),
    case("as-tight-to-the-centre", "3 x .065 304, 3 in centerline", inch("3", "0.065", "3")),
    case("as-tight-by-its-clr", "2.5 x .049, 2.5 CLR: yes or no?", inch("2.5", "0.049", "2.5")),
    case("as-tight-as-a-radius", "2.5 x .049, radius 2.5", inch("2.5", "0.049", "2.5", "clr")),
    case("tighter-than-the-tube", "2.5 x .049, 2 CLR", inch("2.5", "0.049", "2", "clr")),
    case("times-d-of-nominal", "Rohr DN 32 (42,4 x 2,6 mm), Biegeradius 3 x D", mm("42.4", "2.6", "127.2", "clr")),
    case("id-does-not-fit", "38.1 OD, 35.0 ID, 1.5 wall mm, R 95.25", mm("38.1", "1.5", "95.25", "wall")),
]  # fmt: skip
