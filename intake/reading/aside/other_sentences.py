"""Whole sentences on something else, beside a tube that another sentence names: what the bender
can do, a sheet, a bearing, a tube that is not bent. All figures of such a sentence are set aside.

None is where the sentence asks for anything, where it names a radius, or where the sentence behind
it points back ('a mandrel for that'); the size is kept then, and doubted by others.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..wanted.asked_words import ASKS

_THIN = Decimal("0.25")
"""A wall is less than that share of its OD."""
_MOST_FIGURES = 12
_DETERMINER = (
    r"^[^\w]*(?:(?:and|also|fyi|btw|und|et|y|e|en)[,:]?\s)?(?:(?:the|our|my|his|a|an|each|one|this"
    r"|der|die|das|unsere?|mein|ein|eine|le|la|les|l['’]|notre|un|une|el|los|las|nuestro|il|lo|i|gli"
    r"|uno|una|de|het|een|onze)\s?)?(?:[\w-]+\s){0,2}?"
)
_NO_TUBE = any_of(
    r"bearings? | pallets? | skids? | crates? | cartons? | sheets? | flat ?bars? | angle(?: iron)?",
    r"round ?bars? | hinges? | bolts? | screws? | washers? | nuts? | pins? | tires? | tyres? "
    r"| rims?",
    r"engines? | motors? | gearbox | belts? | sprockets? | springs? | batter(?:y|ies) | lathe "
    r"| oven",
    r"furnace | compressor | welder | hydraulic cylinder | cylinder | shop | building | yard "
    r"| lorry",
    r"pool | barn | shed | keyway | set screw | lathe | mill | taller | officina | piscina "
    r"| hangar",
    r"lager | (?:euro)?paletten? | lkw | laster | reifen | felgen? | räder | motor "
    r"| winkel(?:eisen)?",
    r"flachstahl | flacheisen | blech\w* | platten? | zylinder | schrauben? | bolzen | muttern?",
    r"scheiben? | federn? | karton | kisten? | ofen | kompressor | drehbank | halle | werkstatt",
    r"roulements? | palettes? | moteur | pneus? | jantes? | cornières? | tôles? | plaques? | vérin",
    r"boulons? | vis | écrous? | rondelles? | ressorts? | caisses? | four | compresseur | atelier",
    r"rodamientos? | palés? | palets? | neumáticos? | llantas? | pletinas? | chapas? | placas?",
    r"cilindro | tornillos? | tuercas? | arandelas? | muelles? | cajas? | horno | compresor | nave",
    r"cuscinett[oi] | bancal[ei] | motore | gomm[ae] | angolar[ei] | lamier[ae] | piastr[ae] "
    r"| vit[ei]",
    r"dad[oi] | rondell[ae] | moll[ae] | scatol[ae] | forno | compressore | tornio | capannone",
    r"banden | velgen | hoekijzer | plaat | platen | cilinder | bouten | moeren | veren | dozen",
    r"oven | draaibank | hal | werkplaats",
)
"""What is never made of tube."""
_IS = any_of(
    "swings | is | are | was | were | measures? | has | have | comes? | takes? | weighs? "
    "| holds? | got",
    "ist | sind | war | hat | haben | misst | messen | wiegt | est | sont | fait | font | a | ont",
    "pèse | es | son | tiene | mide | pesa | è | sono | ha | misura | heeft | zijn | meet | weegt",
)
_ON_A_THING = late_pattern(rf"{_DETERMINER}{_NO_TUBE}\s(?:{_IS})\b")
_FLAT = any_of(
    r"sheets? | flat ?bars? | angle(?: iron)? | flachstahl | flacheisen | bleche? | platten? "
    r"| tôles?",
    "plaques? | pletinas? | chapas? | lamier[ae] | piastr[ae] | plaat | platen | hoekijzer "
    "| cornières?",
)
_ON_A_FLAT_THING = late_pattern(rf"{_DETERMINER}{_FLAT}(?:\s(?:{_IS})\b|[:=]?\s[\d.])")
"""What is measured by a thickness as tube is by a wall."""
_HEAVY = late_pattern(
    r"\b(?:trucks?|trailers?|vans?|cars?|boats?|machines?|camion|remorque|voiture|bateau|camión"
    r"|remolque|coche|barco|rimorchio|barca|auto|anhänger|lkw|wagen|boot|vrachtwagen|aanhanger)\b"
    r"[^.;]*\d\s?(?:kg|t|tons?|tonnes?|tonnen|lbs?|hp|ps|cv|ch|pk|cc|ccm|liters?|litres?|litros?"
    r"|litri)\b"
)
_NOT_BENT = late_pattern(
    r"\b"
    + any_of(
        "no bends?(?: in (?:it|them|that|those|there))? | (?:is|are)(?: not|n['’]t) bent",
        "(?:does|do|will)(?: not|n['’]t) get bent | (?:not|never) bent | stays? straight",
        "(?:is|are|that'?s|it'?s|they'?re) (?:just |only |all |left |kept )?straight",
        "bleib(?:t|en) gerade | wird nicht gebogen",
        "werden nicht gebogen | reste(?:nt)? droite?s? | (?:n['’]est|ne sont) pas cintrée?s?",
        "quedan? rect[oa]s? | no se (?:curva|dobla)n? | sin curvas? | resta(?:no)? dritt[oaie]",
        "non (?:si )?(?:curva|piega)(?:no)? | blij(?:ft|ven) recht | wordt niet gebogen",
    )
    + r"\s*(?:[.,;!)]|$|(?:and|und|et|y|e|en)\s)"
)
_BOUGHT_IN = late_pattern(
    r"\b"
    + any_of(
        r"(?:we|i|they) (?:just |always )?buy (?:those |them |these )?in",
        r"(?:we|i|they) (?:just |always )?buy [^.;!?]{0,20}?(?:ready[- ](?:made|bent)|pre-?bent"
        r"|finished|already (?:bent|made))",
        r"(?:is|are|come|comes) (?:bought in|ready[- ]made|ready[- ]bent|pre-?bent|already bent)",
        r"(?:kaufen|beziehen) wir (?:[^\W\d]+ )?(?:zu|fertig\w*|gebogen) | kommen fertig\w*",
        r"(?:on|nous|je) (?:les |la |le )?achet\w+ (?:tout )?(?:faite?s?|prête?s?|cintrée?s?)",
        r"(?:los |las |lo |la )?compr(?:o|amos) (?:ya )?(?:hech|doblad|curvad|acabad)[oa]s?",
        r"(?:li |le |lo |la )?compr(?:o|iamo) (?:già )?(?:fatt|pront|curvat|piegat|finit)[oaie]",
        "kopen we (?:kant-en-klaar|gebogen|klaar)(?: in)? | kopen we in",
    )
    + r"\b"
)
"""'Collectors I buy in at 4"': no bend is made of them."""
_MACHINE = whole_words(
    r"machines? | benders? | press | maschine | biegemaschine | maschinenkapazität",
    r"biegezentrum | biegeleistung | cintreuse",
    r"curvadora | dobladora | máquina | maquina | curvatubi | macchina",
    "buigmachine | machinecapaciteit | roller",
)
_CAN = whole_words(
    r"rated | max\w* | maximum | capacity | good (?:for|to) | up to | can (?:do|take|bend|handle)",
    r"does | handles | takes | goes (?:up )?to | tops out | maxes out | limited to",
    r"limit | \w*kapazität | biegeleistung | bis | schafft | kann | nimmt | capacité",
    "jusqu['’]à | peut | accepte | prend",
    "capacidad | hasta | puede | admite | acepta",
    r"capacità | fino a | massimo | può | accetta | \w*capaciteit | maximaal | tot | kan",
)
_RADIUS = whole_words(
    r"r ?\d+ | radi(?:us|i) | clr | rayon | raggio | radio | straal | biegeradius "
    r"| centre ?line | centerline"
)
_OF_TUBE = whole_words(
    r"tub(?:e|es|ing) | pipes? | \w*rohre? | tuyaux? | tubos? | tub[oi] | buis | buizen | wall "
    r"| wand",
    r"paroi | pared | parete | od | mandrels? | \w*dorne? | mandrin[oi]? | mandril(?:es)? | doorn",
)
_POINTS_BACK = whole_words(
    r"that | those | these | them | this | it | both | all | each | same | also | too | as well "
    r"| plus",
    r"das | dafür | dieses? | diese[rn]? | beide[ns]? | alle | auch | dazu | cela | ça | ceux "
    r"| les deux",
    r"tous | aussi | eso | esto | ese | esos | ambos | también | questo | quell[oi] | entrambi "
    r"| anche",
    r"dat | die | deze | daarvoor | beide | alle | ook | one for | einen für",
)
_SEVERAL = whole_words(
    r"mandrels | \w*dorne | \w*dornen | mandrins | mandriles | mandrini | doorns? en | doorns "
    r"| both",
    # "8 tubes, 4 bends each" tells of no second mandrel
    r"(?<!bends )(?<!tubes )(?<!pieces )(?<!lengths )each",
    r"all | beide[nrs]? | je (?:ein\w*|1) | chacun\w* | de chaque | cada un\w* | de cada",
    r"entrambi | ciascun\w* | van elk | allebei | respectively | two | zwei | deux | dos | due "
    r"| twee",
)
_ALSO = late_pattern(
    r"^\W*(?:(?:and|und|et|y|e|en)\s)?(?:also|plus|außerdem|dazu|ausserdem|aussi|en plus|además"
    r"|también"
    r"|inoltre|anche|ook|daarnaast)\b"
)
_GOODS = late_pattern(
    r"\b(?:"
    + any_of(
        r"(?:box|pack|packet|bag|tin|can|roll|sheet|pair|bundle|reel|tube) of (?!.{0,12}mandrel)",
        r"\d+ ?(?:m|metres?|meters?|mtrs?|ft|feet|lengths?|bars?|sticks?) of",
        r"(?:schachtel|packung|dose|rolle|karton|päckchen) | \d+ ?(?:m|meter|stangen"
        r"|stück) (?:vom|von)",
        r"(?:boîte|paquet|sachet|rouleau|pot) de | \d+ ?(?:m|mètres|barres) (?:de|du)",
        r"(?:caja|paquete|bolsa|rollo|bote) de | \d+ ?(?:m|metros|barras) (?:de|del)",
        r"(?:scatola|pacco|sacchetto|rotolo|barattolo) di | \d+ ?(?:m|metri|barre) (?:di|del)",
        r"(?:doos|pak|zak|rol|blik) | \d+ ?(?:m|meter|lengtes) (?:van|van de)",
    )
    + r")(?=\s)"
)
_TOOL = whole_words(
    r"mandrels? | \w*dorne? | mandrin[oi]? | mandrins | mandril(?:es)? | doorn(?:en)? | anim[ae]"
    r" | tool(?:ing|s)? | plug | bend\w* | bent"
)
"""'Also a box of M8 bolts and 2 m of the 20x20': goods beside the mandrel."""


_UP_TO = late_pattern(
    r"\b(?:machine|bender|press|maschine|biegemaschine|cintreuse|curvadora|macchina|curvatubi)\b"
    r"[^.;\d]{0,24}\b(?:(?:can|will|could)\s(?:\w+\s)?(?:up to|as big as|as large as)|goes up to"
    r"|is rated"
    r"|maxes out|tops out|(?:max\.?|maximum|capacity)\s(?:is|of|=)|kann bis|schafft bis|biegt bis"
    r"|va jusqu|peut aller jusqu|llega hasta|arriva fino)"
)
"""'Our machine can bend up to 2.5 x .120 at 10 inch radius': all of it is the machine's."""
_N = r"\d{0,2}[.,]?\d{1,4}(?:[ -]\d/\d{1,2}|/\d{1,2})?\s?(?:\"|''|in\b|inch\b|mm\b)?"
_DIES_LISTED = late_pattern(
    r"^\W*(?:we|i|wir|ich|on|nous)\s(?:already\s|do\s)?(?:have|got|own|run|haben|habe|a|avons)\s(?:[^\W\d]+\s){0,2}?"
    r"(?:dies|die sets|biegerollen|biegeformen|formes)\s(?:in|for|of|für|pour)\s"
    rf"(?:{_N}(?:\s?[,&/]\s?|,?\s(?:and|und|et|or)\s)){{1,6}}{_N}\s?(?:tubes?|tubing|od|pipe)?\W*$"
)
"""'I have dies in 1.5, 1.75 and 2"': what is there, and neither ODs nor radii asked for."""
_USUAL_WORK = late_pattern(
    r"\b(?:normally|usually|typically|mostly|mainly|generally|most of (?:our|my|the) (?:work|jobs)"
    r"|our (?:usual )?range|anything (?:from|between)|everything (?:from|between)|we do a lot of"
    r"|normalerweise|meist(?:ens)?|üblicherweise|hauptsächlich|alles (?:von|zwischen)"
    r"|habituellement|généralement|en général|la plupart|normalmente|habitualmente|casi todo"
    r"|di solito|in genere|per lo più|meestal|gewoonlijk|doorgaans|alles (?:van|tussen))\b"
    rf"[^.;\d]{{0,40}}{_N}\s?(?:to|through|thru|up to|-|–|and|bis|und|à|et|hasta|a|y"
    rf"|fino a|e|tot|en)\s?{_N}"
)
"""'We normally work with 1/2 in through 3 in OD': what the sender bends as a rule."""
_RANGE = 2


