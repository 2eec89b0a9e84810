"""Words that say no tooling is wanted: a request taken back, or tube bought without any bending.

Data only, as in ``words_elsewhere``, which tells what the weights mean. Such mail names a size, and
often the very words of a request. Matched without regard to case.
"""

from __future__ import annotations

from .words_elsewhere import Elsewhere

_REQUEST = r"(?:request|enquiry|inquiry|rfq|quote request|quotation request|e-?mail of)"
_BUT_TOOL = r"(?:(?!mandr|dorn|doorn|\banim[ae]\b)[^.?\n])"
"""What may stand before a length of tube: '1 Dorn für 10 m Rohr' wants a mandrel."""
_OUR = r"(?:my|our|the|that|this|yesterday's|monday's|last week's)"
_NOT_ALL = (
    r"(?!\s(?:(?:for|on|the|any|a|us|me|this|that|those|lines?|items?|pos)\s)*(?:delivery|shipping"
    r"|freight|carriage|postage|lead|dies?|wipers?|rods?|vat|tax|tub|pipe|material|bend|labou?r"
    r"|install|\d|first|second|third|last|other|small|big|large)"
    r"|\s(?:the|that)\s(?:\w+\s){0,2}\w+,?\s(?:as |since |because )?(?:we|i)(?:['’]ve)?\s"
    r"(?:already\s)?(?:have|got|own)\b)"
)
"""'No need to quote delivery', 'no need to price line 3', 'no need to quote the downpipe, we have
that one' take back no request."""

