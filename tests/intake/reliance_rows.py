"""Replies that rely on the mail they quote, and near misses that must take nothing from it.

Name, subject, body, and what is asked for: OD, wall, CLR [mm], material, quantity; "-" where it
must stay open. Invented, in the styles of several mail programs.
"""

from __future__ import annotations

IN = 25.4
Row = tuple[str, str, str, list[tuple[object, ...]]]

ANSWERS: list[Row] = [
    (
        "one answer a question, no blank lines",
        "Re: your enquiry",
        "> Tube diameter?\n2\n> Wall thickness?\n11 ga\n> Bend radius?\n6\" on centerline\n"
        "> Which material?\n304\n> How many?\n2 please\n\nRory",
        [(2 * IN, 0.12 * IN, 6 * IN, "stainless_steel", 2)],
    ),
    (
        "answers between numbered questions of a mail that names the tube",
        "Re: mandrel for 42.4",
        "Hi, answers in your text.\n\nOn Mon, 2 Mar 2026 at 09:10, Mandrel Desk "
        "<desk@example.com> wrote:\n> Hello Ida,\n> about the mandrel for your 42.4 mm tube:\n"
        "> 1) what is the wall thickness?\n\n2.6 mm\n\n> 2) what radius, to the centre line?\n\n"
        "It is 127.\n\n> 3) steel or stainless?\n\nplain steel, E235\n\n> Regards\n> Desk\n",
        [(42.4, 2.6, 127, "carbon_steel", "-")],
    ),
    (
        "German, quoted labels",
        "AW: Ihre Anfrage Biegedorn",
        "Am 04.03.2026 um 08:12 schrieb Dornwerk <dorn@example.com>:\n> Guten Tag,\n> uns fehlen "
        "noch:\n> Wandstärke:\n1,5 mm\n> Biegeradius:\n76 mm\n> Werkstoff:\n1.4301\n"
        "> Stückzahl:\n2\n> Mit freundlichen Grüßen\n>\n>> Hallo, ich suche einen Dorn für Rohr "
        "38 mm.\n>> Gruß, Jens\n",
        [(38, 1.5, 76, "stainless_steel", 2)],
    ),
    (
        "French",
        "RE: demande de prix",
        "Bonjour, mes réponses :\n\n> Quel est le diamètre extérieur ?\n33,7\n> Quelle épaisseur "
        "?\n2 mm\n> Rayon de cintrage à l'axe ?\n100\n> Combien de mandrins ?\n1\n\nLucie",
        [(33.7, 2, 100, "-", 1)],
    ),
    (
        "a quoted offer put right in one line",
        "Re: Quote 88",
        "On Oct 1, 2026 Pat wrote:\n> 1 mandrel, tube OD 1.500\"\n> wall .065\"\n\nno, .083\n\n"
        "> CLR 4.500\"\n> material 4130\n\nAll else is right. Please requote.\nMo",
        [(1.5 * IN, 0.083 * IN, 4.5 * IN, "alloy_steel", 1)],
    ),
    (
        "Dutch, pipes as quote marks",
        "Re: buigdoorn",
        "Hallo,\n\n| Wat is de wanddikte?\n2 mm\n| En de straal op de hartlijn?\n90 mm\n\nBram\n\n"
        "| > Wij zoeken een doorn voor buis 30 mm, RVS 304.\n",
        [(30, 2, 90, "stainless_steel", "-")],
    ),
    (
        "a whole size below a question is no answer to its one word",
        "Re: your mail",
        "> What radius do you want?\n\nMandrel for 1.75 x .095 on 5.25 CLR please, one.\n",
        [(1.75 * IN, 0.095 * IN, 5.25 * IN, "-", 1)],
    ),
]  # fmt: skip

