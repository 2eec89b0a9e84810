"""Words beside a bare number that make it the number of mandrels: 'just one', 'two to start'."""

from __future__ import annotations

from ..text.phrases import phrases, word_set

ASKS_SHYLY = word_set(
    "ordineremmo ordiniamo prenderemmo compriamo servono vogliono vogliamo voglio vorrei vorremmo",
    "prendo serve bastano prendiamo solo meglio possibilmente magari",
    "idealmente preferibilmente quindi dunque",
)

# What directly before a bare number makes it the number of mandrels: "just one", "I'd take two".
ASKS_BARE = phrases(
    "hook me up with | hook us up with | set me up with | set us up with | fix me up with",
    "please make | pls make | plz make | machen sie uns | machen sie mir | macht uns | macht mir",
    "machen sie uns bitte | machen sie mir bitte | macht uns bitte | macht mir bitte",
    "fertigen sie uns bitte | bauen sie uns bitte | bieten sie uns bitte | faites nous en",
    "faites m en | faites moi en | haced | hacedme | hacednos | hágame | háganos | haganme",
    "fatemene | fatecene | maak er ons | maak ons er | maak er mij",
    "fix us up with | sort me out with | sort us out with | put me down for | put us down for",
    "just | only | need | needs | needed | want | wants | take | taking | buy | buying | require",
    "requires | gimme | gimmie | give me | quote | quote for | quote on | quote us | quote me",
    "quote me on | quote us on | you price | please price | to price | and price | requote for",
    "requote | quotation for | quotation on",
    "price for | price on | price of | prices for | pricing for | pricing on | price me",
    "cost for | cost of | much for | send | send me | send us | make me | make us | we re after",
    "i m after | looking for | to order | we order | ll order | would order | please order",
    "like to order | go with | i ll have | we ll have | can i have | could i have | may i have",
    "could we have | can we have | charge for | can i get | could i get | could we get",
    "can we get | make it | make that | that s | total of",
    "a total of | quantity of | supply | supply us with | bid | bid for | offer for | d like",
    "would like | should like",
    "you make | you do | you build | you supply | ship | ship me | ship us | exactly | genau",
    "time for | time on | delivery for | delivery on | lieferzeit für | lieferzeit von",
    "délai pour",
    "plazo para | plazo de | tempi per | consegna per | levertijd voor | exactement | exactamente",
    "esattamente | precies",
    "of each | each of them | of every one | van elk | van elke | van ieder | van allebei",
    "von jedem | von jeder | von beiden | de cada | de cada uno | de cada una | de chaque",
    "de chacun | de chacune | di ciascuno | di ognuno | di ogni tipo | per tipo | por tipo",
    "par type | por cada uno | pour chacun | für jedes | für jeden",
    "put me down for | looking to get | like to get | hoping to get",
    "still | bleibt bei | bleibt es bei | stays at | remains at | need a new | want a new",
    "need a second | want a second | need a third",
    "are after | am after | not one but | nicht einen sondern | pas un mais | no uno sino",
    "non uno ma | niet één maar | geht nur um | geht um | gaat om | gaat maar om | davon bitte",
    "daarvan graag | en voulons | en souhaitons | hacen falta | hace falta | harían falta",
    "this year it s | this time it s | ne vogliono | ne vogliamo | ne voglio | en faut qu",
    "faut qu",
    "en veux qu | en voulons qu | en vogliamo",
    "go for | stavolta | questa volta | this time | diesmal | dieses mal | cette fois | esta vez",
    "deze keer | dit keer | noch so | nog zo | daarvan | ervan | compramos | compraríamos",
    "coticen",
    "cotice | nous prenons | nous prendrons | prendiamo | wij nemen | we nemen | have you",
    "würde ich | würden wir | zunächst | erstmal | erst mal | nur | lediglich | brauch | brauche",
    "brauchen | bräuchte",
    "bräuchten",
    "bräucht | benötige | benötigen",
    "nehme | nehmen | davon | möchte | möchten | angebot für | angebot über | preis für | bestelle",
    "m en faut | en faut | en voudrais | en voudrions | en veux | besoin de | en prendrai",
    "en prends",
    "seulement | juste | soit | en prendrait | prix pour | devis pour | offre pour | faudrait",
    "solo | sólo | solamente | necesito | necesitamos | quiero | queremos | serían | sería | ocupo",
    "me llevo | me quedo con | cotizar | cotización de | precio de | precio por | comprar | son",
    "serian",
    "basta | bastano | basterebbe | ne vorrei | ne vorremmo | ne servono | ne servirebbero",
    "ne serve | ne prendo | bisogno di",
    "soltanto | prezzo per | offerta per | heb er | hebben er | wil er | willen er | graag",
    "slechts",
    "maar | prijs voor | offerte voor | nodig | preciso de | precisamos de | apenas | potrzebuję",
    "potrzebujemy | tylko | behöver | bara",
    # Better still than the one mandrel before: 'einen neuen, am besten gleich zwei'.
    "ideally | preferably | better | or better | better still | even better | or rather",
    "am besten | am besten gleich | besser | besser gleich | lieber | lieber gleich | idealerweise",
    "am liebsten | am liebsten gleich | gleich | vorzugsweise | bitte gleich",
    "de préférence | idéalement | plutôt | ou mieux | encore mieux | tant qu à faire",
    "mejor | idealmente | preferiblemente | de preferencia | preferentemente | mejor aún",
    "meglio | idealmente | preferibilmente | possibilmente | meglio ancora | magari",
    "liefst | het liefst | liefst meteen | bij voorkeur | beter | liever | idealiter | maar meteen",
)
SUMS = phrases(
    "i e | i . e . | ie | that is | d h | d . h . | c est à dire | dat wil zeggen | cioè",
    "so | so please | so that s | so that makes | so that would be | so make it | thus | hence",
    "also bitte | also insgesamt | also zusammen | also gesamt | macht also | macht zusammen",
    "macht insgesamt | wären also | sind also | bitte also | also dann | also dann bitte",
    "donc | soit | ce qui fait | donc plutôt | alors | o sea | así que | es decir | entonces",
    "por lo tanto | lo que hace | quindi | dunque | allora | cioè | perciò | dus | dus graag",
    "dus samen | dus totaal | dat zijn er | dat zijn er dus | oftewel",
)
"""Behind a comma or a full stop these sum up what was said: 'one and a spare, so two'."""
SUMS_GERMAN = word_set("zwei drei vier fünf sechs zehn")
"""Before these 'also' sums up, which in English adds."""
# The same behind the number: "one please", "1 ought to do", "two to start".
ASKS_BARE_AFTER = phrases(
    "a piece",
    "only | please | pls | plz | plse | kindly | will do | ll do | will suffice | ought to do",
    "will see me | will see us | langt | langen | nos vale | me vale | nos basta | me basta",
    "would be better | would be best | would be ideal | would be great | would be nice",
    "wären besser | wäre besser | wären ideal | serait mieux | seraient mieux | sería mejor",
    "serían mejor | sarebbe meglio | sarebbero meglio | zou beter zijn | zijn beter",
    "should do | would do | does me | does it | is enough | is all | is plenty | is fine",
    "this time | diesmal | cette fois | esta vez | questa volta | deze keer",
    "suffices | s plenty | s enough | s all | s fine | should do me | ought to do me",
    "would be enough | should be enough | will be enough | to start | to begin | for now",
    "for a start | for starters | at first | each | ea | apiece | of each | of ea | igual",
    "like it | just like | the same | of the same | identical",
    "per misura | por medida | par taille | pro größe | uno per misura | una per misura",
    "uno por medida | un par taille | één per maat | je größe",
    "per size | per line | per item | per radius | per option | per tube | per head | per die",
    "for each | for every | required | needed | wanted | in total | total | altogether | off",
    "req d",
    "bitte | reicht | reichen | genügt | genügen | würde reichen | würden reichen | wären genug",
    "gesamt | insgesamt | erforderlich | benötigt | suffit | suffira | suffisent | seulement | svp",
    "s il vous plait | au total | solo | sola | por favor | en total | es suficiente | basta",
    "bastan | soltanto | per favore | in totale | graag | nodig | is genoeg | volstaat",
    "van nodig | hiervan nodig | alstublieft",
    "per tipo | por tipo | par type | pro sorte | de cada | de chaque | di ciascuno | van elk",
    "pour chaque | pour chacun | per ciascuno",
    "je maat",
    "tack | räcker | wystarczy | czego potrzebuję",
)
# What may follow a bare number; any other word is likely the thing that is counted.
FOLLOWERS = word_set(
    "for please pls plz thanks thank thx only each ea apiece of now to in at by and but when so",
    "off bad badly fast quick quickly urgently urgent dringend schnell vite rapidement urgente",
    "rápido presto snel spoedig",
    "asap here right today made if at then as maybe with per required needed total delivered",
    "für bitte nur je davon und in aus danke zum pour svp merci en et seulement para por y",
    "gracias solo de per grazie e voor graag nodig stuks dan com no pronto i ll would should ought",
    "ahora maintenant jetzt ora nu te uns",
    "will is does this while wäre wären serait serían sarebbe zou the it req",
    "altogether reicht genügt suffit basta",
)
LIKE = word_set("wie like comme como come als zoals")
"""Behind 'noch so einen' these tell which."""
DETERMINERS = word_set(
    "the this that these those which every another any each some no what old new next last same",
    "other first second third big small large bigger smaller good bad right wrong wrong whole ones",
    "der die das diese dieser ce cette cet le la este esta ese esa el quello questo lo die dat",
    "deze",
)

STRONG_AFTER = phrases("required | needed | wanted | req d | apiece")
"""Behind a number these say that it counts, whatever it might measure."""
NOT_LABEL = word_set(
    "annual yearly monthly weekly daily batch lot tube tubes pipe bend bends part parts production",
    "total minimum min moq order's jahres los rohr stock run series packing",
)
FILLERS = word_set(
    "is are of needed required wanted mandrel mandrels dorne dorn mandrins mandriles mandrini the",
    "would be will n nr no nos order approx pcs stk st ea each we this need want for of les de",
    "des di now jetzt nun neu désormais maintenant ahora adesso ora nu teraz",
    "stays stay remains bleibt reste queda resta blijft still",
    "should ist est es è lautet beträgt sollte doit debe dev'essere moet right",
    "correct giusta corretta esatta exacte correcta correcto",
    "please bitte svp graag to auf zu à a naar op raised increased",
) | {":", "=", "-", ".", "(", "[", "|", "#", "~", "*"}
TIMES_X = word_set("anbieten liefern bestellen benötigt gebraucht required needed")
"""Behind '2x' these say that it counts, beside all that says please."""
CLOCK = word_set("after before until till around nach vor après avant antes después dopo na voor")
"""A number behind these is an hour: 'call me after 1'."""
