"""Words of mail that no person wrote: absences, bounces, receipts, bulk mail, notifications.

Data only, from memory and the open sample. Patterns are matched without regard to case.
"""

from __future__ import annotations

# A subject that only a program puts in front.
ABSENCE_SUBJECTS = (
    r"auto(?:matic|matische?|m\.)?[- ]?(?:reply|response|antwort)\b", r"autoreply", r"auto:",
    r"out[- ]of[- ](?:the )?office", r"\booo\b", r"away from (?:my|the) (?:desk|office)",
    r"(?:on|annual) (?:vacation|leave)\b", r"automatische (?:antwort|abwesenheit)",
    r"abwesen(?:heit|d)", r"nicht im (?:haus|büro)", r"réponse automatique",
    r"absence du bureau", r"absent du bureau", r"message d'absence", r"respuesta automática",
    r"respuesta automatica", r"fuera de (?:la )?oficina", r"risposta automatica",
    r"fuori (?:sede|ufficio)", r"automatisch antwoord", r"afwezig(?:heid)?", r"autosvar",
    r"automatiskt svar", r"automatisk svar", r"frånvaro", r"odpowiedź automatyczna",
    r"automatyczna odpowiedź", r"poza biurem", r"resposta automática", r"ausência",
    r"automatická odpověď", r"automaattinen vastaus", r"automatikus válasz", r"自動応答",
    r"不在通知", r"自动回复",
)  # fmt: skip

# Weight 2: somebody is away, said in the first person or of "the office".
AWAY = (
    r"\b(?:i am|i'm|i’m|i will be|i'll be|we are|currently|am) (?:currently |presently )?"
    r"(?:out of (?:the )?office|away|on (?:annual |parental |sick |maternity )?leave|"
    r"on (?:vacation|holiday)|travell?ing|not in the office|out of town)\b",
    r"\bout of (?:the )?office\b", r"\bno longer (?:with|works? (?:at|for)|employed)\b",
    r"\boffice (?:is|will be) closed\b", r"\bwe are closed\b",
    r"\bnicht (?:im (?:haus|büro)|am arbeitsplatz|erreichbar|im hause)\b",
    r"\b(?:bin|befinde mich) [^.\n]{0,60}(?:abwesend|im urlaub|in elternzeit|außer haus|"
    r"auf dienstreise|nicht erreichbar)", r"\bbetriebs(?:ferien|urlaub)\b",
    r"\bje suis (?:actuellement )?(?:absente?|en (?:congés?|déplacement|vacances))",
    r"\bje serai absente?", r"\bactuellement absente?", r"\bnotre (?:société|bureau) est fermé",
    r"\bestoy (?:fuera|de vacaciones|ausente)", r"\bestaré (?:fuera|ausente|de vacaciones)",
    r"\bfuera de (?:la )?oficina", r"\bausente (?:hasta|del)",
    r"\bsono (?:fuori|assente|in ferie)", r"\bsarò (?:assente|fuori|in ferie)",
    r"\bfuori (?:ufficio|sede)", r"\bazienda (?:è|sarà) chiusa",
    r"\bik ben [^.\n]{0,40}(?:afwezig|niet (?:aanwezig|op kantoor|bereikbaar)|met vakantie|"
    r"op vakantie)", r"\bmomenteel afwezig", r"\bniet op kantoor",
    r"\bjestem (?:obecnie )?(?:nieobecn|na urlopie|poza)", r"\bprzebywam na urlopie",
    r"\b(?:nieobecn[aey]|poza biurem)\b", r"\bjag är (?:inte på kontoret|ledig|borta|på semester|"
    r"bortrest|tjänstledig)", r"\bär på semester", r"\bikke på kontoret",
    r"\bestou (?:ausente|fora|de férias)", r"\bestarei (?:ausente|fora|de férias)",
    r"\bfora do escritório",
)  # fmt: skip

