"""Words on what is no size at all: mail, machines, freight, payment, people, a later batch."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import whole_words

_MAIL = (
    r"(?:e-?mails?|mails?|messages?|text|voice ?mails?|letters?|fax|attachments?|drafts?|calls?"
    r"|(?:purchase )?requests?|enquir(?:y|ies)|inquir(?:y|ies)|rfq|question|nachricht|anfrage"
    r"|anhang|courriels?|message|demande|correo|mensaje|solicitud|richiesta|messaggio|bericht"
    r"|aanvraag)"
)
_THING = (
    r"(?:machines?|benders?|pumps?|printed drawings?|rods?|mandrel rods?|lube|lubricants?|oil"
    r"|paste|catalogu?es?"
    r"|accounts?|price ?lists?|dies?|die sets?|wipers?|wiper dies?|collets?|clamps?|clamp dies"
    r"|pressure dies?|formers?|toolings?|rush|hurry|drawings?|prints?|samples?|coatings?|plating"
    r"|chrome|polishing|balls? coated|certificates?|certs?|paperwork|freight|shipping|delivery"
    r"|insurance|vat|tax|duty|payment|deposit|invoices?|money|budget|quick (?:answer|reply)|reply"
    r"|answer|discount|training|installation|things|stock|material|supplier|vendor|address|logo"
    r"|brochures?|visit|phone calls?)"
)
_THING_DE = (
    r"(?:maschine|rohrbieger|biegemaschine|dornstange|schmiermittel|öl|katalog|kundennummer"
    r"|preisliste|biegeform(?:en)?|biegeblock|biegesegment|matrize|faltenglätter|spannbacken?"
    r"|gleitschiene|zeichnung(?:en)?|material|fracht|versand|bezahlung|zahlung|rechnung|antwort"
    r"|rohrmaterial|eile|beschichtung|zeugnis)"
)
_THING_FR = (
    r"(?:machine|cintreuse|tige|lubrifiant|huile|catalogue|compte|matrices?|formes?|galets?|lisseurs?"
    r"|mordaches?|plans?|dessins?|matière|livraison|transport|port|paiement|facture|réponse|urgence)"
)
_THING_ES = (
    r"(?:máquina|dobladora|curvadora|varilla|lubricante|aceite|catálogo|cuenta|matriz|matrices"
    r"|alisador|mordaza|planos?|material|envío|transporte|pago|factura|respuesta|prisa)"
)
_THING_IT = (
    r"(?:macchina|curvatrice|asta|lubrificante|olio|catalogo|conto|matrice|matrici|raschiatore"
    r"|morsetto|disegn[oi]|materiale|spedizione|trasporto|pagamento|fattura|risposta(?: immediata)?"
    r"|fretta)"
)
_THING_NL = (
    r"(?:machine|buigmachine|stang|smeermiddel|olie|catalogus|account|mal|mallen|gladstrijker"
    r"|klem|tekening(?:en)?|materiaal|verzending|vracht|betaling|factuur|antwoord|haast)"
)
_OF = (
    r"(?:(?:the|a|an|any|my|our|your|some|used|new|that|more|extra|good|great|nice|set of)\s){0,4}"
)
_BE = r"(?:is|are|was|has been|have been|can|could|we|i|that|which|will)"
_DROP = r"(?:disregard|ignore|cancel|drop|scrap|forget|leave out|don'?t need|do not need|skip)"
_NEED_NO = (
    r"(?:(?:no need (?:for|of|to)|not interested in|don'?t (?:need|want|quote|bother with|price)"
    r"|do not (?:need|want|quote|price)|leave (?:out|off)|bother with|no longer need|skip|drop"
    r"|without)"
    r"|(?:we|i)(?:'ve)? (?:already )?(?:have|own|got))"
)
_DAY = (
    r"(?:january|february|march|april|may|june|july|august|september|october|november|december"
    r"|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|monday|tuesday|wednesday|thursday|friday"
    r"|christmas|easter|next (?:week|month)|the (?:end|middle|start|\d)|\d)"
)
OF_NO_SIZE = whole_words(
    rf"{_DROP} (?:please )?(?:my|the|our|that|this)?(?: \w+){{0,2}} ?{_MAIL}(?! about| on| for| re"
    r"garding)",
    rf"{_MAIL} (?:of|from) (?:yesterday|today|monday|tuesday|wednesday|thursday|friday|last week)"
    r" (?:is|was|can be) (?:wrong|ignored|disregarded|cancelled|void)",
    rf"{_NEED_NO} {_OF}{_THING} ?(?:already|please|yet|either)?(?= |[.,!;]|$)",
    rf"{_THING},? (?:{_BE} )+(?:already )?(?:wait|got|have|own|settled|sorted|covered"
    r"|taken care of|later|already|here|in the (?:rack|shop))",
    rf"(?:you|they) (?:guys )?(?:made|sold|sent|supplied|did) (?:me |us )?{_OF}(?:job|work|{_THING}"
    r"|price list|catalogue)",
    r"leave (?:the )?(?:vat|tax|freight|shipping|duty|coating) (?:out|off)",
    r"(?:we|shop|office|yard|plant|works|receiving|dock|store|school|factory)(?:'re| are| is| all"
    r"| will be)* closed",
    r"(?:drop (?:me|us) (?:a|an) (?:line|note|mail|e-?mail|call) | drop[- ]?ship\w* | drop it off)",
    r"(?:for (?:reference|comparison|your reference)),? (?:our|my|the) (?:po|order|quote|rfq|ref"
    r"|account|customer) | for comparison,? (?:we|i) (?:now )?(?:pay|paid)",
    r"(?:another|other|different|previous) (?:vendor|supplier|shop)s? (?:now )?(?:wants?|quoted"
    r"|asks?|asked|charges?|needs?|takes?|before|closed|is|was|let)",
    r"(?:someone|somebody) else (?:wants?|quoted|asks|charges) (?:(?!the|that)\S+ ){0,2}(?:weeks?"
    r"|days|months|less|more|cheaper)",
    r"my (?:friend|mate|buddy|neighbou?r|brother|dad|cousin|uncle|son) (?:said|says|told"
    r"|recommends?"
    r"|recommended|sent|gave|pointed|used to buy|buys|swears by|works)(?: \w+){0,4} (?:you|your)"
    r"(?! (?:could|can|made|have|had|did))",
    rf"(?:don'?t|do not|won'?t|no) need (?:it|them|these|those|any of (?:it|them)|the lot)?"
    rf" ?(?:before|until|till|by) {_DAY}",
    r"(?:(?:second|further|next|another|more|follow-?up)? ?(?:batch(?:es)?|lots?|runs?|orders?"
    r"|quantit\w+)|reorder|repeat order|more of the same|same again|prices?|budget|move|new"
    r" building)(?: \w+){0,5} (?:next year|the new year|later)",
    r"(?:we|i)(?:'ve)? (?:have|got) (?:\d+ ?(?:ft|feet|m|sticks|lengths|tons?) of )?(?:the |plenty"
    r" of |enough |lots of )?(?:tub(?:e|ing)|pipe|material|steel|stock) (?:already )?(?:in the"
    r" (?:rack|shop)|already|on the rack)",
    rf"{_THING_DE} (?:\w+ ){{0,2}}(?:schon|bereits|(?:ist|sind) (?:\w+ )?(?:da|vorhanden))",
    rf"(?:keine?n?|nicht) {_THING_DE}(?: nötig)?",
    r"mail von (?:gestern|heute|vorhin) (?:bitte )?(?:streichen|ignorieren|vergessen)",
    r"(?:anderer lieferant|freund|nachbar|bruder|vater|schwager)(?: \w+){0,3} (?:braucht|will"
    r"|verlangt|empfohlen)",
    rf"(?:annule[rz]?|ignore[rz]?|d'annuler|d'ignorer) (?:mon|ma|notre|le|la) (?:dernier |dernière"
    rf" |précédent )?{_MAIL}",
    rf"{_THING_FR},? (?:on l(?:'|es )a|nous l(?:'|es )avons) déjà"
    r" | (?:on a|avons) déjà (?:la|le|les|un|une)"
    rf" {_THING_FR}",
    r"(?:mon (?:ami|voisin|frère|père)) (?:m'a donné|m'a conseillé|vous recommande|m'a parlé de v)",
    rf"(?:ignoren?|anulen?|olviden?) (?:mi|el|nuestro) (?:último )?{_MAIL}",
    rf"{_THING_ES} ya l[ao]s? tenemos | ya tenemos (?:la |el |una? )?{_THING_ES}",
    rf"{_THING_IT} (?:ce )?(?:l'|l[aeio] )abbiamo già | abbiamo già (?:la |le |il |un "
    rf"|una )?{_THING_IT}",
    rf"non serv\w+ (?:la |il |le |un |una )?{_THING_IT}",
    rf"{_THING_NL} hebben we al | (?:geen|al een) {_THING_NL}",
    r"mail van (?:gisteren|vandaag) (?:is niet meer nodig|vervalt)",
)
"""Whole phrases, so that what is put off or owned is told by them and by nothing else."""
WORDS_WITH_MANDREL = late_pattern(
    r"\bmandrel[- ](?:lub\w+|rods?|benders?|bending|extractors?|oil|paste|boxes|machines?)\b"
    r"|\b(?:on )?the last one\b(?=[.!]?\s*$)"
)
BENT_EMPTY = whole_words(
    r"without (?:a |any |the )?mandrel | no mandrel | ohne (?:\w*dorn|einen dorn) | sans mandrin",
    r"sin mandril | senza (?:mandrino|anima) | zonder doorn",
)
"""With trouble told beside it, it says why a mandrel is wanted."""
NO_TROUBLE = whole_words(
    r"no(?! mandrel) | not | never | isn'?t | doesn'?t | don'?t | hardly | nicht | keine?"
    r" | kaum | pas",
    r"jamais | nunca | mai | niet | geen | fine | ok | okay | gut | bien | bene | goed | until"
    r" | only",
)
POINTS_TO_SIZE = whole_words(
    r"mandrels? | plugs? | ones? | sizes? | first | second(?! batch| lot| run| order) | third"
    r" | fourth | last (?:one|line|row"
    r"|item|size) | small\w* | big(?:ger|gest)? | larg(?:e|er|est) | thin(?:ner|nest)?"
    r" | thick\w* | lighter"
    r" | heav(?:y|ier)",
    r"both | others? | rest | either | neither | half | lines? \d+ | items? | rows? | pos"
    r" | position",
    r"radius | radii | wall | od | for (?:the|that|those|this|these|them|it|my|our|\d)",
    r"(?<!any )of (?:these|those|them)",
    r"dorne? | dorns | einen? davon | klein\w* | groß\w* | dünn\w* | dick\w* | erste\w* | zweite\w*"
    r"| dritte\w* | letzte\w* | andere[ns] | beide\w* | für (?:das|den|die|dieses?|diesen)",
    r"mandrins? | petit\w* | grand\w* | gros | premier\w* | deuxième | second\w* | autres? | celui"
    r"| celle | l'un | pour (?:le|la|celui|les)",
    r"mandril(?:es)? | pequeñ\w+ | primer\w* | segund\w+ | otr[oa]s? | uno | ambos | para (?:el|la"
    r"|ese|los|las)",
    r"mandrin[oi] | anim[ae] | piccol\w+ | prim[oa] | second[oa] | altr[oiae] | quell[oae] | uno"
    r"| entrambi | per (?:il|la|quello|i|le)",
    r"doorn(?:en)? | kleine\w* | grote\w* | eerste | tweede | andere | allebei | voor (?:de|het"
    r"|die)",
)
"""Words that may mean one of the sizes."""
WAITS = whole_words("wait | later | next year | on hold | warten | später | plus tard | más tarde")
TELLS_OF_OTHER = whole_words(
    r"next (?:year|season|spring|summer|autumn|fall|winter) | later | new year | can wait"
    r" | on hold",
    r"straight | by hand | nothing for | no mandrel | needs? none | without | not bent"
    r" | never mind",
    r"forget | leave | drop | cancelled | canceled | comes? later | already | bend|bent",
    r"nächstes jahr | später | von hand | ohne | gerade | entfällt | streichen | fertig gebogen",
    r"l'an prochain | plus tard | à la main | sans | droits? | annulé | déjà",
    r"el año que viene | más adelante | a mano | sin | rect[oa]s? | ya",
    r"l'anno prossimo | più avanti | a mano | senza | dritt[oi] | già",
    r"volgend jaar | later | met de hand | zonder | recht | al",
)
AT_CLAUSE = whole_words(
    r"but | though | however | except | instead | same | as well | too | also | aber | doch | mais",
    r"pero | però | maar | auch | aussi | también | anche | ook | gleich\w* | wrong | should | not",
    r"change[ds]? | (?:is|was|are) now | rather",
)
"""Words that may turn it round, or put a figure right."""
NOT_OFFERED = whole_words(
    r"(?:please )?(?:do not|don'?t|no need to) (?:quote|price|offer)(?: (?:it|that|that one))?",
    r"(?:bitte )?nicht (?:mit )?(?:anbieten|angebot) | pas de (?:devis|prix)",
    r"(?:please )?(?:leave|drop|skip|forget|ignore) (?:it|that)(?: out| off)?",
    r"(?:bitte )?(?:weglassen|streichen) | no (?:lo )?(?:cotic\w+|presupuest\w+)",
    r"non (?:lo )?(?:quot\w+|offr\w+) | niet (?:aanbieden|offreren)",
)
ASKS_TOO = whole_words(
    r"please | quote | price | how much | can you | could you | bitte | angebot | devis | prix",
    r"presupuesto | precio | preventivo | prezzo | offerte | prijs | graag",
)
HELD_BY_NAME = whole_words(r"pipes? | sch(?:edule)?\.? ?\d+ | nps | dn ?\d+ | nominal | nb")
"""Pipe goes by a nominal size that measures otherwise: '1-1/4' may be the 1.66."""
