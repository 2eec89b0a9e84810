"""Messages that only ask: what a mandrel costs in general, or of one that was delivered.

Words of buying stand in them ('so don't quote anything', 'against our PO'), but nothing is bought.
"""

from __future__ import annotations

import re

from .late_pattern import late_pattern

_NOT_TO_QUOTE = late_pattern(
    r"\b(?:do not|don't|dont|no need to|not necessary to|needn't|please don't|you don't have to) "
    r"(?:\w+ )?(?:quote|price|offer|make (?:me |us )?(?:a quote|an offer))\b"
    r"|\b(?:don't|dont|don’t|do not) (?:\w+ )?(?:need|want) (?:anything|nothing|any|one) "
    r"(?:making|made|new|quoted|quoting)\b|\b(?:brauche|brauchen|möchte|möchten) (?:ich |wir )?"
    r"(?:nichts neues|keinen neuen)\b|\bje n'ai besoin de rien\b|\bno necesito (?:nada|que me "
    r"haga\w*)\b|\bnon (?:mi|ci) serve (?:niente|nulla)\b|\b(?:hoef|hoeven) (?:niets|geen) nieuws\b"
    r"|\b(?:not|n't) (?:yet )?(?:\w+ )?(?:asking for|looking for|after|needing|need|want) "
    r"(?:a |any |an )?(?:quote|quotation|offer|price)s?\b"
    r"|\bno (?:quote|quotation|offer) (?:needed|required|necessary|yet|please)\b"
    r"|\bnot (?:yet )?(?:ready|looking|planning|going|about|in a position) to (?:order"
    r"|buy|purchase)\b"
    r"|\bnot (?:ordering|buying)\b(?! from)|\bbefore i (?:order|buy) anything\b"
    r"|\b(?:have not|haven't) (?:yet )?(?:decided|settled|chosen) (?:on )?(?:a |the |any "
    r"|what |which )?"
    r"(?:tube|size|material|tubing)"
    r"|\b(?:noch )?kein angebot (?:nötig|notwendig|erforderlich|erstellen|machen|schicken)\b"
    r"|\b(?:brauche|brauchen|benötige|möchte|möchten) (?:ich "
    r"|wir )?(?:noch )?(?:kein angebot|nichts bestellen)"
    r"|\bnoch nichts (?:bestellen|kaufen)\b|\b(?:nicht|noch nicht) (?:bestellen|kaufen)\b"
    r"|\bpas (?:besoin )?de devis\b|\bpas (?:encore )?(?:prêts? à )?(?:commander|acheter)\b"
    r"|\bno (?:hace falta|necesito|necesitamos|quiero) (?:cotizar|que coticen|cotización"
    r"|presupuesto|oferta)"
    r"|\btodavía no (?:voy|vamos) a (?:comprar|pedir)\b"
    r"|\bnon (?:serve|mi serve|ci serve) (?:un |una |ancora )*(?:preventivo|offerta)\b"
    r"|\bnon (?:ordin\w+|compr\w+) (?:ancora|per ora)\b"
    r"|\b(?:nog )?geen offerte (?:nodig|maken)\b|\bnog (?:niet|niets) (?:bestellen|kopen)\b"
    r"|\bnot in the market (?:yet|at the moment|right now|for)\b"
    r"|\b(?:have not|haven't) (?:yet )?(?:bought|ordered) (?:any |the )?(?:tub(?:e|ing)|pipe)\b"
    r"|\bne (?:veux|voulons) rien (?:acheter|commander)\b"
    r"|\bno (?:quiero|queremos) (?:comprar|pedir) (?:nada|todavía|aún)\b"
    r"|\bnon (?:voglio|vogliamo) (?:ancora )?(?:comprare|ordinare)\b",
    re.IGNORECASE,
)
_CURIOUS = late_pattern(
    r"\b(?:just|only|merely|simply|more) curious\b|\b(?:out of|pure|idle) curiosity\b"
    r"|\bnur neugierig\b|\baus (?:reiner )?neugier\b|\b(?:par|simple) curiosité\b"
    r"|\b(?:por|es|mera|pura) curiosidad\b|\b(?:per|solo|pura) curiosità\b"
    r"|\b(?:gewoon|alleen|uit) nieuwsgierig(?:heid)?\b",
    re.IGNORECASE,
)
_OF_PRICE = late_pattern(
    r"\b(?:pric\w+|quot\w+|costs?|how much|preis\w*|kost\w*|angebot\w*|prix|devis|combien|precio\w*"
    r"|cuesta\w*|presupuesto|prezz\w+|preventivo|costa\w*|prijs\w*|offerte)\b",
    re.IGNORECASE,
)
_QUOTE_AFTER_ALL = late_pattern(
    r"\b(?:please|pls|can you|could you|kindly|bitte|merci de|por favor) (?:\w+ ){0,2}"
    r"(?:quote|price|offer|anbieten|chiffrer|cotizar|quotare)\b",
    re.IGNORECASE,
)
_DELIVERED = late_pattern(
    r"\b(?:received|got|arrived|delivered|bought|purchased|supplied|fitted|in use|in service)\b"
    r"|\b(?:erhalten|geliefert(?:e[nrs]?)?|gekauft|bekommen|angekommen|im einsatz)\b"
    r"|\b(?:reçu|livrée?|acheté|fourni)\b|\b(?:recibi\w+|entregad[oa]|comprad[oa]|suministrad[oa])\b"
    r"|\b(?:ricevut[oa]|consegnat[oa]|acquistat[oa]|fornit[oa])\b|\b(?:ontvangen|geleverde?|gekocht)\b",
    re.IGNORECASE,
)
_MANDREL = late_pattern(
    r"\b(?:mandrels?|mandrills?|\w{0,12}dorne?n?|mandrins?|mandril(?:es)?|mandrin[oi]|\w{0,6}doorn(?:en)?)\b",
    re.IGNORECASE,
)
_WANTS_TO_KNOW = late_pattern(
    r"\b(?:wants?|would like|need|needs|like) to know\b|\bquestions?\b|\bquer(?:y|ies)\b|\?"
    r"|\bplease (?:advise|clarify|explain|tell)\b|\bclarif\w+|\b(?:möchte[n]?|würde[n]?"
    r"|will|wollen) "
    r"[^.?!\n]{0,20}wissen\b|\bfragen?\b|\b(?:voudra\w+|souhait\w+|aimera\w+) savoir\b|\bprécis\w+"
    r"|\b(?:quiere|quisiera|querríamos|desea) saber\b|\bvorre\w+ sapere\b|\b(?:wil"
    r"|wil[l]en) [^.?!\n]{0,12}weten\b",
    re.IGNORECASE,
)
_TECHNICAL = late_pattern(
    r"\bhardness\b|\bplat(?:ing|ed)\b|\bre-?(?:plat|chrom|grind|ground|sharp|condition|polish|work|build)\w*"
    r"|\bcoat(?:ing|ed)?\b|\bbase material\b|\bhow many bends\b|\bguaranteed?\b"
    r"|\bwears?\b|\blife(?:time)?\b"
    r"|\blubric\w+|\bgrease\b|\bclean(?:ing|ed)?\b|\bstor(?:e|ed|age)\b|\btorque\b"
    r"|\bset ?up\b|\badjust\w*"
    r"|\bposition\w*|\bmaintenance\b|\bserviced?\b|\bspare (?:balls?|links?|parts?)\b"
    r"|\bsurface finish\b"
    r"|\bhärte\b|\bbeschicht\w+|\bverchrom\w+|\bschmier\w+|\bfett\b|\bstandzeit\b|\bverschleiß\b|\bwartung\b"
    r"|\beinstell\w+|\bnachschleifen\b|\baufarbeiten\b|\bdureté\b|\brevêtement\b|\bchrom\w+|\bgraiss\w+"
    r"|\busure\b|\bentretien\b|\brégl\w+|\bdureza\b|\brecubrimiento\b|\bcromad\w+|\blubric\w+|\bdesgaste\b"
    r"|\bmantenimiento\b|\bdurezza\b|\brivestimento\b|\bcromat\w+|\blubrific\w+|\busura\b|\bmanutenzione\b"
    r"|\bhardheid\b|\bcoating\b|\bverchroomd\b|\bsmeren\b|\bslijtage\b|\bonderhoud\b",
    re.IGNORECASE,
)
_OTHER_BUSINESS = late_pattern(
    r"\b(?:late|overdue|wrong|damag\w+|broken|broke|crack\w+|scratch\w+|return|refund|credit|invoice|pay\w*"
    r"|paid|track\w+|shipp\w+|ship|status|cancel\w*|complain\w*|replace\w*|missing|short|reject\w*|ncr"
    r"|falsch|beschädigt|defekt|reklam\w+|rechnung|gutschrift|storn\w+|gebrochen|facture|avoir|cassé|réclam\w+"
    r"|abîmé|factura|roto|dañad\w+|reclam\w+|devol\w+|fattura|rotto|danneggiat\w+|reso|factuur|kapot|klacht)\b",
    re.IGNORECASE,
)