# Weight 1 each kind: what an absence note says besides.
AWAY_UNTIL = (
    r"\b(?:until|till|through|returning|return(?:s|ing)?|back (?:on|in)|from .{1,20} to)\b",
    r"\bbis (?:einschließlich|zum|\d|mo|di|mi|do|fr|ende)", r"\bab (?:dem |montag)?\d",
    r"\bzurück\b", r"\b(?:jusqu'au|de retour|mon retour|du \d)", r"\bhasta (?:el|\d)",
    r"\bregreso\b", r"\bfino al\b", r"\brientr[oe]\b", r"\btot (?:en met|\d|ma|di|wo|do|vr)",
    r"\bterug\b", r"\bdo (?:dnia )?\d", r"\bwrac", r"\btill (?:och med|\d)", r"\båter",
    r"\baté (?:o dia|\d)", r"\bregresso\b",
)  # fmt: skip
AWAY_INSTEAD = (
    r"\b(?:urgent|emergenc|immediate assistance|in my absence|while i(?:'m| am) away)\b",
    r"\b(?:limited|no|intermittent) access to (?:my )?(?:e-?mail|email|phone)",
    r"\b(?:reply|respond|answer|get back|read) .{0,40}(?:return|back)\b",
    r"\bwill (?:not )?be (?:forwarded|read|checking)", r"\bplease contact\b",
    r"\bthank you for your (?:e-?mail|message)\b",
    r"\bnot (?:be )?(?:checking|reading) (?:my )?e-?mail",
    r"\bdringend", r"\bnicht weitergeleitet|\bweitergeleitet\b",
    r"\bmeine vertretung|\bvertritt mich",
    r"\bvielen dank für ihre (?:nachricht|e-?mail|mail)", r"\bwenden sie sich\b",
    r"\burgence\b|\burgent\b", r"\baccès à (?:ma|mes) ", r"\bmerci de contacter",
    r"\burgente\b|\burgenza\b|\burgencia\b", r"\bcontact(?:ar|ez|e|are|tare)\b",
    r"\bcontattare\b|\brivolgersi\b", r"\bdringende\b|\bspoed\b|\bneem contact op\b",
    r"\bw (?:pilnych|sprawach)|\bpilne\b|\bkontakt\b", r"\bbrådskande\b|\bkontakta\b",
    r"\bur gente|\bem caso de urgência|\bcontacte\b",
)  # fmt: skip

BOUNCE_SUBJECTS = (
    r"undeliverable\b", r"undelivered (?:mail|message|e-?mail)", r"returned mail\b",
    r"mail delivery (?:failed|failure|subsystem|"
    r"system)", r"delivery status notification", r"failure notice", r"delivery (?:has )?(?:failed|"
    r"failure|delayed|notification)", r"message (?:delivery )?(?:undeliverable|delayed|blocked)",
    r"non[- ]delivery", r"\bndr\b", r"warning: (?:could not send|message)", r"mail system error",
    r"unzustellbar", r"nicht zustellbar", r"zustell(?:ung|fehler|störung)",
    r"non (?:remis|distribué|délivré|livré)", r"échec de (?:la )?(?:remise|distribution)",
    r"no se (?:puede|ha podido|pudo) entregar", r"no entregado", r"devuelto",
    r"mancato recapito", r"non recapitabile", r"impossibile (?:recapitare|consegnare)",
    r"onbestelbaar", r"niet (?:bezorgd|afgeleverd)", r"nie można dostarczyć|niedostarczon",
    r"olevererbart|ej levererat|kunde inte levereras", r"não entregue|não foi possível entregar",
    r"doručení|kézbesít|недоставлен|配信不能|退信",
)  # fmt: skip
BOUNCE_WORDS = (
    r"\b[245]\.\d\.\d{1,3}\b", r"\b(?:550|551|552|553|554|421|450|451|452)[ -]",
    r"\b(?:mailbox|inbox|account) [^.\n]{0,40}(?:full|over|quota|unavailable|disabled|not exist|"
    r"would not take|does not)", r"\b(?:user|recipient|address|mailbox|domain|host) (?:name )?"
    r"(?:is )?(?:unknown|not found|rejected|does not exist|doesn't exist|was not found|"
    r"unavailable)",
    r"\b(?:could|can) ?not be delivered\b|\bcouldn't be delivered\b|\bwas(?:n't| not) delivered\b",
    r"\bdelivery (?:to the following|has failed|attempt|failed permanently|is delayed)",
    r"\bthis is the mail (?:system|delivery)", r"\bpermanent(?: fatal)? error",
    r"\bnot accepted by",
    r"\bstopped trying\b", r"\bwill (?:be retried|keep trying|retry)\b", r"\bdiagnostic[- ]code\b",
    r"\bmailer-daemon\b", r"\bkonnte nicht (?:zugestellt|übermittelt)",
    r"\bpostfach [^.\n]{0,30}voll",
    r"\bn'a pas pu être (?:remis|distribué|délivré)", r"\bno (?:se pudo|pudo ser|ha sido) entreg",
    r"\bnon (?:è stato possibile|può essere) (?:recapit|consegn)",
    r"\bkon niet worden (?:bezorgd|afgeleverd)",
    r"\bnie (?:mogła|może) (?:zostać|być) dostarczon", r"\bkunde inte levereras",
)  # fmt: skip

