"""The words with which customers count mandrels, and those that count something else."""

from __future__ import annotations

from functools import lru_cache

from ..text.phrases import PhraseTable, phrases, word_set

_COUNTS = """
1 one single solitary lone einer eines eins einzelner einzelnen einzigen oana oan oanen
1 eentje uno seul unico jeden jedna
1 um uma en ett et
1 another otro otra altro
2 two couple pair zwei zwo deux dos due twee dois duas dwa dwie två tva paire paio coppia
3 three drei trois tres tre drie três trzy
4 four vier quatre cuatro quattro quatro cztery fyra
5 five fünf fuenf cinq cinco cinque vijf piec pięć fem
6 six sechs seis sei zes szesc sześć sex seks
7 seven sieben sept siete sette zeven sete siedem
8 eight acht huit ocho otto oito osiem
9 nine neun neuf nueve nove negen
10 ten zehn dix diez dieci tien dez dziesiec
11 eleven elf undici
12 twelve zwölf zwoelf douze doce dodici twaalf doze dozen dutzend douzaine docena dozzina dozijn
13 thirteen dreizehn treize trece tredici
14 fourteen vierzehn quatorze catorce
15 fifteen fünfzehn quinze quince quindici vijftien
16 sixteen sechzehn seize
17 seventeen
18 eighteen achtzehn
19 nineteen
20 twenty zwanzig vingt veinte venti twintig vinte
30 thirty dreissig trente treinta trenta dertig
40 forty vierzig quarante cuarenta
50 fifty fünfzig cinquante cincuenta
"""
COUNTS: dict[str, int] = {
    word: int(line.split()[0])
    for line in _COUNTS.strip().splitlines()
    for word in word_set(line.split(None, 1)[1])
}
TENS = word_set("twenty thirty forty fifty")
DOZENS = word_set("dozen dutzend douzaine docena dozzina dozijn")
HALF = word_set("half halbes demi media mezza")
"""Before a dozen: six."""
PAIRS = word_set("pair couple paire paio coppia")
# Counts that are everyday words too: they count only before a piece, a mandrel, or "of them".
SHY = word_set("et en um uma sept sei fem tre sex due")
ASKS_SHYLY = word_set("servono vorrei vorremmo prendo serve bastano prendiamo solo")

ARTICLES = word_set("a an un une una uno ein eine einen einem nen een um uma en ett ana")
"""'a mandrel' asks for one only where it is asked for: see ``find_article``."""
NUMERAL_BEFORE = word_set("je jeweils nur lediglich davon solamente seulement slechts")
NUMERAL_AFTER = word_set(
    "solamente seulement soltanto unicamente solo sola seul seule único unico única einzigen",
    "einziger einzelnen enkele enkel",
)
"""Beside an article these make it a number: 'je ein Dorn', 'un solo mandril'."""

