"""The unit that stands behind a number, and the nouns that make a number a count."""

from __future__ import annotations

import re
from collections.abc import Container
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ..text.patterns import any_of, word_set
from .counted_thousands import counts_thousands
from .numbers import Number

_OF_TUBES = (
    r"(?:(?:of|the|le|el|il|de|der|den|dem|het|o|tube|pipe|outside|outer|actual|real|true|external"
    r"|wirkliche[nrs]?|tatsächliche[nrs]?|reale[nr]?|werkelijke|echte)\s){0,4}"
)
_TIMES_D = any_of(
    rf"x\s?{_OF_TUBES} | \*\s?{_OF_TUBES}",
    r"-?\s?fach(?:e[nrsm]?)?\s(?:(?:des|vom|der)\s)?",
    rf"(?:times|mal|fois|veces|volte|keer|maal|razy|vezes)\s{_OF_TUBES}",
)
_DIAMETER = any_of(
    r"(?:rohr)?(?:au(?:ß|ss)en)?durchmessers? | diam[èe]tre(?:\sext\w*)? | o\.?d\b\.? | d\b | da\b",
    r"di[áa]metro(?:\sext\w*|\sest\w*)? | dia(?:meters?|\b) | (?:buiten|buis)?diameter",
    r"diameters?\b | Ø",
)
# "3D" is a radius, but not in "3D drawing", "D: 40", "D'Angelo", or French without its apostrophe.
_NO_MULTIPLE = any_of(
    r"\s?(?:drawing|model|cad|scan|print|step|file|view|render|part|data|[=:])",
    r"[\t ]?max | \.\w | ' | \s(?:é|e)p(?:aisseur|\b)",
)
_NO_RADIUS = "".join(
    rf"(?<!\br{n})" for n in (r"\d", r"\d\d", r"\d\d\d", r"\d[.,]\d", r"\d\d[.,]\d")
)
"""'r75c' is a radius to the centre, and no temperature."""
_UNITS: tuple[tuple[str, str], ...] = (
    ("inch", any_of(
        "of an inch\\b | d(?:e|'un) pouces?\\b | de pulgadas?\\b | di pollic[ei]\\b",
        "'' | \" | in(?:ch(?:es)?|ches)?s?\\b\\.?(?!\\s?/) | zoll\\b | pouces?\\b | po\\b",
        r"(?:(?<=/[248])|(?<=/16)|(?<=/32))'(?!')(?=\s?(?:[x×*]|o\.?d\b|tub|pipe|clr|rad|cent(?:er|re)))",
        r"(?:(?<=\.\d)|(?<=\.\d\d)|(?<=\.\d{3}))'(?!')(?=\s?(?:[x×*]\s?\.\d|o\.?d\b|clr\b|rad|cent(?:er|re)))",
        r"in(?=x\s?[\d.]|od\b|wall\b|wt?\b|clr\b)",
        r"pulgadas?\b | pulg\b\.? | plg\b\.? | polegadas?\b | pol\b\.?",
        r"cale?\b(?!\s?\.?\s?\d) | pollic[ei]\b | duim\b | tommer\b | tum\b",
    )),
    ("mm", any_of(
        r"mm\b | мм\b | mm(?=x\s?[\d.]|od\b|wall\b|wt?\b|clr\b|r\b)",
        r"m\.m\. | millimet(?:er|re)s?\b | milímetros?\b | millimètres?\b",
        r"millimetri\b | mms\b",
    )),
    ("cm", any_of(r"cm\b | centimet(?:er|re)s?\b")),
    ("thou", any_of(r"thou(?:sandths?|sands?|s)?\b | mils?\b")),
    ("ga", any_of(r"ga\b | gauge\b | gage\b | guage\b | gua?ge\b",
        r"(?<![^\d][1-6])(?<!\d\d\d)(?<!\d\d\d\s)g\b(?!/)")
        + r"(?:\s?\(?(?P<system>bwg|swg)\b\)?)?"),
    ("swg", r"s\.?w\.?g\b\.?"),
    ("bwg", r"b\.?w\.?g\b\.?"),
    ("d", any_of(
        r"(?<=\d)[dD](?=\s?=\s?\d) | [x*]\s?[dD](?=\s?=\s?\d)",
        f"{_TIMES_D}{_DIAMETER} | [dD]\\b(?!{_NO_MULTIPLE})",
        r"(?:(?<=\b\d)|(?<=\b\d[.,]\d))[dD]\b(?=\s?[:=]\s?\d)",  # "radius 3D: 145 mm"
        r"diameters?\s(?=bend|radius|clr|cent(?:er|re))",
    )),
    ("noise", any_of(
        r"° | deg(?:rees?|s)?\b | grad\b | gr\b(?!\.?\s?\d) | % | percent\b | lbs?\b | \# | kg\b",
        r"(?<=\d\d\d\s)g\b(?!\s?[=:]) | gramm?e?s?\b | grammi\b | gramos?\b",
        r"psi\b",
        r"bar\b | mpa\b | ksi\b | hb\b | hrc\b | microns?\b | [µμ]m\b | ft\b\.? | feet\b",
        r"foot\b | '(?!') | m\b(?!\s?\.?m) | met(?:er|re)s?\b | mtrs?\b | yards?\b | grit\b",
        r"rpm\b | hp\b | cc\b | lit(?:er|re)s?\b",
        r"tons?\b | tonnes?\b | (?<=\s)t\b(?!\d|\s?[=:]|\s?\d)",
        r"volts?\b | v\b | amps?\b | kw\b | years?\b | yrs?\b | days?\b | gg\b | weeks?\b | wks?\b",
        r"months?\b | hours?\b | hrs?\b | minutes?\b | mins?\b(?!\.?\s?(?:wall|wt|thk|od\b|clr))",
        r"tage?n?\b | wochen?\b",
        r"jahre?n?\b | jours?\b | semaines?\b | días\b | dias\b | semanas\b | giorni\b",
        r"settimane\b | dagen\b | weken\b | grados\b | gradi\b | graden\b | degrés\b",
        r"(?<=[369]0)s\b | (?<=45)s\b",
        # "42,4 x 2 St 37" is of steel, "2 st" are pieces
        r"(?<=1)st(?=\s|$)(?!\s(?:3[03457]|4[45]|5[025])\b(?!\s?(?:x|mm)))",
        r"nd\b | rd\b | th\b | k\b | °c | f\b | nm\b",
        rf"{_NO_RADIUS}c\b(?!\s?/|\s?-|\.|l)",
        r"kn\b | n\b(?=\s?/) | tpi\b | digits?\b | spm\b | mph\b | prozent\b",
    )),
)  # fmt: skip
_UNIT = late_pattern(
    # A unit may be wrapped to the next line: "1.500\ninch OD".
    r"(?: ?-? ?| ?\n ?(?=(?:mm|cm|inch(?:es)?|gauge|ga)\b))(?:"
    + "|".join(f"(?P<{name}>{pattern})" for name, pattern in _UNITS)
    + ")",
    re.IGNORECASE,
)
# "640 hairpins", "4 more tubes": the number counts, it does not measure.
_COUNTED = late_pattern(
    # Neither a tab nor two blanks: what the next cell of a table names is not counted.
    r"(?: ?-[ \n]?|[ \n]?)"
    + any_of(
        r"more\s | such\s | of\s(?:these|those|them)\s? | identical\s | new\s | different\s",
        r"test\s | other\s | sample\s | full\s | spare\s | extra\s | replacement\s",
    )
    + "?"
    + any_of(
        r"pcs? | pieces? | pce | nos | no\.?(?=\s|$|\W?\)) | off | ea\b | each | sets?",
        r"units? | stück",
        "stk | stueck | pi[eè]ces? | pi[eè]zas? | uds? | unidades | pezz[io] | pz | stuks? | szt",
        "ks | mandrels? | mandrills? | dies | tubes | pipes | bends | b[oö]gen | frames",
        "hairpins? | parts | people | employees | guys | balls? | kugeln? | glieder | billes",
        "pictures? | pics? | photos? | prints | sketches | files | pages | attachments | videos",
        "bilder | fotos? | zeichnungen | images | dessins | dibujos | planos | immagini | disegni",
        r"afbeeldingen | tekeningen | man\s(?:shop|crew|outfit) | shifts",
        "places | plcs? | locations | spots | stellen | endroits | posiciones | punti | plaatsen",
        r"sticks | joints | lengths | hoops | loops | cages | bars(?!\b\s?=) | rails | chairs",
        "handrails | railings | guards | gates | benches | racks | legs(?= per| each)",
        "holes | machines | benders | sizes | sets | jobs | orders | cars | trucks | bikes",
        "trailers | customers | passes | turns | coils | samples | drawings | dorne | rohre",
        "teile | tubos | tubi | buizen | bochten | cintrages | coudes | curve | curvas",
        r"mal(?!\s?\d) | times(?!\s(?:the\s)?(?:tube\s|pipe\s|outside\s)?(?:o\.?d|d\b|dia))",
        r"fach(?!\s?(?:des\s|vom\s)?(?:d\b|durchmesser|rohr)) | -?\s?off | apiece | to\s\d",
    )
    + r"\b",
    re.IGNORECASE,
)
# Two spaces are the gap of a table: "1.000 in  1.2 mm".
_PREPOSITION_IN = late_pattern(r"\s?in\s{1,4}(?P<next>[\w.]+)", re.IGNORECASE)
_NOT_INCH = word_set(
    "stock the a an my our your his their hand total all each this that these those case order",
    "time january february march april may june july august september october november december",
    "one two three four place mind common there it which any aluminum both either every",
    "lengths sticks coils",
    "week weeks kw cw wk woche semaine",
    "rev rev. revision version issue index response reply answer",
    "het een de bronze brass copper titanium inconel monel nylon steel stainless mild chromoly",
    "asse mezzeria acciaio alluminio ottone rame titanio inox der dem den einem totale tutto",
    "doorsnee doorsnede",
    "dieser gleicher selber deze dezelfde volgorde ordine quest questo quello axis mitte rohrmitte",
    "achse rohrachse mittellinie hartlijn hart mezzo",
    "buis buizen pijp pijpen rohr rohre rohren rundrohr tubo tubi edelstahl stahl rvs staal",
)
_OF_TUBE = late_pattern(
    r"(?:mild|stainless|steel|brass|copper|titanium|chromoly|inconel|aluminum)(?:\ssteel)?"
    r"\s(?:tube|tubing|pipe)\b",
    re.IGNORECASE,
)
_WIDEST_IN = 6
_PERHAPS_NOT_INCH = word_set(
    "center centre centerline centreline middle neutral aisi sae astm werkstoff material materiale"
)
"""'R90 in centre' is said of a radius to it; 'radius 6 in center line' of inches."""
_ORDER = late_pattern(r"die\svolgorde\b", re.IGNORECASE)
"""In Dutch an order; in English 'the 2 in die' is a tool."""
_SENTENCE_NEXT = late_pattern(r"\s+[A-ZÀ-Þ][a-zß-ÿ']|\s*\n\s*\n|\s*$")
_ANY_NEXT = late_pattern(r"\s+[A-ZÀ-Þ]|\s*\n\s*\n|\s*$")
"""'Legs are 8 and 14 inches. OD is 7/8': nobody writes the whole word with a point."""
_MEASURE_WORD = late_pattern(r"\s?(?:wall\b|x\b|by\b|clr\b|od\b|radius\b|thick\b)", re.IGNORECASE)
_NO_MEASURE = late_pattern(r"\s?(?:by\s[a-z]|x\s?\d+\s?(?:pcs|off))", re.IGNORECASE)
_WALL_BEHIND = late_pattern(r"\s?-?(?:wall|thick|w\b)", re.IGNORECASE)
_WALL_BEFORE = late_pattern(
    r"\b(?:wall|thickness|thk|wt)\b[ :=]{0,3}(?:is\W|of\W|about\W|approx\W{1,2})?$", re.IGNORECASE
)
_RADIUS_BEFORE = late_pattern(
    r"(?:\b(?:radius|radii|rad|clr|rayon|radio|raggio|straal|\w*radius|bend)\b"
    r"[^\w\n]{0,3}(?:(?:is|of|ist|von|est|de|es|è|di|van|at)\s)?|\br\s?=?\s?)$",
    re.IGNORECASE,
)
_TO_WALL = 24
"""Characters before a number in which 'wall is' or 'radius is' stands."""
_THINNEST_MILS = 12
"""No tube to be bent has a thinner wall (common practice, no source)."""
_TO_QUOTE = 64
"""How far before a figure a quotation may begin that its mark ends."""
_SHORT_QUOTE = 16


