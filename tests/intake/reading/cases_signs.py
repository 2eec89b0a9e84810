"""Signs and numbers that mean one thing here and another there: dashes, commas, R, D, gauges."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

SIGNS = [
    # ISO 7-1 writes a pipe thread R 1/2; with an inch mark it is a radius.
    case("r-fraction-marked", 'R1/2" on 1/4 x .049', inch("0.25", "0.049", "0.5")),
    case("r-fraction-sign", '5/16 x .035, R⅝"', inch("0.3125", "0.035", "0.625")),
    case("r-mixed-sixteenths", 'R2-13/16", 1⅞ x .120 wall', inch("1.875", "0.12", "2.8125")),
    case("r-half-inch-word", "R 3/4 inch, tube 3/8 x .035", inch("0.375", "0.035", "0.75")),
    case("r-thread", "1.5 x .065 wall, 4.5 CLR. Port is R 3/4 male.", inch("1.5", "0.065", "4.5")),
    case("g-thread", "tube 38 x 1.5 mm, R 57 mm, fitting G 3/4", mm("38", "1.5", "57")),
    # A dash before a fraction is a dash; signed twice it is a tolerance.
    case("dash-half-inch", "1/4 inch OD, 18ga wall - 1/2 in centerline radius", inch("0.25", "0.049", "0.5")),
    case("tolerance-signed", "38 +0.1/-0.2 x 1.5 mm, R 57 mm", mm("38", "1.5", "57")),
    case("tolerance-zero", "38 +0.1/0 mm OD x 1.5 mm wall, R 57 mm", mm("38", "1.5", "57")),
    case("t-behind-slash", "OD 60,3 / t 2,9 / Rm 150 mm", mm("60.3", "2.9", "150")),
    case("rc", "Tube Ø 21.3 mm ép. 2.6, Rc 45", mm("21.3", "2.6", "45")),
    case("de-short-words", "Rohr-Ø 33,7 Wandst. 2,6 Biegerad. 76", mm("33.7", "2.6", "76")),
    case("ninety-s", "for 2 in exhaust .065 wall, 3in rad 90s", inch("2", "0.065", "3")),
    # A comma joins values of one kind only.
    case("whole-od-then-gauge", "4.5 CLR, 3, 11 ga", inch("3", "0.12", "4.5")),
    case("whole-od-then-wall", "R4, 2, .065 wall, 304", inch("2", "0.065", "4")),
    case("whole-od-no-gauge", "4, 12 ga, 12 inch CLR", inch("4", "0.109", "12")),
    case("gauge-choice", "1.5 OD, 16 ga on a 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("gauge-dash-radius", "4 OD, 10 ga - 14 C.L.R. 304", inch("4", "0.134", "14")),
    case("multiple-first", "3D bend, 7/8 inch, 14 ga", inch("0.875", "0.083", "2.625")),
    case("multiple-last", "1-5/8 in, .065, 2D", inch("1.625", "0.065", "3.25")),
    # The head of a column is surer than the look of a number: 304, 316 and 321 are grades, too.
    case("grade-like-radius", "CLR (mm)\tOD (mm)\tWall (mm)\n304\t88.9\t2.6", mm("88.9", "2.6", "304")),
    case("grade-like-radius-bars", "| OD | Wall | CLR |\n| 76.1 | 2.9 | 316 |", mm("76.1", "2.9", "316")),
    case("grade-beside-radius", "OD\tWall\tCLR\tMaterial\n38.1\t1.5\t76\t316", mm("38.1", "1.5", "76")),
]  # fmt: skip
