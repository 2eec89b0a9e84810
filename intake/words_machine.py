"""Words of programs that mail in bulk or report something, each with how surely a program speaks.

Data only, from memory and from labelled messages. Weight 3 stands in no person's mail; of the
lighter ones several together tell. Each line is one manner of speaking, in all languages. No
regard to case.
"""

from __future__ import annotations

Weighed = tuple[tuple[int, str], ...]

BULK: Weighed = (
    (3, r"\byou(?:'re| are|’re)? (?:are )?(?:receiving|getting|reading|received|get|receive) "
        r"(?:this|our|[\w']+s?)[^.\n]{0,60}\b(?:because|as (?:a|you)|since you)|\byou (?:signed up|"
        r"opted in|subscribed) (?:at|to|for|on|when|in)\b|\bsent to [\d,.]+ (?:\w+)\b"),
    (3, r"\bsie erhalten diese[nsr]? [^.\n]{0,60}\b(?:weil|da sie|newsletter)|\bvous recevez (?:ce|"
        r"cet|cette)|\b(?:recibes?|ha recibido) este [^.\n]{0,40}\bporque|\b(?:ricevi|hai ricevuto|"
        r"riceve) questa? [^.\n]{0,40}\bperch|\b(?:u|je) ontvangt deze [^.\n]{0,50}\bomdat|"
        r"\botrzymujesz t[ęe]n? [^.\n]{0,40}\bponieważ|\bdu får (?:det här|detta) "
        r"[^.\n]{0,40}\beftersom|\bvocê recebe est[ea] [^.\n]{0,40}\bporque"),
    (2, r"\bunsubscribe\b|\bopt[- ]out\b|\bopt out below\b|\bmanage (?:your )?(?:preferences|"
        r"subscription)|\bupdate (?:your )?(?:email )?preferences|\bpreferences\b(?=\s*(?:\||$))"),
    (2, r"\b(?:vom )?newsletter abbestellen|\babmelden\b|\babbestellen\b|\baus(?:tragen|"
        r"getragen)\b|\bse désinscrire|\bdésabonn|\bdésinscription|\bdarse de baja|\bcancelar "
        r"(?:la )?suscripción|\bdisiscri|\bcancella(?:re|rsi|ti)? (?:l')?iscrizione|\bannulla "
        r"(?:l')?iscrizione|\b(?:uitschrijven|afmelden)\b|\bwypisz|\bzrezygnować z (?:subskrypcji|"
        r"newslettera)|\bavregistrera|\bavsluta prenumeration|\bcancelar (?:a )?inscrição"),
    (2, r"\bview (?:this (?:e-?mail|message) )?(?:in|online|it in) (?:your |a )?(?:web ?browser|"
        r"browser)|\bim browser (?:öffnen|ansehen|anzeigen)|\bversion en ligne\b|\bver en (?:el )?"
        r"navegador|\bvisualizza nel browser|\bbekijk (?:online|in (?:je|uw) browser)"),
    (1, r"\bnewsletter\b|\bmailing list\b|\bissue (?:no\.? ?)?\d+\b|\bspecial offer|\bdeal of the|"
        r"\bwebinar\b|\bsubscribers?\b|\bthis week(?:'s)?\b|\bthis month(?:'s)?\b|\brundbrief\b|"
        r"\bin this issue\b|\bau sommaire\b|\ben este número\b|\bin dieser ausgabe\b|\bweekly\b"),
    (1, r"\b\d[\d,.]{0,12} (?:other )?(?:people|readers|subscribers|members)\b|"
        r"\b\d+ ?% (?:off|rabatt|reduc|sconto|korting|de descuento|de remise)|"
        r"\bfree shipping\b|\bshop now\b|\bbuy now\b|"
        r"\border now\b|\bjetzt (?:kaufen|bestellen|shoppen)\b"),
    (1, r"\bforward (?:this )?to a friend|\bfollow us on\b|\ball rights reserved|©|\bstore hours\b|"
        r"\bwhile (?:stocks?|supplies) last\b|\bterms apply\b|\bmembers only\b"),
)  # fmt: skip

_THING = (
    r"(?:order|request|ticket|case|enquiry|inquiry|message|"
    r"listing|account|subscription|document|submission|application|incident|appointment|booking|"
    r"payment|statement|backup|report|domain|licen[cs]e)"
)
_DONE = (
    r"(?:received|created|opened|closed|updated|resolved|logged|registered|assigned|reviewed|"
    r"posted|processed|shipped|dispatched|delivered|completed|confirmed|queued|approved|held|"
    r"renewed|scheduled|cancelled|canceled|escalated|published|generated|picked up|out for "
    r"delivery)"
)