def set_other_sentences_aside(layout: Layout) -> None:
    """Say of every figure in a sentence on another thing that it measures no tube."""
    on_another = {
        sentence
        for sentence, figures in layout.by_sentence.items()
        if len(figures) <= _MOST_FIGURES
        and not any(f.negated or f.row is not None for f in figures)
        and (_is_goods(layout, sentence) or _is_on_another(layout.sentence_text(sentence), figures))
    }
    tubes = [
        sentence
        for sentence, figures in layout.by_sentence.items()
        if sentence not in on_another and _holds_tube(figures)
    ]
    rest = [f for f in layout.figures if f.sentence not in on_another]
    if not tubes and not _holds_tube(rest):  # "Diámetro 50. El espesor es 2." holds one
        return
    asked = {pair for sentence in tubes for pair in _pairs(layout.in_sentence(sentence))}
    several = len(tubes) <= 1 and _SEVERAL.search(layout.text.casefold()) is not None
    for sentence in on_another:
        figures = layout.in_sentence(sentence)
        if not _is_goods(layout, sentence) and _is_asked(layout, sentence):
            continue
        if _holds_tube(figures) and (several or asked & _pairs(figures)):
            continue  # "mandrels for both machines"
        if _holds_tube(figures):
            words = layout.text[figures[0].start : figures[-1].end]
            layout.aside.append(" ".join(words.split()))
        for figure in figures:
            if figure.role is None:
                figure.give("noise", "cue")


