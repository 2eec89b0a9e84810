"""What kind of message: the words, the sizes a reader would find in them, then the kind.

MESSAGES_BEFORE were written before the cues were; MESSAGES_AFTER while they grew. Neither copies a
message of the open sample.
"""

from __future__ import annotations

import pytest

from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.triage import classify

S, Q, O = "sizes", "question", "other"

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
    ("Invoice 4410", "Please find attached invoice 4410 for 1,250.00, due 30 days.", 0, O),
    ("Where is my order", "Order 2217, 1.5 x .065 mandrel. Has it shipped? Tracking please.", 1, O),
    ("PO 5561", "Please change the ship-to of PO 5561. Lines unchanged: mandrel 38,1 x 1,5.", 1, O),
    ("Thanks", "Mandrel came today, works great. Thank you!", 0, O),
    ("Bewerbung als Dreher", "Sehr geehrte Damen und Herren, hiermit bewerbe ich mich.", 0, O),
    ("Partnership", "We are a manufacturer of steel tube 25x2 to 60x3 and offer best prices.", 2, O),
    ("Reklamation", "Der Dorn 38 x 1,5 ist gerissen, wir verlangen Ersatz des Schadens.", 1, O),
    ("Our quotation Q-118", "Thank you for your inquiry. We are pleased to quote you 4140 bar.", 0, O),
    ("handrail", "Can you bend 40 pieces of 1.5 x .120 for us? We would send you the tube.", 1, O),
    ("Your mailbox is full", "Verify your account within 24 hours, click here.", 0, O),
    ("Open house", "We'd like to invite you to our open house on May 4. Please RSVP.", 0, O),
    ("Supplier survey", "Please fill in our supplier questionnaire, it takes 5 minutes.", 0, O),
    ("", "", 0, O),
    ("hello", "sorry wrong address, meant for my brother", 0, O),
    ("refund", "I want my money back for the 1.75 mandrel, it never fit.", 1, O),
]
