"""Words that tell what a person wants: tooling, an answer, or something else.

Data only, in the shop's usual languages; from memory, the open sample and reference/notations.
Patterns are matched without regard to case, in one sentence at a time.
"""

from __future__ import annotations

TOOL = (
    r"\bmandr[ei]l{1,2}e?s?\b", r"\bmandrals?\b", r"\bmandrins?\b", r"\bmandrin[oi]\b",
    r"\bmandriles\b",
    r"\b\w{0,12}dorn(?:e|en|es|s)?\b", r"\b(?:buig)?doorn(?:en|tje)?\b",
    r"\btrzpie(?:ń|nia|ni|nie|niem|niowi)\b",
    r"\bdie ?sets?\b", r"\btooling\b", r"\bbieg(?:e)?werkzeuge?\b", r"\boutillages? de cintrage\b",
    r"\b(?:utillaje|herramental|matrices?) (?:de|para) (?:curvado|doblado|doblar|tubo|cintr)",
    r"\bbuiggereedschap", r"\bplugs? (?:not|or|and) ball|\bball (?:not|or) plug",
    r"芯棒|芯金|マンドレル|心轴",
)  # fmt: skip

# Somebody wants to buy, or to be told a price.
ASKS = (
    r"\b(?:please |pls |kindly |re-?)?quote\b(?! (?:no|number|#|\d{3,}\b(?!\.)|ref|dated|"
    r"you|from you|"
    r"was|is|above|and))",
    r"\bquotes? (?:for|on|me|us|due|please)\b",
    r"\b(?:for|your|a|request|get|need|want|send|provide|for a) (?:formal )?quotation\b",
    r"\brequest for (?:quot|price|a price|proposal)", r"\brf[qp]\b",
    r"\b(?:enquiry|inquiry|enquire|inquire)\b",
    r"\bprice (?:and|for|on|please|me|up|of|to|delivery)\b|\bprices? for\b|\bpricing (?:for|"
    r"on)\b|\bplease price\b|\bbest price\b|\bprice\?",
    r"\b(?:can|could|would|will|cld|u|able to|possible to|you to) (?:you |u |ya |yous |we |"
    r"i )?(?:guys |folks |please |pls |possibly |still |also )?"
    r"(?:make|do|supply|quote|offer|build|turn|sell|provide|machine|price|produce|"
    r"manufacture|knock|get me|get us|fab|cut|furnish|ship me|send me a|have)\b",
    r"\bdo (?:you|u|ya) (?:guys |folks |still |also |ever )?(?:make|stock|sell|carry|supply|"
    r"offer|have (?:an?|any|one|the|mandrels?|tooling|in stock)|keep)\b",
    r"\b(?:i|we|they|he|she)(?:'ll|'d|’ll|’d)? (?:\w+ )?(?:need|require|would like|"
    r"like to (?:buy|order|get|have)|plan to (?:buy|order)|wish to (?:buy|order))\b",
    r"\b(?:i|we|they|he)(?:'d|’d)? (?:\w+ )?want (?!my|our|the money|a refund|to (?:know|"
    r"complain|return|cancel|understand|ask)|another one i|store)",
    r"^\W*(?:hi,? |hello,? |also |and )?(?:needs?|needed|want(?:ed)?|looking for|after|"
    r"require|requires?|wtb|iso|in need of)\b",
    r"\bneed(?:ing)? (?:\w+ )?(?:one|two|three|a|an|it|the|\d{1,2}|some|mandrels?|"
    r"tooling)\b|\bwe(?:'re| are|’re) (?:in need of|after)\b|\bneeded\b",
    r"\b(?:looking|hunting|shopping|searching) (?:to buy|to order|to get|for)\b|"
    r"\bin the market for\b|\binterested in (?:a|an|one|two|your|(?:buying|"
    r"purchasing) (?!our|my))\b|"
    r"\bi(?:'m|’m| am) after\b",
    r"\b(?:want|like|wish|ready|going|have|please|us|me|and|will|"
    r"to) (?:to )?(?:re-?)?order\b(?! (?:no|number|#|\d|status|was|is|form))|\bplace (?:an|"
    r"the|this|our) order\b|"
    r"\b(?:our|new|attached|attached is|find) (?:purchase )?order (?:for|attached)\b|"
    r"\bplease (?:enter|accept|process) (?:this|our|the|my) (?:purchase )?order\b|"
    r"\bplease find [^.\n]{0,30}(?:purchase order|new order)\b|\border:|\border (?:for|"
    r"of) (?:\d|a|an|one|two|another|mandrel|the following)|"
    r"^\W*(?:new )?purchase order\b(?! \S+ rev)",
    r"\bplease (?:\w+ )?(?:supply|offer|send (?:me|us)? ?(?:a|an|one|two|\d|price|"
    r"your (?:best )?(?:price|offer|quot))|make|provide (?:price|a|your|us|me|quot)|"
    r"advise (?:price|cost|best))",
    r"\bpls (?:\w+ )?(?:supply|offer|send|make|provide|price|quote|adv)",
    r"\bkindly (?:\w+ )?(?:supply|offer|send|make|provide|quote|submit|furnish)",
    r"\bhow much\b",
    r"\bwhat (?:would|do|does|will|is|are|'s|’s)[^.?\n]{0,40}\b(?:cost|price|charge|run|"
    r"run me|set me back|get for|damage)\b|\bwhat(?:'s|’s| is| are) the (?:price|cost|"
    r"damage)\b",
    r"\bone (?:please|pls|only|apiece)\b|\b(?:two|three|four|\d) (?:of them |"
    r"off? )?please\b|\bplease x ?\d|\bi(?:'ll|’ll) take (?:one|two|three|\d)\b|"
    r"\bput me down for\b",
    r"\b(?:an?)?gebot\b|\bangebot\b|\banbieten\b|\bbieten sie\b|\bpreis(?:e|anfrage)?\b|"
    r"\bbenötig|\bbrauch|\bsuch(?:e|en) (?:einen?|wir|ich)\b|\bbestell(?:e|en|ung über)\b|"
    r"\bnachbestell|"
    r"\b(?:können|könnten|könnt) (?:sie|ihr)\b[^.?\n]{0,80}\b(?:liefern|fertigen|machen|"
    r"anbieten|herstellen|bauen|schicken)|\banfrage\b|\bwas kostet|\bbedarf\b",
    r"\bdevis\b|\bchiffr(?:er|age)\b|\bcot(?:er|ation)\b|\boffre de prix\b|"
    r"\bdemande de prix\b|\bprix\b|\btarif\b|\bbesoin d|\bcherch(?:e|ons)\b|\brecherch(?:e|"
    r"ons)\b|\bcommand(?:er|ons|e de)\b|"
    r"\b(?:pouvez|pourriez)[- ]vous [^.?\n]{0,60}\b(?:faire|fabriquer|fournir|proposer|"
    r"livrer|réaliser|usiner)|\bil (?:me|nous) fa(?:ut|udrait)\b|\bsouhait(?:e|"
    r"ons) (?:acheter|commander|recevoir)",
    r"\bpresupuesto\b|\bcotiz|\bprecio\b|\boferta\b(?! especial)|\bnecesit(?:o|amos|aría|"
    r"amos)\b|\bbusc(?:o|amos)\b|\b(?:pueden|podrían|podéis|puede|"
    r"podría) [^.?\n]{0,60}\b(?:hacer|fabricar|suministrar|ofertar)|\bquisiera\b|"
    r"\bquerría\b|\bcomprar\b|\bcuánto (?:cuesta|vale|sale)",
    r"\bpreventivo\b|\bofferta\b|\bquotazione\b|\bprezzo\b|\b(?:mi|ci) serv(?:e|ono|"
    r"irebbe)\b|\bbisogno di\b|\bcerc(?:o|hiamo)\b|\bordinare\b|\b(?:potete|potreste|può|"
    r"potrebbe) [^.?\n]{0,60}\b(?:fare|fornire|realizzare|costruire|quotare)|\bquanto cost|"
    r"\bvorre(?:i|mmo)\b",
    r"\bofferte\b|\bprijs\b|\bprijsopgave\b|\bnodig\b|\bzoek(?:en)? (?:een|wij|ik)\b|"
    r"\b(?:ik|wij|we) zoek|\bbestellen\b|\b(?:kunt u|kunnen jullie|"
    r"kun je)\b[^.?\n]{0,80}\b(?:leveren|maken|aanbieden|offreren)|\baanvraag\b|\bwat kost",
    r"\bzapytani[ea]\b|\bofert[aęy]\b|\bwycen|\bpotrzebuj|\bszuka(?:m|my)\b|\bzamaw|"
    r"\bzamówi[ćę]|\bcen[aęy]\b|\boffert\b|\bpris(?:förfrågan)?\b|\bbehöver\b|\bsöker\b|"
    r"\bpreciso\b|\bprecisamos\b|\borçamento\b|\bcotação\b",
    r"\b(?:po|p\.o\.|purchase order) (?:is )?(?:attached|enclosed|to follow)\b|"
    r"\battached (?:is )?(?:our |a |the |my )?(?:po|p\.o\.)\b",
    r"見積|报价|询价|견적",
)  # fmt: skip

