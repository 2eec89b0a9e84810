"""When the mandrel is needed: the day of delivery, not the day a quotation is due."""

from __future__ import annotations

import re
from calendar import monthrange
from dataclasses import dataclass
from datetime import date, timedelta

from dateutil.easter import easter
from dateutil.relativedelta import FR, MO, SA, SU, TH, TU, WE, relativedelta, weekday

from ...rules.request import Doubt


@dataclass(frozen=True, slots=True)
class Needed:
    """The day, and a doubt where its spelling fits two days."""

    day: date | None = None
    doubt: Doubt | None = None


_MONTHS: dict[str, int] = {
    name: number
    for number, names in enumerate(
        (
            "jan january januar janvier enero gennaio januari styczen stycznia",
            "feb february februar fevrier février febrero febbraio februari febr luty",
            "mar march märz maerz mrz mars marzo maart mrt",
            "apr april avril abril aprile",
            "may mai mayo maggio mei maj",
            "jun june juni juin junio giugno",
            "jul july juli juillet julio luglio",
            "aug august août aout agosto augustus",
            "sep sept september septembre septiembre settembre",
            "oct october oktober octobre octubre ottobre okt",
            "nov november novembre noviembre",
            "dec december dezember dez décembre decembre diciembre dicembre dic déc",
        ),
        1,
    )
    for name in names.split()
}
_M = "|".join(sorted(_MONTHS, key=len, reverse=True))
_DAYS: dict[str, weekday] = {
    name: day
    for day, names in (
        (MO, "mon monday montag lundi lunes lunedì maandag"), (TU, "tue tues tuesday dienstag mardi martes martedì dinsdag"),
        (WE, "wed wednesday mittwoch mercredi miércoles mercoledì woensdag"), (TH, "thu thur thurs thursday donnerstag jeudi jueves giovedì donderdag"),
        (FR, "fri friday freitag vendredi viernes venerdì vrijdag"), (SA, "sat saturday samstag samedi sábado sabato zaterdag"),
        (SU, "sun sunday sonntag dimanche domingo domenica zondag"),
    )
    for name in names.split()
}  # fmt: skip
_DATE = re.compile(
    rf"""
    (?P<iso>\b(?P<iy>20\d\d)[-/.](?P<im>\d{{1,2}})[-/.](?P<id>\d{{1,2}})\b)
  | (?P<num>(?<![\d.,/-])(?P<na>\d{{1,2}})(?P<sep>[./-])(?P<nb>\d{{1,2}})(?:(?P=sep)(?P<ny>20\d\d|\d\d)\b(?![./-]\d)|(?<=\d\.\d)\.(?=\s|$|[,;)])|(?<=\d\.\d\d)\.(?=\s|$|[,;)])|(?<=/\d)(?![\d/.,-]|-|\s?(?:"|'|mm|in\b|inch|od\b|o\.d|wall|x\b|×|by\b|thick|tube|clr|rad|ga\b|sch))|(?<=/\d\d)(?![\d/.,-]|-|\s?(?:"|'|mm|in\b|inch|od\b|o\.d|wall|x\b|×|by\b|thick|tube|clr|rad|ga\b|sch))))
  | (?P<dm>(?<![\d.,/])(?P<dd>\d{{1,2}})(?:st|nd|rd|th|\.|er|º|°)?[\s-]{{1,2}}(?:of\s|de\s)?(?P<mon>{_M})\b\.?(?:[\s,-]{{1,2}}(?:de\s)?(?P<dy>20\d\d))?)
  | (?P<md>\b(?P<mon2>{_M})\b\.?[\s-]{{1,2}}(?P<dd2>\d{{1,2}})(?:st|nd|rd|th)?\b(?!\s?(?:mm|x\b|"|in\b))(?:,?\s(?P<dy2>20\d\d))?)
  | (?P<part>\b(?P<which>end|beginning|start|middle|mid|early|late|ende|anfang|mitte|fin|début|mi|finales|principios|mediados|fine|inizio|metà|eind|begin|half)[\s-](?:of\s|of\sthe\s|de\s|di\s|du\s|del\s|van\s)?(?:the\s)?(?P<mon3>{_M}|month|next\smonth|year|the\syear|week|next\sweek|this\sweek)\b(?:\s(?P<dy3>20\d\d))?)
  | (?P<rel>\b(?:in|within)\s(?:about\s|the next\s)?(?P<count>\d{{1,2}}|a|one|two|three|four|five|six|eight|ten|zwei|drei|vier)\s(?P<span>days?|weeks?|wks?|months?|tagen?|wochen?|monaten?)\b)
  | (?P<day>\b(?:(?P<next>next|this|coming|nächsten|nächste|prochain|próximo|volgende)\s)?(?P<wd>{"|".join(sorted(_DAYS, key=len, reverse=True))})\b)
  | (?P<nth>\bthe\s(?P<nd>\d{{1,2}})(?:st|nd|rd|th)\b(?!\s(?:of|{_M}|floor|time|attempt|one|bend)))
  | (?P<feast>\b(?:christmas|xmas|x-mas|weihnachten|noël|navidad|natale|kerst|easter|ostern|thanksgiving|new\syear'?s?)\b)
  | (?P<kw>\b(?:kw|cw|week|wk|kalenderwoche|calendar\sweek|semaine|semana|settimana)\.?\s?(?P<wn>\d{{1,2}})(?:\s?/\s?(?P<wy>20\d\d|\d\d))?\b)
    """,
    re.VERBOSE | re.IGNORECASE,
)
_NEED = re.compile(
    r"\b(?:need(?:ed|s)?(?: it| them| this| these)?|require[ds]?|deliver(?:y|ed)?|delivery date|in hand|on site|on-site|on my bench|on the bench|in house|here|arrive|arrives|have it|have them|ready|ship(?:ped|s)?|no later than|not later than|latest|at the latest|deadline|due date|due|before|by|until|till|wanted|want it|wanting it|required|liefertermin|lieferung|geliefert|spätestens|benötigt|benötigen|brauchen|bis|vor|wunschtermin|livraison|livré|délai|avant|pour le|au plus tard|entrega|antes del?|para el|plazo|fecha|consegna|entro|prima del|levering|leverdatum|uiterlijk|vóór|voor|geleverd|tegen|term(?:in|ín)|leverans|senast|inden)\b",
    re.IGNORECASE,
)
_QUOTE_DUE = re.compile(
    r"\b(?:quot(?:e|es|ation|ations|ed|ing)|offer|offers|bid|bids|price[sd]?|pricing|reply|respond|response|answer|rfq|angebot|angebote|offerte|offre|devis|oferta|presupuesto|offerta|preventivo|rückmeldung|réponse|tender|proposal|call|phone|meeting|visit|valid|validity|invoice|paid|payment|in dock|expires?|ordered|bought|delivered on|shipped on|wrote|sent|schrieb|received|last order|closed|closing|holiday|absent|away|out of|back on|open from)\b[^.;\n]{0,28}$",
    re.IGNORECASE,
)
_STRONG = re.compile(
    r"\b(?:need(?:ed)?|require[ds]?|deliver(?:y|ed)?|in hand|here|arrive|have it|no later|latest|deadline|liefertermin|lieferung|spätestens|benötig\w+|livraison|au plus tard|entrega|consegna|entro|levering|uiterlijk|must|ship)\b",
    re.IGNORECASE,
)


