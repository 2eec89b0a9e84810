"""Words of programs that mail in bulk or report something, each with how surely a program speaks.

Data only, from memory and the open sample. Weight 3 stands in no person's mail; of the lighter ones
several together tell. Each line is one manner of speaking, in all languages. No regard to case.
"""

from __future__ import annotations

Weighed = tuple[tuple[int, str], ...]

BULK: Weighed = (
    (3, r"\byou(?:'re| are|’re)? (?:are )?(?:receiving|getting|reading|received|get|receive) (?:this|"
        r"our|[\w']+s?)[^.\n]{0,60}\b(?:because|as (?:a|you)|since you)|\byou (?:signed up|opted in|"
        r"subscribed) (?:at|to|for|on|when|in)\b|\bsent to [\d,.]+ (?:\w+)\b"),
    (3, r"\bsie erhalten diese[nsr]? [^.\n]{0,60}\b(?:weil|da sie|newsletter)|"
        r"\bvous recevez (?:ce|cet|cette)|\b(?:recibes?|ha recibido) este [^.\n]{0,40}\bporque|"
        r"\b(?:ricevi|hai ricevuto|riceve) questa? [^.\n]{0,40}\bperch|"
        r"\b(?:u|je) ontvangt deze [^.\n]{0,50}\bomdat|\botrzymujesz t[ęe]n? [^.\n]{0,40}\bponieważ|"
        r"\bdu får (?:det här|detta) [^.\n]{0,40}\beftersom|\bvocê recebe est[ea] [^.\n]{0,40}\bporque"),
    (2, r"\bunsubscribe\b|\bopt[- ]out\b|\bopt out below\b|\bmanage (?:your )?(?:preferences|"
        r"subscription)|\bupdate (?:your )?(?:email )?preferences|\bpreferences\b(?=\s*(?:\||$))"),
    (2, r"\b(?:vom )?newsletter abbestellen|\babmelden\b|\babbestellen\b|\baus(?:tragen|getragen)\b|"
        r"\bse désinscrire|\bdésabonn|\bdésinscription|\bdarse de baja|\bcancelar (?:la )?"
        r"suscripción|\bdisiscri|\bcancella(?:re|rsi|ti)? (?:l')?iscrizione|\bannulla (?:l')?"
        r"iscrizione|\b(?:uitschrijven|afmelden)\b|\bwypisz|\bzrezygnować z (?:subskrypcji|"
        r"newslettera)|\bavregistrera|\bavsluta prenumeration|\bcancelar (?:a )?inscrição"),
    (2, r"\bview (?:this (?:e-?mail|message) )?(?:in|online|it in) (?:your |a )?(?:web ?browser|"
        r"browser)|\bim browser (?:öffnen|ansehen|anzeigen)|\bversion en ligne\b|\bver en (?:el )?"
        r"navegador|\bvisualizza nel browser|\bbekijk (?:online|in (?:je|uw) browser)"),
    (1, r"\bnewsletter\b|\bmailing list\b|\bissue (?:no\.? ?)?\d+\b|\bspecial offer|\bdeal of the|"
        r"\bwebinar\b|\bsubscribers?\b|\bthis week(?:'s)?\b|\bthis month(?:'s)?\b|\brundbrief\b|"
        r"\bin this issue\b|\bau sommaire\b|\ben este número\b|\bin dieser ausgabe\b|\bweekly\b"),
    (1, r"\b\d[\d,.]* (?:other )?(?:people|readers|subscribers|members)\b|\b\d+ ?% (?:off|rabatt|"
        r"reduc|sconto|korting|de descuento|de remise)|\bfree shipping\b|\bshop now\b|\bbuy now\b|"
        r"\border now\b|\bjetzt (?:kaufen|bestellen|shoppen)\b"),
    (1, r"\bforward (?:this )?to a friend|\bfollow us on\b|\ball rights reserved|©|\bstore hours\b|"
        r"\bwhile (?:stocks?|supplies) last\b|\bterms apply\b|\bmembers only\b"),
)  # fmt: skip

