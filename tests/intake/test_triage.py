"""What kind of message: the words, the sizes a reader would find in them, then the kind.

MESSAGES_BEFORE were written before the cues were; MESSAGES_AFTER while they grew; MESSAGES_LAST
when the cues seemed done (26 of 34 were right then). None copies a message of the open sample.
"""

from __future__ import annotations

import pytest

from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.triage import classify

S, Q, N = "sizes", "question", "other"
"""N: neither tooling nor a question for sales."""

MESSAGES_BEFORE: list[tuple[str, str, int, str]] = [
    # -- asks for tooling, a size given
    ("mandrel", "Please quote one mandrel, 1.5 x .065, 4.5 CLR, 304.", 1, S),
    ("", "can you do 2 x .120 on a 6 clr", 1, S),
    ("Chassis tube", "1.625 x .083 4130 at 4.5 clr - doable or no?", 1, S),
    ("Anfrage", "Wir benötigen einen Biegedorn für Rohr 30 x 2, R 75, S235.", 1, S),
    ("Demande de prix", "Merci de nous coter un mandrin pour tube 33,7 x 2, rayon 100.", 1, S),
    ("Consulta", "Necesitamos un mandril para tubo 50 x 1,5, radio 100 mm. ¿Precio?", 1, S),
    ("Richiesta", "Ci serve un mandrino per tubo 28 x 1,5 raggio 42, inox 304.", 1, S),
    ("Aanvraag", "Graag offerte voor een doorn, buis 42,4 x 2, radius 100.", 1, S),
    ("Zapytanie", "Proszę o wycenę trzpienia do rury 25 x 1,5 R 50.", 1, S),
    (
        "Re: lube",
        "Thanks for the tip. New thing: I need a mandrel for 7/8 x .035, 3 inch radius.",
        1,
        S,
    ),
    ("Roll hoop", "1 3/4 x .120 DOM, 5 1/4 centreline. How much and how long?", 1, S),
    ("will it kink", "Will 1.25 x .035 stainless bend at 3 inch CLR without wrinkles?", 1, S),
    # -- asks for tooling, no size could be read
    ("Tooling", "Please quote two mandrels as per attached drawing.", 0, S),
    ("repeat", "Same again please, qty 3. Usual account.", 0, S),
    ("Nachbestellung", "Bitte noch einmal 2 Dorne wie beim letzten Mal.", 0, S),
    ("", "Hi, need a mandrel for my bender, what do you want to know?", 0, S),
    ("RFQ", "RFQ for mandrels attached. Reply by Friday.", 0, S),
    ("Commande", "Nous vous commandons un mandrin identique au précédent.", 0, S),
    # -- questions
    ("lubricant", "Which lubricant do you recommend for stainless with a bronze mandrel?", 0, Q),
    ("lead times", "What's your lead time on custom tooling at the moment?", 0, Q),
    ("Frage", "Ab welchem Wandfaktor braucht man einen Dorn?", 0, Q),
    ("", "How do I measure the CLR of an old die? It says 6 on it but I doubt it.", 0, Q),
    ("payment", "Do you take cards, and do you ship to Canada?", 0, Q),
    ("Question", "Quelle est la différence entre un mandrin à billes et un mandrin lisse ?", 0, Q),
    ("domanda", "Che cosa significa il fattore di parete? Potete spiegarmelo?", 0, Q),
    ("vraag", "Hoe ver moet de doorn voorbij het raakpunt staan?", 0, Q),
    ("pregunta", "¿Qué lubricante recomiendan para aluminio?", 0, Q),
    ("minimum order", "Is there a minimum order for mandrels?", 0, Q),
    ("mandrel life", "How many bends does a mandrel last, 1000 or 10000?", 1, Q),
    # -- neither
    ("Invoice 4410", "Please find attached invoice 4410 for 1,250.00, due 30 days.", 0, N),
    ("Where is my order", "Order 2217, 1.5 x .065 mandrel. Has it shipped? Tracking please.", 1, N),
    ("PO 5561", "Please change the ship-to of PO 5561. Lines unchanged: mandrel 38,1 x 1,5.", 1, N),
    ("Thanks", "Mandrel came today, works great. Thank you!", 0, N),
    ("Bewerbung als Dreher", "Sehr geehrte Damen und Herren, hiermit bewerbe ich mich.", 0, N),
    (
        "Partnership",
        "We are a manufacturer of steel tube 25x2 to 60x3 and offer best prices.",
        2,
        N,
    ),
    ("Reklamation", "Der Dorn 38 x 1,5 ist gerissen, wir verlangen Ersatz des Schadens.", 1, N),
    (
        "Our quotation Q-118",
        "Thank you for your inquiry. We are pleased to quote you 4140 bar.",
        0,
        N,
    ),
    ("handrail", "Can you bend 40 pieces of 1.5 x .120 for us? We would send you the tube.", 1, N),
    ("Your mailbox is full", "Verify your account within 24 hours, click here.", 0, N),
    ("Open house", "We'd like to invite you to our open house on May 4. Please RSVP.", 0, N),
    ("Supplier survey", "Please fill in our supplier questionnaire, it takes 5 minutes.", 0, N),
    ("", "", 0, N),
    ("hello", "sorry wrong address, meant for my brother", 0, N),
    ("refund", "I want my money back for the 1.75 mandrel, it never fit.", 1, N),
]

