"""Words by which an order in hand is cancelled, put off or sent elsewhere. Data only, matched
without regard to case in one sentence at a time."""

from __future__ import annotations

_IN = r"(?:[^.?!\n]|[.]\d|\bno\.|\bnr\.)"
"""A character of the same sentence: the point of '1.125' ends none."""
_NUMBER = r"\s?(?:no\.?|nr\.?|n[°ºo]\.?|núm\.?|number|num|#|:)*\s?[a-z]{0,4}[-/]?\d{2,}"

ORDER = (
    rf"\b(?:order|po|p\.o\.|purchase order|job|wo|work order|so){_NUMBER}",
    r"\bon order\b|\b(?:our|my|this|that|the|your|open|existing|current|running|last|whole|entire"
    r"|same) (?:purchase )?(?:order|po|p\.o\.)\b(?! (?:form|confirmation form))"
    r"|\b(?:we|i)(?:'ve| have)?(?: already)? ordered\b|\b(?:already|was|were|been) ordered\b"
    r"|\border of (?:\w+ )?\d|\border (?:dated|from|placed)\b",
    rf"\b(?:bestellung|auftrag|bestell-?nr\.?|best\.|auftrags?-?nr\.?|ab){_NUMBER}"
    r"|\b(?:unsere[rn]?|meine[rn]?|die|der|diese[rn]?|ihre[rn]?) (?:\w+ )?bestellung\b"
    r"|\b(?:unse\w+|mein\w*|den|dem|diesen) (?:\w+ )?auftrags?\b|\bbestellte[nrs]?\b"
    r"|\b(?:haben|hatten|habe|hatte|wurden?|sind|ist)\b" + _IN + r"{0,60}\bbestellt\b",
    rf"\b(?:commande|cde|cmd|bon de commande|bdc){_NUMBER}"
    r"|\b(?:notre|ma|la|cette|votre) (?:\w+ )?commande\b|\bcommandée?s?\b|\ben commande\b",
    rf"\b(?:pedido|orden de compra|oc|orden){_NUMBER}"
    r"|\b(?:nuestro|mi|el|este|su|del) (?:\w+ )?pedido\b|\bpedid[oa]s?\b(?! de (?:precio|oferta))"
    r"|\bencargad[oa]s?\b|\bla orden de compra\b",
    rf"\b(?:ordine|ord\.|oda|conferma){_NUMBER}"
    r"|\b(?:nostro|mio|questo|vostro|dell|l|ns\.?|il)['’ ]\s?ordine\b|\bordinat[oaie]\b"
    r"|\bin ordine\b",
    rf"\b(?:bestelling|order|opdracht|inkooporder){_NUMBER}"
    r"|\b(?:onze|mijn|de|deze|uw|jullie) (?:\w+ )?(?:bestelling|order|opdracht)\b|\bbesteld[e]?\b"
    r"|\bin bestelling\b",
)

