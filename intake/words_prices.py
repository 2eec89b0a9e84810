"""Words on a price or an offer of ours: asked for, asked for anew, to be asked for later.

Data only, in the shop's usual languages; from memory and from labelled messages.
Patterns are matched without regard to case, in one sentence at a time.
"""

from __future__ import annotations

# A price or an offer is asked for: the plainest act of a customer.
ASKS_PRICE = (
    r"(?<!your )(?<!the )(?<!that )(?<!our )(?<!my )(?<!this )(?<!last )(?<!previous )(?<!a )"
    r"\b(?:re-?)?quote\b(?! (?:no|number|#|\d{3,}\b(?!\.)|ref|dated|you|from you|was|is|above|"
    r"and|q-?\d))|\bquotes? (?:for|on|me|us|due|please)\b",
    r"(?<!do you )(?<!would you )(?<!must i )\b(?:need|send|get|want|give|waiting (?:on|for)|"
    r"await(?:ing)?|expect(?:ing)?|provide|"
    r"submit|request|make)\b[^.?\n]{0,25}\bquot(?:e|es|ation)\b(?! (?:no|number|#|received|"
    r"was))|\bfor (?:a )?(?:formal )?quotation\b",
    r"\brequest (?:you )?(?:for |to )?(?:quot|price|a price|proposal)|\brf[qp]\b(?! matching)",
    r"(?<!best )(?<!our )\bprice (?:and|for|on|please|me|up|of|to|delivery)\b|\bprices? for\b|"
    r"\bpricing (?:for|on)\b|\babout (?:a |the )?(?:price|cost)\b|\b(?:my|our) (?:request|enquiry|"
    r"inquiry|rfq|note|quote request)\b|\b(?:unsere|meine) anfrage\b|\b(?:notre|ma) demande\b|"
    r"\b(?:nuestra|mi) (?:solicitud|consulta)\b|\b(?:nostra|mia) richiesta\b|\b(?:onze|mijn) "
    r"aanvraag\b|\bprice check\b|^\W*(?:price|prezzo|prix|precio|preis|prijs|"
    r"pris|cena)(?: (?:and|und|et|y|e|en|i|och|/|&) "
    r"\w+)?\W*\?|\w+ (?:and|und|et|y|e|en|i|och|/|&) (?:price|cost|prezzo|prix|precio|preis|prijs|"
    r"pris|cena)\W*\?|\b(?:please|pls|can you|could you|you) price\b|\byour (?:\w+ "
    r")?(?:best|lowest) "
    r"(?:price|offer|rate)s?\b|\bprice\b[^.?\n]{0,20}\?|\b(?:inform|advise|tell|know|give|send|"
    r"need|want) (?:\w+ ){0,3}(?:price|cost|rate)s?\b|\b(?:number|figure|ballpark) (?:on|for) (?:a|"
    r"an|one|the|two|\d)\b",
    r"\bhow much\b(?! (?:smaller|bigger|larger|less|more|clearance|play|room|wear|springback|"
    r"further|forward|past|gap|space|stretch|thinning|overlap|advance|lubricant|oil|does it (?:go|"
    r"stick|spring)|(?:should|must|may|can|do|does)\b(?![^?\n]{0,60}\b(?:costs?|pay|run|be|charge|"
    r"expect|want|asking|go for)\b)))|"
    r"\bhow many (?:dollars|bucks|euros?)\b|\bwhat (?:do )?(?:i|we)(?:'d|’d| would|"
    r"'ll| will)? owe\b|\bknow the damage\b|\bwhat(?:'s|’s| is) an? new (?:one|mandrel)\b|\b(?:and|"
    r"with) (?:the|a|your) bill\b|\b(?:was|wie ?viel) (?:schulde|bin) ich\b|\bcombien (?:je )?vous "
    r"dois\b|\bcu[áa]nto le(?:s)? debo\b|\bquanto (?:vi|le) devo\b|\bwat ben "
    r"ik\b[^.?\n]{0,15}\bschuldig\b",
    r"\bwhat(?:['’]?s| (?:would|do|does|will|is|are))\b[^.?\n]{0,40}\b(?:cost|price|charge|run me|"
    r"run|set me back|get for|damage|go for|going rate|(?:getting|asking) for (?=an?\b|one\b))\b|"
    r"\bwhat'?s (?:the|one|a) (?:price|cost|damage|\w+ cost)\b|"
    r"\bwhat (?:it|one|that|they|you)(?:'s|’s|'d|’d)? (?:would |will )?(?:cost|charge|run)s?\b",
    r"\b(?:please|pls|kindly) (?:\w+ )?(?:offer|quote|price|send (?:me |us )?(?:a |your )?"
    r"(?:best )?(?:price|offer|quot)|provide (?:me |us )?(?:a |your |with )?(?:best )?"
    r"(?:price|quot|offer)|adv(?:ise)? (?:price|cost|best)|submit|furnish|confirm price)",
    r"(?:(?<!wir )\bbieten sie\b|\bangebot (?:für|über|auf|zu[mr]?|bitte|bis)\b|\b(?:ihr|um ein|um|"
    r"ein|schickt uns ein) angebot\b|\b(?:bitte|könnten sie|können sie|kannst du)\b[^.?\n]{0,80}"
    r"\banbieten\b|\bbieten sie uns\b|\bpreis(?:e|anfrage)?\b(?!liste|en|\W{0,3}\d)|\bwas kost|"
    r"\bwas (?:würde|wird)[^.?\n]{0,40}\bkosten\b|\bangebotsanfrage\b|^\W*angebot\b(?! (?:nr|\d)))",
    r"\bdevis\b|\bchiffr(?:er|age)\b|\b(?:nous|me|de|à|pour) coter\b|\bcotation\b|"
    r"\boffre (?:de prix|pour (?:un|une|deux|trois|\d))\b|\benvoyer une offre\b|"
    r"\bdemande de prix\b|(?<!meilleur )(?<!même )(?<!nos )(?<!au )\bprix\b(?!\W{0,3}\d)|"
    r"\b(?:votre|un|le) tarif\b|\bcombien (?:coût|pour|ça|(?:sont|est|seraient?|"
    r"revien\w+|reviendr\w+) (?:un|une|le|la|les|vos|votre|des))|"
    r"\bquel(?:le)? (?:est le|serait le) (?:prix|coût)",
    r"\bpresupuesto\b|\bcoti[zc]|(?<!mejor )(?<!mismo )(?<!buen )\bprecio\b(?!\W{0,3}\d)|"
    r"\b(?:una|su|la|vuestra) oferta\b|\bofertar\b|"
    r"\bcu[áa]nto (?:me |nos )?(?:cuesta|vale|sale|saldría|costaría)|"
    r"\ba c[óo]mo (?:sale|anda)",
    r"\bpreventivo\b|\b(?:una|vostra|sua|vs\.?|un'|richiesta d[i']) ?(?:migliore )?offerta\b|"
    r"\bquotazione\b|\bquotar(?:e|mi|ci)\b|(?<!stesso )\bprezzo\b(?! speciale|\W{0,3}\d)|"
    r"\bquanto cost|\ba quanto\b[^.?\n]{0,12}\bvien|\bquanto vien",
    r"\b(?:een|graag|uw|prijs|om) offerte\b|\bprijsopgave\b|(?<!zelfde )\bprijs\b"
    r"(?! per (?:kg|meter))|\bwat (?:kost|kosten|zou)\b|\boffreren\b",
    r"\bzapytani[ea]\b|\b(?:proszę o|o) ofert[ęy]\b|\bwycen|\bcen[ęy]\b|\bile kosztuj|"
    r"\boffert (?:på|för)\b|(?<!\ba )(?<!\bai )(?<!\best )(?<!\bont )(?<!\bavons )(?<!\bété )"
    r"\bpris(?:förfrågan)?\b(?! (?:du|de|un|une|le|la|les|en|par|note|contact)\b)|"
    r"\bvad kostar\b|\borçamento\b|\bcotação\b|"
    r"\bqual o preço\b|\bpreço\b",
    r"\blet (?:me|us) have (?:your |an? |the )(?:\w+ )?"
    r"(?:offer|price|quote|quotation|bid)\b|"
    r"\bwhat (?:does|do|would|will) (?:an?|one|the|such an?|your|these|those|\w+ mandrels?|"
    r"mandrels?)(?: [^.?!\n]{0,40})?\b(?:go|sell) for\b|"
    r"\bwhat(?:'s|’s| is| are) (?:an?|one|your|these|those) [^.?!\n]{0,30}\bgoing for\b",
    r"見積|报价|询价|견적",
    # An offer that is asked for by a verb alone: "solicitamos oferta de", "chiediamo offerta per".
    r"\b(?:solicit|rog[ao]|ped[ií]|pid[eo]|agrade[cz]|quer[er]|quisi[eé]r|dese[ao])\w*\b[^.?\n]{0,24}"
    r"\b(?:su mejor |vuestra mejor )?oferta\b|"
    r"\b(?:chied|richied|desider|vorre|gradire|pregh)\w*\b[^.?\n]{0,24}\bofferta\b|"
    r"\b(?:faire|faites|envoyer|adresser|établir|parvenir|souhait\w+|demand\w+)\b[^.?\n]{0,24}\boffre\b",
)  # fmt: skip

