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
        r"(?<!send )(?<!send the )(?<!send an )\binvoices?\b(?! (?:to|when|address|us at))",
        r"\bremittance\b|\bpayment (?:advice|notice|confirmation|reminder|received|has been|"
        r"was)\b|\b(?:over|past) ?due\b|\bstatement of account\b|\baccount statement\b",
        r"\b(?:have|has|was|been|we|already) paid\b|\bcredit note\b|"
        r"\bpro ?forma\b(?! please)|\b(?:our|new|change of|updated) bank (?:details|"
        r"account)\b|\bwire transfer\b",
        r"\brechnung(?:en|s)?\b|\brg\.?-?nr|\bmahnung\b|\büberwiesen\b|\büberweisung\b|"
        r"\bzahlungs(?:avis|eingang|erinnerung)\b|\bgutschrift\b",
        r"\bfactures?\b|\bvirement\b|\bavis de paiement\b|\brelance\b|\bavoir n°",
        r"\bfactura\b|\btransferencia\b|\baviso de pago\b|\babono\b",
        r"\bfattura\b|\bbonifico\b|\bpagamento (?:effettuato|ricevuto)|\bnota di credito\b|"
        r"\bsollecito\b",
        r"\bfactuur\b|\bbetalingsherinnering\b|\bovergemaakt\b|\bcreditnota\b",
        r"\bfaktur[aęy]\b|\bprzelew|\bfaktura\b|\bbetalning\b|\bfatura\b",
    )),
    Elsewhere("an order in hand: where it is", 5, (
        r"\bwhere(?:'s| is|s) (?:my|our|the) (?:\w+ ){0,2}(?:order|mandrels?|parcel|package|"
        r"shipment|stuff|tool(?:ing)?|po)\b|\btracking (?:number|no|info|please|code|link|"
        r"for)\b|\btracking\b(?=\?)",
        r"\b(?:has|have|did) (?:it|they|this|that|my|our|the|order|"
        r"po)\b[^.?\n]{0,50}\b(?:shipped?|sent|left|gone out|been dispatched|go out|"
        r"dispatched)\b|\bwhen (?:will|does|is) (?:it|my|our|the|po|"
        r"order)\b[^.?\n]{0,50}\b(?:ship|arrive|be (?:ready|shipped|delivered|here)|leave|"
        r"due|land|come)",
        r"\b(?:order|po|delivery) status\b|\bstatus (?:of|on|update on) (?:my|our|the|po|"
        r"order)\b|\b(?:any )?(?:news|update|word|eta) (?:on|for|about|regarding) (?:my|our|"
        r"the|po|order|this) ?(?:order|po|mandrels?|delivery|shipment|\d)|\border (?:no\.?|"
        r"number|#)?\s?\d{3,}\b(?=[^\n]{0,80}\?)|\bstill waiting (?:for|on)\b|\b(?:hasn't|"
        r"has not|not yet|never|didn't) (?:arrived?|shipped?|been delivered|turned? up|come|"
        r"showed?)\b|\boverdue\b",
        r"\bwo (?:bleibt|ist) (?:meine|unsere|der|die)\b|\bsendungs(?:nummer|verfolgung)\b|"
        r"\bliefer(?:status|verzug)\b|\bwann (?:kommt|wird|ist) (?:die|der|unsere?|"
        r"meine?) [^.?\n]{0,40}(?:geliefert|an|versandt|lieferung)|\bstand (?:der|unserer|"
        r"meiner) (?:bestellung|lieferung)\b|\bnoch nicht (?:angekommen|erhalten|"
        r"geliefert)\b|\bauftragsbestätigung\b",
        r"\boù en est (?:ma|notre|la) commande|\bnuméro de suivi\b|\bsuivi de (?:commande|"
        r"livraison)\b|\btoujours pas (?:reçu|arrivé|livré)|\bquand (?:sera|arrive) (?:ma|"
        r"notre|la)\b",
        r"\bdónde está (?:mi|nuestro)\b|\bestado (?:de|del) (?:mi |nuestro )?pedido\b|"
        r"\bnúmero de seguimiento\b|\bno ha llegado\b|\bcuándo (?:llega|sale) (?:mi|nuestro|"
        r"el)\b",
        r"\bdov'è (?:il|la|l')|\bstato (?:dell'ordine|del nostro ordine|della spedizione)\b|"
        r"\bnon è (?:ancora )?arrivat|\bquando (?:arriva|spedite)\b",
        r"\bwaar (?:blijft|is) (?:mijn|onze|de)\b|\btrack ?(?:&|en) ?trace\b|"
        r"\bstatus van (?:mijn|onze|de) (?:bestelling|order)\b|\bnog niet (?:ontvangen|"
        r"binnen|geleverd)\b", r"\bgdzie jest\b|\bstatus zamówienia\b",
    )),
    Elsewhere("a change to an order in hand", 5, (
        r"\b(?:change|amend|revise|update|correct)\w*\b[^.?\n]{0,40}\b(?:order|po|"
        r"purchase order|ship[- ]to|address|delivery address|billing)\b|\brev(?:ision|"
        r"\.)? \d+ (?:of|to) (?:purchase order|po|order)\b|\b(?:ship[- ]to|delivery address|"
        r"billing address) (?:changed?|has changed|is now)\b|\b(?:po|order) \S+ rev",
        r"\b(?:for reference,? )?unchanged\b|\bfor reference only\b|\bonly the (?:address|"
        r"date|quantity|price)[^.\n]{0,20}changes?\b",
        r"\bcancel(?:ling|ing|led|lation)?\b[^.?\n]{0,40}\b(?:order|po|mandrels?|it|line)\b|"
        r"\bplease cancel\b|\bput [^.?\n]{0,30}on hold\b|\border acknowledg|"
        r"\backnowledge (?:our|the|receipt of)|\border confirmation\b|"
        r"\bplease confirm (?:receipt|the (?:new )?(?:date|address))",
        r"\bstorno\b|\bstornier|\blieferadresse\b[^.\n]{0,30}(?:geändert|neu|ändern)|"
        r"\bbestelländerung\b|\bbestellung\b[^.?\n]{0,50}(?:ändern|geändert|stornier)|"
        r"\bunverändert\b",
        r"\bannul(?:er|ation|ons)\b|\bmodif(?:ier|ication)\b[^.\n]{0,30}(?:commande|"
        r"adresse)|\binchangé",
        r"\b(?:cancelar|anular|modificar)\b[^.\n]{0,30}pedido|\bsin cambios\b",
        r"\b(?:annullare|modificare|modifica)\b[^.\n]{0,30}ordine|\binvariat",
        r"\b(?:annuleren|wijzig(?:en|ing))\b|\bongewijzigd\b|\bafleveradres\b",
        r"\b(?:anulow|zmian)\w*[^.\n]{0,20}zamówieni",
    )),
    Elsewhere("a complaint or a refund", 5, (
        r"\byou (?:promised|swore)\b|\bwhat(?:'s|’s| is) (?:going on|the hold ?up|happening)\b",
        r"\brefund(?:ed|s)?\b|\bmoney back\b|\bcharge ?back\b|\bstore credit\b|"
        r"\bback on (?:the|my) card\b",
        r"\bcomplain(?:t|ing)?\b|\brma\b|\bwarranty claim\b|\bnon[- ]?conform|\bncr\b|"
        r"\bcorrective action\b|\b8d report\b",
        r"\b(?:arrived|came|received|delivered|got|turned up)\b[^.?\n]{0,40}\b(?:damaged|"
        r"broken|cracked|bent|scratched|wrong|rusty|rusted|short|undersi[sz]ed?|"
        r"oversi[sz]ed?)\b|\bsent (?:me |us )?the wrong\b|\bwrong (?:one|size|mandrel|part|"
        r"item) (?:was|came|arrived|sent|in the box)|\b(?:never|doesn't|does not|didn't|"
        r"did not|won't) fit\b|\bnot (?:to|as per) (?:the )?(?:drawing|spec|order)\b",
        r"\b(?:mandrel|one|it|ball|link|tip|tool)s? (?:you (?:sent|made|"
        r"sold)[^.?\n]{0,30})?(?:has |have |just |already )?(?:broke|broken|snapped|cracked|"
        r"seized|failed|fell apart|galled)\b|\b(?:unacceptable|disappointed|not happy|"
        r"unhappy|fed up|disgusted|a joke)\b|\b(?:return|send|sending|returning|ship|"
        r"take) (?:it|them|this|the mandrel|these) back\b|\bwant to return\b",
        r"\breklam|\bbeschwerde\b|\bmangelhaft\b|\bdefekt\b|\bgerissen\b|\bgebrochen\b|"
        r"\bgeld zurück\b|\berstattung\b|\bschadens?ersatz\b|\bfalsch (?:geliefert|"
        r"bestellt)|\bbeschädigt\b|\brücksendung\b|\bverlangen ersatz",
        r"\bremboursement\b|\brembourser\b|\bréclamation\b|\bdéfectueu|\bcassée?s?\b|"
        r"\bendommag|\bnon conforme\b|\bmécontent",
        r"\breclamaci|\breembolso\b|\bdevoluci[óo]n\b|\bdefectuos|\broto\b|\bdañad|"
        r"\bno conforme\b",
        r"\breclamo\b|\brimborso\b|\bdifettos|\brotto\b|\bdanneggiat|\breso merce\b",
        r"\bklacht\b|\bterugbetal|\bbeschadigd\b|\bgebroken\b|\bkapot\b|\bretour(?:neren|"
        r"zending)\b|\breklamacj|\bzwrot\b|\buszkodz",
    )),
    Elsewhere("somebody selling to us", 4, (
        r"\bwe (?:stock|manufacture|supply|specialise|specialize|offer|provide|export|"
        r"distribute|produce)\b(?![^.\n]{0,60}\?)|\bwe(?:'re| are) (?:a |an |"
        r"one of )?(?:the )?(?:leading |professional |largest |chinese |global |"
        r"family[- ]owned )*(?:manufacturer|supplier|distributor|mill|exporter|stockist|"
        r"agency|foundry|factory)\b",
        r"\b(?:introduce|introducing) (?:our|my|ourselves|myself)\b|\bour (?:products?|"
        r"services?|range|company|factory|catalogu?e|platform|solution|software|"
        r"team of)\b[^.?\n]{0,60}\b(?:include|offers?|can help|helps?|is|are|specialis|"
        r"specializ|provide)|\b(?:competitive|factory|wholesale|best) prices?\b(?! (?:for|"
        r"on|and|cif|fob|for the|you can))|\bwe (?:can|could) (?:help|save|offer you|"
        r"supply you|provide you)\b",
        r"\b(?:\d+|ten|fifteen|thirty|few) (?:minutes?|mins?)\b[^.?\n]{0,40}\b(?:call|chat|"
        r"talk|meeting|demo|this week|next week|thursday|tuesday|monday|wednesday|friday)\b|"
        r"\b(?:quick|short|brief|intro) (?:call|chat|demo)\b|\bschedule a (?:call|demo|"
        r"meeting)\b|\bhop on a call\b|\bbook a (?:demo|call)\b|\bhope this (?:e-?mail |"
        r"message |mail )?finds you\b|\breach(?:ing)? out\b|\bi (?:noticed|saw|came across|"
        r"found) (?:that )?(?:you|your (?:website|site|company|page|profile))\b",
        r"\bseo\b|\b(?:google|search) rank|\bfirst page of google\b|\b(?:web ?site|"
        r"web) (?:design|redesign|traffic|development)\b|\bleads\b|\bbacklinks?\b|"
        r"\bguest post\b|\bbecome (?:your|a) (?:supplier|partner|distributor|dealer|"
        r"agent)\b|\byour (?:new )?(?:supplier|steel supplier|mill)\b|\bpartner(?:ship|"
        r"ing) (?:with|opportunit)|\bbe (?:the|your) (?:mill|supplier|partner|source)\b|"
        r"\baccount executive\b|\bbusiness development\b",
        r"\b(?:buying|interested in|sell(?:ing)?) (?:our|my|an? used)\b",
        r"\bloan\b|\bfinancing (?:option|for your)|\binsurance (?:quote|policy|cover)\b|"
        r"\bpromotional\b|\bfree (?:trial|sample|audit)\b|\bspecial (?:offer|price)\b|"
        r"\bstock ?list\b|\bsurplus\b[^.\n]{0,30}\bfor sale\b|\b(?:machine|bender|lathe|"
        r"equipment) for sale\b",
        r"\bwir sind (?:ein |der |einer der )?(?:führende[rn]? )?(?:hersteller|lieferant|"
        r"anbieter|händler)\b|\bwir (?:bieten|liefern|fertigen) (?:ihnen|seit|rohre|"
        r"hochwertige)|\bunser(?:e|en)? (?:produkt|leistung|sortiment)|"
        r"\bdürfen wir uns vorstellen\b",
        r"\bnous sommes (?:un |le )?(?:fabricant|fournisseur|leader)|\bnous (?:proposons|"
        r"fabriquons|fournissons)\b|\bnos (?:produits|services)\b",
        r"\bsomos (?:un |una )?(?:fabricante|empresa|proveedor|líder)|\bles ofrecemos\b|"
        r"\bnuestros (?:productos|servicios)\b",
        r"\bsiamo (?:un'?|una )? ?(?:azienda|produttori|fornitori|leader)|\bvi proponiamo\b|"
        r"\bi nostri (?:prodotti|servizi)\b",
        r"\bwij zijn (?:een )?(?:fabrikant|leverancier|producent)|\bonze (?:producten|"
        r"diensten)\b|\bjesteśmy (?:producentem|dostawcą)|\bnasza oferta\b",
    )),
    Elsewhere("a supplier's quotation to us", 5, (
        r"\b(?:we are |we're )?pleased to (?:quote|offer|submit|provide)\b|\b(?:find|"
        r"attached|enclosed|is|see) (?:\w+ ){0,2}our (?:quotation|quote|offer|price list)\b|"
        r"\bour (?:quotation|quote|offer) (?:no|number|#|ref|q|\d)|"
        r"\bthank you for your (?:enquiry|inquiry|rfq|request for)\b|"
        r"\bthanks for your (?:enquiry|inquiry|rfq)\b|\bquotation valid\b|"
        r"\bwe can offer (?:you )?(?:the following|as follows)",
        r"\bunser angebot (?:nr|vom|\d)|\b(?:vielen dank|danke) für ihre (?:anfrage|"
        r"bestellung)\b|\bgerne bieten wir (?:ihnen)? ?an\b|\banbei unser angebot\b|"
        r"\bnotre offre (?:n°|de prix|ci-jointe|\d)|\bsuite à votre demande\b|"
        r"\bnuestra oferta (?:n|\d)|\bla nostra offerta\b|\bin (?:riferimento|"
        r"risposta) alla (?:vostra|sua) richiesta\b|\bonze offerte (?:nr|\d)|"
        r"\bbedankt voor uw aanvraag\b",
    )),
    Elsewhere("an application for work", 6, (
        r"\b(?:my|attached|enclosed) (?:cv|resume|résumé|curriculum)\b|\b(?:job|position|"
        r"vacancy|vacancies|apprenticeship|internship)\b(?![^.\n]{0,20}\b(?:in stainless|"
        r"number|no)\b)[^.\n]{0,60}\b(?:apply|application|available|opening|open|interested|"
        r"at your)\b|\bapply(?:ing)? for (?:the|a|your|any)\b|\b(?:hiring|any openings|"
        r"job openings)\b|\bapplication for (?:the )?(?:position|job|role|post)\b|"
        r"\bpart[- ]time job\b|\bcover letter\b",
        r"\bapprenticeships?\b|\b(?:any|summer|current) (?:\w+ )?openings?\b",
        r"\bbewerb(?:e|ung|en)\b|\blebenslauf\b|\bausbildungsplatz\b|\bpraktikum\b",
        r"\bcandidature\b|\bposte de\b|\balternance\b|\bstage (?:de|en)\b|"
        r"\blettre de motivation\b", r"\bcurrículum\b|\bsolicitud de empleo\b|\bvacante\b",
        r"\bcandidatura\b|\bposizione (?:aperta|di)\b|\bcurriculum\b",
        r"\bsollicit(?:atie|eren|eer)\b|\bvacature\b|\bstageplaats\b|\baplikuj|\bansök(?:an|"
        r"er)\b",
    )),
    Elsewhere("likely fraud", 6, (
        r"\b(?:verify|confirm|validate|update) your (?:account|mailbox|password|identity|"
        r"e-?mail)\b|\b(?:mailbox|account|password|storage)\b[^.\n]{0,40}\b(?:full|expires?|"
        r"suspended|locked|deactivated|quota|terminated|limit)\b|\bclick (?:here|the link|"
        r"below) (?:to )?(?:verify|confirm|keep|restore|login|avoid|unlock|upgrade|release)|"
        r"\bclick here\b|\bgift cards?\b|\b(?:inheritance|lottery|beneficiary|next of kin|"
        r"bitcoin|crypto)\b|\bshared (?:a|the) (?:document|file) with you\b|"
        r"\bpending messages?\b|\bkindly open the attach|\bare you (?:at your desk|"
        r"available)\b[^.\n]{0,60}\b(?:task|favou?r|urgent)",
        r"\bpostfach\b[^.\n]{0,40}\b(?:voll|gesperrt|bestätigen)|"
        r"\bkonto\b[^.\n]{0,40}\b(?:gesperrt|bestätigen|verifizieren)|"
        r"\bvotre compte\b[^.\n]{0,40}\b(?:suspendu|bloqué)|"
        r"\bsu cuenta\b[^.\n]{0,40}\b(?:suspendida|bloqueada)",
    )),
    Elsewhere("an invitation", 5, (
        r"\b(?:invite|inviting|invited) (?:you|your)\b|\b(?:you're|you are) invited\b|"
        r"\bopen (?:house|day)\b|\brsvp\b|\bour (?:booth|stand)\b|\b(?:visit|see|"
        r"meet) us at\b|\btrade (?:show|fair)\b[^.\n]{0,40}\b(?:join|register|booth|visit|"
        r"attend)|\bregister (?:now|for|here|today)\b|\bchristmas party\b|\bsummer party\b|"
        r"\bgolf (?:day|outing|tournament)\b|\bwebinar\b|\banniversary celebration\b",
        r"\b(?:laden|lädt) (?:wir )?(?:sie|euch)[^.\n]{0,40}\bein\b|\beinladung\b|"
        r"\btag der offenen tür\b|\bmessestand\b|\b(?:invitation|vous invit(?:e|ons))\b|"
        r"\bportes ouvertes\b|\b(?:le|les|os) invitamos\b|\bjornada de puertas\b|\b(?:vi|"
        r"la) invitiamo\b|\bporte aperte\b|\bnodigen (?:wij )?u\b|\bopen dag\b|"
        r"\buitnodiging\b|\bzaprasza",
    )),
    Elsewhere("a survey or a supplier form", 5, (
        r"\bsurvey\b|\bquestionnaire\b|\brate (?:your|our|us)\b|\byour feedback\b|"
        r"\bsupplier (?:self[- ])?(?:assessment|registration|portal|evaluation|audit|form|"
        r"onboarding)\b|\bconflict minerals\b|\breach (?:declaration|compliance|"
        r"statement)\b|\brohs\b|\bw-?9 form\b|\b(?:w-?9)\b|\bcertificate of (?:insurance|"
        r"origin)\b|\bvendor (?:form|registration|onboarding|setup)\b|\bcode of conduct\b|"
        r"\blong[- ]term supplier'?s? declaration\b",
        r"\bumfrage\b|\bfragebogen\b|\blieferanten(?:selbstauskunft|bewertung|erklärung)\b|"
        r"\benquête\b|\bsondage\b|\bencuesta\b|\bcuestionario\b|\bsondaggio\b|"
        r"\bquestionario\b|\bvragenlijst\b|\bankiet",
    )),
    Elsewhere("not meant for us", 5, (
        r"\bwrong (?:number|address|person|e-?mail|company|mail|place|shop|people|recipient|"
        r"department)\b|\bsent (?:this |it )?(?:to you )?by mistake\b|"
        r"\bmeant (?:it )?for (?:my|our|someone|somebody|another)\b|\b(?:please )?(?:remove|"
        r"take) me (?:from|off)\b|\bunsubscribe me\b|\bstop (?:e-?mailing|sending|"
        r"writing)\b|\b(?:ignore|disregard) (?:my|this|the|that) (?:last |previous |"
        r"earlier )?(?:e-?mail|message|mail|one)\b|\bplease ignore\b|\bnot for us\b|"
        r"\btest(?:ing)? (?:message|mail|e-?mail|123)\b|^\W*test\W*$",
        r"\bfalsche (?:adresse|nummer|empfänger)|\birrtümlich (?:gesendet|an sie)|"
        r"\berreur de destinataire\b|\bmauvaise adresse\b|\bdirección equivocada\b|"
        r"\bpor error\b|\bindirizzo sbagliato\b|\bper errore\b|\bverkeerd(?:e)? adres\b|"
        r"\bper ongeluk\b|\bomyłk",
    )),
    Elsewhere("thanks or news, with nothing asked", 3, (
        r"\b(?:arrived|came|received|got (?:it|them|the|here)|turned up|"
        r"landed)\b[^.?\n]{0,60}\b(?:thanks|thank you|great|perfect|fine|today|yesterday|"
        r"safely|ok|good)\b|\bworks? (?:great|perfectly|well|a treat|like a charm|fine)\b|"
        r"\b(?:great|nice|lovely|excellent|top) (?:job|work|service|tool)\b|\bhappy (?:with|"
        r"holidays|new year|christmas|easter)\b|\bmerry christmas\b|\bno (?:reply|"
        r"action) (?:needed|necessary|required)\b|\bjust (?:to say|wanted to (?:say|"
        r"thank))\b|\bthanks? (?:for (?:the|your) (?:quick|fast|help|call|visit|tour|"
        r"service))",
        r"\bist (?:gut )?angekommen\b|\bpasst perfekt\b|\bfrohe weihnachten\b|"
        r"\bbien (?:reçu|arrivée?)\b|\bjoyeux noël\b|\bha llegado bien\b|\bfeliz navidad\b|"
        r"\bè arrivat[oa]\b|\bbuon natale\b|\bgoed (?:ontvangen|aangekomen)\b|"
        r"\bprettige (?:kerst|feestdagen)",
    )),
    Elsewhere("another kind of mandrel", 6, (
        r"\b(?:lathe|milling|turning|grinding|wood|arbor|ring|jewel(?:l)?er'?s?) (?:mandrel|"
        r"arbou?r)s?\b|\bmandrels? for (?:(?:a|my|the|wood) )*(?:lathe|turning|pens?|"
        r"rings?)\b",
    )),
    Elsewhere("work or goods that the shop does not sell", 4, (
        r"\b(?:price|quote|cost|estimate)s? (?:on|for|of) (?:an?|the|some|one|my|our|two|"
        r"\d+) (?:\w+[- ]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|"
        r"exhausts?|headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|"
        r"furniture|fences?|bikes?|boats?|stairs?|canop(?:y|ies)|swing ?sets?|goal ?posts?|"
        r"bending machine|bender|press brake|welder)\b",
        r"\b(?:build|make|fabricate|weld|bend up|fab) (?:us|me) (?:an? |one|some|the|\d+ |"
        r"up )?(?:\w+[- ]){0,3}(?:trailer|hand ?rails?|railings?|gates?|cages?|roll ?bars?|"
        r"exhausts?|headers?|manifolds?|downpipes?|frames?|bumpers?|racks?|chairs?|tables?|"
        r"furniture|fences?|bikes?|boats?|one|hoops?|tubes?|pipes?)\b|\b(?:build|"
        r"fabricate) (?:us|me)\b",
        r"\bbend(?:ing)?\b[^.?\n]{0,60}\b(?:for (?:us|me)|my tubes?|our tubes?|these tubes?|"
        r"some (?:tube|tubes|pipe|pipes|tubing|conduit))\b|\b(?:\d{2,}|some|few|several|"
        r"hundred|dozen) (?:pieces|pcs|parts|tubes|pipes|hoops|lengths|"
        r"off)\b[^.?\n]{0,80}\b(?:bent|bend|for us|for me)\b|\bbend(?:ing)? (?:\d{2,}|some|"
        r"a few|several|a hundred|dozens?) (?:\w+ ){0,2}(?:pieces|pcs|parts|tubes|pipes|"
        r"hoops|lengths|of)\b",
        r"\b(?:send|ship|supply|bring|drop off) (?:you |in |round )?(?:the |my |our |"
        r"you the )?(?:tubes?|pipes?|material|tubing|stock)\b|\bbending (?:service|work|"
        r"job)s?\b|\bsub-?contract|\bjob shop\b|\b(?:supply|deliver|"
        r"make) (?:us )?(?:with )?(?:the )?(?:finished |bent )(?:parts|tubes|pipes|pieces|"
        r"components)\b|\bbent (?:tubes|pipes|parts)\b",
        r"\bdo (?:you|u|ya) (?:guys |folks )?(?:also )?(?:bend|do (?:any )?bending)\b",
        r"\blohnbiege|\blohnfertig|\bbiegen sie (?:uns|für uns|auch)\b|\bgebogene (?:rohre|"
        r"teile)\b|\brohre für uns biegen\b|\bcintrage (?:à façon|de pièces)|\bsous-traitan|"
        r"\btubes cintrés\b|\bdoblado de (?:piezas|tubos)|\btubos (?:doblados|curvados)\b|"
        r"\bconto (?:terzi|lavoro)\b|\btubi (?:piegati|curvati)\b|\bloonbuig|"
        r"\bgebogen buizen\b|\bgięte rury\b",
        r"\bdo you (?:sell|stock|have|carry) (?:\w+ ){0,2}(?:tube|tubing|pipe|welders?|"
        r"benders?|exhausts?|mufflers?|flanges?|fittings?|drill bits?|end mills?|"
        r"bolts?)\b(?! mandrel)",
    ), True),
)  # fmt: skip
