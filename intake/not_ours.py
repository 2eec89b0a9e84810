"""Four errands that name a size and ask for no mandrel: a bending machine looked for, an order
that is cancelled, a request that is taken back, and mail of ours that came to the wrong person.

Each is told only where nothing else in the words could be a request.
"""

from __future__ import annotations

import re

from . import words_errand
from .late import Late
from .late_pattern import late_pattern

_TOOL = Late(words_errand.TOOL)
_IN_SENTENCE = r"(?:[^.?!\n]|\.\d)"

_BENDERS = (
    r"(?:(?:tube |pipe |tubing |mandrel |rotary |bending )*(?:benders?\b(?! (?:die|tool|oper|hand))"
    r"|bending machines?)|floor models?)"
)
_MACHINE_SOUGHT = Late(
    (
        r"\b(?:do|did|would) (?:you|u|ya|y'all)(?: guys| folks)?(?: also| even| ever)? "
        r"(?:sell|stock|carry|make|supply|deal in|do|have|rent)(?: \w+){0,3}? " + _BENDERS,
        r"\b(?:looking for|looking to buy|after|in the market for|need|want(?: to buy)?"
        r"|shopping for"
        r"|price (?:on|for|of)|quote (?:on|for|us|me)|interested in(?: buying)?)(?: (?:an?|one|the"
        r"|some|new|used|complete|good|second-hand|hydraulic|manual|electric|cnc|decent|of|your"
        r"|another|bigger|smaller|whole)){1,4} " + _BENDERS,
        r"\b(?:verkauf\w+|habt|haben|such\w*|biete[tn]|brauch\w*|liefer\w*|führ\w+|vertreib\w+)\b"
        r"(?: [\w-]+){0,5} \w*biege(?:maschinen?|geräte?|apparate?)\b",
        r"\b(?:vendez|vendent|cherch\w+|proposez|fournissez|avez)(?:[- ]vous)?(?: [\w-]+){0,4} "
        r"(?:cintreuses?|machines? (?:à|de) cintrage|machines? à cintrer|machine capable de cintr)",
        r"\b(?:vend\w+|busc\w+|tien\w+|ofrec\w+|necesit\w+|fabric\w+)(?: [\w-]+){0,3} "
        r"(?:dobladoras?|curvadoras?|máquinas? (?:de|para) (?:doblar|curvar))\b",
        r"\b(?:vend\w+|cerc\w+|avete|fornite|tratt\w+)(?: [\w-]+){0,3} "
        r"(?:curvatubi|curvatrici|curvatrice|piegatubi|piegatrici|piegatrice)\b",
        r"\b(?:verkop\w+|verkoop\w*|zoek\w*|lever\w+|hebben|heeft|verkrijg\w+)(?: [\w-]+){0,4} "
        r"(?:\w*buigmachines?|\w*buigbanken?|buigapparaten|buigapparaat|buizenbuigers?)\b",
    )
)
_FOR_A_MACHINE = re.compile(
    r"\b(?:for|on|into|fits?|für|pour|para|per|voor|zu|op|sur) (?:[\w'’-]+ ){0,3}$", re.IGNORECASE
)
"""'For a used bender we bought': what is wanted is something for it."""
_OF_A_BENDER = re.compile(
    r"\b(?:mandrel|mandrin|dorn\w{0,3})[- ]?(?:tube |pipe |style |type )*(?:bend(?:ers?"
    r"|ing machines?)"
    r"|biege\w*)\b|\bcintreuses? à mandrin\b|\bcurvadoras? (?:con|de) mandril\b"
    r"|\bcurvatubi (?:con|a) mandrino\b|\bdoornbuig\w*",
    re.IGNORECASE,
)
"""'A mandrel bender' is a machine."""
_OWN_MACHINE = late_pattern(
    r"\b(?:our|my|unsere?[nmrs]?|meine?[nmrs]?|notre|nos|ma|nuestra|mi|nostra|mia|onze|mijn) "
    r"(?:[\w-]+ ){0,2}(?:bender|machine|\w*biegemaschine|cintreuse|dobladora|curvadora"
    r"|curvatubi|curvatrice|piegatrice|\w*buigmachine)\b",
    re.IGNORECASE,
)

