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

_ASK = "Please quote a mandrel for 1.75 x .095, 5.25 CLR. "

BY_RANK = [  # radii told by the tube's rank
    case("rank-after", "Need mandrels for 1.5 x .065 and 1.75 x .095, the bigger one on 5.25 CLR and the smaller on 4.5 CLR.", _B, _A),
    case("rank-sentence", "Need mandrels for 1.75 x .095 and 1.5 x .065. The larger one is on 5.25 CLR, the smaller one on 4.5.", _A, _B),
    case("rank-behind", "Need mandrels for 1.75 x .095 and 1.5 x .065. 4.5 CLR for the smaller tube, 5.25 CLR for the larger.", _A, _B),
    case("rank-de", "Dorne für 42 x 2 und 30 x 2. Das größere auf R 120, das kleinere auf R 75.", _C, mm("30", "2", "75")),
]  # fmt: skip

DIES = [  # dies that are there, and the one that is used
    case("dies-also", _ASK + "We also have dies for 1.5 on 4.5 CLR and 2 on 6 CLR.", _A),
    case("dies-before", "We have dies for 1.5 on 4.5 and 2 on 6 as well. " + _ASK, _A),
    case("dies-listed", "In house we have 1.5 and 2 dies. " + _ASK, _A),
    case("pick-use", "Mandrel for 1.75 x .095 please. Any of our dies would do: 4, 5.25, 6 CLR; let us use the 5.25.", _A),
    case("pick-will-use", "Mandrel for 1.75 x .095 please. We have dies in 4, 5.25 and 6 CLR, we'll use the 5.25.", _A),
    case("pick-behind", "Mandrel for 1.75 x .095 please. Our dies are 4, 5.25 and 6 CLR, the 5.25 would be used here.", _A),
    case("pick-first", "Mandrel for 1.75 x .095 please. Our dies are 5.25, 6, 8 CLR, the 5.25 would be used here.", _A),
    case("pick-de", "Dorn für 42 x 2 bitte. Radien 90, 120 oder 150 mm sind da, wir nehmen den 120er.", _C),
]  # fmt: skip

ONLY_TOLD = [  # words that only tell of the size beside them
    case("builder", "Another builder here bends 1.5 x .065, 4.5 CLR with your tooling. " + _ASK, _A),
    case("borrowing", _ASK + "We're borrowing a 1.5 x .065 mandrel for the other job.", _A),
    case("rent", _ASK + "We rent a mandrel for 1.5 x .065 when we need it.", _A),
    case("auction", "We picked up a used mandrel for 1.5 x .065 at an auction. " + _ASK, _A),
    case("online", _ASK + "The only one I found online was for 1.5 x .065.", _A),
    case("competition", _ASK + "The competition sells a 1.5 x .065 on 4.5 CLR set, which doesn't fit us.", _A),
    case("eventually", _ASK + "Eventually we'd like one for 1.5 x .065 but the budget isn't there.", _A),
    case("same-thread", _ASK + "Same thread as on the 1.5 x .065 mandrel.", _A),
    case("range", "We normally work with 1/2 in through 3 in OD. " + _ASK, _A),
    case("wrote", "Mandrel for 1.75 x .095, 6 CLR please. PS: I wrote 6 but the radius is 5.25.", _A),
    case("stock", "Bought 10 x 10' lengths of 1.75 x .095. Please quote a mandrel for that, 5.25 CLR.", _A),
    case("whole-inches", "Can you quote me one mandrel, 2 .083 wall on a 6 CLR?", inch("2", "0.083", "6")),
    case("two-ods", "Mandrels: 2 and 1.75 OD, .095 wall, 5.25 CLR. Please quote.", inch("2", "0.095", "5.25"), _A),
    case("two-for", "Please quote one mandrel for 1.75 x .095 on 5.25 CLR and two for 1.5 x .065 on 4.5 CLR.", _A, _B),
    case("same-in", _ASK + "And the same in .065 wall.", _A, inch("1.75", "0.065", "5.25")),
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

COUNTS = [
    ("Need mandrels for 1.75 x .095, 5.25 CLR and for 1.5 x .065, 4.5 CLR. Two of the first, three of the second.", (2, 3)),
    ("Need mandrels for 1.75 x .095, 5.25 CLR and for 1.5 x .065, 4.5 CLR. One of the former and two of the latter.", (1, 2)),
    ("Need mandrels for 1.75 x .095, 5.25 CLR and for 1.5 x .065, 4.5 CLR. We need two of the 1.75 and one of the 1.5.", (2, 1)),
    ("Please quote these mandrels:\n2 pcs - 32 x 2 bent on 96 CLR\n3 pcs - 48.3 x 2 on CLR 121", (2, 3)),
    ("Mandrels:\n1.75 x .095 bent on 5.25 CLR - 2 pcs\n1.5 x .065, 4.5 CLR - 3 pcs", (2, 3)),
]  # fmt: skip
