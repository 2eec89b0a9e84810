"""Words by which somebody asks for a piece: one is wanted, counted, put right, can it be bent.

Data only, in the shop's usual languages; from memory and from labelled messages.
Patterns are matched without regard to case, in one sentence at a time.
"""

from __future__ import annotations

# Senders put right what they wrote before: no complaint about us.
_FIGURE = (
    r"(?:size|tube|pipe|wall|od|radius|clr|dimension|figure|number|measurement|job|drawing|print|"
    r"spec|grade|material|gauge|info\w*|detail)s?"
)
PUTS_RIGHT = (
    r"\b(?:wrong|incorrect) " + _FIGURE + r"\b[^.?\n]{0,40}\b(?:in|on) (?:my|our)\b|\b(?:i|"
    r"we)(?:'ve|"
    r"’ve| have)?(?: just)? (?:gave|given|sent|told|wrote|typed|put|had|used)(?: you| down)? the "
    r"wrong "
    + _FIGURE + r"\b|^\W*(?:sorry,? )?(?:gave|sent|told) you the wrong " + _FIGURE + r"\b|"
                r"\b(?:forget|ignore|disregard|scratch|strike) (?:the |my |that )(?:size|figures|"
                r"numbers?|od|wall|radius|dimensions?|(?:last|previous|earlier|first|other) "
                r"(?:e-?mail|mail|message|note|one))\b|\b(?:typo|mistake|error|slip) in (?:my|"
                r"our)\b|\bmy (?:mistake|bad|error|typo)\b|\bcorrection (?:to|of) (?:my|our)\b|"
                r"^\W*correction\b|\bi made (?:a|an) (?:mistake|typo|error)\b|\b(?:i was looking "
                r"at|off|from|on) the wrong (?:job|drawing|print)\b|\bi mis(?:measured|read|typed|"
                r"wrote)\b|\b(?:re|about|in|regarding|on|to) my (?:\w+ )?(?:note|e-?mail|mail"
                r"|message|inquiry|enquiry|request|rfq)\b[^?\n]{0,80}\bshould(?: be| have been"
                r"| of been|'ve been| read)\b",
    r"\b(?:falsche\w*|verkehrte\w*) (?:größe|maße?|rohr|wand\w*|radius|durchmesser|werkstoff|"
    r"angaben?)\b[^.?\n]{0,40}\b(?:angegeben|geschrieben|genannt|durchgegeben)\b|\bin (?:meiner|"
    r"unserer) (?:\w+ )?(?:anfrage|e-?mail|mail|nachricht)\b[^.?\n]{0,60}\b(?:falsch|fehler|"
    r"irrtum|hätte|sein sollen|muss|heißen)|\b(?:habe|haben) (?:ich |wir )?(?:mich|uns) (?:vertan|"
    r"vertippt|vermessen|verschrieben|verlesen|geirrt)\b|^\W*korrektur\b",
    r"\bje me suis tromp|\bnous nous sommes tromp|\berreur dans (?:ma|notre)\b|\bfaute de frappe\b|"
    r"^\W*rectificatif\b|\b(?:ma demande|mon (?:e-?mail|mail|message))\b[^?\n]{0,80}\b(?:aurait dû|"
    r"doit être)\b|\bmi (?:solicitud|correo|mensaje)\b[^?\n]{0,80}\bdeb(?:ería|e) (?:haber|ser)\b|"
    r"\bmia (?:richiesta|e-?mail|mail)\b[^?\n]{0,80}\b(?:avrebbe dovuto|deve) essere\b|"
    r"\bme equivoqué\b|\bnos equivocamos\b|\berror en (?:mi|nuestr)|"
    r"\bcorrijo\b|^\W*corrección\b|\b(?:ho|abbiamo) sbagliato\b|\berrore nella (?:mia|nostra)\b|"
    r"\bcorreggo\b|^\W*(?:correzione|rettifica)\b",
    r"\bin mijn (?:\w+ )?(?:mail|aanvraag|bericht)\b[^.?\n]{0,60}\b(?:verkeerde?|foute?|fout|moeten"
    r"|moet)\b|"
    r"\b(?:ik|we|wij) (?:had|heb|hebben) (?:me|ons) vergist\b|\b(?:ik|we) (?:gaf|had) (?:u |jullie "
    r")?de verkeerde (?:maat|wand\w*|straal|buis)\b|^\W*correctie\b|\bpomyli(?:łem|łam|liśmy)\b|"
    r"\bbłąd w (?:moim|naszym)\b|\bjag skrev fel\b",
)  # fmt: skip