# A repeat order: every dimension is in an earlier one.
REPEATS = (
    r"\bsame (?:again|as (?:last|before|previous|the last|my last|our last|always|usual|in|"
    r"po|order)|one (?:again|as)|mandrels? (?:again|as)|order (?:again|as)|thing again)\b",
    r"\b(?:repeat|re)[- ]?order\b|\brepeat (?:of )?(?:our|my|the|last|po|order)\b|"
    r"\banother (?:one |two |set |\d )?(?:of (?:those|these|your|the (?:same|ones?|"
    r"mandrels?))|(?:one )?(?:just )?like (?:the )?(?:last|before)|the same)\b|\b(?:two|"
    r"three|\d|few|couple) more (?:of|like|the same|please|mandrels?)\b|\bone more (?:of|"
    r"like|mandrel|please|the same)\b|\bas per (?:our )?(?:last|previous) (?:order|po)\b",
    r"\bwie (?:beim letzten mal|letztes mal|gehabt|immer|zuletzt|bei der letzten)\b|"
    r"\bdas gleiche (?:noch ?mal|nochmal|wieder|wie)|\bnoch ?(?:ein)?mal (?:die|den|"
    r"das)? ?(?:gleiche|selbe|\d)|\bnachbestell",
    r"\bcomme (?:la dernière fois|d'habitude|la fois précédente|la précédente)|"
    r"\bidentiques? (?:au|à la|aux) (?:précédente?s?|derni)|\b(?:le|la) même (?:que|chose|"
    r"commande)|\bmême commande\b",
    r"\b(?:igual|lo mismo|el mismo|los mismos) que (?:la última|el último|la vez|siempre|"
    r"el anterior)|\brepetir (?:el|nuestro) pedido",
    r"\bcome (?:l'ultima volta|la volta scorsa|al solito|l'ultimo ordine)|"
    r"\blo stesso (?:dell'ultima|di prima|mandrino)",
    r"\b(?:zelfde|hetzelfde|idem) als (?:vorige|de vorige|laatst|altijd|de laatste)|"
    r"\bnog (?:een|twee|\d) (?:van )?(?:dezelfde|zulke)|\bto samo co (?:ostatnio|"
    r"poprzednio)|\bsamma som (?:sist|förra)",
)  # fmt: skip

