"""Words by which signatures, contact lines and legal footers are known.

Data only, from memory and from labelled messages; nothing here is a size.
"""

from __future__ import annotations

# A whole line of these (a comma, a "/" or a name may follow) closes a letter.
CLOSINGS = (
    "regards", "best regards", "kind regards", "kindest regards", "warm regards", "best", "rgds",
    "brgds", "br", "kr", "all the best", "best wishes", "many thanks", "thanks", "thank you",
    "thanks again", "thanks in advance", "thank you in advance", "thanks so much", "thx", "tks",
    "ta", "cheers", "yours", "yours truly", "yours faithfully", "yours sincerely", "sincerely",
    "sincerely yours", "respectfully", "cordially", "blessings", "thanking you", "much obliged",
    "thanks and regards", "thanks & regards", "with best regards", "with kind regards",
    "thanks and best regards", "thank you very much", "take care", "later", "peace",
    "mit freundlichen grüßen", "mit freundlichen grüssen", "mit freundlichem gruß",
    "mit freundlichem gruss", "freundliche grüße", "freundliche grüsse", "viele grüße",
    "viele grüsse", "beste grüße", "beste grüsse", "schöne grüße", "liebe grüße", "mfg", "vg",
    "lg", "gruß", "gruss", "grüße", "grüsse", "hochachtungsvoll", "danke", "vielen dank",
    "danke und gruß", "danke im voraus", "besten dank", "herzliche grüße",
    "cordialement", "bien cordialement", "salutations", "sincères salutations", "bien à vous",
    "salutations distinguées", "meilleures salutations", "merci", "merci d'avance", "cdt", "cdlt",
    "bonne journée", "bonne réception",
    "saludos", "saludos cordiales", "un saludo", "cordiales saludos", "atentamente",
    "muchas gracias", "gracias", "gracias de antemano", "cordialmente",
    "cordiali saluti", "distinti saluti", "saluti", "un saluto", "grazie", "grazie mille",
    "grazie e saluti", "buona giornata",
    "groeten", "met vriendelijke groet", "met vriendelijke groeten", "vriendelijke groeten",
    "mvg", "groet", "alvast bedankt", "bedankt", "dank u",
    "pozdrawiam", "z poważaniem", "pozdrowienia", "dziękuję", "z wyrazami szacunku",
    "med vänlig hälsning", "med vänliga hälsningar", "vänliga hälsningar", "mvh", "hälsningar",
    "med venlig hilsen", "venlig hilsen", "vennlig hilsen", "med vennlig hilsen", "hilsen",
    "tack",
    "tak", "takk",
    "atenciosamente", "cumprimentos", "com os melhores cumprimentos", "obrigado", "obrigada",
    "abraços", "s pozdravem", "s pozdravom", "terveisin", "ystävällisin terveisin", "üdvözlettel",
    "cu stimă", "saygılarımla", "с уважением", "敬具", "よろしくお願いいたします",
    "よろしくお願いします", "此致", "谢谢",
)  # fmt: skip

# Lines a telephone adds by itself.
SENT_FROM = (
    "sent from my", "sent from mobile", "sent from outlook", "sent from mail for", "sent via",
    "get outlook for", "sent with", "von meinem", "gesendet von", "gesendet mit", "gesendet über",
    "envoyé de mon", "envoyé depuis", "envoyé à partir de", "enviado desde", "enviado do meu",
    "enviado de mi", "inviato da", "verzonden vanaf", "verstuurd vanaf", "verstuurd met",
    "verzonden met", "wysłane z", "wysłano z", "skickat från", "sendt fra", "odesláno z",
    "lähetetty", "küldve", "отправлено с", "从我的", "發自我的", "发自我的",
)  # fmt: skip

PHONE_LABELS = (
    "tel", "telephone", "telefon", "teléfono", "telefono", "téléphone", "telefoon", "tél", "tlf",
    "phone", "ph", "cell", "mobile", "mob", "mobil", "handy", "móvil", "movil", "cellulare",
    "cel", "gsm", "portable", "fax", "telefax", "direct", "durchwahl", "office", "desk", "fon",
    "t", "m", "f", "p", "c", "d", "o", "whatsapp", "switchboard", "fijo", "kom", "puh", "тел",
    "電話", "电话", "手机", "ｔｅｌ", "ｆａｘ",
)  # fmt: skip