GAPS: list[Row] = [
    (
        "our question names the tube",
        "Re: mandrel",
        "Wall is .049 and we bend it on a 3 inch CLR. One please.\n\nTed\n\nOn Tue, Mar 3, 2026 at "
        "10:12 AM Desk <desk@example.com> wrote:\n\n> Hi Ted, for your 1.25 OD 4130 tube we need "
        "wall and radius.\n",
        [(1.25 * IN, 0.049 * IN, 3 * IN, "alloy_steel", 1)],
    ),
    (
        "his own first mail, two levels down",
        "AW: AW: Dorn",
        "Guten Tag,\n\ndie Wand ist 3 mm, der Radius 180 mm.\n\nGruß\nMaike Ott\n\n"
        "Von: Dornwerk <dorn@example.com>\nGesendet: Dienstag, 3. März 2026 10:12\nAn: Maike Ott\n"
        "Betreff: AW: Dorn\n\nHallo Frau Ott,\nwelche Wand und welcher Radius?\n\n"
        "Von: Maike Ott\nGesendet: Montag, 2. März 2026 08:00\nAn: Dornwerk\nBetreff: Dorn\n\n"
        "bitte Preis für zwei Dorne für Rohr 60,3 mm, S235.\nMaike Ott\n",
        [(60.3, 3, 180, "carbon_steel", 2)],
    ),
    (
        "bare figures read in the unit of the quoted tube",
        "Sv: dorn",
        "Hej, väggtjocklek 1,5 och radien 57.\n\nÅsa\n\nDen tis 3 mars 2026 kl 10:12 skrev Verk "
        "<verk@example.com>:\n> Hej Åsa, vilken vägg och radie har röret 38 mm i 316L?\n",
        [(38, 1.5, 57, "stainless_steel", "-")],
    ),
    (
        "the radius as a multiple of the quoted OD",
        "Re: mandrel",
        "0.065 wall, 2D bend.\n\nOn 3 March 2026 Pat wrote:\n> What wall and radius for your 2.5\" "
        "OD 6061 tube?\n",
        [(2.5 * IN, 0.065 * IN, 5 * IN, "aluminium", "-")],
    ),
    (
        "two tubes are quoted and nothing says which",
        "Re: mandrels",
        "Wall is .065 on both radii, CLR 4.5\n\nOn 3 March 2026 Pat wrote:\n> We can make them for "
        "1.5 OD and for 1.75 OD tube. What is the wall?\n",
        [("-", 0.065 * IN, 4.5 * IN, "-", "-")],
    ),
    (
        "a size replaced in a later quoted mail: the newest counts",
        "Re: Re: mandrel",
        "Wall is 2 mm, radius 100.\n\nOp 4-3-2026 om 10:12 schreef Desk:\n> Dag, dus buis 44,5 mm. "
        "Welke wand?\n>\n> Op 3-3-2026 om 09:00 schreef Kees:\n>> Sorry, buis 44,5 mm, niet 42,4."
        "\n>>\n>> Op 2-3-2026 om 09:00 schreef Kees:\n>>> doorn voor buis 42,4 mm\n",
        [(44.5, 2, 100, "-", "-")],
    ),
    (
        "a new request in an old thread takes nothing",
        "Re: quote 71",
        "Thanks, that one runs fine. Now please quote a mandrel for 2 x .083 DOM.\n\nOn 3 March "
        "2026 Pat wrote:\n> one mandrel 1.75 x .095, 4130, 6\" CLR, $240\n",
        [(2 * IN, 0.083 * IN, "-", "carbon_steel", 1)],
    ),
    (
        "not even the radius of the same tube",
        "AW: Angebot",
        "Wir brauchen einen Dorn für Rohr 38 x 2,0.\n\nAm 03.03.2026 um 10:12 schrieb Pat:\n> 1 "
        "Dorn für Rohr 38 x 1,5, R 57, 1.4301\n",
        [(38, 2, "-", "-", 1)],
    ),
]  # fmt: skip

