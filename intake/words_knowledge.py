"""Words that ask for a piece of knowledge rather than a tool, and those of the trade beside them.

Data only, in the shop's usual languages; from memory and from labelled messages.
"""

from __future__ import annotations

DO_I_NEED = (
    r"\b(?:do|does|would|will|should) (?:i|we|one|it|they) (?:\w+ )?(?:need|want|"
    r"require)\b|\b(?:when|why|at what point|in (?:which|what) cases?) (?:do|does|would) "
    r"(?:you|one|people)\b[^.?\n]{0,20}\b(?:need|want|require)\b",
    # "Ab welchem Wert brauche ich einen Dorn?" asks from where on, not for one.
    r"\b(?:(?:ab|bei|unter|bis zu) welche[mnrs]?|wann|warum|wofür|wozu)\b[^.?\n]{0,60}\b(?:brauch|"
    r"benötig)|^\W*(?:brauche|brauchen|braucht|benötige|benötigen) (?:ich|wir|man)\b",
    r"\b(?:à partir d[e'’] ?quel\w*|quand|pourquoi)\b[^.?\n]{0,40}\b(?:faut-il|faut|besoin)\b|"
    r"\b(?:ai-je|a-t-on|avons-nous) (?:\w+ )?besoin\b|\best-ce qu(?:'il|e j'ai|'on a) [^.?\n]{0,20}"
    r"(?:faut|besoin)\b",
    r"\b(?:a partir de qu[ée]|desde qu[ée]|cu[áa]ndo|por qu[ée])\b[^.?\n]{0,40}\b(?:necesit|hace "
    r"falta)|\b(?:da (?:quale?|che)|(?:a|da) quanto|quando|perché)\b[^.?\n]{0,40}\bserv(?:e|ono)\b",
    r"\b(?:vanaf|bij|onder) (?:welke?|wanneer)\b[^.?\n]{0,60}\bnodig\b|\b(?:wanneer|waarom) "
    r"heb\w*\b[^.?\n]{0,50}\bnodig\b|\bheb ik (?:\w+ ){0,3}doorn nodig\b|\bod (?:jakiego|jakiej|"
    r"kiedy)\b[^.?\n]{0,40}\bpotrzeb",
)

# The price as something already given: "is the price with or without the rod?"
PRICE_GIVEN = (
    r"\b(?:price|preis|prix|precio|prezzo|prijs)\b[^.?\n]{0,20}\b(?:with or without|includ\w+|mit "
    r"oder ohne|inkl\w*|comprend|compris\w*|avec ou sans|incluy\w+|inclu[iy]\w*|con o sin|con o "
    r"senza|met of zonder|inclusief)\b",
)

