"""Mail that no person wrote is caught by headers or wording; no person is taken for a machine."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.automatic import automatic
from bendreply.intake.model import Address, Message
from bendreply.intake.own_text import mask

from ..pace import assert_quick


def message(
    subject: str = "mandrel",
    body: str = "Please quote 1.5 x .065 on 4.5 CLR.",
    sender: str = "dale@example.net",
    reply_to: str | None = None,
    headers: tuple[tuple[str, str], ...] = (),
    **more: object,
) -> Message:
    return Message.model_validate(
        {
            "message_id": "a@example.com",
            "sender": Address(name="", address=sender),
            "reply_to": None if reply_to is None else Address(name="", address=reply_to),
            "subject": subject,
            "body": body,
            "headers": headers,
            **more,
        }
    )


def reason(original: Message) -> str | None:
    return automatic(original, mask(original))


# -- headers; each names the standard that says so
MACHINE_HEADERS = [
    ("auto-submitted", "auto-replied"),  # RFC 3834, section 5
    ("auto-submitted", "auto-generated; comment"),
    ("auto-submitted", "auto-notified"),  # RFC 5436
    ("precedence", "bulk"),
    ("precedence", "List"),
    ("precedence", "junk"),
    ("precedence", "auto_reply"),
    ("list-id", "all things bent <tubebend.example.org>"),  # RFC 2919
    ("list-unsubscribe", "<https://example.org/off>"),  # RFC 2369
    ("list-post", "<mailto:tubebend@example.org>"),
    ("return-path", "<>"),  # RFC 5321, section 4.5.5
    ("x-autoreply", "yes"),
    ("x-autorespond", "1"),
    ("x-failed-recipients", "dale@example.net"),
]
PERSON_HEADERS = [
    ("auto-submitted", "no"),
    ("x-auto-response-suppress", "All"),
    ("x-auto-response-suppress", "DR, OOF, AutoReply"),
    ("precedence", "normal"),
    ("return-path", "<dale@example.net>"),
    ("x-spam-score", "4.9"),
    ("importance", "high"),
]


@pytest.mark.parametrize("header", MACHINE_HEADERS, ids=lambda header: ": ".join(header))
def test_a_header_that_says_automatic_is_believed(header: tuple[str, str]) -> None:
    assert reason(message(headers=(header,)))


@pytest.mark.parametrize("header", PERSON_HEADERS, ids=lambda header: ": ".join(header))
def test_a_header_that_people_have_too_is_not(header: tuple[str, str]) -> None:
    assert reason(message(headers=(header,))) is None


@pytest.mark.parametrize(
    "more",
    [
        {"part_types": ("multipart/report", "text/plain", "message/delivery-status")},  # RFC 3464
        {"report_type": "disposition-notification"},  # RFC 8098
        {"part_types": ("multipart/digest",)},
        {"sender": "MAILER-DAEMON@example.org"},
        {"sender": "postmaster@example.org"},
        {"part_types": ("text/plain", "text/calendar"), "body": "When: Monday 10:00"},
    ],
    ids=["report", "receipt", "digest", "daemon", "postmaster", "calendar"],
)
def test_parts_and_senders_of_mail_programs(more: dict[str, object]) -> None:
    assert reason(message(**more))  # type: ignore[arg-type]


def test_a_calendar_entry_with_a_request_in_words_is_a_persons() -> None:
    assert (
        reason(
            message(
                body="Can you quote 1.5 x .065 on 4.5? I put a call for Monday in your calendar.",
                part_types=("text/plain", "text/calendar"),
            )
        )
        is None
    )


AUTOMATIC_WORDING: list[tuple[str, str, str]] = [
    ("Automatic reply: mandrel quote", "I am out of the office until Monday, November 9.", ""),
    ("Out of Office", "Thanks for your mail. Back on 4 January. For anything urgent call Jo.", ""),
    ("Re: mandrel 1.5", "I am currently out of the office with limited access to email until "
     "December 1. For urgent matters please contact jo@example.org.", ""),
    ("AW: Ihr Angebot", "Ich bin bis zum 12.05. nicht im Büro. In dringenden Fällen wenden Sie "
     "sich bitte an Frau Muster.", ""),
    ("Abwesenheitsnotiz: Dorn 38 x 1,5", "Ich bin ab 4.5. wieder erreichbar.", ""),
    ("absence Re: Mandrin 38 x 2", "Bonjour, actuellement en vacances, je serai de retour mardi. "
     "Vous pouvez joindre l'atelier.", ""),
    ("Urlaub AW: Dorn", "Derzeit im Urlaub, bin am 3.8. zurück.", ""),
    ("Vacaciones: RE: mandril 40 x 2", "Actualmente de vacaciones. Vuelvo el lunes.", ""),
    ("Ferie R: anima 50 x 2", "Attualmente in ferie, rientro il 20 agosto.", ""),
    ("Vakantie - Re: offerte doorn", "Momenteel met verlof, terug op 5 mei.", ""),
    ("Abwesend", "Ich befinde mich bis einschließlich 3. Juni im Urlaub.", ""),
    ("Re: devis", "Je suis en congés jusqu'au 15 août. En cas d'urgence, contactez le 117.", ""),
    ("Respuesta automática: oferta", "Estoy de vacaciones hasta el 1 de septiembre.", ""),
    ("Re: oferta", "Estaré fuera de la oficina hasta el 3 de mayo. Si es urgente, contacte con "
     "compras.", ""),
    ("Risposta automatica: offerta", "Sono in ferie fino al 20 agosto.", ""),
    ("R: offerta", "Sono fuori ufficio fino al 20 agosto. Per urgenze contattare il collega.", ""),
    ("Automatisch antwoord: offerte", "Ik ben afwezig tot en met 5 mei.", ""),
    ("Re: offerte", "Ik ben op vakantie tot 5 mei. Voor dringende zaken: neem contact op met Jan.",
     ""),
    ("Odpowiedź automatyczna", "Jestem na urlopie do 5 maja. W pilnych sprawach kontakt: biuro.",
     ""),
    ("Autosvar: dorn", "Jag är på semester till och med 5 augusti.", ""),
    ("Resposta automática", "Estou ausente até o dia 5 de maio.", ""),
    ("Undeliverable: your quotation 2.0 x .083", "The address was not found.", ""),
    ("Undelivered Mail Returned to Sender", "host said: 550 5.1.1 User unknown", ""),
    ("Delivery Status Notification (Failure)", "The email account does not exist. 550 5.1.1", ""),
    ("Unzustellbar: Ihr Angebot 38 x 1,5", "Das Postfach ist voll.", ""),
    ("Mail delivery failed: returning message to sender", "A message that you sent could not be "
     "delivered to one or more of its recipients.", ""),
    ("Mailbox problem", "Your message could not be delivered: mailbox full, 552 5.2.2.", ""),
    ("Read: mandrel 1.5 x .065", "Your message\n  Subject: mandrel\nwas read on 3 March 2026.", ""),
    ("Gelesen: Ihr Angebot", "Ihre Nachricht wurde am 3.3.2026 gelesen.", ""),
    ("Lu : votre offre", "Votre message a été lu le 3 mars 2026.", ""),
    ("Opened: your offer", "", ""),
    ("Bend of the month", "Can you make a mandrel for a 1D bend? Read on.\n\nYou are receiving "
     "this because you visited our booth. Unsubscribe here.", ""),
    ("Stahlpreise im Mai", "Rohr 38 x 1,5 jetzt günstiger.\n\nNewsletter abbestellen | Im Browser "
     "ansehen", ""),
    ("Notre lettre de mai", "Tube 40 x 2 en promotion.\n\nVous recevez ce message car vous êtes "
     "client. Se désinscrire", ""),
    ("Your order 4471 has shipped", "Track your order here. Please do not reply to this email.",
     ""),
    ("[Ticket#8812] mandrel", "Your request has been received. This is an automated message.", ""),
    ("Thank you for contacting us", "We have received your message. Ticket 881 was created and we "
     "will reply within 24 hours.", ""),
    ("Ihre Anfrage", "Wir haben Ihre Anfrage erhalten. Diese E-Mail wurde automatisch erstellt.",
     ""),
    ("New message from buyer77", "buyer77: do you have a mandrel 1.75 x .095? Log in to reply. "
     "Do not reply to this e-mail.", "no-reply@example.org"),
    ("Statement ready", "Your monthly statement is ready.", "noreply@example.org"),
    ("Scan from MFP-4", "Scanned by device 10.0.0.4, 3 pages, 200 dpi.", "noreply@example.net"),
    ("Invitation: Call about mandrels @ Mon 9 Nov", "When: Mon 9 Nov 10:00\nWhere: online", ""),
    ("Accepted: call about 1.5 x .065", "Dale has accepted this invitation.", ""),
    ("Re: your quotation (Auto-reply)", "Seeding till June. Call Jo about cattle.", ""),
    ("Otomatik yanıt: mandrel", "26 Ekim tarihine kadar ofis dışındayım.", ""),
    ("Re: quote", "Our shop is shut for inventory Dec 22 - Jan 2 and nobody will be reading this.",
     ""),
    ("AW: Dorn", "Wir haben Betriebsruhe vom 1.8. bis 19.8. Ihre Nachricht wird nicht "
     "weitergeleitet.", ""),
    ("[Ticket 91-49] Request received: mandrel 1/4 x .035", "Please type your reply above this "
     "line. Your request has been received.", "tickets@example.net"),
    ("3 new messages held", "The following messages were held since your last report.\n"
     "wei@example.org  Inquiry mandrel 50.8 x 1.5 R76\nRelease them within 14 days or they are "
     "deleted.", "quarantine@example.com"),
    ("New RFQ for you", "A new RFQ matching your profile was posted: mandrel 48.3x2. Sign in to "
     "submit your bid.", ""),
    ("tubebend Digest, Vol 41, Issue 8", "Today's Topics:\n 1. mandrel for 1.625 x .049", ""),
]  # fmt: skip


@pytest.mark.parametrize(
    ("subject", "body", "sender"), AUTOMATIC_WORDING, ids=[row[0] for row in AUTOMATIC_WORDING]
)
def test_without_headers_the_wording_gives_it_away(subject: str, body: str, sender: str) -> None:
    assert reason(message(subject, body, sender or "someone@example.net"))


PEOPLE: list[tuple[str, str]] = [
    ("quote", "I'll be out of the office Friday, so please answer before: 1.5 x .065, 4.5 CLR?"),
    ("quote", "I am out of the office until Monday but need a mandrel quoted, 2 x .120 on 6."),
    ("Dorn", "Ich bin ab Montag im Urlaub, können Sie das Angebot bis Freitag schicken? 38 x 1,5"),
    ("devis", "Je serai absent lundi. Pouvez-vous m'envoyer le devis avant ? 33,7 x 2, R 100"),
    ("Undelivered mandrel", "The mandrel was not delivered on Tuesday. Where is it?"),
    ("Delivery failed twice", "Your courier could not find our gate. Dock 9 please."),
    ("Fwd: Undeliverable: mandrel 1.5", "Got this back from you. Can you quote it anyway?"),
    ("Re: Automatic reply: mandrel", "Thanks, I'll wait for Pat. It's 1.5 x .065 on 4.5."),
    ("Read: this before you quote", "The print is wrong. Wall is .083, everything else stands."),
    ("mandrel", "One please, 1.5 x .065.\n\n--\nDale\nUnsubscribe from our shop news: "
     "https://example.org/off"),
    ("RFQ 4471", "Please quote two mandrels, 38 x 1,5. This is a computer-generated document and "
     "valid without signature."),
    ("Order status", "Has my order shipped? I never got a tracking number."),
    ("Invitation: our open day", "We'd love to have you at our open day on 4 May. Jo"),
    ("auto parts", "Automatic transmission cooler lines, 3/8 x .035. Can you do a mandrel?"),
    ("Notification of change", "Our delivery address is changing on 1 May. Regards, Jo"),
    ("mandrel", "We are closed on Fridays, so ring before. Need one for 1.5 x .065."),
    ("Dorn", "Warum antworten Sie nicht? Der Dorn 38 x 1,5 ist seit Wochen überfällig."),
    ("Re: quote", "I got your automated reply, thanks. It's 1.5 x .065, 4.5 CLR."),
    ("doorn", "Waarom kunnen jullie niet reageren? Al twee weken wacht ik op de doorn."),
    ("trzpień", "Nikt nie odpowiada na telefon, gdzie jest trzpień?"),
    ("PO 118", "Please change the delivery options on PO 118, sea freight is fine."),
    ("by hand", "Our system is down, so here by hand: 1.5 x .065, 4.5 CLR, one."),
    ("Reminder", "Reminder: you still owe us a quote for 38x1,5 R57."),
    ("neighbour", "Your parcel was delivered to our neighbour, he has it now. Nice mandrel!"),
    ("Your quotation", "Your quotation has been approved by my boss, PO follows."),
    ("delivery", "Thank you for your order confirmation. No action required from your side."),
    ("Your mandrel", "Your mandrel has been received and is being reviewed by quality."),
    ("holiday", "We are closed from August 1 to 21. The dock is open for your crate: 42,4 x 2."),
    ("out sick", "I was out sick until Tuesday, thanks for waiting. The answer is yes, 4.5 CLR."),
    ("new address", "This address will be closed in May, write to bev@example.org. Mandrel fine."),
    ("RFQ 7001", "Sent from our ERP, please do not reply to this address, reply to "
     "buyer@example.org.\nRFQ 7001: mandrel 42.4 x 2.0, R 100, 2 pcs."),
    ("RFQ 4500", "Please confirm price & delivery for RFQ 4500: mandrel 1.5 x .065, 3 CLR. "
     "Bid deadline 10/15. Do not reply by fax."),
    ("Ferien", "Wir haben Betriebsferien vom 1. bis 20. August, bitte liefern Sie erst danach."),
    ("congés", "Nous sommes en congés jusqu'au 20 août, merci de livrer le mandrin après."),
    ("vacaciones", "Estamos de vacaciones hasta el 20, por favor entreguen el mandril después."),
    ("", ""),
]  # fmt: skip


@pytest.mark.parametrize(("subject", "body"), PEOPLE, ids=[str(n) for n in range(len(PEOPLE))])
def test_no_person_is_taken_for_a_machine(subject: str, body: str) -> None:
    assert reason(message(subject, body)) is None


FORM = (
    "You have a new message from the contact form.\n\nName: Joe Weld\nEmail: joe@example.org\n"
    "Message: can you make a mandrel for 1.5 x .065 on a 4.5 CLR?\n"
)


@pytest.mark.parametrize(
    "more",
    [
        {"sender": "no-reply@example.com", "reply_to": "joe@example.org"},
        {"sender": "noreply@example.com"},
        {"sender": "wordform@example.com", "reply_to": "joe@example.org",
         "headers": (("auto-submitted", "auto-generated"),)},
        {"sender": "no-reply@example.com", "reply_to": "joe@example.org",
         "body": FORM + "\nDo not reply to this email directly.\n"},
        {"sender": "no-reply@example.com", "reply_to": "joe@example.org", "subject": "Enquiry",
         "body": "can you make a mandrel for 1.5 x .065 on a 4.5 CLR?\n\nJoe"},
    ],
    ids=["reply-to", "address in the form", "auto-generated", "do not reply", "no field names"],
)  # fmt: skip
def test_a_website_form_is_a_customer(more: dict[str, object]) -> None:
    assert reason(message(**{"body": FORM, **more})) is None  # type: ignore[arg-type]


@given(subject=st.text(max_size=80), body=st.text(max_size=400))
def test_never_fails_on_any_text(subject: str, body: str) -> None:
    reason(message(subject, body))


@pytest.mark.parametrize(
    "unit", ["a", " ", "\n", "out of office ", "550 ", "a@", "was not ", "1.1.1 "]
)
def test_a_megabyte_takes_no_time(unit: str) -> None:
    original = message(body=unit * (1_000_000 // len(unit)))
    own = mask(original)
    assert_quick(lambda: automatic(original, own), within=0.5)
