"""Words of mail that no person wrote: absences, bounces, receipts, calendars, digests, forms.

Data only, from memory and from labelled messages. Patterns are matched without regard to case.
"""

from __future__ import annotations

# A subject that only a program puts in front.
ABSENCE_SUBJECTS = (
    r"auto(?:matic|matische?|m\.)?[- ]?(?:reply|response|antwort)\b", r"autoreply", r"auto:",
    r"out[- ]of[- ](?:the )?office", r"\booo\b", r"away from (?:my|the) (?:desk|office)",
    r"(?:on|annual) (?:vacation|leave)\b", r"automatische (?:antwort|abwesenheit)",
    r"abwesen(?:heit|d)", r"nicht im (?:haus|büro)", r"réponse automatique", r"absence du bureau",
    r"absent du bureau", r"message d'absence", r"respuesta automática", r"respuesta automatica",
    r"fuera de (?:la )?oficina", r"risposta automatica", r"fuori (?:sede|ufficio)",
    r"automatisch antwoord", r"afwezig(?:heid)?", r"autosvar", r"automatiskt svar",
    r"automatisk svar", r"frånvaro", r"odpowiedź automatyczna", r"automatyczna odpowiedź",
    r"poza biurem", r"resposta automática", r"ausência", r"otomatik (?:yanıt|cevap)",
    r"ofis dışında", r"răspuns automat", r"automatsko", r"autoanswer", r"αυτόματη απάντηση",
    r"автоответ", r"автоматический ответ", r"자동 ?(?:응답|회신)", r"automatisk besvarelse",
    r"réponse d'absence", r"en congés?\b", r"urlaub\b",
    r"(?:out|away|gone|off) (?:until|till|from|thru|through)\b", r"automatická odpověď",
    r"automaattinen vastaus", r"automatikus válasz", r"自動応答", r"不在通知", r"自动回复",
    # "absence Re: ...": the bare word is a person's too, before our own subject only a program's.
    r"(?:absen(?:ce|te?)|ausen(?:cia|te)|assen(?:za|te)|vaca(?:tion|nces|ciones)|vakantie|holiday|"
    r"leave|ferien?|semester|urlop|férias|away) ?[:–-]? ?(?:re|aw|tr|rv|sv|odp|antw|rif|r) ?:",
)  # fmt: skip

# A program's mark behind the earlier subject: "Re: your quotation (Auto-reply)".
ABSENCE_MARKS = (
    r"[(\[{*–—-] ?(?:auto(?:matic|mated)?[- ]?(?:reply|response|answer|generated)?|out of (?:the "
    r")?office|ooo|away|vacation|automatische antwort|abwesend|absent|réponse automatique|"
    r"respuesta automática|risposta automatica|automatisch antwoord) ?[)\]}*]?\s*$",
)  # fmt: skip