CANCELS = (
    r"\b(?:please|pls|kindly|need to|want to|like to|have to|must|to|can you|could you|we|i)"
    r"(?: now| hereby| both)? (?:cancel|withdraw)\b|^\W*(?:cancel|stop)\b"
    r"|\bcancel(?:ling|ing|lation"
    r"|led)\b(?! (?:by you|project|job|last))"
    r"|\b(?:drop|delete|remove|strike|scrap|take out|take off|pull)\b"
    + _IN
    + r"{0,20}\b(?:line|item|position|pos)\b",
    r"\bstornier\w*|\bstorno\b|\b(?:auf)?kündig\w*|\bannullier\w*|\bstreich(?:en|t)\b" + _IN
    + r"{0,40}\bpos\w*|\bpos\w*\b" + _IN + r"{0,40}\bstreichen\b|\babbestell\w*",
    r"\bannul(?:er|ons|ez|ation|e|é)\b|\brésili\w+|\bsupprim(?:er|ez|ons)\b" + _IN
    + r"{0,30}\b(?:ligne|poste|position)\b",
    r"\b(?:cancel|anul)(?:ar|amos|en|e|ad|ación|o)\b|\b(?:eliminar|quitar|borrar)\b" + _IN
    + r"{0,30}\b(?:línea|linea|posición|partida)\b",
    r"\b(?:annull|disdi|cancell)\w*\b|\bstornar\w*|\b(?:togliere|eliminare)\b" + _IN
    + r"{0,30}\b(?:riga|posizione)\b",
    r"\bannule(?:er|ren|ring)\w*|\bafbestel\w*|\b(?:schrappen|verwijderen|laten vervallen)\b"
    r"|\b(?:regel|positie)\b" + _IN + r"{0,40}\b(?:schrappen|vervallen|eruit)\b",
)  # fmt: skip
PUTS_OFF = (
    r"\b(?:postpone|reschedule|defer|push|move|delay|slip|hold)\w*\b" + _IN
    + r"{0,60}\b(?:deliver\w*|shipments?|shipping|dispatch|order|po|ship date|dock date)\b",
    r"\b(?:deliver\w*|shipments?|shipping|dispatch|order|po|ship date|dock date)\b" + _IN
    + r"{0,60}\b(?:postponed|rescheduled|deferred|pushed|moved|delayed|held)\b"
    r"|\bput\b" + _IN + r"{0,40}\bon hold\b|\b(?:don'?t|do not) (?:ship|deliver|send|dispatch)\b"
    + _IN + r"{0,40}\b(?:before|until|till|yet)\b|\bhold off (?:on )?(?:shipping|delivery|sending)",
    r"\b(?:verschieb|verschob|zurückstell|verleg|hinausschieb|nach hinten|aufschieb)\w*",
    r"\b(?:décal|repouss|retard|différ|report)(?:er|ez|ons|é|ée|és|ées)\b" + _IN
    + r"{0,60}\b(?:livraison|livrer|expédition|commande|mandrins?|au|à)\b"
    r"|\b(?:livraison|expédition|commande)\b" + _IN
    + r"{0,60}\b(?:décal|repouss|retard|différ|report)(?:er|ée?s?)\b",
    r"\b(?:aplaz|pospon|retras|posterg|atras)\w*\b" + _IN
    + r"{0,60}\b(?:entrega|envío|pedido|mandril\w*|hasta|al)\b",
    r"\b(?:posticip|rimand|rinvi|spost|ritard|differi)\w*\b" + _IN
    + r"{0,60}\b(?:consegna|spedizione|ordine|mandrin[oi]|al)\b",
    r"\b(?:uitstel|verschuiv|verschoven|verzet|opschuiv|verplaats|opschort)\w*",
)  # fmt: skip
SENT_ELSEWHERE = (
    r"\b(?:deliver|ship|send|sent|delivered|shipped)\b" + _IN + r"{0,20}\bto\b" + _IN
    + r"{1,60}\b(?:not|instead of|rather than|no longer)\b",
    r"\b(?:new|changed?|different|correct|update\w*|wrong|old) (?:the |our |your |my )?"
    r"(?:delivery|shipping|ship[- ]?to|postal)?\s?(?:address|ship[- ]?to)\b"
    r"|\b(?:address|ship[- ]?to)\b" + _IN + r"{0,30}\b(?:changed|changes|now|new|moved|wrong)\b"
    r"|\bwe(?:'ve| have|'re| are)? (?:just |recently )?(?:moved|moving|relocat\w+)\b"
    r"|\bmove to (?:a )?new (?:premises|address|building|unit)\b",
    r"\b(?:correct|change|update|amend|fix|revise)\b" + _IN
    + r"{0,30}\b(?:address|(?:ship|bill|deliver)[- ]?to)\b",
    r"\b(?:neue|andere|geänderte|falsche|richtige|alte)\w* (?:liefer|versand|waren)?(?:adresse"
    r"|anschrift)\b|\b(?:liefer|versand)?(?:adresse|anschrift)\b" + _IN
    + r"{0,40}\b(?:ändern|geändert|ändert|neu|jetzt|umgezogen)\b|\b(?:sind|ziehen|umgezogen)\b"
    + _IN + r"{0,20}\b(?:umgezogen|um\b)",
    r"\b(?:nouvelle|autre|bonne|mauvaise|changement d['’]|changer l['’]|modifier l['’])\s?"
    r"adresse\b|\badresse de livraison\b" + _IN + r"{0,40}\b(?:chang|modifi|désormais|nouvelle)"
    r"|\bnous avons (?:déménagé|changé d['’]adresse)\b|\blivrer\b" + _IN
    + r"{0,60}\b(?:et non|et pas|au lieu)\b",
    r"\b(?:nueva|otra|cambi\w+ (?:de |la )?|modificar la ) ?(?:dirección|domicilio)\b"
    r"|\b(?:dirección|domicilio) (?:de entrega|de envío)\b" + _IN
    + r"{0,40}\b(?:cambi|nueva|ahora)|\bnos hemos (?:mudado|trasladado)\b|\bentregar\b" + _IN
    + r"{0,60}\b(?:y no|en vez|en lugar)\b",
    r"\b(?:nuovo|altro|cambi\w+ (?:di |l['’])?|modificare l['’]) ?indirizzo\b"
    r"|\bindirizzo di (?:consegna|spedizione)\b" + _IN + r"{0,40}\b(?:cambi|nuovo|ora|adesso)"
    r"|\bci siamo trasferiti\b|\bconsegnare\b" + _IN + r"{0,60}\b(?:e non|anziché|invece)\b",
    r"\b(?:nieuwe?|ander|gewijzigde?|juiste?) (?:aflever|lever)?adres\b|\b(?:aflever|lever)?adres\b"
    + _IN + r"{0,40}\b(?:wijzig|gewijzigd|veranderd|nieuw|nu)|\bwe(?:'re| zijn)? verhuisd\b"
    r"|\b(?:wij|we) zijn verhuisd\b|\bleveren\b" + _IN + r"{0,60}\b(?:en niet|in plaats)\b",
    r"\b(?:ändern|korrigieren|berichtigen|aktualisieren)\b" + _IN
    + r"{0,40}\w*(?:adresse|anschrift)\b|\b\w*(?:adresse|anschrift)\b" + _IN
    + r"{0,60}\b(?:korrigier|berichtig)\w*",
    r"\b(?:corrig|modifi|chang|rectifi)\w+ (?:\S+ ){0,3}?(?:l['’])?adresse\b",
    r"\b(?:corr[ei][gj]|modific|modifiqu|cambi|actuali|rectifi)\w* (?:\S+ ){0,3}?"
    r"(?:dirección|domicilio)\b",
    r"\b(?:corregg|modific|cambi|aggiorn|rettific)\w* (?:\S+ ){0,3}?(?:l['’])?indirizzo\b",
    r"\b(?:corrigeer|corrigeren|wijzig|wijzigen|verander|veranderen|pas)\b" + _IN
    + r"{0,30}\b\w*adres\b",
)  # fmt: skip