# Can it be done at all?
FEASIBLE = (
    r"\b(?:can|could|will|would|does) (?:you|u|it|this|that|these|they|i|we|one|a|the|\d|"
    r"\.\d)\b[^.?!\n]{0,120}\b(?:bend|bent|bending|work|kink|wrinkle|collapse|crack|split|"
    r"survive|go round|go around|fold|flatten|pull|be done|be made|hold|make it|manage|"
    r"be bent|do)\b",
    r"\bcan (?:you|u|ya|it|this) (?:do|bend|manage|handle|be)\b",
    r"\bcan(?:'t|’t|not) be done\b|\bcan (?:it|you|u)\?|\b(?:doable|feasible|possible|"
    r"realistic|achievable|too tight|too thin|any chance|a goer)\b(?=[^\n]{0,40}\?)",
    r"\bis (?:it|this|that|a|the|\d)[^.?!\n]{0,100}\b(?:possible|feasible|doable|"
    r"too (?:tight|thin|much)|realistic|ok|okay|achievable)\b",
    r"\b(?:machbar|möglich|biegbar|realisierbar|lässt sich|geht das|klappt)\b|\b(?:schaffen|"
    r"können) (?:sie|ihr)\b[^.?\n]{0,80}(?:biegen|rohr|radius)",
    r"\b(?:possible|réalisable|faisable|peut-on|arrive-t-on|tenable)\b",
    r"\b(?:posible|factible|se puede|viable)\b",
    r"\b(?:fattibile|possibile|si può|si riesce|realizzabile)\b",
    r"\b(?:haalbaar|mogelijk|gaat dat|lukt dat|te doen)\b",
    r"\b(?:możliwe|wykonalne|da się|możliwy)\b", r"\b(?:möjligt|går det)\b",
    r"\bhow tight\b|\bwhat(?:'s| is) the (?:tightest|smallest|minimum)\b",
)  # fmt: skip

