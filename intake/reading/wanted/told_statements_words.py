"""Words of statements that only tell of a size: it is there, it was the last order, it is called
off, it is bent without a mandrel, it may come next year.

Searched in text without accents ('nächstes', 'naechstes' and 'nachstes' are one); each goes through
``folded`` itself. Where 'haben wir' or 'lo tenemos' tells, it ends the statement.
"""

from __future__ import annotations

import unicodedata

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from . import told_as_it_is_words

_SPELLED = (("ae", "a"), ("oe", "o"), ("ue", "u"), ("ss", "s"))


def folded(text: str) -> str:
    """Casefolded, without accents and umlauts, whether marks or letters stand for these."""
    return _without_marks(text.casefold())


def _without_marks(text: str) -> str:
    parts = unicodedata.normalize("NFD", text)
    text = "".join(char for char in parts if not unicodedata.combining(char))
    for written, plain in _SPELLED:
        text = text.replace(written, plain)
    return text


def _folded_words(*lists: str) -> str:
    return any_of(*map(_without_marks, lists))


_THERE = (
    r"ist (?:schon|bereits|noch) (?:ein \w*dorn |der \w*dorn |einer )?(?:vorhanden|da)",
    r"liegt (?:hier |bei uns )?noch (?:hier|bei uns|im|in der|auf) | nehmen wir den alten",
    r"ist (?:noch|weiterhin) (?:gut|in ordnung|brauchbar|ok)",
    r"haben wir(?: schon| bereits| noch)?(?: einen| welche)?(?: von ihnen| von euch| da)?$",
    r"(?:haben wir|wir haben) (?:bereits|schon) einen \w*dorn$",
    r"(?:nous avons|on a|j'ai) déjà (?:ce|le|un|celui|ce qu'il faut) | il y a déjà (?:un|le)",
    r"(?:on l'a|nous l'avons|je l'ai|(?:on|nous) en (?:a|avons) un)(?: déjà)?(?: de chez vous)?$",
    r"est (?:encore|toujours) (?:bon|en bon état|au magasin|en stock|chez nous|à l'atelier)",
    r"(?:garde|gardons|utilise|utilisons) l'ancien",
    r"ya (?:hay|tenemos) (?:un |el )?mandril | (?:lo|los) tenemos(?: ya)?$",
    r"tenemos uno (?:vuestro|suyo|de ustedes)$ | usamos el (?:mandril )?viejo",
    r"(?:aún|todavía) está bien | sigue (?:estando )?(?:bien|en el almacén|en el taller|aquí)",
    r"usamos el mandril (?:viejo|antiguo) | utilizamos el (?:viejo|antiguo)",
    r"c'è già(?: il| un)?(?: mandrino)? | ce l'abbiamo(?: già)?$ | ne abbiamo uno (?:vostro|già)$",
    r"va ancora bene | è ancora (?:buono|in magazzino|in officina|qui|da noi)",
    r"usiamo il vecchio | abbiamo già (?:il|un) mandrino",
    r"is er al een | ligt nog (?:hier|bij ons|in het|op) | is nog goed | gebruiken we de oude",
    r"hebben we(?: al)?(?: er)?(?: al)?(?: een)?(?: van u| van jullie)?$ | hebben we er een van u$",
    r"(?:sind wir|bin ich) (?:schon |bereits )?versorgt$ | on est (?:déjà )?équipés?$",
    r"ya estamos servidos$ | siamo (?:già )?a posto$ | zijn we al voorzien$ | we are covered$",
    r"haben wir von (?:euch|ihnen) (?:schon |bereits )?einen$ | (?:er )?ligt hier nog een",
    r"traîne encore | anda todavía por",
    r"is still on (?:our|the) shelf | is still (?:good|fine|ok) | we use the old one",
)
_LAST = (
    r"(?:bei der|in der|die|unsere) letzten? (?:bestellung|lieferung)(?: \w+)? (?:war|waren|ging)",
    r"letztes mal (?:war|waren|ging)",
    r"(?:la|notre) dernière (?:fois|commande|livraison),? (?:c'était|était)",
    r"la última vez (?:fue|era) | (?:el|nuestro) último pedido (?:fue|era)",
    r"l'ultima volta (?:era|erano) | (?:l'|il nostro )ultimo ordine (?:era|fu)",
    r"(?:de|onze|het) (?:vorige|laatste) (?:keer|bestelling|order) (?:was|ging)",
    r"vorige keer (?:was|ging) | (?:last time|(?:the|our) last order)(?: it)? was",
)
_SO_FAR = (
    r"bisher (?:haben|hatten) wir nur | jusqu'ici (?:nous n'avons|on n'a) \w+ que",
    r"hasta ahora solo | finora abbiamo \w+ solo | tot nu toe \w+ we alleen | so far we only",
    r"warten wir noch auf | on attend encore | estamos esperando a | aspettiamo (?:ancora )?il",
    r"wachten we nog op | we are still waiting for",
)
_OFF = (
    r"hat sich (?:\w+ )?erledigt | ist (?:erledigt|hinfällig|storniert) | entfällt | fällt weg",
    r"ziehen wir (?:hiermit )?zurück",
    r"est (?:annulée?|abandonnée?) | on annule | nous annulons | laisse tomber",
    r"(?:está|queda|ha quedado) anulad[oa] | (?:lo|la) anulamos",
    r"ne se f(?:ait|era) plus | ya no se (?:hace|fabrica)",
    r"(?:derzeit|vorerst|momentan) nicht (?:nötig|gebraucht)$",
    r"pas besoin (?:pour l'instant|pour le moment)$ | (?:de momento|por ahora) no hace falta$",
    r"per (?:ora|il momento) non serve$ | is (?:voorlopig|nu) niet nodig$",
    r"è (?:stat[oa] )?annullat[oa] | (?:lo|la) annulliamo | non si fa più",
    r"is (?:vervallen|geannuleerd) | vervalt | trekken we (?:hierbij )?in | gaat niet door",
    r"(?:is|has been) cancell?ed",
)
_EMPTY = (
    r"(?:biegen|machen) wir ohne(?: \w*dorn)?$ | sans mandrin$ | sin mandril$ | senza mandrino$",
    r"(?:buigen|doen) we zonder(?: doorn)?$",
)
_LATER = (
    r"(?:kommt|kämen?) (?:vielleicht|eventuell|erst) (?:nächstes jahr|später)",
    r"(?:viendra|sera) peut-être (?:l'an prochain|l'année prochaine|plus tard)",
    r"quizás? (?:el año que viene|más adelante) | forse (?:l'anno prossimo|più avanti)",
    r"komt misschien (?:volgend jaar|later) | may come (?:next year|later)",
)
_BOUGHT = (
    r"(?:hat|hatte|haben|hatten) (?:\S+ )*?bei ihnen (?:\S+ )*?(?:bestellt|gekauft)",
    r"vous (?:a|ai|avait|avais|avons|avions|ont) (?:déjà )?(?:commandé|acheté|pris)",
    r"(?:on l'a|nous l'avons|je l'ai) (?:déjà )?(?:pris|acheté|commandé) chez vous",
    r"se lo (?:compramos|compré) a (?:ustedes|vosotros)",
    r"l'(?:abbiamo|ho) (?:preso|comprato) da voi",
    r"(?:os|les|le) (?:compró|compramos|compré|compraron|encargó|encargamos|pidió)",
    r"(?:vi|da voi) (?:ha|ho|aveva|avevo|abbiamo|avevamo) (?:già )?(?:ordinato|comprato|preso)",
    r"heeft (?:\S+ )*?bij (?:u|jullie) (?:\S+ )*?(?:besteld|gekocht)",
)
_BENDER = (
    r"(?:\w*maschine|cintreuse|curvadora|dobladora|curvatubi|macchina|máquina|\w*machine|bender)"
)
_REACHES = (
    rf"{_BENDER}\b\D{{0,24}}?\b(?:bis|max|maximal|maximum|höchstens|jusqu'à|hasta|llega a|máximo"
    r"|fino a|arriva a|massimo|tot|maximaal|up to)\b",
)
_UNNEEDED = (
    r"(?:den|die|das|diesen|ihn|es) brauchen wir (?:also |daher |jetzt |derzeit )?nicht$",
    r"(?:donc )?pas besoin$ | (?:ese |eso |así que )?no (?:hace falta|lo necesitamos)$",
    r"(?:quindi )?non (?:ci )?serve$ | (?:die|dat) hoeft (?:dus )?niet$",
    r"(?:die|dat) hebben we niet nodig$ | no need$",
)
TOLD = late_pattern(
    r"(?<!\w)"
    + _folded_words(*_THERE, *_LAST, *_SO_FAR, *_BOUGHT, *_OFF, *_EMPTY, *_LATER, *_REACHES)
)
UNNEEDED = late_pattern(r"(?<!\w)" + _folded_words(*_UNNEEDED))
"""The need in these is denied."""
AS_IT_IS = late_pattern(r"(?<!\w)" + _folded_words(*told_as_it_is_words.AS_IT_IS))
PREVIOUS_OWNER = late_pattern(r"(?<!\w)" + _folded_words(*told_as_it_is_words.PREVIOUS_OWNER))
NOT_BENT = late_pattern(r"(?<!\w)" + _folded_words(*told_as_it_is_words.NOT_BENT))
ENDS = late_pattern(r"\b" + _folded_words(*told_as_it_is_words.ENDS) + r"\b")
IF = late_pattern(r"\b" + _folded_words(*told_as_it_is_words.IF) + r"\b")
HARMLESS = late_pattern(r"\b" + _folded_words(*told_as_it_is_words.HARMLESS) + r"\b")
SO_FAR_OR_NOW = late_pattern(r"\b" + _folded_words(*told_as_it_is_words.SO_FAR_OR_NOW) + r"\b")
SAME = late_pattern(
    r"\b"
    + _folded_words(
        r"same | gleiche[nrsm]? | (?:der|die|das|dem|den)selben? | wieder | nochmals?",
        r"noch (?:so )?ein\w* | davon | même | encore un\w* | mism[oa]s?",
        r"otra vez | otro igual",
        r"stess[oaie] | di nuovo | zelfde | dezelfde | hetzelfde | nog (?:eens|zo'n) | again",
        r"another | wie (?:damals|letzt\w*|gehabt|dort) | comme (?:la|l'|celui)",
        r"como (?:la|el|aquel)",
        r"come (?:l'|la|quello) | like (?:it|that|the)",
    )
    + r"\b"
)
"""Behind such a statement these may mean the size in it once more."""
BOTH = late_pattern(
    r"\b"
    + _folded_words("beide[nrs]? | les deux | ambos | entrambi | allebei | both | either")
    + r"\b"
)
"""So may these, where no two sizes stand beside them."""
WHEN = late_pattern(
    r"\b"
    + _folded_words(
        r"wochen? | tage?n? | liefer\w* | termin | semaines? | jours? | livr\w+ | délai | semanas?",
        r"días? | entreg\w+ | plazo | settiman[ae] | giorni | consegn\w+ | weken | week | dagen",
        r"lever\w* | weeks? | days? | deliver\w*",
    )
    + r"\b"
)
"""A request with these is for a day."""
PRICE = late_pattern(r"\b(?:kost\w*|preise?|prix|precio|prezzo|prijs|price|cost\w*)\b")
"""A statement with these asks."""