# Weight 2: somebody is away, said in the first person or of "the office".
AWAY = (
    r"\b(?:i am|i'm|i’m|i will be|i'll be|we are|currently|am) (?:currently |presently )?(?:out "
    r"of (?:the )?office|away|on (?:annual |parental |sick |maternity )?leave|on (?:vacation|"
    r"holiday)|travell?ing|not in the office|out of town)\b",
    r"\bout of (?:the )?office\b",
    r"\bno longer (?:with|works? (?:at|for|here)|employed)\b|\b(?:has|have) (?:retired|left the "
    r"company|left us|moved on)\b|\bretired (?:on|in|from|as of)\b|\b(?:diese|meine|cette|mon|"
    r"esta|questo|dit|this|my) (?:old )?(?:e-?mail[- ]?)?(?:adresse|address|dirección|indirizzo|"
    r"adres|postfach|mailbox)\b[^.\n]{0,40}\b(?:stillgelegt|nicht mehr|abgeschaltet|no longer|"
    r"discontinued|closed|plus|desactivad|dismess|niet meer)|\bgone (?:fishing|camping|hunting|"
    r"skiing)\b|\b(?:his|her|this|my) (?:mailbox|address|inbox|account) (?:is|will be) (?:being "
    r")?(?:closed|deleted|retired|shut)\b|\bnicht mehr (?:für|bei) (?:uns|die|der)\b|\bim "
    r"ruhestand\b|\bausgeschieden\b|\bne fait plus partie\b|\bya no (?:trabaja|forma parte)\b|"
    r"\bnon (?:lavora|fa) più\b|\bniet (?:meer|langer) werkzaam\b|\b(?:on the road|in the field|"
    r"on site|at a (?:trade )?show|in meetings)\b(?= (?:this|until|till|all|through|today|from|"
    r"tomorrow|next))|\b(?:öffnen|reopen|riapr|rouvr|heropen|reabr)\w*|\bwieder (?:für sie da|"
    r"erreichbar|im (?:büro|haus))\b",
    r"\b(?:office|shop|plant|works?|workshop|factory|company|business|store|warehouse|we|"
    r"everything) (?:is|are|will be|'re|’re) (?:\w+ )?(?:closed|shut|on (?:holiday|shutdown)|"
    r"shutting|closing)\b(?! (?:down |up )?(?:the|our|my) (?:garage|workshop|business|barn)\b)"
    r"|\bclosed (?:for|from|until|through|between)\b|\bplant shutdown\b|\baway "
    r"from (?:my desk|work|the (?:shop|office|desk))\b|\bnot at my desk\b|\bback (?:at my desk|in "
    r"the (?:office|shop)) (?:on|from)\b|\b(?:on|am on) (?:\w+ )?(?:leave|holidays?|vacation|jury "
    r"duty|paternity)\b",
    r"\bnicht (?:im (?:haus|büro)|am arbeitsplatz|erreichbar|im hause)\b",
    r"\b(?:bin|befinde mich) [^.\n]{0,60}(?:abwesend|im urlaub|in elternzeit|außer haus|auf "
    r"dienstreise|nicht erreichbar)",
    r"\bbetriebs(?:ferien|urlaub|ruhe)\b",
    r"\b(?:betrieb|büro|werkstatt|firma|wir) (?:ist|sind|bleibt|haben) [^.\n]{0,60}geschlossen",
    r"\bofis dışında", r"\bizinde(?:yim)?\b",
    r"\bje suis (?:actuellement )?(?:absente?|en (?:congés?|déplacement|vacances))",
    r"\bje serai absente?",
    r"\bactuellement (?:absente?|en (?:congés?|vacances|déplacement|formation)|hors du bureau)",
    r"\b(?:zurzeit|zur zeit|derzeit|momentan|aktuell) (?:abwesend|(?:im|in) urlaub|außer haus|auf "
    r"dienstreise|in elternzeit)",
    r"\b(?:actualmente|ahora mismo) (?:de vacaciones|ausente|de baja)",
    r"\b(?:attualmente|al momento) (?:in ferie|assente|fuori)",
    r"\b(?:momenteel|op dit moment) (?:met|op) (?:vakantie|verlof)",
    r"\ben arrêt\b|\bcongé (?:maladie|maternité|parental)\b|\babsente? (?:ce|cette|du|jusqu|"
    r"aujourd|toute|pour|le|de mon)",
    r"\b(?:atelier|entreprise|usine|bureaux?) (?:est|sera|sont|seront) fermée?s?",
    r"\bnotre (?:société|bureau) est fermé", r"\bestoy (?:fuera|de vacaciones|ausente)",
    r"\bestaré (?:fuera|ausente|de vacaciones)", r"\bfuera de (?:la )?oficina",
    r"\bausente (?:hasta|del)", r"\bsono (?:fuori|assente|in ferie)",
    r"\bsarò (?:assente|fuori|in ferie)", r"\bfuori (?:ufficio|sede)",
    r"\bazienda (?:è|sarà) chiusa",
    r"\bik ben [^.\n]{0,40}(?:afwezig|niet (?:aanwezig|op kantoor|bereikbaar)|met vakantie|op "
    r"vakantie)",
    r"\bmomenteel afwezig", r"\bniet op kantoor",
    r"\bjestem (?:obecnie )?(?:nieobecn|na urlopie|poza)", r"\bprzebywam na urlopie",
    r"\b(?:nieobecn[aey]|poza biurem)\b",
    r"\bjag är (?:inte på kontoret|ledig|borta|på semester|bortrest|tjänstledig)",
    r"\bär på semester", r"\bikke på kontoret", r"\bestou (?:ausente|fora|de férias)",
    r"\bestarei (?:ausente|fora|de férias)", r"\bfora do escritório",
)  # fmt: skip