# A piece is asked for: need, want, looking for, can you make, have you got one.
ASKS_PIECE = (
    r"\b(?:(?:nos|me) interesa|(?:ci|mi) interessa|interessiert uns|interessieren uns"
    r"|nous intéresse|interested in|geïnteresseerd in|quer(?:emos|ríamos)|wollen wir|voulons"
    r"|vogliamo|willen we) (?:(?:solo|sólo|nur|only|seulement|que|alleen|now|just) )?"
    r"(?:the|den|der|le|el|il|de) (?:\w*dorn|mandrel|mandrin|mandril|mandrino|doorn) (?:für|for"
    r"|pour|en|de|para|per|da|voor)\b|\bpedimos (?:un|dos|\d) mandril(?:es)? nuevos?\b",
    r"\bhac(?:ed|edme|ednos|edlo)\b|\b(?:h[áa]ga(?:n)?(?:me|nos|lo))\b(?! saber)|\bfa(?:te|tece"
    r"|teme)"
    r"(?:ne)? un[oa]?\b|\bfaites[- ](?:nous|moi)[- ]en\b|\bfaites[- ]m'en\b"
    r"|\bmaak (?:er )?(?:ons|mij)"
    r" (?:er )?(?:een|één|twee|\d)\b|\bmach(?:en sie|t) (?:uns|mir) (?:bitte )?(?:einen|zwei|\d)\b",
    r"\b(?:broken?|worn(?: out)?|snapped|gone|lost|finished|shot|dead|stolen|knackered)\b"
    r"[^?!\n]{0,40}\b(?:replace|renew|remake) (?:it|that|this|them|those|both)\b|\b(?:make|sen"
    r"d|build|"
    r"turn) (?:me |us )?another\b|\b(?:needs?|wants?) (?:replacing|renewing|remaking)\b|\b(?:k"
    r"aputt|"
    r"gebrochen|verschlissen|abgenutzt)\b[^?!\n]{0,40}\b(?:ersetzen|erneuern|neu machen)\b|"
    r"\b(?:cassé|usé)e?\b[^?!\n]{0,40}\bremplac\w+|\b(?:rot|gastad)[oa]\b[^?!\n]{0,40}"
    r"\b(?:reemplaz|sustituy|repon)\w+|\b(?:rott|usurat|consumat)[oa]\b[^?!\n]{0,40}\bsostitu\w+|"
    r"\b(?:kapot|versleten)\b[^?!\n]{0,40}\b(?:vervangen|vernieuwen)\b",
    r"\b(?:enquiry|inquiry|enquire|inquire)\b|\bprice\?|\banfrage\b|\baanvraag\b|\brichiesta\b"
    r"(?! danni)",
    r"\b(?:can|could|would|will|cld|able to|possible to|you to) (?:you |u |ya |yous |we |i "
    r")?(?:guys |folks |please |pls |possibly |still |also |just )?(?:make|do|supply|offer|build|"
    r"turn|provide|machine|produce|manufacture|knock|get me|get us|fab|cut|furnish|ship me|send me "
    r"a|have|handle|help (?:me|us) (?:with|out with) (?:a|one|this|that))\b(?! (?:this|it|things?) "
    r"right| (?:sure|me an offer))",
    r"\bdo (?:you|u|ya|y'all|youse) (?:guys |folks |still |also |ever )?(?:make|stock|sell|carry|"
    r"supply|offer|have (?:an?|any|one|the|mandrels?|tooling|in stock)|keep)\b",
    r"(?<!do )(?<!does )(?<!would )\b(?:i|we|they|he|she)(?:'ll|'d|’ll|’d)? (?:\w+ )?(?:need|"
    r"require|would like|should like (?:an?|two|three|\d|one)|like to (?:buy|order|get|have)|plan "
    r"to (?:buy|order)|wish to (?:buy|order))\b(?! (?:to (?!buy|order|get a|have a)|the (?:\S+ "
    r")?(?:cert|invoice|tracking|receipt|papers?|msds)|your (?:bank|tax|w)|it (?:for|back|by then)|"
    r"you to)\b)",
    r"\b(?:i|we|they|he)(?:'d|’d)? (?:\w+ )?want (?!it back|them back|my|our|the money|a refund|to "
    r"(?:know|complain|return|cancel|understand|ask)|another one i|store|the (?:\d|price back))",
    r"^\W*(?:hi,? |hello,? |also |and |really |still |pls )?(?:needs?|needed|want(?:ed)?|looking "
    r"for|after|require|requires?|wtb|iso|in need of)\b(?! to (?:make|sell)| (?:it|them) back| "
    r"(?:the )?(?:\S+ )?(?:cert|invoice|receipt|tracking|somebody|someone))",
    r"\bneed(?:ing)? (?:\w+ )?(?:one|two|three|a|an|\d{1,2}(?:[.,/]\d{1,4})?|some|mandrels?"
    r"|tooling)\b"
    r"(?! (?:\w+ )?(?:cert|invoice|copy|receipt|refund|favou?r|hand|date|tracking))|"
    r"\bwe(?:'re| are|’re) (?:in need of|after)\b|\b(?:gotta|got to|have to|must) have\b|"
    r"\bneeded\b",
    r"\b(?:looking|hunting|shopping|searching) (?:to buy|to order|to get|for|after)\b|"
    r"\bwe look (?:for|after) a\b|\bin the market for\b|\binterested in (?:a|an|one|two|your|"
    r"(?:buying|purchasing) (?!our|my))\b|\bi(?:'m|’m| am) after\b",
    r"\b(?:could|can) (?:use|do with) (?:a|an|one|two|another)\b|\b(?:can|could|may) (?:i|we) get "
    r"(?:them|one|two|three|it|\d|a mandrel|some)\b|\b(?:i|we)(?:'m|'re|’m|’re| am| are) "
    r"(?:missing|short|out of|lacking) (?:a|an|one|the|mandrels?)\b|\b(?:set|hook|fix|sort) (?:me|"
    r"us) (?:up|out)\b|\bgot (?:a|an|any|something|anything|one)\b[^.?\n]{0,60}\?|\btime (?:i|we) "
    r"(?:owned|bought|got|had) (?:one|a)\b|\bhop(?:e|ing) for a number\b|\badd (?:one|a|another|"
    r"two|\d) (?:more|mandrel)|\bwhat (?:have|would) you (?:got|suggest|recommend|use|make)\b|"
    r"\bplease do the needful\b|\bawaiting (?:your )?(?:favou?rable|kind)",
    r"(?<!not )(?<!n't )\b(?:like|wish|ready|going|please|me|and|will) (?:to "
    r")?(?:re-?)?order\b(?! (?:no|"
    r"number|#|\d|status|was|is|form))|\b(?:to|want to) order (?:a|an|one|two|three|\d|another)\b|"
    r"\b(?:we|i) order (?:a|one|two|three|\d)|\bplace (?:an|the|this|our) order (?:for|of)\b|"
    r"\b(?:our|new|attached|attached is|find) (?:purchase )?order (?:for|attached)\b|"
    r"\bplease (?:enter|accept|process) (?:this|our|the|my) (?:purchase )?order\b|"
    r"\bplease find [^.\n]{0,30}(?:purchase order|new order)\b|^\W*(?:new )?order:|"
    r"\border (?:for|of) (?:\d|a|an|one|two|another|mandrel|the following)|"
    r"^\W*(?:new )?purchase order\b(?! \S+ rev)",
    r"\b(?:please|pls|kindly) (?:\w+ )?(?:supply|make|provide|send (?:me|us)? ?(?:a|an|one|two|"
    r"\d)\b(?! (?:copy|refund|new label|label|receipt|tracking)))",
    r"\b(?:one|another|the right one|the next size|two|three|a pair),? (?:more )?(?:please|pls|"
    r"thanks|only|apiece)\b|\b(?:two|three|four|\d) (?:of them |off? )?please\b|\bplease x ?\d|"
    r"\bi(?:'ll|’ll|'d|’d| would) (?:take|have) (?:one|two|three|\d|a (?:pair|set|couple))\b|\bput "
    r"me down for\b|\bone (?:each|apiece)\b|\b(?:same|usual) deal\b|\bthis time (?:it's|its|for|"
    r"around)\b",
    r"\bbenötig|\bbrauch(?!t (?:es|man|das))|\bbräucht|\bsuch(?:e|en) (?:einen?|wir|ich)\b|"
    r"\bge?sucht\b|\bbestell(?:en wir|e ich|en hiermit|ung über)\b|\b(?:hiermit|möchten?|gerne) "
    r"(?:\w+ ){0,3}bestell|\bnachbestell|\bbedarf\b|\b(?:uns|mir) fehlt\b|\bwie schnell (?:können|"
    r"könnten) sie\b|\b(?:können|könnten|könnt) (?:sie|ihr)\b[^.?\n]{0,80}\b(?:liefern|fertigen|"
    r"machen|herstellen|bauen|schicken)|\bhaben sie (?:da |dafür |so )?(?:etwas|was|einen?)\b|"
    r"\b(?:oana|einer|eine|zwei) (?:reicht|genügt)\b",
    r"\bbesoin d|\bcherch(?:e|ons)\b(?! (?:du|un) (?:travail|emploi|poste))|\bnous "
    r"(?:re)?cherchons\b|\bcommand(?:er|ons)\b|\bcommande (?:de|pour) (?:\d|un|deux)|\b(?:pouvez|"
    r"pourriez)[- ]vous [^.?\n]{0,60}\b(?:faire|fabriquer|fournir|proposer|livrer|réaliser|usiner)|"
    r"\bil (?:me|nous|m'en) (?:en )?fa(?:ut|udrait)\b|\bqu'il (?:me|nous) (?:en )?faut\b|"
    r"\bsouhait(?:e|ons|erais|erions) (?:acheter|"
    r"commander|recevoir|un)|\bavez[- ]vous (?:un|quelque chose|ça)|\b(?:me|nous) manque\b|\b(?:il "
    r")?nous en faut\b",
    r"\bnecesit(?:o|amos|aría|aríamos)\b|\b(?:queremos|quiero|queríamos|"
    r"deseamos|requerimos|requiero) (?:un|una|dos|tres|comprar|pedir|cotizar|\d)|"
    r"\bbusc(?:o|amos) (?!trabajo|empleo)|\bocup(?:o|amos) "
    r"(?!el puesto)|\b(?:pueden|podrían|podéis|puede|podría)[^.?\n]{0,60}\b(?:hacer|fabricar|"
    r"suministrar|servir)|\bquisiera\b|\bquerría\b|\bcomprar\b|\b(?:tienen|tenéis|tiene) (?:algo|"
    r"un|alguno)\b|\b(?:los|lo) tienen para\b|\bme hace falta\b|\bnos hace falta\b|\b(?:me|nos) "
    r"falta\b|\b(?:mánd|env[íi])\w*(?:me|nos) (?:un|otro|uno|dos)\b",
    r"\b(?:mi|ci|me ne|ce ne|ne) serv(?:e|ono|irebbe)\b|\bbisogno di\b|\bcerc(?:o|hiamo) "
    r"(?!lavoro)|\bordinare\b|"
    r"\b(?:potete|potreste|può|potrebbe) [^.?\n]{0,60}\b(?:fare|fornire|realizzare|costruire)|"
    r"\bvorre(?:i|mmo)\b(?! sapere)|\bavete (?:un|qualcosa|mandrin)|\b(?:mi|ci) manca(?:no)?\b",
    r"\bnodig\b|\bzoek(?:en)? (?:een|wij|ik)\b(?! baan)|\b(?:ik|wij|we) zoek|\b(?:willen?|graag|"
    r"wil ik) (?:\w+ ){0,2}bestellen\b|\b(?:kunt u|kunnen jullie|kun je)\b[^.?\n]{0,80}"
    r"\b(?:leveren|maken|aanbieden)|\b(?:hebben jullie|hebt u|heeft u|heb je)\b[^.?\n]{0,30}"
    r"\b(?:iets|een|zoiets)\b",
    # Whether there is one for a tube that is told, and what it would cost.
    r"\b(?:gibt es|gibt['’]?s|haben sie|habt ihr|hätten sie|hättet ihr|y a[- ]t[- ]il|existe[- ]"
    r"t[- ]il|avez[- ]vous|auriez[- ]vous|hay|tienen|tenéis|tendrían|c['’]è|avete|avreste|is er|"
    r"hebben jullie|heeft u|zijn er)\b[^.?\n]{0,40}\b(?:(?:biege)?dorne?|mandrins?|mandril(?:es)?|"
    r"mandrin[oi]|doorn(?:en)?)\b[^.?\n]{0,40}\d{1,3}(?:[.,]\d{1,2})?\s?[x×]\s?\d",
    r"\bwas (?:so )?(?:ein|der) (?:\w+ )?dorn (?:\w+ ){0,2}(?:kostet|kosten würde)\b|\bce que "
    r"coûte(?:rait)? (?:un|le) mandrin\b|"
    r"\bwat (?:zo'n|een|de) (?:\w+ )?doorn (?:\w+ ){0,2}kost\b|"
    r"\bne (?:vogliamo|voglio|vorremmo|prendiamo|prendo|ordiniamo) (?:un[oa]?|due|tre|\d)\b",
    # Whether it is made at all, and how an order would be told.
    r"\b(?:confirm|advise|say|tell (?:me|us)|know) (?:that |if |whether )?you (?:can|could|"
    r"would|are able to) (?:make|manufacture|supply|produce|offer|build|quote|provide)\b|"
    r"^\W*can do \.?\d[^?]{0,80}\?|\bis there (?:an?|any) (?:\w+ ){0,2}(?:mandrel|plug) "
    r"(?:available |in stock |to be had |on the shelf )?(?:in|for|to (?:fit|suit)) (?:an? )?"
    r"\.?\d|\bcould you make (?:me |us )?the (?:\w+ )?(?:tool|mandrel|plug|piece)\b",
    r"\b(?:je|nous) pass(?:e|erais?|erai|erions|erons|ons) commande d['’eu]|\bvous "
    r"faites (?:le|du|en|un|aussi le) \d[^.?\n]{0,60}\?",
    r"(?<!hace )\bfalta (?:s[óo]lo )?(?:el|un) mandril\b(?! en (?:el|la|mi|nuestr))|"
    r"(?<!¿)\bhacen? falta (?:un|dos|uno|\d)\b(?![^.\n]{0,80}\?)|"
    r"\bmanca (?:solo )?(?:il mandrino|l'anima)\b(?! nel)|"
    r"\bil ne manque (?:plus )?que (?:le|un) mandrin\b|"
    r"\bfehlt (?:nur|noch|nur noch) (?:der|ein) \w{0,10}dorn\b|\bontbreekt (?:alleen )?"
    r"nog (?:de|een) \w{0,4}doorn\b",
    r"\btarvitse(?:mme|n|isimme|isin)\b|\b(?:pyydämme|pyydän)\b[^.\n]{0,60}\btarjou\w*|"
    r"\b(?:ihtiyacımız|ihtiyacım) var\b|\bteklif\w*\b[^.\n]{0,24}\b(?:rica|istiyor|bekliyor|"
    r"talep|ver)\w*|\bpopt[áa]v(?:áme|ám|ka)\b|\bpotřebuj(?:eme|i)\b|\bpotřeboval[ia]? "
    r"by(?:chom|ch)\b|\bszükség(?:ünk|em) (?:van|lenne)\b|\b(?:ár)?ajánlatot\b[^.\n]{0,24}"
    r"\bkér\w*|\btrenger\b|\bvi skal bruge\b|\bavem nevoie\b",
    r"\bpotrzebuj|\bszuka(?:m|my)\b(?! pracy)|\bzamawia|\bchcę zamówić\b|\bbehöver\b|\bsöker\b"
    r"(?! jobb)|\bpreciso\b|\bprecisamos\b",
    r"\b(?:po|p\.o\.|purchase order) (?:is )?(?:attached|enclosed|to follow)\b|"
    r"\battached (?:is )?(?:our |a |the |my )?(?:po|p\.o\.)\b",
)  # fmt: skip

