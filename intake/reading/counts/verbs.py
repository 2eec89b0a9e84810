"""The words around a count that say whether what it counts is wanted, owned, or talked about."""

from __future__ import annotations

from ..text.phrases import phrases, word_set

RATES = word_set(
    "day days week weeks wk month months year years yr annum hour hr shift batch run job lot tag",
    "woche monat jahr stunde schicht jour semaine mois an año ano mes semana día dia giorno mese",
    "quarter quarters quartal quartale trimestre trimestres trimestri kwartaal season saison",
    "settimana anno dag week maand jaar uur frame vehicle car bus chair bike",
)
RATE_SIGNS = word_set("a per each every pro par al por im by p the in je alle all") | {"/"}
USAGE = word_set(
    "usage consumption eau jahresbedarf jahresmenge verbrauch consommation consumo verbruik",
    "jaarverbruik annually yearly",
)
"""What is used up in a year is not wanted now."""
EACH_BY = phrases(
    "per size | per line | per item | per radius | per option | per head | per tube | per die",
    "per tipo | por tipo | par type | pro sorte | per diameter | per type | per position",
    "per spec | per part number | a piece | per job | pro größe | pro radius",
    "pro position | pro rohr | par taille | par rayon | par diamètre | pour tous | por medida",
    "por radio | por tamaño | per misura | per raggio | per diametro | per maat | per radius",
    "per row | per wall | per combination | per combo | per code | per reference | per entry",
    "pro zeile | pro durchmesser | pro wand | pro wandstärke | pro abmessung | pro kombination",
    "par ligne | par tube | par dimension | par combinaison | par référence | par épaisseur",
    "por línea | por diámetro | por tubo | por combinación | por referencia | por espesor",
    "per riga | per codice | per combinazione | per voce | a misura",
    "per regel | per buis | per combinatie | per wand | per wanddikte",
)
WANTS = phrases(
    "was verlangt | was verlangen | was nehmt ihr | was nehmen sie | fehlt noch",
    "vragen jullie voor | vraagt u voor | prijsje | missen we nog | missen nog | ontbreekt nog",
    "quanto viene | quanto vengono | mi dici quanto costa | costruirci | costruirmi | quotatemi",
    "quotare | quotate | quotazione",
    "cotizáis | cotizas | me cotiza | nos cotiza | me pasas precio | me pasáis precio",
    "peux tu me chiffrer | tu me chiffres | vous nous chiffrez",
    "chiffrer | coter | deviser | tarif pour | combien pour",
    "cuánto por | quanto per | ile za | hur mycket för",
    "need | needs | needing | want | wants | wanting | require | requires | required | order",
    "ordering | buy | buying | purchase | quote | quoting | quotation | quotations | rfq | price",
    "prices | pricing | looking for | look for | look after | searching for | search for | after",
    "like | interested in | get me | supply us | supply me | send us | send me | offer | bid",
    "cost | do me | do us | make me | make us | knock me | knock up | turn me | build me",
    "build us",
    "sell me | sell us | sie mir | sie uns | ihr mir | ihr uns | du mir | vous me | vous nous",
    "hacerme | hacernos | fabricarme | fabricarnos | farmi | farci | fornirci | jullie ons",
    "jullie mij | u ons | u mij",
    "proposal for | request for | request | requests | enquiry for | inquiry for | number on",
    "take | looking to get | like to get | want to get | hoping to get | looking to buy",
    "so that s | that would be | that ll be | in search of | hunting for | chasing | could use",
    "es wäre | es geht um | es handelt sich um",
    "il s agit d | il s agirait d | se trata de | se trataría de | si tratta di | het gaat om",
    "het betreft | requiero | requiere | precisa",
    "can i get | could i get | can we get | could we get | may i have | can i have | could i have",
    "could we have | trouble you for | please make | in the market for | order for | gimme",
    "ask for",
    "brauch | such einen | such nen | brauche | brauchen | bräuchte | bräuchten | bräucht",
    "bräuchert | benötige | benötigen",
    "suche",
    "suchen | angebot | anfrage | anbieten | bestellen | möchte | möchten | hätte gern",
    "hätten gern",
    "hätte gerne | hätten gerne | hätte ich gern | hätten wir gern | hätte ich gerne",
    "hätten wir gerne",
    "preis | bitte um | besoin | cherche | cherchons | recherche | recherchons | offre | devis",
    "prix",
    "souhaite | souhaitons | voudrais | voudrions | voulons | commander | faut | faudrait",
    "cotation",
    "necesito | necesitamos | busco | buscamos | ocupo | quiero | queremos | cotizar | cotización",
    "cotizacion | oferta | presupuesto | precio | requerimos | comprar | pedir | me hace falta",
    "cerco | cerchiamo | serve | servirebbe | bisogno | vorrei | vorremmo | preventivo | offerta",
    "prezzo | ordinare | zoek | zoeken | nodig | offerte | prijs | graag | bestellen | wil",
    "willen",
    "preciso | precisamos | cotação | orçamento | preço | gostaria | szukam | szukamy | potrzebuję",
    "potrzebujemy | wycenę | behöver | söker | offert | poptávám | köpa",
    "me urge | nos urge | urgen | corre prisa | hace falta | hacen falta | haría falta | solicito",
    "solicitamos | occorre | occorrono | occorrerebbe | desidero | desideriamo",
)
WANTS_THE = phrases(
    "need | want | require | quote | price | pricing | cost | quotation | offer | send | make",
    "supply | order | brauche | brauchen | benötige | benötigen | preis | angebot | anbieten",
    "bestellen | prix | devis | offre | chiffrer | voudrais | voudrions | faut | precio | cotizar",
    "oferta | presupuesto | necesito | necesitamos | enviar | prezzo | preventivo | offerta",
    "serve | vorrei | vorremmo | prijs | offerte",
)
"""Directly before 'the mandrel' these ask for it."""
BARE_WISHES = phrases(
    "need | needs | want | require | requires | i need | wtb | iso | brauche | brauchen",
    "bräuchte | benötige | benötigen | suche | suchen | cherche | cherchons | besoin de",
    "necesito | necesitamos | busco | buscamos | ocupo | cerco | cerchiamo | serve | zoek",
    "zoeken | potrzebuję | potrzebujemy | szukam | szukamy | behöver | söker",
)
"""Directly before 'mandrel' without an article these ask for one."""
OWNS = phrases(
    "have | has | had | ve | ve got | own | owns | got | bought | ordered | made us | made me",
    "you made | supplied | received | broke | lost | haben | hat | hatten | besitzen | gekauft",
    "avons | ai | possédons | acheté | tenemos | tengo | teníamos | abbiamo | ho | hebben | heb",
    "hadden | temos | mamy | har | using | use",
)
# "to have two", "could we have one": having that is wished for.
WISHES = word_set("to could can would d ll may might should must shall gern gerne")
OWNED_AFTER = phrases(
    "already | in stock | on the shelf | on hand | in house | here already | we have | we own",
    "i have | i own | vorhanden | da | bereits | haben wir | déjà | ya | già | al | on order",
)
ADVICE = phrases(
    "do i need | do we need | would i need | would we need | will i need | will we need",
    "do you need | did you need | would you need | need to know if",
    "does it need | does this need | is there | kann man | can it",
)
"""'Do I need a mandrel?' asks for advice, not for mandrels."""
ADVISES = phrases(
    "do i | do we | would i | would we | will i | will we | do you | does it | did you"
)
"""Before 'need' these ask for advice, too."""
ABILITY = phrases(
    "can you | could you | do you | do u | can u | could u | will u | are you able",
    "would you be able | will you | would you | you can | you could | is it possible",
    "können sie | könnt ihr | könnten sie | könntet ihr | kannst du | machen sie | macht ihr",
    "fertigen sie | liefern sie | bauen sie | baut ihr | bieten sie | pouvez vous | pourriez vous",
    "pouvez-vous | pourriez-vous | peux-tu | pourrais-tu | faites-vous | fabriquez-vous | puis-je",
    "vous pouvez | peux tu | faites vous | fabriquez vous | pueden | puede | podrían | podéis",
    "podríais | hacen | hacéis | fabrican | fabricáis | potete | può | potreste | fate",
    "producete | kunnen jullie | kunt u | kan u | kun je | maken jullie | maakt u | czy robicie",
    "vocês fazem",
)
HAVING = phrases(
    "have you | have you got | do you have | would you have | might you have | you guys have",
    "you got | u got | ya got | you guys got | haben sie | habt ihr",
    "hast du | hätten sie | hättet ihr | hättest du | avez vous | as tu",
    "auriez vous | avez-vous | as-tu | auriez-vous | aurais-tu | tienen | tiene | tiene usted",
    "tienes | tenéis | tendrían | tendríais",
    "disponen de | dispone de | avete | hai | avreste | disponete di | hebben jullie | heeft u",
    "hebt u | heb je",
)
"""Right before 'a mandrel' these ask for one."""
WHETHER_BEFORE = frozenset(("if", "whether", "ob", "si"))
"""Right before an article these ask whether, not for: 'sagen Sie mir, ob ein Dorn ...'."""
BESIDE_YOU = word_set("wil kun kan heb zou ben moet mag als dat of hoe wat kon had")
"""Before 'je' these make it the Dutch 'you', not the German 'each'."""
OFFERS = word_set(
    "quote offer price send ship order buy anbieten liefern bieten proposer envoyer coter chiffrer",
    "cotizar ofrecer ofertar enviar presupuestar offrire quotare inviare aanbieden offreren sturen",
    "quotarci quotarmi offrirci proporci farci mandarci",
)
"""'Could you quote a mandrel' asks for one, whatever stands between."""
WHETHER = word_set(
    "whether if ob si se of need needs think tell say explain without ohne sans sin senza zonder",
    "bend with mit avec con met",
)
ASKS_WHETHER = phrases(
    "do we need | do i need | would we need | would i need | will we need | will i need | need it",
    "do you need | did you",
)
"""'Or do we need one each?' asks for advice, not for mandrels."""
SUFFICES = word_set(
    "reicht reichen reicht's genügt genügen suffit suffira suffisent basta bastan volstaat suffices"
)
PLEASE = word_set(
    "please pls plz plse bitte graag gesucht svp plait favor favore needed required wanted quote",
    "grazie gracias merci danke bedankt",
    "alstublieft aub proszę nodig combien cuánto quanto hoeveel ile wieviel",
)
NEEDED_BEHIND = word_set(
    "gebraucht benötigt serve servirebbe necesito necesitamos faut faudrait brauche brauchen"
)
"""Of 'a mandrel' these say that it is wanted, far behind it too: 'un mandrino ..., mi serve'."""
WELCOME = phrases(
    "wäre super | wäre toll | wäre prima | wäre schön | wäre ideal | wäre perfekt | wäre top",
    "would be great | would be good | would be perfect | would be ideal | would be lovely",
    "serait parfait | serait bien | serait idéal | serait super | estaría bien | sería ideal",
    "sería perfecto | sarebbe perfetto | sarebbe ottimo | sarebbe ideale | zou mooi zijn",
    "zou fijn zijn | zou ideaal zijn",
)
"""Behind 'a mandrel' these ask for it: 'ein Dorn wäre super'."""
POLITE = word_set("bitte please pls plz merci favor favore graag gelieve")
COSTS = word_set(
    "cost run set kosten kostet costs runs kost coute couterait cuesta costaria vale costa",
    "costerebbe kosztuje kostar custa",
)
COST_OF = phrases(
    "what does | what do | what s | what is | what would | what will | how much does",
    "how much would | how much will | how much do | wat zou | was würde",
)
"""Before an article, with 'cost' or 'run' behind the mandrel: the price of one is asked."""
PRICE_FOR = phrases(
    "much for | much is | much to make | get for | ask for | damage for | damage on | charge for",
    "ballpark for",
    "ballpark on | figure for | figure on | number for | number on",
)
"""'How much for a mandrel?' asks for one; with a wiper or a size right behind it, it may not."""
PRICED_AS = word_set("landed delivered shipped posted please thanks to that this here like to")
"""What may follow a mandrel whose price is asked."""
NEGATIONS = phrases(
    "not | don t | doesn t | no | never | instead of | rather than | nicht | kein | keinen | statt",
    "pas | au lieu de | plutôt que | en vez de | non | invece di | niet | in plaats van | geen",
)
INSTEAD = phrases(
    "instead of | rather than | not | statt | anstatt | nicht | au lieu de | plutôt que | pas",
    "than",
    "en vez de | invece di | niet | in plaats van | more than | less than | fewer than",
    "no more than",
)
TOOL_IN_USE = word_set(
    "with without using mit ohne avec sans con sin senza met zonder through over"
)
SUPPLIED_WITH = phrases(
    "hook me up with | hook us up with | set me up with | set us up with | fix me up with",
    "fix us up with | sort me out with | sort us out with | supply us with | supply me with",
    "provide us with | provide me with | help me out with | help us out with | go with",
)
"""'Hook me up with one': no tool in use."""
WISHES_FOR = word_set("i we one they je nous wir ich")
PRODUCES = word_set(
    "bend bends bending bent produce produces producing manufacture make makes making run running",
    "series batch contract production job biegen fertigen produzieren serie auftrag cintrer",
    "cintrons",
    "fabriquons curvar curvamos fabricamos doblar piegare pieghiamo produciamo buigen maken",
)
"""Pieces that these govern are bent parts."""
OF_A_BEND = word_set(
    "radius radii rad r die dies line lines angle angles clr mandrel mandrels centerline",
    "centreline",
)
"""Behind 'bend' these name a part of the size: 'bend radius 32 mm - 2 nos'."""
BENT = word_set("bent gebogen cintré cintrée curvado doblado curvato piegato")
BENT_ON = word_set("on at to over around with auf mit um sur à avec a con en su op met om")
"""'38 x 2 bent on R 90' makes no parts."""
SHARING = word_set(
    "cover covers do does fit fits serve serves handle handles work works both all either good",
    "span",
    "manage run suit suits share rule enough same beide beiden passt reicht geht decken abdecken",
    "deux",
    "servir couvrir suffire convenir ambos ambas sirve vale cubrir cubre entrambi bene copre",
    "coprire",
    "several various zwei two three dekken dekt volstaan formers dies",
)
MAKE_IT = phrases(
    "you make it | you make one | you make me | you make us | you do one | you do me | you do us",
    "you do it | you quote it | you quote one | you build it | you build one | you price it",
    "ihn bauen | ihn mir | ihn uns | ihn machen | ihn fertigen | einen bauen | einen anbieten",
    "le faire | le fabriquer | me le | nous le | me lo | hacerlo | hacérmelo | farlo | farmelo",
    "hem maken | die maken | er een maken",
)
"""Behind 'would one mandrel do for all of it' these ask for one."""
HOW_MANY = word_set(
    "one two both same zwei beide einer eins deux seul même dos uno una sola mismo due entrambi",
    "stesso stessa twee één eentje dezelfde dwa jeden två",
)
"""What stands against a count behind 'or' where it is asked how many it takes."""
QUOTES = word_set("quote price pricing please pls bitte angebot anbieten prix devis precio prezzo")
MODALS = word_set(
    "can could will would does do is might may should kann kannst könnte reicht geht passt würde",
    "que",
    "qu peut pourrait puede podría può potrebbe kan zou if whether ob si se als no",
)
CORRECTIONS = phrases(
    "make that | make it | sorry | no wait | wait | actually | scratch that | correction",
    "on second thought | change that to | change it to | change the quantity | change the qty",
    "i meant",
    "i mean | should be | better make | besser | doch | lieber | korrektur | plutôt | finalement",
    "en fait | mejor | perdón | corrijo | anzi | scusate | meglio | toch | beter | sorry",
)
DISCOUNTS = word_set(
    "discount discounts rabatt rabatte skonto nachlass remise remises descuento descuentos sconto",
    "sconti korting kortingen break breaks cheaper billiger günstiger staffel",
)
FROM_SO_MANY = word_set(
    "from at over above ab von über vanaf boven partir de dès desde da dal oltre"
)
"""Before a count these name how many a discount takes."""
THIS_TIME = phrases(
    "this time | diesmal | dieses mal | cette fois | esta vez | questa volta | deze keer",
    "dit keer",
    "denna gång | tym razem | desta vez",
)
CONDITIONS = word_set(
    "if when unless maybe perhaps possibly might falls wenn eventuell vielleicht evtl peut si",
    "quizás",
    "forse magari misschien als provided depending",
)
LATER = word_set(
    "later next future afterwards follow follows subsequent subsequently repeat",
    "später folgen nächstes ultérieurement luego después poi dopo straks",
)
OTHERWISE = word_set("otherwise else sinon ansonsten sonst altrimenti anders sino")
# On a line that speaks of other tooling a quantity is not one of mandrels.
OTHER_TOOLING = word_set(
    "wiper wipers clamp clamps collet collets faltenglätter lubricant grease spare essuyeur",
    "rascador rings washers washer nipples nipple bolts bolt screws nuts flanges flange gaskets",
    "gasket bushings bearings fittings dichtungen scheiben schrauben muttern flansche",
    "rondelles boulons tornillos arandelas juntas viti rondelle guarnizioni bouten moeren",
    "pinza spannbacke spannbacken gleitschiene",
)