# Weight 1 each kind: what an absence note says besides.
AWAY_UNTIL = (
    r"\b(?:until|till|through|returning|return(?:s|ing)?|back (?:on|in)|from .{1,20} to)\b",
    r"\bbis (?:einschließlich|zum|\d|mo|di|mi|do|fr|ende)", r"\bab (?:dem |montag)?\d", r"\bvom \d",
    r"\b\w{3,9} \d{1,2}(?:st|nd|rd|th)? ?(?:-|–|to|through|thru) ?(?:\w{3,9} )?\d{1,2}\b",
    r"\b(?:dès|à) mon retour\b", r"\btarihine kadar\b", r"\bzurück\b",
    r"\b(?:jusqu['’](?:au|à|en)|de retour|mon retour|du \d)", r"\bhasta (?:el|\d)", r"\bregreso\b",
    r"\bfino al\b", r"\brientr[oe]\b", r"\btot (?:en met|\d|ma|di|wo|do|vr)", r"\bterug\b",
    r"\bdo (?:dnia )?\d", r"\bwrac", r"\btill (?:och med|\d)", r"\båter", r"\baté (?:o dia|\d)",
    r"\bregresso\b",
)  # fmt: skip
AWAY_INSTEAD = (
    r"\b(?:urgent|emergenc|immediate assistance|in my absence|while i(?:'m| am) away)\b",
    r"\b(?:limited|no|intermittent) access to (?:my )?(?:e-?mail|email|phone)",
    r"\b(?:reply|respond|answer|get back|read) .{0,40}(?:return|back)\b",
    r"\bwill (?:not )?be (?:forwarded|read|checking)", r"\bplease contact\b",
    r"\b(?:thank you|thanks) for (?:your (?:e-?mail|message|note|inquiry|enquiry)|writing)\b",
    r"\b(?:nobody|no one|no-one|none of us) (?:will be |is |here )?(?:reading|read|checking|here|"
    r"in|monitoring|answer)",
    r"\bread no (?:e-?mail|mail)\b", r"\bwhen (?:we're|we’re|we are|i'm|i am|i) (?:back|return)",
    r"\b(?:after|upon|on) my return\b|\b(?:spotty|no|poor|limited) (?:cell|signal|reception|"
    r"service|internet)|\b(?:get to|answer|deal with|look at) (?:it|them|mail|you|messages) (?:on|"
    r"when|after|next)\b|\bplease send (?:anything|everything|all|mail|e-?mails?) (?:for|to)\b|"
    r"\bvertretung\b|\bin dringenden\b|\b(?:buone|bonnes) (?:vacanze|ferie|vacances)\b|\bschöne "
    r"(?:feiertage|ferien)\b|\bmerry christmas\b|\bhappy holidays\b",
    r"\btakes? over (?:for me|my)\b",
    r"\bje vous répondrai|\bseront (?:traités|lus)|\bmerci (?:de|pour) votre (?:message|mail)|"
    r"\bremercie (?:de|pour) votre message",
    r"\bnach (?:meiner|unserer) rückkehr|\bwerden ab dem\b|\b(?:danke|dank) für (?:ihre|deine) "
    r"(?:nachricht|e-?mail|mail)",
    r"\bgracias por (?:su|tu) (?:mensaje|correo)|\bresponderé\b|\ba mi (?:regreso|vuelta)",
    r"\bgrazie per (?:il|la) (?:suo|sua|tuo|tua) (?:messaggio|mail|e-?mail)|\brisponderò\b|\bal "
    r"mio rientro",
    r"\bbedankt voor (?:uw|je) (?:bericht|mail|e-?mail)|\bna mijn terugkeer",
    r"\bacil (?:durum|haller)", r"\bnot (?:be )?(?:checking|reading) (?:my )?e-?mail",
    r"\bdringend", r"\bnicht weitergeleitet|\bweitergeleitet\b",
    r"\bmeine vertretung|\bvertritt mich", r"\bnicht (?:gelesen|bearbeitet|mehr gelesen)",
    r"\bkünftig\b|\bfrom now on\b|\bdésormais\b",
    r"\bvielen dank für ihre (?:nachricht|e-?mail|mail)", r"\bwenden sie sich\b",
    r"\burgence\b|\burgent\b", r"\baccès à (?:ma|mes) ", r"\bmerci de contacter",
    r"\burgente\b|\burgenza\b|\burgencia\b", r"\bcontact(?:ar|ez|e|are|tare)\b",
    r"\bcontattare\b|\brivolgersi\b", r"\bdringende\b|\bspoed\b|\bneem contact op\b",
    r"\bw (?:pilnych|sprawach)|\bpilne\b|\bkontakt\b", r"\bbrådskande\b|\bkontakta\b",
    r"\bur gente|\bem caso de urgência|\bcontacte\b",
)  # fmt: skip