QUANTITY = (
    r"\bqty\b|\bquantity\b|\b(?:\d|one|two|three) (?:off|no\.?|nos\.?|pcs?|pieces?|ea|each|"
    r"sets?|units?|stk|stück|st\.|pièces?|piezas?|uds?|pezzi|pz|stuks?|szt)\b|\bstückzahl\b|"
    r"\bquantité\b|\bcantidad\b|\bquantità\b|\baantal\b|\bilość\b|\bjust one\b|"
    r"\bx ?\d\b(?=\s*(?:please|pls|$))",
)  # fmt: skip

DRAWING = (
    r"\b(?:attached|enclosed|see|per) (?:the )?(?:\w+ )?(?:print|drawing|drg|dwg|sketch|pdf|"
    r"file|sheet|spreadsheet|list|photo|step|dxf)s?\b|\bas per (?:print|drawing|attach)|"
    r"\battached\b|"
    r"\b(?:zeichnung|skizze|anbei|anhang|liste)\b|\b(?:plan|dessin|croquis|pièce jointe|"
    r"ci-joint)\b|\b(?:plano|adjunto|dibujo)\b|\b(?:disegno|allegat[oa])\b|\b(?:tekening|"
    r"bijlage|bijgevoegd)\b|\b(?:rysun|załącz)",
)  # fmt: skip

# Words of bending that make figures a bend to judge.
BENDING = (
    r"\bclr\b|\bcent(?:er|re)[- ]?line\b|\bradi(?:us|i)\b|\brad\b|\bbend|\bbent\b|"
    r"\bd of bend\b|\b\d(?:\.\d)?\s?d\b|\bformer\b|\bdie\b|\b(?:biege|radius|mittellinie)|"
    r"\brayon\b|\bcintr|\bradio\b|\bcurv|\bdoblar|\braggio\b|\bpieg|\bstraal\b|\bbuig|"
    r"\bpromie|\bgi[ęe]c",
)  # fmt: skip

# So plain a wish for a tool that a question in the same sentence doesn't make it general.
WANTS_TOOL = (
    r"(?<!\byou )(?<!\bdo i )(?<!\bdo we )(?<!\bif i )(?<!\bif we )(?<!minimum )(?<!\bmin )"
    r"(?<!\bto )(?<!does it )"
    r"\b(?:need|want|require|order|buy|purchase|looking for|in the market for|"
    r"quote(?: me)?(?: for| on)?|rfq for|price on|after)"
    r" (?!to )(?:a|an|one|two|three|another|some|the|\d{1,2}|"
    r"new)? ?(?:\(\d+\) )?(?:\w+[ -]){0,3}?(?:mandrels?|die ?sets?|tooling)\b",
    r"\b(?:brauche[n]?|benötige[n]?|suche[n]?|bestelle[n]?) (?:wir |ich )?(?:einen?|zwei|"
    r"drei|\d{1,2}|noch)? ?(?:\w+[ -]){0,2}?\w{0,10}dorne?\b",
    r"\b(?:besoin d'un|besoin de \d|cherch(?:e|ons) un|faut(?: un)?|command(?:e|"
    r"ons)) ?(?:\w+ ){0,2}?mandrins?\b",
    r"\b(?:necesit(?:o|amos)|busc(?:o|amos)) (?:un|dos|\d)? ?mandril",
    r"\b(?:serve|servono|cerc(?:o|hiamo)) (?:un|due|\d)? ?mandrin[oi]",
    r"\bdoorn(?:en)? nodig\b|\bzoek(?:en)? (?:een )?doorn",
)  # fmt: skip