# Mandrels are counted: "one mandrel, thanks", "Zwei Stück Dorn", "Qty: 2".
COUNTS_TOOLS = (
    r"\b(?:just |only )?(?:the )?(?:one|two|three|four|a pair of|"
    r"(?<![\d.,/x×-])[1-9](?![.,/]\d| ?(?:clr|od|o\.d|wall|rad(?:ius)?|r|d|id|mm|in|inch"
    r"|ga|gauge|ft)\b))\b(?: \(?\w+\)?)? ?(?:off |"
    r"nos?\.? |pcs?\.? |ea\.? |x )?(?:of )?(?:\w+ )?mandre?i?ls?\b(?! (?:you|broke|has|have|we|"
    r"that|arriv|came|was))",
    r"\b(?:einen?|zwei|drei|\d) (?!jahre)(?:x |stk\.? |stück )?(?:\w+ )?\w{0,10}dorne?\b|\bstück "
    r"dorn\b|\b(?:un|deux|trois|\d) (?:seul )?mandrins?\b|"
    r"\b(?:un|dos|tres|\d) (?:solo )?mandril(?:es)?\b|"
    r"\b(?:un|due|tre|n\.? ?\d|\d) mandrin[oi]\b|\b(?:een|twee|drie|\d) doorn(?:en)?\b",
    r"\b(?:ein|zwei|drei|vier|fünf)mal \d[\d.,]* ?(?:mm )?[x×] ?\d|\b(?:one|two|three) times "
    r"\d[\d.,]* ?(?:mm )?[x×] ?\d",
    r"\b(?:qty|quantity|q'ty|stückzahl|quantité|cantidad|quantità|aantal|ilość|antal)\b",
    r"\b(?:\d|one|two|three) (?:off|no\.?|nos\.?|pcs?|pieces?|ea|each|sets?|units?|stk|stück|"
    r"st\.|pièces?|piezas?|unidades|uds?|pezzi|pz|stuks?|szt)\b|\bjust (?:the )?one\b|"
    r"\bx ?\d\b(?=\s*(?:please|pls|$))|\bone off\b|\b(?:dos|tres) unidades\b",
)  # fmt: skip

