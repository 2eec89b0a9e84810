"""Words of errands that are not for the mandrel desk: jobs, invitations, other goods.

Data only; each errand is named in the words that triage gives as its reason. In front of each cue
stands its weight: 5 tells the errand by itself, 2 is what such mail says besides, enough only
where nothing is asked for. Matched without regard to case.
"""

from __future__ import annotations

from typing import NamedTuple


class Elsewhere(NamedTuple):
    """One errand for somebody else: what it is, and its cues with their weights."""

    what: str
    cues: tuple[tuple[int, str], ...]
    only_without_tool: bool = False
    """Counts only where no mandrel or die is named."""


ELSEWHERE: tuple[Elsewhere, ...] = (
    Elsewhere("an order in hand: another address", (
        # "our invoicing details change; order 3391 stays as it is"
        (9, r"\b(?:invoic(?:e|ing)|billing|bank(?:ing)?) (?:details|data)\b[^.?\n]{0,20}\bchang|"
            r"\b(?:new|chang\w+ (?:of|to|in)) (?:our )?(?:invoic(?:e|ing)|billing|bank(?:ing)?)"
            r" (?:details|data)\b|\bänder\w*[^.?\n]{0,30}\b(?:rechnungs|bank)(?:daten|anschrift)|"
            r"\b(?:rechnungs|bank)(?:daten|anschrift)\b[^.?\n]{0,30}\b(?:ge)?änder|"
            r"\bcoordonnées (?:de facturation|bancaires)\b[^.?\n]{0,30}\bchang|"
            r"\bcambi\w* (?:de |i )?(?:nuestros |los |nostri )?dat(?:os|i) (?:de facturación"
            r"|bancari\w*|fiscal\w*|di fatturazione)|"
            r"\b(?:wijzig|verander)\w*[^.?\n]{0,20}\b(?:factuur|bank)gegevens\b|"
            r"\b(?:factuur|bank)gegevens\b[^.?\n]{0,30}\b(?:wijzig|verander)"),
        (5, r"\b(?:order|po|p\.o\.|job)\s?(?:no\.?|#)?\s?\d{3,}\b[^?\n]{0,80}\b(?:new|other|"
            r"different|change of) (?:delivery |shipping )?address\b|\b(?:new|change of|changed|"
            r"other) (?:delivery|shipping|ship-to) address\b"),
        # An order should go to another place: "order 3188 should go to our new building".
        (5, r"\b(?:order|po|p\.o\.|bestellung|commande|pedido|ordine|bestelling)\b[^?\n]{0,80}\b"
            r"(?:should|must|needs? to|has to|please|soll|muss|doit|debe|deve|moet)\b"
            r"[^?\n]{0,20}\b(?:go|be (?:sent|shipped|delivered)|ship|geliefert|geschickt|gehen|"
            r"être livrée?|enviarse|ir|andare|essere (?:spedito|consegnato)|gestuurd|geleverd)\b"
            r"[^?\n]{0,20}\b(?:our|the|my|an?) (?:new|other|different|second)\b"),
        (5, r"\b(?:bestellung|auftrag)\b[^?\n]{0,80}\ban (?:unsere|die|eine) (?:neue|andere)\b|"
            r"\bcommande\b[^?\n]{0,80}\bà (?:notre|la|une) (?:nouvel|nouvelle|autre)\b|"
            r"\bpedido\b[^?\n]{0,80}\ba (?:nuestra|la|una) (?:nueva|otra)\b|"
            r"\bordine\b[^?\n]{0,80}\b(?:alla|nella|presso la) (?:nostra )?(?:nuova|altra)\b|"
            r"\bbestelling\b[^?\n]{0,80}\bnaar (?:onze|het|de|een) (?:nieuwe|andere)\b"),
        (5, r"\b(?:neue|andere|geänderte) (?:liefer|versand)(?:adresse|anschrift)\b|\bnouvelle "
            r"adresse de livraison\b|\bnueva dirección de (?:entrega|envío)\b|\bnuovo indirizzo"
            r" di consegna\b|\b(?:nieuwe?|ander) (?:aflever)?adres\b"),
    )),
    Elsewhere("a supplier's quotation to us", (
        (5, r"\b(?:we are |we're )?pleased to (?:quote|offer|submit|provide)\b|\b(?:find|"
            r"attached|enclosed|is|see) (?:\w+ ){0,2}our (?:quotation|quote|offer|price list)\b|"
            r"\bour (?:quotation|quote|offer) (?:no|number|#|ref|q|\d)|"
            r"\bthank you for your (?:enquiry|inquiry|rfq|request for)\b|"
            r"\bthanks for your (?:enquiry|inquiry|rfq)\b|\bquotation valid\b|"
            r"\bwe can offer (?:you )?(?:the following|as follows)|\b(?:in reply|further|"
            r"reference) to your (?:enquiry|inquiry|rfq|request)\b"),
        (5, r"\bunser angebot (?:nr|vom|\d)|\b(?:vielen dank|danke) für ihre (?:anfrage|"
            r"bestellung)\b|\bgerne bieten wir (?:ihnen)? ?an\b|\banbei unser angebot\b|"
            r"\bnotre offre (?:n°|de prix|ci-jointe|\d)|\bsuite à votre (?:demande|consultation)\b|"
            r"\bnuestra oferta (?:n|\d)|\bla nostra offerta\b|\bin (?:riferimento|"
            r"risposta) alla (?:vostra|sua) richiesta\b|\bonze offerte (?:nr|\d)|"
            r"\bbedankt voor uw aanvraag\b|\ben respuesta a su (?:solicitud|consulta)\b"),
    )),
    Elsewhere("an application for work", (
        (6, r"\b(?:my|attached|enclosed) (?:cv|resume|résumé|curriculum)\b|\bresume\b(?= (?:is "
            r")?attached| (?:is )?(?:on request|available)|:)|\b(?:job|position|vacancy|"
            r"vacancies|apprenticeship|internship)\b(?![^.\n]{0,20}\b(?:in stainless|number|"
            r"no)\b)[^.\n]{0,60}\b(?:apply|"
            r"application|available|opening|open|interested|at your)\b|\bappl(?:y|ying|ied) for "
            r"(?:the|a|your|any)\b|\bhiring\b|\bapplication for (?:the )?(?:position|job|role|"
            r"post)\b|\bpart[- ]time job\b|\bcover letter\b"),
        (10, r"\b(?:take on|accept|need|want|have) (?:any |an )?(?:apprentices?|trainees?|"
             r"interns?)\b|\bhelp wanted\b|\bwork (?:experience|placement)\b|\bshadow (?:one|some|"
             r"you)|\b(?:leave|finish) school\b|\bback into the trade\b|\bdo you need (?:any|"
             r"some)(?:body|one)\b|\bausbildungspl[aä]tze?\b|\bschnupper|\breinschnuppern\b|"
             r"\blehrstelle\b|\bpraktikant|\bstagiaires?\b|\b(?:un|mon|de) stage\b|\bbusco (?:unas "
             r")?prácticas\b|\bde prácticas\b|\baceptan alumnos\b|\btirocini|\bapprendistato\b|"
             r"\bstageple|\bstage lopen\b|\bleerwerkplek\b|\bpraktyk[iaę]\b"),
        (6, r"\bapprenticeships?\b|\b(?:any|summer|current|job|machinist|welder|fitter|operator) "
            r"(?:\w+ )?openings?\b|\b(?:\d+|ten|"
            r"twelve|fifteen|twenty) (?:yrs?|years)(?:'|’)? (?:\w+ )?(?:on|of|running|as|in|"
            r"experience|making)\b(?! (?:business|service|trouble-free))|\bshort (?:of )?a "
            r"(?:setter|hand|machinist|welder|operator)\b|\blooking for (?:work|a job|a "
            r"position)\b"),
        (6, r"\bbewerb(?:e|ung|en)\b|\blebenslauf\b|\bausbildungsplatz\b|\bpraktikum\b|\bneue "
            r"(?:stelle|herausforderung)\b|\bjahre (?:berufs)?erfahrung\b"),
        (6, r"\bcandidature\b|\bposte de\b|\balternance\b|\bstage (?:de|en)\b|\brecherche "
            r"d['’]emploi\b|\bun emploi\b|\blettre de motivation\b|\bcurrículum\b|\bsolicitud de "
            r"empleo\b|\bvacante\b|\bbusco (?:trabajo|empleo)\b|\baños de experiencia\b"),
        (6, r"\bcandidatura\b|\bposizione (?:aperta|di)\b|\bcurriculum\b|\bcerco lavoro\b|\banni "
            r"di esperienza\b|\bsollicit(?:atie|eren|eer)\b|\bvacature\b|\bstageplaats\b|\bjaar "
            r"ervaring\b|\baplikuj|\bszukam pracy\b|\bansök(?:an|er)\b|\bsöker jobb\b"),
    )),
    Elsewhere("likely fraud", (
        (6, r"\b(?:verify|confirm|validate|update) your (?:account|mailbox|password|identity|"
            r"e-?mail)\b|\b(?:mailbox|account|password|storage)\b[^.\n]{0,40}\b(?:full|expires?|"
            r"suspended|locked|deactivated|quota|terminated|limit)\b|\bclick (?:here|the link|"
            r"below) (?:to )?(?:verify|confirm|keep|restore|login|avoid|unlock|upgrade|release)|"
            r"\bclick here\b|\bgift cards?\b|\b(?:inheritance|lottery|beneficiary|next of kin|"
            r"bitcoin|crypto)\b|\bshared (?:a|the) (?:document|file) with you\b|"
            r"\bpending messages?\b|\bkindly open the attach|\bare you (?:at your desk|"
            r"available)\b[^.\n]{0,60}\b(?:task|favou?r|urgent)"),
        (6, r"\bpostfach\b[^.\n]{0,40}\b(?:voll|gesperrt|bestätigen)|"
            r"\bkonto\b[^.\n]{0,40}\b(?:gesperrt|bestätigen|verifizieren)|\bvotre "
            r"compte\b[^.\n]{0,40}\b(?:suspendu|bloqué)|\bsu cuenta\b[^.\n]{0,40}\b(?:suspendida|"
            r"bloqueada)"),
    )),
    Elsewhere("an invitation or a good cause", (
        (5, r"\b(?:invite|inviting|invited) (?:you|your)\b|\b(?:you're|you are) invited\b|\bopen "
            r"(?:house|day)\b|\brsvp\b|\bour (?:booth|stand)\b|\b(?:visit|see|meet) us at\b|"
            r"\btrade (?:show|fair)\b[^.\n]{0,40}\b(?:join|register|booth|visit|attend)|\bregister "
            r"(?:now|for|here|today)\b|\b(?:christmas|summer|retirement) party\b|\bgolf (?:day|"
            r"outing|tournament)\b|\bwebinar\b|\banniversary celebration\b"),
        (5, r"\b(?:laden|lädt) (?:wir )?(?:sie|euch)[^.\n]{0,40}\bein\b|\beinladung\b|"
            r"\btag der offenen tür\b|\bmessestand\b|\b(?:invitation|vous invit(?:e|ons))\b|"
            r"\bportes ouvertes\b|\b(?:le|les|os) invitamos\b|\bjornada de puertas\b|\b(?:vi|"
            r"la) invitiamo\b|\bporte aperte\b|\bnodigen (?:wij )?u\b|\bopen dag\b|"
            r"\buitnodiging\b|\bzaprasza"),
        (5, r"\b(?:interview|career day|scholarships?|raffle|fundraiser|donat(?:e|ion)s?|charity|"
            r"speak to (?:our|the)|podcast|hole signs?|chamber of commerce)\b|\b(?:use|publish|"
            r"print|post) (?:it|them|your (?:photo|picture|logo)|the (?:photo|picture)) (?:for|in|"
            r"on) our\b|\bsponsor (?:one|us|a (?:hole|team|table)|our)\b|\bspendenaufruf\b|"
            r"\bspenden?\b|\bsponsoring\b|\bdonación\b"),
    )),
    Elsewhere("a survey or a supplier form", (
        (5, r"\bsurvey\b|\bquestionnaire\b|\brate (?:your|our|us)\b|\byour feedback\b|"
            r"\b(?:supplier|vendor) (?:self[- ])?(?:assessment|registration|portal|evaluation|"
            r"audit|form|onboarding|setup|records?)\b|\bself[- ]assessment\b|\bconflict minerals\b|"
            r"\breach (?:declaration|compliance|statement)\b|\brohs\b|\bw-?9\b|\bcertificate of "
            r"(?:insurance|origin)\b|\bcode of conduct\b|\blong[- ]term supplier'?s? "
            r"declaration\b"),
        (5, r"\bumfrage\b|\bfragebogen\b|\blieferanten(?:selbstauskunft|bewertung|erklärung)\b|"
            r"\benquête\b|\bsondage\b|\bencuesta\b|\bcuestionario\b|\bsondaggio\b|"
            r"\bquestionario\b|\bvragenlijst\b|\bankiet"),
    )),
    Elsewhere("not meant for us", (
        (5, r"\bwrong (?:number|address|person|e-?mail|company|mail|place|shop|people|recipient|"
            r"department)\b|\bsent (?:this |it )?(?:to you )?by mistake\b|\bmeant (?:it )?for "
            r"(?:my|our|someone|somebody|another)\b|\b(?:please )?(?:remove|take) me (?:from|"
            r"off)\b|\bunsubscribe me\b|\boff your (?:mailing )?list\b|\bstop (?:e-?mailing|"
            r"sending|writing)\b|\b(?:ignore|disregard) (?:my|this|the|that) (?:last |previous |"
            r"earlier )?(?:e-?mail|message|mail|one)\b|\bplease ignore\b|\bnot for us\b|"
            r"\btest(?:ing)? (?:message|mail|e-?mail|123)\b|^\W*test\W*$"),
        # "it's a quotation for a mandrel, addressed to a Mr Smith"
        (6, r"\baddressed to (?:an? )?(?:mr|mrs|ms|miss|dr|someone|somebody|another)\b|"
            r"\ban? (?:e-?mail|message|quote|quotation|letter)\b[^.?\n]{0,40}\b(?:meant|intended) "
            r"for (?:some|another|a different|a mr|an? \w+ else)"),
        (5, r"\bfalsche (?:adresse|nummer|empfänger)|\birrtümlich (?:gesendet|an sie)|"
            r"\berreur de destinataire\b|\bmauvaise adresse\b|\bdirección equivocada\b|"
            r"\bpor error\b|\bindirizzo sbagliato\b|\bper errore\b|\bverkeerd(?:e)? adres\b|"
            r"\bper ongeluk\b|\bomyłk"),
        (4, r"\b(?:love you|hun|honey|sweetie|hugs|xoxo|mom|mum|grandma|dad)\b|\b(?:dinner|supper|"
            r"groceries|milk|potluck|birthday|garage door|dentist|plumber)\b|\bis this \w+\?"),
    ), True),
    Elsewhere("another kind of mandrel", (
        (6, r"\b(?:lathe|milling|turning|grinding|wood|tapered|expanding|threaded|ring|"
            r"jewel(?:l)?er'?s?) (?:\w+ )?(?:mandrel|arbou?r)s?\b|\bmandrels? for (?:(?:a|my|the|"
            r"wood) )*(?:lathe|turning|pens?|rings?)\b|\barbou?rs?\b|\bmorse (?:taper )?\d|"
            r"\bspanndorn|\bpop rivet"),
    )),
    Elsewhere("work or goods that the shop does not sell", (
        (6, r"\b(?:price|quote|cost|estimate)s? (?:on|for|of) (?:an?|the|some|one|my|our|two|"
            r"\d+) (?:\w+[- ]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|"
            r"exhausts?|headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|"
            r"furniture|fences?|bikes?|boats?|stairs?|canop(?:y|ies)|swing ?sets?|goal ?posts?|"
            r"bending machine|bender|press brake|welder)\b"),
        (6, r"\bbend and weld\b|\b(?:können|könnten|würden) sie (?:mir|uns|für (?:mich|"
            r"uns))\b[^.?\n]{0,60}\bbiegen\b|\b(?:pouvez|pourriez)-vous (?:me|nous) cintrer\b|"
            r"\b(?:me|nos) (?:pueden?|podrían?) (?:doblar|curvar)\b|\b(?:potete|può) piegar(?:mi|"
            r"ci)\b|\b(?:voor (?:mij|ons)) [^.?\n]{0,40}\bbuigen\b|\bweld(?:ed)? up\b|\b(?:build|"
            r"make|fabricate|weld|bend up|fab) (?:us|me) (?:an? |one|some|the|\d+ |up )?(?:\w+[- "
            r"]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|exhausts?|"
            r"headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|furniture|"
            r"fences?|bikes?|boats?|hoops?|tubes?|pipes?)\b|\b(?:build|fabricate) (?:us|me)\b|"
            r"\b(?:barandilla|pasamanos|ringhiera|garde-corps|geländer|leuning|escape "
            r"completo)\b[^.?\n]{0,30}\?"),
        (6, r"\bbend(?:ing)?\b[^.?\n]{0,60}\b(?:for (?:us|me)|my tubes?|our tubes?|these tubes?|"
            r"some (?:tube|tubes|pipe|pipes|tubing|conduit))\b|\b(?:\d{2,}|some|few|several|"
            r"hundred|dozen) (?:pieces|pcs|parts|tubes|pipes|hoops|lengths|"
            r"off)\b[^.?\n]{0,80}\b(?:bent|bend|for us|for me)\b|\bbend(?:ing)? (?:\d{2,}|some|a "
            r"few|several|a hundred|dozens?) (?:\w+ ){0,2}(?:pieces|pcs|parts|tubes|pipes|hoops|"
            r"lengths|of)\b|\bsome(?:body|one) to bend\b|\bbend (?:me|us) (?:an?|some|up|\d)|"
            r"\binstalled\b|\b(?:railing|handrail|gate|fence|canopy|"
            r"awning)s?\b[^.?\n]{0,40}\b(?:feet|ft|foot|metres|meters|installed|painted|galvanized|"
            r"complete)\b"),
        (6, r"\b(?:send|ship|supply|bring|drop off) (?:you |in |round )?(?:the |my |our |"
            r"you the )?(?:tubes?|pipes?|material|tubing|stock)\b(?! (?:sizes?|specs?|"
            r"dimensions?|details?|"
            r"info|data|drawings?|list|od))|\b(?:our|my|your) material\b|"
            r"\bbending (?:service|work|job)s?\b|\bsub-?contract|\bjob shop\b|\b(?:supply|deliver|"
            r"make) (?:us )?(?:with )?(?:the )?(?:finished |bent )(?:parts|tubes|pipes|pieces|"
            r"components)\b|(?<!qty )(?<!our )(?<!annual )\bbent (?:tubes|pipes|parts)\b"
            r"(?! ?(?:p\.? ?a\b|[=:/]|per (?:year|annum|month|week|day|hour|shift)|an? (?:year|"
            r"month|week|day)|each (?:year|month|week)|yearly|annually))"),
        (6, r"\bdo (?:you|u|ya) (?:guys |folks )?(?:also )?(?:bend|do (?:any )?bending)\b"),
        # A neighbour with something broken.
        (6, r"\b(?:can|could|would|will|do) (?:you|u|ya|someone|anyone)(?: guys| folks| please| be "
            r"able to| also){0,2} (?:(?:weld|repair|mend|straighten|braze|solder|patch)(?: up)? (?:"
            r"it|this|that|them|one|an?|the|my|our|some|gates?|chairs?|bikes?)|fix (?:it|this|that|"
            r"them|my|our)|powder ?-?coat)\b"),
        (6, r"\b(?:können|könnten|würden) sie [^.?\n]{0,40}\b(?:schweißen|reparieren|löten|flicken|"
            r"geradebiegen)\b|\b(?:pouvez|pourriez)-vous (?:me |nous |le |la |les |aussi )*(?:"
            r"souder|réparer|redresser|braser)|\b(?:pueden?|podrían?|puedes|podéis) (?:\w+ )?(?:"
            r"soldar|reparar|arreglar|enderezar)|\b(?:potete|può|potreste|potrebbe) (?:\w+ )?(?:"
            r"saldar|riparar|raddrizzar|aggiustar)|\b(?:kunt|kunnen|zou|wilt) (?:u|jullie) "
            r"[^.?\n]{0,40}\b(?:lassen|repareren|solderen)\b"),
        # "We look for somebody who bends tube for us"; not "who makes bending mandrels"
        (7, r"\b(?:look(?:ing)? for|after|seek(?:ing)?|know(?: of)?|need) (?:an? )?(?:somebody"
            r"|someone|any(?:body|one)|firm|company|shop|workshop|place)\b"
            r"(?:(?!mandrel)[^.?\n]){0,40}\b(?:bends?|(?:contract|toll|our|the) bending)\b"
            r"(?! (?:mandrels?|tools?|dies?))|"
            r"\bsuchen? (?:jemand\w*|eine[nr]? (?:betrieb|firma|lohnbieger|werkstatt))\b"
            r"(?:(?!dorn)[^.?\n]){0,60}\b(?:biegt|biegen|bögen|bogen)\b|\blohnauftrag\b|"
            r"\bcherch\w+ (?:quelqu'un|une? (?:atelier|entreprise|société|sous-traitant))\b"
            r"(?:(?!mandrin)[^.?\n]){0,60}\bcintr(?:e|er|ent|erait)\b|"
            r"\bbusc\w+ (?:a )?(?:alguien|un taller|una empresa)\b(?:(?!mandril)[^.?\n]){0,60}"
            r"\b(?:curv|dobl)(?:e|en|a|ar)\b|"
            r"\bcerc\w+ (?:qualcuno|un(?:'| )?(?:officina|azienda|terzista)|una ditta)\b"
            r"(?:(?!mandrin|anima)[^.?\n]){0,60}\b(?:pieg|curv)(?:hi|i|a|are)\b|"
            r"\bzoek\w* (?:iemand|een (?:bedrijf|werkplaats))\b(?:(?!doorn)[^.?\n]){0,60}"
            r"\bbuig(?:t|en)\b"),
        (6, r"\blohnbiege|\blohnfertig|\bbiegen sie (?:uns|für uns|auch)\b|\bgebogene (?:rohre|"
            r"teile)\b|\brohre für uns biegen\b|\bverkaufen sie (?:auch )?(?:rohre?|stahl)|"
            r"\b\d+ (?:m|meter) (?:rohr|\d)|\bcintrage (?:à façon|de pièces)|\bsous-traitan|"
            r"\btubes cintrés\b|\bvendez-vous (?:aussi )?(?:du|des) tube|\bdoblado de (?:piezas|"
            r"tubos)|\btubos (?:doblados|curvados)\b|\bconto (?:terzi|lavoro)\b|\btubi (?:piegati|"
            r"curvati)\b|\bloonbuig|\bgebogen buizen\b|\bgięte rury\b"),
        (6, r"\b(?:do (?:you|ya|y'all) (?:guys |folks )?(?:also )?(?:sell|stock|have|carry)|got "
            r"any|looking for|need(?: some| a| \d+)?) (?:\w+ ){0,2}(?:tube|tubing|pipe|welders?|"
            r"benders?|exhausts?|mufflers?|flanges?|fittings?|clamps?|drill bits?|end mills?|"
            r"bolts?|elbows?|hangers?|couplers?)\b(?! (?:bend\w* )?mandrel)"),
    ), True),
    Elsewhere("a visit", (
        (5, r"\b(?:come|came|coming|stop|drop|swing|pop|call|pass) (?:by|in|over|round"
            r"|past)?(?: and| to)?"
            r" ?(?:look|see|view|have a look|take a look)[^.?!\n]{0,12}\b(?:a?round"
            r"|the (?:place|shop|"
            r"works|factory)|your (?:place|shop|works|factory|workshop)|how)\b|\b(?:look|see|show)"
            r"(?:n|ed)? (?:us |me |them |everyone )?(?:a?round)\b(?! (?:for|\d|tub|pipe"
            r"|bar|section|"
            r"the (?:tube|web|internet|bend|radius)))|\b(?:stop|drop|swing|pop|come) (?:by|in|"
            r"round|over)\b[^.?!\n]{0,30}\b(?:see|look|visit|tour)\b|\b(?:see|view) (?:your|the) "
            r"(?:place|shop|works|factory|workshop|premises)\b"),
        (6, r"\b(?:move|shift|postpone|reschedule|rearrange|push|change|cancel|put off)\b"
            r"[^.?!\n]{0,24}\b(?:visit|meeting|appointment|get-together)\b|\b(?:half an hour"
            r"|an hour|some time|time|a moment) (?:for us )?(?:to|and) (?:show|meet|walk|see)\b"
            r"|\bshow us how (?:the |your |you )?\w+ (?:are|is|make) \w+|\b(?:besuch|termin"
            r"|treffen|besprechung)\b[^.?!\n]{0,40}\b(?:verschieben|verlegen|absagen|vorziehen)\b"
            r"|\b(?:décaler|déplacer|reporter|avancer)\b[^.?!\n]{0,20}\b(?:visite|rendez-vous"
            r"|réunion)\b|\b(?:cambiar|mover|aplazar|posponer|adelantar)\b[^.?!\n]{0,20}\b"
            r"(?:visita|cita|reunión)\b|\b(?:spostare|rimandare|anticipare)\b[^.?!\n]{0,20}\b"
            r"(?:visita|appuntamento|incontro|riunione)\b|\b(?:bezoek|afspraak|bespreking)\b"
            r"[^.?!\n]{0,30}\b(?:verzetten|verplaatsen|verschuiven|afzeggen)\b"),
        (5, r"\b(?:werks|betriebs|firmen)(?:besichtigung|führung|besuch)|\bbesichtig(?:en|ung)\b|"
            r"\b(?:ihren betrieb|eure werkstatt|ihre werkstatt|bei (?:ihnen|euch)) (?:\w+ ){0,3}"
            r"(?:besuchen|anschauen|ansehen|vorbeikommen)\b|\bvisiter (?:votre|vos|l'atelier)|"
            r"\bvisite (?:de (?:votre|l')|d'(?:atelier|usine|entreprise))|\bvisit(?:ar|a a|a de) "
            r"(?:su|vuestr[oa]|el|la) (?:taller|fábrica|planta|empresa)|\bvisit(?:are"
            r"|a (?:alla|della|"
            r"in)) (?:la )?(?:vostra )?(?:officina|azienda|fabbrica|sede)|\brondleiding\b"
            r"|\bbedrijfs"
            r"bezoek|\b(?:uw|jullie) (?:werkplaats|bedrijf) (?:\w+ ){0,2}(?:bezoeken|bekijken)\b"),
    )),
)  # fmt: skip