_SERVICE = late_pattern(
    r"\b(?:do|can|could|would|will) (?:you|u|y'all)(?: guys| folks)?(?: also| ever| still"
    r"| please)? "
    r"(?:regrind|re-?chrome|re-?plate|repair|refurbish|resharpen|sharpen|recondition|re-?polish)\b"
    r"|\b(?:schleift ihr|schleifen sie|verchromen sie|verchromt ihr|repariert ihr|reparieren sie"
    r"|überholen sie|überholt ihr)\b"
    r"|\b(?:rectifiez|réparez|rechromez|réaffûtez|réusinez)[- ]vous\b"
    r"|\b(?:rectifican|reparan|recroman|reafilan)\b|\b(?:rettificate|riparate|ricromate|riaffilate)\b"
    r"|\b(?:slijpen|repareren|verchromen|reviseren) (?:jullie|u)\b",
    re.IGNORECASE,
)


_NEW_TOO = late_pattern(
    r"\b(?:need|want|quote|price for|brauche\w*|benötig\w*|besoin|necesit\w+|serv[eo]\w*|nodig)\b"
    r"[^.?!\n]{0,40}\b(?:new|neuen?|nouveaux?|neufs?|nuev[oa]s?|nuov[oi]|nieuwe?)\b",
    re.IGNORECASE,
)