# A general question: it has an answer without any tube.
GENERAL = (
    r"\bwhat(?:'s|’s| is) (?:the |your )?(?:\w+ )?(?:largest|smallest|biggest|longest|shortest|"
    r"thinnest|thickest|heaviest|max(?:imum)?|min(?:imum)?)\b|\bwas ist (?:der|die|das|ihr\w*) "
    r"(?:größte|kleinste|dickste|dünnste)\w*\b|\bquels? (?:est|sont) (?:le|les|la) plus (?:gros|"
    r"petit|grand)\w*\b|\bcuál es (?:el|la) (?:\w+ )?(?:mayor|menor|máxim\w+|mínim\w+)\b|"
    r"\bqual è (?:il|la) (?:\w+ )?(?:massim\w+|minim\w+|più)\b|\bwat is (?:de|het|uw) "
    r"(?:grootste|kleinste|dikste|dunste)\b",
    # What it takes to ask for a price asks for none yet.
    r"\b(?:informations?|renseignements|données)\b[^.?\n]{0,40}\b(?:fournir|donner|besoin|faut|"
    r"nécessaires?|attendez)\b|\bwelche (?:angaben|daten|informationen|maße)\b|\bwas brauchen sie "
    r"(?:von|für|alles)\b|\bqué (?:datos|información|medidas)\b|\b(?:quali|che) (?:dati|"
    r"informazioni|misure)\b|\bwelke (?:gegevens|maten|informatie)\b|\bwat (?:hebben jullie|"
    r"heeft u|"
    r"hebt u) (?:allemaal )?nodig\b",
    r"\bextra\b[^.?\n]{0,30}\bhow much\b|\bhow much (?:extra|more|weight|clearance)\b",
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
    r"\bwhat(?: are|'re| am|'m)? (?:we|i) doing wrong\b|\bwhat could (?:cause|be causing)\b|"
    r"\bany idea "
    r"(?:why|what)\b|\bworan (?:kann|könnte|mag|liegt)\b|\bwas machen wir falsch\b|\bd'où (?:ça|"
    r"cela|"
    r"vien)|\bà quoi (?:c'est|est-ce|cela est) dû\b|\ba qué se debe\b|\bqué (?:hacemos|estamos "
    r"haciendo) mal\b|\b(?:da )?(?:che )?cosa (?:dipende|sbagliamo)\b|\bwaar (?:ligt|kan|zou) dat "
    r"(?:aan|liggen)|\bwat doen we (?:fout|verkeerd)\b|\bvad gör vi fel\b|\bco robimy źle\b",
    r"\bwall factor\b|\bd of bend\b|\bis it (?:really )?(?:true|right) (?:that|what)\b|"
    r"\brule ?books?\b|"
    r"\bwhat (?:is|does|exactly is) (?!going|an? new (?:one|mandrel)|(?:it|this|that|one) (?:going|"
    r"gonna)|happening|wrong|(?:your |the )?(?:\w+ )?(?:price|cost|delivery|lead ?time)|"
    r"(?:\w+ )?(?:run(?= ?(?:[?.!,;]|$|me\b|us\b|and\b|for\b))|set (?:me|us) back|come to|go for"
    r"|sell for|work out (?:at|to))|the "
    r"(?:price|cost|status|hold|"
    r"difference in price|wait)|your)|\bdifference between\b|\bexplain\b|\bclarify\b|\brule of "
    r"thumb\b|\bovality\b|\bspring ?back\b|\bthinning\b|\bhow (?:do|should|would|can) (?:i|we|you|"
    r"one) (?:measure|work|calculate|set|clean|store|polish|know|find|tell)\b",
    r"\bwhere (?:should|does|do) [^.?\n]{0,40}(?:sit|stand|mandrel|tangent)|"
    r"\bpast (?:the )?tangent\b|\bhow far\b|\bwhy (?:is|are|does|do|did|would|am)\b|"
    r"\bwhat causes\b|\bwhich (?:mandrel )?(?:material|lubricant|surface|standard|tolerance|"
    r"alloy|coating)\b|\bis there a standard\b",
    r"\b(?:do|did) you mean\b|\b(?:it|they|that|these) stands? for\b|\bis meant\b|\bgemeint\b|"
    r"\bmeinen sie\b|\bentendez-vous\b|\bveut dire\b|\bquiere[n]? decir\b|\bse entiende\b|"
    r"\b(?:cosa|che) intende(?:te)?\b|\bsi intende\b|\bvuol dire\b|\bbedoelt u\b|\bbedoeld\b|"
    r"\bwordt verstaan\b|\bco znaczy\b|\bis (?:that|this|it) the same(?: thing)?(?= and\b| or\b|"
    r"\W*[,?])|\bist das (?:das gleiche|dasselbe)\b|\best-ce la même chose\b|\bes lo mismo\b|\bè "
    r"la stessa cosa\b|\bis dat hetzelfde\b|\bhow (?:do|can|would) (?:i|we|you|one) (?:convert|get "
    r"from|go from)\b",
    r"\bwandfaktor\b|\bschmier|\bgleitmittel\b|\bstandzeit\b|\bwas (?:ist|bedeutet|heißt)\b|"
    r"\bunterschied\b|\berklär|\bwarum\b|\bwieso\b|\bab welche[mnr]\b|\bwie (?:weit|misst|"
    r"messe|lange hält)|\bwie viele (?:bögen|biegungen)\b|\brückfederung\b|\bovalität\b",
    r"\blubrifi|\bdurée de vie\b|\bqu(?:'est-ce|e signifie|elle est la différence)|\bdifférence\b|"
    r"\bpourquoi\b|\bexpliqu|\bovalisation\b|\bretour élastique\b|\bfacteur de paroi\b|\bcomment "
    r"(?:mesure|calcul|régler)",
    r"\blubrica|\bvida útil\b|\bqué (?:es|significa)\b|\bdiferencia\b|\bpor qué\b|"
    r"\bexplicar|\bovalidad\b|\bfactor de pared\b",
    r"\blubrifica|\bdurata\b|\bche cosa (?:è|significa)|\bcosa significa\b|\bdifferenza\b|"
    r"\bperché\b|\bspiegar|\bovalizzazione\b|\bfattore di parete\b",
    r"\bsmeer(?:middel|olie|t)?\b|\blevensduur\b|\bwat (?:is|betekent)\b|\bverschil\b|\bwaarom\b|"
    r"\buitleg|\bhoe (?:ver|meet|lang gaat)|\bwandfactor\b|\bovaliteit\b",
    r"\bco (?:to jest|oznacza)\b|\bróżnic|\bdlaczego\b|\bsmarow|\bvad (?:är|betyder)\b|"
    r"\bskillnad|\bvarför\b|\bsmörj",
)  # fmt: skip