REST: list[Row] = [
    (
        "everything else as quoted",
        "Re: Quote 12",
        "Please requote with .120 wall, everything else as quoted.\n\n-----Original Message-----\n"
        "From: Desk\nSent: Tuesday, March 3, 2026\nTo: Lou\nSubject: Quote 12\n\nTwo mandrels, "
        "1.75 OD x .095 wall DOM, 5.25 CLR. $480.\n",
        [(1.75 * IN, 0.12 * IN, 5.25 * IN, "carbon_steel", 2)],
    ),
    (
        "der Rest bleibt",
        "AW: Angebot 26-3",
        "Bitte Angebot ändern: Rohr 48,3 statt 42,4, der Rest bleibt wie angeboten.\n\n"
        "Am 03.03.2026 um 10:12 schrieb Dornwerk:\n> 1 Dorn für Rohr 42,4 x 2,6, R 127, S355\n",
        [(48.3, 2.6, 127, "carbon_steel", 1)],
    ),
    (
        "tout le reste est inchangé",
        "RE: devis",
        "Bonjour, l'épaisseur passe à 2,5 mm, tout le reste est inchangé. Merci de refaire le "
        "devis.\n\nLe 03/03/2026 à 10:12, Mandrins <m@example.com> a écrit :\n> 1 mandrin pour "
        "tube 50 x 2 mm, inox 304, rayon à l'axe 100 mm\n",
        [(50, 2.5, 100, "stainless_steel", 1)],
    ),
    (
        "el resto queda igual",
        "RE: oferta",
        "Buenos días, cambien el radio a 150 mm, el resto queda igual. ¿Precio?\n\nEl mar, 3 mar "
        "2026 a las 10:12, Taller (<t@example.com>) escribió:\n> 2 mandriles para tubo 63,5 x 2 "
        "mm, acero inoxidable 304, radio medio 127 mm\n",
        [(63.5, 2, 150, "stainless_steel", 2)],
    ),
    (
        "per il resto tutto come prima",
        "R: offerta",
        "Buongiorno, lo spessore è 1,5 mm invece di 2 mm, per il resto rimane tutto come da "
        "offerta. Aspetto il prezzo.\n\nIl giorno mar 3 mar 2026 alle ore 10:12 Anime "
        "<a@example.com> ha scritto:\n> 1 anima per tubo 28 x 2 mm, AISI 316L, raggio 56 mm\n",
        [(28, 1.5, 56, "stainless_steel", 1)],
    ),
    (
        "verder blijft alles hetzelfde",
        "Re: offerte",
        "Goedemorgen, graag offerte voor wanddikte 3 mm, voor de rest blijft alles hetzelfde.\n\n"
        "Op di 3 mrt 2026 om 10:12 schreef Doorn <d@example.com>:\n> 1 doorn voor buis 76,1 x 2,5 "
        "mm, RVS 316, straal hartlijn 152 mm\n",
        [(76.1, 3, 152, "stainless_steel", 1)],
    ),
    (
        "same but",
        "Re: mandrel",
        "Another one please, same as before but for 2\" OD. Price?\n\nOn 3 March 2026 Dale wrote:\n"
        "> one mandrel for 1.75 OD x .083 wall 4130, 6 in CLR\n",
        [(2 * IN, 0.083 * IN, 6 * IN, "alloy_steel", 1)],
    ),
    (
        "named fields stay, the material is left open",
        "AW: Anfrage",
        "Rohr jetzt 40 x 2. Radius bleibt.\n\nAm 03.03.2026 um 10:12 schrieb Pat:\n> Rohr 38 x "
        "1,5, Radius 80 mm, 1.4301, ein Dorn\n",
        [(40, 2, 80, "-", "-")],
    ),
    (
        "the radius said anew is not the quoted one",
        "Re: mandrel",
        "Can you redo it on a 7\" radius? Rest stays the same.\n\nOn 3 March 2026 Dale wrote:\n"
        "> 1 mandrel for 2 OD x .120 wall DOM, 6 in CLR\n",
        [(2 * IN, 0.12 * IN, 7 * IN, "carbon_steel", 1)],
    ),
    (
        "two radii, the rest stays",
        "Re: mandrel",
        "Please quote it on 100 and 125 mm radius, everything else unchanged.\n\n"
        "On 3 March 2026 Dale wrote:\n> 1 mandrel for 50 x 2 mm 304 tube, CLR 75 mm\n",
        [(50, 2, 100, "stainless_steel", "*"), (50, 2, 125, "stainless_steel", "*")],
    ),
    (
        "only the count changes",
        "Re: Quote 9",
        "Please requote for three mandrels, all else stays the same.\n\nOn 3 March 2026 Pat "
        "wrote:\n> One mandrel for 1.5 x .065 304, 4.5 CLR\n",
        [(1.5 * IN, 0.065 * IN, 4.5 * IN, "stainless_steel", 3)],
    ),
    (
        "two sizes were quoted: what differs stays open",
        "Re: Quote 9",
        "Please requote with .083 wall, everything else the same.\n\nOn 3 March 2026 Pat wrote:\n"
        "> 1.5 x .065 304, 4.5 CLR\n> 1.75 x .065 304, 5.25 CLR\n",
        [("-", 0.083 * IN, "-", "stainless_steel", "-")],
    ),
    (
        "the rest of the order is other business",
        "Re: mandrel",
        "Please quote a mandrel for 1.5 x .065. The rest of the tubes stays in the shop.\n\nOn 3 "
        "March 2026 Pat wrote:\n> 2 x .120 DOM, 6 CLR\n",
        [(1.5 * IN, 0.065 * IN, "-", "-", 1)],
    ),
]  # fmt: skip

