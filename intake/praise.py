"""Mail that only tells how well a delivered mandrel does: it names its size, and asks for nothing.

'Just wanted to say the mandrel turned up. 38.1 x 1.6 round a 76 former and not a ripple.'
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re

from .late import Late
from .late_pattern import late_pattern

_TOOL = r"(?:mandrels?|plugs?|tool|it|\w*dorn|mandrin[oi]?|anima|mandril|doorn)"
_HERE = Late(
    (
        rf"\b{_TOOL} (?:has |have |just |finally |safely )*(?:turned up|showed up|arrived|came(?! out)|landed"
        r"|got here|is here|was delivered|made it|works?|worked|runs?|ran|performs?|does the job)\b",
        r"\b(?:got|received|have) (?:the|your|my|our) (?:new )?mandrels?\b(?! (?:drawing|quote|price))",
        r"\b(?:just|only|quick note|simply)\b[^.?!\n]{0,24}\b(?:to say|say|saying|thank)",
        r"\bdorn (?:ist (?:heute |gestern |gut )*(?:angekommen|da|eingetroffen)|kam|läuft|funktioniert|"
        r"arbeitet)\b|\b(?:wollte|möchte|wollten) (?:mich |uns )?(?:nur |kurz )*(?:bedanken|danke sagen)\b",
        r"\bmandrin (?:est (?:bien )?(?:arrivé|là)|marche|fonctionne)|\b(?:juste|petit mot)\b[^.?!\n]{0,24}"
        r"\b(?:merci|remercier)",
        r"\bmandril (?:ya )?(?:llegó|ha llegado|funciona|va)\b|\bs[oó]lo (?:quería|queríamos) (?:dar|decir)",
        r"\b(?:mandrino|anima) (?:è (?:già )?arrivat[oa]|funziona|va)\b|\bvolev[oa]\w* solo (?:ringrazi|dir)",
        r"\bdoorn (?:is (?:er|binnen|aangekomen|gearriveerd)|er is|werkt|loopt)\b|\bwilde (?:alleen )?(?:even )?"
        r"(?:zeggen|bedanken)",
    )
)
_CREW = r"(?:we|i|guys|lads|boys|crew|team|shop|operators?|foreman|boss|everyone|everybody|all of us|floor|customer)"
_DOES_WELL = Late(
    (
        r"\b(?:not|without) (?:a|one|any|a single) (?:single )?(?:ripples?|wrinkles?|kinks?|marks?|buckles?)\b",
        r"\b(?:no|zero) (?:ripples?|wrinkl\w+|kinks?|buckl\w+|flattening|ovality)\b",
        r"\b(?:spot[- ]on|smooth as|like a dream|like a charm|a treat|like butter|came out (?:perfect\w*|great"
        r"|beautiful\w*|lovely|mint|clean|well|really)|(?:works?|worked|runs?|ran|bends?|bent) (?:\w+ )?"
        r"(?:perfect\w*|great|beautiful\w*|fine|flawless\w*|brilliant\w*|lovely|well|clean\w*))\b",
        rf"\b{_CREW} (?:is|are|'re|were|was) (?:\w+ ){{0,2}}?(?:tickled|thrilled|delighted|over the moon|chuffed|made up"
        r"|stoked|very happy|so happy|really happy|pleased|impressed|grinning|all smiles)\b|\b(?:guys|crew|lads|boys|operators?"
        r"|everybody|everyone|we all|we) (?:just |really )?loves? (?:it|them)\b|\bfirst good (?:part|one|bend)\b",
        r"\bused to be (?:our|the|my) (?:worst|problem|nightmare|headache|biggest)\b|\b(?:was|were) always (?:our|the|my)"
        r" (?:worst|problem|nightmare|headache|biggest)\b",
        r"\b(?:begeistert|hochzufrieden|sehr zufrieden|überglücklich)\b|\bwar immer unser (?:größter ausschuss|sorgenkind)",
        r"\b(?:ravis?|ravie|enchantés?|très contents?)\b|\bétait (?:toujours )?notre (?:pire|bête noire|cauchemar)",
        r"\b(?:encantad[oa]s?|content[oa]s|contentísim[oa]s)\b|\bera (?:siempre )?(?:nuestr[oa]) (?:pesadilla|peor)",
        r"\b(?:entusiast[ai]|contentissim[oi]|content[io]|soddisfatt[io])\b|\bera (?:sempre )?(?:il nostro) (?:incubo|peggior)",
        r"\b(?:dolblij|heel blij|erg blij|enthousiast|dik tevreden|is er blij mee)\b|\bwas altijd onze (?:grootste|nachtmerrie)",
        r"\bkeine(?:rlei|n)? (?:falten?|wellen?)|\b(?:faltenfrei|super|perfekt|einwandfrei|tadellos|hervorragend)\b",
        r"\bpas un(?:e seule)? (?:pli|ride|ondulation)|\bsans (?:un seul |aucun )?pli|\b(?:impeccables?|parfaits?"
        r"|nickel|parfaitement|à merveille)\b",
        r"\bni una (?:sola )?arruga|\bsin (?:una sola |ninguna )?arrugas?|\b(?:perfect[oa]s?|de maravilla"
        r"|de lujo|perfectamente)\b",
        r"\b(?:nessuna|neanche una|senza) (?:\w+ )?(?:grinza|pieg[ah]\w*|grinze|rug[ah]e?)|\b(?:perfett[oaie]"
        r"|benissimo|alla grande|perfettamente)\b",
        r"\bgeen (?:enkele )?(?:rimpel|plooi)\w*|\b(?:perfect|prima|geweldig|uitstekend|vlekkeloos)\b",
    )
)
_MAY_ASK = late_pattern(
    r"\?|\b(?:need\w*|want|wants|quot\w+|pric\w+|how much|cost\w*|please|pls|another|again|also|too"
    r"|(?:one|two|three|\d) (?:more|each|of)|more|next|now|order\w*|repeat|same|second|spare|looking|require\w*"
    r"|send|would|could|can|will|do you|like to|but|though|however|except|until|unfortunately|qty|quantity"
    r"|(?:we'?re|we are|i'?m|i am) after|in the market|hoping|interested|get (?:me|us)|wish"
    r"|suche?n?|hätten?|cherch\w+|recherch\w+|busc\w+|cerc\w+|zoek\w*|wil|willen"
    r"|one mandrel|two mandrels|\d+ (?:mandrels?|off|pcs?|pieces?|ea)"
    r"|brauch\w*|benötig\w*|möchte(?!n? (?:mich|uns)\b)|bitte|preis\w*|angebot\w*|noch|nächste\w*|jetzt|aber"
    r"|wieder|gleiche\w*|weitere\w*|zweite\w*|kosten|kostet|stück|anfrag\w*|einen? (?:neuen?|dorn)"
    r"|besoin|faudrait|faut|voud\w+|devis|prix|svp|s'il|encore|autre|maintenant|prochain\w*|mais|même|deuxième"
    r"|aussi|pouvez|pourriez|combien|commande\w*|un mandrin"
    r"|necesit\w+|quier\w*|quisi\w+|presupuesto|precio|por favor|otr[oa]s?|ahora|próxim\w+|pero|mism[oa]"
    r"|también|pueden?|cuánto|pedi\w+|un mandril|segundo"
    r"|serv\w+|vorre\w+|preventivo|prezzo|per favore|altr[oaie]|adesso|ora|prossim\w+|ma|stess[oa]|anche"
    r"|potete|quanto|ordin\w+|un mandrino|un'anima|secondo"
    r"|nodig|graag|prijs|offerte|alstublieft|nog|volgende|nu|maar|zelfde|ook|kunt|kunnen|hoeveel|bestel\w+"
    r"|tweede|een doorn)\b",
    re.IGNORECASE,
)
"""Any of these, and something may be asked for after all."""
_ONLY_SAYS = re.compile(
    r"\b(?:just |only )?(?:want(?:ed)?|like|would like|'d like) to (?:say|thank|let you know|tell you)\b"
    r"|\b(?:on|at|by) (?:the|our|only the|just the) (?:first|second|third|2nd) (?:try|attempt|go|shot|hit)\b"
    r"|\b(?:beim|im) (?:ersten|zweiten|dritten) versuch\b|\bau (?:premier|deuxième|second) essai\b"
    r"|\b(?:a la primera|al segundo intento|al primer intento)\b|\bal (?:primo|secondo) (?:tentativo|colpo)\b"
    r"|\bbij de (?:eerste|tweede) poging\b|\bsecond (?:shift|bend|part|piece)\b"
    r"|\b(?:many )?thank(?:s| you) (?:so much |very much )?again\b|\b(?:nochmals|noch ?mal|noch einmal) (?:vielen |besten )?dank\w*"
    r"|\b(?:danke|vielen dank) (?:nochmals?|noch einmal)\b|\bencore (?:une fois )?merci\b|\bmerci encore\b"
    r"|\bgracias (?:de nuevo|otra vez)\b|\bgrazie (?:ancora|di nuovo)\b|\b(?:nogmaals|nog een keer) bedankt\b"
    r"|\bcan(?:'|no)?t (?:complain|fault)\b|\bbetter than (?:the )?(?:old|last) one\b",
    re.IGNORECASE,
)


def only_praises(text: str) -> str | None:
    """Why a mail with a size is but word of how well our mandrel does; None where it may ask."""
    if _MAY_ASK.search(_ONLY_SAYS.sub(" ", text)):
        return None
    if not _HERE.search(text):
        return None
    well = _DOES_WELL.search(text)
    return f'tells how well a mandrel does ("{well[0]}"), and asks for nothing' if well else None
