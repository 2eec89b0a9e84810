"""Stretches of text whose digits are never a tube size: dates, phones, money, codes, threads."""

from __future__ import annotations

import re

_MONTHS = (
    r"jan(?:uary|uar|vier|uari)?|feb(?:ruary|ruar|ruari)?|febr|m[aä]r(?:ch|z)?|mars|marzo|maart|apr(?:il)?|avril|aprile|"
    r"may|mai|mei|mayo|maggio|june?|juni|juin|junio|giugno|july?|juli|juillet|julio|luglio|"
    r"aug(?:ust)?|ao[uû]t|agosto|augustus|sept?(?:ember|embre|iembre)?|settembre|oct(?:ober|obre|ubre)?|okt(?:ober)?|octobre|ottobre|"
    r"nov(?:ember|embre|iembre)?|de[czs](?:ember|embre|iembre)?|d[ée]c(?:embre)?|dicembre|diciembre|dic"
)

# Each alternative is bounded, so that 100 kB of anything is walked once.
PROTECTED = re.compile(
    rf"""
    (?P<address>[\w.+-]{{1,64}}@[\w-]{{1,64}}(?:\.[\w-]{{1,64}}){{0,6}}\.[a-z]{{2,12}}\b)
  | (?P<url>(?:https?://|www\.)\S{{1,300}})
  | (?P<date>
        (?<![\d.,/-])(?:19|20)\d\d[-/.]\d{{1,2}}[-/.]\d{{1,2}}(?![\d/])
      | (?<![\d.,/-])\d{{1,2}}(?P<dash>[./-])\d{{1,2}}(?P=dash)(?:(?:19|20)\d\d|\d\d)(?![\d/"]|-\d)
      | (?<![\d.,/-])(?:0?[1-9]|[12]\d|3[01])\.\s?(?:0[1-9]|1[0-2])\.(?=\s|$|[,;)])(?!\s?mm)
      | (?<![\d.,/-])\d{{1,2}}(?:st|nd|rd|th|\.|er|ere|º|°)?[\s-]{{1,2}}(?:of\s|de\s)?(?:{_MONTHS})\b\.?(?:[\s,-]{{0,2}}(?:de\s)?(?:19|20)\d\d)?
      | \b(?:{_MONTHS})\.?[\s-]{{1,2}}\d{{1,2}}(?:st|nd|rd|th)?\b(?!\s?(?:mm|x|ga|sch|"|in\b|/\d|\.\d|,\d))(?:,?\s(?:19|20)\d\d)?
      | (?<=\bby\s)\d{{1,2}}/\d{{1,2}}(?![\d/"]|\s?(?:wall|in\b|od\b|x\b|mm|ths?|thick|radius|clr))(?<!\d\d/64)
      | (?<=\bdue\s)\d{{1,2}}/\d{{1,2}}(?![\d/"]) | (?<=\bbefore\s)\d{{1,2}}/\d{{1,2}}(?![\d/"])
      | (?<=\buntil\s)\d{{1,2}}/\d{{1,2}}(?![\d/"]) | (?<=\bon\s)\d{{1,2}}/(?:1[79]|1[0-5]|2[0-9]|3[01]|[35679])(?![\d/"])
      | (?<![\d.,/-])(?:0?[1-9]|1[0-2])/(?:[135679]|1[0-57-9]|2\d|3[01])(?![\d"-]|[./]\d|\s?(?:mm|in\b|x\s?\d|wall|d\b|od\b))
      | \b(?:kw|cw|week|wk|semaine|semana|settimana|kalenderwoche|uge|vecka)\.?\s?\d{{1,2}}(?:[/ ](?:19|20)\d\d)?\b
      | \b(?:19[5-9]\d|20[0-4]\d)\b(?!\s?(?:mm|x\b|t\d|-t\d|alu)|[.,]\d) 
      | \b(?:q[1-4])\b
    )
  | (?P<item>^[ \t]*\(?\d{{1,2}}[.)](?=[ \t]+\S))
  | (?P<time>(?<![\d:])\d{{1,2}}:\d{{2}}(?::\d{{2}})?(?:\s?[ap]\.?m\b\.?)? | (?<![\d.,])\d{{1,2}}\s?[ap]\.?m\b\.?)
  | (?P<phone>\+\d[\d ()./-]{{6,22}}\d | (?<![\d.,])\(?\d{{3}}\)?[ .-]\d{{3}}[ .-]\d{{4}}(?!\d) | (?<![\d.,/-])[2-9]\d{{2}}-\d{{4}}(?!\d)
      | \b(?:tel|ph|phone|fax|mob|mobile|cell|call|text|ext|telefon|telefax|tlf|tél)\b\.?:?\s?\(?\+?\d[\d ()./-]{{1,24}})
  | (?P<money>[$€£]\s?\d[\d.,]{{0,12}} | \b(?:usd|eur|gbp|chf)\s?\d[\d.,]{{0,12}}
      | (?<![\d.,])\d{{1,9}}(?:[.,]\d{{1,3}}){{0,2}}(?:\s?k)?\s?(?:€|£|\$|eur(?:os?)?\b|usd\b|gbp\b|chf\b|dollars?\b|bucks\b|quid\b|cents\b))
  | (?P<thread>\bm\d{{1,2}}(?:\s?x\s?\d{{1,2}}(?:[.,]\d{{1,2}})?)?\b(?![.,]\d)
      | (?<![\d.,])(?:\d\s?-?\s?)?\d{{1,2}}/\d{{1,2}}"?\s?-\s?(?:1[0-9]|2[0-8]|3[26]|9|8|11)(?:\s?-?\s?(?:unc|unf|un|npt|thread|tpi|acme))?\b(?![/\d"]|\.\d)(?!\s?(?:in\b|inch|ga|wall|mm))
      | (?<![\d.,])(?:\d{{1,2}}[\s-]{{1,2}})?\d{{1,2}}(?:/\d{{1,2}}|[.,]\d{{1,3}})?\s?"?\s?-?\s?(?:\d{{1,2}}\s?)?(?:unc|unf|npt|nptf|bsp|bspp|bspt|tpi|acme)\b
      | \#\d{{1,2}}\s?x\s?\d[\d./ -]{{0,6}}\s?(?:"|in\b|inch)?\s?(?:screws?|self)?
      | \b[grGR]\s?\d/\d"? (?=\s|$|[,.;)]))
  | (?P<alloy>(?<![\d.,/])(?:90/10|70/30|80/20|60/40|85/15)\b(?!\s?mm))
  | (?P<number_of_steel>\ben\s?1\.\d{{4}}\b)
  | (?P<standard>\b(?:din|iso|astm|sae|ams|asme|ansi|jis|bs|nf|uni|gost|aisi|mil|api|ped|fia|sfi|nhra|fsae|faa|cfr|osha|en)\b[\s./-]{{0,2}}(?:(?:en|iso|spec|spc|std|t|a|b|g|f|cl|art|article|appendix)\b[\s./-]?){{0,2}}(?:[a-z]{{0,3}}-?\d{{1,6}}(?:[.:/-]\d{{1,5}}[a-z]?){{0,5}}[a-z]?))
  | (?P<code>\b(?!(?:r|od|id|clr|d|da|di|dn|nps|t|s|rad|w|wt|rm|ri|cl|sch|sched|schedule|ga|x|wall|o|by|dia|qty|e|st|s|p|a)\d)[a-z]{{1,6}}[-_/]?\d{{3,}}(?:[-_./]?[a-z0-9]{{1,8}}){{0,4}}\b
      | \b[a-z]{{1,3}}\d{{1,3}}-\d{{2,}}[\w-]{{0,12}}
      | (?<![\w.,/])\d{{2,6}}(?:[.]\d{{3,6}})?-\d{{3,8}}(?:-[\w]{{1,6}})?\b(?!\s?(?:mm|x\b|in\b)|[.,]\d|[x"])
      | (?<![\w.,])\d{{2,6}}(?:\.\d{{3,6}})?-[a-z]\b(?!\.)
      | (?<![\w.,])\d{{5,}}(?![.,]?\d|\s?mm)
      | (?<![\w.,])\d{{2,4}}(?:[ -]\d{{2,4}}){{3,8}}\b
      | \#\s?\d{{1,8}}\b | \b(?:4x4|2x4|4x2)s?\b(?!\s?(?:x|mm|in\b|"|\.\d))
      | \b[a-z]{{2}}\d{{2}}(?:\s\d{{4}}){{2,8}}
    )
    """,
    re.VERBOSE | re.IGNORECASE | re.MULTILINE,
)


def protected_spans(text: str) -> list[tuple[int, int, str]]:
    """(start, end, what) of every protected stretch, in order, not overlapping."""
    return [(m.start(), m.end(), m.lastgroup or "code") for m in PROTECTED.finditer(text)]