RECEIPT_SUBJECTS = (
    r"(?:read|opened|displayed|not read|delivered|relayed|seen|"
    r"deleted without)(?:\s*\([^)]*\))?\s?:",
    r"(?:read|return|delivery) receipt", r"gelesen\s?:", r"ungelesen gelöscht", r"lesebestätigung",
    r"(?:lu|non lu)\s?:", r"accusé de (?:lecture|réception)", r"confirmation de lecture",
    r"leído\s?:", r"confirmación de lectura", r"letto\s?:", r"conferma di lettura",
    r"gelezen\s?:", r"leesbevestiging", r"läst\s?:", r"läskvitto", r"przeczytan[eoa]\s?:",
    r"potwierdzenie przeczytania", r"lida?\s?:", r"recibo de leitura", r"læst\s?:", r"lest\s?:",
    r"empfangsbestätigung", r"zugestellt\s?:", r"remis\s?:", r"entregado\s?:", r"recapitato\s?:",
    r"bezorgd\s?:", r"開封済み", r"已读",
)  # fmt: skip
RECEIPT_WORDS = (
    r"\bwas (?:opened|read|displayed|deleted without being read|delivered|seen)\b",
    r"\b(?:has been|have been) (?:read|opened|displayed|delivered)\b",
    r"\breturn receipt\b|\bread receipt\b|\bdisposition\b",
    r"\bwurde (?:gelesen|geöffnet|am|zugestellt|angezeigt)\b",
    r"\ba été (?:lu|ouvert|affiché|remis)", r"\b(?:ha sido|fue) (?:leído|abierto|entregado)",
    r"\bè stato (?:letto|aperto|recapitato|visualizzato)",
    r"\bis (?:gelezen|geopend|bezorgd)\b|\bgelezen op\b",
    r"\b(?:lästes|har lästs|öppnades)\b", r"\bzosta[łl](?:a|o)? (?:przeczytan|otwart|wyświetlon)",
    r"\bfoi (?:lida|aberta|entregue)\b", r"\byour message\s", r"\bihre nachricht\s*\n",
)  # fmt: skip