# A new one is wanted, whatever became of the old.
ANEW = (
    r"\binstead\b|\bstatt(?:dessen)?\b|\bà la place\b|\ben su lugar\b|\binvece\b|\bin plaats\b|"
    r"\b(?:new|another|replacement|neue[nrs]?|weitere[nr]?|nouveau|nouvelle|autre|nuev[oa]|otr[oa]|"
    r"nuov[oa]|altr[oa]|nieuwe?|nowy|nytt?|nov[oa]) ?(?:one|mandrel|dorn|mandrin|mandril|mandrino|"
    r"doorn)?\b",
)

# The heading of a request, where sizes follow: 'Consultation mandrins chaudière'.
ENQUIRY = (
    r"^\W*(?:re: )?(?:enquiry|inquiry|request|rfq|consultation|demande|anfrage|preisanfrage|"
    r"consulta|solicitud|richiesta|aanvraag|offerteaanvraag)\b[^.?!\n]{0,20}?"
    r"\b(?:mandrels?|\w{0,10}dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|anim[ae]|\w{0,4}doorn(?:en)?)"
    r"\b[^?]{0,40}$",
    r"\b(?:possible to (?:have|get)|possibile avere|(?:si può|posso|possiamo|potrei) avere|posible "
    r"(?:tener|conseguir|hacer)|possible d'(?:avoir|obtenir)|(?:pourrais|puis|peut)-(?:je|on) "
    r"avoir|mogelijk om|möglich,?|(?:mi|ci) fate|(?:can|could|may) (?:i|we) (?:have|get)) "
    r"(?:an? |un |un'|une |uno |einen? |een )(?:\w+ ){0,2}?"
    r"(?:mandrels?|\w{0,10}dorn|mandrin|mandril|mandrino|anima|\w{0,4}doorn)\b",
    # It has to come: "the mandrel (60.3 x 2, R 120) must be here by Friday".
    r"\b(?:mandrels?|they|it) (?:\([^()]{1,80}\) )?(?:must|should|has to|have to|needs? to) "
    r"(?:be (?:here|with us|on site|delivered|in our hands)|arrive|reach us)\b",
    r"\b(?:dorne?|er|sie) (?:\([^()]{1,80}\) )?(?:muss|müssen|soll|sollte|sollten|müsste|müssten)\b"
    r"[^.?!\n]{0,60}\b(?:hier sein|da sein|bei uns sein|eintreffen|geliefert werden)\b",
    r"\bmandrins? (?:\([^()]{1,80}\) )?(?:doit|doivent|devra|devront|devrait) "
    r"(?:être (?:ici|là|chez nous|livrés?)|arriver|nous (?:arriver|parvenir))\b",
    r"\bmandril(?:es)? (?:\([^()]{1,80}\) )?(?:debe|deben|tiene que|tienen que|debería|deberían) "
    r"(?:estar (?:aquí|en)|llegar)",
    r"\bmandrin[oi] (?:\([^()]{1,80}\) )?(?:deve|devono|dovrebbe|dovrebbero) "
    r"(?:essere (?:qui|da noi|consegnat[oi])|arrivare)\b",
    r"\bdoorn(?:en)? (?:\([^()]{1,80}\) )?(?:moet|moeten|zou|zouden)\b[^.?!\n]{0,60}"
    r"\b(?:hier zijn|binnen zijn|geleverd (?:zijn|worden)|aankomen)\b",
)  # fmt: skip