ANEW = (
    r"\binstead\b(?! of)|\bmake (?:it|that|them)\b|\bchange (?:it|them|that"
    r"|this|line \d+) (?:to|for"
    r"|into)\b|\breplac\w+\b(?! (?:the )?(?:old )?address)|\bsubstitut\w+|\bswap\b|\bin its place\b"
    r"|\bre-?order\b|\banother\b|\ba new one\b",
    r"\bstattdessen\b|\bdafür\b|\bersetz\w+|\bändern (?:auf|in)\b"
    r"|\bneuen?\b" + _IN + r"{0,12}\bdorn",
    r"\bà la place\b|\bremplac\w+|\bplutôt\b|\ben échange\b",
    r"\ben su lugar\b|\bsustitu\w+|\breemplaz\w+|\ben cambio\b|\bcambiar\w* por\b",
    r"\binvece\b(?! di)|\bal suo posto\b|\bsostitu\w+|\bal posto\b",
    r"\bin plaats daarvan\b|\bdaarvoor\b|\bvervang\w+|\bwijzigen in\b",
)  # fmt: skip
"""Beside a cancelling these ask for another one."""

SAYS_WHICH = (
    r"\W*(?:it'?s|it is|that'?s|that is|this is|it was|they are|those are|it affects|it concerns"
    r"|i mean|namely|es geht um|es betrifft|das ist|das sind|il s['’]agit|cela concerne|c'est"
    r"|ce sont|se trata|es el|son los|si tratta|riguarda|è il|sono i|het gaat om|het betreft)\b",
)
"""A sentence that tells which order is meant."""

STAYS_AS_ORDERED = (
    r"\b(?:nothing else|no other) changes?\b|\b(?:everything else|(?:the )?rest) (?:stays|remains"
    r"|is)"
    r" (?:the same|unchanged|as)\b|\bas (?:acknowledged|confirmed|ordered)\b",
    r"\b(?:sonst (?:bleibt|ändert sich)|alles andere bleibt|der rest bleibt)\b"
    r"|\bwie (?:bestätigt|bestellt)\b",
    r"\brien d['’]autre ne change\b|\ble reste (?:est inchangé|ne change pas|demeure)\b"
    r"|\bcomme (?:confirmé|commandé)\b",
    r"\b(?:lo demás|el resto) (?:sigue|queda|no cambia)\b|\bnada más cambia\b"
    r"|\bcomo se (?:confirmó|pidió)\b|\bsegún lo (?:pedido|confirmado)\b",
    r"\bil resto (?:resta|rimane|non cambia|è invariato)\b|\bnient['’]altro cambia\b"
    r"|\bcome (?:confermato|da conferma|ordinato)\b",
    r"\bde rest blijft\b|\bverder (?:verandert|wijzigt)\b|\bzoals (?:bevestigd|besteld)\b",
)
"""'Nothing else changes (2 ea mandrel 1.250 x .065)': a size that stays as it was ordered."""