# Written so, with capitals: "ab Werk" and "inc. VAT" are no companies.
COMPANY_FORMS = (
    "GmbH", "Ltd", "LTD", "Limited", "LLC", "L.L.C.", "Inc", "INC", "S.r.l.", "Srl", "SRL",
    "S.p.A.", "SpA", "B.V.", "BV", "N.V.", "NV", "S.A.", "SARL", "SAS", "S.A.S.", "PLC", "Plc",
    "AG", "KG", "e.K.", "OHG", "GbR", "Sp. z o.o.", "sp. z o.o.", "A/S", "ApS", "AB", "Oy", "Oyj",
    "s.r.o.", "S.L.", "S.L.U.", "Lda", "Lda.", "Corp", "Corp.", "Corporation", "Pty", "Kft.",
    "d.o.o.", "株式会社", "有限公司",
)  # fmt: skip
# These stand in a letterhead only.
REGISTER_WORDS = (
    "amtsgericht", "registergericht", "handelsregister", "geschäftsführer", "geschäftsführung",
    "sitz der gesellschaft", "komplementärin", "stammkapital", "ust-id", "ust-idnr", "ust.-id",
    "umsatzsteuer-id", "steuer-nr", "steuernummer", "partita iva", "capitale sociale",
    "capital social", "registro mercantil", "registered office", "registered in", "company reg",
    "company number", "company registration", "rcs", "siret", "siren", "y-tunnus",
)  # fmt: skip
# These only with a number of five figures or more behind them: "CIF" is an incoterm as well,
# and "VAT" a question about a price.
NUMBERED_WORDS = (
    "hrb", "hra", "iban", "bic", "swift", "vat", "vat no", "vat reg", "tva", "n° tva", "p. iva",
    "p.iva", "c.f.", "rea", "cif", "nif", "kvk", "btw", "nip", "krs", "regon", "org.nr", "org nr",
    "orgnr", "cvr", "company no", "reg. no", "duns", "ein", "abn", "acn", "gstin", "iec", "eori",
    "ičo", "dič", "adószám", "cage code", "nuit",
)  # fmt: skip
# After a number and a name, or before both: "1900 Industrial Pkwy", "rue de la Gare 12".
STREETS_AFTER = (
    "street", "st", "road", "rd", "avenue", "ave", "drive", "dr", "lane", "ln", "boulevard", "blvd",
    "highway", "hwy", "pkwy", "parkway", "way", "court", "ct", "circle", "trail", "terrace",
)  # fmt: skip
STREETS_BEFORE = (
    "rue", "avenue", "chemin", "route", "zone industrielle", "z.i.", "calle", "avda", "avenida",
    "polígono", "via", "viale", "piazza", "corso", "ul.", "ulica", "rua", "am", "an der",
    "zum", "route de", "p.o. box", "po box", "postfach", "postbus", "boîte postale", "unit",
    "suite", "industriestraße", "str.",
)  # fmt: skip
# With a number, and a comma and a name behind it: "Block 3, Dairy Road", "Nave 7, Polígono Sur".
PREMISES = (
    "block", "blk", "building", "bldg", "unit", "units", "bay", "gate", "hall", "shed", "plot",
    "lot", "yard", "arch", "workshop", "hangar", "warehouse", "dock", "floor", "gebäude", "geb.",
    "halle",
    "tor", "bâtiment", "bât.", "bat.", "porte", "nave", "parcela", "portal", "puerta", "capannone",
    "edificio", "lotto", "cancello", "gebouw", "hal", "loods", "poort", "kavel",
)  # fmt: skip
# A number of four figures before such a word is a grade, not a postcode: "4130 Chromoly".
AFTER_A_GRADE = (
    "dom", "chromoly", "chrome", "moly", "steel", "stainless", "tube", "tubing", "pipe", "alloy",
    "aluminum", "aluminium", "alu", "erw", "hrew", "cds", "seamless", "normalized", "annealed",
    "rohr", "stahl", "edelstahl", "bends", "bögen", "pieces", "stück", "pcs", "parts", "in", "on",
)  # fmt: skip

# What makers advertise below their name: a size there is what they can do, not what they ask for.
ADVERT_WORDS = (
    "bending to", "bending up to", "up to", "since 19", "since 20", "est. 19", "established",
    "specialists", "specialist in", "specialising", "specializing", "manufacturers of",
    "your partner", "cnc",
    "visit us", "follow us", "iso 9001", "as9100", "capacity", "bis ø", "bis zu", "seit 19",
    "seit 20", "jusqu'à", "hasta", "fino a", "tot ø", "spezialist", "spécialiste", "capacities",
)  # fmt: skip

