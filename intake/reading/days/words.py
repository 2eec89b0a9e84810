"""The words of days and of delivery, in the languages that customers write."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from dateutil.relativedelta import FR, MO, SA, SU, TH, TU, WE, weekday

from ..text.phrases import PhraseTable, phrases, word_set

Cue = Literal["delivery", "passive", "limit", "wish", "due", "other"]
"""Delivery words; 'needed', of a mandrel or a quotation; 'no later than', which leans on the word
before it; words of need; 'due', which may be a quotation's; words of other days."""

_MONTHS = """
1 jan january januar jänner janvier enero gennaio januari styczen stycznia janeiro
2 feb february februar feber fevrier febrero febbraio februari febr luty lutego fevereiro févr
3 mar march märz maerz mrz mars marzo maart mrt marca marzec março
4 apr april avril abril aprile avr abr kwietnia kwiecień
5 may mai mayo maggio mei maj maja maio
6 jun june juni juin junio giugno czerwca czerwiec junho
7 jul july juli juillet julio luglio lipca lipiec julho juil
8 aug august août agosto augustus augusti sierpnia sierpień ago
9 sep sept september septembre septiembre settembre września wrzesień setembro
10 oct october oktober octobre octubre ottobre okt października październik outubro
11 nov november novembre noviembre listopada listopad novembro
12 dec december dezember dez décembre decembre diciembre dicembre dic grudnia grudzień dezembro déc
"""
_WEEKDAYS: tuple[tuple[weekday, str], ...] = (
    (MO, "mon monday montag lundi lunes lunedì maandag måndag mandag segunda"),
    (TU, "tue tues tuesday dienstag mardi martes martedì dinsdag tisdag tirsdag"),
    (WE, "wed wednesday mittwoch mercredi miércoles mercoledì woensdag onsdag"),
    (TH, "thu thur thurs thursday donnerstag jeudi jueves giovedì donderdag torsdag"),
    (FR, "fri friday freitag vendredi viernes venerdì vrijdag fredag"),
    (SA, "sat saturday samstag samedi sábado sabato zaterdag"),
    (SU, "sun sunday sonntag dimanche domingo domenica zondag"),
)
_NUMBERS = """
1 a one ein eine einer einem un une uno una een
2 two couple zwei deux dos due twee
3 three drei trois tres tre drie
4 four vier quatre cuatro quattro
5 five fünf cinq cinco cinque vijf
6 six sechs seis sei zes
7 seven sieben sept siete sette zeven
8 eight acht huit ocho otto
10 ten zehn dix diez dieci tien
12 twelve zwölf douze doce dodici twaalf
14 fourteen vierzehn quatorze catorce quattordici veertien
"""
_SPANS: tuple[tuple[Literal["days", "weeks", "months"], str], ...] = (
    ("days", "day days tag tage tagen jour jours día días giorno giorni dag dagen"),
    ("weeks", "week weeks wk wks woche wochen semaine semaines semana semanas settimana settimane"),
    ("weeks", "weken veckor tygodni tygodnie"),
    ("months", "month months monat monate monaten mois mes meses mese mesi maand maanden"),
)


def _numbered(table: str) -> dict[str, int]:
    return {
        word: int(line.split()[0])
        for line in table.strip().splitlines()
        for word in word_set(line.split(None, 1)[1])
    }


MONTHS: Mapping[str, int] = _numbered(_MONTHS)
WEEKDAYS: Mapping[str, weekday] = {w: day for day, names in _WEEKDAYS for w in word_set(names)}
NUMBERS: Mapping[str, int] = _numbered(_NUMBERS)
SPANS: Mapping[str, Literal["days", "weeks", "months"]] = {
    w: span for span, names in _SPANS for w in word_set(names)
}
SUFFIXES = word_set("st nd rd th er ere e de te ste")
"""Of an ordinal in figures: '1st', '1er', '4e'."""

ENDS = word_set("end eom ende fin finales final fine eind einde slutet koniec końca fim konca")
MIDDLES = word_set("middle mid mitte mi mediados metà half meados medio")
BEGINNINGS = word_set("beginning start anfang début principios inizio begin início")
OF_THE = word_set("of the de di du del van des der dem les le el i") | {"-"}

