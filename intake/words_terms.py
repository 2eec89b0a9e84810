"""Words of questions that are one for the matching: endings, spellings, and the languages of the
trade. 'Dornspiel' and 'mandrel clearance' meet, so that an answer need not be worded six times.

Written without accents; case does not matter.
"""

from __future__ import annotations

import re

SMALL_WORDS = """
    a an the of for to in on at by with and or if is are was be been am do does did my our your
    it its this that these those there can could would should will shall may might please kindly
    just exactly so as any some have has had i we you u me us he they them one s t d l m re ve
    ll not n im ive id le la les un une de du des est et pour el los il lo di per der das den
    dem die ein eine einen einem ist sind fur und een het van voor en que es se al del con por
    una unos las ich wir sie man mir uns zu bei mit auf je j nous vous ce c qu y o e gli della
    dei nel che si mi vi ci ik jullie dat om te zijn kan kann konnen pouvez peut puedo pueden
    posso può puo muss moet doit dois debe deve devo get got getting go going gonna from r
"""
"""Words that say nothing of what is asked."""

ASIDE = """
    after before instead line each place right
    hi hello hey sir sirs dear thanks thank regards cheers guys folks buddy friend tell know
    explain understand wonder curious quick question ask asking actually really even still
    already ever never ok okay well also too very maybe perhaps kind happen happens usually
    typically normally roughly about approx approximately around someone somebody anybody anyone
    word plain plainly idea think guess say said says mention mentions mentioning keep always
    here now today then than but because proper properly exact want like wants try trying see
    inch inches od clr id material steel mild stainless dom erw chromoly moly carbon alloy inox
    acier acero acciaio staal stahl edelstahl 304 316 4130 ss cs sus tube rohr tubo buis bend
    bending degree degrees grad deg x per each example wall radius centerline bitte danke
    gern plait merci hola gracias grazie bedankt graag ueberhaupt uberhaupt eigentlich etwa
    circa dafur dazu davon hier so auch noch denn mal habe haben hat avons avez avoir tengo
    tenemos hay abbiamo hebben nun nur schon 3d clarify advise custom day heard called call work
    find handle stuff thing things mandrel give days week weeks these such
"""
"""Words that may stand beside a question without making it another: they never weigh against an
answer, and weigh for it only where its own phrase has them."""

ASKING_WORDS = "what how why where when who"
"""Words that say which sort of thing is asked for; 'which' is one with 'what'."""

LITTLE = """
    what how why when which where who from problem issue matter much many that case reason
    possible ok need make work fix quote price offer supply stock help back list provide order
    look following below enquiry inquiry send subject item items piece pieces two three avoid
    stop prevent cure happening trick remedy
"""
"""Words that say nothing without the sentence before: "Why?", "Is that a problem?"."""

ELSEWHERE = """
    sell sells selling sold verkaufen verkauft vendez venden vendete verkopen verkoopt
    clean cleaning reinigen nettoyer polish polishing polieren sharpen straighten repair repairs
    heavy weigh weighs wiegt schwer lourd pesa zwaar photo photos picture foto
    hardness tensile torque tonnage electrode paint warranty rent rental hire invoice catalogue
    discount cancel swage notch cope drill refund showroom
"""
"""Words that ask for something else than an answer without them tells."""

