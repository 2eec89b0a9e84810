"""Words of business already under way: money, orders, deliveries, complaints.

Data only, as in ``words_elsewhere``, which tells what the weights mean; here 5 tells the errand by
itself, and 2 is enough only where nothing is asked for. Matched without regard to case.
"""

from __future__ import annotations

from .words_elsewhere import Elsewhere

_WISHED_BY = (
    r"(?! (?:au|pour|avant|d'ici|entro|per|voor|uiterlijk|tegen|op|antes|para|bis|zum|by|before|"
    r"franco|chez|dap|ddp|cip)\b)"
)
"""'Outillage livré au 13/11' says until when it is wanted, and 'livré franco' how."""

ORDERS: tuple[Elsewhere, ...] = (
    Elsewhere("an invoice or a payment", (
        (5, r"(?<!send )(?<!send the )(?<!send an )\binvoices?\b(?! (?:to|when|address|us at|me|"
            r"us|goes))"),
        (5, r"\bremittance\b|\bpayment (?:advice|notice|confirmation|reminder|received|has been|"
            r"was|sent|made)\b|\b(?:over|past) ?due\b|\bok(?:ay)? to pay\b|\b(?:credit|"
            r"debit) (?:for|of|"
            r"us|me)\b[^.?\n]{0,12}[$€£\d]|\bprice (?:mismatch|discrepancy)\b|"
            r"\bprice difference (?:on|in|between|of) (?:the |our |your |this |that )?(?:\w+ )?"
            r"(?:invoice|po\b|order|statement|bill)|"
            r"\bmismatch\b|\bstatement of account\b|\baccount "
            r"statement\b|\bcharged (?:me |us |my card )?(?:twice|double|again)\b"),
        (5, r"\b(?:have|has|was|been|we|i|already|just)(?:'ve)? paid\b|^\W*paid\b|\bcredit note\b|"
            r"\bpro ?forma\b(?! please)|\b(?:our|new|change of|updated) bank (?:details|"
            r"account)\b|\bwire transfer\b|\bpaid (?:\S+ )?(?:by|via|with|through)\b"),
        (5, r"\brechnung(?:en|s)?\b|\brg\.?-?nr|\bmahnung\b|\büberwiesen\b|\büberweisung\b|"
            r"\bzahlungs(?:avis|eingang|erinnerung)\b|\bgutschrift\b|\bbezahlt\b"),
        (5, r"\bfactures?\b|\bvirement\b|\bavis de paiement\b|\brelance\b|\bavoir n°|\bréglé\b|"
            r"\bpayé[es]?\b"),
        (5, r"\bfactura\b|\btransferencia\b|\baviso de pago\b|\babono\b|\b(?:pago|depósito) "
            r"(?:hecho|realizado)\b|\bpagad[oa]\b|\bcomprobante\b"),
        (5, r"\bfattura\b|\bbonifico\b|\bpagamento (?:effettuato|ricevuto)|\bnota di credito\b|"
            r"\bsollecito\b|\bpagat[oa]\b"),
        (5, r"\bfactuur\b|\bbetalingsherinnering\b|\bovergemaakt\b|\bcreditnota\b|\bbetaald\b"),
        (5, r"\bfaktur[aęy]\b|\bprzelew|\bfaktura\b|\bbetalning\b|\bfatura\b|\bzapłaci|\bbetalat"),
    )),
    Elsewhere("an order in hand: where it is", (
        (5, r"\b(?:order|po|p\.o\.|job|bestellung|commande|pedido|ordine)\s?(?:no\.?|#|nr\.?)?\s?"
            r"\d{3,}\b[^.?\n]{0,24}\b(?:ships?|where is it|late|due|you said|status|delayed)\b|"
            r"\byou said (?:\w+ ){1,2}(?:weeks?|days?)\b|\bon week (?:two|three|four|five|\d)\b"),
        (5, r"\bwhere(?:'s| is|s|’s) (?:my|our|the) (?:\w+ ){0,2}(?:order|mandrels?|parcel|"
            r"package|shipment|stuff|tool(?:ing)?|po)\b|\btracking\b|"
            r"\b(?:pick(?:ing)? up|collect(?:ing)?|fetch) (?:my|our) (?:order|parcel|goods)\b"),
        (5, r"\b(?:has|have|did) (?:it|they|this|that|my|our|the|order|po|\w-?\d+)\b[^.?\n]{0,50}"
            r"\b(?:shipped?|sent|left|gone out|been dispatched|go out|dispatched)\b|\bwhen "
            r"(?:will|does|do|is|can|should|might) (?:i |we |you )?(?:it|my|our|the|po|order|"
            r"expect|\w+-?\d+)\b[^.?\n]{0,50}\b(?:ships?|arrive|be (?:ready|shipped|delivered|"
            r"here)|leave|due|land|come|it|them|delivery|parcel|mandrel)\b|\bwhen \S+ ships\b"),
        (5, r"\b(?:order|po|delivery) status\b|\bstatus (?:of|on|update|update on)\b|\b(?:any "
            r")?(?:news|update|word|eta) (?:on|for|about|regarding) (?:my|our|the|po|order|this) "
            r"?(?:order|po|mandrels?|delivery|shipment|\d)|\border (?:no\.?|number|"
            r"#)?\s?\d{3,}\b(?=[^\n]{0,80}\?)|\bchecking (?:on|up on) (?:my |our |the )?(?:po|"
            r"order)"),
        (5, r"\bstill (?:waiting|nothing|no (?:sign|word|news|mandrel|parcel|tracking))\b(?! (?:on|"
            r"for) (?:a |your |the )?(?:price|quot))|\b(?:hasn't|has not|hasnt|not yet|never|"
            r"didn't|didnt) (?:arrived?|shipped?|been delivered|turned? up|come|showed?|"
            r"received)\b|\boverdue\b|\bare we (?:close|there)\b|\bbackorder"),
        (3, r"\bit(?:'s|s|’s| is| has) been (?:\w+ )?(?:\d+|two|three|four|five|six|a|over) "
            r"(?:days|weeks|months|week|month)\b|\b(?:\d+|two|three|four|five|six) (?:days|weeks|"
            r"months) (?:now|late|later|and (?:counting|nothing)|ago)\b|\b(?:was|were|been|you) "
            r"promised\b|\bpromised (?:for|by|me|us)\b|\bwas due\b|\bsupposed to (?:ship|be here|"
            r"arrive|have)\b"),
        # The number of an order with what was ordered in brackets.
        (3, r"\b(?:order|po|p\.o\.|bestellung|commande|pedido|ordine|bestelling)\s?"
            r"(?:no\.?|nr\.?|n[°º]|núm\.?|#)?\s?[a-z]{0,3}-?\d{3,}\s?\((?=[^()\n]{0,60}\d)"),
        (5, r"\bnovedad(?:es)? (?:de|del|con|sobre) (?:el |mi |nuestro )?pedido\b|\bneue?s? "
            r"(?:zu|von) (?:unserer |meiner |der )?bestellung\b|\bnouvelles (?:de|sur) (?:ma|la|"
            r"notre) commande\b|\bnovità sull?['’ ](?:nostro |mio )?ordine\b|\bnieuws over "
            r"(?:mijn |onze |de )?(?:bestelling|order)\b"),
        (3, r"\b(?:nos|me) prometieron\b|\bci (?:avete|era stat[oa]) promess[oa]\b"),
        (2, r"\b(?:my|our|your|that|the|this) (?:last |open )?(?:order|po|p\.o\.|purchase order|"
            r"shipment|job)\b(?! (?:form|is attached|attached|for|of))|\b(?:order|po|job|"
            r"purchase order)(?: no\.?| number|:)? ?#?[a-z]{0,2}-?\d{3,}"),
        (3, r"(?<!as )\b(?:i|we|he|she|they) (?:\w+ )?(?:ordered|bought|purchased)\b|"
            r"^\W*(?:ordered|bought|purchased)\b|\b(?:ordered|bought|purchased|placed) (?:\w+ "
            r"){0,4}(?:from you|last|on the|back in|weeks|days|months|ago)\b"),
        (2, r"\byou (?:guys |folks |people )?(?:sent|shipped|made|sold|delivered|built|supplied)\b|"
            r"\b(?:was|were|been|is|got|it) (?:being )?(?:shipped|delivered|dispatched|ordered|"
            r"received)\b|\b(?:delivered|supplied|dated|shipped|received) (?:in|on|last|\d)"),
        (5, r"\bwo (?:bleibt|ist) (?:meine|unsere|der|die)\b|\bsendungs(?:nummer|verfolgung)\b|"
            r"\bliefer(?:status|verzug)\b|\bwann (?:kommt|wird|ist|kann ich|können wir|dürfen wir)"
            r"[^.?\n]{0,60}(?:geliefert|an\b|versandt|lieferung|rechnen|erwarten|da\b)|\bstand "
            r"(?:der|unserer|meiner) (?:bestellung|lieferung)\b|\b(?:noch|bis heute|immer noch) "
            r"(?:nicht|keine?)\b|\bauftragsbestätigung\b|\bversandavis\b|\büberfällig\b|\bwarten "
            r"(?:immer |noch )?(?:seit|auf (?:den|die|unsere))"),
        (3, r"(?<!hiermit )\bbestellt(?:e[nrs]?)?\b|\b(?:un)?serer bestellung\b|"
            r"\bgelieferte[nrs]?\b|\bgeliefert\b" + _WISHED_BY + r"|\bzugesagt\b|\bversprochen\b"
            r"|\bzu (?:unserer|"
            r"meiner) bestellung\b"),
        (5, r"\boù en est (?:ma|notre|la) commande|\bnuméro de suivi\b|\bsuivi de (?:commande|"
            r"livraison)\b|\btoujours (?:pas|rien|en attente)|\bquand (?:sera|arrive|puis-je|"
            r"pouvons)[^.?\n]{0,40}|\bà ce jour\b|\bsans nouvelles\b"),
        (3, r"\b(?:j'ai|avons|ai|a|été) (?:commandé|acheté|reçu)|\breçue?s? (?:le|mardi|lundi|hier|"
            r"mercredi|jeudi|vendredi|ce)\b|\b(?:notre|ma|votre) (?:commande|livraison|colis)\b|"
            r"\battend(?:ons|s) (?:toujours |encore )?(?:le|la|notre)|\bpromis\b"),
        (5, r"\bdónde está (?:mi|nuestro)\b|\bestado (?:de|del) (?:mi |nuestro )?(?:pedido|"
            r"envío)\b|\bnúmero de (?:seguimiento|guía)\b|\b(?:no ha|aún no|todavía no) (?:ha "
            r")?llega|\bcuándo (?:llega|sale|estará)\b|\bcuando salga la guía\b"),
        (3, r"\b(?:mi|nuestro|su|el) pedido\b|\b(?:hemos|he|habíamos) (?:pedido|comprado|recibido|"
            r"encargado)\b|\b(?:pedimos(?! un mandril nuevo)|compramos|encargamos|compré|"
            r"encargué|recibimos) (?:el|un|"
            r"la|a)\b|\bque (?:nos|me) (?:mand|envi|hici|vendi)\w+|\besperando\b"),
        (5, r"\bdov'è (?:il|la|l')|\bstato (?:dell'ordine|del nostro ordine|della spedizione)\b|"
            r"\bnon è (?:ancora )?arrivat|\bquando (?:arriva|spedite|sarà|posso)\b|\b(?:in|siamo "
            r"in) attesa (?:del|della|di ricevere)\b|\bavete novità\b|\bci sono novità\b"),
        (3, r"\b(?:ordinat[oaie]|acquistat[oaie]|comprat[oaie])\b|\b(?:ns\.?|nostro|vs\.?|mio) "
            r"(?:ordine|spedizione)\b|\bricevut[oaie]\b"
            r"(?! (?:la |l[’'])(?:vostra |sua )?(?:offerta|quotazione|mail|e-mail|risposta))"
            r"|\bspedit[oaie]\b"),
        (5, r"\bwaar (?:blijft|is) (?:mijn|onze|de)\b|\btrack ?(?:&|en) ?trace\b|"
            r"\bstatus van (?:mijn|onze|de) (?:bestelling|order)\b|\bnog steeds "
            r"(?:niet|niks|niets)\b|\bnog (?:niet|niks|niets) (?:[^.?\n]{0,20} )?"
            r"(?:ontvangen|binnen|geleverd|"
            r"gehoord|gekregen|aangekomen|gezien|vernomen)\b|\bwanneer (?:kan|kunnen|komt|wordt|"
            r"mogen)[^.?\n]{0,50}\b(?:verwachten|geleverd|binnen|tegemoet|levering)\b"),
        (3, r"\bbesteld\b|\b(?:onze|mijn|uw|de) (?:bestelling|zending|levering|order)\b|"
            r"\bbestelling \d|\bontvangen\b|\bgeleverd\b" + _WISHED_BY + r"|\bbeloofd\b"
            r"|\bwachten (?:nog )?op\b"),
        (5, r"\bgdzie jest\b|\bstatus zamówienia\b|\bkiedy (?:dotrze|przyjdzie|wyśl)|\bvar är "
            r"(?:min|vår)\b|\bnär kommer\b|\bonde está (?:o|a) (?:meu|minha|nosso)\b|\bquando "
            r"chega\b"),
        (3, r"\bzamówi(?:łem|łam|liśmy|ony|one)\b|\b(?:moje|nasze|naszego) zamówieni|\bbeställt\b|"
            r"\bbeställde\b|\bvår (?:order|beställning)\b|\bencomend(?:ei|amos|ado)\b|"
            r"\b(?:meu|nosso) pedido\b|\bnossa encomenda\b"),
    )),
    Elsewhere("a change to an order in hand", (
        (5, r"\b(?:change|amend|revise|update|correct|bump|add|switch|split|move|push|"
            r"pull)\w*\b[^.?\n]{0,40}(?<!in )\b(?:order|po|purchase order|ship[- ]to|address|"
            r"delivery address|billing)\b(?! (?:for|of|to))|\brev(?:ision|\.)? \d+ (?:of|to) "
            r"(?:purchase order|po|order)\b|\b(?:ship[- ]to|delivery address|billing address) "
            r"(?:changed?|has changed|is now)\b|\b(?:po|order) \S+ rev"),
        (5, r"\bfor reference only\b|\bonly the (?:address|date|quantity|price)[^.\n]{0,20}changes?"
            r"\b"),
        # Said of orders, and as often of a quotation or of an enquiry put right.
        (2, r"\bunchanged\b|\b(?:rest|everything else|other lines?) (?:as is|stays? (?:as|the)|the "
            r"same)\b|\bunverändert\b|\binchangé|\bsin cambios\b|\binvariat|\bongewijzigd\b"),
        (5, r"\bcancel(?:ling|ing|led|lation)?\b[^.?\n]{0,40}\b(?:order|po|mandrels?|it|line|"
            r"item)\b|\bplease cancel\b|\bput [^.?\n]{0,30}on hold\b|\bhold off\b|\bsit on (?:the|"
            r"it|that|our|my)\b|\b(?:don't|do not|dont) ship\b|\bscrap (?:that|the|my) (?:order|"
            r"last)\b|\bno longer need"),
        (5, r"\b(?:push|move|bring|pull|delay|postpone|reschedule"
            r"|hold(?! (?:the|this|that|your|these|those|our|to the|us to the) (?:pric|quot"
            r"|offer)))"
            r"\b[^.?\n]{0,40}\b(?:out to|"
            r"back to|until|till|forward|in to|to the \d|by a (?:week|month|few))\b|\bverschieb|"
            r"\bzurückstell|\b(?:reporter|décaler|avancer|retarder)\b|\baplaz|\bpospon|"
            r"\badelant(?:ar|en)\b|\bposticip|\brinvi(?:are|ate)\b|\banticipare\b|\buitstel|"
            r"\bverschuiv|\bprzesun|\bskjut|\badiar\b|\bnothing ships\b|\bship (?:it |them |"
            r"everything )?(?:together|complete|partial|collect)\b"),
        (5, r"\border acknowledg|\backnowledge (?:our|the|receipt|po|order|please)\b|"
            r"\backnowledge please\b|\border confirmation\b|\bagainst (?:your|our) (?:quot|offer|"
            r"po|order)|\bplease confirm (?:receipt|the (?:new )?(?:date|address))|\bconfirm "
            r"(?:the )?ship(?:ping)? date\b|\bneed a confirmation of order\b"),
        (5, r"\bstorno\b|\bstornier|\blieferadresse\b[^.\n]{0,30}(?:geändert|neu|ändern)|"
            r"\bbestelländerung\b|\bbestellung\b[^.?\n]{0,50}(?:ändern|geändert|stornier|"
            r"verschieb|erhöh)"),
        (5, r"\bannul(?:er|ation|ons|ez)\b|\bmodif(?:ier|ication)\b[^.\n]{0,30}(?:commande|"
            r"adresse)|\baccusé de réception de (?:notre )?commande"),
        (5, r"\b(?:cancelar|anular|modificar|cambiar)\b[^.\n]{0,30}pedido"),
        (5, r"\b(?:annullare|modificare|modifica)\b[^.\n]{0,30}ordine|\bcome da "
            r"(?:vs\.?|vostra|sua) (?:offerta|quotazione)|\bconferma d'ordine\b"),
        (5, r"\b(?:annuleren|wijzig(?:en|ing))\b|\bafleveradres\b|\bbestelling\b"
            r"[^.?\n]{0,60}\b(?:sturen|adres|vestiging|verplaatsen)\b|\borderbevestiging\b"),
        (5, r"\b(?:anulow|zmian)\w*[^.\n]{0,20}zamówieni|\bavbeställ|\bcancelar (?:a|minha|nossa) "
            r"encomenda\b"),
    )),
    Elsewhere("a complaint or a refund", (
        (5, r"\byou (?:promised|swore)\b|\bwhat(?:'s|’s|s| is) (?:going on|the hold ?up|"
            r"happening)\b|\bwhat are you (?:going to|gonna) do\b|\bmake (?:this|it|things?) "
            r"right\b|\bmake good on\b|\bdisposition\b|\binspection report\b|\b(?:after|within) "
            r"(?:only )?(?:one|a|two|\d) (?:shift|week|day|hour)s?\b"),
        (5, r"\b(?:does|do|did|will|would|can|could)(?:n['’]?t| not) (?:even )?(?:go|slide|slip|"
            r"enter|get) (?:in|into|inside)\b|\bhow (?:do|are|can) (?:we|you) (?:going to )?(?:fix|"
            r"sort out|resolve) (?:this|it)\b|\bwo(?:n['’]?t|nt) (?:go|slide|slip) in|\bwhat will "
            r"you do\b|\bwhat now\b|\byou want to (?:handle|settle) (?:it|this)\b|\b(?:second|"
            r"third) time (?:this|it|the|in a row)\b|\bthis is the (?:second|third) time\b|"
            r"\b(?:received|came|arrived|delivered|showed up)\b[^.?\n]{0,60}\btoo (?:big|thick|"
            r"large|fat|small|thin|tight|loose)\b"),
        (5, r"\b(?:received|got|came|arrived|delivered)\b[^?\n]{0,60}\b(?:but|instead of|while)\b"
            r"[^?\n]{0,30}\b(?:ordered|order (?:was|says)|asked for)\b|\b(?:geliefert|bekommen|"
            r"erhalten)\b[^?\n]{0,60}\b(?:bestellt|statt)\b[^?\n]{0,30}\b(?:war|waren|hatten|"
            r"haben)\b|\b(?:return|rma) (?:label|number)\b"),
        (5, r"\bgeht nicht (?:ins?\b|in das|hinein|rein)|\bwie gehen wir vor\b|\bne rentre pas\b|"
            r"\bcome (?:procediamo|intendete procedere)\b|\bcricc[ah]|\bhoe lossen we (?:dit|het) "
            r"op\b|\bgescheurd\b|\bcómo lo (?:arregl|solucion)|\bnie (?:wchodzi|pasuje)\b|\bpassar "
            r"inte\b"),
        (5, r"\brefund(?:ed|s)?\b(?! went)|\bmoney back\b|\bcharge ?back\b|\bstore credit\b|"
            r"\bback on (?:the|my) card\b|\b(?:for|as|a) credit\b|\brestock(?:ing)? fee\b|"
            r"\bput (?:the )?\S+ (?:\w+ )?back\b"),
        (5, r"(?<!have a )\bcomplain(?:t|ing)?\b(?! from my)|\brma\b|\bwarranty claim\b|"
            r"\bnon[- ]?conform|\bncr\b|\bcorrective action\b|\b8d report\b"),
        (5, r"\b(?:arrived|came|received|delivered|turned up)\b[^.?\n]{0,40}\b(?:damaged|broken|"
            r"cracked|bent|scratched|wrong|rusty|rusted|short|smashed|crushed|empty|undersi[sz]ed?|"
            r"oversi[sz]ed?)\b|\b(?:box|crate|package|parcel|carton|it|mandrel|carrier)\b"
            r"[^.?\n]{0,40}\b(?:smashed|crushed|dropped|torn|soaked|damaged)\b"),
        (5, r"\bsent (?:me |us )?(?:the wrong|some(?:body|one) else)|\b(?:sent|got|received|"
            r"ordered|shipped|delivered|bought) (?:me |us )?the wrong\b|^\W*wrong (?:one|size|"
            r"part)\b|\bnot (?:what|the one) (?:i|we) (?:ordered|asked)|\b(?:packing slip|paper|"
            r"paperwork|packing list|delivery note) says\b|\b(?:never|doesn't|does not|didn't|did "
            r"not|won't|doesnt|didnt|wont) fit\b|\bnot (?:to|as per) (?:the )?(?:drawing|spec|"
            r"order)\b"),
        (3, r"\b(?:mandrel|one|balls?|links?|tip|nose|shank|thread|chrome|plating|tool|cable)s?"
            r"(?: you (?:sent|made|sold)[^.?\n]{0,30})?[^.?\n]{0,25}\b(?:broke|broken|snapped|"
            r"cracked|seized|fell apart|galled|peel(?:ed|ing)|flaked|chipped|has a burr|is loose)\b"
            r"|\bburr on the\b"),
        (5, r"\byou (?:sent|made|sold|shipped|supplied)[^.?\n]{0,60}\b(?:cracked|broke|failed|"
            r"snapped|split|seized|chipped|bent|peel\w+|too (?:big|small|tight|loose|short|"
            r"long))\b|\b(?:cracked|broke|snapped) (?:after|on) (?:only |just )?(?:\d+|the first|"
            r"two|three)\b"),
        (10, r"\b(?:like|need|have|wish|going|want) to (?:return|send back) (?:it|them|this|the|my|"
             r"our|one|\d)\b|\bbut (?:it|they|this)(?:['’]s| is| are|['’]re) (?:marked|stamped|"
             r"labell?ed|engraved)\b"),
        (5, r"\b(?:unacceptable|disappointed|not happy|unhappy|fed up|disgusted|a joke|not good "
            r"enough|pick it up|last straw)\b|\b(?:return|send|sending|returning|ship|take) (?:it|"
            r"them|this|the mandrel|these) (?:back|for)\b|\bwant to return\b|\bnot paying\b"),
        (5, r"\breklam|\bbeschwerde\b|\bmangelhaft\b|\bdefekt\b|\bgerissen\b|\bgebrochen\b|"
            r"\bgeld zurück\b|\b(?:rück)?erstattung\b|\brückzahlung\b|\bschadens?ersatz\b|"
            r"\bfalsch\w* (?:geliefert|bestellt|größe|dorn|teil)|\bbeschädigt\b|\brücksendung\b|"
            r"\bzurück(?:geschickt|gesandt|senden|geben)\b|\bverlangen ersatz|\bpasst nicht\b|"
            r"\bunzufrieden\b|\bverwechselt\b"),
        (5, r"\bremboursement\b|\brembours|\bréclamation\b|\bdéfectueu|\b(?:s'est |est |a )"
            r"(?:cassée?|fissurée?|rompu)|\bendommag|\bnon conforme\b|\bmécontent|\bn'entre pas\b|"
            r"\btrop (?:gros|petit|grand|court)s? (?:de|d')|\bque (?:faites|comptez)-vous\b"),
        (5, r"\breclamaci|\breembols|\bdevoluci[óo]n\b|\bdevolver|\bdefectuos|\b(?:se ha|está|"
            r"llegó|vino|ha) (?:roto|rota|partido|partida|rajado|dañad)|\bse (?:rompió|partió|"
            r"rajó)|\bdañad|\bno conforme\b|\bequivocad|\bqueremos una solución\b|\b(?:prometieron|"
            r"prometisteis|prometió)\b|\bquién responde\b|\bha durado\b|\bno (?:entra|encaja)\b"),
        (5, r"\breclamo\b|\brimbors|\bdifettos|\b(?:si è|è) (?:rotto|rotta|spezzat|crepat)|"
            r"\bdanneggiat|\breso merce\b|\bsbagliat|\bnon (?:entra|conforme)\b"),
        (5, r"\bklacht\b|\bterugbetal|\bbeschadigd\b|\bgebroken\b|\bkapot\b|\bretour(?:neren|"
            r"zending)\b|\bverkeerde? (?:maat|doorn|geleverd)|\bgeld terug\b|\bpast niet\b"),
        (5, r"\breklamacj|\bzwrot\b|\buszkodz|\bpęk(?:ł|nię)|\breklamation\b|\btrasig|\bsprucken|"
            r"\bdevolução\b|\breclamação\b|\bquebr(?:ou|ado)"),
        (5, r"\b(?:certificate?|cert|certs|3\.1|mill test report|mtr|coc|test report|msds|sds)\b"
            r"[^.?\n]{0,60}\b(?:delivered|order|po|for the|shipment|auditor|missing|received)\b"),
    )),
    Elsewhere("a parcel or its papers", (
        (4, r"\b(?:re-?send|send (?:me |us )?(?:again|another copy|a copy|the (?:\w+ )?(?:drawing|"
            r"label|papers?|certificate|invoice|receipt|packing))|(?:lost|missing|need|without|no|"
            r"forgot) (?:the |a |your )?(?:packing (?:slip|list)|receipt|label|delivery note|"
            r"commercial invoice|paperwork|certificate of conformity|manual))\b|\bcame out blank\b|"
            r"\bdelivery note\b"),
        # "40 x 40 x 2 box" is a tube.
        (3, r"(?<!\d )(?<!mm )(?<!in )(?<!\d\" )(?<!steel )(?<!square )(?<!sq )(?<!wall )(?<!ali )"
            r"(?<!alu )(?<!stainless )(?<!rect )\bbox\b"
            r"(?! (?:section|tub(?:e|ing)|steel|profile|iron|\d))|"
            r"\b(?:carton|crate|parcel|package|pallet|envelope)\b(?! (?:section|tube|\d))|"
            r"\b(?:customs|freight company|driver|post office|delivery man)\b|"
            # "Which carrier do you use?", "can I collect, or is it carrier only?" are questions.
            r"(?<!which )(?<!what )(?<!by )(?<!own )\b(?:carrier|courier)\b(?! (?:only|or)\b)|"
            r"\b(?:front desk|sign for|dropped off|left at|at the dock|loading dock|returned to "
            r"sender|shipping label|will call)\b|\bbill of lading\b"),
        (3, r"\b(?:lieferschein|warenbegleit\w*|handelsrechnung|paket|zoll(?:amt|papiere|"
            r"abfertigung)?|spediteur|spedition|karton|kiste|werkszeugnis)\b(?<!\d zoll)|\bbeim "
            r"zoll\b|\bnachreichen\b|\b(?:angekommen|eingetroffen|verschickt|versandt|abgeschickt|"
            r"unterwegs)\b|\bliegt (?:bei|im|in|seit)"),
        (3, r"\b(?:transporteur|douane|colis|bon de livraison|bordereau|carton|coursier)\b|"
            r"\b(?:expédiée?s?|livrée?s?|renvoyée?s?|arrivée?s?|retourn(?:ons|é"
            r"|er))\b" + _WISHED_BY +
            r"|"
            r"\bcertificat matière\b"),
        (3, r"\b(?:transportista|aduana|paquete|albar[áa]n|caja|mensajero|repartidor)\b|\b(?:llegó|"
            r"llegaron|ha llegado|recibí|recibido|enviad[oa]s?|devolvemos|devuelt[oa]|mandaron)\b"),
        (3, r"\b(?:corriere|dogana|pacco|d\.?d\.?t\.?|bolla|scatola|imballo|vettore)\b|"
            r"\b(?:arrivat[oaie]|consegnat[oaie]|spedit[oaie]|partit[oaie]|restituiamo|"
            r"rispedit)\b" + _WISHED_BY),
        (3, r"\b(?:vervoerder|douane|pakket|pakbon|doos|koerier|vrachtbrief)\b|\b(?:aangekomen|"
            r"geleverd|verstuurd|verzonden|opgehaald|teruggestuurd|ontbreekt)\b" + _WISHED_BY),
        (3, r"\b(?:paczk|kurier|przesyłk|list przewozow|dotarł|przyszed|przyszł|dostarczon|wysłan)|"
            r"\b(?:paketet?|kolli|följesedel|fraktsedel|kommit|anlänt|levererad|skickat|skickad)\b|"
            r"\b(?:chegou|transportadora|alfândega|nota fiscal|enviaram)\b"),
        (2, r"\b(?:signed(?! (?:nda|non-|copy|agreement|contract|order|po\b|form|off))|"
            r"arrived|shipped|delivered|dispatched|posted|collected|picked up)\b" +
            _WISHED_BY),
    )),
)  # fmt: skip
