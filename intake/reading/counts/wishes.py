"""Words by which one mandrel is wanted although no number is said: 'my boss told me to get a
mandrel off you', 'please offer us a new one', 'still a mandrel'."""

from __future__ import annotations

from ..text.phrases import phrases, word_set

WISHED = phrases(
    "ask you for | asked for | ask you about | get hold of | get a hold of | off you | wanted",
    "get from you | find us | find me | to find | to get | get us | fetch | source | fancy",
    "desperate for | in need of | in a pinch for | short of | glad of | sort us | sort me",
    "sort me out with | sort us out with | help me with | help us with | help us out with",
    "help me out with | help with | fix me up with | fix us up with | set me up with | replacing",
    "set us up with | hook me up with | hook us up with | stuck for | lost without",
    "soll | sollen | anfragen | besorgen | gesucht | benötigt | gebraucht | dringend",
    "auf der suche nach | interesse an | fehlt uns | fehlt mir | es braucht | bleibt bei",
    "bleibt es bei | es bleibt bei",
    "demander | commande | à la recherche | manque | urgent | reste",
    "pidiera | pedirles | pedirle | encargar | se requiere | buscando | interesa | interesaría",
    "desearía | desearíamos | deseo | sigue siendo",
    "cercando | alla ricerca di | chiedervi | chiederle | chiedere | richiedo | richiediamo",
    "richiedere | mi servirebbe | op zoek naar | aanvragen | gezocht",
)
"""Before 'a mandrel' these ask for one; before a number they say too little."""
WISHED_BEHIND = word_set(
    "anzufragen anfragen besorgen bestellen beschaffen holen aanvragen bestellen vragen nodig"
)
"""The same behind it: 'bei Ihnen einen Dorn anzufragen', 'een doorn te bestellen'."""
NEW_ONE = phrases(
    "new one | brand new one | replacement | replacement one | fresh one | further one | spare one",
    "neuen | neuer | neue | ersatz | weiteren | neuf | nouveau | remplaçant | nuevo | nueva",
    "nuovo | nuova | sostituto | nieuwe | nieuw exemplaar | vervanger | vervanging | repuesto",
)
"""Behind an article these stand for the mandrel named before: 'bieten Sie uns einen neuen an'."""
BEHIND_NEW_ONE = word_set(
    "an anbieten anzubieten machen bauen bestellen fertigen haben kaufen offreren aanbieten maken",
    "hebben bestellen kopen like identical same made quoted from of per",
    "on by before until within bis zum am vor pour avant para antes entro op tegen voor",
)
FOR_THIS = phrases(
    "for this | for that | for it | for these | for those | for them | to suit this | to suit that",
    "to suit it | to suit them | to do it | to do this | to do that | dafür | hierfür | dazu",
    "für dieses | für diese | für diesen | für das | pour ça | pour cela | pour ceci | pour ce",
    "pour cette | pour ces | para esto | para eso | para este | para esta | para ello | per questo",
    "per questa | per quello | voor dit | voor deze | voor dat | daarvoor | hiervoor",
    "daar | for me",
    "for us",
)
"""'Can you make a mandrel for this?' asks for one; of a tube named there, it only asks whether."""
FOR_US = word_set("me us mir uns nous nos ons mij ci mi")
"""'Can you make us a mandrel', '¿nos podéis hacer un mandril?'."""
COST_OF_IT = phrases(
    "what does it | what would it | what will it | what s it | how much is it | how much would it",
    "how much does it | how much will it | was kostet | was würde | wie viel kostet",
    "was macht das",
    "combien coûte | combien ça | combien cela | cuánto cuesta | cuánto costaría | cuánto sale",
    "quanto costa | quanto costerebbe | quanto viene | wat kost | wat zou | hoeveel kost",
)
"""'Can you make a mandrel that big and what does it run': the price of one is asked."""
STILL = word_set(
    "still again toujours encore weiterhin wieder nochmals nochmal siempre nuevamente",
    "sempre ancora",
    "steeds altijd weer opnieuw just only nur bloss seulement juste solo sólo soltanto slechts",
    "dringend urgent urgente",
)
"""At the head of a sentence without a verb: 'Toujours un mandrin.'"""
SO = word_set("so also donc alors dus quindi allora entonces pues just then dann")
"""At the head of a sentence before a count: 'So one for that please.'"""
OTHER_THINGS = word_set(
    "bender machine die dies former wiper clamp saw rod maschine biegemaschine matrize biegekopf",
    "schablone faltenglätter cintreuse matrice forme galet máquina dobladora matriz macchina",
    "curvatrice matrice buigmachine machine mal print drawing zeichnung plan plano",
    "disegno tekening",
)
"""Where one of these was named last, 'a new one' is no mandrel."""
FOR_NOW = phrases(
    "to start with | to start | to begin with | for now | for the moment | erst mal | erstmal",
    "erst einmal | zunächst | vorerst | fürs erste | für den anfang | zum anfang | d'abord",
    "pour commencer | pour l'instant | pour le moment | para empezar | por ahora | de momento",
    "per cominciare | per iniziare | per ora | per il momento | om te beginnen | voorlopig | eerst",
)
"""'Un mandrin pour commencer.': that asks for it without a verb."""