LABELS = phrases(
    "q : | qty | qnty | qtty | q ty | q tity | quantity | quantities | how many",
    "how many required",
    "no required | no req d | no . required | no . req d | no off | no . off | number required",
    "mandrels req d | mandrels reqd | mandrels required | mandrels needed | mandrels wanted",
    "number of mandrels | number needed | number off | no . of mandrels | nos required",
    "qty tools | qty tool | qty tooling | tool qty | tools qty | no of tools | no . of tools",
    "number of tools | quantity tools | tool quantity | tools required | tools needed",
    "no wanted | no . wanted | number wanted | nr required | n . | qty req d | qty reqd",
    "quantity req d | quantity reqd",
    "menge | anzahl | stückzahl | stueckzahl | bestellmenge | anfragemenge | bedarf menge",
    "quantité | qté | qtés | nombre | nbre | nb de mandrins | cantidad | cant | ctd | quantità",
    "q tà | q . tà | qta | aantal | antal | ilość | ilosc | quantidade | qtd | qtde | quant | adet",
    "数量 | 個数 | 수량 | n =",
)
PIECES = phrases(
    "pc | pcs | pce | piece | pieces | off | no | nos | ea | unit | units | set | sets",
    "tool set | tool sets | stück | stücke | stk | stck | stueck | st | exemplar | exemplare",
    "exemplaire | exemplaires | ejemplar | ejemplares | esemplare | esemplari",
    "pièce | pièces | pce | pces | pza | pzas | pieza | piezas | ud | uds | unidad | unidades",
    "pz | pezzo | pezzi | stuks | stuk | szt | sztuk | sztuka | sztuki | ks | kus | kusy",
    "peça | peças | pç | pçs | un | unid | adet | kpl | st | 个 | 個 | 本 | 支 | 件 | 개",
)
# "no" and "st" are words of their own too: as pieces they want a point or a mandrel behind them.
SHY_PIECES = word_set("no st un")
SINGULAR = word_set(
    "mandrel mandrell mandral mandrill mandril mandrle mandrl madrel manderl manrel mandrelle"
    " dorn biegedorn gliederdorn kugeldorn",
    "mandrin",
    "mandrino anima doorn buigdoorn trzpień trzpienia trn dor",
)
MANDRELS = SINGULAR | word_set(
    "mandrels mandrls madrels manderls manrels mandrelles",
    "mandrells mandrals mandrills mandrills mandriles mandrils mandris dorne dornen dorns",
    "biegedorne biegedornen gliederdorne gliederdornen kugeldorne mandrins mandrini anime",
    "doorns doornen buigdoornen trzpienie trzpieni trny dorner",
)
TOOLS = word_set("tool tools werkzeug outil outils herramienta utensile gereedschap")
# "mandrel bends", "a mandrel bender": the mandrel only says what kind of thing it is.
COMPOUND = word_set(
    "bend bends bending bender benders bent rod rods bar bars machine shank shanks extractor steel",
    "extractors ball balls link links holder holders lube lubricant grease tip tips nose steel",
    "stop",
)
OTHERS = word_set(
    "tube tubes tubing pipe pipes bend bends part parts hairpin hairpins frame frames rail rails",
    "handrail handrails hoop hoops loop loops cage cages coil coils bar bars stick sticks length",
    "lengths leg legs joint joints weld welds wiper wipers die dies former formers block blocks",
    "clamp clamps ball balls link links segment segments rod rods copy copies drawing drawings",
    "photo photos picture pictures sample samples bolt bolts screw screws machine machines bender",
    "benders size sizes radius radii question questions inch inches mm cm ft feet foot deg degrees",
    "gauge gage day days week weeks month months year years hour hours minute minutes man men",
    "people guys employees axis axes percent dollars euro euros chairs tables cars bikes trucks",
    "sections pages items lines point points way ways side sides end ends type types kinds kind",
    "option options thing things time times place head heads station stations shift shifts",
    "rohr rohre rohren röhren bogen bögen teil teile kugel kugeln glied glieder gliedern matrize",
    "faltenglätter zeichnung tage wochen monate jahre stangen grad größen maße",
    "coude coudes cintrage cintrages tuyau tuyaux bille billes plan plans jours semaines mois ans",
    "tubo tubos curva curvas curve dobleces bola bolas plano planos días semanas meses tubi sfere",
    "piega pieghe giorni settimane mesi buis buizen bocht bochten kogel kogels weken dagen maanden",
    "ship hubs panels bundles pallets boxes lots batch batches patterns passes spares teeth",
)
STOPS = word_set(
    "and or for with to in at on from by per und oder für mit bei et ou pour avec y o para con e",
    "per en of voor met but so if when is are was were do does will would can could has have had",
    "that which who than as because ist sind est sont es son sono zijn och till",
    "without ohne kein keinen keine sans sin senza zonder geen",
)
MEASURES = word_set(
    "x clr od id wall rad radius r dia diameter diam thick thk ga gauge gage swg bwg sch schedule",
    "mm",
    "in inch cm d wt t center centre centerline centreline cl nb dn deg innen aussen wand",
    "biegeradius",
    "durchmesser rayon raggio radio straal hart mitte wandstärke épaisseur espesor spessore moly",
    "dom",
) | {'"', "*", "°", "%"}
"""Behind a number these say that it measures something."""
WORDED = MEASURES - {"x", '"', "*", "in", "inch", "d", "dom", "moly", "od", "r", "t"}
"""Words of a size that don't stand between a count and its mandrel."""

EACH = word_set(
    "each ea apiece every je jeweils jede jeden jeder jedem chaque chacun chacune cada ciascuno",
    "ciascuna ciascun ognuno ogni elk elke ieder varje hver każdy both respectively",
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
)
# The same behind the number: "one please", "1 ought to do", "two to start".
ASKS_BARE_AFTER = phrases(
    "a piece",
    "only | please | pls | plz | plse | kindly | will do | ll do | will suffice | ought to do",
    "should do | would do | does me | does it | is enough | is all | is plenty | is fine",
    "this time | diesmal | cette fois | esta vez | questa volta | deze keer",
    "suffices | s plenty | s enough | s all | s fine | should do me | ought to do me",
    "would be enough | should be enough | will be enough | to start | to begin | for now",
    "for a start | for starters | at first | each | ea | apiece | of each | of ea | igual",
    "like it | just like | the same | of the same | identical",
    "uno per misura | una per misura | uno por medida | un par taille | één per maat | je größe",
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
    "will is does this the it req altogether reicht genügt suffit basta",
)
DETERMINERS = word_set(
    "the this that these those which every another any each some no what old new next last same",
    "other first second third big small large bigger smaller good bad right wrong wrong whole ones",
    "der die das diese dieser ce cette cet le la este esta ese esa el quello questo lo die dat",
    "deze",
)

