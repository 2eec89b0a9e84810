"""Plain text to tokens: numbers with their units, cues, materials, and what is no size at all."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from .cues import WORD, Cue, cues_at
from .materials import MaterialMention, find_materials
from .numbers import WORDS, Number, number_at, scaled, words_at
from .protected import protected_spans

Kind = Literal[
    "number", "cue", "material", "block", "word", "times", "punct", "line", "para", "gap"
]


@dataclass(slots=True)
class Token:
    """A piece of the plain text. Spaces are dropped; 'gap' is a tab or a wide space in a table."""

    kind: Kind
    start: int
    end: int
    text: str
    """Casefolded."""
    number: Number | None = None
    unit: str | None = None
    """'in', 'mm', 'cm', 'm', 'ft', 'ga', 'bwg', 'swg', 'D', 'sch' or 'deg' and such noise units."""
    unit_end: int = 0
    cues: tuple[Cue, ...] = ()
    material: MaterialMention | None = None
    block: str = ""
    weak_unit: bool = False
    """'38 in 1.4301': the 'in' may be a preposition."""
    notes: list[str] = field(default_factory=list)


_UNIT = re.compile(
    r"""(?:[ ]?-?[ ]?|[ ]?\n[ ]?(?=(?:mm|cm|inch(?:es)?|gauge|ga)\b))(?:
      (?P<inch>''|"|in(?:ch(?:es)?|ches)?s?\b\.?(?!\s?/)|zoll\b|pouces?\b|po\b|pulgadas?\b|pulg\b\.?|plg\b\.?|polegadas?\b|pol\b\.?|cale?\b(?!\s?\.?\s?\d)|pollic[ei]\b|duim\b|tommer\b|tum\b)
    | (?P<mm>mm\b|m\.m\.|millimet(?:er|re)s?\b|milímetros?\b|millimètres?\b|millimetri\b|mms\b)
    | (?P<cm>cm\b|centimet(?:er|re)s?\b)
    | (?P<thou>thou(?:sandths?|sands?|s)?\b|mils?\b)
    | (?P<ga>(?:ga\b|gauge\b|gage\b|guage\b|gua?ge\b|g\b(?!/))(?:\s?\(?(?P<system>bwg|swg)\b\)?)?)
    | (?P<swg>s\.?w\.?g\b\.?) | (?P<bwg>b\.?w\.?g\b\.?)
    | (?P<d>(?:x\s?(?:the\s)?(?:tube\s)?|\*\s?|(?:times|mal|fois|veces|volte|keer|maal|razy|vezes)\s(?:(?:of|the|le|el|il|de|der|den|o)\s)?(?:tube\s|pipe\s|outside\s)?)(?:durchmesser|diam[èe]tre|di[áa]metro|o\.?d\b\.?|d\b|dia(?:meters?|\b)|diameters?\b|Ø)|[dD]\b(?!\s?(?:drawing|model|cad|scan|print|step|file|view|render|part|data|max|[=:])|\.\w|')|diameters?\s(?=bend|radius|clr))
    | (?P<noise>°|deg(?:rees?|s)?\b|grad\b|gr\b|%|percent\b|lbs?\b|\#|kg\b|psi\b|bar\b|mpa\b|ksi\b|hb\b|hrc\b|microns?\b|[µμ]m\b|ft\b\.?|feet\b|foot\b|'(?!')|m\b(?!\s?\.?m)|met(?:er|re)s?\b|mtrs?\b|yards?\b|grit\b|rpm\b|hp\b|cc\b|tons?\b|tonnes?\b|(?<=\s)t\b(?!\d|\s?=|\s?\d)|volts?\b|v\b|amps?\b|kw\b|years?\b|yrs?\b|days?\b|weeks?\b|wks?\b|months?\b|hours?\b|hrs?\b|minutes?\b|mins?\b|tage?n?\b|wochen?\b|jahre?n?\b|jours?\b|semaines?\b|días\b|dias\b|semanas\b|giorni\b|settimane\b|dagen\b|weken\b|grados\b|gradi\b|graden\b|degrés\b|st(?=\s|$)|nd\b|rd\b|th\b|k\b|°c|f\b|c\b(?!\s?/|\s?-|\.|l)|nm\b|kn\b|n\b(?=\s?/)|tpi\b|spm\b|mph\b|percent\b|prozent\b)
    )""",
    re.VERBOSE | re.IGNORECASE,
)

# Counted things: "640 hairpins", "4 tubes". The number counts, it does not measure.
_COUNTED = re.compile(
    r"""[ ]?-?\s?(?:more\s|such\s|of\s(?:these|those|them)\s?|identical\s|new\s|different\s|test\s|other\s|sample\s|full\s)?
    (?:pcs?|pieces?|pce|nos|no\.?(?=\s)|off|ea\b|each|sets?|units?|stück|stk|stueck|pi[eè]ces?|pi[eè]zas?|uds?|unidades|pezz[io]|pz|stuks?|szt|ks
    |mandrels?|mandrills?|dies|tubes|pipes|bends|b[oö]gen|frames|hairpins?|parts|people|employees|guys|balls?|kugeln?|glieder|billes|sticks|joints|lengths|hoops|loops|cages|bars(?!\b\s?=)|rails|chairs|holes|machines|benders|sizes|sets|jobs|orders|cars|trucks|bikes|trailers|customers|passes|turns|coils|samples|drawings|dorne|rohre|teile|tubos|tubi|buizen|bochten|cintrages|coudes|curve|curvas|mal(?!\s?\d)|times|fach|-?\s?off|apiece|to\s\d)\b""",
    re.VERBOSE | re.IGNORECASE,
)
_PREPOSITION_IN = re.compile(r"\s?in\s+(?P<next>[\w.]+)", re.IGNORECASE)
_NOT_INCH = frozenset(
    "stock the a an my our your his their hand total all each this that these those case order "
    "time january february march april may june july august september october november december "
    "one two three four place mind common there it which any aluminum".split()
)
_PREFIX = re.compile(
    r"""(?:
      (?P<radius>\br\s?[=:]\s?|\br(?=[\d.])|\br\.?\s(?=\d)|\brm\s?[=:]?\s?(?=[\d.]))
    | (?P<inside>\b(?:ri|ir)\s?[=:]?\s?(?=[\d.]))
    | (?P<wall>\b[ts]\s?[=:]\s?(?=[\d.,])|(?:\b|(?<=x))t(?=\d)|\bs(?=\d[.,]\d)|\bwt?\s?[=:]\s?(?=[\d.]))
    | (?P<od>\b(?:da|od|de)(?:\s?[=:]\s?|(?<=da)\s(?=\d)|\s?(?=\d\d\s?x)|(?=[\d.]))|\bd\s?[=:]\s?(?=[\d.])|\bd(?=\d)|Ø\s?[=:]?\s?(?=[\d.,]))
    | (?P<id>\b(?:di|id)(?:\s?[=:]\s?|(?=[\d.]))|Øi\s?[=:]?\s?(?=\d))
    | (?P<clr>\bclr(?:\s?[=:]\s?|(?=[\d.])))
    | (?P<times>\b(?:r\s?/\s?d|clr\s?/\s?od|d\s?ratio|d\sof\sbend|bend\sratio)\s?(?:of\s|is\s|[=:])?\s?(?=[\d.]))
    | (?P<sch>\b(?:sch(?:ed(?:ule)?)?|schd|c[ée]d(?:ula)?|s/)\.?\s?-?\s?\#?(?=\d|ten\b|forty\b|eighty\b|five\b))
    | (?P<dn>\bdn\s?(?=\d))
    | (?P<nps>\b(?:nps|ips)\s?(?=\d))
    | (?P<gauge>\b(?:gauge|gage|ga|bwg|swg|cal(?:ibre|ibro)?\.?)\s?[:\#=]?\s?(?:no\.?\s?)?(?=\d{1,2}\b(?!\s?[./]\d))|\bno\.?\s?(?=\d{1,2}\s?(?:ga|gauge|gage)\b))
    | (?P<dash>\bdash\s?-?\s?(?=\d{1,2}\b)|(?<![\w.)])-(?=\d{1,2}\s?(?:an\b|tub(?:e|ing)\b|line\b)))
    )""",
    re.VERBOSE | re.IGNORECASE,
)
_PREFIX_ROLE: dict[str, str] = {
    "radius": "radius", "inside": "inside_r", "wall": "wall", "od": "od", "id": "id", "clr": "clr",
    "times": "times_d", "sch": "schedule", "dn": "dn", "nps": "nps", "gauge": "wall", "dash": "dash",
}  # fmt: skip
_TIMES = re.compile(
    r"x(?![a-z])|x(?=[tsr]\d|Ø)|\*|by\b|mal\b|per\b(?=\s?[\d.])|por\b(?=\s?[\d.])|sur\b(?=\s?[\d.])", re.IGNORECASE
)
_SPACE = re.compile(r"[ \t]+")
# "38 ±0.1 x 1.5": a tolerance stands aside, the figures around it stay neighbours.
_TOLERANCE = re.compile(
    r"[(]?(?:(?:±|\+\s?/?\s?-)\s?\d{0,4}[.,]?\d{1,5}"
    r"|[+-]\s?\d{0,3}[.,]?\d{1,5}\s?/\s?[+-]?\s?\d{0,3}[.,]?\d{1,5}(?=\s?(?:mm|in\b|[xX×,;)]|$)))"
    r"\s?(?:mm|in\b|\"|°|deg\b|%)?[)]?"
)
_LEADER = re.compile(r"[.·_-]{3,}(?!\d)|(?:\.\s){3,}")  # "Ext. diam. ........ 2.500 in"
_SENTENCE_NEXT = re.compile(r"\s+[A-ZÀ-Þ][a-zß-ÿ']|\s*\n\s*\n|\s*$")
_AND_PART = re.compile(
    r"\sand\s(?P<part>(?:an?|one|three|five|seven)\s(?:half|quarters?|eighths?|sixteenths?))\b", re.IGNORECASE
)
_TWICE = re.compile(
    r"(?P<n>twice|two times|double|doppelt\w*|zweimal|zwei mal|deux fois|dos veces|due volte|il doppio|twee keer|tweemaal|duas vezes"
    r"|three times|dreimal|drei mal|trois fois|tres veces|tre volte|drie keer|driemaal|três vezes)"
    r"\s(?:(?:of|the|its|der|den|dem|des|le|el|il|la|de|del|o)\s){0,2}(?:(?:tube|pipe|outside|outer|rohr)\s?){0,2}"
    r"(?:od\b|o\.d\.?|d\b|diameters?\b|dia\b|durchmesser\w*|diam[èe]tre|di[áa]metro|Ø)",
    re.IGNORECASE,
)
_THREE = re.compile(r"th?re|drei|dri|trois|três", re.IGNORECASE)
_ROMAN_STD = re.compile(
    r"(?:sch(?:ed(?:ule)?)?\.?\s?)?(std|xs|xxs|xh|xxh|10s|40s|80s|5s)\b", re.IGNORECASE
)


def lex(plain: str) -> list[Token]:
    """All tokens of ``plain`` in order. Never raises; linear in the length of the text."""
    return _Lexer(plain).run()


class _Lexer:
    def __init__(self, plain: str) -> None:
        self.text = plain
        self.tokens: list[Token] = []
        self.materials = {m.start: m for m in find_materials(plain)}
        self.blocks: dict[int, tuple[int, str]] = {}
        for start, end, what in protected_spans(plain):
            # "en DC01" is Spanish before a grade, not a standard.
            inside = [place for place in self.materials if start < place < end]
            self.blocks[start] = (min([*inside, end]), what)

    def run(self) -> list[Token]:
        at, size = 0, len(self.text)
        while at < size:
            at = self._step(at)
        return self.tokens

    def _add(self, kind: Kind, start: int, end: int, **more: object) -> int:
        token = Token(kind, start, end, self.text[start:end].casefold())
        for name, value in more.items():
            setattr(token, name, value)
        self.tokens.append(token)
        return end

    def _step(self, at: int) -> int:
        char = self.text[at]
        if char in " \t":
            end = _SPACE.match(self.text, at).end()  # type: ignore[union-attr]
            if "\t" in self.text[at:end] or end - at > 1:
                self._add("gap", at, end)
            return end
        if char == "\n":
            return self._line(at)
        tolerance = _TOLERANCE.match(self.text, at)
        if tolerance is not None:
            return self._add("gap", at, tolerance.end())
        leader = _LEADER.match(self.text, at)
        if leader is not None:
            return self._add("gap", at, leader.end())
        material = self.materials.get(at)
        if material is not None:
            return self._add("material", at, material.end, material=material)
        block = self.blocks.get(at)
        if block is not None:
            return self._add("block", at, block[0], block=block[1])
        if char.isdigit() or (char in ".," and self.text[at + 1 : at + 2].isdigit()):
            return self._number(at) or self._add("punct", at, at + 1)
        if char == "*" and self._between_numbers(at):
            return self._add("times", at, at + 1)
        if char.isalpha() or char in "Ø#-":
            return self._prefixed(at) or self._worded(at)
        return self._add("punct", at, at + 1)

    def _line(self, at: int) -> int:
        end = at
        while end < len(self.text) and self.text[end] in " \t\n":
            end += 1
        breaks = self.text.count("\n", at, end)
        # Indentation after a break is not a table gap.
        return self._add("para" if breaks > 1 else "line", at, end)

    def _number(self, at: int) -> int | None:
        glued = at > 0 and self.text[at] in ".," and self.text[at - 1].isalnum()
        if glued and not (self.tokens and self.tokens[-1].kind == "times"):
            return None  # the point of "no.5" is no decimal point; that of "1.75x.095" is
        number = number_at(self.text, at)
        if number is None:
            return None
        return self._with_unit(self._and_a_half(number), at)

    def _and_a_half(self, number: Number) -> Number:
        """'2 and a quarter': digits with a fraction in words."""
        rest = _AND_PART.match(self.text, number.end) if number.style == "integer" else None
        part = words_at(self.text, rest.start("part")) if rest is not None else None
        if part is None or part.value >= 1:
            return number
        return Number(number.start, part.end, (number.value + part.value,), "words")

    def _with_unit(self, number: Number, at: int, role: str | None = None) -> int:
        unit, end, weak = number.unit, number.end, False
        counted = _COUNTED.match(self.text, number.end) if number.style == "integer" else None
        if counted is not None and "\n" in counted[0] and self.text[counted.end() :][:2].strip(".")[:1] == ":":
            counted = None  # the next line's label: "70 / Stk.: 1"
        match = None if counted else _UNIT.match(self.text, number.end)
        if match is not None and match["inch"] == '"' and self._closes_quote(number):
            match = None
        if match is not None and unit is None:
            unit, end, weak = self._unit(match, number)
            if unit == "thou":
                number, unit = scaled(number, Decimal("0.001")), "in"
        elif match is not None and match["inch"] and unit == "in":
            end = match.end()  # the mark stands twice: 1" 3/4"
        token_end = max(end, number.end)
        self._add(
            "number", at, token_end, number=number, unit=unit, unit_end=token_end, weak_unit=weak
        )
        token = self.tokens[-1]
        if role is not None:
            token.cues = (Cue(role, "before"),)  # type: ignore[arg-type]
        if counted is not None and role is None:
            token.block = "count"
        after = self.text[number.end : number.end + 2]
        if unit is None and role is None and re.match(r"[tT](?![\w])", after) and number.value < 25:
            token.cues = (Cue("wall", "before"),)  # "1.6t", as Japanese and Korean drawings have it
            token.end = token_end = number.end + 1
        return token_end

    def _closes_quote(self, number: Number) -> bool:
        """Whether the mark after a figure ends a quotation: 'the print says "R 150" and no more'."""
        opened = self.text.rfind('"', max(0, number.start - 16), number.start)
        if opened < 0 or "\n" in self.text[opened : number.start]:
            return False
        before = self.text[opened - 1 : opened]
        return not before.isdigit() and not any(c.isdigit() for c in self.text[opened : number.start])

    def _unit(self, match: re.Match[str], number: Number) -> tuple[str | None, int, bool]:
        if match["inch"]:
            return self._inch(match, number)
        if match["noise"]:
            return "noise:" + match["noise"].casefold(), match.end(), False
        if match["ga"]:
            if number.style not in ("integer", "words", "speech") or not 0 <= number.value <= 40:
                return None, number.end, False
            return (match["system"] or "ga").casefold(), match.end(), False
        for name in ("mm", "cm", "thou", "swg", "bwg"):
            if match[name]:
                return name, match.end(), False
        return "D", match.end(), False

    def _inch(self, match: re.Match[str], number: Number) -> tuple[str | None, int, bool]:
        written = match["inch"].casefold()
        if written.endswith(".") and _SENTENCE_NEXT.match(self.text, match.end()):
            return "in", match.end() - 1, False  # "6 in. Thanks": the point ends the sentence
        if written == "in":
            preposition = _PREPOSITION_IN.match(self.text, number.end)
            if preposition is not None:
                following = preposition["next"].casefold()
                if following in _NOT_INCH:
                    return None, number.end, False
                weak = (
                    any(c.isdigit() for c in following)
                    or preposition.start("next") in self.materials
                )
                return "in", match.end(), weak
        return "in", match.end(), False

    def _prefixed(self, at: int) -> int | None:
        match = _PREFIX.match(self.text, at)
        if match is None:
            return None
        after_times = bool(self.tokens) and self.tokens[-1].kind == "times"
        if at and self.text[at - 1].isalnum() and match.lastgroup != "od" and not after_times:
            return None
        if match[0] == "T" and not re.match(r"\d+[.,]\d|\d\s?mm", self.text[match.end() :]):
            return None  # a temper or a grade: "6061 T6", "SA213 T22"
        last = self.tokens[-1] if self.tokens else None
        if match.lastgroup in ("od", "id", "clr") and last is not None and last.number is not None:
            if match[0].rstrip().endswith((":", "=")) and "\n" not in self.text[last.end : at]:
                return None  # '2" OD: .083 wall': the OD is the 2 in
        role = _PREFIX_ROLE[match.lastgroup or ""]
        number = number_at(self.text, match.end())
        if number is None and match.lastgroup == "sch":
            number = words_at(self.text, match.end())  # "schedule forty"
        if number is None:
            return None
        end = self._with_unit(number, at, role)
        token = self.tokens[-1]
        if match.lastgroup == "gauge":
            prefix = match[0].strip(" :#=.").casefold()
            token.unit = token.unit or (prefix if prefix in ("bwg", "swg") else "ga")
        if match.lastgroup == "sch":
            suffix = re.match(r"s\b", self.text[number.end : number.end + 2], re.IGNORECASE)
            token.end = end = number.end + (1 if suffix else 0)
            token.unit, token.unit_end = "sch", end
        if (token.unit or "").startswith("noise:") and role in ("radius", "od"):
            token.unit = None if role == "od" else token.unit
        return end

    def _worded(self, at: int) -> int:
        word = WORD.match(self.text, at)
        if word is None:
            return self._add("punct", at, at + 1)
        if self._between_numbers(at):
            times = _TIMES.match(self.text, at)
            if times is not None:
                return self._add("times", at, times.end())
        twice = _TWICE.match(self.text, at)
        if twice is not None:
            n = Decimal(3 if _THREE.match(twice["n"]) else 2)
            return self._add(
                "number", at, twice.end(), number=Number(at, twice.end(), (n,), "words"), unit="D"
            )
        schedule = _ROMAN_STD.match(self.text, at)
        if schedule is not None and (at == 0 or not self.text[at - 1].isalpha()):
            number = Number(at, schedule.end(), (Decimal(0),), "words")
            self._add("number", at, schedule.end(), number=number, unit="sch")
            self.tokens[-1].cues = (Cue("schedule", "before"),)
            self.tokens[-1].notes = [schedule[1].upper()]
            return schedule.end()
        folded = word[0].casefold()
        if folded in WORDS or folded in ("inch", "an", "a"):
            spoken = words_at(self.text, at)
            if spoken is not None and spoken.style == "speech" and self._names_grade(spoken):
                return self._add("block", at, spoken.end, block="grade")
            if spoken is not None and self._measures(spoken):
                return self._with_unit(spoken, at)
        return self._cue(at) or self._add("word", at, word.end())

    def _between_numbers(self, at: int) -> bool:
        """Whether the token before is something a multiplication sign may follow."""
        for token in reversed(self.tokens[-7:]):
            if token.kind == "number":
                return not (token.unit or "").startswith("noise:") or token.unit in (
                    "noise:'",
                    "noise:ft",
                )
            if token.kind in ("cue", "material", "gap") or token.text in ("(", ")", ".", "mm", '"'):
                continue
            return False
        return False

    def _names_grade(self, number: Number) -> bool:
        """'three oh four stainless': figures spoken right before a material are its grade."""
        return number.value >= 200 and any(
            number.end < start <= number.end + 2 for start in self.materials
        )

    def _measures(self, number: Number) -> bool:
        """Whether number words measure something: 'one' alone is far more often a pronoun."""
        if number.unit is not None or number.value != number.value.to_integral_value():
            return True
        rest = self.text[number.end : number.end + 24]
        unit = _UNIT.match(rest)
        if (unit and unit[0].strip().casefold() != "in") or re.match(
            r"\s?(?:wall\b|x\b|by\b|clr\b|od\b|radius\b|thick\b)", rest, re.I
        ):
            return not re.match(r"\s?(?:by\s[a-z]|x\s?\d+\s?(?:pcs|off))", rest, re.I)
        return number.style == "speech"

    def _cue(self, at: int) -> int | None:
        words: list[str] = []
        ends: list[int] = []
        place = at
        for _ in range(6):
            match = WORD.match(self.text, place)
            if match is None:
                break
            words.append(match[0].casefold().removesuffix("'s"))
            ends.append(match.end())
            place = match.end()
            skipped = 0
            while place < len(self.text) and self.text[place] in " .-/'()\u00b7" and skipped < 2:
                place += 1
                skipped += 1
        if not words:
            return None
        found = cues_at(words, 0)
        if not found:
            return None
        used = found[0][0]
        end = ends[used - 1]
        if self.text[end : end + 1] == "." and len(words[used - 1]) <= 4:
            end += (
                1 if self.text[end + 1 : end + 2] in " \n:=\t" or len(words[used - 1]) == 1 else 0
            )
        self._add("cue", at, end, cues=tuple(cue for _, cue in found))
        return end