# What becomes of mail meanwhile: with a date, that is an absence note without the word.
MAIL_WAITS = (
    r"\b(?:e-?mails?|messages?|nachrichten|mails|messages|mensajes|messaggi|berichten|"
    r"correos)\b[^.\n]{0,40}\b(?:will (?:be|not be)|werden|wird|seront|sera|serán|será|saranno|"
    r"sarà|worden)\b",
)  # fmt: skip

BOUNCE_SUBJECTS = (
    r"undeliverable\b", r"undelivered (?:mail|message|e-?mail)", r"returned mail\b",
    r"mail delivery (?:failed|failure|subsystem|system)", r"delivery status notification",
    r"failure notice", r"delivery (?:has )?(?:failed|failure|delayed|notification)",
    r"message (?:delivery )?(?:undeliverable|delayed|blocked)", r"non[- ]delivery", r"\bndr\b",
    r"warning: (?:could not send|message)", r"mail system error", r"unzustellbar",
    r"nicht zustellbar", r"zustell(?:ung|fehler|störung)", r"non (?:remis|distribué|délivré|livré)",
    r"échec de (?:la )?(?:remise|distribution)", r"no se (?:puede|ha podido|pudo) entregar",
    r"no entregado", r"devuelto", r"mancato recapito", r"non recapitabile",
    r"impossibile (?:recapitare|consegnare)", r"onbestelbaar", r"niet (?:bezorgd|afgeleverd)",
    r"nie można dostarczyć|niedostarczon", r"olevererbart|ej levererat|kunde inte levereras",
    r"não entregue|não foi possível entregar", r"doručení|kézbesít|недоставлен|配信不能|退信",
)  # fmt: skip
BOUNCE_WORDS = (
    r"\b[245]\.\d\.\d{1,3}\b", r"\b(?:550|551|552|553|554|421|450|451|452)[ -]",
    r"\b(?:mailbox|inbox|account) [^.\n]{0,40}(?:full|over|quota|unavailable|disabled|not exist|"
    r"would not take|does not)",
    r"\b(?:user|recipient|address|mailbox|domain|host) (?:name )?(?:is )?(?:unknown|not found|"
    r"rejected|does not exist|doesn't exist|was not found|unavailable)",
    r"\b(?:wasn't|was not|weren't|unable|not able|failed) (?:able )?to (?:be )?deliver",
    r"\bthe following address(?:es)?\b|\bfollowing recipients?\b",
    r"\bsorry (?:it|that|to have) (?:didn't work|to inform)|\bmail (?:program|server|gateway) at\b",
    r"\b(?:could|can) ?not be delivered\b|\bcouldn't be delivered\b|\bwas(?:n't| not) delivered\b",
    r"\bdelivery (?:to the following|has failed|attempt|failed permanently|is delayed)",
    r"\bthis is the mail (?:system|delivery)", r"\bpermanent(?: fatal)? error",
    r"\bnot accepted by", r"\b(?:could|can) not be reached\b",
    r"\b(?:remote |receiving )?(?:mail )?server (?:responded|replied|said|returned)\b",
    r"\bstopped trying\b", r"\bwill (?:be retried|keep trying|retry)\b", r"\bdiagnostic[- ]code\b",
    r"\bmailer-daemon\b", r"\bkonnte nicht (?:zugestellt|übermittelt)",
    r"\bpostfach [^.\n]{0,30}voll", r"\bn'a pas pu être (?:remis|distribué|délivré)",
    r"\bno (?:se pudo|pudo ser|ha sido) entreg",
    r"\bnon (?:è stato possibile|può essere) (?:recapit|consegn)",
    r"\bkon niet worden (?:bezorgd|afgeleverd)", r"\bnie (?:mogła|może) (?:zostać|być) dostarczon",
    r"\bkunde inte levereras",
)  # fmt: skip