def _is_goods(layout: Layout, sentence: int) -> bool:
    """Whether a sentence asks for goods beside the tooling, by the box or by the metre."""
    text = layout.sentence_text(sentence)
    return (
        _ALSO.search(text) is not None
        and _GOODS.search(text) is not None
        and not (_TOOL.search(text) or _RADIUS.search(text))
    )


def _is_asked(layout: Layout, sentence: int) -> bool:
    """Whether its size may be asked for all the same, here or by the sentence behind."""
    text = layout.sentence_text(sentence)
    asks = ASKS.search(text) is not None
    if _BOUGHT_IN.search(text) and not _holds_tube(layout.in_sentence(sentence)):
        return asks
    return asks or _takes_it_up(layout, sentence + 1)


def _pairs(figures: Sequence[Figure]) -> set[tuple[Decimal, Decimal]]:
    return {
        (od.number.value, wall.number.value)
        for od, wall in pairwise(figures)
        if wall.link == "times"
    }


def _is_on_another(text: str, figures: list[Figure]) -> bool:
    if _RADIUS.search(text):
        return _UP_TO.search(text) is not None and not any(f.corrects for f in figures)
    if _DIES_LISTED.match(text) or (len(figures) == _RANGE and _USUAL_WORK.search(text)):
        return True
    if _NOT_BENT.search(text) or _BOUGHT_IN.search(text):
        return True
    if _MACHINE.search(text) and _CAN.search(text):
        return not any(f.corrects for f in figures)  # "if the machine takes it make it 2 mm"
    if _OF_TUBE.search(text):
        return False
    if _ON_A_FLAT_THING.search(text):
        return True
    if any(_may_be_wall(a, b) for a, b in pairwise(figures)):
        return False  # "the bolt cage is 1.5 x .095"
    return bool(_ON_A_THING.search(text) or _HEAVY.search(text))


def _may_be_wall(od: Figure, wall: Figure) -> bool:
    return wall.link == "times" and wall.number.value <= od.number.value * _THIN


def _takes_it_up(layout: Layout, following: int) -> bool:
    """'A mandrel for that', 'both please', 'Radius 5.': the sentence behind may mean what was set
    aside."""
    text = layout.sentence_text(following) if following in layout.spans else ""
    if _RADIUS.search(text) and not _holds_tube(layout.in_sentence(following)):
        return True
    return _POINTS_BACK.search(text) is not None


def _holds_tube(figures: Sequence[Figure]) -> bool:
    measures = [f for f in figures if f.is_measure]
    for at, figure in enumerate(measures[:_MOST_FIGURES]):
        for wall in measures[at + 1 : at + 3]:
            if wall.is_gauge or 0 < wall.number.value <= figure.number.value * _THIN:
                return True
    return False