_ORDER = (
    r"(?:order|po\b|p\.o\.|purchase order|bestellung|auftrag|commande|pedido|orden de compra|ordine"
    r"|bestelling|opdracht)"
)
_CANCELLED = Late(
    (
        r"\bcancel(?:l?ing)? (?:the |our |my |this |that |that whole |whole )?(?:[\w-]+ ){0,2}"
        + _ORDER,
        r"\b(?:order|po|purchase order)\b"
        + _IN_SENTENCE
        + r"{0,40}\b(?:to be|is|be|has been|please) cancel+ed\b",
        r"\b(?:stornier\w*|annullier\w*|kündig\w*)\b" + _IN_SENTENCE + r"{0,30}\b" + _ORDER,
        r"\b(?:bestellung|auftrag)\b" + _IN_SENTENCE + r"{0,30}\b(?:stornieren|annullieren)\b",
        r"\bannul(?:er|ez|ons)\b" + _IN_SENTENCE + r"{0,20}\bcommande\b",
        r"\b(?:cancel|anul)(?:en?|ar|amos|emos|o)\b" + _IN_SENTENCE + r"{0,20}\b(?:pedido|orden)\b",
        r"\b(?:annull|disd)\w+\b" + _IN_SENTENCE + r"{0,20}\bordine\b",
        r"\b(?:bestelling|opdracht|order)\b" + _IN_SENTENCE + r"{0,30}\bannuleren\b"
        r"|\bannuleer\b" + _IN_SENTENCE + r"{0,20}\b(?:bestelling|order)\b",
    )
)
_OURS = r"(?:(?:our|my|the|that|this|yesterday's|monday's|last week's)[\w' -]{0,24}?\b)"
_REQUEST = r"(?:rfqs?|request|enquiry|inquiry|quote request)"
_WITHDRAWN = Late(
    (
        r"\b(?:disregard|ignore|withdraw(?:ing)?|cancel|retract|scrap|forget(?: about)?|take back"
        r"|drop|pull) " + _OURS + _REQUEST + r"\b",
        r"\b(?:anfrage|angebotsanfrage)\b" + _IN_SENTENCE + r"{0,60}\b(?:ignorier\w*|vergessen"
        r"|gegenstandslos|hinfällig|nicht (?:weiter )?(?:beachten|berücksichtigen|bearbeiten))\b"
        r"|\b(?:ignorieren|vergessen) sie (?:bitte )?(?:unsere|meine|die) "
        + _IN_SENTENCE
        + r"{0,16}\banfrage\b",
        r"\b(?:ne (?:pas |plus )?(?:tenir|tenez) (?:pas |plus )?compte de|ignor(?:er|ez)"
        r"|oubli(?:er|ez)"
        r"|annul(?:er|ez)) (?:notre|ma|la) (?:[\w'-]+ ){0,2}(?:demande|consultation)\b",
        r"\b(?:ignor(?:en?|ad|ar)|olvid(?:en?|ad|ar)|(?:no )?(?:tengan?|tener) en cuenta"
        r"|hagan? caso"
        r" omiso (?:de|a)|anul(?:en?|ar)|cancel(?:en?|ar)) (?:nuestra|mi|la) (?:[\w-]+ ){0,2}"
        r"(?:solicitud|consulta|petición)\b",
        r"\b(?:ignor(?:are|ate|i)|(?:non )?(?:consider(?:are|ate|i)|ten(?:ere|ete|ga) (?:in )?conto"
        r"(?: del)?)|annull(?:are|ate|i)|dimentic(?:are|ate|hi)) ?(?:la )?(?:nostra|mia|la)"
        r" (?:[\w-]+ ){0,2}richiesta\b",
        r"\baanvraag\b" + _IN_SENTENCE + r"{0,60}\b(?:(?:als )?niet (?:verzonden|gedaan)|negeren"
        r"|vergeten|te beschouwen als vervallen|laten vervallen)\b"
        r"|\b(?:negeer|vergeet|annuleer) (?:aub |alstublieft )?(?:onze|mijn|de) "
        + _IN_SENTENCE
        + r"{0,16}\baanvraag\b",
    )
)
"""'Please disregard our RFQ of Monday (1.5 x .065, qty 4)'."""
_NO_QUOTE = late_pattern(
    r"\bno (?:quote|quotation|offer|price|reply|action) (?:is )?(?:needed|required|necessary"
    r"|wanted)\b"
    r"|\bno (?:longer|more) (?:needed|required|wanted)\b|\bno need (?:to|for)\b[^.?!\n]{0,24}"
    r"|\b(?:don['’]?t|do not|won['’]?t|no longer) (?:need|want|require) (?:it|them|this|that"
    r"|these|the"
    r" (?:quote|mandrels?)|a quote|anything)\b|\bkein angebot (?:mehr )?(?:nötig|erforderlich)\b"
    r"|\bnicht mehr (?:benötigt|gebraucht)\b|\bbrauch\w+ (?:wir|ich) nicht mehr\b"
    r"|\bplus besoin\b[^.?!\n]{0,24}|\bno (?:hace falta|necesitamos)\b[^.?!\n]{0,24}"
    r"|\bya no [^.?!\n]{0,24}|\bnon (?:serve|servono) (?:più)?[^.?!\n]{0,16}"
    r"|\bniet meer nodig\b",
    re.IGNORECASE,
)
"""Refusals: they wish for nothing."""
_NOT_CANCELLED = re.compile(
    r"\b(?:not|n['’]t|never|nicht|pas|no|non|niet) (?:\w+ )?$|\b(?:if|unless|whether|wenn|falls|si"
    r"|se|als|after|before|instead of|without|rather than) (?:\w+ ){0,3}$",
    re.IGNORECASE,
)
_NEW_WISH = Late(
    (
        r"\b(?:quote|need|instead|replace\w*|rather|change[ds]?|revis\w+|re-?order|re-?quote|another"
        r"|also want|we want|make us|send us|new one|new order|price for|make (?:it|them))\b",
        r"\b(?:stattdessen|anbieten|angebot|brauch\w+|benötig\w+|dafür|sondern|ersetz\w+|ändern)\b",
        r"\b(?:devis|à la place|besoin|remplac\w+|plutôt|chiffr\w+|modifi\w+)\b",
        r"\b(?:cotiz\w+|presupuesto|en su lugar|necesit\w+|en lugar|cambi\w+|sustitu\w+)\b",
        r"\b(?:preventivo|invece|al suo posto|serve|servono|cambi\w+|sostitu\w+)\b",
        r"\b(?:offerte|in plaats|nodig|vervang\w+|wijzig\w+)\b",
    )
)