RECEIPT_SUBJECTS = (
    r"(?:read|opened|displayed|not read|delivered|relayed|seen|deleted "
    r"without)(?:\s*\([^)]*\))?\s?:",
    r"(?:read|return|delivery) receipt", r"gelesen\s?:", r"ungelesen gelöscht", r"lesebestätigung",
    r"(?:lu|non lu)\s?:", r"accusé de (?:lecture|réception)", r"confirmation de lecture",
    r"leído\s?:", r"confirmación de lectura", r"letto\s?:", r"conferma di lettura", r"gelezen\s?:",
    r"leesbevestiging", r"läst\s?:", r"läskvitto", r"przeczytan[eoa]\s?:",
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
    r"\bis (?:gelezen|geopend|bezorgd)\b|\bgelezen op\b", r"\b(?:lästes|har lästs|öppnades)\b",
    r"\bzosta[łl](?:a|o)? (?:przeczytan|otwart|wyświetlon)", r"\bfoi (?:lida|aberta|entregue)\b",
    r"\byour message\s", r"\bihre nachricht\s*\n",
)  # fmt: skip

NO_REPLY_SENDER = (
    r"(?:no|do|donot|not)[-_.]?(?:t[-_.])?repl(?:y|ies)\b|^noreply|no[-_.]?responder|"
    r"ne[-_.]?pas[-_.]?repondre|"
    r"nicht[-_.]?antworten|nao[-_.]?responda|nie[-_.]?odpowiadaj|nonrispondere|"
    r"^notifications?@|^alerts?@|"
    r"^auto(?:mailer|mated|responder|reply)@|^bounces?[-+@]|^newsletter@|^mailer@|^robot@|^system@"
)
ROLE_SENDER = (
    r"^(?:[\w.-]*(?:tickets?|quarantine|notif\w*|alerts?|reminders?|voicemail|scanner|scan|copier|"
    r"printer|mfp|backup|cron|help ?desk|service-?desk|calendar|marketplace|tracking|listings?|"
    r"newsletter|news|updates?|digest|marketing|webmaster|autoreply)|root|vm|it|www-data)@"
)
SYSTEM_SENDER = (
    r"^(?:mailer[-_]?daemon|postmaster|mail[-_]?delivery|double-bounce|listserv|majordomo)(?:@|$)"
)