_THING = (
    r"(?:order|parcel|package|shipment|delivery|request|ticket|case|enquiry|inquiry|message|listing|"
    r"account|subscription|document|submission|application|incident|appointment|booking|payment|"
    r"statement|backup|report|claim|certificate|domain|licen[cs]e|quotation)"
)
_DONE = (
    r"(?:received|created|opened|closed|updated|resolved|logged|registered|assigned|reviewed|posted|"
    r"processed|shipped|dispatched|delivered|completed|confirmed|queued|approved|held|renewed|"
    r"scheduled|cancelled|canceled|escalated|published|generated|picked up|out for delivery)"
)

_LABEL = (
    r"(?:pages?|resolution|status|priority|severity|queue|ticket|case|document type|duration|carton|"
    r"window|tracking(?: no)?|event|host|requester|assignee|received|length)"
)

# Weight in front: how surely a machine reports something.
NOTICE: Weighed = (
    # Speaks of itself, or of a mailbox that nobody reads.
    (3, r"\b(?:do not|don't|don’t|please don't|please do not) (?:reply|respond) (?:directly )?to this "
        r"(?:e-?mail|message|notification|mail)\b|\breplies (?:to this (?:e-?mail|message|address) )?"
        r"(?:are not|will not be|aren't) (?:read|monitored|answered)|\b(?:unmonitored|unattended) "
        r"(?:mailbox|address|inbox)|\b(?:mailbox|address|inbox|account) is (?:not|un) ?(?:being )?"
        r"(?:monitored|attended|read)|\breply above this line\b|\bnoreply\b"),
    (3, r"\bthis (?:is an?|e-?mail (?:is|was|has been)|message (?:is|was|has been)|notification (?:is|"
        r"was)|goes|went|was sent|has been sent|mail (?:is|was)) (?:an )?(?:auto(?:mated|mat(?:ic|"
        r"ically))?\b|out (?:by itself|automatically))|\bauto(?:mated|matic) (?:message|notification|"
        r"e-?mail|response|reply|answer|acknowledge?ment|alert)\b|\bthis (?:e-?mail|message) (?:is|was) "
        r"(?:system|computer)[- ]generated|\b(?:generated|sent) (?:out )?automatically\b"),
    (3, r"\bdiese (?:e-?mail|nachricht|mail) (?:wurde|ist) (?:vom system )?(?:automatisch|"
        r"maschinell)|\bautomatisch (?:generierte|erstellte|erzeugte|versendete) (?:e-?mail|nachricht|mail)|"
        r"\bautomatische (?:bestätigung|benachrichtigung|mitteilung|nachricht|antwort|e-?mail|erinnerung)\b|"
        r"\b(?:avis|confirmation|réponse|notification|rappel) automatique\b|\b(?:aviso|confirmación|respuesta|"
        r"notificación) automátic[ao]\b|\b(?:conferma|avviso|risposta|notifica) automatic[ao]\b|\bautomatische "
        r"(?:bevestiging|melding|reactie)\b|\bnicht auf diese (?:e-?mail|nachricht|mail)\b|\bantworten sie (?:bitte )?nicht\b|"
        r"\b(?:ne pas|merci de ne pas|ne) répond(?:re|ez)(?: pas)? à (?:ce|cet)|\b(?:message|e-?mail|"
        r"courriel) (?:généré |envoyé )?automatique(?:ment)?|\bno respond(?:a|er|as)\b[^.\n]{0,20}\b"
        r"(?:este|a este)|\b(?:mensaje|correo) (?:generado )?automático|\bgenerado automáticamente|"
        r"\bnon rispondere\b[^.\n]{0,20}\b(?:questa?|a questo)|\b(?:messaggio|e-?mail|mail) "
        r"(?:generat[oa] )?automatic[oa](?:mente)?|\bgenerat[oa] automaticamente"),
    (3, r"\b(?:niet|gelieve niet)\b[^.\n]{0,25}\b(?:beantwoorden|te antwoorden|reageren)|"
        r"\bautomatisch (?:gegenereerd|verzonden|aangemaakt)|\b(?:prosimy )?nie odpowiada|"
        r"\bwygenerowan[aey] automatycznie|\bautomatycznie wygenerowan|\bsvara inte på detta|"
        r"\bautomatiskt (?:genererat|skickat)|\bnão responda a est|\bgerado automaticamente|"
        r"\botomatik olarak (?:gönderil|oluşturul)"),
    (2, r"\bdo[- ]?not[- ]?reply\b(?! (?:to all|all|by|via|until|before|if|on|to (?:my|his|her)))|"
        r"\bno-?reply\b"),
    # Something of ours, or with a number, has been done: nobody says by whom.
    (2, r"\byour " + _THING + r"s?\b[^.\n]{0,45}\b(?:has (?:been )?|have been |was |is being |will be |is "
        r"(?:now )?)" + _DONE + r"|\b(?:ticket|case|request|incident|order|parcel|shipment|rfq|tender) "
        r"(?:#|no\.?|number|id)?:? ?\[?#?[\w-]*\d[\w-]*\]?[^.\n]{0,50} (?:has been |was |is |will be )"
        + _DONE + r"\b|\b" + _DONE + r":? (?:ticket|case|request) ?#?[\w-]*\d"),
    (2, r"\[(?:ticket|case|request)[ :#]*[\w-]+\]|\[#\w*\d+\]|\bticketnummer\b|\byour ticket\b|"
        r"\b(?:request|case|ticket) #\w*\d+\b|\b(?:case|ticket|reference) (?:id|number):"),
    (2, r"\bwe(?:'ve| have)? (?:have )?(?:received|got) your (?:e-?mail|message|enquiry|inquiry|request|"
        r"application|submission)\b|\bwir haben ihre (?:anfrage|nachricht|e-?mail) erhalten|\bnous "
        r"avons bien reçu votre|\bhemos recibido su|\babbiamo ricevuto la (?:sua|tua|vostra)|"
        r"\bw(?:ij|e) hebben uw .{0,20}(?:ontvangen|goed)|\botrzymaliśmy (?:twoją|państwa)|"
        r"\bvi har (?:tagit emot|fått) ditt"),
    (1, r"\b(?:thank you|thanks) for (?:contacting|reaching out to|getting in touch with|your request "
        r"to)\b|\bdanke,? dass sie (?:uns|sich)|\bmerci (?:de nous avoir|d'avoir) contact|\bgracias por "
        r"(?:contactar|ponerse)|\bgrazie per averci contatta|\bbedankt (?:voor het contact|dat u)"),
    (1, r"\b(?:will|shall) (?:respond|reply|get back to you|be in touch|answer|contact you)(?: to you)? "
        r"(?:within|as soon|shortly|in)\b|\bwerden uns .{0,40}(?:melden|in verbindung)|"
        r"\bschnellstmöglich\b|\bdans les (?:meilleurs|plus brefs)|\ben breve\b|\blo antes posible\b|"
        r"\bal più presto\b|\bzo spoedig mogelijk\b|\bjak najszybciej\b|\bså snart som\b|\bwithin "
        r"(?:one|two|three|\d+) (?:business |working )?(?:days?|hours)\b|\bresponse(?: time)?:"),
    (2, r"\ban? (?:agent|representative|member of our team|technician|specialist|advisor|expert) will\b|\bin kürze "
        r"(?:bearbeitet|geprüft|beantwortet)|\bwill be processed (?:shortly|within|in)\b|\b(?:submitting|filling (?:out|in)|"
        r"completing) (?:the|our|your) (?:form|request)\b|\bone of our (?:agents|"
        r"team)\b|\btypical response\b|\bis being reviewed\b|\bein mitarbeiter wird\b|\bun (?:agent|"
        r"conseiller|asesor|operatore)\b[^.\n]{0,20}\b(?:vous|le|la)\b|\badd comments\b"),
    # A parcel on its way.
    (2, r"\b(?:parcel|package|shipment|delivery)\b[^.\n]{0,80}\b(?:will be delivered|out for delivery|"
        r"is on (?:its|the) way|is scheduled|was (?:delivered|left)|has been|ready for pick ?up)\b|"
        r"\bout for delivery\b|\btrack (?:your|my|the) (?:order|parcel|package|shipment)\b|\b(?:ihre|"
        r"die) (?:bestellung|sendung|lieferung|paket)\b[^.\n]{0,40}\b(?:wurde|wird|ist)\b[^.\n]{0,30}"
        r"\b(?:versandt|zugestellt|unterwegs)|\bvotre (?:commande|colis)\b[^.\n]{0,30}\b(?:a été|est|"
        r"sera)\b|\bsu (?:pedido|paquete|envío)\b[^.\n]{0,30}\b(?:ha sido|está|será)|\b(?:il tuo|il suo|"
        r"la tua) (?:ordine|pacco|spedizione)\b[^.\n]{0,20}\b(?:è|sarà)|\b(?:uw|je) (?:bestelling|"
        r"pakket|zending)\b[^.\n]{0,20}\b(?:is|wordt)\b"),
    # What to press.
    (2, r"\b(?:view|see|open|read|manage) (?:this |the |your |it |all )?(?:order|ticket|case|message|"
        r"invoice|listing|request|details|topic|thread|document|statement|portal|report|online)?s? ?"
        r"(?:online|here|in (?:the |your |our )?(?:portal|app|browser|account|dashboard|system))\b|"
        r"\bview (?:topic|order|ticket|case|details|listing|online)\b|\b(?:log|sign) ?in (?:to|at|with) "
        r"(?:your|the|view|reply|respond|see|acknowledge|bid|submit|our)|\b(?:log|sign) ?in to \w+\b|\b(?:click|tap|press) (?:the (?:button|link)|below|on)\b|\breply (?:through|via|on) "
        r"(?:the )?(?:portal|website|marketplace)\b|\bhier klicken\b|\bcliquez (?:ici|sur)\b|\bconnectez-vous (?:pour|à|sur)\b|\bhaga clic\b|\bpulse (?:aquí|en)\b|"
        r"\bacceda a\b|\binicie sesión\b|\bclicca (?:qui|su)\b|\baccedi (?:a|al|per)\b|\bklik (?:hier|op)\b|\blog in op\b|"
        r"\bmelden sie sich an\b|\b(?:im|zum) portal\b|\bportail\b|\bportale\b|\bdans votre espace\b|\bkliknij\b|"
        r"\bklicka (?:här|på)\b|\bclique aqui\b"),
    (2, r"\b(?:change|manage|update) (?:your )?(?:delivery|notification|e-?mail|account) (?:options|"
        r"settings|preferences)|\bdelivery options\b|\bpay (?:online|now|here)\b|\brelist\b|\brenew "
        r"now\b|\bsubmit (?:your|a) (?:bid|quote|response)\b|\bmatching your (?:profile|search|"
        r"interests|alert)\b|\brelease (?:them|all|this|it|message)\b|\bdial \*?\d|· mute\b|\bsee (?:the |all )?(?:comments?|post|repl(?:y|ies)|more)\b|\bread (?:more|on|the full)\b|"
        r"\blearn more\b|\bfind out more\b|\bget started\b|\bbrowse (?:our|the|all)\b|\bvisit (?:our|the) (?:help|"
        r"support|faq|store|site)\b|\bhelp cent(?:er|re)\b|\bfaqs?\b|\b(?:mehr erfahren|weiterlesen|jetzt ansehen)\b|"
        r"\blive verfolgen\b|\bsendung verfolgen\b|\ben savoir plus\b|\blire la suite\b|\bconsultez\b|\b(?:ver|leer|"
        r"saber) más\b|\bscopri(?: di più)?\b|\bleggi (?:tutto|di più)\b|\blees (?:meer|verder)\b|\bbekijk\b"),
    (1, r"\b(?:expires?|will expire|deleted?|closes?|auto-?close[sd]?)\b[^.\n]{0,20}\b(?:in|within|after|"
        r"on) \d+ (?:days?|hours)\b|\bwithin \d+ days or\b|\b\d+ days (?:past due|overdue)\b|\bwere held "
        r"since\b|\b(?:messages?|mails?) (?:were|are|was) (?:held|quarantined|blocked)\b"),
    (1, r"\bexpires? in \d|\bheld (?:for|since) |\bquarantine|\byour (?:listing|subscription|licen[cs]e|"
        r"plan|trial|domain|watch ?list|profile|last report)\b"),
    # Figures of a device or a system, a line each.
    (2, r"\bverification code\b|\bone[- ]time (?:code|password)|\bpassword (?:reset|was changed)|"
        r"\bnew (?:sign-?in|login)\b|\bbackup (?:completed|failed|job)|\bscan(?:ned)? (?:document|file|"
        r"image|from|by|data)\b|\bvoice ?(?:mail|message) (?:from|in|received)\b|\bnew voice ?m"),
    (1, r"^[ \t]*" + _LABEL + r"[ \t]*[:\t][^\n]{0,80}\n[ \t]*" + _LABEL + r"[ \t]*[:\t]|\b\d+ ?x ?"
        r"\d+ ?dpi\b|\bdevice\b[^.\n]{0,20}\b[a-z]+-\d"),
    (1, r"^(?:your|ihre?|votre|su|il tuo|la tua|uw|jouw|new|neue[rs]?|nouve(?:au|lle)|nuev[oa]|nieuwe?|"
        r"weekly|daily|monthly|low|payment|receipt|reminder|recordatorio|rappel|erinnerung|promemoria|herinnering|"
        r"action required|message|document|delivery|shipment|welcome|confirm\w*|alert|security|failed|success\w*)\b"),
    (1, r"\bthank you for your (?:business|order|purchase|payment|interest|patience|feedback)\b|\bwe (?:have )?"
        r"(?:received|processed) your (?:payment|order)\b|\breceipt (?:is )?attached\b|\bvielen dank für ihren (?:einkauf|"
        r"auftrag)\b|\bmerci (?:de|pour) votre (?:commande|achat|confiance)\b|\bgracias por su (?:compra|pedido)\b|\bgrazie "
        r"per (?:il tuo|il suo) (?:ordine|acquisto)\b"),
    (2, r"\b(?:reports?|reported)(?: an?| the)?: |\b\w+[-_]\w+ (?:commented|replied|mentioned|posted|reacted|liked|"
        r"shared|invited)\b|\b(?:commented|replied|reacted) (?:on|to) (?:your|a)\b|\b(?:content|spam|virus|mail) "
        r"filter\b|\b(?:was|has been) (?:rejected|blocked|quarantined|held)\b|\bis (?:now )?available (?:on|in|for) "
        r"(?:the|your|download)|\b(?:est|ist|está|è|is) (?:nun |jetzt |désormais |ahora |ora |nu )?(?:disponible|verfügbar|"
        r"disponibile|beschikbaar)\b|\btrifft (?:voraussichtlich|heute|morgen)\b|\ble recordamos\b|\bwir erinnern sie\b|"
        r"\bnous vous rappelons\b|\ble ricordiamo\b|\bestimated (?:delivery|arrival)\b"),
    (2, r"\bscheduled (?:maintenance|downtime|outage)\b|\b(?:service|system|portal|site|website|server)\b[^.\n]{0,30}"
        r"\b(?:will be|is) (?:unavailable|down|offline|upgraded|migrated)\b|\bno action is (?:required|needed)\b|"
        r"\bwartungsarbeiten\b|\bmaintenance programmée\b|\b(?:\d+|people|someone|members?) (?:people |members |users )?"
        r"(?:viewed|visited|looked at|liked|followed) your\b|\bupgrade (?:to|now|your)\b|\bunlock\b|\byou have \d+ "
        r"(?:new|unread|pending)\b|\b(?:tell|refer|forward to) a friend\b|\bstop (?:getting|receiving) these\b|\bréglez "
        r"en ligne\b|\ben un clic\b|\barrive à échéance\b|\bläuft (?:am|in) [^.\n]{0,20} ab\b|\bvence el\b"),
    (1, r"\bnotification\b|\breminder\b|\bsystem\b|\balert\b|\bbenachrichtigung\b|\bnotificación\b|"
        r"\bnotifica\b|\bmelding\b|\berinnerung\b|\brappel\b|\brecordatorio\b|\bpromemoria\b"),
)  # fmt: skip