_BELOW_DE = (
    "\n\nAm 28.10.2026 um 16:20 schrieb Maike Ott:\n> Hallo,\n> bitte Angebot über 2 Dorne für "
    "Rohr 32 x 1,5, Werkstoff 1.4509,\n> Radius 48 mm Mitte.\n"
)
_BELOW_EN = (
    '\n\nOn 3 March 2026 Maike Ott wrote:\n> Looking for 2 mandrels, 2 x .083, 304, on our 6-3/4" '
    "CLR die.\n"
)

AS_BELOW: list[Row] = [
    (
        "one figure put right, the rest as in his own mail below",
        "AW: Anfrage Dorn",
        "kurze Korrektur: das Rohr hat 1,25 Wand, nicht 1,5. Rest bleibt wie unten." + _BELOW_DE,
        [(32, 1.25, 48, "stainless_steel", 2)],
    ),
    (
        "another radius, all else as below",
        "AW: Anfrage Dorn",
        "Radius wird 64 statt 48 mm, alles andere bleibt wie unten." + _BELOW_DE,
        [(32, 1.5, 64, "stainless_steel", 2)],
    ),
    (
        "a wall, everything else as below",
        "Re: mandrel",
        "Sorry, wall is .095. Everything else stays as below." + _BELOW_EN,
        [(2 * IN, 0.095 * IN, 6.75 * IN, "stainless_steel", 2)],
    ),
    (
        "that wall, everything else as below",
        "Re: mandrel",
        "Change of plan: supplier only has .095, so please requote with that wall. Everything else "
        "as below." + _BELOW_EN,
        [(2 * IN, 0.095 * IN, 6.75 * IN, "stainless_steel", 2)],
    ),
    (
        "all else goes on being valid",
        "AW: Anfrage Dorn",
        "Nachtrag: Bitte nicht 32 x 1,5, sondern 32 x 2 anbieten. Alles\nandere gilt weiter, siehe "
        "unten." + _BELOW_DE,
        [(32, 2, 48, "stainless_steel", 2)],
    ),
    (
        "French: the rest as below",
        "RE: demande",
        "Petite correction : épaisseur 1,25 mm et non 1,5. Le reste ne change pas, voir ci-dessous."
        + _BELOW_DE,
        [(32, 1.25, 48, "stainless_steel", 2)],
    ),
    (
        "all but the radius is forgotten",
        "Re: mandrel",
        "Forget everything under the line except the radius. Tube is now 2-1/4 x .083 (not the 2 x "
        ".083 like Phil told you on the phone). Still 304. One mandrel is enough." + _BELOW_EN,
        [(2.25 * IN, 0.083 * IN, 6.75 * IN, "stainless_steel", 1)],
    ),
    (
        "all but material and radius are forgotten",
        "AW: Anfrage Dorn",
        "Vergessen Sie bitte alles unten bis auf Radius und Werkstoff: jetzt Rohr 35 x 2. "
        "Bitte einen Dorn anbieten." + _BELOW_DE,
        [(35, 2, 48, "stainless_steel", 1)],
    ),
    (
        "all is forgotten",
        "Re: mandrel",
        "Forget everything below. One mandrel for 2-1/4 x .083 please." + _BELOW_EN,
        [(2.25 * IN, 0.083 * IN, "-", "-", 1)],
    ),
    (
        "a list of his own stands below",
        "Re: mandrel",
        "Please quote as below, one each:\n1.5 x .065, 3 CLR, 304\n1.75 x .065, 3.5 CLR, 304"
        + _BELOW_EN,
        [
            (1.5 * IN, 0.065 * IN, 3 * IN, "stainless_steel", 1),
            (1.75 * IN, 0.065 * IN, 3.5 * IN, "stainless_steel", 1),
        ],
    ),
]  # fmt: skip