IN_SPAN = phrases(
    "in | within | inside | in about | within about | within the next | in the next | in max",
    "innerhalb von | innerhalb | binnen | in ca | dans | sous | d ici | dans les | en | dentro de",
    "en unas | entro | tra | fra | in circa | over | om | w ciągu",
)
WEEK_NUMBERS = word_set("kw cw wk week kalenderwoche semaine semana settimana vecka uge tydzień")
CHRISTMAS = word_set("christmas xmas weihnachten noël navidad natale kerst kerstmis jul")
EASTER = word_set("easter ostern pâques pascua pasqua pasen")
FEASTS = CHRISTMAS | EASTER | {"thanksgiving", "tomorrow"}
FOLLOWING = word_set("next nächsten nächster prochain volgende próximo prossimo")
YEARS = word_set("year jahres année año anno jaar")
ROUGHLY = word_set("about ca max approx les the next circa environ etwa ungefähr")
DIRECT = word_set(
    "by before until till on due is date required needed wanted latest arrive",
    "bis am zum vor spätestens den der le avant pour du del el antes para il entro dal op voor",
    "tegen uiterlijk do no per thru até senast på den liefertermin termin lieferdatum lieferung",
    "livraison délai entrega plazo consegna levering leverdatum levertijd",
) | {":", "=", ".", "…", "-"}
"""Right before figures without a year these make them a day."""
TUBES = word_set("tube tubes tubing pipe rohr rohre rundrohr tubo tubos tubi buis buizen ø")
"""Right behind these '25/2' is an OD and a wall."""
LIMITS = word_set("uiterlijk tegen voor op leverdatum levering spätestens bis") | {":"}
"""Behind these '20-11' is a day too, as the Dutch write it."""
_PLACES = (
    "hands hand door dock site shop plant factory mailbox works yard bench warehouse place house"
    " stores facility depot premises doorstep receiving"
)
_THERE = tuple(
    f"{preposition} {whose} {place}"
    for preposition in ("in", "at", "on", "to")
    for whose in ("our", "my", "the", "your")
    for place in (*_PLACES.split(), "receiving dock", "loading dock", "unloading dock")
    if not (whose == "the" and place in ("shop", "works", "place", "bench", "hand", "house"))
)
_THERE_ABROAD = (
    "auf unserem hof | in unserem werk | in unserem haus | in unserem lager | in unserer werkstatt",
    "an unserer rampe | im wareneingang | wareneingang | bei uns im haus",
    "dans nos locaux | dans notre atelier | dans notre usine | dans notre dépôt | à notre usine",
    "à notre atelier | à quai | sur notre site | sur site | dans nos ateliers",
    "en nuestro almacén | en nuestro taller | en nuestra planta | en nuestra fábrica",
    "en nuestras instalaciones | en muelle | en nuestra nave | en nuestro muelle",
    "nel nostro magazzino | nel nostro stabilimento | presso la nostra sede | presso di noi",
    "nella nostra officina | presso il nostro magazzino | da noi in",
    "in ons magazijn | in onze werkplaats | op onze werf | in ons bedrijf | op onze locatie",
)
_DELIVERY = phrases(
    " | ".join(_THERE),
    *_THERE_ABROAD,
    "deliver | delivery | deliveries | delivered | deliv | delivery date | in hand | on site",
    "onsite",
    "in house | on dock | on my bench | here | with us | with me | at us | to us | arrive",
    "arrives",
    "arrival | arriving | ready | ship | shipping | need date | date needed | ship date",
    "need by | date required | required date | ros date | must have | in service | get these",
    "get those | have these | have those | have one | turn around | turned around | send by",
    "receive",
    "installed by | pick up | pick it up | pick them up | pick one up | collect | holen",
    "chercher | récupérer",
    "enlèvement | recogemos | recoger | recogida | ritirarlo | ritirare | ritiro | ophalen | halen",
    "odbiór | pickup | have them | have it | have this | get it",
    "get them",
    "when we need | time is | eta | dock date | want it | want them",
    "liefertermin | lieferung | geliefert | liefern | benötigen | wunschtermin",
    "termin | lieferdatum | abholen | abholung | bedarf | bedarfstermin | brauchen",
    "brauche | bräuchten | bei uns | vor ort | eintreffen | da sein | zugestellt",
    "livraison | livré | livrer | livrés | délai | recevoir | reçu | réception",
    "besoin | il nous faut | date souhaitée | chez nous | être ici | être là | être chez nous",
    "hier sein | hier zijn | estar aquí | essere qui | in huis",
    "lo requerimos | los requerimos | requerimos para | debe estar aquí | deben estar aquí",
    "estar aquí",
    "ne abbiamo bisogno | ne abbiamo bisogno per | qui da noi",
    "hier zijn | hier hebben | in huis zijn | in huis hebben | nodig op | nodig voor",
    "entrega | entregar | entregado | lleguen | llegue | llegar | recibir | plazo | fecha tope",
    "fecha límite | fecha requerida | lo necesitamos | los necesitamos | tenerlo",
    "tenerlos | los tienen | lo tienen | necesitamos | necesito",
    "consegna | consegnare | consegnato | ricevere | arrivare | ci serve | ci servono",
    "levering | leverdatum | geleverd | leveren | binnen zijn | ontvangen",
    "available by | available before | available latest | available no later | disponible avant",
    "disponible pour | disponible para | disponible antes | disponibles avant | disponibles pour",
    "disponibles para | disponibles antes | disponibile entro | disponibile per "
    "| disponibili entro",
    "disponibile prima | disponibili per | beschikbaar voor | beschikbaar tegen",
    "beschikbaar uiterlijk | verfügbar bis | verfügbar spätestens | bereit bis | fertig bis",
    "listo para | listos para | prêt pour | prêt avant | pronto per | pronto entro | klaar voor",
    "livrable | livrables | deliverable | lieferbar | leverbaar",
    "prazo | até | dostawa | dostawy | termin dostawy | leverans | levereras | 納期 | 着",
)
_WISH = phrases(
    "need | needs | want | wants | would like | d like | must | should | ideally | hoping | hope",
    "have to | has to | gotta | rush | urgent | preferably | if possible | by when",
    "möchten | möchte | müssen | muss | sollte | sollten | soll | gern | nous voudrions | voudrais",
    "faut | souhaitons | idéalement | quiero | queremos | ojalá | podrían servirnos | servirnos",
    "faudrait | hace falta | hacen falta | haría falta | harían falta | necesitaríamos",
    "querríamos | urge | occorre | occorrono | occorrerebbe | serve | servono | servirebbe",
    "servirebbero | bisogno",
    "c est pour | ce serait pour | serait pour | sería para | sarebbe per | wäre zum",
    "vorremmo | vorrei | deve | devono | moet | moeten | graag | precisamos | preciso",
    "potrzebujemy",
)
MODALS = word_set(
    "must should soll sollte sollten sollen muss müssen deve devono moet moeten doit doivent debe",
    "deben",
)
"""What should be then is named before them: 'your bid should reach us by Friday'."""
_PASSIVE = phrases(
    "needed | needed by | required | require | required by | req d | wanted | wanted by | benötigt",
    "necesario | necesaria | necessario | potrzebne | potrzebny",
    "gebraucht | erforderlich | requis | nécessaire | requerido | requerida | richiesto",
    "richiesta",
    "nodig | tassativa | tassativo",
)
_LIMIT = phrases(
    "no later than | not later than | at the latest | at latest | spätestens | au plus tard",
    "a más tardar | como muy tarde | como tarde | al più tardi | uiterlijk | senast | najpóźniej",
    "como máximo | al massimo | au maximum",
)
_DUE = phrases("due | due date | deadline | latest | frist | échéance | scadenza | vencimiento")
_OTHER = phrases(
    "know | hear | hear back | feedback | numbers | figures | information | info | details",
    "estimate",
    "estimates | budget | costing | costs | cost | submit | submission | submissions | confirm",
    "confirmation | get back | input | bescheid | auskunft | kosten | kostenschätzung | schätzung",
    "chiffrage | coût | estimation | costo | coste | estimación | presupuestar | stima | riscontro",
    "terugkoppeling | reactie | besked | svar | comparison | award | awarded | compare | ballpark",
    "quote | quotes | quoted | quoting | quotation | quotations | offer | offers | bid | bids",
    "price",
    "prices | priced | pricing | reply | respond | response | answer | rfq | tender | proposal",
    "call me | phone | meeting | visit | valid | validity | good until | invoice | paid | payment",
    "net | in dock",
    "expires | expire | expiry | ordered | bought | shipped on | shipped the | you shipped",
    "was shipped",
    "wrote | sent | received | last order | last time | last year | closed | closing | closes",
    "close",
    "we shut | are shut | is shut | shut down | shuts | shutting | holiday | holidays | vacation",
    "absent | away | out of | back on | open from | leaves | leave",
    "sails | launch | meets | starts | open | opens | dated | rev | revision | drawing | dwg",
    "issue",
    "issued | your letter | my letter | letter of | mail of | email of | made on | delivered on",
    "angebotsabgabe | angebotstermin | abgabetermin | abgabefrist | einreichung | einreichen",
    "presentación | ofertas | składania | ofert | inschrijving | etd | sailing | departs",
    "departure",
    "angebot | angebote | angebotsfrist | abgabe | anbieten | bieten | rückmeldung | antwort",
    "gültig",
    "bindefrist | rechnung | schrieb | geschlossen | betriebsferien | urlaub | zeichnung | stand",
    "offre | devis | réponse | répondre | valable | facture | congés | fermé | plan du | cotation",
    "oferta | presupuesto | cotización | respuesta | responder | válida | válido | vacaciones",
    "factura",
    "cerrado | plano | offerta | preventivo | risposta | rispondere | valida | ferie | chiusi",
    "disegno",
    "fattura | offerte | prijsopgave | antwoord | geldig | vakantie | gesloten | tekening",
    "factuur",
    "proposta | cotação | orçamento | resposta | férias | oferty | wycenę | odpowiedź | gilt",
    "po | purchase order | placed | decision | decide | next revision | inspection on | audit",
    "pays for itself | pay for itself | paid for itself | pays back | pay back | pay itself",
    "pays off | pay off | paid off | payback | break even | breaks even | earn its | earns its",
    "earned its | recoup | recouped | amortised | amortized | amortisiert | amortisieren",
    "rentiert | rentabilisé | rentabiliser | amorti | amortir | amortizado | amortizar",
    "amortizza | ammortizzato | ammortizzare | ammortizza | terugverdiend | terugverdienen",
    "window | was delivered | were delivered | finish",
    "finished | complete | completed | race | show | event | season | install | production",
)
DELIVERY = _DELIVERY
WISH = _WISH
OTHER = _OTHER
CUES: tuple[tuple[Cue, PhraseTable], ...] = (
    ("delivery", _DELIVERY),
    ("other", _OTHER),
    ("due", _DUE),
    ("limit", _LIMIT),
    ("passive", _PASSIVE),
    ("wish", _WISH),
)
ANOTHERS = word_set("parts part job frames order project payment invoice customer race prototype")
"""'Our parts are due Dec 18' is no day of delivery to them."""
THINGS = word_set(
    "rail rails railing railings handrail handrails frame frames chair chairs table tables part",
    "parts hoop hoops cage cages gate gates header headers exhaust exhausts manifold manifolds",
    "job jobs project coil",
    "coils lamp lamps bed beds boat boats car cars truck trucks bike bikes trailer trailers rack",
    "racks tube tubes tubing pipe pipes material machine bender die dies former vessel bars",
    "customer geländer rahmen teile stühle tische rohr rohre bögen gestelle maschine schiff kunde",
    "pièces châssis cadres rampes tubes navire client piezas barandillas bastidores chasis tubos",
    "máquina buque cliente pezzi telai ringhiere tubi macchina nave cliente onderdelen leuningen",
    "stoelen buizen schip klant",
)
"""What customers make, own or wait for: its day is not that of the mandrel."""
TOOLS = word_set(
    "mandrel mandrels tool tools tooling dorn dorne biegedorn kugeldorn mandrin mandrins mandril",
    "mandriles mandrino mandrini anima doorn doornen trzpień it them one ihn sie spare",
)
SENDS = word_set("ship deliver livrer entregar consegnare leveren liefern")
PERSONS = word_set("we i wir ich nous je wij ik you sie vous")
OWN_HAND = PERSONS | word_set("devons dois tenemos debemos tengo dobbiamo devo customer")
YOURS = word_set("you your u sie ihr vous usted ustedes voi jullie please bitte")
AT_PAYMENT = phrases("cash on | cash at | pay on | pay at | paid on | payment on | bar bei")
CONDITIONED = phrases("if you | when you | in case you | wenn sie | falls sie | si vous | si lo")
CLAUSES = word_set("and but so und aber et mais y pero e ma en maar then") | {",", ";", ":"}
ARTICLES = word_set(
    "the le la el il den dem der de del di about around ca circa noon like say maybe roughly",
    "approx zum",
)
PRONOUNS = word_set("it them this these those that one two her him es sie ihn lo la los las les")
THERE = word_set("in here back over out there delivered shipped")
"""Behind the pronoun: 'I need it in by Friday'."""
SET_UP = word_set(
    "mounted fitted installed running montiert eingebaut aufgebaut montes monte installe installes",
    "montado montados instalado instalados montato montati installato gemonteerd ingebouwd",
)
"""What is set up by then has to come before; a day of coming beside it is the one."""
ON = word_set("am zum pour para per du dal op")
DASHED_BEHIND = word_set("op uiterlijk tegen leverdatum")
"""Behind these '30-10' is a day, as the Dutch write it."""
UNTIL = word_set("until till latest jusqu au hasta fino tot al spatestens uiterlijk tardi tard")
LEADING = word_set("by before bis vor avant ici antes prima entro voor tegen do")
AFTER = phrases(
    " | ".join(_THERE),
    *_THERE_ABROAD,
    "need it | need them | need this | need these | at the latest | the latest | latest",
    "or sooner | or earlier | is your date | is when | would be",
    "is fine | if possible | if you can | please deliver | delivery | positively | is needed",
    "is required | we need | is the date | is our date | in hand | on site | at our | to our",
    "spätestens | benötigt | erforderlich | gebraucht | geliefert | liefern | lieferung",
    "hier sein",
    "au plus tard | à réception | chez nous | a más tardar | como muy tarde | al più tardi",
    "in consegna",
    "uiterlijk | nodig | geleverd | binnen | senast",
)
DELIVERED = phrases(
    "lieferbar | geliefert | zu liefern | delivered | leverbaar | geleverd | livrable | livré",
    "in hand | on site | eintreffend | entregado | consegnato",
)
"""Right behind a day these make it one of delivery, whatever stands before."""
BY_THEN = word_set(
    "available disponible disponibles disponibile disponibili beschikbaar verfügbar bereit fertig",
    "listo listos prêt pronto klaar",
)
PRESENT = word_set(
    "am m are re bin sind suis sommes estoy estamos sono siamo ben zijn ik ich i we wir je wij"
)
"""Beside these a person is available, and no mandrel."""
DONE = word_set("delivered arrived shipped geliefert livré entregado consegnato geleverd")
WAS = word_set("was were been got wurde wurden fue fueron werd werden")
LAST_DAY = phrases(
    "is the last | would be the last | will be the last | is the latest | would be the latest",
    "is the absolute | is our drop | is my drop | is drop dead | is our last | is the cutoff",
    "is our cutoff | is our deadline | is the deadline | is the very | ist der letzte",
    "wäre der letzte | ist der letztmögliche | ist das letzte | wäre das letzte | est le dernier",
    "serait le dernier | est la dernière | es el último | sería el último | è l ultimo",
    "sarebbe l ultimo | is de laatste | zou de laatste",
)
"""Behind a day, after another one: the strictest of them."""
OCCASIONS = word_set("race show event season")
SO = word_set("so thus hence therefore also donc quindi dus entonces meaning")
LATEST = word_set("latest spätestens uiterlijk")
PAST = phrases(
    "last time | last one | the last | last year | last month | ago",
    "letztes mal | letztes jahr | la dernière",
)
EXPLAINS = word_set("i e ie that s is so also d h dh means meaning namely say or on am the zum") | {
    ",", "(", "=", "-", "/", ".", ":",
}  # fmt: skip
CORRECTS = phrases(
    "sorry | no wait | wait | make that | make it | rather | actually | i mean | i meant | instead",
    "correction | scratch that | besser | doch | korrektur | plutôt | mejor | anzi | liever",
)
_FOREIGN = word_set(
    "und der die das für bitte wir mit le les des pour nous vous et el los las para con por il per",
    "di della che het een voor van wij de la le del un una es och att med com não uma dla na",
    "proszę een graag merci gracias",
)
_ENGLISH = word_set("the and for we you please is need on with by our are have it of to")


def speaks_english(words: tuple[str, ...]) -> bool:
    """Whether a text is rather English: other writers put the day before the month."""
    foreign = sum(1 for word in words if word in _FOREIGN)
    return foreign < 3 or foreign <= sum(1 for word in words if word in _ENGLISH)


MEASURES = word_set(
    "x by mm in inch inches od id wall clr rad radius thick thk ga gauge tube zoll pouce pouces",
    "pulgada pulgadas pollice pollici",
) | {'"', "*", "°"}