# Can it be done at all?
FEASIBLE = (
    r"\b(?<!what )(?:can|could|will|would|does) (?:(?:you|u|it|this|that|these|they|i|we|one|a|"
    r"the)\b|\.?\d)[^?!\n]{0,120}\b(?:bend|bent|bending|work|kink|wrinkle|collapse|crack|split|"
    r"survive|go (?:round|around|that tight)|fold|flatten|pull|be done|be made|hold|make it|manage|"
    r"be bent|do|fix it|help)\b",
    r"\bcan (?:you|u|ya|it|this) (?:do|bend|manage|handle|be)\b",
    r"\bcan(?:'t|’t|not) be done\b|\bcan (?:it|you|u)\?|\b(?:doable|feasible|possible|"
    r"realistic|achievable|too tight|too thin|any chance|a goer)\b(?=[^\n]{0,40}\?)",
    r"\bis (?:it|this|that|a|the|\d)[^.?!\n]{0,100}\b(?:possible|feasible|doable|"
    r"too (?:tight|thin|much)|realistic|ok|okay|achievable)\b",
    r"\b(?:machbar|möglich|biegbar|realisierbar|lässt sich|geht das|klappt)\b|\b(?:schaffen|"
    r"können) (?:sie|ihr)\b[^.?\n]{0,80}(?:biegen|rohr|radius)",
    r"\b(?:possible|réalisable|faisable|peut-on|arrive-t-on|tenable|jouable)\b",
    r"\b(?:posible|factible|se puede|viable)\b",
    r"\b(?:fattibile|possibile|si può|si riesce|realizzabile)\b",
    r"\b(?:haalbaar|mogelijk|gaat dat|lukt dat|te doen)\b",
    r"\b(?:możliwe|wykonalne|da się|możliwy)\b", r"\b(?:möjligt|går det)\b",
    r"\bhow tight\b|\bwhat(?:'s| is) the (?:tightest|smallest|minimum)\b",
)  # fmt: skip

# A shop is looked for, not a piece: with no size given they want to know what it can do.
SEEKS_SUPPLIER = (
    r"\b(?:looking|searching|hunting|shopping) for (?:an? |some )?(?:\w+ )?(?:supplier|"
    r"vendor|source|"
    r"shop|manufacturer|maker|place|company)s?\b|\b(?:need|seek|want)(?:ing)? (?:an? "
    r")?(?:new |second "
    r"|another )?(?:supplier|vendor|source)\b|\bsuche[n]? (?:wir |ich )?(?:\w+ ){0,2}(?:lieferant|"
    r"hersteller|zulieferer|anbieter)\w*\b|\b(?:re)?cherch\w+ (?:un |des )?(?:nouve\w+ )?"
    r"(?:fournisseur|fabricant)s?\b|\bbusc\w+ (?:un |nuevos? )*(?:proveedor|fabricante)\w*\b|"
    r"\bcerc\w+ (?:un |dei |nuovi? )*(?:fornitor|produttor)\w*\b|\bzoek\w* (?:wij |we |ik )?(?:een "
    r")?(?:nieuwe )?(?:leverancier|fabrikant)\w*\b",
)  # fmt: skip
