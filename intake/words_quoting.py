"""Words by which mail programs mark what somebody else wrote, in the languages that reach the shop.

Data only: from memory and from labelled messages. Add a word here, a line to
tests/intake/own_text_rows.py, and nothing else.
"""

from __future__ import annotations

# "On 3 March 2026 Pat wrote:" - the verb stands at the end of the line or before the name.
WROTE = (
    "wrote", "writes", "has written", "schrieb", "geschrieben", "schreibt", "a écrit", "a ecrit",
    "écrit", "écrivait", "escribió", "escribio", "escribe", "ha scritto", "scrive", "schreef",
    "geschreven", "escreveu", "skrev", "skriver", "napisał", "napisała", "napisał(a)", "napisal",
    "pisze", "napsal", "napsala", "napsal(a)", "napísal", "napísala", "napísal(a)", "a scris",
    "kirjoitti", "írta", "yazdı", "şunları yazdı", "написал", "написала", "написал(а)", "пишет",
    "napisao", "je napisala", "rašė", "rakstīja", "kirjutas", "έγραψε", "写道", "寫道",
    "書きました", "のメール", "님이 작성",
)  # fmt: skip

# A line that starts so may be the start of an attribution that was wrapped.
ATTRIBUTION_STARTS = (
    "on", "at", "am", "von", "den", "le", "el", "il", "op", "em", "no dia", "a ", "på", "w dniu",
    "dnia", "dne", "dňa", "pe", "în", "in data", "ti", "to", "ma", "mån", "tor", "fre", "lør",
    "mon", "tue", "wed", "thu", "fri", "sat", "sun", "lun", "mar", "mer", "gio", "jeu", "ven",
    "pon", "wt", "śr", "czw", "pt", "u", "dana",
)  # fmt: skip

# Keys of a header block ("From: ... Sent: ... To: ... Subject: ...") by what they name.
HEADER_KEYS: dict[str, tuple[str, ...]] = {
    "from": (
        "from", "von", "de", "da", "van", "från", "fra", "od", "lähettäjä", "feladó", "de la",
        "от", "от кого", "kimden", "gönderen", "发件人", "寄件者", "寄件人", "差出人", "送信元",
        "보낸 사람", "expéditeur", "remitente", "mittente", "afzender", "absender", "nadawca",
        "odesílatel", "odosielateľ", "afsender", "avsändare", "avsender", "expeditor",
    ),
    "date": (
        "sent", "date", "gesendet", "datum", "envoyé", "envoye", "enviado", "enviado el",
        "enviada em", "enviado em", "fecha", "inviato", "data", "verzonden", "skickat", "sendt",
        "dato", "wysłano", "wysłane", "data wysłania", "odesláno", "odoslané", "lähetetty",
        "päivä", "päiväys", "küldve", "dátum", "elküldve", "отправлено", "дата", "trimis",
        "tarih", "gönderildi", "日期", "发送时间", "发送日期", "日時", "送信日時", "보낸 날짜",
        "sent on", "date d'envoi", "gesendet am",
    ),
    "to": (
        "to", "an", "à", "a", "para", "aan", "till", "til", "do", "komu", "vastaanottaja",
        "címzett", "кому", "către", "kime", "alıcı", "收件人", "宛先", "받는 사람", "empfänger",
        "destinataire", "destinatario", "destinatário", "odbiorca", "per",
    ),
    "cc": ("cc", "kopie", "copie", "kopia", "kopi", "copia", "dw", "抄送", "bcc"),
    "subject": (
        "subject", "betreff", "objet", "asunto", "oggetto", "onderwerp", "ämne", "emne", "temat",
        "předmět", "predmet", "aihe", "tárgy", "тема", "assunto", "subiect", "konu", "主题",
        "主旨", "主題", "件名", "제목",
    ),
}  # fmt: skip

# Keys of a website form that no mail program writes: then the block is the customer's own.
FORM_KEYS = (
    "message", "your message", "comments", "comment", "enquiry", "inquiry", "question", "phone",
    "telephone", "company", "nachricht", "ihre nachricht", "telefon", "firma", "bericht",
    "messaggio", "mensaje", "mensagem", "téléphone", "société", "details", "your enquiry",
)  # fmt: skip