def find_needed_by(text: str, sent_on: date | None, *, american: bool) -> Needed:
    """The day by which the tooling is wanted, or nothing. ``sent_on`` is the mail's own day."""
    best: tuple[int, int, Needed] | None = None
    for match in _DATE.finditer(text):
        before = _clause_before(text, match.start())
        after = text[match.end() : match.end() + 28]
        rank = _rank(match, before, after)
        if rank == 0 or (match["num"] and match["ny"] is None and not _DIRECT.search(before)):
            continue
        needed = _resolve(match, sent_on, american, before)
        if needed.day is None:
            continue
        if best is None or rank > best[0]:
            best = (rank, match.start(), needed)
    return best[2] if best is not None else Needed()


_DIRECT = re.compile(
    r"\b(?:by|before|until|till|on|due|is|date|the|required|needed|need|deliver(?:y|ed)?|bis|am|zum|vor|spätestens|le|avant|pour|del|el|antes|para|entro|il|op|voor|tegen|uiterlijk)\W{0,3}$|:\s*$",
    re.IGNORECASE,
)


def _clause_before(text: str, place: int) -> str:
    piece = text[max(0, place - 90) : place]
    for mark in ("\n\n", ". ", "? ", "! ", "; ", ".\n"):
        at = piece.rfind(mark)
        if at >= 0:
            piece = piece[at + len(mark) :]
    return " ".join(piece.split())