STRONG_AFTER = phrases("required | needed | wanted | req d | apiece")
"""Behind a number these say that it counts, whatever it might measure."""
SOMEBODYS = word_set("the your our my his their those this that")
LINKS = word_set("ball balls kugel kugeln bille billes bola bolas sfera sfere kogel kogels")
"""What a mandrel has several of: 'a three-ball mandrel'."""
SIZE_NOUNS = word_set("tube pipe rohr buis tubo ball plug bending kugel")
ONES = word_set("ones neue neuen nuevo nuevos nouveaux nuovo nuovi nieuwe")
"""'Need two new ones': the noun is not said again."""
SOLE_PIECE = word_set(
    "einzelstück einzelstueck einzelanfertigung einzelfertigung oneoff enkelstuks einzelteil"
)
"""Nouns that say 'one of it' without a number."""
SOLE_PHRASES = phrases(
    "pièce unique | pieza única | pezzo unico | pezzo singolo | enkel stuk | sola pieza",
    "single piece | single unit | à l unité",
)
MORE = word_set("more additional further extra mehr weitere weiterer autres más altri meer mais")
SPARE = word_set("spare spares backup backups reserve ersatz ersatzdorn rechange repuesto scorta")
AT_ONCE = phrases(
    "now | right now | for now | right away | straight away | asap | at once | immediately",
    "today | sofort | jetzt | gleich | tout de suite | maintenant | ahora | ya | subito | ora",
    "meteen | nu",
)
FOR_THE_SHELF = phrases(
    "for the shelf | for our shelf | for stock | for spare | as spare | as a spare | as backup",
    "as a backup | to keep on the shelf | to keep as a spare | on the shelf | for the tool crib",
    "fürs lager | für das lager | aufs lager | auf lager | als ersatz | als reserve",
    "pour le stock | en réserve | de rechange | para stock | de repuesto | de reserva",
    "di scorta | per scorta | di riserva | per il magazzino | voor op de plank | voor de plank",
    "voor voorraad",
)
JOINING = word_set("and plus und et y e en och samt") | {"&", "+", ","}
ANY_OF = word_set("and or to und oder et ou y o e en of bzw resp vs versus") | {"&", "/", ",", "-"}
NOT_LABEL = word_set(
    "annual yearly monthly weekly daily batch lot tube tubes pipe bend bends part parts production",
    "total minimum min moq order's jahres los rohr stock run series packing",
)
FILLERS = word_set(
    "is are of needed required wanted mandrel mandrels dorne dorn mandrins mandriles mandrini the",
    "would be will n nr no nos order approx pcs stk st ea each we this need want for of les de",
    "des di now jetzt nun neu désormais maintenant ahora adesso ora nu teraz",
    "stays stay remains bleibt reste queda resta blijft still",
    "please bitte svp graag to auf zu à a naar op raised increased",
) | {":", "=", "-", ".", "(", "[", "|", "#", "~", "*"}


UNIT_SINGLE = word_set("single solitary lone")
TIMES_X = word_set("anbieten liefern bestellen benötigt gebraucht required needed")
"""Behind '2x' these say that it counts, beside all that says please."""
CLOCK = word_set("after before until till around nach vor après avant antes después dopo na voor")
"""A number behind these is an hour: 'call me after 1'."""
SENTENCE_PIECES = word_set("nos off pc pcs pce piece pieces ea unit units pz pza pzas ud uds szt")
"""A capital behind the point of these begins a sentence; German writes 'Stk. Rohre'."""
TOTAL = phrases(
    "together | in all | in total | total | altogether | that makes | makes | so | zusammen",
    "insgesamt | gesamt | in summe | also | au total | en tout | soit | en total | in totale",
    "in tutto | in totaal | samen | dus | razem | łącznie | totalt | tillsammans",
)
"""Beside a count these say that it is that of all sizes taken together."""
OR = word_set("or oder ou o of eller lub")
FOR = word_set("for on in pour für para per voor of till do")


def is_mandrel(word: str) -> bool:
    """Whether a folded word names mandrels: German and Dutch build ever new compounds."""
    return word in MANDRELS or word.endswith(
        ("dorn", "dorne", "dornen", "doorn", "doorns", "doornen")
    )


@lru_cache(maxsize=8192)
def names_tool(word: str) -> bool:
    """Whether a folded word names mandrels or tools at large."""
    return word in TOOLS or is_mandrel(word)


def labelled_pieces() -> PhraseTable:
    """'Stk.: 1', 'pcs = 2', 'Mandrels: 3': a noun with a colon is a label."""
    nouns = [
        *(" ".join(phrase) for found in PIECES.values() for phrase in found),
        *sorted(MANDRELS),
        "required",
        "needed",
        "wanted",
        "number",
    ]
    return phrases(*(f"{noun} : | {noun} . : | {noun} =" for noun in nouns))