# A general question: it has an answer without any tube.
GENERAL = (
    r"\bdo you (?:guys |still |also )?(?:make|stock|sell|carry|have|do|offer|"
    r"supply) (?:\w+ ){0,3}(?:mandrels|tooling|dies|wiper)",
    r"\bhow much (?:is|are|does|do|for) (?:a |an |your |the )?(?:\w+ ){0,2}(?:mandrels?|"
    r"tooling|shipping|delivery)\b",
    r"\bwhat (?:does|do|would|is|are) (?:a |an |your )?(?:\w+ ){0,2}(?:mandrels?|"
    r"tooling) (?:cost|run|price|typically|usually)",
    r"\bwhat (?:exactly |info(?:rmation)? |details? |all |else )?(?:do|would|"
    r"will) you (?:need|want|require)\b|\bwhat (?:should|must|do) (?:i|we) (?:send|give|"
    r"tell|know)\b",
    r"\bhow (?:do|does|can|would|should|to) (?:i|we|one|you|it|this|that|the|a)\b",
    r"\b(?:minimum order|moq|lead ?times?|turn ?around|how long (?:does|do|is|are|will|"
    r"would|to|for)|delivery time|payment terms?|terms of payment|payment condition|"
    r"credit terms|net 30\?|warranty|guarantee|return policy|ship to|ship(?:ping)? (?:cost|"
    r"abroad|internationally|overseas|outside))\b",
    r"\bdifference(?:s)? between\b|\bversus\b|\bvs\.?\b|\bbetter\b|\bwhich\b|\bwhat (?:kind|"
    r"type|sort|grade|material|size|clearance|lube|lubricant|grease|oil|is|are|does|causes|"
    r"makes|would cause|happens|tolerance)\b|\bwhy\b|\bwhen (?:do|does|is|should|would)\b",
    r"\bdo (?:i|we|you) (?:really |actually |even |always )?need (?:a|an|"
    r"the) (?:\w+ )?(?:mandrel|wiper|die)\b",
    r"\bcan (?:a|one|the same|your|any|i|we|mandrels?)\b[^.?\n]{0,80}\?",
    r"\b(?:is|are) (?:there|your|the|mandrels?|it|a|an)\b[^.\n]{0,120}\?",
    r"\bcatalog(?:ue)?s?\b|\bbrochure\b|\bprice ?lists?\b|\bdata ?sheets?\b|\bkatalog\b|"
    r"\bcatálogo\b",
    r"\bhow (?:many|often|far|hard|close|tight|thick|thin|accurate|deep|big)\b",
    r"\bexplain\b|\bclarify\b|\bmeaning of\b|\bmean by\b|\bstand for\b|\brule of thumb\b|"
    r"\brecommend\b|\badvi[cs]e (?:on|which|whether|what|me on|us on)\b|\bwonder(?:ing|"
    r"ed)?\b|\bcurious\b|\bplain english\b|\bunderstand\b|\bquestion\b|\bworried about\b",
)  # fmt: skip

# Knowledge asked for: lubricant, life, terms. Sizes beside it are examples.
KNOWLEDGE = (
    r"\b(?:the )?same (?:thing )?as (?:a |an |the )?\d|\blubric|\blube\b|\bgrease\b|"
    r"\bcoolant\b|\bhow many bends\b|\b(?:tool|mandrel|expected) life\b|"
    r"\blast (?:for )?(?:\d|before)|\bhow long (?:do|does) (?:they|it|a mandrel|mandrels|"
    r"one|the mandrel) last|\bwear\b",
    r"\bwall factor\b|\bd of bend\b|\bwhat (?:is|does|exactly is) (?!going|happening|wrong|"
    r"the (?:price|cost|status|hold))|\bdifference between\b|"
    r"\bexplain\b|\bclarify\b|\brule of thumb\b|\bovality\b|\bspring ?back\b|\bthinning\b|"
    r"\bhow (?:do|should|would|can) (?:i|we|you|one) (?:measure|work|calculate|set|clean|"
    r"store|polish|know|find|tell)\b",
    r"\bwhere (?:should|does|do) [^.?\n]{0,40}(?:sit|stand|mandrel|tangent)|"
    r"\bpast (?:the )?tangent\b|\bhow far\b|\bwhy (?:is|are|does|do|did|would|am)\b|"
    r"\bwhat causes\b|\bwhich (?:mandrel )?(?:material|lubricant|surface|standard|tolerance|"
    r"alloy|coating)\b|\bis there a standard\b",
    r"\bwandfaktor\b|\bschmier|\bgleitmittel\b|\bstandzeit\b|\bwas (?:ist|bedeutet|heißt)\b|"
    r"\bunterschied\b|\berklär|\bwarum\b|\bwieso\b|\bab welche[mnr]\b|\bwie (?:weit|misst|"
    r"messe|viele|lange hält)|\brückfederung\b|\bovalität\b",
    r"\blubrifi|\bdurée de vie\b|\bqu(?:'est-ce|e signifie|elle est la différence)|"
    r"\bquelle différence\b|\bpourquoi\b|\bexpliqu|\bovalisation\b|\bretour élastique\b|"
    r"\bfacteur de paroi\b|\bcomment (?:mesure|calcul|régler)",
    r"\blubrica|\bvida útil\b|\bqué (?:es|significa)\b|\bdiferencia entre\b|\bpor qué\b|"
    r"\bexplicar|\bovalidad\b|\bfactor de pared\b",
    r"\blubrifica|\bdurata\b|\bche cosa (?:è|significa)|\bcosa significa\b|"
    r"\bdifferenza tra\b|\bperché\b|\bspiegar|\bovalizzazione\b|\bfattore di parete\b",
    r"\bsmeer(?:middel|olie|t)?\b|\blevensduur\b|\bwat (?:is|betekent)\b|"
    r"\bverschil tussen\b|\bwaarom\b|\buitleg|\bhoe (?:ver|meet|lang gaat)|\bwandfactor\b|"
    r"\bovaliteit\b",
    r"\bco (?:to jest|oznacza)\b|\bróżnic|\bdlaczego\b|\bsmarow|\bvad (?:är|betyder)\b|"
    r"\bskillnad|\bvarför\b|\bsmörj",
)  # fmt: skip