ORIGINAL_MARKS = (
    "original message", "original appointment", "ursprüngliche nachricht",
    "originalnachricht", "original-nachricht", "ursprüngliche e-mail", "ursprüngliche mail",
    "mail original", "e-mail original", "courriel original", "correo original", "mail originale",
    "originele e-mail", "originalmail", "oprindelig mail", "oprindelig besked",
    "ursprungliche nachricht", "message d'origine", "message original",
    "mensaje original", "messaggio originale", "oorspronkelijk bericht",
    "origineel bericht", "mensagem original", "originalmeddelande", "ursprungligt meddelande",
    "oprindelig meddelelse", "opprinnelig melding", "wiadomość oryginalna",
    "oryginalna wiadomość", "původní zpráva", "pôvodná správa", "alkuperäinen viesti",
    "eredeti üzenet", "mesaj original", "исходное сообщение", "orijinal mesaj", "原始邮件",
    "原始郵件", "元のメッセージ", "reply message", "quoted text", "quoted message",
)  # fmt: skip

FORWARD_MARKS = (
    "forwarded message", "begin forwarded message", "forwarded mail", "forwarded email",
    "forwarded e-mail", "original forwarded message",
    "weitergeleitete nachricht", "anfang der weitergeleiteten nachricht",
    "anfang der weitergeleiteten e-mail", "message transféré", "message transfere",
    "message transmis", "début du message transféré", "début du message réexpédié",
    "mensaje reenviado", "inicio del mensaje reenviado", "mensagem encaminhada",
    "início da mensagem encaminhada", "messaggio inoltrato", "inizio messaggio inoltrato",
    "inizio del messaggio inoltrato", "doorgestuurd bericht", "begin doorgestuurd bericht",
    "vidarebefordrat meddelande", "vidarebefordrat brev", "videresendt meddelelse",
    "videresendt melding", "treść przekazanej wiadomości", "przekazana wiadomość",
    "wiadomość przekazana", "přeposlaná zpráva", "preposlaná správa", "välitetty viesti",
    "edelleenlähetetty viesti", "továbbított üzenet", "mesaj redirecționat",
    "пересланное сообщение", "пересылаемое сообщение", "iletilen mesaj", "转发的邮件",
    "转发邮件", "轉寄郵件", "転送メッセージ",
)  # fmt: skip
FORWARD_MARK_STARTS = (
    "forwarded by", "weitergeleitet von", "transféré par", "inoltrato da", "reenviado por",
    "doorgestuurd door", "forwarded message from",
)  # fmt: skip

REPLY_PREFIXES = (
    "re", "aw", "antw", "antwort", "sv", "vs", "r", "rif", "odp", "vá", "va", "ynt", "res", "ref",
    "bls", "atb", "hv", "回复", "回覆", "答复", "答覆", "返信", "ha", "réf", "rép", "rv. re",
)  # fmt: skip
FORWARD_PREFIXES = (
    "fw", "fwd", "wg", "tr", "rv", "i", "doorst", "vb", "vl", "vidb", "vid", "pd", "enc", "tov",
    "转发", "轉寄", "轉發", "転送", "ilt", "fs", "inoltro", "trans", "reenv",
)  # fmt: skip

# The sender's new text points at what stands below (or is attached as a mail).
POINTS_BELOW = (
    r"(?:see|as|per|refer to|quoted|mentioned|shown|listed|given|described|described in) "
    r"(?:the )?(?:details? |size[s]? |specs? |info |dimensions )?(?:quoted )?"
    r"(?:below|underneath|beneath|further down)",
    r"(?:mail|e-?mail|message|thread|request|enquiry|inquiry|quote|quotation|offer|order|note|"
    r"text|one|size|sizes|details?|specs?|figures|numbers|dimensions|info|drawing|item|items|"
    r"tube|tooling|mandrels?|part) "
    r"(?:is |are |as |was |from \w+ |shown |quoted |given |listed )?(?:below|underneath|beneath)",
    r"(?:attached|forwarded|original|earlier|previous|last) (?:e-?mail|mail|message|request|"
    r"enquiry|inquiry)",
    r"\bbelow (?:mail|e-?mail|message|request|enquiry|inquiry|quote|size|sizes|mandrels?|tube|"
    r"tooling|item|items|one|is|are|please)\b",
    r"\b(?:the|all|everything) below\b",
    r"\b(?:wants?|needs?|asks?|asked|asking|sent|wrote|writes|said|says|requires?|after"
    r"|for)(?: us)?"
    r"(?: for)?(?: is)? (?:below|underneath)\b",
    r"\bsiehe (?:weiter )?unten|\bs\. ?u\.|\bunten(?:stehend| genannt| angegeben)?\b|"
    r"\bnachstehend|\bfolgende (?:mail|nachricht|anfrage) (?:unten|anbei)",
    r"\bci-dessous|\bplus bas\b|\bvoir dessous",
    r"\b(?:ver|véase|vea|como) (?:más )?abajo\b|\bde abajo\b|\bmás abajo\b|\bveja abaixo|"
    r"\babaixo\b",
    r"\b(?:vedi |come |qui )?sotto(?:stante| riportat[oaie])?\b|\bin calce\b",
    r"\b(?:zie|zoals) (?:hier)?onder|\bhieronder\b|\bonderstaand",
    r"\bponiżej\b|\bpatrz niżej\b|\bse nedan\b|\bnedan(?:stående)?\b|\bse nedenfor\b",
    r"以下|下記",
)  # fmt: skip