_NOT_FOR_ME = Late(
    (
        r"\b(?:meant|intended|supposed to (?:go|be)) (?:for|to) (?:some(?:one|body)|another)"
        r"(?: else)?\b",
        r"\bwrong (?:e-?mail|address|person|recipient|inbox|company|guy|number)\b",
        r"\b(?:not meant|never meant|not intended) for (?:me|us)\b|\bi(?:'m| am) not (?:mr|mrs|ms"
        r"|him"
        r"|her|the person|your customer)\b",
        r"\bfalsche[rn]? (?:empfänger|adresse|adressat|person)\b|\bnicht für (?:mich|uns) "
        r"(?:bestimmt|gedacht)\b|\bfür jemand(?:en)? ander\w+ (?:bestimmt|gedacht)\b",
        r"\b(?:ne m'|pas |ne nous )\w* ?(?:pas |était )*(?:destinée?)\b|\bmauvais(?:e)? "
        r"(?:adresse|destinataire|personne)\b|\berreur (?:d'adresse|de destinataire)\b",
        r"\bno (?:era|es|iba) para (?:mí|nosotros)\b|\b(?:dirección|destinatario|persona) "
        r"equivocad[oa]\b|\bse ha(?:n)? equivocado de\b",
        r"\bsbagliato (?:indirizzo|persona|destinatario)\b|\b(?:indirizzo|destinatario) "
        r"sbagliato\b|\bnon (?:era|è) (?:per|indirizzat[oa] a) (?:me|noi)\b",
        r"\bniet voor (?:mij|ons) (?:bestemd|bedoeld)\b|\bverkeerde? (?:adres|persoon"
        r"|geadresseerde)\b|\bvoor iemand anders (?:bestemd|bedoeld)\b",
    )
)
_CAME_TO_ME = Late(
    (
        r"\b(?:i|we)(?:'ve| have)?(?: just| now)? (?:keep (?:getting|receiving)|get|got|received"
        r"|been (?:getting|receiving|sent))\b|\byou(?:'ve| have)?(?: just)? (?:sent|keep sending"
        r"|e-?mailed"
        r"|mailed|keep emailing)\b|\b(?:came|keeps? coming) to (?:me|us)\b",
        r"\b(?:bekomm\w*|erhalt\w*|erhielt\w*|geschickt|gesendet)\b",
        r"\b(?:reçu\w*|reçois|recevons|envoyé\w*)\b|\b(?:recib\w+|llegad\w+|enviado|mandado|llega\w*)\b",
        r"\b(?:ricev\w+|mandat[oa]|inviat[oa]|arrivat[oa])\b|\b(?:kreeg|krijg\w*|ontving\w*|ontvangen|gekregen"
        r"|gestuurd)\b",
    )
)
_WISH = Late(
    (
        r"\b(?:i|we)(?:'d| would| do| also)* (?:need|want|like|require|order(?:ed)?)\b(?! (?:this"
        r"|it|you|to"
        r" (?:stop|be (?:removed|taken)))\b)|\b(?:please|can you|could you|kindly) (?:\w+ )?"
        r"(?:quote|price|offer|make|replace|send (?:a|one|me|us|the))\b|\bhow much\b"
        r"|\bwhat would\b",
        r"\b(?:brauch\w+|benötig\w+|anbieten|bitte um|bestellt hab\w*|was kostet)\b",
        r"\b(?:besoin|veuillez (?:nous )?(?:chiffrer|envoyer)|merci de (?:nous )?(?:chiffrer|faire)"
        r"|commandé)\b|\b(?:necesit\w+|cotizar|quisiera|pedimos|pedí)\b",
        r"\b(?:serve|servono|vorre\w+|ordinat[oa]|abbiamo bisogno|quotare)\b|\b(?:nodig|graag een"
        r"|wil(?:len)? (?:graag )?een|besteld)\b",
    )
)


