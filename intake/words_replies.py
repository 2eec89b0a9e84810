"""Words that reply to us: our offer taken, turned down or thought over, thanks, news of what came.

Data only, as in ``words_elsewhere``, which tells what the weights mean; here 5 tells the errand by
itself, and 2 is enough only where nothing is asked for. Matched without regard to case.
"""

from __future__ import annotations

from .words_elsewhere import Elsewhere

REPLIES: tuple[Elsewhere, ...] = (
    Elsewhere("an answer to our offer", (
        # Only politeness where a question follows.
        (2, r"\b(?:thanks|thank you|thx|ta|cheers) for (?:the|your|that|sending|"
            r"getting)\b[^.?\n]{0,25}\b(?:quote|price|quotation|offer|number|pricing)\b|\b(?:danke|"
            r"dank) für (?:das|ihr|euer) angebot\b|\bmerci pour votre (?:offre|devis)\b|\bgracias "
            r"por (?:la|el|su|vuestra) (?:oferta|cotización|presupuesto)\b|\bgrazie per "
            r"l'offerta\b|\bbedankt voor (?:de|uw) offerte\b"),
        (4, r"\b(?:got|received|have|reviewed) (?:the|your) (?:quote|quotation|offer|price)\b|"
            r"\byour (?:quote|quotation|offer)\b[^.?\n]{0,50}\b(?:received|noted|arrived|under "
            r"review|accepted|approved)\b"),
        (4, r"\b(?:we'll|i'll|we will|going to|have to|gonna) pass\b|\bwent (?:with (?:some|a diff|"
            r"another|your comp)|elsewhere\b)|\btoo (?:rich|expensive|high|dear|steep) for\b|"
            r"\bfound (?:one|it|another) (?:cheaper|elsewhere|in)\b|\bwent to (?:a|another|your) "
            r"(?:compet|\w+ shop)|\bwon['’]?t be needing\b|\bno longer (?:need|require|wanted)|"
            r"\b(?:talk to|discuss with|run it by|check with|ask) (?:the|my|our) (?:boss|customer|"
            r"team|wife|engineer)|\bcustomer (?:pulled|cancel|dropped|lost)|\bjob (?:is|was|got) "
            r"(?:off|cancel|dead)|\bplease proceed\b|\blooks good\b"),
        (5, r"\b(?:go|going) ahead (?:with|and make|on)\b|\bas (?:quoted|offered)\b|\bper (?:your|"
            r"our) (?:quote|quotation|offer)\b|\bwie angeboten\b|\bgemäß (?:ihrem )?angebot\b|"
            r"\bbon pour accord\b|\bselon votre (?:offre|devis)\b|\bsegún (?:su|vuestra) (?:oferta|"
            r"cotización)\b|\bconforme alla vostra offerta\b|\bconform uw offerte\b|\bakkoord\b|"
            r"\b(?:we|i) accept\b|\bmatch (?:it|that|their)\b"),
        (4, r"\b(?:hiermit |gerne |dann )?bestellen wir\b|\bwir bestellen (?:hiermit|gerne|wie)\b|"
            r"\b(?:nous )?(?:vous )?(?:commandons|passons commande)\b|\b(?:ordiniamo|procediamo "
            r"con l'ordine)\b|\b(?:hacemos|confirmamos) el pedido\b|\b(?:bestellen wij|"
            r"wij bestellen)\b|\bwe (?:hereby |would like to |'d like to )?(?:place (?:the|an)"
            r"|confirm (?:the|our)) order\b"),
        (2, r"\brevert\b|\bget back to you\b|\blet you know\b|\bthink(?:ing)? it over\b"),
        (4, r"\banderweitig (?:vergeben|bestellt)|\bleider zu teuer\b|\bwir melden uns\b"),
    )),
    Elsewhere("thanks or news, with nothing asked", (
        (3, r"\b(?:arrived|came|received|got (?:it|them|the|here)|turned up|"
            r"landed(?! in\b)|showed up)\b"
            r"[^.?\n]{0,60}\b(?:thanks|thank you|great|perfect|fine|today|yesterday|safely|ok|"
            r"good|in|on \w+day)\b|\bparcel came\b|\bgot (?:the|my|our) [^.?\n]{0,20}\b(?:today|"
            r"yesterday|in)\b"),
        (3, r"\bworks? (?:great|perfectly|well|a treat|like a charm|fine)\b|\b(?:slid|fits?|went) "
            r"(?:right |straight |perfectly|like a)|\bcame out (?:like|great|perfect|beautiful)|"
            r"\b(?:great|nice|lovely|excellent|top|beautiful|good) (?:job|work|service|tool|tool"
            r"ing)\b|\bowe you one\b|\bhappy with\b"),
        (2, r"\bhappy (?:holidays|new year|christmas|easter)\b|\bmerry christmas\b|\bfrohe "
            r"weihnachten\b|\bjoyeux noël\b|\bfeliz navidad\b|\bbuon natale\b|\bprettige (?:kerst|"
            r"feestdagen)|\bthanks? (?:again )?for (?:the|your) (?:quick|fast|help|call|visit|tour|"
            r"service|great)\b"),
        (3, r"\bno (?:reply|action) (?:needed|necessary|required)\b|\bjust (?:to say|wanted to "
            r"(?:say|thank))\b|\bnothing (?:is )?(?:wanted|needed) (?:at present|right now|"
            r"for now)\b|\bwith thanks\b"),
        (3, r"\bist (?:heute |gestern |gut )?(?:angekommen|gekommen|da)\b|\bpasst (?:perfekt|wie|"
            r"super)\b|\bbien (?:reçue?(?! votre)|arrivée?)\b|\b(?:ha |"
            r"nos )?lleg(?:ó|ado) (?:bien|ayer|hoy|perfecto)|\bè arrivat[oa]\b|"
            r"\btutto (?:bene|ok|perfetto)\b|\bgoed (?:ontvangen|aangekomen)\b|\bpast perfect\b"),
    )),
)  # fmt: skip
