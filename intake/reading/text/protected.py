"""Stretches of text whose digits are never a tube size: dates, phones, money, codes, threads.

Patterns are grouped by the character they begin with, so that the search passes over all places
where none can begin. Each is bounded: 100 kB of anything is walked once.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from functools import lru_cache

from ...late_pattern import late_pattern
from ..days.slashed_days import slashed_days
from ..numbers.bore_by_od import is_bore_by_od
from .numbered_lines import numbered_lines
from .patterns import any_of

_MONTH = any_of(
    "jan(?:uary|uar|vier|uari)? | feb(?:ruary|ruar|ruari)? | febr | m[aä]r(?:ch|z)? | mars",
    "marzo | maart | apr(?:il)? | avril | aprile | may | mai | mei | mayo | maggio | june? | juni",
    "juin | junio | giugno | july? | juli | juillet | julio | luglio | aug(?:ust)? | ao[uû]t",
    "agosto | augustus | sept?(?:ember|embre|iembre)? | settembre | oct(?:ober|obre|ubre)?",
    "okt(?:ober)? | octobre | ottobre | nov(?:ember|embre|iembre)?",
    "de[czs](?:ember|embre|iembre)? | d[ée]c(?:embre)? | dicembre | diciembre | dic",
)
_YEAR = r"(?:19|20)\d\d"
_SIZE_AFTER_SLASH = r"[\d/\"]|\s?(?:wall|in\b|od\b|x\b|mm|ths?|thick|radius|clr)"
_BEHIND_ARTICLE = "|".join(
    rf"(?<=\b{word}\s)"
    for word in "le il el al au am bis zum vom vor tot op tegen uiterlijk".split()
)
"""What stands before a day that is written without its year."""

_REFERENCE = (
    r"(?:rif(?:erimento)?|r[ée]f(?:[ée]ren(?:ce|cia|z|tie))?|zeichen|aktenzeichen|geschäftszeichen"
    r"|kenmerk|proje[ck]t|projet|proyecto|progetto|commessa|affaire|dossier|job)"
)
_SENDERS_REFERENCE = (
    r"(?:(?:unser|ihr|mein|dein)e?[mns]?\s(?:zeichen|referenz|projekt)|aktenzeichen|kostenstelle"
    r"|(?:our|your|my|notre|votre|nos|vos|nuestra|vuestra|su|ons|uw|onze|vs|ns|[nv]/)\.?\s?"
    r"(?:r[ée]f\w{0,8}|rif\w{0,9}|kenmerk|proje[ck]t|projet|proyecto|progetto))"
)
_HOUSE = (
    r"(?:bldg|building|geb|gebäude|bât|bâtiment|bat|edif|edificio|gebouw|hall|halle|floor|wing)"
)
_ROOM = r"(?:rm|room|raum|zimmer|zi|salle|sala|stanza|kamer|lokaal|suite|ste)"
_DESK = (
    rf"(?:{_HOUSE}|{_ROOM}|mail\s?(?:stop|code)|m/s|dept|department|abt|abteilung|afd|afdeling|reparto"
    r"|service|departamento|unit|dock|plant|bay|gate|office|büro|bureau|oficina|ufficio|kantoor)"
)
_NO_FRACTION = r"(?!(?:\d{1,2}-)?\d{1,2}/(?:2|4|8|16|32|64)\b(?!-))"
_NO_LENGTH = (
    r"(?![\s-]\d{1,2}/\d|\s?(?:inch(?:es)?|gauge|o\.?d|tub(?:e|es|ing)|wall|rohr\w*|zoll|pouces?"
    r"|pulgadas?|pollici)\b)"
)
"""'last week 1-3/4 tube', 'in May. 2 inch': no number of a week, no day."""

Kinds = tuple[tuple[str, tuple[str, ...]], ...]

_LED_BY_DIGIT: Kinds = (
    ("date", (
        # 2027-03-15, 15.3.2027, 20.11.
        rf"(?<![\d.,/-]){_YEAR}[-/.]\d{{1,2}}[-/.]\d{{1,2}}(?![\d/])",
        # not 38/42/45, where no figure is a month; but a last 32 would make a fraction
        r"(?<![\d.,/-])(?!(?:1[3-9]|[2-9]\d)/(?:1[3-9]|[2-9]\d)/(?!(?:16|32|64)\b))"
        rf"\d{{1,2}}(?P<dash>[./-])\d{{1,2}}(?P=dash)(?:{_YEAR}|\d\d)(?![\d/\"]|-\d)",
        r"(?<![\d.,/-])(?:0?[1-9]|[12]\d|3[01])\.\s?(?:0[1-9]|1[0-2])\.(?=\s|$|[,;)])(?!\s?mm)",
        # from the 1st to the 22nd of May
        r"(?<![\d.,/-])\d{1,2}(?:st|nd|rd|th|\.|er|ere|º|°)?\s(?:au|bis|to|till?|until|through|al|tot)\s"
        rf"(?:the\s|zum\s)?\d{{1,2}}(?:st|nd|rd|th|\.|er|ere|º|°)?\s(?:of\s|de\s)?{_MONTH}\b",
        # 3rd of May 2027
        rf"(?<![\d.,/-])\d{{1,2}}(?:st|nd|rd|th|\.|er|ere|º|°)?[\s-]{{1,2}}(?:of\s|de\s)?{_MONTH}\b"
        rf"(?:\.(?!\s+(?-i:[A-ZÀ-Þ])|\s*\Z))?(?:[\s,-]{{0,2}}(?:de\s)?{_YEAR})?",
        # "by 3/4" is a day, "by 3/4 wall" is none
        rf"(?<=\bby\s)\d{{1,2}}/\d{{1,2}}(?!{_SIZE_AFTER_SLASH})(?<!\d\d/64)",
        r"(?<=\bdue\s)\d{1,2}/\d{1,2}(?![\d/\"])",
        r"(?<=\bbefore\s)\d{1,2}/\d{1,2}(?![\d/\"])",
        r"(?<=\buntil\s)\d{1,2}/\d{1,2}(?![\d/\"])",
        r"(?<=\bon\s)\d{1,2}/(?:1[79]|1[0-5]|2[0-9]|3[01]|[35679])(?![\d/\"])",
        # 'le 30/10', 'entro il 13/11': no parts of an inch, nor a bore by an OD
        rf"(?:{_BEHIND_ARTICLE})(?![1-7]/[248]\b)(?:0?[1-9]|[12]\d|3[01])/(?:0?[1-9]|1[0-2])"
        r"(?![\d\"-]|[.,/]\d|\s?(?:mm|in\b|x\b|d[ei']|en\b|aus\b|van\b|\(?(?:int|ext|inn|außen|pouc|poll"
        r"|pulg|zoll|inch|cuivre|cobre|rame|kupfer|koper|inox)))",
        # 'Livraison souhaitée : 30/10': a bore is more than half of its OD
        r"(?<=:\s)(?!\d\d/[248]\b)(?:(?:1[3-9]|2\d|3[01])/0?[1-6]|(?:19|2\d|3[01])/0?[789]"
        r"|(?:2[5-9]|3[01])/1[0-2])(?![\d\"-]|[.,/]\d|\s?(?:mm|in\b|x\b|[a-zà-ü]))",
        # 'op 30-10', as the Dutch write it
        r"(?:(?<=\bop\s)|(?<=\buiterlijk\s)|(?<=\btegen\s))(?:0?[1-9]|[12]\d|3[01])-(?:0?[1-9]|1[0-2])"
        r"(?![\d/\"-]|[.,]\d|\s?(?:mm|x\b))",
        # 10/15: no denominator that an inch is divided by; but 'Rohr 12/1' is an OD and a wall
        r"(?<![\d.,/-])(?<!rohr\s)(?<!rohre\s)(?<!tubo\s)(?<!tubi\s)(?<!tubos\s)(?<!tube\s)"
        r"(?<!tubes\s)(?<!buis\s)(?:0?[1-9]|1[0-2])/(?:[135679]|1[0-57-9]|2\d|3[01])"
        r"(?![\d\"-]|[.,/]\d|\s?(?:mm|in\b|x\s?\d|wall|d\b|od\b|\(?(?:int|ext|inn|außen|id\b|bin|bui)))",
        # 29/01, 05/02: nobody writes a wall so
        r"(?<![\d.,/-])(?:0[1-9]|[12]\d|3[01])/0[1-9](?![\d\"]|[.,/]\d|-\d|\s?(?:mm|x\s?\d))",
        r"\b(?:19[5-9]\d|20[0-4]\d)\b(?!\s?(?:mm|x\b|t\d|-t\d|alu)|[.,]\d)",
    )),
    ("item", (r"^\d{1,2}[.)](?=[ \t]+\S)",)),
    ("time", (
        r"(?<![\d:])\d{1,2}:\d{2}(?::\d{2})?(?:\s?[ap]\.?m\b\.?)?",
        r"(?<![\d.,])(?:0?[1-9]|1[0-2])\s?[ap]\.?m\b\.?",  # "R 60 am Sitz" is no hour
    )),
    ("phone", (
        r"(?<![\d.,])\d{3}\)?[ .-]\d{3}[ .-]\d{4}(?!\d)",
        r"(?<![\d.,/-])[2-9]\d{2}-\d{4}(?!\d)",
    )),
    ("money", (
        # The sign after the number, unless it belongs to the next one: '2   $372.00'.
        r"(?<![\d.,])\d{1,9}(?:[.,]\d{1,3}){0,2}(?:[^\S\t\n]?k)?[^\S\t\n]?"
        r"(?:[€£$](?!\d)|eur(?:os?)?\b|usd\b|gbp\b|chf\b|dollars?\b|bucks\b|quid\b|cents\b)",
    )),
    ("thread", (
        # 1/2-13 UNC, 3/4"-16
        r"(?<![\d.,])(?:\d\s?-?\s?)?\d{1,2}/\d{1,2}\"?\s?-\s?(?:1[0-9]|2[0-8]|3[26]|9|8|11)"
        r"(?:\s?-?\s?(?:unc|unf|un|npt|thread|tpi|acme))?\b"
        r"(?![/\d\"]|\.\d)(?!\s?(?:in\b|inch|ga|wall|mm))",
        r"(?<![\d.,])(?:\d{1,2}[\s-]{1,2})?\d{1,2}(?:/\d{1,2}|[.,]\d{1,3})?\s?\"?\s?-?\s?"
        r"(?:\d{1,2}\s?)?(?:unc|unf|npt|nptf|bsp|bspp|bspt|tpi|acme)\b",
    )),
    # (3.000 - 2.870)/2 = .065, 3.000/.065 = 46: a sum that the sender works out
    ("sum", (
        r"(?<![\w.,/-])(?:\d{0,3}[.,]\d{1,4}\s?[+/÷]\s?|\d{0,3}[.,]?\d{1,4}\s[-–+*x×/÷]\s){1,3}"
        r"\d{0,3}[.,]?\d{1,4}\s?\)?(?:\s?[/÷*x×]\s?\d{1,3})?\s?=(?!\s?(?:OD|ID)\b)",
    )),
    ("alloy", (r"(?<![\d.,/-])(?:90/10|70/30|80/20|60/40|85/15)\b(?!\s?mm)",)),
    ("code", (
        r"(?<![\w.,/])00\d{1,4}\b(?![.,]\d|\s?(?:mm|in\b))",  # line 001
        r"(?<![\d.,/-])24\s?/\s?7\b(?!\s?(?:mm|[x×/]|in\b|\"|[.,]\d|[,;]?\s?r\b))",  # day and night
        r"(?<![\w.,/])0\d{2,5}[/-]\d{2,4}\b",  # our offer 0338/26
        r"(?<![\w.,/])\d{2,6}(?:[.]\d{3,6})?-\d{3,8}(?:-[\w]{1,6})?\b"
        r"(?!\s?(?:mm|x\b|in\b)|[.,]\d|[x\"])",
        r"(?<![\w.,])\d{2,6}(?:\.\d{3,6})?-[a-z]\b(?!\.)",
        r"(?<![\w.,])\d{5,}(?![.,]?\d|\s?mm)",
        # 4CQ15: a grade or a part nobody here knows; not 38x2, 25R50, 4to6, 1in5
        r"(?<![\w.,/-])\d{1,4}(?!(?:x|mm|mmx|cm|cmx|in|inx|od|id|ga|r|d|s|t|e|w|wt|wd|sch|rad|clr|da|di|de|by|a"
        r"|per|par|por|auf|op|o|of|to|bis|off|pcs|ea|stk|ft|m|c|i|n|no|nb|dn|th|ths|l)\d)"
        r"[a-z]{1,4}\d{1,4}[a-z]{0,3}\b(?![.,/]\d)",
        r"(?<![\w.,])\d{2,4}(?:[ -]\d{2,4}){3,8}\b",
        r"(?<![\w.,])(?:\d{1,3}\s?hundred\sblock\b|\d{3,5}\sblock\s(?:of|on)\b)",  # a street
        # '214 W 4th St': the W is no wall
        r"(?<![\w.,])\d{2,5}\s(?:[nsew]|[ns][ew])\.?\s(?:[^\W_][\w'-]{0,20}\.?\s){1,2}"
        r"(?:st|street|ave|avenue|rd|road|dr|drive|blvd|boulevard|hwy|highway|ln|lane|pkwy|way)\b",
        # a railway's gauge: "a 5 inch gauge engine"
        r"(?<![\d.,/-])(?:[57]|[23][.,]5|7[.,]25|(?:[23][ -]1/2|7[ -]1/4))\s?(?:\"|inch|in\.?)"
        r"[\s-]?gauge\b(?!\s(?:tub|wall))",
        r"\b(?:4x4|2x4|4x2)s?\b(?!\s?(?:x|mm|in\b|\"|\.\d))",
    )),
)  # fmt: skip

_EXTENSION = (
    r"(?<!\bd[. ])(?<!\bd\. )(?<!ø )"
    + "".join(
        rf"(?<!{word} )"
        for word in "diam diam. diám diám. dia dia. diamètre diámetro tube tubo rohr buis".split()
    ).replace(".", r"\.")
    + r"ext(?!\.?\s?\d+(?:[.,]\d+)?\s?int)"
)
"""Of a telephone, not of a tube: 'Ø ext: 25', 'D. ext. 42,4', 'tube ext. 38 int. 35'."""
_LED_BY_LETTER: Kinds = (
    ("url", (r"(?:https?://|www\.)\S{1,300}",)),
    ("date", (
        rf"{_MONTH}\.?[\s-]{{1,2}}\d{{1,2}}(?:st|nd|rd|th)?\b"
        rf"(?!\s?(?:mm|x|ga|sch|\"|in\b|/\d|\.\d|,\d)){_NO_LENGTH}(?:,?\s{_YEAR})?",
        # "KW. 14", but "every week. 1.5 x .065": behind a whole word the stop ends the sentence
        r"(?:(?:kw|cw|(?<!/)(?<!per\s)(?<!a\s)(?<!each\s)wk)\.?"
        r"|week|semaine|semana|settimana|kalenderwoche|uge|vecka)\s?\d{1,2}\b"
        rf"(?:[/ ]{_YEAR}\b|(?![.,]\d|/\d|\s?(?:mm|cm|[x×*]\s?[.\d]|\"|in\b|ga\b)){_NO_LENGTH})",
        r"(?<=[:=]\s)w\d{1,2}\b|(?<=livraison\s)s\d{1,2}\b",
        r"(?:q[1-4])\b",
    )),
    ("phone", (
        rf"(?:tel|ph|phone|fax|mob|mobile|cell|call|text|{_EXTENSION}|telefon|telefax|tlf|tél)\b"
        r"\.?:?\s?\(?\+?\d[\d ()./-]{1,24}",
    )),
    ("money", (
        r"(?:usd|eur|gbp|chf)[^\S\n]?\d[\d.,]{0,12}",
        # Rand: "at R 4,800 each", "R5 200 excl. VAT"; "R 57,150" may be a radius
        r"(?-i:R)\s?\d{1,3}[, ]\d{3}(?:[.,]\d\d)?"
        r"(?=\s(?:each\b(?!\s(?:end|side|bend))|apiece|per\s(?:mandrel|tool|unit)|excl|incl|ex\svat|\+\svat))",
    )),
    ("thread", (
        r"m\d{1,2}(?:\s?x\s?\d{1,2}(?:[.,]\d{1,2})?)?\b(?![.,]\d)",  # M12 x 1.5
        # G 3/4 is a thread (ISO 228-1); R 3/4 is one (ISO 7-1) unless marked as a length.
        r"g\s?\d/\d\"?(?=\s|$|[,.;)])",
        r"r\s?\d/\d(?=\"?\s(?:male|female|bsp\w?|thread\w*|fittings?|ports?|nipples?)\b"
        r"|\s(?!(?:in|inch|inches)\b|[\"'″x×])|$|[,.;)])",
    )),
    ("steel", (
        r"en\s?1\.\d{4}\b",
        r"(?-i:T)(?:35|40|50|60)\b(?![.,]\d|\s?mm|\s?[x×])",  # titanium, as French norms call it
        # "wall grade 2, 2.25 radius": which grade, not how much
        # "same grade. 1 mandrel": the point ends what is said of the grade
        r"(?:grade|gr\.?|grado|klasse|güte|gatunek)[^\S\n]?\d{1,2}\b"
        r"(?![.,/-]\d|\s?(?:mm|in\b|[\"x×])|\s(?:mandrel|dorne?\b|mandrin|mandril|doorn))",
    )),
    ("turn", (
        r"(?:(?:an?|one|three)[\s-])?(?:half|quarter)[\s-](?:circles?|turns?|moons?|loops?)\b",
    )),
    ("standard", (
        r"(?:din|iso|astm|sae|ams|asme|ansi|jis|bs|nf|uni|gost|aisi|mil|api|ped|fia|sfi|nhra|fsae"
        r"|faa|cfr|osha"
        # "tube en 42,4 x 2", "135 voor de 45 en 120 voor de 40" are no standards
        r"|en(?=[\s./-]?(?:\d{4}|\d{3}-\d|1\d\s\d{3}|iso|aw))|(?-i:EN)(?!\s\d{1,2}(?:[.,]\d|\s?[x×*\"]|\s?mm)))"
        r"\b[\s./-]{0,2}"
        r"(?:(?:en|iso|spec|spc|std|t|a|b|g|f|cl|art|article|appendix)\b[\s./-]?){0,2}"
        r"(?:[a-z]{0,3}-?\d{1,6}(?:[.:/-]\d{1,5}[a-z]?){0,5}[a-z]?)",
    )),
    ("code", (
        r"(?!(?:r|od|id|clr|d|da|di|dn|nps|t|s|rad|w|wt|rm|ri|cl|sch|sched|schedule|ga|x|wall|o|by"
        r"|dia|qty|e|st|s|p|a)\d)[a-z]{1,6}[-_/]?\d{3,}(?:[-_./]?[a-z0-9]{1,8}){0,4}\b",
        # "Bldg 25, Rm 1.065": 'Rm' alone may be a mean radius
        rf"{_HOUSE}\b\.?\s?\w{{1,4}}(?:-\d{{1,4}})?[,;/ ]{{1,3}}{_ROOM}\b\.?\s?\d{{1,4}}"
        r"(?:[.-]\d{1,4})?\b",
        rf"{_ROOM}\b\.?\s?\d{{1,4}}(?:[.-]\d{{1,4}})?[,;/ ]{{1,3}}{_HOUSE}\b\.?\s?\w{{1,4}}\b",
        # "Bldg 2-049", "Mail Stop 1-065"; "Dept 4410 / MS 2-083" ends its line, else it is a steel
        rf"(?:{_DESK}|ms(?=\s\d-\d{{2,4}}[ \t]*$))\b\.?\s?#?\d{{1,4}}-\d{{2,4}}\b"
        r"(?![/\"]|\.\d|\s?(?:mm|[x×]|in\b|wall|od\b|tub|rohr))",
        r"(?!r\d{1,2}-\d{1,2}/\d)[a-z]{1,3}\d{1,3}-\d{2,}[\w-]{0,12}",  # not R2-13/16
        r"[a-z]{2}\d{2}(?:\s\d{4}){2,8}",
        # "USt-ID DE 812 345 678", "TVA FR 12 812 345 678"
        r"(?:ust|vat|btw|tva|mwst|uid|iva)\b[-. ]{0,2}(?:id\b)?[-. ]{0,2}(?:(?:nr|no)\b)?[.: ]{0,3}"
        r"[a-z]{2}\s?\d[\d. ]{6,14}\d",
        r"(?-i:[A-Z]{2,6})/\d{1,4}(?:/\d{1,6})+\b",  # ENQ/26/0931
        # "Rif. int. 26/1187-40", "Unser Zeichen 26/44-2", but "job: 2-3/8 x .154"
        rf"{_REFERENCE}\b\.?\s?(?:int(?:erne?|ern)?\b|nr\b|no\b|n[°º]|num(?:mer|ber)?\b)?\.?"
        rf"[\s:#-]{{0,4}}{_NO_FRACTION}(?:\d{{2,6}}(?:[/-]\d{{1,6}}[a-z]?){{1,3}}"
        r"|\d(?:[/-]\d{2,6}){1,3})\b(?!\s?(?:mm|[x×]|in\b|\"|[.,]\d))",
        rf"{_SENDERS_REFERENCE}\b[\s.:]{{0,3}}\d{{1,6}}(?:[./-]\d{{1,6}}){{1,3}}\b"
        r"(?!\s?(?:mm|[x×]|in\b|\"|[.,]\d))",
        r"(?:rdo|rda|rfq|rfp|anfrage|angebot|offerta|oferta|offre|offer|inquiry|enquiry|order|ordine"
        r"|pedido|aanvraag|demande(?:\sd.offre)?|prix|devis|ref|commande|bestellung|request|quote|quotation|auftrag"
        r"|tender|ausschreibung|appel\sd.offres|licitación|gara|aanbesteding"
        r"|richiesta(?:\sd.offerta)?|preventivo|commessa|prot|solicitud|cotización|presupuesto)\b"
        r"\W{0,3}(?:(?:nr|no|n[°º]|n[uú]m|n(?=\.))\.?)?\s?\d{2,6}[/-]\d{2,4}\b(?!\s?(?:mm|x))",
    )),
)  # fmt: skip

_LED_BY_SIGN: Kinds = (
    ("item", (r"^\(\d{1,2}[.)](?=[ \t]+\S)",)),
    ("phone", (
        r"\+\d[\d ()./-]{6,22}\d",
        r"(?<![\d.,])\(\d{3}\)?[ .-]\d{3}[ .-]\d{4}(?!\d)",
    )),
    ("money", (r"[$€£][^\S\n]?\d[\d.,]{0,12}",)),
    ("thread", (r"\#\d{1,2}\s?x\s?\d[\d./ -]{0,6}\s?(?:\"|in\b|inch)?\s?(?:screws?|self)?",)),
    ("code", (r"\#\s?\d{1,8}\b",)),
)  # fmt: skip
_ITEM = r"^[ \t]*(?:[-*•·▪◦–—]|\(?[a-h][.)])(?=[ \t]+\S)|^[ \t]+\(?\d{1,2}[.)](?=[ \t]+\S)"
"""What begins an item of a list, beside a number at the very start of its line."""
_ADDRESS = r"(?<![\w.+-])[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){0,6}\.[a-z]{2,12}\b"


def _alternatives(kinds: Kinds, led_by: str) -> str:
    named = (f"(?P<{kind}_{led_by}>{'|'.join(patterns)})" for kind, patterns in kinds)
    return "|".join(named)


_WITHOUT_ADDRESSES = (
    rf"(?<!\d)(?=\d)(?:{_alternatives(_LED_BY_DIGIT, 'digit')})"
    # Nothing but a link is without a digit near its first letter.
    rf"|\b(?=[a-z])(?=https?:|www\.|\D{{1,40}}+\d)(?:{_alternatives(_LED_BY_LETTER, 'letter')})"
    rf"|(?=[(+$€£\#])(?:{_alternatives(_LED_BY_SIGN, 'sign')})"
    rf"|(?P<item_list>{_ITEM})"
)
_FLAGS = re.IGNORECASE | re.MULTILINE
_PROTECTED = late_pattern(_WITHOUT_ADDRESSES, _FLAGS)
_WITH_ADDRESSES = late_pattern(f"(?P<address_any>{_ADDRESS})|{_WITHOUT_ADDRESSES}", _FLAGS)


_INLINE = late_pattern(r"(?<![\w.,/(\"-])(?<!\d )(\d{1,2})\)(?!\d)")
_BRACKET = 40
"""Characters before a ')' in which its '(' stands."""


def _inline_items(text: str) -> list[tuple[int, int, str]]:
    """'1) 38 x 1.5, 2) 42 x 2; R 57 for 1)': numbers of a list that runs on in one line."""
    if "1)" not in text or "2)" not in text:
        return []
    found = [
        match
        for match in _INLINE.finditer(text)
        if text.count("(", max(0, match.start() - _BRACKET), match.start())
        <= text.count(")", max(0, match.start() - _BRACKET), match.start())
    ]
    numbers = [int(match[1]) for match in found]
    counts_up = 1 in numbers and 2 in numbers and numbers.index(1) < numbers.index(2)
    return [(match.start(), match.end(), "item") for match in found] if counts_up else []


_SLASHED = re.compile(r"(\d{1,2})/(\d{1,2})")


def _names_tube(text: str, match: re.Match[str]) -> bool:
    """'cuivre 12/14' is no day."""
    slashed = _SLASHED.fullmatch(match[0])
    return slashed is not None and is_bore_by_od(
        text, match.start(), int(slashed[1]), int(slashed[2])
    )


@lru_cache(maxsize=4)
def protected_spans(text: str) -> tuple[tuple[int, int, str], ...]:
    """(start, end, what) of every protected stretch, in order, not overlapping."""
    pattern = _WITH_ADDRESSES if "@" in text else _PROTECTED
    spans = [
        # An indented item begins with its number: the lexer passes line breaks with the blanks.
        (
            match.end() - len(match[0].lstrip()),
            match.end(),
            (match.lastgroup or "code_").partition("_")[0],
        )
        for match in pattern.finditer(text)
        if not _names_tube(text, match)
    ]
    more = [*_inline_items(text), *numbered_lines(text), *slashed_days(text)]
    if more:
        found: list[tuple[int, int, str]] = []
        begins = [begin for begin, _, _ in spans]
        for item in more:
            at = bisect_right(begins, item[1] - 1)
            if at == 0 or spans[at - 1][1] <= item[0]:
                found.append(item)
        spans = sorted([*spans, *found])
    return tuple(spans)