# The first line of a paragraph that lawyers, virus scanners or mailing programs added.
FOOTER_STARTS = (
    "confidential", "confidentiality", "privileged", "disclaimer", "legal notice",
    "important notice",
    "notice:", "caution: external", "[external", "external email", "external sender",
    "this e-mail and", "this email and", "this message and", "this e-mail is", "this email is",
    "this message is intended", "this message contains", "this e-mail contains",
    "this email contains", "this communication", "this transmission", "this message may",
    "this e-mail may", "this email may", "the information contained in this",
    "the information in this", "the contents of this e", "the content of this e",
    "if you are not the intended", "if you have received this", "if you received this",
    "any views", "registered in england", "please consider the environment",
    "think before you print",
    "please think before", "before printing", "save paper", "save a tree", "virus-free",
    "virus free", "scanned by", "this email has been scanned", "this e-mail has been scanned",
    "this email has been checked", "checked by", "no virus found", "unsubscribe",
    "to unsubscribe",
    "you are receiving", "you received this", "you are reading",
    "diese e-mail enthält", "diese email enthält", "diese nachricht enthält",
    "diese mail enthält",
    "diese e-mail ist", "diese nachricht ist", "der inhalt dieser", "die information in dieser",
    "die in dieser e-mail", "vertraulichkeitshinweis", "haftungsausschluss",
    "hinweis zum datenschutz",
    "datenschutzhinweis", "informationen zum datenschutz", "bitte denken sie an die umwelt",
    "denken sie an die umwelt",
    "bitte prüfen sie, ob diese", "wenn sie nicht der",
    "ce message et", "ce message est", "ce courriel", "ce mail et", "cet e-mail", "cet email",
    "ce message électronique", "les informations contenues", "avertissement",
    "avis de confidentialité", "pensez à l'environnement",
    "pensez à l’environnement", "n'imprimez", "avant d'imprimer",
    "si vous n'êtes pas le destinataire",
    "aviso legal", "aviso de confidencialidad", "este mensaje y", "este mensaje se",
    "este mensaje va", "este correo",
    "este e-mail", "este email", "esta mensagem", "aviso de privacidad", "protección de datos",
    "la información contenida", "antes de imprimir",
    "nota de confidencialidad",
    "le informazioni contenute", "questo messaggio", "questa e-mail", "questa email",
    "avviso di riservatezza", "ai sensi del", "ai sensi dell",
    "rispetta l'ambiente", "prima di stampare", "nota di riservatezza", "il presente messaggio",
    "informativa privacy",
    "de informatie in dit", "dit bericht", "dit e-mailbericht", "deze e-mail",
    "aan dit bericht", "de inhoud van dit", "denk aan het milieu",
    "disclaimer:", "op al onze", "al onze aanbiedingen",
    "ta wiadomość", "niniejsza wiadomość", "treść tej wiadomości", "wiadomość ta",
    "informacje zawarte", "pomyśl o środowisku",
    "detta meddelande", "detta e-postmeddelande", "denne e-mail", "denne mail",
    "denne e-posten", "tämä viesti", "tento e-mail", "tato zpráva",
    "our terms and conditions", "all orders are subject to our", "we process personal data",
    "privacy notice", "wir verarbeiten personenbezogene",
    "es gelten unsere", "unsere allgemeinen geschäftsbedingungen",
)  # fmt: skip

# Whole lines that a website form adds round a customer's words.
FORM_LINES = (
    "this e-mail was sent from a contact form", "this email was sent from a contact form",
    "this message was sent from", "this mail was sent via", "this e-mail was sent via",
    "you have received a new", "you have a new", "new submission from", "new form submission",
    "a new enquiry has been",
    "someone filled out", "remote ip", "ip address", "ip:", "user agent", "user-agent",
    "page url", "page:", "referrer", "referer", "submitted from", "submitted on", "form name",
    "form id", "sent from ip", "diese nachricht wurde über das kontaktformular",
    "diese e-mail wurde über das kontaktformular", "ce message a été envoyé via",
    "este mensaje ha sido enviado desde", "este mensaje se ha enviado desde",
    "questo messaggio è stato inviato", "dit bericht is verzonden via", "browser:", "date/time:",
)  # fmt: skip