INVITATION_SUBJECTS = (
    r"(?:updated )?invitation(?: \S+)?\s?:",
    r"(?:accepted|declined|tentative(?:ly accepted)?|cancell?ed(?: event)?|new time proposed)\s?:",
    r"einladung\s?:|zugesagt\s?:|abgelehnt\s?:|abgesagt\s?:",
    r"invitation à\b|accepté\s?:|refusé\s?:", r"aceptado\s?:|rechazado\s?:|invitación\s?:",
    r"accettato\s?:|rifiutato\s?:|invito\s?:", r"geaccepteerd\s?:|geweigerd\s?:|uitnodiging\s?:",
)  # fmt: skip
INVITATION_WORDS = (
    r"^\s*(?:when|where|wann|wo|quand|où|cuándo|dónde|quando|dove|wanneer|waar|organi[sz]er|"
    r"calendar|join)\s?:",
    r"\bjoin (?:the |this )?(?:online )?(?:meeting|call)\b", r"\bmeeting id\b",
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
    r"^[ \t*]*(?:your )?(?:name|full name|first name|nom|nombre|nome|naam|vorname|imię)\*?[ "
    r"\t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:e-?mail|email address|mail|correo|courriel|e-?mail-?adresse)\*?[ "
    r"\t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:phone|telephone|telefon|téléphone|teléfono|telefono|telefoon|"
    r"mobile)\*?[ \t]*[:=\t]",
    r"^[ \t*]*(?:your )?(?:message|comments?|enquiry|inquiry|question|nachricht|anfrage|mensaje|"
    r"messaggio|bericht|request|details|subject|how can we help\??)\*?[ \t]*[:=\t]?[ \t]*",
    r"^[ \t*]*(?:company|firma|société|empresa|azienda|bedrijf|organisation)\*?[ \t]*[:=\t]",
)  # fmt: skip
FORM_WORDS = (
    r"\bcontact(?:-| )?(?:us )?form\b|\bweb(?:site)? (?:form|enquiry|inquiry)\b|"
    r"\bkontaktformular\b|\bformulaire de contact\b|\bformulario de contacto\b|\bmodulo (?:di "
    r")?contatt[oi]\b|\bcontactformulier\b|\bnew (?:website )?(?:enquiry|inquiry|submission|"
    r"message) (?:from|via|on)\b|\bform submission\b",
)  # fmt: skip

# A person wants something answered: an absence note never asks this.
PERSON_ASKS = (
    r"\bplease (?:quote|answer|confirm|let|reply|get|hold|ship|advise|call|price|offer|can|could|"
    r"would)\b(?! (?:anything|all|the office))",
    r"\bplease send (?!anything|everything|all\b|mail|e-?mails?|messages|your (?:mail|message|"
    r"e-?mail))",
    r"\b(?:can|could|would|will) you\b",
    r"\b(?:but|and|still|we|i|also) (?:\w+ )?need (?:a|an|one|two|three|\d|it|them|this|your)\b",
    r"\bi (?:need|want|would like|am looking|'m looking)\b",
    r"\bwe (?:need|want|would like|are looking)\b", r"\bquote me\b",
    r"\bbefore (?:then|that|i (?:go|leave))\b",
    r"\b(?:bitte|können sie|könnten sie|wir brauchen|ich brauche|wir benötigen) "
    r"[^.\n]{0,40}(?:anbieten|angebot|senden|schicken|antworten|liefern|machen|bestätigen)",
    r"\bpourriez-vous|\bpouvez-vous|\bj'ai besoin|\bnous avons besoin",
    r"\b(?:puede|pueden|podrían|necesito|necesitamos)\b",
    r"\b(?:potete|potreste|mi serve|ci serve|avrei bisogno)\b",
    r"\b(?:kunt u|kunnen jullie|graag (?:een )?(?:offerte|prijs)|ik heb .{1,30} nodig)\b",
    r"\bproszę o (?:wycenę|ofertę)",
)  # fmt: skip
