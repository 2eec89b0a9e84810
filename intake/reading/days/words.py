"""The words that say what a day is for, in the languages that customers write."""

from __future__ import annotations

from typing import Literal

from ..text.phrases import PhraseTable, phrases, word_set

Cue = Literal["delivery", "passive", "limit", "wish", "due", "other"]
"""Delivery words; 'needed', of a mandrel or a quotation; 'no later than', which leans on the word
before it; words of need; 'due', which may be a quotation's; words of other days."""


DIRECT = word_set(
    "by before until till on due is date required needed wanted latest arrive",
    "bis am zum vor spätestens den der le avant pour du del el antes para il entro dal op voor",
    "tegen uiterlijk do no per thru até senast på den liefertermin termin lieferdatum lieferung",
    "livraison délai entrega plazo consegna levering leverdatum levertijd",
) | {":", "=", ".", "…", "-"}
"""Right before figures without a year these make them a day."""
_PLACES = (
    "hands hand door dock site shop plant factory mailbox works yard bench warehouse place house"
    " stores facility depot premises doorstep receiving"
)
OUR_PLACE = tuple(
    f"{preposition} {whose} {place}"
    for preposition in ("in", "at", "on", "to")
    for whose in ("our", "my", "the", "your")
    for place in (*_PLACES.split(), "receiving dock", "loading dock", "unloading dock")
    if not (whose == "the" and place in ("shop", "works", "place", "bench", "hand", "house"))
)
OUR_PLACE_ABROAD = (
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
    " | ".join(OUR_PLACE),
    *OUR_PLACE_ABROAD,
    "deliver | delivery | deliveries | delivered | deliv | delivery date | in hand | on site",
    "onsite",
    "in house | on dock | on my bench | here | with us | with me | at us | to us | arrive",
    "arrives",
    "arrival | arriving | ready | ship | shipping | need date | date needed | ship date",
    "need by | rdd | req date | rqd date | reqd date | req d date | site date | be with our",
    "be with my",
    "date required | required date | ros date | must have | in service | get these",
    "get those | have these | have those | have one | turn around | turned around | send by",
    "receive",
    "installed by | pick up | pick it up | pick them up | pick one up | collect | holen",
    "fetch it | fetch them | hole ihn | hole sie | holen ihn | holen wir | expect it",
    "erwarten ihn",
    "l attendons | l attend | les attendons | lo aspettiamo | li aspettiamo | lo esperamos",
    "los esperamos | verwachten hem | verwachten ze",
    "chercher | récupérer | le prendre | les prendre | recogerlo | recogerlos | que esté",
    "que estén",
    "enlèvement | recogemos | recoger | recogida | ritirarlo | ritirare | ritiro | ophalen | halen",
    "odbiór | pickup | have them | have it | have this | get it",
    "get them",
    "when we need | time is | eta | dock date | want it | want them",
    "liefertermin | lieferung | geliefert | liefern | benötigen | wunschtermin",
    "termin | lieferdatum | abholen | abholung | bedarf | bedarfstermin | brauchen",
    "brauche | bräuchten | bei uns | vor ort | eintreffen | da sein | zugestellt",
    "mise à disposition | livraison | livré | livrer | livrés | délai | recevoir | reçu",
    "réception",
    "besoin | il nous faut | date souhaitée | chez nous | être ici | être là | être chez nous",
    "hier sein | hier zijn | estar aquí | essere qui | in huis",
    "lo requerimos | los requerimos | requerimos para | debe estar aquí | deben estar aquí",
    "estar aquí | esté aquí | estén aquí | en nuestra casa | en nuestra empresa | sia qui",
    "siano qui | essere da noi | sia da noi | siano da noi | soit ici | soit chez nous",
    "soient chez nous",
    "ne abbiamo bisogno | ne abbiamo bisogno per | qui da noi",
    "hier zijn | hier hebben | in huis zijn | in huis hebben | nodig op | nodig voor",
    "entrega | entregar | entregado | lleguen | llegue | llegar | recibir | plazo | fecha tope",
    "fecha límite | fecha requerida | lo necesitamos | los necesitamos | tenerlo",
    "tenerlos | los tienen | lo tienen | necesitamos | necesito",
    "consegna | consegnare | consegnato | ricevere | arrivare | ci serve | ci servono",
    "levering | leverdatum | levertijd | lieferzeit | geleverd | leveren | binnen zijn | ontvangen",
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
    "could do with | can do with | send us | send me | need | needs | want | wants | would like",
    "d like | must | should | ideally | hoping | hope",
    "have to | has to | gotta | rush | urgent | preferably | if possible | by when",
    "möchten | möchte | müssen | muss | sollte | sollten | soll | gern | nous voudrions | voudrais",
    "faut | souhaitons | idéalement | quiero | queremos | ojalá | podrían servirnos | servirnos",
    "faudrait | hace falta | hacen falta | haría falta | harían falta | necesitaríamos",
    "veux | voulons | voglio | vogliamo | wil | willen | wollen | querríamos | urge | occorre",
    "occorrono | occorrerebbe | serve | servono | servirebbe",
    "servirebbero | bisogno",
    "urgente | spoed | voudrait | aimerait | si es posible | si posible | si possible",
    "se possibile | indien mogelijk | wenn möglich",
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
    "not beyond | not after | no later than | not later than | at the latest | at latest",
    "spätestens | au plus tard",
    "a más tardar | como muy tarde | como tarde | al più tardi | uiterlijk | senast | najpóźniej",
    "como máximo | al massimo | au maximum",
)
_DUE = phrases(
    "due | due date | deadline | latest | frist | échéance | scadenza | vencimiento",
    "tope | termine ultimo | date limite | date butoir | data limite | data ultima",
    "uiterste datum",
)
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
    "offre | offres | devis",
    "réponse | répondre | valable | facture | congés | fermé | plan du | cotation",
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
    "stoelen buizen schip klant wagen auto fahrzeug boot yacht motorrad fahrrad anhänger käfig",
    "voiture véhicule bateau voilier moto vélo remorque coche vehículo barco bici remolque jaula",
    "veicolo barca rimorchio gabbia voertuig motor fiets aanhanger kooi vehicle motorcycle yacht",
)
"""What customers make, own or wait for: its day is not that of the mandrel."""
PAPERS = word_set(
    "certificate certificates certification cert certs paperwork papers documents document forms",
    "form permit permits application applications entry entries homologation logbook report",
    "reports drawings drawing plans approval submittal submittals dossier passport licence license",
    "zertifikat bescheinigung papiere unterlagen gutachten abnahme zeichnungen genehmigung antrag",
    "prüfbericht bericht nachweis nachweise zulassung dokumente certificat certificats papiers",
    "documents rapport plans autorisation attestation homologuer procès formulaire agrément",
    "certificado certificados papeles documentos documentación informe planos permiso solicitud",
    "homologación inscripción certificato certificati documenti documentazione rapporto disegni",
    "permesso omologazione collaudo relazione certificaat certificaten papieren documenten",
    "verslag tekeningen vergunning keuring keuringsrapport aanvraag",
)
"""What somebody wants to see on paper: 'the inspector wants the certificate by 1 March'."""
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
THERE = word_set("in here back over out there delivered shipped")
"""Behind the pronoun: 'I need it in by Friday'."""
SET_UP = word_set(
    "mounted fitted installed running montiert eingebaut aufgebaut montes monte installe installes",
    "montado montados instalado instalados colocado colocados montato montati installato",
    "gemonteerd ingebouwd",
)
"""What is set up by then has to come before; a day of coming beside it is the one."""
URGENTLY = word_set(
    "impérativement absolument absolutely zwingend unbedingt dringend assolutamente tassativamente",
    "imperativamente obligatoriamente beslist absoluut",
)
"""These may stand between a wish and its day."""
PRONOUNS = word_set("it them this these those that one two her him es sie ihn lo la los las les er")
ON = word_set("am zum pour para per du dal op a")
FOR = word_set("pour para per for")
"""'El primero, para el 6 de noviembre': with an article these lead to a day."""
ON_A_DAY = word_set("on by for am zum bis le pour el para il per op voor")
NONE = word_set("no keine pas nessuna ninguna geen")
ON_OR_UNTIL = word_set("on until till")
WISHED_TOOL = word_set("need needs want wants send")
"""Of a mandrel behind these, 'until' says 'by' in the English of others."""
UNTIL = word_set("until till latest jusqu au hasta fino tot al spatestens uiterlijk tardi tard")
LEADING = word_set("by before bis vor avant ici antes prima entro voor tegen do")
LEADS_LIMIT = LEADING | UNTIL
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
SORRY_FOR = word_set("for about")
MEANS = phrases(
    "let s say | let us say | sagen wir | sag ma | disons | digamos | diciamo | laten we zeggen",
    "zeg maar | powiedzmy",
)
"""'By Whitsun, let's say 22 May': the second is how the first is meant."""
