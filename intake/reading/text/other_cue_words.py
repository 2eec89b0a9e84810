"""Every word that says that a number beside it is no size of the tube.

They are written as those of a size are, in ``cue_words.py``.
"""

from __future__ import annotations

from .cue_words import CueWords

# What is no size of the tube: tooling, counts, and all that else is measured in a workshop.
OTHER_CUES: CueWords = (
    ("die", "both", """
        die | dies | die set | dies set | former | bend die | form block | shoe | block
    """),
    ("label", "both", """
        hollow section | box section | rhs | shs | thin wall | thin walled | thinwall |
        heavy wall | thick wall | thick walled | light wall |
        dünnwandig | tube | tubes | tubing | pipe | pipes | rohr |
        rohre | rohres | tubo | tubi | tubos |
        tuyau | tuyaux | caño | caños | tubería | tuberías | cañería | tubazione | tubazioni |
        buis | buizen | rör | röret | rören | rør |
        røret | rørene | rura | rury | trubka | stainless tube |
        boru | putki | țeavă | teava | труба | трубы | cső |
        handrail | size | sizes | rohrabmessung | abmessung | abmessungen | dimension |
        dimensions | dimensione | dimensioni | medidas | medida | afmeting | maat | tubeset |
        チューブ | パイプ | stock | material size
    """),
    ("quantity", "both", """
        qty | quantity | quantities | menge | stückzahl | anzahl | stueckzahl | quantité |
        quantite | qté | qte | cantidad | cant | quantità | quantita | q tà | aantal | antal |
        ilość | quantidade | 数量 | pieces | pcs | pc | pce | piece | off | nos | ea | each |
        sets | set | units | unit | stück | stueck | stk | pièces | pièce | pieza | piezas |
        uds | unidades | ud | pezzi | pezzo | pz | stuks | stuk | st | szt | ks | mandrels |
        mandrel | mandrills | dorn | dorne | dorns | biegedorn | biegedorne | mandrins |
        mandrin | mandrini | mandrino | mandriles | mandril | doorns | doorn | doornen |
        trzpień | trzpienie | apiece | only
    """),
    ("noise", "both", """
        length | lengths | cut length | leg length | leg | legs | straight | straights |
        tangent | tangents | long | overall length | länge | laenge | schenkellänge |
        zuschnitt | zuschnittlänge | fixlänge | rohlänge | tramo | tramos |
        tramos rectos | tramo recto | tratti dritti | tratto dritto | tratti rettilinei |
        parti dritte | parties droites | partie droite | longueurs droites | rechte stukken |
        rechte benen | rechte einden | gerade enden | gerade stücke | spezzone | spezzoni |
        zaagmaat | zaaglengte | schenkellängen | schenkel | longueur | largo |
        sviluppo | développé | desarrollo |
        developed length | abwicklung | gestreckte länge | longitud | lunghezza | lengte |
        długość |
        längd | height | width | tall | lang | lange | hoch | hohe | haut | alto | alta | alti |
        alte | hoog |
        wide | high | deep | breite | höhe | hauteur | largeur |
        ancho | alto | larghezza | altezza | thread | threads | threaded | gewinde | filetage |
        rosca | filetto | schroefdraad | draad | gwint | bolt | bolts | screw | screws | stud |
        nut | nuts | dornstange | rod | drawbar | draw bar | mandrel rod | shank | rod dia |
        rod diameter | stange | doornstang | mandrel bar | barra | dornhalter | tige | varilla |
        asta | stang | dornschaft | schaft | vástago | codolo | gambo | doornschacht |
        spannlänge | spannlaenge | einspannlänge | einspannlaenge | klemmlänge | klemmlaenge |
        clamp length | clamping length | grip length | longueur de serrage |
        longueur d'amarrage | longitud de amarre | longitud de mordaza | lunghezza morsa |
        lunghezza della morsa | lunghezza di presa | klemlengte | inspanlengte |
        entraxe des coudes | entraxe des cintres | distancia entre curvas |
        distanza tra le curve | angle | angles | winkel |
        biegewinkel | bend angle | bending angle | degree of bend |
        degrees of bend | angolo | ángulo | angulo | hoek | kąt |
        stroke | strokes | hub | corsa | carrera | verfahrweg | slag |
        wall factor | wall ratio | wandfaktor | facteur de paroi | factor de pared |
        fattore di parete | wandfactor | wall to diameter ratio |
        springback | rückfederung | tolerance | tolerances | toleranz | tol | tolérance |
        tolerancia | tolleranza | tolerantie | clearance | spiel | gap | jeu | play | ovality |
        ovalität | capacity | max capacity | capacity up to | up to | maximum capacity |
        kapazität | capacité | capacità | weld bead | bead | seam | naht | schweissnaht |
        cordon | spacing | distance | distance between bends | gap between bends |
        between bends | abstand | pitch | offset | gap between | grit | finish | ra | polish |
        polished to | korn | grain | weight | weighs | gewicht | poids | peso | load | rated |
        tons | ton | pressure | druck | pression | presión | pressione | druk | yield |
        tensile | hardness | hardness rb | rb | hrb | hrc | hv | rockwell | rockwell b |
        old mandrel | mandrel body | mandrel dia | mandrel diameter |
        target | budget | rebate |
        corner radius | corner rad | corner r | eckradius | wheelbase | wheel | wheels | tire |
        tires | engine | rim | axle | axles | hole spacing | bolt circle | apt | suite |
        unit no | route | rt | exit | ball | balls | kugel | kugeln | glieder | billes | bolas |
        sfere | kogels | washer | washers | o ring | o rings | oring | orings | o-ring |
        gasket | bearing | bush | bushing | shaft | drill | reamer | tap | plate | sheet |
        flat bar | flat | strap | round bar | solid bar | rebar | wire | bar stock | hex |
        sheet metal | blech | solid rod | flange | flanges | flansch | bride | brida | flangia |
        flens | platte | plaque | placa | piastra | hose | clamp | u bolt | coupler | fitting |
        fittings
    """),
    ("noise", "after", "bends | bend | hole"),
    ("noise", "before", """
        price | cost | preis | prix | precio | prezzo | prijs |
        order | order no | order number | po | p o | purchase order | item | pos | position |
        line | part no | part number | p n | pn | art | art nr | artikel | drawing |
        drawing no | dwg | print | zeichnung | plan | dessin | disegno | plano | tekening |
        ref | reference | our ref | your ref | rev | revision | job | job no | quote no | rfq |
        enquiry no | inquiry no | invoice | tel | phone | fax | ext | extension | mobile |
        cell | room | dock | door | page | section | year | model | serial | serial no | sn |
        bestellung | auftrag | nr | no | number | nummer | numéro | commande | vat | ust |
        iban | hrb | hra | zip | plz | vol | issue | # | overall | envelope | footprint |
        gesamtmaß | aussenmaße | hors tout | ingombro | buitenmaat
    """),
)  # fmt: skip