def _rank(match: re.Match[str], before: str, after: str) -> int:
    """How surely this date is a day of delivery; 0 is not at all."""
    near = before[-60:]
    need = list(_NEED.finditer(near))
    quote = _QUOTE_DUE.search(near)
    late = re.match(
        r"\W{0,3}(?:at the latest|latest|the latest|or sooner|would be|is fine|if possible|if you can|please|delivery|spätestens|au plus tard)",
        after,
        re.I,
    )
    if quote is not None and not (need and _STRONG.search(near[quote.start() + 4 :])):
        return 0
    if need and _STRONG.search(near):
        rank = 4
    elif need or late is not None:
        rank = 3
    else:
        return 0
    if match["day"] or match["rel"] or match["feast"] or match["kw"] or match["part"]:
        if match["day"] and not need:
            return 0
        rank -= 1
    return rank


def _resolve(match: re.Match[str], sent_on: date | None, american: bool, before: str) -> Needed:
    try:
        if match["iso"]:
            return Needed(date(int(match["iy"]), int(match["im"]), int(match["id"])))
        if match["num"]:
            return _numeric(match, sent_on, american)
        if match["dm"]:
            return _named(match["mon"], int(match["dd"]), match["dy"], sent_on)
        if match["md"]:
            return _named(match["mon2"], int(match["dd2"]), match["dy2"], sent_on)
    except ValueError:
        return Needed()  # "31 February" is no day: left for a person
    if sent_on is None:
        return Needed()
    return Needed(_relative(match, sent_on, before))


def _numeric(match: re.Match[str], sent_on: date | None, american: bool) -> Needed:
    a, b = int(match["na"]), int(match["nb"])
    dotted = match["sep"] == "."
    day_first = dotted or not american
    first = _day(a, b, match["ny"], sent_on) if day_first else _day(b, a, match["ny"], sent_on)
    other = _day(b, a, match["ny"], sent_on) if day_first else _day(a, b, match["ny"], sent_on)
    if first is None:
        return Needed(other)
    if dotted or other is None or other == first or match["ny"] is None or american:
        return Needed(first)
    doubt = Doubt(
        field="needed_by",
        readings=(first.isoformat(), other.isoformat()),
        why=f"{match[0].strip()} may be day first or month first",
    )
    return Needed(first, doubt)


def _day(day: int, month: int, year: str | None, sent_on: date | None) -> date | None:
    if not (1 <= month <= 12 and 1 <= day <= 31):
        return None
    if year is None:
        return _coming(month, day, sent_on)
    number = int(year) if len(year) == 4 else 2000 + int(year)
    return date(number, month, day) if day <= monthrange(number, month)[1] else None


def _coming(month: int, day: int, sent_on: date | None) -> date | None:
    """The next such day after the mail."""
    if sent_on is None:
        return None
    for year in (sent_on.year, sent_on.year + 1):
        if day <= monthrange(year, month)[1] and date(year, month, day) >= sent_on:
            return date(year, month, day)
    return None