@dataclass(frozen=True, slots=True)
class UnitAfter:
    """A unit and where it ends; ``name`` is None where the word beside the number is no unit."""

    name: str | None
    end: int
    weak: bool = False
    """The word may be a preposition."""


_NEXT_LABEL = late_pattern(
    r"[ \t]*\n[ \t]*[^\W\d_][\w'/]{0,16}(?:[ \t][\w'/]{1,16}){0,3}\.?"
    r"(?:[ \t]?(?:[:=|]|[–-]\s)|\t|  )"
)
"""The next line's label counts nothing: "70 / Stk.: 1", "6.500 / Bends per part - 3"."""


_THE_TUBE_BENDS = late_pattern(r"\sbends\s(?:on|around|over|to|at)\s")
"""'The 25 bends on a 75 CLR': a tube, and no 25 bends."""


def counted_after(text: str, number: Number) -> bool:
    """Whether a whole number counts what stands behind it: '640 hairpins', '1.200 pezzi'."""
    if number.style == "decimal":
        return counts_thousands(text, number) and not _NEXT_LABEL.match(text, number.end)
    counted = _COUNTED.match(text, number.end) if number.style == "integer" else None
    if counted is None:
        return False
    if _THE_TUBE_BENDS.match(text, number.end) and _follows_the(text, number):
        return False
    return not _NEXT_LABEL.match(text, number.end)


