"""Words of those who sell to us: pitches, stock lists, machines and tube that somebody gives away.

Data only, as in ``words_elsewhere``, which tells what the weights mean. What is for sale is told
with its sizes; they are nobody's request. Matched without regard to case.
"""

from __future__ import annotations

from .words_elsewhere import Elsewhere

_GOODS = (
    r"(?:bars?|bar stock|tubes?|tubing|pipes?|inserts?|carbide|castings?|bronze|steel|balls?|"
    r"machines?|benders?|dom|stainless|sticks?|bundles?|plating|coatings?|tools?|mandrels?|dies?|"
    r"lubricants?|abrasives|fittings?|fasteners|forgings?|sheets?|coils?)"
)

_MILL = (
    r"(?:(?:tube|pipe|steel|metals?) (?:mill|works|stockist|merchant|wholesaler|producer)|stockist|"
    r"mill)"
)

SELLING: tuple[Elsewhere, ...] = (
    Elsewhere("somebody selling to us", (
        # "a machine shop near you with spare turning capacity"
        (5, r"(?<!you )\b(?:with|have|got|having) (?:some )?(?:spare|free|available|idle) "
            r"(?:[\w-]+ ){0,2}capacity\b|\b(?:haben|mit) freien? kapazität\w*\b|"
            r"\bcapacité (?:libre|disponible)\b|"
            r"\bcapacidad (?:libre|disponible)\b|\bcapacità (?:libera|disponibile)\b|"
            r"\b(?:vrije|beschikbare) capaciteit\b"),
        (5, r"\b(?:we|i) (?:(?!ask|request|need|want)\w+ )?(?:stock|supply|specialise|specialize"
            r"|offer|export|"
            r"distribute|sell|import|represent|carry)\b(?=[^.\n]{0,80}\b(?:" + _GOODS +
            r"|you|your)\b)(?![^.\n]{0,80}\?)"),
        (3, r"\bwe(?:'re| are) (?:also )?(?:supply|a |an |one of )?(?:the )?(?:leading |"
            r"professional |largest |chinese |global |family[- ]owned )*(?:manufacturer|supplier|"
            r"distributor|mill|exporter|stockist|agency|foundry|factory|supply)\b"),
        (5, r"\bwe(?:'re| are) (?:an? |the )?(?:[\w-]+ ){0,3}" + _MILL + r"\b|"
            r"\b(?:can|could) (?:offer|supply)(?: you)?(?: \w+)? (?:from|ex|off) stock\b|"
            r"\b(?:nous )?pouvons (?:vous )?(?:proposer|offrir|fournir) (?:sur|de|du) stock\b|"
            r"\bpodemos (?:ofrecer(?:les)?|suministrar(?:les)?) (?:de|desde) (?:stock|almacén)\b|"
            r"\bpossiamo (?:offrire|fornire|proporre) (?:da|dal) (?:magazzino|stock)\b|"
            r"\b(?:kunnen|bieden) (?:wij |we |u )*(?:uit voorraad|vanaf voorraad)\b"),
        (5, r"\d ?(?:€|eur|euros?|usd|\$|£|gbp) ?(?:/|per|pro|par|al|por) ?(?:kg|to?|tonn?e|mt|lb|"
            r"m)\b|[€$£] ?\d[\d.,]* ?(?:/|per) ?(?:kg|to?|tonn?e|mt|lb)\b|\b(?:minimum|min\.?|ab|"
            r"mindestens|à partir de|mínimo|minimo|vanaf)(?: order| quantity"
            r"| of)? \d[\d.,]* ?(?:kg|"
            r"to|tonn?es?|mt)\b"),
        (5, r"\bour (?:factory|mill|foundry|warehouse|plant)\b[^.?\n]{0,60}\b(?:make|produce|has|"
            r"have|can|cast|stock)\w*\b|\b(?:\w+ )?at an? (?:\w+ )?(?:tube|steel|pipe|metals?) "
            r"(?:mill|distributor|service center|supplier|company)\b|\bin (?:your|the) (?!(?:"
            r"\w+ ){0,2}(?:quot\w*|invoice|offer|order|drawing|list|table|confirmation|letter"
            r"|e?mail|first|second|third|last|next|top|bottom|same)\b)[\w ]{2,25} line\b"),
        (5, r"\b(?:introduce|introducing) (?:our|my|ourselves|myself)\b|\bour (?:products?|"
            r"services?|range|company|catalogu?e|platform|solution|software|team "
            r"of)\b[^.?\n]{0,60}\b(?:include|offers?|can help|helps?|is|are|specialis|specializ|"
            r"provide)|\bour (?:price|quality|moq)s?\b[^.?\n]{0,40}\b(?:competitive|best|low|good)|"
            r"\b(?:competitive|factory|wholesale|good|best) (?:prices?|money)\b(?! (?:and|on|for|"
            r"cif|fob|please|you))|\bwe (?:can|could) (?:save|offer you|supply you|provide you)\b|"
            r"\bmoq\b[^.\n]{0,12}\d"),
        (5, r"\b(?:who|which person)\b[^.?\n]{0,30}\b(?:buys|buying|purchasing|sourcing|handles|"
            r"decides)\b|\bdear (?:purchasing|procurement|buyer)|\b(?:shall|should|can|may|could) "
            r"(?:i|we) (?:send|share|show|email)(?: you)? (?:the|our|a|my|some) (?:list|catalog\w*|"
            r"samples?|price ?list|deck|link|brochure)\b|\bi will send (?:you )?(?:the "
            r")?(?:catalog|samples)|\b(?:if any|if you have any) (?:demand|need|interest)|\bif "
            r"(?:you )?interest(?:ed)?\b|^\W*interested\?|\bcooperation\b"),
        (5, r"\b(?:we|i)(?:'d|’d| would) (?:love|like|be (?:happy|glad)) to (?:help you|take|serve|"
            r"supply|work with|earn|support|partner|discuss how|show you|be your)\b|\boff your "
            r"(?:plate|hands)\b|\b(?:i|we) represent\b|\b(?:i am|i'm|my name is)[^.?\n]{0,40} "
            r"(?:from|with|at) [^.?\n]{0,40}\b(?:we|and i) (?:help|offer|provide|supply|make)\b|"
            r"\b(?:we|our)[^.?\n]{0,25} rates (?:go|will|are)\b|\brates? go up\b|\b(?:do you|"
            r"anyone) (?:need|use|buy|want) (?:any|some)\b[^.?\n]{0,30}\?"),
        (5, r"(?<!give a )(?<!giving a )(?<!hold a )\b(?:\d+|ten|fifteen|thirty|few) "
            r"(?:minutes?|mins?)\b"
            r"[^.?\n]{0,40}\b(?:call|chat|"
            r"talk|meeting|demo|this week|next week|thursday|tuesday|monday|wednesday|friday)\b|"
            r"\b(?:quick|short|brief|intro) demo\b|\bschedule a (?:call|demo|meeting)\b|\bhop on a "
            r"call\b|\bbook a (?:demo|call)\b|\breach(?:ing)? out\b|\btop of your inbox\b|\bglad "
            r"to (?:know|learn|hear)\b"),
        (5, r"\b(?:may|can|could|shall) we (?:send|offer|quote|present|show|supply) you\b|"
            r"\b(?:dürfen|"
            r"können|dürften|sollen) wir ihnen\b[^.\n]{0,40}\b(?:angebot|liste|muster|katalog|"
            r"preise)\b|"
            r"\bpouvons-nous vous (?:envoyer|proposer|faire)\b|\bpodemos (?:enviarles|ofrecerles|"
            r"mandarles)\b|\bpossiamo (?:inviarvi|offrirvi|proporvi|mandarvi)\b|\bmogen wij u\b"),
        (5, r"\bwir (?:liefern|führen|vertreiben|lagern|produzieren) (?:\w+ )?\w*(?:rohre|stähle|"
            r"profile|kugeln|werkzeuge)\b[^?\n]{0,60}(?:\bab lager\b|\bab werk\b|\bin allen\b|"
            r"\bmm\b|"
            r"\d x \d)"),
        (5, r"\bwir räumen (?:unser|das|ein) \w*lager\b|\blagerräumung|\bnous (?:vidons"
            r"|débarrassons) (?:notre|le|un) (?:dépôt|stock|entrepôt|magasin)\b|\bdéstockage|"
            r"\bclearing (?:out )?(?:an?|the|our|my) (?:warehouse|store|stock|yard|shed|unit)\b"),
        (2, r"\bfeel free to contact\b|\blook(?:ing)? forward to (?:cooperat|work|doing business)|"
            r"\b(?:quick|short|brief|intro) (?:call|chat)\b|\bi (?:noticed|saw|came across|found) "
            r"(?:that )?(?:you|your (?:website|site|company|page|profile))\b"),
        (2, r"\bhope this (?:e-?mail |message |mail )?finds you\b|\bfollowing up on (?:my|our) "
            r"(?:offer|last|previous)"),
        (5, r"\bseo\b|\b(?:google|search) rank|\bfirst page of google\b|\b(?:web ?site|"
            r"web) (?:design|redesign|traffic|development)\b|\bleads\b|\bbacklinks?\b|"
            r"\bguest post\b|\bbecome (?:your|a) (?:supplier|partner|distributor|dealer|"
            r"agent)\b|\byour (?:new )?(?:supplier|steel supplier|mill)\b|\bpartner(?:ship|"
            r"ing) (?:with|opportunit)|\bbe (?:the|your) (?:mill|supplier|partner|source)\b|"
            r"\baccount executive\b|\bbusiness development\b|\bsales (?:rep|manager|engineer)\b|"
            r"\bterritory m"),
        (5, r"\b(?:buying|interested in|sell(?:ing)?) (?:our|my|an? used)\b|\bfor sale\b|\bi(?:'m|"
            r"m| am) selling\b|^\W*selling\b|\bo\.?b\.?o\b|\bor best offer\b|\bsurplus\b|\bmake "
            r"(?:me|us) an offer\b|\bstill (?:got|have) the\b|\bsaw (?:the|your) ad\b|\b\$?\d+ "
            r"(?:bucks|dollars|euros?|quid) takes (?:it|them|the)\b|\bthought of you\b|\bpallet "
            r"of\b|\bis (?:it|the \w+) still (?:available|for sale)|\bi've no use\b|\bhaul it\b|"
            r"\btake (?:the|it|them) (?:lot|all|off (?:my|our) hands)\b|\bwant to (?:buy|sell) "
            r"(?:my|our|it|them)\b"),
        (5, r"\b\d{1,2} ?% off\b|\boff list\b|\bon the dollar\b|\bspecial (?:offer|price)\b|"
            r"\bstock ?list\b|\bclearance\b(?= (?:sale|price))|\bon the floor\b|\bready stock\b|"
            r"\bfull bundles?\b|\bloan\b|\bfinancing (?:option|for your)|\binsurance (?:quote|"
            r"policy|cover)\b|\bpromotional\b|\bfree (?:trial|sample|audit)s?\b|(?<!your "
            r")\bprices? (?:will |to )?(?:rise|increase|go up|list)|\bprice increase\b"),
        (5, r"\bwir sind (?:ein |der |einer der )?(?:führende[rn]? )?(?:hersteller|lieferant|"
            r"anbieter|händler)\b|\bwir (?:bieten|liefern|fertigen|führen) (?:ihnen|seit|rohre|"
            r"hochwertige)|\b(?:können|dürfen|möchten|würden) wir "
            r"ihnen\b[^.?\n]{0,160}\b(?:anbieten|vorstellen|liefern|zusenden)|\bunser(?:e|en)? "
            r"(?:produkt|leistung|sortiment|lagerliste)|\bdürfen wir uns vorstellen\b|"
            r"\blagerüberhang\b|\bsonderpreis|\bzu (?:attraktiven|günstigen|besten) (?:konditionen|"
            r"preisen)\b|\bzu verkaufen\b|\bbrauchen sie (?:so ?was|noch|sowas|auch)\b|\b(?:guten|"
            r"fairen) preis\b|\bwir (?:drehen|schleifen|härten|verchromen|beschichten) (?:seit|"
            r"für)\b|\bsuchen sie (?:noch )?(?:einen )?(?:lieferant|partner|zulieferer)|\bbei "
            r"interesse\b|\bab lager\b(?! lieferbar\?)|\bpreise auf anfrage\b|\bdarf ich (?:sie|"
            r"ihnen) (?:anrufen|zusenden|vorstellen|besuchen)"),
        (3, r"\bwir (?:fertigen|drehen|fräsen|produzieren|liefern) (?:\w+ )?(?:cnc[- ]?)?"
            r"(?:dreh|fräs|guss|stanz|schmiede|blech|frästeile und dreh)teile\b"),
        (2, r"\bich (?:rufe|melde mich|besuche)\b[^.?\n]{0,20}\b(?:sie|bei ihnen)\b[^.?\n]{0,40}\b"
            r"(?:an|woche)\b|\bi(?:'ll| will) (?:call|ring|phone) you (?:next|this) week\b|"
            r"\bje vous (?:appelle|rappelle|contacte)\b[^.?\n]{0,20}\bsemaine\b|\bles? llamaré\b|"
            r"\bvi (?:chiamo|richiamo)\b|\bik bel u\b"),
        (5, r"\bnous sommes (?:un |le )?(?:fabricant|fournisseur|leader)|\bnous (?:vous "
            r")?(?:proposons|fabriquons|fournissons|offrons)\b|\bnos (?:produits|services|"
            r"tarifs)\b|\bà vendre\b|\bnous sommes spécialis|\bdepuis \d+ ans\b|\bcherchez-vous un "
            r"(?:fournisseur|sous-traitant)|\bbesoin d'un fournisseur|\bnotre (?:meilleur prix|"
            r"gamme|catalogue)\b|\bsi (?:vous êtes )?intéressé"),
        (5, r"\bsomos (?:un |una )?(?:fabricante|empresa|proveedor|líder|distribuidor)|\b(?:les|le|"
            r"os) ofrecemos\b|\bnuestros (?:productos|servicios|precios)\b|\btarifas? de\b|"
            r"\bprecios (?:válidos|especiales)\b|\ben venta\b|\bofrecemos\b|\bbuscan (?:un "
            r")?proveedor|\bnos dedicamos a\b|\bvendo\b|\bsi les interesa\b"),
        (5, r"\bsiamo (?:un'?|una )? ?(?:azienda|produttori|fornitori|leader|distributori)|\bvi "
            r"(?:proponiamo|offriamo)\b|\bi nostri (?:prodotti|servizi|prezzi)\b|\bin vendita\b|"
            r"\boffriamo\b|\bpronta consegna\b|\bcercate (?:un )?fornitor|\bci occupiamo di\b|"
            r"\bcontattateci\b|\bvendesi\b|\bse interessati\b|\blistino\b"),
        (5, r"\bwij zijn (?:een )?(?:fabrikant|leverancier|producent|groothandel)|\bwij (?:leveren|"
            r"bieden|verkopen)\b|\bonze (?:producten|diensten|voorraad)\b|\bte koop\b|\bzoekt u "
            r"(?:nog )?(?:een )?(?:toeleverancier|leverancier)|\bal \d+ jaar\b|\bwij (?:draaien|"
            r"slijpen|verchromen)\b|\bjesteśmy (?:producentem|dostawcą)|\bnasza oferta\b|\bna "
            r"sprzedaż\b|\bvi (?:säljer|erbjuder)\b|\btill salu\b|\bsomos fornecedores\b"),
        (5, r"\b(?:very |most |really )?attractive (?:prices?|rates?|terms|conditions)\b|"
            r"\b(?:whether|if|do) (?:you|y'all) (?:\w+ )?(?:buy|source|purchase)\b[^.?\n]{0,25}"
            r"\b" + _GOODS + r"\b|\b(?:run|bend|make|send) (?:you )?(?:a |some |free )?samples?\b|"
            r"\b(?:short|quick|brief) (?:call|chat)\b[^.?\n]{0,40}\?|\b(?:took|taken|take) over "
            r"(?:the|this|your) (?:territory|area|account)\b|\b(?:stop|drop|swing) by with\b|\bwe "
            r"(?:plate|chrome|grind|harden|coat|heat[- ]treat|forge|cast) (?:mandrels|parts|tools|"
            r"dies|your)\b|\binside sales\b|\barea sales\b"),
        (5, r"\bspare capacity\b|\b(?:could|may|can|might) we (?:quote|bid) (?:on |for )?your\b|"
            r"\bmill overruns?\b|\brestposten\b|\bpreis nach absprache\b|\bwir (?:produzieren|"
            r"ziehen) "
            r"\w*rohre\b|\b(?:produisons|fabriquons) des tubes\b|\b(?:un|notre) commercial\b|"
            r"\bfabricamos tubos?\b|\bliquidamos\b|\bproduciamo tub|\bwij kunnen u\b|\bbeste "
            r"inkoper\b"),
        (5, r"\bfirst come,? first served?\b|\b(?:under|below) market\b|\bbesteht (?:bei ihnen )?"
            r"(?:bedarf|interesse)\b|\bvous faire découvrir\b|\bnuovi clienti\b|\bpossiamo "
            r"inviar(?:vi|"
            r"le)\b|\bpodemos enviarles?\b|\bmag ik u\b"),
        (3, r"\bwho should i (?:talk|speak|write) to\b|\b(?:this month|currently|now) we "
            r"(?:hold|have|carry)\b|\bwe hold\b[^?\n]{0,60}\b(?:in|at|for)\b"),
        (5, r"\bdarf ich (?:sie|ihnen)\b[^.?\n]{0,40}\b(?:anrufen|zusenden|vorstellen|besuchen)|"
            r"\bich bin (?:\w+ )?(?:handels)?vertreter|\bim (?:vertrieb|außendienst)\b|\bunser "
            r"lager (?:umfasst|bietet)\b|\bkurze[sn]? (?:telefonat|gespräch|kennenlernen)\b|"
            r"\b(?:je suis|en tant que) (?:agent|commerciale?|représentante?|négociant)\b|"
            r"\bseriez-vous disponible\b|\bun (?:bref |court |rapide )?(?:échange|entretien|"
            r"appel)\W*\?|\bsoy (?:el |un )?(?:representante|agente|comercial|vendedor)\b|"
            r"\b(?:podríamos|podemos) (?:hablar|vernos|reunirnos|concertar)\b|\bsono (?:un |"
            r"un')?(?:agente|rappresentante|venditore)\b|\b(?:potremmo|possiamo) (?:sentirci|"
            r"vederci|incontrarci|fissare)\b|\b(?:volevo|vorrei|vorremmo) presentar(?:mi|ci|vi|"
            r"le)\b|\bik ben (?:vertegenwoordiger|agent|accountmanager)\b|\b(?:kunnen|zullen) "
            r"we\b[^.?\n]{0,30}\b(?:bellen|afspreken)\b|\bjesteśmy (?:hurtowni|dystrybutorem)|"
            r"\bczy możemy zadzwonić\b"),
        (5, r"\b(?:i|we)(?:'d|’d| would) (?:like|love) to (?:present|show you|introduce) (?:our|"
            r"my)\b|\b(?:möchte|würde|möchten|würden) (?:ich|wir) ihnen (?:gerne? )?(?:unser|"
            r"mein)\w*\b[^.?\n]{0,40}\b(?:vorstellen|zeigen|präsentieren)\b|\b(?:aimerai[st]|"
            r"aimerions|souhait\w+|voudrai[st]|voudrions) vous présenter\b|\bnous sommes (?:des |"
            r"un )?(?:négociant|grossiste|stockiste|distributeur)s?\b|\b(?:(?:me|nos) gustaría|"
            r"quisiera|quisiéramos|querría|dese(?:o|amos)) presentar(?:les?|me|nos)\b|\bsomos "
            r"(?:almacenistas|mayoristas|distribuidores|fabricantes|representantes)\b|\bsiamo "
            r"(?:un |dei )?(?:magazzino|grossist[ai]|commercianti) (?:di|in)\b|\b(?:wij|we) zijn "
            r"(?:een )?(?:voorraadhouders?|handelaars?|stockhouders?)\b|\bstel(?:len)? (?:ik|wij|"
            r"we) u (?:graag )?(?:onze|mijn)\b"),
        (2, r"\b(?:could|may|can) (?:i|we) (?:visit you|pay you a visit)\b|\b(?:pourrai[st]-je|"
            r"puis-je|pourrions-nous) (?:vous rendre visite|passer vous voir)\b|\b(?:podría|"
            r"podríamos|puedo) (?:visitar|pasar a ver)(?:les?|los)\b|\b(?:potrei|potremmo|posso) "
            r"(?:farvi visita|venirvi a trovare|passare a trovarvi)\b|\b(?:mag|kan) ik\b"
            r"[^.?\n]{0,30}\blangs ?(?:te )?komen\b"),
    )),
    Elsewhere("something for sale", (
        (5, r"\basking (?:price (?:is )?)?[$€£]?\d|\b(?:asking|want) [$€£] ?\d|\b\d{2,5} ?(?:bucks|"
            r"dollars|euros?|quid|gbp|usd)? takes (?:it|them|the|all)\b|[$€£]\d{2,5} for "
            r"(?:everything|"
            r"the lot|all)\b|\bno trades\b|\blocal pick-?up only\b"),
        (5, r"\bclearing (?:out )?(?:my|our|the|a)\b[^.?\n]{0,30}\b(?:workshop|shop|garage|barn|"
            r"estate|shed)\b|\bje vide "
            r"(?:l'|mon )atelier\b|\bvac[ií]\w+ (?:el|mi) taller\b|\bsgomber\w+ (?:l'|la mia )"
            r"officina\b|\b(?:werkplaats|schuur) (?:leeg|op)ruimen\b|\b(?:löse|lösen) (?:\w+ "
            r"){0,3}werkstatt auf\b"),
        (5, r"\b(?:it |they |all )?(?:goes|go|will go|going) (?:to|in|on) the "
            r"(?:scrap|tip|skip|dump)\b|\bif (?:it'?s|they'?re|it is|any of (?:it|them) is) of "
            r"(?:any )?(?:interest|use)\b|\binherited (?:a|an|my|some|two)\b"),
        (5, r"\b(?:clearing|selling) (?:out|off) (?:our|my|the|some)\b|\bget rid of\b|\bhardly "
            r"used\b|"
            r"\bas is,? where is\b|\bclosing (?:down |up )?(?:my|our|the) (?:shop|business)\b"),
        (5, r"\bmight want (?:it|them|this|these)\b|\bif you can use (?:it|them|these)\b|"
            r"\b(?:would|do) "
            r"you (?:like|want) to (?:have|buy) (?:it|them|these|this)\b|\bany(?:one|body) (?:on "
            r"your "
            r"side|there|you know)\b[^.?\n]{0,20}\b(?:want|need|interested)"),
        (3, r"\bretiring\b|\bleft ?over from (?:a|my|our|the) job\b|\bknow (?:some|any)(?:body|"
            r"one)\b|"
            r"\bwith mandrels\b"),
        (5, r"\babzugeben\b|\bgeb(?:e|en)\b[^.?\n]{0,120}\bab(?=\W*(?:$|[.!]))|\bv\.?h?b\.? ?\d|"
            r"\bverhandlungsbasis\b|\b(?:ich|wir) verkaufen?\b|\bverkaufe (?:ich|mein|unser)|"
            r"\bhaben sie\b[^.?\n]{0,50}\binteresse\b|\bwerkstattauflösung\b|\bbetriebsaufgabe\b"),
        (5, r"\b(?:je vends|nous vendons|je cède|nous cédons)\b|\bà débattre\b|\b(?:vous|cela|ça) "
            r"intéresse(?:rait|nt)?(?:-t-il)?\W*\?|\bvendemos\b|\bse vende\b|\bpor cierre de|"
            r"\bconocen a alguien\b|\bles? interesa(?:ría|n)?\W*\?|\bced(?:o|iamo)\b|\bvend(?:o|"
            r"iamo)\b|\btrattabil|\bpuò interessar|\bchiedo \d|\bvraagprijs\b|\bik verkoop\b|"
            r"\bwegens (?:sluiting|beëindiging|bedrijfsbeëindiging)\b|\bsprzedam\b|\bdo "
            r"sprzedania\b|\bsäljes\b"),
    )),
)  # fmt: skip