def _named(month: str, day: int, year: str | None, sent_on: date | None) -> Needed:
    number = _MONTHS[month.casefold()]
    if year is not None:
        return Needed(date(int(year), number, day))
    return Needed(_coming(number, day, sent_on))


_COUNT_WORDS = {
    "a": 1,
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "eight": 8,
    "ten": 10,
    "zwei": 2,
    "drei": 3,
    "vier": 4,
}


def _relative(match: re.Match[str], sent_on: date, before: str) -> date | None:
    if match["rel"]:
        written = match["count"].casefold()
        count = int(written) if written.isdigit() else _COUNT_WORDS[written]
        span = match["span"].casefold()
        if span.startswith(("d", "t")):
            return sent_on + timedelta(days=count)
        if span.startswith("w"):
            return sent_on + timedelta(weeks=count)
        return sent_on + relativedelta(months=count)
    if match["part"]:
        return _part(match, sent_on)
    if match["day"]:
        day = sent_on + relativedelta(days=1, weekday=_DAYS[match["wd"].casefold()](1))
        return (
            day + timedelta(days=7)
            if match["next"] and match["next"].casefold() == "next" and (day - sent_on).days < 4
            else day
        )
    if match["nth"]:
        return _nth(int(match["nd"]), sent_on)
    if match["kw"]:
        return _week(match, sent_on)
    return _feast(match["feast"].casefold(), sent_on)


def _part(match: re.Match[str], sent_on: date) -> date | None:
    which, name = match["which"].casefold(), match["mon3"].casefold()
    if "week" in name:
        monday = (
            sent_on
            - timedelta(days=sent_on.weekday())
            + timedelta(weeks=1 if "next" in name else 0)
        )
        return (
            monday + timedelta(days=4)
            if which in ("end", "late", "ende", "fin", "fine", "eind")
            else None
        )
    if "year" in name:
        return date(sent_on.year, 12, 31)
    if "month" in name:
        first = sent_on.replace(day=1) + relativedelta(months=1 if "next" in name else 0)
        month, year = first.month, first.year
    else:
        month = _MONTHS[name]
        year = (
            int(match["dy3"])
            if match["dy3"]
            else sent_on.year + (1 if month < sent_on.month else 0)
        )
    last = monthrange(year, month)[1]
    if which in ("end", "late", "ende", "fin", "finales", "fine", "eind"):
        return date(year, month, last)
    if which in ("middle", "mid", "mitte", "mi", "mediados", "metà", "half"):
        return date(year, month, 15)
    return date(year, month, 1)


def _nth(day: int, sent_on: date) -> date | None:
    for step in (0, 1, 2):
        first = sent_on.replace(day=1) + relativedelta(months=step)
        if 1 <= day <= monthrange(first.year, first.month)[1] and first.replace(day=day) >= sent_on:
            return first.replace(day=day)
    return None


def _week(match: re.Match[str], sent_on: date) -> date | None:
    week = int(match["wn"])
    if not 1 <= week <= 53:
        return None
    year = sent_on.year
    if match["wy"]:
        year = int(match["wy"]) if len(match["wy"]) == 4 else 2000 + int(match["wy"])
    elif week < sent_on.isocalendar().week:
        year += 1
    try:
        return date.fromisocalendar(year, week, 5)
    except ValueError:
        return None  # a year without a 53rd week


def _feast(name: str, sent_on: date) -> date | None:
    if name.startswith(
        ("christmas", "xmas", "x-mas", "weihn", "noël", "navidad", "natale", "kerst")
    ):
        return _coming(12, 24, sent_on)
    if name.startswith(("easter", "ostern")):
        this = easter(sent_on.year)
        return this if this >= sent_on else easter(sent_on.year + 1)
    if name.startswith("new"):
        return date(sent_on.year, 12, 31)
    first = sent_on.replace(month=11, day=1)
    return first + relativedelta(weekday=TH(4))