MESSAGES_AFTER: list[tuple[str, str, int, str]] = [
    # -- sizes, said in odd ways
    ("", "2x.120 dom 6clr x1 pls", 1, S),
    ("hoop", "What would one run me for 1.75 .095 on a 5.25?", 1, S),
    ("swap meet die", "Got a die, 1-5/8 on 4.5. Tube's .083 4130. I'm missing the mandrel.", 1, S),
    ("Order", "Please find attached our purchase order for 3 mandrels 1.5 x .065, 4.5 CLR.", 1, S),
    (
        "Invoice address below",
        "Quote 1 mandrel 1.25 x .049, 3.5 CLR. Invoice to our head office.",
        1,
        S,
    ),
    (
        "broken mandrel",
        "The mandrel you sold us in May finally broke. Please quote a new one, 38.1 x 1.5, R 76.",
        1,
        S,
    ),
    ("Thin wall", "My boss wants 3 inch .049 around 4.5. I say it can't be done. Can it?", 1, S),
    ("Nochmal", "Können Sie ein Rohr 60,3 x 2 auf R 90 biegen oder fällt das ein?", 1, S),
    ("cintrage", "Est-ce possible de cintrer un tube 40 x 1,5 sur un rayon de 60 ?", 1, S),
    ("", "¿Se puede curvar un tubo de 25 x 1 con radio 40?", 1, S),
    ("fattibilità", "Tubo 35 x 1,5 raggio 52: è fattibile con il vostro mandrino?", 1, S),
    ("haalbaar?", "Buis 48,3 x 2 op straal 72, is dat haalbaar met een doorn?", 1, S),
    ("die set", "Looking for a die set with mandrel, 2 inch square .120, 8 inch radius.", 1, S),
    ("Re: your question", "Wall is .065 and the radius is 4.5, tube 1.5.", 1, S),
    ("second mandrel", "We'd like another of the ones you made in June. PO to follow.", 0, S),
    ("Bestellung", "Hiermit bestellen wir 2 Dorne gemäß beiliegender Zeichnung.", 0, S),
    (
        "price request",
        "Kindly submit your best offer for bending mandrels as per attached list.",
        0,
        S,
    ),
    ("mandrill", "need a mandrel, havent measured the pipe yet, will send tonight", 0, S),
    ("mandrin", "Bonjour, il nous faut un mandrin, plan en pièce jointe.", 0, S),
    ("nog een", "Graag nog een doorn, zelfde als vorige keer.", 0, S),
    ("hi", "u do mandrels for 1 1/2 sch 40? radius 6", 1, S),
    ("dies + balls", "3 ball mandrel, 2.5 x .065 304, 3.75 clr, qty 2. Also is bronze ok?", 1, S),
    ("tube", "1.5 x .065 x 4.5 CLR, 4130, one off", 1, S),
    ("Angebot Dorn", "Rohr Ø 18 x 1, R 27, CuNi. Bitte Preis und Lieferzeit.", 1, S),
    # -- questions with noise
    ("how tight", "What's the tightest bend you'd try on stainless in general?", 0, Q),
    ("wipers", "Do I need a wiper die as well as a mandrel?", 0, Q),
    ("balls", "When do you go from one ball to three?", 0, Q),
    ("catalogue", "Do you have a catalogue of stock mandrels you could send?", 0, Q),
    ("seam", "Where should the weld seam sit in the bend, inside or neutral axis?", 0, Q),
    ("6061-T6", "Why does 6061-T6 crack on the outside, and would T4 be better?", 0, Q),
    ("Zahlung", "Welche Zahlungsbedingungen haben Sie für Neukunden?", 0, Q),
    ("Lieferzeit", "Wie lange ist Ihre Lieferzeit für Sonderdorne zurzeit?", 0, Q),
    ("délai", "Quel est votre délai habituel pour un mandrin spécial ?", 0, Q),
    ("returns", "If a mandrel turns out too tight, can I return it?", 0, Q),
    ("what do you need", "What information do you need to quote a mandrel?", 0, Q),
    ("student", "For a school project: what is the D of bend, and is 2 D hard?", 0, Q),
    ("square tube", "Do you make mandrels for square tube at all?", 0, Q),
    ("visit", "We'll be near you in May. Could we visit your shop and see the bender?", 0, Q),
    ("pipe or tube", "Is 1-1/2 pipe the same as 1-1/2 tube? The die seller says yes.", 1, Q),
    ("oil", "Was für ein Schmiermittel nehmen Sie bei Edelstahl?", 0, Q),
    ("holiday", "I'm out of the office Friday: can you tell me your lead time before then?", 0, Q),
    # -- neither, however much tube is in it
    ("Rechnung 2024-118", "anbei unsere Rechnung über 1.250,00 EUR für Rohr 38 x 1,5.", 1, N),
    ("Facture", "Veuillez trouver ci-joint la facture F-220 pour le mandrin 33,7 x 2.", 1, N),
    ("Zahlungserinnerung", "Unsere Rechnung 881 ist noch offen.", 0, N),
    ("PO 4471", "Please cancel line 2 of PO 4471 (mandrel 1.75 x .095).", 1, N),
    ("Auftrag 7781", "Wann wird unser Dorn 42,4 x 2 geliefert? Wir warten dringend.", 1, N),
    ("order 1187", "any update on my order? the 1.5 x .120 one. paid three weeks ago", 1, N),
    ("commande 551", "Où en est notre commande de mandrins ? Toujours pas reçu.", 0, N),
    ("wrong one", "You sent the wrong mandrel: we ordered 1.5, the box has 1.75. Fix it.", 1, N),
    ("cracked", "The mandrel arrived cracked. Photos attached. We want a replacement.", 0, N),
    ("Stellenanzeige", "Ich möchte mich als CNC-Dreher bewerben, Lebenslauf anbei.", 0, N),
    ("Any openings?", "I'm a machinist, 12 years on mandrels. Are you hiring?", 0, N),
    ("bar stock", "We stock 4140 and C954 bronze bar 1 to 6 inch. Who buys your material?", 1, N),
    ("Website", "I came across your website and we can help you rank first. Quick call?", 0, N),
    ("exhaust", "How much to make me an exhaust, 2.5 inch 16 gauge, for a pickup?", 1, N),
    ("gate", "Need a price on a garden gate, 1.5 x .065 square tube, painted.", 1, N),
    ("bending work", "Do you take in bending work? 200 pcs of 25 x 2, we supply the tube.", 1, N),
    ("Lohnbiegen", "Bieten Sie Lohnbiegen an? 500 Stück 20 x 1,5.", 1, N),
    ("Re: quote", "Got it, thanks Pat. I'll talk to the boss.", 0, N),
    ("Merry Christmas", "Merry Christmas to all at the shop!", 0, N),
    (
        "Angebot 3381",
        "Vielen Dank für Ihre Anfrage. Anbei unser Angebot für Rundstahl 60 mm.",
        1,
        N,
    ),
    ("CEO", "Are you at your desk? I need gift cards urgently.", 0, N),
    ("Messe", "Wir laden Sie herzlich auf unseren Messestand ein, Halle 5.", 0, N),
    ("", "is this the pizza place on 5th", 0, N),
    ("address", "Please note our new address from 1 May: Dock 9, Sluisweg 30.", 0, N),
    ("conflict minerals", "Please complete the attached questionnaire by 30 June.", 0, N),
    ("lathe", "Do you sell lathe mandrels for wood turning?", 0, N),
    ("oops", "please ignore my last mail, found one in the drawer", 0, N),
]