def asks_of_service(text: str) -> bool:
    """Whether it asks whether mandrels are put in order again: 'do you regrind mandrels, and what
    would it cost compared to a new one?' wants no new one yet."""
    return (
        "?" in text
        and _SERVICE.search(text) is not None
        and _MANDREL.search(text) is not None
        and _NEW_TOO.search(text) is None
        and _OTHER_BUSINESS.search(_SERVICE.sub(" ", text)) is None
    )


def wants_no_quotation(text: str) -> bool:
    """Whether the sender says that nothing is to be quoted or bought yet."""
    return _NOT_TO_QUOTE.search(text) is not None and _QUOTE_AFTER_ALL.search(text) is None


def is_only_curious(text: str) -> bool:
    """'Not looking to buy yet, just curious', and no price is asked."""
    return _CURIOUS.search(text) is not None and _OF_PRICE.search(text) is None


_MADE_BY_YOU = late_pattern(
    r"\b(?:you|y'all|ye|ya)(?: guys| folks)? (?:made|built|supplied|sent|sold|did)\b"
    r"|\b(?:our|my|your) (?:\w+ )?mandrel\b|\b(?:unser|euer|ihr|mein) \w{0,12}dorn\b"
    r"|\bd(?:en|ie) (?:ihr|sie) (?:uns|mir|für uns)\b|\bque vous (?:nous|m['’])|\bvotre mandrin\b"
    r"|\bque nos (?:hicieron|hicisteis|enviaron|suministraron)\b|\b(?:su|vuestro) mandril\b"
    r"|\bche ci avete\b|\bil vostro mandrino\b|\bdie (?:jullie|u) (?:voor )?(?:ons|mij)\b"
    r"|\b(?:jullie|uw) doorn\b",
    re.IGNORECASE,
)
_RUNS_ODDLY = late_pattern(
    r"\b(?:lub(?:e|ed|ing|ricant|rication)|grease|worn|wears?|wear(?:ing)? out|squeak\w*|squeal\w*"
    r"|chatter\w*|vibrat\w+|noise|noisy|leaves? (?:a |some )?(?:line|mark|scratch)\w*|loose)\b"
    r"|\b(?:quietsch\w*|rattert?|vibriert|schmier\w+|verschlissen|verschleiß|abgenutzt|locker)\b"
    r"|\b(?:grince\w*|vibre|lubrifi\w+|graiss\w+|usée?|usure)\b"
    r"|\b(?:chirría|rechina|vibra|lubric\w+|gastad[oa]|desgaste)\b"
    r"|\b(?:cigola|stride|lubrific\w+|usurat[oa]|usura)\b"
    r"|\b(?:piept|trilt|smer\w+|smeer\w*|versleten|slijtage)\b",
    re.IGNORECASE,
)
_NOTHING_WRONG = late_pattern(
    r"\b(?:nothing|not|isn['’]t|nichts|rien|nada|niente|niets)(?:['’]s| is)? (?:\w+ )?"
    r"(?:wrong|complain\w*|falsch|a complaint)\b",
    re.IGNORECASE,
)


def asks_of_running(text: str) -> bool:
    """Whether it asks why a mandrel of ours runs as it does, and says that nothing is to be quoted:
    'it squeaks when it pulls out. Is the link worn? No need to quote anything.'"""
    return (
        "?" in text
        and wants_no_quotation(text)
        and _MADE_BY_YOU.search(text) is not None
        and _RUNS_ODDLY.search(text) is not None
        and _OTHER_BUSINESS.search(_NOTHING_WRONG.sub(" ", text)) is None
    )


def asks_of_delivered(text: str) -> bool:
    """Whether it asks something technical of a mandrel that has come: its plating, its wear.

    Nothing of a complaint, an invoice or a delivery may stand beside it.
    """
    return (
        _MANDREL.search(text) is not None
        and _DELIVERED.search(text) is not None
        and _TECHNICAL.search(text) is not None
        and _WANTS_TO_KNOW.search(text) is not None
        and _OTHER_BUSINESS.search(text) is None
    )
