"""Words behind a day that make it one of delivery: '12 December is your date', 'am 5. bei uns'."""

from __future__ import annotations

from ..text.phrases import phrases
from .words import OUR_PLACE, OUR_PLACE_ABROAD

AFTER = phrases(
    " | ".join(OUR_PLACE),
    *OUR_PLACE_ABROAD,
    "need it | need them | need this | need these | at the latest | the latest | latest",
    "or sooner | or earlier | is your date | is when | would be",
    "suits | muss er hier | muss er da | müssen sie hier | müssen sie da | wäre uns recht",
    "wäre recht",
    "nous irait | nous conviendrait | vendría bien | iría bien | schikt | past ons",
    "would do | will do | halen | brauchen wir ihn | brauchen wir sie",
    "brauche ich ihn | brauchen wir den | brauche ich den | bräuchten wir ihn | bräuchte ich ihn",
    "bräuchten wir den | benötigen wir ihn | benötigen wir den",
    "is good | is ok | would suit | suits us | suits me | or before | collect it | collect them",
    "pick it up | pick them up | abgeholt | wärs super | wärs gut | wärs toll | wärs schön",
    "wäre super | wäre gut | wäre ideal | wäre toll",
    "wäre prima | wäre schön | wäre perfekt | passt | passt uns | reicht | reicht uns | hier bitte",
    "serait parfait | serait bien | serait idéal | convient | nous convient | conviendrait",
    "estaría bien | sería perfecto | sería ideal | nos viene bien | va bien | va bene",
    "andrebbe bene",
    "sarebbe perfetto | sarebbe ideale | is goed | is prima | komt goed uit | zou mooi zijn",
    "zou ideaal zijn | zou fijn zijn",
    "is fine | if possible | if you can | please deliver | delivery | positively | is needed",
    "is required | we need | is the date | is our date | in hand | on site | at our | to our",
    "spätestens | benötigt | erforderlich | gebraucht | geliefert | liefern | lieferung",
    "hier sein",
    "au plus tard | à réception | chez nous | a más tardar | como muy tarde | al più tardi",
    "in consegna",
    "uiterlijk | nodig | geleverd | binnen | senast",
)
DELIVERED = phrases(
    "lieferbar | geliefert | zu liefern | te leveren | à livrer | a entregar | da consegnare",
    "delivered | leverbaar | geleverd | livrable | livré",
    "in hand | on site | eintreffend | entregado | consegnato",
)
"""Right behind a day these make it one of delivery, whatever stands before."""
HERE = phrases(
    "bei uns | bij ons | da noi | hier s . v . p | hier svp | hier graag | hier bitte | hier sein",
    "here please | ici svp | ici s il vous plaît | aquí por favor | qui per favore | hier hebben",
    "hier haben | hier zijn",
)
"""The same where no quotation or the like is spoken of."""