MESSAGES_LAST: list[tuple[str, str, int, str]] = [
    (
        "Mandrel for 2 in tube",
        "We are a small shop in Ohio and we build race cars. We need a mandrel for 2 x "
        ".065 on a 3 inch. Price?",
        1,
        S,
    ),
    (
        "tooling inquiry",
        "We manufacture handrails and would like a price for a mandrel: 42.4 x 2, R 85",
        1,
        S,
    ),
    (
        "payment",
        "PO attached for mandrel 1.5 x .065 4.5clr. Card on file, send invoice when it ships",
        1,
        S,
    ),
    ("Re: Order 4471 confirmation", "Looks good. Please proceed.", 0, N),
    ("", "Do u guys bend pipe? got 3 pieces of 2 inch exhaust", 1, N),
    (
        "roll cage",
        "I need someone to build me a roll cage out of 1.75 x .095. Are you the people?",
        1,
        N,
    ),
    (
        "follow up",
        "Following up on my request from last Tuesday for the 1.5 x .083 mandrel at "
        "4.5. Did you get it?",
        1,
        S,
    ),
    (
        "wrinkles",
        "We get wrinkles on the inside at 1.5 x .035, 3 CLR with our plug mandrel. What "
        "would you suggest?",
        1,
        S,
    ),
    (
        "spare parts",
        "Need replacement balls and links for the 3 ball mandrel, 50.8 x 1.65. Price?",
        1,
        S,
    ),
    ("Price increase", "Effective 1 May our prices for 4140 bar rise 4 percent.", 0, N),
    (
        "Angebotserinnerung",
        "Haben Sie unsere Anfrage zum Dorn 30 x 2, R 75 erhalten? Wir brauchen das Angebot.",
        1,
        S,
    ),
    ("Frage zum Dorn", "Kann man einen Bronzedorn für Aluminium nehmen?", 0, Q),
    ("mandrin", "Quel jeu faut-il entre le mandrin et le tube ?", 0, Q),
    ("ship date", "When can you ship one if I order today? 1.5 x .065 on 4.5.", 1, S),
    ("discount", "Do you give a discount for schools?", 0, Q),
    ("Delivery", "What is your usual delivery time to Germany for special mandrels?", 0, Q),
    ("Thank you", "Thanks for the quote, we went with someone else this time.", 0, N),
    ("quality cert", "Please send the material certificate for the mandrel on PO 3381.", 0, N),
    ("", "Hola, ¿tienen mandriles para tubo cuadrado?", 0, Q),
    ("Richiesta", "Buongiorno, avete mandrini per tubo 60,3 x 2 R 120 a magazzino?", 1, S),
    ("NDA", "Please sign the attached NDA before we send drawings.", 0, N),
    ("used bender", "Are you interested in buying our old tube bender, 60 mm capacity?", 1, N),
    ("hi", "call me", 0, N),
    ("lost", "Our mandrel got lost in the move. Need the same again, you made it in 2019.", 0, S),
    ("cancel", "Cancel my order for the 1.5 mandrel, and quote 1.75 x .095 on 5.25 instead.", 1, S),
    ("Werbung", "Wir bieten Ihnen Präzisionsrohre 38 x 1,5 ab Lager zu Sonderpreisen.", 1, N),
    ("pricing", "Just checking prices: 1.25 x .049 on 3.5, 304?", 1, S),
    ("Dorn defekt", "Der Dorn 38 x 1,5 ist defekt, bitte um Angebot für einen neuen.", 1, S),
    ("late", "You promised the mandrel for the 14th. It is the 20th. What is going on?", 0, N),
    ("how do I pay", "How do I pay the invoice, card or check?", 0, N),
    ("job", "Do you have any apprenticeship openings this summer?", 0, N),
    ("school visit", "Could 12 students tour your shop in May?", 0, Q),
]