# Words of the trade or of dealing with the shop: a question with one of these is for sales.
TRADE = (
    r"\bmandr|\bdorn|\bdoorn|\btrzpie|\bbend|\bbieg|\bcintr|\bcurv|\bpieg|\bbuig|\btub(?:e|es|ing|"
    r"o|i|os|es)\b|\bpipe|\brohr|\bbuis|\brur[aęy]|\b(?:the|a|my|our|your|this|same|new|bend|"
    r"pressure|wiper|clamp) dies?\b|\bdie ?sets?\b|\bwiper|\btool|\bwall\b|\bclr\b|\bradius|"
    r"\brayon|\braggio|\bradi(?:i|en|o)\b|\bkugel|\bbilles?\b|\bbolas?\b|\bsfere?\b|\bkogel|\bball|"
    r"\bshank|\bnose\b|\blinks?\b|\bpolish|\bgrit\b|\bplating|\bregrind|"
    r"\brod\b|\bthread|\bbronze|\bchrom|\bstainless|\balumin|\bsteel|\bedelstahl|\binox\b|"
    r"\bwerkzeug|\boutil|\butill|\bformer",
    r"\blead ?time|\bdeliver|\bship|\bprice|\bcost|\bpayment|\bterms\b|\bcards?\b|\bpaypal\b|"
    r"\bquote|\borders?\b|\bpurchase|\bnet \d\d\b|\baccept\b|\bminimum\b|\bstock\b|\bwarranty|"
    r"\bdiscount|\baccount\b|\bcatalog|\bopen(?:ing)? hours|\bvisit\b|\btour\b|\byour (?:shop|"
    r"works|plant|company|website|catalog)|\blieferzeit|\bpreis|\bzahlung|\bversand|\blieferung|"
    r"\bdélai|\bprix\b|\bpaiement|\blivr|\bplazo|\bprecio|\bpago|\benvío|\bprezz|\bpagament|"
    r"\bconsegna|\bspedi|\blevertijd|\bprijs|\bangebot|\bskonto|\brabatt|\boffre\b|\bdevis\b|"
    r"\boferta|\bofferta|\bofferte\b|\bmindermeng|\bmindestbestell|\bzuschlag|\bclosed\b|"
    r"\bbetriebsferien|\bgeöffnet|\bouverts?\b|\bferm[ée]|\babiert|\bcerrad|\baperti\b|\bchius|"
    r"\b(?:are|is|will) (?:you|the (?:works|shop|office|counter)) (?:be )?open\b|\bwhich carrier\b|"
    r"\b(?:can|could|may|do) (?:i|we|you|my driver) (?:still |also )?collect\b|\bcarrier only\b|"
    r"\babhol|\bafhalen|\brecoger\b|\bpick up\b|\britir|\bpreventiv|\bpresupuest|\bprijsopgave|"
    r"\bwycen|\bbetaling|\bverzend|\btermin|\bcen[ay]\b|\bkatalog|"
    r"\bcatálogo|\bsizes?\b|\bdrawing|\bsolid works|\bstep file",
)  # fmt: skip

ASKING = (
    r"\?|？",
    # Typed without the mark: "does the price include the rod adapter".
    r"^\W*(?:how|what|which|why|where|when|does|do|can|could|would|should|is|are) (?:the|a|an|"
    r"you|your|"
    r"i|we|it|this|that|they|long|many|much|far|often)\b",
    r"\b(?:could|can|would) you (?:please )?(?:tell|explain|advise|clarify|let me know|say|"
    r"help)\b|\b(?:please|kindly) (?:also )?(?:tell|explain|advise|clarify|let me know|"
    r"mention|say)\b|\bi(?:'d| would) like to (?:know|understand|ask)\b|\bi(?:'m|"
    r" am) wondering\b|\bi wonder\b|\bwondering (?:if|whether|what|how)\b|"
    r"\blet me know (?:if|whether|what|how)\b|\bhave a question\b|\bquick question\b|"
    r"\bneed (?:some )?advice\b|\b(?:wants?|needs?) to know\b",
    r"\b(?:bitte|könnten sie|können sie) [^.\n]{0,40}(?:erklären|mitteilen|sagen)|"
    r"\bich (?:wüsste gern|würde gerne wissen|möchte wissen)|\bj'aimerais savoir|"
    r"\bpourriez-vous (?:m'|nous )?(?:expliquer|dire|indiquer)|\bme gustaría saber|"
    r"\bvorrei sapere|\bik (?:zou|wil) graag weten|\bchciał(?:bym|abym) (?:wiedzieć|zapytać)",
)  # fmt: skip
