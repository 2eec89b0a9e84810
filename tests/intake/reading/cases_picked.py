"""Lines of a list that the words pick out: those are read, and where it isn't plain all doubted."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import Size, case, mm

_LIST = "1) 20 x 1.5 mm, R 40\n2) 25 x 1.5 mm, R 50\n3) 30 x 2 mm, R 60\n4) 35 x 2 mm, R 70\n5) 40 x 2 mm, R 80\n\n"
_PLAIN = "- 20 x 1.5 mm, R 40\n- 25 x 1.5 mm, R 50\n- 30 x 2 mm, R 60\n\n"
_LETTERS = "a) 20 x 1.5 mm, R 40\nb) 25 x 1.5 mm, R 50\nc) 30 x 2 mm, R 60\n\n"
_ROWS = (
    ("20", "1.5", "40"),
    ("25", "1.5", "50"),
    ("30", "2", "60"),
    ("35", "2", "70"),
    ("40", "2", "80"),
)


def _of(*numbers: int) -> list[Size]:
    return [mm(*_ROWS[number - 1]) for number in numbers]


def _doubted(count: int) -> list[Size]:
    return [mm(*row, "od wall clr") for row in _ROWS[:count]]


SEVERAL_PLACES = [  # several places in one breath
    case("we-own-two", _LIST + "2 and 3 we own. Quotes please.", *_of(1, 4, 5)),
    case("we-own-dies-of-two", _LIST + "The dies for 2 and 3 we own. Quotes please.", *_of(1, 2, 3, 4, 5)),
    case("only-two-and-four", _LIST + "only 2 and 4 please", *_of(2, 4)),
    case("just-lines", _LIST + "Just lines 1, 3 and 5.", *_of(1, 3, 5)),
    case("lines-to", _LIST + "We need only lines 2 to 4.", *_of(2, 3, 4)),
    case("lines-dash", _LIST + "Only items 3-5, thanks.", *_of(3, 4, 5)),
    case("lines-tight", _LIST + "only lines 1,3,5 please", *_of(1, 3, 5)),
    case("nur-pos", _LIST + "Bitte nur Pos. 2 und 3.", *_of(2, 3)),
    case("reperes", _LIST + "Ne tenez compte que des repères 2 et 3.", *_of(2, 3)),
    case("alleen-eerste-derde", _PLAIN + "alleen de eerste en de derde graag", *_of(1, 3)),
    case("solo-la-primera", _PLAIN + "Solo la primera y la tercera, por favor.", *_of(1, 3)),
    case("prezzo-per", _LETTERS + "Mi mandate il prezzo per a) e b)?", *_of(1, 2)),
    case("quote-for-line", _LIST + "Please quote for line 3, two mandrels.", *_of(3)),
    case("devis-pour", _LIST + "Merci de faire un devis pour les repères 1 et 4.", *_of(1, 4)),
    case("angebot-fuer", _LIST + "Wir bitten um ein Angebot für Pos. 2 und 5.", *_of(2, 5)),
    case("los-otros-dos", _PLAIN + "El segundo ya lo tenemos, precio de los otros dos por favor.", *_of(1, 3)),
    case("line-for-information", _LIST + "Line 2 is for information, that mandrel we have. Please quote the tools.", *_of(1, 3, 4, 5)),
    case("item-we-have", _LIST + "Mandrels please. Item 5 we already have.", *_of(1, 2, 3, 4)),
    case("pos-zur-information", _LIST + "Dorne bitte. Pos. 4 ist nur zur Information.", *_of(1, 2, 3, 5)),
    case("ligne-pour-information", _LIST + "Mandrins svp. La ligne 1 est donnée pour information.", *_of(2, 3, 4, 5)),
    case("voce-informativa", _LIST + "Mandrini per favore. La voce 3 è solo a titolo informativo.", *_of(1, 2, 4, 5)),
    case("die-for-item-we-have", _LIST + "Mandrels please. Item 2 we have a die for.", *_of(1, 2, 3, 4, 5)),
    case("tube-for-item-we-have", _LIST + "For item 2 the tube we have. Mandrels please.", *_of(1, 2, 3, 4, 5)),
    case("boss-but-both", _LIST + "My boss says we don't need the second but I want all quoted.", *_of(1, 2, 3, 4, 5)),
    case("the-middle-one", _PLAIN + "I need the middle one.", *_of(2)),
    case("the-second-on-the-list", _PLAIN + "We want the second one on the list.", *_of(2)),
    case("line-rolled-elsewhere", _LIST + "Line 4 is rolled by someone else. Please quote for line 3.", *_of(3)),
    case("owned-and-elsewhere", _LIST + "We have tooling for 1 and 2, line 4 goes to another supplier. Could you quote for lines 3 and 5?", *_of(3, 5)),
    case("pos-ist-vorhanden", _LIST + "Pos. 1 ist bereits vorhanden. Bitte Angebot für Pos. 2 und 3.", *_of(2, 3)),
    case("ligne-annulee", _LIST + "Merci de faire un devis pour la ligne 2, la ligne 5 est annulée.", *_of(2)),
    case("only-the-first-two", _LIST + "We only need prices for the first two, one mandrel each.", *_of(1, 2)),
    case("just-the-last-two", _PLAIN + "Just the last two please.", *_of(2, 3)),
    case("nur-die-ersten-beiden", _PLAIN + "Bitte nur die ersten beiden anbieten.", *_of(1, 2)),
    case("les-deux-premiers", _PLAIN + "Seulement les deux premiers svp.", *_of(1, 2)),
    case("solo-los-dos-primeros", _PLAIN + "Solo los dos primeros, por favor.", *_of(1, 2)),
    case("solo-i-primi-due", _PLAIN + "Solo i primi due, grazie.", *_of(1, 2)),
    case("alleen-de-eerste-twee", _PLAIN + "Alleen de eerste twee graag.", *_of(1, 2)),
    case("top-two", _PLAIN + "Quote the top two. Bottom one we bend without a mandrel.", *_of(1, 2)),
    case("the-2nd-one", _PLAIN + "I only need a mandrel for the 2nd one.", *_of(2)),
    case("middle-will-see-use", _PLAIN + "Only the middle one will see any use. Please quote one (1) mandrel.", *_of(2)),
    case("third-not-released", _PLAIN + "Prices please, the third is not released by the customer.", *_of(1, 2)),
    case("last-for-later", _PLAIN + "Quotes please. The last line is for later.", *_of(1, 2)),
    case("nicht-freigegeben", _PLAIN + "Die dritte Position ist noch nicht freigegeben.", *_of(1, 2)),
    case("pas-encore-validee", _LETTERS + "La dernière n'est pas encore validée par le client.", *_of(1, 2)),
    case("hold-the-last", _PLAIN + "Hold the last one.", *_of(1, 2)),
    case("all-but-the-second", _PLAIN + "All but the second, please.", *_of(1, 3)),
    case("except-the-first-two", _LIST + "Everything except the first two.", *_of(3, 4, 5)),
    case("only-line-needs", _LIST + "Only line 3 needs a mandrel, the rest is rolled.", *_of(3)),
]  # fmt: skip

NO_PLACES = [  # near misses: every line doubted, or all taken
    case("and-the-biggest", _PLAIN + "Only line 1 and the thin one.", *_doubted(3)),
    case("another-line-has-a-seam", _LIST + "Please quote for line 3. Line 4 has a seam.", *_doubted(5)),
    case("another-line-is-black", _LIST + "Please quote for line 3. Line 4 is ok in black steel.", *_doubted(5)),
    case("another-line-wanted-too", _LIST + "Please quote for line 3. My colleague would like line 4.", *_doubted(5)),
    case("two-of-what", _LIST + "only 2 please", *_doubted(5)),
    case("line-and-figure", _PLAIN + "Only line 1, 2 if cheap.", *_doubted(3)),
    case("middle-of-four", _LIST.replace("5) 40 x 2 mm, R 80\n", "") + "I need the middle one.", *_doubted(4)),
    case("one-one-each", _PLAIN + "Please quote one (1) mandrel each.", *_of(1, 2, 3)),
    case("quote-it-anyway", _PLAIN + "Line 3 is not approved yet but please quote it anyway.", *_of(1, 2, 3)),
    case("not-approved-for", _PLAIN + "The third is not approved for production yet, we need the mandrel for the trial.", *_of(1, 2, 3)),
    case("for-later-delivery", _PLAIN + "The last is for later delivery. Please quote all.", *_of(1, 2, 3)),
    case("pending-your-price", _PLAIN + "Item 3 is pending approval of your price. Please quote.", *_of(1, 2, 3)),
    case("first-two-urgent", _PLAIN + "The first two are urgent.", *_of(1, 2, 3)),
    case("first-two-stainless", _PLAIN + "Only the first two are in stainless. Please quote mandrels.", *_of(1, 2, 3)),
    case("primi-due-inox", _PLAIN + "Solo i primi due sono in inox.", *_of(1, 2, 3)),
    case("last-two-come-in", _PLAIN + "The last two only come in 6 m lengths.", *_of(1, 2, 3)),
    case("all-but-the-last-304", _PLAIN + "All but the last are 304.", *_of(1, 2, 3)),
    case("first-two-pieces", _PLAIN + "Price for the first two pieces of each please.", *_doubted(3)),
    case("first-two-by-friday", _PLAIN + "We need only the first two by Friday, the third can follow.", *_doubted(3)),
    case("only-own", _PLAIN + "We only own the first one.", *_doubted(3)),
    case("only-a-seam", _PLAIN + "Only line 2 has a seam.", *_doubted(3)),
    case("only-stainless", _PLAIN + "Only items 1 and 2 are stainless.", *_doubted(3)),
    case("just-urgent", _PLAIN + "Just the first one is urgent.", *_doubted(3)),
    case("nur-verzinkt", _PLAIN + "Nur Pos. 2 ist verzinkt.", *_doubted(3)),
    case("seule-soudee", _PLAIN + "Seulement la ligne 2 est soudée.", *_doubted(3)),
    case("needs-balls", _PLAIN + "It is only the first one that needs balls.", *_doubted(3)),
    case("need-first", _PLAIN + "Line 2 is the one we need first, the others can follow.", *_of(1, 2, 3)),
    case("each-with-balls", _PLAIN + "Offer for item 1 with brass balls, item 2 with steel balls.", *_doubted(3)),
    case("quote-each", _PLAIN + "Please quote for each line.", *_of(1, 2, 3)),
    case("first-by-date", _PLAIN + "I need the first one by Friday.", *_doubted(3)),
    case("need-two-mandrels", _PLAIN + "Need 2 mandrels for all of them.", *_of(1, 2, 3)),
    case("which-first", _PLAIN + "Which do you want first?", *_of(1, 2, 3)),
]  # fmt: skip

_MARKED = (
    "OD mm | wall mm | CLR mm | quote\n20 | 1.5 | 40 | {}\n25 | 1.5 | 50 | {}\n30 | 2 | 60 | {}\n\n"
)
_NEED = _MARKED.format("have", "need", "have")
_YES = _MARKED.format("Y", "N", "Y")
_CROSS = _MARKED.format("x", "", "x")

MARKED_LINES = [  # a cell of the line is the mark
    case("marked-y", _YES + "We need mandrels for the rows marked Y only.", *_of(1, 3)),
    case("status-need", _NEED.upper() + "The only row to quote is the one with status NEED.", *_of(2)),
    case("marked-need", _NEED + 'So it is only the line marked "need" please.', *_of(2)),
    case("zeilen-mit-x", _CROSS + "Bitte nur die Zeilen mit x anbieten.", *_of(1, 3)),
    case("lignes-avec", _CROSS + "Seulement les lignes avec x, merci.", *_of(1, 3)),
    case("regels-met", _CROSS + "Graag alleen de regels met een x.", *_of(1, 3)),
    case("filas-con", _CROSS + "Solo las filas marcadas con x.", *_of(1, 3)),
]  # fmt: skip

NO_MARK = [
    case("first-one-then-the-other", _PLAIN + "First quote line 1, then line 2.", *_doubted(3)),
    case("another-line-named", _PLAIN + "Price for line 3? Line 1 is the urgent one.", *_doubted(3)),
    case("erst-dann", _PLAIN + "Bitte Angebot für Pos. 1, danach für Pos. 3.", *_doubted(3)),
    case("a-mark-nobody-bears", _YES + "Only the rows marked T please.", *_doubted(3)),
    case("marked-are-owned", _YES + "We have the rows marked Y.", *_doubted(3)),
    case("in-red", _YES + "Only the rows marked red please.", *_doubted(3)),
]  # fmt: skip

_PARTS = (
    "main hoop   20 x 1.5 mm, R 40\nlower tube  25 x 1.5 mm, R 50\nlink pipe   30 x 2 mm, R 60\n\n"
)

NAMED_LINES = [  # a line by what it is called
    case("mandrel-for-the", _PARTS + "So what I need is a mandrel for the main hoop.", *_of(1)),
    case("short-of", _PARTS + "So it's just the link pipe we're short of.", *_of(3)),
    case("tube-only", _PARTS + "lower tube only.", *_of(2)),
    case("only-the", _PARTS + "Price for only the main hoop please.", *_of(1)),
    case("nur-den", "Bügel  20 x 1,5 mm, R 40\nHolm  25 x 1,5 mm, R 50\n\nBitte nur den Holm.", *_of(2)),
    case("seulement-le", "arceau  20 x 1,5 mm, R 40\nbarre  25 x 1,5 mm, R 50\n\nSeulement la barre, merci.", *_of(2)),
    case("biggest", _PLAIN + "We want the biggest one.", *_of(3)),
]  # fmt: skip

NO_NAME = [
    case("two-bear-it", "front hoop  20 x 1.5 mm, R 40\nrear hoop  25 x 1.5 mm, R 50\n\nI need a mandrel for the hoop.", *_of(1, 2)),
    case("nobody-bears-it", _PARTS + "I need a mandrel for the job.", *_of(1, 2, 3)),
    case("also-the", _PARTS + "Also need a mandrel for the main hoop.", *_of(1, 2, 3)),
]  # fmt: skip

_SIGN = "20 x 1.5 mm, R 40 {}\n25 x 1.5 mm, R 50 {}\n30 x 2 mm, R 60 {}\n\n"
_STARS = _SIGN.format("*", "", "*")
_STAR = "(*) 20 x 1.5 mm, R 40\n25 x 1.5 mm, R 50\n30 x 2 mm, R 60\n\n"
_TICKS = "[x] 20 x 1.5 mm, R 40\n[ ] 25 x 1.5 mm, R 50\n[x] 30 x 2 mm, R 60\n\n"

BY_SIGN = [  # lines that bear a star, an arrow, a tick
    case("star-needs-a-mandrel", _STARS + "Only the lines with a star need a mandrel, the rest bend fine.", *_of(1, 3)),
    case("starred-ones", _STARS + "One mandrel each for the starred ones.", *_of(1, 3)),
    case("asterisk", _STARS + "Only the lines with an asterisk.", *_of(1, 3)),
    case("quote-the-starred", _STAR + "Please quote the starred line only.", *_of(1)),
    case("die-mit-stern", _STARS + "Bitte nur die mit Stern anbieten.", *_of(1, 3)),
    case("celles-avec-etoile", _STARS + "Chiffrer uniquement celles avec une étoile.", *_of(1, 3)),
    case("con-asterisco", _STARS + "Solo las filas con asterisco, por favor.", *_of(1, 3)),
    case("met-een-sterretje", _STARS + "Alleen de regels met een sterretje graag.", *_of(1, 3)),
    case("arrow", _SIGN.format("", "->", "") + "We need a mandrel for the one with the arrow.", *_of(2)),
    case("ticked", _TICKS + "Please quote the ticked ones.", *_of(1, 3)),
    case("legend-needed", _STARS + "* = mandrel needed", *_of(1, 3)),
    case("legend-in-brackets", _STAR + "(*) quote this one please", *_of(1)),
    case("legend-have", _STAR + "(*) already have this one", *_of(2, 3)),
    case("starred-is-here", _STAR + "The starred one is already here, need the other two.", *_of(2, 3)),
    case("stars-not-needed", _STARS + "We don't need the ones with a star.", *_of(2)),
]  # fmt: skip

NO_SIGN = [  # words alike, and no line is picked
    case("star-urgent", _STAR + "Lines with a star are urgent, the others can ship in March. Quote all.", *_of(1, 2, 3)),
    case("legend-stainless", _STAR + "* 304 stainless.", *_of(1, 2, 3)),
    case("legend-urgent", _STAR + "(*) urgent", *_of(1, 2, 3)),
    case("star-has-a-seam", _STAR + "The one with the star has a seam. Mandrels please.", *_of(1, 2, 3)),
    case("star-needs-balls", _STAR + "The line with the star needs two balls. Quote mandrels.", *_of(1, 2, 3)),
    case("star-two-others-one", _STAR + "(*) needs 2 mandrels, others one each.", *_of(1, 2, 3)),
    case("if-you-have-one", _STAR + "If you have a mandrel for the one with the star, tell me. Need prices.", *_of(1, 2, 3)),
    case("legend-in-6-m", _STAR + "(*) only available in 6 m. Mandrels please.", *_of(1, 2, 3)),
    case("price-last-time", _STAR + "(*) price was 200 last time.", *_of(1, 2, 3)),
    case("all-bear-it", _SIGN.format("*", "*", "*") + "Only the lines with a star.", *_doubted(3)),
    case("one-arrow-in-the-drawing", _PLAIN + "We see only one arrow to the contour.", *_of(1, 2, 3)),
]  # fmt: skip

IN_WORDS_TOO = [
    case("lines-two-and-three", _PLAIN + "The first line is already ordered. Please quote lines two and three.", *_of(2, 3)),
    case("items-one-two-four", _LIST + "Quote items one, two and four.", *_of(1, 2, 4)),
    case("position-drei", _PLAIN + "Bitte nur Position drei anbieten.", *_of(3)),
    case("smallest-of-these", _PLAIN + "I'm only after a mandrel for the smallest of these.", *_of(1)),
]  # fmt: skip

UNHEARD = [  # some are picked, and not understood which: each is doubted
    case("mandrels-for-the-others", _PLAIN + "Mandrels for the others please.", *_doubted(3)),
    case("the-other-two", _PLAIN + "What we talked about is off, so just the other two please.", *_doubted(3)),
    case("is-being-redesigned", _PLAIN + "The second one is being redesigned. Prices please.", *_doubted(3)),
    case("crossed-out", _PLAIN + "The second line is crossed out on purpose. Quote please.", *_doubted(3)),
    case("die-mittlere-nicht", _PLAIN + "Die mittlere brauchen wir nicht, die anderen zwei bitte anbieten.", *_doubted(3)),
    case("a-maybe", _LIST + "4 is a maybe. Prices please.", *_doubted(5)),
    case("plus-d-actualite", _PLAIN + "Le dernier n'est plus d'actualité, merci de chiffrer les deux autres.", *_doubted(3)),
    case("andere-twee", _PLAIN + "De laatste hoeft niet, graag prijs voor de andere twee.", *_doubted(3)),
]  # fmt: skip

NOT_SOME_ONLY = [  # words alike, and all are wanted
    case("others-can-follow", _PLAIN + "Mandrels please. The first one is urgent, the others can follow.", *_of(1, 2, 3)),
    case("others-one-ball", _PLAIN + "Need mandrels with 2 balls for the first and 1 ball for the others.", *_of(1, 2, 3)),
    case("rest-mild-steel", _PLAIN + "The first is 304, the rest mild steel. Mandrels please.", *_of(1, 2, 3)),
    case("others-in-may", _PLAIN + "We need the first next week and the others in May.", *_of(1, 2, 3)),
    case("has-a-wiper", _PLAIN + "The first line already has a wiper. Mandrels please.", *_of(1, 2, 3)),
    case("was-redesigned", _PLAIN + "The second was redesigned last week, this is the new size. Prices please.", *_of(1, 2, 3)),
    case("dies-for-two", _PLAIN + "We already have the dies for the first two. Mandrels please.", *_of(1, 2, 3)),
    case("done-in-316", _PLAIN + "The third is done in 316, the others 304. Need prices.", *_of(1, 2, 3)),
    case("make-the-rest", _PLAIN + "Please quote mandrels, we make the rest ourselves.", *_of(1, 2, 3)),
]  # fmt: skip