CHANGES: list[Row] = [
    (
        "it is this, not that",
        "Re: mandrel",
        "It's 1.625 not 1.5. Please quote again.\n\nOn 3 March 2026 Pat wrote:\n> one mandrel for "
        "1.5 OD x .065 wall 304, 5\" CLR\n",
        [(1.625 * IN, 0.065 * IN, 5 * IN, "stainless_steel", 1)],
    ),
    (
        "instead of",
        "AW: Angebot",
        "Wandstärke 2,6 mm statt 2,0 mm, bitte neues Angebot.\n\nAm 03.03.2026 um 10:12 schrieb "
        "Pat:\n> 1 Dorn für Rohr 42,4 x 2,0, R 127, S235\n",
        [(42.4, 2.6, 127, "carbon_steel", 1)],
    ),
    (
        "make it",
        "Re: Quote",
        "Customer changed the wall. Make it .120 instead, please requote.\n\n> One mandrel, "
        "1.75 x .095 DOM, 6\" CLR\n",
        [(1.75 * IN, 0.12 * IN, 6 * IN, "carbon_steel", 1)],
    ),
    (
        "a figure not said to change anything quoted is a new tube",
        "Re: Quote",
        "Thanks. Went smaller: it's now 1.500 x .065 1020 on a 4.500 CLR, one mandrel. Requote?\n\n"
        "> One mandrel, 2.000 x .083 304 on a 6.000 CLR\n",
        [(1.5 * IN, 0.065 * IN, 4.5 * IN, "carbon_steel", 1)],
    ),
]  # fmt: skip

FORWARDS: list[Row] = [
    (
        "what the forwarded customer counts are his parts",
        "Fwd: handrails",
        "See below what they want. Please quote two mandrels for us.\n\nBegin forwarded "
        "message:\n\n> From: Kim <kim@example.net>\n> Date: 3 March 2026\n> Subject: handrails\n>\n"
        "> 40 handrails, 42.4 x 2 mm 304 tube, radius 100 mm. On site by 20 April 2026.\n",
        [(42.4, 2, 100, "stainless_steel", 2)],
    ),
    (
        "his wall stands above a forward that names the tube",
        "WG: Rohrbogen",
        "Wand ist 2 mm, bitte einen Dorn dafür anbieten.\n\n-------- Weitergeleitete Nachricht "
        "--------\nVon: Kim\nDatum: 3. März 2026\nBetreff: Rohrbogen\n\n"
        "Rohr 38 mm, 1.4301, Radius 57 mm\n",
        [(38, 2, 57, "stainless_steel", "*")],
    ),
]  # fmt: skip

