"""Mails that plainly only tell of a size and ask for another; and near misses, in which the size
that is there, quoted or somebody else's is wanted all the same, or may be.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import Size, inch, mm, row


def _asks(name: str, text: str, told: str, *sizes: Size) -> object:
    """``told`` are the figures, as written, of the size that the note names."""
    return row(name, text, told, sizes)


LEFT_OUT = [
    _asks("a-couple-years-ago", "You guys made us a mandrel for 2 x .065 tube, 3 CLR, a couple years ago. Works fine. We now need one for 2.5 x .065, 304, 3.75 CLR. One piece.", "2, .065, 3", inch("2.5", "0.065", "3.75")),
    _asks("going-with", "Last spring you sold me a 1.25 x .083 mandrel on a 4 inch die. Now I'm going with 1.5 x .095, 4130, 4.5 clr. Quote one please.", "1.25, .083, 4 inch", inch("1.5", "0.095", "4.5")),
    _asks("same-one-in", 'You made us a 2" x .065 on 3" in May, now we want the same one in 2-1/4". 2.25 x .065, 304, 3.375 CLR.', '2", .065, 3"', inch("2.25", "0.065", "3.375")),
    _asks("just-one-again", "Hi again, the 1 x .035 mandrel you built for us last fall is still perfect. We'd like a price for 1-1/4 x .035, 304, 2.5 CLR. Just one again.", "1", inch("1.25", "0.035", "2.5")),
    _asks("next-project", "Thanks for the 2 x .065 mandrel you shipped us last month, it is perfect. Next project: 2.25 x .065, 304L, 3.5 CLR, qty 1.", "2, .065", inch("2.25", "0.065", "3.5")),
    _asks("order-from-may", "The order from May was 25 x 2, R 50, all well. This time it is 30 x 2, R 60. Please quote one.", "25, 2, R 50", mm("30", "2", "60")),
    _asks("buddys-with-ours", 'A buddy of mine runs 2 x .120 with your mandrel. I do 1.5 x .120, 4.5" centerline. Price on one mandrel please.', "2", inch("1.5", "0.120", "4.5")),
    _asks("neighbour-uses", "My neighbour uses 1.625 x .095 on 5 CLR. I need 1.75 x .095, mild steel, 5.25 CLR. How much for one?", "1.625, .095, 5", inch("1.75", "0.095", "5.25")),
    _asks("cousin-without", "1.5 x .095 chromoly on a 4.5 CLR die, one mandrel please. My cousin did his in 1.75 x .120 on 6 CLR without one.", "1.75, .120, 6", inch("1.5", "0.095", "4.5")),
    _asks("competitor-bends", "Competitor bends 60.3 x 2.9 on R 120. Ours is 76.1 x 2.9, R 230, S235. Quote 1 mandrel.", "60.3, 2.9, R 120", mm("76.1", "2.9", "230")),
    _asks("po-will-follow", "Thank you for the quotation for 25 x 2, R 50. PO will follow this week. Please also quote 30 x 2, R 60, one piece, S235.", "25, 2, R 50", mm("30", "2", "60")),
    _asks("quoted-already", "You already quoted us 2.5 x .083 on 3.75 CLR. This one is for 3 x .083, 304, 4.5 CLR. One mandrel.", "2.5, .083, 3.75", inch("3", "0.083", "4.5")),
    _asks("not-any-more", "We don't run 1.25 x .049 any more. New part is 1.375 x .049, 304, 2.75 CLR. Price for one mandrel?", "1.25, .049", inch("1.375", "0.049", "2.75")),
    _asks("old-and-unused", "Got an old mandrel for 1.25 x .065 that I don't use any more. Need one for 1.375 x .065, 4 CLR.", "1.25, .065", inch("1.375", "0.065", "4")),
    _asks("owned-of-three-radii", "Same tube 1.5 x .065 304 on 3, 4.5 and 6 CLR. We already have a mandrel for the 3. Please quote the other two.", "3", inch("1.5", "0.065", "4.5"), inch("1.5", "0.065", "6")),
    _asks("made-for-one-radius", "Same machine, 44.45 x 1.65 304. Radii 66, 89 and 133. You made us one for the 66 last year. Need prices for the 89 and the 133.", "66", mm("44.45", "1.65", "89"), mm("44.45", "1.65", "133")),
    _asks("stock-of-another-wall", "We need a ball mandrel for this tube:\n\nOutside diameter: 30 mm\nWall: 1.2 mm\nBending radius: 60 mm\n\nIn stock we have already the same with wall 2 mm, this one should please have the same thread.", "2 mm", mm("30", "1.2", "60")),
    _asks("for-sale", "Mandrels for a bar job.\n\n48.3 x 3.2 - 150 CLR\n60.3 x 3.2 - 180 CLR\nBoth black tube.\n\nAlso have a 42.4 x 3 set here I can sell you back, interested?", "42.4", mm("48.3", "3.2", "150"), mm("60.3", "3.2", "180")),
    _asks("bought-parts", "We bend 42.4 x 2 in 304 on R 85, please quote one mandrel. The old frame has 88.9 x 2 sleeves but those are bought parts.", "88.9, 2", mm("42.4", "2", "85")),
    _asks("runs-in-the-thinner", "Order from March was a mandrel for 40 x 2, 304, 80 mm centreline radius, all well. The customer now switches the tube to 40 x 1.2, everything else stays the same. Please quote one piece for the thinner tube.\n\nWould the 2 mm one run in the 1.2 tube meanwhile?", "40, 2", mm("40", "1.2", "80")),
    _asks("geliefert", "Sie haben uns letztes Jahr einen Dorn für 42,4 x 2, R 85 geliefert. Bitte um Angebot für 48,3 x 2, R 100, 1 Stück.", "42,4, 2, R 85", mm("48.3", "2", "100")),
    _asks("freund-faehrt", "Ein Freund von mir fährt 40 x 1,5, R 80. Ich brauche 45 x 1,5, R 90, Edelstahl. Was kostet ein Dorn?", "40, 1,5, R 80", mm("45", "1.5", "90")),
    _asks("avez-livre", "Vous nous avez livré en mai un mandrin pour tube 42,4 x 2, R 85. Merci de chiffrer un mandrin pour 48,3 x 2, rayon 100.", "42,4, 2, R 85", mm("48.3", "2", "100")),
    _asks("nos-hicieron", "El año pasado nos hicieron un mandril para 40 x 1,5, R 80. Ahora queremos precio para 45 x 1,5, R 90.", "40, 1,5, R 80", mm("45", "1.5", "90")),
    _asks("ci-avete-fornito", "L'anno scorso ci avete fornito un mandrino per 40 x 1,5, R 80. Vorremmo un preventivo per 45 x 1,5, R 90.", "40, 1,5, R 80", mm("45", "1.5", "90")),
    _asks("hebben-geleverd", "Jullie hebben ons vorig jaar een doorn voor 40 x 1,5, R 80 geleverd. Graag prijs voor 45 x 1,5, R 90.", "40, 1,5, R 80", mm("45", "1.5", "90")),
]  # fmt: skip

_FIRST, _SECOND = "1.5 x .065 on 4.5 clr", "1.75 x .095 on 5.25 clr"
_METRIC, _OTHER = "38 x 1,5, R 57", "42,4 x 2, R 85"

NOT_LEFT_OUT = [  # the first size may be wanted: it stays, in doubt or not
    row(name, text.format(A=_FIRST, B=_SECOND), "38.1")
    for name, text in (
        ("it-broke", "You made us a {A} in June. It broke. Need another of those, and now we also want {B}."),
        ("one-again", "You sold us {A}. We need one again. We also need {B}."),
        ("the-first-is-worn", "You made me a mandrel for {A} last spring. I need a mandrel for {B} and the first one is worn."),
        ("quote-both", "My buddy runs {A}. Mine is {B}. Quote both, he's paying for his."),
        ("we-each", "My buddy runs {A}. Mine is {B}. We each need a mandrel."),
        ("need-mandrels", "My brother bends {A} and I bend {B}. Need mandrels."),
        ("for-the-pair", "My neighbor uses {A}, I use {B}. Price for the pair?"),
        ("go-ahead", "Thanks for the quote on {A}. We'd like to go ahead with that one. Please also quote {B}."),
        ("sharpen-the-price", "Thanks for the quote on {A}. Can you sharpen the price? And please quote {B}."),
        ("still-good", "You quoted us {A} in May. Is it still good? Need {B} priced as well."),
        ("owned-but-worn", "I have a mandrel for {A} that is worn out. I need {B} too."),
        ("owned-but-chatters", "I have one for {A} but it chatters, would like a new one. Also {B}."),
        ("same-for-me", "You guys made a mandrel for my dad, {A}, I want the same one, plus {B}."),
        ("like-his", "You made my friend a mandrel for {A}. I want one like his. And a mandrel for {B}."),
        ("too-long", "The mandrel you made us for {A} is too long for our new machine. Need a shorter one. And one for {B}."),
        ("got-stolen", "Your mandrel for {A} got stolen. I need {B} as well."),
        ("made-a-die", "You made us a die for {A}. We need a mandrel for it and for {B}."),
        ("built-the-bender", "You built our bender for {A}. We run {B} as well. Quote two mandrels."),
        ("said-again", "My friend owns {A} tooling and says to ask you. I need {A} and {B}."),
        ("never-arrived", "Order from May was {A}, never arrived. Need that and {B}."),
        ("please-repeat", "Order from May was {A}. Please repeat. New: {B}."),
        ("three-of-the", "You did {A} for us at $240. What would {B} cost, and three of the 1.5?"),
        ("two-more", "You made us two of the {A}. Two more please. One of {B}."),
        ("one-they-made", "Our old supplier made {A}. They closed. You made us {B}. Quote the one they made."),
        ("make-them-ourselves", "The bought parts are {A} today but we want to bend them ourselves, mandrel please. And {B}."),
        ("selling-rails", "I'm selling {A} rails and {B} rails. Need mandrels."),
        ("hoops-for-sale", "We make {A} hoops for sale to dealers, and {B}. Price me a mandrel."),
        ("on-my-bender", "My uncle uses my bender for {A}. I use {B}. Mandrel price?"),
        ("make-another", "I bought a mandrel from you for {A}. Can you make another in bronze? I also need {B}."),
        ("ordering-for-him", "A friend bought a bender. He runs {A}. I'm ordering for him. Also for me {B}."),
        ("not-yet", "I don't run {A} yet but plan to. Quote it with {B}."),
        ("except-for-spares", "We don't use {A} any more except for spares, so one mandrel for that. And {B}."),
        ("send-the-invoice", "Thank you for the quotation for {A}. Please send the invoice, we order. New request: {B}."),
        ("make-it-two", "Thanks for your quote on {A}. Make it two. And what about {B}?"),
        ("in-brackets", "Sizes: {A} (you made us one in 2019), {B}. One each please."),
        ("you-made-this-before", "Quote requested for: {A}, you made this one before. {B}, new."),
        ("we-accept", "Previously you quoted {A} at $300, we accept. Also quote {B}."),
        ("quote-me-the-same", "A friend runs {A}. Quote me the same, and {B}."),
        ("now-i-want-to", "My dad used {A} for years. Now I want to, and {B}."),
        ("asks-for-a-copy", "My neighbor bought {A} from you and asks for a copy. I'd like {B}."),
        ("need-spares", "We have one of your mandrels for {A} and one for {B}. Need spares."),
        ("a-backup", "We run {A} with your mandrel and want a backup. Also need {B}."),
        ("could-use", "I could use a price on {A}. We also need {B}."),
    )
] + [
    row(name, text.format(A=_METRIC, B=_OTHER), "38")
    for name, text in (
        ("haben-sie-schon", "Haben Sie uns schon den Dorn für {A} geliefert? Und wir brauchen noch einen für {B}."),
        ("davon-noch-einen", "Sie haben uns {A} geliefert. Davon brauchen wir noch einen, und einen für {B}."),
        ("un-deuxieme", "Vous nous avez fourni un mandrin pour {A}. Il nous en faut un deuxième, et un pour {B}."),
        ("otro-igual", "Nos hicieron un mandril para {A}. Queremos otro igual y uno para {B}."),
        ("un-altro", "Ci avete fatto un mandrino per {A}. Ne serve un altro, e uno per {B}."),
        ("voor-allebei", "Mijn vriend gebruikt {A} en ik {B}. Voor allebei een doorn graag."),
        ("die-dorne", "Mein Freund biegt mit {A}. Ich biege {B}. Was kosten die Dorne?"),
        ("ist-gebrochen", "Der Dorn für {A}, den Sie uns geliefert haben, ist gebrochen. Bitte Ersatz. Dazu einen für {B}."),
        ("est-casse", "Le mandrin que vous nous avez livré pour {A} est cassé, merci d'en refaire un. Et un pour {B}."),
    )
]  # fmt: skip

OWNED_IS_TOLD = [  # what was dropped as owned is named to the person
    row("have-already", "I have a mandrel for 1.5 x .120 already. What I need is one for 1.75 x .120 DOM, 6 CLR.", "1.5 x .120"),
    row("schon-einen-dorn", "Wir haben bereits einen Dorn für 30 x 2, R 60. Jetzt brauchen wir einen für 35 x 2, R 70, Edelstahl.", "30 x 2, R 60"),
    row("previously", "Previously you quoted 1.5 x .065 on 4.5 clr at $300, that was fine. Now quote 1.75 x .095 on 5.25 clr.", "1.5 x .065 on 4.5"),
]  # fmt: skip