_LABEL = (
    r"(?:pages?|resolution|status|priority|severity|queue|ticket|case|document type|duration|"
    r"carton|window|tracking(?: no)?|event|host|requester|assignee|received|length)"
)

# Weight in front: how surely a machine reports something.
NOTICE: Weighed = (
    # Speaks of itself, or of a mailbox that nobody reads.
    (3, r"\b(?:do not|don't|don’t|please don't|please do not) (?:reply|respond) (?:directly )?to "
        r"this (?:e-?mail|message|notification|mail)\b|\breplies (?:to this (?:e-?mail|message|"
        r"address) )?(?:are not|will not be|aren't) (?:read|monitored|answered)|\b(?:unmonitored|"
        r"unattended) (?:mailbox|address|inbox)|\b(?:mailbox|address|inbox|account) is (?:not|un) "
        r"?(?:being )?(?:monitored|attended|read)|\breply above this line\b"),
    (3, r"\bthis (?:is an?|e-?mail (?:is|was|has been)|message (?:is|was|has been)|notification "
        r"(?:is|was)|goes|went|was sent|has been sent|mail (?:is|was)) (?:an )?(?:auto(?:mated|"
        r"mat(?:ic|ically))?\b|out (?:by itself|automatically))|\bthis (?:e-?mail|"
        r"message) (?:is|was) (?:system|computer)[- ]generated|\b(?:generated|sent) (?:out "
        r")?automatically\b"),
    (3, r"\bdiese (?:e-?mail|nachricht|mail) (?:wurde|ist) (?:vom system )?(?:automatisch|"
        r"maschinell)|\bautomatisch (?:generierte|erstellte|erzeugte|versendete) (?:e-?mail|"
        r"nachricht|mail)|\bautomatische (?:bestätigung|benachrichtigung|mitteilung|nachricht|"
        r"antwort|e-?mail|erinnerung)\b|\b(?:avis|confirmation|réponse|notification|rappel) "
        r"automatique\b|\b(?:aviso|confirmación|respuesta|notificación) automátic[ao]\b|"
        r"\b(?:conferma|avviso|risposta|notifica) automatic[ao]\b|\bautomatische (?:bevestiging|"
        r"melding|reactie)\b|\bnicht auf diese (?:e-?mail|nachricht|mail)\b|\b(?:bitte antworten "
        r"sie nicht|antworten sie bitte nicht|antworten sie nicht auf)\b|\b(?:ne pas|merci de ne "
        r"pas|ne) répond(?:re|ez)(?: pas)? à (?:ce|cet)|\b(?:message|e-?mail|courriel) (?:généré |"
        r"envoyé )?automatique(?:ment)?|\bno respond(?:a|er|as)\b[^.\n]{0,20}\b(?:este|a este)|"
        r"\b(?:mensaje|correo) (?:generado )?automático|\bgenerado automáticamente|\bnon "
        r"rispondere\b[^.\n]{0,20}\b(?:questa?|a questo)|\b(?:messaggio|e-?mail|mail) "
        r"(?:generat[oa] )?automatic[oa](?:mente)?|\bgenerat[oa] automaticamente"),
    (3, r"\bgelieve niet\b[^.\n]{0,25}\b(?:beantwoorden|te antwoorden|reageren)|\bniet (?:te "
        r")?(?:beantwoorden|antwoorden|reageren) op (?:dit|deze)|\b(?:dit|deze) (?:bericht|e-?mail|"
        r"mail)[^.\n]{0,30}niet (?:te )?beantwoorden|\bautomatisch (?:gegenereerd|verzonden|"
        r"aangemaakt)|\b(?:prosimy|proszę) nie odpowiada|\bnie odpowiada(?:ć|j|jcie) na t[ęo]\b|"
        r"\bwygenerowan[aey] automatycznie|\bautomatycznie wygenerowan|\bsvara inte på detta|"
        r"\bautomatiskt (?:genererat|skickat)|\bnão responda a est|\bgerado automaticamente|"
        r"\botomatik olarak (?:gönderil|oluşturul)"),
    (2, r"(?<!your )\bauto(?:mated|matic) (?:message|notification|e-?mail|response|reply|answer|"
        r"acknowledge?ment|alert)\b"),
    (2, r"\bdo[- ]?not[- ]?reply\b(?! (?:to all|all|by|via|until|before|if|on|to (?:my|his|her)))|"
        r"\bno-?reply\b"),
    # Something of ours, or with a number, has been done: nobody says by whom.
    (2, r"\byour " + _THING + r"s?\b[^.\n]{0,45}\b(?:has (?:been )?|have been |was |is being |"
        r"will be |is (?:now )?)" + _DONE + r"|\b(?:ticket|case|request|incident|order|parcel|"
        r"shipment|rfq|tender) (?:#|no\.?|number|id)?:? ?\[?#?[\w-]{0,30}\d[\w-]{0,30}\]?"
        r"[^.\n]{0,50} (?:has been |was |is |will be )" + _DONE + r"\b|\b" + _DONE +
        r":? (?:ticket|case|request) ?#?[\w-]*\d"),
    (2, r"\[(?:ticket|case|request)[ :#]*[\w-]+\]|\[#\w{0,30}\d\]|\bticketnummer\b|\byour ticket\b|"
        r"\b(?:request|case|ticket) #\w{0,30}\d\b|\b(?:case|ticket|reference) (?:id|number):"),
    (2, r"\bwe(?:'ve| have)? (?:have )?(?:received|got) your (?:e-?mail|message|enquiry|inquiry|"
        r"request|application|submission)\b|\bwir haben ihre (?:anfrage|nachricht|e-?mail) "
        r"erhalten|\bnous avons bien reçu votre|\bhemos recibido su|\babbiamo ricevuto la (?:sua|"
        r"tua|vostra)|\bw(?:ij|e) hebben uw .{0,20}(?:ontvangen|goed)|\botrzymaliśmy (?:twoją|"
        r"państwa)|\bvi har (?:tagit emot|fått) ditt"),
    (1, r"\b(?:thank you|thanks) for (?:contacting|reaching out to|getting in touch with|your "
        r"request to)\b|\bdanke,? dass sie (?:uns|sich)|\bmerci (?:de nous avoir|d'avoir) contact|"
        r"\bgracias por (?:contactar|ponerse)|\bgrazie per averci contatta|\bbedankt (?:voor het "
        r"contact|dat u)"),
    (1, r"\b(?:will|shall) (?:respond|reply|get back to you|be in touch|answer|contact you)(?: to "
        r"you)? (?:within|as soon|shortly|in)\b|\bwerden uns .{0,40}(?:melden|in verbindung)|"
        r"\bschnellstmöglich\b|\bdans les (?:meilleurs|plus brefs)|\ben breve\b|\blo antes "
        r"posible\b|\bal più presto\b|\bzo spoedig mogelijk\b|\bjak najszybciej\b|\bså snart som\b|"
        r"\bwithin (?:one|two|three|\d+) (?:business |working )?(?:days?|hours)\b|\bresponse(?: "
        r"time)?:"),
    (2, r"\ban? (?:agent|representative|member of our team|technician|specialist|advisor|expert) "
        r"will\b|\bin kürze (?:bearbeitet|geprüft|beantwortet)|\bwill be processed (?:shortly|"
        r"within|in)\b|\b(?:submitting|filling (?:out|in)|completing) (?:the|our|your) (?:form|"
        r"request)\b|\bone of our (?:agents|team)\b|\b(?:someone|somebody|one) (?:from|of|on) "
        r"(?:the|our) team will\b|\bour team will\b|\btypical response\b|"
        r"\bein mitarbeiter wird\b|\bun (?:agent|conseiller|asesor|"
        r"operatore)\b[^.\n]{0,20}\b(?:vous|le|la)\b|\badd comments\b"),
    # A parcel on its way.
    (2, r"\b(?:parcel|package|shipment|delivery)\b(?:[^.\n]|\.\d){0,80}\b(?:will be delivered "
        r"(?:today|tomorrow|on|between|by)|is scheduled for|ready for pick ?up)\b|\bout for "
        r"delivery\b|\btrack (?:your|my|the) (?:order|parcel|package|shipment)\b|\b(?:ihre|die) "
        r"(?:bestellung|sendung|lieferung|paket)\b[^.\n]{0,40}\b(?:wurde|wird|"
        r"ist)\b[^.\n]{0,30}\b(?:versandt|zugestellt|unterwegs)|\bvotre (?:commande|"
        r"colis)\b[^.\n]{0,30}\b(?:a été|est|sera)\b|\bsu (?:pedido|paquete|"
        r"envío)\b[^.\n]{0,30}\b(?:ha sido|está|será)|\b(?:il tuo|il suo|la tua) (?:ordine|pacco|"
        r"spedizione)\b[^.\n]{0,20}\b(?:è|sarà)|\b(?:uw|je) (?:bestelling|pakket|"
        r"zending)\b[^.\n]{0,20}\b(?:is|wordt)\b"),
    # What to press.
    (2, r"\b(?:view|see|open|read|manage) (?:this |the |your |it |all )?(?:order|ticket|case|"
        r"message|invoice|listing|request|details|topic|thread|document|statement|portal|report|"
        r"online)?s? ?(?:online|here|in (?:the |your |our )?(?:portal|app|browser|account|"
        r"dashboard|system))\b|\bview (?:topic|order|ticket|case|details|listing|online)\b|"
        r"\b(?:log|sign) ?in (?:to|at|with) (?:your|the|view|reply|respond|see|acknowledge|bid|"
        r"submit|our)|\b(?:log|sign) ?in to \w+\b|\b(?:click|tap|press) (?:the (?:button|link)|"
        r"below|on)\b|\breply (?:through|via|on) (?:the )?(?:portal|website|marketplace)\b|\bhier "
        r"klicken\b|\bcliquez (?:ici|sur)\b|\bconnectez-vous (?:pour|à|sur)\b|\bhaga clic\b|"
        r"\bpulse (?:aquí|en)\b|\bacceda a\b|\binicie sesión\b|\bclicca (?:qui|su)\b|\baccedi (?:a|"
        r"al|per)\b|\bklik (?:hier|op)\b|\blog in op\b|\bmelden sie sich an\b|\b(?:im|zum) "
        r"portal\b|\bportail\b|\bportale\b|\bdans votre espace\b|\bkliknij\b|\bklicka (?:här|på)\b|"
        r"\bclique aqui\b"),
    (2, r"\b(?:change|manage|update) (?:your )?(?:delivery|notification|e-?mail|account|billing|"
        r"plan|settings|payment) ?(?:options|settings|preferences|method|details)?\b|\bdelivery "
        r"options\b|\bpay (?:online|now|here)\b|\brelist\b|\brenew now\b|\bsubmit (?:your|a) "
        r"(?:bid|quote|response)\b|\bmatching your (?:profile|search|interests|alert)\b|\brelease "
        r"(?:them|all|this|it|message)\b|\bdial \*?\d|· mute\b|\bsee (?:the |all )?(?:comments?|"
        r"post|repl(?:y|ies)|more)\b|\bread (?:more|on|the full)\b|\blearn more\b|\bfind out "
        r"more\b|\bget started\b|\bbrowse (?:our|the|all)\b|\bvisit (?:our|the) (?:help|support|"
        r"faq|store|site)\b|\bhelp cent(?:er|re)\b|\bfaqs?\b|\b(?:mehr erfahren|weiterlesen|jetzt "
        r"ansehen)\b|\blive verfolgen\b|\bsendung verfolgen\b|\ben savoir plus\b|\blire la suite\b|"
        r"\bconsultez\b|\b(?:ver|leer|saber) más\b|\bscopri(?: di più)?\b|\bleggi (?:tutto|di "
        r"più)\b|\blees (?:meer|verder)\b|\bbekijk\b"),
    (1, r"\b(?:expires?|will expire|deleted?|closes?|auto-?close[sd]?)\b[^.\n]{0,20}\b(?:in|within|"
        r"after|on) \d+ (?:days?|hours)\b|\bwithin \d+ days or\b|\b\d+ days (?:past due|overdue)\b|"
        r"\bwere held since\b|\b(?:messages?|mails?) (?:were|are|was) (?:held|quarantined|"
        r"blocked)\b"),
    (1, r"\bexpires? in \d|\bheld (?:for|since) |\bquarantine|\byour (?:listing|subscription|"
        r"licen[cs]e|plan|trial|domain|watch ?list|profile|last report)\b"),
    # Figures of a device or a system, a line each.
    (2, r"\bverification code\b|\bone[- ]time (?:code|password)|\bpassword (?:reset|was changed)|"
        r"\bnew (?:sign-?in|login)\b|\bbackup (?:completed|failed|job|report)|\b(?:job|task|run|"
        r"build|import|export|sync|update) \S+ (?:has )?(?:finished|completed|failed|succeeded)\b|"
        r"\bnext run\b|\bhow did we do\b|\brate (?:your|the|this) (?:recent|purchase|order|"
        r"experience|visit|service)|\btap (?:a|here|to|the)\b|\bscan(?:ned)? (?:document|file|"
        r"image|from|by|data)\b|\bvoice ?(?:mail|message) (?:from|in|received)\b|\bnew voice ?m"),
    (1, r"^[ \t]*" + _LABEL + r"[ \t]*[:\t][^\n]{0,80}\n[ \t]*" + _LABEL + r"[ \t]*[:\t]|\b\d+ ?x ?"
        r"\d+ ?dpi\b|\bdevice\b[^.\n]{0,20}\b[a-z]+-\d"),
    (1, r"^(?:your|ihr|votre|su|uw) (?:plan|subscription|account|trial|listing|statement|receipt|"
        r"package|parcel|order|request|ticket|paket|colis|commande|demande|pedido|bestelling|"
        r"pakket)\b|^(?:weekly|daily|monthly|low|action required|security|failed|alert|reminder|"
        r"recordatorio|rappel|promemoria|herinnering|scheduled)\b|^new (?:rfq|message|comment|"
        r"reply|order|login|document|notification)\b"),
    (1, r"\bthank you for your (?:business|order|purchase|payment|interest|patience|feedback)\b|"
        r"\bwe (?:have )?(?:received|processed) your (?:payment|order)\b|\breceipt (?:is "
        r")?attached\b|\bvielen dank für ihren (?:einkauf|auftrag)\b|\bmerci (?:de|pour) votre "
        r"(?:commande|achat|confiance)\b|\bgracias por su (?:compra|pedido)\b|\bgrazie per (?:il "
        r"tuo|il suo) (?:ordine|acquisto)\b"),
    (2, r"\b(?:reports?|reported)(?: an?| the)?: |\b\w{1,40}[-_]\w{1,40} (?:commented|replied|"
        r"mentioned|posted|reacted|liked|shared|invited)\b|\b(?:commented|replied|reacted) (?:on|"
        r"to) (?:your|a)\b|\b(?:content|spam|virus|mail) filter\b|\b(?:was|has been) (?:rejected|"
        r"blocked|quarantined|held)\b|\bis (?:now )?available (?:on|in|for) (?:the|your|download)|"
        r"\b(?:est|ist|está|è|is) (?:nun |jetzt |désormais |ahora |ora |nu )?(?:disponible|"
        r"verfügbar|disponibile|beschikbaar)\b|\btrifft (?:voraussichtlich|heute|morgen)\b|"
        r"\ble recordamos\b|\bwir erinnern sie\b|\bnous vous rappelons\b|\ble ricordiamo\b|"
        r"\bestimated (?:delivery|arrival)\b"),
    (2, r"\bscheduled (?:maintenance|downtime|outage)\b|\b(?:service|system|portal|site|website|"
        r"server)\b[^.\n]{0,30}\bwill be (?:unavailable|offline|upgraded|migrated)\b|"
        r"\bwartungsarbeiten\b|\bmaintenance programmée\b|\b(?:\d+|people|someone|members?) "
        r"(?:people |members |users )?(?:viewed|visited|looked at|liked|followed) your\b|\bupgrade "
        r"(?:to|now|your)\b|\bunlock\b|\byou have \d+ (?:new|unread|pending)\b|\b(?:tell|refer|"
        r"forward to) a friend\b|\bstop (?:getting|receiving) these\b|\bréglez en ligne\b|\ben un "
        r"clic\b|\barrive à échéance\b|\bläuft (?:am|in) [^.\n]{0,20} ab\b|\bvence el\b"),
    (1, r"\bno action (?:is )?(?:required|needed)\b|\bno need to do anything\b|\b(?:renews?|will "
        r"renew|auto-?renew)\b|\butc\b|\bwe read every (?:message|mail|e-?mail)\b"),
    (1, r"\bnotification\b|\breminder\b|\bsystem\b|\balert\b|\bbenachrichtigung\b|\bnotificación\b|"
        r"\bnotifica\b|\bmelding\b|\berinnerung\b|\brappel\b|\brecordatorio\b|\bpromemoria\b"),
)  # fmt: skip
