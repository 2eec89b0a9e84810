"""Lengths of something else than the tube: how thick the wiper is, a hole, where it sits."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import RADIUS_ROLES
from .other_sentences import set_other_sentences_aside
from .phrases_beside import UNIT

_THING = any_of(
    "wipers? | blocks? | plates? | (?<!spec )(?<!data )(?<!cut )(?<!size )sheets? | paint",
    "coat(?:s|ing|ings)? | powder | plating",
    "chrome(?![- ]?mol) | galvani[sz]ing | primer | boards? | bench | table | floor | slab",
    "flanges? | gussets? | brackets? | gaskets? | liners? | shims? | rubber | insulation | lagging",
    "webs? | keys? | pressure dies? | clamp dies? | followers? | rollers? | collars? | bearings?",
    "bush(?:es|ing)? | hubs? | spindle | faceplate | machine | platten? | blech | bleche | brett",
    "lack | schicht | plaques? | tôles? | peinture | planche | placas? | chapas? | pintura",
    "lamiera | lamiere | vernice | piastra | piastre | plaat | platen | verf | plank",
)
_TUBE = whole_words(
    "tub(?:e|es|ing) | pipes? | wall | rohre? | wand | tubos? | tubi | buis | buizen | paroi",
    "pared | parete | od | clr | radius | mandrels? | dorn | mandrin | mandril | anima | doorn",
)
_THICK_WORD = "(?:thick|dick|stark|épais|épaisse|spess[ao]|dik)"
_OF_A_THING = late_pattern(rf"\b{_THING}\b[^.;\d]{{0,24}}$")
_THICK = late_pattern(rf"{UNIT}(?:thou\s|mils?\s)?{_THICK_WORD}\b")
_THICK_THING = late_pattern(
    rf"{UNIT}(?:thick|thickness|dicke?[nrs]?|starke[nrs]?)\s(?:\w+\s)?{_THING}\b"
)
_BORE_OF = late_pattern(
    rf"\b{_THING}\b[^.;]{{0,30}}\b(?:bored?|bohrung|alésage|foro|boring)\b\W{{0,3}}"
    r"(?:(?:of|to|von|de|di|van)\s)?$"
)
_HOLE_OF = late_pattern(
    r"\b(?:holes?|slots?|loch|löcher|trous?|agujeros?|taladros?|for[oi]|gat(?!\.)|gaten)"
    r"\s(?:of|at|von|mit|de|di|da|van)\s$"
)
_HOLE = late_pattern(
    rf"{UNIT}(?:dia\w*\.?\s|drill\w*\s|clearance\s|bolt\s|pilot\s|vent\s|round\s)?"
    + any_of(
        "holes? | slots? | drill | drilled | notch | notches | countersink | loch | löcher",
        r"bohrung | bohrungen | trous? | agujeros? | taladros? | foro | fori | gat(?!\.) | gaten",
    )
    + r"\b"
)
_FROM_BEND = late_pattern(
    rf"{UNIT}(?:away\s|back\s)?"
    + any_of(
        r"(?:from|before|after|past|ahead of|short of) (?:the |each |that |either )?"
        r"(?:\w+ )?(?:bends?|tangents?|curve|elbow)\b(?!\s(?:radius|die))",
        "(?:vom|vor dem|nach dem|hinter dem) bogen | avant la courbe | avant le coude",
        "après le coude | de la curva | dalla curva | prima della curva | van de bocht",
        "voor de bocht",
    )
)
_RADIUS = whole_words("radi(?:us|i) | clr | r | rayon | radio | raggio | straal | biegeradius")
_TUBE_LENGTH = late_pattern(
    r"\b(?:length|\w*länge|longueur|longitud|lunghezza|\w*lengte)s?\s(?:of|der|des|vom|von|du|del"
    r"|della|dei|van)\s(?:the\s|our\s|de\s)?(?!radi|bend|bog)(?:\w+\s)?(?:tubes?|tubing|pipes?|rohre?s?|tubos?|tubi|buis|buizen)\b"
    r"[^.;\d]{0,12}$"
)
_GONE_WRONG = late_pattern(
    r"\b"
    + any_of(
        r"flatten\w* | flattened \w+ | collaps\w+ | squash\w* | pinch\w* | bend deduction",
        r"wrinkl\w+ | rippl\w+ | oval \w+",
    )
    # "wrinkles at 4.5" is at so tight a radius
    + r"\b[^.;\d]{0,16}\b(?:to|by|(?<!wrinkles )(?<!wrinkle )(?<!wrinkling )at|is|was|of)\s"
    + r"(?:about\s|some\s|around\s)?$"
)
"""'It flattens to 1.6': what came out of a bend, and not what went in."""
_ACROSS_THE_BEND = late_pattern(rf"{UNIT}(?:across|over|at) the bend\b")
_OF_OTHERS = late_pattern(
    r"^\s(?:other|more|further|different|local)\s(?:\w+\s)?"
    + any_of(
        "shops? | suppliers? | people | guys | places | companies | makers | quotes? | customers?",
        "parts? | bends? | jobs? | projects? | orders?",
    )
    + r"\b"
)
_N = r"\d+(?:[.,/]\d+)?"
_NOT_TIMES = (
    r"(?![.,/]?\d)(?!\s?[x×*]\s?[\d.,])"
    r"(?!\"?\s?(?:mm\s|in\s|inch\s)?(?:o\.?d\b|wall|dia|tub|pipe|rohr))"
)
_WIRES = any_of(
    r"\w*wire | filler(?: rod| wire)? | tungsten | electrodes? | elektroden? | \w*draht | \w*draad",
    "fil d'apport | hilo | filo | électrodes?",
)
_MIXTURE = (
    r"(?:99\s?/\s?1|98\s?/\s?2|97\s?/\s?3|95\s?/\s?5|92\s?/\s?8|90\s?/\s?10|88\s?/\s?12|85\s?/\s?15"
    r"|82\s?/\s?18|80\s?/\s?20|75\s?/\s?25|70\s?/\s?30|60\s?/\s?40|50\s?/\s?50)"
)
"""Parts of a hundred: '3/4 gas line' is a tube."""
_GASES = r"(?:gas|argon|argo|argón|mischgas|schutzgas|mix|co2|c25|gaz)"
_FAILS = (
    r"(?:wrinkl|crack|split|kink|scrap|bad|fail|flat|reject|comes? out|no good|ausschuss|falt|riss"
    r"|reiß|knick|pliss|fend|cass|rebut|arrug|rot[oa]|raj|grinz|romp|scart|gerimpeld|rimpel|scheur"
    r"|knikt|goes wrong|went wrong|is off)"
)
_SPANS = tuple(
    late_pattern(pattern)
    for pattern in (
        r"\b(?:groove|rille|rillen|gorge|gola|garganta)\s?(?:radius|depth|width|radien|tiefe)?\s"
        rf"(?:is\s|of\s|=\s?|:\s?|ist\s)?(?:about\s)?\.?{_N}{_NOT_TIMES}",
        r"\b(?:qty|quantity|number|no\.|count|amount|anzahl|menge|nombre|quantité|cantidad|numero|aantal)\s?"
        r"(?:of|der|de|di|van|von)?\s(?:\w+\s)?(?:tubes|tubing|parts|bends|pieces|pipes|elbows|rohre|teile|bögen"
        r"|tuyaux|pièces|coudes|tubos|piezas|curvas|tubi|pezzi|curve|buizen|bochten)"
        r"(?: to bend| needed| required)?"
        r"\s?(?:[:=-]\s?|\sis\s|\s)(?:about\s|approx\.?\s|~)?\d{1,5}(?![.,/]\d)",
        rf"\b{_MIXTURE}\s?%?\s?{_GASES}\b",
        rf"\b{_GASES}\b[^.;\d]{{0,14}}{_MIXTURE}\b",
        rf"(?<![\w.,])\.?{_N}\s?(?:mm|in|inch|\")?(?:er)?[\s-]?(?:mig\s|mag\s|tig\s|weld\w*\s|solid\s|flux\w*\s|"
        rf"filler\s){{0,2}}{_WIRES}(?!\s(?:rack|form|edge|cut|edm|frame|mesh|rope|tube))\b",
        rf"\b(?:{_WIRES}|fil)\s(?:of\s|de\s|da\s|di\s|von\s|van\s|mit\s|is\s|ø\s?){{0,2}}{_N}{_NOT_TIMES}",
        rf"\b\d{{1,2}}\s(?:\w+\s)?(?:in|out of|of|von|sur|de cada|su|op)\s(?:de\s"
        rf"|every\s)?\d{{1,3}}\b"
        rf"(?=[^.;\d]{{0,40}}{_FAILS})",
        r"\b(?:straight|distance|length|spacing|gap|gerade\w*|abstand|droite?|recto?|recta|distancia"
        r"|distanza|tratto|recht\w*|afstand)\b(?:(?!cent)[^.;\d]){0,20}\b(?:between|zwischen|entre|tra|fra"
        r"|tussen)\s(?:(?:the|each|two|any|den|zwei|les|deux|los|las|dos|le|due|i|de|twee)\s){0,2}"
        r"(?:bends?|tangents?|bögen|biegungen|coudes?|cintrages?|curvas?|dobleces|curve|pieghe|bochten)"
        rf"\b(?:(?!radi|clr|rayon|raggio|straal)[^.;\d]){{0,30}}{_N}",
        r"\b\d{1,2}\s?(?:o['’]?\s?clock|uhr)\b",
        r"\b(?:cut|chop|saw|trim|crop)s?\s(?:(?:them|it|these|those|each|all|everything|one|the|our|tubes?"
        r"|pieces?|parts?|blanks?|sticks?|down|off|back)\s){1,4}(?:to|at)\s(?:about\s)?"
        rf"{_N}(?:[ -]\d+/\d+)?{_NOT_TIMES}(?!\S*\s?(?:clr|rad|center|centre))",
        rf"\b{_N}\s?(?:€\s?|\$\s?|eur\w*\s|chf\s)?(?:(?:pro|par|per|al|le|el|the|a|je)\s|/\s?)(?:lfd\.?\s?|"
        r"laufenden\s|running\s|linear\s)?(?:meter|mètre|metro|metre|foot|fuß|stange|barra|kilo|kg|m)\b",
        rf"\b{_N}(?:\s?[x×*]\s?{_N}){{1,2}}\s?(?:in|cm|mm|inch)?\s?(?:euro)?(?:pallets?|skids?|crates?"
        r"|paletten?|palés?|bancal[ei]|plywood|mesh)\b",
        r"\b(?:pallets?|skids?|paletten?|palettes?|palés?|bancal[ei])\s(?:of|de|da|di|von|van|à|mit|is)\s"
        rf"{_N}(?:\s?[x×*]\s?{_N}){{0,2}}",
        r"\b(?:spiel|luft|gioco|holgura|juego|speling|clearance|play|slop|runout|backlash"
        r"|feed(?: rate)?(?= is| of)"
        r"|stepover|vorschub|jeu (?:du|de l['’]|de la)\s?\w+)\b"
        r"(?:(?!wall|wand|paroi|pared|paret|tub|rohr|buis)[^.;,:\d]){0,24}\b(?:is|was|of|to|ist|war|von|beim"
        r"|est|était|era|es|è|is|van|de|di|der)\s(?:about\s|only\s|ca\.?\s|de\s|di\s)?"
        rf"0?[.,]\d+{_NOT_TIMES}(?:\s?(?:mm|in|\"))?(?:\s(?:over|per|in)\s{_N})?",
        r"\b\d{1,3}\s(?:[a-z]+\s){0,2}out of (?:every )?\d{1,3}\b",
        r"\b(?:bolt pattern|lug pattern|lochkreis|bolt circle)\b(?:(?!tub|pipe|rohr)[^.;,\d]){0,12}"
        rf"{_N}(?:\s?(?:on|/|auf)\s?{_N})?{_NOT_TIMES}",
        r"\b\d{1,2}w-?\d{2}\b",
        r"\b\d{1,4}(?:[.,]\d+)?\s?(?:u|l|m|tr|giri)/min\b",
        r"\b(?:bohrung|passung|alésage|foro|bore|reamed)\b[^.;,\d]{0,16}\d{1,3}\s?h[6-9]\b",
        r"\breads? (?:down )?to 0?[.,]0\d+",
        rf"\b{_N}(?:\s?[x×]\s?{_N}){{2}}\s?(?:in|cm|mm|inch)?\s?(?:carton|parcel|package|karton|paket"
        r"|caja|scatola|doos|colis)\b(?!\s(?:tub|section|frame|steel|rail))",
        # a box to ship, and no box section: "40 x 40 x 2 box"
        r"\b(?:ups|usps|fedex|dhl|dpd|postage|parcel|courier|freight)\b"
        rf"(?:[^.;]|\.\d){{0,40}}\b{_N}(?:\s?[x×]\s?{_N}){{2}}\s?(?:in|cm|mm|inch)?\s?box\b",
        r"\b(?:discounts?|\w*rabatt|skonto|remise|sconto|descuento|korting"
        r"|price breaks?)\b[^.;\d]{0,20}"
        r"\b(?:at|ab|à|a|da|dal|vanaf|from|bei|dès|partir de|desde|over|von)\s\d+(?![.,/]?\d)"
        rf"{_NOT_TIMES}",
        r"\b\d{1,2}\s(?:swivel\s|heavy\s|rubber\s)?(?:casters?|castors?|lenkrollen|rollen|roulettes|ruedas|ruote"
        r"|rotelle|zwenkwielen|wielen|posts|hinges|scharniere)\b",
        r"\b\d{3}\s?/\s?\d{2}\s?-?\s?z?r?\s?\d{2}\b(?=[^.;]{0,24}(?:tires?|tyres?|rims?|reifen|pneus?"
        r"|neumáticos?|gomme|banden))",
        r"\b(?:tires?|tyres?|reifen|pneus?|neumáticos?|gomme|banden)\b[^.;\d]{0,12}\d{3}\s?/\s?\d{2}\s?-?\s?"
        r"z?r?\s?\d{2}\b",
        rf"\b{_N}(?:\"|\s?(?:inch|in|zoll|pouces?|pulgadas|pollici))?\s(?:\w+\s)?(?:rims?|wheels?|tires?"
        r"|tyres?|felgen|räder|reifen|jantes|pneus|llantas|ruedas|cerchi|wielen|velgen)\b"
        r"(?!\s(?:tub|hoop|rim))",
        rf"\b(?:their|his|her|(?:shop|place|guy|guys|fellow|competitor|neighbou?r|supplier|firm)'?s'?)\s"
        rf"(?:\w+\s){{0,2}}?(?:smallest|tightest|min(?:imum)?|shortest)\s(?:\w+\s)?(?:die|former)"
        rf"\b[^.;\d]{{0,16}}{_N}(?:\s?(?:\"|inch|in|mm)\b)?",
        rf"\b(?:deren|ihre?|seine?|hun|zijn|leur|sa|su|loro|sua)\s(?:plus\s)?(?:kleinste\w*|engste\w*|petite"
        rf"|forme|matrice|matriz|mal)\s(?:la plus petite|más pequeña|più piccola)?\s?(?:biegeform"
        rf"|form"
        rf"|forme|matrice|matriz|mal)?\b[^.;\d]{{0,16}}{_N}",
        rf"(?<![\w.,])\.?{_N}\s?(?:to|-|–|bis|à|a|tot)\s?\.?{_N}\s?(?:rpm|u/min|tr/min|psi|bar|amps?|volts?"
        r"|watts?|kw|hp|hz)\b",
    )
)
"""Stretches of a sentence whose figures are all of something else."""
_BEHIND = (_HOLE, _ACROSS_THE_BEND, _OF_OTHERS, _THICK_THING)
_AHEAD = (_BORE_OF, _HOLE_OF, _TUBE_LENGTH, _GONE_WRONG)


def hear_other_things(layout: Layout) -> None:
    """Set aside the lengths that a phrase gives to something else than a tube or its bend."""
    for sentence, figures in layout.by_sentence.items():
        begin, end = layout.sentence_start(sentence), layout.tokens[layout.spans[sentence][1]].end
        text = layout.text[begin:end].replace("\n", " ").lower()  # folding would move places
        spans = [found.span() for one in _SPANS for found in one.finditer(text)]
        for figure in figures if spans else ():
            inside = any(first <= figure.start - begin < last for first, last in spans)
            if inside and figure.role is None and not figure.negated:
                figure.give("noise", "cue")
    set_other_sentences_aside(layout)
    for figure in layout.figures:
        if figure.role is None and not figure.negated and _is_of_another(layout, figure):
            figure.give("noise", "cue")


def _is_of_another(layout: Layout, figure: Figure) -> bool:
    first, last = layout.spans[figure.sentence]
    begin, end = layout.tokens[first].start, layout.tokens[last].end
    before = layout.words(begin, figure.start)
    after = layout.words(figure.end, max(end, figure.end))
    if _FROM_BEND.match(after) and not _RADIUS.search(before):
        return True
    if _THICK.match(after) and (thing := _OF_A_THING.search(before)):
        return not _TUBE.search(before, thing.end())
    signed = any(cue.role in RADIUS_ROLES for cue in layout.tokens[figure.token].cues)
    named = signed or _RADIUS.match(after.lstrip(" \"'"))
    if named and _GONE_WRONG.search(before):
        return False  # "it flattens at 1-1/8 radius", "at R57": where it does so, not to what
    return any(one.match(after) for one in _BEHIND) or any(one.search(before) for one in _AHEAD)