_EN = "\n\nOn 3 March 2026 Pat wrote:\n> one mandrel 1.5 OD x .065 wall 4130 on 4.5 CLR, $210\n"
_DE = (
    "\n\nAm 03.03.2026 um 10:12 schrieb Dorn:\n> 1 Stück Biegedorn für Rohr 38 x 1,5 mm,\n"
    "> Werkstoff 1.4301, Radius 57 mm, 310 EUR\n"
)
_FR = (
    "\n\nLe 03/03/2026 à 10:12, Mandrins a écrit :\n> 1 mandrin pour tube 38 x 1,5 mm, inox 304,\n"
    "> rayon moyen 57 mm\n"
)
_OTHERS = {
    "es": "\n\nEl 03/03/2026 10:12, Taller escribió:\n> 1 mandril para tubo 38 x 1,5 mm inox 304, "
    "radio medio 57 mm\n",
    "it": "\n\nIl 03/03/2026 10:12, Anime ha scritto:\n> 1 anima per tubo 38 x 1,5 mm inox 304, "
    "raggio medio 57 mm\n",
    "nl": "\n\nOp 03-03-2026 om 10:12 schreef Doorn:\n> 1 doorn voor buis 38 x 1,5 mm RVS 304, "
    "straal 57 mm\n",
    "sv": "\n\nDen 3 mars 2026 kl. 10:12 skrev Dorn:\n> 1 dorn för rör 38 x 1,5 mm, 1.4301, radie "
    "57 mm\n",
    "pl": "\n\nW dniu 3.03.2026 o 10:12, Dorn pisze:\n> 1 trzpień do rury 38 x 1,5 mm, 1.4301, "
    "promień 57 mm\n",
    "pt": "\n\nEm 03/03/2026 10:12, Mandris escreveu:\n> 1 mandril para tubo 38 x 1,5 mm inox 304, "
    "raio médio 57 mm\n",
}


def _inch(od: float, wall: float, clr: float) -> tuple[float, float, float]:
    return od * IN, wall * IN, clr * IN