def _follows_the(text: str, number: Number) -> bool:
    return text[max(0, number.start - 4) : number.start].casefold() == "the "


def unit_after(text: str, number: Number, materials: Container[int]) -> UnitAfter | None:
    """The unit behind a number, or None. ``materials`` holds where materials begin."""
    match = _UNIT.match(text, number.end)
    if match is None or (match["inch"] == '"' and _closes_quote(text, number)):
        return None
    if number.unit is not None:
        # The unit is in the number; its mark may stand twice: 1" 3/4".
        doubled = match["inch"] and number.unit == "in"
        return UnitAfter(number.unit, match.end()) if doubled else None
    if match["inch"]:
        return _inch(text, match, number, materials)
    if match["noise"]:
        least = match["noise"].casefold() == "min"
        if least and _RADIUS_BEFORE.search(text, max(0, number.start - _TO_WALL), number.start):
            return UnitAfter(None, number.end)  # "radius 76 min": the least, and no minutes
        return UnitAfter("noise:" + match["noise"].casefold(), match.end())
    if match["ga"]:
        if number.style not in ("integer", "words", "speech") or not 0 <= number.value <= 40:
            return UnitAfter(None, number.end)
        return UnitAfter((match["system"] or "ga").casefold(), match.end())
    if match["thou"] and match["thou"].casefold().startswith("mil"):
        return UnitAfter("thou" if _is_thousandths(text, match, number) else "mm", match.end())
    for name in ("mm", "cm", "thou", "swg", "bwg"):
        if match[name]:
            return UnitAfter(name, match.end())
    if _COUNTS_TUBES.match(text, text.rfind("\n", 0, number.start) + 1):
        return None
    return UnitAfter("D", match.end())