# Enough on a forward, where nothing else can be meant.
POINTS_AT_FORWARD = (
    r"\b(?:this|that|these|those|it|him|her|them|both)\b",
    r"\bforward(?:ing|ed)\b|\bpassing (?:on|along)\b|\bwhat (?:my|our|the) \w+ (?:wants?|needs?"
    r"|sent)",
    r"\bleiten? (?:ich |wir )?(?:ihnen |euch )?|\bweiter(?:geleitet|leiten)\b",
    r"\bfais(?:ons)? suivre\b|\btransf(?:ère|érons|ert)\b|\btransmet(?:s|tons)\b|\bce que (?:me"
    r"|nous)"
    r" (?:demande|veut)",
    r"\breenv[ií]o\b|\breenviamos\b|\b(?:os|le|les) (?:paso|mando)\b|\blo que (?:me|nos) (?:pid"
    r"|mand)",
    r"\binoltr(?:o|iamo)\b|\bgiro\b|\bquello che (?:mi|ci) (?:chied|serv)|\bdoor(?:gestuurd"
    r"|sturen)\b",
    r"\b(?:can|could|would|will) (?:you|we|u)\b", r"\bplease\b", r"\bpls\b", r"\bf\.?y\.?i\b",
    r"\bf\.?y\.?a\b", r"\bany (?:good|interest|thoughts|idea)", r"\bdies(?:e|es|er|en)?\b",
    r"\bbitte\b", r"\bz\. ?k\.", r"\bzur (?:info|kenntnis|bearbeitung)", r"\bceci\b",
    r"\bcette\b",
    r"\bmerci de\b", r"\besto\b", r"\beste\b", r"\bpor favor\b", r"\bquest[oaie]\b",
    r"\bper favore\b", r"\bdeze\b", r"\bdit\b", r"\bgraag\b", r"\bter info\b", r"\bproszę\b",
)  # fmt: skip

# Everything below is meant, not only the newest message of it.
POINTS_AT_SEVERAL = (
    r"\b(?:these|both|all (?:of )?(?:them|these|the)|two (?:mails|requests)|all (?:three|four))\b",
    r"\bbeide\b|\balle (?:drei|vier|anfragen|mails)\b|\bles deux\b|\blos dos\b|\bentramb[ie]\b",
)  # fmt: skip

# "My answers below, in red": the new words stand between the quoted lines; nothing is handed over.
ANSWERS_BELOW = (
    r"\b(?:answer|answers|answered|comment|comments|reply|replies|response|responses|responded|"
    r"notes) (?:\w+ )?(?:below|inline|in-line|underneath|in (?:red|blue|green|bold))",
    r"\bin-?line\b", r"\bantworten? (?:unten|im text|in rot)", r"\bréponses? ci-dessous",
    r"\brespuestas? abajo", r"\brisposte sotto", r"\bantwoord(?:en)? hieronder",
    r"\bmy .{0,20}in red\b",
)  # fmt: skip

# The forwarded part is not handed to us as work.
NOT_HANDED_OVER = (
    r"\b(?:ignore|disregard|already (?:sorted|done|sent|ordered)|no action|nothing to do|"
    r"for your records|sorted now|no longer|cancel|wrong)\b",
    r"\b(?:erledigt|hinfällig|ignorieren)\b", r"\bdéjà (?:réglé|fait)\b",
)  # fmt: skip

# The body says that the subject line belongs to the message.
POINTS_AT_SUBJECT = (
    r"\b(?:size|sizes|details?|specs?|dimensions?|it|all|info|everything)\b[^.\n]{0,25}"
    r"\b(?:in|on) (?:the |my )?(?:subject|title|header|heading)\b",
    r"\b(?:see|as in|as per|per|refer to) (?:the |my )?(?:subject|title|header|heading)\b",
    r"\bsubject (?:line )?(?:says|has|gives)\b",
    r"\b(?:siehe|s\.|wie im|laut|im) betreff\b", r"\bbetreffzeile\b",
    r"\b(?:voir|dans|cf\.?|en) (?:l'|le |l’)?objet\b", r"\b(?:ver|en el|véase el) asunto\b",
    r"\b(?:vedi|in|nell'|nell’|come da) ?oggetto\b", r"\b(?:zie|in het|in) onderwerp\b",
    r"\b(?:patrz|w) tema(?:t|cie)\b", r"\bse ämne", r"\bver assunto\b", r"件名",
)  # fmt: skip