# Weight in front: how surely a bulk mailing.
BULK: tuple[tuple[int, str], ...] = (
    (3,
    r"\byou(?:'re| are)? (?:are )?(?:receiving|getting|reading|received|get) (?:this|our|"
    r"[\w']+s?)"
        r"[^.\n]{0,60}\b(?:because|as (?:a|you)|since you)"),
    (3, r"\bsie erhalten diese[nsr]? [^.\n]{0,60}\b(?:weil|da sie|newsletter)"),
    (3, r"\bvous recevez (?:ce|cet|cette)"), (3,
    r"\b(?:recibes?|ha recibido) este [^.\n]{0,40}\bporque"),
    (3, r"\b(?:ricevi|hai ricevuto|riceve) questa? [^.\n]{0,40}\bperch"),
    (3, r"\b(?:u|je) ontvangt deze [^.\n]{0,50}\bomdat"),
    (2, r"\bunsubscribe\b|\bopt[- ]out\b|\bmanage (?:your )?(?:preferences|subscription)|"
        r"\bupdate (?:your )?(?:email )?preferences"),
    (2,
    r"\b(?:vom )?newsletter abbestellen|\babmelden\b|\babbestellen\b|\baus(?:tragen|getragen)\b"),
    (2, r"\bse désinscrire|\bdésabonn|\bdésinscription"),
    (2, r"\bdarse de baja|\bcancelar (?:la )?suscripción"),
    (2, r"\bdisiscri|\bcancella(?:re)? (?:l')?iscrizione|\bannulla (?:l')?iscrizione"),
    (2, r"\b(?:uitschrijven|afmelden)\b"), (2,
    r"\bwypisz|\bzrezygnować z (?:subskrypcji|newslettera)"),
    (2, r"\bavregistrera|\bavsluta prenumeration"),
    (2,
    r"\bview (?:this (?:e-?mail|message) )?(?:in|online|it in) (?:your |a )?(?:web ?browser|"
    r"browser)|"
        r"\bim browser (?:öffnen|ansehen|anzeigen)|\bversion en ligne\b|\bver en (?:el )?navegador|"
        r"\bvisualizza nel browser|\bbekijk (?:online|in (?:je|uw) browser)"),
    (1, r"\bnewsletter\b|\bmailing list\b|\bissue (?:no\.? ?)?\d+\b|\bspecial offer|\bdeal of the|"
        r"\bwebinar\b|\bsubscribers?\b|\bthis week(?:'s)?\b|\bthis month(?:'s)?\b|\brundbrief\b"),
    (1,
    r"\b\d[\d,.]* (?:other )?(?:people|readers|subscribers|members)\b|\b(?:% off|% rabatt|"
    r"free shipping)"),
    (1, r"\bforward (?:this )?to a friend|\bfollow us on\b|\ball rights reserved|©"),
)  # fmt: skip

