"""Sizes of a list that the words leave out, or ask for alone, by pointing: by place, rank or name,
and without a figure of theirs."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_HOOPS = (
    "Need mandrels for:\nMain hoop: 1.75 x .095 on 5.25 CLR\nRear hoop: 1.5 x .065 on 4.5 CLR\n"
)
_RAILS = "Please quote mandrels:\nSeat rail - 1.75 x .095, 5.25 CLR\nPush handle - 1.5 x .065, 4.5 CLR\n\n"
_RUN = "The job has 1.75 x .095 on 5.25 CLR and 1.5 x .065 on 4.5 CLR. "
_A, _B = inch("1.75", "0.095", "5.25"), inch("1.5", "0.065", "4.5")
_DE = "Dorne gesucht:\nHauptbügel: 42 x 2, R 120\nHeckbügel: 30 x 2, R 75\n"
_FR = "Mandrins :\nArceau : 42 x 2, R 120\nBarre : 30 x 2, R 75\n"
_C = mm("42", "2", "120")

LEFT_OUT = [
    case("hold-name", _HOOPS + "The rear hoop is on hold.", _A),
    case("hold-rear-one", _HOOPS + "The rear one is on hold.", _A),
    case("hold-second", _HOOPS + "The second one is on hold.", _A),
    case("hold-latter", _HOOPS + "The latter is on hold.", _A),
    case("hold-smaller", _HOOPS + "The smaller one can wait.", _A),
    case("hold-and-only", _HOOPS + "The rear hoop is on hold, so just the main hoop for now.", _A),
    case("found-name", _RAILS + "We found a mandrel in the shop for the push handle.", _A),
    case("found-second", _RAILS + "We found a mandrel for the second one.", _A),
    case("made-us-one", _RAILS + "The machine shop already made us one for the push handle.", _A),
    case("have-the-tool", _RAILS + "We already have the push handle mandrel.", _A),
    case("have-it", _RAILS + "The push handle we already have.", _A),
    case("tool-is-here", _RAILS + "The push handle mandrel is already here.", _A),
    case("skip", _RAILS + "Skip the push handle, that one got cancelled.", _A),
    case("no-need", _RAILS + "No need to quote the push handle, we have that one.", _A),
    case("empty", _RAILS + "The push handle we will bend without a mandrel.", _A),
    case("got-one", _RAILS + "The push handle got a mandrel from a friend, so only the seat rail.", _A),
    case("run-have", _RUN + "We have a mandrel for the second already, need one for the first.", _A),
    case("run-hold", _RUN + "The second is on hold, please quote the first.", _A),
    case("hold-de", _DE + "Der Heckbügel ist zurückgestellt.", _C),
    case("hold-second-de", _DE + "Der zweite kann warten.", _C),
    case("have-de", _DE + "Den Heckbügel haben wir schon.", _C),
    case("hold-fr", _FR + "La barre est en attente.", _C),
    case("have-fr", _FR + "Pour la barre, rien. La deuxième peut attendre.", _C),
    case("hold-es", "Mandriles:\nArco: 42 x 2, R 120\nBarra: 30 x 2, R 75\nLa barra está en espera.", _C),
    case("hold-it", "Mandrini:\nArco: 42 x 2, R 120\nBarra: 30 x 2, R 75\nLa barra è in sospeso.", _C),
    case("hold-nl", "Doornen:\nBeugel: 42 x 2, R 120\nStang: 30 x 2, R 75\nDe stang is uitgesteld.", _C),
]  # fmt: skip

ASKED_ALONE = [
    case("first-needs", _HOOPS + "Only the first needs a mandrel.", _A),
    case("name-needs", _HOOPS + "Only the rear hoop needs a mandrel.", _B),
    case("quote-name", _RAILS + "Just quote the push handle for now.", _B),
    case("need-first-of-run", _RUN + "I only need a quote for the first one.", _A),
    case("fraction", "Mandrels:\nHoop: 1-3/4 x .095 on 5.25 CLR\nBrace: 1-1/2 x .065 on 4.5 CLR\nOnly the 1-1/2 please.", _B),
    case("run-only-figure", "The job has 1-3/4 x .095, 5.25 CLR and 1-1/2 x .065, 4.5 CLR. Only the 1-1/2 needs a mandrel.", inch("1.75", "0.095", "5.25", "od wall clr"), _B),
]  # fmt: skip

OTHER = [  # what led such messages astray
    case("heading-have", "We have two tubes to bend and need mandrels:\nSeat rail, 1.75 x .095, 5.25 CLR\nPush handle, 1.5 x .065, 4.5 CLR", _A, _B),
    case("this-job", "There are two sizes on this job: 28 x 1.5 wall, CLR 56 and 42 x 2 with CLR 120. Need mandrels for both.", mm("28", "1.5", "56"), _C),
    case("job-colon", "Job: 28 x 1.5 wall, CLR 56. Need a mandrel.", mm("28", "1.5", "56")),
    case("loop-od", 'Need mandrels:\nFront loop - 1.75" OD, .095 wall with a 5.25 CLR\nRear loop - 1.5" OD, .065 wall on a 4.5 CLR', _A, _B),
    case("barra", "Mandrini:\nArco: 42 x 2, R 120\nBarra: 30 x 2, R 75", _C, mm("30", "2", "75")),
    case("count-behind-radius", "Need mandrels for 1.75 x .095, CLR 5.25 and for 1.5 x .065, CLR 4.5. Two of the first please.", _A, _B),
]  # fmt: skip

BOTH = [
    _HOOPS + "The rear one can wait until May.",
    _HOOPS + "The rear one we have, but it's worn.",
    _HOOPS + "Please quote both. The rear one is on hold.",
    _HOOPS + "The rear hoop die is already here.",
    _HOOPS + "We have a die for the rear hoop.",
    _HOOPS + "The drawing for the second one is on hold.",
    _HOOPS + "The order is on hold.",
    _RUN + "Mandrels for both, the second can wait too.",
    _DE + "Die Biegeform für den Heckbügel haben wir schon.",
]
"""None of these leaves one out."""