_COUNTS_TUBES = late_pattern(
    r"[ \t>*•–-]*(?:\(?\w{1,2}[.):]|(?:item|line|pos\.?|position)\s?\w{1,3}\s?[.:)-])?[ \t]*"
    r"\d{1,3}\s?[x×]\s?Ø\s?\d",
    re.IGNORECASE,
)
"""A line that begins '3 x Ø 51' counts: no radius of three times the diameter."""


def _is_thousandths(text: str, match: re.Match[str], number: Number) -> bool:
    """Whether 'mil' is a thousandth of an inch: '65 mil wall'. To a British ear it is a millimetre:
    '35 mil tube, 2 mil wall'."""
    behind = _WALL_BEHIND.match(text, match.end())
    before = _WALL_BEFORE.search(text, max(0, number.start - _TO_WALL), number.start)
    return bool(behind or before) and number.value >= _THINNEST_MILS


def measures(text: str, place: int) -> bool | None:
    """Whether what stands behind a number in words makes it a measure: 'six inch', 'two wall'.

    None where it says nothing either way.
    """
    rest = text[place : place + 24]
    unit = _UNIT.match(rest)
    if (unit and unit[0].strip().casefold() != "in") or _MEASURE_WORD.match(rest):
        return not _NO_MEASURE.match(rest)
    return None


def _closes_quote(text: str, number: Number) -> bool:
    """Whether the mark after a figure ends a quotation: 'the print says "R 150" and no more'."""
    opened = text.rfind('"', max(0, number.start - _TO_QUOTE), number.start)
    if opened < 0:
        return False
    quoted = text[opened : number.start]
    if "\n" in quoted:
        return False
    opens = not text[max(0, opened - 1) : opened].strip(" \n(:") and not quoted[1:2].isspace()
    if any(char.isdigit() for char in quoted):
        return opens and number.end - opened <= _SHORT_QUOTE  # 'auf der Form steht "42,4 - R 85"'
    return opens or (len(quoted) <= _SHORT_QUOTE and not text[opened - 1 : opened].isdigit())


def _inch(text: str, match: re.Match[str], number: Number, materials: Container[int]) -> UnitAfter:
    written = match["inch"].casefold()
    whole = written.endswith(("inches.", "inch."))
    if written.endswith(".") and (_SENTENCE_NEXT if not whole else _ANY_NEXT).match(
        text, match.end()
    ):
        return UnitAfter("in", match.end() - 1)  # "6 in. Thanks": the point ends the sentence
    preposition = _PREPOSITION_IN.match(text, number.end) if written == "in" else None
    if preposition is None:
        return UnitAfter("in", match.end())
    following = preposition["next"].casefold().rstrip(".")
    if following in _NOT_INCH or _ORDER.match(text, preposition.start("next")):
        # "1-1/2 in mild steel" is in inches all the same
        tube = number.value <= _WIDEST_IN and _OF_TUBE.match(text, preposition.start("next"))
        inches = number.style in ("fraction", "mixed") or tube  # "3 in mild steel tube"
        return UnitAfter("in", match.end(), weak=True) if inches else UnitAfter(None, number.end)
    weak = any(char.isdigit() for char in following) or following in _PERHAPS_NOT_INCH
    weak = weak or preposition.start("next") in materials
    return UnitAfter("in", match.end(), weak)
