"""The words with which customers count mandrels, and those that count something else."""

from __future__ import annotations

from functools import lru_cache

from ..text.phrases import PhraseTable, phrases, word_set

_COUNTS = """
1 one single solitary lone einer eines eins einzelner einzelnen einzigen einziger oana oan oanen
1 eentje uno seul unico unique jeden jedna
1 um uma en ett et
1 another otro otra altro
2 zweimal zweifach
3 dreimal dreifach
4 viermal
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
PAIRED = word_set("paar par paio")
"""Behind an article these may be two: see ``Numbers``."""
PAIRS = word_set("pair couple paire paio coppia")
# Counts that are everyday words too: they count only before a piece, a mandrel, or "of them".
SHY = word_set("et en um uma sept sei fem tre sex due")

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
    "amount : | count : | mandrini richiesti | mandrini necessari | mandrins demandés",
    "mandrins souhaités",
    "mandriles solicitados | mandriles pedidos | mandriles requeridos | mandriles necesarios",
    "benötigte dorne | gewünschte dorne | anzahl dorne | gewenste doornen | aantal doornen",
    "nombre de mandrins | número de mandriles | numero mandrini | numero di mandrini",
    "quantity req d | quantity reqd",
    "menge | anzahl | stückzahl | stueckzahl | bestellmenge | anfragemenge | bedarf menge",
    "quantité | qté | qtés | nombre | nbre | nb de mandrins | cantidad | cant | ctd | quantità",
    "q tà | q . tà | qta | aantal | antal | ilość | ilosc | quantidade | qtd | qtde | quant | adet",
    "数量 | 個数 | 수량 | n =",
)
PIECES = phrases(
    "pc | pcs | pce | piece | pieces | off | no | nos | ea | unit | units | set | sets",
    "tool set | tool sets | stück | stücke | stk | stck | stueck | st | exemplar | exemplare",
    "unité | unités | unità | eenheden | exemplaire | exemplaires | ejemplar | ejemplares",
    "esemplare | esemplari",
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
    "bent gebogen gebogene cintrés cintrées doblados dobladas curvados curvadas piegati curvati",
    "tubo tubos curva curvas curve dobleces bola bolas plano planos días semanas meses tubi sfere",
    "piega pieghe giorni settimane mesi buis buizen bocht bochten kogel kogels weken dagen maanden",
    "ship hubs panels bundles pallets boxes lots batch batches patterns passes spares teeth",
)
STOPS = word_set(
    "and or for with to in at on from by per und oder für mit bei et ou pour avec y o para con e",
    "per en of voor met but so if when is are was were do does will would can could has have had",
    "that which who than as because ist sind est sont es son sono zijn och till",
    "use uses nehmen benutzen verwenden haben utilisons utilise gardons garde avons usamos",
    "utilizamos tenemos usiamo utilizziamo abbiamo gebruiken hebben il el le den the het",
    "without ohne kein keinen keine sans sin senza zonder geen",
)
"""'Per il tubo da 18 usiamo il vecchio mandrino': what stands behind these is not counted."""
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


YOURS = word_set("your ihrer vos votre sus vuestros vostri uw jullie")
PAPERS = word_set(
    "prix preis precio prezzo prijs price quote quotation devis offre offerta oferta angebot",
    "offerte",
    "cotización presupuesto preventivo prijsopgave",
)
"""Of these an article before both is: 'a price for mandrels'."""
OF_THE_ONE = word_set("du del vom")
DEFINITE = word_set("the le el il den der het de") | OF_THE_ONE
TO_THE_ONE = word_set(
    "for of on us me uns mir nous nos ci mi ons mij für pour para per voor van di de"
)
"""Between what wishes and 'the mandrel'."""
SOMEBODYS = word_set("the your our my his their those this that")
LINKS = word_set("ball balls kugel kugeln bille billes bola bolas sfera sfere kogel kogels")
"""What a mandrel has several of: 'a three-ball mandrel'."""
SIZE_NOUNS = word_set("tube pipe rohr buis tubo ball plug bending bend kugel")
ONES = word_set("one ones neue neuen nuevo nuevos nouveaux nuovo nuovi nieuwe")
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


UNIT_SINGLE = word_set("single solitary lone")
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