# Weight in front: how surely a machine reports something.
NOTICE: tuple[tuple[int, str], ...] = (
    (3, r"\b(?:do not|don't|please don't|please do not) (?:reply|respond) (?:directly )?to this "
        r"(?:e-?mail|message|notification|address)|\bdo[- ]?not[- ]?reply\b|"
        r"\breplies (?:to this (?:e-?mail|message|address) )?(?:are not|will not be|aren't) "
        r"(?:read|monitored|answered)|\b(?:unmonitored|unattended) (?:mailbox|address|inbox)"),
    (3,
    r"\bthis (?:is an?|e-?mail (?:is|was|has been)|message (?:is|was|has been)|"
    r"notification (?:is|was)) "
        r"(?:an )?auto(?:mated|matic(?:ally)?)\b(?: (?:e-?mail|message|notification|response|reply|"
        r"sent|generated|created))?|\bautomated (?:message|notification|e-?mail|response)\b|"
        r"\bthis (?:e-?mail|message) (?:is|was) (?:system|computer)[- ]generated"),
    (3,
    r"\bdiese (?:e-?mail|nachricht|mail) (?:wurde|ist) (?:vom system )?(?:automatisch|"
    r"maschinell)|"
        r"\bautomatisch (?:generierte|erstellte|erzeugte) (?:e-?mail|nachricht|mail)|"
        r"\bnicht auf diese (?:e-?mail|nachricht|mail)\b|\bantworten sie (?:bitte )?nicht\b"),
    (3, r"\b(?:ne pas|merci de ne pas|ne) répond(?:re|ez)(?: pas)? à (?:ce|cet)|"
        r"\b(?:message|e-?mail|courriel) (?:généré |envoyé )?automatique(?:ment)?"),
    (3,
    r"\bno respond(?:a|er|as)\b[^.\n]{0,20}\b(?:este|a este)|\b(?:mensaje|"
    r"correo) (?:generado )?automático|"
        r"\bgenerado automáticamente"),
    (3,
    r"\bnon rispondere\b[^.\n]{0,20}\b(?:questa?|a questo)|\b(?:messaggio|e-?mail|"
    r"mail) (?:generat[oa] )?"
        r"automatic[oa](?:mente)?|\bgenerat[oa] automaticamente"),
    (3, r"\b(?:niet|gelieve niet)\b[^.\n]{0,25}\b(?:beantwoorden|te antwoorden|reageren)|"
        r"\bautomatisch (?:gegenereerd|verzonden|aangemaakt)"),
    (3,
    r"\b(?:prosimy )?nie odpowiada|\bwygenerowan[aey] automatycznie|\bautomatycznie wygenerowan"),
    (3, r"\bsvara inte på detta|\bautomatiskt genererat|\bnão responda a est"),
    (2,
    r"\b(?:ticket|case|request|incident) (?:#|no\.?|number|"
    r"id)?:? ?\[?#?\w*\d+\]? (?:has been |was |is )"
        r"(?:created|opened|received|closed|updated|resolved|logged)|\[ticket ?#?[\w-]+\]|"
        r"\[#\w*\d+\]|"
        r"\bticketnummer\b|\byour ticket\b"),
    (2,
    r"\bwe(?:'ve| have)? (?:have )?received your (?:e-?mail|message|enquiry|inquiry|request|"
    r"application)|"
        r"\bthank you for (?:contacting|reaching out to|getting in touch with)\b|"
        r"\bwir haben ihre (?:anfrage|nachricht|e-?mail) erhalten|\bnous avons bien reçu votre|"
        r"\bhemos recibido su|\babbiamo ricevuto la (?:sua|tua|vostra)|"
        r"\bwij hebben uw .{0,20}ontvangen"),
    (1,
    r"\bwill (?:respond|reply|get back to you|be in touch|answer) (?:to you )?(?:within|"
    r"as soon|shortly|in)\b|"
        r"\bwerden uns .{0,40}(?:melden|in verbindung)|\bschnellstmöglich\b|"
        r"\bdans les (?:meilleurs|plus brefs)"),
    (2,
    r"\b(?:your|the) (?:order|parcel|package|"
    r"shipment) [^.\n]{0,30}(?:has (?:been )?(?:shipped|dispatched|"
        r"delivered)|is on (?:its|the) way|was delivered|is out for delivery)|"
        r"\btrack (?:your|my|the) "
        r"(?:order|parcel|package|shipment)|\bihre (?:bestellung|sendung) (?:wurde|ist)|"
        r"\bvotre (?:commande|colis) (?:a été|est)|\bsu pedido (?:ha sido|está)"),
    (2,
    r"\bview (?:this |the )?(?:order|ticket|message|invoice|listing|request|"
    r"details) (?:online|here|in)|"
        r"\blog ?in to (?:your account|view|reply|respond)|\bclick (?:here|the button|"
        r"below) to (?:view|reply|respond)|"
        r"\breply (?:through|via|on) (?:the )?(?:portal|website|marketplace)"),
    (2, r"\bverification code\b|\bone[- ]time (?:code|password)|\bpassword (?:reset|was changed)|"
        r"\bnew (?:sign-?in|login)\b|\bbackup (?:completed|failed|job)|"
        r"\bscan(?:ned)? (?:from|by) (?:a |the )?\w+"),
    (1, r"\bnotification\b|\breminder\b|\bsystem\b|\balert\b|\bbenachrichtigung\b"),
)  # fmt: skip
NO_REPLY_SENDER = (
    r"(?:no|do|donot|not)[-_.]?(?:t[-_.])?repl(?:y|ies)\b|^noreply|no[-_.]?responder|"
    r"ne[-_.]?pas[-_.]?repondre|"
    r"nicht[-_.]?antworten|nao[-_.]?responda|nie[-_.]?odpowiadaj|nonrispondere|"
    r"^notifications?@|^alerts?@|"
    r"^auto(?:mailer|mated|responder|reply)@|^bounces?[-+@]|^newsletter@|^mailer@|^robot@|^system@"
)
SYSTEM_SENDER = (
    r"^(?:mailer[-_]?daemon|postmaster|mail[-_]?delivery|double-bounce|listserv|majordomo)(?:@|$)"
)