_MOLY, _INOX = "alloy_steel", "stainless_steel"
SHORT: list[tuple[str, str, tuple[object, ...]]] = [
    ("I misread the print. Wall is .083, the rest of the figures are right. New price please.",
     _EN, (*_inch(1.5, 0.083, 4.5), _MOLY, 1)),
    ("Sorry, typo on my side: radius should be 5.25. Please revise the quote.",
     _EN, (*_inch(1.5, 0.065, 5.25), _MOLY, 1)),
    ("Please revise: OD 1.625 instead of 1.5, all other dimensions unchanged.",
     _EN, (*_inch(1.625, 0.065, 4.5), _MOLY, 1)),
    ("Make that 1.75 OD please.", _EN, (*_inch(1.75, 0.065, 4.5), _MOLY, 1)),
    ("Could you price the same tube on a 6 inch radius?",
     _EN, (*_inch(1.5, 0.065, 6), _MOLY, None)),
    ("Same tube and radius but in 304 stainless, price please?",
     _EN, (*_inch(1.5, 0.065, 4.5), _INOX, 1)),
    ("We also need one for 1.75 x .083. Same radius.",
     _EN, (*_inch(1.75, 0.083, 4.5), None, 1)),
    ("OD 1.75 now, wall .095, DOM. Radius as before.",
     _EN, (*_inch(1.75, 0.095, 4.5), "carbon_steel", None)),
    ("What would 2 mandrels cost? Nothing else changes.",
     _EN, (*_inch(1.5, 0.065, 4.5), _MOLY, 2)),
    ("Everything as in my mail below, only the radius should be 6 in.",
     _EN, (*_inch(1.5, 0.065, 6), _MOLY, 1)),
    # a tube of their own: nothing is taken that they do not name
    ("We also need one for 1.75 x .083.", _EN, (1.75 * IN, 0.083 * IN, None, None, 1)),
    ("Make it 1.75 OD x .095 instead.", _EN, (1.75 * IN, 0.095 * IN, None, None, None)),
    ("Need a mandrel for 1.5 x .065 tube.", _EN, (1.5 * IN, 0.065 * IN, None, None, 1)),
    ("What would one for 7/8 x .035 4130 cost?",
     "\n\nOn 3 March 2026 Pat wrote:\n> Your 2.5 x .065 mandrel on 3.75 CLR is ready.\n",
     (0.875 * IN, 0.035 * IN, None, _MOLY, "*")),
    ("Do you also have one for 1.75 OD?", _EN, (1.75 * IN, None, None, None, "*")),
    ("Would a 1.5 OD x .065 tube also work on 3 inch radius without a wiper?",
     _EN, (*_inch(1.5, 0.065, 3), None, None)),
    # other languages
    ("Bitte um neues Angebot, Radius jetzt 76 mm, sonst alles gleich.",
     _DE, (38, 1.5, 76, _INOX, 1)),
    ("Können Sie das Angebot auf Wandstärke 2 mm ändern? Alles andere wie angeboten.",
     _DE, (38, 2, 57, _INOX, 1)),
    ("Wir brauchen doch 3 Stück, Rest unverändert. Bitte neues Angebot.",
     _DE, (38, 1.5, 57, _INOX, 3)),
    ("Das Rohr hat 40 mm, nicht 38. Übrige Angaben stimmen.", _DE, (40, 1.5, 57, _INOX, 1)),
    ("Radius und Werkstoff bleiben, Rohr wird 42,4 x 2. Was kostet der Dorn?",
     _DE, (42.4, 2, 57, _INOX, None)),
    ("Le tube fait 40 mm et non 38, le reste ne change pas. Votre prix ?",
     _FR, (40, 1.5, 57, _INOX, 1)),
    ("Même chose mais avec un rayon de 76 mm, quel prix ?", _FR, (38, 1.5, 76, _INOX, 1)),
    ("Il nous faut 2 mandrins, pour le reste c'est identique. Prix ?",
     _FR, (38, 1.5, 57, _INOX, 2)),
    ("Lo mismo pero con pared de 2 mm, ¿qué precio?", _OTHERS["es"], (38, 2, 57, _INOX, 1)),
    ("Uguale ma con raggio 76 mm, quanto costa?", _OTHERS["it"], (38, 1.5, 76, _INOX, 1)),
    ("Hetzelfde maar dan wanddikte 2 mm. Prijs?", _OTHERS["nl"], (38, 2, 57, _INOX, 1)),
    ("Väggtjocklek 2 mm i stället för 1,5, resten oförändrat. Nytt pris tack.",
     _OTHERS["sv"], (38, 2, 57, _INOX, 1)),
    ("Ścianka 2 mm zamiast 1,5, reszta bez zmian. Proszę o cenę trzpienia.",
     _OTHERS["pl"], (38, 2, 57, _INOX, 1)),
    ("Parede 2 mm, o resto fica igual. Qual o preço?", _OTHERS["pt"], (38, 2, 57, _INOX, 1)),
    # what is asked last is a material and a count
    ("It's 4130. Two please.",
     "\n\nOn 3 March 2026 Pat wrote:\n> What material is the 1.5 x .065 tube on 4.5 CLR, and how\n"
     "> many mandrels?\n", (*_inch(1.5, 0.065, 4.5), _MOLY, 2)),
    ("OD is 1.5, wall .065.",
     "\n\nOn 3 March 2026 Pat wrote:\n> You said 4.5 CLR. What OD and wall has your tube?\n",
     (*_inch(1.5, 0.065, 4.5), None, None)),
]  # fmt: skip

NOT_ASKED: list[str] = [
    "Is the 4.5 CLR to the centreline?" + _EN,
    "Where is my mandrel? The wall is .065 and I promised my customer Friday." + _EN,
    "The .065 wall mandrel cracked after two bends." + _EN,
    "PO 4471: please change the quantity to 3, everything else as is." + _EN,
    "Go ahead with the quote, PO attached." + _EN,
    "ok thanks" + _EN,
    "Correct." + _EN,
]
"""No new request in it: the quoted size is only spoken of, ordered, or wrong."""

ROWS = [
    *ANSWERS,
    *GAPS,
    *REST,
    *CHANGES,
    *AS_BELOW,
    *FORWARDS,
    *[(own, "Re: your enquiry", own + quote, [size]) for own, quote, size in SHORT],
]