# An inquiry that is still to be written: "what do you need, I have to prepare a request".
PREPARES = (
    r"\b(?:prepar\w+|put(?:ting)? together|draft(?:ing)?|writ(?:e|ing) up|fill(?:ing)? (?:in|out)) "
    r"(?:an?|my|our|the) (?:\w+ )?(?:rfqs?|request|inquiry|enquiry|quote request)\b",
    r"\b(?:anfrage|angebotsanfrage|preisanfrage)\b[^.?\n]{0,60}\b(?:vorbereiten|zusammenstellen|"
    r"erstellen|aufsetzen|schreiben)\b",
    r"\b(?:prépar\w+|rédiger|établir|(?:dois|devons) faire) (?:une?|ma|notre|la) "
    r"(?:demande|consultation)\b",
    r"\b(?:preparar|redactar|elaborar|(?:tengo|tenemos) que hacer) (?:una|mi|nuestra|la) "
    r"(?:solicitud|petición|consulta)\b",
    r"\b(?:preparare|redigere|(?:devo|dobbiamo) (?:fare|scrivere)) (?:una|la|mia|nostra) "
    r"richiesta\b",
    r"\b(?:offerte)?aanvraag\b[^.?\n]{0,40}\b(?:maken|opstellen|voorbereiden|schrijven)\b",
)  # fmt: skip