UNWANTED: tuple[Elsewhere, ...] = (
    Elsewhere("a request taken back", (
        (10, r"\b(?:withdraw|retract|cancel|take back|pull)\w* (?:" + _OUR + r" )?(?:\w+ "
             r"){0,2}" + _REQUEST + r"\b|\b" + _OUR + r" (?:\w+ ){0,2}" + _REQUEST +
             r"\b[^.?\n]{0,60}\b(?:is|are|was|has been|can be) (?:\w+ )?(?:withdrawn|cancel+ed|"
             r"obsolete|void|dead|settled|no longer (?:needed|required|valid)|closed|filed)\b|"
             r"\b(?:no need to|don['’]?t bother to|you needn['’]?t|(?:please )?(?:don['’]?t|do not)"
             r" bother(?: to)?) (?:quote|price|quoting|pricing)\b" + _NOT_ALL),
        (10, r"\banfrage\b(?=[^?]{0,80}\b(?:ziehe[n]? (?:wir|ich)\b[^.?\n]{0,20}(?<!nicht "
             r")\bzurück|"
             r"zurück(?:ziehen|nehmen|gezogen)|hinfällig|gegenstandslos|erledigt|storniere?n?|"
             r"nicht mehr (?:aktuell|nötig|weiter)))|\b(?:ziehe[n]?|nehme[n]?) (?:wir |ich )?"
             r"(?:unsere|meine|die) (?:\w+ )?anfrage\b[^.?\n]{0,40}(?<!nicht )\bzurück|\bkein "
             r"angebot "
             r"(?:mehr )?(?:\w+ )?(?:erstellen|abgeben|ausarbeiten|schicken|machen|nötig)\b|"
             r"\bbrauch\w* (?:wir |ich )?(?:doch )?kein angebot\b|\bziehe[n]? (?:wir|ich) "
             r"(?:hiermit )?"
             r"zurück\b"),
        (10, r"\b(?:annul|retir)\w*\b[^.?\n]{0,20}\b(?:notre|ma|la) demande\b|\b(?:notre|ma) "
             r"demande\b[^.?\n]{0,60}\b(?:annulée|caduque|sans objet|plus d'actualité)|\bplus "
             r"besoin (?:de |d'un )(?:devis|offre|prix)\b|\b(?:anul|cancel|retir)\w*\b"
             r"[^.?\n]{0,20}\b(?:nuestra|mi|la) (?:solicitud|consulta|petición)\b|\b(?:nuestra|mi) "
             r"(?:solicitud|consulta)\b[^.?\n]{0,60}\b(?:anulada|cancelada|sin efecto)\b|\bya no "
             r"(?:necesit\w+|hace falta) (?:el |la )?(?:presupuesto|oferta|cotización|precio)\b"),
        (10, r"\b(?:annull|ritir)\w*\b[^.?\n]{0,20}\b(?:nostra|mia|la) richiesta\b|\b(?:nostra|"
             r"mia) richiesta\b[^.?\n]{0,60}\b(?:annullata|ritirata|da annullare|superata)\b|"
             r"\bnon (?:serve|ci serve|mi serve) più (?:il |l')?(?:preventivo|offerta)|"
             r"\baanvraag\b[^.?\n]{0,60}\b(?:intrekken|ingetrokken|vervalt|vervallen|trekken we "
             r"in|niet meer nodig)\b|\btrek(?:ken)? (?:wij |we |ik )?(?:hierbij )?(?:onze|mijn|de) "
             r"(?:\w+ )?aanvraag\b[^.?\n]{0,40}\bin\b|\bgeen offerte meer\b"),
    )),
    Elsewhere("tube alone, without tooling", (
        (6, r"\bjust (?:the|some) (?:tube|tubing|pipe|material)s?\b(?=[^.?\n]{0,40}\b(?:no|not|"
            r"please|thanks)\b|\W*$)|(?<!upper )(?<!lower )(?<!inner )(?<!outer )(?<!first )"
            r"(?<!second )(?<!smaller )(?<!bigger )\b(?:tube|tubing|pipe|material) only\b"
            r"|\bno (?:bending|bends)(?:,| and| or| nor)[^.?\n]{0,12}\b(?:no )?(?:tooling|"
            r"mandrels?)\b|\bno (?:tooling|"
            r"mandrels?)(?:,| and| or| nor)[^.?\n]{0,12}\b(?:no )?bending\b|\bnur (?:das|die|"
            r"gerade\w*) rohre?\b(?=[^.?\n]{0,40}\b(?:kein|ohne|bitte)|\W*$)|\bjuste? (?:le|les|"
            r"du) tubes?\b(?=[^.?\n]{0,40}\b(?:pas|sans)\b|\W*$)|\bsolo (?:el|los) tubos?\b"
            r"(?=[^.?\n]{0,40}\bsin\b|\W*$)|\bsolo (?:il|i) tub[oi]\b(?=[^.?\n]{0,40}\bsenza\b|"
            r"\W*$)|\balleen (?:de|het) (?:buis|buizen)\b(?=[^.?\n]{0,40}\b(?:geen|zonder)\b|"
            r"\W*$)"),
        (6, r"\b(?:quote|price|pricing|need|buy|order|sell|want|supply|cost)\b(?: "
            r"(?!mandr)\w+){0,3} "
            r"[\d.,]+ ?(?:ft|foot|feet|'|lengths?|sticks?|joints?|bars|metres?|meters?|mtrs?|m|kg|"
            r"lbs?|tons?|tonnes?)\b(?: long)?(?: of)?\b[^?\n]{0,40}\b(?:tube|tubing|pipe|dom|"
            r"erw|hrew|4130|304l?|316l?)\b(?![^.?\n]{0,20}\bmandrel)"),
        (6, r"\b(?:angebot|preis|benötig\w*|brauche\w*|bestelle\w*|liefern)\b" + _BUT_TOOL +
            r"{0,30} "
            r"[\d.,]+ ?(?:m|meter|lfm|stangen|kg)\b[^.?\n]{0,30}\w*rohre?\b(?!\w*dorn)|\b(?:prix|"
            r"devis|besoin)\b" + _BUT_TOOL + r"{0,20} [\d.,]+ ?(?:m|mètres|barres|kg) de tubes?\b|"
            r"\b(?:precio|oferta|necesit\w+)\b" + _BUT_TOOL +
            r"{0,20} [\d.,]+ ?(?:m|metros|barras|kg) de "
            r"tubos?\b|\b(?:prezzo|preventivo|offerta|serv\w+)\b" + _BUT_TOOL +
            r"{0,20} [\d.,]+ ?(?:m|metri|"
            r"barre|kg) di tub[oi]\b|\b(?:prijs|offerte|nodig)\b" + _BUT_TOOL +
            r"{0,20} [\d.,]+ ?(?:m|meter|"
            r"lengtes|kg) buis\b"),
    )),
)  # fmt: skip