_MADE_ONE = """
advise: advice
allow: allowed allowable permitted permissible zulassig admissible admisible ammessa toegestaan
aluminium: aluminum alu alluminio aluminio
anneal: annealed annealing gegluht gluhen recuire recuit recocer recocido ricuocere gegloeid
attach: attached attaches
ball: balls kugel kugeln bille billes bola bolas esfera esferas sfera sfere kogel kogels glieder
    segments segment link links
bead: beads flash raupe schweissraupe cordon cordone rups lasrups
bend: bending bends bent biegen gebogen bogen biegung cintrer cintrage cintre curvar curva
    curvas curvado curvare curvatura doblar buigen bocht bochten dobleces doblez curve curves
bender: benders biegemaschine cintreuse curvadora curvatrice buigmachine machine machines
    maschine macchina maquina
bore: bores innendurchmesser
break: breaks broke broken breaking bricht brechen casse casser rompe rompen rompere rompono
    breekt breken snap snapped snaps snapping tear tears tore torn
bronze: bronce bronzo brons ampco bronzen
bwg: birmingham
calculate: calculated calculation berechnet berechnen
caliper: calipers messschieber
cause: causes causing caused
certify: certified certificate certificates certification zulassung zugelassen homologue
    homologado omologato zertifikat
center: centre middle mitte axis axe eje asse
centerline: centreline hartlijn mittellinie
chrome: chromed chrom cromo chroom verchromt cromado cromato plated
clamp: clamps clamping klemm spann serrage mordaza morsa klem
clearance: gap spiel jeu holgura gioco speling dornspiel
collapse: collapses collapsed collapsing cave caves caved crush crushed fold folds folding
cost: costs kosten kostet coute cuesta costa kost
crack: cracks cracking cracked split splits splitting reisst reissen riss fissure fissurer
    agrieta crepa scheurt
delivery: delivered deliver lieferzeit liefern livraison livrer entrega consegna levertijd
    leveren
detail: details particular particulars
diameter: durchmesser diametre diametro
difference: differences different differ unterschied unterschiede unterscheidet differenza
    diferencia verschil verschillen
expect: expected expecting rechnen
factor: factors wandfaktor
fit: fits fitting passt passen
flat: flatten flattens flattened flattening flach platt schiacciato aplasta ecrase squashed
    squash squashes
forward: forwards advance avance avancer
gall: galls galling galled frisst fressen grippage grippe gripado grippa vreet sticks stuck
    sticking
gauge: gage gauges ga calibre
grease: fett graisse grasa grasso vet
how: wie comment como hoe wieviel
inside: inner interior interieur interno interna internal innen innenbogen binnen intrados
last: lasts lasting dure dura halt lebensdauer
lead: leadtime
leg: legs schenkel
legal: legally erlaubt
length: lengths lang lange longueur longitud lunghezza lengte long
lubricant: lube lubes lubricants lubricate lubrication lubricating schmiermittel schmierstoff
    schmieren lubrifiant lubrifier lubricante lubricar lubrificante lubrificare smeermiddel
    smeren gesmeerd
mandrel: mandrell mandrels mandral mandrin mandrins mandril mandriles mandrino mandrini dorn
    dorne dorns biegedorn doorn doorns anima
maximum: max maximal massimo maximo
mean: means meaning bedeutet heisst signifie significa betekent define definition
measure: measured measuring measurement measurements messen misst messe mesurer mido medir
    misurare misuro meten meet
measures: masse medidas misure mesures maten
minimum: min minimal minimale minimaler minimo minima smallest kleinste kleinster kleinsten
    tightest least mindest
metric: millimetre millimetres millimeter millimeters mm metrisch metrico
need: required require requires needed needs necessary notig necessaire necesito necesario
    necesaria necessario nodig brauche braucht brauchen benotigen faut serve servono besoin
    falta erforderlich requis
neutral: neutre
number: anzahl nombre numero aantal
oil: oils ol huile aceite olio olie
outside: outer exterior exterieur esterno external aussen aussenbogen buiten extrados estradosso
oval: ovality ovalitat ovalisation ovalizacion ovalizzazione ovaliteit ovalidad unrund
    unrundheit onrondheid roundness egg
pipe: pipes piping
place: placer platzieren
position: positioned positioning positionner posicion posizione positie
pressure: druck pression presion pressione druk
price: prices pricing pricey preis preise prix precio prezzo prijs
quote: quotes quotation angebot devis cotizar preventivo offerta offerte offer oferta
radius: radii radiuses rayon radio raggio straal biegeradius buigradius
rectangular: rectangle rechteck rechteckrohr rectangulaire rettangolare rechthoekig
ripple: ripples rippling
rod: rods stange dornstange tige barra asta stang
round: tondo rond redondo rund
same: gleich denselben derselbe meme mismo stesso dezelfde zelfde identical
schedule: schedules sch
scratch: scratches scratching scratched kratzer riefen rayures rayas graffi krassen score
    scoring scored
seam: seams naht schweissnaht costura lasnaad
seamless: nahtlos naadloos
send: sent sending schicken envoyer enviar
ship: shipping shipped ships
size: sizes grosse taille
springback: ruckfederung ruckfedern terugvering zuruckfedern
square: vierkant vierkantrohr vierkante carre quadrato cuadrado quadro
straight: gerade droit droite recto recta dritto rettilinea recht
stretch: stretches stretching elongation dehnung
tangent: tangente tangentenpunkt tangency
temper: tempers
thick: thickness thicknesses dick dicke epaisseur espesor spessore dikte
thin: thinner thinning thins thinned dunn dunner amincissement amincit adelgaza adelgazamiento
    assottiglia assottigliamento dunne
thinnest: dunnste dunnsten
thread: threads threaded gewinde filetage rosca filetto draad schroefdraad
titanium: titan titane titanio ti
tube: tubes tubing rohr rohre tubo tubi tubos buis buizen
type: types arten tipos tipi
use: used using uses
wall: walls wand wandstarke wandstarken wanddicke wanddikte wandung paroi pared parete
wear: wears wearing wore worn verschleiss usure
weld: welds welded welding soudure saldatura soldadura geschweisst soude saldato soldado gelast
what: whats cosa wat quoi which welche welcher welches welchen welchem quel quelle quels quelles
    cual cuales quale quali welk welke
where: wo donde dove waar
why: warum wieso weshalb pourquoi perche waarom woher porque
wiper: wipers faltenglatter antigrinza antiarrugas plooienstrijker
without: ohne sans sin senza zonder skip skipped skipping
wrinkle: wrinkles wrinkling wrinkled falten falte plis pli arrugas arruga grinze grinza pieghe
    plooien plooi rimpels faltenbildung
"""

_ROWS = [row.partition(":") for row in re.sub(r"\n +", " ", _MADE_ONE).strip().split("\n")]
SAME = {spelling: word for word, _, spellings in _ROWS for spelling in spellings.split()}
"""Word to the one that stands for it."""