# Words of the trade or of dealing with the shop: a question with one of these is for sales.
TRADE = (
    r"\bmandr|\bdorn|\bdoorn|\btrzpie|\bbend|\bbieg|\bcintr|\bcurv|\bpieg|\bbuig|\btub(?:e|"
    r"es|ing|o|i|os|es)\b|\bpipe|\brohr|\bbuis|\brur[aęy]|\bdies?\b|\bwiper|\btool|\bwall\b|"
    r"\bclr\b|\bradius|\brayon|\braggio|\bball|\bbronze|\bchrom|\bstainless|\balumin|"
    r"\bsteel|\bedelstahl|\binox\b|\bwerkzeug|\boutil|\butill|\bformer",
    r"\blead ?time|\bdeliver|\bship|\bprice|\bcost|\bpayment|\bterms\b|\bcards?\b|"
    r"\bpaypal\b|\bquote|\border\b|\bminimum\b|\bstock\b|\bwarranty|\bdiscount|\baccount\b|"
    r"\bcatalog|\bopen(?:ing)? hours|\bvisit\b|\blieferzeit|\bpreis|\bzahlung|\bversand|"
    r"\blieferung|\bdélai|\bprix\b|\bpaiement|\blivr|\bplazo|\bprecio|\bpago|\benvío|"
    r"\bprezz|\bpagament|\bconsegna|\bspedi|\blevertijd|\bprijs|\bbetaling|\bverzend|"
    r"\btermin|\bcen[ay]\b|\bkatalog|\bcatálogo|\bsizes?\b|\bdrawing|\bsolid works|"
    r"\bstep file",
)  # fmt: skip

ASKING = (
    r"\?|？",
    r"\b(?:could|can|would) you (?:please )?(?:tell|explain|advise|clarify|let me know|say|"
    r"help)\b|\b(?:please|kindly) (?:also )?(?:tell|explain|advise|clarify|let me know|"
    r"mention|say)\b|\bi(?:'d| would) like to (?:know|understand|ask)\b|\bi(?:'m|"
    r" am) wondering\b|\bi wonder\b|\bwondering (?:if|whether|what|how)\b|"
    r"\blet me know (?:if|whether|what|how)\b|\bhave a question\b|\bquick question\b|"
    r"\bneed (?:some )?advice\b",
    r"\b(?:bitte|könnten sie|können sie) [^.\n]{0,40}(?:erklären|mitteilen|sagen)|"
    r"\bich (?:wüsste gern|würde gerne wissen|möchte wissen)|\bj'aimerais savoir|"
    r"\bpourriez-vous (?:m'|nous )?(?:expliquer|dire|indiquer)|\bme gustaría saber|"
    r"\bvorrei sapere|\bik (?:zou|wil) graag weten|\bchciał(?:bym|abym) (?:wiedzieć|zapytać)",
)  # fmt: skip