def not_ours(text: str) -> str:
    """Why a message that names a size is none of these; '' where it may be a request."""
    text = text.replace("’", "'")
    return _machine(text) or _cancels(text) or _withdraws(text) or _misdirected(text)


def _machine(text: str) -> str:
    said = _MACHINE_SOUGHT.search(text)
    if said is None or _FOR_A_MACHINE.search(text, max(0, said.start() - 40), said.start()):
        return ""
    if _TOOL.search(_OF_A_BENDER.sub(" ", text)) or _OWN_MACHINE.search(text):
        return ""
    return f'looks for a machine, and no tooling ("{" ".join(said.group().split())}")'


def _cancels(text: str) -> str:
    """Only where one sentence has the order, its size and the cancelling, and no other a tool."""
    said = _CANCELLED.search(text)
    if said is None or _NOT_CANCELLED.search(text, max(0, said.start() - 40), said.start()):
        return ""
    if _NEW_WISH.search(text):
        return ""
    end = _end_of_sentence(text, said.end())
    while (again := _CANCELLED.search(text, end)) is not None:
        end = _end_of_sentence(text, again.end())  # the subject said it too
    if _TOOL.search(text, end) or _WISH.search(text, end):
        return ""
    return f'an order cancelled ("{" ".join(said.group().split())}")'


def _withdraws(text: str) -> str:
    """Only where no word outside the sentence wishes for another in its place."""
    said = _WITHDRAWN.search(text)
    if said is None or _NOT_CANCELLED.search(text, max(0, said.start() - 40), said.start()):
        return ""
    rest = _NO_QUOTE.sub(" ", " ".join(text[said.end() :].split()))
    if _SIZE.search(text, _end_of_sentence(text, said.end())):
        return ""  # "Die alte Anfrage bitte vergessen. Neu: 1 Dorn, Rohr 33,7 x 2,6"
    if _NEW_WISH.search(rest) or _WISH.search(rest) or _RIGHT_ONE.search(rest):
        return ""
    return f'a request taken back ("{" ".join(said.group().split())}")'


_RIGHT_ONE = re.compile(
    r"\b(?:should (?:be|have|read)|correct(?:ed)?|right (?:one|size|figures?)|wrong|below"
    r"|attached|is"
    r" actually|richtig\w*|korrekt\w*|falsch\w*|anbei|correcte?|ci-joint|ci-dessous|correct[oa]"
    r"|adjunt\w*|corrett[oa]|allegat\w*|juiste?|bijgaand)\b",
    re.IGNORECASE,
)
"""'Ignore my RFQ of Monday, the wall was wrong: 1.5 x .083'."""
_END = re.compile(r"[.?!](?=\s|$)|\n\s*\n")
_SENTENCES = re.compile(r"(?<=[.?!])\s+|\n\s*\n")
_SIZE = re.compile(r"\d[\"'”]?\s?(?:mm\s?)?(?:[x×*]|by\b|od\b|clr\b)|\br ?\d", re.IGNORECASE)


def _end_of_sentence(text: str, at: int) -> int:
    end = _END.search(text, at)
    return len(text) if end is None else end.end()


def _misdirected(text: str) -> str:
    said = _NOT_FOR_ME.search(text)
    if said is None or not _CAME_TO_ME.search(text) or _WISH.search(text):
        return ""
    for sentence in _SENTENCES.split(text):
        tells = _CAME_TO_ME.search(sentence) or _NOT_FOR_ME.search(sentence)
        if _SIZE.search(sentence) and not tells:
            return ""  # "this is the right address. 1 mandrel, 38 x 1.5, R 76"
    return f'mail that came to the wrong person ("{" ".join(said.group().split())}")'
