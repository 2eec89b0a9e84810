"""Whose words these are: what stays of a message when all that others wrote is blanked.

Each case shows the mail, then what must still be readable ("keeps") and what must not ("hides").
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.model import Address, Attachment, Message, OwnText
from bendreply.intake.own_text import mask

from ..pace import assert_quick


def message(body: str, subject: str = "mandrel", **more: object) -> Message:
    return Message.model_validate(
        {
            "message_id": "a@example.com",
            "sender": Address(name="Pat", address="pat@example.com"),
            "subject": subject,
            "body": body,
            **more,
        }
    )


def assert_whole(own: OwnText, original: Message) -> None:
    """The promise of every mask: same length, and nothing stands where it did not stand before."""
    assert len(own.text) == len(original.text)
    assert all(a == b or a == " " for a, b in zip(own.text, original.text, strict=True))
    assert own.text.count("\n") == original.text.count("\n")


REPLY = {"subject": "Re: mandrel", "in_reply_to": "b@example.com"}

# name, headers, body, what is kept, what is hidden
CASES: list[tuple[str, dict[str, str], str, list[str], list[str]]] = [
    (
        "plain quote marks",
        REPLY,
        "Yes, one please.\n\n> tube is 1.5 x .065\n>> and 4.5 CLR\n",
        ["Yes, one please."],
        ["1.5", "4.5"],
    ),
    (
        "initials as quote marks",
        REPLY,
        "PD> tube is 1.5 x .065\nIt is .083 now.\n",
        [".083"],
        ["1.5"],
    ),
    (
        "bottom posting",
        REPLY,
        "On 3 March 2026 at 10:12, Pat wrote:\n> 1.5 x .065\n\nMake that 1.75 please.\n",
        ["Make that 1.75"],
        ["1.5 x", "March"],
    ),
    (
        "inline answers",
        REPLY,
        "> Which wall?\n.095\n> Which radius?\n5.25 CLR\n> 2 pieces, 4 weeks\n",
        [".095", "5.25 CLR"],
        ["Which wall", "4 weeks"],
    ),
    (
        "answers announced as below stand between the quotes and bring nothing back",
        REPLY,
        "See my answers below.\n\n> Is it 1.5 x .065?\nNo, 1.625.\n> And 4.5 CLR?\nyes\n",
        ["1.625", "yes"],
        ["1.5 x", "4.5"],
    ),
    (
        "a quoted line that was wrapped and lost its mark",
        REPLY,
        "> for the tube of 44.45 x 1.65 mm in 1.4301 the wall factor would be\n27, CLR 133\n"
        "> and we would use three balls\n\nThat's fine.\n",
        ["That's fine."],
        ["133", "27"],
    ),
    (
        "a dialogue of pipes is a table, not a quote",
        {},
        "Please quote:\n| OD | wall | CLR |\n| 1.5 | .065 | 4.5 |\n",
        ["| 1.5 | .065 | 4.5 |"],
        [],
    ),
    (
        "quoted with pipes",
        REPLY,
        "ok\n\n| tube is 1.5 x .065\n| 4.5 CLR\n",
        ["ok"],
        ["1.5", "4.5"],
    ),
    (
        "a limit that starts with a greater-than sign",
        {},
        "Need one mandrel.\n>2.5D is fine\n>= 1.5 mm wall\n",
        [">2.5D is fine", ">= 1.5 mm wall"],
        [],
    ),
    (
        "top posting above an attribution without marks",
        REPLY,
        "Yes please.\n\nOn Tue, 3 March 2026 at 10:12,\nPat <pat@example.com> wrote:\n\n"
        "1.5 x .065 on 4.5\n",
        ["Yes please."],
        ["1.5", "10:12"],
    ),
    (
        "top posting above a header block",
        REPLY,
        "Yes please.\n\nFrom: Pat <pat@example.com>\nSent: Tuesday, March 3, 2026 10:12 AM\n"
        "To: Dale\nSubject: mandrel 2 x .120\n\n1.5 x .065 on 4.5\n",
        ["Yes please."],
        ["1.5", "2 x .120"],
    ),
    (
        "rule and header block",
        REPLY,
        "Yes please.\n________________________________\nVon: Pat <pat@example.com>\n"
        "Gesendet: Dienstag, 3. März 2026 10:12\nAn: Dale\nBetreff: Dorn 38 x 1,5\n\nRohr 50 x 2\n",
        ["Yes please."],
        ["38 x 1,5", "50 x 2"],
    ),
    (
        "header block with blank lines between (HTML turned to text) and bold stars",
        REPLY,
        "Oui.\n\n*De :* Pat\n\n*Envoyé :* mardi 3 mars 2026 10:12\n\n*À :* Dale\n\n"
        "*Objet :* mandrin 33,7 x 2\n\ntube 60,3 x 2\n",
        ["Oui."],
        ["33,7", "60,3"],
    ),
    (
        "original-message rule",
        REPLY,
        "Go ahead.\n\n-----Original Message-----\nFrom: Pat\nSent: 3 March\n\n1.5 x .065\n",
        ["Go ahead."],
        ["1.5"],
    ),
    (
        "a memo head that the sender wrote is his own",
        {},
        "TO: Mandrel Desk\nFROM: Joe's shop\nDATE: 3/4/2026\nSUBJECT: mandrel\n\n1.5 x .065, 4.5\n",
        ["1.5 x .065, 4.5"],
        [],
    ),
    (
        "a website form is the customer's own",
        {},
        "From: Joe\nEmail: joe@example.com\nSubject: mandrel\nMessage: 1.5 x .065 on 4.5\n",
        ["1.5 x .065 on 4.5"],
        [],
    ),
    (
        "own words that speak of writing",
        {},
        "On 3 March 2026 I wrote to ask for:\n1.5 x .065 on 4.5 CLR\n"
        "and my colleague wrote:\n.083\n",
        ["1.5 x .065", ".083"],
        [],
    ),
    # -- references to what stands below
    (
        "see below on a reply",
        REPLY,
        "Please quote as per my mail below, two off.\n\nOn 3 March 2026 Dale wrote:\n"
        "> 1.5 x .065 on 4.5 CLR\n> Dale\n>\n> On 1 March 2026 Pat wrote:\n> > we had 2 x .120\n",
        ["two off", "1.5 x .065 on 4.5 CLR"],
        ["2 x .120", "3 March"],
    ),
    (
        "siehe unten",
        {"subject": "AW: Dorn", "in_reply_to": "b@example.com"},
        "Bitte anbieten, siehe unten.\n\nAm 03.03.2026 um 10:12 schrieb Dale:\n> Rohr 38 x 1,5\n",
        ["38 x 1,5"],
        ["03.03"],
    ),
    (
        "'as below' followed by the sender's own list",
        REPLY,
        "Please quote as below:\n1.5 x .065, 4.5 CLR\n\nOn 3 March 2026 Pat wrote:\n> 2 x .120\n",
        ["1.5 x .065"],
        ["2 x .120"],
    ),
    (
        "a forward with nothing but FYI",
        {"subject": "Fwd: tooling"},
        "FYI\n\n---------- Forwarded message ---------\nFrom: Lou <lou@example.net>\n"
        "Date: Tue, 3 Mar 2026 at 10:12\nSubject: tooling\nTo: Dale\n\n"
        "Need a mandrel 1.5 x .065, 4.5 CLR\n-- \nLou, bending to 2.0 x .120\n",
        ["FYI", "1.5 x .065, 4.5 CLR"],
        ["10:12", "2.0 x .120"],
    ),
    (
        "a forward of a forward: the newest words that carry the request",
        {"subject": "WG: Fwd: tooling"},
        "zur Bearbeitung\n\nVon: Jo\nGesendet: 3. März 2026 10:12\nAn: Dale\n"
        "Betreff: Fwd: tooling\n\n"
        "can you do this?\n\nBegin forwarded message:\n\n> From: Lou\n> Date: 1 March 2026\n"
        "> To: Jo\n> Subject: tooling\n>\n> 1.5 x .065, 4.5 CLR\n",
        ["can you do this?", "1.5 x .065, 4.5 CLR"],
        ["10:12", "1 March"],
    ),
    (
        "a forward whose sender writes his own size",
        {"subject": "FW: tooling"},
        "We need 1.75 x .095 on 5.25 instead.\n\n-----Original Message-----\nFrom: Lou\n"
        "Sent: 3 March 2026\nTo: Dale\nSubject: tooling\n\n1.5 x .065\n",
        ["1.75 x .095"],
        ["1.5 x .065"],
    ),
    (
        "a forward that asks for nothing",
        {"subject": "Fwd: tooling"},
        "Please ignore, already sorted.\n\n---------- Forwarded message ---------\nFrom: Lou\n"
        "Date: 3 March 2026\nSubject: tooling\nTo: Dale\n\n1.5 x .065\n",
        ["ignore"],
        ["1.5 x .065"],
    ),
    (
        "two mails attached, both meant",
        {"subject": "two customers"},
        "Please quote both.\n\n-------- Forwarded message --------\nFrom: Lou\nDate: 3 March 2026\n"
        "Subject: a\n\n1.5 x .065\n\n-------- Forwarded message --------\nFrom: Kim\n"
        "Date: 4 March 2026\nSubject: b\n\n1.75 x .095\n",
        ["1.5 x .065", "1.75 x .095"],
        ["4 March"],
    ),
    # -- signatures
    (
        "delimiter of RFC 3676",
        {},
        "One please, 1.5 x .065.\n\n-- \nDale\nBending to 2.0 x .120, 1.5D\nPS we moved\n",
        ["1.5 x .065"],
        ["2.0 x .120", "1.5D"],
    ),
    (
        "delimiter that lost its blank",
        {},
        "One please, 1.5 x .065.\n\n--\nDale Example\nTel 555-0118\nTube bending to 2.0 x .120\n",
        ["1.5 x .065"],
        ["2.0 x .120", "555-0118"],
    ),
    (
        "two dashes that part a list are no signature",
        {},
        "Item 1: 1.5 x .065, 4.5 CLR\n--\nItem 2: 1.75 x .095, 5.25 CLR\n",
        ["1.75 x .095"],
        [],
    ),
    (
        "German letterhead",
        {},
        "Rohr 38 x 1,5, R 57.\n\nMit freundlichen Grüßen\n\nJörg Beispiel\nArbeitsvorbereitung\n\n"
        "Beispiel Rohrbiegerei GmbH & Co. KG\nAm Beispielanger 38 · 00000 Musterstadt\n"
        "Telefon +49 30 23125 057\nRegistergericht: Amtsgericht Musterstadt HRA 10425\n"
        "IBAN DE00 0000 0000 0038 0015 00\n",
        ["38 x 1,5", "R 57"],
        ["Beispielanger", "23125", "10425", "0038", "Jörg"],
    ),
    (
        "Thanks, then a correction",
        {},
        "1.5 x .065 on 4.5.\n\nThanks\nDale\n\nPS: make that 1.75 OD\n",
        ["1.5 x .065", "PS: make that 1.75 OD"],
        ["Dale"],
    ),
    (
        "Thanks in the middle of a list",
        {},
        "Please quote, thanks\n\nThanks,\n1.5 x .065 on 4.5\n1.75 x .095 on 5.25, 2 off\nDale\n",
        ["1.5 x .065", "1.75 x .095", "2 off"],
        [],
    ),
    (
        "phone without a closing",
        {},
        "1.5 x .065 on 4.5, qty 2\n\nR. Dunaway\nPh 316-555-0108 ext 204\n",
        ["1.5 x .065", "qty 2"],
        ["316", "204"],
    ),
    (
        "t is a wall, not a telephone",
        {},
        "Tube 25.4\nT 1.2 mm\nR 50\n",
        ["T 1.2 mm", "R 50", "25.4"],
        [],
    ),
    (
        "sent from a telephone",
        {},
        "1.5 x .065 on 4.5\n\nSent from my phone 14\n",
        ["1.5 x .065"],
        ["14"],
    ),
    (
        "a list's lines below a signature",
        {},
        "1.25 OD, .083 wall, 3.75 CLR. Thx\n\n--\nBo Inc\nBending 3/8 to 3 in OD\n218-555-0121\n"
        "\n-- \nOne of the tube list\n",
        ["1.25 OD"],
        ["3/8", "218", "list"],
    ),
    ("a dash and a name", {}, "7/8 x .035 on 3.5?\n\n— Inés", ["7/8 x .035"], ["Inés"]),
    ("a dash and an item", {}, "Need:\n- 7/8 x .035\n- 1 x .035", ["- 7/8", "- 1 x .035"], []),
    (
        "postal address with ZIP and door",
        {},
        "1.5 x .065\n\nRegards\nL. Example\n1900 Industrial Pkwy, Door 11\nSpringfield, IL 62701\n",
        ["1.5 x .065"],
        ["1900", "62701"],
    ),
    (
        "signature above the mail that is answered",
        REPLY,
        "57 x 1,5, R 114.\n\nGroeten\nFiete\nVoorbeeld B.V., Kade 57\n\n"
        "Op 3 maart 2026 om 10:12 schreef Pat <pat@example.com>:\n> 88,9 x 2,5\n",
        ["57 x 1,5"],
        ["Kade", "88,9"],
    ),
    # -- footers
    (
        "English disclaimer",
        {},
        "1.5 x .065\n\nCONFIDENTIAL: This message and its 0 attachments may contain\ncontrolled "
        "data. Notify the sender within 24 hours.\n",
        ["1.5 x .065"],
        ["24", "0 attachments"],
    ),
    (
        "Spanish disclaimer and paper",
        {},
        "50 x 2\n\nSaludos cordiales,\nEdurne\n\nAviso legal: este mensaje y sus 3 anexos\n"
        "Antes de imprimir este correo piense en el medio ambiente.\n",
        ["50 x 2"],
        ["3 anexos", "imprimir"],
    ),
    (
        "virus scanner",
        {},
        "1.5 x .065\n\nThis email has been scanned. Engine 1.75.\n",
        ["1.5 x .065"],
        ["1.75"],
    ),
    (
        "website form lines",
        {},
        "This message was sent from the contact form on example.com\n"
        "Name: Joe\nMessage: 1.5 x .065 on 4.5\nRemote IP: 192.0.2.14\n",
        ["1.5 x .065 on 4.5"],
        ["192.0"],
    ),
]

ATTRIBUTIONS = [
    "On Tue, Mar 3, 2026 at 10:12 AM Pat <pat@example.com> wrote:",
    "On 3 Mar 2026, at 10:12, Pat wrote:",
    "Am 03.03.2026 um 10:12 schrieb Pat <pat@example.com>:",
    "Am Di., 3. März 2026 um 10:12 Uhr schrieb Pat <\npat@example.com>:",
    "Le mar. 3 mars 2026 à 10:12, Pat <pat@example.com> a écrit :",
    "Le 03/03/2026 à 10:12, Pat a écrit\u00a0:",
    "El mar, 3 mar 2026 a las 10:12, Pat (<pat@example.com>) escribió:",
    "Il giorno mar 3 mar 2026 alle ore 10:12 Pat <pat@example.com> ha scritto:",
    "Op di 3 mrt 2026 om 10:12 schreef Pat <pat@example.com>:",
    "Em ter., 3 de mar. de 2026 às 10:12, Pat <pat@example.com> escreveu:",
    "Den tis 3 mars 2026 kl 10:12 skrev Pat <pat@example.com>:",
    "W dniu 3.03.2026 o 10:12, Pat pisze:",
    "wt., 3 mar 2026 o 10:12 Pat <pat@example.com> napisał(a):",
    "Dne 3. 3. 2026 10:12, Pat napsal(a):",
    "Pe mar., 3 mar. 2026 la 10:12, Pat <pat@example.com> a scris:",
    "ti 3. maalisk. 2026 klo 10.12 Pat (pat@example.com) kirjoitti:",
    "Pat <pat@example.com> ezt írta (időpont: 2026. márc. 3., K, 10:12):",
    "2026年3月3日(火) 10:12 Pat <pat@example.com>:\n",
    "在 2026年3月3日 10:12，Pat <pat@example.com> 写道：",
    "3 Mar 2026 tarihinde Pat <pat@example.com> şunları yazdı:",
    "вт, 3 мар. 2026 г. в 10:12, Pat <pat@example.com> написал(а):",
    "Pat <pat@example.com> schrieb am Di., 3. März 2026, 10:12:",
    "Pat <pat@example.com> a écrit le 03/03/2026 10:12 :",
    "Pat wrote on 3.3.2026 10:12:",
    "Pat schreef op 3-3-2026 10:12:",
    "Pat ha scritto il 03/03/2026 10:12:",
    "Pat skrev den 2026-03-03 10:12:",
    "---- On Tue, 03 Mar 2026 10:12:00 +0100 Pat <pat@example.com> wrote ----",
    "---- Am Di, 03 Mär 2026 10:12:00 +0100 schrieb Pat <pat@example.com> ----",
    "-------- Original-Nachricht --------",
    "----- Mail original -----",
]

HEADER_BLOCKS = [
    "From: Pat\nSent: 3 March 2026\nTo: Dale\nSubject: x",
    "Von: Pat\nGesendet: 3. März 2026\nAn: Dale\nBetreff: x",
    "De : Pat\nEnvoyé : mardi 3 mars 2026\nÀ : Dale\nObjet : x",
    "De: Pat\nEnviado el: martes, 3 de marzo de 2026\nPara: Dale\nAsunto: x",
    "Da: Pat\nInviato: martedì 3 marzo 2026\nA: Dale\nOggetto: x",
    "Van: Pat\nVerzonden: dinsdag 3 maart 2026\nAan: Dale\nOnderwerp: x",
    "Från: Pat\nSkickat: den 3 mars 2026\nTill: Dale\nÄmne: x",
    "Od: Pat\nWysłano: wtorek, 3 marca 2026\nDo: Dale\nTemat: x",
    "Odesílatel: Pat\nOdesláno: 3. března 2026\nKomu: Dale\nPředmět: x",
    "Gesendet: Dienstag, 3. März 2026 um 10:12 Uhr\nVon: Pat\nAn: Dale\nBetreff: x",
    "发件人: Pat\n发送时间: 2026年3月3日\n收件人: Dale\n主题: x",
]

FORWARD_MARKS = [
    "---------- Forwarded message ---------",
    "-------- Forwarded Message --------",
    "Begin forwarded message:",
    "Anfang der weitergeleiteten Nachricht:",
    "-------- Weitergeleitete Nachricht --------",
    "---------- Message transféré ---------",
    "-------- Doorgestuurd bericht --------",
    "---------- Mensaje reenviado ----------",
    "---------- Messaggio inoltrato ---------",
]


@pytest.mark.parametrize(
    ("headers", "body", "keeps", "hides"),
    [case[1:] for case in CASES],
    ids=[case[0] for case in CASES],
)
def test_keeps_the_senders_new_words_only(
    headers: dict[str, str], body: str, keeps: list[str], hides: list[str]
) -> None:
    original = message(body, **headers)
    own = mask(original)
    assert_whole(own, original)
    shown = own.text[own.body_start :]
    for words in keeps:
        assert words in shown
    for words in hides:
        assert words not in shown


@pytest.mark.parametrize(
    "body",
    [
        "I'm on the road this week. If it's about a delivery ring the dock, 555-0110.",
        "Uw factuur 2026-0388 kunnen wij niet verwerken omdat het nummer ontbreekt. Stuurt u?",
        "Thank you for your continuous support.\nWe request quotation as follows.\nOD 25.4\n",
        "Sirs,\nPlease offer your best price CIF for following:\nOD 25.4, wall 1.65\n",
    ],
    ids=["telephone", "number", "closing", "following"],
)
def test_a_sentence_is_the_senders_though_it_has_a_mark_of_other_lines(body: str) -> None:
    """A telephone number makes no signature of a sentence, nor does "thank you" above one."""
    own = mask(message(body))
    shown = own.text[own.body_start :].split()
    assert shown[-4:] == body.split()[-4:]
    assert "request" in shown or "request" not in body


@pytest.mark.parametrize("attribution", ATTRIBUTIONS)
@pytest.mark.parametrize("mark", ["> ", ">", ""], ids=["spaced", "tight", "unmarked"])
def test_every_programs_attribution_starts_the_quoted_mail(attribution: str, mark: str) -> None:
    original = message(
        f"Yes, go ahead.\n\n{attribution}\n\n{mark}tube 1.5 x .065\n{mark}CLR 4.5\n", **REPLY
    )
    own = mask(original)
    assert_whole(own, original)
    assert own.text[own.body_start :].split() == ["Yes,", "go", "ahead."]


@pytest.mark.parametrize("block", HEADER_BLOCKS)
def test_every_languages_header_block_starts_the_quoted_mail(block: str) -> None:
    own = mask(message(f"ok\n\n{block}\n\ntube 1.5 x .065\n", **REPLY))
    assert own.text[own.body_start :].split() == ["ok"]


@pytest.mark.parametrize("mark", FORWARD_MARKS)
def test_every_forward_mark_hands_the_request_over(mark: str) -> None:
    head = "From: Lou\nDate: 3 March 2026\nTo: Dale\nSubject: x"
    body = f"Can you do this one?\n\n{mark}\n{head}\n\n1.5 x .065\n"
    own = mask(message(body, subject="Fwd: x"))
    assert "1.5 x .065" in own.text
    assert "Lou" not in own.text
    assert any(part.kind == "forwarded" for part in own.parts)


@pytest.mark.parametrize(
    ("subject", "counts"),
    [
        ("mandrel 1.5 x .065", True),
        ("Re: mandrel 1.5 x .065", False),
        ("AW: Dorn 38 x 1,5", False),
        ("SV: dorn 38 x 1,5", False),
        ("Antw: doorn 38 x 1,5", False),
        ("R: mandrino 38 x 1,5", False),
        ("Odp: trzpień 38 x 1,5", False),
        ("Vá: tüske 38 x 1,5", False),
        ("答复: mandrel 38 x 1,5", False),
        ("RE[2]: mandrel 1.5 x .065", False),
        ("[EXT] Re: mandrel 1.5 x .065", False),
        ("R: 133, tube 44.45 x 1.65", True),
        ("Reel: 1.5 x .065", True),
    ],
)
def test_the_subject_of_an_earlier_mail_does_not_count(subject: str, counts: bool) -> None:
    original = message("One please.\n", subject=subject, in_reply_to="b@example.com")
    own = mask(original)
    assert_whole(own, original)
    assert own.subject_counts is counts
    assert own.text.startswith(subject if counts else " " * len(subject))


@pytest.mark.parametrize(
    "body",
    ["size is in the subject", "see subject", "siehe Betreff", "voir l'objet", "vedi oggetto"],
)
def test_the_body_may_say_that_the_subject_counts(body: str) -> None:
    own = mask(message(body, subject="Re: mandrel 1.5 x .065", in_reply_to="b@example.com"))
    assert own.subject_counts


def test_re_as_a_heading_counts_where_no_earlier_mail_is_in_sight() -> None:
    own = mask(message("Please quote two of these.", subject="RE: mandrel 2 x .120, 6 CLR"))
    assert own.subject_counts


def test_parts_say_whose_words_even_where_they_are_shown() -> None:
    original = message("fyi\n\n> 1.5 x .065\n", subject="Fwd: tooling")
    own = mask(original)
    kinds = [(part.kind, original.text[part.start : part.end].strip()) for part in own.parts]
    assert kinds == [
        ("subject", "Fwd: tooling"),
        ("own", "fyi"),
        ("forwarded", "> 1.5 x .065"),
    ]
    assert "1.5 x .065" in own.text
    assert "> 1.5" not in own.text


def test_readable_attachments_come_along() -> None:
    csv = Attachment(name="sizes.csv", content_type="text/csv", size=9, text="od,wall\n2,3\n")
    pdf = Attachment(name="print.pdf", content_type="application/pdf", size=9)
    assert mask(message("see file", attachments=(csv, pdf))).attachment_texts == (
        ("sizes.csv", "od\twall\n2\t3"),
    )


LINES = st.sampled_from(
    [
        "> ", ">> x", "| a", "On 3 March 2026 Pat wrote:", "Am 3.3.2026 schrieb P:", "From: a",
        "Sent: b", "To: c", "Subject: d", "-- ", "--", "Thanks", "Mit freundlichen Grüßen",
        "Tel 555-0118", "1.5 x .065", "see below", "____________________",
        "Begin forwarded message:", "", "\r", "PS: 1.75", "-----Original Message-----",
        "CONFIDENTIAL: x", "\u2028", "<" * 50, "(" * 60, " " * 90, "a" * 500,
    ]
)  # fmt: skip
ANY_TEXT = st.one_of(
    st.text(max_size=300),
    st.lists(st.one_of(LINES, st.text(max_size=30)), max_size=40).map("\n".join),
)


@given(
    body=ANY_TEXT, subject=st.one_of(st.text(max_size=60), st.just("Fwd: Re: x"), st.just("Re: "))
)
def test_length_and_places_are_kept_whatever_is_written(body: str, subject: str) -> None:
    original = message(body, subject=subject)
    own = mask(original)
    assert_whole(own, original)
    assert all(0 <= part.start < part.end <= len(original.text) for part in own.parts)
    places = [(part.start, part.end) for part in own.parts]
    assert places == sorted(places)


UNITS = [
    "\n", "> \n", ">\n", "a\n", "a", " ", ":", "a:\n", "From: a\n", "wrote:\n",
    "On 3 March 2026\n", "On a wrote:\n", "Thanks\n", "--\n", "-- \n", "-", "_", "<", "(",
    "x1", "1.", "+1 ", "Tel ", "see below ", "> On 3 March 2026 Pat wrote:\n",
    "Begin forwarded message:\n", "-----Original Message-----\n",
    "From: a\nSent: b\nTo: c\nSubject: d\n\nx\n", "a@", "555-", "\u00a0", "Re: ",
    "Confidential\n", "Thanks\n>\n", "a\n\n>\n", "| a\n", "写道", "1/2 ", "od wall ",
]  # fmt: skip


@pytest.mark.parametrize("unit", UNITS, ids=repr)
@pytest.mark.parametrize("subject", ["x", "Fwd: x"])
def test_time_grows_with_length_only_whatever_is_repeated(unit: str, subject: str) -> None:
    # Usually 0.02 to 0.5 s. Were each line compared with each other, it would be minutes.
    original = message(unit * (200_000 // len(unit)), subject=subject)
    assert_quick(lambda: mask(original), within=3)


@pytest.mark.parametrize("unit", ["\n", "> a\n", "From: a\n", "word "], ids=repr)
def test_a_megabyte_takes_no_time(unit: str) -> None:
    original = message(unit * (1_000_000 // len(unit)))
    assert_quick(lambda: mask(original), within=5)