ALL = [("before", *row) for row in MESSAGES_BEFORE] + [("after", *row) for row in MESSAGES_AFTER]
ALL += [("last", *row) for row in MESSAGES_LAST]


def message(subject: str, body: str) -> Message:
    reply = subject.lower().startswith("re:")
    return Message(
        message_id="a@example.com",
        sender=Address(name="", address="customer@example.net"),
        subject=subject,
        body=body,
        in_reply_to="b@example.com" if reply else None,
    )


@pytest.mark.parametrize(
    ("subject", "body", "sizes_read", "kind"),
    [row[1:] for row in ALL],
    ids=[f"{row[0]}-{row[4]}-{n}" for n, row in enumerate(ALL)],
)
def test_kind_of_a_persons_message(subject: str, body: str, sizes_read: int, kind: str) -> None:
    original = message(subject, body)
    found, why = classify(original, mask(original), sizes_read)
    assert found.value == kind, why
    assert why


def test_the_reason_quotes_the_words_that_decided() -> None:
    original = message("", "Quote me a mandrel for 1.5 x .065 on 4.5 CLR, please.")
    kind, why = classify(original, mask(original), 1)
    assert kind is Kind.SIZES
    assert "mandrel" in why
    assert "one size read" in why


def test_lines_of_tooling_without_a_size_are_a_request() -> None:
    original = message("list", "mandrel, as drawing 4471\nmandrel, as drawing 4472\n")
    kind, why = classify(original, mask(original), 0, tooling_lines=2)
    assert kind is Kind.SIZES
    assert "lines of tooling" in why


def test_a_signature_alone_says_nothing() -> None:
    original = message("", "\n-- \nToby\nTube bending to 2.0 x .120, 1.5D\nT 555-0118\n")
    assert classify(original, mask(original), 0)[0] is Kind.OTHER