# An offer of ours is to be made anew: "please requote", "bitte das Angebot ändern".
REQUOTE = (
    r"\bre-?quote\b|\bnew quot(?:e|ation)\b|(?<!our )\b(?:revis|updat|amend|chang|correct|adjust|"
    r"redo|re-do|rework)\w*\b(?: \w+)? (?:your |the |this |that )?(?:quote|quotation|offer)\b|"
    r"\b(?:quote|quotation|offer)\b[^.?\n]{0,25}\b(?:be )?(?:revised|updated|amended|corrected|"
    r"changed)\b",
    r"\bangebot\b[^.?\n]{0,40}\b(?:ändern|anpassen|korrigieren|berichtigen|überarbeiten|"
    r"aktualisieren)\b|\b(?:neues|geändertes|korrigiertes|angepasstes|überarbeitetes) angebot\b",
    r"\b(?:modifi|corrig|rectifi|refai|revoir|actualis|adapt)\w*\b[^.?\n]{0,30}\b(?:devis|offre)\b|"
    r"\bnouveau devis\b|\bnouvelle offre\b",
    r"\b(?:cambi|modific|corrij|corregi|actuali[cz]|rehac)\w*\b[^.?\n]{0,30}\b(?:presupuesto|"
    r"oferta|cotizaci[óo]n)\b|\bnuev[oa] (?:presupuesto|oferta|cotizaci[óo]n)\b",
    r"\b(?:modific|corregg|aggiorn|rifa|riveder)\w*\b[^.?\n]{0,30}\b(?:offerta|preventivo)\b|"
    r"\bnuov[oa] (?:offerta|preventivo)\b",
    r"\b(?:offerte|prijsopgave)\b[^.?\n]{0,40}\b(?:aanpassen|wijzigen|aan te passen|herzien)\b|"
    r"\b(?:nieuwe|aangepaste|herziene) offerte\b|\b(?:popraw|zmie[nń]|zaktualiz)\w*\b[^.?\n]{0,30}"
    r"\b(?:ofert|wycen)",
)  # fmt: skip