OWED = (
    r"\b(?:what|how much|anything|whatever)\b" + _IN + r"{0,40}\b(?:owe|owed|charge[sd]?|fees?"
    r"|costs?|pay)\b",
    r"\b(?:cancel\w*|restock\w*|stornierungs?|storno)\b" + _IN
    + r"{0,20}\b(?:charges?|fees?|costs?|gebühr\w*|kosten)\b|\bstorno(?:kosten|gebühr\w*)\b"
    r"|\b(?:frais|coûts?) d['’]annulation\b|\b(?:gastos|costes?|cargos?) de (?:anulación"
    r"|cancelación)\b|\b(?:costi|spese|penale) di (?:annullamento|cancellazione)\b"
    r"|\bannulering?skosten\b",
    r"\b(?:costs?|kosten|frais|gastos|costes|costi|spese)\b" + _IN
    + r"{0,20}\b(?:so far|incurred|to date|bisher|entstanden|engagés|hasta ahora|incurridos"
    r"|sostenut\w+|tot nu toe|gemaakt)\b",
    r"\bwas (?:wir|ich)\b" + _IN + r"{0,30}\bschuld\w+|\bce que (?:nous|je) vous dev\w+|\bqué les"
    r" deb\w+|\bquanto vi dobbiamo\b|\bwat we\b" + _IN + r"{0,20}\bschuldig\b",
)  # fmt: skip
"""What the cancelling costs is no price of a mandrel."""

WITHDRAWN = (
    r"\b(?:enquiry|inquiry|rfq|request|mandrel|order)\b"
    + _IN
    + r"{0,60}\b(?:is off|is void|no longer"
    r" (?:stands|applies|needed)|withdrawn|obsolete)\b"
    r"|\b(?:forget|disregard|withdraw)\b" + _IN + r"{0,24}\b(?:enquiry|inquiry|rfq|request)\b",
    r"\banfrage\b" + _IN + r"{0,60}\b(?:hinfällig|erledigt|entfällt|zurück)\b",
    r"\bdemande\b" + _IN + r"{0,60}\b(?:caduque|annulée|sans objet)\b",
    r"\b(?:solicitud|consulta)\b" + _IN + r"{0,60}\b(?:anulada|cancelada|sin efecto)\b",
    r"\brichiesta\b" + _IN + r"{0,60}\b(?:annullata|ritirata|superata|decaduta)\b",
    r"\baanvraag\b" + _IN + r"{0,60}\b(?:vervalt|vervallen|ingetrokken|intrekken)\b",
    r"\b(?:send(?:ing)?|going|goes|shipping|sent) (?:it|that|this|them|the wrong \w+)? ?back\b"
    r"|\b(?:geht|schicken? (?:wir|ich)|senden? (?:wir|ich))\b" + _IN + r"{0,40}\bzurück\b"
    r"|\b(?:renvoyons|renvoie|retournons|devolvemos|rimandiamo|sturen we)\b",
)
"""A request taken back, or a mandrel sent back."""
NEW_ONE = (
    r"^\W*(?:the )?(?:new|instead|now|neu|neue[nrs]?|stattdessen|jetzt|nouveau|nouvelle|maintenant"
    r"|à la place|nuev[oa]|ahora|en su lugar|nuov[oa]|adesso|ora|al suo posto|nieuwe?|nu"
    r"|in plaats daarvan)\b",
    r"\b(?:in (?:its|their) place|instead(?! of)|stattdessen|à la place|en su lugar|al suo posto"
    r"|in plaats daarvan)\b",
    r"\b(?:we|i)(?:'ll| will)? (?:now )?(?:go ahead with|go with|take|want|need)\b"
    r"|\bstill (?:need|want|require|missing)\b|\b(?:brauchen|benötigen) wir (?:weiterhin|noch immer"
    r"|nach wie vor)\b|\btoujours besoin\b|\b(?:seguimos necesitando|aún necesitamos)\b"
    r"|\bserve ancora\b|\bnog (?:steeds|altijd) nodig\b",
)
"""A later sentence with a tube asks for that by these, once another was taken back."""
