"""Safety-relevant uses that a sender names: cage, seat, chassis, brake, pressure, aircraft.

A use only adds a caution to the reply (reply_templates/cautions.j2) and what rule books say of the
bend (rules/rulebooks.py); it never changes a decision.
Words of the trade that merely sound alike stay out: a pressure die, a press brake, a hydraulic
bender, a birdcage, aircraft-grade tube.
"""

from __future__ import annotations

import re

from .late import Late
from .late_pattern import late_pattern
from .pattern_branches import branches_of

_FITTED = (
    r"(?:lines?|pipes?|piping|pipework|tubes?|tubing|hoses?|hard\s?lines?|circuits?|systems?|mains?"
    r"|manifolds?|fittings?|rails?|services?|supply|burners?|trains?|oil|headers?|coils?)"
)
_MACHINE = (
    r"(?:benders?|bending|machines?|press(?:es)?|power|units?|pumps?|packs?|clamps?|cylinders?"
    r"|rams?|jacks?|mandrels?|extractors?|assist|drives?|driven|die)"
)

# Each use with the words that name it. German, French, Spanish, Italian and Dutch trade words
# stand in the last line of each.
_WORDS: dict[str, tuple[str, ...]] = {
    "cage": (
        r"(?:roll|safety|race|racing|crash|weld-in)[\s-]?(?:cages?|bars?|hoops?|structures?)",
        r"roll[\s-]?overs?(?:\s(?:bars?|protection|hoops?|structures?))?",
        r"main\shoops?|harness\sbars?|rops|cages?|(?-i:FIA|SFI|FSAE|NHRA|SCCA)|formula\s(?:sae|student)",
        r"überrollkäfige?|überrollbügel|arceaux?\sde\ssécurité|arceaux|jaulas?\santivuelco"
        r"|barras?\santivuelco|roll-?bar|rolkooi|rolbeugel",
    ),
    "seat": (
        r"(?:rac(?:e|ing)|bucket|car|driver'?s)\sseats?|seat\s(?:frames?|mounts?|brackets?)",
        r"rennsitze?|baquets?|asiento\sde\scompetición|sedile\sda\scorsa|racestoel",
    ),
    "chassis": (
        r"suspensions?(?!\sbridge)|steering(?!\scommittee)|wishbones?|(?:control|trailing|a)[\s-]arms?",
        r"tie\srods?|sway\sbars?|anti-?roll\sbars?",
        r"lenkung|radaufhängung|querlenker|direction\sassistée|suspensión|sospensioni?|ophanging",
    ),
    "brake": (
        r"brake\s(?:lines?|pipes?|piping|tubes?|tubing|hoses?|circuits?)",
        r"bremsleitung(?:en)?|conduites?\sde\sfrein|latiguillos?\sde\sfreno|remleiding(?:en)?",
    ),
    "pressure": (
        r"pressure\s?vessels?|high[\s-]pressure|(?:working|operating|test|design|internal|rated)\spressure",
        rf"pressure\s{_FITTED}|pressuri[sz]ed|fuel\s{_FITTED}|compressed\sair|heat\sexchangers?",
        r"\d{1,5}\s?bar(?!\s(?:stool|stock|link|end|clamp|mount|rail)s?\b)|\d[\d,]{0,6}\s?psi",
        r"druckleitung(?:en)?|druckbehälter|sous\spression|drukleiding(?:en)?",
    ),
    "aircraft": (
        r"(?:aircraft|aerospace)(?![\s-](?:grade|quality|spec|alloy|tubing|tube))|airframes?|aviation",
        r"airplanes?|aeroplanes?|helicopters?|gyrocopters?|fuselages?|landing\sgears?|(?-i:FAA|EASA)",
        r"flugzeuge?|luftfahrt|aéronefs?|aviones|aeronaves?|aereo|vliegtuig(?:en)?",
    ),
}

# What flows under pressure, where the sender says so: each has rule books of its own beside those
# for all pressure.
_SERVICES: dict[str, tuple[str, ...]] = {
    "steam": (
        r"steam(?![\s-]?(?:clean|punk|bent|bend))\w{0,3}",
        r"dampf\w{0,12}|vapeur|vapore|stoom\w{0,10}",
    ),
    "hydraulic": (
        rf"hydraulics?(?!\s{_MACHINE}\b)",
        r"hydraulikleitung(?:en)?|hidráulic[ao]s?",
    ),
    "gas": (
        rf"gas\s{_FITTED}|natural\sgas|propane|lpg|hydrogen",
        r"gasleitung(?:en)?",
    ),
    "boiler": (
        r"boilers?",
        r"(?:heiz)?kessel|chaudières?|caldaia|calderas?",
    ),
}


def _compiled(table: dict[str, tuple[str, ...]]) -> dict[str, Late]:
    return {
        use: Late([rf"(?<!\w)(?:{one})(?!\w)" for one in branches_of("|".join(words))])
        for use, words in table.items()
    }


_USES, _OF_PRESSURE = _compiled(_WORDS), _compiled(_SERVICES)

# What may stand before a match and takes the safety out of it: an animal's cage, or a "not".
_HARMLESS_BEFORE = late_pattern(
    r"(?:\b(?:bird|batting|rabbit|tool|chicken|dog|pet|animal|storage|shark|ball|bearing|bottle)"
    r"|\b(?:not|no|isn['’]t|never)(?:\s(?:for|in|on))?(?:\sa|\san|\sthe|\sany)?)[\s-]$",
    re.IGNORECASE,
)


def safety_uses(text: str) -> tuple[str, ...]:
    """Safety-relevant uses named in ``text`` (the sender's own), in a fixed order, each once.

    Names: 'cage', 'seat', 'chassis', 'brake', 'pressure', 'aircraft'; then what is under pressure,
    'steam', 'hydraulic', 'gas', 'boiler', each of which makes it 'pressure' too. Never raises.

    >>> safety_uses("1.75 x .095 for a roll cage, the pressure die is 5 in long")
    ('cage',)
    """
    spaced = re.sub(r"\s+", " ", text)
    services = tuple(use for use, words in _OF_PRESSURE.items() if _named(words, spaced))
    uses = (
        use
        for use, words in _USES.items()
        if _named(words, spaced) or (use == "pressure" and services)
    )
    return (*uses, *services)


def _named(words: Late, text: str) -> bool:
    return any(
        not _HARMLESS_BEFORE.search(text[max(0, found.start() - 24) : found.start()])
        for found in words.finditer(text)
    )
