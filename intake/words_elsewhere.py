"""Words of errands that are not for the mandrel desk: money, orders in hand, pitches, jobs.

Data only; each group names the errand in the words the triage gives as its reason, with a weight a
hit. Patterns are matched without regard to case.
"""

from __future__ import annotations

from typing import NamedTuple


class Elsewhere(NamedTuple):
    """One errand for somebody else: what it is, the weight of each cue, the cues."""

    what: str
    weight: int
    cues: tuple[str, ...]
    only_without_tool: bool = False
    """Counts only where no mandrel or die is named."""


ELSEWHERE: tuple[Elsewhere, ...] = (
    Elsewhere("an invoice or a payment", 5, (
        r"\binvoices?\b(?! (?:to|address|us at))", r"\bremittance\b|\bpayment (?:advice|notice|confirmation|reminder|received|has been|was)\b|\b(?:over|past) ?due\b|\bstatement of account\b|\baccount statement\b",
        r"\b(?:have|has|was|been|we|already) paid\b|\bcredit note\b|\bpro ?forma\b(?! please)|\b(?:our|new|change of|updated) bank (?:details|account)\b|\bwire transfer\b",
        r"\brechnung(?:en|s)?\b|\brg\.?-?nr|\bmahnung\b|\büberwiesen\b|\büberweisung\b|\bzahlungs(?:avis|eingang|erinnerung)\b|\bgutschrift\b",
        r"\bfactures?\b|\bvirement\b|\bavis de paiement\b|\brelance\b|\bavoir n°", r"\bfactura\b|\btransferencia\b|\baviso de pago\b|\babono\b", r"\bfattura\b|\bbonifico\b|\bpagamento (?:effettuato|ricevuto)|\bnota di credito\b|\bsollecito\b",
        r"\bfactuur\b|\bbetalingsherinnering\b|\bovergemaakt\b|\bcreditnota\b", r"\bfaktur[aęy]\b|\bprzelew|\bfaktura\b|\bbetalning\b|\bfatura\b",
    )),
    Elsewhere("an order in hand: where it is", 5, (
        r"\bwhere(?:'s| is|s) (?:my|our|the) (?:\w+ ){0,2}(?:order|mandrels?|parcel|package|shipment|stuff|tool(?:ing)?|po)\b|\btracking (?:number|no|info|please|code|link|for)\b|\btracking\b(?=\?)",
        r"\b(?:has|have|did) (?:it|they|this|that|my|our|the|order|po)\b[^.?\n]{0,50}\b(?:shipped?|sent|left|gone out|been dispatched|go out|dispatched)\b|\bwhen (?:will|does|is) (?:it|my|our|the|po|order)\b[^.?\n]{0,50}\b(?:ship|arrive|be (?:ready|shipped|delivered|here)|leave|due|land|come)",
        r"\b(?:order|po|delivery) status\b|\bstatus (?:of|on|update on) (?:my|our|the|po|order)\b|\b(?:any )?(?:news|update|word|eta) (?:on|for|about|regarding) (?:my|our|the|po|order|this) ?(?:order|po|mandrels?|delivery|shipment|\d)|\border (?:no\.?|number|#)?\s?\d{3,}\b(?=[^\n]{0,80}\?)|\bstill waiting (?:for|on)\b|\b(?:hasn't|has not|not yet|never|didn't) (?:arrived?|shipped?|been delivered|turned? up|come|showed?)\b|\boverdue\b",
        r"\bwo (?:bleibt|ist) (?:meine|unsere|der|die)\b|\bsendungs(?:nummer|verfolgung)\b|\bliefer(?:status|verzug)\b|\bwann (?:kommt|wird|ist) (?:die|der|unsere?|meine?) [^.?\n]{0,40}(?:geliefert|an|versandt|lieferung)|\bstand (?:der|unserer|meiner) (?:bestellung|lieferung)\b|\bnoch nicht (?:angekommen|erhalten|geliefert)\b|\bauftragsbestätigung\b",
        r"\boù en est (?:ma|notre|la) commande|\bnuméro de suivi\b|\bsuivi de (?:commande|livraison)\b|\btoujours pas (?:reçu|arrivé|livré)|\bquand (?:sera|arrive) (?:ma|notre|la)\b", r"\bdónde está (?:mi|nuestro)\b|\bestado (?:de|del) (?:mi |nuestro )?pedido\b|\bnúmero de seguimiento\b|\bno ha llegado\b|\bcuándo (?:llega|sale) (?:mi|nuestro|el)\b",
        r"\bdov'è (?:il|la|l')|\bstato (?:dell'ordine|del nostro ordine|della spedizione)\b|\bnon è (?:ancora )?arrivat|\bquando (?:arriva|spedite)\b", r"\bwaar (?:blijft|is) (?:mijn|onze|de)\b|\btrack ?(?:&|en) ?trace\b|\bstatus van (?:mijn|onze|de) (?:bestelling|order)\b|\bnog niet (?:ontvangen|binnen|geleverd)\b", r"\bgdzie jest\b|\bstatus zamówienia\b",
    )),
    Elsewhere("a change to an order in hand", 5, (
        r"\b(?:change|amend|revise|update|correct)\w*\b[^.?\n]{0,40}\b(?:order|po|purchase order|ship[- ]to|address|delivery address|billing)\b|\brev(?:ision|\.)? \d+ (?:of|to) (?:purchase order|po|order)\b|\b(?:ship[- ]to|delivery address|billing address) (?:changed?|has changed|is now)\b|\b(?:po|order) \S+ rev",
        r"\b(?:for reference,? )?unchanged\b|\bfor reference only\b|\bonly the (?:address|date|quantity|price)[^.\n]{0,20}changes?\b", r"\bcancel(?:ling|ing|led|lation)?\b[^.?\n]{0,40}\b(?:order|po|mandrels?|it|line)\b|\bplease cancel\b|\bput [^.?\n]{0,30}on hold\b|\border acknowledg|\backnowledge (?:our|the|receipt of)|\border confirmation\b|\bplease confirm (?:receipt|the (?:new )?(?:date|address))",
        r"\bstorno\b|\bstornier|\blieferadresse\b[^.\n]{0,30}(?:geändert|neu|ändern)|\bbestelländerung\b|\bbestellung\b[^.?\n]{0,50}(?:ändern|geändert|stornier)|\bunverändert\b", r"\bannul(?:er|ation|ons)\b|\bmodif(?:ier|ication)\b[^.\n]{0,30}(?:commande|adresse)|\binchangé", r"\b(?:cancelar|anular|modificar)\b[^.\n]{0,30}pedido|\bsin cambios\b",
        r"\b(?:annullare|modificare|modifica)\b[^.\n]{0,30}ordine|\binvariat", r"\b(?:annuleren|wijzig(?:en|ing))\b|\bongewijzigd\b|\bafleveradres\b", r"\b(?:anulow|zmian)\w*[^.\n]{0,20}zamówieni",
    )),
    Elsewhere("a complaint or a refund", 5, (
        r"\brefund(?:ed|s)?\b|\bmoney back\b|\bcharge ?back\b|\bstore credit\b|\bback on (?:the|my) card\b", r"\bcomplain(?:t|ing)?\b|\brma\b|\bwarranty claim\b|\bnon[- ]?conform|\bncr\b|\bcorrective action\b|\b8d report\b",
        r"\b(?:arrived|came|received|delivered|got|turned up)\b[^.?\n]{0,40}\b(?:damaged|broken|cracked|bent|scratched|wrong|rusty|rusted|short|undersi[sz]ed?|oversi[sz]ed?)\b|\bsent (?:me |us )?the wrong\b|\bwrong (?:one|size|mandrel|part|item) (?:was|came|arrived|sent|in the box)|\b(?:never|doesn't|does not|didn't|did not|won't) fit\b|\bnot (?:to|as per) (?:the )?(?:drawing|spec|order)\b",
        r"\b(?:mandrel|one|it|ball|link|tip|tool)s? (?:you (?:sent|made|sold)[^.?\n]{0,30})?(?:has |have |just |already )?(?:broke|broken|snapped|cracked|seized|failed|fell apart|galled)\b|\b(?:unacceptable|disappointed|not happy|unhappy|fed up|disgusted|a joke)\b|\b(?:return|send|sending|returning|ship|take) (?:it|them|this|the mandrel|these) back\b|\bwant to return\b",
        r"\breklam|\bbeschwerde\b|\bmangelhaft\b|\bdefekt\b|\bgerissen\b|\bgebrochen\b|\bgeld zurück\b|\berstattung\b|\bschadens?ersatz\b|\bfalsch (?:geliefert|bestellt)|\bbeschädigt\b|\brücksendung\b|\bverlangen ersatz",
        r"\bremboursement\b|\brembourser\b|\bréclamation\b|\bdéfectueu|\bcassée?s?\b|\bendommag|\bnon conforme\b|\bmécontent", r"\breclamaci|\breembolso\b|\bdevoluci[óo]n\b|\bdefectuos|\broto\b|\bdañad|\bno conforme\b", r"\breclamo\b|\brimborso\b|\bdifettos|\brotto\b|\bdanneggiat|\breso merce\b",
        r"\bklacht\b|\bterugbetal|\bbeschadigd\b|\bgebroken\b|\bkapot\b|\bretour(?:neren|zending)\b|\breklamacj|\bzwrot\b|\buszkodz",
    )),
    Elsewhere("somebody selling to us", 4, (
        r"\bwe (?:stock|manufacture|supply|specialise|specialize|offer|provide|export|distribute|produce)\b(?![^.\n]{0,60}\?)|\bwe(?:'re| are) (?:a |an |one of )?(?:the )?(?:leading |professional |largest |chinese |global |family[- ]owned )*(?:manufacturer|supplier|distributor|mill|exporter|stockist|agency|foundry|factory)\b",
        r"\b(?:introduce|introducing) (?:our|my|ourselves|myself)\b|\bour (?:products?|services?|range|company|factory|catalogu?e|platform|solution|software|team of)\b[^.?\n]{0,60}\b(?:include|offers?|can help|helps?|is|are|specialis|specializ|provide)|\b(?:competitive|factory|wholesale|best) prices?\b(?! (?:for|on|and|cif|fob|for the|you can))|\bwe (?:can|could) (?:help|save|offer you|supply you|provide you)\b",
        r"\b(?:\d+|ten|fifteen|thirty|few) (?:minutes?|mins?)\b[^.?\n]{0,40}\b(?:call|chat|talk|meeting|demo|this week|next week|thursday|tuesday|monday|wednesday|friday)\b|\b(?:quick|short|brief|intro) (?:call|chat|demo)\b|\bschedule a (?:call|demo|meeting)\b|\bhop on a call\b|\bbook a (?:demo|call)\b|\bhope this (?:e-?mail |message |mail )?finds you\b|\breach(?:ing)? out\b|\bi (?:noticed|saw|came across|found) (?:that )?(?:you|your (?:website|site|company|page|profile))\b",
        r"\bseo\b|\b(?:google|search) rank|\bfirst page of google\b|\b(?:web ?site|web) (?:design|redesign|traffic|development)\b|\bleads\b|\bbacklinks?\b|\bguest post\b|\bbecome (?:your|a) (?:supplier|partner|distributor|dealer|agent)\b|\byour (?:new )?(?:supplier|steel supplier|mill)\b|\bpartner(?:ship|ing) (?:with|opportunit)|\bbe (?:the|your) (?:mill|supplier|partner|source)\b|\baccount executive\b|\bbusiness development\b",
        r"\bloan\b|\bfinancing (?:option|for your)|\binsurance (?:quote|policy|cover)\b|\bpromotional\b|\bfree (?:trial|sample|audit)\b|\bspecial (?:offer|price)\b|\bstock ?list\b|\bsurplus\b[^.\n]{0,30}\bfor sale\b|\b(?:machine|bender|lathe|equipment) for sale\b",
        r"\bwir sind (?:ein |der |einer der )?(?:führende[rn]? )?(?:hersteller|lieferant|anbieter|händler)\b|\bwir (?:bieten|liefern|fertigen) (?:ihnen|seit|rohre|hochwertige)|\bunser(?:e|en)? (?:produkt|leistung|sortiment)|\bdürfen wir uns vorstellen\b", r"\bnous sommes (?:un |le )?(?:fabricant|fournisseur|leader)|\bnous (?:proposons|fabriquons|fournissons)\b|\bnos (?:produits|services)\b",
        r"\bsomos (?:un |una )?(?:fabricante|empresa|proveedor|líder)|\bles ofrecemos\b|\bnuestros (?:productos|servicios)\b", r"\bsiamo (?:un'?|una )? ?(?:azienda|produttori|fornitori|leader)|\bvi proponiamo\b|\bi nostri (?:prodotti|servizi)\b", r"\bwij zijn (?:een )?(?:fabrikant|leverancier|producent)|\bonze (?:producten|diensten)\b|\bjesteśmy (?:producentem|dostawcą)|\bnasza oferta\b",
    )),
    Elsewhere("a supplier's quotation to us", 5, (
        r"\b(?:we are |we're )?pleased to (?:quote|offer|submit|provide)\b|\b(?:find|attached|enclosed|is|see) (?:\w+ ){0,2}our (?:quotation|quote|offer|price list)\b|\bour (?:quotation|quote|offer) (?:no|number|#|ref|q|\d)|\bthank you for your (?:enquiry|inquiry|rfq|request for)\b|\bthanks for your (?:enquiry|inquiry|rfq)\b|\bquotation valid\b|\bwe can offer (?:you )?(?:the following|as follows)",
        r"\bunser angebot (?:nr|vom|\d)|\b(?:vielen dank|danke) für ihre (?:anfrage|bestellung)\b|\bgerne bieten wir (?:ihnen)? ?an\b|\banbei unser angebot\b|\bnotre offre (?:n°|de prix|ci-jointe|\d)|\bsuite à votre demande\b|\bnuestra oferta (?:n|\d)|\bla nostra offerta\b|\bin (?:riferimento|risposta) alla (?:vostra|sua) richiesta\b|\bonze offerte (?:nr|\d)|\bbedankt voor uw aanvraag\b",
    )),
    Elsewhere("an application for work", 6, (
        r"\b(?:my|attached|enclosed) (?:cv|resume|résumé|curriculum)\b|\b(?:job|position|vacancy|vacancies|apprenticeship|internship)\b(?![^.\n]{0,20}\b(?:in stainless|number|no)\b)[^.\n]{0,60}\b(?:apply|application|available|opening|open|interested|at your)\b|\bapply(?:ing)? for (?:the|a|your|any)\b|\b(?:hiring|any openings|job openings)\b|\bapplication for (?:the )?(?:position|job|role|post)\b|\bpart[- ]time job\b|\bcover letter\b",
        r"\bbewerb(?:e|ung|en)\b|\blebenslauf\b|\bausbildungsplatz\b|\bpraktikum\b", r"\bcandidature\b|\bposte de\b|\balternance\b|\bstage (?:de|en)\b|\blettre de motivation\b", r"\bcurrículum\b|\bsolicitud de empleo\b|\bvacante\b", r"\bcandidatura\b|\bposizione (?:aperta|di)\b|\bcurriculum\b", r"\bsollicit(?:atie|eren|eer)\b|\bvacature\b|\bstageplaats\b|\baplikuj|\bansök(?:an|er)\b",
    )),
    Elsewhere("likely fraud", 6, (
        r"\b(?:verify|confirm|validate|update) your (?:account|mailbox|password|identity|e-?mail)\b|\b(?:mailbox|account|password|storage)\b[^.\n]{0,40}\b(?:full|expires?|suspended|locked|deactivated|quota|terminated|limit)\b|\bclick (?:here|the link|below) (?:to )?(?:verify|confirm|keep|restore|login|avoid|unlock|upgrade|release)|\bclick here\b|\bgift cards?\b|\b(?:inheritance|lottery|beneficiary|next of kin|bitcoin|crypto)\b|\bshared (?:a|the) (?:document|file) with you\b|\bpending messages?\b|\bkindly open the attach|\bare you (?:at your desk|available)\b[^.\n]{0,60}\b(?:task|favou?r|urgent)",
        r"\bpostfach\b[^.\n]{0,40}\b(?:voll|gesperrt|bestätigen)|\bkonto\b[^.\n]{0,40}\b(?:gesperrt|bestätigen|verifizieren)|\bvotre compte\b[^.\n]{0,40}\b(?:suspendu|bloqué)|\bsu cuenta\b[^.\n]{0,40}\b(?:suspendida|bloqueada)",
    )),
    Elsewhere("an invitation", 5, (
        r"\b(?:invite|inviting|invited) (?:you|your)\b|\b(?:you're|you are) invited\b|\bopen (?:house|day)\b|\brsvp\b|\bour (?:booth|stand)\b|\b(?:visit|see|meet) us at\b|\btrade (?:show|fair)\b[^.\n]{0,40}\b(?:join|register|booth|visit|attend)|\bregister (?:now|for|here|today)\b|\bchristmas party\b|\bsummer party\b|\bgolf (?:day|outing|tournament)\b|\bwebinar\b|\banniversary celebration\b",
        r"\b(?:laden|lädt) (?:wir )?(?:sie|euch)[^.\n]{0,40}\bein\b|\beinladung\b|\btag der offenen tür\b|\bmessestand\b|\b(?:invitation|vous invit(?:e|ons))\b|\bportes ouvertes\b|\b(?:le|les|os) invitamos\b|\bjornada de puertas\b|\b(?:vi|la) invitiamo\b|\bporte aperte\b|\bnodigen (?:wij )?u\b|\bopen dag\b|\buitnodiging\b|\bzaprasza",
    )),
    Elsewhere("a survey or a supplier form", 5, (
        r"\bsurvey\b|\bquestionnaire\b|\brate (?:your|our|us)\b|\byour feedback\b|\bsupplier (?:self[- ])?(?:assessment|registration|portal|evaluation|audit|form|onboarding)\b|\bconflict minerals\b|\breach (?:declaration|compliance|statement)\b|\brohs\b|\bw-?9 form\b|\b(?:w-?9)\b|\bcertificate of (?:insurance|origin)\b|\bvendor (?:form|registration|onboarding|setup)\b|\bcode of conduct\b|\blong[- ]term supplier'?s? declaration\b",
        r"\bumfrage\b|\bfragebogen\b|\blieferanten(?:selbstauskunft|bewertung|erklärung)\b|\benquête\b|\bsondage\b|\bencuesta\b|\bcuestionario\b|\bsondaggio\b|\bquestionario\b|\bvragenlijst\b|\bankiet",
    )),
    Elsewhere("not meant for us", 5, (
        r"\bwrong (?:number|address|person|e-?mail|company|mail|place|shop|people|recipient|department)\b|\bsent (?:this |it )?(?:to you )?by mistake\b|\bmeant (?:it )?for (?:my|our|someone|somebody|another)\b|\b(?:please )?(?:remove|take) me (?:from|off)\b|\bunsubscribe me\b|\bstop (?:e-?mailing|sending|writing)\b|\b(?:ignore|disregard) (?:my|this|the|that) (?:last |previous |earlier )?(?:e-?mail|message|mail|one)\b|\bplease ignore\b|\bnot for us\b|\btest(?:ing)? (?:message|mail|e-?mail|123)\b|^\W*test\W*$",
        r"\bfalsche (?:adresse|nummer|empfänger)|\birrtümlich (?:gesendet|an sie)|\berreur de destinataire\b|\bmauvaise adresse\b|\bdirección equivocada\b|\bpor error\b|\bindirizzo sbagliato\b|\bper errore\b|\bverkeerd(?:e)? adres\b|\bper ongeluk\b|\bomyłk",
    )),
    Elsewhere("thanks or news, with nothing asked", 3, (
        r"\b(?:arrived|came|received|got (?:it|them|the|here)|turned up|landed)\b[^.?\n]{0,60}\b(?:thanks|thank you|great|perfect|fine|today|yesterday|safely|ok|good)\b|\bworks? (?:great|perfectly|well|a treat|like a charm|fine)\b|\b(?:great|nice|lovely|excellent|top) (?:job|work|service|tool)\b|\bhappy (?:with|holidays|new year|christmas|easter)\b|\bmerry christmas\b|\bno (?:reply|action) (?:needed|necessary|required)\b|\bjust (?:to say|wanted to (?:say|thank))\b|\bthanks? (?:for (?:the|your) (?:quick|fast|help|call|visit|tour|service))",
        r"\bist (?:gut )?angekommen\b|\bpasst perfekt\b|\bfrohe weihnachten\b|\bbien (?:reçu|arrivée?)\b|\bjoyeux noël\b|\bha llegado bien\b|\bfeliz navidad\b|\bè arrivat[oa]\b|\bbuon natale\b|\bgoed (?:ontvangen|aangekomen)\b|\bprettige (?:kerst|feestdagen)",
    )),
    Elsewhere("another kind of mandrel", 6, (
        r"\b(?:lathe|milling|turning|grinding|wood|arbor|ring|jewel(?:l)?er'?s?) (?:mandrel|arbou?r)s?\b|\bmandrels? for (?:(?:a|my|the|wood) )*(?:lathe|turning|pens?|rings?)\b",
    )),
    Elsewhere("work or goods that the shop does not sell", 4, (
        r"\b(?:price|quote|cost|estimate)s? (?:on|for|of) (?:an?|the|some|one|my|our|two|\d+) (?:\w+[- ]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|exhausts?|headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|furniture|fences?|bikes?|boats?|stairs?|canop(?:y|ies)|swing ?sets?|goal ?posts?|bending machine|bender|press brake|welder)\b",
        r"\b(?:build|make|fabricate|weld|bend up|fab) (?:us|me) (?:an? |one|some|the|\d+ |up )?(?:\w+[- ]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|exhausts?|headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|furniture|fences?|bikes?|boats?|one|hoops?|tubes?|pipes?)\b|\b(?:build|fabricate) (?:us|me)\b",
        r"\bbend(?:ing)?\b[^.?\n]{0,60}\b(?:for (?:us|me)|my tubes?|our tubes?|these tubes?|some (?:tube|tubes|pipe|pipes|tubing|conduit))\b|\b(?:\d{2,}|some|few|several|hundred|dozen) (?:pieces|pcs|parts|tubes|pipes|hoops|lengths|off)\b[^.?\n]{0,80}\b(?:bent|bend|for us|for me)\b|\bbend(?:ing)? (?:\d{2,}|some|a few|several|a hundred|dozens?) (?:\w+ ){0,2}(?:pieces|pcs|parts|tubes|pipes|hoops|lengths|of)\b",
        r"\b(?:send|ship|supply|bring|drop off) (?:you |in |round )?(?:the |my |our |you the )?(?:tubes?|pipes?|material|tubing|stock)\b|\bbending (?:service|work|job)s?\b|\bsub-?contract|\bjob shop\b|\b(?:supply|deliver|make) (?:us )?(?:with )?(?:the )?(?:finished |bent )(?:parts|tubes|pipes|pieces|components)\b|\bbent (?:tubes|pipes|parts)\b",
        r"\blohnbiege|\blohnfertig|\bbiegen sie (?:uns|für uns|auch)\b|\bgebogene (?:rohre|teile)\b|\brohre für uns biegen\b|\bcintrage (?:à façon|de pièces)|\bsous-traitan|\btubes cintrés\b|\bdoblado de (?:piezas|tubos)|\btubos (?:doblados|curvados)\b|\bconto (?:terzi|lavoro)\b|\btubi (?:piegati|curvati)\b|\bloonbuig|\bgebogen buizen\b|\bgięte rury\b",
        r"\bdo you (?:sell|stock|have|carry) (?:\w+ ){0,2}(?:tube|tubing|pipe|welders?|benders?|exhausts?|mufflers?|flanges?|fittings?|drill bits?|end mills?|bolts?)\b(?! mandrel)",
    ), True),
)  # fmt: skip
