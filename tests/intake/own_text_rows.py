"""Mails, each with what of it is the sender's own; the lines by which programs mark other words."""

from __future__ import annotations

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
    *(
        (
            f"premises by number in a letterhead: {line}",
            {},
            f"One for 1.5 x .065, 4.5 CLR please.\n\nJo Park\n{line}\nm: 07700 900 142\n",
            ["1.5 x .065, 4.5 CLR"],
            [line],
        )
        for line in (
            "Block 3, Dairy Road",
            "Halle 5, Tor 4",
            "Nave 7, Polígono Sur",
            "Bâtiment 8, Zone Sud",
            "Capannone 6, Zona Est",
            "Loods 4a, Haven",
            "Units 5-6, Mill Lane",
        )
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