INVITATION_SUBJECTS = (
    r"(?:updated )?invitation(?: \S+)?\s?:", r"(?:accepted|declined|tentative(?:ly accepted)?|"
    r"cancell?ed(?: event)?|new time proposed)\s?:",
    r"einladung\s?:|zugesagt\s?:|abgelehnt\s?:|abgesagt\s?:",
    r"invitation à\b|accepté\s?:|refusé\s?:", r"aceptado\s?:|rechazado\s?:|invitación\s?:",
    r"accettato\s?:|rifiutato\s?:|invito\s?:", r"geaccepteerd\s?:|geweigerd\s?:|uitnodiging\s?:",
)  # fmt: skip
INVITATION_WORDS = (
    r"^\s*(?:when|where|wann|wo|quand|où|cuándo|dónde|quando|dove|wanneer|waar|organi[sz]er|"
    r"calendar|"
    r"join)\s?:", r"\bjoin (?:the |this )?(?:online )?(?:meeting|call)\b", r"\bmeeting id\b",
    r"\b(?:has|have) (?:accepted|declined|tentatively accepted) (?:this|your) invitation",
    r"\byou have been invited to (?:the following event|a meeting)",
)  # fmt: skip

DIGEST_WORDS = (
    r"\bdigest,? vol(?:ume|\.)? ?\d+", r"\btoday's topics\b",
    r"\bsend .{1,80} mailing list submissions to",
    r"\bmailing list\b[^\n]{0,40}\n.{0,80}(?:https?://|leave|list)",
    r"\bdaily digest\b|\bweekly digest\b",
)  # fmt: skip

# Labels of a website form; two of them and somebody's words make a customer.
FORM_FIELDS = (
    r"^[ \t*]*(?:your )?(?:name|full name|first name|nom|nombre|nome|naam|vorname|"
    r"imię)\*?[ \t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:e-?mail|email address|mail|correo|courriel|"
    r"e-?mail-?adresse)\*?[ \t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:phone|telephone|telefon|téléphone|teléfono|telefono|telefoon|"
    r"mobile)\*?[ \t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:message|comments?|enquiry|inquiry|question|nachricht|anfrage|"
    r"mensaje|messaggio|"
    r"bericht|request|details|subject|how can we help\??)\*?[ \t]*[:=\t]?[ \t]*",
    r"^[ \t*]*(?:company|firma|société|empresa|azienda|bedrijf|organisation)\*?[ \t]*[:=\t]",
)  # fmt: skip
FORM_WORDS = (
    r"\bcontact(?:-| )?(?:us )?form\b|\bweb(?:site)? (?:form|enquiry|inquiry)\b|"
    r"\bkontaktformular\b|"
    r"\bformulaire de contact\b|\bformulario de contacto\b|\bmodulo (?:di )?contatt[oi]\b|"
    r"\bcontactformulier\b|"
    r"\bnew (?:website )?(?:enquiry|inquiry|submission|message) (?:from|via|on)\b|"
    r"\bform submission\b",
)  # fmt: skip

# A person wants something answered: an absence note never asks this.
PERSON_ASKS = (
    r"\bplease (?:quote|answer|send|confirm|let|reply|get|hold|ship|advise|call|price|offer|"
    r"can|could|would)\b",
    r"\b(?:can|could|would|will) you\b",
    r"\b(?:but|and|still|we|i|also) (?:\w+ )?need (?:a|an|one|two|three|\d|it|them|this|your)\b",
    r"\bi (?:need|want|would like|am looking|'m looking)\b",
    r"\bwe (?:need|want|would like|are looking)\b", r"\bquote me\b",
    r"\bbefore (?:then|that|i (?:go|leave))\b",
    r"\b(?:bitte|können sie|könnten sie|wir brauchen|ich brauche|"
    r"wir benötigen) [^.\n]{0,40}(?:anbieten|angebot|"
    r"senden|schicken|antworten|liefern|machen|bestätigen)",
    r"\bpourriez-vous|\bpouvez-vous|\bj'ai besoin|\bnous avons besoin",
    r"\b(?:puede|pueden|podrían|necesito|necesitamos)\b",
    r"\b(?:potete|potreste|mi serve|ci serve|avrei bisogno)\b",
    r"\b(?:kunt u|kunnen jullie|graag (?:een )?(?:offerte|prijs)|ik heb .{1,30} nodig)\b",
    r"\bproszę o (?:wycenę|ofertę)",
)  # fmt: skip
